"""Trains the proof's network with CTC on packed speech; minutes on one GPU.

usage: python -m models.recipe.proof_train PACKED_DIR OUT_DIR (--whisper model.bin | --resume
       proof.pt) [--seconds 300] [--peak 2e-4]

PACKED_DIR: see train.py. Prints the loss and the phone error on voices and on people that are never
trained on; leaves proof.pt (averaged weights, 16 bits) in OUT_DIR.
"""

from __future__ import annotations

import argparse
import math
import time
from pathlib import Path

import numpy as np
import torch

from models.recipe import augment
from models.recipe.proof_network import LogMel, Proof, start_from_whisper
from models.recipe.train import HELD, RATE_HZ, Speech, Spoiling, draw, share_wrong, spoil

HOW = Spoiling(
    (0.88, 1.15), (0.85, 1.25), 0.45, (0, 0.45), (-4, 0.45), (0, 0.3), (6, 0.5), dropout=0.1
)
"""Other talk is mixed in oftener and louder than for the first network, from both sides of a word
too: this one is to tell whoever speaks to it from a television."""
LENGTHS = ((2, 1), (2, 1), (3, 1), (3, 2), (4, 2), (5, 3))
"""Seconds of a stretch and how many utterances it may hold, in turn."""
LATE = 0.4
"""Share of stretches that begin with a long time in which nobody speaks."""
SINGLE = {"cmdcut": 2.0, "cut": 2.0, "word": 1.5, "piece": 1.3}
"""How much oftener single words are drawn than for the first network: this one judges them."""
HEAD_TIMES = 8.0
"""How much faster the new last layer learns than the rest."""


def later(sound: torch.Tensor, chance: np.random.Generator) -> torch.Tensor:
    """The batch with some of its silence moved from behind the speech to before it."""
    batch, n = sound.shape
    spoken = (sound.abs() > 1e-3).long()
    free = spoken.flip(1).argmax(1) - 1_600
    share = torch.tensor(chance.random(batch) * (chance.random(batch) < LATE)).to(sound.device)
    move = (free.clamp(min=0) * spoken.amax(1) * share).long()
    at = torch.arange(n, device=sound.device)[None] - move[:, None]
    return sound.gather(1, at % n)


def phone_error(network: Proof, mel: LogMel, speech: Speech, held: list) -> float:
    """Share of wrong phones in a greedy reading of the shortest speech held out of training."""
    held = sorted((one for one in held if one[4] < 5 * RATE_HZ), key=lambda one: one[4])
    return share_wrong(network, mel, speech, held[:800], 200)


def errors(network: Proof, mel: LogMel, speech: Speech) -> str:
    """The phone error on voices and on people held out, in words."""
    return ", ".join(
        f"{100 * phone_error(network, mel, speech, speech.held[kind]):.1f} % of {name}"
        for kind, name in HELD.items()
    )


def keep(network: torch.nn.Module, folder: Path) -> None:
    """Writes proof.pt whole or not at all."""
    torch.save({k: v.half().cpu() for k, v in network.state_dict().items()}, folder / "part.pt")
    (folder / "part.pt").replace(folder / "proof.pt")


