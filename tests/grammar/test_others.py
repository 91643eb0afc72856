"""What is told of somebody else's plants, water and feed is no change to one's own."""

from __future__ import annotations

import pytest

from grammar import Names, Order, read

NAMES = Names(plants=("Hugo", "Mia", "Ruby"), products=("blue",), places=("balcony", "Balkon"))


def order(text: str, language: str = "en") -> Order:
    found = read(text, language, names=NAMES).order
    assert found is not None
    return found


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "a lady lost a phal"), ("en", "a lady from the club lost her phal"),
        ("en", "she lost two phals"), ("en", "he repotted the cattleyas"),
        ("en", "a member fed his paphs yesterday"), ("en", "my friend lost a phal"),
        ("en", "anna from the club flushed her paphs today"),
        ("en", "member's phal has a new spike"), ("en", "a beginner bought a masdevallia"),
        ("en", "our member moved her phals to the balcony"), ("en", "a lady fed all her orchids"),
        ("de", "eine Dame hat eine Phal verloren"), ("de", "er hat die Cattleyas umgetopft"),
        ("de", "einer Frau ist die Phal eingegangen"),
        ("de", "ein Mitglied hat gestern seine Paphs gedüngt"),
        ("de", "ein Anfänger hat eine Masdevallia gekauft"),
        ("es", "una señora perdió una phal"), ("es", "él trasplantó las cattleyas"),
        ("es", "a una señora del club se le murió la phal"),
        ("es", "un socio abonó sus paphs ayer"), ("es", "la phal de un socio tiene una vara nueva"),
        ("pl", "jednej pani padła falka"), ("pl", "on przesadził katleje"),
        ("pl", "członek klubu nawiózł wczoraj swoje falki"), ("pl", "ona straciła dwie falki"),
        ("pl", "falka członkini klubu ma nowy pęd"), ("pl", "początkująca kupiła masdevallię"),
    ],
)  # fmt: skip
def test_changes_to_plants_of_somebody_else_are_none(language: str, text: str) -> None:
    found = order(text, language)
    assert (found.verb, found.text) == ("not_changed", "others")


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "her tap is 25 dH"), ("en", "annas tap is 25 dH"), ("en", "he has 25 dH"),
        ("en", "for her water of 20 dH"), ("en", "someone waters with 25 dH"),
        ("de", "ihr Leitungswasser hat 25 dH"), ("de", "Annas Leitungswasser hat 25 dH"),
        ("es", "su agua del grifo tiene 25 dH"), ("pl", "jej kranówka ma 25 dH"),
    ],
)  # fmt: skip
def test_the_water_of_somebody_else_is_not_put_on_record(language: str, text: str) -> None:
    found = order(text, language)
    assert (found.verb, found.text) == ("not_changed", "water")


@pytest.mark.parametrize(
    ("language", "text", "verb"),
    [
        ("en", "someone in the club has rot on a cattleya", "rescue"),
        ("en", "friend: brown root tips on paph", "rescue"),
        ("en", "someone in our club fed her paphs too much", "rescue"),
        ("en", "member's vandas have yellow leaves", "rescue"),
        ("en", "a friend has a cattleya with black tips, feeds 2 g/l weekly", "rescue"),
        ("en", "someone in the club has 20-20-20, can she use it on her paphs", "dose"),
        ("de", "die Paph von einem Freund hat Wurzelfäule", "rescue"),
        ("de", "jemand im Verein hat Fäule an einer Cattleya", "rescue"),
        ("es", "una amiga tiene podredumbre en una vanda", "rescue"),
        ("es", "amiga: puntas de raíces marrones en paph", "rescue"),
        ("pl", "koleżanka ma zgniliznę na vandzie", "rescue"),
        ("pl", "koleżanka: brązowe końcówki korzeni u paph", "rescue"),
    ],
)  # fmt: skip
def test_what_is_asked_of_somebody_else_is_of_no_plant_on_record(
    language: str, text: str, verb: str
) -> None:
    found = order(text, language)
    assert (found.verb, found.theirs) == (verb, True)


@pytest.mark.parametrize(
    ("language", "text", "verb"),
    [
        ("en", "my wife fed the phals", "fed"), ("en", "my wife fed her phals", "fed"),
        ("en", "my husband lost a phal", "lose"), ("en", "she is flowering", "growth"),
        ("en", "repotted him", "repot"), ("en", "fed her", "fed"),
        ("en", "someone fed the phals", "fed"),
        ("en", "she has root rot", "rescue"), ("en", "she repotted my phals", "repot"),
        ("en", "a friend says my phal has root rot", "rescue"),
        ("en", "i got a phal from a lady at the club", "add"),
        ("en", "bought a paph from a member of the club", "add"),
        ("en", "at the club i bought a masdevallia", "add"), ("en", "sadly lost a phal", "lose"),
        ("en", "im a beginner, my tap is 20 dH", "water"), ("en", "tap 25 dH", "water"),
        ("de", "meine Frau hat die Phals gedüngt", "fed"), ("de", "sie blüht", "growth"),
        ("de", "habe sie gedüngt", "fed"), ("de", "im Verein eine Masdevallia gekauft", "add"),
        ("de", "die Frau hat die Phals gedüngt", "fed"), ("es", "mi señora abonó las phals", "fed"),
        ("es", "mi mujer abonó las phals", "fed"), ("es", "el grifo tiene 25 dH", "water"),
        ("es", "compré una masdevallia a una señora", "add"),
        ("es", "se me murió una phal", "lose"),
        ("pl", "mąż nawiózł falki", "fed"), ("pl", "ona kwitnie", "growth"),
        ("pl", "kupiłam masdevallię od pani z klubu", "add"), ("pl", "padła mi falka", "lose"),
    ],
)  # fmt: skip
def test_one_s_own_stay_one_s_own(language: str, text: str, verb: str) -> None:
    found = order(text, language)
    assert (found.verb, found.theirs) == (verb, False)


