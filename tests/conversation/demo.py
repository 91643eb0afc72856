"""Makes the demo collection of what its owner says: `python -m tests.conversation.demo`."""

from __future__ import annotations

import tempfile
from pathlib import Path

from tests.conversation.season import say_all

FOLDER = Path(__file__).resolve().parent.parent.parent / "fixtures" / "demo"
SCRIPT = FOLDER / "script.txt"
COLLECTION = FOLDER / "collection.json"


def made(url: str) -> str:
    """The export of what the script says."""
    answers = [answer for _, _, answer in say_all(SCRIPT, "Ines", url, last="export")]
    return str(answers[-1]["file"]["content"])


if __name__ == "__main__":
    with tempfile.TemporaryDirectory() as folder:
        COLLECTION.write_text(made(f"sqlite:///{folder}/demo.db"), encoding="utf-8")
