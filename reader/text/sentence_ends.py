"""Where a sentence ends that an author ends otherwise: with a shout, a heart, a smile, or with a
clause of talk behind a total -> a full stop or blanks there; length kept.
"""

from __future__ import annotations

import re

from reader.text.row_notes import behind_a_label
from reader.text.sought import has_any

_HEARTS = (
    "\u2600-\u2604\u2607-\u260f\u2614-\u26ff\u2702-\u2712\u2728\u273f\u2740\u2763\u2764\u2b50"
    "\U0001f000-\U0001faff\ufe0f\u200d"
)
"""Small pictures, as messages are ended with them; no stars, boxes, ticks and arrows."""
_SMILES = r"[:;]-?[)D]|<3|(?<=\s)x{2,3}|_{2,}|\[done\]|\(:"
SMILES_IN = (":)", ":-)", ":D", ";)", ";-)", "<3", " xx", "__", "[done]", "(:")
"""Of these every text with a smile has one."""
SMILE = re.compile(
    rf"[ \t]*(?<=\s)(?:(?:{_SMILES}|[{_HEARTS}])[ \t]*)+[ \t.]*$", re.MULTILINE
)
"""What ends a line and says nothing."""
HEART = re.compile(rf"[ \t]*[{_HEARTS}](?:[ \t]*[{_HEARTS}])*(?=(?P<next>[ \t]*\S)?)")
_NUMBER = r"\d{1,4}(?: ?[(\[][\d,;:/ -]+[)\]])?"
_KIND = (
    r"(?: ?(?:v[- ]?sts|sts?|stitches|[sdh]{1,2}[. ]?c|h[. ]?tr|d?[. ]?tr|singles|doubles|trebles"
    r"|loops?|sps?|spaces|petals|shells|clusters|groups)\b\.?)"
)
TOTAL = re.compile(
    rf"(?:(?:=|→|[–—]|(?<=\s)-{{1,2}}>?)[ ]?{_NUMBER}{_KIND}?|[(\[]{_NUMBER}{_KIND}?[)\]]"
    rf"|(?<=[.;] ){_NUMBER}{_KIND})"
    r"(?P<talk>(?:[,;]| ?[–—]| -{1,2}|(?= [A-Z])) [A-Za-z' ,]{4,90})(?=[.!]?[ ]*$)",
    re.MULTILINE,
)
"""A total, and talk that goes on behind it up to the line's end."""
WORKS = re.compile(
    r"\b(?:[sdh]{1,2}c|h?d?tr|ch|chain|sl|sts?|stitch\w*|inc\w*|dec\w*|turn\w*|join\w*|rep\w*"
    r"|[kp]|knit\w*|purl\w*|tog\w*|fasten\w*|cast\w*|bind\w*|rounds?|rows?|rnds?|times|twice|once"
    r"|more|less|fewer|each|every|next|last|first|skip\w*|miss\w*|work\w*|spaces?|sps?|loops?"
    r"|corners?|sides?|total|all|altogether|remain\w*|left|rem|needles?|hook|between|in"
    r"|plain\w*|around|across|garter|rib\w*|even|evenly|same|again|established|usual|set"
    r"|cut\w*|break\w*|pull\w*|draw\w*|sew\w*|stuff\w*|chang\w*|attach\w*|with|place\w*|move\w*|mark\w*|cable\w*|slip\w*"
    r"|colou?rs?|yarn|leav\w*|keep to|continue\w*|straight|follow\w*|pattern|begin\w*|start\w*"
    r"|only|both|sizes?|small\w*|large\w*|big\w*"
    r"|american|english|british|uk|us|end\w*|finish\w*|off|on|back|front"
    r"|over|under|through|before|after|until|till)\b"
    r"|\b(?:not |ex|in)?(?:count|clud)(?:ing|ed|s)\b",
    re.IGNORECASE,
)
"""Words that may tell what is to be worked, or what the total counts."""
TALK = re.compile(
    r"(?<=[.)\]] )[A-Z][A-Za-z']*,?(?: [A-Za-z',-]+){1,16}[.?](?=[ ]*$| [A-Z\d(\[*])", re.MULTILINE
)
"""A sentence without a number behind another."""
NOT_WORKED = re.compile(r"\btension even\b|\beven tension\b|\ball right\b", re.IGNORECASE)
"""Words of work that are none here."""


def without_talk(text: str) -> str:
    """The text with sentences behind a row's words that neither number nor name anything of the
    work turned to blanks.
    """
    return TALK.sub(_blank, text)


def _blank(found: re.Match[str]) -> str:
    said = found.group()
    works = WORKS.search(NOT_WORKED.sub("", said)) is not None
    return said if works or not behind_a_label(found) else " " * len(said)


def sentences_ended(text: str) -> str:
    """The text with a full stop where a sentence ends; any text goes in."""
    if has_any(text, SMILES_IN) or not text.isascii():
        text = SMILE.sub(lambda found: _stopped(found, ""), text)
    if not text.isascii():
        text = HEART.sub(lambda found: _stopped(found, found["next"] or ""), text)
    text = text.replace("!", ".") if "!" in text else text
    return without_talk(TOTAL.sub(_parted, text))


def _stopped(found: re.Match[str], behind: str) -> str:
    """Blanks for the pictures, and a stop where a sentence may end there."""
    size = found.end() - found.start()
    before = found.string[found.start() - 1 : found.start()]
    behind = behind.strip()
    ends = before.isalnum() or before in (")", "]")
    goes_on = behind and not (behind.isupper() or behind.isdigit())
    return " " * size if not ends or goes_on or not size else "." + " " * (size - 1)


def _parted(found: re.Match[str]) -> str:
    if WORKS.search(found["talk"]):
        return found.group()
    return found.group()[: found.start("talk") - found.start()].ljust(len(found.group()))