class Course:
    """One training: what is drawn, spoiled and learned, step by step."""

    def __init__(self, speech: Speech, network: Proof, peak: float, batch: int) -> None:
        self.speech, self.network, self.batch = speech, network, batch
        self.device = speech.device
        oftener = speech.chance * [SINGLE.get(row[0], 1.0) for row in speech.rows]
        speech.chance = oftener / oftener.sum()
        self.chance = np.random.default_rng(int(time.time()))
        self.mel = LogMel().to(self.device)
        self.bank = augment.rooms(500, self.device)
        self.songs = augment.music(120, self.device)
        self.mean = torch.optim.swa_utils.AveragedModel(
            network,
            multi_avg_fn=torch.optim.swa_utils.get_ema_multi_avg_fn(0.997),
            use_buffers=True,
        )
        rest = [p for k, p in network.named_parameters() if not k.startswith("head")]
        groups = [{"params": rest}, {"params": network.head.parameters()}]
        self.peak = (peak, peak * HEAD_TIMES)
        self.adam = torch.optim.AdamW(groups, lr=peak, weight_decay=1e-2)
        self.step, self.losses = 0, [0.0]

    def sound(self) -> tuple[torch.Tensor, list[list[int]], int]:
        """A batch as a living room gives it, its phones, and the shift of its frames."""
        seconds, slots = LENGTHS[self.step % len(LENGTHS)]
        batch = max(4, self.batch * 2 // seconds)
        clean, phones = draw(self.speech, batch, seconds * RATE_HZ, slots, self.chance)
        higher = float(self.chance.uniform(*HOW.speed))
        clean = augment.speed(later(clean, self.chance), higher)
        shift = int(160 / higher * self.chance.uniform(*HOW.pace))
        return spoil(clean, self.speech, self.bank, self.songs, HOW) / 32_768, phones, shift

    def go(self, done: float) -> None:
        """One step; done: how much of the time is over, 0 to 1."""
        share = 0.5 * (1 + math.cos(math.pi * done)) * 0.99 + 0.01
        for group, peak in zip(self.adam.param_groups, self.peak, strict=True):
            group["lr"] = peak * share * min(1.0, (self.step + 1) / 150)
        sound, phones, shift = self.sound()
        loud = self.mel(sound, shift, spoil=True)
        with torch.autocast(self.device.type, torch.bfloat16, enabled=sound.is_cuda):
            scores = self.network(loud)
        targets = torch.tensor([p for one in phones for p in one], device=self.device)
        sizes = torch.tensor([len(one) for one in phones])
        frames = torch.full((len(phones),), scores.shape[1])
        loss = torch.nn.functional.ctc_loss(
            scores.transpose(0, 1), targets, frames, sizes, zero_infinity=True
        )
        self.adam.zero_grad()
        loss.backward()
        torch.nn.utils.clip_grad_norm_(self.network.parameters(), 3.0)
        self.adam.step()
        self.mean.update_parameters(self.network)
        self.losses.append(loss.item())
        self.step += 1


def begun(want: argparse.Namespace, device: torch.device) -> Proof:
    """The network that training starts from."""
    network = Proof(HOW.dropout)
    if want.whisper:
        start_from_whisper(network, want.whisper)
    if want.resume:
        held = torch.load(want.resume, map_location="cpu")
        network.load_state_dict({k: v.float() for k, v in held.items()})
    return network.to(device)


def main() -> None:
    """Trains for the given seconds and writes the averaged weights."""
    ask = argparse.ArgumentParser()
    ask.add_argument("packed", type=Path)
    ask.add_argument("out", type=Path)
    ask.add_argument("--whisper", type=Path)
    ask.add_argument("--resume", type=Path)
    ask.add_argument("--seconds", type=float, default=300)
    ask.add_argument("--batch", type=int, default=384)
    ask.add_argument("--peak", type=float, default=2e-4)
    ask.add_argument("--told", type=int, default=500, help="steps from one report to the next")
    want = ask.parse_args()
    began = time.time()
    device = torch.device("cuda" if torch.cuda.is_available() else "cpu")
    torch.backends.cuda.matmul.allow_tf32 = torch.backends.cudnn.allow_tf32 = True
    torch.manual_seed(1)
    speech = Speech(want.packed, device)
    hours = len(speech.samples) / RATE_HZ / 3600
    print(f"{len(speech.rows)} utterances, {hours:.2f} h, {time.time() - began:.0f} s", flush=True)
    course = Course(speech, begun(want, device), want.peak, want.batch)
    spent = time.time()
    limit = want.seconds - (spent - began)
    while (done := (time.time() - spent) / limit) < 1:
        course.go(done)
        if course.step % want.told == 0 or course.step == 5:
            wrong = errors(course.mean.module, course.mel, speech)
            print(
                f"step {course.step} at {time.time() - began:.0f} s: loss "
                f"{np.mean(course.losses[-200:]):.3f}, phones wrong: {wrong}",
                flush=True,
            )
            keep(course.mean.module, want.out)
    wrong = errors(course.mean.module, course.mel, speech)
    print(f"end: {course.step} steps, phones wrong: {wrong}", flush=True)
    keep(course.mean.module, want.out)


if __name__ == "__main__":
    main()
