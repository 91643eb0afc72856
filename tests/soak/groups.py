"""What members and administrators do in a group."""

from __future__ import annotations

import time
from collections.abc import Callable
from datetime import time as Clock
from typing import TYPE_CHECKING, Any

from bot.conversation.wording import languages, wording
from tests.channels.loopback import ME, Request
from tests.soak.ledger import Sent, Wants
from tests.soak.life import Group
from tests.soak.phrases import EN

if TYPE_CHECKING:
    from tests.soak.people import Person

#: A person is answered in a group five times at once, then every ten seconds.
_PACE_S = 10.5
_NAME = f"@{ME['username']}"
_TASKS = 4
#: What an administrator is told where the messenger cannot say just now that they are one.
_REFUSALS = frozenset(
    wording(c).say(f"refuse-administrators-{n}") for c in languages() for n in ("quiet", "only")
)


def act_in_group(person: Person) -> None:
    """One thing that somebody does in their group."""
    group = person.group
    assert group is not None
    now = time.monotonic()
    if group.locked or now < person.group_ready_s:
        return person.ask()
    topic = person.random.choice(group.topics)
    acts: list[tuple[Callable[[Person, Group, int | None], None], float]] = [
        (_ask, 10), (_talk, 6), (_other_bot, 1), (_sticker, 1), (_flood, 0.2), (_call_late, 1.5),
        (_try_to_set, 1),
    ]  # fmt: skip
    if person.group_dose is not None:
        acts += [(_edit, 4), (_go_on, 4)]
    if person.body.id in group.admins:
        acts += [(_set, 5), (_be_quiet, 1)]
        if group.reminders < _TASKS:
            acts += [(_remind, 6)]
        if group.pings:
            acts += [(_answer_ping, 4)]
    elif group.pings:
        acts += [(_press_ping, 1)]
    if group.quiet:
        acts = [(_ask_quiet, 5), (_talk, 3)]
        if person.body.id in group.admins:
            acts += [(_speak_up, 30)]
    chosen, weights = zip(*acts, strict=True)
    person.random.choices(chosen, weights)[0](person, group, topic)
    person.group_ready_s = now + _PACE_S
    return None


def _ask(person: Person, group: Group, topic: int | None) -> None:
    litres = person._litres()
    text = person.words.dose.format(litres=litres)
    said = person.random.choice((f"/dose {text}", f"{_NAME} {text}", f"/dose{_NAME} {text}"))
    message: dict[str, Any] = {}

    def then(sent: Sent) -> None:
        person.group_dose = (message, sent, topic)

    message |= person.life.say(
        person.body, said, "group: ask", fits=f"{litres} l", then=then, group=group, topic=topic
    )


def _ask_quiet(person: Person, group: Group, topic: int | None) -> None:
    """Where the bot is quiet a mention gets nothing, a command its answer."""
    litres = person._litres()
    text = person.words.dose.format(litres=litres)
    if person.random.random() < 0.5:
        person.life.say(
            person.body, f"{_NAME} {text}", "group: mention in quiet", wants=Wants.NOTHING,
            group=group, topic=topic,
        )  # fmt: skip
    else:
        person.life.say(
            person.body, f"/dose {text}", "group: ask in quiet", fits=f"{litres} l", group=group,
            topic=topic,
        )  # fmt: skip


def _talk(person: Person, group: Group, topic: int | None) -> None:
    text = person.random.choice((
        "half my bench is in spike", "5 l of 20-20-20 is what I use", "good morning all",
        "@somebody you should see this", "3 litres, quarter strength, always",
    ))  # fmt: skip
    person.life.say(person.body, text, "group: talk", wants=Wants.NOTHING, group=group, topic=topic)


def _other_bot(person: Person, group: Group, topic: int | None) -> None:
    text = person.random.choice(("/dose@other_bot 5 l", "/weather", "@other_bot 5 l"))
    person.life.say(
        person.body, text, "group: another bot", wants=Wants.NOTHING, group=group, topic=topic
    )


def _sticker(person: Person, group: Group, topic: int | None) -> None:
    photo = [{"file_id": "p", "file_unique_id": "p", "width": 9, "height": 9}]
    person.life.say(
        person.body, None, "group: a picture", wants=Wants.NOTHING, group=group, topic=topic,
        photo=photo,
    )  # fmt: skip


def _flood(person: Person, group: Group, topic: int | None) -> None:
    """More than is answered: each at most once."""
    for _ in range(8):
        text = person.words.dose.format(litres=person._litres())
        person.life.say(
            person.body, f"/dose {text}", "group: flood", wants=Wants.AT_MOST_ONE, group=group,
            topic=topic,
        )  # fmt: skip
    person.body.ready_s = time.monotonic() + 100.0


