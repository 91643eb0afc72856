"""SQLite for an event loop without a thread between: a statement runs where it is awaited.

Nearly every statement of ours takes microseconds and the hand-over to a thread and back many
times that, so the usual asynchronous driver costs more than what it keeps the loop free for.
Waiting for another process's write may take long, and is an awaited wait here. What holds the loop
is the disk at a commit, and a statement on very many rows: those are asked for in parts.
"""

from __future__ import annotations

import asyncio
import random
import sqlite3
import time
from typing import Any

from sqlalchemy import URL, Connection, pool
from sqlalchemy.dialects import registry
from sqlalchemy.dialects.sqlite.pysqlite import SQLiteDialect_pysqlite
from sqlalchemy.util import await_only

#: The name of the driver in a URL: `sqlite+inline:///file`.
DRIVER = "sqlite+inline"
_FIRST_WAIT_S = 0.0005
_LONGEST_WAIT_S = 0.02


class _Cursor(sqlite3.Cursor):
    async def _async_soft_close(self) -> None:
        """Nothing to await: SQLAlchemy asks it of every cursor whose rows it has yet to fetch."""


class _Connection(sqlite3.Connection):
    def cursor(self, factory: Any = None) -> Any:
        return super().cursor(factory or _Cursor)


class InlineDialect(SQLiteDialect_pysqlite):
    """The standard library's driver, for engines that are awaited."""

    driver = "inline"
    supports_statement_cache = True
    is_async = True

    @classmethod
    def get_pool_class(cls, url: URL) -> type[pool.Pool]:
        """The pool whose waits are awaited."""
        return pool.AsyncAdaptedQueuePool

    def create_connect_args(self, url: URL) -> Any:
        """As the dialect's, with connections of our kind."""
        args, values = super().create_connect_args(url)
        return args, {**values, "factory": _Connection}

    def get_driver_connection(self, connection: Any) -> Any:
        """The connection itself: nothing is wrapped around it."""
        return connection


registry.register("sqlite.inline", __name__, "InlineDialect")


def begin_immediate(connection: Connection, longest_s: float) -> None:
    """Take the lock to write, the loop free for others while another process has it.

    Raises
    ------
    sqlite3.OperationalError
        Within SQLAlchemy's: it was not free in time [s].
    """
    end, wait_s = time.monotonic() + longest_s, _FIRST_WAIT_S
    raw: Any = connection.connection.dbapi_connection
    while True:
        try:
            raw.execute("BEGIN IMMEDIATE")
        except sqlite3.OperationalError as error:
            busy = error.sqlite_errorcode & 0xFF == sqlite3.SQLITE_BUSY
            if not busy or time.monotonic() >= end:
                break
        else:
            return
        await_only(asyncio.sleep(wait_s * random.uniform(0.5, 1.5)))
        wait_s = min(2 * wait_s, _LONGEST_WAIT_S)
    # Once more by way of SQLAlchemy, which names what is wrong.
    connection.exec_driver_sql("BEGIN IMMEDIATE")
