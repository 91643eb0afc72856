"""The messenger: carries messages in and answers out, and decides nothing of either.

menu      what is handled, at a glance
hearing   from an update to who said what, and whether it was meant for us
showing   from an answer to requests: pages, buttons, files, cards
carrying  one update: hear, let the conversation answer, show
serving   polling or webhook, the workers and the sender
"""
