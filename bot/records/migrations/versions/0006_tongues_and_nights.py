"""The language somebody wrote in last, and the hours in which nobody wakes them.

Revision ID: 0006
Revises: 0005
"""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0006"
down_revision = "0005"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Add the columns."""
    op.add_column("owner", sa.Column("heard", sa.String(16)))
    op.add_column("owner", sa.Column("quiet_from_min", sa.Integer()))
    op.add_column("owner", sa.Column("quiet_until_min", sa.Integer()))


def downgrade() -> None:
    """Drop them."""
    op.drop_column("owner", "quiet_until_min")
    op.drop_column("owner", "quiet_from_min")
    op.drop_column("owner", "heard")
