"""An evening of work on a demonstration pattern, by a seeded maker who errs, interrupts and leaves.

`python -m tests.benchmarks.evening [--hours 2] [--seed N] [--misheard 0.12]` prints the commands
given, misunderstandings, wrong moves, lost places (a ledger apart from the session keeps the true
place and total), the longest silence and the growth of memory. Exit status 1 where a place was
lost, a total was wrong, or too little was said.
"""

from __future__ import annotations

import argparse
import random
import resource
import tempfile
from pathlib import Path

from tests.benchmarks.evening_maker import Maker
from tests.benchmarks.evening_room import Room, Tallies
from tests.session.play import DEMOS, plan_of

USUAL = "harbour-lighthouse"
COMMANDS_AN_HOUR = 300
"""Fewer are no evening."""
WARM = 0.1
"""Share of the evening after which memory is first looked at."""


def evening(
    hours: float, seed: int, misheard: float, folder: Path, pattern: str = USUAL
) -> tuple[Tallies, float]:
    """The tallies of an evening on a demonstration pattern, and how many megabytes it grew."""
    text = (DEMOS / f"{pattern}.txt").read_text(encoding="utf-8")
    chance = random.Random(seed)
    room = Room(plan_of(text), text, folder, chance, misheard)
    maker = Maker(room, chance)
    first = 0.0
    while room.clock.now_s() < hours * 3600:
        maker.turn()
        if not first and room.clock.now_s() > WARM * hours * 3600:
            first = memory_mb()
    maker.bring_back()
    return room.tallies, memory_mb() - first


def memory_mb() -> float:
    """The most memory this program has held so far."""
    return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024


def report(tallies: Tallies, hours: float, grown_mb: float) -> str:
    """The figures, one a line."""
    lines = (
        f"hours {hours:g}, commands {tallies.commands}, keys {tallies.keys}",
        f"misunderstood {tallies.misunderstood}, from the film {tallies.from_film}, "
        f"wrong moves {tallies.wrong_moves}",
        f"interruptions {tallies.interruptions}, of these talked over {tallies.not_silent}",
        f"restarts {tallies.restarts}, pieces finished {tallies.pieces}, "
        f"times brought back {tallies.repairs}",
        f"lost places {tallies.lost_places} of {tallies.places_compared} compared, "
        f"wrong totals {tallies.wrong_totals} of {tallies.totals_compared}",
        f"longest silence {tallies.longest_silence_s:.1f} s, memory grew {grown_mb:.1f} MB",
        *tallies.faults[:8],
    )
    return "\n".join(lines)


def enough(tallies: Tallies, hours: float) -> bool:
    """Whether the evening holds what it promises."""
    right = not (tallies.lost_places or tallies.wrong_totals or tallies.not_silent)
    return right and tallies.commands >= COMMANDS_AN_HOUR * hours


def main() -> int:
    """Exit status 0 where no place was lost."""
    parser = argparse.ArgumentParser(description="An evening of work by a seeded maker.")
    parser.add_argument("--hours", type=float, default=2.0)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--misheard", type=float, default=0.12, help="share of the words said")
    parser.add_argument("--pattern", default=USUAL, help="the name of a demonstration pattern")
    args = parser.parse_args()
    with tempfile.TemporaryDirectory() as folder:
        tallies, grown = evening(args.hours, args.seed, args.misheard, Path(folder), args.pattern)
    print(report(tallies, args.hours, grown))
    return 0 if enough(tallies, args.hours) else 1


if __name__ == "__main__":
    raise SystemExit(main())
