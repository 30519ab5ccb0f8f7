"""Modules and functions stay small, public things say what they give, names come from the trade."""

from __future__ import annotations

import ast
import re

from tests.architecture.source import functions, modules

MODULE_LINES = 400
FUNCTION_LINES = 40
BANNED = re.compile(r"(^|_)(utils?|helpers?|manager|handler|info|misc)($|_)", re.IGNORECASE)


def test_modules_are_short() -> None:
    """A module longer than 400 lines holds more than one idea."""
    long = {m.name: n for m in modules() if (n := len(m.text.splitlines())) > MODULE_LINES}
    assert long == {}


def test_functions_are_short() -> None:
    """A function longer than 40 lines (its docstring left out) does more than one thing."""
    long = {}
    for module in modules():
        for function in functions(module.tree):
            first = function.body[0]
            doc = ast.get_docstring(function, clean=False)
            said = (first.end_lineno or 0) - first.lineno + 1 if doc is not None else 0
            length = (function.end_lineno or 0) - function.lineno + 1 - said
            if length > FUNCTION_LINES:
                long[f"{module.name}.{function.name}"] = length
    assert long == {}


def test_modules_say_what_they_are() -> None:
    """Every module opens with a docstring."""
    assert [m.name for m in modules() if not ast.get_docstring(m.tree)] == []


def public_without_docstring() -> list[str]:
    """Public top-level functions and classes that say nothing."""
    silent = []
    for module in modules():
        for node in module.tree.body:
            named = isinstance(node, ast.FunctionDef | ast.ClassDef)
            if named and not node.name.startswith("_") and not ast.get_docstring(node):
                silent.append(f"{module.name}.{node.name}")
    return silent


def test_public_things_say_what_they_give() -> None:
    """Every public function and class has a docstring."""
    assert public_without_docstring() == []


def test_names_come_from_the_trade() -> None:
    """No catch-all names for modules, classes and functions."""
    wrong = []
    for module in modules():
        names = [module.name.rsplit(".", 1)[-1]]
        names += [
            n.name
            for n in ast.walk(module.tree)
            if isinstance(n, ast.FunctionDef | ast.AsyncFunctionDef | ast.ClassDef)
        ]
        wrong += [f"{module.name}: {name}" for name in names if BANNED.search(name)]
    assert wrong == []
