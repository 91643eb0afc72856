"""The salts in pots, and years and doses as pictures."""
