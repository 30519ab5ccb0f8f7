"""The speaker is pulled out: texts still end, and after it is back the voice is heard from it
again.
"""

from __future__ import annotations

import queue
import time

import pytest

from reader.devices.ports import DeviceBack, DeviceLost, SpeechEnded
from reader.devices.speaking import Speaking
from tests.soundcard.rig import SoundCard, first_loud

pytestmark = pytest.mark.soundcard
TEXT = "Slip stitch to the first stitch, then chain one and turn the work. "


def unload(card: SoundCard, part: str) -> None:
    """Takes out the module whose line holds this."""
    modules = card.pactl("list", "short", "modules").splitlines()
    card.pactl("unload-module", next(line.split("\t")[0] for line in modules if part in line))


def load_sink(card: SoundCard, name: str) -> None:
    """Plugs a speaker in."""
    words = ["load-module", "module-null-sink", f"sink_name={name}"]
    card.pactl(*words, "rate=48000", "channels=1", "norewinds=1")


def ready(events: queue.Queue[object]) -> Speaking:
    """Open, and the renderer warm."""
    speaking = Speaking(events.put, {})
    speaking.open()
    time.sleep(0.4)
    return speaking


def test_a_speaker_replaced_by_another(card: SoundCard) -> None:
    """The sound server moves the stream elsewhere:
    the text ends as if nothing had been, then returns.
    """
    events: queue.Queue[object] = queue.Queue()
    speaking = ready(events)
    speaking.voice.say(TEXT, 1)
    time.sleep(0.5)
    unload(card, "sink_name=spk")
    assert events.get(timeout=8) == SpeechEnded(1, True, 13)
    load_sink(card, "spk")
    card.pactl("set-default-sink", "spk")
    time.sleep(0.3)
    with card.heard_at("spk.monitor") as heard:
        speaking.voice.say("Here again.", 2)
        assert events.get(timeout=5) == SpeechEnded(2, True, 2)
        time.sleep(0.3)
    assert first_loud(heard.samples()) is not None
    speaking.close()


def test_no_speaker_is_left_at_all(card: SoundCard) -> None:
    """Nothing to play to: lost once, the text ended, and back once a speaker is plugged in."""
    events: queue.Queue[object] = queue.Queue()
    speaking = ready(events)
    speaking.voice.say(TEXT * 3, 1)
    time.sleep(0.5)
    unload(card, "module-remap-source")
    unload(card, "sink_name=micin")
    unload(card, "sink_name=spk")
    gone = [events.get(timeout=4) for _ in range(2)]
    assert {type(event) for event in gone} == {SpeechEnded, DeviceLost}
    load_sink(card, "spk")
    assert events.get(timeout=5) == DeviceBack("speaker")
    with card.heard_at("spk.monitor") as heard:
        speaking.voice.say("Here again.", 2)
        assert events.get(timeout=5) == SpeechEnded(2, True, 2)
        time.sleep(0.3)
    assert first_loud(heard.samples()) is not None
    assert events.empty()
    speaking.close()
