"""What was saved may be strange, and any words may come: a session or a choice never breaks."""

from __future__ import annotations

from hypothesis import given, settings
from hypothesis import strategies as some

from reader.commands.command import Ask, Command
from reader.plan import find
from reader.session.choosing import Choosing, begin_choosing, choices_said, choose
from reader.session.effects import Chosen, Say
from reader.session.events import CommandGiven, NotSure, Ticked
from reader.session.progress import from_plain, to_plain
from reader.session.start import begin
from reader.session.state import Tastes
from reader.wording.choices import shown_choice, talk_choice
from reader.wording.talk import talk
from tests.session.play import demo

PLAN = demo("harbour-lighthouse")
KEPT = to_plain(begin(PLAN, None, Tastes(), 0.0)[0])
LEAF = some.one_of(some.none(), some.booleans(), some.integers(-9, 99), some.text(max_size=5))
JSON = some.recursive(
    LEAF,
    lambda inner: some.one_of(
        some.lists(inner, max_size=4), some.dictionaries(some.text(max_size=6), inner, max_size=3)
    ),
    max_leaves=8,
)


@settings(max_examples=150, deadline=None)
@given(some.sampled_from(sorted(KEPT)), JSON)
def test_a_strange_value_in_the_saved_file_is_left_out(name: str, value: object) -> None:
    """Any one value replaced by anything: the session begins, at a place that exists."""
    state, effects = begin(PLAN, {**KEPT, name: value}, Tastes(), 0.0, 3)
    assert find.exists(PLAN, state.place)
    for one in effects:
        if isinstance(one, Say):
            assert talk(one.sayings, state)
    assert from_plain(PLAN, to_plain(state)) is not None


@settings(max_examples=80, deadline=None)
@given(
    some.lists(
        some.tuples(some.sampled_from(list(Ask)), some.integers(-2, 9), some.text(max_size=8)),
        max_size=12,
    )
)
def test_any_words_in_a_choice_choose_only_what_is_there(asked: list[tuple[Ask, int, str]]) -> None:
    """Whatever is said: what is chosen is one of the names, and was said back before."""
    state, effects = begin_choosing("size", "Cap", ("small", "2", "X-L"), Tastes())
    for ask, number, word in asked:
        before: Choosing = state
        command = Command(ask, number if ask is Ask.NUMBER else None, word)
        for event in (NotSure(word, 1.0), Ticked(2.0), CommandGiven(command, 3.0)):
            state, effects = choose(state, event)
            for one in effects:
                if isinstance(one, Say):
                    assert talk_choice(one.sayings, state)
                if isinstance(one, Chosen):
                    assert one.index == before.at
                    assert 0 <= one.index < 3
        assert choices_said(state)
        assert shown_choice(state, "").step
