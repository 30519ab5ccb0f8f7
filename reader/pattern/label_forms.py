"""Labels as they stand only at a line's start: "Row 2)", "Rnd #3 =", "1. row (RS):", "4 row:",
"[Rnd 4]", "WS row 6:", "Rnds 5/6:", "Rdn 7:", "Border rnd 2:", "Panel row 3 (11 sts):",
"B, row 1:".
"""

from __future__ import annotations

import re

_WHAT = r"(?P<what>rounds?|rnds?|rds?|rows?|rdns?|rnfs?|rws?|rns?|R(?=[\s\d.#-]))"
"""The words for rows, and how they are mistyped."""
AMOUNT = (
    r"\d[\d/.½¼¾]*[ -]?(?:ozs?|ounces?|lbs?|pounds?|yds?|yards?|gms?|gr|grams?|ply|mm|cm"
    r"|inch(?:es)?)\b"
)
"""So much yarn, or so large: what no row begins with."""
_NUMBERS = r"(?P<nums>\d{1,3}(?:\s*(?:-|—|to|through|thru|&|and|,|/|\+)\s*\d{1,3})*)"
_NO = r"(?:\.|-|\s*(?:#|no\.?|nr\.?|n°))?\s*"
_BRACKET = (
    r"(?P<side>(?:\s*[(\[](?:RS|WS|right side|wrong side|\d+ ?(?:sts?|stitches)\b)[^)\]]{0,20}"
    r"[)\]]|(?:,\s|\s-\s|\s)(?:RS|WS)\b)?)"
)
_OF_WHAT = (
    r"(?!(?:next|rep|repeat|work|working|as|like|on|in|from|for|of|after|before|until|end|ending"
    r"|with|last|first|then|and|to|the|this|each|every|knit|purl|join|see|begin|beginning|start"
    r"|starting|finish|finished|continue|cont|between|over|make|follow|following|same|turn|only"
    r"|at|end|by|through|do|all|slip|sew|fold|pin|photo|picture|note)\b)[A-Za-z]{3,12}"
)
"""What a row is of, before its word: "Border rnd 2", "Chart row 5"."""
SHAPES = tuple(
    re.compile(shape, re.IGNORECASE)
    for shape in (
        rf"{_WHAT}{_NO}{_NUMBERS}{_BRACKET}\s*(?P<end>[)\]>|=~→:;—]|-+>?)(?=\s)",
        rf"{_WHAT}(?:#|-|\s*no\.?|\s*nr\.?|\s#)\s*{_NUMBERS}{_BRACKET}\s*(?P<end>[.,])(?=\s)",
        rf"[(\[]{_WHAT}{_NO}{_NUMBERS}(?P<side>)(?P<end>[)\]])(?=\s*[A-Za-z\d*(\[])",
        r"(?P<nums>\d{1,3})\.\s?(?P<what>rows?|rounds?|rnds?|rds?)\b"
        rf"(?:\s+(?:and|to|-)\s+\d{{1,3}}\.)?{_BRACKET}\s*(?P<end>[:.—-])",
        rf"{_NUMBERS}\s(?P<what>row|round|rnd|rd)(?P<side>)\s?(?P<end>[:.)]|[-—=]+)(?=\s)",
        rf"{_OF_WHAT}\s(?P<what>rounds?|rnds?|rds?|rows?)\s?{_NUMBERS}{_BRACKET}"
        r"\s?(?P<end>[:.)—]|-+)(?=\s)",
        rf"\(?(?-i:[A-Z]{{1,2}}\d?|MC|CC\d?)\)?,?\s+(?P<what>rounds?|rnds?|rows?)\s?{_NUMBERS}"
        rf"{_BRACKET}\s?(?P<end>[:.)]|-+)(?=\s)",
        rf"{_WHAT}{_NO}(?P<nums>\d{{1,3}},? (?:and|then) (?:every|each|all)(?: the)?"
        r"(?: following| next)? (?:rows?|rnds?|rounds?)"
        r" (?:up )?(?:to|through|until|till)(?: (?:row|rnd|round))?"
        rf" \d{{1,3}}){_BRACKET}\s*(?P<end>:)(?=\s)",
        rf"(?P<side>RS|WS)\s+{_WHAT}\s*{_NUMBERS}\s*(?P<end>[:.—-])",
    )
)

