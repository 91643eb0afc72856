"""The tables.

Every row but an owner's own has the key (owner_id, id), numbered per owner: a row cannot be
reached without its owner, a plant cannot point to somebody else's water (the foreign keys
carry the owner too), an export keeps its numbers, and on SQLite one owner's rows lie together.

Objects that come back from a query are for reading. Changes go through the functions beside
this module, which write the log and the row in one transaction.
"""

from __future__ import annotations

from datetime import date, datetime
from typing import Any

from sqlalchemy import (
    JSON,
    BigInteger,
    Date,
    Double,
    ForeignKey,
    ForeignKeyConstraint,
    Index,
    Integer,
    MetaData,
    String,
    Text,
    UniqueConstraint,
)
from sqlalchemy import text as sql
from sqlalchemy.orm import DeclarativeBase, Mapped, mapped_column, validates

from .columns import (
    ID,
    Rule,
    UtcDateTime,
    amount,
    choice,
    code,
    document,
    flag,
    name_key,
    numbers,
    text,
    whole,
    zone,
)
from .kinds import (
    EventKind,
    Hemisphere,
    LabelUnit,
    OwnerKind,
    PingState,
    ReminderKind,
    ReminderState,
    Units,
)
from .names import fold

NAMING = {
    "ix": "ix_%(table_name)s_%(column_0_N_name)s",
    "uq": "uq_%(table_name)s_%(column_0_N_name)s",
    "fk": "fk_%(table_name)s_%(column_0_N_name)s",
    "pk": "pk_%(table_name)s",
}

_OURS: dict[str, Any] = {"rule": Rule(derived=True)}
"""Columns that belong to this database and not to its owner's records: no export holds them."""

_WHERE_OPEN: dict[str, Any] = {
    "sqlite_where": sql("state = 'open'"),
    "postgresql_where": sql("state = 'open'"),
}

CLUSTERED = {"sqlite_with_rowid": False}
"""On SQLite the rows are kept in the order of their key: one owner's rows lie together."""


class Base(DeclarativeBase):
    """Base of every table."""

    metadata = MetaData(naming_convention=NAMING)


class Owned(Base):
    """A row of one owner, numbered per owner from 1."""

    __abstract__ = True

    owner_id: Mapped[int] = mapped_column(ID, ForeignKey("owner.id"), primary_key=True)
    id: Mapped[int] = mapped_column(ID, primary_key=True, autoincrement=False)


class Named:
    """A row with a name; `name_key` follows the name."""

    name: Mapped[str | None] = text(60)
    name_key: Mapped[str | None] = name_key()

    @validates("name")
    def _follow(self, _attribute: str, name: str | None) -> str | None:
        self.name_key = None if name is None else fold(name)
        return name


class Owner(Base):
    """A person or a group, and how they like to be spoken to and what they measure with."""

    __tablename__ = "owner"

    id: Mapped[int] = mapped_column(ID, primary_key=True)
    kind: Mapped[OwnerKind] = choice(OwnerKind)
    channel: Mapped[str] = code()
    external_id: Mapped[str] = text(128)
    language: Mapped[str | None] = text(16)
    heard: Mapped[str | None] = text(16)  # the language they wrote in last
    zone: Mapped[str | None] = zone()
    place_name: Mapped[str | None] = text(120)
    hemisphere: Mapped[Hemisphere | None] = choice(Hemisphere)
    units: Mapped[Units | None] = choice(Units)
    scale_step_g: Mapped[float | None] = amount(1_000.0, least=1e-6)
    syringe_step_ml: Mapped[float | None] = amount(1_000.0, least=1e-6)
    spoon: Mapped[bool | None]
    can_l: Mapped[float | None] = amount(10_000.0, least=0.01)
    quiet: Mapped[bool | None]
    quiet_from_min: Mapped[int | None] = whole(1439, 0)
    quiet_until_min: Mapped[int | None] = whole(1439, 0)
    created_at: Mapped[datetime] = mapped_column(UtcDateTime)
    #: How often an import replaced what they have: the log does not tell, it is the file's then.
    replaced: Mapped[int | None] = mapped_column(Integer, info=_OURS)

    # An id is never given twice, not even after its owner was forgotten.
    __table_args__ = (
        UniqueConstraint("channel", "external_id", "kind"),
        {"sqlite_autoincrement": True},
    )


