"""Clean text -> the same text, length kept, with a foundation that is told as a number read as its
chain: "Foundation ch: 24" -> "ch 24".
"""

from __future__ import annotations

import re

FOUNDATION = re.compile(
    r"^(?P<lead>[ \t]*)(?:foundation|starting|start|beginning|beg|base)[ -]?(?:ch(?:ain)?s?)?"
    r"[ ]?[:=—-][ ]?(?P<n>\d{1,4})(?:[ ]?ch(?:ain)?s?)?(?=[ ]*(?:[.(;,\n]|$))",
    re.IGNORECASE | re.MULTILINE,
)


BY_CHAINING = re.compile(
    r"^(?P<lead>[ \t]*)(?:start|begin)(?:ning|ing)?(?: off)?(?: by| with)?(?: making)?"
    r" (?:chaining|a chain of|a ch of|chains? of)[ ](?P<n>\d{1,4})"
    r"(?P<more>[ ]?(?:plus|\+)[ ]?\d{1,2})?",
    re.IGNORECASE | re.MULTILINE,
)
"""The foundation told as what is done first: "Start by chaining 25 plus 2"."""


WITH_TURN = re.compile(
    r"\b(?P<chain>ch|chain|make a chain of|make|work)(?: of)? (?P<n>\d{1,3})"
    r"(?P<unit> ch(?:ain)?s?)?(?: sts?| stitches)?,? (?:plus|\+|and) (?P<m>[1-5])"
    r"(?: more| extra)?(?: ch(?:ain)?s?)?"
    r" (?:turning ch(?:ain)?s?|(?:to|for) turn(?:ing)?(?: ch(?:ain)?)?|for (?:the )?t-?ch)\b",
    re.IGNORECASE,
)
"""The foundation with the chains to turn with: "Ch 20, plus 1 turning ch"."""
SET_UP = re.compile(
    r"^[ \t]*(?:set[ -]?up|(?:foundation|base|starting|beginning)"
    r"(?: (?:row|round|rnd|ch(?:ain)?))?)"
    r" ?[:=.—-](?= ?(?:(?:ch|chain|make|work)\b[^\d\n,;]{0,16}\d{1,4}(?:[ ]ch(?:ain)?s?)?"
    r"(?: sts?| stitches)?\.?[ \t]*$))"
    r"|^[ \t]*setup ?[:=—-](?= ?(?:ch|chain|make|work)\b)", re.IGNORECASE | re.MULTILINE,
)
"""Before a line with nothing but the chain, what it is for."""
RING_ONLY = re.compile(
    r"^(?P<lead>[ \t]*(?:to[ ](?:begin|start)|set[ -]?up(?:[ ](?:round|rnd))?|first(?:ly)?"
    r"|(?:foundation|base)"
    r"(?:[ ](?:ring|round|rnd|ch(?:ain)?))?)[ ]?[:=—-])(?=[ ](?:(?:with|using"
    r"|in)[ ][^.;:\n]{1,30}?)?(?:(?:make|work)[ ])?"
    r"(?:(?:a[ ])?ch(?:ain)?[ ](?:of[ ])?\d{1,3}|\d{1,3}[ ]ch(?:ain)?s?)\b(?![^\n]*\b(?:sc|h?dc"
    r"|h?tr|treble|double|single)\b)"
    r"[^\n]*\b(?:join|joined|sl|ss|slip|ring|close)\b)",
    re.IGNORECASE | re.MULTILINE,
)
"""Before a line with a chain and its joining alone, what it is for: "To begin: Ch 30, join"."""
CHAIN_ONLY = re.compile(
    r"^(?P<lead>[ \t]*)ch(?:ain)?(?: up|:| =|=| -)[ ]?(?P<n>\d{1,4})"
    r"(?=[ ]*(?:sts?|stitches)?\.?[ \t]*$)",
    re.IGNORECASE | re.MULTILINE,
)


def _in_all(found: re.Match[str]) -> str:
    if not (found["unit"] or found["chain"].lower().startswith("ch") or "of" in found["chain"]):
        return found.group()
    return f"ch {int(found['n']) + int(found['m'])}".ljust(len(found.group()))


def with_chain(text: str) -> str:
    """The text with such lines as a chain of so many; any other text as it is."""
    text = RING_ONLY.sub(lambda found: " " * len(found.group()), text)
    text = WITH_TURN.sub(_in_all, SET_UP.sub(lambda found: " " * len(found.group()), text))
    text = BY_CHAINING.sub(
        lambda m: f"{m['lead']}ch {m['n']}{m['more'] or ''}".ljust(len(m.group())), text
    )
    text = CHAIN_ONLY.sub(lambda m: f"{m['lead']}ch {m['n']}".ljust(len(m.group())), text)
    return FOUNDATION.sub(lambda m: f"{m['lead']}ch {m['n']}".ljust(len(m.group())), text)
