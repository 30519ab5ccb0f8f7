"""A rehearsal's script is read whole or refused with the line that is wrong."""

from __future__ import annotations

from pathlib import Path

import pytest

from reader.app.cli import main
from reader.app.rehearsal.script import Act, ScriptUnclear, parse_script


def test_acts_keep_their_order_and_line() -> None:
    """Remarks and empty lines vanish, every act knows its line."""
    acts = parse_script("# a remark\n\nmaker: next\nsays: round 2\nwait: 1.5\nleave:\n")
    assert [(a.act, a.words, a.number) for a in acts] == [
        (Act.MAKER, "next", 3),
        (Act.SAYS, "round 2", 4),
        (Act.WAIT, "1.5", 5),
        (Act.LEAVE, "", 6),
    ]


@pytest.mark.parametrize(
    "wrong", ["makker: next", "maker next", "maker:", "wait: long", "wait: -1"]
)
def test_a_wrong_line_is_named(wrong: str) -> None:
    """The sentence says which line it was."""
    with pytest.raises(ScriptUnclear, match="Line 2"):
        parse_script(f"maker: next\n{wrong}\n")


def test_a_script_that_cannot_be_followed_is_one_sentence(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """A missing script and a wrong line are told, and no traceback is shown."""
    script = tmp_path / "a.script"
    assert main(["rehearse", "--script", str(script)]) == 1
    assert "cannot be read" in capsys.readouterr().err
    script.write_text("program: hello\n")
    assert main(["rehearse", "--script", str(script)]) == 1
    assert capsys.readouterr().err.startswith("Line 1 of the script")
