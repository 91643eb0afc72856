"""Files that get their name only when they are whole."""

from __future__ import annotations

import os
from contextlib import suppress
from pathlib import Path


def settle(path: Path) -> None:
    """Bring a file, or the names in a folder, to the disk."""
    handle = os.open(path, os.O_RDONLY)
    try:
        os.fsync(handle)
    finally:
        os.close(handle)


def name_new(part: Path, target: Path) -> None:
    """Give a whole file its name; the caller removes `part` where it is still there.

    Raises
    ------
    FileExistsError
        Something has that name already; it was not touched.
    """
    try:
        os.link(part, target)  # unlike a renaming, it never replaces what came meanwhile
    except FileExistsError:
        raise
    except OSError:  # no links on this file system
        if target.exists():
            raise FileExistsError(target) from None
        os.replace(part, target)
    with suppress(OSError):
        settle(target.parent)
