"""How our pictures look: palette, sizes, marks, and the pen that draws them.

The hues are those of Okabe and Ito (Color Universal Design, 2002), one for each meaning; what
they mean is told by a shape as well. A card is opaque, so that it reads the same in a light and
in a dark chat. Lengths are pixels of a card 1080 wide, that a phone shows at a third: no text is
smaller than `SMALL`.
"""

from __future__ import annotations

import io
import threading
import unicodedata
from collections.abc import Sequence
from functools import lru_cache
from pathlib import Path
from typing import TYPE_CHECKING, Any

from bot.pictures import PicturesMissing

if TYPE_CHECKING:
    from matplotlib.artist import Artist
    from matplotlib.font_manager import FontProperties

#: Of every card [px].
WIDTH = 1080
#: Left of it stands the graduated edge, right of it nothing [px].
LEFT, RIGHT = 76, 1032
#: Sizes of text [px].
SMALL, BODY, TITLE = 34, 40, 56

# --- palette ---
PAPER = "#FCFCFA"
INK = "#1B2026"
SOFT = "#4D555D"
GRID = "#DCDEDA"
#: Around the card: tells it from a white and from a black background.
FRAME = "#878D93"
NOW = "#F1F2EF"
FEED = "#0072B2"
FEED_PALE = "#CBE2F1"
CLEAR = "#009E73"
FLUSH = "#D55E00"
REST = "#5F676F"
READING = INK
#: Text is drawn in these, on these.
TEXT_COLOURS = (INK, SOFT)
GROUNDS = (PAPER, NOW)
#: Hues that mean something by themselves.
MEANINGS = {"feed": FEED, "clear": CLEAR, "flush": FLUSH, "rest": REST, "reading": READING}

_DPI = 72  # a point is a pixel
_LINE = 1.28  # from line to line, in sizes of the text
#: Colours of the file; flat drawings with soft edges need no more.
_COLOURS = 128
#: matplotlib promises nothing for several threads at once.
_ONE_AT_A_TIME = threading.Lock()


def _font_file(bold: bool) -> str:
    """DejaVu Sans as matplotlib brings it, whatever else is installed."""
    from matplotlib import get_data_path

    name = "DejaVuSans-Bold.ttf" if bold else "DejaVuSans.ttf"
    return str(Path(get_data_path(), "fonts", "ttf", name))


@lru_cache(maxsize=64)
def _font(bold: bool, size: float) -> FontProperties:
    from matplotlib.font_manager import FontProperties

    return FontProperties(fname=_font_file(bold), size=size)


@lru_cache(maxsize=1)
def _letters() -> frozenset[int]:
    """The characters that the font has, bold or not."""
    from matplotlib.font_manager import get_font

    plain, bold = (get_font(_font_file(bold)).get_charmap() for bold in (False, True))
    return frozenset(plain) & frozenset(bold)


@lru_cache(maxsize=4096)
def _width(text: str, size: float, bold: bool) -> float:
    """How wide a line is [px]."""
    from matplotlib.backends.backend_agg import RendererAgg

    if not text:
        return 0.0
    ruler: Any = RendererAgg(8, 8, _DPI)  # type: ignore[no-untyped-call]
    return float(ruler.get_text_width_height_descent(text, _font(bold, size), ismath=False)[0])


