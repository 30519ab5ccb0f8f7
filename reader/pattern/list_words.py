"""Words between the instructions of a list: those that add nothing, and those that end a clause."""

from __future__ import annotations

from reader.pattern.cursor import Book

FILLER = frozenset(
    {"when",
     "then", "now", "crochet", "put", "and", "work", "make", "working", "with", "just", "please",
     "also", "begin",
    "beginning", "again", "so", "&",
     "a", "an", "the", "next", "do", "go", "ahead", "your", "yarn", "this", "is", "plus", "using",
     "insert", "by", "from", "once"}
)  # fmt: skip
AFTER_ENDING = frozenset(
    ["join", "turn", "cut", "sl", "fasten", "drop", "then", "work", "ch", "repeat", "*"]
)
"""Behind a comma, these begin something else than the ending."""
ENDS_GROUP = frozenset(
    {".", ";", "join", "turn", "cut", "fasten", "repeat", "rep", "ending", "sl", "break", "finish"}
)


def stitchy(low: str, book: Book) -> bool:
    """Whether a word speaks of stitches."""
    return low in book.known or low in (
        "st",
        "sts",
        "stitch",
        "stitches",
        "ch",
        "chain",
        "rep",
        "repeat",
        "inc",
        "dec",
    )
