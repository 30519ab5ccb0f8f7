"""The words of one row -> its printed totals, and the words with those totals blanked out."""

from __future__ import annotations

import re
from dataclasses import replace

from reader.pattern.alone_totals import number_alone
from reader.pattern.apart_totals import told_apart
from reader.pattern.chain_sayings import of_a_chain
from reader.pattern.explanations import of_one_stitch
from reader.pattern.needle_totals import by_needle, lists_needles
from reader.pattern.remarks_behind import LONGEST_TAIL, before_remarks
from reader.pattern.row_then_total import without_each
from reader.pattern.sized_totals import by_commas, whole_list
from reader.pattern.total_lists import BEHIND_COLON, SENTENCE, in_a_sentence, in_turn, listed
from reader.pattern.totals import (
    BRACKET,
    COMES_OUT,
    FOR_ROWS,
    IN_ALL,
    IN_THIS_ROW,
    NET_OVER,
    OF_SIZES,
    ONE_SQUARE,
    SO_MANY_LEFT,
    SPOKEN,
    STITCH,
    TAIL,
    TOLD,
    Printed,
    bracket_total,
    of_those_before,
)
from reader.pattern.totals_explained import stated_part
from reader.terms.numbers import SPELLED, word_number

MORE_KINDS = re.compile(
    rf"^(?:\s*(?:,|;|and|&|\+)\s*\d+{OF_SIZES}\s*(?:ch[- ]?\d+\s*)?(?:corner\s*)?(?:{STITCH}"
    rf"|ch[- ]?\d* ?sps?|corners?|[A-Z]\b)|\s*\+\s*(?:\d+ ?ch(?:ains?)?|ch[ -]?\d)\b)*\s*(?:total"
    rf"|in all|around|at each end|rem\w*|on needles?|each|now|made|formed)?\s*\.?$",
    re.IGNORECASE,
)
FOLLOWS = re.compile(
    r"^\s*,?\s*(?:x\s*\d|(?:for\s+)?(?:a\s+total\s+of\s+)?\d+\s*(?:more\s*)?"
    r"(?:times|sets|reps?\b|repeats)|times|twice|once|in\s|into\s|all in"
    r"|around\s+\w+\s+post|\*\s*\d|(?:(?:and|then)\s+)*(?:rep(?:eat\w*)?|do (?:this|that))\b)",
    re.IGNORECASE,
)

TOTAL_FIRST = re.compile(
    r"\s*(?:[+-]? ?\d|total|count|stitch (?:count|total)|you|we\b|there|this|makes|=|inc|dec|now"
    r"|so )", re.IGNORECASE,
)
TIMES_ONLY = re.compile(
    r"\W*(?:\d{1,2} ?x?|x ?\d{1,2}|repeat|rep|\d{1,2} times:?)\W*", re.IGNORECASE
)
"""Before a list in a bracket, how often it is worked, and nothing else."""
ALL_ROUND = re.compile(
    r"\s*(?:all )?(?:a?round|across|to (?:the )?end)\s*(?:[.;(\[=]|$)", re.IGNORECASE
)
"""Behind a list in a bracket, how far it is repeated."""
ONE_FOR = re.compile(r"\s*= (?:1|one|a|an) [a-z]")
"""What a chain stands for: "3 ch (= 1 tr)"."""


IN_WORDS = re.compile(
    rf"(?P<n>{SPELLED}) (?P<rest>(?:stitches|sts|loops)"
    r"(?: (?:in all|now|left|on (?:the )?needles?))?\.?)",
    re.IGNORECASE,
)
"""A total told in words: "(forty stitches)"."""
SIZES_OPEN = re.compile(r"\d+\s*[\(\[][\d,:;/\s—-]+[\)\]]$")
"""Before a number, the sizes of a list that it goes on with: "60 (64, 68) 72 (76, 80) sts"."""


