"""What draws is loaded when something is drawn, and may be missing."""

from __future__ import annotations

import json
import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]

#: Keeps an import from being found, as where it is not installed.
BLOCKED = """
import sys

class Blocked:
    def find_spec(self, name, path=None, target=None):
        if name.partition(".")[0] in ("matplotlib", "PIL"):
            raise ModuleNotFoundError(f"No module named {name!r}", name=name)

sys.meta_path.insert(0, Blocked())
"""


def run(script: str) -> list[object]:
    done = subprocess.run(
        [sys.executable, "-c", script], cwd=ROOT, capture_output=True, text=True, check=True
    )
    found = json.loads(done.stdout.splitlines()[-1])
    assert isinstance(found, list)
    return found


def test_a_conversation_loads_nothing_that_draws() -> None:
    script = (
        "import json, sys\n"
        "import bot.conversation.talk, bot.conversation.turns.pots.pictures, bot.pictures.look\n"
        "from bot.pictures import available\n"
        "print(json.dumps([available(), sorted({n.split('.')[0] for n in sys.modules})]))\n"
    )
    there, loaded = run(script)
    assert there is True
    assert isinstance(loaded, list)
    assert "bot" in loaded
    assert not {"matplotlib", "PIL", "numpy"} & set(loaded)


def test_drawing_leaves_the_global_drawing_board_alone() -> None:
    script = (
        "import json, sys\n"
        "from bot.pictures.card import draw\n"
        "from tests.pictures.drawings import card\n"
        "draw(card())\n"
        "print(json.dumps(['matplotlib.pyplot' in sys.modules, 'matplotlib' in sys.modules]))\n"
    )
    assert run(script) == [False, True]


def test_without_the_extra_it_is_known_and_said() -> None:
    script = BLOCKED + (
        "import json\n"
        "from bot.pictures import PicturesMissing, available\n"
        "from bot.pictures import card, salts, year\n"
        "from tests.pictures import drawings\n"
        "found = [available()]\n"
        "for module in (card, salts, year):\n"
        "    try:\n"
        "        module.draw(getattr(drawings, module.__name__.split('.')[-1])())\n"
        "    except PicturesMissing as error:\n"
        "        found.append(str(error))\n"
        "print(json.dumps(found))\n"
    )
    there, *said = run(script)
    assert there is False
    assert len(said) == 3
    assert all("sinkside[pictures]" in str(text) for text in said)


def test_without_the_extra_a_chat_says_it_in_words(tmp_path: Path) -> None:
    script = BLOCKED + (
        "import io, json, sys\n"
        "from click.testing import CliRunner\n"
        "from bot.cli import cli\n"
        "lines = 'add a phal called Ruby in bark, 12 cm pot\\nfed Ruby\\nshow my year\\n"
        "salts of Ruby as a picture\\n2 l 20-20-20 powder, quarter\\ncard\\n'\n"
        f"where = 'sqlite:///{tmp_path / 'bare.db'}'\n"
        "call = ['say', '--as', 'Mira', '--json', '--today', '2026-06-07', '--database', where]\n"
        "done = CliRunner().invoke(cli, call, input=lines)\n"
        "answers = [json.loads(line) for line in done.output.splitlines()]\n"
        "print(json.dumps([done.exit_code, [[a['reply'], 'picture' in a] for a in answers]]))\n"
    )
    code, answers = run(script)
    assert code == 0
    assert isinstance(answers, list)
    year, salts, card = answers[2], answers[3], answers[5]
    for reply, pictured in (year, salts, card):
        assert not pictured
        assert "Pictures cannot be drawn here" in reply
    assert "Ruby: fed Jun" in year[0]
    assert "mS/cm in the wet pot" in salts[0]
    assert "in 2 l" in card[0]
