"""PDF file: its text, page after page; says plainly when a page is only a picture."""

from __future__ import annotations

from pathlib import Path

from pypdf import PdfReader

from reader.devices.ports import PatternUnreadable


def text_of_pdf(path: Path) -> str:
    """The text of all pages; a page without text becomes a line that says so.

    Raises PatternUnreadable when no page has text or the file is locked; pypdf's own errors when
    it is damaged.
    """
    reader = PdfReader(str(path))
    if reader.is_encrypted and not reader.decrypt(""):
        raise PatternUnreadable(
            f"The file {path.name} is locked with a password; save a copy without one."
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
