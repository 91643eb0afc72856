"""Plants, places, products and waters: what is kept, what is refused."""

from __future__ import annotations

from datetime import date, timedelta
from typing import Any

import pytest
from sqlalchemy.ext.asyncio import AsyncSession

from bot.records import Records, errors, ledger, log, places, plants, products, waters
from bot.records.kinds import EventKind, LabelUnit
from bot.records.models import Owned, Plant
from bot.records.plants import PlantFields
from bot.records.products import ProductFields
from bot.records.reminders import ReminderFields
from bot.records.values import changeable
from bot.records.waters import WaterFields

from .records_kit import NOW, TODAY, begin


async def test_a_plant_is_kept_as_it_was_told(records: Records, owner_id: int) -> None:
    async with records.writing() as session:
        said = await begin(session, owner_id)
        kitchen = await places.find_or_add(session, owner_id, "kitchen")
        added = await plants.add(
            said,
            genus="Phalaenopsis",
            count=3,
            medium="bark",
            pot_cm=12,
            place_id=kitchen.id,
        )
    async with records.reading() as session:
        plant = await plants.get(session, owner_id, added.id)
    assert (plant.genus, plant.count, plant.medium, plant.pot_cm) == ("Phalaenopsis", 3, "bark", 12)
    assert (plant.place_id, plant.added_on, plant.name) == (kitchen.id, TODAY, None)
    assert (plant.present, plant.lost_on, plant.last_fed_on) == (True, None, None)


@pytest.mark.parametrize(
    ("field", "value"),
    [
        ("count", 0),
        ("count", 1.5),
        ("count", None),
        ("pot_cm", -3),
        ("pot_cm", 1e6),
        ("water_ml", "much"),
        ("medium", "Bark chips"),
        ("name", "x" * 61),
        ("name", "Ruby\u202e"),
        ("added_on", date(1066, 10, 14)),
        ("added_on", NOW),
    ],
)
async def test_a_plant_that_does_not_fit_is_refused_whole(
    records: Records, owner_id: int, field: str, value: object
) -> None:
    given: dict[str, Any] = {"genus": "Vanda", field: value}
    with pytest.raises(errors.BadValue) as caught:
        async with records.writing() as session:
            await plants.add(await begin(session, owner_id), **given)
    assert (caught.value.table, caught.value.field) == ("plant", field)
    async with records.reading() as session:
        assert await plants.listing(session, owner_id, include_lost=True) == []


@pytest.mark.parametrize(
    "name", ["Ruby", "Ruby 2", "20-20-20", "bark", "Żółta", "👩\u200d🌾", "می\u200cخواهم", "=1+1"]
)
async def test_a_plant_may_be_called_anything_that_can_be_shown(
    records: Records, owner_id: int, name: str
) -> None:
    async with records.writing() as session:
        added = await plants.add(await begin(session, owner_id), name=name)
    async with records.reading() as session:
        found = await plants.by_name(session, owner_id, name)
    assert found is not None
    assert (found.id, found.name) == (added.id, name)


@pytest.mark.parametrize("same", ["Ruby", "ruby", " RUBY ", "\uff32uby"])
async def test_a_name_is_one_plant_whatever_its_case(
    records: Records, owner_id: int, same: str
) -> None:
    async with records.writing() as session:
        ruby = await plants.add(await begin(session, owner_id), name="Ruby")
    async with records.reading() as session:
        found = await plants.by_name(session, owner_id, same)
        assert found is not None
        assert found.id == ruby.id
    with pytest.raises(errors.NameTaken) as caught:
        async with records.writing() as session:
            await plants.add(await begin(session, owner_id), name=same)
    assert (caught.value.table, caught.value.row_id) == ("plant", ruby.id)


async def test_a_plant_may_be_renamed_to_its_own_name(records: Records, owner_id: int) -> None:
    async with records.writing() as session:
        said = await begin(session, owner_id)
        ruby = await plants.add(said, name="ruby")
        await plants.add(said, name="Opal")
        await plants.rename(said, ruby.id, "Ruby")
        with pytest.raises(errors.NameTaken):
            await plants.rename(said, ruby.id, "opal")
        with pytest.raises(errors.NameTaken):
            await plants.correct(said, [ruby.id], name="opal")
    async with records.reading() as session:
        assert [plant.name for plant in await plants.listing(session, owner_id)] == ["Ruby", "Opal"]


async def test_a_lost_plant_gives_up_its_name_and_keeps_its_history(
    records: Records, owner_id: int
) -> None:
    async with records.writing() as session:
        said = await begin(session, owner_id)
        old = await plants.add(said, name="Ruby")
        await log.record(said, [log.Entry(EventKind.FED, old.id)])
        await plants.lose(said, [old.id])
        new = await plants.add(said, name="Ruby")
    async with records.reading() as session:
        found = await plants.by_name(session, owner_id, "ruby")
        assert found is not None
        assert found.id == new.id
        assert [plant.id for plant in await plants.listing(session, owner_id)] == [new.id]
        every = await plants.listing(session, owner_id, include_lost=True)
        assert [(plant.id, plant.lost_on) for plant in every] == [(old.id, TODAY), (new.id, None)]
        assert await plants.count(session, owner_id) == 1
        kinds = [event.kind for event in await log.history(session, owner_id, old.id)]
    assert kinds == [EventKind.ADDED, EventKind.FED, EventKind.LOST]


