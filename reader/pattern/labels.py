"""Finds row labels in clean text: "Rnd 5:", "2nd to 4th rows", "R7-9", "Next 4 rows:" -> where they
stand and what they say.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from functools import lru_cache

from reader.pattern.every_other import OTHERS_ONLY, ROW_AND_OTHERS
from reader.pattern.label_forms import (
    AMOUNT,
    CHANGING,
    FIRST_FEW,
    MARKED,
    NEXT_ALONE,
    NEXT_COLON,
    ORDINAL_BARE,
    ORDINAL_WIDE,
    ROW_BARE,
    SPREAD,
    WORKS_ALL,
    counts_on,
    led,
    led_first,
    may_hold_label,
    other_form,
    so_many,
)
from reader.pattern.label_places import TOTAL_SAID, ends_sentence, last_words, may_begin
from reader.pattern.label_sides import SIDE, SIDE_ALONE, SIDE_ENDS, WORKED, past_marks, side_of
from reader.pattern.sized_labels import sized_label
from reader.terms.numbers import ORDINALS, TENTHS, ordinal_number, word_number

_WORD = (
    r"(?:(?:twenty|thirty|forty|fifty)[ -])?(?:one|two|three|four|five|six|seven|eight|nine)\b"
    r"|ten\b|eleven\b|twelve\b|(?:thir|four|fif|six|seven|eigh|nine)teen\b|twenty\b|thirty\b"
    r"|forty\b|fifty\b"
)
_NUM = rf"(?:\d+|{_WORD})"
_ORDINAL_WORD = (
    rf"(?:(?:twenty|thirty|forty|fifty)[ -])?(?:{'|'.join([*ORDINALS, *TENTHS])})\b"
)
_ORD = rf"(?:\d+(?:st|nd|rd|th|d)\b|{_ORDINAL_WORD})"
_MANNER = (
    r"(?:(?:open|plain|pattern|patt|lace|fancy|close|solid|rib|garter|knit|purl|eyelet)\s+)?"
)
_JOIN = r"(?:\s*(?:-|—|to|through|thru|&|and|,|,\s*and|(?<=\d)\s+a(?=\s+\d))\s*)"
_END = r"\s*(?:[:.]+(?:\s?-+|\s?—)?|—|-+(?!\s*\d{1,3}\s?[).:])(?=\s|[A-Z(*])|--+(?=\d)|(?=\())"
_AIM = (
    r"(?:,?\s+for (?:the )?[\w' ]{2,20}(?=\s*[:.—])"
    rf"|,\s+(?![^:\n]{{0,40}}\b\d* ?{WORKED}\b)[a-z]+(?: [a-z]+){{0,2}}(?=\s*:\s)"
    r"|,?\s+(?:with|in|using) (?:colou?r )?[A-Z][\w' ]{0,18}(?=\s*:)"
    r"|\s+(?:increase|decrease|inc|dec)(?=\s*[:.—])"
    r"|\s+(?:in the following (?:manner|way)|as follows|thus)(?=\s*[:;—])"
    r"|\s+(?:of\s+)?(?:the\s+)?(?:thumb|heel|gusset|toe|cuff|cap|neck|band|border|hand|foot|pattern"
    r"|instep|crown|shaping)(?=\s*[:.—])"
    r"|\s*(?:\+|(?:and|,)?\s*(?:onwards?|upwards?|following)|and (?:on|up|after))(?=\s*[:.—]))?"
)
_LOOSE = (
    r"(?P<loose>,(?=\s+(?!(?:and|or|then)\b)[a-z(*\d])|;(?=\s+(?:rep|repeat|same)\b)"
    r"|\s+(?=(?:is|was|will|we|you|i'm|i|it's|just|(?:the )?same|as|like|plain|purl(?:ed)?"
    r"|pearl(?:ed)?|seam(?:ed)?|knit(?:ted)?(?! (?:row|round|stitch|side)s?\b)|worked"
    r"|(?:in|de)crease(?= (?:in|at|on|\d|one|two|every|each)\b)|cast off|bind off|slip)\b))"
)
"""Behind a label that begins a sentence a comma, ";", or a verb, may stand for the colon."""
_ROUND = r"rounds?|rnds?|rns?|rds?|rows?"

WORD_FIRST = re.compile(
    rf"(?<![\w-])[\[(]?(?P<what>{_ROUND}|R)\.?\s*(?P<nums>{_NUM}(?:{_JOIN}(?:(?:{_ROUND}"
    rf"|R(?=\d))\s*)?"
    rf"{_NUM})*)(?:\+|,? ?(?:onwards?|and (?:on|up))|,?\s\(?incl\w*\)?)?[\])]?"
    rf"(?P<side>{SIDE}){_AIM}(?P<end>{_END}\s|{_END}$|{_END}(?=\S)|{SIDE_ENDS}|{_LOOSE})",
    re.IGNORECASE,
)
ORDINAL_FIRST = re.compile(
    rf"(?<![\w-])(?P<nums>{_ORD}(?:(?:\s+(?:{_ROUND}))?{_JOIN}(?:{_ORD}"
    rf"|\d+))*)\s+{_MANNER}(?P<what>{_ROUND}|r(?=\.?:))"
    rf"(?:\s+(?:of\s+petals|incl\w*))?\.?(?P<side>{SIDE}){_AIM}(?P<end>{_END}|;(?=\s+\d)"
    rf"|{SIDE_ENDS}|{_LOOSE})",
    re.IGNORECASE,
)
BARE = re.compile(
    r"(?P<nums>\d+(?:\.?\s*(?:-|—|to|,)\s*\d+)*)(?:\s?(?:-|—|to)\s?n)?"
    r"(?P<side>\s?[(\[](?:RS|WS|right side|wrong side)[)\]])?(?P<end>[.)]|:)(?:\s+(?=\S)"
    r"|(?=\*)|(?<=:)(?=[A-Za-z(\[]))"
)
NAMED = re.compile(
    rf"(?<![\w-])(?:for\s+the\s+(?=next|following))?(?P<name>next|following|last|(?:first|1st)(?=\s+(?:\d|{_WORD}))|foundation|base|set-?up|(?:{_ORD}\s+)?(?:inc"
    rf"|increase|dec"
    rf"|decrease)|decreasing|eyelet|crown|border|final|beg|beginning)\s+(?P<times>(?:\d+|{_WORD})"
    rf"(?:\s*[(\[]\s*\d+(?:\s*[,:;/]\s*\d+)*\s*[)\]])?\s+)?(?P<what>{_ROUND})\b(?P<side>{SIDE}){_AIM}"
    rf"(?:{_END}|{_LOOSE})",
    re.IGNORECASE,
)


@dataclass(frozen=True, slots=True)
class Mark:
    """A label in clean text: from start to end; numbers (a range opened, a list kept) or a name
    with how many rows. loose: only a comma or a verb ends it, so it must begin a sentence.
    is_heading: it names what is done, or a new part, and no row. by_size: the first and the last
    number for each size, where they differ; without numbers, how many rows in each size.
    """

    start: int
    end: int
    numbers: tuple[int, ...] = ()
    name: str = ""
    times: int = 1
    is_round: bool | None = None
    side: str = ""
    every_other: str = ""
    loose: bool = False
    is_heading: bool = False
    by_size: tuple[tuple[int, ...], tuple[int, ...]] = ((), ())


def opened(text: str) -> tuple[int, ...]:
    """The row numbers in a piece of text: "5-8" is 5 6 7 8, "2, 4" is 2 4; () where it has none."""
    if text.isdecimal():
        return (int(text[:6]),)
    text = re.sub(r"(?<=\d)\s+a\s+(?=\d)", " to ", text)
    text = re.sub(_ORDINAL_WORD, lambda m: str(ordinal_number(m.group())), text.lower())
    text = re.sub(_WORD, lambda m: str(word_number(m.group())), text)
    text = re.sub(
        r"[a-z.]+(?=\s|\d|$)",
        lambda m: m.group() if m.group() in ("to", "and", "through", "thru") else " ",
        text,
    )
    numbers: list[int] = []
    joiner = ""
    for piece in re.findall(r"\d+|to\b|through|thru|-|—|&|and|,", text):
        if not piece.isdigit():
            joiner = piece
            continue
        value = int(piece[:6])
        if (
            joiner in ("to", "through", "thru", "-", "—")
            and numbers
            and numbers[-1] < value <= numbers[-1] + 400
        ):
            numbers += range(numbers[-1] + 1, value + 1)
        else:
            numbers.append(value)
        joiner = ""
    return tuple(numbers)


def _is_round(what: str) -> bool | None:
    low = what.lower()
    return None if low in ("r", "") else not low.startswith(("row", "rw"))


ANY_NAME = re.compile(
    r"(?<![\w-])(?!(?:each|every|this|that|previous|last|next|per|same|one|the|of|whole|entire|all"
    r"|any|half|final|following|in|on|at|a|an|sc|dc|tr|hdc|ch|st|for|to|from|by)\b)"
    r"(?P<name>[a-z]{3,12}(?:-[a-z]{2,8})?(?:\s+(?:st|stitch|pattern|patt|lace|rib|cable))?)\s+"
    r"(?P<what>rounds?|rnds?|rows?)(?P<side>(?:\s*[(\[](?:RS|WS|right side|wrong side)[)\]])?)\s*"
    r"(?P<loose>[:.—])(?=\s)",
    re.IGNORECASE,
)
"""A row called by what it is: "Handle round.", "Beading row:"."""
NEXT_BARE = re.compile(
    rf"(?<![\w-])next\s+(?P<what>{_ROUND})(?P<side>)(?P<loose>\s+)"
    r"(?=(?:\d|one\b|two\b|three\b|sc\b|dc\b|hdc\b|tr\b|htr\b|single\b|double\b|k\s?\d|knit\b"
    r"|purl\b|ch\b|\*|\(|take in\b|narrow\b|decrease\b|increase\b|slip\b|cast\b|bind\b))",
    re.IGNORECASE,
)
"""A label with no mark behind it: "next round one in every stitch"."""
NAMES = (NAMED, so_many(_WORD, _ROUND, SIDE), ANY_NAME, NEXT_BARE)
LETTERED = re.compile(
    rf"(?P<what>(?i:{_ROUND}|(?:inc|dec)(?:rease)?))\s+(?P<letter>[A-H]|(?<=[ce] )\d{{1,2}}(?=:))"
    rf"(?P<side>{SIDE})\s*(?:[:.—]|-(?=\s))(?=\s)"
)
"""Rows of a pattern by letters: "Row A: ...", "Dec B: ...", to be called back."""
SPOKEN = led(rf"{_NUM}(?:{_JOIN}{_NUM})*")
SPOKEN_FIRST = led_first(rf"{_ORD}(?:{_JOIN}{_ORD})*")
SETUP = re.compile(
    rf"(?P<name>set[- ]?up|preparation)(?P<what>)(?P<side>{SIDE})\s*(?P<loose>:)(?=\s)", re.I
)
"""At a line's start the row that sets the work up may go without its word."""
ORDINAL_ALONE = re.compile(
    rf"(?<![\w-])(?P<nums>\d+(?:st|nd|rd|th)\b(?:{_JOIN}\d+(?:st|nd|rd|th)\b)*)(?P<what>)\s*:"
)
"""Among rows with their word, a label may go without: "9th and 10th: as 5th and 6th"."""
DASHED = re.compile(
    rf"(?P<nums>{_ORD}|[1-9]\d?(?=\s?\.?\s?(?:—|--)))(?P<what>)(?P<side>)\s?\.?\s?(?:—"
    rf"|--)\s*(?=\S)(?!{AMOUNT})",
    re.IGNORECASE,
)
"""At a line's start an ordinal or a small number and a dash, "2nd.—"; no yarn: "2—4 oz."."""
_CAPS = (
    r"(?:[A-Z]{5,}|TOP|CUFF|HEEL|FOOT|TOE|BRIM|PEAK|BACK|NECK|BODY|BAND|YOKE|HOOD|SOLE|FLAP|LEG|ARM"
    r"|EDGE)"
)
RUN_IN_CAPS = re.compile(
    r"(?<![\w-])(?!NOTES?\b|HOOK|GAUGE|MATERIAL|SIZE|TENSION|YARN|NEEDLES?\b|MEASURE|ABBREV)"
    rf"(?P<name>{_CAPS}(?:\s[A-Z]{{2,}}){{0,4}})\s*:(?=\s+[A-Za-z*(\d])"
)
"""A heading inside a paragraph: "turn. SHAPE ARMHOLE: sl st across 6 sts"."""


