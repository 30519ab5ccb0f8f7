"""Clean text -> its paragraphs and lines that stand alone, wrapped lines joined."""

from __future__ import annotations

import re

from reader.pattern.key_lines import tells_meaning
from reader.pattern.label_places import ends_sentence
from reader.pattern.labels import bulleted, label_at
from reader.pattern.line_ends import (
    CHAIN_ALONE,
    CLOSES_RING,
    COLUMN_LAST,
    DEMANDS,
    EVERY_LAST,
    HALF_HEADING,
    HALF_NAMED,
    MID_PHRASE,
    NAMED_BEHIND,
    SPOKEN_TOTAL,
    STARRED,
    WORKS_ON,
)
from reader.pattern.line_widths import SPOKEN_ORDER, by_hand, widths_of
from reader.pattern.line_words import ACTION, BEGINS, FINISHING, MAKE, MATERIALS, MEANING, RUN_IN
from reader.pattern.next_label import next_label
from reader.pattern.said_only import lists_meanings
from reader.terms.numbers import ORDINALS
from reader.text.wrapped import LEAST_WIDTH, MOST_WIDTH


def blocks(text: str) -> list[tuple[int, int]]:
    """Paragraphs and lines that stand alone, wrapped lines joined: clean offsets of each."""
    out: list[list[int]] = []
    at = 0
    open_block = False
    lines = text.split("\n")
    widths = widths_of(lines)
    for line, width, alone in zip(lines, widths, by_hand(lines, widths), strict=True):
        end = at + len(line)
        stripped = line.strip()
        if not stripped.strip("-=_~"):
            open_block = False
        elif open_block and alone and _orders(text[out[-1][0] : out[-1][1]], stripped):
            out.append([at, end])
        elif open_block and out and _goes_with(text[out[-1][0] : out[-1][1]], stripped, width):
            out[-1][1] = end
        else:
            out.append([at, end])
            open_block = True
        at = end + 1
    return [(start, end) for start, end in out]


SHORTEST_OPEN = 24
"""Characters of a line that has no stop at its end, and goes on before a number or a bracket."""
OPEN_RANGE = re.compile(
    r"(?:\b\d+(?:st|nd|rd|th|d)|\b(?:rows?|rnds?|rounds?)\s+\d+)\s*(?:to|and|through|thru|&|-|,)$",
    re.IGNORECASE,
)
"""A line that ends inside a label: "5th to"."""
LABEL_LAST = re.compile(
    r"[.;)] (?:next|following|last|\d+(?:st|nd|rd|th))(?: \d+)? (?:rows?|rounds?|rnds?):$"
    r"|[.;)] (?:rows?|rounds?|rnds?) \d+(?:[-—]\d+)?:$",
    re.IGNORECASE,
)
"""A line that ends with the label of what the next one tells."""
ORDINAL_LAST = re.compile(
    r"\d(?:st|nd|rd|th)[)\]]?$|\b(?:next|following)(?: \d+)?$"
    r"|\b(?:all|every|each|and) (?:other )?(?:even|odd|alternate|other|dec|inc|ws|rs)"
    r"(?:[- ]numbered)?$",
    re.IGNORECASE,
)
ROW_FIRST = re.compile(r"(?:rows?|rnds?|rounds?)\b", re.IGNORECASE)
"""A label that the line's end cuts: "8th to 12th / ROUNDS:"."""
RUNS_ON = re.compile(
    r"(?:\d+ (?:more )?times\b|times\b|rep(?:eat)?\b\.? (?:from )?\*|\*|join\b|ending\b"
    r"|end with\b|ch \d+[.,] turn\b|turn\b)",
    re.IGNORECASE,
)
"""How a line begins that cannot stand alone."""
TOTAL_BEHIND = re.compile(r"(?:—|-{1,2}>?|=|→)\s*\d+ ?[A-Za-z][\w -]*(?:[,;.(]|$)")
"""A line that is only the total of the row before it."""
BRACKET_LAST = re.compile(r"[\(\[]\d{1,4}(?: ?[a-z]+)?[\)\]]$")
"""A line that ends with its total in a bracket; in lines that no machine wrapped, the row's end."""
UNIT_LAST = re.compile(
    r"[(\[]\d{1,4} (?:sts?|stitches|sc|dc|hdc|tr)[)\]]\.?$|(?:->|=>|→) ?\d{1,4}(?: sts?)?\.?$"
)
"""A line that ends with its total, told with its unit or behind an arrow."""
NEW_ORDER = re.compile(
    r"(?:keep|work|now|next|last|continue|cont|knit|purl|k\d|p\d|cast|bind|break|cut|repeat all)\b",
    re.IGNORECASE,
)
"""How a line begins that tells what comes next."""
AGAIN = re.compile(
    r"(?:then )?rep(?:eat)? (?:the )?(?:(?:last|these|previous) \w+ )?"
    r"(?:rows?\b|rnds?\b|rounds?\b|R\d)",
    re.IGNORECASE,
)
"""A line that calls rows back stands alone behind a full stop."""
TOTAL_LAST = re.compile(
    r"[a-z)\]][.;] \d{1,4}$|[a-z)\]] (?:[-—=]+>?) ?\d{1,4}(?: (?:sts?|stitches|sc|dc|hdc|tr))?\.?$"
)
"""A line that ends with its total alone."""
SIZE_FIRST = re.compile(r"(?:for )?(?:all |both )?sizes?\b[^:.\n]{0,40}:", re.IGNORECASE)
"""A line that begins with the sizes it is for."""
LONGEST_TAIL = 60
"""Characters: what is looked for at the end of a line is shorter."""
LONGEST_BRACKET = 240
"""Characters: a bracket open for longer was never closed."""


