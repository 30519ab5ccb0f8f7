"""Printed totals: "(24)", "- 24 sc", "= 24", "24 sts.", "you should have 20" -> Total, and the text
without them.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

from reader.terms.crafts import Terms
from reader.terms.forms import forms
from reader.terms.numbers import SPELLED
from reader.terms.stitches import Craft

_KIND = r"[A-Za-z][A-Za-z0-9 \-'.]*?"
_LIST = r"\d+(?:\s*[\(\[][\d,;:\s/\-]+[\)\]])?(?:\s*[,:]\s*\d+)*"
BRACKET = re.compile(
    r"[\(\[]\s*(?P<body>[^()\[\]]*(?:[\(\[][\d,;:\s\-]+[\)\]][^()\[\]]*)*)\s*[\)\]]"
)
_NAMED = {*forms(Craft.CROCHET, Terms.US), *forms(Craft.CROCHET, Terms.UK)}
_NAMES = {
    *_NAMED,
    *(f"{one} {st}" for one in _NAMED if one.endswith("crochet")
      for st in ("st", "sts", "stitch", "stitches")),
    "st", "sts", "stitch",
    "stitches", "loop", "loops", "lp", "lps", "mesh", "meshes",
    "group", "groups", "petal", "petals", "sp", "sps", "space", "spaces", "scallop", "scallops",
    "half double", "half doubles", "eyelets",
    "double", "treble", "single",
}  # fmt: skip
_STITCH = "|".join(
    (r"[\s.-]*" if name in ("sc", "dc", "hdc") else r"\s*").join(
        map(re.escape, name if name in ("sc", "dc", "hdc") else name.split())
    )
    + ("s?" if len(name) > 3 else "")
    # Sets have no order: names of one length stand by their letters, the same in every run.
    for name in sorted(_NAMES, key=lambda name: (len(name.replace(" ", "")), name), reverse=True)
)
_OPENINGS = r"(?:spaces?|sps?|loops?|lps?|arch(?:es)?)"
STITCH = rf"{_STITCH}|(?:corner\s+)?ch[- ]?\d+[- ]?(?:corner\s+)?{_OPENINGS}"
"""Whatever a printed total may count, as a pattern."""
TOLD = (
    r"(?:stitch )?(?:count|total)(?: of| is)?[ ]?[:=]?|(?:you|we)(?:'ll|'ve| will| should| must)?"
    r" (?:now )?(?:have|end (?:up )?with|get)(?: got)?(?: a total of)?"
    r"|(?:there|this) (?:are|is|will be|should be|gives you|makes)|makes|=|now"
)
"""What may stand before the number of a total."""
WHOLE = re.compile(
    rf"^(?:{TOLD})?\s*(?P<n>\d+)(?P<more>(?:\s*[\(\[,;:][\d,;:\s\-]*[\)\]]?)*)\s*(?P<kind>{STITCH})?\.?("
    rf"?P<rest>.*)$",
    re.IGNORECASE,
)
_ROW = r"(?:row|rnd|round|rd)"
OF_SIZES = r"(?:\s*[\(\[][\d,;:/\s]+[\)\]])?"
"""Behind a number, those of the other sizes."""
TAIL = re.compile(
    rf"(?:^|(?<=[\s.,;:)\]*])|(?=—)|(?<=[a-z0-9])(?:(?==)"
    rf"|(?=:\s*\d+(?:\s*[\(\[][\d,;:\s]+[\)\]])?\s*(?:sts?|stitches)?[\s.]*$)))"
    rf"(?:(?:[-—=]+>?|-->|→|:|total(?: of)?:?)\s*(?P<a>\d+)(?P<alist>"
    rf"\s*[\(\[][\d,;:\s]+[\)\]]|(?:/\d+)+)?(?:\s*(?P<ak>{STITCH}))?|(?P<b>\d+)(?P<blist>\s*[\(\[][\d,;:\s]+["
    rf"\)\]]|(?:/\d+)+)?\s*(?P<bk>{STITCH}))(?:\b|(?<=[)\]]))(?P<rest>(?P<others>(?:\.?\s*(?:and|,|,\s*and|&|\+)\s*\d+{OF_SIZES}\s+"
    rf"(?:half )?(?:{_STITCH})\b(?!-))*)"
    rf"(?:\.?\s*(?:and|,|,\s*and|&|\+|/)\s*(?:\d+{OF_SIZES}\s*)?(?:corner\s*|cnr\s*)?"
    rf"(?:ch-\d+s?\b(?!\s*\w)|(?:ch[- ]?\d*\s*)?(?:corner\s*)?"
    rf"(?:sps?|spaces?|loops?|lps?|corners?|arches|picots?|sl sts?|ss)\b))*(?:\s*(?:on needles?"
    rf"|rem(?:ain(?:ing)?)?|left|in all|total|(?:at (?:the )?end of|after|in|on) (?:{_ROW} \d+|"
    rf"(?:(?:this|the) )?{_ROW})|on each needle|made|formed|completed"
    rf"|on hook|now|around|,?\s*(?:counting|including)[^.]{{2,30}}))?)\s*[.)]*\s*$",
    re.IGNORECASE,
)
SPOKEN = re.compile(
    r"(?<!until )(?<!till )(?<!when )(?<!if )(?<!once )(?<!as )"
    r"(?:(?:so that |(?<!that ))(?:(?:you|we|i)(?:'ll|'ve)?|and|now|which|should|will)"
    r" (?:should |will |must |'ll |now |again |then |still |find (?:that )?you )*"
    r"(?:ought (?:now )?to )?(?:have(?: got)?|got|get|be (?:up |down |back )*(?:at|to)"
    r"|finish (?:up )?with|(?:are |be )?left with)(?: a total of| now)?|that gives you"
    r"|(?:bringing|brings|taking) (?:you|us|it|the (?:stitch )?(?:count|total))"
    r" (?:up |down |back )*to|resulting in|equals|equalling|totall?ing|(?:stitch )?count:"
    r"|which gives you|which gives|which makes"
    r"|(?:you're|we're|you are|we are|now|back) (?:up |down )?(?:at|on|to)"
    r"|(?:(?:you're|we're|you are|we are) )?(?:aiming for|looking for)|aim for"
    r"|(?:you're|we're|you are|we are) after|(?:you|we) want"
    r"|(?:that|this|which|it) (?:should |will |'ll )?(?:leaves?|takes|brings|gets|puts)"
    r" (?:you|us|me|things) (?:up |down |back )*(?:with|at|to|on)"
    r"|(?:you|we)(?:'ll| will| should)? end (?:up |this round )?(?:with|at|on)"
    r"|(?:that|this|it) (?:comes|works out|adds up) (?:out )?(?:at|to)"
    r"|(?:(?:the|your) )?(?:stitch )?(?:count|total) (?:is|comes to|stands at|will be)(?: now)?"
    r"|(?:this|the|your) (?:round|rnd|row) (?:now |will |should )*"
    r"(?:makes?|gives?|has|have|totals?)"
    r"|(?:that|this|which|it)(?:(?:'s| is)(?: now)?| makes| leaves| will leave| gives(?: you)?)"
    r"|giving you|giving us|giving|making|for a total of|we are back to|we're at"
    r"|there (?:are|is|should(?: now)? be|will(?: now)? be|must(?: now)? be|ought to be)(?: now)?"
    r"|still|back to|up to|total of|leaving(?: you with)?"
    r"|having(?: now)?|should be|(?<!\b\w\wc )(?<!\bsc )(?<!\bdc )(?<!\btr )"
    r"in all(?=,? \S+ (?:sts|stitches|loops)\b),?)"
    rf"\s+(?:in all )?(?P<n>\d+|{SPELLED})(?P<more>\s*[\(\[][\d,;:"
    r"\s]+[\)\]])?\s*(?P<kind>stitches|sts|single crochets?|double crochets?"
    r"|half[- ]doubles?|half[- ]trebles?|hdc|h d c|htr|dtr|tr|sc|dc|singles|doubles|trebles"
    r"|d c|s c|v[- ]?st(?:itche)?s|v sts|shells|fans|groups|loops|spaces)?"
    r"(?:\s+(?:with|plus|and) [^.:;!\d]{3,50}(?=[.!]|$))?"
    r"(?:\s*\((?:including|counting|not counting|with)\b[^()]{2,60}\))?(?:\s+"
    r"(?:in all|in total|now|total|altogether|remaining|left|rem|on (?:the |your |each )?"
    r"(?:needles?|pins?|wires?|work|hook)|on needle"
    r"|as (?:at|in) (?:the )?(?:first|beginning|commencement)|so far|to work with|made|worked"
    r"|(?:at|by|after) (?:the )?end(?: of (?:(?:the|this|your|each) )?(?:row|round|rnd))?"
    r"|at this point|when (?:you are |you're )?(?:done|finished)"
    r"|in\s+(?:the\s+|a\s+)?(?:cent(?:er|re)\s+)?(?:circle|ring|round|rnd|row)"
    r"|all (?:a)?round|around))*\s*(?=:?(?:[.!;)]|,(?!\s*(?:\d+ ?)?ch\b))|$)",
    re.IGNORECASE,
)

SO_MANY_LEFT = re.compile(
    rf"(?:^\W*|(?<=[.,;:!—-] )|(?<=\band ))(?P<n>\d+|{SPELLED})(?P<more>\s*[\(\[][\d,;:\s]+[\)\]])?"
    r"(?: (?P<kind>stitches|sts|sc|dc))? (?:are |is )?"
    r"(?:left|now|in total|altogether|in all)\b(?=\s*(?:[.,;!)]|$|and\b))"
    rf"|(?<=[.!] )(?P<word>{SPELLED}) (?:stitches|sts)(?=\s*(?:[.!]|$))",
    re.IGNORECASE,
)
"""A total that begins its clause: "decrease eight times, 8 left"."""
COMES_OUT = re.compile(
    r"(?:[,;:.(—]|-(?=\s))\s*(?:(?:and|so|thus|now|then) )*(?:(?:(?:to )?"
    r"(?:end|finish)(?:s|ing)?(?: up)?) with|to (?:make|give|get|have|leave)|makes?|gives?|leaves?"
    r"|for|so(?: that)?|thus|altogether|in all|total)"
    rf" (?P<n>(?:[5-9]|\d{{2,4}})(?![\d-])|{SPELLED})"
    r"(?P<more>\s*[\(\[][\d,;:\s]+[\)\]])?\s*(?P<kind>stitches|sts)"
    r"(?:\s+(?:in all|in total|now|total|altogether|remaining|left|rem|around|at (?:the )?end"
    r"(?: of (?:(?:the|this) )?(?:row|round|rnd))?|in (?:the |this )?(?:row|round|rnd|circle)"
    r"|on (?:the )?needles?))*\s*(?=[.!;)]|$)",
    re.IGNORECASE,
)
"""What a row comes to, behind words that alone may be work: ", ending with 24 sts"."""
STITCHES = ("", "sts", "stitches", "st")
PLAIN_KINDS = (
    "sc", "s c", "dc", "d c", "hdc", "tr", "htr", "tr c", "singles", "doubles", "trebles",
)  # fmt: skip
"""Kinds of stitches of which a total may be the row's."""


