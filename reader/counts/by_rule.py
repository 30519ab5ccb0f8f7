"""Written rows with the rules they contain ("rep rows 2 and 3", "work even", "until there are 39")
-> rows in a ledger.
"""

from __future__ import annotations

import re
from dataclasses import replace

from reader.counts.across import again, goes_back, note_star
from reader.counts.as_labelled import first_of_many, other_than_label
from reader.counts.before_rule import first_of
from reader.counts.both_halves import both_halves
from reader.counts.by_measure import by_measure
from reader.counts.called_back import pineapple, turns
from reader.counts.casting import cast_on_in
from reader.counts.changed_at_rows import changed_at_rows
from reader.counts.colour_rows import told_by_colours
from reader.counts.copies_joined import joined_to_first, only_joins
from reader.counts.corners import in_corners
from reader.counts.divisions import division_again
from reader.counts.entries import numbers_of, once_fewer
from reader.counts.even_amid import rows_apart
from reader.counts.evenly import evenly, total_within, up_to_label
from reader.counts.evens import Evens, before_calls
from reader.counts.first_rows_again import first_rows_again
from reader.counts.groups_grow import groups_grow
from reader.counts.growing import HAVING_MORE, by_their_gains, grow
from reader.counts.grown_as_told import grown_as_told
from reader.counts.gusset import told_behind, whole_of_part
from reader.counts.halved import halve
from reader.counts.heel_apart import heel_of, heel_uses, turns_amid
from reader.counts.heel_turn import heel_to_its_end
from reader.counts.in_turn import in_turn, total_alone
from reader.counts.last_row import changed_in_last, only_in_last
from reader.counts.ledger import Ledger
from reader.counts.listed import ask_of_list
from reader.counts.mirror import mirror
from reader.counts.named_rows import called_by_name
from reader.counts.narrowed import (
    all_again,
    all_but_instep,
    begins_with_them,
    narrow,
    only_on,
    settled_on,
    side_of_neck,
    told_last,
    turn_for_heel,
    worked_apart,
)
from reader.counts.nearing import nearer, whole_goal
from reader.counts.other_chains import with_other_chains
from reader.counts.other_ends import as_told, chain_at_end
from reader.counts.paced_rows import at_its_pace, paced_row
from reader.counts.pieces import note_spot, note_stars, stars_behind
from reader.counts.questions import ask_of_same_time
from reader.counts.remaining import hold_against
from reader.counts.rest_only import knitted_last, only_says_which, rest_of_moved, told_first
from reader.counts.rows_called import called_back, rows_of, rows_worked
from reader.counts.running_rows import on_the_other_side, running_rows
from reader.counts.same_as_piece import same_as_piece
from reader.counts.sentences import SAME_TIME, THIS_AGAIN, sentences_of, without_heading
from reader.counts.turned_behind import turned_behind
from reader.counts.wider_square import wider_square
from reader.counts.worked_again import over_and_over
from reader.pattern.changes import THEN_EVERY
from reader.pattern.every_other import SAID_OF_IT
from reader.pattern.layout import WrittenRow
from reader.pattern.line_words import ACTION, STITCHY
from reader.pattern.read_once import rule_of
from reader.pattern.rule import Rule
from reader.pattern.rules import find_rule, plain_rows_only
from reader.pattern.totals import PLAIN_KINDS, STITCHES
from reader.terms.stitches import Craft

MEASURES = re.compile(r"\buntil\b[^.;]*\b(?:measures?|long|inch(?:es)?|cm|in\.)\b", re.IGNORECASE)
"""A repeat that ends at a length."""


