"""Palette: the colours of the dark and the light look, in pairs that are read together, with their
contrast.
"""

from __future__ import annotations

from dataclasses import dataclass, fields

LEAST_CONTRAST = 7.0
"""Every pair keeps the enhanced contrast for text: WCAG 2.2, success criterion 1.4.6 (level AAA).
"""


@dataclass(frozen=True, slots=True)
class Pair:
    """Ink on a ground, as "#rrggbb"."""

    ink: str
    ground: str

    def __str__(self) -> str:
        """As Textual and Rich write a style."""
        return f"{self.ink} on {self.ground}"


@dataclass(frozen=True, slots=True)
class Look:
    """One look: each thing on the screen with its pair. Nothing is told by colour alone."""

    name: str
    page: Pair
    quiet: Pair
    step: Pair
    place: Pair
    count: Pair
    unfilled: Pair
    notice: Pair
    trouble: Pair
    state: Pair
    keys: Pair
    key_cap: Pair

    def pairs(self) -> dict[str, Pair]:
        """Every pair by name."""
        named = {field.name: getattr(self, field.name) for field in fields(self)}
        return {name: pair for name, pair in named.items() if isinstance(pair, Pair)}


_NIGHT, _SLATE, _FOAM = "#0d1418", "#1a252b", "#f3efe4"
DARK = Look(
    name="dark",
    page=Pair(_FOAM, _NIGHT),
    quiet=Pair("#b9c4c6", _NIGHT),
    step=Pair("#fff6da", _NIGHT),
    place=Pair(_FOAM, _SLATE),
    count=Pair("#8fe0c4", _NIGHT),
    unfilled=Pair("#9fb0b4", _NIGHT),
    notice=Pair("#ffd27a", _NIGHT),
    trouble=Pair("#1a0f08", "#ffb59a"),
    state=Pair("#a8d8ff", _NIGHT),
    keys=Pair("#d9dfde", _SLATE),
    key_cap=Pair(_NIGHT, "#c9d6d3"),
)

_SAILCLOTH, _LINEN, _INK = "#faf6ea", "#e9e2cf", "#14181a"
LIGHT = Look(
    name="light",
    page=Pair(_INK, _SAILCLOTH),
    quiet=Pair("#3d474a", _SAILCLOTH),
    step=Pair("#0a0d0e", _SAILCLOTH),
    place=Pair(_INK, _LINEN),
    count=Pair("#00503c", _SAILCLOTH),
    unfilled=Pair("#46524f", _SAILCLOTH),
    notice=Pair("#5a2e00", _SAILCLOTH),
    trouble=Pair("#fff8f2", "#7a1f0c"),
    state=Pair("#00335f", _SAILCLOTH),
    keys=Pair("#22292b", _LINEN),
    key_cap=Pair("#faf6ea", "#2c3a3d"),
)

LOOKS = {look.name: look for look in (DARK, LIGHT)}


def luminance(colour: str) -> float:
    """Relative luminance of "#rrggbb", 0 black to 1 white.

    Source: WCAG 2.2, definition of relative luminance (www.w3.org/TR/WCAG22/#dfn-relative-
    luminance).
    """
    red, green, blue = (int(colour[i : i + 2], 16) / 255 for i in (1, 3, 5))
    return 0.2126 * _linear(red) + 0.7152 * _linear(green) + 0.0722 * _linear(blue)


def contrast(pair: Pair) -> float:
    """Contrast ratio of a pair, 1 to 21.

    Source: WCAG 2.2, definition of contrast ratio (www.w3.org/TR/WCAG22/#dfn-contrast-ratio).
    """
    lights = sorted((luminance(pair.ink), luminance(pair.ground)))
    return (lights[1] + 0.05) / (lights[0] + 0.05)


def _linear(share: float) -> float:
    """One sRGB channel, 0 to 1, as light."""
    return share / 12.92 if share <= 0.04045 else ((share + 0.055) / 1.055) ** 2.4
