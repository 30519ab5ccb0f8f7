"""PDF file: its text, page after page; says plainly when a page is only a picture."""

from __future__ import annotations

from pathlib import Path

from pypdf import PdfReader

from reader.devices.ports import PatternUnreadable

MOST_PAGES = 200
"""Pages; a pattern is shorter, and a book takes minutes to take apart. Judgement."""


def text_of_pdf(path: Path) -> str:
    """The text of all pages; a page without text becomes a line that says so.

    Raises PatternUnreadable when no page has text, the file is locked or it is a whole book;
    pypdf's own errors when it is damaged.
    """
    reader = PdfReader(str(path))
    if reader.is_encrypted and not reader.decrypt(""):
        raise PatternUnreadable(
            f"The file {path.name} is locked with a password; save a copy without one."
        )
    if len(reader.pages) > MOST_PAGES:
        raise PatternUnreadable(
            f"The file {path.name} has {len(reader.pages)} pages, far more than a pattern; "
            "save the pages of the one pattern you want as a file of their own."
        )
    pages = [(page.extract_text() or "").strip() for page in reader.pages]
    if not any(pages):
        raise PatternUnreadable(
            f"The pages of {path.name} are only pictures without text, and pictures cannot be read "
            "here; ask for the pattern as text."
        )
    lines = []
    for number, text in enumerate(pages, 1):
        lines.append(text or f"[Page {number} is only a picture and cannot be read.]")
    return "\n\n".join(lines) + "\n"
