"""Respond: (state, event) -> (state, effects). The only place where a session changes.

A command is looked up by what the session waits for; what is said comes out as sayings, never as
sentences. Every move is saved before the next words. An event that makes no sense now changes
nothing but the time.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from reader.commands.command import Ask, Command
from reader.commands.phrases import BY_ASK
from reader.plan.step import Grain
from reader.session import (
    answering,
    asking,
    between,
    checking,
    counting,
    explaining,
    gathering,
    gauging,
    marking,
    moving,
    noting,
    timing,
)
from reader.session.effects import (
    Chime,
    Close,
    Effect,
    KeepTastes,
    Listen,
    Save,
    Saying,
    SetVoice,
    Show,
    StopTalking,
)
from reader.session.events import (
    CommandGiven,
    DeviceCame,
    DeviceWent,
    Event,
    KeyUnknown,
    NotSure,
    TalkEnded,
    Ticked,
)
from reader.session.listening import phrases_for
from reader.session.speaking import Out, quiet, say
from reader.session.state import MISSES, Mode, State, Words

Answer = Callable[[State, Command], Out]

ALWAYS: dict[Ask, Answer] = {
    Ask.NEXT: moving.next_step,
    Ask.AGAIN: answering.again,
    Ask.BACK: moving.back,
    Ask.WHERE: answering.where,
    Ask.HOW_MANY: answering.how_many,
    Ask.AFTER_THIS: answering.after_this,
    Ask.WHOLE_ROW: answering.whole_row,
    Ask.AS_WRITTEN: answering.as_written,
    Ask.SPELL: answering.spelled,
    Ask.EXPLAIN: explaining.explained,
    Ask.WHICH_STITCH: explaining.which,
    Ask.LAST_TIME: answering.last_done,
    Ask.HOW_LONG: answering.how_long,
    Ask.NOTE: noting.begin,
    Ask.READ_NOTES: noting.read,
    Ask.PATTERN_NOTES: answering.pattern_notes,
    Ask.PACE: timing.switched,
    Ask.MORE: asking.more_words,
    Ask.WHAT_CAN_I_SAY: answering.what_can_i_say,
    Ask.ROW_DONE: moving.row_done,
    Ask.ROW_START: moving.row_start,
    Ask.UNDO: moving.undo,
    Ask.MARK: marking.put_mark,
    Ask.LIFELINE: marking.put_lifeline,
    Ask.GO_TO_MARK: marking.to_mark,
    Ask.BY_ONE: counting.by,
    Ask.BY_FIVE: counting.by,
    Ask.BY_TEN: counting.by,
    Ask.GO_TO_ROW: asking.which_row,
    Ask.GO_TO_PART: asking.which_part,
    Ask.RIP_BACK: asking.rip_to,
    Ask.I_HAVE: checking.begin,
    Ask.NUMBER: asking.number_given,
    Ask.WORD: asking.word_given,
    Ask.START_OVER: asking.confirm,
    Ask.FINISH_TODAY: asking.confirm,
    Ask.YES: asking.yes,
    Ask.NO: asking.no,
    Ask.COUNT_ALONG: counting.begin,
    Ask.MATERIALS: gathering.begin,
    Ask.GAUGE: gauging.begin,
    Ask.YARN_LEFT: gauging.yarn,
}
"""What each request does while a step waits, and in every mode that does not say otherwise."""


COUNTED = (Ask.NUMBER, Ask.NEXT, Ask.UNDO)
"""What counts while the maker counts along."""


def respond(state: State, event: Event) -> Out:
    """The next state and what is to be done, in order."""
    if not isinstance(event, TalkEnded | Ticked):
        state = replace(state, now_s=max(state.now_s, event.now_s))
    if isinstance(event, CommandGiven):
        return command_given(state, event)
    if isinstance(event, NotSure):
        return not_sure(state, event)
    if isinstance(event, TalkEnded):
        return replace(state, talking=state.talking and event.number != state.said), ()
    if isinstance(event, Ticked):
        return timing.time_went(replace(state, now_s=max(state.now_s, event.now_s)))
    if isinstance(event, KeyUnknown):
        finished = state.mode is Mode.FINISHED
        return (state, ()) if finished else say(state, Saying("no such key", words=event.key))
    if isinstance(event, DeviceWent):
        if event.device in state.lost:
            return state, ()
        # What the news breaks into is said again after it, so that no step is lost to it.
        broken_into = state.last if state.talking else ()
        return say(
            replace(state, lost=(*state.lost, event.device)),
            Saying("device lost", words=event.sentence),
            *broken_into,
        )
    if isinstance(event, DeviceCame):
        if event.device not in state.lost:
            return state, ()
        left = tuple(one for one in state.lost if one != event.device)
        return say(replace(state, lost=left), Saying("device back", words=event.device))
    return state, ()


def heard_words(command: Command, by_voice: bool) -> str:
    """What the screen shows as heard: the maker's words, nothing for a key."""
    if not by_voice:
        return ""
    words = BY_ASK.get(command.ask)
    return command.word or (words.phrases[0] if words is not None else "")


