"""What happened in pots: their logs, their salts, and both as pictures."""
