"""The ear does not take the program's own words for the maker's, and does not miss the maker for
them.
"""

from __future__ import annotations

import queue
import shutil
import time

import numpy as np
import pytest

from reader.devices.ear import ThreadedEar
from reader.devices.fakes import FakeRecogniser, heard
from reader.devices.mixer import Mixer
from reader.devices.ports import FRAME, RATE_HZ
from reader.devices.renderer import Renderer
from reader.devices.voice import MixedVoice


def told(own: str, just_said: str, somebody: bool) -> list[object]:
    """What comes of "next", heard while the program speaks these words."""
    events: queue.Queue[object] = queue.Queue()
    ear = ThreadedEar(FakeRecogniser([(heard("next"),)]), events.put)
    ear.know_own_voice(lambda ago_s: just_said, lambda: somebody)
    ear.mask(own)
    ear.take(np.zeros(FRAME, np.int16), 0, 0.0)
    ear.close()
    return list(events.queue)


GREETING = "Say next, when a step is done. Base. Round one."


@pytest.mark.parametrize(
    ("own", "just_said", "somebody", "count"),
    [
        (GREETING, "Say next, when", False, 0),
        (GREETING, "Say next, when", True, 1),
        (GREETING, "Base. Round one.", False, 1),
        ("", "", False, 1),
    ],
    ids=["own word", "somebody over it", "said long before", "silent"],
)
def test_our_own_word_is_dropped_and_only_that(
    own: str, just_said: str, somebody: bool, count: int
) -> None:
    """Dropped where it was just said and nobody spoke; signs beside a word make no difference."""
    assert len(told(own, just_said, somebody)) == count


def test_an_ear_that_knows_no_voice_goes_by_the_whole_text() -> None:
    """Without timing the text that is being said is all there is to go by."""
    events: queue.Queue[object] = queue.Queue()
    ear = ThreadedEar(FakeRecogniser([(heard("next"),), (heard("again"),)]), events.put)
    ear.mask(GREETING)
    for first in (0, FRAME):
        ear.take(np.zeros(FRAME, np.int16), first, 0.0)
    ear.close()
    assert [one.text for one in events.queue] == ["again"]


needs_espeak = pytest.mark.skipif(shutil.which("espeak-ng") is None, reason="needs espeak-ng")


@needs_espeak
def test_the_voice_knows_what_it_said_also_after_it_has_ended() -> None:
    """Words are known for as long as the ear may take to decide on them, not longer, and what was
    cut off before it sounded never.
    """
    mixer = Mixer()
    voice = MixedVoice(Renderer(), mixer, lambda event: None)
    voice.say("Next. Then work into the very first stitch of all.", 1)
    while voice.waiting():
        time.sleep(0.01)
    mixer.pull(RATE_HZ)
    assert "Next." in voice.just_said(1.0)
    assert "all." not in voice.just_said(1.0)
    voice.stop()
    mixer.pull(RATE_HZ)
    assert "Next." in voice.just_said(2.0)
    assert "all." not in voice.just_said(2.0)
    mixer.pull(4 * RATE_HZ)
    assert voice.just_said(1.0) == ""
    voice.close()
