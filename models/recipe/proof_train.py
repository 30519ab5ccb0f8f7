"""Trains the proof's two outputs on packed speech; minutes on one GPU.

usage: python -m models.recipe.proof_train PACKED_DIR OUT_DIR --whisper model.bin --pieces FILE
       [--resume proof.pt|proof.npz [--anew]] [--seconds 300] [--peak 2e-4] [--soft 0.4] [--near 0]
       [--pace 1] [--seed 1]

PACKED_DIR: see train.py. FILE: see proof_pieces. The phones by CTC; the words by what comes next,
partly as Whisper itself would go on from the same sound before it was spoiled (--soft: how far), so
that what it knows of voices and words is not forgotten over the few that are trained on. --anew:
the words' half begins as Whisper has it, whatever is resumed; --pace: how much faster than the rest
it learns; --near: how much it counts that the moments are those of Whisper for the clean sound.
Prints the losses and, on voices and people that are never trained on, the phone error and how
unlikely the right text is; leaves proof.pt (averaged weights, 16 bits) in OUT_DIR.
"""

from __future__ import annotations

import argparse
import json
import math
import time
from pathlib import Path
from typing import NamedTuple

import numpy as np
import torch
from torch import nn

from models.recipe import augment
from models.recipe.proof_network import LogMel, Proof, start_from_whisper
from models.recipe.proof_teacher import Teacher
from models.recipe.proof_words import END, MOST, NO_TIMES, OTHER, START, Words, start_from_decoder
from models.recipe.train import HELD, RATE_HZ, Speech, Spoiling, draw, share_wrong, spoil
from models.recipe.whisper import matrices
from reader.listening.few_bits import matrices as few_bits

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
"""How much faster the new last layer learns than the rest, when training starts from Whisper."""
PHONES_SHARE = 1.0
"""How much a nat of the phones' loss counts beside a nat of the words'."""
TRUSTED = 0.05
"""How likely the right piece must be to Whisper for its other guesses to be listened to."""


class Said(NamedTuple):
    """One utterance: its phones, and the pieces of its text."""

    phones: list[int]
    pieces: list[int]


class Ear(nn.Module):
    """The encoder with its phones, and the words read from it."""

    def __init__(self, pieces: int) -> None:
        super().__init__()
        self.sound, self.words = Proof(HOW.dropout), Words(pieces, HOW.dropout)

    def forward(self, loud: torch.Tensor, text: torch.Tensor) -> tuple[torch.Tensor, torch.Tensor]:
        """Log probabilities of phones and of next pieces."""
        moments = self.sound.moments(loud)
        return self.sound.phones(moments), self.words(moments, text)


def later(sound: torch.Tensor, chance: np.random.Generator) -> torch.Tensor:
    """The batch with some of its silence moved from behind the speech to before it."""
    batch, n = sound.shape
    spoken = (sound.abs() > 1e-3).long()
    free = spoken.flip(1).argmax(1) - 1_600
    share = torch.tensor(chance.random(batch) * (chance.random(batch) < LATE)).to(sound.device)
    move = (free.clamp(min=0) * spoken.amax(1) * share).long()
    at = torch.arange(n, device=sound.device)[None] - move[:, None]
    return sound.gather(1, at % n)


def as_text(said: list[list[int]], device: torch.device) -> tuple[torch.Tensor, torch.Tensor]:
    """Pieces of each stretch -> what is read and what comes next [batch, n]; -100 beyond its end.
    """
    said = [one[: MOST - 2] for one in said]
    longest = max(map(len, said)) + 2
    read = torch.full((len(said), longest), END)
    comes = torch.full((len(said), longest), -100)
    for n, one in enumerate(said):
        read[n, : len(one) + 2] = torch.tensor([START, NO_TIMES, *one])
        comes[n, 1 : len(one) + 2] = torch.tensor([*one, END])
    return read.to(device), comes.to(device)


def phone_error(network: Proof, mel: LogMel, speech: Speech, held: list) -> float:
    """Share of wrong phones in a greedy reading of the shortest speech held out of training."""
    return share_wrong(network, mel, speech, shortest(held), 200)


def shortest(held: list) -> list:
    """800 of less than 5 s."""
    return sorted((one for one in held if one[4] < 5 * RATE_HZ), key=lambda one: one[4])[:800]


@torch.no_grad()
def unlikely(ear: Ear, mel: LogMel, speech: Speech, held: list, words: dict) -> float:
    """Nats by which the right text is unlikely, a mean over the same speech."""
    ear.eval()
    total, rows = 0.0, shortest(held)
    for at in range(0, len(rows), 200):
        some = rows[at : at + 200]
        sound = speech.gather(some, max(r[4] for r in some) + 12_000, np.full(len(some), 4_000))
        read, comes = as_text([pieces_of(row[1], words) for row in some], sound.device)
        scores = ear(mel(sound), read)[1]
        nats = nn.functional.nll_loss(scores.flatten(0, 1), comes.flatten(), reduction="sum")
        total += float(nats)
    ear.train()
    return total / max(len(rows), 1)


