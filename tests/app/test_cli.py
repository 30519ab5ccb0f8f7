"""The command line: what it says for every way of being called."""

from __future__ import annotations

import subprocess
import sys

import pytest

from reader.app import cli


def test_alone_it_says_how_to_begin(capsys: pytest.CaptureFixture[str]) -> None:
    """`reader` alone is answered with a help a screen reader can read, and status 0."""
    assert cli.main([]) == 0
    said = capsys.readouterr().out
    assert "reader work" in said
    assert all(line.endswith((".", ":")) for line in said.splitlines())


def test_unknown_word_is_one_sentence(capsys: pytest.CaptureFixture[str]) -> None:
    """A word it does not know gives one sentence on stderr and status 2."""
    assert cli.main(["wrok"]) == 2
    said = capsys.readouterr()
    assert said.out == ""
    assert said.err.count("\n") == 1
    assert "wrok" in said.err


def test_a_file_name_alone_is_answered_with_the_verb(tmp_path, capsys) -> None:
    """`reader FILE` says the words that would have worked."""
    pattern = tmp_path / "mat.txt"
    pattern.write_text("Rnd 1: 6 sc. (6)")
    assert cli.main([str(pattern)]) == 2
    assert f"reader work {pattern}" in capsys.readouterr().err


@pytest.mark.parametrize("verb", sorted(cli.VERBS))
def test_every_verb_has_its_own_help(verb: str, capsys: pytest.CaptureFixture[str]) -> None:
    """Each verb's module exists and answers --help with status 0."""
    assert cli.main([verb, "--help"]) == 0
    assert f"reader {verb}" in capsys.readouterr().out


def test_the_short_help_starts_without_sound_or_screen() -> None:
    """`reader` alone imports neither numpy nor textual nor vosk, so that it answers at once."""
    code = (
        "import sys; from reader.app.cli import main; main([]);"
        "print([m for m in ('numpy', 'textual', 'vosk', 'pyttsx3') if m in sys.modules])"
    )
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, timeout=20)
    assert done.stdout.splitlines()[-1] == "[]"
