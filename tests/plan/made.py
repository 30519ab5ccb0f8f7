"""Counted patterns made by hand for these tests; a harbour buoy, invented."""

from __future__ import annotations

from reader.counts.counted import (
    CountedPart,
    CountedPattern,
    CountedRow,
    Problem,
    Remark,
    Verdict,
)
from reader.counts.worked import Move, MoveKind, Pass
from reader.plan.step import Plan
from reader.plan.unroll import make_plan
from reader.text.span import Span

SPAN = Span(0, 1, 1)


def move(
    words: str,
    takes: int = 1,
    makes: int = 1,
    stitch: str = "sc",
    times: int = 1,
    passes: tuple[Pass, ...] = (),
    kind: MoveKind = MoveKind.WORK,
) -> Move:
    """One move, plain single crochet unless told."""
    return Move(kind, words, SPAN, takes, makes, 0, stitch, times, "", "", passes)


def repeated(times: int, *body: Move, at: int = 10) -> tuple[Move, ...]:
    """The body `times` over, each with its pass."""
    span = Span(at, at + 9, 2)
    return tuple(
        Move(
            m.kind,
            m.words,
            m.span,
            m.takes,
            m.makes,
            m.spaces,
            m.stitch,
            m.times,
            m.into,
            m.said,
            (Pass(number, times, span), *m.passes),
        )
        for number in range(1, times + 1)
        for m in body
    )


def round_of(
    number: int,
    before: int | None,
    count: int | None,
    moves: tuple[Move, ...],
    written: str,
    is_round: bool = True,
) -> CountedRow:
    """One round (or row) with its count."""
    label = f"{'Round' if is_round else 'Row'} {number}"
    span = Span(number * 100, number * 100 + 50, number)
    return CountedRow(
        label, number, is_round, written, span, before, count, count, Verdict.FITS, moves
    )


def remark(kind: str, text: str, before_row: int | None = None) -> Remark:
    """Words between rows."""
    return Remark(kind, text, SPAN, before_row)


SC2TOG = move("sc2tog", 2, 1, "sc2tog")
INC = move("inc", 1, 2, "inc")
BUOY_ROUNDS = (
    round_of(1, 0, 6, (move("6 sc in a magic ring", 0, 6, times=6),), "6 sc in a magic ring. (6)"),
    round_of(
        2, 6, 12, (move("inc in each st around", 6, 12, "inc", 6),), "inc in each st around. (12)"
    ),
    round_of(
        3,
        12,
        18,
        repeated(6, move("sc in next st"), INC),
        "*sc in next st, inc; rep from * around. (18)",
    ),
    round_of(
        4,
        18,
        24,
        repeated(6, move("sc in next 2 sts", 2, 2, times=2), INC),
        "(sc in next 2 sts, inc) x 6 (24)",
    ),
    round_of(
        5, 24, 24, (move("sc in each st around", 24, 24, times=24),), "sc in each st around. (24)"
    ),
    round_of(
        6,
        24,
        18,
        repeated(6, move("sc in next 2 sts", 2, 2, times=2), SC2TOG),
        "(sc in next 2 sts, sc2tog) x 6 (18)",
    ),
    round_of(
        7, 18, 12, repeated(6, move("sc in next st"), SC2TOG), "(sc in next st, sc2tog) x 6 (12)"
    ),
    round_of(8, 12, 6, repeated(6, SC2TOG), "sc2tog x 6 (6)"),
)
BUOY_NOTES = (
    remark("note", "With white.", 0),
    remark("note", "Change to red.", 4),
    remark("note", "Stuff firmly. Place eyes between rounds 4 and 5.", 6),
    remark("note", "Fasten off, leaving a long tail."),
)


def buoy(make: int = 2, problems: tuple[Problem, ...] = ()) -> CountedPattern:
    """A round buoy in two colours, `make` of it."""
    return pattern(CountedPart("BUOY", make, BUOY_ROUNDS, BUOY_NOTES), problems=problems)


def pattern(
    *parts: CountedPart, craft: str = "crochet", problems: tuple[Problem, ...] = ()
) -> CountedPattern:
    """A counted pattern of these parts with the buoy's materials and finishing."""
    return CountedPattern(
        "Harbour Buoy",
        craft,
        "US",
        "",
        (),
        0,
        parts,
        problems,
        materials=(
            remark(
                "materials",
                "Worsted cotton: white 60 g, red 40 g\n4 mm crochet hook\nStitch marker, "
                "tapestry needle",
            ),
        ),
        gauge=(remark("gauge", "18 sc and 20 rounds = 4 inches (10 cm)"),),
        finishing=(remark("finishing", "Sew the two together. Weave in the ends."),),
    )


def buoy_plan(make: int = 2) -> Plan:
    """The buoy's plan."""
    return make_plan(buoy(make), "a buoy")
