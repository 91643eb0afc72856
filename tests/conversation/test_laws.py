"""The laws that hold for every answer, end to end from text."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import date

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.conversation.answer import Answer
from bot.conversation.ask import Setting, ask

SETTING = Setting(today=date(2026, 5, 15))
#: Feeding class by plant (common practice, no source); None where none is named.
CLASS_OF = {
    None: "moderate",
    "phalaenopsis": "hungry",
    "vanda": "hungry",
    "cattleya": "moderate",
    "paphiopedilum": "moderate",
    "masdevallia": "sensitive",
    "miltoniopsis": "sensitive",
}
MOST_N_MG_L = {"hungry": 200.0, "moderate": 125.0, "sensitive": 50.0}
STRENGTHS = ["", "quarter strength", "half strength", "full strength", "double strength", "3x",
             "exactly half", "exactly full strength", "75 %", "0.9x"]  # fmt: skip
REGIMES = ["", "every watering", "weekly", "fortnightly", "monthly"]
STATES = ["", "growing", "new roots", "slow growth", "seedlings"]


@dataclass(frozen=True, slots=True)
class Line:
    """One message in parts, '' where nothing is said."""

    volume_l: float
    n: int
    form: str
    label: float | None
    strength: str
    regime: str
    season: str
    medium: str
    state: str
    plants: tuple[str, ...]

    def parts(self) -> list[str]:
        label = ""
        if self.label is not None:
            unit = "ml" if self.form == "liquid" else "g"
            label = f"label says {self.label:g} {unit}/l"
        product = f"{self.n}-10-15 {self.form}"
        said = [f"{self.volume_l:g} litres", product, label, self.strength, self.regime]
        said += [self.season, self.medium, self.state, *self.plants]
        return [part for part in said if part]

    def text(self) -> str:
        return ", ".join(self.parts())

    def feeding_class(self) -> str:
        classes = [CLASS_OF[plant] for plant in self.plants] or ["moderate"]
        return min(classes, key=["sensitive", "moderate", "hungry"].index)


LINES = st.builds(
    Line,
    volume_l=st.integers(1, 400).map(lambda tenths: tenths / 10),
    n=st.integers(1, 30),
    form=st.sampled_from(["powder", "liquid"]),
    label=st.none() | st.integers(1, 40).map(lambda tenths: tenths / 10),
    strength=st.sampled_from(STRENGTHS),
    regime=st.sampled_from(REGIMES),
    season=st.sampled_from(["", "winter", "spring", "summer", "autumn"]),
    medium=st.sampled_from(["", "bark", "sphagnum", "clay pellets", "mounted"]),
    state=st.sampled_from(STATES),
    plants=st.lists(
        st.sampled_from([plant for plant in CLASS_OF if plant]), max_size=3, unique=True
    ).map(tuple),
)
END_TO_END = settings(max_examples=80, deadline=None)


def answered(text: str) -> Answer:
    return ask(text, SETTING)


def same(one: Answer, other: Answer) -> bool:
    """Whether two lines were taken for the same request."""
    if one.dose is None or other.dose is None:
        return one.kind == other.kind
    return (
        one.dose == other.dose
        and [w.rule for w in one.why] == [w.rule for w in other.why]
        and sorted(one.understood.genera) == sorted(other.understood.genera)
    )


@END_TO_END
@given(LINES)
def test_every_such_line_gets_a_dose(line: Line) -> None:
    answer = answered(line.text())
    assert answer.kind == "dose"
    assert answer.unknown == []
    assert answer.understood.volume_l == pytest.approx(line.volume_l)


@END_TO_END
@given(LINES)
def test_the_label_rate_is_never_passed(line: Line) -> None:
    dose = answered(line.text()).dose
    assert dose is not None
    if line.label is not None:
        assert dose.per_litre <= line.label * (1 + 1e-9)
        if line.feeding_class() == "sensitive":
            assert dose.per_litre <= line.label / 4 * (1 + 1e-9)
    else:
        assert dose.elements_mg_l["N"] <= 200.0 * (1 + 1e-9)


@END_TO_END
@given(LINES)
def test_the_ceiling_of_the_most_sensitive_plant_is_never_passed(line: Line) -> None:
    dose = answered(line.text()).dose
    assert dose is not None
    if line.regime not in ("fortnightly", "monthly"):
        assert dose.elements_mg_l["N"] <= MOST_N_MG_L[line.feeding_class()] * (1 + 1e-9)


@END_TO_END
@given(LINES, st.sampled_from(["full strength", "double strength", "4x", "100 %"]))
def test_exactly_never_lifts_a_ceiling(line: Line, strength: str) -> None:
    dose = answered(replace(line, strength=f"exactly {strength}").text()).dose
    assert dose is not None
    if line.label is not None:
        assert dose.per_litre <= line.label * (1 + 1e-9)
    if line.regime not in ("fortnightly", "monthly"):
        assert dose.elements_mg_l["N"] <= MOST_N_MG_L[line.feeding_class()] * (1 + 1e-9)


@END_TO_END
@given(LINES, st.integers(2, 9))
def test_the_amount_is_linear_in_the_volume(line: Line, times: int) -> None:
    one = answered(line.text()).dose
    many = answered(replace(line, volume_l=round(line.volume_l * times, 1)).text()).dose
    assert one is not None
    assert many is not None
    assert many.amount == pytest.approx(one.amount * times)
    assert many.per_litre == pytest.approx(one.per_litre)


@END_TO_END
@given(LINES, st.randoms(use_true_random=False))
def test_the_order_of_the_parts_does_not_matter(line: Line, random: object) -> None:
    parts = line.parts()
    random.shuffle(parts)  # type: ignore[attr-defined]
    assert same(answered(line.text()), answered(", ".join(parts)))


@pytest.mark.parametrize("strength", ["3x", "0.25x", "2x", "half", "25 %", "1/4"])
def test_a_strength_may_stand_right_before_the_volume(strength: str) -> None:
    before = answered(f"{strength}, 5 litres, 20-20-20 powder")
    assert same(answered(f"5 litres, 20-20-20 powder, {strength}"), before)


@END_TO_END
@given(LINES, st.sampled_from([str.upper, str.lower, str.title, str.swapcase]))
def test_capitals_do_not_matter(line: Line, change: object) -> None:
    assert same(answered(line.text()), answered(change(line.text())))  # type: ignore[operator]


@END_TO_END
@given(LINES, st.sampled_from(["please", "hi", "thanks", "so", "my", "the"]), st.data())
def test_a_filler_word_changes_nothing(line: Line, filler: str, data: st.DataObject) -> None:
    parts = line.parts()
    place = data.draw(st.integers(0, len(parts)))
    parts.insert(place, filler)
    filled = answered(", ".join(parts))
    assert same(answered(line.text()), filled)
    assert filled.unknown == []


@END_TO_END
@given(LINES, st.sampled_from(["\n", "; ", ",", " , ", ",\n"]))
def test_what_stands_between_the_parts_does_not_matter(line: Line, between: str) -> None:
    assert same(answered(line.text()), answered(between.join(line.parts())))


@END_TO_END
@given(LINES)
def test_two_different_volumes_get_a_question(line: Line) -> None:
    answer = answered(f"{line.text()}, {line.volume_l + 1:g} litres")
    assert answer.kind == "ask"
    assert answer.dose is None


@END_TO_END
@given(LINES)
def test_a_resting_plant_gets_no_feed(line: Line) -> None:
    answer = answered(replace(line, state="resting").text())
    assert answer.kind == "no_feed"
    assert answer.dose is None


@END_TO_END
@given(LINES)
def test_one_plant_at_rest_in_the_can_means_no_feed(line: Line) -> None:
    resting = replace(line, season="winter", plants=(*line.plants, "dendrobium nobile"))
    answer = answered(resting.text())
    assert answer.kind == "no_feed"
    assert answer.dose is None


@END_TO_END
@given(st.text(max_size=120))
def test_any_text_gets_an_answer(text: str) -> None:
    answer = answered(text)
    assert answer.reply
    assert answer.as_json()


WORDS = ["5", "l", "ml", "20-20-20", "1/0", "-", ",", ".", "%", "1e9", "powder", "liquid", "label",
         "says", "per", "litre", "ppm", "N", "EC", "not", "or", "half"]  # fmt: skip


@END_TO_END
@given(st.lists(st.sampled_from(WORDS), max_size=14).map(" ".join))
def test_any_order_of_our_own_words_gets_an_answer(text: str) -> None:
    answer = answered(text)
    assert answer.kind in ("dose", "no_feed", "ask", "refused", "help")
    assert (answer.dose is not None) == (answer.kind == "dose")
