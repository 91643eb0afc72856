"""What came of a soak: figures, what is wrong, and both as a table."""

from __future__ import annotations

import json
from collections import Counter
from dataclasses import asdict, dataclass, field
from pathlib import Path
from typing import TYPE_CHECKING, Any

from sqlalchemy import make_url

from tests.soak.ledger import Update
from tests.soak.promises import excused, judged

if TYPE_CHECKING:
    from tests.soak.bots import LifeOf
    from tests.soak.checking import Held
    from tests.soak.run import Soak
    from tests.soak.weather import Event

#: What is due so shortly before an end may come or not [s of the wall].
_SETTLE_S = 6.0
#: Memory is flat within this share.
FLAT = 0.10
#: A claim of a killed process ends after this time, and a start takes its time too [s].
_AGAIN_WITHIN_S = 150.0


#: What the doctor may note of people who block the bot and come back.
_NOTED = (
    "chats have blocked or removed the bot",
    "pings could not be sent and were given up, mostly as their chats were blocked",
)


@dataclass
class Report:
    """Rows of the table, and what breaks a promise: nothing, where all is well."""

    rows: list[tuple[str, str]] = field(default_factory=list)
    wrong: list[str] = field(default_factory=list)
    details: dict[str, Any] = field(default_factory=dict)

    @property
    def sound(self) -> bool:
        """Whether every promise was kept."""
        return not self.wrong

    def table(self) -> str:
        """As it is shown."""
        width = max(len(name) for name, _ in self.rows)
        lines = [f"{name:<{width}}  {value}" for name, value in self.rows]
        lines += ["", "All promises were kept." if self.sound else f"Wrong: {len(self.wrong)}"]
        return "\n".join([*lines, *(f"- {w}" for w in self.wrong[:200])])

    def keep(self, path: Path) -> None:
        """Write everything to a file."""
        path.write_text(json.dumps(asdict(self), indent=1, ensure_ascii=False), encoding="utf-8")


