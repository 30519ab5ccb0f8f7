"""The proof's second output: Whisper's decoder (tiny.en), which says how likely words are.

It reads what the encoder made of a sound and gives, piece by piece, how likely each next piece of
text is. Of Whisper's 51,864 pieces those are kept that our own words are written with; every other
one is the same to it. Text is in small letters, each word with a space before it.
"""

from __future__ import annotations

from collections.abc import Mapping

import numpy as np
import torch
import torch.nn.functional as F
from torch import nn

from models.recipe.few_bits import Line, seen
from models.recipe.proof_network import MODEL, filler
from models.recipe.whisper import HEADS, LAYERS

START, NO_TIMES, END, OTHER = 0, 1, 2, 3
"""The first pieces of ours; then those of the table in rising order of Whisper's numbers."""
MOST = 48
"""Pieces of a text that are told apart."""


class WordsLayer(nn.Module):
    """Every piece looks at those before it, then at the sound, then a small network of its own."""

    def __init__(self, dropout: float) -> None:
        super().__init__()
        self.own_norm, self.sound_norm = nn.LayerNorm(MODEL), nn.LayerNorm(MODEL)
        self.feed_norm = nn.LayerNorm(MODEL)
        self.look, self.looked = Line(MODEL, 3 * MODEL), Line(MODEL, MODEL)
        self.ask, self.sound = Line(MODEL, MODEL), Line(MODEL, 2 * MODEL)
        self.answered = Line(MODEL, MODEL)
        self.wide, self.narrow = Line(MODEL, 4 * MODEL), Line(4 * MODEL, MODEL)
        self.drop = nn.Dropout(dropout)

    def forward(self, x: torch.Tensor, heard: torch.Tensor) -> torch.Tensor:
        """[batch, pieces, 384] and the sound's moments [batch, time, 384] -> [batch, pieces, 384].
        """
        q, k, v = self.look(self.own_norm(x)).chunk(3, -1)
        x = x + self.drop(self.looked(_look(q, k, v, past=True)))
        k, v = self.sound(heard).chunk(2, -1)
        asked = _look(self.ask(self.sound_norm(x)), k, v, past=False)
        x = x + self.drop(self.answered(asked))
        return x + self.drop(self.narrow(F.gelu(self.wide(self.feed_norm(x)))))


def _look(q: torch.Tensor, k: torch.Tensor, v: torch.Tensor, past: bool) -> torch.Tensor:
    parts = [one.unflatten(-1, (HEADS, MODEL // HEADS)).transpose(1, 2) for one in (q, k, v)]
    return F.scaled_dot_product_attention(*parts, is_causal=past).transpose(1, 2).flatten(2)


class Words(nn.Module):
    """Moments of the sound [batch, time, 384] and pieces [batch, n] -> scores of what comes next,
    log probabilities [batch, n, pieces]."""

    most = 31

    def __init__(self, pieces: int, dropout: float = 0.1) -> None:
        super().__init__()
        self.pieces = nn.Parameter(torch.zeros(pieces, MODEL))
        self.places = nn.Parameter(torch.zeros(MOST, MODEL))
        self.layers = nn.ModuleList(WordsLayer(dropout) for _ in range(LAYERS))
        self.norm = nn.LayerNorm(MODEL)

    def forward(self, heard: torch.Tensor, text: torch.Tensor) -> torch.Tensor:
        """As the class says."""
        pieces = seen(self.pieces, self.most)
        return F.linear(self.deep(heard, pieces[text]), pieces).float().log_softmax(-1)

    def deep(self, heard: torch.Tensor, x: torch.Tensor) -> torch.Tensor:
        """Pieces as rows [batch, n, 384] -> what their successors are read from, of that shape."""
        x = x + self.places[: x.shape[1]]
        for layer in self.layers:
            x = layer(x, heard)
        return self.norm(x)


@torch.no_grad()
def start_from_decoder(words: Words, held: Mapping[str, np.ndarray], kept: list[int]) -> None:
    """Copies Whisper's decoder. kept: Whisper's numbers of our pieces, from START on; OTHER begins
    as the mean of all the rest."""
    given = {k: torch.tensor(np.asarray(v, np.float32)) for k, v in held.items()}

    fill = filler(given, "decoder")
    table = given["decoder/embeddings/weight"]
    words.pieces.copy_(table[kept])
    words.pieces[OTHER] = table.mean(0)
    words.places.copy_(given["decoder/position_encodings/encodings"][:MOST])
    for number, layer in enumerate(words.layers):
        own = f"layer_{number}"
        fill(layer.own_norm, f"{own}/self_attention/layer_norm", "gamma", "beta")
        fill(layer.look, f"{own}/self_attention/linear_0")
        fill(layer.looked, f"{own}/self_attention/linear_1")
        fill(layer.sound_norm, f"{own}/attention/layer_norm", "gamma", "beta")
        fill(layer.ask, f"{own}/attention/linear_0")
        fill(layer.sound, f"{own}/attention/linear_1")
        fill(layer.answered, f"{own}/attention/linear_2")
        fill(layer.feed_norm, f"{own}/ffn/layer_norm", "gamma", "beta")
        fill(layer.wide, f"{own}/ffn/linear_0")
        fill(layer.narrow, f"{own}/ffn/linear_1")
    fill(words.norm, "layer_norm", "gamma", "beta")
