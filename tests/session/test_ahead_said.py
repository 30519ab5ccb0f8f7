"""Plays on what comes: notices are said before the row that they affect, cautions once."""

from __future__ import annotations

from tests.session.play import Play, demo, perform, plan_of

BAG = """Fisher's Net Bag

Invented for this test. Nobody has made it.
Knitting.

MATERIALS
Aran weight cotton: navy 80 g, sand 30 g
5 mm needles
Two stitch markers
One wooden toggle button

BASE
With sand, CO 20 sts.
Row 1 (RS): k to end. 20 sts
Row 2 (WS): p to end. 20 sts
Row 3: k4, pm, k to last 4 sts, pm, k4. 20 sts
Row 4: p to end. 20 sts
Change to navy.
Row 5: k to end. 20 sts
Row 6: p to end. 20 sts
At the same time, begin the handle edge on row 7.
Row 7: k1, ssk, k to last 3 sts, k2tog, k1. 18 sts
Row 8: p to end. 18 sts
Work even until the piece measures 6 inches.
BO all sts, leaving a long tail.
"""


def test_each_notice_comes_before_what_it_is_about() -> None:
    """Marker, colour, decreases, two things at once, a length for a count, a tail: all ahead."""
    perform(
        """
        silent: small parts
        maker: next
        program: small parts
        place: row one
        maker: next
        place: row two
        program: stitch marker in the next row
        maker: next
        place: row three
        program: navy comes in two rows
        maker: row done
        program: navy comes in the next row
        maker: next
        program: change to navy
        maker: next
        place: row five
        maker: next
        place: row six
        program: two things go on at the same time
        program: decreases begin in the next row
        maker: next
        maker: next
        place: row seven
        maker: row done
        place: row eight
        program: next, a length in place of a count
        program: until the piece measures six inches
        maker: row done
        maker: next
        program: leave a long tail
        """,
        Play(plan_of(BAG)),
    )


def test_notices_come_in_every_length_of_words() -> None:
    """Only the count, or short words: what comes is still said."""
    for words in ("only the count", "short words"):
        perform(
            f"""
            maker: go to row
            maker: two
            maker: more words
            maker: {words}
            maker: next
            program: navy comes in two rows
            """,
            Play(plan_of(BAG)),
        )


def test_cautions_are_said_once() -> None:
    """After the first row where no row speaks of it; not on coming back, not at a new beginning."""
    perform(
        """
        silent: small parts
        maker: row done
        program: small parts
        away: 0
        silent: small parts
        maker: more words
        maker: start over again
        maker: yes
        silent: small parts
        place: cast on
        """,
        Play(plan_of(BAG)),
    )


CAP = """Deck Cap

MATERIALS
Aran wool 70 g
5 mm circular needle

CAP
CO 40 sts. Join to work in the round.
Rnd 1: Knit. 40 sts
Rnd 2: *k3, k2tog; rep from * around. 32 sts
Change to double-pointed needles.
Rnd 3: *k2, k2tog; rep from * around. 24 sts
Rnd 4: *k1, k2tog; rep from * around. 16 sts
Rnd 5: *k2tog; rep from * around. 8 sts
"""


def test_a_caution_comes_before_the_row_that_it_is_about() -> None:
    """Heat is spoken of where the iron is, and only there."""
    play = Play(plan_of(CAP + "\nFINISHING\nWeave in the ends. Steam it lightly.\n"))
    said = [play.maker("row done") for _ in range(8)]
    told = [at for at, words in enumerate(said) if "Heat:" in words]
    assert len(told) == 1
    assert "Steam it lightly" in said[told[0]]


def test_a_cap_is_not_stuffed() -> None:
    """A piece that is open where it begins is not spoken of as a toy; another needle is named."""
    play = perform(
        """
        maker: row done
        maker: row done
        program: change to double-pointed needles
        """,
        Play(plan_of(CAP)),
    )
    said = [play.maker("row done") for _ in range(4)]
    assert not any("stuffed" in words for words in said)


def test_a_pattern_without_notes_says_so() -> None:
    """No request is answered with silence."""
    perform(
        """
        maker: more words
        maker: opening notes
        program: nothing before its rows
        """,
        Play(plan_of(CAP)),
    )


def test_what_may_be_wrong_is_said_in_words_before_its_row() -> None:
    """No sign, short form or figure is left in the sentence; the row itself follows in full."""
    play = perform(
        """
        program: three things in this pattern may be wrong
        maker: next
        maker: next
        program: look out: round three: the printed total is twenty, but the words make eighteen
        program: round three. single crochet in the next stitch
        """,
        Play(demo("rope-coaster-with-slips")),
    )
    assert not any(sign in play.answer for sign in "*“”();0123456789")
