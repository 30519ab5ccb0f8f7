"""Looks up written forms: a phrase of the text -> the stitch it names, for craft and terms."""

from __future__ import annotations

from functools import cache

from reader.terms import crochet_stitches, knitting_stitches
from reader.terms.crafts import Terms
from reader.terms.stitches import CABLE, TOGETHER, WIDENED, Craft, Stitch, cable, together, widened

STITCHES: dict[Craft, dict[str, Stitch]] = {
    Craft.CROCHET: {s.name: s for s in crochet_stitches.ROWS},
    Craft.KNITTING: {s.name: s for s in knitting_stitches.ROWS},
}
"""Every stitch by craft and US short name."""

LONGEST = 4
"""Words in the longest written form."""


@cache
def forms(craft: Craft, terms: Terms) -> dict[str, str]:
    """Written form (lower case) -> US short name, for this craft and these terms."""
    if craft is Craft.KNITTING:
        return dict(knitting_stitches.FORMS)
    table = dict(crochet_stitches.FORMS)
    if terms is Terms.UK:
        table.update(crochet_stitches.UK_ONLY)
    else:
        for form, name in crochet_stitches.UK_ONLY.items():
            table.setdefault(form, name)
    return table


def stitch_named(name: str, craft: Craft) -> Stitch | None:
    """The table's stitch of that US short name; families (sc3tog, C6F) are made on demand."""
    found = STITCHES[craft].get(name)
    if found is not None:
        return found
    return _family(name, craft)


@cache
def _family(name: str, craft: Craft) -> Stitch | None:
    tog = TOGETHER.match(name)
    if tog:
        base, number = tog.group(1), int(tog.group(2))
        plain = STITCHES[craft].get(base)
        spoken = plain.spoken if plain else base
        return together(base, min(number, 99), spoken, craft)
    wide = WIDENED.fullmatch(name)
    plain = STITCHES[craft].get(wide["base"]) if wide and craft is Craft.CROCHET else None
    if plain is not None:
        return widened(name, plain)
    twist = CABLE.match(name)
    if twist and craft is Craft.KNITTING:
        moved = sum(int(part) for part in twist.groups() if part)
        return cable(name, min(moved, 99))
    return None


@cache
def name_of(form: str, craft: Craft, terms: Terms) -> str:
    """The US short name a written form (lower case) stands for, "" when it is no stitch."""
    table = forms(craft, terms)
    if form in table:
        return table[form]
    tog = TOGETHER.match(form)
    if tog:
        base = table.get(tog.group(1), "")
        return f"{base}{int(tog.group(2))}tog" if base else ""
    if craft is Craft.KNITTING and CABLE.match(form):
        return form
    wide = WIDENED.fullmatch(form) if craft is Craft.CROCHET else None
    base = table.get(wide["base"], "") if wide else ""
    if wide and wide["gap"] and base == "sc":
        # "Sc inc" in short rows are two items.
        return ""
    return "" if not wide or not base else f"{base} inc" if wide["inc"] else f"{base}2tog"
