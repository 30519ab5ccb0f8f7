"""Whether the chain that a round begins with is a part of its first cluster, and no stitch."""

from __future__ import annotations

from collections.abc import Sequence

from reader.pattern.tree import ONE, Act, Deed, Group, Node, Repeat, Where, Work
from reader.terms.stitches import Kind, Stitch


def belongs_to_cluster(work: Work | None, body: Sequence[Node], size: int) -> bool:
    """Whether the chain before a cluster is a part of it: the round is joined to a cluster, or it
    begins with as many clusters as each pass has.
    """
    if work is not None and work.stitch.kind is Kind.GROUP and work.place.where is Where.SAME:
        # "Ch 3, shell in same space, * ch 2, shell in next shell".
        return any(isinstance(one, Repeat) and _has(work, one.body) for one in body)
    if work is None:
        return False
    if not drawn_together(work.stitch):
        return _first_of_clusters(work, body)
    joins = [one for one in body if isinstance(one, Act) and one.deed is Deed.JOIN]
    if any(work.stitch.name in one.words.lower() for one in joins):
        return True
    if work.place.where is Where.SAME and work.number in (None, ONE):
        # "Ch 4, cluster in same sp": what stands beside it in its place.
        return True
    again = next((one for one in body if isinstance(one, Repeat)), None)
    if work.stitch.parts and again is not None and _one_more(work.stitch, again.body):
        return True
    alike = [
        one.number.at(size) for one in (again.body if again is not None else ())
        if isinstance(one, Work) and one.stitch == work.stitch and one.number is not None
    ]  # fmt: skip
    return work.number is not None and work.number.at(size) > 1 and work.number.at(size) in alike


def _first_of_clusters(work: Work, body: Sequence[Node]) -> bool:
    """Whether "ch 3, dc in same sp, * ch 3, 2-dc cluster in next" begins with one of the clusters
    that its round is of: chain and stitch are the two of it.
    """
    if work.place.where is not Where.SAME or work.number not in (None, ONE):
        return False
    again = [one for one in body if isinstance(one, Repeat)]
    works = [one for one in again[0].body if isinstance(one, Work | Group)] if again else []
    pair = ((work.stitch.name, 2),)
    return bool(works) and all(
        isinstance(one, Work) and one.stitch.kind is Kind.CLUSTER and one.stitch.parts == pair
        for one in works
    )


def _has(work: Work, body: Sequence[Node]) -> bool:
    """Whether a list has the stitch of one."""
    return any(
        _has(work, one.body) if isinstance(one, Repeat)
        else isinstance(one, Work) and one.stitch == work.stitch
        for one in body
    )  # fmt: skip


def drawn_together(stitch: Stitch) -> bool:
    """Whether it is a cluster, or a group of nothing but clusters."""
    parts = [name for name, _ in stitch.parts if name != "ch"]
    return stitch.kind is Kind.CLUSTER or (bool(parts) and set(parts) <= {"cluster", "popcorn"})


def _one_more(stitch: Stitch, body: Sequence[Node]) -> bool:
    """Whether a list has such a cluster of one stitch more: "2 dc cluster, * 3 dc cluster"."""
    full = tuple((name, size + 1) for name, size in stitch.parts)
    return any(isinstance(one, Work) and one.stitch.parts == full for one in body)
