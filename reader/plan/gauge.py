"""Stitches measured over a length in, what they mean for tool and finished size out."""

from __future__ import annotations

import re
from dataclasses import dataclass
from enum import Enum

from reader.plan.step import Plan
from reader.plan.tools import Tool, next_tool, tool_named

CM_PER_INCH = 2.54
"""By definition."""

SWATCH_CM = 10.0
SWATCH_IN = 4.0
"""Gauges are compared over four inches or ten centimetres, which patterns treat as one."""

NEAR_STS = 0.5
"""Stitches over the swatch that still count as the same gauge. Common practice, no source."""

FAR_SHARE = 0.12
"""Share of the gauge from which two sizes of tool are named. Common practice, no source."""

_OVER = r"(?P<length>\d+(?:\.\d+)?)\s*(?P<unit>\"|”|″|in\b|inch|cm\b|centim)"
_GAUGE = re.compile(
    r"(?<![\w.-])(?P<sts>\d+(?:\.\d+)?)\s*(?:sts?|stitches|s ?c|h?dc|d?tr|htr|single|half|double|"
    r"treble|knit)\b"
    r"[a-z ]{0,24}?(?:\s*(?:,|and|x|&|by)\s*(?P<rows>\d+(?:\.\d+)?)\s*"
    rf"(?:rows|rounds|rnds|r))?[^\d=]{{0,24}}(?:=|to|over|in|per|are|is)\s*{_OVER}",
    re.IGNORECASE,
)


_MILLIMETRES = re.compile(r"(\d+(?:\.\d+)?)\s*mm\b", re.IGNORECASE)


class Advice(Enum):
    """What to do about a gauge."""

    FITS = "fits"
    LARGER = "larger"
    SMALLER = "smaller"


@dataclass(frozen=True, slots=True)
class Gauge:
    """Stitches, and rows where they are told, over ten centimetres."""

    stitches: float
    rows: float | None = None


@dataclass(frozen=True, slots=True)
class GaugeCheck:
    """A measured gauge beside the wanted one.

    share: finished width as a share of the pattern's (0.9: a tenth narrower). row_share: the
    same for
    length, None where rows are not known. tool: the size to try, None where none is known.
    sizes: how
    many sizes away it is.
    """

    wanted: Gauge
    measured: Gauge
    advice: Advice
    share: float
    row_share: float | None
    tool: Tool | None
    sizes: int


def read_gauge(text: str) -> Gauge | None:
    """The gauge that words tell ("18 sc and 20 rounds = 4 inches"), over ten centimetres; None for
    none.
    """
    found = _GAUGE.search(text)
    if found is None:
        return None
    length = float(found["length"])
    if length <= 0:
        return None
    swatch = SWATCH_CM if found["unit"].startswith("c") else SWATCH_IN
    scale = swatch / length
    rows = float(found["rows"]) if found["rows"] else None
    return Gauge(float(found["sts"]) * scale, rows * scale if rows else None)


def wanted_gauge(plan: Plan) -> Gauge | None:
    """The gauge a plan tells first; None for none."""
    return next((found for text in plan.gauge if (found := read_gauge(text))), None)


def tool_mm(plan: Plan) -> float | None:
    """The millimetres of the hook or needles that the gauge is told for, else the largest in the
    gathering list; None where none are told.

    The largest, since the smaller ones of a list are for ribs and edges (common practice, no
    source).
    """
    told = next((text for text in plan.gauge if read_gauge(text)), "")
    listed = [item.text for item in plan.gather if item.kind in ("hook", "needle")]
    for texts in ([told], listed):
        sizes = [size for text in texts for size in _sizes_mm(text, plan.craft)]
        if sizes:
            return max(sizes)
    return None


def _sizes_mm(text: str, craft: str) -> list[float]:
    """The sizes that words name in millimetres, else the one they name by its US size."""
    found = [float(size) for size in _MILLIMETRES.findall(text)]
    tool = None if found else tool_named(text, craft)
    return [tool.mm] if tool else found


def measured(stitches: float, over_cm: float, rows: float | None = None) -> Gauge | None:
    """A gauge from stitches (and rows) counted over a length in centimetres; None unless all are
    above 0.
    """
    if stitches <= 0 or over_cm <= 0 or (rows is not None and rows <= 0):
        return None
    scale = SWATCH_CM / over_cm
    return Gauge(stitches * scale, rows * scale if rows else None)


def check_gauge(wanted: Gauge, found: Gauge, craft: str, tool_mm: float | None) -> GaugeCheck:
    """What a measured gauge means: more stitches than wanted are too small and ask for a larger
    tool.

    tool_mm: the hook or needle used, None where unknown; no size is named then.
    """
    share = wanted.stitches / found.stitches
    row_share = wanted.rows / found.rows if wanted.rows and found.rows else None
    apart = found.stitches - wanted.stitches
    if abs(apart) <= NEAR_STS:
        return GaugeCheck(wanted, found, Advice.FITS, share, row_share, None, 0)
    larger = apart > 0
    sizes = 2 if abs(apart) / wanted.stitches > FAR_SHARE else 1
    tool: Tool | None = None
    at = tool_mm
    for _ in range(sizes):
        step = next_tool(at, craft, larger) if at is not None else None
        tool, at = step or tool, step.mm if step else at
    advice = Advice.LARGER if larger else Advice.SMALLER
    return GaugeCheck(wanted, found, advice, share, row_share, tool, sizes)


def width_cm(stitches: int, gauge: Gauge) -> float:
    """How wide that many stitches come out."""
    return stitches / gauge.stitches * SWATCH_CM
