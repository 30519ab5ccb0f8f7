"""Speech out of game archives: the packing, the tables of files, and where sentences are cut."""

from __future__ import annotations

import struct
from pathlib import Path

import pytest

from models.recipe.rnc import crc16, unpacked


def bits(value: int, count: int) -> str:
    """A number's bits, lowest first."""
    return format(value, f"0{count}b")[::-1]


def table(*lengths: int) -> str:
    """A table of code lengths as it stands in a stream."""
    return bits(len(lengths), 5) + "".join(bits(length, 4) for length in lengths)


def words(run: str) -> bytes:
    """Bits as 16-bit words."""
    whole = run.ljust(-(-len(run) // 16) * 16, "0")
    return b"".join(
        struct.pack("<H", int(whole[at : at + 16][::-1], 2)) for at in range(0, len(whole), 16)
    )


def packed(content: bytes) -> bytes:
    """Three bytes as they are, then a copy of six from three back."""
    run = "00" + table(1, 0, 1) + table(0, 0, 1) + table(0, 0, 0, 1) + bits(2, 16) + "1" + "1"
    assert len(run) == 75, "five words are read before the bytes that stand as they are"
    copy = "0" + "0" + "0" + "00"
    body = words(run + copy) + content[:3] + words("0")
    head = struct.pack(">IIHHBB", len(content), len(body), crc16(content), crc16(body), 0, 1)
    return b"RNC\x01" + head + body


def test_the_checksum_is_the_published_one() -> None:
    """CRC-16/ARC of "123456789" is 0xBB3D (the check value of the catalogues of CRCs)."""
    assert crc16(b"123456789") == 0xBB3D


def test_a_stream_is_unpacked() -> None:
    """Bytes that stand as they are, and a copy that overlaps itself."""
    assert unpacked(packed(b"abcabcabc")) == b"abcabcabc"


def test_a_stream_that_does_not_agree_is_refused() -> None:
    """Another checksum, another method."""
    stream = bytearray(packed(b"abcabcabc"))
    stream[12] ^= 1
    with pytest.raises(ValueError, match="do not agree"):
        unpacked(bytes(stream))
    with pytest.raises(ValueError, match="method 1"):
        unpacked(b"RNC\x02" + bytes(40))


def test_the_talk_of_a_game_is_found(tmp_path: Path) -> None:
    """One file of speech among others; it is as long at 16 kHz, and at one level."""
    pytest.importorskip("scipy")
    from models.recipe.archives import clips

    wave = bytes(128 + (40 if at // 20 % 2 else -40) for at in range(11_025))
    speech = bytes(22) + wave
    entry = struct.pack("<H", 50_001) + (0).to_bytes(3, "little")
    entry += (len(speech)).to_bytes(3, "little")
    music = struct.pack("<H", 7) + (0).to_bytes(3, "little") + (9).to_bytes(3, "little")
    (tmp_path / "sky.dnr").write_bytes(struct.pack("<I", 2) + music + entry)
    (tmp_path / "sky.dsk").write_bytes(speech)
    [(name, sound)] = clips(tmp_path, "sky")
    assert name == "sky50001"
    assert len(sound) == 16_000
    assert float(abs(sound).max()) == pytest.approx(0.7, abs=0.01)


def test_sentences_are_cut_at_pauses() -> None:
    """Two words with half a second of quiet between them become two pieces; neither is cut into."""
    pytest.importorskip("torch")
    import numpy as np

    from models.recipe.labels import LEAD, pieces, words_of

    assert " ".join(words_of("Row 24, don't 007!")) == "row twenty four don't zero zero seven"
    loud = np.full(8_000, 0.3, np.float32)
    sound = np.concatenate([loud, np.zeros(8_000, np.float32), loud])
    frame = LEAD / 16_000 / 0.03
    spans = [(round(frame + 3), round(frame + 14)), (round(frame + 36), round(frame + 47))]
    cut = [one for one in pieces("que1", ["hello", "there"], spans, sound) if one.kind == "piece"]
    assert [one.words for one in cut] == [["hello"], ["there"]]
    assert 8_000 < cut[0].end < 16_000
    assert cut[1].start == cut[0].end


def test_what_only_measures_is_never_trained_on() -> None:
    """A clip of such a source is kept whole, under a kind that training leaves out."""
    pytest.importorskip("torch")
    import numpy as np

    from models.recipe.archives import MEASURED, TRAINED
    from models.recipe.labels import pieces
    from models.recipe.train import HELD

    assert not set(MEASURED) & set(TRAINED)
    for source in MEASURED:
        made = pieces(f"{source}1", ["hello"], [(10, 20)], np.zeros(16_000, np.float32))
        assert [one.kind for one in made] == ["holdnew"]
        assert made[0].kind in HELD


def test_packed_clips_are_the_clips(tmp_path: Path) -> None:
    """Names and lengths come back from a packed folder; a file that is no sound is passed over."""
    pytest.importorskip("scipy")
    soundfile = pytest.importorskip("soundfile")
    import numpy as np

    from models.recipe.archives import clips, main

    voices = tmp_path / "games" / "redeclipse" / "data" / "sounds" / "voice"
    voices.mkdir(parents=True)
    wave = 0.3 * np.sin(np.arange(16_000) / 20).astype(np.float32)
    soundfile.write(voices / "yes.ogg", wave, 16_000)
    (voices / "broken.ogg").write_bytes(b"no sound")
    with pytest.MonkeyPatch.context() as patch:
        folders = [str(tmp_path / "games"), str(tmp_path / "packed")]
        patch.setattr("sys.argv", ["archives", *folders, "--sources", "red"])
        main()
    [(name, sound)] = clips(tmp_path / "packed", "red")
    assert name == "reddata/sounds/voice/yes.ogg"
    assert abs(len(sound) - 16_000) < 200