def printed_in(
    words: str, sizes: int, filet: bool = False, crochet: bool = False
) -> tuple[tuple[Printed, ...], str]:
    """Totals in order, and the words with each total turned to spaces; filet: squares without
    brackets are worked, not totals. crochet: a number alone at the end is a total.
    """
    found, words = told_apart(words)
    text, amid = words, False
    for bracket in BRACKET.finditer(words):
        aside = of_a_chain(words, bracket) or (filet and ONE_SQUARE.fullmatch(bracket["body"]))
        one = None if aside else _in_bracket(words, bracket, sizes)
        if one is None:
            continue
        amid = (amid and one.change != 0) or of_those_before(one, words[bracket.end() :])
        if not amid:
            found.append(one)
        blank = " " * (bracket.end() - bracket.start())
        text = text[: bracket.start()] + blank + text[bracket.end() :]
    if filet and SQUARES.search(text) and not NET_OVER.search(text):
        return tuple(found), text
    on_needles, text = by_needle(text)
    text = _tail(without_each(_list_behind(text, found), found), found, sizes)
    text = text if found else _alone(text, found, crochet)
    found[:] = [replace(one, mixed=_mixed(words[one.start : one.end])) for one in found]
    text = _spoken(_changes(text, found), found)
    return (*found, *on_needles), text


def _in_bracket(words: str, bracket: re.Match[str], sizes: int) -> Printed | None:
    """The total that a bracket states among its row's words, None where it states none."""
    body = bracket.group("body")
    spelled = IN_WORDS.fullmatch(" ".join(body.split()))
    body = f"{word_number(spelled['n'])} {spelled['rest']}" if spelled else body
    before, after = words[: bracket.start()], words[bracket.end() :]
    if not TOTAL_FIRST.match(body) or FOLLOWS.match(after) or ONE_FOR.match(body):
        return None
    if of_one_stitch(body, words, after) or ("needle" in body and lists_needles(bracket.group())):
        return None
    if "," in body and (TIMES_ONLY.fullmatch(before) or ALL_ROUND.match(after)):
        return None
    if sizes > 1 and re.search(r"\d\s*$", before) and not whole_list(before, sizes):
        return None
    some = SIZES_OPEN.search(before.rstrip())
    if sizes > 1 and some and len(re.findall(r"\d+", some.group())) < sizes:
        return None
    body = by_commas(HALVES.sub("", " ".join(body.split())), sizes)
    body = OWN_CHAIN.sub("", body) if CHAIN_AMID.search(before) else body
    one = bracket_total(body, bracket.start(), bracket.end())
    if one is None or not _whole(body, one):
        one = listed(body, bracket.start(), bracket.end(), before, after)
        if one is None and sizes == 1:
            one = in_turn(body, bracket.start(), bracket.end())
        stated = "" if one is not None else stated_part(body, before, after)
        one = bracket_total(stated, bracket.start(), bracket.end()) if stated else one
    return one


def _alone(text: str, found: list[Printed], crochet: bool) -> str:
    """The text without a number that stands alone at its end, which is put to the totals."""
    last = number_alone(text, crochet)
    if last is None:
        return text
    found.append(last)
    return text[: last.start] + " " * (last.end - last.start) + text[last.end :]


CHAIN_AMID = re.compile(r"(?:sts?|\d|[shd]c|h?tr|leg|around),? (?:and )?ch [2-5]\b", re.IGNORECASE)
OWN_CHAIN = re.compile(
    r"(?<=[a-z]) ?(?:\+|and|plus) ?(?:[2-5][ -]?ch(?:ain)?s?|ch[ -]?[2-5])\.?$", re.IGNORECASE
)
"""Chains told beside the stitches, of a row that makes them amid those: "(27 sc + 3 ch)"."""
HALVES = re.compile(
    r",? (?:and|with|plus|\+) (?:an? |one |two |1 |2 )?half[- ](?:an? )?[a-z]+"
    r"(?:,? (?:at|on) (?:each|either|both|one) (?:ends?|sides?))?$",
    re.IGNORECASE,
)
"""Beside whole groups, the halves at the ends: "4 shells and a half shell at each end"."""
BESIDE = re.compile(
    r"(?:,|;|&|\+|/|\band)\s*\d+\s+(?:sts?|stitches|h ?d ?c|[sd] ?c|[hd]?tr|doubles|trebles)\b",
    re.IGNORECASE,
)


def _mixed(total: str) -> bool:
    """Whether a total counts stitches beside what it names first."""
    return BESIDE.search(total) is not None


