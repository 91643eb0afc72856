"""Reminders in the conversation: set, shown, moved, answered."""
