"""Clean text of crochet -> the same text, length kept, without the short names that leaflets bring
in behind the long ones: "chain (ch) 5", "slip stitch (sl st) in 5th stitch (st) of ch".
"""

from __future__ import annotations

import re

SHORT = {
    "ch": ("chain", "chain stitch"),
    "chs": ("chains",),
    "sl st": ("slip stitch", "slip"),
    "ss": ("slip stitch",),
    "sc": ("single crochet", "single"),
    "hdc": ("half double crochet", "half double"),
    "dc": ("double crochet", "double"),
    "htr": ("half treble", "half treble crochet"),
    "tr": ("treble", "treble crochet", "triple crochet"),
    "trc": ("treble crochet", "triple crochet"),
    "dtr": ("double treble", "double treble crochet"),
    "dtrc": ("double treble crochet",),
    "trtr": ("triple treble", "triple treble crochet"),
    "st": ("stitch",),
    "sts": ("stitches", "stitch"),
    "sp": ("space",),
    "sps": ("spaces",),
    "lp": ("loop",),
    "lps": ("loops",),
    "p": ("picot",),
    "pc": ("popcorn",),
    "pc st": ("popcorn", "popcorn stitch"),
    "cl": ("cluster",),
    "sh": ("shell",),
    "bl": ("block",),
    "tog": ("together",),
    "rep": ("repeat",),
    "rnd": ("round",),
    "rnds": ("rounds",),
    "inc": ("increase", "increasing"),
    "dec": ("decrease", "decreasing"),
    "beg": ("beginning",),
    "prev": ("previous",),
    "foll": ("following",),
    "sk": ("skip",),
    "yo": ("yarn over", "thread over"),
}  # fmt: skip
"""Short names, by letters, and the long ones they stand for."""
_NAMES = sorted(
    {name for names in SHORT.values() for name in names},
    key=lambda name: (len(name), name), reverse=True,
)  # fmt: skip
BROUGHT_IN = re.compile(r"\((?P<short>[A-Za-z]{1,4}(?:[. ]{1,2}[A-Za-z]{1,2}){0,3}\.?)\)")
BEFORE = re.compile(rf"(?:^|[^A-Za-z])(?P<long>{'|'.join(_NAMES)})\s$", re.IGNORECASE)


def without_short_names(text: str) -> str:
    """The text with those short names, and their brackets, turned to spaces."""
    return BROUGHT_IN.sub(_blanked, text) if "(" in text else text


def _blanked(found: re.Match[str]) -> str:
    letters = found["short"].lower().replace(".", " ").split()
    forms = {" ".join(letters), "".join(letters)}
    before = BEFORE.search(found.string, max(0, found.start() - 30), found.start())
    long = before["long"].lower() if before is not None else ""
    if any(long in SHORT.get(form, ()) for form in forms):
        return " " * len(found.group())
    return found.group()
