"""Opening: a pattern file, or the pieces on the go, up to the first words of a session.

Where there is something to choose (a piece, a size) the first words are that question.
"""

from __future__ import annotations

import datetime
import sys
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

from reader.app.loop import Loop
from reader.counts.account import count_pattern
from reader.devices.pattern_file import read_pattern
from reader.devices.ports import PatternUnreadable, ReaderError
from reader.devices.progress_file import FileShelf, Saved
from reader.pattern.parser import Pattern, parse_pattern
from reader.plan import find
from reader.plan.step import Plan
from reader.plan.unroll import fingerprint, make_plan
from reader.session.choosing import begin_choosing
from reader.session.start import begin
from reader.session.state import Tastes

LEAST_STITCHY = 0.002
"""Rows found for each word below which a long text is no pattern (our choice)."""
MOST_OFFERED = 20
"""Pieces on the go that are offered, those worked last first."""


@dataclass(frozen=True, slots=True)
class Paper:
    """A pattern as it was read from its file."""

    file: str
    text: str
    pattern: Pattern

    @property
    def fingerprint(self) -> str:
        """What ties saved progress to this text."""
        return fingerprint(self.text)


def read_paper(file: str) -> Paper:
    """The pattern in a file; raises PatternUnreadable with one sentence."""
    text = read_pattern(Path(file))
    return Paper(file, text, parse_pattern(text))


def plan_of(paper: Paper, size: int) -> Plan:
    """The plan for a size, 0-based; raises PatternUnreadable where there is nothing to work."""
    sizes = len(paper.pattern.sizes)
    if not 0 <= size < max(1, sizes):
        raise PatternUnreadable(
            f"There is no size {size + 1}; the pattern has {sizes}. Choose one with --size."
        )
    counted = count_pattern(paper.pattern, size)
    rows = sum(1 for part in counted.parts for row in part.rows if row.count or row.moves)
    name = Path(paper.file).name
    if not rows or rows < LEAST_STITCHY * len(paper.text.split()):
        raise PatternUnreadable(
            f"No rows or rounds were found in {name}; is it a crochet or knitting pattern in words?"
        )
    plan = make_plan(counted, paper.text)
    if find.first_place(plan) is None:
        raise PatternUnreadable(f"{name} holds no step that could be worked.")
    return plan


class Opening:
    """What is opened in a loop. size: 0-based, None to be asked. again: from the beginning."""

    def __init__(
        self, loop: Loop, shelf: FileShelf, tastes: Tastes, size: int | None, again: bool
    ) -> None:
        self.loop, self.shelf, self.tastes = loop, shelf, tastes
        self.size, self.again = size, again

    def ready(self, file: str) -> Callable[[], None]:
        """What starts the loop: on this file, or where it is "" on a piece on the go.

        Raises PatternUnreadable with one sentence where there is nothing to work.
        """
        if file:
            return self.paper_ready(read_paper(file))
        pieces = self.pieces()
        if not pieces:
            raise PatternUnreadable(
                f"Nothing is on the go{self.finished_told()}; "
                "say which pattern: reader work, then its file."
            )
        if len(pieces) == 1:
            return self.paper_ready(read_paper(str(pieces[0].progress["file"])))
        return lambda: self.ask_piece(pieces)

    def pieces(self) -> tuple[Saved, ...]:
        """The unfinished pieces whose pattern is still there, those worked last first."""
        there = (
            one
            for one in self.shelf.all_saved()
            if not one.progress.get("finished")
            and Path(str(one.progress.get("file", ""))).is_file()
        )
        return tuple(there)[:MOST_OFFERED]

    def finished_told(self) -> str:
        """The pieces that were finished, with their dates, for the end of a sentence."""
        done = [one.progress for one in self.shelf.all_saved() if one.progress.get("finished")]
        named = [f"{one.get('title')} on {one.get('saved_on')}" for one in done[:MOST_OFFERED]]
        return f", finished are {', '.join(named)}" if named else ""

    def ask_piece(self, pieces: tuple[Saved, ...]) -> None:
        """Asks which piece on the go, and opens that."""
        names = tuple(_piece_name(one, pieces) for one in pieces)

        def chosen(index: int) -> None:
            self.paper_ready(read_paper(str(pieces[index].progress["file"])))()

        self.loop.choose(*begin_choosing("project", "", names, self.tastes), chosen)

    def paper_ready(self, paper: Paper) -> Callable[[], None]:
        """What begins the work of a pattern, or asks for its size first."""
        saved = None if self.again else self.kept(paper)
        names = paper.pattern.sizes
        size = self.size if self.size is not None else _size_kept(saved, names)
        if size is None and len(names) > 1:
            plan_of(paper, 0)  # What cannot be worked is told before anything is asked.
            return lambda: self.ask_size(paper)
        return self.work_ready(paper, size or 0, saved)

    def ask_size(self, paper: Paper) -> None:
        """Asks which size is made, and begins with that."""
        names = paper.pattern.sizes

        def chosen(index: int) -> None:
            self.work_ready(paper, index, None)()

        self.loop.choose(*begin_choosing("size", paper.pattern.title, names, self.tastes), chosen)

    def work_ready(
        self, paper: Paper, size: int, saved: dict[str, object] | None
    ) -> Callable[[], None]:
        """What begins the session itself."""
        plan = plan_of(paper, size)

        def start() -> None:
            clock = self.loop.clock
            self.loop.kept_too = {"file": str(Path(paper.file).resolve())}
            days = days_since(saved, clock.today())
            self.loop.start(*begin(plan, saved, self.tastes, clock.now_s(), days))

        return start

    def kept(self, paper: Paper) -> dict[str, object] | None:
        """What was saved of a pattern; what cannot be read is told, and the work begins anew."""
        try:
            return self.shelf.load(paper.fingerprint)
        except ReaderError as trouble:
            print(trouble, file=sys.stderr)
            return None


def days_since(saved: dict[str, object] | None, today: str) -> int:
    """Days since progress was saved, 0 where no date was kept."""
    try:
        then = datetime.date.fromisoformat(str((saved or {}).get("saved_on", ""))[:10])
        return (datetime.date.fromisoformat(today[:10]) - then).days
    except ValueError:
        return 0


def _size_kept(saved: dict[str, object] | None, names: tuple[str, ...]) -> int | None:
    size = (saved or {}).get("size")
    return names.index(size) if isinstance(size, str) and size in names else None


def _piece_name(one: Saved, pieces: tuple[Saved, ...]) -> str:
    """The pattern's title; with its file's name where two pieces have the same."""
    title = str(one.progress.get("title") or Path(str(one.progress["file"])).stem)
    same = [other for other in pieces if other.progress.get("title") == one.progress.get("title")]
    if len(same) < 2:
        return title
    return f"{title}, {Path(str(one.progress['file'])).stem.replace('-', ' ').replace('_', ' ')}"