_EACH_ROW = r"(?:in |on |at )?(?:each|every) (?:row|rnd|round|time)\b"
AS_THEY_DO = re.compile(
    rf",? (?:(?:in|de)creasing (?:by )?\w+ (?:sts?|stitches|sc|dc|hdc|tr) {_EACH_ROW}"
    rf"|(?:\w+ )?\w+ (?:extra|more|fewer|less) (?:sts?|stitches|sc|dc|hdc|tr) {_EACH_ROW}"
    rf"|{_EACH_ROW} (?:grows|increases|decreases|shrinks|gains|loses|adds) (?:by )?\w+"
    r"(?: (?:sts?|stitches|sc|dc|hdc|tr))?)\.?(?:\s*[(\[][^()\[\]]*[)\]])?",
    re.IGNORECASE,
)
"""What the rows called back do anyway: "rep row 3, increasing 2 sts each row (16 dc)"."""
FURTHER = re.compile(
    r"\W*(?:and|then)\s+(?:the\s+)?(?:\d+(?:st|nd|rd|th)|\w+)\s+(?:row|round|rnd)\b"
    r"|\W*(?:and|then)\s+(?:(?:rep(?:eat)?|work)\s+)?(?:R|(?:row|round|rnd)s?\s+)\d", re.IGNORECASE
)
"""A repeat that goes on with one row more: "11 times more, then the 1st row once"."""


CHANGED_TOO = "as the row that is named, changed as the words say"

TOLD_OTHERWISE = (
    told_by_colours, with_other_chains, wider_square, in_corners, grown_as_told, joined_to_first,
)  # fmt: skip
"""Manners of crochet in which rows are told by others."""


def add(ledger: Ledger, row: WrittenRow, upto: int | None, evens: Evens) -> None:
    """Works a written row: its own words, then the rule it ends with, then what follows the rule.

    upto: the number of the next label, where rows run up to it.
    """
    evens.work = lambda one: _add_sentences(ledger, one, None, evens)
    evens.fill(ledger, row.mark)
    if row.mark and row.mark.every_other and not row.mark.numbers:
        evens.keep(row.mark, ledger.read(row))
        return
    row, calls = before_calls(ledger.text, row)
    for one in rows_apart(ledger.text, row := evens.wait(ledger, row)):
        _add_sentences(ledger, one, upto, evens)
    if row.mark and ledger.entries and ledger.rows and _for_others(ledger, row):
        entry = next(
            (one for one in reversed(ledger.entries) if one.number == row.mark.numbers[-1]),
            ledger.entries[-1],
        )
        evens.keep(row.mark, entry)
    if calls is not None:
        add(ledger, calls, upto, evens)


def _add_sentences(ledger: Ledger, row: WrittenRow, upto: int | None, evens: Evens) -> None:
    knits = ledger.pattern.craft is Craft.KNITTING
    note_spot(ledger, row)
    for one in (sentences_of if knits else running_rows)(ledger.text, row):
        words = ledger.in_figures(one.start, one.end) if knits else ""
        if knits and "*" in ledger.text[max(0, one.start - 12) : one.end]:
            note_stars(ledger, one)
        if only_joins(ledger, one, words):
            continue
        only = only_on(words) or heel_uses(ledger, words) if words and one.mark is None else None
        if only is not None and settled_on(ledger, only):
            ledger.even(only, None, one.start, one.end, "")
            continue
        rest = (told_first(words) or side_of_neck(ledger, words)) if words else None
        rest = rest or rest_of_moved(ledger, words) or knitted_last(ledger, words)
        first = rest is not None or (begins_with_them(words) and not turns_amid(words))
        if first:
            narrow(ledger, rest or worked_apart(ledger, words), before=True)
        if rest is not None and only_says_which(words):
            ledger.even(rest, None, one.start, one.end, "")
            continue
        _add_one(ledger, one, upto, evens)
        if knits:
            stars_behind(ledger, one)
        all_again(ledger, words)
        if words and not first:
            turn_for_heel(ledger, words)
            narrow(
                ledger, all_but_instep(ledger, words) or worked_apart(ledger, words),
                told_last(words),
            )  # fmt: skip
            narrow(ledger, heel_of(ledger, words), before=True)


