"""Absent: what a test needs and is not there; skipped with the reason, but a fault where all must
run.
"""

from __future__ import annotations

import os

import pytest

ALL = "READER_TESTS"
"""READER_TESTS=all in the environment: nothing may be skipped for want of a program."""


def skip_without(reason: str) -> None:
    """Skips the test for this reason, fails it where all tests must run; "" is no reason."""
    if reason and os.environ.get(ALL) == "all":
        pytest.fail(f"All tests must run here, but {reason}.")
    if reason:
        pytest.skip(reason)
