"""An ailing plant: what is asked, and the plan."""
