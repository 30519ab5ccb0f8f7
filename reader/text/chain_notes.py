"""Sentences that only say whether the chain at a row's start is a stitch: "The 3 ch at the start of
each row stand for the first dc.", "None of the turning chains count."
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from typing import NamedTuple

from reader.terms.numbers import UNITS
from reader.text.sought import ODD_LETTERS, has_any


class ChainNote(NamedTuple):
    """Such a sentence: where it stands, the heights it tells of (none: of any), whether they count.
    """

    start: int
    end: int
    heights: tuple[int, ...]
    counts: bool


HEARD = ("count", "stand", "is ", "are ", "=", "place of", "replace", "represent", "isn", "aren",
         "include", "serve", "be ", "ignore", "equal", "treat", "consider", "regard")  # fmt: skip
LINE = re.compile(r"[^\n]+")
SENTENCE = re.compile(r"[^\n.;!]+(?:[.;!]|$)")
SHORTENED = re.compile(r"\b((?i:beg|sts?|ch|rep|rnds?|t|incl|n))\.(?=[ ,)][a-z(])")
"""A stop that ends a short word and no sentence."""
_STITCH = (
    r"half[- ]?double[- ]crochets?|half[- ]?doubles?|half[- ]?trebles?(?:[- ]crochets?)?"
    r"|(?:single|double|treble)(?:[- ]crochets?)?|h\.?d\.?c|[sd]c|h?tr|dtr|stitch(?:es)?|sts?"
)
_HEIGHT = r"[1-6]|one|two|three|four|five|six"
CHAINS = re.compile(
    rf"(?:\b(?:ch(?:ain)?s?|tchs?)[- ]?(?P<behind>\d)\b(?! ?(?:{_STITCH})\b)"
    rf"|\b(?P<before>{_HEIGHT})[- ]?"
    r"(?:(?:turning|beginning|starting|initial|beg|first)[- ])?ch(?:ain)?s?\b"
    r"|\b(?:turning|beginning|starting|initial|beg|start|t)[- ]?ch(?:ain)?s?(?![\w-])|\btchs?\b"
    r"|\b(?:first|beginning|starting|initial|turning) (?P<amid>\d)[- ]?ch(?:ain)?s?\b"
    r"|\bch(?:ain)?s?\b(?= (?:at|in) (?:the )?(?:start|beg)))"
)
SAID = re.compile(
    r"\b(?:counts?|counted|counting|stands?|takes? the place|replaces?|represents?|serves?|ignored?"
    r"|includ\w+|equals?|treat\w*|consider\w*|regard\w*)\b"
    r"|\b(?:is|are|be|am|isn't|aren't) (?:not )?(?:always |never )?"
    rf"(?:an? |the |your |one |1 |regarded |first |1st )*(?:{_STITCH})\b|="
)
NOT = re.compile(r"\b(?:not|never|no|none|neither|cannot|ignored?|nothing)\b|n't\b")
WORDS = re.compile(
    r"(?:(?:[nt]\.? ?b\.?|note|nota bene|please|important|remember|throughout|here|in this pattern"
    r"|this pattern|the pattern|of this pattern|pattern|unless otherwise stated|always|never|not"
    r"|no|none|neither|do|does|don't|doesn't|isn't|aren't|am|is|are|be|will|won't|should|can"
    r"|cannot|it|they|them|i|we|you|your|my|our|the|a|an|that|which|this|these|those|and|or|but"
    r"|for|of|as|at|in|on|to|with|by|from|all|each|every|any|both|one|first|1st|own|whole"
    r"|begin(?:s|ning)?|beg|start(?:s|ing)?|initial|turning|worked|made|used|making|work|make"
    r"|chain|chains|ch|chs|tch|tchs|t|row|rows|round|rounds|rnd|rnds|r|count|counts|counted"
    r"|counting|stand|stands|standing|take|takes|place|replaces?|represents?|serves?|ignored?"
    r"|includ(?:e|es|ed|ing)|equals?|equal|treat(?:ed|s)?|consider(?:ed)?|regard(?:ed)?"
    r"|stitch count|number|total|totals|so|too|also|only|just|because|since|where|when|if"
    r"|height|nothing|bold|going forward|from now on|from here on|out"
    rf"|{_STITCH})\b\.?|\d|=|[\s,:()*\"'/&-])+",
)
"""All that such a sentence is made of."""
OF_ROWS = re.compile(r"\b(?:row|rnd|round|r)s? ?\d|\d(?:st|nd|rd|th)? (?:row|rnd|round)s?\b")
WORKED = re.compile(
    rf"\b(?:in|into) (?:the )?(?:first|1st|next|same|each|every) (?:{_STITCH})\b(?! of)"
    rf"|\b(?:{_STITCH}) in\b(?! (?:the |this |my |our |every |each |all )*"
    r"(?:pattern|count|total|number|row|rnd|round|start|beg))"
    r"|\bjoin|\bturn\b|^\W*(?:ch(?:ain)?[- ]?\d|\d ?ch(?:ain)?s?)\b[^(,]*,"
)
"""Work, and no note."""


def chain_notes(text: str) -> Iterator[ChainNote]:
    """Such sentences in any text, in order."""
    if has_any(text, HEARD):
        for line in LINE.finditer(text):
            for note in _notes_of(line.group()):
                start, end = line.start() + note.start, line.start() + note.end
                yield note._replace(start=start, end=end)


def _notes_of(line: str) -> list[ChainNote]:
    """Such sentences of one line."""
    low = line.lower()
    if "ch" not in low or not any(map(low.__contains__, HEARD)):
        return []
    low = SHORTENED.sub(r"\1 ", line).replace("\u2019", "'").translate(ODD_LETTERS).lower()
    notes = list[ChainNote]()
    for found in SENTENCE.finditer(low):
        heights = _heights(found.group().strip(" .;!*-\u2022"))
        if heights is not None:
            start = found.end() - len(found.group().lstrip())
            notes.append(ChainNote(start, found.end(), heights, not NOT.search(found.group())))
    return notes


def _heights(said: str) -> tuple[int, ...] | None:
    """The heights of the chains that a sentence tells of, and None where it is no such note."""
    said = said.strip("()[] ")
    chains = tuple(CHAINS.finditer(said))
    if not chains or not SAID.search(said) or not WORDS.fullmatch(said):
        return None
    if OF_ROWS.search(said) or WORKED.search(said):
        return None
    told = [one for found in chains for one in found.groups() if one]
    return tuple(int(one) if one.isdigit() else UNITS[one] for one in told)


def only_chain_notes(words: str) -> bool:
    """Whether words are such sentences and nothing else."""
    notes = tuple(chain_notes(words))
    return bool(notes) and not any(map(str.isalnum, _without(words, notes)))


def without_chain_notes(text: str) -> str:
    """The text, length kept, without such sentences where others stand on their line."""
    return LINE.sub(_worked, text) if has_any(text, HEARD) else text


def _worked(line: re.Match[str]) -> str:
    """A line without its notes, and as it is where it is nothing else."""
    rest = _without(line.group(), _notes_of(line.group()))
    return rest if any(map(str.isalnum, rest)) else line.group()


def _without(words: str, notes: Iterable[ChainNote]) -> str:
    pieces, at = list[str](), 0
    for note in notes:
        pieces += [words[at : note.start], " " * (note.end - note.start)]
        at = note.end
    return "".join((*pieces, words[at:]))