@dataclass(frozen=True, slots=True)
class Printed:
    """A printed total in clean text: numbers by size, what is counted, and whether it is a change
    or per section. mixed: stitches are counted beside it, "6 shells, 6 sc".
    """

    start: int
    end: int
    numbers: tuple[int, ...]
    kind: str = ""
    change: int = 0
    sides: int = 1
    each: bool = False
    mixed: bool = False


IN_ALL = re.compile(r"^(?:in all|in total|altogether|all told)\b[ ,]*")
"""Behind a total, that nothing is left out of it."""
OF_EACH = ("on each", "each side", "in each", "each", "per", "between", "at each")
IN_EACH_NEXT = re.compile(
    r"^(?:in|on|into) each (?:of )?(?:the )?(?:next|following|foll|first|last|rem\w*|other|of)\b"
)
"""Behind a stitch, the places of a list: "(1 dc in each of next 20 sts, ch 3, sk 5) around"."""
SECTIONS = re.compile(
    r"^(?:sections?|groups?|repeats?|points?|petals?|corners?|spokes?|mesh(?:es)?|motifs?|scallops?"
    r"|loops?|blocks?|clusters?)\b"
)
"""Behind a stitch's name, these are what is counted: "(6 dc sections)"."""


FOR_ROWS = re.compile(
    r"^(?:for|over|in) (?:these |the |all )?\d+ (?:rows|rounds|rnds)$"
    r"|^(?:still|again|(?:on |in |for )?(?:every|each|all) (?:time|rounds?|rows?|rnds?)|as before"
    r"|at the end)\b[^\d]*$"
)
"""Behind a total, for how many rows it stands: "(34 sc for 17 rows)", "(28 every time)"."""


