"""Messages, updates and files that are made up by what code they reach, and held to laws.

`python -m tests.fuzzing TARGET` looks for new ones by the clock, with atheris (installed apart, see
DEVELOPERS.md); `test_corpus.py` holds those that were kept in `fixtures/fuzz` to the same laws.
"""
