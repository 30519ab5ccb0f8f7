"""The rehearsal with the real recogniser and the real voice: it can succeed, and it can fail."""

from __future__ import annotations

import shutil
from pathlib import Path

import pytest

from reader.app import cli

needs_voices = pytest.mark.skipif(
    not (shutil.which("flite") and shutil.which("espeak-ng")), reason="needs flite and espeak-ng"
)


@needs_voices
def test_a_word_that_is_none_of_ours_fails_the_rehearsal(tmp_path, capsys) -> None:
    """A script with a wrong word ends with status 1 and names the line."""
    script = tmp_path / "wrong.script"
    script.write_text("maker: banana boat\n")
    status = cli.main(
        ["rehearse", "--fast", "--script", str(script), "--out", str(tmp_path / "out")]
    )
    said = capsys.readouterr()
    assert status == 1
    assert "line 1" in said.out + said.err
    assert "understood 0" in said.out + said.err


@needs_voices
def test_a_spoken_word_moves_the_place(tmp_path: Path, capsys) -> None:
    """ "next", spoken by flite and heard by the shipped ear, leads to round two; both sides are
    kept.
    """
    script = tmp_path / "right.script"
    script.write_text("maker: next\nsays: round two\n")
    out = tmp_path / "out"
    status = cli.main(["rehearse", "--fast", "--script", str(script), "--out", str(out)])
    said = capsys.readouterr()
    assert status == 0, said.out + said.err
    assert "understood 1, wrong 0" in said.out
    assert (out / "conversation.wav").stat().st_size > 32_000