@lru_cache(maxsize=64)
def label_at(text: str, start: int, line_start: bool) -> Mark | None:
    """The label that begins exactly at `start`, None when none does; a bare "3." only at a line's
    start. Kept for a few texts: a line is looked at by itself, and then as the row that it is.
    """
    found = _label_at(text, start, line_start)
    if found is None or found.is_heading:
        return found
    end, side = past_marks(text, found.end)
    if end == found.end or (found.loose and not side):
        return found
    return replace(found, end=end, side=found.side or side)


def _label_at(text: str, start: int, line_start: bool) -> Mark | None:
    others = _for_others(text, start) or _by_size(text, start)
    if others is not None:
        return others
    if line_start and (spread := SPREAD.match(text, start)):
        return _numbered(spread, start)
    ordinal = ORDINAL_FIRST.match(text, start) or ORDINAL_ALONE.match(text, start)
    word = WORD_FIRST.match(text, start)
    found = ordinal or (word if word and (line_start or word.group("what") != "r") else None)
    if found:
        return _numbered(found, start, side_of(_said(found, "side")))
    if NEXT_ALONE.match(text, start) or (line_start and NEXT_COLON.match(text, start)):
        return Mark(start, start + 5, (), "Next row", loose=True)
    if line_start and (alone := SIDE_ALONE.match(text, start)):
        return Mark(start, alone.end(), (), "Next row", side=side_of(alone.group()))
    named = next((found for one in NAMES if (found := one.match(text, start))), None)
    if named := named or (SETUP.match(text, start) if line_start else None):
        return _by_name(named, start)
    spoken = SPOKEN.match(text, start) or SPOKEN_FIRST.match(text, start)
    if spoken:
        return replace(_numbered(spoken, start), loose=True)
    told = line_start or TOTAL_SAID.match(text, start)
    heading = None if told else RUN_IN_CAPS.match(text, start)
    if heading:
        head = " ".join(heading["name"].split()).capitalize()
        return Mark(start, heading.end(), (), head, is_heading=True)
    lettered = LETTERED.match(text, start) if line_start else None
    if lettered:
        return _by_letter(lettered)
    dashed = DASHED.match(text, start) if line_start else None
    if dashed:
        return _numbered(dashed, start)
    marked = other_form(text, start) if line_start else CHANGING.match(text, start)
    if marked:
        return _numbered(marked, start, side_of(marked["side"] or ""))
    unmarked = ROW_BARE.match(text, start) or _wide(text, start)
    if line_start and unmarked:
        return _numbered(unmarked, start)
    bare = BARE.match(text, start) if line_start else None
    return _by_number(bare) if bare else None


