"""Trains the network with CTC on packed speech; one GPU for minutes or a CPU for hours.

usage: python -m models.recipe.train PACKED_DIR OUT_DIR --trunk final.mdl [--seconds 560]
       [--resume state.pt] [--light] [--seed 1] [--told 1000]

PACKED_DIR holds ogg files and index.json.xz (see the card). Prints loss and the phone error on
voices and on clips of people that are never trained on; --light spoils the speech less, for the
last part; leaves `state.pt` (averaged weights) in OUT_DIR.
"""

from __future__ import annotations

import argparse
import json
import lzma
import math
import time
from collections.abc import Callable
from concurrent.futures import ProcessPoolExecutor
from dataclasses import dataclass
from pathlib import Path

import numpy as np
import torch

from models.recipe import augment
from models.recipe.archives import TRAINED
from models.recipe.features import LIGHT_GAPS, LIGHT_WARPS, Mfcc
from models.recipe.network import Network, start_from_trunk

RATE_HZ = 16_000
WEIGHT = {
    "cmd": 4.0,
    "num": 3.5,
    "trade": 1.2,
    "word": 1.0,
    "sent": 1.0,
    "run": 0.8,
    "human": 1.0,
    "act": 2.2,
    "piece": 1.6,
    "cmdcut": 1.5,
    "cut": 0.8,
    "ast": 2.5,
}
"""How often a kind of utterance is drawn, against a single word of the broad vocabulary."""
VOICE = {
    "flite": 0.35,
    "espea": 0.2,
    "piper": 0.7,
    **dict.fromkeys(TRAINED, 1.5),
    **dict.fromkeys(("gle", "red", "fla"), 2.5),
    "ppl": 5.0,
}
"""Voices of synthesis are drawn less the less they resemble a person, the few people with their own
microphones most; everything else 1.3."""


@dataclass(frozen=True, slots=True)
class Spoiling:
    """How far speech is spoiled: from, to; or how near (dB) another sound comes, its share."""

    speed: tuple[float, float] = (0.82, 1.28)
    pace: tuple[float, float] = (0.8, 1.3)
    room: float = 0.55
    talk: tuple[float, float] = (4, 0.3)
    noise: tuple[float, float] = (0, 0.35)
    music: tuple[float, float] = (2, 0.25)
    hiss: tuple[float, float] = (8, 0.6)
    dropout: float = 0.1


LIGHT = Spoiling(
    (0.93, 1.1), (0.85, 1.2), 0.4, (6, 0.2), (3, 0.25), (4, 0.18), (14, 0.5), dropout=0.05
)
"""Heavy spoiling moves the vowels further than any two people differ; the last part is lighter."""
HELD = {"hold": "voices", "holdact": "people in other clips", "holdnew": "people never heard"}
"""Kinds that are never trained on."""
EMPTY = 0.08
"""Share of stretches in which nobody speaks."""
LONG = 10 * RATE_HZ
"""From this length on, people's sentences are drawn far more often: they fit nowhere else."""


def decode(path: Path) -> np.ndarray:
    """int16 samples of one packed file."""
    import soundfile

    return soundfile.read(path, dtype="int16")[0]


