"""Crochet told aloud and written down with its commas: "Round nine is like seven", "round ten,
once more", "and then rounds twelve through eighteen are plain" -> "Round nine:    as 7", "round
ten:  as last", "     rounds twelve through eighteen:  plain"; length kept.
"""

from __future__ import annotations

import re

from reader.terms.numbers import SPELLED, word_number
from reader.text.sought import Sought
from reader.text.spoken import hardly_marked

_N = rf"(?:{SPELLED}|\d{{1,3}}\b)"
_TO = r"(?: ?(?:to|through|thru|until|till|and|&|-|—) ?)"
_ROUNDS = r"(?:rounds?|rows?)"
LABEL = Sought(
    ("round", "row"),
    rf"(?P<lead>(?:^|(?<=[.;!?,)\n])) ?(?:(?:and|so|then|now|okay|ok|next|for|on to|onto|finally"
    rf"|now for),? )*)(?P<label>{_ROUNDS} (?P<a>{SPELLED})(?:{_TO}(?P<b>{SPELLED}))?)"
    r"(?P<mark>[,:.;]| ?[-—])?(?= )",
    re.IGNORECASE | re.MULTILINE,
)
LISTED = re.compile(rf" of | and {_ROUNDS}|(?:, {SPELLED})+,? (?:and|&) {SPELLED}", re.IGNORECASE)
LEAST = 3
"""Labels in words that a text told aloud has."""
FARTHEST = 3
"""Rows between two labels that follow one another, at most."""
_NO_CHANGE = r"(?!but\b|except\b|with\b|instead\b|in\b|into\b|make\b|put\b|chain\b|only\b|plus\b)"
_FILLED = rf"(?: {_NO_CHANGE}[a-z']+){{0,7}}?"
AS = re.compile(
    rf"{_FILLED} ?\b(?:like|as|repeats?)(?: (?:the )?{_ROUNDS})? (?P<n>{_N})"
    rf"(?:(?P<to>{_TO})(?:{_ROUNDS} )?(?P<m>{_N}))?(?: again| too| also| did| was| were"
    r"| once more)*(?=[.,;!\n]|$| but\b| except\b)",
    re.IGNORECASE,
)
AGAIN = re.compile(
    r" ?(?:(?:is|are|we|you|i|just|exactly|simply) )*(?:(?:do|work|make|repeat) "
    r"(?:that|it|this|the same|the same thing|that one|that round|that row)(?: all)?(?: over)?"
    r"(?: again| once more| one more time)|once more|one more time|once again|and again|again"
    r"|one more (?:of those|of these|like that|like it|just like it|the same)"
    r"|another one(?: of those| like that| just like it)?|another of those|ditto|the same again"
    r"|(?:the )?same (?:thing )?(?:once more|again))(?=[.,;!\n]|$)",
    re.IGNORECASE,
)
PLAIN = re.compile(
    r" (?:(?:is|are|will be|just|all|simply|we do|you do|nothing but|your|the|our|two|three|four"
    r"|more) )*(?P<plain>plain)(?P<rows> (?:ones?|rounds?|rows?|again))?(?=[.,;!\n]|$)"
    r"| (?:(?:is|are|will be|just|all|simply) )*(?P<adjective>plain) (?=(?:half |single )?"
    r"(?:doubles?|singles?|trebles?|crochets?|stitch(?:es)?|sc|dc|hdc|tr)\b)",
    re.IGNORECASE,
)
SPEAKER = re.compile(
    r",? (?:you|we|i)(?:'re|'ll|'ve| are| will| just| simply| only| then| going to| gonna| want to"
    r"| need to| have to)*(?: (?:do|work|make|crochet))?(?= (?!the same)[a-z\d])", re.IGNORECASE,
)
BARE_CALL = Sought(
    ("do ", "work ", "repeat ", "alternate "),
    rf"(?P<verb>\b(?:do|work|repeat|alternate) )(?P<rows>{_ROUNDS} )?(?P<n>{SPELLED})"
    rf"(?P<and> (?:and|then|to|through) )(?P<m>{SPELLED})(?=[.,;]|$| (?:again|once|twice"
    r"|\w+ (?:more )?times|in turn|alternately|until|till))", re.IGNORECASE,
)
""" "Do three and four twice": the rounds by their numbers alone."""
EACH_TIME = Sought(
    ("each", "every", "all the"),
    rf"(?<=[.;,] )(?P<n>{_N})(?: stitches)?(?P<time> (?:each|every|all the) (?:time|way|rounds?"
    r"|rows?))(?=[.!\n]|$)", re.IGNORECASE,
)


