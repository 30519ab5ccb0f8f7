"""Rows by rule: "rep rows 2 and 3 four times", "same as 4th row", "work 6 rows even", "until there
are 39 sts".
"""

from __future__ import annotations

import re
from dataclasses import replace

from reader.pattern.again_changed import again_changed
from reader.pattern.beyond_goal import BEYOND_GOAL, FURTHER_WORK
from reader.pattern.changes import (
    AS_BEFORE,
    EVERY_NEEDLE,
    Change,
    cast_at_end,
    change_at_ends,
    change_once,
    find_change,
    of_which_row,
)
from reader.pattern.fabric_rules import (
    bare_measure,
    fabric_rows,
    in_fabric,
    ridges,
    turned_about,
    work_even,
)
from reader.pattern.figures import place_in, tightened
from reader.pattern.goals import (
    MEASURED_FROM,
    TO_GOAL_LAST,
    changed_by,
    goal_in,
    section_goal,
    times_in,
    value_of,
)
from reader.pattern.going_on import STITCHES_ON
from reader.pattern.halving import halved
from reader.pattern.layers import layers_joined
from reader.pattern.mirroring import mirrored
from reader.pattern.net_rules import net_narrowed
from reader.pattern.rows_again import (
    by_section,
    change_again,
    last_again,
    odd_and_even,
    rows_again,
)
from reader.pattern.rule import Rule
from reader.pattern.rule_words import (
    ALTERNATELY,
    AS_IT_GREW,
    BY_TURNS_FOR,
    DID_SO_MANY,
    EVEN,
    EVEN_ROUND,
    EVEN_SAID,
    FOR_ROWS,
    GOES_ON,
    IN_EVERY_STITCH,
    LIKE_LAST,
    MEASURE,
    MORE,
    NEXT_ROW,
    OPEN_END,
    PICKS_UP,
    PLAIN_ROWS,
    RIB_FOR,
    ROW_NAMED,
    ROWS_UNDERSTOOD,
    SHAPED,
    THEN,
    TO_AND_FRO_FOR,
)
from reader.pattern.same_row import same_as
from reader.pattern.schedules import coloured_rows
from reader.pattern.so_on import so_on
from reader.pattern.told_again import told_again

DEEPER = re.compile(
    r"\b(\d |two |three |four |five |six )(r)[on]((?:und|d|w)s)(?= (?:below|down|back|beneath)\b)",
    re.IGNORECASE,
)
"""Where a long stitch goes into: no rows are worked by it, so that their word is hidden."""
HIDDEN = re.compile(r"(r)0(unds|ds|ws)")
LETTER = {"unds": "o", "ds": "n", "ws": "o"}


def find_rule(words: str, labelled: bool, size: int = 0, sizes: int = 1) -> Rule | None:
    """The rule a row's words are, or contain at their end; None where they are plain instructions.
    """
    words = DEEPER.sub(lambda m: m[1] + m[2] + "0" + m[3], words)
    rule = _rule_in(tightened(words, size, sizes), labelled)
    if rule is None:
        return None
    rule = replace(rule, rest=HIDDEN.sub(lambda m: m[1] + LETTER[m[2]] + m[2], rule.rest))
    start, end = (place_in(words, at, size, sizes) for at in (rule.start, rule.end))
    return replace(rule, start=start, end=end)


def plain_rows_only(words: str) -> bool:
    """Whether words begin with plain rows by number, or with rows worked so often again: "Then sc
    even for 3 rounds.", "that row 3 more times".
    """
    rule = find_rule(" ".join(words.split()), False) if ROW_NAMED.search(words) else None
    if rule is None or rule.start >= NEAR:
        return False
    again = rule.kind == "last" and rule.times is not None
    return again or (rule.kind == "even" and not rule.measured)


NEAR = 24
"""Characters before such a rule that only lead to it."""
SENTENCE_ENDS = re.compile(r"[.;]\s+(?=\S|$)")


def _rule_in(words: str, labelled: bool) -> Rule | None:
    """The first rule of the words: of several sentences with one, that of the earliest."""
    found = _one_rule(words, labelled)
    if found is None or found.kind in ("same", "fabric"):
        return found
    ends = [one.end() for one in SENTENCE_ENDS.finditer(words, 0, found.start)]
    earlier = _one_rule(words[: ends[-1]], False) if ends else None
    if earlier is None or earlier.kind == "fabric":
        return found
    return earlier


