"""Repeat commands and times: "rep from * to last 3 sts", "5 more times", "x 6", "twice" -> how
often.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.going_on import from_star, goes_on, so_on, to_its_end
from reader.pattern.over_stitches import told_in_stitches
from reader.pattern.phrasing import take_phrase
from reader.pattern.place_words import CHAIN_NOUNS, OF_ROWS, STITCH_NOUNS
from reader.pattern.places import find_place
from reader.pattern.tree import ONE, Act, Chain, Group, Node, Num, Place, Repeat, Until, Where, Work
from reader.pattern.up_to import to_last_of
from reader.terms.stitches import Craft

ENDING = (
    *(f"{before}{verb}{behind}" for verb in ("ending", "end") for behind in ("", " with")
      for before in ("", "and ", "but ", "only ", "except ")),
    *(f"{before}{verb}{behind}" for verb in ("finishing", "finish")
      for behind in ("", " with", " off with") for before in ("", "and ", "but ")),
    "ends with", "concluding with", "terminating with", "and close with", "closing with",
)  # fmt: skip
ROWS_MEANT = frozenset(
    ["row", "rows", "rnd", "rnds", "round", "rounds", "last", "these", "this", "the", "pattern"]
)
"""After "repeat", these speak of whole rows, not of stitches."""


SO = "so"
"""What "and so on" goes back to: the star that is open still, else the first one of the row."""
MANNERS = (
    "in same manner", "in the same manner", "in this manner", "in like manner", "in the same way",
    "in same way", "in this way",
)  # fmt: skip
LAST_ROUND = tuple(
    f"{which}{row} with"
    for which in ("", "the ", "this ", "each ", "last ", "the last ")
    for row in ("row", "round", "rnd")
)
"""Behind "ending": it is the row that ends so."""


@dataclass(frozen=True, slots=True)
class Found:
    """A repeat command: what it goes back to, how often, and whether an ending follows. goal: until
    there are so many of noun; altered: beside what was made before it. no_star: its own is missing.
    """

    target: str
    until: Until
    number: Num = ONE
    ending: bool = False
    altered: bool = False
    noun: str = "st"
    goal: int = 0
    no_star: bool = False


def _target(cur: Cursor) -> str:
    cur.accept("the")
    for word in ("1st", "first", "last", "2nd"):
        if cur.low() == word and cur.kind(1) == "stars":
            stars = cur.low(1)
            cur.at += 2
            return ("1st " if word in ("1st", "first") else "") + stars
    if cur.kind() == "stars":
        stars = cur.low()
        cur.at += 1
        if cur.low() == "'" and cur.low(1) == "s":
            cur.at += 2
        cur.accept("s")
        if cur.low() in ("to", "through", "and") and cur.kind(1) == "stars":
            cur.at += 2
        return "**" if len(stars) > 1 else "*"
    if cur.accept("star", "asterisk", "stars", "asterisks", "the stars", "the asterisks"):
        return "*"
    if cur.accept("beginning", "beg", "start", "the beginning"):
        return "beginning"
    if cur.accept("between", "everything between"):
        pass
    return ""


def passes_to(found: Found, body: Sequence[Node], before: Sequence[Node]) -> int:
    """How often a body is worked until there are so many of a stitch, those before it among them;
    of what is no stitch, each pass makes one.
    """
    goal, of = found.goal, found.noun
    if of in STITCH_NOUNS:
        of = next((one.stitch.name for one in body if isinstance(one, Work)), "")
    each, made = (_made(of, body), _made(of, before)) if of else (1, _opened(body, before))
    chain = next((one for one in reversed(before) if isinstance(one, Chain)), None)
    if of and not found.altered and chain is not None and chain.counts:
        made += 1
    return (goal - made) // each if each and goal > made and not (goal - made) % each else 0


def _opened(body: Sequence[Node], before: Sequence[Node]) -> int:
    """Whether the chain before a repeat is a stitch and the first of its spaces: "ch 5, * dc in
    ring, ch 2".
    """
    works = [one for one in before if not isinstance(one, Act)]
    if works and _in_far_chain(works[-1]):
        return 1
    first, last = works[-1] if works else None, body[-1] if body else None
    if not isinstance(first, Chain) or not isinstance(last, Chain):
        return 0
    return int(first.number.values[0] > last.number.values[0] + 1)


def _in_far_chain(one: Node) -> bool:
    """Whether a stitch leaves a space before it: "dc in 8th ch from hook", three chains for a dc
    and two over two that are missed.
    """
    if not isinstance(one, Work) or one.place.where is not Where.CHAIN:
        return False
    return one.place.nth - 1 - max(one.stitch.height, 1) > 2


def _made(of: str, nodes: Sequence[Node]) -> int:
    """How many stitches of a kind a list makes, each of its repeats with as many passes as said."""
    made = 0
    for one in nodes:
        if isinstance(one, Repeat):
            number = one.number.values[0] + (one.until in (Until.AGAIN, Until.MORE))
            made += number * _made(of, one.body)
        elif isinstance(one, Work) and one.stitch.name == of:
            made += one.number.values[0] if one.number is not None else 1
        elif isinstance(one, Group):
            made += _made(of, one.body)
    return made


def find_repeat(cur: Cursor, bare: bool = False) -> Found | None:
    """The repeat command that stands here, taken; None (nothing taken) when there is none."""
    start = cur.at
    if cur.low() in (",", ";", ".", "and") and cur.low(1) in ("rep", "repeat", "repeating"):
        cur.at += 1
    again = cur.accept(
        "and do that", "do that", "and do this", "do this", "repeat that", "repeat this"
    )
    if again and (cur.kind() in ("num", "times")):
        # In knitting "this" may be a part of what stands before.
        target = "*" if cur.book.craft is Craft.KNITTING else "beginning"
        return _how_often(cur, target, target)
    if again and to_its_end(cur):
        return _how_often(cur, "*", "")
    cur.at = start if again else cur.at
    if so_on(cur):
        cur.accept(",")
        return _how_often(cur, SO, "")
    if not (goes_on(cur) or cur.accept("rep", "repeat", "repeating", "reps", "repeated")):
        cur.at = cur.at if bare else start
        return _bare(cur, start) if bare else None
    counted, target = _so_often_from(cur), ""
    if counted is not None:
        return counted
    if from_star(cur):
        target = _target(cur)
        if cur.kind() == "stars" or (cur.low() in ("and", "to") and cur.kind(1) == "stars"):
            cur.at += 1 if cur.kind() == "stars" else 2
    elif cur.kind() == "stars":
        target = _target(cur)
        if cur.low() in ("to", "-", "through") and cur.kind(1) == "stars":
            cur.at += 2
    elif cur.low() in ROWS_MEANT or cur.kind() == "ord":
        cur.at = start
        return None
    found = _how_often(cur, target or "*", target)
    if not target and cur.accept("from"):
        # "repeat 3 times more from *"
        target = _target(cur)
        return replace(found, target=target or found.target)
    return found


def _so_often_from(cur: Cursor) -> Found | None:
    """The "10 times more from *", "twice from the beginning" behind "repeat", taken."""
    start = cur.at
    until, times = _told_times(cur) if cur.kind() in ("num", "times") else (Until.OPEN, ONE)
    target = _target(cur) if until is not Until.OPEN and cur.accept("from") else ""
    if not target:
        cur.at = start
        return None
    ending, altered = find_ending(cur)
    return Found(target, until, times, ending, altered)


REPEATS = ("rep", "repeat", "repeated")


def _bare(cur: Cursor, start: int) -> Found | None:
    if cur.low() == "repeated":
        return find_repeat(cur)
    if cur.low() in (",", ";") and cur.low(1) in REPEATS:
        cur.at += 1
        found = find_repeat(cur)
        if found is not None:
            return found
    cur.at = start
    return None


UNTIL_THERE = (
    "until there are", "till there are", "until you have", "till you have", "until there is",
    "until you have made", "until there are in all", "to make", "until you have worked",
    "until you have in all", "until you have a total of", "until there are a total of",
    "until there be", "until", "till",
)  # fmt: skip
DONE = ("made", "worked", "completed", "done", "finished", "formed", "in all", "altogether")
"""Behind "until 12 loops": they are counted."""


def _goal(cur: Cursor) -> tuple[int, str, bool]:
    """The "until there are 8 clusters in ring" that stands here, taken: how many, and the stitch,
    "" where they are no stitches, and whether so many are made by the repeat itself; 0 where no
    such words stand here.
    """
    start = cur.at
    if cur.book.craft is Craft.CROCHET and cur.accept(*UNTIL_THERE) and cur.kind() == "num":
        bare = cur.low(-1) in ("until", "till")
        number = cur.peek().value
        cur.at += 1
        number = 0 if cur.accept(*OF_ROWS) else number
        found = cur.stitch()
        begin = min(cur.at, len(cur.lows) - 1)
        while not cur.done() and cur.low() not in STOPS and cur.kind() != "stars":
            cur.at += 1
        told = any(one in DONE for one in cur.lows[begin : cur.at])
        over = cur.low(-1) in ("left", "remain", "remaining", "rem")
        if number and (told or not bare) and not over:
            plain = cur.lows[begin] if cur.lows[begin] in STITCH_NOUNS else ""
            return number, found.stitch.name if found is not None else plain, bare
    cur.at = start
    return 0, "", False


def _to_goal(cur: Cursor, target: str) -> Found | None:
    goal, of, here = _goal(cur)
    if not goal:
        return None
    return Found(target, Until.TIMES, ONE, noun=of, goal=goal, altered=here)


def _how_often(cur: Cursor, target: str, named: str) -> Found:
    to_goal = _to_goal(cur, target)
    if to_goal is not None:
        return to_goal
    until, times = _told_times(cur)
    noun = "st"
    if _told_so(cur) or (until is not Until.OPEN and cur.low() in ("until", "till", "so")):
        # "2 more times until you have 4 sets of 3 dc": what comes of it.
        take_phrase(cur)
    place = None if told_in_stitches(cur) else _how_far(cur)
    if place is not None and until is Until.OPEN and place.where is Where.TO_LAST:
        until, times, noun = Until.TO_LAST, place.number, place.noun
    if place is not None and place.where is Where.REST:
        # "across until 42 sps are completed"
        to_goal = _to_goal(cur, target)
    if to_goal is not None:
        return to_goal
    ending, altered = find_ending(cur)
    return Found(target, until, times, ending, altered, noun)


MORE_TIMES = (
    "more times", "more time", "additional times", "further times", "extra times", "times more",
    "time more", "more", "times further", "times again",
)  # fmt: skip
MORE_FIRST = ("another", "a further", "an additional", "an extra")
SO_OFTEN = ("times", "time", "more", "x", "additional", "further", "extra")


def _told_times(cur: Cursor) -> tuple[Until, Num]:
    """The "twice more", "4 times in all", "x 6" that stands here, taken; open where none does."""
    length = cur.any_words(MORE_FIRST)
    further = length > 0 and cur.kind(length) == "num" and cur.low(length + 1) in ("times", "x")
    cur.at += length if further else 0
    number = cur.number()
    if cur.kind() == "times":
        cur.at += 1
        more = cur.accept("more")
        cur.accept("altogether")
        return Until.MORE if more else Until.AGAIN, number or ONE
    counted = cur.kind() == "num" and number is not None
    if counted and cur.low(1) in SO_OFTEN:
        cur.at += 1
        more = cur.accept(*MORE_TIMES)
        if not more:
            cur.at += 1
            more = cur.accept("more") or further
        in_all = cur.accept("in all", "altogether", "in total", "total")
        return Until.TIMES if in_all else Until.MORE if more else Until.AGAIN, number or ONE
    if cur.low() in ("x", "*") and cur.kind(1) == "num":
        times = cur.number(1) or ONE
        cur.at += 2
        return Until.TIMES, times
    return Until.OPEN, ONE


def _told_so(cur: Cursor) -> bool:
    """Whether "until all corners are formed" stands here: how far, by what is done then."""
    if cur.low() not in ("until", "till") or cur.kind(1) == "num":
        return False
    for ahead in range(1, 16):
        if cur.low(ahead) in (*STOPS, ""):
            return False
        if cur.low(ahead) in DONE:
            return True
    return False


def _how_far(cur: Cursor) -> Place | None:
    """The "across ch", "to last 2 sts", "across row to last loop" that stands here, taken."""
    if cur.low() in (",", ";", ".", "ending", "end", ""):
        return None
    place = find_place(cur)
    if place is not None and cur.low() in CHAIN_NOUNS and cur.kind(1) != "num":
        cur.at += 1
    further = to_last_of(cur) if place is not None and place.where is Where.REST else None
    return further or place


def _last_goes(cur: Cursor) -> bool:
    """Whether "last d c around end ch" stands here: only where the last stitch of the last pass
    goes.
    """
    at = 1 + (cur.low() == "the")
    if cur.low(at - 1) not in ("last", "final") or cur.book.craft is not Craft.CROCHET:
        return False
    found = cur.stitch(at)
    if found is None or cur.low(at + found.length) not in ("in", "into", "around", "over", "on"):
        return False
    ahead = at + found.length + 1
    while cur.low(ahead) not in (".", ";", ""):
        if cur.low(ahead) == "," and cur.low(ahead + 1) not in ("ch", "turn", "join", "fasten"):
            return False
        if cur.low(ahead) == ",":
            break
        ahead += 1
    return True


def ends_with(cur: Cursor) -> bool:
    """Whether an "ending with" stands here, its words taken."""
    return find_ending(cur)[0]


def find_ending(cur: Cursor) -> tuple[bool, bool]:
    """Whether an "ending with" stands here, its words taken, and whether the last pass is altered.
    """
    start = cur.at
    cur.accept(*MANNERS)
    cur.accept(",", ";")
    length = cur.any_words(ENDING)
    if not length:
        cur.at = start
        return False, False
    cur.at += length
    cur.accept(*LAST_ROUND)
    altered = cur.accept(
        "last repeat with", "last rep with", "last repeat", "the last repeat with", "last rep"
    )
    if cur.accept(
        "to correspond", "in same manner", "off", "as", "round", "rnd", "row", "of row", "of round",
        "in pattern", "in patt", "in the pattern", "in like manner", "accordingly",
    ) or _last_goes(cur):  # fmt: skip
        cur.at = start + (cur.tokens[start].low in (",", ";"))
        while not cur.done() and cur.low() not in (",", ";", "."):
            cur.at += 1
        return False, False
    cur.accept("with", "row with", "by")
    return True, altered


def in_its_place(repeat: Repeat) -> Repeat | Group:
    """ "Into the loop 1 dc, 3 ch, repeat until 5 dc are made": they all go into that loop."""
    only = repeat.body[0] if len(repeat.body) == 1 else None
    if not isinstance(only, Group) or only.maybe or only.place.each:
        return repeat
    return replace(only, body=(replace(repeat, body=only.body),))


def inner_star(cur: Cursor) -> bool:
    """Whether the star that stands here opens a counted list inside another that is repeated too:
    "into the loop 2 dc, * 3 ch, 2 dc, repeat from * twice, 5 ch, and repeat from the beginning".
    """
    lows = cur.lows[cur.at + 1 :]
    again = [at for at, low in enumerate(lows) if low in ("rep", "repeat")]
    if cur.kind() != "stars" or len(again) != 2 or again[0] + 3 >= len(lows):
        return False
    first = again[0]
    back = lows[first + 1] == "from" and cur.kind(first + 3) == "stars"
    alone = sum(cur.kind(ahead) == "stars" for ahead in range(1, len(lows) + 1)) == 1
    listed = not {".", ";"} & set(lows[: again[1]])
    return back and alone and listed and cur.kind(first + 4) in ("num", "times")
