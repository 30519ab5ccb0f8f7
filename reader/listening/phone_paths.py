"""How well a phrase's phones explain a sound's scores, by the best path of CTC; pure."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from reader.listening.log_mel import Floats

NEVER = np.float32(-1e9)
Phones = tuple[int, ...]


def worst_per_phone(scores: Floats, said: Sequence[Phones]) -> Floats:
    """For each phrase: how much worse than the freest reading, in nats a phone; 0 is the same.

    scores: [n, 40] log probabilities, n at least 1, 0 is blank. said: phones, none empty.
    """
    best, _ = _paths(scores, said)
    free = float(scores.max(1).sum())
    return np.asarray((free - best) / np.array([len(one) for one in said]), np.float32)


def place_of(scores: Floats, said: Phones) -> tuple[int, int]:
    """First frame of the phrase on its best path, and the frame behind its last."""
    _, back = _paths(scores, [said], keep=True)
    state = 2 * len(said) - int(back.pop()[0, 0])
    on = []
    for at in range(len(scores) - 1, -1, -1):
        if state % 2:
            on.append(at)
        state -= int(back[at][0, state])
    return (on[-1], on[0] + 1) if on else (0, len(scores))


def _paths(
    scores: Floats, said: Sequence[Phones], keep: bool = False
) -> tuple[Floats, list[NDArray[np.int8]]]:
    """The best path's score of each phrase, and where each state was entered from."""
    longest = max(map(len, said))
    states = np.zeros((len(said), 2 * longest + 1), np.int64)
    skips = np.zeros(states.shape, bool)
    for row, phones in enumerate(said):
        states[row, 1 : 2 * len(phones) : 2] = phones
        for n in range(1, len(phones)):
            skips[row, 2 * n + 1] = phones[n] != phones[n - 1]
    paths = np.full(states.shape, NEVER)
    paths[:, :2] = scores[0][states[:, :2]]
    back = [np.zeros(states.shape, np.int8)]
    one, two = np.full(states.shape, NEVER), np.full(states.shape, NEVER)
    for frame in scores[1:]:
        one[:, 1:] = paths[:, :-1]
        two[:, 2:] = np.where(skips[:, 2:], paths[:, :-2], NEVER)
        if keep:
            back.append(np.stack([paths, one, two]).argmax(0).astype(np.int8))
        paths = np.maximum(np.maximum(paths, one), two) + frame[states]
    rows, last = np.arange(len(said)), 2 * np.array([len(one) for one in said])
    if keep:
        better = paths[rows, last] < paths[rows, last - 1]
        back.append(better[:, None].astype(np.int8))
    return np.maximum(paths[rows, last], paths[rows, last - 1]), back