def made_of(
    soak: Soak,
    found: Held,
    doctor: tuple[int, str],
    end_s: float,
    drained_s: float,
    long_lives: list[LifeOf],
    events: list[Event],
) -> Report:
    """The report of a soak that has ended; `end_s` on the bot's clock."""
    report = Report()
    asked, life, bots = soak.asked, soak.life, soak.bots
    hours = (end_s - soak.clock.base_s) / 3600
    report.rows += [
        ("wall, bot's clock", f"{asked.seconds / 60:.1f} min, {hours:.1f} h at {asked.speed:g}x"),
        ("database", make_url(asked.database).drivername + _size(asked.database)),
        ("people, groups", f"{len(soak._present)} of {asked.people}, {asked.groups}"),
    ]
    _answers(soak, report, drained_s)
    _reminders(soak, report, end_s, found)
    _faults(soak, report, events)
    _memory(report, long_lives)
    _logs(soak, report)
    _records(report, found, doctor)
    report.details["done"] = dict(life.counts.most_common())
    report.details["lives"] = [
        {"name": one.name, "begun_s": one.begun_s, "ended_s": one.ended_s, "how": one.how,
         "mb": one.weighed[:: max(1, len(one.weighed) // 60)]}
        for one in bots.lives
    ]  # fmt: skip
    return report


def _answers(soak: Soak, report: Report, drained_s: float) -> None:
    ledger, waits = soak.life.ledger, sorted(soak.life.waits_s)
    lost = ledger.lost()
    fine, doubled = ledger.doubled()
    given = len(ledger.updates)
    silent = sum(u.wants.name in ("NOTHING", "AT_MOST_ONE") for u in ledger.updates.values())
    report.rows += [
        ("updates", f"{given} ({given / soak.asked.seconds:.1f} a second), {silent} of them "
                    "that get no answer"),
        ("lost answers", str(len(lost))),
        ("doubled answers", f"{len(doubled)}; repeated after a kill -9: {len(fine)}"),
        ("answers to nothing", str(len(ledger.strays))),
        ("answers that do not fit", str(len(ledger.misfits))),
        ("refused as malformed", str(len(soak.messenger.refused))),
        ("from asked to answered", f"median {_at(waits, 0.5):.2f} s, p99 {_at(waits, 0.99):.1f} s,"
                                   f" longest {_at(waits, 1):.0f} s (faults and kills included)"),
        ("drained in", f"{drained_s:.0f} s"),
    ]  # fmt: skip
    report.wrong += [f"lost: {_told(u)}" for u in lost[:50]]
    report.wrong += [f"doubled: {r.what} after {r.again_s - r.first_s:.2f} s" for r in doubled[:50]]
    report.wrong += [f"answer to nothing: {s}" for s in ledger.strays[:50]]
    report.wrong += [f"does not fit: {m}" for m in ledger.misfits[:50]]
    report.wrong += [f"malformed: {r}" for r in soak.messenger.refused[:20]]
    too_fast = {k: n for k, n in soak.messenger.too_fast.items() if n}
    unsure = f"; {soak.messenger.unsure} while the judge itself was late"
    report.rows.append(("over the messenger's limits", f"{sum(too_fast.values())}{unsure}"))
    report.wrong += [f"too fast: {n} times, {kind}" for kind, n in too_fast.items()]


def _told(update: Update) -> str:
    return f"{update.what} (update {update.number}, wants {update.wants})"


def _reminders(soak: Soak, report: Report, end_s: float, found: Held) -> None:
    settle_s = _SETTLE_S * max(1.0, soak.asked.speed)
    life = soak.life
    verdict = judged(life.promises, life.pings, end_s, life.away, settle_s)
    fine, wrong = excused(verdict, soak.bots.kills, _AGAIN_WITHIN_S)
    late = sorted(verdict.late_s)
    report.rows += [
        ("reminders set, moments due", f"{len(life.promises)}, {verdict.due}"),
        ("came", str(verdict.kept)),
        ("lost reminders", str(len(verdict.lost))),
        ("doubled reminders", f"{len(wrong)}; repeated after a kill -9: {fine}"),
        ("late by, on the bot's clock", f"median {_at(late, 0.5):.0f} s, p99 {_at(late, 0.99):.0f}"
                                        f" s, most {_at(late, 1):.0f} s"),
        ("pings in the records", ", ".join(f"{s} {n}" for s, n in sorted(found.pings.items()))),
    ]  # fmt: skip
    report.wrong += [f"lost reminder: {one}" for one in verdict.lost[:50]]
    report.wrong += [f"doubled reminder: {one}" for one in wrong[:50]]
    report.wrong += [f"reminder: {one}" for one in verdict.unasked[:50]]
    if found.unsent:
        report.wrong.append(f"{found.unsent} pings stand as sent that the messenger never got")
    if found.pings.get("open"):
        report.wrong.append(f"{found.pings['open']} pings were never sent")


def _faults(soak: Soak, report: Report, events: list[Event]) -> None:
    ends = Counter((e.name, e.what) for e in events if e.name)
    struck = ", ".join(f"{kind} {n}" for kind, n in sorted(soak.messenger.hurts.items()) if n)
    times = Counter(e.what for e in events if not e.name)
    report.rows += [
        ("kill -9, restarts", ", ".join(f"{n} x {what} {name}"
                                        for (name, what), n in sorted(ends.items()))),
        ("bad weather", ", ".join(f"{n} x {what}" for what, n in sorted(times.items()))),
        ("requests that it struck", struck or "none"),
    ]  # fmt: skip


def _memory(report: Report, long_lives: list[LifeOf]) -> None:
    for life in long_lives:
        flat = life.flat()
        if flat is None:
            continue
        early, late, ratio = flat
        minutes = (life.weighed[-1][0] - life.weighed[0][0]) / 60
        row = f"{early:.1f} MB after warming up, {late:.1f} MB at the end ({ratio - 1:+.1%})"
        report.rows.append((f"memory: {life.name}, {minutes:.1f} min", row))
        if minutes >= 5 and ratio > 1 + FLAT:
            report.wrong.append(f"memory of {life.name} grew by {ratio - 1:.0%}")


def _logs(soak: Soak, report: Report) -> None:
    warned, wrong = soak.bots.logged()
    report.rows.append(("lines that warn", ", ".join(f"{n} x {k}" for k, n in warned.items())))
    report.wrong += [f"log: {line}" for line in wrong[:50]]


def _records(report: Report, found: Held, doctor: tuple[int, str]) -> None:
    code, said = doctor
    report.rows += [
        ("rows", ", ".join(f"{name} {count}" for name, count in found.rows.items())),
        ("sinkside doctor", f"exit {code}: {' / '.join(said.splitlines())}"),
        ("people compared with their records", f"{found.looked_at} with {found.entries} entries: "
                                               f"{len(found.wrong)} differ"),
    ]  # fmt: skip
    odd = [n for n in said.splitlines() if n.startswith("Note:") and not n.endswith(_NOTED)]
    if code != 0 or odd:
        report.wrong.append(f"sinkside doctor: {said}")
    if found.open_updates or found.open_letters:
        report.wrong.append(
            f"{found.open_updates} updates and {found.open_letters} requests are open"
        )
    report.wrong += [f"records of {one}" for one in found.wrong[:50]]


def _at(values: list[float], share: float) -> float:
    return values[min(len(values) - 1, int(share * len(values)))] if values else 0.0


def _size(url: str) -> str:
    path = make_url(url).database
    parsed = make_url(url)
    if not parsed.drivername.startswith("sqlite") or path is None:
        return ""
    sizes = [p.stat().st_size for p in Path(path).parent.glob(Path(path).name + "*")]
    return f", {sum(sizes) / 1e6:.1f} MB"
