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
"""Rows with no verb: "Now 12 more rows, narrowing at each end"."""
NEXT_DONE = Sought(
    ("next",),
    r"(?P<at>(?:^|(?<=[.;]))\s*)next,?(?=\s+(?:decrease|increase|narrow|widen)\b"
    r"(?!\s+(?:row|round|rnd)))",
    re.IGNORECASE | re.MULTILINE,
)
""" "Next decrease 2 stitches at each end": what is done next, and no label."""
IN_EACH_OF = Sought(
    ("next",),
    rf"(?P<at>(?:^|(?<=[.;,\n]))\s*(?:and\s+|then\s+)*)in\s+(?:each\s+of\s+)?(?:the\s+)?next\s+"
    rf"(?P<rows>{_N})\s+(?P<what>rows|rounds|rnds),?\s+(?P<verb>narrow|widen|decrease|increase|dec|inc)"
    rf"(?:\s+off)?\s+(?P<n>{_N})\b(?:\s+of\s+(?:the\s+)?{_N})?(?:\s+(?:stitch|stitches|sts?))?"
    r"(?:\s+(?:in\s+)?each)?(?=\s*[,.;])",
    re.IGNORECASE | re.MULTILINE,
)
""" "In each of next 3 rounds narrow 1": the rows before what is done in them."""
AGAIN_ROUND = Sought(
    ("repeat",),
    r"(?P<lead>[.;,]\s+(?:and\s+)?)repeat\s+alternately(?=\s*[.;])"
    r"|(?P<lead2>[.;,]\s+(?:and\s+)?)repeat\s+this(?:\s+pattern)?(?=\s+(?:all\s+(?:the\s+way\s+)?a?round"
    r"|around|across|to\s+the\s+end)\b)",
    re.IGNORECASE,
)
""" "Repeat this all round": the row's list."""
THESE_BY_TURNS = Sought(
    ("alternately",),
    r"\b(?:do|work|knit|repeat)\s+these(?:\s+(?:two|2)\s+rows)?\s+alternately"
    rf"(?:\s+for\s+{_N}\s+rows(?=\s+(?:until|till)\b))?(?=,?\s+(?:for|until|till|{_N}\s+times|twice)\b)",
    re.IGNORECASE,
)
EACH_ROW_UNTIL = Sought(
    ("creas",),
    r"(?:(?P<and>\s+and)?\s+|(?<=[.;]\s)|^)(?P<verb>increas|decreas)(?:e|ing)\s+(?:one\s+|1\s+|a\s+stitch\s+)?"
    r"(?:in\s+)?(?:every|each)\s+row\s*[.;,]\s*(?:and\s+)?(?:knit|work)(?:\s+plain)?"
    r"(?=\s+(?:until|till)\b)",
    re.IGNORECASE | re.MULTILINE,
)
""" "Increase every row. Knit till there are 9": one in each, so far."""
AND_CHANGED = Sought(
    ("and", "then"),
    r"(?P<stop>,)(?P<and>\s+(?:and|then)\s+)(?P<verb>decrease|increase|narrow|dec|inc)"
    r"(?=\s+(?:until|till)\s+(?:you\s+have|there\s+are|only)\b)",
    re.IGNORECASE,
)
""" "Take up 10, and decrease until you have 56": rows of their own."""
LIKE_OTHERS = re.compile(
    r"(?P<before>\b\d{1,3}(?:st|nd|rd|th)\s+(?:needle|row|round)s?\s+(?:like|as|same\s+as)\s+(?:the\s+)?"
    r"\d{1,3}(?:st|nd|rd|th)(?:\s+(?:needle|row|round))?),(?=\s+(?:and\s+)?\d{1,3}(?:st|nd|rd|th)\s+"
    r"(?:needle|row|round)s?\s+(?:like|as|same)\b)",
    re.IGNORECASE,
)
"""Rows told each by another, one after the other in a sentence."""
TAKE_ONLY = Sought(
    ("take",),
    rf"(?:\bfor\s+(?:the|a|each|one)\s+(?:\w+\s+){{1,3}})?\btake\s+(?:the\s+)?(?:first\s+|next\s+|last\s+"
    rf"|remaining\s+)?(?P<n>{_N})\s+(?:stitches|sts)(?:\s+for\s+(?:\w+\s+){{1,4}}?)?"
    r"(?:,?\s+(?:leave|leaving)\s[^.;,]{3,60})?,?\s+and\s+(?:do|knit|work)\b[^.;,]{0,60}?"
    rf"\b(?P<rows>{_N})\s+rows(?:\s+(?:of\s+)?plain(?:\s+knitting)?)?(?=\s*[,.;])",
    re.IGNORECASE,
)
""" "Take 60 stitches, leaving the rest, and knit on those 60 for 32 rows": the others wait."""


def plain_stretches(text: str) -> str:
    """The text so put; any text goes in."""
    text = TAKE_ONLY.sub(_on_these_only, text)
    text = ON_THESE.sub(_on_these, text)
    text = TURN_ABOUT.sub(_turn_about, text)
    text = IN_EACH_OF.sub(_each_of_them, AGAIN_ROUND.sub(_again, text))
    text = LIKE_OTHERS.sub(lambda found: f"{found['before']}.", text)
    text = THESE_BY_TURNS.sub(
        lambda found: "repeat these 2 rows".ljust(len(found.group())), text
    )
    text = AND_CHANGED.sub(
        lambda found: f".{' ' * len(found['and'])}{found['verb'].capitalize()}", text
    )
    text = EACH_ROW_UNTIL.sub(_in_each_row, text)
    text = VERBLESS.sub(_with_verb, text)
    text = NEXT_DONE.sub(lambda m: m["at"] + " " * (len(m.group()) - len(m["at"])), text)
    return SAID_FIRST.sub(_one_sentence, text)


def _on_these(found: re.Match[str]) -> str:
    more = "more " if found["more"] else ""
    rows = f"work {_value(found['rows'])} {more}rows on {found['which']} {_value(found['n'])} sts"
    return _as_begun(rows, found)


def _on_these_only(found: re.Match[str]) -> str:
    said = f"work {_value(found['rows'])} rows on these {_value(found['n'])} sts"
    return _as_begun(said, found)


def _turn_about(found: re.Match[str]) -> str:
    times = 2 if found["two"] else _value(found["n"])
    said = f"work {2 * times} {'more ' if found['more'] else ''}rows"
    return _as_begun(said, found)


def _as_begun(said: str, found: re.Match[str]) -> str:
    """The words with a capital where the sentence began with one."""
    capital = found.group().lstrip("([")[:1].isupper()
    return (said.capitalize() if capital else said).ljust(len(found.group()))


def _each_of_them(found: re.Match[str]) -> str:
    verb = "inc" if found["verb"].lower().startswith(("inc", "wid")) else "dec"
    said = f"{found['at']}{verb} {_value(found['n'])} st in each of next {_value(found['rows'])} "
    return said + found["what"].rjust(len(found.group()) - len(said))


def _in_each_row(found: re.Match[str]) -> str:
    lead = ".   " if found["and"] else " "
    said = f"{lead}{found['verb'].capitalize()}e 1 every row"
    whole = found.group()
    return said.ljust(len(whole)) if len(said) <= len(whole) else whole


def _again(found: re.Match[str]) -> str:
    return f"{found['lead'] or found['lead2']}repeat".ljust(len(found.group()))


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
