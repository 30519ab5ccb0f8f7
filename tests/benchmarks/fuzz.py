"""Reads and counts thousands of damaged patterns: no exception, no hang, nothing lost.

usage: python -m tests.benchmarks.fuzz [--cases 20000] [--seed 1] [--slow-s 1.0] [--start 0]

Prints cases, faults, the slowest case and cases a second; exit status 1 when there was any fault.
A long run may be cut in pieces: --start 5000 --cases 5000 are the 5000 cases behind the first 5000
of that seed.
"""

from __future__ import annotations

import argparse
import time
import traceback
from itertools import islice

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern
from reader.plan.unroll import make_plan
from tests.benchmarks.damage import damaged


def fault_of(text: str) -> str:
    """What went wrong with one text, "" when nothing did."""
    try:
        counted = count_pattern(parse_pattern(text))
        make_plan(counted, text)
    except Exception:  # any exception at all is what the run looks for
        return traceback.format_exc(limit=-3)
    for part in counted.parts:
        for row in part.rows:
            if row.count is not None and row.count < 0:
                return f"{row.label}: a count below nothing ({row.count})"
    return ""


def main() -> int:
    """Exit status: 0 when no case failed."""
    ask = argparse.ArgumentParser(description=__doc__.splitlines()[0] if __doc__ else "")
    ask.add_argument("--cases", type=int, default=20_000)
    ask.add_argument("--seed", type=int, default=1)
    ask.add_argument("--start", type=int, default=0, help="cases of the seed that are left out")
    ask.add_argument("--slow-s", type=float, default=1.0, help="a case slower than this is a fault")
    wanted = ask.parse_args()
    faults: dict[str, str] = {}
    failed, slowest, which = 0, 0.0, 0
    began = time.perf_counter()
    texts = enumerate(damaged(wanted.start + wanted.cases, wanted.seed))
    for number, text in islice(texts, wanted.start, None):
        at = time.process_time()
        fault = fault_of(text)
        took = time.process_time() - at
        slowest, which = max((slowest, which), (took, number))
        if took > wanted.slow_s and not fault:
            fault = f"slow: {took:.1f} s"
        if fault:
            failed += 1
            faults.setdefault(fault, text)
    for fault, text in list(faults.items())[:12]:
        print(f"--- fault\n{fault}\n--- text\n{text[:4000]}\n")
    total = time.perf_counter() - began
    print(
        f"cases {wanted.cases} from {wanted.start}, faults {failed} ({len(faults)} kinds), slowest "
        f"case {1000 * slowest:.0f} ms ({which}), {wanted.cases / total:.0f} cases a second, "
        f"seed {wanted.seed}"
    )
    return 1 if failed else 0


if __name__ == "__main__":
    raise SystemExit(main())