def _open_bracket(before: str) -> bool:
    """Whether a bracket opened in the block is still open at its end."""
    tail = before[-LONGEST_BRACKET:]
    opens = max(tail.rfind("("), tail.rfind("["))
    return opens >= 0 and ")" not in tail[opens:] and "]" not in tail[opens:]


GOES_ON = re.compile(r"[a-z(\[*]|\d+(?: ?[a-z(]|,)")
"""How a line begins that may go on with an open one."""
KNITS = re.compile(r"[KP] ?\d+\b")
JOINS = re.compile(r"(?:of|in|into|and|or|to|with|from|then|on|over|at|for|each|next)\b")
"""How a line begins that cannot begin a sentence."""


def _orders(before: str, line: str) -> bool:
    """Whether a line that an author set on its own begins with what to do next."""
    last = before[-LONGEST_TAIL:].rstrip()
    if last.endswith((".", ".)", "!")) and line[0].isupper() and WORKS_ON.match(line):
        return not _open_bracket(before)
    if last.endswith((".", ".)")) and STARRED.match(line):
        return label_at(before.lstrip(), 0, True) is None
    amid = last.endswith((",", "-")) or DEMANDS.search(last) is not None or _open_bracket(before)
    return SPOKEN_ORDER.match(line) is not None and not amid


def _stands_alone(last: str, line: str, width: int) -> bool:
    """Whether a line begins anew however the one before it ends: sizes, rows called back, or a
    sentence behind a total.
    """
    tail = max(0, len(last) - LONGEST_TAIL)
    total = TOTAL_LAST.search(last, tail) is not None and line[0].isupper()
    again = last.endswith(".") and AGAIN.match(line) is not None
    short = width < LEAST_WIDTH and BRACKET_LAST.search(last, tail) is not None
    total = total or short or SPOKEN_TOTAL.search(last, tail) is not None
    ends = NEW_ORDER.match(line) is not None and UNIT_LAST.search(last, tail) is not None
    total = total or ends
    return total or again or SIZE_FIRST.match(line) is not None


PIECE = re.compile(
    r"(?!(?:Note|Work|Next|Repeat|Now|Then|Row|Round|Rnd|With|Make|Inc|Dec|For|All|Size|Last|To)\b)"
    r"[A-Z][a-z]{2,}(?: [A-Za-z]{2,}){0,2}"
)
"""What a piece, or a part of one, may be called."""
PIECE_BEGINS = re.compile(
    r"(?:with \w+,? )?(?:ch(?:ain)? ?\d|\d+ ?ch|[sd] ?c in|h ?d ?c in|join |attach |rejoin |cast on"
    r"|(?:(?:work|make|knit|follow) )?(?:(?:exactly|just|the) )*"
    r"(?:same|as|(?:instruct|direct)ions) "
    r"|(?:with|from) (?:rs|right side)\b|(?:pick|k|knit) up|make \d|sl st|work (?:in|across|\d)"
    r"|sk\w* \d|miss \d"
    r"|[*(\[]?\s?(?:\d+ )?(?:s ?c|h ?d ?c|d ?c|h?tr)\b(?! ?[=:—-])(?! stands?\b))", re.IGNORECASE,
)
"""How its work begins."""
FOUNDATION = re.compile(
    r"(?:foundation|base|start|to (?:start|begin)|beginning)(?: (?:ch|chain|row|rnd|round))? ?[:—-]"
    r" ?(?:with [^.;,]{1,20},? )?(?:ch(?:ain)?\b|make\b|magic\b|mr\b|\d+ ?ch\b|fsc\b)",
    re.IGNORECASE,
)
"""A line that begins the work."""


