"""What somebody who keeps records asks for, apart from the figures: the result of `orders`."""

from __future__ import annotations

from dataclasses import dataclass, field


@dataclass(frozen=True, slots=True)
class Names:
    """Names that are on record, to be known in a message."""

    plants: tuple[str, ...] = ()
    products: tuple[str, ...] = ()
    places: tuple[str, ...] = ()
    gone: tuple[str, ...] = ()  # of plants that were taken off the list
    told_apart: tuple[str, ...] = ()  # words that tell plants without a name from others


@dataclass(frozen=True, slots=True)
class When:
    """A day or a stretch of time as it was said; the clock is somebody else's.

    `kind` and what `value` counts: day (days back, below 0 ahead), weekday (1 is Monday),
    week, month and year (back from this one), of_month (a month, 1 to 12), date (a month, with
    `day`, and `year` if it was said), some (a day that has been, nobody knows which).
    """

    kind: str
    value: int
    day: int | None = None
    year: int | None = None


@dataclass(frozen=True, slots=True)
class Target:
    """Which plants on record are meant; what is empty does not narrow them.

    Attributes
    ----------
    names, genera, traits : as said; a trait tells plants of one kind apart ('small')
    place : where they stand
    more_places : further places that were meant as well
    medium : what they grow in
    everything : whether all were meant
    again : whether it was those of the message before ('them')
    not_names, not_genera, not_places : those that were excepted
    not_traits, not_media : what tells those that were excepted apart ('all but the white ones')
    """

    names: tuple[str, ...] = ()
    genera: tuple[str, ...] = ()
    traits: tuple[str, ...] = ()
    place: str | None = None
    medium: str | None = None
    everything: bool = False
    again: bool = False
    not_names: tuple[str, ...] = ()
    not_genera: tuple[str, ...] = ()
    more_places: tuple[str, ...] = ()
    not_places: tuple[str, ...] = ()
    not_traits: tuple[str, ...] = ()
    not_media: tuple[str, ...] = ()

    @property
    def excepts(self) -> bool:
        """Whether some were excepted."""
        kinds = self.not_names or self.not_genera or self.not_places
        return bool(kinds or self.not_traits or self.not_media)

    @property
    def empty(self) -> bool:
        """Whether no plants were meant."""
        return not (self.named or self.again)

    @property
    def named_one(self) -> bool:
        """Whether plants were meant by their name, their kind or their place."""
        return bool(self.names or self.genera or self.place)

    @property
    def named(self) -> bool:
        """Whether plants were meant by more than 'them'."""
        return self.named_one or self.everything


@dataclass(frozen=True, slots=True)
class PlantSaid:
    """One plant, or several alike, of a message that puts plants on record."""

    genus: str | None = None
    count: int | None = None
    name: str | None = None
    traits: tuple[str, ...] = ()
    medium: str | None = None
    pot_cm: float | None = None
    place: str | None = None
    growth: str | None = None
    water: str | None = None


@dataclass(frozen=True, slots=True)
class LabelSaid:
    """What else a label says: nitrogen by its form [% of mass], density [kg/L], price, pack."""

    nitrogen: dict[str, float] = field(default_factory=dict)
    density_kg_l: float | None = None
    price: float | None = None
    currency: str | None = None
    pack_size: float | None = None
    pack_unit: str | None = None

    @property
    def empty(self) -> bool:
        """Whether none of it was said."""
        return self == LabelSaid()


@dataclass(frozen=True, slots=True)
class MeterSaid:
    """What a meter was said to show.

    Attributes
    ----------
    value, unit : the figure and its unit: ms_cm, us_cm, ds_m, ms_m, cf or ppm, '' where unsaid
    scale : ppm for 1 mS/cm
    temp_c : temperature of the water [°C]
    compensated : whether the meter corrects to 25 °C itself
    """

    value: float | None = None
    unit: str = ""
    scale: int | None = None
    temp_c: float | None = None
    compensated: bool | None = None


@dataclass(frozen=True, slots=True)
class MixSaid:
    """Two waters to mix for a figure.

    Attributes
    ----------
    kinds : the waters, '' for the person's own
    quantity, target : what the mix shall have, '' and 0 where the unit was unclear
    own : figures of the harder water by quantity
    at_most : whether the target is a limit
    """

    kinds: tuple[str, ...]
    quantity: str
    target: float
    own: dict[str, float] = field(default_factory=dict)
    at_most: bool = False


@dataclass(frozen=True, slots=True)
class FeedSaid:
    """A feed by its label alone: N, P2O5, K2O and further elements [% of mass], form and name."""

    analysis: tuple[float, float, float]
    extras: dict[str, float] = field(default_factory=dict)
    form: str | None = None
    name: str | None = None


