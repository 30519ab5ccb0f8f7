"""Words of the trade that are misspelt by one letter, put right: "sigle", "eahc", "repaet".

A word that is not known is passed over, and what a row says of its last stitch or of each stitch is
then lost without a trace; so these few words are worth knowing in their usual slips.
"""

from __future__ import annotations

import re
from functools import lru_cache

from reader.text.clean import CleanText

_LONG = """
stitch stitches single double treble triple crochet chain chains slip slipped repeat repeats
repeating repeated round rounds increase increases increased increasing decrease decreases
decreased decreasing together around across remain remains remaining beginning first turn turns
turning join joins joined joining skip skips skipping space spaces corner corners knit knits
purl purls loop loops times until needle needles twice every before after following previous
another through garter hook hooks yarn yarns working worked marker markers foundation cluster
clusters picot picots popcorn bobble fasten stockinette edge edges along center centre between
alternate alternately pattern patterns third fourth fifth sixth seventh eighth ninth tenth
second three seven eight eleven twelve evenly thread threads same each next last into work back
cast bind ring front side sides shell shells magic place
"""
LONG = frozenset(_LONG.split())
"""Words that are put right: a letter is missing, too many, or changed places with the next."""
_REAL = """
tree trees there time ever seen though thought seconds shame switch switches market precious
faster threat thee joint joints forth marked ties worker tent bubble fist slapped skipped pilots
shipped deceased chin chins regain regains chairs thorough tread doubled coroner retain retains
maker makers needless tremble snitch repent stitched trifle tuning doubles singles eighty
seventy yearn foundations singled corned workings spices doubly spaced steven trough slipper
slippers retaining regaining fatten tripled spades hooky spares babble thirds fifths sixths
sevenths eighths ninths tenths fourths timers snitches clutter clutters nines repeal eights cain
cains threes garner skimp wording sevens edged cornea aground abound worded loopy patter tripe
sipped reheat garters shingle snipped firsts singe triples doable fasted alternates worming
grater loos doublet singly cornet canter twelves triplet turnings trebled needled alternated
joiner stitchers stitcher pivots anther cornets bobbles fastens trebles spacer elevens thready
degrease gaiter purled fellow coast caste casts cats blind binds black backs least lasts works
teach rings intro form plaice plane sidle sided shelf shall shelled placer places placed basting
seem steam frond fronts fount sever severs lashed stitching knitting knitted looped looping
hooked slipping turned turner spacing repeater rounded rounder singling doubling chained
chaining needling clustered edger edging edgings centered centred patterned threaded threading
fastened pace font sips tuns tune beginnings decreasings increasings slips
"""
REAL = frozenset(_REAL.split())
"""Words of their own that look like such slips."""
SHORT = {"nxt": "next", "trn": "turn", "til": "until", "rwo": "row", "caston": "cast on",
         "castoff": "cast off", "bindoff": "bind off"}  # fmt: skip
"""Slips of words too short for a rule."""
LEAST, CHANGED = 4, 6
"""Letters that a word must have to be looked at; to be put right where one letter is another."""
WORD = re.compile(r"(?<![\w'-])[A-Za-z]{3,14}(?![\w'-])")
OPENS = frozenset("\n.:;!?)]*-")
"""What stands before a word with a capital that is no name."""


def _without_one(word: str) -> set[str]:
    """The word without any one of its letters but the first."""
    return {word[:at] + word[at + 1 :] for at in range(1, len(word))}


SHORTER: dict[str, set[str]] = {}
for _word in LONG:
    for _less in _without_one(_word):
        SHORTER.setdefault(_less, set()).add(_word)


@lru_cache(maxsize=4096)
def put_right(word: str) -> str:
    """The word of the trade that a word in small letters is a slip of, "" where it is none, or
    might be two.
    """
    if word in LONG or word in REAL or word in SHORT:
        return SHORT.get(word, "")
    if len(word) < LEAST:
        return ""
    less = _without_one(word)
    turned = {
        word[:at] + word[at + 1] + word[at] + word[at + 2 :] for at in range(1, len(word) - 1)
    }
    doubled = {one for one in less if len(one) > LEAST or len(set(word)) < len(word)}
    missed = SHORTER.get(word, set())
    for kind in ((turned | doubled | missed) & LONG, _changed(word)):
        alike = {one for one in kind if one[-1] == word[-1]} or kind
        nearest = {one for one in alike if one in turned | doubled} or alike
        if nearest:
            return nearest.pop() if len(nearest) == 1 else ""
    return ""


def _changed(word: str) -> set[str]:
    """The words of the trade that differ from a long word by one letter, another in its place."""
    if len(word) < CHANGED:
        return set()
    return {
        known
        for at in range(1, len(word))
        for known in SHORTER.get(word[:at] + word[at + 1 :], ())
        if len(known) == len(word) and known[:at] + known[at + 1 :] == word[:at] + word[at + 1 :]
    }


def _like(word: str, right: str) -> str:
    """The right word in the letters, small or capital, of the one that stands there."""
    if word.isupper():
        return right.upper()
    return right.capitalize() if word[0].isupper() else right


def spelled(source: CleanText) -> CleanText:
    """The clean text with misspelt words of the trade put right, every character's origin kept, and
    each such word as written told beside the right one.
    """
    text = source.text
    slips = {word: right for word in set(WORD.findall(text)) if (right := put_right(word.lower()))}
    if not slips:
        return source
    told: dict[str, str] = {}
    pieces: list[str] = []
    moved: list[tuple[int, int]] = []
    at = gained = 0
    for found in WORD.finditer(text):
        word = found.group()
        named = word[0].isupper() and not word.isupper() and not _opens(text, found.start())
        if word not in slips or named:
            continue
        right = _like(word, slips[word])
        pieces += (text[at : found.start()], right)
        at = found.end()
        moved.append((found.start(), gained))
        gained += len(right) - len(word)
        moved.append((found.end(), gained))
        told.setdefault(word, right)
    pieces.append(text[at:])
    starts, shifts = _shifted(source, moved)
    return CleanText("".join(pieces), starts, shifts, source.length, tuple(told.items()))


def _opens(text: str, at: int) -> bool:
    """Whether a sentence, a line or a label ("2nd Ronud") opens there: its capital is no name's."""
    before = text[max(0, at - 40) : at].rstrip(" ")
    return not before or before[-1] in OPENS or before.split()[-1][0].isdigit()


def _shifted(
    source: CleanText, moved: list[tuple[int, int]]
) -> tuple[tuple[int, ...], tuple[int, ...]]:
    """Where each stretch begins and how far it stands from its origin; moved: places of the text,
    and how far what stands behind each was moved.
    """
    starts, shifts = [], []
    own = by = gained = 0
    for edge in sorted({*source.starts, *(place for place, _ in moved)}):
        while own + 1 < len(source.starts) and source.starts[own + 1] <= edge:
            own += 1
        while by < len(moved) and moved[by][0] <= edge:
            gained = moved[by][1]
            by += 1
        starts.append(edge + gained)
        shifts.append(source.shifts[own] - gained)
    return tuple(starts), tuple(shifts)
