"""Writes the decoding graph of the listening model: words and their phones in, the files that vosk
loads out.

A word is a chain of phones; a phone is its own sound for one frame or more, then perhaps blank
frames. All words stand side by side from one state to which they return, so that the grammar alone
decides what may follow what. Fillers are words whose body is any chain of phones, priced by how
often phones follow each other in English: they catch speech that is not for us. The word label
stands on a word's first arc, arcs carry the forward transition first and the self-loop on the state
it reaches, which is what the decoder expects.

Formats: OpenFst vector file (version 2, standard arcs) and Kaldi's transition numbering.
"""

from __future__ import annotations

import struct
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from pathlib import Path

PHONES = (
    "AA",
    "AE",
    "AH",
    "AO",
    "AW",
    "AY",
    "B",
    "CH",
    "D",
    "DH",
    "EH",
    "ER",
    "EY",
    "F",
    "G",
    "HH",
    "IH",
    "IY",
    "JH",
    "K",
    "L",
    "M",
    "N",
    "NG",
    "OW",
    "OY",
    "P",
    "R",
    "S",
    "SH",
    "T",
    "TH",
    "UH",
    "UW",
    "V",
    "W",
    "Y",
    "Z",
    "ZH",
)
"""The 39 phones of the CMU pronouncing dictionary, without stress, in the order of the network's
outputs.
"""

BEGIN, END, INSIDE, ALONE = 0, 1, 2, 3
POSITIONS = ("begin", "end", "internal", "singleton")
BLANK_COST = 0.2
"""Cost a frame of blank inside a phone: long pauses go to silence, so the end of speech is seen
(measured, see the card).
"""


def phone_number(phone: int, position: int) -> int:
    """Kaldi's number of a phone (0 to 38) at a position in the word; silence is 1."""
    return 2 + 4 * phone + position


def transitions(number: int) -> tuple[int, int, int, int, int]:
    """Transition numbers of a phone: sound loop, sound to blank, sound to end, blank loop, blank to
    end.
    """
    base = 3 + 5 * (number - 2)
    return base, base + 1, base + 2, base + 3, base + 4


SILENCE_LOOP, SILENCE_END = 1, 2
SILENCE_COST = 2.0
"""Cost of beginning a silence: without it one silence is many, in countless ways, and the lattice
bursts.
"""
ENTRY_COST = 3.0
"""Cost of beginning a filler: without it a chain of phones splits into fillers in countless ways.
"""
TRANSITIONS = 2 + 5 * 4 * len(PHONES)
"""How many transition numbers there are."""


@dataclass
class Graph:
    """A growing graph: for each state its arcs (input, output, cost, next)."""

    arcs: list[list[tuple[int, int, float, int]]] = field(default_factory=list)

    def state(self) -> int:
        """A new state."""
        self.arcs.append([])
        return len(self.arcs) - 1

    def arc(self, start: int, end: int, takes: int = 0, gives: int = 0, cost: float = 0.0) -> None:
        """A new arc."""
        self.arcs[start].append((takes, gives, cost, end))

    def phone(self, start: int, end: int, number: int, word: int = 0, cost: float = 0.0) -> None:
        """One phone from start to end; end may be shared, it carries no loop."""
        loop, to_blank, to_end, blank_loop, blank_end = transitions(number)
        plain, sounding, blank = self.state(), self.state(), self.state()
        self.arc(start, plain, to_end, word, cost)
        self.arc(plain, plain, loop)
        self.arc(plain, end)
        self.arc(start, sounding, to_blank, word, cost)
        self.arc(sounding, sounding, loop)
        self.arc(sounding, blank, blank_end, 0, BLANK_COST)
        self.arc(blank, blank, blank_loop, 0, BLANK_COST)
        self.arc(blank, end)

    def packed(self, start: int, final: int) -> bytes:
        """The OpenFst vector file; arcs sorted by output label."""
        count = sum(map(len, self.arcs))
        head = struct.pack("<i", 0x7EB2FDD6)
        for name in (b"vector", b"standard"):
            head += struct.pack("<i", len(name)) + name
        head += struct.pack("<iiQqqq", 2, 0, 3, start, len(self.arcs), count)
        body = [head]
        for number, arcs in enumerate(self.arcs):
            body.append(struct.pack("<fq", 0.0 if number == final else float("inf"), len(arcs)))
            body += [
                struct.pack("<iifi", takes, gives, cost, end)
                for takes, gives, cost, end in sorted(arcs, key=lambda one: one[1])
            ]
        return b"".join(body)


