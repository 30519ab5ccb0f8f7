"""What the synthesised voices say: commands, numbers, words of the trade, broad English.

The same seed gives the same list. Kinds: cmd, num, trade, word, sent (a template filled with common
words), run (a few common words in a row), and hold (the same commands for voices never trained on).
"""

from __future__ import annotations

import random
import re
from dataclasses import dataclass

from models.recipe.lexicon import NUMBERS, TRADE, common_words
from models.recipe.phones import dictionary, numbers_of
from reader.commands.phrases import TABLE

TEMPLATES = (
    "the {w} is in the {w}", "i think we should {w} the {w}", "can you {w} my {w} please",
    "where did you put the {w}", "he said it was a {w} {w}", "they {w} and {w} all day",
    "it was {w} and very {w}", "we never {w} on the {w}", "there is no {w} here",
    "what a {w} {w}", "tell me about the {w}", "do not {w} that", "i will {w} it tomorrow",
    "put the {w} next to the {w}", "turn on the {w}", "the {w} {w} went back home",
    "give me {n} of the {w}", "it costs {n} {n}", "in {n} minutes", "i have {n} stitches",
    "go to row {n}", "my number is {n}", "chain {n} and turn", "work {n} rounds",
    "she stopped and looked back", "once again the {w} was {w}", "how many {w} are there",
    "no i don't {w} it", "yes it is {w}",
)  # fmt: skip
OFTEN = {"cmd": 12, "num": 8, "trade": 3}
"""How often a voice list holds each text of these kinds; the broad texts stand once."""


@dataclass(frozen=True, slots=True)
class Text:
    """One thing to say."""

    kind: str
    words: str


def texts(seed: int = 7, words: int = 6_000, sentences: int = 2_500) -> list[Text]:
    """Every text, in an order that chance made; all words are in the pronouncing dictionary."""
    chance = random.Random(seed)
    known = dictionary()
    common = [word for word in common_words(words) if word in known and len(word) > 1]
    commands = sorted({phrase for one in TABLE for phrase in one.phrases})
    numbers = [n for n in NUMBERS if n in known]
    trade = [word for word in TRADE.read_text(encoding="utf-8").split() if word in known]
    out = [Text("cmd", phrase) for phrase in commands] * OFTEN["cmd"]
    out += [Text("num", one) for one in numbers] * OFTEN["num"]
    out += [Text("trade", one) for one in trade] * OFTEN["trade"]
    out += [Text("word", one) for one in common]

    def filled(match: re.Match[str]) -> str:
        return chance.choice(numbers if match.group(1) == "n" else common)

    for _ in range(sentences):
        out.append(Text("sent", re.sub(r"\{(\w)\}", filled, chance.choice(TEMPLATES))))
        run = " ".join(chance.choice(common) for _ in range(chance.randint(2, 6)))
        out.append(Text("run", run))
    out = [one for one in out if numbers_of(one.words, known)]
    chance.shuffle(out)
    return out
