"""How colours are seen: contrast by WCAG 2.2, and colour-blind eyes by Machado et al. 2009."""

from __future__ import annotations

import numpy as np
import numpy.typing as npt

Vector = npt.NDArray[np.float64]

#: Full protanopia and deuteranopia in linear sRGB: Machado, Oliveira and Fernandes 2009, A
#: Physiologically-based Model for Simulation of Color Vision Deficiency, IEEE Transactions on
#: Visualization and Computer Graphics 15(6), severity 1.0. Written from memory, then found the
#: same, figure by figure, in two public shader libraries that cite the paper.
SEEN_BY = {
    "usual": np.eye(3),
    "protanopia": np.array([
        [0.152286, 1.052583, -0.204868],
        [0.114503, 0.786281, 0.099216],
        [-0.003882, -0.048116, 1.051998],
    ]),
    "deuteranopia": np.array([
        [0.367322, 0.860646, -0.227968],
        [0.280085, 0.672501, 0.047413],
        [-0.011820, 0.042940, 0.968881],
    ]),
}  # fmt: skip
#: Linear sRGB to XYZ and its white D65: IEC 61966-2-1, from memory.
_XYZ = np.array([
    [0.4124564, 0.3575761, 0.1804375],
    [0.2126729, 0.7151522, 0.0721750],
    [0.0193339, 0.1191920, 0.9503041],
])  # fmt: skip
_WHITE = np.array([0.95047, 1.0, 1.08883])


def linear(colour: str) -> Vector:
    """A colour '#rrggbb' as linear sRGB [0 to 1]."""
    channels = np.array([int(colour[i : i + 2], 16) for i in (1, 3, 5)]) / 255
    return np.where(channels <= 0.04045, channels / 12.92, ((channels + 0.055) / 1.055) ** 2.4)


def luminance(colour: str) -> float:
    """Relative luminance, WCAG 2.2."""
    return float(np.array([0.2126, 0.7152, 0.0722]) @ linear(colour))


def contrast(one: str, other: str) -> float:
    """Contrast ratio, WCAG 2.2: (lighter + 0.05) / (darker + 0.05)."""
    dark, light = sorted((luminance(one), luminance(other)))
    return (light + 0.05) / (dark + 0.05)


def lab(rgb: Vector) -> Vector:
    """CIE 1976 L*a*b* of linear sRGB."""
    scaled = _XYZ @ np.clip(rgb, 0, 1) / _WHITE
    f = np.where(scaled > 216 / 24389, np.cbrt(scaled), (24389 / 27 * scaled + 16) / 116)
    return np.array([116 * f[1] - 16, 500 * (f[0] - f[1]), 200 * (f[1] - f[2])])


def apart(one: str, other: str, eyes: str) -> float:
    """How far two colours lie apart for some eyes (CIE 1976 colour difference)."""
    seen = SEEN_BY[eyes]
    return float(np.linalg.norm(lab(seen @ linear(one)) - lab(seen @ linear(other))))
