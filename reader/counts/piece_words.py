"""The words in which a piece, or some rows of it, is told by another: "work same as back to
armhole", "make the first 4 rows of the body", "rows 1-4: same as rows 1-4 of body".
"""

from __future__ import annotations

import re
from dataclasses import dataclass

from reader.terms.numbers import SPELLED
from reader.text.sought import Sought

_SAME = (
    r"(?:(?:the\s+)?(?:directions|instructions)|(?:exactly |just |the )*same as"
    r"|(?:exactly |just )?(?:as|like)(?: (?:given|directed|described|instructed|set|told))?"
    r"|to match|to correspond (?:to|with)|(?:given|described|set out)(?=\s+(?:for|on|in)\s))"
)
_ROWS = r"(?:rows?|rounds?|rnds?)"
_WHICH = (
    rf"(?:the\s+)?(?:(?:first|1st)\s+(?P<first>\d+|{SPELLED})\s+{_ROWS}"
    rf"|{_ROWS}\s+(?P<a>\d+)(?:\s*(?:-|—|to|through|and|&)\s*(?P<b>\d+))?)"
)
_BY_ORDINALS = (
    r"(?:the\s+)?(?P<nth1>\d+)(?:st|nd|rd|th)(?:\s*(?:-|—|to|through|and|&)\s*(?P<nth2>\d+)"
    rf"(?:st|nd|rd|th))?\s+{_ROWS}"
)
_YARN = r"(?:(?:with|using)\s+(?:(?!ch\b)[A-Za-z.'-]+\s+){0,3}?(?!ch\b)[A-Za-z.'-]+,?\s+)?"
"""In which yarn, told before the verb: "With white work 1st row same as first motif"."""
_MANY = rf"(?:(?:the|these|those)\s+)?(?:(?:\d+|{SPELLED})\s+(?=[a-z]+\s+{_ROWS}\s))?"
"""How many rows a shaping has, which its name tells too: "the 2 raglan rows"."""
_OF_SAME = (
    "direct", "instruct", "as", "like", "match", "correspond", "given", "describ", "set out",
)  # fmt: skip
QUOTES = Sought(
    _OF_SAME,
    r"(?:(?<=[.;:,])\s+|(?<=\band)\s+(?=complete|finish|work\s+(?:rows?\b|rounds?\b|rnds?\b"
    r"|same\b|as\b|exactly|just|the\b)|repeat\s+(?:rows?\b|rounds?\b|rnds?\b)|follow)|^\W*)"
    rf"{_YARN}(?:(?:then|now)\s+)?(?:cast\s+on\s+and\s+)?(?:work|make|made|worked|shape"
    r"|continue|complete|knit|proceed|follow"
    rf"|finish|crochet|repeat|(?P<way>dec|inc)(?:rease)?s?\.?(?=\s))(?:\b|(?<=\.))\s*(?:(?:{_WHICH}|{_BY_ORDINALS})\s+)?"
    rf"{_MANY}(?P<what>(?:[a-z]+\s+){{0,4}}?)"
    rf"{_SAME}\s+(?:for\s+|on\s+|in\s+)?(?:the\s+)?(?:(?:1st|first)\s+)?"
    r"(?:(?:center|centre|top|middle|body|first part)\s+of\s+(?:the\s+)?)?"
    r"(?P<piece>[A-Za-z]+(?:\s+[a-z]+){0,2}?)"
    r"(?:,?\s+(?:until|till|to)\s+(?:(?:there\s+are|you\s+have)\s+)?(?P<left>\d+)"
    r"(?P<lefts>\s*[(\[][\d,;:\s]+[)\]])?\s+(?:sts|stitches)\b"
    r"(?:\s+(?:rem\w*|are\s+left|left|on\s+(?:the\s+)?needle))?"
    r"|,?\s+(?:until|till)\s+(?:the\s+)?(?P<told>\d+)\s+rows(?:\s+(?:of|in)\s+[\w ]{2,20}?)?\s+"
    r"(?:have\s+been|has\s+been|are|were)\s+(?:worked|completed|done|complete)"
    r"|,?\s+(?:until|till|for|to\s+where)\s+(?:(?:the\s+|your\s+)?(?P<deep>\w+)\s+measures?\s+)?(?P<far>\d+)"
    r"[^.;,]{0,4}\s*(?:\([^()]*\)\s*)?(?:inch(?:es)?|ins?\b|cm|\")[^.;,]*)?"
    r"(?:,?\s+(?:up\s+)?(?:to|through|thru|until|till|as far as|ending (?:with|after))\s+"
    r"(?:and including\s+)?(?:the\s+)?(?:end\s+of\s+)?(?:the\s+)?"
    r"(?:(?:row|rnd|round)\s+(?P<upto>\d+)|(?P<nth>\d+)(?:st|nd|rd|th)\s+(?:row|rnd|round))"
    r"|,?\s+(?:from\s+(?:the\s+)?(?P<from>[a-z]+)\s+)?(?:up\s+)?"
    r"(?:to|until|till|as far as|(?P<incl>through|to and including|including))\s+"
    r"(?P<fin>(?:the\s+)?(?:end|completion)\s+of\s+)?(?:all\s+)?"
    r"(?:the\s+)?(?:(?:first|1st|beginning of)\s+)?(?P<spot>[a-z]+|\*+)"
    r"(?:\s+(?P<shapes>shapings?|dec\w*))?"
    r"(?P<done>\s+(?:is|are|has been|have been)\s+(?:completed?|done|finished|worked))?"
    rf"|\s+for\s+(?:the\s+first\s+)?(?P<rows>\d+|{SPELLED})\s+(?:rows|rounds|rnds))?"
    r"(?=\s+(?:and|but|reversing|except|having)\b|\s*[,.;(\[=—]|\s+-\s|\s*$)",
    re.IGNORECASE,
)
_PIECE = r"(?:given\s+|described\s+)?(?:for\s+|on\s+|in\s+)?(?:the\s+)?"
STAR_TO_STAR = re.compile(r"\*\s*(?:to|-)\s*\*")
"""Without it nothing between stars is told; sooner found than all of STARRED."""
STARRED = re.compile(
    r"\b(?:work|repeat|rep|knit|follow|continue|cont|proceed)\b[^.;*]{0,24}?\s(?:"
    rf"(?:from\s+)?(?P<a>\*+)\s*(?:to|-)\s*(?P<b>\*+)\s+(?:(?:exactly\s+|just\s+|the\s+)*"
    rf"(?:same\s+)?(?:as|like|of|in|on|from)\s+){_PIECE}(?P<piece>[A-Za-z]+)"
    rf"|(?:as|like|of)\s+{_PIECE}(?P<other>[A-Za-z]+),?\s+(?:from\s+)?(?P<c>\*+)\s*(?:to|-)"
    r"\s*(?P<d>\*+))(?=\s*(?:[.;,]|$)|\s+(?:and|but|then|rev))",
    re.IGNORECASE,
)
"""What stands between stars in another piece, "work from ** to ** as for back"."""
OF_PIECE = re.compile(
    rf"(?P<verb>\b(?:work|make|knit|crochet|follow|repeat|rep)\s+)?(?P<same>{_SAME}\s+)?"
    rf"(?P<which>{_WHICH})\s+(?P<of>of|on|in|from|for)\s+(?:the\s+)?(?P<piece>[A-Za-z]+)\b"
    r"(?!\s+(?:row|rnd|round))",
    re.IGNORECASE,
)
"""Rows of another piece, "the first 4 rows of the body"."""
ROWS_SAID = re.compile(rf"(?<![a-z]){_ROWS}\s", re.IGNORECASE)


