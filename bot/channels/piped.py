"""Lines of standard input, as a script or a file sends them."""

from __future__ import annotations

import sys
from collections.abc import Iterator

#: One line is read up to here [bytes]; the rest of it is passed over.
LONGEST_LINE = 1_000_000


def lines() -> Iterator[str]:
    """Lines of standard input; bytes that are no UTF-8 are replaced, never an error."""
    stream = sys.stdin.buffer
    while line := stream.readline(LONGEST_LINE):
        while not line.endswith(b"\n") and (rest := stream.readline(LONGEST_LINE)):
            if rest.endswith(b"\n"):
                break  # an endless line was cut: what is left of it is dropped
        yield line.decode("utf-8", errors="replace").rstrip("\r\n")
