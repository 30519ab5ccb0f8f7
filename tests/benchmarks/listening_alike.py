"""Which phrases that can be said at the same time sound alike.

usage: python -m tests.benchmarks.listening_alike [--within 0.5] [--spoken] [--voice slt]

For every state's phrases (those while a step waits; those behind "more words") and the answers and
digits, prints each pair whose phones differ by no more than this share of the longer one (edit
distance over the shipped pronunciations; a phone exchanged for one of its own kind counts half).
--spoken also has a voice say every phrase and prints what was heard as another one, and what was
not heard at all; the model learned from these voices, so silence here proves nothing.
"""

from __future__ import annotations

import argparse
import lzma
from functools import cache
from itertools import combinations, product

from reader.app.hear import listen
from reader.app.rehearsal.maker_voice import makers_voice
from reader.commands.command import Ask
from reader.commands.numbers import say_number
from reader.commands.phrases import MAIN, MORE, phrases_of
from reader.devices.model_check import model_folder
from reader.devices.recogniser import VoskRecogniser
from reader.listening.alike import Phones, apart

STATES = {
    "while a step waits": phrases_of(MAIN),
    "behind more words": phrases_of(MORE),
    "yes or no": phrases_of((Ask.YES, Ask.NO)),
    "digits": tuple(say_number(n) for n in range(10)),
}


@cache
def pronunciations() -> dict[str, tuple[Phones, ...]]:
    """Every way of saying a word that the model's dictionary holds."""
    ways: dict[str, tuple[Phones, ...]] = {}
    text = lzma.decompress((model_folder("") / "pronunciations.xz").read_bytes()).decode()
    for line in text.splitlines():
        word, phones = line.split("\t")
        ways[word] = (*ways.get(word, ()), tuple(phones.split()))
    return ways


def ways_of(phrase: str) -> list[Phones]:
    """Every way of saying a phrase."""
    words = [pronunciations()[word] for word in phrase.split()]
    return [tuple(p for way in ways for p in way) for ways in product(*words)]


def alike(phrases: tuple[str, ...], within: float) -> list[tuple[float, str, str]]:
    """Pairs no further apart than this, the closest first."""
    found = []
    for one, other in combinations(dict.fromkeys(phrases), 2):
        least = min(apart(a, b) for a in ways_of(one) for b in ways_of(other))
        if least <= within:
            found.append((least, one, other))
    return sorted(found)


def main() -> None:
    """Prints the pairs."""
    ask = argparse.ArgumentParser()
    ask.add_argument("--within", type=float, default=0.5)
    ask.add_argument("--spoken", action="store_true")
    ask.add_argument("--voice", default="slt")
    want = ask.parse_args()
    for state, phrases in STATES.items():
        print(f"{state}, {len(phrases)} phrases:")
        for least, one, other in alike(phrases, want.within):
            print(f"  {least:.2f}  {one} / {other}")
        if not want.spoken:
            continue
        ear, speak = VoskRecogniser(), makers_voice(want.voice)
        for phrase in dict.fromkeys(phrases):
            heard = listen(ear, phrases, speak(phrase))
            if heard is None or heard.text != phrase or not heard.certain:
                what = "nothing" if heard is None else f"{heard.text} ({heard.doubt or 'certain'})"
                print(f"  {want.voice} said {phrase}: heard {what}", flush=True)


if __name__ == "__main__":
    main()
