"""Plays on the first time with a pattern: a short greeting, choices put otherwise."""

from __future__ import annotations

from reader.app.loop import Loop
from reader.commands.asked import command_of
from reader.devices.fakes import FakeClock
from reader.session.choosing import Choosing, begin_choosing, choices_said, choose
from reader.session.effects import Effect, Say
from reader.session.events import CommandGiven
from reader.session.listening import phrases_for
from reader.session.state import Mode, Tastes, Words
from reader.session.view import view_of
from reader.wording.choices import talk_choice
from reader.wording.figures import in_figures
from reader.wording.shown import Shown
from tests.session.play import Play, demo, perform, plan_of

LONGEST_GREETING = 40
"""Words before the first step: ten seconds at 170 words a minute, with the names of the piece."""

SNAIL = """Pebble the Snail

You need: double knitting yarn, 40 g sand; 3 mm hook; two 8 mm safety eyes.

BODY (sand)
R1: 6 sc in MR (6)
R2: inc x6 (12)
R3: (sc, inc) x6 (18)
R4-R6: sc around (18)
R7: (sc, dec) x6 (12)
R8: dec x6 (6)

FEELERS (make 2, sand)
R1: 4 sc in MR (4)
R2-R4: sc around (4)
"""


def test_the_first_step_comes_soon() -> None:
    """Title, how to go on, what can be read first; then the step."""
    for name in ("harbour-lighthouse", "mooring-pennant"):
        play = Play(demo(name))
        before = play.answer.partition("Round one.")[0].partition("Cast on")[0]
        assert len(before.split()) <= LONGEST_GREETING


def test_what_the_greeting_names_can_be_said_at_once_and_only_then() -> None:
    """Materials needs no "more words" before the first move."""
    play = perform("maker: materials\nmaker: no\nmaker: carry on", Play(demo("harbour-lighthouse")))
    assert "opening notes" in phrases_for(play.state)
    play.maker("next")
    assert "materials" not in phrases_for(play.state)


def test_a_toy_with_repeats_and_totals_has_one_size_and_all_its_rounds() -> None:
    """ "x6 (12)" is a repeat with its total; R4-R6 are three rounds; a bracket stays whole."""
    plan = plan_of(SNAIL)
    assert len(plan.sizes) == 1
    assert [row.number for row in plan.parts[0].rows] == [1, 2, 3, 4, 5, 6, 7, 8]
    assert [part.name for part in plan.parts] == ["BODY (sand)"] + ["FEELERS (sand)"] * 2
    assert [item.kind for item in plan.gather] == ["yarn", "hook", "notion"]


def test_a_repeat_up_to_a_length_is_a_row_with_its_notice() -> None:
    """Nothing of the pattern is lost where the number of rows is not told."""
    scarf = """Scarf

Cast on 20 sts.
Row 1: Knit.
Row 2: Purl.
Rep rows 1 and 2 until work measures 28 cm.
Row 3: K1, k2tog, k to last 3 sts, k2tog, k1. (18 sts)
"""
    play = Play(plan_of(scarf))
    play.maker("row done")
    assert "length in place of a count" in play.maker("row done")
    assert "until work measures" in play.maker("row done").lower()
    play.maker("row done")
    assert "row three" in play.place().lower()


class _Choice:
    """A choice that is spoken to."""

    def __init__(self, names: tuple[str, ...]) -> None:
        self.state, self.effects = begin_choosing("size", "Vest", names, Tastes())

    def says(self, words: str) -> str:
        """What is answered to these words, "" where it is only a sound."""
        given = CommandGiven(command_of(words), 0.0)
        self.state, self.effects = choose(self.state, given)
        return _said(self.effects, self.state)


def _said(effects: tuple[Effect, ...], state: Choosing) -> str:
    return " ".join(talk_choice(one.sayings, state) for one in effects if isinstance(one, Say))


def test_the_letters_of_a_size_are_words() -> None:
    """S, M and L are said and heard as small, medium and large."""
    choice = _Choice(("S", "M", "L"))
    assert "medium" in choices_said(choice.state)
    assert "medium" in choice.says("medium").lower()


def test_no_answer_to_a_choice_is_refused_twice_the_same_way() -> None:
    """The names, then the numbers, then the keys, then only a sound."""
    choice = _Choice(("S", "M", "L"))
    answers = [choice.says("next") for _ in range(4)]
    assert len(set(answers)) == 4
    assert "one, small" in answers[1].lower()
    assert answers[3] == ""
    assert "one, small" in choice.says("what can i say").lower()


