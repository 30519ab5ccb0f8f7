"""A stocking's stitches parted for the heel: "putting 26 on one needle for the heel", "take half
the stitches for the heel" -> how many are worked on from there.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger

_VERB = (
    r"\b(?:tak|plac|put|arrang|slip|leav|hav|keep|divid|bring|pass|set|work|reserv|allow|us)"
    r"(?:e|es|s|ing|ting|ping)?\b"
)
_STS = (
    r"(?:\s+(?:of\s+)?(?:the\s+|these\s+|your\s+)?(?:sts|stitches|loops)"
    r"(?:\s+of\s+the\s+round)?)?"
)
SO_MANY = re.compile(
    rf"(?:{_VERB}[^.;:\d]{{0,40}}?|\bwith\s+(?:the\s+)?)\b(?P<n>\d+){_STS}\s+"
    r"(?:back\s+)?(?:on|onto|on\s+to|to|upon)\s+(?:one|a|1|the\s+same|the\s+(?:heel|back|1st|first))\s+"
    r"(?:heel\s+)?(?:needle|pin)\b",
    re.IGNORECASE,
)
"""So many stitches on one needle."""
HALF = re.compile(
    rf"(?:{_VERB}|\bwith\b|\bon\b)\s+(?:one\s+|the\s+|exactly\s+)?half(?:\s+(?:of\s+)?(?:the\s+|your\s+)?"
    r"(?:whole\s+|total\s+)?(?:number\s+of\s+)?(?:sts|stitches))?\s+"
    r"(?:on|onto|on\s+to|to|upon|for|as)\b"
    r"|\bdivid\w*\s+(?:the\s+|your\s+)?(?:sts|stitches)\s+(?:equally|evenly|in\s+half|in\s+two"
    r"|into\s+(?:two|halves)|exactly)\b",
    re.IGNORECASE,
)
"""Half of them."""
USED = re.compile(
    r"(?:\b(?:on|over|across|uses?|using|takes?|needs?|with)|[-—])\s+(?:only\s+)?(?:the\s+)?"
    r"(?:(?:next|first|1st|last|back|same|middle)\s+)?(?P<n>\d+)(?:\s+of\s+(?:(?:the|your|these|all)\s+)*\d+)?"
    r"\s+(?:sts|stitches|loops)\b",
    re.IGNORECASE,
)
"""On how many stitches a heel is worked, "Heel (uses 24 of the 48 sts)"."""
HALF_USED = re.compile(
    r"\bhalf\s+(?:of\s+)?(?:the|your)\s+(?:sts|stitches)(?:\s*\(\s*\d+[^()]*\))?\s+(?:are|is)\s+"
    r"(?:used|taken|needed|worked)\b"
    r"|\b(?:over|on|across|uses?|using|takes?|with)\s+(?:only\s+)?half\s+(?:of\s+)?(?:the\s+|your\s+)?"
    r"(?:total\s+|whole\s+)?(?:number\s+of\s+)?(?:the\s+)?(?:sts|stitches)\b",
    re.IGNORECASE,
)
WORKS = re.compile(
    r"\b(?:k|p|knit|purl|pearl|sl|slip)\s*(?:\d|across\b|last\b)|\*|\b\d+\s+(?:rows|rnds|rounds)\b|\brepeat\b"
    r"|\b(?:gusset|turn\w*|pick|take up|cast|dec\w*|inc\w*|tog\w*|narrow\w*)\b",
    re.IGNORECASE,
)
"""What more than the number of the heel's stitches a sentence tells."""
HEEL = re.compile(r"\bheel\b", re.IGNORECASE)
PARTED = re.compile(r"[.;](?=\s|$)")


def heel_of(ledger: Ledger, words: str) -> int | None:
    """How many stitches the words give to the heel, None where they part none; words: on one line,
    numbers in figures.
    """
    if not HEEL.search(words):
        return None
    for sentence in PARTED.split(words):
        if not HEEL.search(sentence):
            continue
        found = SO_MANY.search(sentence)
        if found is not None:
            return int(found["n"][:4])
        here = ledger.below.stitches
        if HALF.search(sentence) and here is not None and here > 1:
            return (here + 1) // 2
    return None


TURNED = re.compile(
    r"^\W*(?:k|knit)\s*(?P<to>\d+)(?:\s+(?:sts|stitches))?,?\s*(?:and\s+)?turn(?:\s+work)?[,;.]?\s+"
    r"(?:(?:and|then)\s+)*(?P<slip>(?:sl|slip)\s*1\s*(?:st|pwise|purlwise)?,?\s*(?:and\s+)?)?"
    r"(?:p|purl)\s*(?P<back>\d+)(?!\s*tog)",
    re.IGNORECASE,
)
"""Behind so many stitches of a round turned, and purled back beyond where it began."""


def turns_amid(words: str) -> bool:
    """Whether a row begins so, "knit 12, turn, purl 24": what it says behind that is of its end."""
    return TURNED.match(words) is not None


def turned_for_heel(ledger: Ledger, words: str) -> int | None:
    """How many stitches lie on the needle of a heel that a round is turned for: those purled back,
    which are more than were knitted; None elsewhere.
    """
    found = TURNED.match(words)
    here = ledger.rows[-1].before if ledger.rows else None
    if found is None or here is None or not (HEEL.search(words) or HEEL.search(ledger.part)):
        return None
    back = int(found["back"][:4]) + (found["slip"] is not None)
    return back if int(found["to"][:4]) < back < here else None


def heel_uses(ledger: Ledger, words: str) -> int | None:
    """On how many stitches a heel is worked, where its heading, or the first words of its part, say
    that and nothing more; None elsewhere.
    """
    of_heel = HEEL.search(words) or (not ledger.rows and HEEL.search(ledger.part))
    here = ledger.below.stitches if ledger.rows else ledger.before.stitches
    if not of_heel or here is None or WORKS.search(words):
        return None
    found = USED.search(words) or SO_MANY.search(words)
    half = HALF_USED.search(words) or (HALF.search(words) if not found else None)
    told = int(found["n"][:4]) if found else (here + 1) // 2 if half else None
    return told if told is not None and 0 < told < here else None


def parts_first(words: str) -> bool:
    """Whether the words part the stitches before they work anything."""
    first = PARTED.split(words, 1)[0]
    found = SO_MANY.search(first) or HALF.search(first)
    return found is not None and HEEL.search(first) is not None
