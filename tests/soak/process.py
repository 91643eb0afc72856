"""A process of the bot on the moved clock: `python -m tests.soak.process serve --database URL`.

It is `sinkside` with the same arguments, and with the durations that are held against the machine
and the messenger stretched, so that they last as long on the wall as they do in life.
"""

from __future__ import annotations

import functools
import os
import sys
from dataclasses import dataclass

from tests.soak.clock import BotClock, moved

#: The variable that tells a process what its clock shows.
CLOCK = "SOAK_CLOCK"
#: The one that tells it how long a claim holds [s of the wall].
CLAIM = "SOAK_CLAIM_S"


def stretch(speed: float, claim_s: float) -> None:
    """Make claims, the waits after a failure and the messenger's limits last `speed` times.

    `claim_s`: how long a claim holds [s of the wall]; in life it is a minute.
    """
    from bot.conversation import postbox

    postbox.CLAIM_MS = int(claim_s * 1000 * speed)
    postbox.FIRST_WAIT_MS = int(postbox.FIRST_WAIT_MS * speed)

    @dataclass(frozen=True)
    class Stretched(postbox.Limits):
        @property
        def step_ms(self) -> float:
            return speed * super().step_ms

        @property
        def group_step_ms(self) -> float:
            return speed * super().group_step_ms

    # Only now: what it imports takes the durations along.
    from bot import serving
    from bot.channels.telegram.serving import Channel

    limits = Stretched(chat_ms=1000.0 * speed)
    vars(serving)["Channel"] = functools.partial(Channel, limits=limits)


def main() -> None:
    clock = BotClock.from_text(os.environ[CLOCK])
    moved(clock)
    if sys.argv[1] in ("serve", "remind"):
        stretch(clock.speed, float(os.environ[CLAIM]))
    from bot.cli import main as sinkside

    sinkside()


if __name__ == "__main__":
    main()