_ORDINALS = r"(?P<nums>\d+(?:st|nd|rd|th)(?:\s+(?:and|&|to)\s+\d+(?:st|nd|rd|th))?)"
ORDINAL_BARE = re.compile(
    rf"{_ORDINALS}\s+(?P<what>rows?|rnds?|rounds?)"
    r"(?P<end>\s+)(?=[KkPp]\s?\d|[KkPp] |knit\b|purl\b|\*|\(|\[|sl\s?\d|slip\b|yo\b|ssk\b)",
)
"""At a line's start: "1st row   k3, yo"."""
ORDINAL_WIDE = re.compile(
    rf"(?<![^\n]){_ORDINALS}\s(?P<what>rows?|rnds?|rounds?)(?P<end>[ ]{{2,}}|[ ])(?:(?<=["
    rf" ]{{2}})(?=\S)"
    r"|(?=\d+ ?(?:ch|sc|dc|hdc|htr|tr|dtr|ss)\b|(?:miss|ss into|sl st|dc|sc|htr|hdc|tr) "
    r"|[Aa]s \d|[Aa]s (?:last|first|for)\b))",
    re.IGNORECASE,
)
"""The same in crochet leaflets, behind a line that ended a sentence: "2nd row  3 ch, miss first
tr"."""
ROW_BARE = re.compile(
    r"(?P<what>(?i:rows?|rnds?|rounds?))\s+(?P<nums>\d+(?:\s?(?:-|—|to|and|&)\s?\d+)?)(?P<end>\s+)"
    r"(?=(?:[KPkp]\s?\d|[KP][ ,.]|Knit|Purl|Pearl|Work|Sl(?:ip)?|Cast|Bind|\*|\(|\[|Yo\b|YO\b"
    r"|(?i:ch \d|[shd]?dc in\b|sc in\b|tr in\b)"
    r"|(?i:[kp] (?:to|all|across|every|each|f|in)\b|[kp]1?f ?&?b\b|ssk\b|skpo?\b|yo\b|sl \d|m1"
    r"|(?:inc|dec)\b)"
    r"|(?i:rep(?:eat)?|as|same as) (?i:row|rnd|round)s? ?\d)"
    r"(?!.{0,3}(?:[Rr]ows?|[Rr]ounds?)\b))"
)
"""At a line's start a label may go without any mark: "Row 1 Knit"."""
SPREAD = re.compile(
    r"[\[(]?(?P<what>(?i:(?P<many>rounds|rnds|rows|rds)|round|rnd|row|rd))\s?"
    r"(?P<nums>\d{1,3}\s(?:-|—)\s?\d{1,3})(?P<end>[\])]\s+(?=\S)"
    r"|\s+(?=(?i:ch(?:ain)?\s\d|work\b|rep|as\b|same\b|knit\b|purl\b|[kp]\d)|[*\[])"
    r"|(?(many)\s+(?=[A-Z(])|(?!)))"
)
"""At a line's start the dash of a range between spaces, which ends no label: "Rows 2 - 6 Ch 3"."""
NEXT_ALONE = re.compile(r"(?<![\w-])Next,(?=\s+[a-z*(\d])")
"""Behind a row: "Next, plain."."""
NEXT_COLON = re.compile(r"next:(?=\s)", re.IGNORECASE)
"""At a line's start the word alone heads the next row: "next: k1, k2tog"."""
CHANGING = re.compile(
    rf"(?:inc|dec|increase|decrease)\.?\s(?P<what>rounds?|rnds?|rds?|rows?)\s?{_NUMBERS}{_BRACKET}"
    r"\s?(?P<end>[:—])(?=\s)", re.IGNORECASE
)
"""Inside a paragraph too: "Decrease round 2: ..."."""
_LEAD = r"(?:(?:now|then|next|so|and|ok|okay|right),?\s+)*(?:in|for|on)\s+"
_DOES = (
    r"(?:(?:we|you)(?:'ll| will)?\s+(?!have|need|should|can|may|see|start with)"
    r"|(?:there's|there is)\s+no|(?:just |simply |only )*"
    r"(?:work|make|do|go|crochet|sc|dc|hdc|single|double|half|increase|inc|dec|decrease|knit|purl"
    r"|repeat|chain|ch|k|p|put|one|two|three|four|five|six|\d|narrow|widen|slip|sl|cast"
    r"|bind)\b|[kp]\s?\d)"
)
WORKS_ALL = re.compile(
    r"(?:knit|purl|plain|[kp])\s(?:row|round|rnd)\s*\.(?=\s|$)", re.IGNORECASE
)
"""Behind a label not another, but all that is worked: "Row 2: Purl row."."""
FIRST_FEW = re.compile(r"(?:first|1st) ", re.IGNORECASE)
""" "First 3 rows:" are rows 1 to 3."""


