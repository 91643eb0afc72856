"""An ailing plant: what is asked, the plan, and what the log keeps of it."""
