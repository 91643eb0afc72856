"""When and how often: rhythms, days, clock times."""