def _wide(text: str, start: int) -> re.Match[str] | None:
    """An ordinal without a mark behind it, where the line before ended its sentence."""
    if (knitted := ORDINAL_BARE.match(text, start)) is not None:
        return knitted
    found = ORDINAL_WIDE.match(text, start)
    before = text[max(0, start - 200) : start].rstrip(" ")
    ended = before.rstrip().endswith((".", ";", ":", ")", "]", "!")) or before.endswith("\n\n")
    return found if found and (ended or not before.strip() or len(found["end"]) > 1) else None


def _by_number(found: re.Match[str]) -> Mark:
    numbers, side = opened(found["nums"]), side_of(found["side"] or "")
    return Mark(found.start(), found.end(), numbers, side=side)


def _by_letter(found: re.Match[str]) -> Mark:
    shapes = found["what"].lower()[:3] in ("inc", "dec")
    name = f"{found['what'].capitalize() if shapes else 'Row'} {found['letter']}"
    is_round = None if shapes else _is_round(found["what"])
    return Mark(found.start(), found.end(), (), name, 1, is_round)


def _by_size(text: str, start: int) -> Mark | None:
    """The label whose numbers go by size, for the first of them."""
    found = sized_label(text, start)
    if found is None:
        return None
    end, what, by_size = found
    firsts, lasts = by_size
    numbers = tuple(range(firsts[0], max((lasts or firsts)[0], firsts[0]) + 1))
    return Mark(start, end, numbers, "", 1, _is_round(what), by_size=by_size)


