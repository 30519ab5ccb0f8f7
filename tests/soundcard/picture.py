"""Picture of the screen, for the README: the real program in a real terminal, drawn as SVG.

usage: python -m tests.soundcard.picture [--check]

Writes demos/screen-80x24.svg and demos/screen-40x12.svg. With --check nothing is written, and the
exit status is 1 when a picture no longer shows what the screen shows. Needs Debian's tmux and
pulseaudio: the program has a virtual microphone and speaker, as it would have real ones.
"""

from __future__ import annotations

import argparse
import html
import re
import tempfile
from functools import partial
from pathlib import Path

from tests.soundcard.drawing import drawn
from tests.soundcard.rig import missing, sound_card
from tests.soundcard.working import (
    LIGHTHOUSE,
    ROOT,
    command_of,
    environment_of,
    missing_terminal,
    on_screen,
)

SIZES = ((80, 24), (40, 12))
MOVES = ("of 6", "of 12", "of 18", "3 of 18", "6 of 18")
"""What stands on the screen before each press of the space bar, and at last."""


def picture_of(columns: int, rows: int) -> str:
    """SVG of the screen in round three of the demonstration pattern, reached by keys."""
    with tempfile.TemporaryDirectory(prefix="reader-picture-") as home, sound_card(False) as card:
        folder, command = Path(home), command_of(LIGHTHOUSE)
        with on_screen(folder, columns, rows, command, environment_of(card, folder)) as screen:
            for at, words in enumerate(MOVES):
                screen.until(partial(_stands, words))
                if at + 1 < len(MOVES):
                    screen.key("Space")
            shown = screen.seen(colours=True)
    return drawn(shown, columns)


def _stands(words: str, seen: str) -> bool:
    return words in seen


def words_of(picture: str) -> str:
    """The words of a picture, without how they are drawn."""
    texts = re.findall(r"<text[^>]*>([^<]*)</text>", picture)
    return " ".join(html.unescape(" ".join(texts)).replace("\xa0", " ").split())


def path_of(columns: int, rows: int) -> Path:
    """Where the picture of this size is kept."""
    return ROOT / "demos" / f"screen-{columns}x{rows}.svg"


def main() -> int:
    """Exit status 0 when the pictures are there and true."""
    ask = argparse.ArgumentParser(description=(__doc__ or "").splitlines()[0])
    ask.add_argument("--check", action="store_true", help="only compare")
    check = ask.parse_args().check
    if missing_terminal() or missing():
        print(missing_terminal() or missing())
        return 2
    stale = 0
    for columns, rows in SIZES:
        path, fresh = path_of(columns, rows), picture_of(columns, rows)
        same = path.is_file() and words_of(path.read_text(encoding="utf-8")) == words_of(fresh)
        stale += not same
        if not check:
            path.write_text(fresh, encoding="utf-8")
        print(f"{path.name}: {'as it was' if same else 'the screen has changed'}")
    return 1 if check and stale else 0


if __name__ == "__main__":
    raise SystemExit(main())