NUMBER = re.compile(
    rf"^\s*(?:{TOLD})?\s*\d+(?:\s*[\(\[][\d,;:\s\-]*[\)\]])?\s*(?:{STITCH})?",
    re.IGNORECASE,
)
OTHER_SIZES = re.compile(rf"^(?:\s*[,;:]\s*\d+)+\s*(?:{STITCH})?\s*$", re.IGNORECASE)


ARROW = re.compile(r"(?:-+>|=+>?|→|—|\s-\s)\s*(?P<list>\d[^.;→>=—]{3,60}?)\.?\s*$")


def _list_behind(text: str, found: list[Printed]) -> str:
    """The text without the list of what the row holds behind an arrow or a dash at its end, "->
    40 sc + 2 handles".
    """
    arrow, colon = ARROW.search(text), BEHIND_COLON.search(text)
    one = None
    if arrow is not None:
        one = listed(arrow["list"], arrow.start(), arrow.end(), text[: arrow.start()], "")
    elif colon is not None:
        one = in_turn(colon["list"], colon.start(), colon.end())
    elif (last := SENTENCE.search(text)) is not None:
        one = in_a_sentence(text, _is_over(text[: last.start()]))
    if one is None:
        return text
    found.append(one)
    return text[: one.start] + " " * (one.end - one.start) + text[one.end :]


COUNTING = re.compile(r"^\s*,?\s*(?:not )?(?:counting|including|incl)\b.*$", re.S | re.I)


def _whole(body: str, one: Printed) -> bool:
    if one.change or one.each or body.isdecimal():
        return True
    rest = IN_THIS_ROW.sub("", NUMBER.sub("", body, count=1).strip().lower())
    rest = OTHER_SIZES.sub("", COUNTING.sub("", FOR_ROWS.sub("", IN_ALL.sub("", rest))))
    rest = re.sub(r"^\s*:\s*\d+ [A-Z](?:, \d+ [A-Z])*$", "", rest)
    return bool(MORE_KINDS.match(rest.strip()) if rest.strip() else True)


SQUARES = re.compile(r"\b\d+ (?:more )?(?:bls?|blocks?|sps?|spaces?)\b", re.IGNORECASE)
RANGE = re.compile(r"(?:ch|rnds?|rows?|\d)\s*$", re.IGNORECASE)
"""Before a dash and a number, these make a range of it ("rows 3-8")."""


OVER = re.compile(r"\bturn(?:ed)?\W*$|(?<!follows)(?<!thus)(?<!so):$", re.IGNORECASE)
"""A row that is over: a list of stitches behind it is a total."""
PLACED = re.compile(
    r"\b(?:side|sides|edge|underside|underneath|bottom|way|hook|work|make|corner"
    r"|of (?:the |your |that )?(?:(?!t)\w+ )?ch(?:ain)?"
    r"|(?:in(?:to)?|on|upon|over|under|round) (?:each|every|next|same|the)"
    r" [^.;:,]{0,20}|(?:^|[,;.*] ?)(?:each|every) (?:sts?|stitch|s ?c|d ?c|h ?d ?c|h?tr|one|loop"
    r"|ch|sp|space)):$",
    re.IGNORECASE,
)
"""Where the stitches behind a colon go."""


FINISHED = re.compile(
    r"\b(?:(?:each|every) (?:ch(?:ain)?|st(?:itch)?|[sd] ?c|h ?d ?c|h?tr|loop|sp(?:ace)?)"
    r"|across|around|times|twice|thrice|more|turning ch(?:ain)?"
    r"|last \w+|next \w+|repeat|end|row|round|join(?:ed)?|sts|stitches"
    r"|as (?:an? |one )?st(?:itch)?)$", re.IGNORECASE,
)
MANY = 8
"""Stitches: fewer behind a colon may all go into one place, "in each st: 2 dc"."""


def _placed(before: str, number: str) -> bool:
    """Whether stitches behind a colon go into the place before it; many are what the row has."""
    over = int(number[:6]) >= MANY and FINISHED.search(before.rstrip(" :")) is not None
    return PLACED.search(before) is not None and not over


def parted(piece: str, at: int) -> bool:
    """Whether the dash at `at` stands free between spaces, as one before a total does."""
    dash = piece[at:].lstrip()
    return piece[:at].endswith(" ") or piece[at : at + 1].isspace() if dash[1:2] == " " else False


