"""How Alembic runs our migrations: on the connection that `schema.bring_up` hands over.

From the command line (see alembic.ini) there is none, and `-x url=...` names the database.
"""

from __future__ import annotations

import asyncio

from alembic import context
from sqlalchemy import Connection

from bot.records.engines import make_migrator, parse
from bot.records.models import Base
from bot.records.schema import VERSION_TABLE


def migrate(connection: Connection) -> None:
    """Run the migrations within the transaction of the connection.

    SQLite changes a table by copying it (batch), PostgreSQL in place.
    """
    context.configure(
        connection=connection,
        target_metadata=Base.metadata,
        version_table=VERSION_TABLE,
        render_as_batch=connection.dialect.name == "sqlite",
        compare_type=True,
        # Another program's tables in a shared PostgreSQL database are none of our business.
        include_name=lambda name, kind, _parents: kind != "table" or name in Base.metadata.tables,
    )
    with context.begin_transaction():
        context.run_migrations()


async def migrate_by_url(url: str) -> None:
    """Run the migrations on a database of our own opening."""
    engine = make_migrator(parse(url))
    async with engine.begin() as connection:
        await connection.run_sync(migrate)
    await engine.dispose()


handed_over = context.config.attributes.get("connection")
if handed_over is not None:
    migrate(handed_over)
else:
    asyncio.run(migrate_by_url(context.get_x_argument(as_dictionary=True)["url"]))
