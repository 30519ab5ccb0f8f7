"""A row's words -> the stretches that are rows of their own: knitting prose puts several in one
paragraph.
"""

from __future__ import annotations

import re
from dataclasses import replace

from reader.counts.casting import cast_on_in
from reader.counts.rest_only import only_says_which
from reader.pattern.labels import Mark
from reader.pattern.layout import WrittenRow
from reader.pattern.line_words import ACTION
from reader.pattern.rules import find_rule
from reader.terms.numbers import SPELLED

NEXT_SENTENCE = re.compile(
    r"(?:(?<=\bturn\.)\s+(?=[A-Z])|(?:(?<=[.])|(?<=\.\))|(?<=sts \))|(?<=\bsts)(?=\s*\n)"
    r"|(?<=\))(?=\s*(?:\n|\*+\s)))\s+(?:sts\.?\s+)?(?:\*\*+\s*|\*[ \t]*\n\s*)?"
    r"(?=(?:(?!(?:[a-z]+\s){0,2}(?:needles?|rows?|rounds?|rnds?|size|note)\b)"
    r"[a-z]+(?:\s+[a-z]+){0,2}:\s+)?(?:(?:then|now|next|hereafter|thereafter|afterwards?),?\s+)?"
    r"(?:(?:keeping|maintaining|still|always|having|(?<=then,\s)with|working\s+(?:on\s+)?both)\b"
    r"[^.;,:\d]{1,60},\s+)?"
    r"(?:working (?:on|each|both|one|only)|work|continue|cont\b|bind\s+off"
    rf"|cast\s+(?:o(?:ff|n)|{SPELLED})"
    r"|bo\s+(?:\d|in\b|all\b|loosely|rem|sts\b|each\b|cent)|dec\b|inc\b|decrease|increase"
    r"|knit|purl|pearl|[kp]1?f ?&?b|(?:narrow|widen)\s+(?:at|once|1|one|each|both|every)"
    r"|rep(?:eat)?\b(?!\s*(?:(?:from\s*)?\*|[.]|$|to (?:the )?end"
    r"|(?:all |the whole )?(?:a?round|across)))|shape|k\s*\d+|p\s*\d+|beg\s+with"
    r"|(?:for|to\s+make)\s+(?:the|each|a|one)\s+(?:[a-z]+,?\s+){1,3}cast\s+on"
    r"|at\s+(?:the\s+|each\s+|both\s+)?(?:neck|armhole|arm|front|side|shoulder|center|centre)\s+edges?\b"
    r"|pick\s+up|return\s\d+|add\s+\d+|\d+\s+(?:rows|rnds|rounds)|garter|moss|seed|stocking"
    r"|stockinette?|st\.?\s?st|g\s?st|on\s+(?:these|those)|next\s+(?:row|make|work|knit|purl)"
    r"|with\s+(?:the\s+)?(?:rs|ws|right\s+side|wrong\s+side)\s+(?:of\s+work\s+)?facing"
    r"|from\s+(?:the\s+)?(?:right|wrong)\s+side,\s+work"
    r"|(?-i:At)\s+(?:(?:the\s+)?(?:beg\w*|start)\.?\s+of\s+(?:each\s+of\s+)?(?:the\s+)?(?:next"
    r"|following)|(?:each|both)\s+ends?)"
    r"|(?:re-?join|join|attach)\s+(?:the\s+)?(?:yarn|wool|cotton|thread)"
    r"|\*\s*(?=[kp(\[])|change\s+to|place|leave\s+cent\w+\s+\d+[^.;]*\bjoin\b|(?:slip|put)\s+(?:the\s+)?(?:next|first|last)\s+\d+"
    r"|(?:sl|slip|put|return)\s+(?:the\s+)?(?:\w+\s+)?"
    r"(?:sts|stitches)\s+(?:back\s+)?(?:from|on|off|to)\b)\b))",
    re.IGNORECASE,
)
NEXT_LIST = re.compile(
    r"(?<=[.])\s+(?:\*\*+\s+)?"
    r"(?=[(\[]\s*(?:[kp]\s?\d|[kp]fb\b|(?:inc|dec)(?:\s?1)?,|yo,)|[kp]\s{0,2}\d)", re.IGNORECASE
)
"""In running words, where the list of the next row begins."""
TO_ITS_END = re.compile(
    r"\bto\s+(?:the\s+)?end(?:\s+of\s+(?:the\s+|this\s+)?(?:row|round|rnd))?\s*;\s+"
    r"(?:(?:and|then|next|now)\s+)*"
    r"(?=(?:make|slip|sl|k|knit|p|purl|pearl|take|narrow|seam|m)\b\s*(?:\d|one|two|three|to\b|the\b"
    r"|plain|all|next|back))",
    re.IGNORECASE,
)
"""In running words, a row that is told to its end, and another behind it."""
TURNED = re.compile(
    r"\bturn(?: work| the work| again| round)?\s*[;,:.]\s*(?:and\s+|then\s+)*"
    r"(?=(?:slip|sl|knit|k|purl|pearl|p|work|s)\b\.?\s*(?:\d|one|two|three|four|five|six|seven|eight"
    r"|nine|ten|eleven|twelve|thirteen|fourteen|the|to|back|all|until|till)|[kp]\d\d\b"
    r"|(?:(?:and )?so on|continu|go on|going on|keep|proceed)\b[^.;]*\b(?:until|till)\b)",
    re.IGNORECASE,
)
"""Where the work is turned and goes on in the same sentence: short rows told one after the other.
"""
_COUNTED = (
    rf"(?:\d+|{SPELLED}|a|another)\s+(?:(?!rows|tog|all\b|every|each|the\b|in\b|of\b)[a-z]+\s+)"
    r"{0,2}(?:rows?|rounds?|rnds?)\b"
)
RUNS_ON = re.compile(
    r"(?:[,;]|(?<=rows\)))\s+(?:(?:and|then|now|again|next)\s+)*"
    r"(?=(?:\d+\s+(?:rows|rounds|rnds)\s+(?:of\s+|in\s+)?)?(?:garter|moss|seed|stocking|stockinette?"
    r"|st\.?\s?st|g\.?\s?st)\b)|(?:[,;]|(?<=rows\)))\s+(?:(?:and|then|now|again|next)\s+)*"
    rf"(?=(?P<rows>(?:knit|purl|pearl|seam|work|rib|k|p)\s+(?:another\s+|the\s+next\s+)?{_COUNTED})"
    r"|(?:knit|purl|pearl|work|rib)\s+(?:on\s+)?the\s+(?:remaining|other|rest)\b"
    r"(?!\s+of\s+(?:the|this|that|your)\s+(?:row|round|rnd|needle))"
    r"(?=[^.;]*\b(?:back|forth|fro|rows?|rounds?|inch|inches|only|separately|plain|needles?)\b)"
    rf"|cast\s+on\s+(?:\d+|{SPELLED})\s+(?:stitches|sts)\s*,\s+(?:and\s+|then\s+)?"
    rf"(?:knit|purl|work|rib)\s+{_COUNTED}|(?:cast|bind)\s+off\s*(?:[.;,]|$)"
    rf"|(?:bind|cast)\s+off\s+(?:\d+|{SPELLED})\s+(?:sts?\s+|stitches\s+)?at\s+(?:the\s+)?(?:beg\w*|start)"
    r"\s+of\s+(?:each\s+of\s+)?(?:the\s+)?(?:next|foll)"
    rf"|(?:dec|inc)\w*\.?\s+(?:\d+|{SPELLED})\s+(?:sts?\s+|stitch\w*\s+)?(?:at\s+)?(?:the\s+)?(?:beg\w*|(?:each|both)"
    r"\s+(?:ends?|sides?))\s+of\s+(?:each\s+of\s+)?(?:the\s+)?next"
    r"|(?:work|knit|rib|continue)\s+(?:in\s+)?(?:the\s+)?[a-z][^.,;:]{1,30}?\s+for\s+\d+[^.,;]{0,6}"
    r"\s*(?:rows|rounds|rnds|inches|inch|ins|in|cm)\b"
    r"|(?:knit|k|purl|p|work)\s+(?:back|across)(?:\s+\w+){0,3}?,?\s+(?:and\s+)?(?:then\s+)?"
    r"cast\s+on\b|on\s+(?:these|those|(?:the\s+)?(?:remaining|rem|last))\b[^.;,]{0,24}?"
    r"\b(?:work|knit|cont\w*|go on)\b"
    rf"|for\s+(?:which|this)\s+(?:take|pick)\s+up\s+(?:\d+|{SPELLED}))",
    re.IGNORECASE,
)
"""Rows told one after the other in a sentence: "knit 8 rows, increasing 1 in each, knit 12 rows".
"""
AFTER_ROWS = re.compile(
    r"\b(?:rows|rounds|rnds|inches)\b[^,.;]{0,30}[,;]\s+(?:(?:and|then)\s+)*"
    rf"(?=(?:bind|cast)\s+o(?:ff|n)\s+(?:\d+|{SPELLED})\s+(?:sts?|stitches)\b)"
    rf"|\bcast\s+on\s+(?:\d+|{SPELLED})\s+(?:sts|stitches)\b[^.;,]{{0,30}}?,?\s+and\s+"
    rf"(?=(?:on\s+(?:this|these|those)\b[^.;,]{{0,20}}?\s+)?(?:knit|work|purl|rib|k|p)\s+{_COUNTED})",
    re.IGNORECASE,
)
"""Behind rows, stitches that are bound off or cast on begin a row of their own, and rows behind
stitches cast on.
"""
BY_TURNS = re.compile(
    r"\balternat|\bby turns\b|\bfor\s+\w+\s+(?:\w+\s+)?(?:rows|rounds|inches)\b"
    r"|\bfor\s+the\s+rest\b|\buntil\b|\btill\b|\bthroughout\b|\band so on\b|\brepeat\b|\*",
    re.IGNORECASE,
)
"""Behind rows told by turns, how often: they are no two rows."""