def led(numbers: str) -> re.Pattern[str]:
    """The label that a sentence begins with in running words, "In round three we go ...", "For
    rounds five and six just work ..."; numbers: how its numbers are written.
    """
    return re.compile(
        rf"{_LEAD}(?P<what>rounds?|rnds?|rows?)\s+(?P<nums>{numbers})(?P<end>,?)\s+(?={_DOES})",
        re.IGNORECASE,
    )


def led_first(ordinals: str) -> re.Pattern[str]:
    """The same with the number before the word, "On the third row narrow ..."."""
    return re.compile(
        rf"{_LEAD}the\s+(?P<nums>{ordinals})\s+(?P<what>rounds?|rnds?|rows?)(?P<end>,?)\s+"
        rf"(?={_DOES})",
        re.IGNORECASE,
    )


def so_many(word: str, rows: str, side: str) -> re.Pattern[str]:
    """The label of rows told by how many they are, "Four rounds: k2, p2"; word: a number in words,
    rows: what rows are called, side: what may stand behind.
    """
    return re.compile(
        rf"(?<![\w-])(?P<name>)(?P<times>\d{{1,2}}(?=\s+(?:rows|rounds|rnds|rds))|{word})\s+"
        rf"(?:more\s+)?(?P<what>{rows})(?P<side>{side})\s*(?P<loose>:)(?=\s)",
        re.IGNORECASE,
    )


def other_form(text: str, start: int) -> re.Match[str] | None:
    """The label of such a form that begins at `start` of a line, with groups what, nums, side; None
    where none does.
    """
    return next((found for shape in SHAPES if (found := shape.match(text, start))), None)


MARKED = re.compile(r"\d[)\]]?\s?(?:\([^)]{1,12}\))?[:.]")
SPEAKS_OF = re.compile(
    r"\b(?:rep|repeat|as|of|work|from|for|in|and|to|on|at|than|like|after|before|until|through|with"
    r"|last|see|or|this|that)\s*$|[-,&]\s*$",
    re.IGNORECASE,
)
"""Before a label, words that only speak of its row."""


def counts_on(
    last: tuple[int, ...], numbers: tuple[int, ...], end: str, before: str
) -> bool:
    """Whether a label that no stop parts from the words before it counts on from the last one, as
    rows run together in a copy do: "sc around Rnd 4: inc around".
    """
    if not last or not numbers or numbers[0] != last[0] + 1 or SPEAKS_OF.search(before):
        return False
    return end == ":" or (end == "." and last != (0,))


ROW_WORD = re.compile(
    r"[rR](?<!\w[rR])(?:(?i:ound|nd|d|ow)|\.?\s*(?:\d|(?i:one|two|three|four|five|six|seven|eight"
    r"|nine"
    r"|ten|eleven|twelve|twenty|thir|for|fif)))"
)
SPACED = 12
"""Characters behind a block that may part the words of its last label from their colon."""
AND_OTHERS = re.compile(r"[dthDTH]\s*,?\s*\(?(?:&|(?i:and)\b)")


def may_hold_label(text: str, start: int, end: int) -> bool:
    """Whether a label may begin in text[start:end]: each has a word for rows, or a mark, that is
    sooner looked for than all places where a label could begin.
    """
    words = text[start:end]
    if ":" in words or text[end : end + SPACED].lstrip()[:1] == ":":
        return True
    if ROW_WORD.search(words) or AND_OTHERS.search(words):
        return True
    low = words.lower()
    return "next," in low or "needle" in low
