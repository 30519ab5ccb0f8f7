"""What is made of cut strands: fringes, tassels, pompons, laces. It counts no stitches."""

from __future__ import annotations

import re

from reader.text.sought import Sought

_LENGTHS = r"(?:strands?|lengths?|pieces?|sections?|circles?|threads?|ends?|groups?)"
CUT = Sought(
    ("cut", "wind", "wrap", "embroider"),
    rf"^\W*(?:\([^()]*\)\s*)?(?:(?:then|now|next|using|with|from|for)\b[^.;:]{{1,50}}?,?\s)?"
    rf"(?:embroider\b|cut\s(?:[\w/½¼¾-]+\s){{1,4}}?{_LENGTHS}\b(?!\s*,)"
    r"|(?:wind|wrap)\s[^.;:]{1,60}?\b(?:card\s?board|card|book|template|gauge|ruler|hand|fingers)\b)",
    re.IGNORECASE,
)
TAKEN = Sought(
    ("strand", "tassel", "fringe", "length", "group"),
    r"^\W*(?:(?:take|knot|tie|using|fold|double|divide|draw|loop|braid|plait|twist|trim|with|in)\s"
    r"(?:[\w/½¼¾'-]+,?\s){0,6}?(?:strands?|tassels?|fringes?|lengths?)\b)",
    re.IGNORECASE,
)
KNOTTED = re.compile(
    r"\b(?:knot(?:ted|ting)?|tie|tied|fold|double(?:d)? in half|in half|loop (?:it |them )?through"
    r"|draw (?:the )?(?:ends|loops?) through|trim|weave|lace|braid|plait)\b",
    re.IGNORECASE,
)
"""What is done with strands."""
WORKS = re.compile(
    r"\b(?:ch(?:ain)?s? (?:of )?\d|cast on|pick up"
    r"|\d+ ?(?:s ?c|d ?c|h ?d ?c|tr ?c?|s d c) (?:in|over)"
    r"|knit|purl|crochet(?! hook)|garter|stockinette|cast off|bind off"
    r"|work (?:a row|\d+ rows?)|work(?:ing)? \d+ ?(?:s ?c|d ?c|tr)|k(?:nit)? ?\d|p(?:url)? ?\d)\b",
    re.IGNORECASE,
)
"""What crochets or knits."""


def of_strands(words: str) -> bool:
    """Whether a paragraph's words only cut, wind, knot or weave strands."""
    words = " ".join(words.split())
    cut = CUT.match(words) or (TAKEN.match(words) and KNOTTED.search(words))
    return bool(cut) and WORKS.search(words) is None