@pytest.mark.parametrize(
    ("language", "text", "count"),
    [
        ("en", "gave 1 phal to mum", 1), ("en", "gave 2 paphs to a member", 2),
        ("de", "1 Phal meiner Schwester gegeben", 1), ("de", "habe eine Phal an Mama gegeben", 1),
        ("es", "di 1 phal a una señora del club", 1), ("pl", "dałam 1 falkę pani z klubu", 1),
        ("en", "1 cattleya rotted, threw it out", 1),
        ("en", "one phal rotted and went in the bin", 1),
        ("de", "1 Cattleya verfault, weggeworfen", 1), ("es", "1 cattleya se pudrió, la tiré", 1),
        ("pl", "1 katleja zgniła, wyrzuciłam ją", 1),
    ],
)  # fmt: skip
def test_what_was_given_away_or_thrown_out_is_gone(language: str, text: str, count: int) -> None:
    found = order(text, language)
    assert (found.verb, found.count) == ("lose", count)


@pytest.mark.parametrize(
    ("language", "text", "verb"),
    [
        ("en", "gave feed to the phals", "fed"), ("de", "den Phals Dünger gegeben", "fed"),
        ("es", "di abono a las phals", "fed"), ("en", "cattleya is rotting", "rescue"),
        ("en", "got 2 phals from mum", "add"), ("en", "rot on the vanda, lost all roots", "rescue"),
        ("en", "3 seedlings died", "not_told"), ("de", "3 Sämlinge eingegangen", "not_told"),
        ("es", "3 plántulas murieron", "not_told"), ("pl", "3 siewki padły", "not_told"),
        ("en", "the sick one died", "not_told"),
    ],
)  # fmt: skip
def test_what_only_sounds_like_a_loss_takes_nothing_off(
    language: str, text: str, verb: str
) -> None:
    assert order(text, language).verb == verb


@pytest.mark.parametrize(
    ("language", "text", "verb", "count"),
    [
        ("en", "2 of the phals are in 7 cm pots now", "correct", 2),
        ("en", "2 of my phals are in bark", "correct", 2), ("en", "fed 2 of the phals", "fed", 2),
        ("en", "one of the vandas has root rot", "rescue", 1),
        ("de", "zwei von den Phals sind jetzt in 7 cm Töpfen", "correct", 2),
        ("de", "eine der Vandas hat Wurzelfäule", "rescue", 1),
        ("es", "2 de las phals están en macetas de 7 cm ahora", "correct", 2),
        ("es", "una de las vandas tiene podredumbre de raíces", "rescue", 1),
        ("pl", "2 z falek są teraz w doniczkach 7 cm", "correct", 2),
        ("pl", "jedna z falek ma zgniłe korzenie", "rescue", 1),
        ("en", "the phals are in 7 cm pots now", "correct", None),
    ],
)  # fmt: skip
def test_some_of_several_alike(language: str, text: str, verb: str, count: int | None) -> None:
    reading = read(text, language, names=NAMES)
    assert reading.order is not None
    assert (reading.order.verb, reading.count) == (verb, count)


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "paphs roots are 10 cm long"), ("en", "phal leaf is 20 cm long"),
        ("de", "Wurzeln der Paphs sind 10 cm lang"), ("es", "las raíces de la paph miden 10 cm"),
        ("pl", "korzenie falki mają 10 cm"),
    ],
)  # fmt: skip
def test_the_length_of_a_part_is_no_pot(language: str, text: str) -> None:
    assert order(text, language).verb not in ("correct", "add_offer")


@pytest.mark.parametrize(
    ("language", "text", "traits"),
    [
        ("en", "add a sick phrag no roots 9 cm pot bark", ()),
        ("en", "add a weak pink phal in bark", ("pink",)),
        ("es", "añade una phrag enferma sin raíces maceta 9 cm corteza", ()),
        ("de", "neu: kranke Phrag in Rinde", ()), ("pl", "dodaj chorą phragmipedium kora", ()),
    ],
)  # fmt: skip
def test_how_a_plant_is_today_is_no_name(language: str, text: str, traits: tuple[str, ...]) -> None:
    (plant,) = order(text, language).plants
    assert plant.traits == traits


@pytest.mark.parametrize(
    ("language", "text", "verb"),
    [
        ("en", "phal buds falling off", "tell"), ("en", "phal bud drop", "tell"),
        ("de", "Phal wirft die Knospen ab", "tell"), ("es", "la phal perdió los capullos", "tell"),
        ("pl", "falka zrzuca pąki", "tell"), ("en", "phal has new buds", "growth"),
        ("de", "Phal hat Knospen", "growth"), ("es", "la phal tiene capullos", "growth"),
        ("pl", "falka ma pąki", "growth"),
    ],
)  # fmt: skip
def test_buds_that_drop_are_no_flowers(language: str, text: str, verb: str) -> None:
    assert order(text, language).verb == verb


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "split the paphs, now i have 5"), ("de", "habe die Paphs geteilt, habe jetzt 5"),
        ("es", "dividí las paphs, ahora tengo 5"), ("pl", "podzieliłam falki, mam teraz 5"),
    ],
)  # fmt: skip
def test_plants_that_were_divided_are_all_that_there_are(language: str, text: str) -> None:
    found = order(text, language)
    (plant,) = found.plants
    assert (found.verb, found.standing, plant.count, plant.traits) == ("add", "total", 5, ())
