"""A conversation that remembers: one message in, one answer out, records in between."""

from __future__ import annotations

import logging
from collections import OrderedDict
from collections.abc import Awaitable, Callable
from dataclasses import replace
from datetime import time, timedelta
from typing import Any

from sqlalchemy.ext.asyncio import AsyncSession

from bot.conversation import answer as out
from bot.conversation import reminding
from bot.conversation.answering import answer_to, respond, understood
from bot.conversation.collection import (
    Collection,
    Seen,
    first_seen,
    names_in,
    pick,
    refreshed,
)
from bot.conversation.listening import listen
from bot.conversation.replies import SHOWN_CAUTIONS
from bot.conversation.turn import Incoming, Turn, UnfitDay
from bot.conversation.turns import (
    amending,
    calendar,
    diary,
    guide,
    harm,
    having,
    home,
    language,
    meeting,
    plants,
    shelf,
    take_along,
    who,
)
from bot.conversation.turns.day import day
from bot.conversation.turns.feeding import (
    bottles,
    compare,
    doses,
    figuring,
    judging,
    meter,
    reaching,
    waters,
)
from bot.conversation.turns.pots import pictures, salts
from bot.conversation.turns.reminders import after as reminders_after
from bot.conversation.turns.reminders import answers as reminders_answers
from bot.conversation.turns.reminders import asked as reminders_asked
from bot.conversation.turns.reminders import change as reminders_change
from bot.conversation.turns.reminders import just as reminders_just
from bot.conversation.turns.reminders import offer as reminders_offer
from bot.conversation.turns.reminders import pause as reminders_pause
from bot.conversation.turns.reminders import pings as reminders_pings
from bot.conversation.turns.reminders import setting as reminders
from bot.conversation.turns.rescue import asking as rescue
from bot.conversation.wording import METRIC, tongues, wording
from bot.records import Records, memory, owners, pings
from bot.records.errors import (
    BadValue,
    CannotUndo,
    ChangedSince,
    DatabaseProblem,
    NameTaken,
    NothingToUndo,
    Refused,
    TooMany,
)
from bot.records.kinds import OwnerKind
from bot.records.models import Owner
from bot.reminders.quiet import Quiet
from grammar import Order, Reading

_log = logging.getLogger("sinkside")

Handler = Callable[[Turn], Awaitable[out.Answer]]

