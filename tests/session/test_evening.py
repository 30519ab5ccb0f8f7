"""The evening's ledger tells a fault when there is one, and none when there is none."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from reader.commands.command import Command
from reader.devices.progress_file import FileShelf
from reader.plan.place import Place
from reader.session import moving
from reader.session.speaking import Out
from reader.session.state import State
from reader.session.transitions import ALWAYS, Ask
from reader.wording import place_words
from tests.benchmarks.evening import enough, evening
from tests.benchmarks.evening_room import Tallies

Patch = pytest.MonkeyPatch
HOURS, SEED, MISHEARD = 1.5, 5, 0.2


def tallies_of(folder: Path, misheard: float = MISHEARD) -> Tallies:
    """A short evening's tallies."""
    return evening(HOURS, SEED, misheard, folder)[0]


def test_a_short_evening_ends_where_the_yarn_is(tmp_path: Path) -> None:
    """One word in five misheard, cut off and resumed: no place lost, every total as printed."""
    tallies = tallies_of(tmp_path)
    assert enough(tallies, HOURS), tallies.faults
    assert tallies.misunderstood > 0
    assert tallies.interruptions > 0
    assert tallies.totals_compared > 20


def test_a_knitted_evening_with_two_copies_ends_where_the_yarn_is(tmp_path: Path) -> None:
    """Pennants made twice, rows that are measured, every fourth word misheard."""
    tallies, _ = evening(HOURS, 4, 0.25, tmp_path, "mooring-pennant")
    assert enough(tallies, HOURS), tallies.faults
    assert tallies.restarts > 0


def test_an_undo_that_goes_too_far_is_found(tmp_path: Path, monkeypatch: Patch) -> None:
    """A deliberate fault: undo lands at the start of the row."""

    def too_far(state: State, command: Command) -> Out:
        state, effects = moving.undo(state, command)
        return replace(state, place=Place(state.place.part, state.place.row, 0)), effects

    monkeypatch.setitem(ALWAYS, Ask.UNDO, too_far)
    assert tallies_of(tmp_path).lost_places > 0


def test_a_place_that_was_not_saved_is_found(tmp_path: Path, monkeypatch: Patch) -> None:
    """A deliberate fault: the file keeps the first place only."""
    real = FileShelf.save

    def once(self: FileShelf, fingerprint: str, progress: dict[str, object]) -> None:
        if self.load(fingerprint) is None:
            real(self, fingerprint, progress)

    monkeypatch.setattr(FileShelf, "save", once)
    assert any(evening(2.0, seed, 0.0, tmp_path / str(seed))[0].lost_places for seed in (4, 5))


def test_a_wrong_total_is_found(tmp_path: Path, monkeypatch: Patch) -> None:
    """A deliberate fault: the spoken count of a row is one too many."""
    monkeypatch.setattr(
        place_words, "say_count", lambda row: f"You should have {(row.count or 0) + 1} stitches."
    )
    assert tallies_of(tmp_path).wrong_totals > 0


@pytest.mark.parametrize("seed", [11, 12])
def test_the_same_seed_gives_the_same_evening(tmp_path: Path, seed: int) -> None:
    """Chance is seeded: an evening can be looked at again."""
    first, second = (evening(0.2, seed, 0.3, tmp_path / name)[0] for name in ("a", "b"))
    assert first == second
