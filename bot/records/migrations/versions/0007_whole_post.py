"""The post of databases that were made by the first form of 0003, as all others have it.

That form knew neither whose an answered message was nor whose a card is, so that nothing of it
could be erased with its person. Databases made since have all of it: nothing is done there.

Revision ID: 0007
Revises: 0006
"""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0007"
down_revision = "0006"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Make the two tables anew where they lack columns; what is in them is nobody's.

    It is a few days of links and of which answer belongs to which message; whose it was
    cannot be told any more.
    """
    if not _has("posted", "person"):
        op.drop_table("posted")
        _create_posted()
    if not _has("card", "channel"):
        op.drop_table("card")
        _create_card()


def downgrade() -> None:
    """Keep them: 0006 has the same tables."""


def _has(table: str, column: str) -> bool:
    return column in {found["name"] for found in sa.inspect(op.get_bind()).get_columns(table)}


def _create_posted() -> None:
    op.create_table(
        "posted",
        sa.Column("source", sa.String(64), nullable=False),
        sa.Column("chat_id", sa.BigInteger(), nullable=False),
        sa.Column("message_id", sa.BigInteger(), nullable=False),
        sa.Column("answer_id", sa.BigInteger(), nullable=False),
        sa.Column("person", sa.String(128), nullable=False),
        sa.Column("kind", sa.String(32), nullable=False),
        sa.Column("posted_ms", sa.BigInteger(), nullable=False),
        sa.PrimaryKeyConstraint("source", "chat_id", "message_id", name="pk_posted"),
    )
    op.create_index("ix_posted_answer", "posted", ["source", "chat_id", "answer_id"])
    op.create_index("ix_posted_person", "posted", ["person"])
    op.create_index("ix_posted_age", "posted", ["source", "posted_ms"])


def _create_card() -> None:
    op.create_table(
        "card",
        sa.Column("id", sa.String(24), nullable=False),
        sa.Column("channel", sa.String(32), nullable=False),
        sa.Column("external_id", sa.String(128), nullable=False),
        sa.Column("text", sa.Text(), nullable=False),
        sa.Column("kept_ms", sa.BigInteger(), nullable=False),
        sa.PrimaryKeyConstraint("id", name="pk_card"),
    )
    op.create_index("ix_card_of", "card", ["channel", "external_id"])
    op.create_index("ix_card_age", "card", ["kept_ms"])
