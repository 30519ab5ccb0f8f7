"""Stitches around the post in the row below, where a row names none of them: "FPdc around next dc"
over a row of FPdc and dc takes either for a dc.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from reader.counts.fabric import Below, Run, added
from reader.pattern.tree import Group, Node, Repeat, Skip, Work

POSTS = ("fp", "bp")


def posts_as_plain(below: Below, nodes: Sequence[Node]) -> Below:
    """The row below with its post stitches as plain ones; as it is where the row names any."""
    if not any(run.name.startswith(POSTS) for run in below.runs) or _names_posts(nodes):
        return below
    runs: list[Run] = []
    for run in below.runs:
        post = run.name.startswith(POSTS) and run.is_stitch
        added(runs, [replace(run, name=run.name[2:]) if post else run])
    return replace(below, runs=tuple(runs))


def _names_posts(nodes: Sequence[Node]) -> bool:
    """Whether a place of the row is a post stitch."""
    for one in nodes:
        if isinstance(one, Repeat) and _names_posts([*one.body, *one.ending]):
            return True
        if isinstance(one, Work | Skip | Group) and one.place.noun.startswith(POSTS):
            return True
    return False
