"""What people say, in four languages. `{name}` and the like are filled in; invented all of it."""

from __future__ import annotations

from dataclasses import dataclass

#: Towns that are written alike in all four languages, and the clocks that hang there.
TOWNS = {
    "Porto": "Europe/Lisbon", "Berlin": "Europe/Berlin", "Osaka": "Asia/Tokyo",
    "Chicago": "America/Chicago", "Lima": "America/Lima",
}  # fmt: skip


@dataclass(frozen=True, slots=True)
class Phrases:
    """One language.

    `tasks` are what one is reminded of, as it is said and as the ping repeats it.
    """

    code: str
    towns: tuple[str, ...]
    hello: str
    home: str
    add: tuple[str, ...]
    fed: str
    watered: str
    dose: str
    once: str
    daily: str
    tasks: tuple[tuple[str, str], ...]
    product: str
    asks: tuple[str, ...]
    history: str
    undo: str
    export: str
    calendar: str
    year: str
    why: str
    forget: str
    yes: str
    taken_in: str
    lapsed: str
    decimal: str


def _same(*tasks: str) -> tuple[tuple[str, str], ...]:
    return tuple((t, t) for t in tasks)


EN = Phrases(
    code="en",
    towns=("Porto", "Chicago"),
    hello="hello",
    home="I live in {town}",
    add=(
        "add a masdevallia in sphagnum called {name}, 8 cm pot, bathroom",
        "add a vanda called {name}, bare root, balcony",
        "add a phal called {name} in bark, 12 cm pot, kitchen",
    ),
    fed="fed {name}",
    watered="watered {name}",
    dose="{litres} litres, 20-20-20 powder, bark, winter, half strength",
    once="remind me in {hours} hours to {task}",
    daily="remind me every day at {at} to {task}",
    tasks=_same(
        "wash the saucers", "open the vents", "clean the glass", "fill the barrel",
        "sweep the bench", "sort the labels",
    ),
    product="my powder is 20-20-20, label 1 g per litre, call it blue tub",
    asks=("my plants", "what's on today", "my reminders", "my settings", "what's on my shelf"),
    history="what did {name} get",
    undo="undo",
    export="export",
    calendar="calendar",
    year="my year",
    why="why?",
    forget="forget me",
    yes="yes",
    taken_in="Taken in:",
    lapsed="That question of mine has lapsed",
    decimal=".",
)  # fmt: skip

DE = Phrases(
    code="de",
    towns=("Berlin",),
    hello="hallo",
    home="ich wohne in {town}",
    add=(
        "ich habe eine Masdevallia in Sphagnum, sie heißt {name}, 8 cm Topf, Bad",
        "eine Vanda wurzelnackt hinzufügen, Balkon, heißt {name}",
        "ich habe eine Phal in Rinde, sie heißt {name}, 12 cm Topf, Küche",
    ),
    fed="{name} gedüngt",
    watered="{name} gegossen",
    dose="{litres} Liter, 20-20-20 Pulver, Rinde, Winter, halbe Stärke",
    once="erinnere mich in {hours} Stunden daran, {task}",
    daily="erinnere mich jeden Tag um {at} daran, {task}",
    tasks=(
        ("die Scheibe zu putzen", "Scheibe zu putzen"),
        ("das Fass zu füllen", "Fass zu füllen"),
        ("den Tisch zu fegen", "Tisch zu fegen"),
        ("die Etiketten zu sortieren", "Etiketten zu sortieren"),
        ("die Farne zu besprühen", "Farne zu besprühen"),
    ),
    product="mein Pulver ist 20-20-20, Etikett 1 g pro Liter, nenn es blaue Dose",
    asks=("meine Pflanzen", "was steht heute an", "meine Erinnerungen", "meine Einstellungen",
          "was steht in meinem Regal"),
    history="was hat {name} bekommen",
    undo="rückgängig",
    export="exportieren",
    calendar="Kalender",
    year="mein Jahr",
    why="warum?",
    forget="vergiss mich",
    yes="ja",
    taken_in="Übernommen:",
    lapsed="Meine Frage ist verfallen, geändert wurde nichts",
    decimal=",",
)  # fmt: skip

