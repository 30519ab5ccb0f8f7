"""Clean text -> the same text, length kept, with what tells how the next motif is joined, "... cut
yarn. Work a 2nd motif in same manner joining to 1st motif as follows: ...", as a paragraph of its
own: it is no part of the round before it.
"""

from __future__ import annotations

from reader.text.sought import Sought

NEXT = Sought(
    ("motif", "medallion", "square"),
    r"[.][ ](?=(?:Work|Make)\s+(?:(?:an?|the)\s+)?"
    r"(?:2nd|3rd|second|third|another|other|next|remaining"
    r"|\d+\s+more|all\s+other)\s+(?:motif|medallion|square)s?\b[^.]{0,90}\bjoin)",
)


def motifs_apart(text: str) -> str:
    """The text with such sentences set apart."""
    return NEXT.sub("\n\n", text)
