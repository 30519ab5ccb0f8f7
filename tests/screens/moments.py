"""Moments: what may have to be shown, invented ones by name and any others by chance."""

from __future__ import annotations

from hypothesis import strategies as st

from reader.wording.shown import Ear, Shown

READY = (
    ("space", "next"),
    ("b", "back"),
    ("r", "again"),
    ("w", "where am I"),
    ("h", "how many"),
    ("p", "pause"),
    ("f1", "help"),
)

TOWER = Shown(
    title="Harbour Lighthouse Doorstop",
    part="Tower",
    row="Round 4",
    passes="pass 2 of 3",
    step="Single crochet in each of the next eight stitches",
    brief="8 single crochet",
    done=9,
    total=27,
    heard="next",
    notices=("After round 4, change to red.",),
    ready=READY,
)

_words = st.text(max_size=40)
ANY = st.builds(
    Shown,
    title=_words,
    part=_words,
    row=_words,
    passes=_words,
    step=st.text(max_size=300),
    brief=_words,
    done=st.none() | st.integers(-5, 10**6),
    total=st.none() | st.integers(-5, 10**6),
    counted=st.sampled_from(["stitches", "shells"]),
    ear=st.sampled_from(Ear),
    heard=_words,
    question=st.just("") | _words,
    answer=_words,
    notices=st.lists(_words, max_size=3).map(tuple),
    trouble=st.lists(_words, max_size=2).map(tuple),
    ready=st.just(READY) | st.lists(st.tuples(_words, _words), max_size=9).map(tuple),
)
