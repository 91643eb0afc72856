"""Where things are kept when nothing else was said."""

from __future__ import annotations

import os
from pathlib import Path


def data_folder() -> Path:
    """The user's data folder of this program, made where it is missing."""
    base = Path(os.environ.get("XDG_DATA_HOME") or Path.home() / ".local" / "share")
    folder = base / "sinkside"
    folder.mkdir(mode=0o700, parents=True, exist_ok=True)  # nobody else's to read
    return folder


def default_database() -> str:
    """URL of the records in the user's data folder."""
    return f"sqlite:///{data_folder() / 'records.db'}"


def demo_file() -> Path:
    """The invented collection that `chat --demo` shows."""
    return Path(__file__).parent.parent / "fixtures" / "demo" / "collection.json"
