"""Speaking: mixer, player, renderer, voice and chimes, opened and closed as one."""

from __future__ import annotations

from collections.abc import Mapping

from reader.devices.chime_player import MixedChimes, Notes
from reader.devices.mixer import Mixer
from reader.devices.player import Player
from reader.devices.ports import Push
from reader.devices.renderer import Renderer
from reader.devices.voice import MixedVoice


class Speaking:
    """What the program is heard by: `voice` and `chimes` keep the ports, `played` is the echo's
    reference.
    """

    def __init__(
        self,
        push: Push,
        chimes: Mapping[str, Notes],
        voice: str = "",
        device: str | int | None = None,
    ) -> None:
        self.mixer = Mixer()
        self.played = self.mixer.heard
        self.player = Player(self.mixer, push, device)
        self.renderer = Renderer(voice)
        self.voice = MixedVoice(self.renderer, self.mixer, push)
        self.chimes = MixedChimes(self.mixer, chimes)
        self.player.changed = self.voice.speaker_changed

    def open(self) -> None:
        """Opens the speaker; raises DeviceUnavailable with one sentence, and speaks once it can.

        The renderer's process starts meanwhile, so that the first words do not wait for it.
        """
        self.voice.warm()
        self.player.open()

    def close(self) -> None:
        """Silence; everything is given back; harmless twice."""
        self.voice.close()
        self.player.close()