DIGIT = re.compile(r"\d")
_CLOSING = (
    r"(?:sl st|ss|sl|slip stitch|slip st) (?:to join|(?:in|to|into|on) (?:the )?"
    r"(?:top|first|1st|beg\w*|3rd|4th|2nd|start\w*))"
)
ACT_BEHIND = re.compile(
    r"[,;] (?:and )?(?:turn|join|close|ch \d,? (?:and )?turn|fasten off|do not (?:turn|join)"
    rf"|{_CLOSING}|end(?:ing)? with (?:a )?{_CLOSING})\b"
    r"| (?=(?-i:Join|Sl st|Ss|SS|Slip st(?:itch)?|Close|Turn|Fasten off|End with (?:a )?sl st)\b)",
    re.IGNORECASE,
)
"""What may follow a total in its sentence: "85 sc, turn."."""
CHAIN_TOLD = re.compile(
    r"\bch(?:ain)?s?\b[ \d]*\([^()]*\b(?:counts?|counting|counted|stands?|first|1st)\b[^()]*\)$",
    re.IGNORECASE,
)
"""A chain and what it stands for: the stitches behind them are worked."""
BY_COLOUR = re.compile(r"(?:^|[\s,;(])[A-Z]{1,2}:$")
"""Before stitches, the yarn they are worked with: "A: 9 sc, B: 9 sc"."""
YARNS = re.compile(r"[(\[][A-Za-z]{1,10}\d?[)\]](?=.*[(\[][A-Za-z]{1,10}\d?[)\]]$)", re.DOTALL)
"""The yarn in a bracket before each of several stitches: "[MC] 3 sc, [CC] 2 sc, [MC] 3 sc"."""
ROW_OVER = re.compile(
    r"\b(?:across|around|(?:to|the) end|times|\d+ ?x|twice|together),$"
    r"|[*)\]] (?:across|around|to (?:the )?end|(?:\d+|\w+) times|twice)$",
    re.IGNORECASE,
)

ALL_OVER = re.compile(r"\beach (?:st|stitch|[shd]{1,2}c|h?tr) (?:all )?a(?:round|cross),$", re.I)
"""Every stitch is worked into: nothing is left for stitches behind it."""


def _over(before: str, tail: re.Match[str]) -> bool:
    """Whether a comma at most parts a total from a row that is over: "... across, 15 stitches"."""
    kind = (tail.group("bk") or "").lower()
    plain = kind in ("sts", "stitches") and ROW_OVER.search(before) is not None
    return plain or ALL_OVER.search(before) is not None


def _is_over(before: str) -> bool:
    """Whether a row ends there, so that a list of stitches behind it is a total."""
    ended = before.endswith((".", ";")) and FINISHED.search(before.rstrip(".; ")) is not None
    return ended or (OVER.search(before) is not None and PLACED.search(before) is None)


def _in_range(tail: re.Match[str], before: str) -> bool:
    """Whether a dash and number make a range of what stands before: nothing is counted by it."""
    arrow = tail.group().lstrip()[:3].find(">") >= 0 or tail.group().lstrip()[:1] in ("=", ":")
    return not arrow and tail.group("ak") is None and RANGE.search(before) is not None


def _tail(text: str, found: list[Printed], sizes: int) -> str:
    """A total at the end of a sentence or the row without brackets: "- 24 sc", "24 sts."."""
    stripped = text.rstrip(" \n;")
    stops = [m.end() for m in re.finditer(r"\.(?=\s)|[a-z](?=[ ]*\n\s*[A-Z])", stripped)]
    stops += [m.start() for m in ACT_BEHIND.finditer(stripped)]
    stops += before_remarks(stripped, [len(stripped), *stops])
    for end in [len(stripped), *stops]:
        last = stripped[max(0, end - LONGEST_TAIL) : end]
        tail = TAIL.search(last) if DIGIT.search(last) else None
        if not tail:
            continue
        piece = stripped[:end]
        start = max(0, len(piece) - LONGEST_TAIL) + tail.start()
        before = piece[:start].rstrip()
        number = tail.group("a") or tail.group("b")
        if (
            not before.strip("* ")
            or (tail.group("b") and sizes > 1 and SIZES_OPEN.search(before))
            or (tail.group("b") and before[-1:] not in ".;:)]—-*" and not _over(before, tail))
            or (tail.group("a") and _in_range(tail, before) and not parted(piece, start))
            or (tail.group("b") and tail.group("others") and not _is_over(before))
            or (tail.group("b") and (BY_COLOUR.search(before) or _placed(before, number)))
            or (tail.group("b") and CHAIN_TOLD.search(before))
            or (tail.group("b") and before[-1:] in ")]" and _behind(found, end))
            or (tail.group("b") and YARNS.search(before))
        ):
            continue
        kind = (tail.group("ak") or tail.group("bk") or "").lower()
        more = tail.group("alist") or tail.group("blist") or ""
        numbers = tuple(int(n[:6]) for n in re.findall(r"\d+", number + more))
        told = piece[start:].lstrip().startswith(":") and not re.search(r":\s*\d+[\s.]*$", piece)
        told = told and tail.group("a") is not None and not OF_CHAINS.search(kind)
        if told and not (FINISHED.search(before.rstrip(".")) and int(number[:6]) >= MANY):
            continue
        found.append(Printed(start, end, numbers, re.sub(r"[\s.]+", " ", kind).strip()))
        return text[:start] + " " * (end - start) + text[end:]
    return text


