"""Abbreviations of the trade in, the words a maker says for them out."""

from __future__ import annotations

import re
from functools import cache

from reader.plan.step import Reading
from reader.terms.crafts import Terms
from reader.terms.forms import STITCHES, name_of
from reader.terms.stitches import CABLE, Craft
from reader.wording.numbers import number_words

BOTH: dict[str, str] = {
    "st": "stitch", "sts": "stitches", "st(s)": "stitches", "sp": "space", "sps": "spaces",
    "sp(s)": "spaces", "lp": "loop", "lps": "loops", "lp(s)": "loops", "rep": "repeat",
    "reps": "repeats", "rnd": "round", "rnds": "rounds", "rd": "round", "rds": "rounds",
    "rnd(s)": "rounds", "beg": "beginning", "prev": "previous", "rem": "remaining",
    "cont": "continue", "alt": "alternate", "foll": "following", "fol": "following",
    "tog": "together", "betw": "between", "btw": "between",
    "approx": "about", "incl": "inclusive", "inc": "increase", "incs": "increases",
    "inc'd": "increased", "incd": "increased", "incr": "increase", "dec": "decrease",
    "decs": "decreases", "dec'd": "decreased", "decd": "decreased", "inc'ing": "increasing",
    "dec'ing": "decreasing", "nxt": "next", "ea": "each", "sk": "skip", "yo": "yarn over",
    "yoh": "yarn over hook", "yrh": "yarn round hook", "rs": "right side", "ws": "wrong side",
    "pm": "place a marker", "rm": "remove the marker", "mc": "main colour",
    "cc": "contrasting colour", "cc1": "first contrasting colour", "cc2": "second contrasting "
    "colour",
    "patt": "pattern", "patts": "patterns", "lh": "left hand", "rh": "right hand",
    "w/": "with", "w/o": "without", "fo": "fasten off",
    "f/o": "fasten off", "meas": "measures", "opp": "opposite", "sl": "slip", "sl'd": "slipped",
    "mos": "months", "yrs": "years", "eg": "for example",
    "e.g": "for example", "ie": "that is", "i.e": "that is", "pcs": "pieces", "dbl": "double",
    "bor": "beginning of the round", "eor": "every other row", "wyib": "with the yarn in back",
    "wyif": "with the yarn in front", "vs": "versus",
}  # fmt: skip
"""Short forms of both crafts. Craft Yarn Council lists (from memory) and the pamphlets of
1951-1953.
"""

CROCHET: dict[str, str] = {
    "ch": "chain", "chs": "chains", "ch(s)": "chains", "chn": "chain", "ch-sp": "chain space",
    "ch sp": "chain space", "ch-sps": "chain spaces", "ch sps": "chain spaces", "chsp": "chain "
    "space",
    "ch-lp": "chain loop", "ch lp": "chain loop", "t-ch": "turning chain", "tch": "turning chain",
    "t ch": "turning chain", "flo": "front loop only", "blo": "back loop only", "fl": "front loop",
    "bl": "back loop", "flp": "front loop", "blp": "back loop", "mr": "magic ring",
    "sm": "move the marker", "invdec": "invisible decrease", "inv": "invisible",
    "sts": "stitches", "fpst": "front post stitch", "bpst": "back post stitch", "fp": "front post",
    "bp": "back post", "pc": "popcorn", "bpl": "back post loop", "ss": "slip stitch",
    "slst": "slip stitch", "dtr": "double treble", "magic ring": "magic ring", "p": "picot",
    "sc": "single crochet", "sc's": "single crochet",
}  # fmt: skip
KNITTING: dict[str, str] = {
    "k": "knit", "p": "purl", "co": "cast on", "bo": "bind off", "c.o": "cast on", "b.o": "bind "
    "off",
    "sm": "slip the marker", "slm": "slip the marker", "dpn": "double pointed needle",
    "dpns": "double pointed needles", "dpn(s)": "double pointed needles", "dp": "double pointed",
    "cn": "cable needle", "ndl": "needle", "ndls": "needles", "n1": "needle one", "n2": "needle "
    "two",
    "n3": "needle three", "n4": "needle four", "st st": "stockinette stitch",
    "stst": "stockinette stitch", "g st": "garter stitch", "gst": "garter stitch",
    "rev st st": "reverse stockinette stitch", "kwise": "knitwise", "pwise": "purlwise",
    "k-wise": "knitwise", "p-wise": "purlwise", "tbl": "through the back loop",
    "tfl": "through the front loop", "pu": "pick up", "puk": "pick up and knit",
    "w&t": "wrap and turn", "w+t": "wrap and turn", "wrap & turn": "wrap and turn", "m": "marker",
    "ds": "double stitch", "ssk": "slip slip knit", "ssp": "slip slip purl",
    "psso": "pass the slipped stitch over", "p2sso": "pass two slipped stitches over",
    "p.s.s.o": "pass the slipped stitch over", "kfb": "knit front and back", "pfb": "purl front "
    "and back",
    "k1f&b": "knit front and back", "kf&b": "knit front and back", "k1fb": "knit front and back",
    "p1f&b": "purl front and back", "yf": "yarn forward", "yfwd": "yarn forward",
    "wl fwd": "wool forward", "yrn": "yarn round needle", "yon": "yarn over needle",
    "skp": "slip one, knit one, pass the slipped stitch over",
    "skpo": "slip one, knit one, pass the slipped stitch over",
    "sk2p": "slip one, knit two together, pass the slipped stitch over",
    "sk2po": "slip one, knit two together, pass the slipped stitch over",
    "cdd": "centred double decrease", "s2kp": "centred double decrease",
    "s2kp2": "centred double decrease", "rt": "right twist", "lt": "left twist", "mb": "make a "
    "bobble",
    "m1": "make one", "m1l": "make one left", "m1r": "make one right", "m1p": "make one purlwise",
    "ktbl": "knit through the back loop", "ptbl": "purl through the back loop",
    "kfbf": "knit front, back and front", "rli": "right lifted increase", "lli": "left lifted "
    "increase",
    "sssk": "slip slip slip knit",
}  # fmt: skip
"""Short forms of one craft only."""

