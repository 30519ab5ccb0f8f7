"""Large print: a plan in, one HTML page out that weak eyes can read on paper or on a screen.

24 point sans serif, black on white, one column, left aligned, wide lines, no italics, every step
spelled out, a box to tick for every row and every pass of a repeat. Type of 18 points and more,
sans serif and wide spacing: guidelines of the American Council of the Blind and CCLVI for large
print; 22 to 24 points, no italics and repeats written out: common advice of makers with low vision.
"""

from __future__ import annotations

from html import escape

from reader.exports.worked_out import Block, Spoken, blocks
from reader.plan.step import Plan, PlanPart, PlanRow, RowKind

_STYLE = """
html { color: #000; background: #fff; font-family: Verdana, "DejaVu Sans", Arial, sans-serif;
  font-size: 24pt; line-height: 1.5; }
body { margin: 0 auto; max-width: 32em; padding: 1em; text-align: left; font-style: normal; }
h1 { font-size: 36pt; line-height: 1.2; }
h2 { font-size: 32pt; line-height: 1.2; border-top: 4pt solid #000; padding-top: 0.4em;
  break-after: avoid; }
h3 { font-size: 24pt; margin: 1em 0 0; break-after: avoid; }
p, ul, ol { margin: 0.2em 0; }
li { margin: 0.2em 0; }
section.row { break-inside: avoid; }
.box { display: inline-block; width: 0.8em; height: 0.8em; border: 2pt solid #000;
  margin-right: 0.4em; }
.count { font-weight: bold; }
.warning { border: 3pt solid #000; padding: 0.3em; font-weight: bold; }
@page { margin: 15mm; }
@media print { body { max-width: none; padding: 0; } }
"""

_MOST_BOXES = 24
"""Boxes in a run; a repeat with more passes is counted better by the program or by beads."""


def large_print(plan: Plan, spoken: Spoken) -> str:
    """The whole plan as one page of HTML, nothing fetched from elsewhere; spoken gives a step in
    words.
    """
    body = [f"<h1>{_text(plan.title or 'Pattern')}</h1>"]
    if plan.size:
        body.append(f"<p>Size: {_text(plan.size)}</p>")
    body += _listed("What needs care", plan.cautions)
    body += _listed("To gather", tuple(item.text for item in plan.gather))
    body += _listed("Gauge", plan.gauge)
    body += _listed("Notes", plan.notes)
    body += _listed("What does not add up in this pattern", plan.warnings)
    for part in plan.parts:
        body += _part(part, spoken)
    return "\n".join([*_head(plan.title), *body, "</body>", "</html>", ""])


def _head(title: str) -> list[str]:
    return [
        "<!DOCTYPE html>",
        '<html lang="en">',
        "<head>",
        '<meta charset="utf-8">',
        '<meta name="viewport" content="width=device-width, initial-scale=1">',
        f"<title>{_text(title or 'Pattern')}, large print</title>",
        f"<style>{_STYLE}</style>",
        "</head>",
        "<body>",
    ]


def _part(part: PlanPart, spoken: Spoken) -> list[str]:
    name = part.name or "The work"
    copy = f", number {part.copy} of {part.copies}" if part.copies > 1 else ""
    made = [f"<h2>{_text(name + copy)}</h2>"]
    for row in part.rows:
        made += _row(row, spoken)
    return made


def _row(row: PlanRow, spoken: Spoken) -> list[str]:
    made = ['<section class="row">']
    if row.label:
        side = f", {row.side}" if row.side else ""
        made.append(
            f'<h3><span class="box" aria-hidden="true"></span>{_text(row.label + side)}</h3>'
        )
    made += [f"<p>Before you begin: {_text(notice.text)}</p>" for notice in row.notices]
    if row.warning:
        made.append(f'<p class="warning">Look out: {_text(row.warning)}</p>')
    if row.kind is RowKind.UNREAD:
        made.append(f"<p>As written: {_text(row.written)}</p>")
    elif row.groups:
        for block in blocks(row, spoken):
            made += _block(block)
    else:
        made.append(f"<p>{_text(row.written)}</p>")
    if row.count is not None:
        stitches = f"{row.count} {row.of or 'stitches'}"
        if row.groups_made is not None:
            stitches = f"{row.groups_made} {row.group}, {stitches} in all"
        made.append(f'<p class="count">You should have {_text(stitches)}.</p>')
    return [*made, "</section>"]


def _block(block: Block) -> list[str]:
    sentences = [_sentence(words) for words in block.sentences if words.strip()]
    if block.times > 1:
        boxes = '<span class="box" aria-hidden="true"></span>' * min(block.times, _MOST_BOXES)
        steps = [f"<li>{words}</li>" for words in sentences]
        return [f"<p>{block.times} times:</p>", "<ol>", *steps, "</ol>", f"<p>{boxes}</p>"]
    if block.which:
        return [f"<p>{_sentence(block.which)}</p>", *(f"<p>{words}</p>" for words in sentences)]
    return [f"<p>{words}</p>" for words in sentences]


def _listed(heading: str, texts: tuple[str, ...]) -> list[str]:
    if not texts:
        return []
    items = [f"<li>{_sentence(text)}</li>" for text in texts]
    return [f"<h2>{_text(heading)}</h2>", "<ul>", *items, "</ul>"]


def _sentence(words: str) -> str:
    """With a capital and a full stop."""
    plain = " ".join(words.split())
    capital = plain[:1].upper() + plain[1:]
    return _text(capital if capital[-1:] in (".", "!", "?", ":") else f"{capital}.")


def _text(words: str) -> str:
    return escape("".join(c if c.isprintable() or c in "\n\t" else " " for c in words))
