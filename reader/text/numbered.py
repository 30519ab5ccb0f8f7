"""Labels that lack their mark, "1 - Ch 13. Inc in ...", "R1 hdc in third ch", "Row 7   sc in ...",
"(3) sc in ...", get it, and a dash before a total is none of a range, "Rnd 7 - 36"; length kept.
"""

from __future__ import annotations

import re
from itertools import pairwise

from reader.text.sought import Sought

_NO_COLON = (
    r"(?![(\[](?:(?:inc|dec|even|plain)[a-z]*(?: (?:row|rnd|round|rd)s?)?|(?:RS|WS|right|wrong"
    r"|sizes?|for)\b[^()\n]{0,60}|[^()\n]{0,60} (?:only|row|rnd|round|rd))[)\]][ ]?"
    r"(?:[:.—]|-+(?=[ ])))"
    r"(?:(?![^:\n.]{0,40}:)|(?=[a-z]+(?: [a-z]+){0,2}: )(?!(?:with|in|using|and|every|on|for|or|as"
    r"|work|worked|side|the)\b))"
)
"""No colon follows soon, but one behind a word or two of what the row is for; nor a mark behind a
bracket that says what kind of row it is, "Row 4 (increase). ".
"""
_MORE = (
    r"(?:[ ]?(?:-|to|&)[ ]?\d{1,3}|,[ ]?\d{1,3}(?![ ]+(?:[shd] ?[cd]\b|[shd]{1,2} ?c|h?tr|ch|st|sl"
    r"|single|double|treble|half|chain|[kp]\b|[a-z]*sts?\b)))?"
)
"""The other rows of a label; behind a comma a number of stitches is none, "Round 1, 8 s c"."""
DASHED = re.compile(
    rf"^(?P<label>[ ]*(?P<first>\d{{1,3}}){_MORE}) [-—] (?=[A-Za-z(*\[\d])", re.MULTILINE
)
BRACKETED = re.compile(
    r"^(?P<label>[ ]*)\((?P<first>\d{1,3})(?:\)(?:[ ]?(?:-|to|&|,)[ ]?\((?P<last>\d{1,3})\))?"
    r"|[ ]?(?:-|to)[ ]?(?P<until>\d{1,3})\))[ ]"
    r"(?=[A-Za-z(*\[\d])",
    re.MULTILINE,
)
BARE = re.compile(
    rf"^(?P<label>[ ]*(?:R|rnd|rn|round|row|rd)s?[ ]?(?P<first>\d{{1,3}}){_MORE})(?P<gap>[ ]+)"
    r"(?=\d+ ?[a-z]|[a-z(*\[])(?!(?:to|and|through|of|is|are|in|for|has|have|on)\b)"
    rf"{_NO_COLON}",
    re.MULTILINE | re.IGNORECASE,
)
NAMED = re.compile(
    r"^(?P<label>[ ]*(?:next|last|final|set-?up|eyelet|foundation|border)[ ](?:row|rnd|round))"
    r"[ ]{2,}(?=\S)",
    re.MULTILINE | re.IGNORECASE,
)
"""Among such rows one with a name: "Last row   sc2tog"."""
ODD = re.compile(
    r"^(?P<gap>[ ]*)(?:#[ ]?(?P<first>\d{1,3})(?P<more>[ ]?(?:-|to)[ ]?#?\d{1,3})?[ ]?[:.)-]?"
    r"|(?:Step|STEP|step)[ ](?P<step>\d{1,3})[ ]?[:.)-])[ ](?=[A-Za-z(*\[\d])",
    re.MULTILINE,
)
"""Rows told as "#3 sc in each", "Step 3: sc in each"."""
DOTTED = re.compile(
    rf"^(?P<label>[ ]*R)\.[ ]?(?P<first>\d{{1,3}}{_MORE})[ ]?[:.)-]?[ ](?=[A-Za-z(*\[\d])",
    re.MULTILINE,
)
""" "R.3 sc in each"."""
LEAST = 3
"""Lines labelled so, one after the other from 1, that make them rows."""
FEWEST = 2
"""The same where the labels have their word, "R1 dc in ...", "R2-6 ch 3 ...".
"""


def numbered(text: str) -> str:
    """The text with the mark behind each row's number put in, where its lines count on from 1."""
    text = STEPPED.sub(_of_step, _by_any_letter(text))
    if len(list(TURNS.finditer(text))) >= LEAST:
        text = TURNS.sub(
            lambda one: f"{one['at']}Rnd {one['n']}:".ljust(len(one.group())), text
        )
    if (" - " in text or " — " in text) and _counts_on(DASHED, text):
        text = DASHED.sub(lambda found: f"{found['label']}.  ", text)
    text = _no_ranges(ODD_RANGE.sub(_as_range, text))
    if not LABELLED.search(text) and _counts_on(ODD, text):
        text = ODD.sub(_by_number, text)
    if "R." in text or "r." in text:
        text = DOTTED.sub(
            lambda found: f"{found['label']}{found['first']}:".ljust(len(found.group())), text
        )
    if _counts_on(BARE, text, FEWEST):
        text = NAMED.sub(lambda found: f"{found['label']}:".ljust(len(found.group())), text)
        text = BARE.sub(lambda found: f"{found['label']}:".ljust(len(found.group())), text)
    text = SO_MANY.sub(lambda found: f"{found['label']} row:".ljust(len(found.group())), text)
    text = RANGE.sub(lambda found: f"{found['first']}{found['rest'] or found['more']}.", text)
    text = RUN_ON.sub(_with_marks, _next_ones(text))
    if _counts_on(BRACKETED, text):
        text = BRACKETED.sub(_without_brackets, text)
        text = CALLED_BACK.sub(_by_letter, text)
    return text