def _for_others(text: str, start: int) -> Mark | None:
    """The label of a row that stands for every other one."""
    every = ROW_AND_OTHERS.match(text, start)
    if every:
        numbers = opened(every["nums"] or every["ord"])
        is_round = _is_round(every["what"] or every["what2"] or "row")
        return Mark(start, every.end(), numbers, "", 1, is_round, "", every["which"].lower())
    alone = OTHERS_ONLY.match(text, start)
    if not alone:
        return None
    name = re.sub(r"\s+", " ", alone.group().strip(" :.,—-"))
    which = alone["which"].lower()
    return Mark(start, alone.end(), (), name, 1, _is_round(alone["what"]), "", which)


def _said(found: re.Match[str], group: str) -> str:
    """The words of a group that not every shape of a label has."""
    return (found[group] or "") if group in found.re.groupindex else ""


def _numbered(found: re.Match[str], start: int, side: str = "", every_other: str = "") -> Mark:
    numbers, is_round = opened(found.group("nums")), _is_round(found.group("what"))
    loose = bool(_said(found, "loose")) and not found.group().rstrip().endswith(".")
    return Mark(start, found.end(), numbers, "", 1, is_round, side, every_other, loose)


def _by_name(found: re.Match[str], start: int) -> Mark:
    said = _said(found, "times").strip() or "1"
    many = tuple(int(one[:3]) for one in re.findall(r"\d+", said))
    times = many[0] if many else word_number(said) or 1
    name = re.sub(r"\s+", " ", found.group().strip(" :.,—-"))
    is_round, side = _is_round(found.group("what")), side_of(found.group("side") or "")
    loose = bool(found.group("loose"))
    if FIRST_FEW.match(name):
        return Mark(start, found.end(), tuple(range(1, times + 1)), "", 1, is_round, side)
    mark = Mark(start, found.end(), (), name, times, is_round, side, "", loose)
    return replace(mark, by_size=((), many)) if len(many) > 1 else mark


