"""An hour of simulated life at a hundred times its speed; `python -m tests.soak`.

Two clocks run. The clock of life (what day it is, when somebody wrote, when a reminder is due) runs
`speed` times as fast as the wall, in the bot's processes as in the stand-in for the messenger.
What lies between the bot and its machine or its messenger (how long a claim holds, the wait after
a failure, how many requests a second are let through, every timeout) takes as long as in life:
neither machine nor network gets faster because the calendar does.
"""