class Place(Owned):
    """Where plants stand."""

    __tablename__ = "place"

    name: Mapped[str] = text(60)
    name_key: Mapped[str] = name_key()

    __table_args__ = (UniqueConstraint("owner_id", "name_key"), CLUSTERED)

    @validates("name")
    def _follow(self, _attribute: str, name: str) -> str:
        self.name_key = fold(name)
        return name


class Water(Owned, Named):
    """A water the owner gives: tap, rain and so on, with what is known of it."""

    __tablename__ = "water"

    kind: Mapped[str] = code()
    hardness_mg_l_caco3: Mapped[float | None] = amount(10_000.0)
    ec_ms_cm: Mapped[float | None] = amount(100.0)
    alkalinity_mg_l_caco3: Mapped[float | None] = amount(10_000.0)
    ions: Mapped[dict[str, float] | None] = numbers(100_000.0)
    is_default: Mapped[bool] = flag(False)
    present: Mapped[bool] = flag(True)

    __table_args__ = (
        Index(None, "owner_id", "name_key"),
        # At most one default water an owner, held by the database.
        Index(
            "uq_water_default",
            "owner_id",
            unique=True,
            sqlite_where=sql("is_default"),
            postgresql_where=sql("is_default"),
        ),
        CLUSTERED,
    )


class Product(Owned, Named):
    """A feed on the owner's shelf, as printed on its label (percentages by mass)."""

    __tablename__ = "product"

    form: Mapped[str | None] = code()
    n: Mapped[float | None] = amount(100.0)
    p2o5: Mapped[float | None] = amount(100.0)
    k2o: Mapped[float | None] = amount(100.0)
    extras: Mapped[dict[str, float] | None] = numbers(100.0)
    trace_elements: Mapped[bool | None]
    n_nitrate: Mapped[float | None] = amount(100.0)
    n_ammonium: Mapped[float | None] = amount(100.0)
    n_urea: Mapped[float | None] = amount(100.0)
    label_per_litre: Mapped[float | None] = amount(1_000.0, least=0.001)
    label_unit: Mapped[LabelUnit | None] = choice(LabelUnit)
    density_kg_l: Mapped[float | None] = amount(3.0, least=0.1)
    price: Mapped[float | None] = amount(1_000_000.0)
    currency: Mapped[str | None] = text(3)
    pack_size: Mapped[float | None] = amount(1_000_000.0)
    pack_unit: Mapped[str | None] = code()
    is_default: Mapped[bool] = flag(False)
    added_on: Mapped[date]
    removed_on: Mapped[date | None]
    present: Mapped[bool] = flag(True)

    __table_args__ = (
        Index(None, "owner_id", "name_key"),
        # At most one default product an owner, held by the database.
        Index(
            "uq_product_default",
            "owner_id",
            unique=True,
            sqlite_where=sql("is_default"),
            postgresql_where=sql("is_default"),
        ),
        CLUSTERED,
    )


class Plant(Owned, Named):
    """A plant, or several alike that are treated as one.

    `present` is false only for a plant whose addition was undone. The `last_` dates follow
    the log and are kept in the transaction that writes the log.
    """

    __tablename__ = "plant"

    genus: Mapped[str | None] = text(60)
    detail: Mapped[str | None] = text(120)
    count: Mapped[int] = whole(10_000)
    medium: Mapped[str | None] = code()
    pot_cm: Mapped[float | None] = amount(200.0)
    water_ml: Mapped[float | None] = amount(100_000.0, least=0.01)
    place_id: Mapped[int | None] = mapped_column(ID)
    growth: Mapped[str | None] = code()
    growth_since: Mapped[date | None]
    water_id: Mapped[int | None] = mapped_column(ID)
    added_on: Mapped[date]
    lost_on: Mapped[date | None]
    present: Mapped[bool] = flag(True)
    last_fed_on: Mapped[date | None]
    last_clear_on: Mapped[date | None]
    last_flush_on: Mapped[date | None]
    last_repot_on: Mapped[date | None]

    __table_args__ = (
        ForeignKeyConstraint(["owner_id", "place_id"], ["place.owner_id", "place.id"]),
        ForeignKeyConstraint(["owner_id", "water_id"], ["water.owner_id", "water.id"]),
        Index(None, "owner_id", "name_key"),
        CLUSTERED,
    )