EDGE_FIRST = re.compile(
    r"(?:(?:outer|top|bottom|inner|final) )?(?:edging|border|trim|edge|handles?|straps?)"
    r"(?:\s?[.:]|\s[-—])\s+\S", re.IGNORECASE
)
"""A line that begins with what is worked around or onto the piece behind it."""


def _begins_part(last: str, line: str) -> bool:
    """Whether a line begins with a heading run in with it."""
    if FOUNDATION.match(line) or (EDGE_FIRST.match(line) and ends_sentence(last)):
        return True
    head = RUN_IN.match(line)
    if head and head["dash"]:
        return ends_sentence(last)
    named = head["head"] if head else None
    if named and PIECE.fullmatch(named) and ends_sentence(last):
        return PIECE_BEGINS.match(line, head.end() if head else 0) is not None
    capitals = head and (head["head"] or head["caps"]).isupper()
    return bool(capitals) and not HALF_HEADING.search(last)


COLOUR_LAST = re.compile(r"\b(?:colou?r|shade|yarn)$", re.IGNORECASE)
COLOUR_LETTER = re.compile(r"[A-H](?=[\s,.;:)])")
""" "K 4 color / A, with color B ...": the letter belongs to the line before."""


def _amid_phrase(last: str, line: str) -> bool:
    """Whether a line's end cuts a phrase, whatever its width: "... every / row 8", "lp / of 5"."""
    if COLOUR_LAST.search(last) and COLOUR_LETTER.match(line):
        return True
    if not line[0].islower() or ends_sentence(last):
        return False
    return DEMANDS.search(last) is not None or JOINS.match(line) is not None


def _labelled(before: str, last: str, line: str) -> bool:
    """Whether a line begins with a row's label, and not with a number of the row before it."""
    label = label_at(line, 0, True)
    if label is None or (label.loose and not ends_sentence(last)):
        return False
    if line[0].islower() and EVERY_LAST.search(last, max(0, len(last) - LONGEST_TAIL)):
        return False
    bare = re.match(r"^\d+[.)]", line)
    counts_on = bare and label.numbers and _last_number(before) + 1 == label.numbers[0]
    amid = bare and not counts_on and not last.endswith((".", ":", ")", "!", "]"))
    return not amid


def _goes_on(last: str, line: str) -> bool:
    """Whether a line begins as one that an open one goes on with."""
    if KNITS.match(line) and "," in last and not ends_sentence(last):
        return len(last) > SHORTEST_OPEN
    open_end = len(last) > SHORTEST_OPEN or last[:1].islower()
    open_end = open_end and not ends_sentence(last) and not is_heading(last)
    begins = GOES_ON.match(line) is not None
    return begins and (DEMANDS.search(last) is not None or (open_end and not line[0].isalpha()))


LONGEST_LABEL = 40
"""Characters of a line that is nothing but a label."""


def _only_label(before: str) -> bool:
    """Whether a block is a row's label and nothing else, "Round 4:"."""
    words = before.strip()
    if len(words) > LONGEST_LABEL or words[-1:] not in ":.":
        return False
    label = label_at(words, 0, True)
    return label is not None and not words[label.end :].strip()


LABEL_ALONE = re.compile(
    r"\W*(?:rounds?|rnds?|rows?) \d{1,3}(?:\s?[-—]\s?\d{1,3})?\s*(?:\([^()]{1,20}\))?\s*:?\s*$",
    re.IGNORECASE,
)
BULLET_LINE = re.compile(r"[-•*–] ?\S")


def _under_label(before: str, line: str) -> bool:
    """Whether a line stands below its label, on a page that sets labels on lines of their own, with
    what is done in a list of points.
    """
    first, *points = before.strip().split("\n")
    listed = LABEL_ALONE.match(first) and all(BULLET_LINE.match(one.strip()) for one in points)
    if listed and BULLET_LINE.match(line) and label_at(line[1:].strip(), 0, True) is None:
        return True
    if not _only_label(before):
        return False
    return label_at(line, 0, True) is None and not is_heading(line)


def _goes_with(before: str, line: str, width: int) -> bool:
    """Whether a line goes on with the block before it, as in _continues; a row that is over, and
    the plain label of the next, are told apart at once.
    """
    if PLAIN_LABEL.match(line) and OVER.search(before, max(0, len(before.rstrip()) - 2)):
        return _open_bracket(before)
    last = before.rsplit("\n", 1)[-1].rstrip()
    if line[0].isupper() and last[-1:] not in ",;" and lists_meanings(last):
        return False
    if COLUMN_LAST.search(before, max(0, len(before) - 24)):
        return False
    return not next_label(before, line) and _continues(before, line, width)


PLAIN_LABEL = re.compile(r"(?:Rnd|Round|Row) \d{1,4}: ")
OVER = re.compile(r"(?:[.;!]|\d[)\]])\s*$")
"""How most rows begin and end; nothing else needs to be asked of them."""


