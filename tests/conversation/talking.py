"""A person who talks to the bot in a test."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import UTC, date, datetime, timedelta

from bot.conversation.answer import Answer
from bot.conversation.talk import Conversation
from bot.conversation.turn import Incoming
from bot.records import Records
from bot.records.owners import Address

START = datetime(2026, 6, 7, 9, tzinfo=UTC)  # a Sunday in summer


@dataclass
class Grower:
    """Says lines one after the other, a minute apart."""

    records: Records
    name: str = "Mira"
    group: str | None = None
    now: datetime = START
    files: dict[str, str] = field(default_factory=dict)
    administers: bool = True  # of their group
    conversation: Conversation = field(init=False)  # kept: it remembers what it has seen

    def __post_init__(self) -> None:
        self.conversation = Conversation(self.records)

    async def may_set(self) -> bool:
        """As a channel tells it."""
        return self.administers

    async def opened(self, name: str) -> str | None:
        """A file, as a channel gives it."""
        return self.files.get(name)

    def incoming(self, line: str) -> Incoming:
        """A line as it comes in."""
        return Incoming(
            text=line,
            person=self.name,
            channel="test",
            said_at=self.now,
            today=self.now.date(),
            group=self.group,
            open_file=self.opened,
            may_set=self.may_set if self.group is not None else None,
        )

    async def says(self, *lines: str) -> Answer:
        """Say some lines; the answer is that to the last."""
        answer = None
        for line in lines:
            self.now += timedelta(minutes=1)
            answer = await self.conversation.answer(self.incoming(line))
        assert answer is not None
        return answer

    @property
    def address(self) -> Address:
        """Whose records theirs are."""
        return self.incoming("").address

    def later(self, **time: float) -> Grower:
        """Let time pass."""
        self.now += timedelta(**time)
        return self

    @property
    def today(self) -> date:
        """The day it is."""
        return self.now.date()