class Reminder(Owned):
    """What an owner is reminded of, and when.

    `start` and `due_local` are clock times on the wall in `zone` (ISO 8601, to the second), the
    rule an RRULE without DTSTART (RFC 5545; None: once). `due_ms` is when the next ping is due
    (milliseconds since 1970), `due_local` its occurrence as the rule has it: they differ where
    the person moved it (`moved`) or it waits for the morning. A due moment without an occurrence
    is to be reckoned anew, without a ping.

    The log has what the person changed; that a ping was promised and the next one is due is no
    entry of it.
    """

    __tablename__ = "reminder"

    #: The owner's, so that what is due in a channel is found without looking at the others.
    channel: Mapped[str] = mapped_column(String(32), info=_OURS)
    #: Which member of a group set it, None where the owner did.
    person: Mapped[str | None] = mapped_column(String(128), info=_OURS)
    #: Of the group's chat, where it was set and is heard; None: the general one.
    topic: Mapped[int | None] = mapped_column(BigInteger, info=_OURS)
    kind: Mapped[ReminderKind] = choice(ReminderKind)
    target: Mapped[dict[str, Any]] = document()
    rule: Mapped[str | None] = text(200)
    start: Mapped[str] = text(19)
    zone: Mapped[str] = zone()
    state: Mapped[ReminderState] = choice(ReminderState)
    due_ms: Mapped[int | None] = mapped_column(BigInteger)
    due_local: Mapped[str | None] = text(19)
    moved: Mapped[bool] = flag(False)
    offered: Mapped[bool] = flag(False)
    created: Mapped[datetime] = mapped_column(UtcDateTime)
    text: Mapped[str | None] = text(200)  # last: the name hides the function from here on

    __table_args__ = (
        # All that an idle look at the clock walks: it is as short as what is due.
        Index(
            "ix_reminder_due",
            "channel",
            "due_ms",
            sqlite_where=sql("state = 'active'"),
            postgresql_where=sql("state = 'active'"),
        ),
        Index(
            "ix_reminder_person",
            "person",
            sqlite_where=sql("person IS NOT NULL"),
            postgresql_where=sql("person IS NOT NULL"),
        ),
        CLUSTERED,
    )


class Ping(Owned):
    """An occurrence of a reminder for which a message was promised; once each, by its key.

    Not part of an export: it is about messages of a channel.
    """

    __tablename__ = "ping"

    reminder_id: Mapped[int] = mapped_column(ID)
    due_ms: Mapped[int] = mapped_column(BigInteger)
    state: Mapped[PingState] = choice(PingState)
    message_id: Mapped[int | None] = mapped_column(BigInteger)
    settled_ms: Mapped[int | None] = mapped_column(BigInteger)

    __table_args__ = (
        ForeignKeyConstraint(["owner_id", "reminder_id"], ["reminder.owner_id", "reminder.id"]),
        UniqueConstraint("owner_id", "reminder_id", "due_ms"),
        Index("ix_ping_age", "due_ms"),
        CLUSTERED,
    )


