"""Sinkside: how much feed, in how much water, for which orchids, and why."""
