"""Time and memory of reading and counting, by length of the pattern.

usage: python -m tests.benchmarks.scaling [--passes 5]

Prints rounds, lines, milliseconds of processor time (median of the passes), rounds and lines a
second, and peak memory; then the time of the longest pattern over the time of one a tenth as long:
10 is in proportion. Below, for texts of other shapes, the time of one four times as long over that
of one: 4 is in proportion, 16 is in the square.
"""

from __future__ import annotations

import argparse
import statistics
import time
import tracemalloc
from collections.abc import Callable

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern
from tests.benchmarks.shapes import SHAPES

SIZES = (20, 200, 1_000, 10_000)


def cushion(rounds: int) -> str:
    """A pattern of that many rounds: growing, plain and shrinking rounds, part after part."""
    lines = ["Stack of cushions", "Hook: 4 mm", ""]
    done = 0
    part = 0
    while done < rounds:
        part += 1
        lines += ["", f"Cushion {part}", "Rnd 1: 6 sc in magic ring. (6)"]
        number, count = 1, 6
        for grow in range(1, 10):
            number, count = number + 1, count + 6
            words = "inc" if grow == 1 else f"sc in next {grow - 1} sts, inc"
            lines.append(f"Rnd {number}: *{words}; rep from * around. ({count})")
        for _ in range(5):
            number += 1
            lines.append(f"Rnd {number}: Sc in each st around. ({count})")
        for plain in range(8, 2, -1):
            number, count = number + 1, count - 6
            lines.append(f"Rnd {number}: (Sc in next {plain} sts, sc2tog) 6 times. ({count})")
        done += number
    return "\n".join(lines[:3] + lines[3:][: rounds + 3 * part])


def measure(rounds: int, passes: int) -> tuple[int, int, float, float]:
    """Rounds read, lines, median seconds, peak megabytes."""
    text = cushion(rounds)
    times = []
    read = 0
    for _ in range(passes):
        at = time.process_time()
        counted = count_pattern(parse_pattern(text))
        times.append(time.process_time() - at)
        read = sum(len(part.rows) for part in counted.parts)
    tracemalloc.start()
    count_pattern(parse_pattern(text))
    peak = tracemalloc.get_traced_memory()[1] / 1e6
    tracemalloc.stop()
    return read, text.count("\n") + 1, statistics.median(times), peak


def seconds_of(text: str) -> float:
    """Processor time of reading and counting a text once."""
    at = time.process_time()
    count_pattern(parse_pattern(text))
    return time.process_time() - at


def fourfold(shape: Callable[[int], str], length: int) -> tuple[float, float]:
    """Seconds of a text of that shape, and how many times as long four times the text takes."""
    once = min(seconds_of(shape(length)) for _ in range(2))
    return once, min(seconds_of(shape(4 * length)) for _ in range(2)) / once


def main() -> int:
    """Exit status 0; the figures are for reading."""
    ask = argparse.ArgumentParser(description=__doc__.splitlines()[0] if __doc__ else "")
    ask.add_argument("--passes", type=int, default=5)
    passes = ask.parse_args().passes
    seconds = {}
    print(f"{'rounds':>7} {'lines':>7} {'ms':>9} {'rounds/s':>9} {'lines/s':>9} {'peak MB':>8}")
    for rounds in SIZES:
        read, lines, took, peak = measure(rounds, passes if rounds < 5_000 else 2)
        seconds[rounds] = took
        print(
            f"{read:>7} {lines:>7} {1000 * took:>9.1f} {read / took:>9.0f} "
            f"{lines / took:>9.0f} {peak:>8.1f}"
        )
    print(f"ten times the length takes {seconds[10_000] / seconds[1_000]:.1f} times the time")
    for shape in SHAPES:
        once, times = fourfold(shape, 400)
        print(f"{shape.__name__:>12} {1000 * once:>9.1f} ms, four times the length {times:.1f}")
    return 0


if __name__ == "__main__":
    raise SystemExit(main())
