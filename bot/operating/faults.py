"""A fault by the kinds of its errors and the places it went through, without what it says.

What an error says may quote what somebody wrote. Light: the command line loads it with each call.
"""

from __future__ import annotations

import logging
import traceback

#: The innermost places of a traceback that are told.
_PLACES = 12


def kinds(error: BaseException | None) -> list[str]:
    """The kind of an error, then of what caused it."""
    found: list[str] = []
    seen: set[int] = set()
    while error is not None and id(error) not in seen:
        seen.add(id(error))
        found.append(type(error).__qualname__)
        error = error.__cause__ or (None if error.__suppress_context__ else error.__context__)
    return found


def places(error: BaseException) -> list[str]:
    """Where it went through, innermost first: file, line, function."""
    frames = traceback.extract_tb(error.__traceback__)[-_PLACES:]
    return [f"{_short(f.filename)}:{f.lineno}:{f.name}" for f in reversed(frames)]


def _short(path: str) -> str:
    """The last parts of a path; where a program is installed is nobody's business."""
    return "/".join(path.replace("\\", "/").split("/")[-3:])


class Quiet(logging.Formatter):
    """Lines of the log for a person at the command line."""

    def format(self, record: logging.LogRecord) -> str:
        """The message, and of a fault its kinds and places."""
        line = record.getMessage()
        error = record.exc_info[1] if record.exc_info else None
        if error is None:
            return line
        return f"{line}: {' < '.join(kinds(error))} at {' < '.join(places(error))}"


def log_quietly() -> None:
    """Show warnings and worse on standard error, where no log was set up."""
    handler = logging.StreamHandler()
    handler.setFormatter(Quiet())
    logging.basicConfig(level=logging.WARNING, handlers=[handler])