#: Which module answers which verb of an order.
HANDLERS: dict[str, Handler] = {
    "add": plants.add,
    "add_offer": doses.listed,
    "add_names": having.names_unclear,
    "had": having.had,
    "rename": plants.rename,
    "move": plants.move,
    "repot": plants.repot,
    "growth": plants.growth,
    "correct": plants.correct,
    "lose": plants.lose,
    "lose_apart": plants.lose_apart,
    "plants": plants.listing,
    "who": who.who,
    "product": doses.feed_told,
    "name": shelf.name_it,
    "product_change": shelf.change,
    "which_feed": shelf.which_feed,
    "unshelved": shelf.unshelved,
    "ceased": shelf.ceased,
    "remains": shelf.remains,
    "product_remove": shelf.remove,
    "product_default": shelf.use,
    "shelf": shelf.listing,
    "lacking": shelf.lacks,
    "choose": shelf.choice,
    "water": waters.told,
    "water_for": home.water_for,
    "kit": home.kit,
    "home": home.home,
    "settings": language.settings,
    "language": language.tongue,
    "quiet": home.quiet,
    "loud": home.quiet,
    "fed": diary.given,
    "clear": diary.given,
    "flush": diary.given,
    "two_things": diary.two_things,
    "all_or_some": diary.all_or_some,
    "not_given": diary.not_given,
    "not_changed": diary.not_changed,
    "not_told": diary.not_told,
    "exception": plants.exception,
    "reading": diary.reading,
    "undo": diary.undo,
    "blame": diary.blamed,
    "history": diary.history,
    "meter": meter.meter,
    "water_suits": waters.suits,
    "water_mix": waters.mix,
    "water_parts": waters.by_parts,
    "supplement": waters.supplement,
    "salts": salts.salts,
    "picture_year": pictures.year,
    "picture_salts": pictures.salts,
    "picture_card": pictures.card,
    "stock": bottles.stock,
    "together": bottles.together,
    "judge": judging.judge,
    "overdone": judging.overdone,
    "last": judging.of_the_last,
    "reach": reaching.reach,
    "convert": figuring.convert,
    "pour": figuring.pour,
    "brings": figuring.brings,
    "most_ec": figuring.most_ec,
    "nitrogen_limit": figuring.nitrogen_limit,
    "remedy": judging.remedy,
    "pets": harm.urgent,
    "argue": judging.argued,
    "pests": judging.pests,
    "food": harm.food,
    "hurt": harm.urgent,
    "spill": harm.urgent,
    "leftover": harm.leftover,
    "alarm": harm.alarm,
    "blend": bottles.mix,
    "rescue": rescue.rescue,
    "compare": compare.compare,
    "compare_labels": compare.not_on_shelf,
    "plan": day.plan,
    "done": reminders_answers.done,
    "remind": reminders.remind,
    "remind_wish": reminders.wished,
    "reminders": reminders.listing,
    **reminders_change.HANDLERS,
    "export": take_along.export,
    "calendar": calendar.calendar,
    "import": take_along.take_in,
    "forget": take_along.forget,
    "dose": doses.dose,
    "no_such": doses.no_such,
    "follow_up": doses.follow_up,
    "why": doses.why,
    "help": guide.helping,
    "explain": guide.explain,
    "greeting": guide.greeted,
    "thanks": guide.thanked,
    "tell": guide.tell,
    "kept": guide.kept,
    "removing": guide.removing,
    "quiet_night": guide.quiet_night,
    "more": doses.more,
}
#: What holds for everybody in a group: its administrators change it, and what says so.
FOR_ADMINISTRATORS = {
    **dict.fromkeys(("water", "home", "kit", "language"), "refuse-administrators-only"),
    **dict.fromkeys(("quiet", "loud"), "refuse-administrators-quiet"),
    **dict.fromkeys(("lose", "product_remove"), "refuse-administrators-remove"),
    **dict.fromkeys(
        ("import", "export", "calendar", "forget"), "refuse-administrators-all"
    ),
    **dict.fromkeys(("remind", *reminders_change.HANDLERS), "refuse-administrators-reminders"),
}  # fmt: skip
#: What somebody does with their own records in private only: in a group all read along.
IN_PRIVATE_ONLY = frozenset({
    "home", "import", "export", "calendar", "forget", "remind", "language",
    *reminders_change.HANDLERS,
})  # fmt: skip
#: Answers to an aside: a question of the first meeting waits on.
ASIDES = frozenset({"help", "explain", "refused", "fault", "plan", "why", "cautions"})
#: Answers that end the questions of a diagnosis.
ENDS_DIAGNOSIS = frozenset({"rescue", "undo", "forget", "import"})
#: Answers that end the question where somebody lives, which a reminder waits for.
REMINDS = frozenset({"reminder", "home", "forget", "import"})
#: Who is writing to us just now is not woken by what is due.
AWAKE = Quiet(time(), time())
#: Collections kept in memory, those asked for last.
KEPT_COLLECTIONS = 256
#: An open question is answered within this time, or not at all.
WAITS = timedelta(minutes=30)


