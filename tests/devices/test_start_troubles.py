"""What is missing at the start is told once, behind the first words, or at once where none are
heard.
"""

from __future__ import annotations

from reader.app.troubles import Troubles
from reader.devices.ports import DeviceBack, DeviceLost, SpeechEnded

LOST = DeviceLost("microphone", "There is no microphone.")


def test_a_trouble_waits_for_the_first_words_heard_to_their_end() -> None:
    """Words that were cut off are no end: what cut them off is being answered."""
    told: list[object] = []
    troubles = Troubles(told.append)
    troubles.add(LOST)
    troubles.push(DeviceBack("speaker"))
    troubles.push(SpeechEnded(1, complete=False))
    assert LOST not in told
    troubles.push(SpeechEnded(2, complete=True))
    assert told[-2:] == [SpeechEnded(2, complete=True), LOST]
    troubles.push(SpeechEnded(3, complete=True))
    assert told.count(LOST) == 1


def test_where_nothing_sounds_it_is_told_at_once() -> None:
    """Both what came before and what comes later."""
    told: list[object] = []
    troubles = Troubles(told.append)
    troubles.add(LOST)
    troubles.at_once()
    assert told == [LOST]
    troubles.add(DeviceLost("recogniser", "There is no ear."))
    assert len(told) == 2


def test_each_waits_for_the_one_before_it() -> None:
    """Two troubles are told behind two texts; where nothing is heard, texts cut off end as well."""
    told: list[object] = []
    troubles = Troubles(told.append)
    second = DeviceLost("speaker", "There is no speaker.")
    troubles.add(second)
    troubles.add(LOST)
    troubles.unheard()
    troubles.push(SpeechEnded(1, complete=False))
    assert told == [SpeechEnded(1, complete=False), second]
    troubles.push(SpeechEnded(2, complete=False))
    assert told[2:] == [SpeechEnded(2, complete=False), LOST]


def test_a_chosen_voice_that_is_not_there_is_told_behind_the_words() -> None:
    """The usual voice speaks meanwhile, so nothing is broken into."""
    told: list[object] = []
    troubles = Troubles(told.append)
    missing = DeviceLost("chosen voice", "The voice is not there.")
    troubles.push(missing)
    assert told == []
    troubles.push(SpeechEnded(1, complete=True))
    assert told == [SpeechEnded(1, complete=True), missing]
