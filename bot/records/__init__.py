"""What we remember of people and groups: their plants, products, waters, settings, and the log.

Nothing here knows of chats, wording, grammar or dosing. Everything belongs to an owner (a
person or a group) and every query names its owner.

Where things are
----------------
database    open the records; sessions to read and to write
owners      people and groups, their settings
places, plants, products, waters
            what they have; each change is an entry of the log
log         what was given and measured; undo; history
memory      what a person last asked for, for follow-ups
reminders   what an owner is reminded of; pings, what is due over all owners, claimed and promised
transfer    export and import (the format is described there)
forget      delete everything of an owner
models      the tables; kinds, the closed vocabularies; errors, what can go wrong

Inside: columns and values hold each field to its limits, ledger writes rows and log together,
shelf is what plants, products and waters share, engines and schema know the two databases.

A new column: models, a new migration (migrations/alembic.ini says how), `schema.HEAD`, and a
sample of the new version (`python -m tests.records.make_samples`); the check on writing, the
export and the import follow by themselves. A migration that was committed is never changed.
"""

from __future__ import annotations

from .database import Records, open_records

__all__ = ["Records", "open_records"]