class Conversation:
    """Answers messages of people and groups, each with their own records."""

    def __init__(self, records: Records) -> None:
        self._records = records
        self._seen: OrderedDict[int, Seen] = OrderedDict()

    async def answer(self, incoming: Incoming, records: Records | None = None) -> out.Answer:
        """Answer one message.

        Parameters
        ----------
        incoming : the message, with who sent it and when
        records : where to read and write, if more than this is kept together with it

        Returns
        -------
        Answer
            Its `choices` are further messages that make sense now.

        Raises
        ------
        DatabaseProblem
            The records cannot serve now; nothing was written.
        """
        turn = await self._turn(incoming, records or self._records)
        if turn.order.own and incoming.group is not None:
            if turn.order.verb in IN_PRIVATE_ONLY:
                return turn.refuse("refuse-own-private")
            own = replace(incoming, group=None, may_set=None)
            turn = await self._turn(own, records or self._records)
        due = await self._due_kindly(turn) if incoming.pulls else None
        if due is not None:
            turn = replace(turn, just_pinged=frozenset(due[0]))
        answer = await _told_kindly(turn, _respond)
        await _keep_tongue(turn)
        if due is not None:
            answer = answer.model_copy(update={"reply": f"{due[1].reply}\n\n{answer.reply}"})
        told = {"message": turn.incoming.text, "understood": understood(turn.reading)}
        tapped = answer.choices
        if answer.kind == "dose" and not tapped:
            tapped = ["why", "more"] if len(answer.cautions) > SHOWN_CAUTIONS else ["why"]
        told["choices"] = [turn.words.tap(code) for code in tapped]
        return answer.model_copy(update=told)

    async def ping(self, due: reminding.Due, records: Records) -> out.Answer:
        """One message for all that is due to an owner.

        Parameters
        ----------
        due : from `reminding.reckon`; something in it is said now
        records : where to read
        """
        address = due.owner.address
        incoming = Incoming(
            text="",
            person=address.external_id,
            channel=address.channel,
            said_at=due.at,
            group=address.external_id if address.kind is OwnerKind.GROUP else None,
        )
        return await reminders_pings.compose(await self._turn(incoming, records), due)

    async def _due_kindly(self, turn: Turn) -> tuple[list[int], out.Answer] | None:
        """As `_due`; what cannot be said keeps nobody from an answer."""
        try:
            return await self._due(turn)
        except DatabaseProblem:
            raise
        except Exception:  # nothing of it was kept: it is still due at the next message
            _log.exception("what was due could not be put into words")
            return None

    async def _due(self, turn: Turn) -> tuple[list[int], out.Answer] | None:
        """What is due to who is speaking, said now and kept as sent; None where nothing is."""
        if turn.owner is None:
            return None
        now_ms = round(turn.by_now.timestamp() * 1000)
        shown_ms = round(turn.incoming.said_at.timestamp() * 1000)
        async with turn.records.reading() as session:
            if not await pings.is_due(session, turn.owner_id, now_ms=now_ms):
                return None
        async with turn.records.together() as records:
            async with records.writing() as session:
                found = await pings.due_of(session, turn.owner_id, now_ms=now_ms)
                if found is None:
                    return None
                due = reminding.reckon(found, now_ms, AWAKE)
                await pings.promise(session, due.promised)
                ids = due.ping_ids
                await pings.note_sent(session, turn.owner_id, ids, message_id=shown_ms)
            if not due.pinging:
                return None
            silent = replace(turn.reading, unknown=(), read_as=())
            asked = replace(turn, records=records, reading=silent)
            return ids, await reminders_pings.compose(asked, due)

    def unsee(self) -> None:
        """Load every collection anew: what was last written may not have been kept."""
        self._seen.clear()

    async def _collection(self, session: AsyncSession, owner: Owner) -> Collection:
        """What an owner has; only what their log changed since is loaded anew."""
        known = self._seen.pop(owner.id, None)
        seen = await refreshed(session, owner, known) if known is not None else None
        if seen is None:
            seen = await first_seen(session, owner)
        self._seen[owner.id] = seen
        while len(self._seen) > KEPT_COLLECTIONS:
            self._seen.popitem(last=False)
        return seen.collection

    async def _turn(self, incoming: Incoming, records: Records) -> Turn:
        """Read a message with what is known of who sent it."""
        async with records.reading() as session:
            owner = await owners.find(session, incoming.address)
            collection, kept, other = Collection(), None, None
            if owner is not None:
                collection = await self._collection(session, owner)
                kept = await memory.recall(session, owner.id, incoming.person)
                if incoming.follows is not None:
                    other = await memory.recall(session, owner.id, incoming.follows)
        chosen = incoming.language or _set_language(owner)
        heard, phone = _heard(owner), _known(incoming.phone_language)
        # A group's members speak several: who asks is answered in theirs.
        usual = phone or heard if incoming.group is not None else heard or phone
        if incoming.menu:
            of_a_day = "-for" if incoming.menu == "plan" and incoming.text else ""
            said = wording(chosen or usual or "en").say(f"menu-{incoming.menu}{of_a_day}-says")
            incoming = replace(incoming, text=f"{said} {incoming.text}".strip(), menu="")
        units = owner.units if owner is not None else None
        measure = "imperial" if units == "imperial" else "us"
        reading = listen(
            incoming.text,
            usual=usual,
            chosen=chosen,
            measure=measure,
            names=None if incoming.shared else names_in(collection),
        )
        last = other if incoming.follows is not None else kept
        recalled = dict(last.request) if last is not None and last.request else {}
        if incoming.overtaken:  # what is remembered is not what they reply to
            recalled = {k: v for k, v in recalled.items() if k not in ("dose", "why")}
        question: dict[str, Any] = {}
        fresh = True
        if kept is not None and kept.question and kept.asked_at is not None:
            fresh = incoming.said_at - kept.asked_at <= WAITS
            same = incoming.tapped_at is None or incoming.tapped_at == kept.asked_at
            question = dict(kept.question) if fresh and same else {}
        return Turn(
            records=records,
            incoming=incoming,
            owner=owner,
            reading=reading,
            words=wording(reading.language, units or METRIC),
            collection=collection,
            recalled=recalled,
            remembered=dict(recalled),
            question=question,
            lapsed=not fresh,
            recalled_at=last.said_at if last is not None else None,
        )


