"""The topic of a group in which a reminder was set: that is where it is heard.

Revision ID: 0008
Revises: 0007
"""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0008"
down_revision = "0007"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Add the column; what was set before goes where it went, to the general topic."""
    op.add_column("reminder", sa.Column("topic", sa.BigInteger()))


def downgrade() -> None:
    """Drop it."""
    op.drop_column("reminder", "topic")