LETTERED = re.compile(
    r"^(?P<before>[ ]*)(?P<letter>[A-QS-Z])(?P<gap>\.?[ ]?)(?P<first>\d{1,3})"
    r"(?P<more>[ ]?(?:-|to|—)[ ]?(?P<again>[A-Z]?)\d{1,3})?(?P<end>[ ]?[:.)=-])(?=["
    r" ]*[A-Za-z\d(*\[])",
    re.MULTILINE,
)
"""A row labelled by another language's letter: "V1: 6 sc", "K5-K8: sc around"."""
ROWS_TOLD = re.compile(r"^[ ]*(?:R\d|rnd|round|row|rd)", re.MULTILINE | re.IGNORECASE)


def _by_any_letter(text: str) -> str:
    """The text with R for that letter, where its lines are all of one and count on from 1."""
    found = list(LETTERED.finditer(text))
    letters = {one["letter"] for one in found}
    if len(letters) != 1 or ROWS_TOLD.search(text) or not _counts_on(LETTERED, text):
        return text
    return LETTERED.sub(_with_r, text)


def _with_r(found: re.Match[str]) -> str:
    more = found["more"] or ""
    more = re.sub(r"[A-Z](?=\d)", "R", more)
    return f"{found['before']}R{found['gap']}{found['first']}{more}{found['end']}"


ODD_RANGE = Sought(
    ("~", "..", "-r", "- r"),
    r"^(?P<lead>[ ]*[\[(]?(?:R|rnds?|rounds?|rows?|rds?)?[ ]?\d{1,3})"
    r"(?:(?P<dots>[ ]?(?:~|\.\.\.?)[ ]?)|(?<=\w)(?P<dash>\.?[ ]?-[ ]?)(?=R))(?P<r>R[ ]?)?"
    r"(?P<last>\d{1,3})(?=[ ]?[:.\])]|(?(dash)[ ](?=[a-z\d(*\[])|(?!)))",
    re.MULTILINE | re.IGNORECASE,
)
"""Several rows told as "R5~9:", "R5..9:", "[R5-R9]", "R5-R9 sc"."""
TURNS = Sought(
    ("turn ",),
    r"(?P<at>^|[.)] )Turn (?P<n>\d{1,3}) ?[:.—-](?= )", re.MULTILINE | re.IGNORECASE,
)
"""Rounds called turns: "Turn 2 - 2 sc in each stitch"."""


def _as_range(found: re.Match[str]) -> str:
    return f"{found['lead']}-{found['last']}".rjust(len(found.group()))


STEPPED = Sought(
    ("step",),
    r"^(?P<step>[ ]*step ?\d{1,3}[ .:)-]+)\((?P<label>(?:round|rnd|row)s? \d[\d -]*)\)",
    re.MULTILINE | re.IGNORECASE,
)
"""Steps with the row that each is in brackets: "STEP 2. (Round 1) 2 sc in ..."."""


def _of_step(found: re.Match[str]) -> str:
    return " " * len(found["step"]) + f"{found['label']}: "


SO_MANY = Sought(
    ("rows", "rounds", "rnds"),
    r"^(?P<label>[ ]*\d{1,3}[ ]?(?:-|to)[ ]?\d{1,3})[ ](?:rows|rounds|rnds)"
    r"(?:[ ]*[/(,-][ ]*\d+[ ](?:rows|rounds|rnds)[ ]*[/)]?)?[ ]*[-—:](?=[ ]*[a-z\d(*\[])",
    re.MULTILINE | re.IGNORECASE,
)
"""Several rows, and how many they are: "5 - 8 rows / 4 rows / - 24 sc"."""
RANGE = Sought(
    ("-",),
    r"^(?P<first>[ ]*\d{1,3})(?:\.(?P<rest>[ ]?-[ ]?\d{1,3})|(?P<more>[ ]?-[ ]?\d{1,3})-)"
    r"(?=[ ]+[A-Za-z\d(*\[])",
    re.MULTILINE,
)
"""Numbers of several rows with their mark in the wrong place: "5.-7 sc", "7-9- 36 sc"."""
_LABEL = r"(?:rows?|rnds?|rounds?|rds?)[ ](?P<n>\d{1,3})(?:[ ]?\((?:RS|WS)\))?"
RUN_ON = Sought(
    ("w 1 ", "d 1 ", "w 1(", "d 1("),
    r"^[^\n]*\b(?:row|rnd|round|rd)[ ]1(?:[ ]?\((?:RS|WS)\))?[ ][^\n]*"
    r"\b(?:row|rnd|round|rd)[ ]2(?:[ ]?\((?:RS|WS)\))?[ ][^\n]*\b(?:row|rnd|round|rd)[ ]3\b[^\n]*$",
    re.MULTILINE | re.IGNORECASE,
)
"""A paragraph in which a copy ran the rows together."""
INSIDE = re.compile(rf"\b{_LABEL}(?P<gap>[ ]+)(?=[a-z\d(*\[])", re.IGNORECASE)
ENDED = re.compile(r"(?:[\])}.;*:]|\b(?:turn|join|around|across|end|times))[ ]*$", re.IGNORECASE)


