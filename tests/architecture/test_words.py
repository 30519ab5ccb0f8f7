"""The repository names no machine path and no registry, and the README opens with the job."""

from __future__ import annotations

import re
import subprocess
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
FORBIDDEN = re.compile(
    r"seed docu"
    + r"ment|/wor"
    + r"k/(main|shared)|/far"
    + r"m/|pypi\.o"
    + r"rg|files\.pythonho"
    + r"sted"
)


def tracked() -> list[Path]:
    """Text files under version control, or all text files where there is no git."""
    try:
        out = subprocess.run(
            ["git", "ls-files"], cwd=ROOT, capture_output=True, text=True, check=True, timeout=20
        ).stdout
    except (OSError, subprocess.CalledProcessError):
        pytest.skip("not a git checkout")
    texts = {".py", ".md", ".toml", ".txt", ".sh", ".csv", ".json", ".tcss", ""}
    paths = [ROOT / line for line in out.splitlines()]
    return [p for p in paths if p.suffix in texts and p.is_file() and p.stat().st_size < 300_000]


def test_no_path_of_a_machine_and_no_registry_host() -> None:
    """What is committed works anywhere and reveals nothing of where it was made."""
    wrong = [
        f"{path.relative_to(ROOT)}: {found.group(0)}"
        for path in tracked()
        if (found := FORBIDDEN.search(path.read_text(encoding="utf-8", errors="ignore")))
    ]
    assert wrong == []


def test_top_level_is_the_agreed_one() -> None:
    """Nothing new lies beside the agreed folders and files."""
    agreed = {"README.md", "DEVELOPERS.md", "pyproject.toml", "reader", "models", "tests", "demos"}
    names = {p.relative_to(ROOT).parts[0] for p in tracked()}
    assert {n for n in names if not n.startswith(".")} - agreed == set()
