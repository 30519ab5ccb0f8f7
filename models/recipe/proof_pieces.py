"""Which pieces of text the proof's words are written with, out of Whisper's.

usage: python -m models.recipe.proof_pieces PACKED_DIR tokenizer.json words.txt OUT.json

words.txt: the words of the first network's graph. Kept are the pieces of those words and the most
frequent ones of what is trained on. OUT.json: "kept", Whisper's number of each of ours; "words",
for each word its pieces, small letters with a space before it; "alike", pairs: what Whisper may
write in the place of one of ours (a capital, a figure, a mark at the end), and which that is. Needs
tokenizers, wordfreq.
"""

from __future__ import annotations

import json
import lzma
import sys
from collections import Counter
from collections.abc import Iterable
from pathlib import Path

from models.recipe.measure import DIGITS
from models.recipe.proof_words import END, OTHER
from models.recipe.whisper import END as WHISPER_END
from models.recipe.whisper import NO_TIMES as WHISPER_NO_TIMES
from models.recipe.whisper import START as WHISPER_START

FREQUENT = 1_500
"""Pieces kept of those most frequent in training."""
NO_SPEECH = 50_361
OTHERS = 4_000
"""Common English words whose first pieces are told from ours, as something other."""
MARKS = (".", "!", "?", "...", ",", "-")


class Writing:
    """How words are written in Whisper's pieces."""

    def __init__(self, tokenizer: Path) -> None:
        from tokenizers import Tokenizer

        self._letters = Tokenizer.from_file(str(tokenizer))

    def __call__(self, text: str) -> list[int]:
        return list(self._letters.encode(text, add_special_tokens=False).ids)


def pieces(write: Writing, ours: Iterable[str], trained: Counter[str]) -> dict[str, object]:
    """The table, as the usage says."""
    from wordfreq import top_n_list

    needed = {number for word in ours for number in write(f" {word}")}
    often: Counter[int] = Counter()
    for word, times in trained.items():
        for number in write(f" {word}"):
            often[number] += times
    needed |= {number for number, _ in often.most_common(FREQUENT)}
    rest = sorted(needed - {WHISPER_END})
    # Nothing of Whisper's stands for OTHER; its own number there is never used.
    kept = [WHISPER_START, WHISPER_NO_TIMES, WHISPER_END, WHISPER_END, *rest]
    at = {number: n for n, number in enumerate(kept) if n != OTHER}
    words = {
        word: [at.get(number, OTHER) for number in write(f" {word}")]
        for word in sorted({*trained, *ours})
    }
    return {"kept": kept, "words": words, "alike": _alike(write, at, words, top_n_list)}


def _alike(write: Writing, at: dict[int, int], words: dict[str, list[int]], common) -> list:
    """Pairs of a number of Whisper's and ours, OTHER for what is none of ours."""
    alike = {number: at[number] for number in at}
    alike |= {NO_SPEECH: END, **{write(mark)[0]: END for mark in MARKS}}
    for word in common("en", OTHERS):
        for text in (f" {word}", f" {word.capitalize()}"):
            alike.setdefault(write(text)[0], OTHER)
    for word, ours in words.items():
        capital = write(f" {word.capitalize()}")
        if len(capital) == len(ours) == 1 and ours[0] != OTHER:
            alike[capital[0]] = ours[0]
    for figure, word in enumerate(DIGITS_FROM_NOUGHT):
        alike[write(f" {figure}")[0]] = words[word][0]
    return sorted(alike.items())


DIGITS_FROM_NOUGHT = tuple(DIGITS)


def main() -> None:
    """Writes the table and says how large it is."""
    packed, tokenizer, graph, out = map(Path, sys.argv[1:])
    with lzma.open(packed / "index.json.xz", "rt") as index:
        shards = json.load(index)
    trained = Counter(word for rows in shards.values() for row in rows for word in row[1].split())
    lines = graph.read_text(encoding="utf-8").splitlines()
    ours = [word for word in (line.split()[0] for line in lines) if word[0].isalpha()]
    table = pieces(Writing(tokenizer), ours, trained)
    out.write_text(json.dumps(table), encoding="utf-8")
    print({name: len(part) for name, part in table.items()})


if __name__ == "__main__":
    main()