def _for_others(ledger: Ledger, row: WrittenRow) -> bool:
    """Whether a row stands for every other one: its label says so, or its own words."""
    if row.mark is None or not row.mark.numbers:
        return False
    words = " ".join(ledger.text[row.start : row.end].split())
    return bool(row.mark.every_other) or SAID_OF_IT.search(words) is not None


def _add_one(ledger: Ledger, row: WrittenRow, upto: int | None, evens: Evens) -> None:
    knits = ledger.pattern.craft is Craft.KNITTING
    back = goes_back(ledger, row) if knits else None
    if back is not None:
        if ledger.text[row.start : back.start].strip():
            _add_one(ledger, replace(row, end=back.start), upto, evens)
        again(ledger, back)
        return

    def work(one: WrittenRow) -> None:
        _add_one(ledger, one, upto, evens)

    paired = knits and (paced_row(ledger, row, work) or both_halves(ledger, row, work))
    if paired or (knits and (only_in_last(ledger, row) or changed_at_rows(ledger, row))):
        return
    told = () if knits else TOLD_OTHERWISE
    if not knits and (groups_grow(ledger, row, work) or first_rows_again(ledger, row, work)):
        return
    if any(one(ledger, row) for one in told):
        return
    if same_as_piece(ledger, row, work):
        return
    done = row.end if division_again(ledger, row) else called_by_name(ledger, row)
    if done:
        rest = ledger.text[done : row.end]
        if ACTION.search(rest) or STITCHY.search(rest):
            work(replace(row, start=done))
        return
    _by_its_words(ledger, row, upto, evens)


def _by_its_words(ledger: Ledger, row: WrittenRow, upto: int | None, evens: Evens) -> None:
    """A row of instructions, or of a rule."""
    knits = ledger.pattern.craft is Craft.KNITTING
    words = ledger.text[row.start : row.end]
    note_star(ledger, words)
    on_the_other_side(ledger, row)
    if knits:
        hold_against(ledger, row.start, row.end)
    if row.mark is None and knits:
        words = without_heading(words)
    rule = rule_of(words, row.mark is not None, ledger.size, ledger.pattern.book)
    if rule and row.mark and THIS_AGAIN.match(words, rule.start):
        rule = None
    begun = knits and row.mark is None and cast_on_in(words)
    if (rule is None or rule.kind == "grow") and SAME_TIME.match(words.lstrip()):
        ask_of_same_time(ledger, row.start, row.end)
    if rule is None or begun:
        here = len(ledger.rows)
        ledger.plain(row)
        ask_of_list(ledger, row, here)
    elif rule.kind == "same":
        same(ledger, row, rule, upto, evens)
    else:
        ruled(ledger, row, rule, upto, evens)


AND_THEN = re.compile(
    r"(?<=[.;])\s+(?=(?:(?:attach|join|with|using|change to)\b[^.;,]{0,30},\s*)?"
    r"(?:rep|repeat|work(?:ing)?|cont|continue|inc|dec|increase|decrease)\b)",
    re.IGNORECASE,
)
"""Where a rule of its own follows a row that is named."""


def same(ledger: Ledger, row: WrittenRow, rule: Rule, upto: int | None, evens: Evens) -> None:
    """ "Same as 4th row", "same as 13th and 14th rows", and what follows it."""
    then = AND_THEN.search(ledger.text, row.start, row.end)
    then = then if then and ledger.text[row.start : then.start()].strip() else None
    if then and find_rule(ledger.text[then.end() : row.end], False):
        named(ledger, replace(row, end=then.start()), rule)
        _add_one(ledger, WrittenRow(None, then.end(), row.end), upto, evens)
    else:
        named(ledger, row, rule)


