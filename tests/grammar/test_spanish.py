"""Spanish as growers write it: doses, doubts, orders to the records, reminders, signs, reports."""

from __future__ import annotations

from typing import Any

import pytest

from grammar import Names, Order, PlantSaid, Reading, Rhythm, When, read
from tests.grammar.told import same, slots, value

NAMES = Names(
    plants=("Ruby", "Blancanieves"),
    products=("bote azul", "botella verde"),
    places=("repisa de la cocina", "balcón"),
)


def told(text: str) -> Reading:
    return read(text, "es", names=NAMES)


def order(text: str) -> Order:
    found = told(text).order
    assert found is not None
    return found


# --- doses --------------------------------------------------------------------------------

POWDER: dict[str, Any] = {"analysis": [20, 20, 20], "form": "powder"}

DOSES: list[tuple[str, dict[str, Any]]] = [
    ("litro y medio de agua, abono líquido 7-7-7, falenopsis en corteza, media dosis",
     {"volume_l": 1.5, "analysis": [7, 7, 7], "form": "liquid", "genera": ["Phalaenopsis"],
      "medium": "bark", "strength": 0.5}),
    ("dos litros y medio, 20-20-20 en polvo, un cuarto de dosis, esfagno",
     {**POWDER, "volume_l": 2.5, "strength": 0.25, "medium": "sphagnum"}),
    ("2 y medio litros, 20-20-20 soluble", {**POWDER, "volume_l": 2.5}),
    ("medio litro, 20-20-20 polvo, mis phals estan en arlita",
     {**POWDER, "volume_l": 0.5, "medium": "clay_pellets", "genera": ["Phalaenopsis"]}),
    ("litro y 1/2 de agua, 20-20-20 polvo", {**POWDER, "volume_l": 1.5}),
    ("2 litros y 1/4 de la dosis, 20-20-20 polvo", {**POWDER, "volume_l": 2, "strength": 0.25}),
    ("dos mil ml, 20-20-20 polvo", {**POWDER, "volume_l": 2}),
    ("5 litros y media dosis, 20-20-20 polvo", {**POWDER, "volume_l": 5, "strength": 0.5}),
    ("Medio: corteza, 3 l, 20-20-20 polvo, media",
     {**POWDER, "volume_l": 3, "medium": "bark", "strength": 0.5}),
    ("zapatillas de venus en sustrato para orquídeas, 1,5 l, 12-12-12 polvo, cada 15 días",
     {"volume_l": 1.5, "analysis": [12, 12, 12], "form": "powder", "genera": ["Paphiopedilum"],
      "medium": "mixed", "regime": "fortnightly"}),
    ("treinta y cinco litros, 20-10-20 polvo, cimbidios, agosto, dosis completa",
     {"volume_l": 35, "analysis": [20, 10, 20], "form": "powder", "genera": ["Cymbidium"],
      "month": 8, "strength": 1}),
    ("las catleyas están sacando raíces nuevas, 4 l, 13-3-15 polvo, en cada riego",
     {"volume_l": 4, "analysis": [13, 3, 15], "form": "powder", "genera": ["Cattleya"],
      "growth": "new_roots", "regime": "every_watering"}),
    ("dendrobium nobile en reposo invernal, 20-20-20 polvo, mil quinientos ml",
     {**POWDER, "volume_l": 1.5, "genera": ["Dendrobium nobile"], "growth": "resting"}),
    ("cinco litros, 20-20-20 polvo, a la mitad, semanal, otoño",
     {**POWDER, "volume_l": 5, "strength": 0.5, "regime": "weekly", "season": "autumn"}),
    ("4 falenos en macetas de 12 cm con musgo, 800 ml, 20-20-20 polvo, un octavo de dosis",
     {**POWDER, "volume_l": 0.8, "strength": 0.125, "genera": ["Phalaenopsis"], "count": 4,
      "medium": "sphagnum"}),
    ("vandas a raíz desnuda en pleno verano, 10 l de ósmosis, EC objetivo 0,6, 15-5-15 polvo",
     {"volume_l": 10, "analysis": [15, 5, 15], "form": "powder", "genera": ["Vanda"],
      "medium": "mounted", "season": "summer", "water": {"kind": "reverse_osmosis"},
      "target_ec_ms_cm": 0.6}),
    ("80 mg/l de nitrógeno con 15-5-15 polvo, 6 l",
     {"volume_l": 6, "analysis": [15, 5, 15], "form": "powder", "target_n_mg_l": 80}),
    ("13-3-15 +8Ca +2Mg en polvo, 3 l, agua del grifo de 14 dH y 600 uS",
     {"volume_l": 3, "analysis": [13, 3, 15], "extras": {"Ca": 8, "Mg": 2}, "form": "powder",
      "water": {"kind": "tap", "hardness_mg_l_caco3": 249.9, "ec_ms_cm": 0.6}}),
    ("agua de la llave con 25 grados franceses, 2 l, 20-20-20 polvo",
     {**POWDER, "volume_l": 2, "water": {"kind": "tap", "hardness_mg_l_caco3": 250}}),
    ("dos tercios de la dosis de la etiqueta, 5 l 20-20-20 polvo",
     {**POWDER, "volume_l": 5, "strength": 2 / 3}),
    ("al 25 por ciento de la dosis, 5 l 20-20-20 polvo",
     {**POWDER, "volume_l": 5, "strength": 0.25}),
    ("dosis y media, 5 l 20-20-20 polvo", {**POWDER, "volume_l": 5, "strength": 1.5}),
    ("tengo 4 phals y 2 vandas, 20-20-20 polvo, regadera de 5 litros, ¿cuánto?",
     {**POWDER, "volume_l": 5, "genera": ["Phalaenopsis", "Vanda"], "count": 6}),
    ("3 catleyas en macetas de 2 l, 20-20-20 polvo, 5 l",
     {**POWDER, "volume_l": 5, "genera": ["Cattleya"], "count": 3}),
    ("exactamente un cuarto, 20-20-20 polvo, 2 l",
     {**POWDER, "volume_l": 2, "strength": 0.25, "exact": True}),
    ("una taza no, 2 pintas (uk) de 20-20-20 polvo", {**POWDER, "volume_l": 1.1365}),
    ("nueve galones americanos, 20-20-20 polvo", {**POWDER, "volume_l": 34.069}),
    ("en un cuarto con luz, 2 l 20-20-20 polvo", {**POWDER, "volume_l": 2}),
    ("corteza media, temperatura ambiente, 2 l, 20-20-20 polvo",
     {**POWDER, "volume_l": 2, "medium": "bark"}),
    ("oncidios creciendo despacio, 2 l, 20-20-20 polvo, agua de lluvia",
     {**POWDER, "volume_l": 2, "growth": "slow", "genera": ["Oncidium"],
      "water": {"kind": "rain"}}),
    ("abono de floración 10-30-20 en polvo, 2 l, sin prisa",
     {"volume_l": 2, "analysis": [10, 30, 20], "form": "powder"}),
]  # fmt: skip


