"""Plays on what makers ask in between: a stitch by its name, a tool's size, seconds a stitch."""

from __future__ import annotations

from reader.commands.asked import command_of
from reader.session.events import CommandGiven
from reader.session.listening import phrases_for
from reader.session.state import Mode
from reader.session.transitions import respond
from tests.session.play import Play, demo, perform, plan_of

MAT = """Pier Mat

Materials
Cotton yarn, worsted, 80 g
Size H-8 hook

MAT
Ch 12.
Row 1: Sc in 2nd ch from hook and in each ch across. (11)
Row 2: Ch 1, turn, sc in each st across. (11)
Row 3: Ch 1, turn, sc in each st across. (11)
Row 4: Ch 1, turn, sc in each st across. (11)
Row 5: Ch 1, turn, sc in each st across. (11)
Row 6: Ch 1, turn, sc in each st across. (11)
Row 7: Ch 1, turn, sc in each st across. (11)
Row 8: Ch 1, turn, sc in each st across. (11)
"""


def typed(play: Play, words: str) -> str:
    """What is answered to typed words."""
    return play.took(*respond(play.state, CommandGiven(command_of(words), play.now, False)))


def test_a_stitch_is_explained_by_its_name() -> None:
    """Any stitch or short form can be asked for, not only that of the step; that one too."""
    play = Play(demo("harbour-lighthouse"))
    assert "yarn over" in typed(play, "what is dc").lower()
    assert "loop" in typed(play, "how do i do that").lower()
    assert "no words for" in typed(play, "explain zqx").lower()


def test_the_us_size_of_a_tool_is_told_in_millimetres() -> None:
    """H-8 is 5 mm (chart at matifs.com/crochet-hooks-size-chart)."""
    play = Play(plan_of(MAT))
    play.maker("materials")
    play.maker("yes")
    assert "hook" in play.answer.lower()
    assert "five millimetres" in play.maker("explain that").lower()


def test_how_long_tells_the_seconds_of_a_stitch_once_they_are_known() -> None:
    """Eleven stitches in sixty-six seconds, row after row, are six seconds each."""
    play = Play(plan_of(MAT))
    play.maker("more words")
    assert "seconds" not in play.maker("how long")
    for _ in range(7):
        play.wait(1)
        play.maker("next", after_s=66)
    play.maker("more words")
    said = play.maker("how long").lower()
    assert "single crochet takes you about six seconds" in said


def test_any_stitch_of_the_pattern_is_explained_by_its_name() -> None:
    """By voice alone: asked which, the pattern's own are told in its terms; the place stays."""
    play = perform(
        """
        maker: next
        maker: more words
        maker: which stitch
        program: this pattern has: single crochet, increase
        program: magic ring
        maker: single crochet two together
        program: through all three loops
        place: round two
        maker: more words
        maker: which stitch
        maker: no
        program: as it was
        """,
        Play(demo("harbour-lighthouse")),
    )
    assert play.state.mode is Mode.STEP


def test_stitches_are_named_in_the_terms_of_the_pattern() -> None:
    """In UK terms the pattern has trebles and no single crochet; a list of abbreviations in one
    line is taken apart."""
    play = perform("maker: more words\nmaker: which stitch", Play(plan_of(BLANKET)))
    assert "treble" in phrases_for(play.state)
    assert "single crochet" not in phrases_for(play.state)
    play.maker("treble")
    assert "insert" in play.answer.lower()
    key = dict(play.plan.parts[0].rows[0].reading.key)
    assert (key["ch"], key["tr"]) == ("chain", "treble")


BLANKET = """Fell Cloth

UK terms.

Abbreviations
ch = chain; tr = treble; st(s) = stitch(es)

CLOTH
Ch 12.
Row 1: 1 tr in 4th ch from hook, 1 tr in each ch to end. Turn. (10 tr)
Row 2: Ch 3, miss first st, 1 tr in each st to end. Turn. (10 tr)
"""
