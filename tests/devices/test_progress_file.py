"""Progress is saved whole or not at all, and is there again after any crash."""

from __future__ import annotations

import json
import os
import signal
import subprocess
import sys
import time
from pathlib import Path

import pytest

from reader.devices.fakes import FakeShelf
from reader.devices.ports import ProgressUnreadable, Shelf
from reader.devices.progress_file import FileShelf, read_saved

PLACE = {"part": 1, "row": 12, "marks": [{"name": "before the cap", "row": 7}]}
ROOT = Path(__file__).parents[2]


@pytest.fixture(params=["file", "fake"])
def shelf(request: pytest.FixtureRequest, tmp_path: Path) -> Shelf:
    """The real shelf and its twin keep the same promises."""
    return FileShelf(tmp_path) if request.param == "file" else FakeShelf()


def test_a_new_pattern_has_no_progress(shelf: Shelf) -> None:
    """Nothing saved is None, not an error."""
    assert shelf.load("a1") is None


def test_what_was_saved_is_there(shelf: Shelf) -> None:
    """The last save wins, and patterns do not mix."""
    shelf.save("a1", {"row": 1})
    shelf.save("b2", {"row": 5})
    shelf.save("a1", PLACE)
    assert shelf.load("a1") == PLACE
    assert shelf.load("b2") == {"row": 5}


def test_a_loaded_progress_is_a_copy(shelf: Shelf) -> None:
    """Changing what was loaded changes nothing that is kept."""
    shelf.save("a1", PLACE)
    loaded = shelf.load("a1")
    assert loaded is not None
    loaded["row"] = 99
    assert shelf.load("a1") == PLACE


@pytest.mark.parametrize("damage", [b"", b"{", b"\x00\xff" * 40, b'{"version": 1}'])
def test_a_damaged_file_gives_the_copy_before_it(tmp_path: Path, damage: bytes) -> None:
    """The save before the last is used, the damaged file is set aside, and the maker is told."""
    shelf = FileShelf(tmp_path)
    shelf.save("a1", {"row": 1})
    shelf.save("a1", {"row": 2})
    file = tmp_path / "progress" / "a1.json"
    file.write_bytes(damage)
    assert shelf.load("a1") == {"row": 1}
    assert "damaged" in shelf.notice
    assert file.with_suffix(".damaged").read_bytes() == damage
    shelf.save("a1", {"row": 3})
    assert shelf.load("a1") == {"row": 3}
    assert shelf.notice == ""


def test_damage_without_a_copy_is_one_sentence(tmp_path: Path) -> None:
    """Nothing is thrown away; the sentence names the file."""
    shelf = FileShelf(tmp_path)
    shelf.save("a1", {"row": 1})
    file = tmp_path / "progress" / "a1.json"
    file.write_text("not ours")
    with pytest.raises(ProgressUnreadable, match=r"a1\.json is damaged"):
        shelf.load("a1")
    assert file.read_text() == "not ours"


def test_a_newer_file_is_not_touched(tmp_path: Path) -> None:
    """A file of a later version is left as it is."""
    shelf = FileShelf(tmp_path)
    shelf.save("a1", {"row": 1})
    file = tmp_path / "progress" / "a1.json"
    content = json.loads(file.read_text())
    content["version"] = 99
    file.write_text(json.dumps(content))
    with pytest.raises(ProgressUnreadable, match="newer version"):
        shelf.load("a1")
    assert json.loads(file.read_text())["version"] == 99


def test_a_folder_that_cannot_be_written_is_one_sentence(tmp_path: Path) -> None:
    """Whoever runs this, root too: a file stands where the folder should be."""
    (tmp_path / "progress").write_text("in the way")
    with pytest.raises(ProgressUnreadable, match="the session goes on") as caught:
        FileShelf(tmp_path).save("a1", PLACE)
    assert str(caught.value).count(". ") == 0


@pytest.mark.skipif(os.geteuid() == 0, reason="root may write everywhere")
def test_a_read_only_folder_keeps_the_old_file(tmp_path: Path) -> None:
    """The place saved before the folder was locked is still there."""
    shelf = FileShelf(tmp_path)
    shelf.save("a1", {"row": 1})
    (tmp_path / "progress").chmod(0o500)
    try:
        with pytest.raises(ProgressUnreadable, match="permission denied"):
            shelf.save("a1", {"row": 2})
        assert shelf.load("a1") == {"row": 1}
    finally:
        (tmp_path / "progress").chmod(0o700)


def test_projects_are_listed_the_last_worked_first(tmp_path: Path) -> None:
    """What is unreadable does not hide the rest."""
    shelf = FileShelf(tmp_path)
    shelf.save("old", {"row": 1})
    (tmp_path / "progress" / "bad.json").write_text("{")
    file = tmp_path / "progress" / "old.json"
    file.write_text(file.read_text().replace('"saved_at": "2', '"saved_at": "1'))
    shelf.save("new", {"row": 2})
    assert [saved.fingerprint for saved in shelf.all_saved()] == ["new", "old"]


SAVER = """
import sys
from pathlib import Path
from reader.devices.progress_file import FileShelf
shelf = FileShelf(Path(sys.argv[1]))
row = 0
while True:
    row += 1
    shelf.save("a1", {"row": row, "weight": "x" * 20000})
    print(row, flush=True)
"""


def test_progress_survives_being_killed_at_any_moment(tmp_path: Path) -> None:
    """Killed twelve times in the middle of saving: the last announced save is always there."""
    for turn in range(12):
        child = subprocess.Popen(
            [sys.executable, "-c", SAVER, str(tmp_path)],
            stdout=subprocess.PIPE,
            text=True,
            cwd=ROOT,
            env={**os.environ, "PYTHONPATH": str(ROOT)},
        )
        assert child.stdout is not None
        child.stdout.readline()
        time.sleep(0.013 * turn)
        child.send_signal(signal.SIGKILL)
        rest = child.stdout.read().split()
        child.wait(5)
        announced = max([1, *(int(n) for n in rest if n.isdigit())])
        saved = read_saved(tmp_path / "progress" / "a1.json")
        assert saved is not None
        row = saved.progress["row"]
        assert isinstance(row, int)
        assert announced <= row <= announced + 1