@pytest.mark.parametrize(("text", "wanted"), DOSES)
def test_a_dose(text: str, wanted: dict[str, Any]) -> None:
    reading = read(text, "es")
    found = slots(reading)
    assert set(found) == set(wanted)
    assert {k: v for k, v in wanted.items() if not same(found[k], v)} == {}
    assert not reading.conflicts
    assert not reading.problems


@pytest.mark.parametrize("text", [text for text, _ in DOSES])
def test_a_dose_is_read_the_same_beside_records(text: str) -> None:
    plain, kept = read(text, "es"), told(text)
    assert kept.order is not None
    assert kept.order.verb == "dose"
    assert slots(kept) == slots(plain)


@pytest.mark.parametrize(
    ("text", "per_litre", "unit"),
    [
        ("2 g por litro según la etiqueta", 2, "g"),
        ("la etiqueta dice 5 ml por cada 2 litros", 2.5, "ml"),
        ("en el bote pone 2 ml al litro", 2, "ml"),
        ("2 g x litro dice la etiqueta", 2, "g"),
        ("2 g el litro", 2, "g"),
        ("una cucharadita y media por litro", 1.5, "tsp"),
        ("media cucharadita en cada litro", 0.5, "tsp"),
        ("etiqueta: para 10 litros 5 g", 0.5, "g"),
        ("1:500", 2, "ml"),
    ],
)
def test_a_label_rate(text: str, per_litre: float, unit: str) -> None:
    rate = read(text, "es").label_rate
    assert rate is not None
    assert (rate.per_litre, rate.unit) == (pytest.approx(per_litre), unit)


# --- what is no dose, or could be two -------------------------------------------------------


@pytest.mark.parametrize(
    ("text", "slot", "code"),
    [
        ("entre 2 y 3 litros, 20-20-20 polvo", "volume_l", "range"),
        ("2 o 3 litros, 20-20-20 polvo", "volume_l", "range"),
        ("de 2 a 3 litros, 20-20-20 polvo", "volume_l", "range"),
        ("menos de 5 l de 20-20-20 polvo", "volume_l", "range"),
        ("como máximo 5 l de 20-20-20 polvo", "volume_l", "range"),
        ("5 l como mucho, 20-20-20 polvo", "volume_l", "range"),
        ("5 l o menos, 20-20-20 polvo", "volume_l", "range"),
        ("menos de la mitad, 20-20-20 polvo", "strength", "range"),
        ("un cuarto o la mitad, 20-20-20 polvo", "strength", "range"),
        ("hasta 5 litros de 20-20-20 polvo", "volume_l", "range"),
        ("un cuarto de dosis para las phals, media para las vandas, 20-20-20 polvo", "strength",
         "several"),
        ("no están en flor, 3 l 20-20-20 polvo", "growth", "negation"),
        ("sin esfagno, 3 l 20-20-20 polvo", "medium", "negation"),
        ("corteza no, 3 l 20-20-20 polvo", "medium", "negation"),
        ("ya no están en flor, 3 l 20-20-20 polvo", "growth", "negation"),
        ("2 l para cada una, 20-20-20 polvo", "number", "product_of_numbers"),
        ("no las abono en invierno, 3 l 20-20-20 polvo", "season", "negation"),
        ("2 litros y 3 litros de 20-20-20 polvo", "volume_l", "several"),
        ("phals en corteza y vandas en esfagno, 20-20-20 polvo", "medium", "several"),
        ("1.500 ml, 20-20-20 polvo", "volume_l", "ambiguous_number"),
        ("3 litros cada una para 4 phals, 20-20-20 polvo", "number", "product_of_numbers"),
        ("la regadera medio llena, 20-20-20 polvo", "number", "product_of_numbers"),
    ],
)  # fmt: skip
def test_a_doubt_is_asked(text: str, slot: str, code: str) -> None:
    reading = read(text, "es")
    assert [(c.slot, c.code) for c in reading.conflicts] == [(slot, code)]
    if slot != "number":
        assert value(reading, slot) is None