IN_THIS_ROW = re.compile(
    r"^(?:in total )?(?:in|on|(?:at|by) (?:the )?end of|for|after)"
    r" (?:(?:this|the|your|that|each) )?"
    r"(?:rounds?|rnds?|rows?|rds?|reps?|repeats?)(?: and [^\d]*)?\.?$"
)
"""Behind a total, where it stands: "(you will have 10 hdc in this round)"."""
AND_FIRST_CHAIN = re.compile(
    r"(?:\+|and|plus) ?(?:the )?(?:[2-5][ -]?ch(?:ain)?s?|ch[ -]?[2-5])\.?"
)
"""Behind the stitches, the chain that stands for one more: "(15 tr + 3 ch)"."""


def _numbers(first: str, more: str) -> tuple[int, ...]:
    return tuple(int(n[:6]) for n in re.findall(r"\d+", first + " " + (more or "")))


CHANGE = re.compile(
    r"^(\d+)\s*(?:sts?|stitches|sc|dc|hdc)?\s*(inc(?![hl])|dec)\w*['’]?d?\b.{0,20}$|^(inc(?![hl])"
    r"|dec)\w*\s+(?:by\s+|of\s+)?(\d+)\s*(?:sts?|stitches)?"
    r"(?:\s+(?:at|in|on|each|per|every|made)\b.{0,30})?$",
    re.IGNORECASE,
)


