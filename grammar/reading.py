"""What a message said: the result of `grammar.read`, and nothing that was not said."""

from __future__ import annotations

from dataclasses import dataclass, field

from grammar.order import Order


@dataclass(frozen=True, slots=True)
class Water:
    """The water as told; None where not said."""

    kind: str
    hardness_mg_l_caco3: float | None = None
    ec_ms_cm: float | None = None
    alkalinity_mg_l_caco3: float | None = None


@dataclass(frozen=True, slots=True)
class LabelRate:
    """What the label says to use: `per_litre` in `unit` (g, ml or tsp)."""

    per_litre: float
    unit: str


@dataclass(frozen=True, slots=True)
class ElementTarget:
    """So much of an element other than nitrogen wanted in the can [mg/L], as it was written."""

    element: str
    mg_l: float
    text: str


@dataclass(frozen=True, slots=True)
class ReadAs:
    """A word that was taken for another, to be shown."""

    text: str
    meaning: str


@dataclass(frozen=True, slots=True)
class Unknown:
    """Words that were not understood, with what could have been meant."""

    text: str
    suggestions: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Conflict:
    """Something that needs a question: two values for `slot`, or one that is unclear.

    `code` is one of: several, range, negation, ambiguous_number, element,
    lone_number, ec_unit, hardness_unit, product_of_numbers, loose_rate.
    """

    code: str
    slot: str
    texts: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Problem:
    """A number no computation can start from.

    `code` is one of: negative, division_by_zero, not_a_number, too_long, hidden_characters.
    """

    code: str
    text: str


@dataclass(frozen=True, slots=True)
class Ails:
    """What a message tells of an ailing plant, whatever else it wants.

    Attributes
    ----------
    there, denied : signs
    states : what was said without the part it is of ('firm'), and whether it is so
    """

    there: tuple[str, ...] = ()
    denied: tuple[str, ...] = ()
    states: tuple[tuple[str, bool], ...] = ()


@dataclass(frozen=True, slots=True)
class Reading:
    """One message understood. Every slot is None (or empty) where nothing was said.

    Attributes
    ----------
    language : to answer in: that of the message, unless another was chosen
    written_in : the language of the message, empty where it is the same
    volume_l : litres of water [L]
    analysis : N, P2O5, K2O as on the label [% of mass]
    extras : further label figures by element symbol [% of mass]
    strength : fraction of full strength
    exact : whether 'exactly' was said
    target_n_mg_l : nitrogen wanted in the can [mg/L]
    target_ec_ms_cm : conductivity wanted in the can [mS/cm]
    target_element : another element wanted in the can; it stands under `unknown` too, until a
        label is known that shows it
    count : number of plants
    scale_step_g : smallest step the person's scale shows [g]
    pot_cm : a size that was said, such as that of a pot [cm]
    weight_g : a weight said by itself, such as that of a pack [g]
    order : what is wanted of the records, where they were asked for
    further : how each further thing reads that `order.also` lists
    mentions_feeding : whether a word like feed or fertiliser fell
    measure_taken : 'us' or 'imperial' where a gallon, quart, pint or fluid ounce came
        without a country
    trace_elements : whether the label was said to hold them
    ailing : signs of an ailing plant beside a request for a dose
    ails : all that is told of an ailing plant
    hard_water : whether the water was called hard without a figure
    """

    text: str
    language: str
    written_in: str = ""
    volume_l: float | None = None
    analysis: tuple[float, float, float] | None = None
    extras: dict[str, float] = field(default_factory=dict)
    trace_elements: bool = False
    form: str | None = None
    strength: float | None = None
    exact: bool = False
    regime: str | None = None
    medium: str | None = None
    season: str | None = None
    month: int | None = None
    growth: str | None = None
    genera: tuple[str, ...] = ()
    count: int | None = None
    water: Water | None = None
    label_rate: LabelRate | None = None
    target_n_mg_l: float | None = None
    target_ec_ms_cm: float | None = None
    target_element: ElementTarget | None = None
    scale_step_g: float | None = None
    pot_cm: float | None = None
    weight_g: float | None = None
    measure_taken: str | None = None
    mentions_feeding: bool = False
    ailing: tuple[str, ...] = ()
    ails: Ails = Ails()
    hard_water: bool = False
    read_as: tuple[ReadAs, ...] = ()
    unknown: tuple[Unknown, ...] = ()
    conflicts: tuple[Conflict, ...] = ()
    problems: tuple[Problem, ...] = ()
    order: Order | None = None
    further: tuple[Reading, ...] = ()

    @property
    def tongue(self) -> str:
        """The language of the message."""
        return self.written_in or self.language

    @property
    def genus(self) -> str | None:
        """The one plant that was named, if exactly one was."""
        return self.genera[0] if len(self.genera) == 1 else None

    @property
    def says_something(self) -> bool:
        """Whether anything about feeding was understood."""
        return bool(
            self.conflicts
            or self.mentions_feeding
            or self.problems
            or self.genera
            or self.extras
            or any(
                value is not None
                for value in (
                    self.volume_l, self.analysis, self.form, self.strength, self.regime,
                    self.medium, self.season, self.month, self.growth, self.count, self.water,
                    self.label_rate, self.target_n_mg_l, self.target_ec_ms_cm,
                )
            )
        )  # fmt: skip
