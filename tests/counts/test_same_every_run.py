"""A text is counted the same in every run: no rule may hang on the order of a set."""

from __future__ import annotations

import os
import subprocess
import sys

TEXT = r"Buoy\nRnd 1: 6 sc in MR (6 scs)\nRnd 2: 2 sc in each (12 scs)\nRnd 3: [1 sc, inc] x6 (18)"
COUNT = (
    "from reader.counts.account import count_pattern as c;"
    "from reader.pattern.parser import parse_pattern as p;"
    f"print([r.count for part in c(p('{TEXT}', '', '')).parts for r in part.rows])"
)


def test_the_order_of_sets_changes_no_count() -> None:
    for seed in ("1", "2", "3"):
        run = subprocess.run(
            [sys.executable, "-c", COUNT], capture_output=True, text=True, check=True,
            env={**os.environ, "PYTHONHASHSEED": seed},
        )  # fmt: skip
        assert run.stdout.strip() == "[6, 12, 18]", seed
