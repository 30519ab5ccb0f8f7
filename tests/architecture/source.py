"""What the architecture checks look at: the package's modules, their imports, functions and
docstrings.
"""

from __future__ import annotations

import ast
from dataclasses import dataclass
from functools import cache
from pathlib import Path

PACKAGE = Path(__file__).parents[2] / "reader"


@dataclass(frozen=True)
class Module:
    """One module of the package: dotted name, path, text and syntax tree."""

    name: str
    path: Path
    text: str
    tree: ast.Module

    @property
    def room(self) -> str:
        """The room it stands in: "counts" for reader.counts.account, "" for the package itself."""
        parts = self.name.split(".")
        return parts[1] if len(parts) > 1 else ""


@cache
def modules() -> tuple[Module, ...]:
    """All modules of the package, by name."""
    found = []
    for path in sorted(PACKAGE.rglob("*.py")):
        parts = path.relative_to(PACKAGE.parent).with_suffix("").parts
        name = ".".join(parts[:-1] if parts[-1] == "__init__" else parts)
        text = path.read_text(encoding="utf-8")
        found.append(Module(name, path, text, ast.parse(text)))
    return tuple(found)


def imports(tree: ast.AST) -> tuple[str, ...]:
    """Dotted names of everything imported anywhere in a module, type-checking blocks included."""
    names = []
    for node in ast.walk(tree):
        if isinstance(node, ast.Import):
            names += [alias.name for alias in node.names]
        elif isinstance(node, ast.ImportFrom):
            names.append("." * node.level + (node.module or ""))
    return tuple(names)


def functions(tree: ast.AST) -> tuple[ast.FunctionDef | ast.AsyncFunctionDef, ...]:
    """Every function and method in a module."""
    return tuple(
        node for node in ast.walk(tree) if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef)
    )