def _set_language(owner: Owner | None) -> str | None:
    """The language that was set, where we have it; an import may name any."""
    return _known(owner.language) if owner is not None else None


def _heard(owner: Owner | None) -> str | None:
    """The language they wrote in last."""
    return _known(owner.heard) if owner is not None else None


def _known(language: str | None) -> str | None:
    return language if language in tongues.spoken() else None


async def _keep_tongue(turn: Turn) -> None:
    """Remember the language of a message, for what we say of our own accord and for short ones."""
    owner, tongue = turn.owner, turn.reading.tongue
    if owner is None or owner.heard == tongue or not turn.incoming.text:
        return
    if owner.heard is not None and turn.incoming.group is not None:
        return  # a group's reminders do not change their language with whoever asked last
    async with turn.records.writing() as session:
        await owners.hear(session, owner.id, tongue)


# --- answering -------------------------------------------------------------------------------


async def _told_kindly(turn: Turn, respond: Handler) -> out.Answer:
    """An answer; what the records refuse becomes a sentence that says what to send instead."""
    words = turn.words
    try:
        return await respond(turn)
    except UnfitDay as error:
        return turn.refuse(error.code)
    except NameTaken as error:
        return turn.refuse("refuse-name-taken", name=error.name)
    except TooMany as error:
        return turn.refuse("refuse-too-many", most=words.number(error.most))
    except (NothingToUndo, CannotUndo):
        return turn.say("undo", "undo-nothing")
    except BadValue as error:
        _log.info("a value did not fit: %s, %s", error.field, error.reason)
        return turn.refuse("refuse-bad-value")
    except ChangedSince:
        return turn.refuse("refuse-changed-since")
    except Refused:
        return turn.refuse("refuse-records")


