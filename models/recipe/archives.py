"""Human speech out of Debian's packages, clip by clip; and whole folders of it packed small.

usage: python -m models.recipe.archives FOLDER OUT_DIR [--sources sky,que,...]

FOLDER is where the packages were unpacked (`dpkg -x PACKAGE FOLDER`; nothing is installed); for
the source ppl it is the folder SPEECH of `people`. Each source gives clips: a name that never
changes and its sound, 16 kHz. OUT_DIR gets blocks raw-SOURCE0.ogg, raw-SOURCE0.json (names, places,
lengths); a folder with such blocks serves as FOLDER too, which is a tenth of the size and can
travel.

- sky, beneath-a-steel-sky: sky.dnr is a count and entries of eight bytes (number, place, size),
  sky.dsk the files. Files 50000 to 59999 are speech: 22 bytes, then unsigned bytes, 11,025 Hz,
  packed.
- que, flight-of-the-amazon-queen: queen.1c begins with a table; files *.SB are speech, MP3, 11,025
  Hz.
- dra, drascula: files *.ALS are speech, unsigned bytes, 11,025 Hz.
- ast, asterisk-core-sounds-en-wav: one speaker, WAV of 8 kHz.
- gle, red, fla: units, announcers and merchants of megaglest-data, redeclipse-data, flare-game.
- ppl: the sentences and the chatter of `people` that are not held out.
- hed, war, nex, dri, tux: hedgewars-data, warzone2100-data, nexuiz-data, trigger-rally-data,
  tuxpaint-stamps-default. Their terms (GPL, GFDL) leave open what weights learned from them would
  be, so nothing is trained on them: they only show the error on people never heard.
- fra, ita, rus: asterisk-core-sounds-fr-wav, -it-wav, -ru-wav, one speaker each who is in none of
  the others; they show how often talk that is not English is taken for a command.

The layouts of the first three games' files were worked out from their bytes. Terms: see NOTICE.
"""

from __future__ import annotations

import argparse
import io
import json
import re
import struct
import zipfile
from collections.abc import Callable, Iterator
from itertools import islice
from pathlib import Path

import numpy as np

from models.recipe.measure import HELD_OUT, samples
from models.recipe.rnc import unpacked
from models.recipe.voices import BLOCK, RATE_HZ, Sound, at_16k, write_block

GAME_HZ = 11_025
SPOKEN = range(50_000, 60_000)
PREFACE = 22
"""Bytes before the sound in a file of the first game."""
SHORTEST_S, LONGEST_S = 0.2, 28.0
LOUD = 0.7
Clip = tuple[str, Sound]
Source = Callable[[Path], Iterator[Clip]]


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


def recordings(code: str, root: str, wanted: str) -> Source:
    """A source of ordinary sound files: those below the folder `root` whose path fits `wanted`."""

    def source(folder: Path) -> Iterator[Clip]:
        for base in sorted(folder.rglob(root)):
            for path in sorted(base.rglob("*")):
                name = path.relative_to(base).as_posix()
                if re.fullmatch(wanted, name):
                    yield from _read(f"{code}{name}", path.read_bytes())

    return source


def zipped(code: str, archive: str, wanted: str) -> Source:
    """A source of ordinary sound files inside a game's zip archive."""

    def source(folder: Path) -> Iterator[Clip]:
        for path in sorted(folder.rglob(archive)):
            with zipfile.ZipFile(path) as held:
                for name in sorted(held.namelist()):
                    if re.fullmatch(wanted, name):
                        yield from _read(f"{code}{name}", held.read(name))

    return source


def _read(name: str, raw: bytes) -> Iterator[Clip]:
    """The clip of a sound file's bytes; nothing where they are no sound."""
    import soundfile

    try:
        sound, rate = soundfile.read(io.BytesIO(raw), dtype="float32", always_2d=True)
    except soundfile.LibsndfileError:
        return
    yield name, at_16k(np.asarray(sound.mean(1), np.float32), rate)


def people(folder: Path) -> Iterator[Clip]:
    """What people said into their own microphones, but for what is held out."""
    held = set(HELD_OUT.read_text(encoding="utf-8").split())
    for kind in ("sentences", "chatter"):
        for path in sorted((folder / kind).glob("*.opus")):
            if f"{kind}/{path.name}" not in held:
                yield f"ppl{kind}/{path.stem}", samples(path).astype(np.float32) / 32_768