@pytest.mark.parametrize(
    ("text", "slot", "shown"),
    [
        ("la última vez puse 5 l, 20-20-20 polvo", "volume_l", "5 l"),
        ("hace tres semanas les di la mitad, 20-20-20 polvo", "strength", "la mitad"),
        ("me dio la mitad de un bote 20-20-20", "strength", "la mitad"),
        ("20-20-20 polvo, 15 % de descuento", "strength", "15 % de descuento"),
        ("20-20-20 polvo, humedad del 60 %", "strength", "humedad del 60 %"),
        ("20-20-20 polvo, la regadera a la mitad", "strength", "la regadera a la mitad"),
        ("dosis media, 20-20-20 polvo", "strength", "media"),
        ("la mitad de mis phals en flor, 20-20-20 polvo", "strength", "la mitad de mis"),
        ("2 veces por semana, 20-20-20 polvo", "regime", "2 veces por semana"),
        ("lavo cada mes, 20-20-20 polvo", "regime", "cada mes"),
        ("100 ml por planta, 20-20-20 polvo", "volume_l", "100 ml por planta"),
        ("dos tapones, 20-20-20 polvo", "label_rate", "dos tapones"),
        ("comprada el 15-05-20, polvo", "analysis", "15-05-20"),
        ("4 botellas de 2 l, 20-20-20 polvo", "count", "4 botellas"),
        ("agua blanda, 20-20-20 polvo", "water", "agua blanda"),
        ("mitad corteza, mitad perlita, 20-20-20 polvo", "strength", "mitad"),
        ("polvo con 20 % de nitrógeno, 20-10-15", "strength", "20 % de nitrógeno"),
        ("el 50 % de mis phals en flor, 20-20-20 polvo", "strength", "50 % de mis"),
        ("el doble de agua, 20-20-20 polvo", "strength", "el doble de"),
        ("mitad lluvia, mitad grifo, 20-20-20 polvo", "strength", "mitad"),
        ("bajo malla del 50 %, 20-20-20 polvo", "strength", "malla del 50 %"),
        ("2/3 de las hojas se cayeron, 20-20-20 polvo", "strength", "2/3 de las"),
        ("le puse doble dosis la semana pasada, 20-20-20 polvo", "strength", "doble dosis"),
        ("llevan 3 años conmigo, 20-20-20 polvo", "count", "3 años"),
    ],
)  # fmt: skip
def test_what_is_of_something_else_is_shown_and_not_taken(text: str, slot: str, shown: str) -> None:
    reading = read(text, "es")
    assert value(reading, slot) is None
    assert shown in [u.text for u in reading.unknown]


def test_a_negation_beside_what_holds_takes_nothing_away() -> None:
    reading = read("nada de esfagno, corteza, 5 l 20-20-20 polvo", "es")
    assert reading.medium == "bark"


@pytest.mark.parametrize(
    ("text", "read_as"),
    [
        (
            "cortesa, 2 l 20-20-20 polvo, dosis muy floja",
            {"dosis muy floja": "1/8", "cortesa": "bark"},
        ),
        ("falenopcis, esfango, 2 l", {"falenopcis": "Phalaenopsis", "esfango": "sphagnum"}),
    ],
)
def test_a_slip_is_read_and_shown(text: str, read_as: dict[str, str]) -> None:
    assert {r.text: r.meaning for r in read(text, "es").read_as} == read_as


@pytest.mark.parametrize(
    "text",
    [
        "la mosca blanca",
        "un buen corte",
        "la costa está lejos",
        "un plato hondo",
        "la boca del tubo",
        "cambiar y guardar",
        "un mensaje de texto",
        "cuesta cuidarla",
    ],
)
def test_everyday_words_are_no_slips(text: str) -> None:
    reading = read(text, "es")
    assert not reading.read_as
    assert slots(reading) == {}


# --- orders to the records --------------------------------------------------------------------