class Event(Owned):
    """An entry of the log. Never changed (a trigger refuses it), deleted only by forgetting.

    `batch` is the id of the first entry of one utterance. `payload` has `details` (what the
    caller said of it) and, where the entry changed its subject, `before` and `after`.
    """

    __tablename__ = "event"

    batch: Mapped[int] = mapped_column(ID)
    kind: Mapped[EventKind] = choice(EventKind)
    on: Mapped[date] = mapped_column("happened_on", Date)
    said_at: Mapped[datetime] = mapped_column(UtcDateTime)
    plant_id: Mapped[int | None] = mapped_column(ID)
    product_id: Mapped[int | None] = mapped_column(ID)
    water_id: Mapped[int | None] = mapped_column(ID)
    reminder_id: Mapped[int | None] = mapped_column(ID)
    payload: Mapped[dict[str, Any]] = document()
    reverses: Mapped[int | None] = mapped_column(ID)

    __table_args__ = (
        ForeignKeyConstraint(["owner_id", "plant_id"], ["plant.owner_id", "plant.id"]),
        ForeignKeyConstraint(["owner_id", "product_id"], ["product.owner_id", "product.id"]),
        ForeignKeyConstraint(["owner_id", "water_id"], ["water.owner_id", "water.id"]),
        ForeignKeyConstraint(["owner_id", "reminder_id"], ["reminder.owner_id", "reminder.id"]),
        ForeignKeyConstraint(["owner_id", "reverses"], ["event.owner_id", "event.id"]),
        Index("ix_event_plant", "owner_id", "plant_id", "happened_on"),
        Index("ix_event_day", "owner_id", "happened_on"),
        # No entry is reversed twice, held by the database.
        Index(
            "uq_event_reverses",
            "owner_id",
            "reverses",
            unique=True,
            sqlite_where=sql("reverses IS NOT NULL"),
            postgresql_where=sql("reverses IS NOT NULL"),
        ),
        CLUSTERED,
    )

    @property
    def details(self) -> dict[str, Any]:
        """What the caller said of it."""
        return self._part("details")

    @property
    def before(self) -> dict[str, Any]:
        """The changed fields of the subject, as they were."""
        return self._part("before")

    @property
    def after(self) -> dict[str, Any]:
        """The changed fields of the subject, as they became."""
        return self._part("after")

    def _part(self, key: str) -> dict[str, Any]:
        part = self.payload.get(key)
        return part if isinstance(part, dict) else {}


class Memory(Base):
    """What one person last asked for in a chat of the owner, and what we asked back."""

    __tablename__ = "memory"

    owner_id: Mapped[int] = mapped_column(ID, ForeignKey("owner.id"), primary_key=True)
    person: Mapped[str] = mapped_column(String(128), primary_key=True)
    request: Mapped[dict[str, Any] | None] = document()
    said_at: Mapped[datetime | None] = mapped_column(UtcDateTime)
    question: Mapped[dict[str, Any] | None] = document()
    asked_at: Mapped[datetime | None] = mapped_column(UtcDateTime)

    __table_args__ = (Index(None, "person"), CLUSTERED)


# --- the messenger's post: nothing of it belongs to an owner, all of it is short-lived ---------


class Inbox(Base):
    """An update of a messenger: taken in once, done once; `body` goes when it is done.

    `lane` is what must be answered in order: a person, or a person in a group. Times are
    milliseconds since 1970, so that an index can be asked for them.
    """

    __tablename__ = "inbox"

    id: Mapped[int] = mapped_column(ID, primary_key=True)
    source: Mapped[str] = mapped_column(String(64))
    update_id: Mapped[int] = mapped_column(BigInteger)
    lane: Mapped[str] = mapped_column(String(128))
    body: Mapped[dict[str, Any] | None] = mapped_column(JSON(none_as_null=True))
    received_ms: Mapped[int] = mapped_column(BigInteger)
    claimed_by: Mapped[str | None] = mapped_column(String(64))
    free_ms: Mapped[int] = mapped_column(BigInteger)  # nobody else takes it before
    tries: Mapped[int]
    state: Mapped[str] = mapped_column(String(8))  # open, done, dead

    __table_args__ = (
        UniqueConstraint("source", "update_id"),
        Index("ix_inbox_open", "source", "lane", "id", **_WHERE_OPEN),
        Index("ix_inbox_age", "source", "received_ms"),
        {"sqlite_autoincrement": True},
    )


