"""How often an import replaced what an owner has: what a program keeps of it is held to this.

Revision ID: 0009
Revises: 0008
"""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0009"
down_revision = "0008"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Add the column; nothing was counted before."""
    op.add_column("owner", sa.Column("replaced", sa.Integer()))


def downgrade() -> None:
    """Drop it."""
    op.drop_column("owner", "replaced")