IN_BRACKETS = re.compile(r"\([^()]{1,300}\)")
"""What a bracket holds is told in passing: no row begins in it."""
FULL_STOP = re.compile(r"(?<=[a-z)\d])\.\s+(?=[A-Z])")


def _runs_on(words: str) -> list[int]:
    """Where rows begin that are told behind others in the same sentence."""
    cuts: list[int] = []
    for found in RUNS_ON.finditer(words):
        sentence = re.search(r"[.;](?:\s|$)", words[found.end() :])
        rest = words[found.end() : found.end() + sentence.start() if sentence else len(words)]
        behind = re.split(r",\s", rest, maxsplit=1)
        by_turns = BY_TURNS.search(behind[0]) or (len(behind) > 1 and BY_TURNS.match(behind[1]))
        if not (found["rows"] and by_turns) and ACTION.search(words[: found.start()]):
            cuts.append(found.end())
    return cuts + [found.end() for found in AFTER_ROWS.finditer(words)]


SAME_TIME = re.compile(r"\b(?:and\s+)?at\s+(?:the\s+)?same\s+time\b", re.IGNORECASE)
"""A second change that goes on along with the one before."""
OFF_TOO = re.compile(r"\W*(?:to shape\b[^.;,\d]*,?\s*)?(?:cast|bind)\s+off\s+\d", re.IGNORECASE)
"""Stitches bound off meanwhile."""
TURN = re.compile(r"\bturn\b", re.IGNORECASE)
HELD = re.compile(
    r"\b(?:sl|slip|place|put|leave|leaving)\b[^.;]*\b(?:holders?|spare|waste|pin|thread|extra)\b[^.;]*$",
    re.IGNORECASE,
)
"""Before a turn, the rest of the row put aside: what is worked behind it is another row."""
NEEDLE_NAMED = re.compile(r"(?:^|[.;:,])\W*(?:\w+ ){0,3}needles?\.\s*$", re.IGNORECASE)
"""A needle named as a heading: what follows belongs to the same round."""
HEADING = re.compile(
    r"\W*(?!(?:Knit|Purl|Pearl|Work|Rib|Rep|Cast|Slip|Cont)\b)[A-Z][^.:;\d]{1,40}(?:\.\s?--|\.\s?—|:--|\.-(?=\s?[A-Z*]))\s*"
    r"|\W*[A-Z][a-z]+(?: [a-z]+){0,3}:\s+(?=[A-Z*(])"
)
"""A heading run in with its text: "To decrease.--Knit one ..."."""