def _edit(person: Person, group: Group, topic: int | None) -> None:
    assert person.group_dose is not None
    message, sent, topic = person.group_dose
    person.group_dose = None
    litres = person._litres()
    text = f"/dose {person.words.dose.format(litres=litres)}"
    if text == message["text"] or person.is_old(message):
        return _talk(person, group, topic)
    return person.life.edit(
        person.body, message, text, "group: edit", answer=sent.made, fits=f"{litres} l",
        group=group, topic=topic,
    )  # fmt: skip


def _call_late(person: Person, group: Group, topic: int | None) -> None:
    """Say something to nobody, and make it a question to the bot."""
    litres = person._litres()
    text = person.words.dose.format(litres=litres)
    before = person.life.say(
        person.body, text, "group: talk", wants=Wants.NOTHING, group=group, topic=topic
    )
    person.life.edit(
        person.body, before, f"{_NAME} {text}", "group: call late", wants=Wants.ANSWER,
        fits=f"{litres} l", group=group, topic=topic,
    )  # fmt: skip


def _go_on(person: Person, group: Group, topic: int | None) -> None:
    """Reply to the bot's answer."""
    assert person.group_dose is not None
    _, sent, topic = person.group_dose
    person.group_dose = None
    shown = person.life.messenger.message(Request(sent.method, sent.values, 0.0, sent.made))
    litres = person._litres()
    person.life.say(
        person.body, person.words.dose.format(litres=litres), "group: reply", fits=f"{litres} l",
        group=group, topic=topic, reply_to_message=shown,
    )  # fmt: skip


def _set(person: Person, group: Group, topic: int | None) -> None:
    text = f"/dose our tap is {person.random.randint(3, 20)} dH"
    person.life.say(person.body, text, "group: set the tap", group=group, topic=topic)


def _try_to_set(person: Person, group: Group, topic: int | None) -> None:
    if person.body.id in group.admins:
        return _set(person, group, topic)
    person.life.say(
        person.body, "/dose our tap is 3 dH", "group: set as a member", group=group, topic=topic
    )
    return None


def _be_quiet(person: Person, group: Group, topic: int | None) -> None:
    _switch(person, group, topic, "be quiet", True)


def _speak_up(person: Person, group: Group, topic: int | None) -> None:
    _switch(person, group, topic, "speak up", False)


def _switch(person: Person, group: Group, topic: int | None, text: str, quiet: bool) -> None:
    """Only where nothing is on its way: which of two comes first nobody has promised."""
    if group.open:
        return _talk(person, group, topic)
    group.locked = True

    def then(sent: Sent) -> None:
        group.locked = False
        if sent.text not in _REFUSALS:
            group.quiet = quiet

    person.life.say(
        person.body, f"/dose {text}", f"group: {text}", then=then, group=group, topic=topic
    )
    return None


def _remind(person: Person, group: Group, topic: int | None) -> None:
    if not group.has_home:

        def moved_in(sent: Sent) -> None:
            group.has_home = "Porto" in sent.text

        person.life.say(
            person.body, "/dose we live in Porto", "group: home", then=moved_in, group=group,
            topic=topic,
        )  # fmt: skip
        return
    task = EN.tasks[group.reminders][0]
    group.reminders += 1
    at = Clock(person.random.randint(0, 23), person.random.randint(0, 59))
    said_s = person.life.messenger.clock.now_s()

    def then(sent: Sent) -> None:
        if task in sent.text:
            person.life.promise(group.id, task, said_s, zone="Europe/Lisbon", daily=at)

    text = f"/dose remind us every day at {at.hour}:{at.minute:02} to {task}"
    person.life.say(person.body, text, "group: remind us", then=then, group=group, topic=topic)


def _answer_ping(person: Person, group: Group, topic: int | None) -> None:
    shown = group.pings.pop()
    group.pings.clear()
    person.life.tap(
        person.body, shown, _data(shown, person.random.choice((0, 2))), "group: answer a reminder",
        group=group,
    )  # fmt: skip


def _press_ping(person: Person, group: Group, topic: int | None) -> None:
    """Who is no administrator gets a note."""
    person.life.tap(
        person.body, group.pings[-1], _data(group.pings[-1], 0), "group: not theirs to press",
        wants=Wants.NOTE, group=group,
    )  # fmt: skip


def _data(sent: Sent, number: int) -> str:
    rows = sent.values["reply_markup"]["inline_keyboard"]
    return str([b["callback_data"] for row in rows for b in row][number])
