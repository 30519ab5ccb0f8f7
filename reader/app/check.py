"""`reader check`: counts a pattern, says what does not add up; for people, or as JSON for machines."""

from __future__ import annotations

import argparse
import json
import sys
from pathlib import Path

from reader.counts.account import count_pattern
from reader.counts.counted import CountedPattern, Verdict
from reader.counts.phrase import count_phrase
from reader.pattern.parser import parse_pattern
from reader.wording.report import report_lines, wrong_in

LARGEST = 8_000_000
"""Bytes of the largest file that is read; books are smaller."""


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
        print(
            "Name a pattern file to check, or give one instruction with --phrase.", file=sys.stderr
        )
        return 2
    text, trouble = read_text(args.file)
    if trouble:
        print(trouble, file=sys.stderr)
        return 2
    pattern = parse_pattern(text, args.terms, args.craft)
    if not 1 <= args.size <= len(pattern.sizes):
        print(
            f"There is no size {args.size}: the pattern has {len(pattern.sizes)}. Choose 1 to {len(pattern.sizes)} with --size.",
            file=sys.stderr,
        )
        return 2
    counted = count_pattern(pattern, args.size - 1)
    if not any(row.moves for part in counted.parts for row in part.rows):
        if args.json:
            print(json.dumps(as_json(counted)))
        print(
            f"No rows or rounds were found in {args.file}; is it a crochet or knitting pattern in words?",
            file=sys.stderr,
        )
        return 2
    if args.json:
        print(json.dumps(as_json(counted), ensure_ascii=False))
    else:
        print("\n".join(report_lines(counted)))
    return 1 if wrong_in(counted) else 0


def read_text(file: str) -> tuple[str, str]:
    """The text of a file, or one sentence that says why it cannot be read."""
    path = Path(file)
    if path.suffix.lower() in (".pdf", ".docx", ".html", ".htm"):
        from reader.devices.pattern_file import read_pattern
        from reader.devices.ports import ReaderError

        try:
            return read_pattern(path), ""
        except ReaderError as trouble:
            return "", str(trouble)
    try:
        data = path.read_bytes()
    except OSError as trouble:
        return (
            "",
            f"{file} cannot be read: {trouble.strerror or trouble}. Check the name and the folder.",
        )
    if not data.strip():
        return "", f"{file} is empty. Choose a file with a pattern in it."
    if len(data) > LARGEST:
        return (
            "",
            f"{file} is larger than any pattern ({len(data) // 1_000_000} million characters). Choose the pattern alone.",
        )
    if b"\0" in data[:4096] and not data.startswith((b"\xff\xfe", b"\xfe\xff")):
        return (
            "",
            f"{file} is not text but some other kind of file. Save the pattern as plain text first.",
        )
    for encoding in (
        "utf-8-sig",
        "utf-16" if data[:2] in (b"\xff\xfe", b"\xfe\xff") else "utf-8",
        "cp1252",
        "latin-1",
    ):
        try:
            text = data.decode(encoding)
        except UnicodeDecodeError:
            continue
        return without_header(text), ""
    return "", f"{file} is in an unknown encoding. Save it as UTF-8 text."


def without_header(text: str) -> str:
    """The text with comment lines at its top blanked, so that every offset stays."""
    lines = text.split("\n")
    at = 0
    while at < len(lines) and lines[at].startswith("# "):
        at += 1
    if at < 3 or not any(line.startswith(("# --- ", "# source", "# craft")) for line in lines[:at]):
        return text
    return "\n".join([" " * len(line) for line in lines[:at]] + lines[at:])


def phrase(args: argparse.Namespace) -> int:
    """One instruction counted."""
    counted = count_phrase(args.phrase, args.before, args.craft, args.terms)
    out = {
        "count": counted.count,
        "used": counted.used,
        "problems": [problem.message for problem in counted.problems],
    }
    if args.json:
        print(json.dumps(out, ensure_ascii=False))
    else:
        print(
            f"{out['count'] if out['count'] is not None else 'not counted'}"
            + "".join(f"\n{one}" for one in counted.problems and out["problems"])
        )
    return 1 if counted.problems else 0


def as_json(counted: CountedPattern) -> dict[str, object]:
    """The counted pattern for machines."""
    parts = [
        {
            "name": part.name,
            "make": part.make,
            "rounds": [
                {
                    "label": str(row.number) if row.number is not None else row.label,
                    "count": row.count,
                    "stated": row.stated,
                    "verdict": row.verdict.value,
                    "spaces": row.spaces,
                    "assumed": list(row.assumed),
                    "line": row.span.line,
                }
                for row in part.rows
                if row.label != "Start"
            ],
        }
        for part in counted.parts
    ]
    problems = [
        {
            "part": one.part,
            "label": one.label,
            "verdict": one.verdict.value,
            "message": one.message,
            "line": one.span.line,
            "printed": one.printed,
            "counted": one.counted,
            "mend": one.mend,
        }
        for one in counted.problems
        if one.verdict is not Verdict.ECHO
    ]
    echoes = [
        {"part": one.part, "label": one.label, "message": one.message, "line": one.span.line}
        for one in counted.problems
        if one.verdict is Verdict.ECHO
    ]
    return {
        "title": counted.title,
        "craft": counted.craft,
        "terms": counted.terms,
        "terms_why": counted.terms_why,
        "sizes": list(counted.sizes),
        "size": counted.size + 1,
        "parts": parts,
        "problems": problems,
        "echoes": echoes,
    }


def main() -> int:
    """`python -m reader.app.check`."""
    parser = argparse.ArgumentParser(prog="reader check")
    add_arguments(parser)
    return run(parser.parse_args())


if __name__ == "__main__":
    raise SystemExit(main())
