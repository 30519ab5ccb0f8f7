"""What is told once for every needle of a round: "k 7, k 2 tog on each needle", "k 2 tog at end of
each needle", "each needle: k 1, ssk, k to last 3 sts, k 2 tog, k 1".
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace

from reader.pattern.cursor import Cursor
from reader.pattern.tree import Act, Deed, Group, Node, Place, Repeat, Until, Where, Work
from reader.terms.forms import stitch_named
from reader.terms.numbers import SPELLED, word_number
from reader.terms.stitches import Craft

NEEDLES = ("needle", "needles", "ndl", "ndls", "pin", "pins", "wire", "wires", "dpn", "dpns")
_NOUN = r"(?:needles?|ndls?|pins?|wires?|dpns?)"
_KIND = r"(?:(?:double|dp|d\.p\.|pointed|double-pointed|other|steel|sock) )*"
_N = rf"(?P<n>[2-5]|{SPELLED})"
LIE_ON = re.compile(
    rf"\b(?:divid\w+|distribut\w+|arrang\w+|plac\w+|slip\w*|sts?|stitches|them|evenly|on|loops)"
    rf"(?: \w+){{0,3}}? (?:onto|on|over|among|amongst|between|into|to) {_N} {_KIND}{_NOUN}\b",
    re.IGNORECASE,
)
ON_EACH_OF = re.compile(
    rf"\b(?:up)?on(?: ?to)? each of (?:the |your |these )?{_N} {_KIND}{_NOUN}\b", re.IGNORECASE
)
SHARED = re.compile(
    rf"\b(?:cast on|co|cast|set up) (?P<all>\d+|{SPELLED}) (?:sts|stitches|loops)\b"
    rf"[^.;\d]{{0,40}}?[ ,(](?P<one>\d+|{SPELLED}) (?:sts |stitches )?"
    r"(?:on|to|upon|on to) each\b(?! of)",
    re.IGNORECASE,
)
"""How many on each of them, told with all that are cast on: as many needles as that takes."""
SET_OF = re.compile(rf"\bset of {_N} {_KIND}{_NOUN}\b", re.IGNORECASE)
"""One of a set works, the others hold the stitches. Common practice, no source."""
AT_ENDS = re.compile(r"\b(?:each|both|either) ends?\b", re.IGNORECASE)
AT_END = re.compile(r"\b(?:beg\w*|start|ends?)\b", re.IGNORECASE)
EACH_NEEDLE = re.compile(
    rf"\b(?:each|every|all|remaining|other) (?:of (?:the |your |these )?(?:{_N} )?)?{_NOUN}\b",
    re.IGNORECASE,
)
EACH = "each"
"""Act.into, where how many needles there are is not told."""
MOST = 5
"""Needles of a set."""
ALL = ("each of the", "each", "every", "all", "remaining", "rem", "other")
FIXED = (Where.PLAIN, Where.NEXT)


def needles_told(text: str) -> int:
    """On how many needles the stitches of a round lie, 0 where the text does not say."""
    for shape, less in ((LIE_ON, 0), (ON_EACH_OF, 0), (SET_OF, 1)):
        found = shape.search(text)
        number = _value(found["n"]) - less if found else 0
        if 2 <= number <= MOST:
            return number
    shared = SHARED.search(text)
    one = _value(shared["one"]) if shared else 0
    number, over = divmod(_value(shared["all"]), one) if shared and one else (0, 0)
    return number if 2 <= number <= MOST and not over else 0


def needles_of(said: str, told: int) -> int:
    """For how many needles a change is told: 1 where the words name none, the number they name, or
    that of the whole text.
    """
    found = EACH_NEEDLE.search(said)
    if found is None:
        return 1
    return _value(found["n"]) if found["n"] else told


def _value(said: str) -> int:
    return int(said) if said.isdigit() else word_number(said) or 0


def find_each_needle(cur: Cursor) -> Act | None:
    """ "on each needle", "at end of every needle", "each needle:" -> an Act that names them all;
    None, and nothing taken, elsewhere.
    """
    start = cur.at
    if cur.book.craft is not Craft.KNITTING:
        return None
    cur.accept("and so on", "alike", "the same")
    cur.accept("on", "of", "for", "at", "in", "across", "over", "with")
    cur.accept("the")
    if cur.low() in ("end", "ends", "beg", "beginning", "start") or AT_ENDS.match(
        f"{cur.low()} {cur.low(1)}"
    ):
        cur.at += 2 if cur.low() in ("each", "both", "either") else 1
        if not cur.accept("of", "on"):
            cur.at = start
            return None
    named = cur.accept(*ALL)
    if named and cur.kind() == "num" and cur.low(1) in NEEDLES:
        cur.at += 1
    if not named or cur.low() not in NEEDLES:
        cur.at = start
        return None
    cur.at += 1
    needles = cur.book.needles
    return Act(cur.span(start), cur.said(start), Deed.NEEDLE, str(needles) if needles else EACH)


def told_of_each(made: list[Node], clause: int, node: Node, needles: int) -> bool:
    """Adds a node that tells of every needle, so that what each is told stands behind those words;
    False, and nothing added, for any other node. clause: where in the list its clause begins.
    """
    if isinstance(node, Repeat):
        told = on_needles(node, needles)
        made += told if len(told) > 1 else []
        return len(told) > 1
    if not isinstance(node, Act) or not names_all(node) or not made:
        return False
    last = len(made) - 1
    first = last if isinstance(made[last], Repeat) else min(clause, last + 1)
    made[first:] = on_each_needle(made[first:], node)
    return True


def on_each_needle(told: Sequence[Node], needle: Act) -> list[Node]:
    """What is told before the words "on each needle", with those words before it. Where they name
    an end, the rest of the needle is worked plain.
    """
    body = list(told)
    if not any(isinstance(one, Work | Repeat | Group) for one in body):
        return [*body, replace(needle, deed=Deed.NOTE)]
    if len(body) == 1 and isinstance(body[0], Repeat) and body[0].until is Until.OPEN:
        if is_fixed(body[0].body):
            return body
        body = list(body[0].body)
    rest = stitch_named("st", Craft.KNITTING)
    if rest is None or not AT_END.search(needle.words) or not is_fixed(body):
        return [needle, *body]
    plain = Work(needle.span, "", rest, None, Place(Where.REST, needle.span))
    twice = body if AT_ENDS.search(needle.words) else []
    return [needle, *body, plain, *twice]


def is_fixed(body: Sequence[Node]) -> bool:
    """Whether a list says how many stitches it is worked over."""
    works = [one for one in body if not isinstance(one, Act)]
    return bool(works) and all(
        isinstance(one, Work)
        and one.place.where in FIXED
        and (one.number is not None or (one.stitch.takes, one.stitch.makes) != (1, 1))
        for one in works
    )


def on_needles(node: Repeat, needles: int) -> list[Node]:
    """ "* k to last 2 sts, k 2 tog; rep on each needle": the body on each of them; the repeat alone
    where it says how many stitches it takes, or no needle is named.
    """
    if node.until is not Until.OPEN or not EACH_NEEDLE.search(node.words) or is_fixed(node.body):
        return [node]
    into = str(needles) if needles else EACH
    return [Act(node.span, node.words, Deed.NEEDLE, into), *node.body]


def names_all(one: Node) -> bool:
    """Whether an Act names every needle of the round."""
    return isinstance(one, Act) and EACH_NEEDLE.search(one.words) is not None


def over_fixed(body: Sequence[Node], needle: Act) -> Repeat:
    """A list that says how many stitches it takes, as often as there is room for it."""
    return Repeat(needle.span, needle.words, tuple(body), Until.OPEN)