class Speech:
    """All utterances on the device: samples, starts, lengths, phones, chance to be drawn."""

    def __init__(self, folder: Path, device: torch.device) -> None:
        with lzma.open(folder / "index.json.xz", "rt") as index:
            shards = json.load(index)
        names = list(shards)
        with ProcessPoolExecutor() as pool:
            sounds = list(pool.map(decode, [folder / f"{name}.ogg" for name in [*names, "noise"]]))
        self.noise = torch.tensor(sounds.pop().astype(np.float32) / 32768, device=device)
        base, rows = 0, []
        self.held: dict[str, list] = {"hold": [], "holdact": [], "holdnew": []}
        for name, sound in zip(names, sounds, strict=True):
            for kind, text, voice, at, n, phones in shards[name]:
                row = (kind, text, voice, base + at, min(n, len(sound) - at), phones)
                self.held.get(kind, rows).append(row)
            base += len(sound)
        self.samples = torch.tensor(np.concatenate(sounds), device=device)
        self.rows, self.device = rows, device
        chance = [WEIGHT[r[0]] * VOICE.get(str(r[2])[:5], 1.3) for r in rows]
        self.chance = np.array(chance) / np.sum(chance)
        self.length = np.array([r[4] for r in rows])
        long = np.array([r[0] == "act" and r[4] >= LONG // 2 for r in rows])
        self.long = long / max(long.sum(), 1)

    def gather(self, rows: list, n: int, at: np.ndarray) -> torch.Tensor:
        """[batch, n] float samples with each utterance at its offset; silence elsewhere."""
        start = torch.tensor([r[3] for r in rows], device=self.device)[:, None]
        length = torch.tensor([r[4] for r in rows], device=self.device)[:, None]
        where = (
            torch.arange(n, device=self.device)[None]
            - torch.tensor(at, device=self.device)[:, None]
        )
        # Words cut out of a sentence begin and end within 10 ms instead of at once.
        edge = (where / 160).clamp(0, 1) * ((length - where) / 160).clamp(0, 1)
        return edge * self.samples[(start + where).clamp(0, len(self.samples) - 1)] / 32768


def draw(speech: Speech, batch: int, n: int, slots: int, chance: np.random.Generator):
    """A batch of clean sound with its phones: up to `slots` utterances in a row with pauses
    between.
    """
    used = np.zeros(batch, dtype=np.int64) + chance.integers(800, 9600, batch)
    sound = torch.zeros(batch, n, device=speech.device)
    phones: list[list[int]] = [[] for _ in range(batch)]
    spoken = chance.random(batch) > EMPTY
    odds = speech.chance * (speech.length < n - 5_000)
    if n >= LONG:
        odds = 0.6 * odds / odds.sum() + 0.4 * speech.long * (speech.length < n - 5_000)
    for _ in range(slots):
        pick = chance.choice(len(speech.rows), batch, p=odds / odds.sum())
        rows = [speech.rows[i] for i in pick]
        fits = spoken & (used + speech.length[pick] + 1600 < n)
        loud = torch.tensor(fits * chance.uniform(0.5, 1.0, batch), device=speech.device).float()[
            :, None
        ]
        sound += loud * speech.gather(rows, n, used)
        for i, row in enumerate(rows):
            if fits[i]:
                phones[i] += row[5]
        used = np.where(fits, used + speech.length[pick] + chance.integers(1600, 9600, batch), used)
    return sound, phones


def spoil(
    sound: torch.Tensor,
    speech: Speech,
    bank: torch.Tensor,
    songs: torch.Tensor,
    how: Spoiling,
) -> torch.Tensor:
    """The batch as a living room gives it, int16 scale."""
    batch, n = sound.shape
    x = augment.add_room(sound, bank, how.room)
    other = augment.add_room(sound.roll(1, 0), bank, 0.8)
    voiced = (sound.abs().amax(-1, keepdim=True) > 1e-3).float()
    x = augment.add_sound(x, other * voiced, how.talk[0], 28, how.talk[1])
    x = augment.add_sound(x, augment.cut(speech.noise, batch, n), how.noise[0], 30, how.noise[1])
    x = augment.add_sound(x, augment.cut(songs, batch, n), how.music[0], 30, how.music[1])
    x = augment.add_sound(x, augment.hiss(batch, n, x.device), how.hiss[0], 50, how.hiss[1])
    return augment.set_level(augment.colour(x))


@torch.no_grad()
def phone_error(network: Network, mfcc: Mfcc, speech: Speech, held: list) -> float:
    """Share of wrong phones in a greedy reading of speech held out of training."""
    return share_wrong(network, lambda sound: mfcc(sound * 20_000), speech, held[:1000], 250)


@torch.no_grad()
def share_wrong(
    network: torch.nn.Module,
    front: Callable[[torch.Tensor], torch.Tensor],
    speech: Speech,
    held: list,
    batch: int,
) -> float:
    """Share of wrong phones in a greedy reading, so many utterances at once; front: what the
    network takes of a sound.
    """
    network.eval()
    wrong = total = 0
    for at in range(0, len(held), batch):
        rows = held[at : at + batch]
        n = max(one[4] for one in rows) + 12_000
        sound = speech.gather(rows, n, np.full(len(rows), 4_000))
        best = network(front(sound)).argmax(-1).cpu().numpy()
        for read, row in zip(best, rows, strict=True):
            said = [int(p) for k, p in enumerate(read) if p and (k == 0 or read[k - 1] != p)]
            wrong += distance(said, row[5])
            total += len(row[5])
    network.train()
    return wrong / max(total, 1)


def errors(network: Network, mfcc: Mfcc, speech: Speech) -> str:
    """The phone error on voices and on people held out, in words."""
    return ", ".join(
        f"{100 * phone_error(network, mfcc, speech, speech.held[kind]):.1f} % of {name}"
        for kind, name in HELD.items()
    )


def distance(a: list[int], b: list[int]) -> int:
    """Edit distance of two phone strings."""
    row = list(range(len(b) + 1))
    for i, x in enumerate(a, 1):
        before, row[0] = row[0], i
        for j, y in enumerate(b, 1):
            before, row[j] = row[j], min(row[j] + 1, row[j - 1] + 1, before + (x != y))
    return row[-1]


def keep(network: torch.nn.Module, folder: Path) -> None:
    """Writes state.pt whole or not at all."""
    torch.save({k: v.cpu() for k, v in network.state_dict().items()}, folder / "state.part")
    (folder / "state.part").replace(folder / "state.pt")


def main() -> None:
    """Trains for the given seconds and writes the averaged weights."""
    ask = argparse.ArgumentParser()
    ask.add_argument("packed", type=Path)
    ask.add_argument("out", type=Path)
    ask.add_argument("--trunk", type=Path)
    ask.add_argument("--resume", type=Path)
    ask.add_argument("--seconds", type=float, default=560)
    ask.add_argument("--batch", type=int, default=384)
    ask.add_argument("--peak", type=float, default=1.2e-3)
    ask.add_argument("--light", action="store_true")
    ask.add_argument("--seed", type=int, default=1)
    ask.add_argument("--told", type=int, default=1000, help="steps from one report to the next")
    want = ask.parse_args()
    how = LIGHT if want.light else Spoiling()
    began = time.time()
    device = torch.device("cuda" if torch.cuda.is_available() else "cpu")
    torch.backends.cuda.matmul.allow_tf32 = torch.backends.cudnn.allow_tf32 = True
    torch.manual_seed(want.seed)
    chance = np.random.default_rng(want.seed)
    speech = Speech(want.packed, device)
    print(
        f"{len(speech.rows)} utterances, {len(speech.samples) / RATE_HZ / 3600:.2f} h, "
        f"{time.time() - began:.0f} s",
        flush=True,
    )
    network = Network(how.dropout).to(device)
    if want.trunk:
        start_from_trunk(network, want.trunk)
    if want.resume:
        network.load_state_dict(
            {
                k: v.float() if v.is_floating_point() else v
                for k, v in torch.load(want.resume, map_location=device).items()
            }
        )
    mean = torch.optim.swa_utils.AveragedModel(
        network, multi_avg_fn=torch.optim.swa_utils.get_ema_multi_avg_fn(0.998), use_buffers=True
    )
    mfcc = (Mfcc(LIGHT_WARPS, LIGHT_GAPS) if want.light else Mfcc()).to(device)
    head = [p for k, p in network.named_parameters() if k.startswith("head")]
    rest = [p for k, p in network.named_parameters() if not k.startswith("head")]
    groups = [{"params": head, "share": 1.0}, {"params": rest, "share": 0.5}]
    adam = torch.optim.AdamW(groups, lr=want.peak, weight_decay=1e-3)
    bank, songs = augment.rooms(500, device), augment.music(120, device)
    step, spent, losses = 0, time.time(), []
    limit = want.seconds - (time.time() - began)
    while (done := (time.time() - spent) / limit) < 1:
        rate = (
            want.peak
            * min(1.0, (step + 1) / 200)
            * (0.5 * (1 + math.cos(math.pi * done)) * 0.98 + 0.02)
        )
        for group in adam.param_groups:
            group["lr"] = rate * group["share"]
        seconds, slots = ((2, 1), (2, 1), (3, 2), (4, 2), (6, 3), (12, 4))[step % 6]
        batch = max(8, want.batch * 2 // seconds)
        sound, phones = draw(speech, batch, seconds * RATE_HZ, slots, chance)
        higher = float(chance.uniform(*how.speed))
        sound = augment.speed(sound, higher)
        shift = int(160 / higher * chance.uniform(*how.pace))
        features = mfcc(spoil(sound, speech, bank, songs, how), shift=shift, spoil=True)
        with torch.autocast(device.type, torch.bfloat16, enabled=device.type == "cuda"):
            scores = network(features).float()
        targets = torch.tensor([p for one in phones for p in one], device=device)
        sizes = torch.tensor([len(one) for one in phones])
        frames = torch.full((batch,), scores.shape[1])
        loss = torch.nn.functional.ctc_loss(
            scores.transpose(0, 1), targets, frames, sizes, zero_infinity=True, reduction="mean"
        )
        adam.zero_grad()
        loss.backward()
        torch.nn.utils.clip_grad_norm_(network.parameters(), 5.0)
        adam.step()
        mean.update_parameters(network)
        losses.append(loss.item())
        step += 1
        if step % want.told == 0 or step == 5:
            print(
                f"step {step} at {time.time() - began:.0f} s: loss {np.mean(losses[-200:]):.3f}, "
                f"phones wrong in speech held out: {errors(mean.module, mfcc, speech)}",
                flush=True,
            )
            keep(mean.module, want.out)
    wrong = errors(mean.module, mfcc, speech)
    print(f"end: {step} steps, phones wrong in speech held out: {wrong}", flush=True)
    keep(mean.module, want.out)


if __name__ == "__main__":
    main()