VERBS = {
    "add": [
        "añade 3 phals en corteza, macetas de 12 cm, cocina",
        "tengo una masdevallia en esfagno llamada Rosa",
        "hoy compré dos cattleyas, corteza, maceta de 10 cm",
        "nueva planta: dendrobium nobile llamado Nobby, corteza, ventana este",
        "me regalaron 2 falenopsis en corteza",
    ],
    "rename": ["renombra Ruby a Rubí", "llama a la vanda Azul", "Ruby ahora se llama Rubí"],
    "move": [
        "mueve a Ruby al balcón", "pon a Ruby en el balcón", "moví todas las vandas al invernadero",
        "muévelas al baño", "Ruby vive ahora en el baño",
    ],
    "repot": ["trasplanté la vanda hoy", "ayer trasplanté a Ruby a corteza, maceta de 10 cm"],
    "growth": ["Ruby tiene una vara nueva", "Ruby está en reposo", "las vandas están creciendo"],
    "lose": ["se me murió Ruby", "vendí a Blancanieves", "perdí la cattleya pequeña"],
    "correct": ["Ruby está en corteza, maceta de 9 cm", "Ruby necesita 200 ml"],
    "plants": ["mis plantas", "¿qué tengo en el balcón?", "muéstrame mis plantas"],
    "product": ["mi polvo es 20-20-20, etiqueta 1 g por litro, llámalo bote rojo"],
    "product_change": ["el bote azul cuesta 12 € por 500 g"],
    "product_remove": ["se acabó el bote azul"],
    "product_default": ["usa la botella verde de ahora en adelante"],
    "shelf": ["¿qué abonos tengo?"],
    "lacking": ["¿qué le falta al bote azul?"],
    "choose": ["¿cuál de mis abonos es mejor para Ruby en flor?"],
    "water": ["mi agua del grifo tiene 14 dH", "Ca 80, Mg 12, bicarbonatos 240 mg/l"],
    "water_for": ["las masdevallias reciben ósmosis"],
    "water_suits": ["¿mi agua es buena para masdevallias?"],
    "water_mix": ["mezcla grifo y ósmosis hasta 6 dH"],
    "meter": ["mi medidor marca 0,9", "la mezcla marca 450 ppm"],
    "kit": ["mi báscula marca 0,1 g", "a mi regadera le caben 5 l"],
    "home": ["vivo en Sevilla", "hemisferio sur"],
    "fed": ["aboné a Ruby", "le di abono a Ruby", "las aboné ayer"],
    "clear": ["agua sola para Ruby", "regué a Ruby"],
    "flush": ["lavé a Ruby y a Blancanieves el 3 de noviembre", "hice un lavado a Ruby"],
    "reading": ["drenaje de Ruby 1,6"],
    "undo": ["deshaz eso", "me equivoqué"],
    "rescue": [
        "puntas de las raíces marrones y costra blanca en Ruby", "¿qué le pasa a Blancanieves?",
        "Ruby tiene las raíces podridas", "las hojas de Ruby están arrugadas",
    ],
    "compare": ["compara bote azul y botella verde", "¿cuál es más barato?"],
    "history": ["¿qué le di a Ruby desde octubre?", "¿cuándo aboné las phals?"],
    "picture_year": ["muestra mi año"],
    "picture_salts": ["gráfico de las sales de Ruby"],
    "picture_card": ["hazme una tarjeta", "una ficha para 3 litros"],
    "salts": ["¿cómo de salada está Ruby?"],
    "stock": ["haz 500 ml de solución madre del bote azul"],
    "together": ["¿puedo mezclar bote azul y botella verde en una botella?"],
    "supplement": ["¿me falta calcio?"],
    "pets": ["¿es tóxico para mi gato?"],
    "remedy": ["¿puedo darles café?"],
    "judge": ["2 cucharadas de 20-20-20 en 10 l, ¿es demasiado?"],
    "language": ["idioma: inglés"],
    "explain": ["¿qué es la EC?"],
    "plan": ["¿qué toca hoy?", "plan para el domingo"],
    "done": ["hecho", "hecho 1 y 3"],
    "export": ["exporta en csv"],
    "forget": ["borra todos mis datos"],
    "follow_up": ["que sean 3 litros", "la mitad de eso", "¿y para las masdevallias?"],
    "why": ["¿por qué?"],
    "more": ["más"],
    "help": ["ayuda"],
    "yes": ["sí, por favor", "vale"],
    "no": ["no, gracias", "déjalo"],
    "dose": [
        "dosis para las phals", "¿cuánto para Ruby?", "abono para las phals, media dosis",
    ],
    "reminders": ["mis recordatorios"],
    "reminder_stop": ["cancela el recordatorio 2", "deja de recordarme las vandas"],
    "reminder_skip": ["esta semana no", "sáltalo esta vez"],
    "reminder_pause": ["pausa los recordatorios hasta enero", "estoy fuera hasta el 3 de junio"],
    "reminder_resume": ["reanuda los recordatorios"],
    "reminder_quiet": ["no me avises después de las 9 de la noche"],
    "reminder_move": ["pásalo al lunes", "aplázalo dos días"],
}  # fmt: skip