def positions(length: int) -> list[int]:
    """The position of each phone of a word of that length."""
    if length == 1:
        return [ALONE]
    return [BEGIN, *[INSIDE] * (length - 2), END]


def add_word(graph: Graph, home: int, word: int, phones: Sequence[int]) -> None:
    """A word from home back to home."""
    start = home
    for spot, (phone, position) in enumerate(zip(phones, positions(len(phones)), strict=True)):
        end = home if spot == len(phones) - 1 else graph.state()
        graph.phone(start, end, phone_number(phone, position), word if spot == 0 else 0)
        start = end


def add_filler(
    graph: Graph, home: int, word: int, cost: float, follow: Sequence[Sequence[float]]
) -> None:
    """Any chain of phones as a word: cost a phone plus follow[before][phone], row 39 being the
    start.
    """
    n = len(PHONES)
    enter = [[graph.state() for _ in range(n)] for _ in POSITIONS]
    after = [graph.state() for _ in range(n)]
    for phone in range(n):
        graph.arc(home, enter[BEGIN][phone], 0, word, ENTRY_COST + cost + follow[n][phone])
        for before in range(n):
            price = cost + follow[before][phone]
            for position in (INSIDE, END):
                graph.arc(after[before], enter[position][phone], 0, 0, price)
        graph.phone(enter[BEGIN][phone], after[phone], phone_number(phone, BEGIN))
        graph.phone(enter[INSIDE][phone], after[phone], phone_number(phone, INSIDE))
        graph.phone(enter[END][phone], home, phone_number(phone, END))


def build(
    lexicon: Mapping[str, Sequence[Sequence[str]]],
    fillers: Mapping[str, float],
    follow: Sequence[Sequence[float]],
) -> tuple[Graph, list[str]]:
    """The graph with its words in order of their numbers (0 is <eps>); state 0 is start and end."""
    graph, words = Graph(), ["<eps>"]
    home = graph.state()
    quiet = graph.state()
    graph.arc(home, quiet, SILENCE_END, 0, SILENCE_COST)
    graph.arc(quiet, quiet, SILENCE_LOOP)
    graph.arc(quiet, home)
    for word, ways in lexicon.items():
        words.append(word)
        for phones in ways:
            add_word(graph, home, len(words) - 1, [PHONES.index(phone) for phone in phones])
    for word, cost in fillers.items():
        words.append(word)
        add_filler(graph, home, len(words) - 1, cost, follow)
    return graph, words


def write_graph(
    folder: Path,
    lexicon: Mapping[str, Sequence[Sequence[str]]],
    fillers: Mapping[str, float],
    follow: Sequence[Sequence[float]],
) -> None:
    """Writes HCLr.fst, words.txt, phones/word_boundary.int and disambig_tid.int into the folder
    `graph`.

    Raises ValueError for a phone that the network does not know.
    """
    graph, words = build(lexicon, fillers, follow)
    (folder / "phones").mkdir(parents=True, exist_ok=True)
    (folder / "HCLr.fst").write_bytes(graph.packed(0, 0))
    lines = "".join(f"{word} {number}\n" for number, word in enumerate(words))
    (folder / "words.txt").write_text(lines, encoding="utf-8")
    bounds = ["1 nonword"]
    for phone in range(len(PHONES)):
        bounds += [f"{phone_number(phone, spot)} {name}" for spot, name in enumerate(POSITIONS)]
    (folder / "phones" / "word_boundary.int").write_text("\n".join(bounds) + "\n", encoding="utf-8")
    (folder / "disambig_tid.int").write_text(f"{TRANSITIONS + 1}\n", encoding="utf-8")