async def test_each_change_of_a_plant_says_what_it_was_before(
    records: Records, owner_id: int
) -> None:
    yesterday = TODAY - timedelta(1)
    async with records.writing() as session:
        said = await begin(session, owner_id)
        sill = await places.find_or_add(session, owner_id, "sill")
        rain = await waters.add(said, kind="rain")
        plant = await plants.add(said, name="Ruby", medium="bark", pot_cm=9)
        of = [plant.id]
        await plants.move(said, of, sill.id)
        await plants.repot(said, of, medium="sphagnum", on=yesterday)
        await plants.set_growth(said, of, "new_roots", on=yesterday)
        await plants.set_water(said, of, rain.id)
        await plants.correct(said, of, count=2)
    async with records.reading() as session:
        found = await log.history(session, owner_id, plant.id)
    changes = {event.kind: (event.on, event.before, event.after) for event in found}
    del changes[EventKind.ADDED]
    assert changes == {
        EventKind.MOVED: (TODAY, {"place_id": None}, {"place_id": sill.id}),
        EventKind.REPOT: (
            yesterday,
            {"medium": "bark", "last_repot_on": None},
            {"medium": "sphagnum", "last_repot_on": "2026-02-28"},
        ),
        EventKind.GROWTH: (
            yesterday,
            {"growth": None, "growth_since": None},
            {"growth": "new_roots", "growth_since": "2026-02-28"},
        ),
        EventKind.WATER: (TODAY, {"water_id": None}, {"water_id": rain.id}),
        EventKind.CORRECTED: (TODAY, {"count": 1}, {"count": 2}),
    }
    assert plant.pot_cm == 9


@pytest.mark.parametrize("field", ["place_id", "water_id"])
async def test_a_plant_cannot_point_to_what_somebody_else_has(
    records: Records, owner_id: int, neighbour_id: int, field: str
) -> None:
    async with records.writing() as session:
        await places.find_or_add(session, neighbour_id, "sill")
        await waters.add(await begin(session, neighbour_id), kind="rain")
    given: dict[str, Any] = {field: 1}
    async with records.writing() as session:
        said = await begin(session, owner_id)
        with pytest.raises(errors.NotOnRecord):
            await plants.add(said, **given)
        plant = await plants.add(said)
        with pytest.raises(errors.NotOnRecord):
            await plants.correct(said, [plant.id], **given)


@pytest.mark.parametrize("row_id", [-1, 0, 99, 2**63, 10**400])
async def test_a_number_that_no_row_has_is_refused(
    records: Records, owner_id: int, row_id: int
) -> None:
    async with records.writing() as session:
        said = await begin(session, owner_id)
        with pytest.raises(errors.NotOnRecord):
            await plants.get(session, owner_id, row_id)
        with pytest.raises(errors.NotOnRecord):
            await plants.move(said, [row_id], None)
        with pytest.raises(errors.NotOnRecord):
            await log.record(said, [log.Entry(EventKind.FED, product_id=row_id)])
        with pytest.raises(errors.NotOnRecord):
            await plants.add(said, place_id=row_id)
        with pytest.raises(errors.NotOnRecord):
            await plants.add(said, water_id=row_id)
        assert await log.history(session, owner_id, row_id) == []


@pytest.mark.parametrize("name", ["", " ", "\x00", "\ud800", "x" * 100_000, "'; DROP TABLE plant"])
async def test_a_name_that_nothing_can_have_is_found_nowhere(
    records: Records, owner_id: int, name: str
) -> None:
    async with records.reading() as session:
        for module in (plants, products, waters, places):
            assert await module.by_name(session, owner_id, name) is None


async def test_a_place_is_made_once(records: Records, owner_id: int) -> None:
    async with records.writing() as session:
        first = await places.find_or_add(session, owner_id, "Kitchen sill")
        again = await places.find_or_add(session, owner_id, "kitchen  SILL")
        await places.find_or_add(session, owner_id, "bath")
    async with records.reading() as session:
        names = [place.name for place in await places.listing(session, owner_id)]
        by_name = await places.by_name(session, owner_id, "KITCHEN SILL")
    assert first.id == again.id
    assert names == ["Kitchen sill", "bath"]
    assert by_name is not None


LABEL = ProductFields(
    name="blue tub",
    form="powder",
    n=20,
    p2o5=20,
    k2o=20,
    extras={"Mg": 1.5, "Fe": 0.05},
    n_nitrate=6,
    n_ammonium=4,
    n_urea=10,
    label_per_litre=1,
    label_unit=LabelUnit.GRAM,
    price=9.5,
    currency="EUR",
    pack_size=400,
    pack_unit="g",
)


async def test_a_product_is_kept_as_its_label_says(records: Records, owner_id: int) -> None:
    async with records.writing() as session:
        await products.add(await begin(session, owner_id), **LABEL)
    async with records.reading() as session:
        (product,) = await products.listing(session, owner_id)
    assert {name: getattr(product, name) for name in LABEL} == LABEL
    assert (product.added_on, product.is_default) == (TODAY, False)