def _continues(before: str, line: str, width: int) -> bool:
    """Whether a line goes on with the block before it; width: of the paragraph's longest line."""
    last = before.rsplit("\n", 1)[-1].rstrip()
    closes = CLOSES_RING.match(line) and CHAIN_ALONE.fullmatch(before)
    if TOTAL_BEHIND.match(line) or _open_bracket(before) or _under_label(before, line) or closes:
        return True
    if _stands_alone(last, line, width):
        return False
    tail = max(0, len(last) - LONGEST_TAIL)
    if HALF_NAMED.search(last, tail) and NAMED_BEHIND.match(line):
        return True
    if OPEN_RANGE.search(last, tail) or LABEL_LAST.search(last, tail):
        return True
    if ROW_FIRST.match(line) and ORDINAL_LAST.search(last, tail):
        return True
    mid = MID_PHRASE.search(last, tail) is not None and not line[0].isupper()
    anew = line[0].isupper() and is_heading(before) and not FINISHING.match(before)
    if width >= LEAST_WIDTH and (RUNS_ON.match(line) or mid) and not anew:
        return True
    if _amid_phrase(last, line):
        return True
    if BULLET.match(line) and BULLET.match(before) and not DEMANDS.search(last):
        return False
    line = line[bulleted(line) :]
    if _labelled(before, last, line):
        return False
    if _goes_on(last, line):
        return True
    named = MATERIALS.match(line) and not last.endswith(",")
    if line[0] == "(" and len(last) > width // 2 >= LEAST_WIDTH // 2 and not ends_sentence(last):
        return True
    if re.match(r"^[#•]|^[-*] \w+ ?:", line) or (named and not line[0].islower()):
        return False
    if is_heading(line) or is_heading(last) or _begins_part(last, line):
        return False
    if BEGINS.match(line) and (last.endswith((".", ")")) or tells_meaning(last)):
        return False
    runs_on = line[0].islower() and not last.endswith((".", ":"))
    if runs_on or last.endswith((",", ";", "-", "*", "—")):
        return True
    return _wrapped(last, line, width)


def _wrapped(last: str, line: str, width: int) -> bool:
    """Whether a machine broke the line before this one, since no word of this had room on it."""
    if width > MOST_WIDTH and ends_sentence(last) and RUN_IN.match(line):
        return False
    if width >= LEAST_WIDTH and len(last) >= 0.85 * width:
        return True
    word = line.split(" ", 1)[0]
    return len(last) >= LEAST_WIDTH and len(last) + 1 + len(word) > width


BULLET = re.compile(r"\s*[-*>+]\s+\S")
"""A line of a list, whose next such line is another item of it."""


def _last_number(before: str) -> int:
    """The last number of the bare label that a block begins with, -1 where it has none."""
    label = label_at(before.lstrip(), 0, True)
    bare = label is not None and label.numbers and before.lstrip()[:1].isdigit()
    return label.numbers[-1] if bare and label is not None else -1


NUMBERS_ONLY = re.compile(
    rf"(?:{'|'.join(ORDINALS)})(?:[\s,_]+(?:and[\s_]+)?(?:{'|'.join(ORDINALS)}))+", re.IGNORECASE
)
"""Several divisions told together by their numbers."""
OFF = re.compile(
    r"(?:b\.?o\.?|(?:bind|cast) off)"
    r"(?: (?:loosely|in pattern|all sts|all stitches|knitwise|purlwise))*",
    re.IGNORECASE,
)
"""A last row in a word or two."""


SO_MANY_ROWS = re.compile(
    r"(?:work|make|do|knit|crochet) \w+ (?:more |further )?(?:rows|rounds|rnds)\b", re.IGNORECASE
)
"""Rows that are worked, and no piece that is made so often, "work 4"."""


def is_heading(line: str) -> bool:
    """A short line that names something and works nothing."""
    text = line.strip(" #*_:-=—\t")
    if not text or len(text) > 48 or text[-1:] in ",;" or OFF.fullmatch(text):
        return False
    if NUMBERS_ONLY.fullmatch(text) or SO_MANY_ROWS.match(text):
        return False
    bare = MAKE.sub("", text).strip(" ()-:")
    numbered = re.search(r"\d", bare) and not re.match(r"^\d(?:st|nd|rd|th)\b", bare)
    if numbered and not re.search(r"\bno\.?\s*\d+$", bare, re.IGNORECASE):
        return line.lstrip().startswith("#")
    if line.lstrip().startswith("#"):
        return True
    words = bare.split()
    if len(words) > 6 or text.endswith(".") or MEANING.match(text):
        return False
    if ACTION.search(bare) and not bare.isupper():
        return False
    return bare[:1].isupper() or MAKE.search(text) is not None
