"""Human speech out of Debian's packages: voices of three games and of a telephone exchange.

Each function gives clips, one after the other: a name that never changes and its sound, 16 kHz. The
folder is where the packages were unpacked (`dpkg -x PACKAGE FOLDER`; nothing is installed):

- beneath-a-steel-sky: sky.dnr is a count and entries of eight bytes (number, place, size), sky.dsk
  the files. Files 50000 to 59999 are speech: 22 bytes, then unsigned bytes, 11,025 Hz, packed.
- flight-of-the-amazon-queen: queen.1c begins with a table; files *.SB are speech, MP3, 11,025 Hz.
- drascula: files *.ALS are speech, unsigned bytes, 11,025 Hz.
- asterisk-core-sounds-en-wav: one speaker, WAV of 8 kHz.

The layouts of the games' files were worked out from their bytes. Terms: see NOTICE.
"""

from __future__ import annotations

import io
import struct
from collections.abc import Iterator
from pathlib import Path

import numpy as np

from models.recipe.rnc import unpacked
from models.recipe.voices import RATE_HZ, Sound, at_16k

GAME_HZ = 11_025
SPOKEN = range(50_000, 60_000)
PREFACE = 22
"""Bytes before the sound in a file of the first game."""
SHORTEST_S, LONGEST_S = 0.2, 28.0
LOUD = 0.7
Clip = tuple[str, Sound]


def sky(folder: Path) -> Iterator[Clip]:
    """The talk of the first game, by the numbers of its files."""
    names = next(folder.rglob("sky.dnr")).read_bytes()
    files = next(folder.rglob("sky.dsk")).read_bytes()
    for at in range(4, 4 + 8 * struct.unpack("<I", names[:4])[0], 8):
        number = int.from_bytes(names[at : at + 2], "little")
        place = int.from_bytes(names[at + 2 : at + 5], "little")
        size = int.from_bytes(names[at + 5 : at + 8], "little") & 0x3FFFFF
        place = (place & 0x7FFFFF) * (16 if place >> 23 else 1)
        if number in SPOKEN:
            own = files[place : place + size]
            packed = own[PREFACE : PREFACE + 3] == b"RNC"
            yield f"sky{number}", of_bytes(unpacked(own[PREFACE:]) if packed else own[PREFACE:])


def queen(folder: Path) -> Iterator[Clip]:
    """The talk of the second game, by the names of its files; what is no sound is passed over."""
    import soundfile

    everything = next(folder.rglob("queen.1c")).read_bytes()
    for at in range(15, 15 + 21 * int.from_bytes(everything[13:15], "big"), 21):
        name = everything[at : at + 12].split(b"\0")[0].decode("ascii", "replace")
        _, place, size = struct.unpack(">BII", everything[at + 12 : at + 21])
        if name.endswith(".SB"):
            try:
                sound, rate = soundfile.read(
                    io.BytesIO(everything[place : place + size]), dtype="float32"
                )
            except soundfile.LibsndfileError:
                continue
            yield "que" + name.removesuffix(".SB"), at_16k(np.asarray(sound, np.float32), rate)


def drascula(folder: Path) -> Iterator[Clip]:
    """The talk of the third game, by the names of its files."""
    for path in sorted(folder.rglob("*.ALS")):
        yield "dra" + path.stem, of_bytes(path.read_bytes())


def exchange(folder: Path) -> Iterator[Clip]:
    """The announcements of the telephone exchange, by the names of their files."""
    import soundfile

    for path in sorted(folder.rglob("en_US_f_Allison/**/*.wav")):
        sound, rate = soundfile.read(path, dtype="float32")
        yield f"ast{path.parent.name}-{path.stem}", at_16k(np.asarray(sound, np.float32), rate)


SOURCES = {"sky": sky, "que": queen, "dra": drascula, "ast": exchange}


def of_bytes(raw: bytes) -> Sound:
    """16 kHz sound of unsigned bytes at 11,025 Hz."""
    return at_16k((np.frombuffer(raw, np.uint8).astype(np.float32) - 128) / 128, GAME_HZ)


def clips(folder: Path, source: str) -> Iterator[Clip]:
    """The clips of one source at one level; silent, very short and very long ones are left out."""
    for name, sound in SOURCES[source](folder):
        if not SHORTEST_S <= len(sound) / RATE_HZ <= LONGEST_S:
            continue
        level = sound - sound.mean()
        loudest = float(np.abs(level).max())
        if loudest > 0.01:
            yield name, np.asarray(level * (LOUD / loudest), np.float32)
