"""How a word that no dictionary has is likely to be said, by its letters; pure.

English letters leave much open, so each spelling has the sounds that it usually stands for, the
usual one first, and a word has several ways of being said.
"""

from __future__ import annotations

import re

Phones = tuple[str, ...]

MOST_WAYS = 8
_SOFT = r"(?=[eiy])"
_OPEN = r"(?=(?:[bcdfgklmnprstvz]|th)(?:e(?:s|d|r|rs)?$|e(?:ly|less|ful|ment)|ing|ie|y$))"
"""One consonant and another vowel behind it make a vowel long, mostly."""
_LATE = r"(?<=[a-z]{2})"
_END = r"(?=s?$)"

ENDS = (
    (r"[st]ion|ssion|cian", "SH AH N|ZH AH N"), (r"[tc]ious", "SH AH S"), (r"ture", "CH ER"),
    (r"(?<=[bcdfgkpstz])le" + _END, "AH L"), (r"(?<=[bct])re(?=[sd]?$)", "ER"),
    (r"ies$", "IY Z"), (r"ie$|ee$|ey$", "IY"),
    (r"(?<=[szxcg])es$|(?<=[cs]h)es$", "AH Z"), (r"(?<=[td])ed$", "AH D"),
    (r"(?<=[fkpsx])ed$|(?<=[cs]h)ed$", "T"), (_LATE + r"ed$", "D|AH D"),
    (_LATE + r"ous$", "AH S"), (r"ette" + _END, "EH T"), (r"que" + _END, "K"),
    (r"mb" + _END, "M"), (_LATE + r"age" + _END, "IH JH|AA ZH"), (_LATE + r"al" + _END, "AH L"),
    (_LATE + r"an" + _END, "AH N|AE N"), (_LATE + r"en" + _END, "AH N"),
    (_LATE + r"et" + _END, "AH T|EH T"), (_LATE + r"on" + _END, "AH N"),
    (_LATE + r"in" + _END, "IH N"),
)  # fmt: skip
CONSONANTS = (
    (r"tch", "CH"), (r"(?<!^)ch(?=[lr])", "K"), (r"ch", "CH|K"), (r"ck", "K"), (r"sh", "SH"),
    (r"ph", "F"), (r"th(?=er|e$|ing$)", "DH|TH"), (r"th", "TH"), (r"wh", "W"),
    (r"^[kgp]n|gn$", "N"), (r"^wr|^rh", "R"), (r"^ps", "S"), (r"qu", "K W"), (r"^x", "Z"),
    (r"x", "K S"), (r"dg(?=e)", "JH"), (r"ng" + _SOFT, "N JH|NG|NG G"),
    (r"ng(?=[aouwlr])", "NG G"), (r"ng", "NG"), (r"n(?=[kx])", "NG"), (r"gu" + _SOFT, "G"),
    (r"gg|gh", "G"), (r"g" + _SOFT, "JH|G"), (r"cc" + _SOFT, "K S"), (r"s?c" + _SOFT, "S"),
    (r"ss", "S"), (r"(?<=[aeiouy])s(?=[aeiouy])", "Z|S"), (r"(?<=[aeiouybdglmnrvw])s$", "Z"),
    (r"s", "S"), (r"qq?", "K"), (r"['-]", ""),
)  # fmt: skip
VOWELS = (
    (r"eigh", "EY"), (r"[ao]ugh(?=t)", "AO"), (r"ough", "OW|AH F"), (r"igh", "AY"),
    (r"eau", "OW"), (r"air|ayer|are" + _END, "EH R"), (r"eer|ere$", "IH R"),
    (r"ear(?=[a-z])", "ER|IH R"), (r"ear", "IH R|EH R"), (r"oar|oor|our(?=[a-z])", "AO R"),
    (r"ore(?=[sd]?$)", "AO R"), (r"our$", "AW ER|ER"), (r"ire(?=[sd]?$)", "AY ER"),
    (r"ure(?=[sd]?$)", "Y UH R"), (r"ower", "AW ER|OW ER"), (r"war", "W AO R"),
    (r"wor", "W ER"), (r"wa(?=[dnst])", "W AA"), (r"ai|ay|ei(?=[gn])", "EY"), (r"ea", "IY|EH"),
    (r"ee|ie|ei", "IY"), (r"oo(?=k)", "UH"), (r"oo", "UW"), (r"oa", "OW"), (r"oi|oy", "OY"),
    (r"ow(?=[nl])", "AW|OW"), (r"ow(?=$|s$|er|ing)", "OW|AW"), (r"ou|ow", "AW"),
    (r"au|aw", "AO"), (r"ew|eu|ui|ue$", "UW"), (r"oe" + _END, "OW"), (r"ye" + _END, "AY"),
    (r"ar(?=r[aeiouy])", "EH"), (r"ar", "AA R"), (r"or$", "ER|AO R"), (r"or", "AO R"),
    (r"[eiuy]r(?=[aeiouy])", "ER|IH R"), (r"[eiuy]r", "ER"), (r"all", "AO L"),
    (r"al(?=[km])", "AO"), (r"o(?=ld|lt|ll|st$)", "OW"), (r"i(?=nds?$|ld$|[bt]re)", "AY"),
    (r"a" + _OPEN, "EY|AE"), (r"e" + _OPEN, "IY|EH"), (r"i" + _OPEN + "|y(?=[a-z]e$)", "AY|IH"),
    (r"o" + _OPEN, "OW|AA"), (r"u" + _OPEN, "UW|AH"), (r"^y(?=[aeiou])", "Y"),
    (r"(?<=^[^aeiouy])y$|(?<=^[^aeiouy]{2})y$", "AY"), (r"y$", "IY"), (r"y", "IH|AY"),
    (r"a$", "AH"), (r"^a(?=[^aeiou][aeiou])", "AH|AE"), (r"a", "AE|AH"), (r"e(?=s$)", ""),
    (_LATE + r"e$", ""), (r"e", "EH|AH"), (r"i$", "IY"), (r"i", "IH"), (r"o$", "OW"),
    (r"o(?=[^aeiouy][aeiou])", "OW|AA"), (r"o", "AA|AH"), (r"u", "AH|UH"),
)  # fmt: skip
SINGLE = (
    ("b", "B"), ("c", "K"), ("d", "D"), ("f", "F"), ("g", "G"), ("h", "HH"), ("j", "JH"),
    ("k", "K"), ("l", "L"), ("m", "M"), ("n", "N"), ("p", "P"), ("r", "R"), ("t", "T"),
    ("v", "V"), ("w", "W"), ("z", "Z"),
)  # fmt: skip
_SPELLINGS = tuple(
    (re.compile(spelling), tuple(sounds.split("|")))
    for spelling, sounds in (*ENDS, *CONSONANTS, *VOWELS, *((f"{a}{a}?", b) for a, b in SINGLE))
)
"""What stands first is tried first; one consonant sounds the same where it is written twice."""


def by_letters(word: str) -> tuple[Phones, ...]:
    """Ways in which a word of the letters a-z may be said, likely ones first, at most eight; ()
    for one without a vowel, which is an abbreviation, and for other letters.
    """
    if not re.fullmatch(r"(?=.*[aeiouy])[a-z'-]+", word):
        return ()
    ways, at = [""], 0
    while at < len(word):
        sounds, at = _next(word, at)
        ways = [f"{way} {one}" for one in sounds for way in ways][: 4 * MOST_WAYS]
    return tuple(dict.fromkeys(tuple(way.split()) for way in ways if way.split()))[:MOST_WAYS]


def _next(word: str, at: int) -> tuple[tuple[str, ...], int]:
    """The sounds of the spelling that stands there, and where it ends."""
    for spelling, sounds in _SPELLINGS:
        if found := spelling.match(word, at):
            return sounds, found.end()
    raise AssertionError(f"no sound for {word[at:]!r}")
