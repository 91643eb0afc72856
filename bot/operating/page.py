"""The two pages for machines that watch: /healthz and /metrics."""

from __future__ import annotations

from collections.abc import AsyncIterator
from contextlib import asynccontextmanager

from aiohttp import web
from prometheus_client import CONTENT_TYPE_LATEST

from bot.operating.health import Pulse, complaints
from bot.operating.metrics import Metrics
from bot.records import Records


class CannotListen(Exception):
    """The address is taken, or not one of this machine."""


@asynccontextmanager
async def shown(
    listen: tuple[str, int], records: Records, pulse: Pulse, metrics: Metrics
) -> AsyncIterator[None]:
    """Serve the pages as long as the block runs.

    Raises
    ------
    CannotListen
        Nobody can listen on that host and port.
    """

    async def healthz(request: web.Request) -> web.Response:
        wrong = await complaints(records, pulse)
        text = "".join(f"{line}\n" for line in wrong) or "ok\n"
        return web.Response(status=503 if wrong else 200, text=text)

    async def measured(request: web.Request) -> web.Response:
        page = await metrics.page(records)
        return web.Response(body=page, headers={"Content-Type": CONTENT_TYPE_LATEST})

    served = web.Application()
    served.router.add_get("/healthz", healthz)
    served.router.add_get("/metrics", measured)
    runner = web.AppRunner(served, access_log=None)
    await runner.setup()
    try:
        try:
            await web.TCPSite(runner, *listen).start()
        except OSError as error:
            raise CannotListen(error.strerror or type(error).__name__) from error
        yield
    finally:
        await runner.cleanup()
