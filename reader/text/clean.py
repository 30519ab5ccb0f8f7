"""Raw text in, clean text out: plain quotes, dashes and letters, with every character's origin
kept.
"""

from __future__ import annotations

import re
from bisect import bisect_right
from dataclasses import dataclass

from reader.text.wide_lines import in_lines, wide_lines

BULLETS = "§\u25a0\u25a1\u25aa\u25ab\u25b6\u25b8\u25ba\u25c6\u25c7\u25cb\u25e6\u2756\u27a2\u27a4"
"""Squares, triangles, diamonds and the like before a line."""
LOOKALIKE = (
    "\u0430\u0441\u0435\u04bb\u043a\u043c\u043e\u0440\u0445\u0443"
    "\u0410\u0421\u0415\u041d\u041a\u041c\u041e\u0420\u0422\u0425\u0412"
)
"""Letters of another alphabet that look like ours, left in by a translation."""
ONE_TO_ONE = str.maketrans(
    {
        "\u2018": "'",
        "\u2019": "'",
        "\u201c": '"',
        "\u201d": '"',
        "\u2032": "'",
        "\u2033": '"',
        "\u00d7": "x",
        "\u2715": "x",
        "\u2716": "x",
        "\u2a2f": "x",
        "\u2212": "-",
        "\u2010": "-",
        "\u2011": "-",
        "\u2013": "-",
        "\u2012": "-",
        "\u2043": "-",
        "\u00a0": " ",
        "\u2002": " ",
        "\u2003": " ",
        "\u2009": " ",
        "\u202f": " ",
        "\u2217": "*",
        "\u2731": "*",
        "\u204e": "*",
        "\u2022": " ",
        "\u25cf": " ",
        "\u00b7": " ",
        "\t": " ",
        "\x0b": " ",
        "\x0c": "\n",
        "\ufeff": " ",
        "\u2028": "\n",
        "\u2029": "\n",
        "\x85": "\n",
        "\u200b": " ",
        "\u2044": "/",
        "\x00": " ",
        "\uff08": "(",
        "\uff09": ")",
        "\u3000": " ",
        "\uff0a": "*",
        "\u2042": "*",
        "\u2605": "*",
        "\u2606": "*",
        "\u2736": "*",
        **dict.fromkeys(BULLETS, " "),
        "\u0131": "i",
        "\u0130": "I",
        **dict(zip(LOOKALIKE, "acehkmopxyACEHKMOPTXB", strict=True)),
        "\u0432": " ",
    }
)
"""Characters that stand for one plain character; the em dash stays, it ends labels."""

WIDER = {
    "\ufb00": "ff",
    "\ufb01": "fi",
    "\ufb02": "fl",
    "\ufb03": "ffi",
    "\ufb04": "ffl",
    "\u2026": "...",
}
KEEP_HYPHEN = {
    "front",
    "back",
    "half",
    "double",
    "single",
    "two",
    "three",
    "four",
    "five",
    "six",
    "post",
    "left",
    "right",
    "non",
    "even",
    "odd",
    "off",
    "v",
    "x",
}
"""First halves of compounds whose hyphen stays when a line breaks there."""

KEYCAP = r"\ufe0f\u20e3(?<=\d\ufe0f\u20e3)|\u20e3(?<=\d\u20e3)"
"""What makes a key of a figure: "1" on a square."""
CIRCLED = {
    **{chr(0x2460 + n): f"{n + 1}." for n in range(20)},
    **{chr(0x2776 + n): f"{n + 1}." for n in range(10)},
    "\U0001f51f": "10.",
}
"""Figures in circles, as lists are numbered with them."""
GLUED = (
    r"(?<=\d)(?:(?=(?:sts|stitch|stitches|sc|dc|hdc|htr|tr|dtr|ch|chs|rows?|rnds?|rounds?|times|sps?)\b)"
    r"|(?<=\b(?:inc|dec|Inc|Dec) 1)(?=st\b))"
)
"""Where a copy lost the blank behind a number: "12sc", "cast on 44sts"; "1st" is mostly the first.
"""
ODD = re.compile(
    rf"{GLUED}| (?<=\S ) {{1,2}}(?=\S)|-(?<=\w-)[ \t]*\r?\n[ \t]*(?=\w)|\r\n?"
    rf"|{KEYCAP}|[\u2460-\u2473\u2776-\u277f\U0001f51f\ufb00-\ufb04\u2026\u00ad]"
)
"""What is looked for comes first, and what stands before it after: so most letters are passed over
at once."""


@dataclass(frozen=True, slots=True)
class CleanText:
    """Clean text; starts/shifts: from starts[i] on, an offset plus shifts[i] is the original
    offset. misspelt: words as written, each beside the one that stands here for it.
    """

    text: str
    starts: tuple[int, ...]
    shifts: tuple[int, ...]
    length: int
    misspelt: tuple[tuple[str, str], ...] = ()

    def straight(self, start: int, end: int) -> bool:
        """Whether the clean text of a stretch is the original, letter for letter."""
        return bisect_right(self.starts, start) == bisect_right(self.starts, end)

    def origin(self, at: int) -> int:
        """The offset in the original text of a clean offset."""
        shift = self.shifts[bisect_right(self.starts, at) - 1]
        return min(max(at + shift, 0), self.length)


def clean(raw: str) -> CleanText:
    """The clean text of any string; never fails, time in proportion to length."""
    wide = wide_lines(raw)
    pieces: list[str] = []
    starts, shifts = [0], [0]
    at, made = 0, 0
    for odd in ODD.finditer(raw):
        piece = raw[at : odd.start()]
        if odd.group().isspace() and odd.group()[0] == " ":
            if not in_lines(wide, odd.start()):
                continue
            new = " "
        else:
            new = _plain(odd.group(), raw, odd.start(), odd.end())
        pieces += (piece, new)
        made += len(piece) + len(new)
        at = odd.end()
        if at - made != shifts[-1]:
            starts.append(made)
            shifts.append(at - made)
    pieces.append(raw[at:])
    text = "".join(pieces).translate(ONE_TO_ONE)
    return CleanText(text, tuple(starts), tuple(shifts), len(raw))


def _plain(found: str, raw: str, start: int, end: int) -> str:
    if not found:
        return " "
    if found in WIDER or found in CIRCLED:
        return WIDER.get(found) or CIRCLED[found]
    if found[-1] == "\u20e3":
        return "" if raw[end : end + 1].isdigit() else "."
    if found == "\u00ad":
        return ""
    if not found.startswith("-"):
        return "\n"
    before = re.search(r"[A-Za-z]+$", raw[max(0, start - 20) : start])
    left = before.group().lower() if before else ""
    if not before and not raw[end : end + 1].islower():
        # A figure between dashes at the line's end, "-24-", is no word that goes on.
        return "-\n"
    if not before or left in KEEP_HYPHEN or not raw[end].islower() or len(left) < 2:
        return "-"
    return "-" if left == "ch" else ""
