"""Every colour pair can be read by weak eyes."""

from __future__ import annotations

import pytest
from rich.color import Color, ColorSystem
from rich.style import Style
from textual.filter import monochrome_style

from reader.screens.palette import LEAST_CONTRAST, LOOKS, Look, Pair, contrast, luminance

PAIRS = [(look.name, name) for look in LOOKS.values() for name in look.pairs()]


@pytest.mark.parametrize(("look", "name"), PAIRS)
def test_every_pair_keeps_the_enhanced_contrast(look: str, name: str) -> None:
    """WCAG 2.2, success criterion 1.4.6: at least 7:1 for text."""
    assert contrast(LOOKS[look].pairs()[name]) >= LEAST_CONTRAST


@pytest.mark.parametrize(
    ("ink", "ground", "ratio"),
    [
        # WCAG 2.2, note to "contrast ratio": ratios go from 1 to 21; black on white is the far end.
        ("#000000", "#ffffff", 21.0),
        ("#ffffff", "#ffffff", 1.0),
        # From memory, widely printed: the lightest grey that passes 4.5:1, and the next.
        ("#767676", "#ffffff", 4.54),
        ("#777777", "#ffffff", 4.48),
    ],
)
def test_contrast_agrees_with_published_ratios(ink: str, ground: str, ratio: float) -> None:
    """The formula gives the figures that are printed for it."""
    assert contrast(Pair(ink, ground)) == pytest.approx(ratio, abs=0.005)
    assert contrast(Pair(ground, ink)) == contrast(Pair(ink, ground))


def test_luminance_of_the_primaries() -> None:
    """WCAG 2.2, relative luminance: the weights of red, green and blue are 0.2126, 0.7152 and
    0.0722.
    """
    assert luminance("#ff0000") == pytest.approx(0.2126)
    assert luminance("#00ff00") == pytest.approx(0.7152)
    assert luminance("#0000ff") == pytest.approx(0.0722)


def test_a_faint_pair_would_be_seen() -> None:
    """The check above can fail."""
    assert contrast(Pair("#888888", "#ffffff")) < LEAST_CONTRAST


@pytest.mark.parametrize(("look", "name"), PAIRS)
def test_the_contrast_holds_in_terminals_of_256_colours(look: str, name: str) -> None:
    """Where the terminal rounds the colours to its own, the pair can still be read: 7:1 as well."""
    pair = LOOKS[look].pairs()[name]
    rounded = Pair(*(_in_256(colour) for colour in (pair.ink, pair.ground)))
    assert contrast(rounded) >= LEAST_CONTRAST


@pytest.mark.parametrize(("look", "name"), PAIRS)
def test_the_contrast_holds_without_colour(look: str, name: str) -> None:
    """With NO_COLOR the greys that are left are as far apart."""
    pair = LOOKS[look].pairs()[name]
    grey = monochrome_style(Style(color=pair.ink, bgcolor=pair.ground))
    assert grey.color is not None
    assert grey.bgcolor is not None
    shades = Pair(grey.color.get_truecolor().hex, grey.bgcolor.get_truecolor().hex)
    assert contrast(shades) >= LEAST_CONTRAST


def _in_256(colour: str) -> str:
    near = Color.parse(colour).downgrade(ColorSystem.EIGHT_BIT)
    return near.get_truecolor().hex


def test_each_look_has_a_pair_for_every_role() -> None:
    """No role is left to the terminal's own colours."""
    roles = {name for name in Look.__dataclass_fields__ if name != "name"}
    assert all(set(look.pairs()) == roles for look in LOOKS.values())
