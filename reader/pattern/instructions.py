"""Tokens of one row -> instructions: stitches, chains, skips, groups and repeats; what cannot be
read becomes Unread.
"""

from __future__ import annotations

from dataclasses import replace

from reader.pattern.acts import find_act
from reader.pattern.all_but import find_all_but
from reader.pattern.balanced_overs import balanced_overs
from reader.pattern.brackets import (
    OPEN_CLOSE,
    bracketed,
    closing,
    named_behind,
    names,
    repeats_bracket,
    said_made,
    take_place,
)
from reader.pattern.bundles import bundle_from, each_and_each, in_it, joined_pair, leaves_place
from reader.pattern.by_colour import all_in_colour
from reader.pattern.by_hand import find_by_hand
from reader.pattern.by_turns import find_by_turns
from reader.pattern.cables import find_cable
from reader.pattern.center_stitch import grown_in_center
from reader.pattern.chained_places import chain_in_place
from reader.pattern.clusters import clustered, counted_as_one
from reader.pattern.cursor import Book, Cursor, span_of
from reader.pattern.depth import MOST_DEEP, brackets_deep, repeats_deep
from reader.pattern.drawn_through import find_drawn_through
from reader.pattern.drawn_up import find_drawn_up
from reader.pattern.each_needle import told_of_each
from reader.pattern.filet import find_mesh
from reader.pattern.first_and_last import last_too
from reader.pattern.from_last import with_steps
from reader.pattern.holders import waits
from reader.pattern.joins import group_over
from reader.pattern.knitting_fabric import find_fabric
from reader.pattern.knitting_words import and_narrowed, as_knitted, find_knitting
from reader.pattern.leaving import find_leave
from reader.pattern.list_words import AFTER_ENDING, FILLER, SLIPS
from reader.pattern.lost import not_read, place_alone
from reader.pattern.needles import find_needle
from reader.pattern.omitting import cut_at, last_pass_cut, omitted
from reader.pattern.over_stitches import over_so_many
from reader.pattern.own_list import own_list
from reader.pattern.passing import find_skip
from reader.pattern.plain_work import find_plain_work
from reader.pattern.quoting import find_quoted
from reader.pattern.remarks import remark_in, tell_chain
from reader.pattern.repeats import find_repeat, in_its_place, inner_star, passes_to
from reader.pattern.rings import of_ring, told_in_ring
from reader.pattern.settled import settled
from reader.pattern.shorthand import find_shorthand
from reader.pattern.so_many_loops import so_many_loops
from reader.pattern.so_often import count_after, times_before, times_here
from reader.pattern.star_closing import closes_star
from reader.pattern.star_stitch import find_star_stitch
from reader.pattern.stars import all_around, goes_on_by_chain, left_open, taken_back
from reader.pattern.stitchwork import find_work
from reader.pattern.stopped_at import last_pass_stops, part_again
from reader.pattern.tokens import Token, tokens_of
from reader.pattern.tree import (
    Act,
    Deed,
    Group,
    Node,
    Num,
    Place,
    Repeat,
    Skip,
    Unread,
    Until,
    Where,
    Work,
)
from reader.terms.stitches import Craft


def read_row(text: str, start: int, end: int, book: Book) -> tuple[Node, ...]:
    """The instructions in text[start:end]; one that is not read where they lie too deep in one
    another; never fails.
    """
    tokens = tokens_of(text[start:end], start, book.sizes, book.known)
    if brackets_deep(tokens) <= MOST_DEEP:
        nodes = read_tokens(tokens, text, book)
        if repeats_deep(nodes) <= MOST_DEEP:
            return nodes
    words = " ".join(text[start:end].split())
    return (Unread(span_of(book, tokens[0].start, tokens[-1].end), words),)


def read_tokens(tokens: list[Token], text: str, book: Book) -> tuple[Node, ...]:
    """The instructions of a list of tokens."""
    cur = Cursor(tokens, text, book)
    nodes = _Reading(cur).all()
    return balanced_overs(nodes) if book.craft is Craft.KNITTING else nodes


def read_group(cur: Cursor) -> tuple[Node, ...]:
    """The instructions of one place that stand behind it: up to the clause's end, or to the first
    that has a place of its own.
    """
    reading = _Reading(cur)
    while not cur.done():
        open_star = reading.stars and not any(isinstance(one, Repeat) for one in reading.made)
        ended = cur.kind() == "stars" or (not open_star and group_over(cur, reading.made))
        if ended and not (reading.made and inner_star(cur)):
            break
        at, made = cur.at, list(reading.made)
        reading.one()
        if cur.at == at:
            reading.lose()
        last = reading.made[-1] if len(reading.made) > len(made) else None
        if made and last is not None and leaves_place(made, last) and not reading.stars:
            cur.at, reading.made, reading.lost_from = at, made, None
            break
    reading.flush()
    return tuple(in_it(one) for one in reading.made)


def read_ending(cur: Cursor) -> tuple[Node, ...]:
    """The instructions behind "ending with": to the next full stop or semicolon."""
    return _Reading(cur).until_stop()


