"""How plants on record stand: what each is due, the salts in its pot, a rescue it is in."""