AS_FOLLOWS = re.compile(
    r"\b(?:(?:then|and|now|next)\s+)*(?:narrow|decrease|dec|increase|inc|widen|shape|work|proceed"
    r"|continue|turn|divide|begin|start|complete|finish)\b"
    r"(?![^.;:]*?\d\s*(?:sts?|stitches|times|rows?|rnds?|rounds?|in)\b)[^.;:,]{0,70}?"
    r"\b(?:as\s+follows|in\s+(?:the\s+following|this)\s+(?:manner|way)|thus)"
    r"\s*(?:[:—-]+|\.-+)"
    r"|^\W*(?:(?:then|and|now|next)\s+)*(?:narrow|decrease|dec|increase|inc|widen|shape)\s+"
    r"(?:for|at|off)\b[^.;:,\d]{0,40}:(?=\s)"
    r"|\b(?:knit|work|make|purl|pearl)\s+(?:a|an|one|1|another|the\s+next)\s+(?:\w+\s+){0,2}"
    r"(?:row|round)(?:\s+of\s+\w+)?\s*,?\s+by\b(?=\s+\w+ing\b)",
    re.IGNORECASE,
)
"""Words that announce what follows: "then decrease for the toe as follows:", "knit a row of holes,
by making one and ...".
"""
ON_THESE = re.compile(
    r"^\W*(?:(?:then|and|now|next)\s+)*(?:work(?:ing)?\s+)?(?:on|over|with)\s+(?:only\s+)?"
    r"(?:these|those|(?:the\s+)?(?:remaining|rem|last))\s+(?:last\s+|remaining\s+)?(?:\d+(?:\s*[(\[][\d,:;\s]+[)\]])?|[a-z]+)"
    r"(?:\s+(?:sts|stitches)|(?<=\d)(?=\s*,?\s+(?:work|knit|purl|rib|cont)))"
    r"(?:\s+(?:only|alone|now))*(?:\s+(?:for|as)\b[^,.;:]{0,24})?"
    r"(?=\s*(?:[,:;]|$|and\s+(?:commenc|beg|start)|(?:work|knit|purl|rib|cont)))"
    r"|^\W*(?:(?:then|and|now|next)\s+)*(?:on|over|with)\s+the\s+\d+\s+(?:[a-z]+\s+)?(?:sts|stitches)"
    r"(?:\s+(?:only|alone))?,?(?=\s+(?:work|knit|purl|rib|cont|make)\b)"
    r"|(?<=work\s)(?:only\s+)?(?:these|those)\s+\d+\s+(?:sts|stitches)(?=\s+in\s)"
    r"|^\W*(?:(?:then|and|now|next)\s+)*(?:on|over|with)\s+(?:this|that|the\s+whole|the\s+full)\s+"
    r"(?:length|width|number)(?=\s+(?:work|knit|purl|rib|cont))",
    re.IGNORECASE,
)
"""Words that only say which stitches are worked on."""
COMMENCING = re.compile(
    r"^\W*(?:and\s+)?(?:commenc\w*|begin\w*|start\w*|beg)\s+with\s+(?:an?\s+)?\w+(?:\s+\w+)?\s+row\s*,?"
    r"(?=\s+(?:work|cont|knit|purl|rib)\w*\b)",
    re.IGNORECASE,
)
"""With which row the work goes on."""
ALONE = re.compile(r"\W*(?:k|p|knit|purl|pearl|plain)\W*$", re.IGNORECASE)
"""One stitch that is a whole row."""


