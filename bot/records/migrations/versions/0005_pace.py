"""How fast a messenger is written to, held over all processes; and what may wait for the rest.

Revision ID: 0005
Revises: 0004
"""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0005"
down_revision = "0004"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Create the table; requests get a rank."""
    op.create_table(
        "pace",
        sa.Column("source", sa.String(64), nullable=False),
        sa.Column("lane", sa.String(128), nullable=False),
        sa.Column("free_ms", sa.Double(), nullable=False),
        sa.Column("full_ms", sa.Double(), nullable=False),
        sa.PrimaryKeyConstraint("source", "lane", name="pk_pace"),
    )
    op.create_index("ix_pace_age", "pace", ["source", "free_ms"])
    op.add_column("outbox", sa.Column("rank", sa.Integer(), nullable=False, server_default="0"))


def downgrade() -> None:
    """Drop both."""
    op.drop_column("outbox", "rank")
    op.drop_table("pace")
