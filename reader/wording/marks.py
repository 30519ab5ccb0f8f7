"""Brackets and stars of a pattern in, words in their place out; the short forms inside stay as
they are.
"""

from __future__ import annotations

import re

from reader.wording.numbers import number_words, times_words

_NAME_AND_SHORT = re.compile(
    r"\b((?:single|double|treble|half double|slip|yarn)?\s?(?:chain|crochet|stitch(?:es)?|loops?|"
    r"spaces?|over|rounds?))"
    r"\s*\((?:[a-z]{1,3}\s?){1,3}\)",
    re.IGNORECASE,
)
"""A name with its short form behind it, "chain (ch)", which would be said twice."""
_OPTIONAL_PLURAL = re.compile(r"(?<=[a-z])\((e?s)\)", re.IGNORECASE)
_INNER = re.compile(
    r"(?P<before>(?<!\w)\d+\s*(?:x|times)\s*)?"
    r"[(\[{](?P<body>[^()\[\]{}]*)[)\]}]"
    r"(?P<after>\s*(?:[x*]\s*\d+(?:\s*times)?|\d+\s*(?:x\b|times\b(?!\s+more))|once\b|twice\b|"
    r"(?:all\s+)?(?:around|across|to (?:the )?end)\b|[x*]?\s*(?:two|three|four|five|six|seven|"
    r"eight|nine|ten) times\b)"
    r"|(?=\s*(?:all\s+)?(?:in|into)\s+(?:the\s+)?(?:next|same|first|last|corner|each|every|ring|"
    r"ch|sp|st|loop|top|\d)))?",
    re.IGNORECASE,
)
_TOTAL = re.compile(
    r"^[=:]?\s*(?P<count>\d+)\s*(?P<of>(?:sts?|stitch(?:es)?|[a-z]{1,4}tr|s ?c|h?dc|tr|rows?|"
    r"rnds?)?)\s*(?:total|in all)?\.?$",
    re.IGNORECASE,
)
_STAR_PAIR = re.compile(
    r"(?<!\*)\*\s*((?:(?!\brep)[^*;.])+?)\s*\*(?!\*)\s*(?=x\s*\d|\d+\s*times|around\b|across\b|"
    r"twice\b)",
    re.IGNORECASE,
)
_LENGTHS = re.compile(r"\d\s*(?:\"|in\b|inch|cm\b|mm\b|g\b|oz\b|yds?\b|m\b|metre|meter)", re.I)
_COLOUR = re.compile(r"^(?:[A-H]|MC|CC\d?)$")
_COUNTS_AS = re.compile(
    r"^(?:here and throughout,?\s*)?(?:this\s+)?(?:counts?|counted|counting)\s+as\s+(?P<what>.+)$",
    re.I,
)
_COUNTS_NOT = re.compile(
    r"^(?:does(?: not|n'?t)|not)\s+(?:count(?:ed)?)\b(?:\s+as\s+(?:an?\s+)?(?:st|stitch|[hd]+c|"
    r"sc|tr))?(?P<rest>.*)$",
    re.I,
)
_LEAD_STAR = re.compile(r"^(?P<label>[^*:.]{0,40}[:.)]\s*|\s*)\*(?!\*)\s*")
_REPEAT = re.compile(
    r"\brep(?:eat)?s?\.?\s+(?:from|fr)\s+(?:the\s+)?(?:(?P<which>first|1st|last|second|"
    r"2nd)\s+)?(?P<star>\*+)"
    r"(?P<to>\s*(?:to|until)\s*\*+)?",
    re.IGNORECASE,
)
_TO_END = re.compile(
    r"(?P<repeat>\brepeat(?: from the [a-z ]*star)?)\s+(?:all\s+)?(?:(?P<round>around|"
    r"to (?:the )?end of (?:the )?(?:rnd|round))|"
    r"(?P<row>across(?: (?:the )?row)?|to (?:the )?end of (?:the )?row)|"
    r"to (?:the )?end)\b(?!\s*of)",
    re.IGNORECASE,
)
_STAR_END = re.compile(r" ?;? ?\*+ ?(?=[;,.]? ?(?:repeat|rep\b))", re.IGNORECASE)
_TOTAL_AT_END = re.compile(
    r"\s*(?:(?:[=–—]|--?>|\s-)\s*(?P<count>\d+)\s*(?P<of>sts?|stitches|s ?c|hdc|d ?c|tr|htr|dtr)?|"
    r"(?<=[.;])\s(?P<count2>\d+)\s*(?P<of2>sts?|stitches|s ?c|hdc|d ?c|tr|htr|dtr))\s*\.?\s*$"
)
MOST_LEVELS = 6
"""Brackets inside brackets that are told apart; deeper ones are only left out."""


def without_brackets(text: str) -> str:
    """The text with what brackets mean said in words: times, "all in", "it counts as", totals;
    else pauses.
    """
    text = _OPTIONAL_PLURAL.sub(r"\1", text)
    text = _NAME_AND_SHORT.sub(r"\1", text)
    text = _STAR_PAIR.sub(r"(\1) ", text)
    for _ in range(MOST_LEVELS):
        changed = _INNER.sub(_inner, text)
        if changed == text:
            break
        text = changed
    return re.sub(r"[()\[\]{}]", " ", text)


