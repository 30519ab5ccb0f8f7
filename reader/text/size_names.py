"""The names that sizes have in patterns, for other modules to look for: letters, words for people,
ages, and the codes that a text gives them itself, "A = newborn", "ages 3-5 = m".
"""

from __future__ import annotations

import re
from collections import Counter

_AGE = (
    r"\d{1,2}(?:(?:\s?[-–—]\s?|/| to )\d{1,2})?\s?-?(?:months?|mos?|mths?|years?|yrs?|T|Y)\b"
    r"(?: old)?"
)
_WHO = (
    r"(?:extra[ -])?(?:small(?:er|est)?|large(?:r|st)?)|medium|big(?:ger|gest)?|little"
    r"|mini|tiny|regular|standard|preemie|newborn|infant|bab(?:y|ies)|toddlers?|child(?:ren|'s)?"
    r"|kids?|youth|tweens?|teens?|juniors?|seniors?|adults?|wom[ae]n(?:'?s)?|m[ae]n(?:'?s)?"
    r"|lad(?:y|ies)(?:'s)?|girls?|boys?"
    r"|(?:first|second|third|fourth|1st|2nd|3rd|4th|5th)(?= size)"
)
_LETTER = r"(?-i:\d?X{0,3}[SL]|M|\dX)"
SIZE_NAME = (
    rf"(?:{_AGE}|(?:{_WHO})(?:[ /-](?:{_WHO}))?|{_LETTER}(?:/{_LETTER})?)"
    r"(?![\w'’]|-\w| (?:weight|yarn|wool|hook))"
)
"""One name, blind to capitals but for letters."""
_VOCABULARY = rf"(?:size |ages? )*(?:{_AGE}|{_WHO}|\d{{1,2}}(?:\s?[-–—]\s?\d{{1,2}})?)"
CODE_FIRST = re.compile(
    rf"(?<![\w=])(?P<code>[A-Za-z]|[A-Z]{{2}})\)? ?= ?{_VOCABULARY}(?!\w)", re.IGNORECASE
)
"""A code with its meaning: "A = newborn"."""
CODE_LAST = re.compile(rf"(?<!\w){_VOCABULARY} ?= ?(?P<code>[A-Za-z]|[A-Z]{{2}})(?!\w)", re.I)
HINT = re.compile(
    r"\b(?:small|large|medium|big|little|mini|tiny|newborn|bab|toddler|child|kid|teen|adult|wom[ae]n"
    r"|m[ae]n\b|lad(?:y|ies)|ages?\b|\d ?-?(?:m\b|month|mo|year|yr)|\dT\b|sizes?\b)"
    r"|\b(?-i:X?[SML])\b ?[:=)/\d]|(?-i:for [SML]\b)",
    re.IGNORECASE,
)
NEAR_TOP = 1_500
"""Characters: codes are told before the rows."""


LISTED = re.compile(
    r"^\W*(?:(?:finished|available|three|two|four|five|\d) )*"
    r"(?:sizes?\b[^:\n\d,]{0,16}?(?:[:=-]|\s)"
    r"|(?:\w+ ){0,3}(?:comes|made|written?|wrote|knitted|worked)(?: it)? (?:in|for)"
    r"|(?:to )?fits?|for)\s*"
    r"(?P<list>[^\n:]{3,120}?)(?:\.|$)",
    re.IGNORECASE | re.MULTILINE,
)
"""A line that lists names, which may be the designer's own: "Sizes: Wren, Gull and Swan"."""
OWN_NAME = re.compile(r"(?!(?:the|an?|one|all|every) )[A-Za-z][\w'-]{0,14}(?: [a-z]{2,10})?")
_NEXT = r"(?:,|;|,? (?:and|or)) (?:or )?\d+(?: \w+){0,2}? for (?:the |size )*"
FOR_SIZE = re.compile(
    r"\d(?: \w+)?(?:[ \n]?[(\[](?:or )?\d+(?: \w+){0,2}?|(?:,|;)? (?:or )?\d+(?: \w+)?) for"
    r" (?:the |size )*(?P<code>(?!(?:each|every|all|both|an?|the|other|next|last)\b)"
    r"[A-Za-z][\w'-]*)"
    rf"|\d(?: \w+)? for (?:the |size )*(?P<first>[A-Za-z][\w'-]*){_NEXT}(?P<more>[A-Za-z][\w'-]*)",
    re.IGNORECASE,
)
"""A number for another size, whatever its name: "18 (20 for W8-9", "42 for mini, 48 for midi"."""


def codes_told(text: str) -> tuple[str, ...]:
    """The codes and the names of its own that a text has for sizes, () where it has none."""
    said = Counter(
        code for one in FOR_SIZE.finditer(text) for code in one.groups() if code is not None
    )
    listed = [name for names in listed_names(text) for name in names if OWN_NAME.fullmatch(name)]
    return tuple(dict.fromkeys((*listed, *(code for code, often in said.items() if often > 1))))


def listed_names(text: str) -> tuple[tuple[str, ...], ...]:
    """The lists of names near the top: those of codes with their meaning, and those of a line that
    says for which sizes the piece is.
    """
    top = text[:NEAR_TOP]
    lists: list[tuple[str, ...]] = []
    for shape in (CODE_FIRST, CODE_LAST) if "=" in top else ():
        lists.append(tuple(dict.fromkeys(one["code"] for one in shape.finditer(top))))
    for found in LISTED.finditer(top):
        bare = re.sub(r"[(\[][^)\]]*[)\]]", ",", found["list"].rstrip(" ."))
        names = [one.strip() for one in re.split(r"[,;/|]|\band\b", bare) if one.strip()]
        lists.append(tuple(names) if all(map(OWN_NAME.fullmatch, names)) else ())
    return tuple(names for names in lists if len(names) > 1)


def name_shape(text: str) -> str:
    """A pattern for one name of a size in that text."""
    codes = codes_told(text)
    if not codes:
        return SIZE_NAME
    own = "|".join(map(re.escape, sorted(codes, key=len, reverse=True)))
    return rf"(?:(?-i:(?:{own})(?![\w'’]))|{SIZE_NAME})"


def alike(name: str) -> str:
    """The name as it is compared: small letters, no plural, no apostrophe, plain dashes."""
    low = " ".join(name.lower().split()).replace("’", "'").replace("–", "-").replace("—", "-")
    low = re.sub(r"(?<=\w\w)'?s\b", "", re.sub(r"\b(wo)?m[ae]n\b", r"\1mn", low))
    low = {"babie": "baby", "ladie": "lady", "children": "child", "kid": "child"}.get(low, low)
    return re.sub(r"\s?-\s?", "-", re.sub(r"(?<=small|large)(?:er|est)$", "", low))


def has_sizes(text: str) -> bool:
    """Whether anything in the text may name a size."""
    return HINT.search(text) is not None