@pytest.mark.parametrize(
    "label",
    [
        {"n": 101},
        {"n": -1},
        {"n": 40, "p2o5": 40, "k2o": 40},
        {"label_per_litre": 1, "label_unit": None},
        {"label_per_litre": None},
        {"extras": {"Mg": "some"}},
        {"extras": {"Mg": 120}},
        {"extras": {"": 1}},
        {"extras": [1]},
        {"density_kg_l": 0},
        {"label_unit": "bucket"},
        {"price": -1},
        {"currency": "EURO"},
    ],
)
async def test_a_label_that_contradicts_itself_is_refused(
    records: Records, owner_id: int, label: dict[str, Any]
) -> None:
    wrong: dict[str, Any] = {**LABEL, **label}
    with pytest.raises(errors.BadValue):
        async with records.writing() as session:
            await products.add(await begin(session, owner_id), **wrong)
    async with records.writing() as session:
        said = await begin(session, owner_id)
        product = await products.add(said, **LABEL)
        changed: dict[str, Any] = label
        with pytest.raises(errors.BadValue):
            await products.change(said, product.id, **changed)


async def default_names(session: AsyncSession, owner_id: int) -> list[str | None]:
    return [p.name for p in await products.listing(session, owner_id) if p.is_default]


async def test_there_is_one_default_product_at_most(records: Records, owner_id: int) -> None:
    async with records.writing() as session:
        said = await begin(session, owner_id)
        blue = await products.add(said, name="blue tub")
        green = await products.add(said, name="green bottle")
        await products.make_default(said, green.id)
    async with records.writing() as session:
        # The lower number takes over from the higher one, and gives it back.
        await products.make_default(await begin(session, owner_id), blue.id)
    async with records.writing() as session:
        assert await default_names(session, owner_id) == ["blue tub"]
        await log.undo(session, owner_id, said_at=NOW)
    async with records.writing() as session:
        assert await default_names(session, owner_id) == ["green bottle"]
        default = await products.default(session, owner_id)
        assert default is not None
        assert default.id == green.id
        await products.remove(await begin(session, owner_id), green.id)
    async with records.reading() as session:
        assert await products.default(session, owner_id) is None
        assert [p.name for p in await products.listing(session, owner_id)] == ["blue tub"]
        every = await products.listing(session, owner_id, include_removed=True)
        assert [(p.name, p.removed_on) for p in every][1] == ("green bottle", TODAY)


async def test_a_water_is_kept_and_changed(records: Records, owner_id: int) -> None:
    async with records.writing() as session:
        said = await begin(session, owner_id)
        tap = await waters.add(said, kind="tap", ions={"Ca": 80.0})
        await waters.add(said, kind="rain", name="barrel")
        await waters.make_default(said, tap.id)
        await waters.change(said, tap.id, hardness_mg_l_caco3=250)
    async with records.reading() as session:
        default = await waters.default(session, owner_id)
        assert default is not None
        assert (default.kind, default.hardness_mg_l_caco3, default.ions) == ("tap", 250, {"Ca": 80})
        assert [w.name for w in await waters.listing(session, owner_id, kind="rain")] == ["barrel"]
        barrel = await waters.by_name(session, owner_id, "Barrel")
        assert barrel is not None
        assert (await waters.get(session, owner_id, barrel.id)).kind == "rain"


async def test_a_water_needs_a_kind(records: Records, owner_id: int) -> None:
    with pytest.raises(errors.BadValue):
        async with records.writing() as session:
            await waters.add(await begin(session, owner_id), name="barrel")


async def test_there_is_a_most_of_everything(
    records: Records, owner_id: int, monkeypatch: pytest.MonkeyPatch
) -> None:
    fewer: dict[type[Owned], int] = {**ledger.MOST, Plant: 2}
    monkeypatch.setattr(ledger, "MOST", fewer)

    async def add_three() -> None:
        async with records.writing() as session:
            said = await begin(session, owner_id)
            for _ in range(3):
                await plants.add(said)

    with pytest.raises(errors.TooMany) as caught:
        await add_three()
    assert (caught.value.table, caught.value.most) == ("plant", 2)
    async with records.reading() as session:
        assert await plants.count(session, owner_id) == 0


@pytest.mark.parametrize(
    ("fields", "model", "kept_by_us"),
    [
        (
            PlantFields,
            "Plant",
            {"present", "lost_on"}
            | {"last_fed_on", "last_clear_on", "last_flush_on", "last_repot_on"},
        ),
        (ProductFields, "Product", {"present", "is_default", "added_on", "removed_on"}),
        (WaterFields, "Water", {"present", "is_default"}),
        (ReminderFields, "Reminder", {"state", "created"}),
    ],
)
def test_what_can_be_told_is_every_column_but_those_we_keep(
    fields: Any, model: str, kept_by_us: set[str]
) -> None:
    from bot.records import models

    assert set(fields.__annotations__) | kept_by_us == changeable(getattr(models, model))
