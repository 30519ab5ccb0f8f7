"""`reader check`: counts a pattern, says what does not add up; for people, or as JSON for machines.
"""

from __future__ import annotations

import argparse
import json
import sys
from pathlib import Path

from reader.counts.account import count_pattern
from reader.counts.counted import (
    CountedPart,
    CountedPattern,
    CountedRow,
    Problem,
    Verdict,
)
from reader.counts.phrase import count_phrase
from reader.devices.pattern_file import read_pattern
from reader.devices.ports import ReaderError
from reader.pattern.parser import parse_pattern
from reader.wording.report import report_lines, wrong_in


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """The words after `reader check`."""
    parser.add_argument(
        "file", nargs="?", help="the pattern: text, or a document where the extras are installed"
    )
    parser.add_argument("--size", type=int, default=1, help="which size, counted from 1")
    parser.add_argument("--json", action="store_true", help="for machines")
    parser.add_argument("--phrase", help="one instruction instead of a file")
    parser.add_argument("--before", type=int, help="stitches before that instruction")
    parser.add_argument("--craft", choices=["crochet", "knitting"], default="")
    parser.add_argument("--terms", choices=["US", "UK"], default="")


def run(args: argparse.Namespace) -> int:
    """Exit status: 0 nothing wrong, 1 something wrong, 2 the file cannot be read."""
    if args.phrase is not None:
        return phrase(args)
    if not args.file:
        return _told("Name a pattern file to check, or give one instruction with --phrase.")
    try:
        text = read_pattern(Path(args.file))
    except ReaderError as trouble:
        return _told(str(trouble))
    pattern = parse_pattern(text, args.terms, args.craft)
    sizes = len(pattern.sizes)
    if not 1 <= args.size <= sizes:
        return _told(
            f"There is no size {args.size}: the pattern has {sizes}. Choose 1 to {sizes} with "
            f"--size."
        )
    counted = count_pattern(pattern, args.size - 1)
    if args.json:
        print(json.dumps(as_json(counted), ensure_ascii=False))
    if not any(row.moves for part in counted.parts for row in part.rows):
        return _told(
            f"No rows or rounds were found in {args.file}; is it a crochet or knitting pattern in "
            f"words?"
        )
    if not args.json:
        print("\n".join(report_lines(counted)))
    return 1 if wrong_in(counted) else 0


def _told(sentence: str) -> int:
    print(sentence, file=sys.stderr)
    return 2


def phrase(args: argparse.Namespace) -> int:
    """One instruction counted."""
    counted = count_phrase(args.phrase, args.before, args.craft, args.terms)
    messages = [problem.message for problem in counted.problems]
    if args.json:
        out = {"count": counted.count, "used": counted.used, "problems": messages}
        print(json.dumps(out, ensure_ascii=False))
    else:
        count = "not counted" if counted.count is None else str(counted.count)
        print("\n".join([count, *messages]))
    return 1 if messages else 0


def as_json(counted: CountedPattern) -> dict[str, object]:
    """The counted pattern for machines."""
    echo = Verdict.ECHO
    return {
        "title": counted.title,
        "craft": counted.craft,
        "terms": counted.terms,
        "terms_why": counted.terms_why,
        "sizes": list(counted.sizes),
        "size": counted.size + 1,
        "assumed": list(counted.assumed),
        "parts": [_part(part) for part in counted.parts],
        "problems": [_problem(one) for one in counted.problems if one.verdict is not echo],
        "echoes": [_problem(one) for one in counted.problems if one.verdict is echo],
    }


def _part(part: CountedPart) -> dict[str, object]:
    rows = [_row(row) for row in part.rows if row.label != "Start"]
    return {"name": part.name, "make": part.make, "rounds": rows}


def _row(row: CountedRow) -> dict[str, object]:
    return {
        "label": str(row.number) if row.number is not None else row.label,
        "count": row.count if row.groups is None else row.groups,
        "of": row.of if row.groups is not None else "",
        "stitches": row.count,
        "stated": row.stated,
        "verdict": row.verdict.value,
        "spaces": row.spaces,
        "assumed": list(row.assumed),
        "line": row.span.line,
    }


def _problem(one: Problem) -> dict[str, object]:
    return {
        "part": one.part,
        "label": one.label,
        "verdict": one.verdict.value,
        "message": one.message,
        "line": one.span.line,
        "printed": one.printed,
        "counted": one.counted,
        "mend": one.mend,
    }


def main() -> int:
    """`python -m reader.app.check`."""
    parser = argparse.ArgumentParser(prog="reader check")
    add_arguments(parser)
    return run(parser.parse_args())


if __name__ == "__main__":
    raise SystemExit(main())
