"""A request for a dose: what words mean beside each other, the one grammar, and its figures."""