@pytest.mark.parametrize(
    ("text", "verb"), [(text, verb) for verb, texts in VERBS.items() for text in texts]
)
def test_the_verb(text: str, verb: str) -> None:
    assert order(text).verb == verb


@pytest.mark.parametrize(
    ("text", "plants"),
    [
        ("añade 3 phals en corteza, macetas de 12 cm, cocina",
         [PlantSaid("Phalaenopsis", 3, medium="bark", pot_cm=12.0, place="cocina")]),
        ("tengo una masdevallia en esfagno llamada Rosa",
         [PlantSaid("Masdevallia", name="Rosa", medium="sphagnum")]),
        ("añade 2 phals en corteza y una vanda montada, balcón",
         [PlantSaid("Phalaenopsis", 2, medium="bark", place="balcón"),
          PlantSaid("Vanda", medium="mounted", place="balcón")]),
        ("añade dos phals blancas y un cymbidium rojo en corteza",
         [PlantSaid("Phalaenopsis", 2, traits=("blanca",)),
          PlantSaid("Cymbidium", traits=("rojo",), medium="bark")]),
        ("añade una cattleya blanca en la ventana de la cocina",
         [PlantSaid("Cattleya", traits=("blanca",), place="ventana de la cocina")]),
    ],
)  # fmt: skip
def test_plants_to_add(text: str, plants: list[PlantSaid]) -> None:
    assert list(order(text).plants) == plants


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("aboné todas las phals menos Blancanieves",
         {"genera": ("Phalaenopsis",), "everything": True, "not_names": ("Blancanieves",)}),
        ("lavé todo en la repisa de la cocina",
         {"everything": True, "place": "repisa de la cocina"}),
        ("lavé a Ruby y a Blancanieves", {"names": ("Ruby", "Blancanieves")}),
        ("perdí la cattleya pequeña", {"genera": ("Cattleya",), "traits": ("pequeña",)}),
        ("lavé las phals blancas", {"genera": ("Phalaenopsis",), "traits": ("blanca",)}),
        ("muévelas al baño", {"again": True}),
    ],
)  # fmt: skip
def test_which_plants_are_meant(text: str, expected: dict[str, Any]) -> None:
    target = order(text).target
    assert {name: getattr(target, name) for name in expected} == expected


@pytest.mark.parametrize(
    ("said", "when"),
    [
        ("hoy", When("day", 0)), ("ayer", When("day", 1)), ("anteayer", When("day", 2)),
        ("hace 3 días", When("day", 3)), ("hace dos semanas", When("day", 14)),
        ("hace una semana", When("day", 7)), ("hace un mes", When("day", 30)),
        ("el domingo pasado", When("weekday", 7)), ("el 3 de noviembre", When("date", 11, 3)),
        ("el 14 de marzo de 2025", When("date", 3, 14, 2025)),
    ],
)  # fmt: skip
def test_the_day(said: str, when: When) -> None:
    assert order(f"lavé a Ruby {said}").when == when


def test_signs_of_an_ailing_plant() -> None:
    found = order("Ruby tiene costra blanca, las raíces blandas y las hojas arrugadas")
    assert found.verb == "rescue"
    assert set(found.signs) == {"white_crust", "mushy_roots", "pleated_leaves"}
    assert order("Ruby tiene las raíces firmes pero las hojas amarillas").signs == (
        "firm_roots", "yellow_old_leaf",
    )  # fmt: skip
    assert "white_crust" in order("Ruby tiene las raíces podridas, no hay costra").denied


@pytest.mark.parametrize(
    ("text", "amount", "unit", "volume_l"),
    [
        ("eché una cucharadita en litro y medio, ¿es demasiado?", 1, "tsp", 1.5),
        ("media cucharada de 20-20-20 en 2 litros y medio, ¿es mucho?", 1.5, "tsp", 2.5),
        ("eché 5 g en un litro, ¿está bien?", 5, "g", 1),
    ],
)
def test_an_amount_to_judge(text: str, amount: float, unit: str, volume_l: float) -> None:
    found = order(text)
    assert (found.verb, found.amount, found.unit) == ("judge", amount, unit)
    assert told(text).volume_l == volume_l


@pytest.mark.parametrize(
    ("text", "verb"),
    [
        ("¿aboné las vandas la semana pasada?", "history"), ("¿he regado a Ruby?", "history"),
        ("aboné las vandas la semana pasada", "fed"), ("he regado a Ruby", "clear"),
        ("lavé todo ayer. ¿dosis para 6 litros hoy?", "dose"),
    ],
)  # fmt: skip
def test_what_was_done_is_asked_in_the_words_that_tell_it(text: str, verb: str) -> None:
    assert order(text).verb == verb


def test_a_water_report() -> None:
    found = order("mi agua: calcio 80, magnesio 12, sodio 20, bicarbonatos 240, sulfatos 35 mg/l")
    assert found.ions == {"Ca": 80, "Mg": 12, "Na": 20, "HCO3": 240, "SO4": 35}