def without_heading(words: str) -> str:
    """The words with a heading that is run in with them, and what only announces the words behind
    it, turned to spaces.
    """
    found = HEADING.match(words)
    words = " " * found.end() + words[found.end() :] if found else words
    for told in (AS_FOLLOWS, ON_THESE, COMMENCING):
        words = told.sub(lambda said: " " * len(said.group()), words)
    return words


def _names_needle(words: str, upto: int) -> bool:
    """Whether the words up to a place end with a needle as a heading; only where its name is the
    last of them is it looked for.
    """
    last = words[max(0, upto - 12) : upto].lower()
    return "needle" in last and NEEDLE_NAMED.search(words[:upto]) is not None


PACED = re.compile(
    r"[,;]\s+(?:and\s+)?(?:then|now)\s+(?=(?:dec|inc|narrow|widen)\w*\.?\s[^.;:,]{0,50}?\b(?:every|each)\b"
    r"[^.;:,]{0,40}?\b(?:rows?|rnds?|rounds?)\b[^.;:]{0,20}?\b(?:follows|thus|way|manner)\s*[:.—-])",
    re.IGNORECASE,
)
"""Before "then dec every other round as follows:", what is worked first."""
THIS_AGAIN = re.compile(
    r"\brepeat\s+this\s+(?:\d+|two|three|four|five|six|seven|eight)\s+times\b", re.IGNORECASE
)
"""In a row with a number, stitches that are worked again, and not the row."""
_ON = r"(?:\s+(?:on|of|in|at)(?:\s+[a-z]+){1,3}?)?"
_STS = rf"(?:\d+|{SPELLED})\s*(?:sts?|stitch(?:es)?|loops?)?"
LEAVES_LAST = re.compile(
    rf"\b(?:(?:to|till|but|within|except)\s+(?:the\s+)?(?:last|final)\s+(?:{_STS}|st|stitch){_ON}"
    rf"|{_STS}\s+(?:before|from|of)\s+(?:the\s+)?(?:end|eor|bor|(?:bor\s+|next\s+)?m(?:arker)?){_ON}"
    rf"|(?:k|p|knit|purl|work|across)\s+(?:until|till)\s+{_STS}\s+(?:rem|remain|are\s+left|left)"
    rf"{_ON})\s*\.\s*$",
    re.IGNORECASE,
)
STITCHES_BEHIND = re.compile(
    r"(?:knit|purl|k|p)\s?(?:\d+\s*(?:tog|sts|stitches|[.,;)(\[=—-]|$)|these\b|the last\b"
    r"|the remaining\b)|\s*(?:dec|inc)\b[^.;]{0,12}(?:[.,;]|$)",
    re.IGNORECASE,
)