PL = Phrases(
    code="pl",
    towns=("Osaka",),
    hello="cześć",
    home="mieszkam w {town}",
    add=(
        "mam masdewalię w sfagnum o imieniu {name}, doniczka 8 cm, łazienka",
        "dodaj vandę o imieniu {name}, gołe korzenie, balkon",
        "dodaj falka w korze o imieniu {name}, doniczka 12 cm, kuchnia",
    ),
    fed="nawiozłam {name}",
    watered="podlałam {name}",
    dose="{litres} l, 20-20-20 proszek, kora, zima, połowa dawki",
    once="przypomnij mi za {hours} godzin, żeby {task}",
    daily="przypominaj mi codziennie o {at}, żeby {task}",
    tasks=_same(
        "umyć szybę", "napełnić beczkę", "zamieść stół", "posortować etykiety", "spryskać paprocie",
    ),
    product="mój proszek to 20-20-20, etykieta 1 g na litr, nazwij go niebieska puszka",
    asks=("moje rośliny", "co dzisiaj", "moje przypomnienia", "moje ustawienia",
          "co mam na półce"),
    history="co dostała {name}",
    undo="cofnij",
    export="eksport",
    calendar="kalendarz",
    year="mój rok",
    why="dlaczego?",
    forget="zapomnij mnie",
    yes="tak",
    taken_in="Wczytane:",
    lapsed="Moje pytanie już wygasło, nic nie zmieniono",
    decimal=",",
)  # fmt: skip

ES = Phrases(
    code="es",
    towns=("Lima",),
    hello="hola",
    home="vivo en {town}",
    add=(
        "tengo una masdevallia en esfagno que se llama {name}, maceta de 8 cm, baño",
        "añade una vanda a raíz desnuda, balcón, se llama {name}",
        "añade una phal en corteza, maceta de 12 cm, cocina, se llama {name}",
    ),
    fed="aboné {name}",
    watered="regué {name}",
    dose="{litres} litros, 20-20-20 en polvo, corteza, invierno, media dosis",
    once="recuérdame en {hours} horas {task}",
    daily="recuérdame cada día a las {at} {task}",
    tasks=_same(
        "limpiar el cristal", "llenar el barril", "barrer la mesa", "ordenar las etiquetas",
        "rociar los helechos",
    ),
    product="mi polvo es 20-20-20, etiqueta 1 g por litro, llámalo bote azul",
    asks=("mis plantas", "qué toca hoy", "mis recordatorios", "mis ajustes",
          "qué hay en mi estante"),
    history="qué le he dado a {name}",
    undo="deshacer",
    export="exportar",
    calendar="calendario",
    year="mi año",
    why="por qué?",
    forget="olvídame",
    yes="sí",
    taken_in="Importado:",
    lapsed="Mi pregunta ya caducó",
    decimal=",",
)  # fmt: skip

LANGUAGES = (EN, DE, PL, ES)
#: What is no sentence: it is answered all the same.
GARBAGE = (
    "xyzzy blorb", "?", "...", "🌱🌱🌱", "٣٤٥ ؟", "\u202eabc\u200b", "SELECT * FROM plant; --",
    "<b>5 l</b> {name} $amount", "-5 l 20-20-20", "1e400 l", "70-70-70 powder", "½ ½ ½",
    "lorem ipsum dolor sit amet " * 20, "0 l", "nan g", "20-20-20" * 30,
)  # fmt: skip
_SYLLABLES = ("ba", "ko", "lu", "mi", "ne", "po", "ra", "su", "ti", "vo", "za", "fe", "gu")


def plant_name(number: int) -> str:
    """A name of three syllables that is nothing else; each number has its own, up to 2,197."""
    first, rest = divmod(number % 13**3, 169)
    second, third = divmod(rest, 13)
    name = (_SYLLABLES[first] + _SYLLABLES[second] + _SYLLABLES[third] + "x").capitalize()
    return "Lunasux" if name == "Lunesux" else name  # too like a Spanish Monday to be taken
