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


_UNDER = ("underside", "under side", "free loop", "unused loop", "remaining loop", "unworked loop",
          "free loops", "unused loops", "other side", "opposite side", "back")  # fmt: skip
UNDER_EACH = tuple(
    f"{into} {the}{side} of each of the"
    for into in ("in", "into") for the in ("", "the ") for side in _UNDER
)
"""The far side of chains that are told by their number: "in the underside of each of the 8 ch"."""


def skip_loop_words(cur: Cursor) -> bool:
    """Takes words that say how the stitch is entered, which change no count."""
    took = False
    under = cur.any_words(UNDER_EACH) if cur.low() in ("in", "into") else 0
    if under and cur.kind(under) == "num":
        cur.at += under - len(("each", "of", "the"))
        return True
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
