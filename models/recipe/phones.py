"""The phone set and the pronunciations of the training texts.

Phones: the 39 of the CMU pronouncing dictionary without stress marks, in alphabetical order; 0 is
blank and silence. Source: the dictionary inside the package pocketsphinx (BSD),
`cmudict-en-us.dict`.
"""

from __future__ import annotations

import re
from importlib import resources

from reader.devices.vosk_graph import PHONES

NUMBER = {phone: number for number, phone in enumerate(PHONES, start=1)}


def dictionary() -> dict[str, list[tuple[str, ...]]]:
    """Every word of the dictionary with its pronunciations, the usual one first."""
    words: dict[str, list[tuple[str, ...]]] = {}
    base = resources.files("pocketsphinx") / "model" / "en-us" / "cmudict-en-us.dict"
    for line in base.read_text(encoding="utf-8").splitlines():
        word, *phones = line.split()
        if phones and all(phone in NUMBER for phone in phones):
            words.setdefault(re.sub(r"\(\d+\)$", "", word), []).append(tuple(phones))
    return words


EXTRA = {"crochet": ("K", "R", "OW", "SH", "EY"), "snowboy": ("S", "N", "OW", "B", "OY"),
"lifeline": ("L", "AY", "F", "L", "AY", "N"),
         "purlwise": ("P", "ER", "L", "W", "AY", "Z"), "knitwise": ("N", "IH", "T", "W", "AY",
         "Z"), "tink": ("T", "IH", "NG", "K"),
         "stockinette": ("S", "T", "AA", "K", "IH", "N", "EH", "T"), "picot": ("P", "IY", "K",
         "OW"), "amigurumi": ("AA", "M", "IY", "G", "UH", "R", "UW", "M", "IY"),
         "popcorn": ("P", "AA", "P", "K", "AO", "R", "N"), "gusset": ("G", "AH", "S", "AH", "T"),
         "skein": ("S", "K", "EY", "N"), "alexa": ("AH", "L", "EH", "K", "S", "AH"),
         "treble": ("T", "R", "EH", "B", "AH", "L"), "purl": ("P", "ER", "L"), "purls": ("P", "ER",
         "L", "Z"), "purled": ("P", "ER", "L", "D"), "offence": ("AH", "F", "EH", "N", "S"),
         "frogged": ("F", "R", "AA", "G", "D")}  # fmt: skip


def numbers_of(text: str, words: dict[str, list[tuple[str, ...]]]) -> list[int] | None:
    """Phone numbers of a text, the usual pronunciations; None when a word is not in the dictionary.
    """
    out: list[int] = []
    for word in re.findall(r"[a-z']+", text.lower()):
        phones = EXTRA.get(word) or (words.get(word) or [None])[0]
        if phones is None and word.endswith("s") and word[:-1] in words:
            phones = (*words[word[:-1]][0], "Z")
        if phones is None:
            return None
        out += [NUMBER[phone] for phone in phones]
    return out
