"""What a bracket behind a label says of the row is not worked beside its words. Common practice, no
source.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern


def counts(text: str) -> list[int | None]:
    """The counts of all rows."""
    return [row.count for part in count_pattern(parse_pattern(text)).parts for row in part.rows]


REMARKS = [
    "(neck dec)", "(dec)", "(dec row)", "(RS, dec)", "(armhole decrease)", "(dec at neck edge)",
    "(dec 1)", "(1 st dec)", "(WS)", "(shape neck)",
]  # fmt: skip


@pytest.mark.parametrize("label", ["Row 3 {}: ", "Row 3: {} ", "3. {} ", "R3 {}: ", "3rd row {}: "])
@pytest.mark.parametrize("remark", REMARKS)
def test_a_remark_is_not_worked_beside_the_words(remark: str, label: str) -> None:
    form = label.format("").replace(" :", ":").replace("  ", " ").replace("3rd", "{}").replace(
        "3", "{}", 1
    )  # fmt: skip
    ends = {1: "1st", 2: "2nd", 4: "4th"} if "rd row" in label else {1: "1", 2: "2", 4: "4"}
    rows = {n: form.format(end) for n, end in ends.items()}
    text = (
        f"FRONT\n\nCh 13.\n{rows[1]}sc in 2nd ch from hook and in each ch across.\n"
        f"{rows[2]}ch 1, sc in each st across.\n{label.format(remark)}ch 1, sc in each st to last 2"
        f" sts, sc2tog.\n{rows[4]}ch 1, sc in each st across.\n"
    )
    assert counts(text)[-4:] == [12, 12, 11, 11]
