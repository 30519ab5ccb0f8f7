"""How a stitch is entered, "in back loop only", which changes no count."""

from __future__ import annotations

from reader.pattern.cursor import Cursor
from reader.pattern.place_words import LOOP_ONLY, STITCH_NOUNS

LOOP_FIRST = frozenset(phrase.split()[0] for phrase in LOOP_ONLY)
ENTERED = ("next", "each", "first", "last", "the", "all")
"""After "in back loop of", these go on with the place."""


ALL_OF_THEM = (
    "all sts throughout", "all stitches throughout", "sts throughout", "all sts now on",
    "each st throughout", "all sts from now on",
)  # fmt: skip
"""Behind "in back loop of", these say how all are entered, and no place."""


def skip_loop_words(cur: Cursor) -> bool:
    """Takes words that say how the stitch is entered, which change no count."""
    took = False
    while True:
        # Looked for behind every place, and hardly ever there.
        length = cur.any_words(LOOP_ONLY) if cur.low() in LOOP_FIRST else 0
        if not length:
            return took
        cur.at += length
        if cur.low() == "only":
            cur.at += 1
        took = True
        if cur.low() == "of" and cur.low(1) not in ("ch",):
            cur.at += 1
            if cur.accept(*ALL_OF_THEM):
                continue
            if cur.kind() in ("num", "ord") or cur.low() in ENTERED:
                return True
            if cur.accept("sts", "stitches"):
                # "in back loop of sts only": how all are entered, and no place.
                cur.accept("only", "throughout")
            elif cur.low() in STITCH_NOUNS and cur.low(1) in (",", ";", ":"):
                # "in front loop of st, 2 sc in next st": said of the stitch to come.
                cur.at += 1
