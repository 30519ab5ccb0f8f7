"""The page of what is read: each of its lines is worked, so that it cannot promise too much."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from reader.counts.counted import Verdict
from reader.counts.phrase import count_phrase

PAGE = Path(__file__).parents[2] / "demos" / "what-is-read.md"
LINE = re.compile(
    r"\| `(?P<words>[^`]+)` \| (?P<of>\w+) \| (?P<before>\d+|-) \|(?: "
    r"(?P<after>\d+) \|)?$"
)


def lines_of(heading: str) -> list[re.Match[str]]:
    """The table lines under a heading of the page."""
    text = PAGE.read_text(encoding="utf-8")
    part = text.split(f"## {heading}\n", 1)[1].split("\n## ", 1)[0]
    found = [LINE.match(line) for line in part.splitlines() if line.startswith("| `")]
    assert all(found), f"a line under {heading} is not in the form of the page"
    return [one for one in found if one]


READ = [("crochet", one) for one in lines_of("Crochet")]
READ += [("knitting", one) for one in lines_of("Knitting")]


@pytest.mark.parametrize(
    ("craft", "line"), READ, ids=lambda one: one if isinstance(one, str) else one["words"]
)
def test_what_the_page_says_is_read(craft: str, line: re.Match[str]) -> None:
    """The words leave the number of stitches that the page gives, and nothing is found wrong with
    them.
    """
    before = None if line["before"] == "-" else int(line["before"])
    counted = count_phrase(line["words"], before, craft, line["of"])
    assert counted.count == int(line["after"])
    assert [one.message for one in counted.problems] == []


@pytest.mark.parametrize("line", lines_of("Not yet"), ids=lambda one: one["words"])
def test_what_is_not_read_is_asked_about(line: re.Match[str]) -> None:
    """No count is given as certain: a question is raised, or the count is left open."""
    counted = count_phrase(line["words"], int(line["before"]), line["of"])
    asked = any(one.verdict is Verdict.UNCLEAR for one in counted.problems)
    assert asked or counted.count is None


def test_the_page_is_long_enough_to_mean_something() -> None:
    """A page that was cut by accident would pass every other test here."""
    assert len(READ) >= 120
