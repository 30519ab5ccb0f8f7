"""Web page: HTML in, its readable text out; headings, list items and table rows each on a line."""

from __future__ import annotations

import re
from html.parser import HTMLParser

BLOCKS = {
    "p", "div", "section", "article", "header", "footer", "main", "ul", "ol", "dl", "dt", "dd",
    "table", "tr", "h1", "h2", "h3", "h4", "h5", "h6", "blockquote", "pre", "figure", "figcaption",
    "hr", "br", "li", "title",
}  # fmt: skip
UNSEEN = {"script", "style", "noscript", "template", "svg", "nav", "select", "iframe"}


def text_of_page(page: str) -> str:
    """Text as a reader of the page sees it, without scripts and navigation; never raises."""
    reading = _Reading()
    reading.feed(page)
    reading.close()
    text = "".join(reading.parts)
    lines = [re.sub(r"[ \t]+", " ", line).strip() for line in text.split("\n")]
    return re.sub(r"\n{3,}", "\n\n", "\n".join(lines)).strip() + "\n"


class _Reading(HTMLParser):
    def __init__(self) -> None:
        super().__init__(convert_charrefs=True)
        self.parts: list[str] = []
        self._unseen = 0
        self._as_written = 0

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        if tag in UNSEEN:
            self._unseen += 1
        elif tag in BLOCKS:
            self.parts.append("\n")
        elif tag in {"td", "th"}:
            self.parts.append(" ")
        if tag == "pre":
            self._as_written += 1
        if tag == "img":
            described = dict(attrs).get("alt")
            if described:
                self.parts.append(f" [picture: {described}] ")

    def handle_endtag(self, tag: str) -> None:
        if tag in UNSEEN:
            self._unseen = max(0, self._unseen - 1)
        elif tag in BLOCKS and tag not in {"br", "hr"}:
            self.parts.append("\n")
        if tag == "pre":
            self._as_written = max(0, self._as_written - 1)

    def handle_data(self, data: str) -> None:
        if self._unseen:
            return
        self.parts.append(data if self._as_written else re.sub(r"\s+", " ", data))
