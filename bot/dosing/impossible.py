"""What cannot be worked out from what a person told: a code and its figures, no sentence."""

from __future__ import annotations


class Impossible(ValueError):
    """Figures that cannot be, or of which nothing follows.

    Parameters
    ----------
    code : names the sentence in wording, as ``refuse-`` and this
    values : what the sentence needs: figures, symbols of ions, codes
    """

    def __init__(self, code: str, /, **values: float | str) -> None:
        told = ", ".join(f"{name} {value}" for name, value in values.items())
        super().__init__(f"{code}: {told}" if told else code)
        self.code = code
        self.values = values
