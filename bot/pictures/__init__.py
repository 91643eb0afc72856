"""Pictures: plain figures, dates and ready strings in, a PNG out.

`year`, `salts` and `card` hold what is to be drawn and `draw` it; `look` has the palette, the
fonts and the pen. Nothing here knows a language, a record or a conversation. matplotlib and
Pillow (the extra `pictures`) are imported when something is drawn, and not before.
"""

from __future__ import annotations

from importlib.util import find_spec

_NEEDED = ("matplotlib", "PIL")


class PicturesMissing(Exception):
    """What draws is not installed: `pip install sinkside[pictures]`."""


def available() -> bool:
    """Whether pictures can be drawn here; imports nothing."""
    try:
        return all(find_spec(name) is not None for name in _NEEDED)
    except (ImportError, ValueError):
        return False
