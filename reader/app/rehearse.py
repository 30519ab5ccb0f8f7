"""`reader rehearse`: a whole session without hardware; a scripted maker speaks, the real ear hears,
the real voice answers.
"""

from __future__ import annotations

import argparse
import sys
import tempfile
from pathlib import Path

import reader
from reader.app.rehearsal.maker_voice import makers_voice
from reader.app.rehearsal.script import read_script
from reader.app.rehearsal.stage import Stage
from reader.app.work import read_plan

BETWEEN_S = 0.3


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """The words after `reader rehearse`."""
    parser.add_argument(
        "file", nargs="?", help="a pattern; the harbour lighthouse where none is named"
    )
    parser.add_argument("--script", help="what the maker says and does")
    parser.add_argument("--fast", action="store_true", help="as fast as the machine can")
    parser.add_argument("--out", help="folder for the sound of both sides and the log")
    parser.add_argument("--voice", default="slt", help="the maker's voice: slt, rms, awb or kal16")
    parser.add_argument("--model", default="", help="another listening model's directory")


def demos() -> Path:
    """The folder of demonstration patterns: in the package, or beside it in a checkout."""
    package = Path(reader.__file__).parent
    inside = package / "demos"
    return inside if inside.is_dir() else package.parent / "demos"


def run(args: argparse.Namespace) -> int:
    """Exit status 0 when every command was understood and every check held, else 1."""
    file = args.file or str(demos() / "harbour-lighthouse.txt")
    script = Path(args.script) if args.script else demos() / "rehearsal.script"
    lines = read_script(script)
    out = Path(args.out) if args.out else Path(tempfile.mkdtemp(prefix="rehearsal-"))
    out.mkdir(parents=True, exist_ok=True)
    plan = read_plan(file, 1)
    stage = Stage(plan, makers_voice(args.voice), args.model, args.fast, out, print)
    try:
        for line in lines:
            stage.act(line)
        stage.wait(BETWEEN_S)
    finally:
        stage.close()
    print(stage.figures())
    print(f"Both sides are in {out / 'conversation.wav'}, the log in {out / 'log.txt'}.")
    if stage.wrong:
        print("The rehearsal failed: " + stage.wrong[0], file=sys.stderr)
    return 1 if stage.wrong else 0
