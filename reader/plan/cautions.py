"""A pattern's words in, the cautions that are spoken once before work begins out."""

from __future__ import annotations

import re

BABY = re.compile(
    r"\bbab(?:y|ies)\b|\binfants?\b|\bnewborns?\b|\btoddlers?\b|\bpreemies?\b|\bbootees?\b|"
    r"\bbooties?\b|"
    r"\bcots?\b|\bcribs?\b|\bprams?\b|\brattles?\b|\bteeth(?:er|ers|ing)\b|\b\d+ months\b",
    re.IGNORECASE,
)
TOY = re.compile(r"\btoys?\b|\bdolls?\b|\bamigurumi\b|\bchild(?:ren)?\b|\bplush", re.IGNORECASE)
SMALL_PARTS = re.compile(
    r"\bbuttons?\b|\bbeads?\b|\beyes\b(?! of)|\bsafety (?:eyes?|noses?)\b|\bbells?\b|"
    r"\bsequins?\b|\bpellets?\b|"
    r"\bgravel\b|\bsnaps?\b|\bmagnets?\b|\bpom-?\s?poms?\b|\bsmall parts\b",
    re.IGNORECASE,
)
CORDS = re.compile(
    r"\bcords?\b|\bdrawstrings?\b|\bi-?cords?\b|\blanyards?\b|\bties\b|\bribbons?\b|\bstraps?\b|"
    r"\bhanging loops?\b",
    re.IGNORECASE,
)
HEAT = re.compile(
    r"\bsteam|\biron(?:ed|ing)?\b|\bpress(?:ed|ing)? (?:with|under|lightly|on|the)\b|\bmicrowav|"
    r"\bpot ?holders?\b|"
    r"\btrivets?\b|\bhot (?:pads?|mats?|water)\b|\bcandles?\b|\boven\b|\bheat(?:ed|ing)?\b|"
    r"\btea ?cos(?:y|ies)\b",
    re.IGNORECASE,
)

FOR_BABIES = (
    "This may be for a baby or a small child. Check that nothing can come loose, and follow the "
    "safety rules "
    "where you live, or ask someone qualified."
)
FOR_SMALL_PARTS = (
    "There are small parts. Keep them, and anything that could come off, away from babies and "
    "small children; "
    "for a toy, follow the toy safety rules where you live."
)
FOR_CORDS = (
    "There are cords or ties. Keep long cords and loops away from the necks and beds of babies "
    "and small "
    "children, and follow the rules where you live."
)
FOR_HEAT = (
    "Heat is used here. Read the label of your yarn first, because some fibres melt or burn, and "
    "follow the maker's "
    "directions of whatever gives the heat."
)


def cautions(text: str) -> tuple[str, ...]:
    """The sentences that apply to a pattern's own words, () where none does.

    They say what to look out for and defer to the rules where the maker lives and to qualified
    people; they judge
    nothing. Cords are named only where a baby, a child or a toy is.
    """
    said: list[str] = []
    child = bool(BABY.search(text))
    toy = bool(TOY.search(text))
    if child:
        said.append(FOR_BABIES)
    if SMALL_PARTS.search(text):
        said.append(FOR_SMALL_PARTS)
    if CORDS.search(text) and (child or toy):
        said.append(FOR_CORDS)
    if HEAT.search(text):
        said.append(FOR_HEAT)
    return tuple(said)
