"""Mutation testing of bot/dosing: change the code a little, see whether a test notices.

`python -m tests.mutation` (see DEVELOPERS.md). The operators are those of mutmut; they are put to
work here because mutmut itself leaves out what is decorated (our properties and caches) and what
stands at the top of a module (limits, coefficients), and because its forks inherit caches that
were filled by unchanged code.
"""