def named(ledger: Ledger, row: WrittenRow, rule: Rule) -> None:
    """A row that is told by the number of another."""
    found = [ledger.entry_of(number, rule.rest) for number in rule.named]
    if rule.named == (0,):
        found = list(ledger.entries[-1:])
    entries = [one for one in found if one is not None]
    if not entries:
        ledger.plain(row)
        return
    printed, _ = ledger.printed(ledger.text[row.start : row.end])
    numbers, changes = numbers_of(row.mark), any(one.gain for one in entries)
    for index, number in enumerate(numbers):
        entry = entries[index % len(entries)]
        if rule.fewer and rule.named == (0,):
            entry = ledger.entries[-1]
        # Where the rows change the count, the printed total is that of the last.
        mine = index + 1 == len(numbers) or not changes
        gained = rule.by_gain or rule.step
        if gained and entry.gain is not None and ledger.below.stitches is not None:
            why = CHANGED_TOO if rule.step else "as many increases as in the row that is named"
            count = ledger.below.stitches + entry.gain + rule.step
            ledger.even(count, row.mark, row.start, row.end, why)
            ledger.check_total(row, 0, row.end - row.start, settled=False)
            continue
        nodes = once_fewer(entry.nodes) if rule.fewer else entry.nodes
        quoted = replace(entry, row=row, quoted=True)
        nodes = as_told(ledger, quoted, nodes, rule, bool(printed))
        if not ledger.full():
            own = in_turn(printed, index, len(numbers), len(ledger.pattern.sizes))
            total = own or (printed if mine else ())
            quoted = replace(entry, nodes=nodes, row=row, printed=total, quoted=True)
            ledger.work(replace(quoted, fewer=rule.fewer), number)
    chain_at_end(ledger, rule)


def ruled(ledger: Ledger, row: WrittenRow, rule: Rule, upto: int | None, evens: Evens) -> None:
    """Instructions, then a rule, then what follows it."""
    first, rule = first_of(ledger, row, rule)
    cut, here = row.start + rule.start, len(ledger.rows)
    labelled = row.mark is not None and (bool(row.mark.numbers) or row.mark.times > 1)
    if first is not None:
        if ledger.pattern.craft is Craft.KNITTING and rule.kind != "even":
            # "Knit 2 rounds plain, and repeat the last 3 rounds": a rule before the rule.
            _add_one(ledger, first, upto, evens)
        else:
            ledger.plain(first)
        labelled = False
    if rule.goal is None and ledger.pattern.craft is Craft.KNITTING:
        rule = replace(rule, goal=whole_of_part(ledger, ledger.text[cut : row.end]))
    _by_kind(ledger, row, rule, upto, labelled)
    rest = row.start + rule.end
    ask_of_list(ledger, replace(row, end=rest), here)
    rest += changed_in_last(ledger, rest, row.end) if rule.kind != "grow" else 0
    after = ledger.text[rest : row.end]
    told = AS_THEY_DO.match(after) if ledger.pattern.craft is Craft.CROCHET else None
    if told is not None:
        rest, after = _total_behind(ledger, row, rest, told.end())
    total = total_alone(after, len(ledger.pattern.sizes))
    if total:
        rest, after = _total_behind(ledger, row, rest, total.end())
    least = 1 if ledger.pattern.craft is Craft.KNITTING else 3
    works = (ACTION.search(after) or plain_rows_only(after)) and len(after.split()) >= least
    works = works and not turned_behind(ledger, after)
    if works or FURTHER.match(after) or THEN_EVERY.match(after):
        _add_one(ledger, WrittenRow(None, rest, row.end), upto, evens)
    elif rule.kind == "even":
        up_to_label(ledger, row, here)
        total_within(ledger, row, rule)


def _by_kind(
    ledger: Ledger, row: WrittenRow, rule: Rule, upto: int | None, labelled: bool
) -> None:
    """The rows that a rule stands for."""
    # "3rd row: Repeat last row until 2 sc remain": the label is only of the first of them.
    again = labelled and rule.kind in ("last", "rows") and not first_of_many(row, rule)
    if again and (rule.times is None or other_than_label(ledger, row, rule)):
        repeat_into(ledger, row, rule)
    elif rule.kind == "turns":
        turns(ledger, row, rule)
    elif rule.kind in ("even", "fabric"):
        evenly(ledger, row, rule)
    elif rule.kind == "halve":
        halve(ledger, row, rule)
    elif rule.kind == "mirror":
        mirror(ledger, row, rule)
    elif rule.kind == "grow":
        grow(ledger, row, at_its_pace(ledger, rule), upto)
    else:
        repeat(ledger, row, rule, upto)
        chain_at_end(ledger, rule)