def test_the_bar_offers_what_can_be_answered() -> None:
    """While a number is asked for, enter gives it and n leaves it; "next" is not offered."""
    play = Play(demo("harbour-lighthouse"))
    play.maker("go to row")
    assert play.state.mode is Mode.ROW_NUMBER
    keys = [key for key, _ in view_of(play.state).ready]
    assert keys[:2] == ["enter", "n"]
    assert "space" not in keys


def test_figures_and_words_are_not_mixed() -> None:
    """Zero and one become figures where they count; "one of these" stays."""
    assert in_figures("Zero done, twelve left.") == "0 done, 12 left."
    assert in_figures("Row one. Pass one of six.") == "Row 1. Pass 1 of 6."
    assert in_figures("One of these: neck, heel.") == "One of these: neck, heel."


def test_the_end_is_not_celebrated_twice() -> None:
    """Said once; after that, what can be done now."""
    play = Play(plan_of("Mat\n\nRnd 1: 6 sc in a magic ring. (6)\nRnd 2: inc in each st. (12)\n"))
    play.maker("row done")
    assert "twelve stitches" in play.maker("row done")
    again = play.maker("next")
    assert "twelve stitches" not in again
    assert "start over again" in again.lower()


def test_nothing_says_listening_without_an_ear() -> None:
    """No microphone: the screen says that keys work."""
    shown: list[Shown] = []

    class Screen:
        """Keeps what is shown."""

        def __getattr__(self, name: str) -> object:
            return shown.append if name == "show" else lambda *words: None

    play = Play(demo("harbour-lighthouse"))
    loop = Loop(None, None, None, Screen(), None, FakeClock())  # type: ignore[arg-type]
    loop.start(play.state, play.effects)
    assert shown[-1].ear.value.startswith("Not listening")


def test_a_long_repeat_is_said_to_need_no_word_at_each_pass() -> None:
    """Forty ribs are not forty times next; told once."""
    rib = "Cuff\n\nCast on 80 sts.\nRow 1: *k1, p1; rep from * to end.\n"
    play = Play(plan_of(rib + "Row 2: *k1, p1; rep from * to end.\nRow 3: Knit.\n"))
    assert "say row done at the row's end" in play.maker("next").lower()
    assert "at each pass" not in play.maker("row done").lower()


def test_two_numbers_side_by_side_stay_apart() -> None:
    """Two eyes of eight millimetres are not 28 and not "2 8"."""
    assert in_figures("Two eight millimetre eyes.") == "Two 8 millimetre eyes."
    assert in_figures("Three point seven five millimetres.") == "3.75 millimetres."


def test_only_the_counts_is_said_where_it_is_still_chosen() -> None:
    """Chosen another evening and forgotten, it would leave a maker without instructions."""
    play = Play(demo("harbour-lighthouse"), Tastes(words=Words.COUNT))
    assert "only the counts are read" in play.answer.lower()
    assert "only the counts are read" in play.away(1).lower()
    assert "only the counts" not in Play(demo("harbour-lighthouse")).answer.lower()


def test_a_row_that_is_measured_is_not_called_the_last() -> None:
    """It stands for as many rows as the measure takes."""
    scarf = "Scarf\n\nCast on 20 sts.\nRow 1: Knit.\nRow 2: Purl.\nRow 3: Knit.\nRow 4: Purl.\n"
    play = Play(plan_of(scarf + "Rep rows 1 to 4 until work measures 28 cm.\n"))
    said = [play.maker("row done") for _ in range(5)]
    assert "until work measures" in said[-1].lower()
    assert not any("this is the last row" in words.lower() for words in said)


def test_decreases_that_begin_with_the_part_are_not_announced_later() -> None:
    """A crown that decreases in its first round, then every other one."""
    crown = "Hat\n\nBRIM\nCO 24 sts. Join to work in the round.\nRnd 1: Knit. 24 sts\n\nCROWN\n"
    crown += "Rnd 1: *k4, k2tog; rep from * around. 20 sts\nRnd 2: Knit. 20 sts\n"
    play = Play(plan_of(crown + "Rnd 3: *k3, k2tog; rep from * around. 16 sts\n"))
    said = [play.maker("row done") for _ in range(4)]
    assert "round three" in play.place().lower()
    assert not any("decreases begin" in words.lower() for words in said)