async def _respond(turn: Turn) -> out.Answer:
    if turn.incoming.opening:
        return await _keep_question(turn, await meeting.begin(turn))
    if turn.incoming.saving:
        return await meeting.save(turn)
    if turn.incoming.shared:  # whoever made the link may not give orders to who follows it
        dose = replace(turn, reading=replace(turn.reading, order=None), question={})
        return await doses.keep_why(dose, await doses.dose(dose))
    urgent = await harm.told(turn)
    if urgent is not None:
        return await _keep_question(turn, urgent)
    just_set = await reminders_just.heard(turn)
    if just_set is not None:
        return await _keep_question(turn, just_set)
    amended = await amending.heard(turn)
    if amended is not None:
        return await _keep_question(turn, amended)
    answered = await _to_question(turn)
    if answered is not None:
        return answered
    return await _keep_question(turn, harm.asked_on(turn, await _handled(turn)))


async def _handled(turn: Turn) -> out.Answer:
    """The answer of the module that the order belongs to."""
    verb, reading = turn.order.verb, turn.reading
    if verb == "no" and turn.order.text == "leave" and turn.question:
        return turn.say("help", "question-left")
    if verb == "no" and turn.order.amends is not None and doses.has_last(turn):
        verb = "follow_up"  # 'no, Ruby', said of a dose
        target = turn.order.amends.target
        reading = replace(reading, order=replace(turn.order, verb=verb, target=target))
        turn = replace(turn, reading=reading)
    if verb in ("yes", "no", "skip"):
        answer = await reminders_answers.bare(turn)
        if answer is not None or not reading.exact:
            if answer is None and reading.order is not None and reading.order.worried:
                return await harm.alarm(turn)
            return answer or turn.say("help", "question-lapsed" if turn.lapsed else "nothing-asked")
        verb = "dose"  # 'genau' says yes, or that nothing shall be taken off
        reading = replace(reading, order=replace(turn.order, verb=verb))
        turn = replace(turn, reading=reading)
    if verb in FOR_ADMINISTRATORS and not await turn.administers():
        return turn.refuse(FOR_ADMINISTRATORS[verb])
    unclear = reading.problems or (reading.conflicts and verb not in ("dose", "follow_up"))
    if unclear:
        return respond(reading, turn.setting)  # refuses or asks
    gone = having.no_longer(turn)
    if gone is not None:
        return gone
    if turn.order.theirs:  # nothing on record is somebody else's
        turn = replace(turn, collection=Collection())
    answer = await doses.keep_why(turn, await HANDLERS[verb](turn))
    if verb in ("fed", "clear", "flush", "done"):
        answer = await reminders_after.after_log(turn, answer)
    elif verb == "home":
        besides = (answer.details or {}).pop("besides", [])
        if answer.kind == "home":
            answer = await reminders_after.after_home(turn, answer)
        answer = await _said_besides(turn, answer, besides) if besides else answer
    elif verb == "add" and answer.kind == "plants":
        answer = await reminders_offer.with_offer(turn, answer)
    if verb == "dose" and answer.kind == "help":
        return await guide.greeted(turn)
    return answer


#: What a message may say besides the town, a clause each: '..., my scale shows 0.01 g'.
_BY_CLAUSE = frozenset({"water", "kit"})
#: The same in several clauses: '..., I have 3 phals in bark, 12 cm pots'.
_BY_CLAUSES = frozenset({"add", "product"})


async def _said_besides(turn: Turn, answer: out.Answer, parts: list[str]) -> out.Answer:
    """What else a message said than the town; what is not understood is shown as not used."""
    runs: list[list[str]] = []
    for part in parts:
        alone = _meant_by(turn, part).verb in _BY_CLAUSE
        if alone or not runs or _meant_by(turn, runs[-1][0]).verb in _BY_CLAUSE:
            runs.append([part])
        else:
            runs[-1].append(part)
    lines, unused = [answer.reply], []
    for run in runs:
        text = ", ".join(run)
        reading = turn.read_again(text)
        again = replace(turn, reading=reading, question={})
        doubtful = reading.conflicts or reading.problems or reading.unknown
        if doubtful or again.order.verb not in _BY_CLAUSE | _BY_CLAUSES:
            unused.append(text)
            continue
        said = await HANDLERS[again.order.verb](again)
        lines.append(said.reply)
    if unused:
        listed = turn.words.listed([turn.words.say("not-used-one", text=t[:40]) for t in unused])
        lines.append(turn.words.say("home-besides", texts=listed))
    return answer.model_copy(update={"reply": "\n".join(lines)})


