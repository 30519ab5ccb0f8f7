"""The listening bench's own arithmetic: best paths, states, the picture."""

from __future__ import annotations

import xml.etree.ElementTree as ElementTree
from itertools import product

import numpy as np
import pytest

from tests.benchmarks.listening_alike import best_paths, grammars, ways_of
from tests.benchmarks.listening_beside import between, by_chance, split
from tests.benchmarks.listening_picture import MOST, WIDTH, Mark, across, draw


def by_trying(scores: np.ndarray, phones: tuple[int, ...]) -> float:
    """The best of all paths that read as these phones."""
    best = -np.inf
    for path in product(range(scores.shape[1]), repeat=len(scores)):
        read = [p for n, p in enumerate(path) if p and (n == 0 or path[n - 1] != p)]
        if tuple(read) == phones:
            best = max(best, float(sum(scores[n, p] for n, p in enumerate(path))))
    return best


def test_best_paths_are_those_of_all_paths() -> None:
    """Against every path there is: one phone, two, the same one twice, more than there is time for.
    """
    scores = np.log(np.random.default_rng(3).dirichlet(np.ones(3), 5)).astype(np.float32)
    said = [(1,), (1, 2), (2, 2), (1, 2, 1, 2, 1, 2)]
    expected = [by_trying(scores, one) for one in said]
    assert best_paths(scores, said) == pytest.approx(expected)
    assert expected[-1] == -np.inf


def test_every_state_is_looked_at() -> None:
    """States of words, and the numbers alone; every word has a known sound."""
    found = grammars()
    assert {"waiting for the next word", "paused", "numbers"} <= set(found)
    assert all(ways_of(phrase) for phrases in found.values() for phrase in phrases)


def test_the_picture_is_drawn() -> None:
    """It is XML with a dot for each mark; what is beyond the edge stays inside."""
    marks = [Mark("this ear", "digits", 0, 40), Mark("this ear", "digits", 9 * MOST, 20)]
    root = ElementTree.fromstring(draw(marks))
    dots = [one for one in root.iter() if one.tag.endswith("circle")]
    assert len(dots) == 2
    assert across(9 * MOST) < WIDTH


def test_chance_is_told_from_a_difference() -> None:
    """Six takes of one side only are no chance, five may be; the interval holds the difference."""
    assert by_chance(0, 0) == 1.0
    assert by_chance(0, 6) == pytest.approx(2 / 64)
    right, wrong = np.ones(6, bool), np.zeros(6, bool)
    assert split(right, wrong) == "6:0*"
    assert split(right[:5], wrong[:5]) == "5:0"
    first, other = np.eye(4, dtype=bool), np.ones((4, 4), bool)
    assert between(first, other) == pytest.approx((75.0, 75.0, 75.0))
