"""The tags of a page's source, "<p><b>Row 5:</b> k2<br>", "[b]Row 5:[/b]", "&nbsp;", turned to
spaces, a line's end to one, so that a copy of it reads as the page does; length kept.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

BREAK = Sought(
    ("<br", "</p", "</li", "</tr", "</div", "</h"),
    r"<(?:br ?/?|/(?:p|li|tr|div|h[1-6]))>(?P<bare>[ \t]*(?=\n))?", re.IGNORECASE,
)
TAG = Sought(
    ("<", "["),
    r"</?(?:a|b|i|u|p|li|ul|ol|em|hr|strong|small|span|div|table|tbody|tr|th|td|h[1-6])"
    r"(?: [^<>\n]{0,200})?/?>|\[/?(?:b|i|u|list|center)\](?=(?:[^\[\]\n]{0,80}\[/[a-z]{1,6}\])|\W)",
    re.IGNORECASE,
)
ENTITY = Sought(
    ("&nbsp;", "&amp;", "&quot;", "&#39;", "&lt;", "&gt;", "&times;", "&frac12;"),
    r"&(?:(?P<name>nbsp|amp|quot|lt|gt|times|frac12)|#39);",
)
SAID = {"nbsp": " ", "amp": "&", "quot": '"', "lt": "<", "gt": ">", "times": "x", "frac12": "½"}


def without_tags(text: str) -> str:
    """The text without such tags."""
    text = BREAK.sub(
        lambda m: " " * len(m.group()) if m["bare"] is not None else "\n".ljust(len(m.group())),
        text,
    )
    text = TAG.sub(lambda m: " " * len(m.group()), text)
    return ENTITY.sub(lambda m: SAID.get(m["name"] or "", "'").ljust(len(m.group())), text)