def _total_behind(ledger: Ledger, row: WrittenRow, at: int, length: int) -> tuple[int, str]:
    """Holds the total that stands there against the rows; where the words go on, and those."""
    ledger.check_total(row, at - row.start, at + length - row.start, settled=ledger.doubted)
    return at + length, ledger.text[at + length : row.end]


def repeat_into(ledger: Ledger, row: WrittenRow, rule: Rule) -> None:
    """ "Rows 3-8: Rep Row 2", "Rows 5-12: rep rows 1-4": the label says how many."""
    entries = rows_of(ledger, rule)
    numbers, changes = numbers_of(row.mark), any(one.gain for one in entries)
    printed, _ = ledger.printed(ledger.text[row.start + rule.start : row.end])
    groups = tuple(one for one in printed if one.kind not in STITCHES + PLAIN_KINDS)
    for index, number in enumerate(numbers):
        if entries and not ledger.full():
            entry = entries[index % len(entries)]
            # Where the rows change the count, the printed total is that of the last.
            mine = index + 1 == len(numbers) or not changes
            total = groups if mine else ()
            ledger.work(replace(entry, row=row, printed=total, quoted=True), number)


def repeat(ledger: Ledger, row: WrittenRow, rule: Rule, upto: int | None) -> None:
    """Rows worked again, a number of times or to a goal."""
    rule, entries = called_back(ledger, rule)
    if not entries:
        return
    if not ledger.rows and entries[0].number == 1 and entries[0].base is not None:
        # The first rows of another part: from a foundation like its own.
        ledger.below = entries[0].base
    times, gained = rule.times, sum(one.gain or 0 for one in entries)
    if times and rule.in_all and (rule.kind == "last" or ledger.number == rule.last):
        times -= 1
    if times is None and rule.goal is None and ledger.pattern.craft is Craft.KNITTING:
        told = told_behind(ledger, row.start + rule.end, row.end, gained)
        rule = rule if told is None else replace(rule, goal=told)
    if times is None and rule.goal is None:
        known = upto is not None and ledger.number and upto > ledger.number + 1
        times = max(0, ((upto or 0) - 1 - ledger.number) // len(entries)) if known else 0
    if rule.until_row is not None and (upto is None or upto <= ledger.number):
        times = max(0, (rule.until_row - rows_worked(ledger)) // len(entries))
    span = WrittenRow(None, row.start + rule.start, row.start + rule.end)
    if rule.goal is None and heel_to_its_end(ledger, span, row.end):
        return
    if times == 0 and (MEASURES.search(ledger.text[span.start : span.end]) or rule.times is None):
        by_measure(ledger, row, span, entries, gained)
        return
    if times is None and len(entries) == 1 and entries[0].fewer:
        pineapple(ledger, entries[0], span, rule.goal or 1)
        return
    goal, knits = whole_goal(ledger, rule), ledger.pattern.craft is Craft.KNITTING
    plain = knits and [one.gain for one in entries] == [0]
    away = plain and goal not in (None, ledger.below.stitches)
    if times is None and (away or (rule.per_section and not nearer(ledger, entries, goal))):
        # Its numbers grow from round to round: only how the rounds went on tells.
        grow(ledger, row, rule, upto)
        return
    if HAVING_MORE.search(rule.rest):
        entries = by_their_gains(ledger, entries, times if knits else None, span)
    over_and_over(ledger, entries, times, goal, span, upto)
    ledger.check_total(row, rule.start, rule.end)