# --- reminders --------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("said", "wanted"),
    [
        ("cada día", Rhythm(1, "day")), ("todos los días", Rhythm(1, "day")),
        ("un día sí y otro no", Rhythm(2, "day")), ("cada 10 días", Rhythm(10, "day")),
        ("cada semana", Rhythm(1, "week")), ("una vez por semana", Rhythm(1, "week")),
        ("cada dos semanas", Rhythm(2, "week")), ("cada quince días", Rhythm(2, "week")),
        ("cada quincena", Rhythm(2, "week")), ("cada 2 meses", Rhythm(2, "month")),
        ("mensualmente", Rhythm(1, "month")), ("dos veces al año", Rhythm(6, "month")),
        ("dos veces al mes", Rhythm(1, "month", month_days=(1, 15))),
        ("los lunes", Rhythm(1, "week", (1,))), ("todos los lunes", Rhythm(1, "week", (1,))),
        ("cada lunes y viernes", Rhythm(1, "week", (1, 5))),
        ("los martes, jueves y sábados", Rhythm(1, "week", (2, 4, 6))),
        ("de lunes a viernes", Rhythm(1, "week", (1, 2, 3, 4, 5))),
        ("cada 3 semanas el miércoles", Rhythm(3, "week", (3,))),
        ("el primer domingo de cada mes", Rhythm(1, "month", (7,), (1,))),
        ("el último viernes del mes", Rhythm(1, "month", (5,), (-1,))),
        ("el 1 y el 15 de cada mes", Rhythm(1, "month", month_days=(1, 15))),
        ("el día 15 de cada mes", Rhythm(1, "month", month_days=(15,))),
        ("cada mañana", Rhythm(1, "day", part="morning")),
        ("en 3 semanas", Rhythm(ahead=(3, "week"))),
        ("la semana que viene", Rhythm(ahead=(1, "week"))),
        ("en media hora", Rhythm(ahead=(30, "minute"))),
        ("dentro de un mes", Rhythm(ahead=(1, "month"))),
        ("mañana", Rhythm(day=When("day", -1))),
        ("pasado mañana", Rhythm(day=When("day", -2))),
        ("mañana por la mañana", Rhythm(day=When("day", -1), part="morning")),
        ("esta noche", Rhythm(day=When("day", 0), part="evening")),
        ("el viernes", Rhythm(day=When("weekday", 5))),
        ("el próximo viernes", Rhythm(day=When("weekday", 5))),
        ("el viernes que viene", Rhythm(day=When("weekday", 5))),
        ("el 3 de marzo", Rhythm(day=When("date", 3, 3))),
        ("el 3 de marzo de 2027", Rhythm(day=When("date", 3, 3, 2027))),
        ("el día 15", Rhythm(month_days=(15,))), ("el 15", Rhythm(month_days=(15,))),
        ("en marzo", Rhythm(day=When("of_month", 3))), ("en primavera", Rhythm(season="spring")),
    ],
)  # fmt: skip
def test_how_often_and_when(said: str, wanted: Rhythm) -> None:
    found = order(f"recuérdame lavar {said}")
    assert (found.verb, found.task, found.rhythm) == ("remind", "flush", wanted)


@pytest.mark.parametrize(
    ("said", "clock", "guessed"),
    [
        ("a las 9", (9, 0), True), ("a las 18", (18, 0), False), ("a las 18h", (18, 0), False),
        ("a las 18 horas", (18, 0), False), ("a las 9 de la mañana", (9, 0), False),
        ("a las 9 de la noche", (21, 0), False), ("a las 4 de la tarde", (16, 0), False),
        ("a las ocho y media", (8, 30), True), ("a las 9 y cuarto", (9, 15), True),
        ("a las diez menos cuarto", (9, 45), True), ("a las 7:30", (7, 30), False),
        ("al mediodía", (12, 0), False), ("a las 12 de la noche", (0, 0), False),
        ("a las 8 y media de la tarde", (20, 30), False),
    ],
)  # fmt: skip
def test_the_clock_time(said: str, clock: tuple[int, int], guessed: bool) -> None:
    rhythm = order(f"recuérdame lavar cada día {said}").rhythm
    assert rhythm is not None
    assert (rhythm.clock, rhythm.half_guessed, rhythm.doubt) == (clock, guessed, "")


@pytest.mark.parametrize(
    ("said", "field", "wanted"),
    [
        ("cada semana hasta octubre", "until", When("of_month", 10)),
        ("cada semana hasta el 3 de marzo", "until", When("date", 3, 3)),
        ("cada semana durante 6 semanas", "span", (6, "week")),
        ("cada 2 semanas empezando el lunes", "start", When("weekday", 1)),
        ("cada día desde mañana", "start", When("day", -1)),
        ("cada semana de mayo a septiembre", "months", (5, 6, 7, 8, 9)),
        ("cada semana en mayo y junio", "months", (5, 6)),
        ("cada semana durante el verano", "season", "summer"),
        ("cada semana en invierno", "season", "winter"),
        ("dos veces por semana", "doubt", "which_days"), ("de vez en cuando", "doubt", "vague"),
        ("cada 2 o 3 semanas", "doubt", "range"), ("cada hora", "doubt", "too_often"),
        ("bimensual", "doubt", "two_meanings"),
        ("cada día a las 8 y a las 18", "doubt", "two_times"),
    ],
)  # fmt: skip
def test_the_rest_of_a_rhythm(said: str, field: str, wanted: object) -> None:
    rhythm = order(f"recuérdame lavar {said}").rhythm
    assert rhythm is not None
    assert getattr(rhythm, field) == wanted


