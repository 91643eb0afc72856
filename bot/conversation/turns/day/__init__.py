"""The watering day: what each plant is due, in groups, from one can."""
