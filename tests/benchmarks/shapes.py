"""Texts of one shape and any length: what takes time in the square of its length shows in one."""

from __future__ import annotations

from collections.abc import Callable


def paragraph(length: int) -> str:
    """Rounds in one paragraph without a line's end."""
    return " ".join(f"Rnd {number}: Sc in each st around." for number in range(1, length))


def prose(length: int) -> str:
    """Knitting told in running words."""
    words = ("Knit one row.", "Work 3 rows plain.", "Increase 1 st at each end of next row.")
    return "Cast on 40 stitches. " + " ".join(words[at % 3] for at in range(length))


def remarks(length: int) -> str:
    """Crochet words, and nothing that is worked."""
    told = "The harbour is quiet; a hook and a lamp are all you need, so take your time over it."
    return "\n\n".join([told] * length)


def headings(length: int) -> str:
    """Parts with a remark and no row."""
    names = ("Left boat", "Right boat", "Mole", "Lighthouse", "Long pier")
    return "\n\n".join(f"{names[at % 5]}\n\nWorked in the evening." for at in range(length))


def long_row(length: int) -> str:
    """One row of very many instructions."""
    return "Ch 900.\nRow 1: " + ", ".join(["sc in next st, ch 2, skip 2 sts"] * length) + "."


def net(length: int) -> str:
    """Rows of loops, each into those of the row below."""
    words = "*Dc in next dc, ch 2; rep from * across, ending with dc in 3rd ch of turning ch."
    first = "Ch 62.\nRow 1: Dc in 8th ch from hook, *ch 2, skip 2 ch, dc in next ch; rep from *."
    return "\n".join([first, *(f"Row {at}: {words} Ch 5, turn." for at in range(2, length))])


def changes(length: int) -> str:
    """Rules over rows, one after the other."""
    rules = [f"Row {at}: Inc 1 st each end every 4th row 2 times." for at in range(1, length)]
    return "\n".join(["Cast on 40 sts.", *rules])


def repeats(length: int) -> str:
    """Rows called back again and again."""
    begun = "Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across. Ch 1, turn.\n"
    return begun + "\n".join("Repeat last row 2 times." for _ in range(length))


def blank_lines(length: int) -> str:
    """Nothing at all, for long."""
    return "\n" * (20 * length) + "Rnd 1: 6 sc in magic ring."


def figures(length: int) -> str:
    """Numbers in a list that has no end."""
    return "Sizes: " + "12, " * (5 * length) + "sts"


def related(length: int) -> str:
    """A round told by the one before, with very many words that lead to what differs."""
    start = "Rnd 1: 6 sc in ring.\nRnd 2: 2 sc in each st.\nRnd 3: "
    return start + "same and now but " * length + "2 between the boats and nothing else."


SHAPES: tuple[Callable[[int], str], ...] = (
    paragraph, prose, remarks, headings, long_row, net, changes, repeats, blank_lines, figures,
    related,
)  # fmt: skip