def _meant_by(turn: Turn, text: str) -> Order:
    """What a part of a message wants by itself."""
    return turn.read_again(text).order or Order("dose")


async def _keep_question(turn: Turn, answer: out.Answer) -> out.Answer:
    """Remember what our question waits for; an answered one is dropped."""
    waiting = (answer.details or {}).get("waiting")
    aside = turn.question.get("kind") == "meeting" and answer.kind in ASIDES
    offered = turn.question.get("kind") == "reminder_offer"  # open for one further line
    home = (turn.question.get("step") == "home" or offered) and answer.kind not in REMINDS
    home = home and not (offered and turn.question.get("late"))
    if home and waiting is None and not turn.question.get("late"):
        await turn.wait_for({**turn.question, "late": True})
    aside = aside or home or _diagnosis_waits(turn, answer)
    stale = bool(turn.question) and answer.kind != "ask" and not aside
    if waiting is None and not stale:
        return answer
    if turn.owner is not None or waiting is not None:
        await turn.wait_for(waiting)
    details = {k: v for k, v in (answer.details or {}).items() if k != "waiting"} or None
    return answer.model_copy(update={"details": details})


def _diagnosis_waits(turn: Turn, answer: out.Answer) -> bool:
    """Whether the question of a diagnosis stays open over what was asked or told between."""
    left = turn.order.verb == "no" and turn.order.text in ("leave", "stop", "thanks")
    waits = turn.question.get("kind") == "rescue" and not left
    return waits and answer.kind not in ENDS_DIAGNOSIS


async def _to_question(turn: Turn) -> out.Answer | None:
    """The answer to a question of ours, where this message is one."""
    kind = turn.question.get("kind")
    if kind in ("forget", "import"):
        return await _confirmed(turn, str(kind))
    if kind == "which":
        return await _picked(turn)
    if kind == "add":
        return await _offer_taken(turn)
    if kind == "meeting":
        return await _met(turn)
    if isinstance(kind, str) and kind.startswith("reminder"):
        answer = await _REMINDER_ANSWERS[kind](turn)
        return None if answer is None else await _keep_question(turn, answer)
    if kind == "meter":
        answer = await meter.completed(turn)
        if answer is None:
            return None
        return await _keep_question(turn, await doses.keep_why(turn, answer))
    if kind == "home" and turn.order.verb in ("dose", "home", "name", "plants"):
        there = await home.which(turn)
        return None if there is None else await _keep_question(there, await _handled(there))
    if kind == "product_name" and turn.order.verb == "name":
        return await _keep_question(turn, await shelf.name_it(turn))
    if kind == "rescue":
        answer = await rescue.answered(turn)
        return None if answer is None else await _keep_question(turn, answer)
    return None


#: What hears the answer to a question about reminders.
_REMINDER_ANSWERS: dict[str, Callable[[Turn], Awaitable[out.Answer | None]]] = {
    "reminder": reminders_asked.answered,
    "reminder_which": reminders_change.picked,
    "reminder_until": reminders_pause.until_told,
    "reminder_wish": reminders.wish_answered,
    "reminder_offer": reminders_offer.answered,
    "reminder_calendar": calendar.answered,
}


async def _met(turn: Turn) -> out.Answer | None:
    """What was answered to a question of the first meeting, and the next question."""
    step = int(turn.question["step"])
    order = meeting.meant(turn, step)
    if order is None or (order.verb == "home" and await home.says_else(turn, order)):
        return None
    if order.verb == "skip":
        return await _keep_question(turn, meeting.ask(turn, step + 1))
    if order.verb == "home":  # a bare name of a town is no word to report
        turn = replace(turn, reading=replace(turn.reading, unknown=(), read_as=()))
    reading = replace(turn.reading, order=order)
    answer = await HANDLERS[order.verb](replace(turn, reading=reading, question={}))
    turn = replace(turn, reading=replace(turn.reading, unknown=(), read_as=()))
    following = meeting.ask(turn, step if answer.kind in ("ask", "refused") else step + 1)
    both = following.model_copy(update={"reply": f"{answer.reply}\n\n{following.reply}"})
    if order.verb == "add" and answer.kind == "plants":
        both = await reminders_offer.with_offer(turn, both)
    return await _keep_question(turn, both)


