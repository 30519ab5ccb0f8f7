"""The text, length kept, with a row that is every row from here on, however that is said, put as
"rep last row until 20 sts": "This is every row till twenty are counted", "Every row so, until but
4 are left", "Keep at it till there are 46". Such a sentence is known by all its words.
"""

from __future__ import annotations

import re

from reader.terms.numbers import ORDINALS, SPELLED, word_number
from reader.text.fitting import fitted
from reader.text.sought import Sought, has_any

_NTH = rf"(?:\d{{1,3}}(?:st|nd|rd|th)|{'|'.join(ORDINALS)})"
_ROW = r"(?:row|round|rnd)"
_WORDS = (
    "this|that|it|same|so|thus|alike|likewise|like|every|each|all|both ways|way|manner|over|again"
    "|one|similarly|that's|it's|keep|keeping|carry|go|stay|continue|cont|repeat|repeating|repeated"
    "|rep|do|done|doing|work|worked|working|knitted|making|make|rows?|rounds?|rnds?|and|then|now"
    "|just|simply|you|we|i|from here|after|ok|okay|the|is|are|be|in|on|for|also|too|only|thing|to"
    "|what|exactly|still|with|next|last|as|before|your|once more|time|must|will|should|whole|single"
    "|entire|always|stop|anything|else|at|of"
)
_UNTIL = r"(?:until|till|til|'til)"
KEPT = Sought(
    ("til",),
    rf"(?P<at>(?:^|(?<=[.!?:;)\n])|(?P<comma>,))[ ]*)(?P<said>(?:(?:from (?:the )?{_NTH}"
    rf"|{_WORDS})(?:,?[ ]+))+)"
    rf"{_UNTIL}(?P<goal>(?:[ ](?:there(?:'s|'re| is| are)?|you(?:'ve|'re| are| have)?|we|i|have"
    rf"|got|get|come|comes"
    r"|reach|at|is|are|only|but|just|down|back|up|to|no|not|more|than|it|its|it's|has|counts?|can"
    r"|be|these|a|total|of"
    r"|remain|exactly|all|on|the|needle|again))*"
    rf"[ ](?P<n>\d{{1,4}}|(?:{SPELLED})\b)(?P<sts>[ ](?:sts?|stitches|loops)\b)?"
    r"(?:[ ](?:again|are|is|all|that|on|the|your|needles?|pins?|left|hook|in|row|counted|have|been"
    r"|has"
    r"|reached|there|remain|remains|rem|still|total|altogether|show))*"
    r"(?=[ ]?(?:[.;,:!\n)—-]|$)(?![ ]?[,/:-][ ]?\d)))?(?![\w])",
    re.IGNORECASE | re.MULTILINE,
)
SUCH = frozenset(
    ["this", "that", "it", "same", "so", "thus", "alike", "likewise", "like", "similarly",
     "that's", "it's", "again"]
)  # fmt: skip
ALL = frozenset(["every", "each", "all"])
GOING = re.compile(
    r"\b(?:over and over|again and again|keep(?:ing)? repeating|time after time"
    r"|(?:keep|keeping|carry|go|stay)(?: on)? (?:at it|like (?:this|that)"
    r"|(?:doing|working|repeating|making)(?: just)? (?:this|that|it|the same)))\b"
    r"|^(?:(?:and|then|just|simply|only) )*(?:this|that)$"
)
ROW = re.compile(rf"\b(?:row|rnd|round)\b|\ball (?:the )?(?:{_ROW}s)\b")
AS_READ = re.compile(rf"(?:rep|repeat)\.? (?:this|the last|last|that) {_ROW}$")


