"""A pattern's words in, the cautions that are spoken once before work begins out."""

from __future__ import annotations

import re

from reader.plan.step import PlanPart, RowKind

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
    "For a baby or a small child: check that nothing can come loose, and follow the safety rules "
    "where you live."
)
FOR_SMALL_PARTS = (
    "Small parts: keep them away from babies and small children, and follow the toy safety rules "
    "where you live."
)
FOR_CORDS = (
    "Cords: keep them away from the necks and beds of small children, and follow the rules where "
    "you live."
)
FOR_HEAT = (
    "Heat: read the yarn's label first, since some fibres melt, and follow the directions of "
    "whatever gives the heat."
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


WORDS = {
    FOR_BABIES: BABY,
    FOR_SMALL_PARTS: SMALL_PARTS,
    FOR_CORDS: CORDS,
    FOR_HEAT: HEAT,
}
"""The words of the pattern that each caution is about."""


def caution_rows(said: tuple[str, ...], parts: tuple[PlanPart, ...]) -> tuple[tuple[int, int], ...]:
    """(part, row) before which each caution is due: the first row that speaks of it, else the row
    after the first that is worked.
    """
    rows = [
        ((at_part, at_row), row)
        for at_part, part in enumerate(parts)
        for at_row, row in enumerate(part.rows)
    ]
    worked = next((at for at, (_, row) in enumerate(rows) if row.kind is RowKind.WORK), 0)
    behind = rows[min(worked + 1, len(rows) - 1)][0] if rows else (0, 0)
    return tuple(
        next((at for at, row in rows if WORDS[one].search(row.written)), behind) for one in said
    )
