"""From a message to an answer: Reading to dosing request to result to words.

Transport-neutral: nothing here knows a terminal or a messenger.
"""
