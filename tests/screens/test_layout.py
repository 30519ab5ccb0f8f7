"""The screen fits any terminal, and says the same at every size."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from reader.screens.layout import Sheet, lay_out
from reader.screens.palette import DARK
from reader.screens.rows import columns
from reader.wording.shown import Ear, Shown
from tests.screens.moments import ANY, TOWER

SIZES = [(20, 6), (24, 8), (40, 12), (80, 24), (120, 40), (200, 60)]


def text(sheet: Sheet) -> str:
    """The screen as text."""
    return "\n".join("".join(run.text for run in row).rstrip() for row in sheet.rows)


def words(sheet: Sheet) -> str:
    """The screen as words on one line."""
    return " ".join(text(sheet).split())


@settings(max_examples=60, deadline=None)
@given(ANY, st.integers(1, 220), st.integers(1, 70), st.integers(-2, 40))
def test_any_moment_fits_any_terminal(shown: Shown, width: int, height: int, page: int) -> None:
    """Exactly the rows asked for, none too wide, every role in the palette, whatever is to be
    shown.
    """
    sheet = lay_out(shown, width, height, page)
    assert len(sheet.rows) == height
    assert all(columns(row) <= width for row in sheet.rows)
    assert {run.role for row in sheet.rows for run in row} <= set(DARK.pairs())
    assert sheet.pages >= 1


@pytest.mark.parametrize(("width", "height"), SIZES)
def test_state_place_and_count_stand_at_every_size(width: int, height: int) -> None:
    """Even the smallest terminal says where, what and how many, in words."""
    said = words(lay_out(TOWER, width, height))
    assert "Round 4" in said
    assert "pass 2 of 3" in said
    assert "Listening" in said
    assert "9 of 27 done" in said


def test_forty_by_twelve_as_picture() -> None:
    """The small screen: plain bold step, large count."""
    assert text(lay_out(TOWER, 40, 12)) == (
        " Tower, Round 4             pass 2 of 3\n"
        " Single crochet in each of the next\n"
        " eight stitches\n"
        "\n"
        " ▄▀▀▄        ▄▀▀   ▄▀▀▄ ▀▀▀█\n"
        " ▀▄▄█   ▄▀▀▄ █▀▀     ▄▀   ▄▀\n"
        "    █   █  █ █     ▄▀    ▄▀\n"
        "  ▀▀     ▀▀  ▀     ▀▀▀▀  ▀\n"
        " 9 of 27 done, 18 left\n"
        " After round 4, change to red.\n"
        " ● Listening  Heard: next\n"
        " space  next  b  back  f1  help"
    )


@pytest.mark.parametrize(("width", "height"), [(80, 24), (120, 40), (200, 60)])
def test_the_step_is_large_where_there_is_room(width: int, height: int) -> None:
    """From 80x24 up the step itself is drawn in large letters."""
    step = [row for row in lay_out(TOWER, width, height).rows if row[0].role == "step"]
    assert len(step) >= 10
    assert "█" in text(lay_out(TOWER, width, height))


def test_huge_letters_on_a_huge_screen() -> None:
    """Where there is room for letters ten rows high, they are used."""
    short = replace(TOWER, step="Knit five")
    step = [row for row in lay_out(short, 120, 40).rows if row[0].role == "step"]
    assert len(step) == 10


@pytest.mark.parametrize(("width", "height"), SIZES)
def test_a_long_step_is_all_there_on_its_pages(width: int, height: int) -> None:
    """Nothing of a long remark is lost: its pages together hold every word, in order."""
    step = " ".join(f"word{n}" for n in range(400))
    shown = replace(TOWER, step=step, brief="")
    pages = lay_out(shown, width, height).pages
    found = []
    for page in range(pages):
        for row in lay_out(shown, width, height, page).rows:
            found += [word for run in row if run.role == "step" for word in run.text.split()]
    assert found == step.split()


def test_a_question_is_always_there() -> None:
    """A yes or no that is waited for is on the screen at every size."""
    asked = replace(TOWER, question="Rip back to round 2?")
    for width, height in SIZES:
        sheet = lay_out(asked, width, height)
        asking = [run for row in sheet.rows for run in row if run.role == "trouble"]
        assert "Rip back" in words(sheet) or len(asking) >= 5


@pytest.mark.parametrize("ear", Ear)
def test_the_state_is_a_word(ear: Ear) -> None:
    """Whether the program listens is told in words, not by a colour or a sign alone."""
    assert ear.value.split(",")[0] in words(lay_out(replace(TOWER, ear=ear), 40, 12))


def test_help_is_never_pushed_off_the_keys() -> None:
    """The last key, help, stands whenever there is a row for keys."""
    for width in range(24, 120):
        assert "help" in words(lay_out(TOWER, width, 12)), width


def test_more_than_there_should_be_is_said() -> None:
    """A count beyond the total is not hidden by a full bar."""
    assert "2 more than the 27 there should be" in words(lay_out(replace(TOWER, done=29), 80, 24))
