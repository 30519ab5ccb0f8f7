"""A written row as it is worked, and called back again: its instructions, totals, and what it
gained.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace

from reader.counts.counted import Problem, Verdict
from reader.counts.fabric import Below
from reader.pattern.figures import tightened
from reader.pattern.holders import ASIDE
from reader.pattern.labels import Mark
from reader.pattern.layout import WrittenRow
from reader.pattern.place_words import SPACE_NOUNS
from reader.pattern.read_once import Copied
from reader.pattern.totals import Printed
from reader.pattern.tree import (
    Act,
    Chain,
    Edge,
    Node,
    Num,
    Place,
    Repeat,
    Shape,
    Skip,
    Unread,
    Until,
    Where,
    Work,
)  # fmt: skip
from reader.terms.crafts import Terms
from reader.terms.forms import forms, stitch_named
from reader.terms.stitches import Craft, Kind
from reader.text.span import Span


@dataclass(frozen=True, slots=True)
class Entry:
    """A worked row to be called back: its number, instructions and printed totals, and where it is
    written.

    gain: stitches gained where it fitted. quoted: it is worked again over another row than its own.
    told: its gain was taken from a printed total, since the words alone do not give it. fewer: each
    time it is worked, its inner repeats are once less. base: what it was worked over.
    sections: how often its last repeat was worked. unit: the groups that its total counts.
    passed: stitches that it goes over on the way to a space. copied: of which row of the same words
    its instructions are.
    """

    number: int | None
    nodes: tuple[Node, ...]
    row: WrittenRow
    printed: tuple[Printed, ...]
    gain: int | None = None
    quoted: bool = False
    told: bool = False
    fewer: bool = False
    base: Below | None = None
    sections: int = 0
    unit: str = ""
    passed: int = 0
    copied: Copied | None = None


class Entries(list[Entry]):
    """The rows of a part in order; named: where the latest row of each name stands among them."""

    def __init__(self) -> None:
        super().__init__()
        self.named: dict[str, int] = {}

    def append(self, entry: Entry) -> None:
        """Keeps one row more."""
        if entry.row.mark is not None and entry.row.mark.name:
            self.named[entry.row.mark.name.lower()] = len(self)
        super().append(entry)


def follows(entry: Entry, passed: int) -> bool:
    """Whether the numbers of a row worked again are meant to follow what lies below: it goes over
    stitches now that it used where it is written.
    """
    return entry.quoted and entry.gain is not None and passed > 0 and not entry.passed


def by_rule(
    row: WrittenRow,
    words: str,
    span: Span,
    number: int | None,
    before: int | None,
    count: int | None,
    craft: Craft,
) -> Entry:
    """A row that only its rule is known of, to be called back: plain, or with its gain."""
    plain = stitch_named("st", craft)
    gain = count - before if count is not None and before is not None else 0
    nodes: tuple[Node, ...] = ()
    if gain:
        nodes = (Shape(span, words, 1 if gain > 0 else -1, Num((abs(gain),))),)
    elif plain is not None:
        nodes = (Work(span, words, plain, None, Place(Where.REST, span)),)
    return Entry(number, nodes, row, (), gain)


def requoted(problem: Problem, below: int | None, gain: int | None) -> Problem:
    """A quoted row whose fixed numbers do not fit here: a question, since its numbers may be meant
    to follow.
    """
    counted = below + gain if below is not None and gain is not None else problem.counted
    said = problem.message.replace(
        "the stitches do not fit the row below", "the row it quotes does not fit here"
    )
    return replace(problem, verdict=Verdict.UNCLEAR, message=said, counted=counted)


def in_running_text(problem: Problem) -> Problem:
    """A misfit of words without a label and without a total: a question, since they may tell of a
    row instead of working one.
    """
    if problem.verdict is not Verdict.DOES_NOT_FIT:
        return problem
    said = problem.message.replace(
        "the stitches do not fit the row below", "if this is a row, it does not fit the one below"
    )
    return replace(problem, verdict=Verdict.UNCLEAR, message=said)


def called(
    entries: list[Entry], earlier: dict[str, list[Entry]], number: int, words: str = ""
) -> Entry | None:
    """The latest row of that number in this part's entries, or in an earlier part's (the one that
    the words name); None where there is none.
    """
    named = [part for part in earlier if part and part.lower() in words.lower()]
    books = [entries, *list(earlier.values())[::-1]]
    if named:
        books.insert(0, earlier[named[-1]])
    for book in books:
        for one in reversed(book):
            if one.number == number:
                return one
    return None


def once_fewer(nodes: tuple[Node, ...]) -> tuple[Node, ...]:
    """The row with each counted repeat inside another worked once less: a pineapple's next row.
    Where a pineapple is worked by itself, that repeat stands in no other.
    """
    inside = [inner for one in nodes if isinstance(one, Repeat) for inner in one.body]
    if not any(isinstance(one, Repeat) and one.until is not Until.OPEN for one in inside):
        return _fewer_inside(nodes)
    return tuple(
        replace(one, body=_fewer_inside(one.body)) if isinstance(one, Repeat) else one
        for one in nodes
    )


def _fewer_inside(body: tuple[Node, ...]) -> tuple[Node, ...]:
    out: list[Node] = []
    for one in body:
        more = isinstance(one, Repeat) and one.until in (Until.AGAIN, Until.MORE) and of_loops(one)
        if not isinstance(one, Repeat) or not (one.until is Until.TIMES or more):
            out.append(one)
            continue
        number = Num(tuple(max(0, n - 1) for n in one.number.values))
        if number.values[0]:
            out.append(replace(one, number=number))
        elif more:
            # "Repeat from * once" is twice in all.
            out += one.body
    return tuple(out)


def of_loops(node: Repeat) -> bool:
    """Whether a repeat makes one loop over the next."""
    works = [one for one in node.body if isinstance(one, Chain | Work)]
    last = works[-1] if works else None
    kinds = [type(one) for one in works] == [Chain, Work] and len(node.body) == 2
    return kinds and isinstance(last, Work) and last.place.noun in SPACE_NOUNS


def inner_times(nodes: tuple[Node, ...]) -> int:
    """How often the first counted repeat inside another is worked; 0 where there is none."""
    for one in nodes:
        if isinstance(one, Repeat):
            for inner in one.body:
                if isinstance(inner, Repeat) and inner.until is Until.TIMES:
                    return inner.number.values[0]
    return 0


def over_rows(entry: Entry) -> list[Entry]:
    """ "Bind off 5 sts at beg of next 2 rows": one row for each; the printed total is that of the
    last.
    """
    works = [one for one in entry.nodes if not isinstance(one, Act)]
    edges = [one for one in works if isinstance(one, Edge)]
    behind = works[len(edges) :]
    apart = len(edges) > 1 and all(SO_OFTEN.search(one.words) for one in edges)
    single = all(one.rows == 1 for one in edges) and not apart
    if single or works[: len(edges)] != edges:
        return [entry]
    left = _left_waiting(behind)
    if behind and left is None:
        return [entry]
    out: list[Entry] = []
    for edge in edges:
        one = replace(entry, nodes=(replace(edge, rows=1),), printed=())
        out += [one] * min(edge.rows, 100)
    printed = entry.printed or ((left,) if left else ())
    return [*out[:-1], replace(out[-1], printed=printed)] if out else [entry]


SO_OFTEN = re.compile(r"\b(?:once|twice|times)\b", re.IGNORECASE)
REST = re.compile(r"\b(?:rem|remaining|rest|last|left)\b", re.IGNORECASE)


def _left_waiting(nodes: Sequence[Node]) -> Printed | None:
    """ "Leave rem 17 sts on a holder" behind what is bound off: how many there are, as a total."""
    only = nodes[0] if len(nodes) == 1 else None
    if not isinstance(only, Skip) or only.place.text != ASIDE or not REST.search(only.words):
        return None
    return Printed(only.span.start, only.span.end, only.place.number.values, "sts")


_STITCHES = "|".join(
    re.escape(form) for form in sorted(forms(Craft.KNITTING, Terms.US), key=len, reverse=True)
)
ORDERS = re.compile(
    r"\W*(?:(?:then|now|and|also|again|but|next|finally|after this|at the end)\b[ ,]*)*"
    r"(?:(?:with|using|in|on|at|from|for|to|join(?:ing)?|change|changing|keeping|having"
    r"|when(?! you)|as|before|by|beginning|starting|beg"
    r"|turn(?:ing)?|leaving|holding|rejoin|break|cut|fasten|slip|place"
    r"|put|divide|return|attach)\b[^.;]*?(?:[,:—-]|\band|\bthen"
    r"|\b(?:edges?|ends?|sides?|rows?|needles?|markers?)(?=\s(?:bind|cast|dec|inc|pick|k|p|work)))\s*)?"
    r"(?:k|knit|p|purl|pearl|pl|kn|work|cast|bind|co|bo|dec|inc|decrease|increase|narrow|widen|rep"
    r"|repeat|continue|cont|sl|slip|s|pick|take|make|m\d?|rib|patt|pattern|shape|do|finish|complete"
    r"|set|graft|ssk|skp|yo|yfwd|over|o|throw|bring|pass|draw|put|keep|proceed|turn|place|divide"
    r"|k\d\w*|p\d\w*|m\d\w*|sl\d|co\d+|bo\d+|rows?|rounds?|next|seam|moss|garter|st|stocking"
    r"|stockinette|raise|lift|leave|start|begin|wind|join|rejoin|using|with|\d+|[(\[*{]"
    r"|\d+(?:st|nd|rd|th)|instep|heel|back|front|side|first|second|third|fourth|needles?|all"
    rf"|one|two|three|four|five|six|seven|eight|nine|ten|twelve|{_STITCHES})(?![A-Za-z])",
    re.IGNORECASE,
)
"""How a sentence begins that tells the hands what to do."""


def orders(words: str) -> bool:
    """Whether a sentence is an instruction, not only something that is said."""
    return ORDERS.match(words) is not None and not MEANS.match(words)


HAS_STITCHES = re.compile(
    r"\b[kp]\s?\d|\b(?:knit|purl|pearl)\s+(?:\d|one|two|three|four|five|six)\b", re.IGNORECASE
)
MEANS = re.compile(r"\W*[\"'][^\"']{1,30}[\"']\s+(?:is|means|stands|signifies|denotes|=)")
SENTENCE = re.compile(r"(?<=[.])\s+(?=[A-Z(])")


AS_NEEDLE = re.compile(
    r"\W*(?:n|ndl|needle)s? ?\d[^.]{0,12}?\b(?:as|like|same)\b", re.IGNORECASE
)
"""What a needle has that another has too: "N3: as N1"."""


def without_sayings(words: str) -> str:
    """The words of a row with the sentences behind its first turned to spaces where they tell the
    hands nothing.
    """
    pieces: list[str] = []
    at = 0
    for cut in [*(found.end() for found in SENTENCE.finditer(words)), len(words)]:
        piece = words[at:cut]
        told = at == 0 or orders(piece) or piece.lstrip()[:1] in "([" or HAS_STITCHES.search(piece)
        told = told or AS_NEEDLE.match(piece)
        pieces.append(piece if told else " " * len(piece))
        at = cut
    return "".join(pieces)


def nothing_worked(nodes: tuple[Node, ...], unlabelled: bool) -> bool:
    """Whether a line leaves the row below as it is: no stitches, or, without a label, only slip
    stitches.
    """
    works = [one for one in nodes if not isinstance(one, Act | Unread)]
    if not any(map(_works, works)):
        return True
    if unlabelled and len(works) == 1 and _only_named(works[0]):
        return True
    return unlabelled and all(
        isinstance(one, Work) and one.stitch.kind is Kind.SLIP for one in works
    )


def _works(one: Node) -> bool:
    """Whether an instruction, or any inside it, works stitches."""
    if isinstance(one, Repeat):
        return any(_works(inner) for inner in one.body)
    return not isinstance(one, Act | Unread)


def _only_named(one: Node) -> bool:
    """ "To increase for the calf": a change that is only named, with no number or place."""
    named = isinstance(one, Work) and one.stitch.name in ("inc", "dec")
    return named and isinstance(one, Work) and one.number is None and one.place.where is Where.PLAIN


def numbers_of(mark: Mark | None) -> tuple[int | None, ...]:
    """One number (or None) for each row that a label stands for."""
    if mark is not None and mark.numbers:
        return mark.numbers
    return (None,) * max(1, min(mark.times if mark else 1, 200))


FOR_SO_MANY = re.compile(
    r"[a-z)\]*] for (?:the |a total of )?(?:next )?(?P<n>\d+) (?:rows?|rnds?|rounds?)(?: in all)?"
    r"\s*[.;)]*\s*(?:,?\s*(?:[(\[]|-+>?|—|=+>?)\s*\d+(?: ?(?:sts?|stitches|sc|hdc|dc|htr|tr))?"
    r"(?:,? (?:in |on |at )?(?:the end of )?each(?: rnd| round| row)?)?[)\]]?[.;)]*\s*)?$",
    re.IGNORECASE,
)
"""How many rows the instructions before it are worked in: "*K2, p2* around for 10 rnds."."""


def so_many(mark: Mark | None, words: str, size: int, sizes: int) -> tuple[int | None, ...]:
    """The numbers of a row's label, going on where one label stands for as many rows as its words
    end with.
    """
    numbers = numbers_of(mark)
    told = FOR_SO_MANY.search(tightened(words, size, sizes)) if " for " in words else None
    if told is None or len(numbers) != 1:
        return numbers
    many = max(1, min(int(told["n"][:3]), 200))
    first = numbers[0]
    return tuple(None if first is None else first + at for at in range(many))


def off_the_chain(entry: Entry, below: Below) -> Entry:
    """A first row called back over stitches: worked into each of them, where it was worked into
    each chain; any other entry as it is.
    """
    base = entry.base
    if not entry.quoted or base is None or not base.chained or below.chained:
        return entry
    works = [one for one in entry.nodes if isinstance(one, Work)]
    first = works[0] if works else None
    rest = works[1] if len(works) > 1 else None
    if first is None or rest is None or first.place.where is not Where.CHAIN:
        return entry
    if first.place.nth < 2 or rest.place.where not in (Where.EACH, Where.REST):
        return entry
    each = replace(rest, place=replace(rest.place, noun="st"))
    kept = [one for one in entry.nodes if one is not first]
    return replace(entry, nodes=tuple(each if one is rest else one for one in kept))