class Outbox(Base):
    """A request to a messenger that was promised with what it tells of; gone when it was sent."""

    __tablename__ = "outbox"

    id: Mapped[int] = mapped_column(ID, primary_key=True)
    source: Mapped[str] = mapped_column(String(64))
    lane: Mapped[str] = mapped_column(String(128))
    method: Mapped[str] = mapped_column(String(40))
    body: Mapped[dict[str, Any]] = mapped_column(JSON)
    answers: Mapped[dict[str, Any] | None] = mapped_column(JSON(none_as_null=True))
    created_ms: Mapped[int] = mapped_column(BigInteger)
    claimed_by: Mapped[str | None] = mapped_column(String(64))
    free_ms: Mapped[int] = mapped_column(BigInteger)
    tries: Mapped[int]
    rank: Mapped[int] = mapped_column(default=0, server_default="0")  # the lower goes first
    state: Mapped[str] = mapped_column(String(8))  # open, dead

    __table_args__ = (
        Index("ix_outbox_open", "source", "lane", "id", **_WHERE_OPEN),
        {"sqlite_autoincrement": True},
    )


class Pace(Base):
    """How fast a messenger may be written to: one row a chat, and one, `*`, over all of them.

    `free_ms` is when the next request may go out, `full_ms` when all of a burst may again
    (milliseconds since 1970).
    """

    __tablename__ = "pace"

    source: Mapped[str] = mapped_column(String(64), primary_key=True)
    lane: Mapped[str] = mapped_column(String(128), primary_key=True)
    free_ms: Mapped[float] = mapped_column(Double)
    full_ms: Mapped[float] = mapped_column(Double)

    __table_args__ = (Index("ix_pace_age", "source", "free_ms"),)


class Chat(Base):
    """A chat of a messenger that cannot be reached for now."""

    __tablename__ = "chat"

    source: Mapped[str] = mapped_column(String(64), primary_key=True)
    chat_id: Mapped[int] = mapped_column(BigInteger, primary_key=True, autoincrement=False)
    unreachable_ms: Mapped[int] = mapped_column(BigInteger)


class Posted(Base):
    """A message that was answered, whose it was and with which one.

    So that an edit edits the answer, and a reply to it goes on from there.
    """

    __tablename__ = "posted"

    source: Mapped[str] = mapped_column(String(64), primary_key=True)
    chat_id: Mapped[int] = mapped_column(BigInteger, primary_key=True, autoincrement=False)
    message_id: Mapped[int] = mapped_column(BigInteger, primary_key=True, autoincrement=False)
    answer_id: Mapped[int] = mapped_column(BigInteger)
    person: Mapped[str] = mapped_column(String(128))
    kind: Mapped[str] = mapped_column(String(32))
    posted_ms: Mapped[int] = mapped_column(BigInteger)

    __table_args__ = (
        Index("ix_posted_answer", "source", "chat_id", "answer_id"),
        Index("ix_posted_person", "person"),
        Index("ix_posted_age", "source", "posted_ms"),
    )


class Tap(Base):
    """A button that was pressed: a second press of it does nothing."""

    __tablename__ = "tap"

    source: Mapped[str] = mapped_column(String(64), primary_key=True)
    chat_id: Mapped[int] = mapped_column(BigInteger, primary_key=True, autoincrement=False)
    message_id: Mapped[int] = mapped_column(BigInteger, primary_key=True, autoincrement=False)
    data: Mapped[str] = mapped_column(String(64), primary_key=True)
    tapped_ms: Mapped[int] = mapped_column(BigInteger)

    __table_args__ = (Index("ix_tap_age", "source", "tapped_ms"),)


class Card(Base):
    """A text for a link or a further page, and the person or group it is of."""

    __tablename__ = "card"

    id: Mapped[str] = mapped_column(String(24), primary_key=True)
    channel: Mapped[str] = mapped_column(String(32))
    external_id: Mapped[str] = mapped_column(String(128))
    text: Mapped[str] = mapped_column(Text)
    kept_ms: Mapped[int] = mapped_column(BigInteger)

    __table_args__ = (
        Index("ix_card_of", "channel", "external_id"),
        Index("ix_card_age", "kept_ms"),
    )
