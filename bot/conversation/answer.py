"""The answer as data: what `sinkside ask --json` prints, one object a message."""

from __future__ import annotations

import base64
import json
from typing import Any

from pydantic import BaseModel, ConfigDict, Field, field_serializer


class _Model(BaseModel):
    model_config = ConfigDict(frozen=True)


class Water(_Model):
    """The water as told."""

    kind: str
    hardness_mg_l_caco3: float | None = None
    ec_ms_cm: float | None = None
    alkalinity_mg_l_caco3: float | None = None


class LabelRate(_Model):
    """The label rate in each litre."""

    per_litre: float
    unit: str


class Understood(_Model):
    """Every slot, None where nothing was said."""

    volume_l: float | None
    analysis: tuple[float, float, float] | None
    extras: dict[str, float]
    form: str | None
    strength: float | None
    exact: bool
    regime: str | None
    medium: str | None
    season: str | None
    month: int | None
    growth: str | None
    genus: str | None
    genera: list[str]
    count: int | None
    water: Water | None
    label_rate: LabelRate | None
    target_n_mg_l: float | None
    target_ec_ms_cm: float | None


class ReadAs(_Model):
    """A word taken for another; `as` in JSON."""

    text: str
    meaning: str = Field(serialization_alias="as")


class Unknown(_Model):
    """Words not understood."""

    text: str
    suggestions: list[str]


class Range(_Model):
    """A low and a high estimate."""

    low: float
    high: float


class Stock(_Model):
    """A stock solution; the amount is weighed [g] or, of a liquid, taken [mL]."""

    weigh_g: float | None = None
    take_ml: float | None = None
    in_ml: float
    use_ml: float


class Dose(_Model):
    """Amounts, unrounded."""

    amount: float
    unit: str
    per_litre: float
    strength: float
    full_strength_source: str
    elements_mg_l: dict[str, float]
    ec_ms_cm: Range | None
    relative_error: float | None
    stock: Stock | None


class Why(_Model):
    """One step of the chain, with where its figure is from."""

    rule: str
    factor: float
    text: str
    source: str


class Caution(_Model):
    """One caution."""

    code: str
    text: str


class File(_Model):
    """A file to take along; `files` where it is several, by name."""

    name: str
    media_type: str
    content: str
    files: dict[str, str] | None = None


class Picture(_Model):
    """A picture that belongs to the text; `alt` says what is on it. In JSON as base64."""

    name: str
    content: bytes
    alt: str

    @field_serializer("content", when_used="json")
    def _as_text(self, content: bytes) -> str:
        return base64.b64encode(content).decode("ascii")


class Answer(_Model):
    """One message answered.

    `choices` are answers to tap; `details` hold the figures of kinds other than a dose.
    """

    message: str
    kind: str
    language: str
    understood: Understood
    read_as: list[ReadAs]
    unknown: list[Unknown]
    dose: Dose | None
    why: list[Why]
    cautions: list[Caution]
    ask: str | None
    reply: str
    choices: list[str] = Field(default_factory=list)
    details: dict[str, Any] | None = None
    file: File | None = None
    picture: Picture | None = None

    def as_json(self) -> str:
        """One line of JSON, in the names of the contract."""
        data = self.model_dump(mode="json", by_alias=True)
        for name in ("choices", "details", "file", "picture"):
            if not data[name]:
                del data[name]
        if self.dose is not None and self.dose.stock is not None:
            data["dose"]["stock"] = self.dose.stock.model_dump(exclude_none=True)
        return json.dumps(data, ensure_ascii=False)
