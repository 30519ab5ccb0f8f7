"""Knitting text -> the same text, length kept, with so many plain rows put as "work 10 rows":
"St st on these 14 sts for 10 rows", "knit a row, purl a row, five times"; and a change of every row
said before its rows, "Increase at the beginning of every row. Knit 20 rows.", as one sentence.
"""

from __future__ import annotations

import re

from reader.terms.numbers import SPELLED, word_number
from reader.text.sought import Sought

_N = rf"(?:\d{{1,3}}|{SPELLED})"
_FABRIC = (
    r"(?:(?:rev(?:erse)?\.? )?(?:st\.? ?st|stocking[ -]st(?:itch)?|stockinett?e?(?: st(?:itch)?)?)"
    r"|garter(?:[ -]st(?:itch)?)?|g\.? ?st|plain(?: knitting)?|rib(?:bing)?)"
)
ON_THESE = Sought(
    ("these", "those", "the"),
    r"(?:(?:work|knit|continue|cont|go on|proceed)(?:\s+(?:in|with|even|straight|plain))*"
    rf"(?:\s+{_FABRIC})?|{_FABRIC})\s+(?:on|over)\s+(?:just\s+)?(?P<which>these|those|the(?:\s+first"
    rf"|\s+last)?)\s+(?P<n>{_N})\s+(?:sts|stitches)(?:\s+(?:only|alone))?,?\s+(?:for\s+)?"
    rf"(?P<rows>{_N})\s+(?P<more>more\s+)?rows\b",
    re.IGNORECASE,
)
_A = r"(?:a|one|1)(?:\s+plain)?"
TURN_ABOUT = Sought(
    ("row",),
    rf"[(\[]?\b(?:knit|k|work|purl|pearl|p)\s+{_A}\s+row,?\s+(?:and\s+|then\s+)?"
    rf"(?:purl|pearl|p|knit|k)\s+{_A}\s+row[)\]]?,?\s+(?:alternately,?\s+)?"
    rf"(?:(?P<n>{_N})\s+times|(?P<two>twice))(?P<more>\s+more)?(?:\s+in\s+all)?\b(?!\s+more)",
    re.IGNORECASE,
)
SAID_FIRST = Sought(
    ("every", "each"),
    r"(?P<change>(?:^|(?<=[.;]))\s*(?:inc(?:rease)?|dec(?:rease)?|narrow|widen)\b[^.;:\d]{0,60}?"
    r"\b(?:every|each)\s+row)\s*[.;]\s*(?:knit|work|purl)\s+"
    rf"(?P<n>{_N})\s+(?:such\s+)?rows(?=\s*[.;])",
    re.IGNORECASE,
)
VERBLESS = Sought(
    ("rows", "rounds", "rnds"),
    rf"(?P<at>(?:^|(?<=[.;\n]))\s*)(?P<now>now|then|next(?=\s+\w+\s+(?:rows|rounds) more))\s+"
    rf"(?P<n>{_N})(?P<more>\s+more)?\s+(?P<rows>rows|rounds|rnds)(?P<behind>\s+more)?"
    r"(?=,?\s+(?:inc|dec|narrow|widen|plain|even|without|alternat)|\s*[.;](?:\s|$))",
    re.IGNORECASE | re.MULTILINE,
)
"""Rows with no verb: "Now 12 more rows, decreasing 1 stitch at the end of every other row"."""
NEXT_DONE = Sought(
    ("next",),
    r"(?P<at>(?:^|(?<=[.;]))\s*)next,?(?=\s+(?:decrease|increase|narrow|widen)\b"
    r"(?!\s+(?:row|round|rnd)))",
    re.IGNORECASE | re.MULTILINE,
)
""" "Next decrease 2 stitches at each end": what is done next, and no label."""


def plain_stretches(text: str) -> str:
    """The text so put; any text goes in."""
    text = ON_THESE.sub(_on_these, text)
    text = TURN_ABOUT.sub(_turn_about, text)
    text = VERBLESS.sub(_with_verb, text)
    text = NEXT_DONE.sub(lambda m: m["at"] + " " * (len(m.group()) - len(m["at"])), text)
    return SAID_FIRST.sub(_one_sentence, text)


def _on_these(found: re.Match[str]) -> str:
    more = "more " if found["more"] else ""
    rows = f"work {_value(found['rows'])} {more}rows on {found['which']} {_value(found['n'])} sts"
    return _as_begun(rows, found)


def _turn_about(found: re.Match[str]) -> str:
    times = 2 if found["two"] else _value(found["n"])
    said = f"work {2 * times} {'more ' if found['more'] else ''}rows"
    return _as_begun(said, found)


def _as_begun(said: str, found: re.Match[str]) -> str:
    """The words with a capital where the sentence began with one."""
    capital = found.group().lstrip("([")[:1].isupper()
    return (said.capitalize() if capital else said).ljust(len(found.group()))


def _with_verb(found: re.Match[str]) -> str:
    whole = found.group()
    rows = f"{_value(found['n'])} "
    for verb in ("Work", "K"):
        said = f"{found['at']}{verb} {rows}"
        if len(said) + len(found["rows"]) <= len(whole):
            return said + found["rows"].rjust(len(whole) - len(said))
    return whole


def _one_sentence(found: re.Match[str]) -> str:
    return f"{found['change']} for {_value(found['n'])} rows".ljust(len(found.group()))


def _value(said: str) -> int:
    return int(said) if said.isdigit() else word_number(said) or 0
