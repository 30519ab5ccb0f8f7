"""Sizes of hooks and needles, and the standard yarn weights with what they are worked at."""

from __future__ import annotations

import re
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Tool:
    """A hook or needle: its thickness in millimetres and its US name, "" where there is none."""

    mm: float
    us: str


HOOKS: tuple[Tool, ...] = (
    Tool(2.0, ""), Tool(2.25, "B-1"), Tool(2.5, ""), Tool(2.75, "C-2"), Tool(3.0, ""),
    Tool(3.25, "D-3"), Tool(3.5, "E-4"), Tool(3.75, "F-5"), Tool(4.0, "G-6"), Tool(4.5, "7"),
    Tool(5.0, "H-8"), Tool(5.5, "I-9"), Tool(6.0, "J-10"), Tool(6.5, "K-10 1/2"), Tool(7.0, ""),
    Tool(8.0, "L-11"), Tool(9.0, "M/N-13"), Tool(10.0, "N/P-15"), Tool(11.5, "P-16"),
    Tool(12.0, "O"), Tool(15.0, "P/Q"), Tool(16.0, "Q"), Tool(19.0, "S"),
)  # fmt: skip
"""Hooks. Source: the chart at matifs.com/crochet-hooks-size-chart and a shop's conversion chart,
both
read; letters and millimetres agree with the Craft Yarn Council's list (from memory)."""

NEEDLES: tuple[Tool, ...] = (
    Tool(2.0, "0"), Tool(2.25, "1"), Tool(2.75, "2"), Tool(3.25, "3"), Tool(3.5, "4"),
    Tool(3.75, "5"), Tool(4.0, "6"), Tool(4.5, "7"), Tool(5.0, "8"), Tool(5.5, "9"),
    Tool(6.0, "10"), Tool(6.5, "10 1/2"), Tool(8.0, "11"), Tool(9.0, "13"), Tool(10.0, "15"),
    Tool(12.75, "17"), Tool(15.0, "19"),
)  # fmt: skip
"""Needles. Source: Craft Yarn Council, Standards and Guidelines, from memory; 2.25, 3.25, 3.75,
4.5,
5.5, 8 and 12.75 mm agree with the needle sizes of its yarn weight table (read)."""


@dataclass(frozen=True, slots=True)
class YarnWeight:
    """A standard yarn weight: stitches to four inches (least, most) and hook or needle in mm.

    knit: stockinette. crochet: single crochet, for lace double crochet. most needle or hook
    None where open.
    """

    number: int
    name: str
    types: tuple[str, ...]
    knit: tuple[int, int]
    needle_mm: tuple[float, float | None]
    crochet: tuple[int, int]
    hook_mm: tuple[float, float | None]


YARN_WEIGHTS: tuple[YarnWeight, ...] = (
    YarnWeight(0, "lace", ("crochet thread",), (33, 40), (1.5, 2.25), (32, 42), (1.4, 2.25)),
    YarnWeight(
        1,
        "super fine",
        ("sock", "fingering", "baby"),
        (27, 32),
        (2.25, 3.25),
        (21, 32),
        (2.25, 3.5),
    ),
    YarnWeight(2, "fine", ("sport", "baby"), (23, 26), (3.25, 3.75), (16, 20), (3.5, 4.5)),
    YarnWeight(3, "light", ("dk", "light worsted"), (21, 24), (3.75, 4.5), (12, 17), (4.5, 5.5)),
    YarnWeight(
        4, "medium", ("worsted", "afghan", "aran"), (16, 20), (4.5, 5.5), (11, 14), (5.5, 6.5)
    ),
    YarnWeight(5, "bulky", ("chunky", "craft", "rug"), (12, 15), (5.5, 8.0), (8, 11), (6.5, 9.0)),
    YarnWeight(6, "super bulky", ("roving",), (7, 11), (8.0, 12.75), (6, 9), (9.0, 16.0)),
    YarnWeight(7, "jumbo", ("roving",), (1, 6), (12.75, None), (1, 5), (16.0, None)),
)
"""Source: Craft Yarn Council, Standard Yarn Weight System, weights 0 to 3 read at
craftyarncouncil.com,
the whole table read as republished with credit at 222handspun.com."""


def tools(craft: str) -> tuple[Tool, ...]:
    """Hooks for crochet, needles for knitting, from thin to thick."""
    return NEEDLES if craft == "knitting" else HOOKS


def next_tool(mm: float, craft: str, larger: bool) -> Tool | None:
    """The next standard size above or below; None where there is none."""
    if larger:
        return next((tool for tool in tools(craft) if tool.mm > mm + 0.01), None)
    return next((tool for tool in reversed(tools(craft)) if tool.mm < mm - 0.01), None)


def tool_of(us: str, craft: str) -> Tool | None:
    """The tool of a US name ("G-6", "7", "H"); None for an unknown one."""
    wanted = us.strip().upper()
    for tool in tools(craft):
        name = tool.us.upper()
        if wanted and (wanted == name or wanted in (name.split("-")[0], name.split("-")[-1])):
            return tool
    return None


US_SIZE = re.compile(
    r"\b(?:US\s+)?(?:size\s+)?([A-S](?:[-/ ]?\d{1,2}(?: 1/2)?)?|\d{1,2}(?: 1/2)?)\s*(?=hooks?\b|"
    r"(?:knitting |circular |double[- ]pointed )?needles?\b|\)|$)"
)
"""A US size in words of a pattern: "size H-8 hook", "US 7 needles"."""


def tool_named(words: str, craft: str) -> Tool | None:
    """The tool whose US size stands in words of a pattern; None where none does, or where the
    millimetres are told anyway.
    """
    found = US_SIZE.search(words)
    if found is None or re.search(r"\d\s?mm\b", words):
        return None
    return tool_of(found.group(1).replace(" ", "-") if "1/2" not in words else found[1], craft)


def weight_of(words: str) -> YarnWeight | None:
    """The standard weight that words of a pattern name ("worsted", "DK", "#4"); None where none is
    named.
    """
    low = (
        f" {' '.join(words.lower().replace('(', ' ').replace(')', ' ').replace(',', ' ').split())} "
    )
    for weight in YARN_WEIGHTS:
        if f" #{weight.number} " in low:
            return weight
    named = [
        (len(name), weight)
        for weight in YARN_WEIGHTS
        for name in (*weight.types, weight.name)
        if f" {name} " in low and name != "baby" and name != "craft" and name != "rug"
    ]
    return max(named, key=lambda found: found[0])[1] if named else None