SIZES_LAST = re.compile(r"\b[kp]\s*\d+\s*\(\d[\d\s,:-]*\)\s*$", re.IGNORECASE)
"""Before a star, stitches with their numbers for other sizes: "K 13 (15-17) * P 2, K 10"."""


def _leaves_them(words: str, cut: int) -> bool:
    """Whether the sentence before a cut stops before the row's last stitches, and what is behind it
    works these; or the cut is amid a list.
    """
    if words[cut : cut + 1] == "*" and SIZES_LAST.search(words, max(0, cut - 50), cut):
        return True
    leaves = LEAVES_LAST.search(words, max(0, cut - 50), cut)
    return leaves is not None and STITCHES_BEHIND.match(words, cut) is not None


def sentences_of(text: str, row: WrittenRow) -> list[WrittenRow]:
    """The row cut at sentences that begin a new instruction; only the first keeps the label."""
    words = text[row.start : row.end]
    inner = [found.span() for found in IN_BRACKETS.finditer(words)]
    cuts = [
        found.end()
        for found in NEXT_SENTENCE.finditer(words)
        if not _names_needle(words, found.start())
    ]
    if row.mark is None:
        for behind in (NEXT_LIST, TO_ITS_END):
            cuts = sorted({*cuts, *(found.end() for found in behind.finditer(words))})
    if row.mark is not None and row.mark.numbers:
        inside = [found.span() for found in THIS_AGAIN.finditer(words)]
        cuts = [cut for cut in cuts if not any(a <= cut <= b + 4 for a, b in inside)]
    if row.mark is not None and row.mark.times > 1 and not row.mark.numbers:
        # "Next 10 rounds plain. For thumb, ...": only the first sentence is worked ten times.
        own = FULL_STOP.search(words)
        cuts = sorted({*cuts, own.end()}) if own and own.end() < len(words) else cuts
    mark, running = _told_apart(row.mark, _runs_on(words), cuts[0] if cuts else len(words))
    cuts = [cut for cut in sorted({*cuts, *running}) if not any(a < cut < b for a, b in inner)]
    turns = [found.end() for found in TURNED.finditer(words)]
    held = bool(turns) and HELD.search(words, 0, turns[0]) is not None
    if turns and (held or (row.mark is None and len(TURN.findall(words)) > 1)):
        cuts = sorted({*cuts, *turns})
    cuts = sorted({*(cut for cut in cuts if not _leaves_them(words, cut)), *_changes_told(words)})
    begun = cast_on_in(words) if row.mark is None else None
    if begun is not None and begun.goes_on:
        cuts = sorted({begun.end, *(cut for cut in cuts if cut > begun.end)})
    out: list[WrittenRow] = []
    at = 0
    for cut in [*cuts, len(words)]:
        piece = words[at:cut]
        cast = begun is not None and cut == begun.end
        works = ACTION.search(piece) or ALONE.match(piece) or only_says_which(piece)
        if cut < len(words) and not cast and not works:
            continue
        if piece.strip():
            out.append(WrittenRow(mark if not out else None, row.start + at, row.start + cut))
        at = cut
    return out or [row]


def _changes_told(words: str) -> list[int]:
    """Where a second change begins, and one that is told as a row at a pace."""
    out = [found.end() for found in PACED.finditer(words)]
    for found in SAME_TIME.finditer(words):
        rule = find_rule(words[found.start() :], False)
        if (rule is not None and rule.kind == "grow") or OFF_TOO.match(words, found.end()):
            out.append(found.start())
    return out


def _told_apart(mark: Mark | None, cuts: list[int], first: int) -> tuple[Mark | None, list[int]]:
    """The label, and where its rows are parted: behind a label only where it stands for as many,
    "Next 3 rows: P 1 row, K 1 row, P 1 row"; behind its first sentence (up to `first`) anywhere.
    """
    if mark is None:
        return mark, cuts
    own = [cut for cut in cuts if cut < first]
    if mark.times > 1 and len(own) + 1 == mark.times:
        return replace(mark, times=1), cuts
    return mark, [cut for cut in cuts if cut > first]
