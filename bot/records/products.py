"""The feeds on an owner's shelf, as printed on their labels."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date
from typing import Any, TypedDict, Unpack

from sqlalchemy import select
from sqlalchemy.ext.asyncio import AsyncSession

from .errors import BadValue
from .kinds import EventKind, LabelUnit
from .ledger import Said, append
from .models import Product
from .shelf import (
    add_row,
    default_row,
    entry_about,
    get_row,
    in_use,
    make_default_row,
    require_free_name,
    row_by_name,
)


class ProductFields(TypedDict, total=False):
    """What a label says; percentages by mass. What is left out is unknown, or stays as it is."""

    name: str | None
    form: str | None
    n: float | None
    p2o5: float | None
    k2o: float | None
    extras: Mapping[str, float] | None
    trace_elements: bool | None
    n_nitrate: float | None
    n_ammonium: float | None
    n_urea: float | None
    label_per_litre: float | None
    label_unit: LabelUnit | None
    density_kg_l: float | None
    price: float | None
    currency: str | None
    pack_size: float | None
    pack_unit: str | None


async def get(session: AsyncSession, owner_id: int, product_id: int) -> Product:
    """Return a product, also one that was removed.

    Raises
    ------
    NotOnRecord
        The owner has no such product, or its addition was undone.
    """
    return await get_row(session, owner_id, Product, product_id)


async def listing(
    session: AsyncSession, owner_id: int, *, include_removed: bool = False
) -> list[Product]:
    """Return the products on the owner's shelf in the order in which they were added."""
    kept = (Product.present,) if include_removed else in_use(Product)
    query = select(Product).where(Product.owner_id == owner_id, *kept).order_by(Product.id)
    return list(await session.scalars(query))


async def by_name(session: AsyncSession, owner_id: int, name: str) -> Product | None:
    """Return the product of a name, whatever its case; removed ones have given theirs up."""
    return await row_by_name(session, owner_id, Product, name)


async def default(session: AsyncSession, owner_id: int) -> Product | None:
    """Return the product that is meant where none is named."""
    return await default_row(session, owner_id, Product)


async def add(said: Said, **fields: Unpack[ProductFields]) -> Product:
    """Put a product on the shelf. It becomes the default only by `make_default`.

    Raises
    ------
    BadValue
        A value does not fit, or the percentages add up to over 100.
    NameTaken, TooMany
        Nothing was written.
    """
    _require_fields(fields)
    _require_consistent(fields)
    return await add_row(said, Product, EventKind.PRODUCT, {"added_on": said.on, **fields})


async def change(said: Said, product_id: int, **fields: Unpack[ProductFields]) -> Product:
    """Change what is known of a product.

    Raises
    ------
    BadValue
        A value does not fit, or the percentages would add up to over 100.
    NotOnRecord, NameTaken
        Nothing was written.
    """
    _require_fields(fields)
    product = await get(said.session, said.owner_id, product_id)
    known = {name: getattr(product, name) for name in ProductFields.__annotations__}
    _require_consistent({**known, **fields})
    await require_free_name(said, Product, fields.get("name"), except_for=product_id)
    await append(said, [entry_about(product, EventKind.PRODUCT, fields)])
    return product


async def remove(said: Said, product_id: int, *, on: date | None = None) -> Product:
    """Take a product off the shelf; the log still knows it. It is no longer the default.

    Raises
    ------
    NotOnRecord
        The owner has no such product.
    """
    product = await get(said.session, said.owner_id, product_id)
    after = {"removed_on": on or said.on, "is_default": False}
    await append(said, [entry_about(product, EventKind.PRODUCT, after)])
    return product


async def make_default(said: Said, product_id: int) -> Product:
    """Make a product the one that is meant where none is named.

    Raises
    ------
    NotOnRecord
        The owner has no such product.
    """
    return await make_default_row(said, Product, EventKind.PRODUCT, product_id)


def label_problem(fields: Mapping[str, Any]) -> str | None:
    """Return how a label contradicts itself, None where it does not.

    Parameters
    ----------
    fields
        `n`, `p2o5`, `k2o`, `extras` [% by mass], `label_per_litre` and `label_unit`.
    """
    parts = [fields.get(name) for name in ("n", "p2o5", "k2o")]
    extras = fields.get("extras")
    parts += extras.values() if isinstance(extras, Mapping) else ()  # else refused by itself
    if sum(part for part in parts if isinstance(part, int | float)) > 100.0:
        return "the percentages add up to over 100"
    if (fields.get("label_per_litre") is None) != (fields.get("label_unit") is None):
        return "a label rate needs a number and a unit"
    return None


def _require_consistent(fields: Mapping[str, Any]) -> None:
    problem = label_problem(fields)
    if problem is not None:
        raise BadValue("product", "label", problem)


def _require_fields(fields: ProductFields) -> None:
    unknown = set(fields) - set(ProductFields.__annotations__)
    if unknown:
        raise ValueError(f"not fields of a product: {unknown}")
