"""A postbox that counts what goes through it, and says in the log what is worked on.

It counts where everything passes anyway, a batch at a time, so that nobody who does the work
has to think of it.
"""

from __future__ import annotations

from collections.abc import AsyncIterator, Callable, Sequence
from contextlib import asynccontextmanager
from typing import TYPE_CHECKING

from structlog.contextvars import bind_contextvars

from bot.conversation.postbox import (
    Arrived,
    Claimed,
    Letter,
    LostClaim,
    Postbox,
    Settled,
    Work,
    WritePing,
    now_ms,
)
from bot.conversation.talk import Conversation
from bot.operating.health import Pulse
from bot.records import Records

if TYPE_CHECKING:
    from bot.operating.metrics import Metrics

#: The loops come round every second; a claim lasts a
#: minute, so one that is silent for longer hangs [s] (ours).
LOOPS_WITHIN_S = 90.0


class WatchedPostbox(Postbox):
    """A postbox whose traffic is counted.

    Parameters
    ----------
    owner_kind : the kind of owner that a lane is of, for the log
    receives : whether this process works on updates, or only reminds and sends
    metrics, pulse : None where nobody looks
    """

    def __init__(
        self,
        records: Records,
        conversation: Conversation,
        source: str,
        worker: str,
        *,
        owner_kind: Callable[[str], str],
        receives: bool = True,
        metrics: Metrics | None = None,
        pulse: Pulse | None = None,
    ) -> None:
        super().__init__(records, conversation, source, worker)
        self._owner_kind = owner_kind
        self._metrics = metrics
        self._pulse = pulse
        if pulse is not None:
            for loop in ("sending", "reminding", *(["working"] if receives else [])):
                pulse.expect(loop, LOOPS_WITHIN_S)

    async def take_in(self, arrived: Sequence[Arrived]) -> None:
        """As the postbox's, counted."""
        await super().take_in(arrived)
        if self._metrics is not None:
            self._metrics.taken_in.inc(len(arrived))

    async def claim(self, most: int) -> list[Claimed]:
        """As the postbox's, counted."""
        self._beat("working")
        claimed = await super().claim(most)
        if claimed and self._metrics is not None:
            self._metrics.claims.labels("update").inc(len(claimed))
        return claimed

    @asynccontextmanager
    async def work(self, claimed: Claimed) -> AsyncIterator[Work]:
        """As the postbox's, counted; what is logged meanwhile says on which update."""
        # Not taken back at the end: it is one task's, whose last line may tell of a failure.
        bind_contextvars(update=claimed.id, owner=self._owner_kind(claimed.lane))
        try:
            async with super().work(claimed) as work:
                yield work
        except LostClaim:
            if self._metrics is not None:
                self._metrics.claims_lost.inc()
            raise
        self._beat("working")
        if self._metrics is not None:
            _count_done(self._metrics, claimed, work.letters)

    async def failed(self, claimed: Claimed, apology: Letter | None) -> bool:
        """As the postbox's, counted."""
        given_up = await super().failed(claimed, apology)
        self._beat("working")
        if self._metrics is not None:
            self._metrics.failures.inc()
            if given_up:
                self._metrics.given_up.inc()
        return given_up

    async def claim_letters(self, settled: Settled, most: int, rank: int = 0) -> list[Claimed]:
        """As the postbox's, counted: what was settled, once it is written down."""
        self._beat("sending")
        claimed = await super().claim_letters(settled, most, rank)
        if self._metrics is not None:
            _count_settled(self._metrics, settled)
            if claimed:
                self._metrics.claims.labels("letter").inc(len(claimed))
        return claimed

    async def next_due_ms(self) -> int | None:
        """As the postbox's; the loop that reminds asks it each time it comes round."""
        self._beat("reminding")
        return await super().next_due_ms()

    async def remind(self, write: WritePing, most: int) -> int:
        """As the postbox's, counted."""
        owners = await super().remind(write, most)
        if self._metrics is not None:
            self._metrics.claims.labels("due").inc(owners)
        return owners

    def _beat(self, loop: str) -> None:
        if self._pulse is not None:
            self._pulse.beat(loop)


def _count_done(metrics: Metrics, claimed: Claimed, letters: list[Letter]) -> None:
    metrics.done.inc()
    if letters:
        kinds = (str(n.answers["kind"]) for n in letters if n.answers and "kind" in n.answers)
        metrics.answers.labels(next(kinds, "other")).inc()
        metrics.latency.observe(max(0, now_ms() - claimed.received_ms) / 1000)


def _count_settled(metrics: Metrics, settled: Settled) -> None:
    """Why something failed follows from what became of it."""
    for letter, _made in settled.sent:
        metrics.sends.labels(letter.method).inc()
    failures = metrics.send_failures
    for letter, _free_ms, tries in settled.later:
        # Only the messenger's own "too fast" does not count as a try.
        failures.labels("flood" if tries == letter.tries else "network").inc()
    for _letter, _new_id in settled.moved:
        failures.labels("moved").inc()
    if settled.lost:
        failures.labels("unreachable").inc(len(settled.lost))
    # Each chat that is lost is so by a letter that is dead.
    if (given_up := len(settled.dead) - len(settled.lost)) > 0:
        failures.labels("given_up").inc(given_up)