VOICES = "British|Classic|Default|HillBilly|Mobster|Pirate|Russian|Singer|Surfer"
TRAINED: dict[str, Source] = {
    "sky": sky,
    "que": queen,
    "dra": drascula,
    "ast": exchange,
    "gle": recordings("gle", "megaglest", r".*(select|ack)\d*\.(wav|ogg)"),
    "red": recordings("red", "redeclipse", r"data/sounds/(announcer|voice)/.*\.ogg"),
    "fla": recordings("fla", "fantasycore", r"soundfx/npcs/.*\.ogg"),
    "ppl": people,
}
MEASURED: dict[str, Source] = {
    "hed": recordings("hed", "hedgewars", rf"Data/Sounds/voices/({VOICES})/.*\.ogg"),
    "war": zipped("war", "base.wz", r"audio/(?!sfx|music).*\.ogg"),
    "nex": zipped("nex", "data.pk3", r"sound/(announcer/male|tutorial|player/.*/coms)/.*\.ogg"),
    "dri": zipped("dri", "data.zip", r"sounds/codriver/.*\.wav"),
    "tux": recordings("tux", "stamps", r".*_desc\.ogg"),
}
"""Sources that only measure, see above."""
ABROAD: dict[str, Source] = {
    "fra": recordings("fra", "fr_CA_f_June", r".*\.wav"),
    "ita": recordings("ita", "it_IT_m_Carlo", r".*\.wav"),
    "rus": recordings("rus", "ru_RU_f_IvrvoiceRU", r".*\.wav"),
}
"""Announcements in other languages, which only measure too."""
SOURCES = {**TRAINED, **MEASURED, **ABROAD}


def of_bytes(raw: bytes) -> Sound:
    """16 kHz sound of unsigned bytes at 11,025 Hz."""
    return at_16k((np.frombuffer(raw, np.uint8).astype(np.float32) - 128) / 128, GAME_HZ)


def blocks(folder: Path, source: str) -> Iterator[Clip]:
    """The clips of a source that was packed into this folder; none where it was not."""
    import soundfile

    for path in sorted(folder.glob(f"raw-{source}*.json")):
        sound = soundfile.read(path.with_suffix(".ogg"), dtype="float32")[0]
        for name, at, length in json.loads(path.read_text(encoding="utf-8")):
            yield name, np.asarray(sound[at : at + length], np.float32)


def clips(folder: Path, source: str) -> Iterator[Clip]:
    """The clips of one source at one level; silent, very short and very long ones are left out."""
    of_blocks = next(iter(folder.glob(f"raw-{source}*.json")), None) is not None
    for name, sound in (blocks if of_blocks else _named)(folder, source):
        if not SHORTEST_S <= len(sound) / RATE_HZ <= LONGEST_S:
            continue
        level = sound - sound.mean()
        loudest = float(np.abs(level).max())
        if loudest > 0.01:
            yield name, np.asarray(level * (LOUD / loudest), np.float32)


def _named(folder: Path, source: str) -> Iterator[Clip]:
    return SOURCES[source](folder)


def main() -> None:
    """Packs the clips as they are and says how many there are."""
    ask = argparse.ArgumentParser()
    ask.add_argument("folder", type=Path)
    ask.add_argument("out", type=Path)
    ask.add_argument("--sources", default=",".join(one for one in SOURCES if one != "ppl"))
    want = ask.parse_args()
    want.out.mkdir(parents=True, exist_ok=True)
    for source in want.sources.split(","):
        found, count, length, block = clips(want.folder, source), 0, 0, 0
        while part := list(islice(found, BLOCK)):
            at, rows = 0, []
            for name, sound in part:
                rows.append([name, at, len(sound)])
                at += len(sound) + RATE_HZ // 10
            write_block(want.out, f"raw-{source}{block}", [sound for _, sound in part], rows)
            count, length, block = count + len(part), length + at, block + 1
        print(f"{source}: {count} clips, {length / RATE_HZ / 3600:.2f} h", flush=True)


if __name__ == "__main__":
    main()