def _one_rule(words: str, labelled: bool) -> Rule | None:
    # Most rows name no other row, and most rules do: those are then not looked for in vain.
    rows = ROW_NAMED.search(words) is not None
    return (
        (so_on(words, True) or same_as(words) if labelled else None)
        or told_again(words, labelled)
        or change_again(words)
        or (again_changed(words) if rows else None)
        or last_again(words, rows)
        or (odd_and_even(words) if rows else None)
        or (rows_again(words) if rows else None)
        or (work_even(words) if labelled else None)
        or (so_on(words) if rows else None)
        or halved(words)
        or mirrored(words)
        or layers_joined(words)
        or in_fabric(words)
        or (turned_about(words) if rows else None)
        or (_even(words) if rows else None)
        or (fabric_rows(words) if rows else None)
        or ridges(words)
        or _measured(words)
        or bare_measure(words)
        or net_narrowed(words)
        or _grow(words, labelled)
    )


def _measured(words: str) -> Rule | None:
    """ "Work in rib until piece measures 2 inches"."""
    found = MEASURE.search(words)
    if not found:
        return None
    beyond = FURTHER_WORK.search(words, found.start("rest"), found.end())
    beyond = TO_GOAL_LAST.search(words, found.start("rest"), found.end()) or beyond
    end = beyond.start() if beyond else found.end()
    told = MEASURED_FROM.sub("", words[found.start() : end])
    step, at_first = change_once(told)
    if (SHAPED.search(told) or AS_IT_GREW.search(told)) and not step:
        return None
    return Rule(
        "even", start=found.start(), end=end, rest=told, measured=True, step=step,
        at_once=at_first,
    )  # fmt: skip


IN_TOTAL = re.compile(r"\s*,?\s*(?:in all|in total|total|altogether)\b", re.IGNORECASE)
"""Behind a number of rows: those worked before are among them."""


TOLD_AS_ROW = re.compile(
    rf"{IN_EVERY_STITCH.pattern}|\b(?:inc|dec)\w*\.? (?:evenly )?to \d+"
    r"|\b(?:k|p|knit|purl|work|tak)\w* ?2 (?:sts |stitches )?tog\w* (?:all )?"
    r"(?:across|along|around)\b",
    re.IGNORECASE,
)
"""A change told behind "knit 1 row", that is read as a row is."""


ONCE_A_NEEDLE = re.compile(
    r"\bonce (?:on|in|at)\b[^.;]{0,24}\b(?:each|every) (?:needle|pin)\W*$", re.IGNORECASE
)
"""One round, in which each needle is changed."""


def of_needles(words: str) -> bool:
    """Whether a change is made on each needle, and nothing says how many they are."""
    found = EVERY_NEEDLE.search(words)
    return found is not None and found["n"] is None and SHAPED.search(words) is not None


OF_BOTH = re.compile(r"\b((?:of|on|in|at) )both(?! (?:ends?|sides?|edges?))", re.IGNORECASE)
"""Two rows, "at each end of both": of each. As long as that word."""
TOLD_NEXT = re.compile(
    r"[.;]|,?\s+(?:and\s+)?then\s+(?:continue|cont|proceed|go on|keep)\b", re.IGNORECASE
)
"""What ends the words of so many rows."""


AT_CORNERS = re.compile(
    r"\b\d ?(?:s ?c|h ?d ?c|d ?c|h?tr)\b[^.;]{0,24}\bcorners?\b"
    r"|\bcorners?\b[^.;]{0,12}\b\d ?(?:sc|dc|hdc)\b",
    re.IGNORECASE,
)
"""Stitches told beside those of so many rounds, "2 rounds of sc with 3 sc in each corner"."""


def _counted_even(rows: int, found: re.Match[str]) -> Rule:
    return Rule("even", rows=rows, start=found.start(), end=found.end(), rest=found.group())


