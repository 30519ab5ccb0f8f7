"""Headings that the rows do not stand right below: colours, words alone, lists."""

from __future__ import annotations

from tests.session.play import Play, perform, plan_of

TERN = """Tern Toy

You need:
50 g worsted yarn in grey
Stitch markers
Work in a spiral; do not join.

Body (make 1)
With grey:
R1: 6 sc in MR (6)
R2: inc x6 (12)
R3: sc around (12)

Wings (make 2)
With white:
R1: 5 sc in MR (5)
R2: inc x5 (11)
"""

MITTS = """Groyne Mitts

Yarn: DK cotton, 50 g balls: 2 balls Shell (MC), 1 ball Kelp (CC1)
Hook: 4 mm
Other: 3 buttons, ribbon, 1 m

LEFT MITT
Ch 12, join with sl st to form a ring.
Rnd 1: sc in each ch around. (12)
Rnd 2: sc in each st around. (12)

Right Mitt
Work as Left Mitt.

Foot
Work even until the foot measures 18 cm.
"""


def test_a_colour_line_below_a_heading_is_no_part_of_its_own() -> None:
    """Body and two wings, each with its colour first; a fault is told in the part so named."""
    plan = plan_of(TERN)
    assert [(part.name, part.copies) for part in plan.parts] == [
        ("Body", 1),
        ("Wings", 2),
        ("Wings", 2),
    ]
    assert plan.parts[0].rows[0].written == "With grey."
    assert plan.parts[1].rows[1].colour == "white"
    assert any("11" in row.warning for row in plan.parts[1].rows)


def test_a_line_of_the_list_is_no_part() -> None:
    """ "Stitch markers" and the sentence below it are no first round; the sentence is a note."""
    plan = plan_of(TERN)
    assert "Stitch markers" in [item.text for item in plan.gather]
    assert any("spiral" in note for note in plan.notes)


def test_words_below_a_heading_are_read_in_their_place() -> None:
    """The right mitt and the foot hold no row of their own, and are parts all the same; the mitt
    has the rows of the part right before, which it asks for."""
    perform(
        """
        silent: foot
        maker: go to part
        program: left mitt; two, right mitt; three, foot
        maker: right mitt
        program: work as left mitt
        maker: next
        program: chain twelve
        maker: row done
        maker: row done
        place: right mitt. round two
        maker: row done
        program: foot
        program: eighteen centimetres
        """,
        Play(plan_of(MITTS)),
    )


def test_yarns_below_one_label_and_other_things_are_gathered() -> None:
    """Each colour with what all have in common; buttons and ribbon from the other line."""
    assert [item.text for item in plan_of(MITTS).gather] == [
        "DK cotton, 50 g balls, 2 balls Shell (MC)",
        "DK cotton, 50 g balls, 1 ball Kelp (CC1)",
        "Hook: 4 mm",
        "3 buttons",
        "ribbon, 1 m",
    ]


NEWT = """Dock Newt

MATERIALS
• Aran weight yarn in sand
• 3 mm crochet hook
• 8 mm safety eyes
• stitch marker, yarn needle

HEAD (sand yarn)
Rnd 1: 6 sc in a magic ring [6]
Rnd 2: inc in all 6 st [12]
Rnd 3: sc in all 12 st [12]

LEG (make 2, sand yarn)
Rnd 1: 5 sc in a magic ring [5]
Rnd 2: sc in all 5 st [5]
"""


def test_what_a_heading_adds_in_brackets_is_no_part_of_its_name() -> None:
    """The maker says "head" and "second leg"; the yarn is still told when the part begins."""
    perform(
        """
        program: head, sand yarn
        maker: row done
        maker: row done
        program: this is the last round of the head.
        maker: go to part
        program: one, head; two, first leg; three, second leg
        maker: second leg
        program: sand yarn, the second of two
        """,
        Play(plan_of(NEWT)),
    )


def test_eyes_told_by_their_size_are_no_tool_and_bullets_are_no_words() -> None:
    """An eight millimetre eye is no hook; nothing of the list is read with the notes."""
    plan = plan_of(NEWT)
    kinds = {item.text: item.kind for item in plan.gather}
    assert kinds["8 mm safety eyes"] == "notion"
    assert plan.notes == ()


REED = """Reed Cloth

MATERIALS
Cotton (100 g / 300 m per skein): 3 skeins
4 mm hook
Removable markers

NOTES
Ch 3 at beginning of row counts as first dc.

FRONT
Ch 12.
Row 1: Dc in 4th ch from hook and in each ch across, turn. (10 dc)
Row 2: Ch 3, dc in next dc and in each dc across, turn. (10 dc)
First shoulder
Row 1: Ch 3, dc in next 3 dc, turn. (4 dc)

BACK
Work same as Front.
"""


def test_notes_below_a_list_are_notes_and_a_part_quoted_over_others_is_named() -> None:
    """The last thing of a list is no heading of the notes below it. The back asks for the front,
    which has shoulders of its own behind it: it is told where to hear it, nothing is guessed."""
    plan = plan_of(REED)
    assert [part.name for part in plan.parts] == ["FRONT", "First shoulder", "BACK"]
    assert plan.notes == ("Ch 3 at beginning of row counts as first dc.",)
    told = [notice.text for notice in plan.parts[-1].rows[0].notices]
    assert told[0].startswith("The rows of the front are not read out here")


def test_yarns_with_one_word_in_common_are_gathered_each_with_its_letter() -> None:
    """ "Worsted yarn, 100 g navy (A), 50 g gold (B)" are two; colour B is told as gold."""
    text = "Quay Cowl\n\nMaterials: worsted yarn, 100 g navy (A), 50 g gold (B); 5 mm needles\n\n"
    text += (
        "With A, cast on 12 sts.\nRow 1: K. (12 sts)\nRow 2: P. (12 sts)\nChange to B.\nRow 3: K.\n"
    )
    plan = plan_of(text)
    yarns = [item.text for item in plan.gather if item.kind == "yarn"]
    assert yarns == ["worsted yarn, 100 g navy (A)", "worsted yarn, 50 g gold (B)"]
    told = [one.text for row in plan.parts[0].rows for one in row.notices if one.kind == "colour"]
    assert told[-1].startswith("Colour change ahead: gold, colour B, comes")