class Sheet:
    """A card to draw on; y runs down from the top, and its height is told at the end.

    Raises
    ------
    PicturesMissing
        What draws is not installed.
    """

    def __init__(self) -> None:
        try:
            import PIL.Image  # noqa: F401
            from matplotlib.transforms import Affine2D
        except ImportError as error:
            raise PicturesMissing("install the extra: sinkside[pictures]") from error
        self._artists: list[Artist] = []
        self._place = Affine2D()

    # --- text ---

    def text(
        self, x: float, y: float, text: str, size: float, *, bold: bool = False,
        colour: str = INK, align: str = "left", rim: bool = False,
    ) -> None:  # fmt: skip
        """One line of text, y being its baseline; a rim of paper frees it from what it crosses."""
        from matplotlib.text import Text

        artist = Text(
            x, y, drawable(text), color=colour, fontproperties=_font(bold, size),
            ha=align, va="baseline", parse_math=False,
        )  # fmt: skip
        if rim:
            from matplotlib.patheffects import withStroke

            artist.set_path_effects([withStroke(linewidth=8, foreground=PAPER)])
        self._add(artist)

    def width(self, text: str, size: float, *, bold: bool = False) -> float:
        """How wide a line is [px]."""
        return _width(drawable(text), size, bold)

    def fitted(self, text: str, size: float, most: float, *, bold: bool = False) -> str:
        """A line cut to a width [px], with an ellipsis where something is gone."""
        text = drawable(text)
        if self.width(text, size, bold=bold) <= most:
            return text
        low, high = 0, len(text)
        while low < high:
            middle = (low + high + 1) // 2
            shorter = text[:middle].rstrip() + "…"
            if self.width(shorter, size, bold=bold) <= most:
                low = middle
            else:
                high = middle - 1
        return text[:low].rstrip() + "…"

    def wrapped(self, text: str, size: float, most: float, lines: int) -> list[str]:
        """A text in lines of a width [px]; what does not go into so many is cut."""
        words = drawable(text).split(" ")
        space = self.width("a a", size) - 2 * self.width("a", size)
        out: list[str] = []
        filled = 0.0
        for number, word in enumerate(words):
            wide = self.width(word, size)
            if out and filled + space + wide <= most:
                out[-1], filled = f"{out[-1]} {word}", filled + space + wide
            elif len(out) == lines:
                out[-1] = self.fitted(f"{out[-1]} {' '.join(words[number:])}", size, most)
                break
            else:
                out.append(self.fitted(word, size, most))
                filled = min(wide, most)
        return out

    def paragraph(
        self, x: float, y: float, text: str, size: float, most: float, *,
        lines: int = 4, colour: str = INK,
    ) -> float:  # fmt: skip
        """Lines below each other, the first with its top at y; returns where the next begins."""
        for line in self.wrapped(text, size, most, lines):
            self.text(x, y + size, line, size, colour=colour)
            y += size * _LINE
        return y

    # --- shapes ---

    def box(
        self, x: float, y: float, wide: float, high: float, *, fill: str | None = None,
        edge: str | None = None, line: float = 0.0,
    ) -> None:  # fmt: skip
        """A rectangle by its upper left corner."""
        corners = [(x, y), (x + wide, y), (x + wide, y + high), (x, y + high)]
        self.shape(corners, fill=fill, edge=edge, line=line)

    def shape(
        self, corners: Sequence[tuple[float, float]], *, fill: str | None = None,
        edge: str | None = None, line: float = 0.0,
    ) -> None:  # fmt: skip
        """A closed shape by its corners."""
        from matplotlib.patches import Polygon

        self._add(Polygon(
            list(corners), closed=True, facecolor=fill or "none", edgecolor=edge or "none",
            linewidth=line, joinstyle="miter",
        ))  # fmt: skip

    def ring(self, x: float, y: float, radius: float, *, fill: str | None, edge: str | None,
             line: float = 0.0) -> None:  # fmt: skip
        """A circle by its centre."""
        from matplotlib.patches import Circle

        self._add(Circle(
            (x, y), radius, facecolor=fill or "none", edgecolor=edge or "none", linewidth=line,
        ))  # fmt: skip

    def line(
        self, points: Sequence[tuple[float, float]], *, colour: str = INK, line: float = 2.0,
        dashes: tuple[float, ...] = (),
    ) -> None:  # fmt: skip
        """A line through points; dashes are lengths on and off [px]."""
        from matplotlib.lines import Line2D

        artist = Line2D(
            [x for x, _ in points], [y for _, y in points], color=colour, linewidth=line,
            solid_capstyle="butt", solid_joinstyle="round", dash_capstyle="butt",
        )  # fmt: skip
        if dashes:
            artist.set_dashes([d / line for d in dashes])
        self._add(artist)

    # --- marks: each meaning has a shape of its own ---

    def triangle(self, x: float, y: float, size: float, colour: str = FLUSH) -> None:
        """Points down: water that runs through. With a rim of paper, to stand on a fill."""
        half, rim = size / 2, 1.45
        for scale, fill in ((rim, PAPER), (1.0, colour)):
            wide, high = half * scale, half * scale * 0.9
            self.shape([(x - wide, y - high), (x + wide, y - high), (x, y + high)], fill=fill)

    def diamond(
        self, x: float, y: float, size: float, colour: str = READING, *, hollow: bool = False
    ) -> None:
        """A reading; hollow where several differ."""
        half = size / 2
        corners = [(x, y - half), (x + half, y), (x, y + half), (x - half, y)]
        self.shape(corners, fill=None if hollow else colour, edge=colour, line=4 if hollow else 0)

    # --- the card ---

    def png(self, height: float) -> bytes:
        """The card of a height [px] as a PNG: opaque, the same bytes for the same drawing."""
        from matplotlib.backends.backend_agg import FigureCanvasAgg
        from matplotlib.figure import Figure
        from PIL import Image

        tall = round(height)
        figure = Figure(figsize=(WIDTH / _DPI, tall / _DPI), dpi=_DPI, facecolor=PAPER)
        canvas: Any = FigureCanvasAgg(figure)
        self._place.clear().scale(1, -1).translate(0, tall)
        drawn, self._artists = self._artists, []
        self._graduated_edge(tall)
        self.box(2, 2, WIDTH - 4, tall - 4, edge=FRAME, line=4)
        for order, artist in enumerate([*self._artists, *drawn]):
            artist.set_zorder(order)
            figure.add_artist(artist)
        canvas.draw()
        whole = Image.frombuffer(
            "RGBA", canvas.get_width_height(), bytes(canvas.buffer_rgba()), "raw", "RGBA", 0, 1
        )
        flat = whole.convert("RGB").quantize(
            _COLOURS, method=Image.Quantize.FASTOCTREE, dither=Image.Dither.NONE
        )
        target = io.BytesIO()
        flat.save(target, "png", compress_level=6)
        # All this is a knot of references, with several MB to draw on tied in: undone here, as
        # the collector comes seldom to what has grown old.
        for part in (figure, canvas, *self._artists, *drawn):
            vars(part).clear()
        self._artists = []
        return target.getvalue()

    def _graduated_edge(self, tall: int) -> None:
        """Marks as on a measuring jug, along the left."""
        for number, y in enumerate(range(tall - 40, 39, -20)):
            self.line([(4, y), (4 + (34 if number % 5 == 0 else 18), y)], colour=FRAME, line=2)

    def _add(self, artist: Artist) -> None:
        artist.set_transform(self._place)
        self._artists.append(artist)


@lru_cache(maxsize=2048)
def drawable(text: str) -> str:
    """A text on one line without what the font has no letter for; '…' where nothing is left."""
    joined = " ".join(unicodedata.normalize("NFC", text).split())
    left = " ".join("".join(c for c in joined if ord(c) in _letters()).split())
    return left or ("…" if joined else "")


def one_at_a_time() -> threading.Lock:
    """Held while a picture is drawn."""
    return _ONE_AT_A_TIME