def _even(words: str) -> Rule | None:
    """ "Work 6 rounds even"; "knit 6 rows, increasing 1 st at the beginning of each"."""
    counted = DID_SO_MANY.search(words) if PLAIN_ROWS.search(words) else None
    counted = counted or RIB_FOR.search(words) or BY_TURNS_FOR.search(words)
    counted = counted or TO_AND_FRO_FOR.search(words) or ALTERNATELY.search(words)
    counted = counted or EVEN_SAID.search(words)
    if counted:
        said = counted["rows"] or counted["more"]
        return _counted_even(int(said[:4]), counted)
    found = EVEN.search(words) or EVEN_ROUND.search(words)
    coloured = coloured_rows(words, found.start() if found else len(words))
    if coloured or not found:
        return coloured
    rows = value_of(found.group(1), found.group(2)) or 1
    behind = found.groupdict().get("rest") or ""
    until = rows if IN_TOTAL.match(behind) else None
    if LIKE_LAST.match(behind):
        return Rule("last", times=rows, start=found.start(), end=found.end(), rest=found.group())
    tail = _told_of_rows(words[found.start() :], rows)
    change = find_change(ROWS_UNDERSTOOD.sub(r"\g<0> row", tail))
    cornered = AT_CORNERS.search(tail) is not None
    to_goal = change is not None and change.step and goal_in(tail) is not None
    if to_goal or (rows == 1 and (cornered or TOLD_AS_ROW.search(tail))):
        return None
    if change is not None and (change.step or change.goes_on):
        end = found.start() + len(tail)
        times = change.times or rows // change.every
        return Rule(
            "grow", times=times, start=found.start(), end=end, rest=tail, step=change.step,
            every=change.every, at_once=change.at_once, rows=rows, paced=change.goes_on,
        )  # fmt: skip
    step, at_first = change_once(tail, rows == 1)
    step = step or cast_at_end(tail) * (rows == 1)
    unclear = not step and (of_needles(tail) or cornered or (rows > 1 and of_which_row(tail)))
    end = found.start() + len(tail) if step or unclear else found.end()
    beyond = FURTHER_WORK.search(words, found.end() - len(behind), end)
    end = beyond.start() if beyond and not step and not unclear else end
    return Rule(
        "even", rows=rows, start=found.start(), end=end, rest=words[found.start() : end],
        step=step, at_once=at_first, until_row=until, unclear=unclear,
    )  # fmt: skip


def _told_of_rows(words: str, rows: int) -> str:
    """What the words, from so many rows on, tell of them."""
    tail = TOLD_NEXT.split(words, maxsplit=1)[0]
    return OF_BOTH.sub(r"\1each", tail) if rows == 2 else tail


def _grow(words: str, labelled: bool) -> Rule | None:
    """ "Continue in this way until there are 15", "inc 1 st each end every 4th row 5 times"."""
    change = find_change(words)
    found = GOES_ON.search(words)
    if found is not None and (change is None or not change.step) and goal_in(words) is not None:
        change = change_at_ends(words) or change
    if found is None and (change is None or ONCE_A_NEEDLE.search(words)):
        return None
    if change is None and found is not None and _is_a_row(words[found.start() :]):
        return None
    start = min(found.start() if found else len(words), change.start if change else len(words))
    tail = _of_the_change(words[start:], max(8, change.end - start if change is not None else 0))
    changed = changed_by(tail, change.step if change is not None else 0)
    goal = None if changed else goal_in(tail) or section_goal(tail)
    times = changed or _times_of(tail, change, goal)
    by_measure = change is not None and change.step and OPEN_END.search(tail)
    endless = found is None and goal is None and times is None and not by_measure
    if endless and (change is None or labelled or not _told_of_all(change, words)):
        return None
    total = re.search(r"\((\d+)\s*(?:(?!needle)[a-z][a-z .]{0,12})?\)", tail)
    if total and goal is None and times is None and change is not None and change.step:
        goal = int(total.group(1)[:5])
    return Rule(
        "grow",
        times=times if change is not None and goal is None else None,
        goal=goal,
        start=start,
        end=start + len(tail),
        rest=tail,
        paced=change is not None and change.goes_on,
        step=change.step if change is not None and not endless else 0,
        endless=endless,
        every=change.every if change is not None else 1,
        at_once=(change is not None and change.at_once) or NEXT_ROW.search(tail) is not None,
        rows=_rows_in_all(tail, change, times),
        first=change.first_row if change is not None else 0,
        total=int(total.group(1)[:5]) if total and goal is not None else None,
        between=re.search(r"\b(?:until|till)\b.*\bbetween\b", tail) is not None,
        per_section=goal is not None and by_section(tail),
    )


def _told_of_all(change: Change, words: str) -> bool:
    """Whether a change without an end is one of all rows to come, and not of the row it stands in.
    """
    return change.step != 0 and (change.every > 1 or EVERY_ROW.match(words) is not None)


