"""The messenger's post: updates taken in, requests promised, and what goes with them."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0003"
down_revision = "0002"
branch_labels = None
depends_on = None

ID = sa.BigInteger().with_variant(sa.Integer(), "sqlite")
OBJECT = sa.JSON(none_as_null=True)
OPEN = sa.text("state = 'open'")


def upgrade() -> None:
    """Create the tables; groups can be quiet."""
    op.add_column("owner", sa.Column("quiet", sa.Boolean()))
    _create_inbox()
    _create_outbox()
    op.create_table(
        "chat",
        *_chat_key(),
        sa.Column("unreachable_ms", sa.BigInteger(), nullable=False),
        sa.PrimaryKeyConstraint("source", "chat_id", name="pk_chat"),
    )
    op.create_table(
        "posted",
        *_chat_key(),
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
    op.create_table(
        "tap",
        *_chat_key(),
        sa.Column("message_id", sa.BigInteger(), nullable=False),
        sa.Column("data", sa.String(64), nullable=False),
        sa.Column("tapped_ms", sa.BigInteger(), nullable=False),
        sa.PrimaryKeyConstraint("source", "chat_id", "message_id", "data", name="pk_tap"),
    )
    op.create_index("ix_tap_age", "tap", ["source", "tapped_ms"])
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


def downgrade() -> None:
    """Delete the tables with what waits in them."""
    for table in ("card", "tap", "posted", "chat", "outbox", "inbox"):
        op.drop_table(table)
    op.drop_column("owner", "quiet")


def _chat_key() -> tuple[sa.Column[str], sa.Column[int]]:
    return (
        sa.Column("source", sa.String(64), nullable=False),
        sa.Column("chat_id", sa.BigInteger(), nullable=False),
    )


def _create_inbox() -> None:
    op.create_table(
        "inbox",
        sa.Column("id", ID, nullable=False),
        sa.Column("source", sa.String(64), nullable=False),
        sa.Column("update_id", sa.BigInteger(), nullable=False),
        sa.Column("lane", sa.String(128), nullable=False),
        sa.Column("body", OBJECT),
        sa.Column("received_ms", sa.BigInteger(), nullable=False),
        *_claim(),
        sa.PrimaryKeyConstraint("id", name="pk_inbox"),
        sa.UniqueConstraint("source", "update_id", name="uq_inbox_source_update_id"),
        sqlite_autoincrement=True,
    )
    _index_open("inbox")
    op.create_index("ix_inbox_age", "inbox", ["source", "received_ms"])


def _create_outbox() -> None:
    op.create_table(
        "outbox",
        sa.Column("id", ID, nullable=False),
        sa.Column("source", sa.String(64), nullable=False),
        sa.Column("lane", sa.String(128), nullable=False),
        sa.Column("method", sa.String(40), nullable=False),
        sa.Column("body", sa.JSON(), nullable=False),
        sa.Column("answers", OBJECT),
        sa.Column("created_ms", sa.BigInteger(), nullable=False),
        *_claim(),
        sa.PrimaryKeyConstraint("id", name="pk_outbox"),
        sqlite_autoincrement=True,
    )
    _index_open("outbox")


def _claim() -> tuple[sa.Column[str], sa.Column[int], sa.Column[int], sa.Column[str]]:
    return (
        sa.Column("claimed_by", sa.String(64)),
        sa.Column("free_ms", sa.BigInteger(), nullable=False),
        sa.Column("tries", sa.Integer(), nullable=False),
        sa.Column("state", sa.String(8), nullable=False),
    )


def _index_open(table: str) -> None:
    op.create_index(
        f"ix_{table}_open",
        table,
        ["source", "lane", "id"],
        sqlite_where=OPEN,
        postgresql_where=OPEN,
    )