def _inner(found: re.Match[str]) -> str:
    body = found.group("body").strip(" ,;")
    before, after = found.group("before") or "", (found.group("after") or "").strip().lower()
    if before:
        number = int(re.sub(r"\D", "", before))
        return f" {times_words(number)}: {body}; "
    pause = _pause(found)
    if after:
        whole = "all of that " if ";" in body else ""
        return f"{pause} {body}; {whole}{_how_often(after)}; "
    if found.group("after") is not None and "," in body:
        return f"{pause} {body}, all"
    if not body:
        return " "
    return _remark(body, found)


_NO_PAUSE = re.compile(
    r"(?:^|[,;:.*(\[{]|\b(?:work|with|then|and|or|of|is|make|dc|sc))\s*$", re.IGNORECASE
)


def _pause(found: re.Match[str]) -> str:
    """A comma before the words of a bracket, unless a pause or a verb that governs them stands
    there.
    """
    return "" if _NO_PAUSE.search(found.string[: found.start()][-12:]) else ","


def _how_often(after: str) -> str:
    digits = re.search(r"\d+", after)
    if digits:
        return times_words(int(digits.group()))
    if "around" in after:
        return "repeat to the end of the round"
    if "across" in after:
        return "repeat to the end of the row"
    return "repeat to the end" if "end" in after else re.sub(r"^[x*]\s*", "", after)


def _remark(body: str, found: re.Match[str]) -> str:
    total = _TOTAL.match(body)
    if total and found.string[: found.start()].strip():
        return f"; {_total(total.group('count'), total.group('of'))}"
    if _COLOUR.match(body):
        return f" with {body} "
    if (
        re.match(r"\d", body)
        and not _LENGTHS.search(body)
        and not found.string[found.end() :].strip(" .")
    ):
        return f"; {body}"
    counts = _COUNTS_AS.match(body)
    if counts:
        return f", it counts as {_article(counts.group('what').strip())}, "
    not_counted = _COUNTS_NOT.match(body)
    if not_counted:
        return f", it does not count{not_counted.group('rest').rstrip()}; "
    return f", {body}, "


def _article(what: str) -> str:
    """ "dc" -> "a dc"; left alone where an article or a number stands already."""
    if re.match(r"^(?:an?|the|one|first|last|\d|part)\b|^[^,]* and ", what, re.IGNORECASE):
        return re.sub(r"^(first|last)\b", r"the \1", what, flags=re.IGNORECASE)
    return f"an {what}" if re.match(r"^(?:e|inc|hs|u)", what, re.IGNORECASE) else f"a {what}"


def _total(count: str, of: str) -> str:
    plain = of.strip().lower()
    noun = "stitches" if plain in ("", "st", "sts", "stitch") else of.strip()
    if plain in ("", "st", "sts", "stitch") and int(count) == 1:
        noun = "stitch"
    return f"{number_words(int(count))} {noun}"


def without_stars(text: str) -> str:
    """The text with its star repeats in words; a star where the row begins needs no name, others
    are "the star".
    """
    text = _STAR_END.sub("; ", text)
    if text.count("*") == 1:
        text = re.sub(r"\*\s*(?=\d+\s*\.?$)", "x ", text)
    lead = _LEAD_STAR.match(text)
    rest = text[lead.end() :] if lead else text
    alone = lead is not None and not re.search(r"\*\s*[A-Za-z\d(\[]", _REPEAT.sub("", rest))
    if lead and alone:
        text = f"{lead.group('label')}{rest}"
    text = _REPEAT.sub(lambda found: _repeat(found, alone), text)
    text = _TO_END.sub(_to_end, text)
    text = re.sub(r"(?<=\S)\s*(?<!\*)\*\*(?!\*)", ", double star, ", text)
    text = re.sub(r"\*+'?s\b", " stars ", text)
    return re.sub(r"\*+", ", star, ", text)


def _repeat(found: re.Match[str], alone: bool) -> str:
    if found.group("to"):
        return "repeat what stands between the stars"
    if alone and not found.group("which") and len(found.group("star")) == 1:
        return "repeat"
    which = f"{found.group('which')} " if found.group("which") else ""
    star = "double star" if len(found.group("star")) == 2 else "star"
    return f"repeat from the {which}{star}"


def _to_end(found: re.Match[str]) -> str:
    where = " of the round" if found.group("round") else " of the row" if found.group("row") else ""
    return f"{found.group('repeat')} to the end{where}"


def total_in_words(text: str) -> str:
    """A total at the very end, "= 24", "— 24 sc", said as a number of stitches."""
    return _TOTAL_AT_END.sub(_end_total, text)


def _end_total(found: re.Match[str]) -> str:
    count = found["count"] or found["count2"]
    return f"; {_total(count, found['of'] or found['of2'] or '')}"
