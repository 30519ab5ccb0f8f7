"""Where in a clip each phone lies, by the network's own scores: Viterbi over CTC's states."""

from __future__ import annotations

from dataclasses import dataclass

import torch

LEAST = -1e9


@dataclass(frozen=True, slots=True)
class Aligned:
    """Frames in which each phone begins and ends; cost: how much worse a phone is, in nats, than
    the network's free reading."""

    first: list[int]
    last: list[int]
    cost: float


def aligned(scores: torch.Tensor, phones: list[list[int]], frames: list[int]) -> list[Aligned]:
    """scores [batch, time, 40] (log probabilities, 0 is blank), the phones of each clip and how
    many of its frames count -> where they lie. Each clip needs more frames than phones."""
    batch, time, _ = scores.shape
    states, skips = _states(phones, scores.device)
    counted = torch.tensor(frames, device=scores.device)
    dead = torch.full((batch, 2), LEAST, device=scores.device)
    paths = torch.full(states.shape, LEAST, device=scores.device)
    paths[:, :2] = scores[:, 0].gather(1, states[:, :2])
    ends = torch.where((counted == 1)[:, None], paths, LEAST)
    steps = torch.zeros(time, *states.shape, dtype=torch.uint8, device=scores.device)
    for at in range(1, time):
        one = torch.cat([dead[:, :1], paths[:, :-1]], 1)
        two = torch.where(skips, torch.cat([dead, paths[:, :-2]], 1), LEAST)
        best, steps[at] = torch.stack([paths, one, two]).max(0)
        paths = best + scores[:, at].gather(1, states)
        ends = torch.where((counted == at + 1)[:, None], paths, ends)
    back, free = steps.cpu().numpy(), scores.max(-1).values.cpu()
    out = []
    for row, (said, count) in enumerate(zip(phones, frames, strict=True)):
        last = 2 * len(said)
        state = max(last, last - 1, key=lambda s: float(ends[row, s]))
        first, final = [-1] * len(said), [-1] * len(said)
        worse = float(free[row, :count].sum()) - float(ends[row, state])
        for at in range(count - 1, -1, -1):
            if state % 2:
                first[state // 2] = at
                final[state // 2] = max(final[state // 2], at)
            state -= int(back[at, row, state])
        out.append(Aligned(first, final, worse / len(said)))
    return out


def _states(phones: list[list[int]], device: torch.device) -> tuple[torch.Tensor, torch.Tensor]:
    """CTC's states (blank, phone, blank, ...) and which may be entered past a blank."""
    longest = max(2 * len(said) + 1 for said in phones)
    states = torch.zeros(len(phones), longest, dtype=torch.long)
    skips = torch.zeros(len(phones), longest, dtype=torch.bool)
    for row, said in enumerate(phones):
        for number, phone in enumerate(said):
            states[row, 2 * number + 1] = phone
            skips[row, 2 * number + 1] = number > 0 and said[number - 1] != phone
    return states.to(device), skips.to(device)