AMONG = re.compile(
    r"^[ ]*(?:rnd|rn|round|row|rd)s?[ ]?(?P<first>\d{1,3})(?:-(?P<last>\d{1,3}))?(?P<gap>[ ]+)"
    r"(?=\d+ ?[a-z]|[a-z(*\[])(?!(?:to|and|through|of|is|are|in|for|has|have|on)\b|[(\[]\d)"
    rf"{_NO_COLON}",
    re.MULTILINE | re.IGNORECASE,
)
"""A label with no mark behind it, among labels that have theirs."""


def _with_marks(found: re.Match[str]) -> str:
    """The paragraph with a colon behind each label that counts on from the one before it."""
    line, out, last = found.group(), list(found.group()), 0
    for one in INSIDE.finditer(line):
        before = line[: one.start()]
        if int(one["n"]) == last + 1 and (not last or ENDED.search(before)):
            out[one.start("gap")] = ":"
            last += 1
            if last > 1 and not before.rstrip().endswith((".", ";", ":", ")", "]")):
                out[one.start() - 1] = "."
    return "".join(out) if last >= LEAST else line


def _next_ones(text: str) -> str:
    """The text with the mark behind a label that lacks it among rows that have theirs."""
    if not AMONG.search(text):
        return text
    last, out = -1, list(text)
    for line in re.finditer(r"^[^\n]+$", text, re.MULTILINE):
        bare = AMONG.match(line.group())
        label = LABELLED.match(line.group())
        so_far = bare is None or int(bare["last"] or 999) > int(bare["first"])
        if bare and so_far and int(bare["first"]) == last + 1 and label is not None:
            out[line.start() + bare.start("gap")] = ":"
        if label is not None:
            last = int(label["last"] or label["first"])
    return "".join(out)


CALLED_BACK = re.compile(
    r"(?P<lead>\b(?:repeat|rep|as|like) )\((?P<first>\d{1,3})\)"
    r"(?:[ ]?(?P<dash>-|to|and|&)[ ]?\((?P<last>\d{1,3})\))?",
    re.IGNORECASE,
)
"""Such rows called back: "repeat (3)-(6)", "as (2)"."""


def _by_letter(found: re.Match[str]) -> str:
    last = f"{found['dash']}R{found['last']}" if found["last"] else ""
    return f"{found['lead']}R{found['first']}{last}".ljust(len(found.group()))


def _by_number(found: re.Match[str]) -> str:
    label = f"{found['gap']}{found['first'] or found['step']}{found['more'] or ''}."
    return label.replace("#", " ").ljust(len(found.group()))


def _without_brackets(found: re.Match[str]) -> str:
    until = found["last"] or found["until"]
    last = f"-{until}" if until else ""
    return f"{found['label']}{found['first']}{last}.".ljust(len(found.group()))


LABELLED = re.compile(
    r"^[ ]*(?P<what>R|rnds?|rns?|rounds?|rows?|rds?)[ ]?(?P<first>\d{1,3})"
    r"(?:(?P<gap>[ ]?)(?P<dash>[-—])[ ]?(?P<last>\d{1,3})\b(?P<end>[ ]?[:.)—-])?"
    r"(?P<stitch>[ ]?(?:ch|sc|hdc|dc|tr|htr|inc|dec|sts?|stitches|k|p)\b(?! \d))?)?",
    re.MULTILINE | re.IGNORECASE,
)


def _no_ranges(text: str) -> str:
    """The text with a colon for the dash of "Rnd 7 - 36 in back loops", where the next line begins
    with row 8, and of "R2 - 2 dc in each": the number behind it tells of stitches.
    """
    if "-" not in text and "—" not in text:
        return text
    out = list(text)
    labels = [*LABELLED.finditer(text), None]
    for one, after in pairwise(labels):
        if one is None or one["last"] is None or one["end"]:
            continue
        first, last = int(one["first"]), int(one["last"])
        follows = int(after["first"]) if after else 0
        of_stitches = one["gap"] and one["stitch"] and not one["what"].lower().endswith("s")
        is_one = of_stitches and follows != last + 1
        if last <= first or first + 1 == follows < last or is_one:
            out[one.start("dash")] = ":"
    return "".join(out)


def _counts_on(shape: re.Pattern[str], text: str, least: int = LEAST) -> bool:
    firsts = [
        int(found["first"] or found.groupdict().get("step") or 0) for found in shape.finditer(text)
    ]
    if len(firsts) < least or firsts[0] != 1:
        return False
    return all(a < b or b == 1 for a, b in pairwise(firsts))