BULLET = re.compile(r"[-*>+]\s+")


def bulleted(line: str) -> int:
    """The length of a list's mark before a label: "- Row 2: sc in each"."""
    mark = BULLET.match(line)
    return mark.end() if mark and label_at(line, mark.end(), True) else 0


CANDIDATE = re.compile(
    rf"(?<![\w-])(?:{_ORD}|next,|(?:in|for|on)\s+(?:the\s+{_ORD}\s+)?(?:rounds?|rnds?|rows?)[\s,]"
    r"|\d{1,2} (?:rounds|rnds|rds|rows):"
    rf"|[\[(]?(?:{_ROUND}|R)\.?\s*{_NUM}|(?:all|every|each|even|odd)\s"
    r"|(?:next|following|last|foundation"
    rf"|set-?up|inc|dec|increase|decrease|eyelet|final)\s+(?:(?:\d+(?:\s*[(\[][\d,:;/ ]+[)\]])?"
    rf"|{_WORD})\s+)?(?:{_ROUND})"
    rf"|[a-z]{{3,12}}\s+(?:rounds?|rnds?|rows?)\b|(?-i:{_CAPS}(?:\s[A-Z]{{2,}}){{0,4}}\s*:))",
    re.IGNORECASE,
)


def labels_in(text: str, start: int, end: int) -> list[Mark]:
    """All labels in a block of clean text, in order; inside a sentence only after a full stop, a
    bracket or a turn.
    """
    first = label_at(text, start, True)
    marks = [first] if first and first.end <= end else []
    at = first.end if first else start
    if not may_hold_label(text, at, end):
        return marks
    while True:
        # Searched anew from the next character: "row. 2nd ROW:" holds a false candidate before the
        # true one.
        candidate = CANDIDATE.search(text, at, end)
        if candidate is None:
            return marks
        spot = candidate.start()
        before = last_words(text, start, spot)
        free = may_begin(before, text, spot)
        mark = label_at(text, spot, False) if free or MARKED.search(text, spot, spot + 20) else None
        if mark and not free:
            worked = marks[-1].numbers[-1:] if marks else (0,)
            stop = text[mark.start : mark.end].rstrip()[-1:]
            on = counts_on(worked, mark.numbers, stop, before)
            mark = mark if on and not mark.loose else None
        if mark and mark.loose and not ends_sentence(before):
            mark = None
        last = marks[-1].end if marks else start
        bare = not text[last:spot].strip()
        mark = None if bare and WORKS_ALL.match(text, spot) else mark
        if mark and bare and mark.name and marks and marks[-1].numbers:
            # "3rd ROW: Inc row: ch 7": the number is the label, the name a remark.
            marks[-1], at = replace(marks[-1], end=mark.end), mark.end
            continue
        shapes = text[:last].endswith(".") and mark is not None and mark.name.startswith("Shape")
        if mark and mark.is_heading and not shapes and bare:
            # "NEXT 2 ROWS: START BORDER: K across": the label is the row's, the heading a remark;
            # and at the start of a block a heading is a part's.
            mark = None
        if mark and mark.end <= end:
            marks.append(mark)
            at = mark.end
        else:
            at = spot + 1
