"""The water and its figures. One German degree is 10 mg/L of CaO: 17.85 mg/L of CaCO3."""

from __future__ import annotations

from typing import Any

import pytest

from grammar import read
from tests.grammar.told import same, value

SAID: list[tuple[str, dict[str, Any]]] = [
    ("tap water", {"kind": "tap"}), ("rainwater", {"kind": "rain"}),
    ("RO water", {"kind": "reverse_osmosis"}), ("distilled", {"kind": "distilled"}),
    ("softened water", {"kind": "softened"}), ("well water", {"kind": "well"}),
    ("tap water hardness 14 °dH", {"kind": "tap", "hardness_mg_l_caco3": 14 * 17.848}),
    ("tap 12 dH", {"kind": "tap", "hardness_mg_l_caco3": 12 * 17.848}),
    ("tap water, hardness 20 french degrees", {"hardness_mg_l_caco3": 200}),
    ("tap, hardness 150 ppm", {"hardness_mg_l_caco3": 150}),
    ("tap EC 0.4", {"kind": "tap", "ec_ms_cm": 0.4}),
    ("tap, alkalinity 120 mg/l CaCO3", {"alkalinity_mg_l_caco3": 120}),
]  # fmt: skip


@pytest.mark.parametrize(("text", "water"), SAID)
def test_water_is_read(text: str, water: dict[str, Any]) -> None:
    assert same(value(read(f"2 l, 15-5-15 powder, {text}", "en"), "water"), water)


def test_water_of_unknown_salts_is_shown() -> None:
    reading = read("2 l spring water, 15-5-15 powder", "en")
    assert reading.water is None
    assert reading.season is None
    assert [u.text for u in reading.unknown] == ["spring water"]


def test_well_is_also_only_a_word() -> None:
    assert read("well, 2 l, 20-20-20 powder", "en").water is None


@pytest.mark.parametrize(
    ("text", "ec_ms_cm"),
    [
        ("tap reads 210 ppm on my TDS pen (500 scale)", 0.42),
        ("tap 350 ppm, 700 scale", 0.5), ("tap 320 ppm on the 640 ppm scale", 0.5),
        ("Leitungswasser 210 ppm (Skala 500)", 0.42),
        ("agua del grifo 210 ppm (escala 500)", 0.42),
        ("kranówka 210 ppm (skala 500)", 0.42),
    ],
)  # fmt: skip
def test_ppm_of_a_meter_with_its_scale_is_a_conductivity(text: str, ec_ms_cm: float) -> None:
    reading = read(f"{text}, 3 l 20-10-20")
    assert reading.water is not None
    assert reading.water.kind == "tap"
    assert reading.water.ec_ms_cm == pytest.approx(ec_ms_cm)
    assert not reading.conflicts
    assert not reading.unknown


def test_ppm_of_an_element_stays_one_beside_a_meter() -> None:
    reading = read("100 ppm N, tap 210 ppm (500 scale), 3 l 20-10-20 powder", "en")
    assert reading.target_n_mg_l == 100
    assert reading.water is not None
    assert reading.water.ec_ms_cm == pytest.approx(0.42)


@pytest.mark.parametrize("text", ["tap 210 ppm on my TDS pen", "tap 210 ppm (900 scale)"])
def test_ppm_without_a_known_scale_is_asked_about(text: str) -> None:
    reading = read(f"{text}, 3 l 20-10-20 powder", "en")
    assert [c.code for c in reading.conflicts] == ["element"]


@pytest.mark.parametrize(
    "text", ["dureza 30 °f, agua del grifo", "agua del grifo, dureza de 30 °f"]
)
def test_degrees_f_of_hardness_are_french(text: str) -> None:
    water = read(f"2 l 20-20-20 polvo, {text}", "es").water
    assert water is not None
    assert water.hardness_mg_l_caco3 == pytest.approx(300)  # 1 °fH is 10 mg/l CaCO3


@pytest.mark.parametrize(
    ("language", "text"),
    [("en", "tap water 30 °f"), ("de", "Leitungswasser 30 °f")],
)
def test_degrees_f_of_tap_water_are_asked_about(language: str, text: str) -> None:
    reading = read(f"2 l 20-20-20, {text}", language)
    assert [c.code for c in reading.conflicts] == ["hardness_unit"]


def test_warm_water_has_no_hardness() -> None:
    reading = read("2 l 20-20-20 powder, tap water 70 °f", "en")
    assert reading.conflicts == ()
    assert reading.water is not None
    assert reading.water.hardness_mg_l_caco3 is None


@pytest.mark.parametrize(
    ("text", "target", "of_water"),
    [
        ("0.6 mS with RO water", 0.6, None), ("RO water 0.6 mS", 0.6, None),
        ("distilled water, 600 µS", 0.6, None), ("RO water 0.02 mS", None, 0.02),
        ("tap water 0.6 mS", None, 0.6),
    ],
)  # fmt: skip
def test_water_without_salts_has_no_such_conductivity(
    text: str, target: float | None, of_water: float | None
) -> None:
    reading = read(f"10 l 15-5-15 powder, {text}", "en")
    assert reading.water is not None
    assert (reading.target_ec_ms_cm, reading.water.ec_ms_cm) == (target, of_water)
