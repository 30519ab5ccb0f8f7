"""Imports point to earlier rooms only, the core touches no device, each outside library has one
home.
"""

from __future__ import annotations

import ast

import pytest

from tests.architecture.source import Module, imports, modules

STAGE = {
    "terms": 0,
    "text": 1,
    "pattern": 2,
    "counts": 3,
    "plan": 4,
    "commands": 5,
    "listening": 5,
    "session": 6,
    "wording": 7,
    "exports": 8,
    "devices": 9,
    "screens": 9,
    "app": 10,
}
EDGE = {"devices", "screens", "app"}
EVERYWHERE = {"reader.text.span"}
"""Shapes so small that any later room may name them; span stands in an early room anyway."""

OUTSIDE_WORLD = {
    "os",
    "io",
    "pathlib",
    "socket",
    "subprocess",
    "threading",
    "multiprocessing",
    "asyncio",
    "time",
    "random",
    "secrets",
    "tempfile",
    "shutil",
    "urllib",
    "http",
    "queue",
    "logging",
}
HOMES = {
    "vosk": {"reader.devices"},
    "sounddevice": {"reader.devices"},
    "pyttsx3": {"reader.devices"},
    "pydantic": {"reader.devices"},
    "platformdirs": {"reader.devices"},
    "textual": {"reader.screens"},
    "rich": {"reader.screens"},
    "pypdf": {"reader.devices"},
    "docx": {"reader.devices"},
}


def backward(module: Module) -> list[str]:
    """Imports of a module that point to a later room or to a neighbour of the same stage."""
    here = STAGE.get(module.room)
    if here is None:
        return []
    wrong = []
    for name in imports(module.tree):
        parts = name.split(".")
        if parts[0] != "reader" or len(parts) < 2 or parts[1] == module.room:
            continue
        there = STAGE.get(parts[1])
        if there is not None and there >= here and name not in EVERYWHERE:
            wrong.append(f"{module.name} imports {name}")
    return wrong


def test_a_backward_import_is_seen() -> None:
    """The check below is worth something: a planted backward import is reported."""
    text = "from reader.session.state import State"
    planted = Module("reader.counts.planted", modules()[0].path, text, ast.parse(text))
    assert backward(planted)


def test_imports_point_to_earlier_rooms() -> None:
    """No room knows a later one."""
    assert [line for module in modules() for line in backward(module)] == []


def test_every_room_has_a_stage() -> None:
    """A new room is placed in the order before it is used."""
    rooms = {m.room for m in modules() if m.room and (m.path.parent.parent.name == "reader")}
    assert rooms - set(STAGE) == set()


def test_the_core_touches_nothing_outside() -> None:
    """Rooms before the edge read no file, no clock, no thread, no chance."""
    wrong = [
        f"{module.name} imports {name}"
        for module in modules()
        if module.room and module.room not in EDGE
        for name in imports(module.tree)
        if name.split(".")[0] in OUTSIDE_WORLD
    ]
    assert wrong == []


@pytest.mark.parametrize("library", sorted(HOMES))
def test_each_library_has_one_home(library: str) -> None:
    """An outside library is imported in its own room only."""
    wrong = [
        module.name
        for module in modules()
        if any(name.split(".")[0] == library for name in imports(module.tree))
        and not any(module.name.startswith(home) for home in HOMES[library])
    ]
    assert wrong == []


def test_imports_are_written_in_full() -> None:
    """No relative imports."""
    assert [m.name for m in modules() if any(n.startswith(".") for n in imports(m.tree))] == []
