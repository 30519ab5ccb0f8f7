"""Texts in capitals throughout, as typed leaflets are, or in small letters throughout, as people
type, set as sentences; length kept.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from string import ascii_lowercase, ascii_uppercase

LEAST = 100
"""Letters of a text that show how it is set."""
MOSTLY = 0.9
HARDLY = 0.002
"""The share of capitals in a text that has none but by chance."""
SPOKEN = 150
"""Letters to a full stop, by which a text was written and not only spoken."""
_VERB = (
    r"(?:work|rep|repeat|turn|join|fasten|cut|cast|bind|knit|purl|chain|ch|sl|slip|miss|skip|sc|dc"
    r"|tr|now|next|this|these|do|change|with|using|place|break|finish|continue|cont"
    r"|proceed|row|rnd|round|beg|begin|inc|dec|increase|decrease|make|sew|weave|leave|mark|attach"
    r"|shape|start|pick|you|divide|keep|go|stuff|press|k|p|pm|last|first|commence)\b"
)
"""What begins a sentence behind a short word and its stop, as in "1 d.c. into ring" nothing does.
"""
BEGINS = re.compile(
    rf"(?:^|[:!?]\s+|\.?(?:—|--)\s*|(?:(?<=[a-z]{{5}}\.)|(?<=[\d)\]*]\.))\s+|\.\s+(?={_VERB})|\n\s*)"
    r"[(\[*\s]*[a-z](?!\.[a-z]\.)"
)
COLUMN = 28
"""Letters of a line that the next one may go on with, where no mark ends it."""
GOING_ON = "\0"
"""Set before such a line while its first letter stays small."""
LABEL = re.compile(r"(?:row|rnd|round|r)s?\.? ?\d+ ?[:.)-]", re.IGNORECASE)
HEADING = re.compile(r"[^\d,;*]{3,40}")


def as_sentences(text: str) -> str:
    """The text with small letters but where sentences begin, and headings as they are, where all
    of it is in capitals or none is; any other text as it is.
    """
    letters, capitals = _letters(text)
    if letters < LEAST:
        return text
    if capitals < MOSTLY * letters:
        small = capitals <= HARDLY * letters and text.count(".") * SPOKEN > letters
        return _begun(text) if small or _begins_small(text) else text
    return _begun(text, small=True)


def _begun(text: str, small: bool = False) -> str:
    """The text with a capital where each sentence begins, all else in small letters if `small`."""
    lines: list[str] = []
    for paragraph in text.split("\n\n"):
        lines += [*_lines(paragraph.split("\n"), small), ""]
    del lines[-1]
    told = BEGINS.sub(lambda found: found.group().upper(), "\n".join(lines))
    return told.replace(GOING_ON, "")


SENTENCE = re.compile(r"[a-z]{5}[.!] +(?P<first>[a-zA-Z])")
"""Where one sentence goes over into another inside a line."""
FEWEST = 5


def _begins_small(text: str) -> bool:
    """Whether the sentences inside the lines of a text begin with small letters."""
    begun = SENTENCE.findall(text)
    return len(begun) >= FEWEST and sum(map(str.islower, begun)) * 10 >= 9 * len(begun)


def _lines(paragraph: list[str], small: bool) -> Iterator[str]:
    """The lines of a paragraph, in small letters but for headings if `small`; with a sign before
    each that the line above goes on in: a page had no room there for its first word.
    """
    width = max(map(len, paragraph))
    before = ""
    for line in paragraph:
        bare = line.strip()
        room = width - len(before) > len(bare.split(" ")[0])
        goes_on = len(before) >= COLUMN and before[-1] not in ".:;!?" and not room
        goes_on = goes_on and LABEL.match(bare) is None
        heading = HEADING.fullmatch(bare) and bare[-1] not in ".:" and len(bare.split()) < 6
        alone = heading and not goes_on
        yield line if alone else GOING_ON * goes_on + (_small(line) if small else line)
        before = "" if alone else bare


def _letters(text: str) -> tuple[int, int]:
    """How many letters a text has, and how many of them are capitals."""
    if text.isascii():
        small, capitals = (
            sum(map(text.count, letters)) for letters in (ascii_lowercase, ascii_uppercase)
        )
        return small + capitals, capitals
    return sum(map(str.isalpha, text)), sum(map(str.isupper, text))


def _small(line: str) -> str:
    """The line in small letters, one for one."""
    return "".join(one.lower() if len(one.lower()) == 1 else one for one in line)