_MANY = rf"(?:\d{{1,3}}(?:\s?[(\[][\d ,:;/-]+[)\]])?|(?:{SPELLED})\b)"
_TOLD = (
    rf"(?:(?:{_WORDS}|more|another|further|additional|following|such|of (?:these|those|them)|a"
    rf"|times?"
    r"|altogether|total|in all|identical(?:ly)?|ditto|up)\b)"
)
MORE = frozenset(["more", "another", "further", "additional", "again", "next", "following"])
ALL_OF_THEM = ("in all", "altogether", "total")
SO_MANY = re.compile(
    rf"(?P<at>(?:^|(?<=[.!?;)\n]))[ ]*)(?P<said>(?:(?P<n>{_MANY})(?!.?\d)|{_TOLD})(?:,?[ ]+(?:"
    rf"(?P<n2>(?<!last )(?:(?<!rows )(?<!row )(?<!rnd )(?<!round )(?<!rounds )|(?={_MANY} (?:more"
    rf"|times))){_MANY})(?!.?\d)"
    rf"|{_TOLD}))*)(?P<sum>,? (?:so|making|giving|that's"
    rf"|for) {_MANY} (?:{_ROW}s)\b[^.;\n]{{0,16}})?"
    r"(?=[ ]*(?:[.;!\n]|$))",
    re.IGNORECASE | re.MULTILINE,
)  # fmt: skip
""" "And 7 more the same": so many rows as the last."""
NUMBER = re.compile(rf"(?<![\w-])(?!one\b){_MANY}")
TIMES = frozenset(["row", "rows", "round", "rounds", "rnd", "rnds", "times", "time", "more"])
IN_WAY = re.compile(r"\b(?:way|manner|last \w+ (?:rows|rounds|rnds))\b")


def row_kept(text: str) -> str:
    """The text so put; any text goes in."""
    text = KEPT.sub(_kept, text)
    return SO_MANY.sub(_so_many, text) if has_any(text, (*MORE, *ALL_OF_THEM)) else text


def _so_many(found: re.Match[str]) -> str:
    """How often the last row is worked again, told by a sentence of such words alone."""
    said = " ".join(found["said"].lower().replace(",", "").split())
    numbers = NUMBER.findall(said)
    said = said.split(" so ")[0] if len(numbers) > 1 else said
    words = set(said.split(" "))
    number = numbers[0] if len(NUMBER.findall(said)) == 1 else None
    whole = found.group()
    if number is None or not words & TIMES or IN_WAY.search(said):
        return whole
    again = words & SUCH or words & {"ditto", "identical", "such"} or "of these" in said
    in_all = re.search(r"\b(?:in all|altogether|in total|total)\b", said)
    if not again or not (words & MORE or in_all):
        return whole
    row = "rnd" if re.search(r"\b(?:rnd|round)", said) else "row"
    at = found["at"]
    rep = f"{at}{'rep' if at[:1] == ' ' else 'Rep'}"
    alone = re.fullmatch(r"\d+|[A-Za-z-]+", number)
    value = (int(number) if number.isdigit() else word_number(number)) if alone else None
    if in_all and not words & {"more"}:
        less = f"{rep} this {value - 1}x" if value else whole
        ways = (f"{rep} last {row} {value or number} times in all", less)
    else:
        ways = (f"{rep} last {row} {value or number} times", f"{rep} this {value or number}x")
    return fitted(next((one for one in ways if len(one) <= len(whole)), whole), whole)


def _kept(found: re.Match[str]) -> str:
    said = " ".join(found["said"].lower().replace(",", "").split())
    words = set(said.split(" "))
    told = (ROW.search(said) and words & SUCH) or GOING.search(said)
    apart = found["comma"] and not words & ALL
    if not told or apart or (AS_READ.match(said) and not found["goal"]):
        return found.group()
    row = "row" if "row" in said or not re.search(r"rnd|round", said) else "rnd"
    at = found["at"].replace(",", ".")
    front = f"{at}{'Rep' if at[:1] != ' ' or '.' in at else 'rep'} last {row} until"
    if found["goal"] is None:
        return fitted(front, found.group())
    number = int(found["n"]) if found["n"].isdigit() else word_number(found["n"])
    ways = (f"{front} there are {number} sts", f"{front} {number} sts")
    whole = found.group()
    return fitted(next((one for one in ways if len(one) <= len(whole)), whole), whole)
