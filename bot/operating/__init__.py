"""What an operator needs: the running program watched, its log, and chores for its database.

logs        structured lines, without what people wrote and without the token
faults      a fault by its kinds and places, also at the command line
metrics     what is counted while it runs; gauges that are asked for when somebody looks
health      whether it lives, and if not, why
page        the two pages that show this: /healthz and /metrics
postbox     a postbox that counts what goes through it
chores      backup, moving to another database, looking a database over: in words
unusable    what the command line says of records that cannot be used, and what to do

Nothing here is imported by the rooms that do the work; `bot/serving.py` and `bot/cli.py` are
where the two meet.
"""