@dataclass(frozen=True, slots=True)
class Rhythm:
    """How often and when something is wanted, as it was said; the clock is somebody else's.

    Attributes
    ----------
    every, unit : every so many days, weeks, months or years; None for once
    weekdays : 1 is Monday
    nth : which of these weekdays of a month, -1 the last
    month_days : days of a month, -1 the last
    months : the months it holds in
    season : the season it holds in
    not_weekdays, not_season : on which days, and in which season, it does not come
    clock : hour and minute on 24 hours
    half_guessed : whether morning or afternoon was not said
    part : of the day: morning, noon, afternoon or evening
    ahead : once, in so many of a unit (also hours and minutes)
    day : once, on this day
    start : the first day
    until : the day before which it ends
    span : how long it goes on: so many of a unit
    times : how many times it comes
    doubt : what cannot be kept as it was said: which_days, two_meanings, too_often, range, vague,
        number, clock, two_times, two_days, two_rhythms, exception
    guess : what was taken one way that could be meant in another: every_second, first_of_month
    """

    every: int | None = None
    unit: str = ""
    weekdays: tuple[int, ...] = ()
    nth: tuple[int, ...] = ()
    month_days: tuple[int, ...] = ()
    months: tuple[int, ...] = ()
    season: str = ""
    not_weekdays: tuple[int, ...] = ()
    not_season: str = ""
    clock: tuple[int, int] | None = None
    half_guessed: bool = False
    part: str = ""
    ahead: tuple[int, str] | None = None
    day: When | None = None
    start: When | None = None
    until: When | None = None
    span: tuple[int, str] | None = None
    times: int | None = None
    doubt: str = ""
    guess: str = ""

    @property
    def recurs(self) -> bool:
        """Whether it comes more than once."""
        return self.every is not None

    @property
    def says_when(self) -> bool:
        """Whether it says a day or how often, and not only a clock time."""
        return self.recurs or bool(
            self.ahead or self.day or self.month_days or self.nth or self.season
        )


@dataclass(frozen=True, slots=True)
class Order:
    """What is wanted of the records; the figures of the message stand in its Reading.

    Attributes
    ----------
    verb : what to do; the forms in `orders` list them
    target : which plants on record
    plants : plants to put on record
    products : names of products on record that were said
    name : a new name
    place : where something goes
    when : the day, or since when
    label : what else a label says
    factor : of the last answer ('half that') [1]
    steps : numbers of steps that are done
    count : how many of several alike are meant
    picks : numbers of a list, where nothing else was said
    only_plants : whether plants were said and nothing else
    gone : names that were said of plants that are no longer on the list
    standing : of plants to put on record, whether it was said that one has them: 'some', 'total'
        where those are all, 'called' where only their names are told; of what was given, 'rest'
        where it went to those of the plan that were left; of a feed, 'instead' of an empty one
    worried : whether nothing else was said than that somebody is worried: 'what now', 'oh no'
    theirs : whether it is about plants of somebody else: answered, and nothing is put on record
    amends : how it would put the last entry of the log right, said right after that
    strange : a name that feed is asked for and that nobody on record bears: '2 l for lotte'
    text : free text, such as where somebody lives; of a dose, how it was only told of (see
        orders.requested)
    asks_kind : what of the history is asked for: fed, clear, flush or repot; 'dose' where a
        message that fits no order says that it wants an amount
    syringe_step_ml : the smallest step a syringe shows [mL]
    asks : whether it was a question
    amount, unit : of feed that is asked about, in g, ml or tsp; 'loose' for a capful and the like
    given : whether it was given already
    feeds : feeds that were said by their numbers
    rhythm : how often and when a reminder is wanted
    hours : from which to which hour nobody is to be woken
    task : what a reminder is for: flush, feed, water, look or other; '' where it was not said
    unused : words of a message about reminders that were not understood
    also : further things of the same kind that the message says; how each reads: `further`
    own : whether the person's own records were meant, said in a group
    parts : of the text, at its commas and 'and's: the later ones may say something else
    newest : whether the feed was meant that was put on record last ('the new one')
    value : the figure of a reading, in the unit the Reading says or none
    meter : what a meter shows of a ready feed
    ions : of a water report [mg/L]
    report_unit : whether a report came in a unit other than mg/L
    mix : waters to mix
    signs : what was reported of an ailing plant, by code
    denied : what was said not to be there, by code
    poured : feeds that are mixed, or the one that is thinned: litres, and EC [mS/cm]
    """

    verb: str
    target: Target = field(default_factory=Target)
    plants: tuple[PlantSaid, ...] = ()
    products: tuple[str, ...] = ()
    name: str | None = None
    place: str | None = None
    when: When | None = None
    label: LabelSaid = field(default_factory=LabelSaid)
    factor: float | None = None
    steps: tuple[int, ...] = ()
    count: int | None = None
    text: str = ""
    strange: str = ""
    asks_kind: str | None = None
    syringe_step_ml: float | None = None
    value: float | None = None
    meter: MeterSaid | None = None
    ions: dict[str, float] = field(default_factory=dict)
    report_unit: bool = False
    mix: MixSaid | None = None
    signs: tuple[str, ...] = ()
    denied: tuple[str, ...] = ()
    poured: tuple[tuple[float, float], ...] = ()
    asks: bool = False
    own: bool = False
    newest: bool = False
    parts: tuple[str, ...] = ()
    amount: float | None = None
    unit: str = ""
    given: bool = False
    feeds: tuple[FeedSaid, ...] = ()
    rhythm: Rhythm | None = None
    hours: tuple[tuple[int, int] | None, tuple[int, int] | None] | None = None
    task: str = ""
    unused: str = ""
    also: tuple[Order, ...] = ()
    picks: tuple[int, ...] = ()
    only_plants: bool = False
    gone: tuple[str, ...] = ()
    standing: str = ""
    worried: bool = False
    theirs: bool = False
    amends: Order | None = None
