"""Words: cut, folded, known by the lexicon, counted; which language they are, what a slip meant."""