@pytest.mark.parametrize(
    ("text", "task", "words"),
    [
        ("recuérdame lavar a Ruby el domingo", "flush", ""),
        ("recuérdame el sábado comprar corteza", "other", "comprar corteza"),
        ("recuérdame que tengo que abonar las vandas el lunes", "feed", ""),
        ("recuérdame abonar cada 2 semanas por favor", "feed", ""),
        ("recuérdame no abonar a Ruby en diciembre", "other", "no abonar a Ruby"),
        ("avísame mañana para regar", "water", ""),
        ("recuérdame en una semana", "", ""),
    ],
)
def test_what_a_reminder_is_for(text: str, task: str, words: str) -> None:
    found = order(text)
    assert (found.verb, found.task, found.text) == ("remind", task, words)


@pytest.mark.parametrize(
    "text",
    [
        "lavar el domingo",
        "regar las orquídeas mañana",
        "abonar las phals el sábado",
        "el 3 de marzo regar los cymbidium",
        "los lunes a las 9",
        "cada día a las 7:30",
        "lavar las phals cada 4 semanas los domingos",
    ],
)
def test_a_day_to_come_makes_it_a_reminder(text: str) -> None:
    assert order(text).verb == "remind"


@pytest.mark.parametrize(
    ("text", "verb"),
    [
        ("abonar las phals cada semana", "dose"), ("cada domingo", "dose"),
        ("abono el domingo, 3 l, 20-20-20", "dose"), ("lavé a Ruby el domingo", "flush"),
        ("regué el balcón ayer a las 9", "clear"), ("¿qué toca el domingo?", "plan"),
        ("moví a Ruby al balcón el domingo", "move"), ("trasplanté a Ruby el viernes", "repot"),
        ("para 5 litros, ¿cuánto abono?", "dose"), ("basta", "no"), ("luego", "skip"),
    ],
)  # fmt: skip
def test_what_is_no_reminder_stays_what_it_was(text: str, verb: str) -> None:
    assert order(text).verb == verb


@pytest.mark.parametrize(
    ("text", "hours"),
    [
        ("no me avises después de las 9 de la noche", ((21, 0), None)),
        ("no me avises antes de las 8", (None, (8, 0))),
        ("silencio de 22 a 7", ((22, 0), (7, 0))),
    ],
)
def test_quiet_hours(text: str, hours: object) -> None:
    assert order(text).hours == hours


# --- found while walking through a season ----------------------------------------------

_RUN_ON = {"volume_l": 2, "analysis": [20, 20, 20], "form": "powder", "medium": "bark"}


@pytest.mark.parametrize(
    ("text", "wanted"),
    [
        ("2 l 20-20-20 polvo corteza media dosis", {**_RUN_ON, "strength": 0.5}),
        ("dosis completa 2 l en verano corteza 20-20-20 polvo",
         {**_RUN_ON, "strength": 1, "season": "summer"}),
        ("2 l / corteza / 20-20-20 / polvo / media / otoño",
         {**_RUN_ON, "strength": 0.5, "season": "autumn"}),
        ("un litro y medio dosis completa 20-20-20 polvo corteza",
         {**_RUN_ON, "volume_l": 1.5, "strength": 1}),
        ("un litro y medio doble dosis 20-20-20 polvo corteza",
         {**_RUN_ON, "volume_l": 1.5, "strength": 2}),
        ("corteza 20-20-20 polvo 2 l dos quintos de dosis", {**_RUN_ON, "strength": 0.4}),
    ],
)  # fmt: skip
def test_a_strength_is_not_lost_in_a_run_of_words(text: str, wanted: dict[str, Any]) -> None:
    for reading in (read(text, "es"), told(text)):
        assert {k: v for k, v in wanted.items() if not same(value(reading, k), v)} == {}
        assert not reading.unknown


def test_a_half_that_may_be_the_strength_is_shown() -> None:
    reading = read("polvo 20-20-20 media 5 l", "es")
    assert reading.strength is None
    assert [u.text for u in reading.unknown] == ["media"]


@pytest.mark.parametrize("text", ["un cuarto", "2 l 20-20-20 polvo, un cuarto de dosis"])
def test_a_quarter_is_no_room_of_that_name(text: str) -> None:
    reading = read(text, "es", names=Names(places=("cuarto",)))
    assert reading.strength == 0.25
    assert reading.order is not None
    assert reading.order.target.place is None


