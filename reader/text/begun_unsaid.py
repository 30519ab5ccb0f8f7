"""Knitting text -> the same text, length kept, with the stitches that a piece begins with as cast
on where a sentence before its first row only tells that they are there: "You need six sts to
begin.", "6 sts on dpns, joined.", "(flat, green, 3 sts)" -> "cast on 6 sts".

Such a clause is known by its words, in any order: a number of stitches, and besides only words of
beginning, of needles and of what is worked with.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from reader.terms.numbers import SPELLED
from reader.text.rows_likewise import of_words

_N = rf"(?:\d{{1,3}}|(?:{SPELLED}))(?:(?: ?[(\[][\d ,;:/-]+[)\]])|(?: ?[/;-] ?\d{{1,3}})+)?"
STITCHES = re.compile(
    rf"(?<![\w.,/])(?P<n>{_N})[ ](?:(?:loose|live|firm)[ ])?(?:sts?|stitches|loops)\b"
    rf"|^\W*(?:stitches|sts)[ ]?:[ ]?(?P<told>{_N})\W*$",
    re.IGNORECASE,
)
FIRST_ROW = re.compile(
    r"^[^\w\n]*(?:(?:row|rnd|round)s?[ ]?1\b(?![ ]?(?:is|are|\())"
    r"|1st[ ](?:row|rnd|round)|r1\b|1[:)])",
    re.IGNORECASE | re.MULTILINE,
)
ANY_ROW = re.compile(
    r"^[^\w\n]*(?:(?:row|rnd|round)s?[ ]?\d+|\d+(?:st|nd|rd|th)[ ](?:row|rnd|round)|r\d+\b|\d+[:)])"
    r"[^\n]*",
    re.IGNORECASE | re.MULTILINE,
)
BEGUN = re.compile(
    r"\b(?:cast(?![ -]?on(?:,|[ ]of)[ ])|co|picks?|picked|chain|ch|knit up|set up|bo|bind|bound)\b"
    r"[^.\n]{0,40}?"
    rf"(?:\d|\b(?:{SPELLED})\b)[ ]?(?:sts|stitches|loops)?"
    r"|\bgauge|\btension|\bmultiple|\b(?:k|p|knit|purl)[ ]?\d|\brepeat",
    re.IGNORECASE,
)
"""What the words before a first row may not tell besides."""
OTHER_WORK = re.compile(r"\b(?:gauge|tension|swatch|multiple|inch(?:es)?|cm)\b|\"", re.IGNORECASE)
SENTENCE = re.compile(r"[^.;!()\n]+")
CLAUSE = re.compile(r"[^,:]+")
WORDS = of_words(
    "begin begins beginning start starts starting need needs want have has get put place take up"
    " set make work worked works on onto to with from in the your a an my of off it we i you will"
    " ll now first only just all and then so needle needles ndls dpn dpns pin pins circular"
    " circulars double pointed dp round joined join together ring loop loops cast lay throw string"
    " long yourself me us going over flat knitted piece provisional magic this are is there be must"
    " should by way"
)
OWN_WORD = re.compile(
    r"\b(?:in|with|using|the|of|an?|this|each|for)[ ](?!(?:sts|stitches)\b)[a-z]+(?:[ ][A-Z]\b)?",
    re.IGNORECASE,
)
"""What it is worked with, and what begins so: "in cream", "the apple"."""
NEEDLES = re.compile(
    rf"\b(?:\d|{SPELLED})[ ](?:(?:short|double[- ]pointed|dp|circular)[ ])?(?:needles?|dpns?"
    r"|pins?)\b"
    r"|\b\d+(?:\.\d+)?[ ]?mm\b|\b(?:size|no)\.?[ ]\d+",
    re.IGNORECASE,
)
SAID = of_words(
    "begin begins beginning start starts starting need needs want needle needles dpn dpns joined"
    " join round flat set lay throw string put place loop cast"
)
"""One of these tells that it begins, but where the number stands alone."""


def begun_unsaid(text: str) -> str:
    """The text so put; any text goes in."""
    done, out = 0, list(text)
    for first in FIRST_ROW.finditer(text):
        above = [row.end() for row in ANY_ROW.finditer(text, done, first.start())]
        since = above[-1] if above else done
        done = first.end()
        words = text[since : first.start()]
        later = bool(above or done > first.end())
        if STITCHES.search(words) is None or BEGUN.search(words) or (later and "\n\n" not in words):
            continue
        for start, end, said in _starts(text, since, first.start()):
            out[start:end] = said.ljust(end - start)
            break
    return "".join(out)


def _starts(text: str, since: int, upto: int) -> Iterator[tuple[int, int, str]]:
    """The sentences that tell such a start, the last first: where each stands and what it says."""
    for sentence in reversed(list(SENTENCE.finditer(text, since, upto))):
        alone = STITCHES.fullmatch(sentence.group())
        for clause in (alone,) if alone else CLAUSE.finditer(sentence.group()):
            number = _number(clause.group(), sentence.group())
            if number is None:
                continue
            start, end = sentence.span()
            lead = ""
            if text[start - 1 : start] == "(" and text[end : end + 1] == ")":
                start, end = start - 1, end + 1
                lead = ": " if text[:start].rstrip(" ")[-1:] not in ("", "\n") else ""
            said = (f"{lead}{told}" for told in (f"cast on {number} sts", f"co {number}"))
            yield from ((start, end, told) for told in said if len(told) <= end - start)
            break


def _number(clause: str, sentence: str) -> str | None:
    """How many stitches the clause begins with; None where it tells of other things."""
    found = STITCHES.search(clause) or STITCHES.search(sentence)
    if found is None or OTHER_WORK.search(sentence):
        return None
    if found["told"]:
        return found["told"]
    rest = clause.replace(found.group(), " ", 1)
    plain = OWN_WORD.sub(" ", NEEDLES.sub(" needle ", rest))
    others = NEEDLES.sub(" needle ", sentence.replace(clause, " ", 1))
    said = set(re.findall(r"[a-z]+|\d+|[=+x]", plain.lower()))
    if said - WORDS or re.search(r"[\d=]", others):
        return None
    around = said | set(re.findall(r"[a-z]+", others.lower()))
    alone = clause.strip().startswith(found.group()) and not said
    return found["n"] if alone or SAID & around else None
