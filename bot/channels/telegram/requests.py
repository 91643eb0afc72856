"""The library's requests carried by aiohttp, which costs a third of what its usual client does."""

from __future__ import annotations

import aiohttp
from telegram.error import NetworkError, TimedOut
from telegram.request import BaseRequest, RequestData

_USUAL_S = 10.0
_UPLOAD_S = 30.0
#: For what comes before and after the answer [s].
_GRACE_S = 5.0


class Unanswered(NetworkError):
    """A request left and no answer was read: the messenger may have done it or not."""


#: A longer answer is not read [bytes]: the largest file that the messenger gives to a bot.
MOST_BYTES = 20_000_000


async def _read(answer: aiohttp.ClientResponse) -> bytes:
    """The body of an answer.

    Raises
    ------
    Unanswered
        It is longer than any should be.
    """
    if answer.content_length is not None and answer.content_length <= MOST_BYTES:
        return await answer.read()
    body = bytearray()
    async for piece in answer.content.iter_any():
        body += piece
        if len(body) > MOST_BYTES:
            raise Unanswered("an answer that is too long")
    return bytes(body)


class Requests(BaseRequest):
    """Requests of one bot, over a pool of connections."""

    def __init__(self, connections: int) -> None:
        self._connections = connections
        self._client: aiohttp.ClientSession | None = None

    @property
    def read_timeout(self) -> float:
        """How long an answer is waited for [s]."""
        return _USUAL_S

    async def initialize(self) -> None:
        """Open the pool."""
        if self._client is None or self._client.closed:
            pool = aiohttp.TCPConnector(limit=self._connections)
            self._client = aiohttp.ClientSession(connector=pool)

    async def shutdown(self) -> None:
        """Close the pool."""
        if self._client is not None:
            await self._client.close()

    async def do_request(
        self,
        url: str,
        method: str,
        request_data: RequestData | None = None,
        read_timeout: object = BaseRequest.DEFAULT_NONE,
        write_timeout: object = BaseRequest.DEFAULT_NONE,
        connect_timeout: object = BaseRequest.DEFAULT_NONE,
        pool_timeout: object = BaseRequest.DEFAULT_NONE,
    ) -> tuple[int, bytes]:
        """Send a request; returns the status and the body.

        Raises
        ------
        TimedOut, Unanswered
            Nobody knows whether the messenger did it.
        NetworkError
            It was not reached.
        """
        if self._client is None:
            raise RuntimeError("the requests are not open")
        usual = _UPLOAD_S if request_data is not None and request_data.multipart_data else _USUAL_S
        wait = read_timeout if isinstance(read_timeout, int | float) else usual
        timeout = aiohttp.ClientTimeout(total=float(wait) + _GRACE_S, sock_connect=5)
        data: aiohttp.FormData | dict[str, str] | None = None
        if request_data is not None and request_data.multipart_data:
            data = aiohttp.FormData()
            for name, value in request_data.json_parameters.items():
                data.add_field(name, value)
            for name, (file_name, content, media) in request_data.multipart_data.items():
                data.add_field(name, content, filename=file_name, content_type=media)
        elif request_data is not None:
            data = request_data.json_parameters
        try:
            async with self._client.request(method, url, data=data, timeout=timeout) as answer:
                return answer.status, await _read(answer)
        except TimeoutError as error:
            raise TimedOut from error
        except aiohttp.ClientConnectorError as error:
            # Without the text of the error: it holds the address, and so the token.
            raise NetworkError(type(error).__name__) from None
        except aiohttp.ClientError as error:
            raise Unanswered(type(error).__name__) from None
