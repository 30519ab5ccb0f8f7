"""DOCX file: its paragraphs and tables as lines, in the order of the page."""

from __future__ import annotations

from pathlib import Path

import docx
from docx.table import Table


def text_of_docx(path: Path) -> str:
    """One line a paragraph, one line a table row; the library's own errors when it is damaged."""
    lines: list[str] = []
    for block in docx.Document(str(path)).iter_inner_content():
        if isinstance(block, Table):
            lines += [_row([cell.text for cell in row.cells]) for row in block.rows]
        else:
            lines.append(block.text)
    return "\n".join(lines) + "\n"


def _row(cells: list[str]) -> str:
    # A merged cell is given once for each column that it spans.
    seen = [cell for n, cell in enumerate(cells) if n == 0 or cell != cells[n - 1]]
    return "  ".join(" ".join(cell.split()) for cell in seen if cell.strip())
