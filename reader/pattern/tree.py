"""The typed tree of a written row: instructions, places and numbers; every node knows its span."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

from reader.terms.stitches import Stitch
from reader.text.span import Span


@dataclass(frozen=True, slots=True)
class Num:
    """A number, one value for every size; a single value is for all sizes."""

    values: tuple[int, ...]

    def at(self, size: int) -> int:
        """The value for a size (0-based); the last one where the list is short."""
        return self.values[size] if size < len(self.values) else self.values[-1]


ONE = Num((1,))


class Where(Enum):
    """How an instruction finds its stitches in the row below."""

    NEXT = "next"
    EACH = "each"
    SAME = "same"
    ONE_PLACE = "one place"
    RING = "ring"
    CHAIN = "chain"
    REST = "rest"
    UNUSED = "unused"
    PLAIN = "plain"
    TO_LAST = "to last"
    LAST = "last"
    FIRST = "first"
    ELSEWHERE = "elsewhere"


@dataclass(frozen=True, slots=True)
class Place:
    """Where stitches go.

    number: how many places (NEXT) or how many are left over (TO_LAST). noun: "st", "sp", "ch" or a
    stitch name: what is worked into. each: the word "each" stands there. nth: which of them ("2nd
    ch from hook"). sides: how often the place exists ("on each side": 2). remaining: "each
    remaining", or, TO_LAST, the last ones of a group.
    """

    where: Where
    span: Span
    number: Num = ONE
    noun: str = "st"
    each: bool = False
    nth: int = 0
    sides: int = 1
    chain: int = 0
    text: str = ""
    remaining: bool = False
    among: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Work:
    """Stitches: `number` of `stitch` in each place; every: "in every 3rd st"; between: chains
    between them.

    by: the "x 6" behind it, already part of `number`, which may stand for the whole list before it.
    """

    span: Span
    words: str
    stitch: Stitch
    number: Num | None
    place: Place
    between: int = 0
    name: str = ""
    by: Num | None = None


@dataclass(frozen=True, slots=True)
class Chain:
    """Chains made. counts: True or False where the words say so, None where they don't. counts_sp:
    of the "counts as dc and ch 1" the number of chains that make the space. inside: it is a part
    of the cluster behind it, which tells nothing of the chains of other rows. back: it is worked
    back along, so that no loop is left of it.
    """

    span: Span
    words: str
    number: Num
    counts: bool | None = None
    counts_sp: int = 0
    stitch: str = ""
    inside: bool = False
    back: bool = False


@dataclass(frozen=True, slots=True)
class Skip:
    """Stitches passed over, or loops and spaces when noun says so."""

    span: Span
    words: str
    place: Place


@dataclass(frozen=True, slots=True)
class Group:
    """Several instructions in one place, `times` the place. name: what the words call it, by the
    table's name; "" where they don't.
    """

    span: Span
    words: str
    body: tuple[Node, ...]
    place: Place
    maybe: bool = False
    name: str = ""


class Until(Enum):
    """How often a repeat is worked."""

    TIMES = "times"
    MORE = "more"
    AGAIN = "again"
    OPEN = "open"
    TO_LAST = "to last"


@dataclass(frozen=True, slots=True)
class Repeat:
    """A body worked over and over.

    TIMES: exactly `number`. MORE: `number` after the first. AGAIN: "repeat from * N times", N + 1
    in all unless the count closes only with N. OPEN: until the row below is used up. TO_LAST: until
    `number` are left. ending: instructions after "ending with"; altered: they replace the end of
    the last pass for certain. lost: the star it refers to is missing, the body is the whole list
    before it. joined: "make one and narrow five times", where the times may be of the last alone.
    flat: of a row that is turned, and joined to nothing. chained: its last pass ends with a chain.
    """

    span: Span
    words: str
    body: tuple[Node, ...]
    until: Until
    number: Num = ONE
    ending: tuple[Node, ...] = ()
    has_ending: bool = False
    altered: bool = False
    lost: bool = False
    noun: str = "st"
    joined: bool = False
    flat: bool = False
    chained: bool = False


class Deed(Enum):
    """Things done that neither take nor make stitches."""

    JOIN = "join"
    TURN = "turn"
    COLOUR = "colour"
    MARKER = "marker"
    FINISH = "finish"
    NOTE = "note"
    START = "start"
    OTHER_SIDE = "other side"
    NEEDLE = "needle"
    MOVED = "to another needle"


LOST = "lost"
"""Words that made no sense, and seem to hold no instruction."""


@dataclass(frozen=True, slots=True)
class Act:
    """One such thing, with its words. into: what a join goes into; of how many needles, where
    several are named at once; LOST of words that made no sense.
    """

    span: Span
    words: str
    deed: Deed
    into: str = ""
    counts_chain: bool | None = None


@dataclass(frozen=True, slots=True)
class Start:
    """A start: ring (0 stitches), chain of N, cast on of N."""

    span: Span
    words: str
    kind: str
    number: Num


@dataclass(frozen=True, slots=True)
class Shape:
    """A change by rule inside one row: evenly, at each end, in every Nth.

    change: stitches gained (or lost) in all, each `step` times `spots`. stitch: of what the rest is
    worked. of: what is dropped of the row below, "yo": `number` of those that lie side by side, 0
    for all. markers: so often at each marker.
    """

    span: Span
    words: str
    gain: int
    number: Num
    spots: int = 1
    every: int = 0
    over: Num | None = None
    repeats: Num = ONE
    plain: Stitch | None = None
    until: Num | None = None
    of: str = ""
    markers: int = 0


@dataclass(frozen=True, slots=True)
class Edge:
    """Stitches bound off or cast on at an edge; rows: "at beg of next 2 rows". waited: all that
    waited on a holder come back, however many they are.
    """

    span: Span
    words: str
    number: Num | None
    cast_on: bool
    rows: int = 1
    waited: bool = False


@dataclass(frozen=True, slots=True)
class Mesh:
    """Squares of a filet net: open ones (spaces) or solid ones (blocks); stitch, chains: what one
    is made of. each: one over each of those below.
    """

    span: Span
    words: str
    number: Num
    solid: bool
    stitch: str = "dc"
    chains: int = 2
    each: bool = False


@dataclass(frozen=True, slots=True)
class Unread:
    """Words that may hold an instruction and could not be read."""

    span: Span
    words: str


@dataclass(frozen=True, slots=True)
class ShortTurn:
    """The work is turned in the middle of a row; the rest stays on the needle."""

    span: Span
    words: str


@dataclass(frozen=True, slots=True)
class Gain:
    """What is worked to and fro over stitches just made, and the stitches it gains or loses."""

    span: Span
    words: str
    number: int


@dataclass(frozen=True, slots=True)
class LeaveRest:
    """The rest of the row below is left unworked on purpose."""

    span: Span
    words: str


@dataclass(frozen=True, slots=True)
class Quoted:
    """A part of another row: what its star repeats, or with `rest` all that follows what this row
    has so far. number: of that row, 0 for the one before. ending: what ends it here.
    """

    span: Span
    words: str
    number: int
    rest: bool = False
    ending: tuple[Node, ...] = ()


Node = (
    Work
    | Chain
    | Skip
    | Group
    | Repeat
    | Act
    | Start
    | Shape
    | Edge
    | Gain
    | Mesh
    | Unread
    | ShortTurn
    | LeaveRest
    | Quoted
)