OF_CHAINS = re.compile(r"ch[- ]?\d+[- ]?(?:sps?|spaces?|loops?|lps?)$")
"""Spaces named by their chains are counted, never worked: ": 6 ch-2 sps"."""


def _behind(found: list[Printed], end: int) -> bool:
    """Whether the row's total stands behind: then a number behind a bracket, "[MC] 3 sc (24)", is
    worked.
    """
    return any(one.start >= end and not one.change and not one.each for one in found)


CHANGED = re.compile(
    r"(?<=[.;]\s)(?P<n>\d+|[a-z]+) (?P<way>in|de)creases(?: in all| made"
    r"| altogether)?(?=\s*(?:[.;]|$))",
    re.IGNORECASE,
)
"""A sentence that only says how many increases the row has."""


DASHED = re.compile(
    r"(?:—|\s-\s?|[,.;]\s+|-(?=\d+ st))(?P<n>\d+)\s*(?:sts?|stitches)\s*(?P<way>in|de)"
    r"c(?:reased|'?d|'?ed|s)?\b(?=\s*(?:[.;)]|$))",
    re.IGNORECASE,
)
"""A change told behind a dash: "k2—2 sts dec'd."."""
def _changes(text: str, found: list[Printed]) -> str:
    for said in [*CHANGED.finditer(text), *DASHED.finditer(text)]:
        raw = said.group("n")
        value = int(raw[:4]) if raw.isdigit() else word_number(raw)
        if value:
            way = 1 if said.group("way").lower() == "in" else -1
            found.append(Printed(said.start(), said.end(), (value,), change=way))
            text = text[: said.start()] + " " * (said.end() - said.start()) + text[said.end() :]
    return text


def _spoken(text: str, found: list[Printed]) -> str:
    for said in [*SPOKEN.finditer(text), *SO_MANY_LEFT.finditer(text), *COMES_OUT.finditer(text)]:
        raw = said.group("n") or said.groupdict().get("word") or ""
        value = int(raw[:6]) if raw.isdigit() else word_number(raw)
        if value is None or value < 2:
            continue
        more = tuple(int(n) for n in re.findall(r"\d+", said.group("more") or ""))
        found.append(
            Printed(said.start(), said.end(), (value, *more), (said.group("kind") or "").lower())
        )
        text = text[: said.start()] + " " * (said.end() - said.start()) + text[said.end() :]
    return text


ONLY_A_TOTAL = re.compile(
    r"\W*(?P<n>\d+) (?:sts|stitches)(?: (?:now|total|in all|left|rem\w*|on (?:the )?needles?))*\W*",
    re.IGNORECASE,
)
"""A line that tells how many stitches there are, and nothing else."""


def told_in(words: str) -> int | None:
    """The stitches on hand that a remark tells of in words, None where it tells of none."""
    alone = ONLY_A_TOTAL.fullmatch(" ".join(words.split()))
    if alone:
        return int(alone.group("n")[:6])
    on_needles, rest = by_needle(words)
    found: list[Printed] = []
    _spoken(rest, found)
    whole = [one for one in [*found, *on_needles] if not one.each and len(one.numbers) == 1]
    return whole[-1].numbers[0] if whole else None