def pieces_of(text: str, words: dict[str, list[int]]) -> list[int]:
    """The pieces a text is written with; a word that is not in the table is something other."""
    return [piece for word in text.split() for piece in words.get(word, [OTHER])]


def errors(ear: Ear, mel: LogMel, speech: Speech, words: dict) -> str:
    """The phone error and how unlikely the text is, on voices and people held out, in words."""
    return ", ".join(
        f"{100 * phone_error(ear.sound, mel, speech, speech.held[kind]):.1f} % and "
        f"{unlikely(ear, mel, speech, speech.held[kind], words):.2f} nats of {name}"
        for kind, name in HELD.items()
    )


def keep(network: nn.Module, folder: Path) -> None:
    """Writes proof.pt whole or not at all."""
    torch.save({k: v.half().cpu() for k, v in network.state_dict().items()}, folder / "part.pt")
    (folder / "part.pt").replace(folder / "proof.pt")


class Course:
    """One training: what is drawn, spoiled and learned, step by step."""

    def __init__(
        self, speech: Speech, ear: Ear, teacher: Teacher | None, want: argparse.Namespace
    ) -> None:
        self.speech, self.ear, self.teacher = speech, ear, teacher
        self.batch, self.soft, self.device = want.batch, want.soft, speech.device
        oftener = speech.chance * [SINGLE.get(row[0], 1.0) for row in speech.rows]
        speech.chance = oftener / oftener.sum()
        self.chance = np.random.default_rng(want.seed)
        self.mel = LogMel().to(self.device)
        self.bank = augment.rooms(500, self.device)
        self.songs = augment.music(120, self.device)
        self.mean = torch.optim.swa_utils.AveragedModel(
            ear, multi_avg_fn=torch.optim.swa_utils.get_ema_multi_avg_fn(0.997), use_buffers=True
        )
        self.near = want.near
        rest = [p for k, p in ear.sound.named_parameters() if not k.startswith("head")]
        parts = (rest, ear.sound.head.parameters(), ear.words.parameters())
        groups = [{"params": list(part)} for part in parts]
        times = (1.0, 1.0 if want.resume else HEAD_TIMES, want.pace)
        self.peak = tuple(want.peak * one for one in times)
        self.adam = torch.optim.AdamW(groups, lr=want.peak, weight_decay=1e-2)
        self.step, self.losses = 0, [(0.0, 0.0)]

    def sound(self) -> tuple[torch.Tensor, torch.Tensor, list[list[Said]], int]:
        """A batch as it was said and as a living room gives it, what was said, and the shift of its
        frames."""
        seconds, slots = LENGTHS[self.step % len(LENGTHS)]
        batch = max(4, self.batch * 2 // seconds)
        clean, said = draw(self.speech, batch, seconds * RATE_HZ, slots, self.chance)
        higher = float(self.chance.uniform(*HOW.speed))
        clean = augment.speed(later(clean, self.chance), higher)
        shift = int(160 / higher * self.chance.uniform(*HOW.pace))
        spoiled = spoil(clean, self.speech, self.bank, self.songs, HOW) / 32_768
        return clean, spoiled, said, shift

    def losses_of(self) -> tuple[torch.Tensor, torch.Tensor]:
        """Of the phones and of the words, on one batch."""
        clean, sound, said, shift = self.sound()
        phones = [[p for one in each for p in one.phones] for each in said]
        texts = [[p for one in each for p in one.pieces] for each in said]
        read, comes = as_text(texts, self.device)
        fast = torch.autocast(self.device.type, torch.bfloat16, enabled=sound.is_cuda)
        with fast:
            moments = self.ear.sound.moments(self.mel(sound, shift, spoil=True))
            scores, next_ = self.ear.sound.phones(moments), self.ear.words(moments, read)
        targets = torch.tensor([p for one in phones for p in one], device=self.device)
        sizes = torch.tensor([len(one) for one in phones])
        frames = torch.full((len(phones),), scores.shape[1])
        ctc = nn.functional.ctc_loss(
            scores.transpose(0, 1), targets, frames, sizes, zero_infinity=True
        )
        right = nn.functional.nll_loss(next_.flatten(0, 1), comes.flatten(), reduction="none")
        if self.teacher is not None and self.soft:
            with torch.no_grad(), fast:
                there, guess = self.teacher(self.mel(clean, shift), read)
            sure = guess.gather(2, comes.clamp(min=0)[..., None])[..., 0].flatten()
            trusted = (sure > TRUSTED) & (comes.flatten() >= 0) & (comes.flatten() != OTHER)
            other = -(guess * next_).sum(-1).flatten()
            right = (1 - self.soft) * right + self.soft * other * trusted
            apart = ((moments - there).float() ** 2).mean() / there.float().var()
            ctc = ctc + self.near * apart
        return ctc, right.sum() / (comes >= 0).sum()

    def go(self, done: float) -> None:
        """One step; done: how much of the time is over, 0 to 1."""
        share = 0.5 * (1 + math.cos(math.pi * done)) * 0.99 + 0.01
        for group, peak in zip(self.adam.param_groups, self.peak, strict=True):
            group["lr"] = peak * share * min(1.0, (self.step + 1) / 150)
        ctc, words = self.losses_of()
        self.adam.zero_grad()
        (PHONES_SHARE * ctc + words).backward()
        nn.utils.clip_grad_norm_(self.ear.parameters(), 3.0)
        self.adam.step()
        self.mean.update_parameters(self.ear)
        self.losses.append((ctc.item(), words.item()))
        self.step += 1


def begun(want: argparse.Namespace, device: torch.device, kept: list[int]) -> Ear:
    """The network that training starts from."""
    ear, held = Ear(len(kept)), held_by(want.whisper)
    start_from_whisper(ear.sound, held)
    start_from_decoder(ear.words, held, kept)
    state = ear.state_dict()
    for name, value in (resumed(want.resume) if want.resume else {}).items():
        if not (want.anew and name.startswith("words.")):
            mine = state[name]
            # A shipped file holds only the first places.
            mine[: len(value)] = value.reshape(len(value), *mine.shape[1:])
    return ear.to(device)


def resumed(path: Path) -> dict[str, torch.Tensor]:
    """Weights by name, of a proof.pt or of the few bits of a shipped proof.npz."""
    if path.suffix == ".npz":
        return {name: torch.tensor(one) for name, one in few_bits(held_by(path)).items()}
    return {name: one.float() for name, one in torch.load(path, map_location="cpu").items()}


def held_by(whisper: Path) -> dict[str, np.ndarray]:
    """The arrays of model.bin, or of a file written by numpy."""
    if whisper.suffix == ".bin":
        return matrices(whisper)
    with np.load(whisper) as file:
        return {name: file[name] for name in file.files}


def asked() -> argparse.Namespace:
    """The words after the command."""
    ask = argparse.ArgumentParser()
    ask.add_argument("packed", type=Path)
    ask.add_argument("out", type=Path)
    ask.add_argument("--whisper", type=Path, required=True)
    ask.add_argument("--pieces", type=Path, required=True)
    ask.add_argument("--resume", type=Path)
    ask.add_argument("--anew", action="store_true")
    ask.add_argument("--near", type=float, default=0.0)
    ask.add_argument("--pace", type=float, default=1.0)
    ask.add_argument("--seconds", type=float, default=300)
    ask.add_argument("--batch", type=int, default=384)
    ask.add_argument("--peak", type=float, default=2e-4)
    ask.add_argument("--soft", type=float, default=0.4)
    ask.add_argument("--seed", type=int, default=1)
    ask.add_argument("--told", type=int, default=500, help="steps from one report to the next")
    return ask.parse_args()


def main() -> None:
    """Trains for the given seconds and writes the averaged weights."""
    want, began = asked(), time.time()
    device = torch.device("cuda" if torch.cuda.is_available() else "cpu")
    torch.backends.cuda.matmul.allow_tf32 = torch.backends.cudnn.allow_tf32 = True
    torch.manual_seed(want.seed)
    speech = Speech(want.packed, device)
    table = json.loads(want.pieces.read_text(encoding="utf-8"))
    words = table["words"]
    speech.rows = [(*r[:5], [Said(r[5], pieces_of(r[1], words))]) for r in speech.rows]
    hours = len(speech.samples) / RATE_HZ / 3600
    print(f"{len(speech.rows)} utterances, {hours:.2f} h, {time.time() - began:.0f} s", flush=True)
    teacher = Teacher(held_by(want.whisper), table).to(device) if want.soft else None
    course = Course(speech, begun(want, device, table["kept"]), teacher, want)
    spent = time.time()
    limit = want.seconds - (spent - began)
    while (done := (time.time() - spent) / limit) < 1:
        course.go(done)
        if course.step % want.told == 0 or course.step == 5:
            tell(course, f"step {course.step} at {time.time() - began:.0f} s", words)
            keep(course.mean.module, want.out)
    tell(course, f"end: {course.step} steps", words)
    keep(course.mean.module, want.out)


def tell(course: Course, when: str, words: dict[str, list[int]]) -> None:
    """Prints how far it has come."""
    ctc, text = np.mean(course.losses[-200:], 0)
    wrong = errors(course.mean.module, course.mel, course.speech, words)
    print(f"{when}: losses {ctc:.3f} and {text:.3f}, phones wrong and text: {wrong}", flush=True)


if __name__ == "__main__":
    main()
