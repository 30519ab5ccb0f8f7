"""Plays on rows that are counted in groups: how many are told, and which counts are right."""

from __future__ import annotations

from tests.session.play import Play, perform, plan_of

SCARF = plan_of("""SALT ROPE SCARF (UK)
V-st: work 1 tr, 1 ch, 1 tr all into the same place.

Make 19 ch.
Row 1: 1 V-st into 5th ch from hook, *miss 2 ch, 1 V-st into next ch; rep from * to last 2 ch, miss 1 ch, 1 tr into last ch, turn. 5 V-sts
Row 2: 3 ch (counts as 1 tr), 1 V-st into the 1-ch sp of each V-st to end, 1 tr into top of tch, turn. 5 V-sts
Row 3: 1 ch, 1 dc into first tr, *5 tr into 1-ch sp of next V-st, 1 dc into 1-ch sp of next V-st; rep from * to last V-st, 5 tr into 1-ch sp of last V-st, 1 dc into top of tch, turn. 3 shells
Row 4: 3 ch, *1 V-st into centre tr of next shell, 1 V-st into next dc; rep from * to last shell, 1 V-st into centre tr of last shell, 1 tr into last dc, turn.
Row 5: 1 ch, 1 dc into each st to end, turn.
""")  # noqa: E501


def test_a_row_of_groups_ends_with_groups_and_stitches() -> None:
    """The maker hears what the pattern counts, and the stitches besides; a row of stitches below
    is told in stitches.
    """
    perform(
        """
        maker: go to row two
        maker: row done
        program: you should have five V stitches, twelve stitches in all
        maker: row done
        program: you should have three shells, nineteen stitches in all
        maker: row done
        program: you should have five V stitches, twelve stitches in all
        maker: row done
        program: you should have twelve stitches
        """,
        Play(SCARF),
    )


def test_a_count_in_groups_is_right() -> None:
    """Three shells, nineteen stitches: both are right, and each is told in its own unit."""
    perform(
        """
        maker: go to row three
        maker: i have three
        program: right: three shells.
        silent: too few
        maker: i have nineteen
        program: right: nineteen stitches
        maker: check my count
        maker: two
        program: two: there should be three shells, so one too few
        """,
        Play(SCARF),
    )


def test_groups_counted_just_after_a_row_are_of_that_row() -> None:
    """Five counted once row two is complete are its V stitches, not shells of row three."""
    perform(
        """
        maker: go to row two
        maker: row done
        maker: i have five
        program: right: five V stitches after row two
        """,
        Play(SCARF),
    )


def test_stitches_far_from_the_groups_are_stitches() -> None:
    """Eighteen is one stitch short of nineteen."""
    perform(
        """
        maker: go to row three
        maker: i have eighteen
        program: eighteen: there should be nineteen, so one too few
        """,
        Play(SCARF),
    )
