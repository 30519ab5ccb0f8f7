"""The name of a piece that begins amid a paragraph, "... Do not finish off. Handle: Ch 16, ...",
parted from what stands before it as a paragraph of its own; length kept.
"""

from __future__ import annotations

import re

_SIDE = r"(?:left |right |inner |outer |top |bottom |first |second )?"
_PIECE = (
    r"(?:handles?|straps?|flaps?|heads?|body|ears?|arms?|legs?|feet|foot|tails?|nose|muzzle|snout"
    r"|wings?|beaks?|fins?|hat|brim|crown|base|bottom|sides?|top|edging|border|petals?|flowers?"
    r"|lea(?:f|ves)|stems?|buttons?|pockets?|sleeves?|cuffs?|thumbs?|soles?|collar|scarf|mane"
    r"|horns?|spots?|cheeks?|shells?|tentacles?|hood|ties?|bows?|loops?|lid|trunk|hooves|paws?"
    r"|cowl|band|headband|ribbing|skirt|dress|bodice|yoke|back|front)"
)
PIECE = re.compile(
    rf"\.(?P<gap>[ ]|\n[ ]*)(?P<name>(?=[A-Z])(?i:{_SIDE}{_PIECE})"
    r"(?:[ ]\((?:make|work)[^()\n]{1,16}\))?):"
    r"(?=\s+(?:With|Using|Join|Attach|Ch|Chain|Sl|Make|Work|Rnd|Round|Row|R\d|Magic|In|\d|\())"
)


HEADED = re.compile(
    r"^(?P<name>[A-Z][A-Z &'/-]{2,30}(?: ?\((?:make |x )?\d+[^()\n]{0,12}\))?)(?P<gap>[ ]{3,})"
    r"(?=(?:ch|chain|mr|mc|magic|start|begin|make)\b)",
    re.MULTILINE,
)
"""A heading with the beginning of its piece far behind it: "SIDES (2)      ch 7"."""


COPIES = re.compile(r" \((\d)\)$")


def _headed(found: re.Match[str]) -> str:
    name = COPIES.sub(lambda copies: f" x {copies[1]}", found["name"])
    return f"{name}\n\n{found['gap'][2:]}"


def pieces_apart(text: str) -> str:
    """The text with such names at the start of a paragraph; any text goes in."""
    text = HEADED.sub(_headed, text)
    return PIECE.sub(lambda found: f"\n\n{found['gap'][1:]}{found['name']}:", text)