def test_a_room_of_that_name_stays_one() -> None:
    names = Names(plants=("Ruby",), places=("cuarto",))
    found = read("pon a Ruby en el cuarto", "es", names=names).order
    assert found is not None
    assert (found.verb, found.place) == ("move", "cuarto")
    assert order("Ruby está en el cuarto de baño").place == "cuarto de baño"


@pytest.mark.parametrize(
    ("text", "per_litre", "unit"),
    [
        ("mi polvo es 20-20-20, etiqueta 1 g por litro, llámalo saco", 1, "g"),
        ("mi líquido es 8-2-6, 4 ml por litro, llámalo frasco", 4, "ml"),
    ],
)
def test_the_label_rate_of_a_product(text: str, per_litre: float, unit: str) -> None:
    reading = told(text)
    assert reading.order is not None
    assert reading.order.verb == "product"
    assert reading.order.label.pack_size is None
    assert reading.label_rate is not None
    assert (reading.label_rate.per_litre, reading.label_rate.unit) == (per_litre, unit)


@pytest.mark.parametrize(
    ("text", "verb"),
    [
        ("quita 1", "reminder_stop"), ("cancela 2", "reminder_stop"), ("cancela", "no"),
        ("quita la vanda", "lose"), ("nada de avisos durante diez días", "reminder_pause"),
        ("ayer lavé a Ruby para quitar las sales", "flush"),
        ("se me ha muerto Ruby, se pudrió entera", "lose"),
        ("uy, me he equivocado, bórralo", "undo"), ("q toca hoy", "plan"), ("xq?", "why"),
    ],
)  # fmt: skip
def test_what_was_not_understood_at_first(text: str, verb: str) -> None:
    assert order(text).verb == verb


def test_a_number_says_which_reminder() -> None:
    assert order("quita 1").steps == (1,)


def test_a_name_may_stand_before_what_it_is_for() -> None:
    found = order("llama Azul a la vanda")
    assert (found.verb, found.name, found.target.genera) == ("rename", "Azul", ("Vanda",))


def test_one_of_a_kind_is_one() -> None:
    assert order("regalé una vanda a mi vecina").count == 1
    assert order("regalé las vandas a mi vecina").count is None


def test_when_it_was_flushed_asks_for_flushes() -> None:
    assert order("¿cuándo lavé a Ruby por última vez?").asks_kind == "flush"


def test_the_first_of_a_month_is_no_trait() -> None:
    assert order("recuérdame lavar cada primer domingo a las 9").target.traits == ()


def test_so_much_for_each_is_not_the_can() -> None:
    reading = read("200 ml para cada una de mis 6 cattleyas, polvo 15-15-15", "es")
    assert reading.volume_l is None
    assert [c.code for c in reading.conflicts] == ["product_of_numbers"]


def test_a_window_to_the_east() -> None:
    assert order("pon a Ruby en la ventana este").place == "ventana este"


# --- parts of cans, comparisons, corrections ------------------------------------------------

PARTS_OF_CANS: list[tuple[str, float, float | None]] = [
    ("media regadera de 10 litros", 5, None), ("la mitad de una regadera de 10 litros", 5, None),
    ("medio cubo de 10 litros, 1/4 de dosis", 5, 0.25),
    ("tres cuartos de una botella de 2 litros", 1.5, None),
    ("media dosis en la regadera de 5 l", 5, 0.5), ("dos regaderas de 5 litros cada una", 10, None),
    ("regadera de 5 litros pero solo lleno 2 litros", 2, None),
    ("2 l, la mitad de media dosis", 2, 0.25), ("2 l, tres cuartos menos que la etiqueta", 2, 0.25),
    ("2 l, reducir un 75 %", 2, 0.25), ("2 l a media dosis, perdón, quise decir 3 l", 3, 0.5),
    ("5 litros, no espera, 4 litros", 4, None),
    ("3 l, media dosis, mejor dicho un cuarto", 3, 0.25),
]  # fmt: skip


@pytest.mark.parametrize(("text", "volume_l", "strength"), PARTS_OF_CANS)
def test_parts_comparisons_and_corrections_are_reckoned(
    text: str, volume_l: float, strength: float | None
) -> None:
    reading = read(f"{text}, 20-20-20 polvo", "es")
    assert reading.volume_l == volume_l
    assert reading.strength == strength
    assert not reading.conflicts


ASKED_OF_CANS = [
    "regadera de 10 l, la lleno dos tercios", "regadera de 10 l, solo lleno la mitad",
    "3 x botellas de 2 l", "2 l, media dosis es demasiado", "2 l, media dosis las quemó",
    "2 l, más flojo que la mitad", "2 l, 1/2 dosis menos un poco",
    "2 l, nada más fuerte que un cuarto", "4 phals 2 l cada una",
]  # fmt: skip


@pytest.mark.parametrize("text", ASKED_OF_CANS)
def test_unclear_parts_and_comparisons_are_asked_about(text: str) -> None:
    reading = read(f"{text}, 20-20-20 polvo", "es")
    assert reading.conflicts
    assert reading.strength is None
