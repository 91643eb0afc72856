"""Doses and what belongs to them: waters, meters, bottles, feeds compared."""