SIGNED = re.compile(r"([+-]) ?(\d{1,3}) ?(?:sts?|stitches|[shd]{1,2}c)$", re.IGNORECASE)


def _change(text: str, start: int, end: int) -> Printed | None:
    """How many stitches more or fewer a bracket tells of: "4 inc", "dec 2 sts", "+6 sts"."""
    signed = SIGNED.match(text)
    if signed is not None:
        return Printed(start, end, (int(signed[2]),), change=1 if signed[1] == "+" else -1)
    change = CHANGE.match(text)
    if change is None:
        return None
    number = int(change.group(1) or change.group(4))
    sign = 1 if (change.group(2) or change.group(3)).lower() == "inc" else -1
    sides = 2 if re.search(r"\b(?:each|both) (?:end|side)", text, re.IGNORECASE) else 1
    return Printed(start, end, (number * sides,), change=sign)


NET_OVER = re.compile(
    r"\b(?:across|around|end|turning ch|tch|of ch(?:[- ]\d+)?)\.\s+"
    r"\d+ (?:bls?|sps?|blocks?|spaces?)\W*$",
    re.IGNORECASE,
)
"""A row of a net that is over, and its total."""
ONE_SQUARE = re.compile(r"\s*1\s+(?:bl|block|sp|space|mesh)(?:\s+made)?\s*", re.IGNORECASE)
"""Behind the stitches that it is made of; no row of a net has but one."""
FEW = 4
GOES_ON = re.compile(
    r"\s*[,;] (?!(?:and |then )*(?:turn|join|ch \d|fasten|do not|sl st|rep))(?=[a-z\d*(])",
    re.IGNORECASE,
)


def of_those_before(one: Printed, after: str) -> bool:
    """Whether a change of few stitches is that of the instruction before it, and the row goes on:
    "sc2tog (1 sc decreased), sc in each sc".
    """
    return one.change != 0 and max(one.numbers) < FEW and GOES_ON.match(after) is not None


def bracket_total(body: str, start: int, end: int) -> Printed | None:
    """The total that a bracket's words state, None when they state none."""
    text = " ".join(body.split()).strip(".")
    if text.isdecimal():
        return Printed(start, end, (int(text[:6]),))
    change = _change(text, start, end)
    if change is not None:
        return change
    found = WHOLE.match(text)
    if not found:
        return None
    rest = (found.group("rest") or "").strip().lower()
    rest = IN_THIS_ROW.sub("", FOR_ROWS.sub("", IN_ALL.sub("", rest)))
    kind = re.sub(r"[\s.]+", " ", (found.group("kind") or "").lower()).strip()
    numbers = _numbers(found.group("n"), found.group("more"))
    if AND_FIRST_CHAIN.fullmatch(rest):
        # The chain that begins the round is a stitch, told apart.
        return Printed(start, end, tuple(one + 1 for one in numbers), kind)
    if IN_EACH_NEXT.match(rest):
        return None
    if rest.startswith(OF_EACH) or (kind and SECTIONS.match(rest)):
        return Printed(start, end, numbers, kind, each=True)
    if re.match(
        r"^(rnds?|rounds?|rows?|times|more|inches|in\b|cm|yds?|yards|mm|inch|\"|%|for|over"
        r"|ch\b(?!-)|k\b|p\b|unworked|left|k\d|p\d)",
        rest,
    ):
        return None
    if rest and not kind and not re.match(r"^(?:[,;:&+]|and|ch-|corner|sps?|\+)", rest):
        return None
    if (
        kind
        and re.match(r"^(?:in|into|over|on|around|between|from)\b", rest)
        and not re.match(r"^(?:in all|in total|around|on (?:the )?(?:needles?|hook))\b", rest)
    ):
        return None
    return Printed(start, end, numbers, kind)