class _Reading:
    """The list being read, its stars, and words that make no sense yet."""

    def __init__(self, cur: Cursor) -> None:
        self.cur = cur
        self.made: list[Node] = []
        self.stars: list[tuple[str, int]] = []
        self.lost_from: int | None = None
        self.clause = 0
        self.before = 0
        self.went_back: set[int] = set()
        self.marks: dict[str, int] = {}

    def all(self) -> tuple[Node, ...]:
        """Everything up to the last token."""
        cur = self.cur
        while not cur.done():
            at = cur.at
            self.one()
            if cur.at == at:
                self.lose()
        self.flush()
        if self.stars and self.made:
            at = self.stars[0][1]
            left_open(self.made, at, at in self.went_back)
        return settled(self.made, cur)

    def one(self) -> None:
        """Takes whatever stands here, if it can be read."""
        cur = self.cur
        if self.told_by_hand() or self.star():
            return
        if cur.low() in (",", ";", ".", ":", "—", "-", "!", "?", "/", "=", "'", '"', "&", "+", ">"):
            self.flush()
            if cur.low() not in (",", "-", "/", "&", "+"):
                self.before, self.clause = self.listed(), len(self.made)
            cur.at += 1
            return
        start = cur.at
        if self.times_alone() or (not self.stars and all_around(cur, self.made, self.listed())):
            return
        node = (
            last_too(cur, self.made) or find_quoted(cur, read_ending) or self.repeat()
            or find_star_stitch(cur, self.made) or find_drawn_up(cur)
            or self.bracket()
            or find_by_turns(cur, self.made, self.inner)
            or find_shorthand(cur) or so_many_loops(cur, self.made)
            or find_needle(cur) or find_cable(cur, self.made)
            or find_knitting(cur) or find_fabric(cur)
            or find_all_but(cur, self.made) or find_leave(cur, self.made)
            or said_made(cur, self.made)
            or find_drawn_through(cur, self.made)
            or all_in_colour(cur, self.made) or find_act(cur)
            or find_skip(cur)
            or chain_in_place(cur, self.made)
            or find_mesh(cur)
            or find_plain_work(cur)
            or find_work(cur, self.made)
        )
        if node is not None and not (self.lost_from is not None and place_alone(cur, node)):
            self.flush(start)
            both = joined_pair(self.made[-1], node) if self.made else None
            if both is not None and start and cur.tokens[start - 1].low == "and":
                self.made.pop()
                node = both
            self.put(node, start > 0 and cur.tokens[start - 1].low == "and")
        elif cur.low() in FILLER:
            cur.at += 1

    def listed(self) -> int:
        """Where the clause begins that is read, or the one just ended while it has nothing yet."""
        return self.before if self.clause == len(self.made) else self.clause

    def inner(self, tokens: list[Token]) -> tuple[Node, ...]:
        """The instructions of a stretch of this list."""
        return read_tokens(tokens, self.cur.text, self.cur.book)

    def told_by_hand(self) -> bool:
        """ "* thread over, insert in ring, pull through ...": a stitch by what the hands do."""
        start = self.cur.at
        nodes = find_by_hand(self.cur, self.made)
        if nodes:
            self.flush(start)
        for node in nodes:
            self.put(node)
        return bool(nodes)

    def put(self, node: Node, joined: bool = False) -> None:
        """Adds a node; a counted remark is joined to the chain before it. joined: "and" stands
        before it.
        """
        if isinstance(node, Act) and clustered(self.made, node):
            return
        if isinstance(node, Act) and node.deed is Deed.NOTE and node.counts_chain is not None:
            if not counted_as_one(self.made, node):
                tell_chain(self.made, node)
            return
        if waits(self.made, node):
            return
        if told_of_each(self.made, self.clause, node, self.cur.book.needles):
            return
        node = and_narrowed(self.made, node) if joined else node
        node = grown_in_center(self.made, as_knitted(self.made, node))
        merged = each_and_each(self.made[-1] if self.made else None, node)
        if merged is not None:
            self.made[-1] = merged
            return
        clause = max(self.clause, *(at for _, at in self.stars), 0)
        first = bundle_from(self.made, node, clause, joined)
        if first is not None and isinstance(node, Work):
            inner = Place(Where.PLAIN, node.place.span)
            body = (*self.made[first:], replace(node, place=inner))
            del self.made[first:]
            words = " ".join(one.words for one in (*body[:-1], node))
            node = Group(body[0].span, words, body, node.place, maybe=True)
        self.made += with_steps(node)

    def lose(self) -> None:
        """A token that could not be read: kept until the phrase ends."""
        if self.lost_from is None:
            self.lost_from = self.cur.at
        self.cur.at += 1

    def flush(self, upto: int | None = None) -> None:
        """Words that could not be read become Unread when they may hold an instruction, a note
        otherwise.
        """
        cur = self.cur
        if self.lost_from is None:
            return
        first, last = self.lost_from, cur.at if upto is None else upto
        self.lost_from = None
        told = not_read(cur, first, last) if first < last else None
        if told is not None and (isinstance(told, Unread) or not clustered(self.made, told)):
            self.made.append(told)

    def star(self) -> bool:
        """Whether a star stands here: one opens a repeat, a second one before "rep" closes it."""
        cur = self.cur
        if cur.kind() != "stars":
            return False
        self.flush()
        label = cur.low()
        if closes_star(cur, self.made, self.stars, read_ending):
            return True
        cur.at += 1
        times = (
            count_after(cur)
            if label == "*"
            and self.made
            and cur.kind() == "num"
            and not cur.stitch(1)
            and cur.low(1) not in ("ch", "in")
            else None
        )
        if times is not None:
            self.bunch(times)
        else:
            self.stars.append((label, len(self.made)))
        return True

    def times_alone(self) -> bool:
        """ ", six times" after a list without a star or bracket: the list that many times."""
        cur = self.cur
        if not times_here(cur) or not self.made or self.stars or times_before(cur):
            return False
        ringed = told_in_ring(cur)
        begins = of_ring(self.made) if ringed else own_list(cur, self.made, self.clause)
        listed = self.made[begins:]
        if not all(isinstance(one, Work | Skip | Act | Group) for one in listed) and not ringed:
            return False
        self.flush()
        times = count_after(cur)
        if times is not None:
            self.bunch(times, begins)
        return times is not None

    def bunch(self, times: Num, first: int = 0) -> None:
        """ "1 sc, inc *6": the list so far, from its first node on, that many times."""
        body = tuple(self.made[first:])
        self.made[first:] = [Repeat(body[0].span, "", body, Until.TIMES, times)]

    def repeat(self) -> Node | None:
        """ "rep from * around", "repeat from ** 3 times", "rep to end"."""
        cur = self.cur
        cur.at += repeats_bracket(cur)
        start = cur.at
        part = part_again(cur, self.made, self.stars, self.marks)
        found = find_repeat(cur) if part is None else None
        if found is None:
            return part
        said = cur.said(start)
        index, body, self.made, found = taken_back(
            self.made, self.stars, found, said, self.went_back
        )
        self.went_back.add(index)
        stops = last_pass_stops(cur, found.ending, found.altered, self.stars, index)
        self.marks = {label: at - index for label, at in self.stars if at > index}
        self.stars = [(label, at) for label, at in self.stars if at <= index]
        ending = read_ending(cur) if found.ending and not stops else ()
        if not body:
            return Act(cur.span(start), cur.said(start), Deed.NOTE)
        spread = over_so_many(cur, start, body) if found.until is Until.OPEN else None
        if spread is not None:
            return spread
        if found.goal:
            number = Num((passes_to(found, body, self.made),))
            until = found.until if number.values[0] else Until.OPEN
            return in_its_place(Repeat(cur.span(start), cur.said(start), body, until, number))
        lost = found.no_star or (found.target == "*" and index == 0 and not self.stars)
        made = Repeat(
            cur.span(start), cur.said(start), body, found.until, found.number, ending,
            found.ending and not stops, found.altered and not stops,
            lost, found.noun,
        )  # fmt: skip
        cut = cut_at(made, stops) or last_pass_cut(made, omitted(cur))
        if cut is not None:
            self.made += cut[0]
        return made if cut is None else cut[1]

    def until_stop(self) -> tuple[Node, ...]:
        """The instructions of an "ending with" clause: to the next full stop or semicolon."""
        cur = self.cur
        while not cur.done() and cur.low() not in (".", ";"):
            knits = cur.book.craft is Craft.KNITTING
            slips = cur.low(cur.low() == "a") in SLIPS and self.made and not knits
            if cur.low() in ("join", "turn") or slips:
                break
            others = AFTER_ENDING - {"sl"} if knits else AFTER_ENDING
            ends = cur.low(1) in others and not goes_on_by_chain(cur)
            if cur.low() == "," and (ends or cur.kind(1) == "stars"):
                break
            at = cur.at
            self.one()
            if cur.at == at:
                self.lose()
        self.flush()
        return tuple(self.made)

    def bracket(self) -> Node | None:
        """A bracket, by what follows it; "6 x (sc, inc)" too."""
        cur = self.cur
        start = cur.at
        before: Num | None = None
        length = times_before(cur)
        if length:
            before = cur.number()
            cur.at += length
        if cur.low() not in OPEN_CLOSE:
            return None
        close = closing(cur)
        if close < 0:
            cur.at = start if before is None else cur.at
            cur.at += 1
            return None
        inner = cur.tokens[cur.at + 1 : close]
        cur.at = close + 1
        placed = take_place(cur, self.made, inner) if before is None else None
        if placed is not None:
            self.put(placed)
            return Act(cur.span(start), cur.said(start), Deed.NOTE)
        if before is None and named_behind(cur, self.made, inner, start):
            return Act(cur.span(start), cur.said(start), Deed.NOTE)
        if before is None and names(cur, self.made, inner):
            return Act(cur.span(start), cur.said(start), Deed.NOTE)
        remark = remark_in(inner, cur, start)
        if remark is not None:
            return remark
        body = read_tokens(inner, cur.text, cur.book)
        if cur.low() == "alternately" and cur.low(1) in ("across", "to", "around", "over"):
            cur.at += 1
        return bracketed(cur, self.made, start, body, before)
