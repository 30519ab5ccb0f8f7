"""The verb `print-large`: a pattern file in, an HTML page in large print out, steps in words."""

from __future__ import annotations

import argparse
import sys
from pathlib import Path

from reader.devices.ports import ReaderError


class PageUnwritable(ReaderError):
    """The page cannot be written where the maker wants it."""


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """The file, the size by its number, and where the page goes."""
    parser.add_argument("file", type=Path, help="the pattern")
    parser.add_argument("--size", type=int, default=1, help="which size, 1 for the first")
    parser.add_argument("--to", type=Path, help="the page to write; else beside the pattern")


def run(args: argparse.Namespace) -> int:
    """0 when the page is written; raises PatternUnreadable or PageUnwritable with one sentence."""
    from reader.counts.account import count_pattern
    from reader.devices.pattern_file import read_pattern
    from reader.exports.large_print import large_print
    from reader.pattern.parser import parse_pattern
    from reader.plan.unroll import make_plan
    from reader.wording.say import say_step

    text = read_pattern(args.file)
    plan = make_plan(count_pattern(parse_pattern(text), size=max(0, args.size - 1)), text)
    target = args.to or args.file.with_name(f"{args.file.stem}-large-print.html")
    try:
        target.write_text(large_print(plan, say_step), encoding="utf-8")
    except OSError as error:
        raise PageUnwritable(
            f"The page {target} cannot be written: {error.strerror}; name another place with --to."
        ) from error
    print(f"Large print is in {target}.")
    for warning in plan.warnings:
        print(f"Look out: {warning}", file=sys.stderr)
    return 0