PLURAL = {
    "stitch": "stitches", "loop": "loops", "space": "spaces", "round": "rounds", "row": "rows",
    "chain": "chains", "popcorn": "popcorns", "shell": "shells", "cluster": "clusters",
    "bobble": "bobbles", "picot": "picots", "marker": "markers", "increase": "increases",
    "decrease": "decreases", "fan": "fans", "group": "groups", "petal": "petals",
    "scallop": "scallops", "block": "blocks", "star": "stars",
}  # fmt: skip

_POST = {"fp": "front post", "bp": "back post", "f": "front", "b": "back"}
_WAYS = {
    "f": "front",
    "b": "back",
    "l": "left",
    "r": "right",
    "fp": "front purl",
    "bp": "back purl",
}
_CROSS = {
    "lc": "left cross", "rc": "right cross", "lt": "left twist", "rt": "right twist",
    "lpc": "left purl cross", "rpc": "right purl cross",
}  # fmt: skip


def word_for(form: str, reading: Reading) -> str:
    """The spoken words for a written form, "" where it is none that is known.

    The pattern's own list comes first where it gives a name and not a recipe; then the craft's,
    then the
    stitch table, in the pattern's terms.
    """
    low = form.lower().rstrip(".")
    own = _key(reading).get(low, "")
    if own:
        return own
    craft = KNITTING if reading.craft == "knitting" else CROCHET
    if low in craft:
        return craft[low]
    if low in BOTH:
        return BOTH[low]
    other = CROCHET if craft is KNITTING else KNITTING
    words = stitch_word(low, reading.craft, reading.terms)
    if not words and len(low) > 2:
        words = other.get(low, "")
    return (
        plural(words) if words and low.endswith("s") and low not in ("ps", "ss", "bls") else words
    )


@cache
def stitch_word(low: str, craft: str, terms: str) -> str:
    """The stitch table's spoken words for a form in lower case, "" where it is no stitch."""
    kind = Craft.KNITTING if craft == "knitting" else Craft.CROCHET
    uk = Terms.UK if terms == "UK" else Terms.US
    cable = CABLE.match(low)
    if cable and kind is Craft.KNITTING:
        return _cable(low)
    name = name_of(low, kind, uk)
    stitch = STITCHES[kind].get(name)
    if stitch is None:
        return ""
    return stitch.spoken_uk or stitch.spoken if uk is Terms.UK else stitch.spoken


@cache
def stitch_name(name: str, craft: str, terms: str) -> str:
    """The spoken words for a stitch of the table by its US short name, in the pattern's terms; ""
    for none.
    """
    kind = Craft.KNITTING if craft == "knitting" else Craft.CROCHET
    stitch = STITCHES[kind].get(name)
    if stitch is None:
        return ""
    return stitch.spoken_uk or stitch.spoken if terms == "UK" else stitch.spoken


def _cable(low: str) -> str:
    short = re.fullmatch(r"([ct])(\d+)([a-z]+)", low)
    if short:
        deed = "cable" if short.group(1) == "c" else "twist"
        way = _WAYS.get(short.group(3), short.group(3))
        return f"{deed} {number_words(int(short.group(2)))} {way}"
    long = re.fullmatch(r"(\d+)/(\d+) ?([a-z]+)", low)
    if long is None:
        return ""
    over, under = (number_words(int(long.group(n))) for n in (1, 2))
    return f"{over} over {under} {_CROSS.get(long.group(3), long.group(3))}"


_SMALL_WORDS = {"of", "in", "to", "a", "on", "up", "by", "or", "an"}


@cache
def _key(reading: Reading) -> dict[str, str]:
    """The pattern's own abbreviations whose meaning is a name, of at most five words and none of
    them short forms.
    """
    found: dict[str, str] = {}
    for form, meaning in reading.key:
        plain = " ".join(meaning.split()).strip(" .;").lower()
        words = plain.split()
        named = re.fullmatch(r"[a-z][a-z'\- ]*", plain) and len(words) <= 5
        if named and all(len(w) > 3 or w in _SMALL_WORDS or _is_word(w) for w in words):
            found[form] = plain
    return found


def _is_word(word: str) -> bool:
    """Whether three letters or fewer are a word and no short form of the trade."""
    forms = (BOTH, CROCHET, KNITTING)
    return any(vowel in word for vowel in "aeiouy") and not any(word in table for table in forms)


def singular(words: str) -> str:
    """One of a thing: "V stitch", "chain space"; names that have no plural stay as they are."""
    head, _, last = words.rpartition(" ")
    one = next((one for one, many in PLURAL.items() if many == last), last)
    return f"{head} {one}" if head else one


def plural(words: str) -> str:
    """More than one of a thing: "stitches", "chain spaces"; stitch names ("single crochet") stay
    as they are.
    """
    head, _, last = words.rpartition(" ")
    many = PLURAL.get(last, last)
    return f"{head} {many}" if head else many
