"""Whisper as it came, as a teacher: what it would write next, told in our own pieces."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import numpy as np
import torch
from torch import nn

from models.recipe.few_bits import Line, Over
from models.recipe.proof_network import Proof, start_from_whisper
from models.recipe.proof_words import Words, start_from_decoder


class Teacher(nn.Module):
    """table: see proof_pieces; what it names as alike counts as that piece of ours, and nothing
    that it doesn't name is guessed."""

    def __init__(self, held: Mapping[str, np.ndarray], table: Mapping[str, Any]) -> None:
        super().__init__()
        self.sound, self.words = Proof(0.0), Words(len(table["kept"]), 0.0)
        start_from_whisper(self.sound, held)
        start_from_decoder(self.words, held, table["kept"])
        numbers, ours = (torch.tensor(part) for part in zip(*table["alike"], strict=True))
        whole = torch.tensor(held["decoder/embeddings/weight"][numbers.numpy()].astype(np.float32))
        self.register_buffer("guesses", whole)
        self.register_buffer("ours", ours)
        for part in self.modules():
            if isinstance(part, Line | Over):
                part.most = 0
        self.words.most = 0
        self.eval()
        self.requires_grad_(False)

    def forward(self, loud: torch.Tensor, text: torch.Tensor) -> tuple[torch.Tensor, torch.Tensor]:
        """The moments, and how likely each piece of ours is next: [batch, n, pieces]."""
        moments = self.sound.moments(loud)
        deep = self.words.deep(moments, self.words.pieces[text])
        likely = (deep @ self.guesses.T).float().softmax(-1)
        out = torch.zeros(*likely.shape[:2], len(self.words.pieces), device=likely.device)
        return moments, out.index_add_(2, self.ours, likely)