async def _confirmed(turn: Turn, kind: str) -> out.Answer | None:
    verb = turn.order.verb
    if verb not in ("yes", "no"):
        return None
    if verb == "yes" and kind == "import":
        return await take_along.import_confirmed(turn, turn.question)
    await turn.wait_for(None)
    if verb == "no":
        code = "forget-cancelled" if kind == "forget" else "import-cancelled"
        return turn.say(kind, code)
    return await take_along.forget_confirmed(turn)


async def _offer_taken(turn: Turn) -> out.Answer | None:
    """Plants of a bare list that are to be put on record, or are not."""
    if turn.order.verb == "no":
        await turn.wait_for(None)
        return turn.say("plants", "plants-not-added")
    if turn.order.verb != "yes":
        return None
    listed = _read_again(turn)
    if listed.order is None:
        return None
    reading = replace(listed, order=replace(listed.order, verb="add", standing=""))
    again = replace(turn, reading=reading, question={})
    answer = await plants.add(again)
    answer = await reminders_offer.with_offer(again, answer)
    return await _keep_question(replace(again, question=turn.question), answer)


async def _picked(turn: Turn) -> out.Answer | None:
    """The plants that were picked by a line that says nothing else, and what was wanted of them."""
    ids: list[int] = turn.question["ids"]
    order = turn.order
    if order.picks and all(1 <= n <= len(ids) for n in order.picks):
        chosen = tuple(dict.fromkeys(ids[n - 1] for n in order.picks))
    elif order.verb == "dose" and order.only_plants and order.target.everything:
        chosen = tuple(turn.question["all"]) if not order.target.named_one else ()
    elif order.verb == "dose" and order.only_plants:
        chosen = _narrowed(turn)
    else:
        return None
    if not chosen:
        return None
    reading = _read_again(turn)
    again = replace(turn, reading=reading, question={}, chosen=chosen)
    if _still_open(turn, chosen):
        found = [p for p in turn.collection.plants if p.id in chosen]
        some, held = turn.question.get("some"), sum(p.count for p in found)
        if some is not None and held < some:  # 'Ruby', of two that were sold
            found = [p for p in turn.collection.plants if p.id in turn.question["all"]]
        asked = plants.which(again, turn.collection, found, str(turn.question["text"]))
        return await _keep_question(replace(again, question=turn.question), asked)
    answer = await HANDLERS[again.order.verb](again)
    return await _keep_question(replace(again, question=turn.question), answer)


def _still_open(turn: Turn, chosen: tuple[int, ...]) -> bool:
    """Whether those picked are not as many as were asked for, or a kind or place left several."""
    held = [p.count for p in turn.collection.plants if p.id in chosen]
    some = turn.question.get("some")
    if some is not None:
        return sum(held) < some or (len(held) > 1 and sum(held) > some)
    target = turn.order.target
    alone = not (target.names or turn.order.picks or target.everything)
    return alone and len(held) > 1


def _narrowed(turn: Turn) -> tuple[int, ...]:
    wanted = set(turn.question["all"])
    return tuple(p.id for p in pick(turn.order.target, turn.collection) if p.id in wanted)


def _read_again(turn: Turn) -> Reading:
    """The message that led to the question."""
    text = str(turn.question["text"])
    return turn.read_again(text)


def apology(incoming: Incoming) -> out.Answer:
    """The answer where a fault of ours left none."""
    reading = Reading(text=incoming.text, language=incoming.language or "en")
    return answer_to(reading, "fault", wording(reading.language).say("apology"))