def rounds_told(text: str) -> str:
    """The text so put, where enough rounds are named in words; any other text as it is."""
    labels = [one for one in LABEL.finditer(text) if not _spoken_of(text, one)]
    # A text with hardly a stop is parted by another pass, which marks put here would hide it from.
    if len(labels) < LEAST or hardly_marked(text):
        return text
    out, before = list(text), 0
    for one in labels:
        first, last = _value(one["a"]), _value(one["b"] or one["a"])
        amid = one["lead"].strip() != "" or text[one.start() - 1 : one.start()] == ","
        if amid and not before < first <= before + FARTHEST:
            continue
        before = max(before, last)
        told = _told(text, one)
        if amid and (told is not None or one["mark"]):
            _write(out, one.start("lead"), one.end("lead"), "")
            if one.start() and text[one.start() - 1] == ",":
                out[one.start() - 1] = "."
        if told is not None:
            end, said = told
            _write(out, one.end("label"), end, said)
    plain = EACH_TIME.sub(lambda found: found["n"].ljust(len(found.group())), "".join(out))
    return BARE_CALL.sub(_in_figures, plain)


def _in_figures(found: re.Match[str]) -> str:
    bare = "r" if found["verb"].lower().startswith("alternate") else ""
    rounds = (found["rows"] or bare) + f"{_value(found['n'])}{found['and']}{_value(found['m'])}"
    return (found["verb"] + rounds).ljust(len(found.group()))


def _spoken_of(text: str, one: re.Match[str]) -> bool:
    """Whether the rounds are only spoken of, or one of a list: "rounds five, six and seven"."""
    return one["b"] is None and LISTED.match(text, one.end("label")) is not None


def _told(text: str, one: re.Match[str]) -> tuple[int, str] | None:
    """Where the words behind a label end that only call others, and what is put for them."""
    at = one.end()
    room = one.end("label")
    called = AS.match(text, at)
    if called is not None:
        said = f"as r{_value(called['n'])}"
        if called["m"]:
            mark = " and " if called["to"].strip() in ("and", "&") else "-"
            said += f"{mark}{_value(called['m'])}"
        return _fitting(called.end(), said, room)
    again = AGAIN.match(text, at)
    if again is not None:
        return _fitting(again.end(), "as last", room)
    plain = PLAIN.match(text, at)
    if plain is not None and plain["plain"]:
        return _fitting(plain.end(), "plain", room)
    if plain is not None:
        return _fitting(plain.end("adjective"), "", room)
    speaker = SPEAKER.match(text, room)
    return _fitting(speaker.end(), "", room) if speaker is not None else None


def _fitting(end: int, said: str, start: int) -> tuple[int, str] | None:
    """The mark, and what is put. Where nothing is, the mark stands where a word ends; else what is
    put stands right behind it, so that the words can be shown as they were written.
    """
    room = end - start
    whole = f":{said.ljust(room - 1)}" if said else f"{':'.rjust(room)}"
    return (end, whole) if room > len(said) + 1 else None


def _write(out: list[str], start: int, end: int, said: str) -> None:
    out[start:end] = said.ljust(end - start)


def _value(said: str) -> int:
    return int(said) if said.isdigit() else word_number(said) or 0
