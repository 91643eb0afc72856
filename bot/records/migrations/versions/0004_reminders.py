"""Reminders, the pings that were promised for them, and entries of the log about them."""

from __future__ import annotations

from typing import Any

import sqlalchemy as sa
from alembic import op

revision = "0004"
down_revision = "0003"
branch_labels = None
depends_on = None

ID = sa.BigInteger().with_variant(sa.Integer(), "sqlite")
INSTANT = sa.DateTime(timezone=True)
CODE = sa.String(32)
OBJECT = sa.JSON(none_as_null=True)


def upgrade() -> None:
    """Create the tables; an entry of the log can be about a reminder."""
    _create_reminder()
    _create_ping()
    if _on_sqlite():
        _copy_event(with_reminders=True)
    else:
        op.add_column("event", sa.Column("reminder_id", ID))
        op.create_foreign_key(
            "fk_event_owner_id_reminder_id",
            "event",
            "reminder",
            ["owner_id", "reminder_id"],
            ["owner_id", "id"],
        )


def downgrade() -> None:
    """Delete the tables, and what the log has about reminders."""
    op.execute("DELETE FROM event WHERE kind = 'reminder'")
    if _on_sqlite():
        _copy_event(with_reminders=False)
    else:
        op.drop_constraint("fk_event_owner_id_reminder_id", "event", type_="foreignkey")
        op.drop_column("event", "reminder_id")
    op.drop_table("ping")
    op.drop_table("reminder")


def _create_reminder() -> None:
    _create_owned(
        "reminder",
        sa.Column("channel", sa.String(32), nullable=False),
        sa.Column("person", sa.String(128)),
        sa.Column("kind", CODE, nullable=False),
        sa.Column("text", sa.String(200)),
        sa.Column("target", OBJECT, nullable=False),
        sa.Column("rule", sa.String(200)),
        sa.Column("start", sa.String(19), nullable=False),
        sa.Column("zone", sa.String(64), nullable=False),
        sa.Column("state", CODE, nullable=False),
        sa.Column("due_ms", sa.BigInteger()),
        sa.Column("due_local", sa.String(19)),
        sa.Column("moved", sa.Boolean(), nullable=False),
        sa.Column("offered", sa.Boolean(), nullable=False),
        sa.Column("created", INSTANT, nullable=False),
    )
    _create_partial_index("ix_reminder_due", ["channel", "due_ms"], "state = 'active'")
    _create_partial_index("ix_reminder_person", ["person"], "person IS NOT NULL")


def _create_ping() -> None:
    _create_owned(
        "ping",
        sa.Column("reminder_id", ID, nullable=False),
        sa.Column("due_ms", sa.BigInteger(), nullable=False),
        sa.Column("state", CODE, nullable=False),
        sa.Column("message_id", sa.BigInteger()),
        sa.Column("settled_ms", sa.BigInteger()),
        _points_to("ping", "reminder_id", "reminder"),
        sa.UniqueConstraint(
            "owner_id", "reminder_id", "due_ms", name="uq_ping_owner_id_reminder_id_due_ms"
        ),
    )
    op.create_index("ix_ping_age", "ping", ["due_ms"])


def _copy_event(*, with_reminders: bool) -> None:
    """SQLite cannot give a table another foreign key: make it anew, as 0001 did, and copy it.

    Its trigger goes with the old table. Foreign keys are off meanwhile, and checked at the end.
    """
    columns: list[sa.Column[Any]] = [
        sa.Column("batch", ID, nullable=False),
        sa.Column("kind", CODE, nullable=False),
        sa.Column("happened_on", sa.Date(), nullable=False),
        sa.Column("said_at", INSTANT, nullable=False),
        sa.Column("plant_id", ID),
        sa.Column("product_id", ID),
        sa.Column("water_id", ID),
        sa.Column("payload", OBJECT, nullable=False),
        sa.Column("reverses", ID),
    ]
    names = ", ".join(["owner_id", "id", *(column.name for column in columns)])
    pointers = {"plant_id": "plant", "product_id": "product", "water_id": "water"}
    if with_reminders:
        columns.insert(7, sa.Column("reminder_id", ID))
        pointers["reminder_id"] = "reminder"
    pointers["reverses"] = "event"
    op.execute("DROP TRIGGER event_is_append_only")
    # The old one steps aside, so that the new one's name for itself is right from the start.
    op.rename_table("event", "old_event")
    for index in ("ix_event_plant", "ix_event_day", "uq_event_reverses"):
        op.drop_index(index, "old_event")
    _create_owned(
        "event", *columns, *(_points_to("event", name, of) for name, of in pointers.items())
    )
    op.execute(f"INSERT INTO event ({names}) SELECT {names} FROM old_event")
    op.drop_table("old_event")
    op.create_index("ix_event_plant", "event", ["owner_id", "plant_id", "happened_on"])
    op.create_index("ix_event_day", "event", ["owner_id", "happened_on"])
    where = sa.text("reverses IS NOT NULL")
    op.create_index(
        "uq_event_reverses", "event", ["owner_id", "reverses"], unique=True, sqlite_where=where
    )
    op.execute(
        "CREATE TRIGGER event_is_append_only BEFORE UPDATE ON event "
        "BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END"
    )


def _on_sqlite() -> bool:
    return op.get_bind().dialect.name == "sqlite"


def _create_owned(table: str, *parts: sa.schema.SchemaItem) -> None:
    op.create_table(
        table,
        sa.Column("owner_id", ID, nullable=False),
        sa.Column("id", ID, autoincrement=False, nullable=False),
        *parts,
        sa.PrimaryKeyConstraint("owner_id", "id", name=f"pk_{table}"),
        sa.ForeignKeyConstraint(["owner_id"], ["owner.id"], name=f"fk_{table}_owner_id"),
        sqlite_with_rowid=False,
    )


def _points_to(table: str, column: str, other: str) -> sa.ForeignKeyConstraint:
    return sa.ForeignKeyConstraint(
        ["owner_id", column],
        [f"{other}.owner_id", f"{other}.id"],
        name=f"fk_{table}_owner_id_{column}",
    )


def _create_partial_index(name: str, columns: list[str], where: str) -> None:
    op.create_index(
        name,
        "reminder",
        columns,
        sqlite_where=sa.text(where),
        postgresql_where=sa.text(where),
    )
