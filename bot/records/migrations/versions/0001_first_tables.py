"""The first tables."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0001"
down_revision = None
branch_labels = None
depends_on = None

ID = sa.BigInteger().with_variant(sa.Integer(), "sqlite")
INSTANT = sa.DateTime(timezone=True)
CODE = sa.String(32)
OBJECT = sa.JSON(none_as_null=True)


def upgrade() -> None:
    """Create the tables."""
    _create_owner()
    _create_memory()
    _create_place()
    _create_product()
    _create_water()
    _create_plant()
    _create_event()
    _refuse_changes_of_the_log()


def downgrade() -> None:
    """Delete every table with all that is in it."""
    for table in ("event", "plant", "water", "product", "place", "memory", "owner"):
        op.drop_table(table)
    if op.get_bind().dialect.name == "postgresql":
        op.execute("DROP FUNCTION event_is_append_only()")


def _create_owner() -> None:
    op.create_table(
        "owner",
        sa.Column("id", ID, nullable=False),
        sa.Column("kind", CODE, nullable=False),
        sa.Column("channel", CODE, nullable=False),
        sa.Column("external_id", sa.String(128), nullable=False),
        sa.Column("language", sa.String(16)),
        sa.Column("zone", sa.String(64)),
        sa.Column("place_name", sa.String(120)),
        sa.Column("hemisphere", CODE),
        sa.Column("units", CODE),
        sa.Column("scale_step_g", sa.Double()),
        sa.Column("syringe_step_ml", sa.Double()),
        sa.Column("spoon", sa.Boolean()),
        sa.Column("can_l", sa.Double()),
        sa.Column("created_at", INSTANT, nullable=False),
        sa.PrimaryKeyConstraint("id", name="pk_owner"),
        sa.UniqueConstraint(
            "channel", "external_id", "kind", name="uq_owner_channel_external_id_kind"
        ),
        sqlite_autoincrement=True,
    )


def _create_memory() -> None:
    op.create_table(
        "memory",
        sa.Column("owner_id", ID, nullable=False),
        sa.Column("person", sa.String(128), nullable=False),
        sa.Column("request", OBJECT),
        sa.Column("said_at", INSTANT),
        sa.Column("question", OBJECT),
        sa.Column("asked_at", INSTANT),
        sa.PrimaryKeyConstraint("owner_id", "person", name="pk_memory"),
        sa.ForeignKeyConstraint(["owner_id"], ["owner.id"], name="fk_memory_owner_id"),
        sqlite_with_rowid=False,
    )
    op.create_index("ix_memory_person", "memory", ["person"])


def _create_place() -> None:
    _create_owned(
        "place",
        sa.Column("name", sa.String(60), nullable=False),
        sa.Column("name_key", sa.Text(), nullable=False),
        sa.UniqueConstraint("owner_id", "name_key", name="uq_place_owner_id_name_key"),
    )


def _create_product() -> None:
    _create_owned(
        "product",
        sa.Column("name", sa.String(60)),
        sa.Column("name_key", sa.Text()),
        sa.Column("form", CODE),
        sa.Column("n", sa.Double()),
        sa.Column("p2o5", sa.Double()),
        sa.Column("k2o", sa.Double()),
        sa.Column("extras", OBJECT),
        sa.Column("n_nitrate", sa.Double()),
        sa.Column("n_ammonium", sa.Double()),
        sa.Column("n_urea", sa.Double()),
        sa.Column("label_per_litre", sa.Double()),
        sa.Column("label_unit", CODE),
        sa.Column("density_kg_l", sa.Double()),
        sa.Column("price", sa.Double()),
        sa.Column("currency", sa.String(3)),
        sa.Column("pack_size", sa.Double()),
        sa.Column("pack_unit", CODE),
        sa.Column("is_default", sa.Boolean(), nullable=False),
        sa.Column("added_on", sa.Date(), nullable=False),
        sa.Column("removed_on", sa.Date()),
        sa.Column("present", sa.Boolean(), nullable=False),
    )
    op.create_index("ix_product_owner_id_name_key", "product", ["owner_id", "name_key"])
    _create_partial_index("uq_product_default", "product", ["owner_id"], "is_default")


def _create_water() -> None:
    _create_owned(
        "water",
        sa.Column("name", sa.String(60)),
        sa.Column("name_key", sa.Text()),
        sa.Column("kind", CODE, nullable=False),
        sa.Column("hardness_mg_l_caco3", sa.Double()),
        sa.Column("ec_ms_cm", sa.Double()),
        sa.Column("alkalinity_mg_l_caco3", sa.Double()),
        sa.Column("ions", OBJECT),
        sa.Column("is_default", sa.Boolean(), nullable=False),
        sa.Column("present", sa.Boolean(), nullable=False),
    )
    op.create_index("ix_water_owner_id_name_key", "water", ["owner_id", "name_key"])
    _create_partial_index("uq_water_default", "water", ["owner_id"], "is_default")


def _create_plant() -> None:
    _create_owned(
        "plant",
        sa.Column("name", sa.String(60)),
        sa.Column("name_key", sa.Text()),
        sa.Column("genus", sa.String(60)),
        sa.Column("detail", sa.String(120)),
        sa.Column("count", sa.Integer(), nullable=False),
        sa.Column("medium", CODE),
        sa.Column("pot_cm", sa.Double()),
        sa.Column("water_ml", sa.Double()),
        sa.Column("place_id", ID),
        sa.Column("growth", CODE),
        sa.Column("growth_since", sa.Date()),
        sa.Column("water_id", ID),
        sa.Column("added_on", sa.Date(), nullable=False),
        sa.Column("lost_on", sa.Date()),
        sa.Column("present", sa.Boolean(), nullable=False),
        sa.Column("last_fed_on", sa.Date()),
        sa.Column("last_clear_on", sa.Date()),
        sa.Column("last_flush_on", sa.Date()),
        sa.Column("last_repot_on", sa.Date()),
        _points_to("plant", "place_id", "place"),
        _points_to("plant", "water_id", "water"),
    )
    op.create_index("ix_plant_owner_id_name_key", "plant", ["owner_id", "name_key"])


def _create_event() -> None:
    _create_owned(
        "event",
        sa.Column("batch", ID, nullable=False),
        sa.Column("kind", CODE, nullable=False),
        sa.Column("happened_on", sa.Date(), nullable=False),
        sa.Column("said_at", INSTANT, nullable=False),
        sa.Column("plant_id", ID),
        sa.Column("product_id", ID),
        sa.Column("water_id", ID),
        sa.Column("payload", OBJECT, nullable=False),
        sa.Column("reverses", ID),
        _points_to("event", "plant_id", "plant"),
        _points_to("event", "product_id", "product"),
        _points_to("event", "water_id", "water"),
        _points_to("event", "reverses", "event"),
    )
    op.create_index("ix_event_plant", "event", ["owner_id", "plant_id", "happened_on"])
    op.create_index("ix_event_day", "event", ["owner_id", "happened_on"])
    _create_partial_index(
        "uq_event_reverses", "event", ["owner_id", "reverses"], "reverses IS NOT NULL"
    )


def _refuse_changes_of_the_log() -> None:
    """Let the database refuse every UPDATE of the log, whoever sends it.

    A later migration that copies the table on SQLite has to create the trigger again.
    """
    if op.get_bind().dialect.name == "sqlite":
        op.execute(
            "CREATE TRIGGER event_is_append_only BEFORE UPDATE ON event "
            "BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END"
        )
        return
    op.execute(
        "CREATE FUNCTION event_is_append_only() RETURNS trigger LANGUAGE plpgsql AS "
        "$$ BEGIN RAISE EXCEPTION 'the log is append-only'; END $$"
    )
    op.execute(
        "CREATE TRIGGER event_is_append_only BEFORE UPDATE ON event "
        "FOR EACH STATEMENT EXECUTE FUNCTION event_is_append_only()"
    )


def _create_owned(table: str, *parts: sa.schema.SchemaItem) -> None:
    """Create a table whose rows are numbered per owner and, on SQLite, lie in that order."""
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


def _create_partial_index(name: str, table: str, columns: list[str], where: str) -> None:
    op.create_index(
        name,
        table,
        columns,
        unique=True,
        sqlite_where=sa.text(where),
        postgresql_where=sa.text(where),
    )
