"""How far apart two words sound, by their phones; pure."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

KINDS = (
    "B P D T G K", "F V TH DH", "S Z SH ZH CH JH", "M N NG", "L R W Y",
    "AA AO AH UH OW", "IY IH EY EH", "AE EH AH", "UW UH", "AY AA", "AW AO", "ER AH",
)  # fmt: skip
"""Phones that are often taken for one another, by place and manner; our judgement, no source."""
_KINDS = tuple(frozenset(kind.split()) for kind in KINDS)

Phones = tuple[str, ...]
"""Phones of the CMU pronouncing dictionary, without stress."""


def exchange(a: str, b: str) -> float:
    """0 for the same phone, a half for one of its kind, else 1."""
    if a == b:
        return 0.0
    return 0.5 if any(a in kind and b in kind for kind in _KINDS) else 1.0


def apart(a: Phones, b: Phones) -> float:
    """0 for the same sounds to 1 for nothing in common: edit distance over the longer length."""
    row = [float(n) for n in range(len(b) + 1)]
    for i, x in enumerate(a, 1):
        before, row[0] = row[0], float(i)
        for j, y in enumerate(b, 1):
            step = before + exchange(x, y)
            before, row[j] = row[j], min(row[j] + 1, row[j - 1] + 1, step)
    return row[-1] / max(len(a), len(b), 1)


def nearest(word: Phones, others: Sequence[Phones]) -> float:
    """How far the nearest of the others is; 1 when there are none."""
    return min((apart(word, other) for other in others), default=1.0)


def most_apart(
    candidates: Sequence[str], others: Sequence[str], sounds: Mapping[str, Phones]
) -> str:
    """The candidate that sounds least like any of the others, "" when none has known sounds."""
    known = [one for one in candidates if one in sounds and one not in others]
    around = [sounds[other] for other in others if other in sounds]
    return max(known, key=lambda one: nearest(sounds[one], around), default="")