def _rows_in_all(tail: str, change: Change | None, times: int | None) -> int:
    """Over how many rows the changes go, where the words say it; 1 elsewhere."""
    rows = FOR_ROWS.search(tail)
    number = int(rows.group(1)[:3]) if rows else 1
    # A change in "every 0th row" goes over none.
    every = change.every if change is not None else 0
    return number if every and times == number // every else 1


def _is_a_row(words: str) -> bool:
    """Whether words of going on speak of a row, or of what is done next, and not of rows."""
    told = (PICKS_UP, STITCHES_ON, BACK_TO_STAR, TO_ITS_END, SO_MANY_ON)
    return any(one.match(words) is not None for one in told)


EVERY_ROW = re.compile(
    r"\W*(?:inc|dec|narrow|widen)[^.;:]*\b(?:every|each) (?:row|round|rnd)\W*$", re.IGNORECASE
)
"""A sentence that only says what every row does from here on."""
SO_MANY_ON = re.compile(
    r"\w+\.? (?:on )?(?:with |working |to work |along )?(?:\d+ )?(?:sl st|s ?c|h ?d ?c|d ?c|h?tr"
    r"|(?:single|double|half double|treble) crochets?)"
    r"(?: (?:in|into|on|over|across|for)\b[^.;,]{0,24}\d+ (?:sts|stitches|chs?|s ?c|h?d ?c|h?tr)"
    r"|(?<=\d [sd]c)|(?<=\d hdc))\b(?![^.]{0,80}\b(?:rows?|rnds?|rounds?|until|till)\b)",
    re.IGNORECASE,
)
"""So many stitches more of the same row: "continue with sc in the next 12 sts"."""
BACK_TO_STAR = re.compile(r"\w+\b[^.;*]{0,24}\b(?:from|at|to) (?:the )?\*", re.IGNORECASE)
"""A list of the row that is gone back to."""
TO_ITS_END = re.compile(
    r"\w+ (?:doing|on|going|with|repeating)?\b ?(?:this|that|these|so|it)?\b[^.;\d]{0,24}?"
    r"\b(?:until|till) (?:you (?:reach|get to|come to) )?(?:the )?end"
    r"(?: of (?:the |this |your )?(?:row|round|rnd))?\W*$",
    re.IGNORECASE,
)
"""Words that go on to the end of the row."""
IN_EACH_ROW = re.compile(
    r"\b(?:once|twice|thrice|\d+ times)(?=\s+(?:in|on)\s+(?:each|every)\s+(?:row|round|rnd)\b)",
    re.IGNORECASE,
)
"""How often a change is made in one row, which tells nothing of how many rows."""


TIMES_IN_ALL = re.compile(
    r"\b(?:times|twice|thrice)\W{1,3}(?:in all|in total|all told|total|altogether)\b", re.IGNORECASE
)
"""So often with the first: "next and every foll 4th row 6 times in all"."""


def _times_of(tail: str, change: Change | None, goal: int | None) -> int | None:
    """How often a change is made, None where no number says it."""
    if change is not None and change.times is not None:
        return change.times
    times = times_in(IN_EACH_ROW.sub("", tail))
    if times is not None and change is not None and (change.at_once or change.first_row):
        # "in the next row, then every 8th row 3 times (more)": the first one is not among them.
        apart = change.first_apart or MORE.search(tail) is not None
        times += apart and TIMES_IN_ALL.search(tail) is None
    elif times is not None and times > 1 and AS_BEFORE.search(tail):
        times -= TIMES_IN_ALL.search(tail) is not None
    rows = FOR_ROWS.search(tail)
    if change is not None and change.step and times is None and goal is None and rows:
        return int(rows.group(1)[:3]) // change.every
    return times


BEYOND_ALL = re.compile(
    r"\b(?:until|till) (?:you have )?(?:\w+ )?(?:all|no|every|both)\b[^.;\d]*(?P<next>[.;] )",
    re.IGNORECASE,
)
"""Where "until all stitches are worked" ends."""


def _of_the_change(tail: str, at: int) -> str:
    """What belongs to a change that is told up to `at`: not another pace, nor what is worked when
    its goal is reached.
    """
    then = THEN.search(tail, at)
    tail = tail[: then.start()] if then else tail
    beyond = BEYOND_GOAL.search(tail) or BEYOND_ALL.search(tail)
    return tail[: beyond.start("next")] if beyond else tail