TOTAL_ONLY = re.compile(
    r"(?:\s*[,.;]?\s*(?:[(\[][^()\[\]]*[)\]]|[-—=]+\s*\d+(?:\s+[a-z]+)?))?\W*$", re.IGNORECASE
)
"""What may stand behind a piece that is named: nothing, or how many stitches there are."""
BARE = Sought(
    (*_OF_SAME, "see", "identical", "ditto"),
    rf"^\W*(?:(?:are|is|work(?:ed)?)\s+)?(?:{_SAME}|see|identical\s+(?:to|with)|ditto)\s+"
    rf"(?:for\s+|on\s+|in\s+)?(?:the\s+)?(?P<piece>[A-Za-z]+(?:\s+[a-z]+){{0,2}}?)(?={TOTAL_ONLY.pattern})",
    re.IGNORECASE,
)
"""What a label's rows are, told with no verb: "Rounds 1-3: same as head"."""
AT_ITS_ROWS = re.compile(
    rf"^\W*(?:(?:begin|start|work|make|follow|crochet|knit|see)\s+)(?:{_SAME}\s+)?"
    r"(?:for\s+|on\s+|in\s+)?(?:the\s+)?(?P<piece>(?!rows?\b|rounds?\b|rnds?\b)[A-Za-z]+)"
    r"(?:'s)?\s*[,:;.]?\s*(?:(?:work|working|repeat|crochet|do)\s+)?"
    rf"(?P<which>{_WHICH})(?={TOTAL_ONLY.pattern})",
    re.IGNORECASE,
)
"""The piece first, then which of its rows: "begin as for the head: work rounds 1-3"."""


@dataclass(frozen=True, slots=True)
class Retold:
    """A row's words as QUOTES knows them; cut: from where, how many characters stand there for how
    many of the row's own.
    """

    words: str
    cut: tuple[int, int, int] = (0, 0, 0)

    def origin(self, at: int) -> int:
        """Where in the row's own words a place stands."""
        start, put, own = self.cut
        return at if at <= start else max(start, at - put + own)


def plainly_quoted(words: str, labelled: bool) -> Retold:
    """The words with rows of a piece told as QUOTES knows them, "make rows 1-4 of body" as "make
    rows 1-4 as body". labelled: their label may say which rows they are.
    """
    if not ROWS_SAID.search(words):
        found, which = BARE.search(words) if labelled else None, ""
    else:
        words = OF_PIECE.sub(_as_piece, words)
        found = AT_ITS_ROWS.match(words)
        which = f"{found['which']} " if found else ""
    if found is None:
        return Retold(words)
    said = f"Work {which}as {found['piece']}"
    return Retold(said + words[found.end() :], (0, len(said), found.end()))


def _as_piece(found: re.Match[str]) -> str:
    whole = found.group()
    if not (found["verb"] or found["same"]):
        return whole
    lead = "Work " if not found["verb"] else found["verb"]
    behind = whole[found.end("which") - found.start() :]
    at = found.start("of") - found.end("which")
    behind = f"{behind[:at]}as{behind[at + len(found['of']) :]}"
    said = f"{lead}{found['which']}{behind}"
    return said.rjust(len(whole)) if len(said) <= len(whole) else whole
