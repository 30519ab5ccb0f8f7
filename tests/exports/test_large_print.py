"""Large print keeps the rules of print for weak eyes and loses no word of the plan."""

from __future__ import annotations

import re
from dataclasses import replace
from html.parser import HTMLParser

import pytest

from reader.counts.worked import Move, MoveKind, Pass
from reader.exports.large_print import large_print
from reader.exports.worked_out import Block, blocks
from reader.plan.place import Place
from reader.plan.step import GatherItem, Notice, Plan, PlanPart, PlanRow, RowKind, Step
from reader.text.span import Span

HERE = Span(0, 10, 1)
VOID = {"meta", "br", "hr"}


def step(words: str, at: int, passes: tuple[Pass, ...] = ()) -> Step:
    """A step of one move, worked in these passes."""
    move = Move(MoveKind.WORK, words, HERE, 1, 1, stitch="sc", passes=passes)
    return Step(Place(0, 0, at), 1, (move,), passes, words, at, at + 1, 4, 1, at == 0, at == 3)


def repeated(*wordings: str) -> PlanRow:
    """A row of a repeat, one step a pass, with these words in turn."""
    passes = [Pass(n + 1, len(wordings), HERE) for n in range(len(wordings))]
    groups = tuple(step(words, n, (passes[n],)) for n, words in enumerate(wordings))
    return PlanRow(
        RowKind.WORK, "Round 4", 4, True, "*sc; rep from *", 4, 4, groups, (0,),
        notices=(Notice("colour", "Change to red after this round."),),
        warning="The pattern prints 5, the stitches make 4.", side="right side",
    )  # fmt: skip


def plan(*rows: PlanRow) -> Plan:
    """An invented plan of one part, made twice."""
    part = PlanPart("Harbour & buoy", 2, 2, rows)
    return Plan(
        "Buoy <net>", "crochet", "us", "small", ("small", "large"), (part,),
        (GatherItem("yarn", "red cotton, 40 grams", "red 40 g"),),
        ("Small parts: keep from babies.",),
        ("Worked in a spiral.",), ("18 stitches are 4 inches.",), (), ("Round 4 makes 4.",), "f",
    )  # fmt: skip


def spoken(of: Step, row: PlanRow) -> str:
    """The words as they stand."""
    return of.written


class Reading(HTMLParser):
    """Tags that are open, and all words."""

    def __init__(self) -> None:
        super().__init__()
        self.open: list[str] = []
        self.tags: set[str] = set()
        self.words: list[str] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        """Opens."""
        self.tags.add(tag)
        if tag not in VOID:
            self.open.append(tag)

    def handle_endtag(self, tag: str) -> None:
        """Closes the one opened last."""
        assert self.open.pop() == tag

    def handle_data(self, text: str) -> None:
        """Keeps words outside the style."""
        if self.open and self.open[-1] != "style":
            self.words += text.split()


def read(page: str) -> Reading:
    """The page, taken apart; every tag closed."""
    reading = Reading()
    reading.feed(page)
    assert reading.open == []
    return reading


def test_every_word_of_the_plan_is_there() -> None:
    """Title, size, cautions, gathering, gauge, notes, warnings, notices, steps and counts."""
    words = " ".join(read(large_print(plan(repeated("sc", "inc")), spoken)).words)
    for wanted in (
        "Buoy <net>", "Size: small", "keep from babies", "Red cotton, 40 grams", "18 stitches are",
        "Worked in a spiral", "Round 4 makes 4",
        "Harbour & buoy, number 2 of 2", "Round 4, right side",
        "Change to red", "Look out: The pattern prints 5", "Pass 1 of 2. Sc. Pass 2 of 2. Inc.",
        "You should have 4 stitches.",
    ):  # fmt: skip
        assert wanted in words


def test_type_is_large_and_upright() -> None:
    """No type under 22 points, sans serif, one column, left aligned, no italics, black on white.

    Source of the sizes: large print guidelines ask for 18 points at least (American Council of the
    Blind); 22 to 24 is what makers with low vision ask for.
    """
    page = large_print(plan(repeated("sc")), spoken)
    sizes = [int(size) for size in re.findall(r"font-size: (\d+)pt", page)]
    assert sizes
    assert min(sizes) >= 22
    assert "sans-serif" in page
    assert "italic" not in page
    assert "column" not in page
    assert not read(page).tags & {"i", "em", "table", "img", "script", "link"}
    assert "http" not in page


def test_passes_that_read_the_same_are_one_block() -> None:
    """A repeat is said once, with how many times in all and a box for every time."""
    row = repeated("sc", "sc", "sc")
    assert blocks(row, spoken) == (Block(("sc",), times=3),)
    page = large_print(plan(row), spoken)
    assert "<p>3 times:</p>" in page
    assert page.count('class="box"') == 3 + 1


def test_passes_that_differ_are_written_out() -> None:
    """A last pass that ends early is not hidden behind a number."""
    assert blocks(repeated("sc", "inc"), spoken) == (
        Block(("sc",), which="pass 1 of 2"),
        Block(("inc",), which="pass 2 of 2"),
    )


@pytest.mark.parametrize("kind", [RowKind.UNREAD, RowKind.REMARK, RowKind.FINISH])
def test_rows_without_steps_are_printed_as_written(kind: RowKind) -> None:
    """What could not be read is there, in the pattern's words, and says so."""
    row = replace(repeated(), kind=kind, written="wobble the <left> anchor", groups=())
    page = large_print(plan(row), spoken)
    assert "wobble the &lt;left&gt; anchor" in page
    assert ("As written:" in page) == (kind is RowKind.UNREAD)