def command_given(state: State, event: CommandGiven) -> Out:
    """A command of the maker's."""
    command = event.command
    state = replace(
        state, misses=0, heard=heard_words(command, event.by_voice), by_voice=event.by_voice
    )
    chime: tuple[Effect, ...] = (Chime("heard"),) if event.by_voice else ()
    if state.mode is Mode.FINISHED:
        return state, ()
    if state.mode is Mode.PAUSED and command.ask not in (
        Ask.CARRY_ON,
        Ask.FINISH_TODAY,
        Ask.WHERE,
        Ask.YES,
        Ask.NO,
    ):
        if event.by_voice:
            return state, ()
        state = replace(state, mode=Mode.STEP)
    if state.deaf and event.by_voice:
        return state, ()
    if state.mode is Mode.COUNTING and command.ask in COUNTED:
        after, effects = counting.counted(state, command)
    elif state.mode is Mode.GATHER and command.ask in (Ask.YES, Ask.NO, Ask.EXPLAIN):
        after, effects = gathering.answered(state, command)
    else:
        after, effects = _answer(state, command)
    if (state.mode is Mode.COUNTING) != (after.mode is Mode.COUNTING) and Save() not in effects:
        # Whether the maker counts along is kept too: else a next after a restart would mislead.
        effects = (Save(), *effects)
    if state.talking and not any(isinstance(one, StopTalking) for one in effects):
        return replace(after, talking=False), (StopTalking(), *chime, *effects)
    return after, (*chime, *effects)


def _answer(state: State, command: Command) -> Out:
    state, command = between.meant(state, command)
    ask = command.ask
    if state.mode is Mode.MORE and ask not in (Ask.NO, Ask.MORE, Ask.AGAIN, Ask.WORD):
        state = replace(state, mode=Mode.STEP)
    if ask is Ask.HUSH:
        return quiet(state)
    if ask in (Ask.SLOWER, Ask.FASTER, Ask.LOUDER, Ask.SOFTER):
        return voice_changed(state, ask)
    if ask in (Ask.SMALLER_STEPS, Ask.BIGGER_STEPS):
        return grain_changed(state, ask)
    if ask in (Ask.FULL_WORDS, Ask.SHORT_WORDS, Ask.COUNT_ONLY):
        words = {
            Ask.FULL_WORDS: Words.FULL,
            Ask.SHORT_WORDS: Words.SHORT,
            Ask.COUNT_ONLY: Words.COUNT,
        }[ask]
        changed = replace(state, tastes=replace(state.tastes, words=words))
        return say(changed, Saying("words", words=words.value), before=(KeepTastes(),))
    if ask is Ask.PAUSE:
        return say(replace(state, mode=Mode.PAUSED), Saying("paused"))
    if ask is Ask.CARRY_ON:
        return carry_on(state)
    if ask is Ask.STOP_LISTENING:
        return say(replace(state, deaf=True), Saying("deaf"), after=(Listen(False),))
    answer = ALWAYS.get(ask)
    return answer(state, command) if answer else (state, ())


def carry_on(state: State) -> Out:
    """Back to work after a pause, or listening again."""
    on: tuple[Effect, ...] = (Listen(True),) if state.deaf else ()
    state = replace(state, mode=Mode.STEP, deaf=False, step_since_s=state.now_s, pending=None)
    return say(state, Saying("carry on"), Saying("step", state.place), before=on)


def voice_changed(state: State, ask: Ask) -> Out:
    """Slower, faster, louder, softer."""
    tastes = state.tastes
    rate = tastes.rate + {Ask.SLOWER: -20, Ask.FASTER: 20}.get(ask, 0)
    volume = tastes.volume + {Ask.SOFTER: -0.15, Ask.LOUDER: 0.15}.get(ask, 0.0)
    tastes = replace(
        tastes, rate=max(80, min(500, rate)), volume=round(max(0.1, min(2.0, volume)), 2)
    )
    changed = replace(state, tastes=tastes)
    return say(
        changed,
        Saying("voice", words=ask.value),
        before=(KeepTastes(), SetVoice(tastes.rate, tastes.volume)),
    )


def grain_changed(state: State, ask: Ask) -> Out:
    """Smaller or bigger steps; the place stays."""
    order = (Grain.GROUP, Grain.PHRASE, Grain.ROW)
    at = order.index(state.tastes.grain) + (1 if ask is Ask.BIGGER_STEPS else -1)
    if not 0 <= at < len(order):
        return say(state, Saying("grain limit", words=state.tastes.grain.value))
    changed = replace(state, tastes=replace(state.tastes, grain=order[at]))
    return say(
        changed,
        Saying("grain", words=order[at].value),
        Saying("step", state.place),
        before=(KeepTastes(),),
    )


def not_sure(state: State, event: NotSure) -> Out:
    """A soft sound, no move; where one of two answers was said, it is asked which. In a question
    the second one puts it in other words; the third in a row tells the keys, and from then on it
    stays quiet until something is understood.
    """
    if state.deaf or state.mode in (Mode.PAUSED, Mode.FINISHED):
        return state, ()
    state = replace(state, misses=state.misses + 1, heard="")
    if state.misses > MISSES:
        return state, (Show(),)
    if state.misses == MISSES:
        return say(state, Saying("missed often"), before=(Chime("not sure"),))
    asked = between.asked(state, event)
    if asked is not None and not state.between:
        return asked
    state = replace(state, between=())
    if state.misses == MISSES - 1 and state.mode in answering.QUESTIONS:
        otherwise = Saying("question put otherwise", more=phrases_for(state))
        return say(state, otherwise, before=(Chime("not sure"),))
    return state, (Chime("not sure"), Show())


def finish(state: State) -> Out:
    """The session ends; progress is saved first."""
    state = replace(state, mode=Mode.FINISHED, pending=None)
    return say(state, Saying("finished", state.place), before=(Save(),), after=(Close(),))
