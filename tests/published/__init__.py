"""Checks against the outside: standards, bulletins, handbook tables, reference libraries."""
