"""Every kind of pattern file gives its text; every bad one gives one clear sentence."""

from __future__ import annotations

import io
import os
import time
import zipfile
from pathlib import Path

import pytest

from reader.app import cli
from reader.devices.pattern_file import read_pattern
from reader.devices.ports import PatternUnreadable

ROWS = "Buoy\nRnd 1: 6 sc in magic ring. (6 sts)\nRnd 2: 2 sc in each st around. (12 sts)\n"


def written(folder: Path, name: str, content: bytes | str) -> Path:
    """A file with this content."""
    path = folder / name
    path.write_bytes(content if isinstance(content, bytes) else content.encode())
    return path


def sentence(path: Path) -> str:
    """The one sentence with which a file is refused."""
    with pytest.raises(PatternUnreadable) as caught:
        read_pattern(path)
    text = str(caught.value)
    assert text.endswith(".")
    assert ". " not in text
    return text


@pytest.mark.parametrize("name", ["buoy.txt", "buoy.md", "buoy"])
def test_text_is_read_as_it_stands(tmp_path: Path, name: str) -> None:
    """Nothing is changed but the line ends."""
    assert read_pattern(written(tmp_path, name, ROWS.replace("\n", "\r\n"))) == ROWS


@pytest.mark.parametrize("encoding", ["utf-8-sig", "utf-16", "utf-16-le", "utf-16-be", "cp1252"])
def test_other_encodings_are_understood(tmp_path: Path, encoding: str) -> None:
    """Half signs and dashes survive whatever wrote the file."""
    text = ROWS + "Work ½ row – then 3 × ch 1; crêpe yarn.\n"
    assert read_pattern(written(tmp_path, "buoy.txt", text.encode(encoding))) == text


def test_a_web_page_gives_its_visible_text(tmp_path: Path) -> None:
    """Each paragraph, list item and table row is a line; scripts and menus are left out."""
    page = """<!DOCTYPE html><html><head><title>Buoy</title><style>p{color:red}</style></head><body>
    <nav>Home Shop</nav><h1>Buoy &amp; rope</h1><p>Rnd 1:
    6 sc.</p><ol><li>Rnd 2: 2 sc in each st.</li><li>Rnd 3: *sc, inc*</li></ol>
    <script>var row = 9;</script><table><tr><td>Hook</td><td>4 mm</td></tr></table></body></html>"""
    lines = read_pattern(written(tmp_path, "buoy.html", page)).split("\n")
    for line in ["Buoy & rope", "Rnd 1: 6 sc.", "Rnd 2: 2 sc in each st.", "Hook 4 mm"]:
        assert line in lines
    assert not any("var row" in line or "Shop" in line or "color" in line for line in lines)


def test_a_page_without_its_ending_is_known_as_one(tmp_path: Path) -> None:
    """A saved page named .txt is still a page."""
    assert "<p>" not in read_pattern(written(tmp_path, "b.txt", "<html><p>Rnd 1: 6 sc.</p></html>"))


def test_docx_paragraphs_and_tables(tmp_path: Path) -> None:
    """A word processor's file gives a line a paragraph and a line a table row, in order."""
    docx = pytest.importorskip("docx")
    document = docx.Document()
    document.add_paragraph("Buoy")
    table = document.add_table(rows=1, cols=2)
    table.rows[0].cells[0].text, table.rows[0].cells[1].text = "Hook", "4 mm"
    document.add_paragraph("Rnd 1: 6 sc. (6 sts)")
    document.save(str(tmp_path / "buoy.docx"))
    assert read_pattern(tmp_path / "buoy.docx") == "Buoy\nHook  4 mm\nRnd 1: 6 sc. (6 sts)\n"


def pdf(*pages: str) -> bytes:
    """A small PDF by hand, after ISO 32000-1: one page for each text, "" for a page without any."""
    objects = [b"<< /Type /Catalog /Pages 2 0 R >>", b""]
    objects.append(b"<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica >>")
    kids = []
    for text in pages:
        stream = f"BT /F1 12 Tf 50 700 Td ({text}) Tj ET" if text else "0 0 100 100 re f"
        objects.append(
            f"<< /Length {len(stream)} >>\nstream\n{stream}\nendstream".encode("latin-1")
        )
        content = len(objects)
        objects.append(
            f"<< /Type /Page /Parent 2 0 R /MediaBox [0 0 612 792] /Contents {content} 0 R "
            "/Resources << /Font << /F1 3 0 R >> >> >>".encode()
        )
        kids.append(f"{len(objects)} 0 R")
    objects[1] = f"<< /Type /Pages /Kids [{' '.join(kids)}] /Count {len(kids)} >>".encode()
    out, places = io.BytesIO(), []
    out.write(b"%PDF-1.4\n")
    for number, content_bytes in enumerate(objects, 1):
        places.append(out.tell())
        out.write(b"%d 0 obj\n" % number + content_bytes + b"\nendobj\n")
    start = out.tell()
    out.write(b"xref\n0 %d\n0000000000 65535 f \n" % (len(objects) + 1))
    out.writelines(b"%010d 00000 n \n" % place for place in places)
    out.write(b"trailer << /Size %d /Root 1 0 R >>\n" % (len(objects) + 1))
    out.write(b"startxref\n%d\n%%%%EOF\n" % start)
    return out.getvalue()


def test_pdf_text_and_picture_pages(tmp_path: Path) -> None:
    """A page without text is named, so that nothing is missing unnoticed."""
    pytest.importorskip("pypdf")
    text = read_pattern(written(tmp_path, "b.pdf", pdf("Rnd 1: 6 sc.", "", "Rnd 3: inc.")))
    assert text.startswith("Rnd 1: 6 sc.")
    assert "[Page 2 is only a picture and cannot be read.]" in text
    assert text.rstrip().endswith("Rnd 3: inc.")


def test_pdf_of_pictures_is_refused(tmp_path: Path) -> None:
    """Scans are named for what they are."""
    pytest.importorskip("pypdf")
    assert "only pictures" in sentence(written(tmp_path, "scan.pdf", pdf("", "")))


def zipped(name: str) -> bytes:
    """A ZIP archive that is no DOCX."""
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as archive:
        archive.writestr(name, "x")
    return out.getvalue()


@pytest.mark.parametrize(
    ("name", "content", "expected"),
    [
        ("just-too-long.txt", b"Rnd 1: 6 sc.\n" * 24_000, "far more than a pattern"),
        ("library.html", b"<html><p>Rnd 1: 6 sc.</p>" * 900_000, "far more than a pattern"),
        ("wide.txt", ("Rnd 1: 6 sc.\n" * 400_000).encode("utf-16"), "far more than a pattern"),
        ("noise.txt", bytes(range(256)) * 40_000, "is not text"),
        ("letter.doc", b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1" + b"\x00\x01" * 4000, "is not text"),
        ("empty.txt", b"", "is empty"),
        ("blank.txt", b" \n\t \n", "is empty"),
        ("dots.txt", b"... --- ...\n", "holds no words"),
        ("noise.bin", bytes(range(256)) * 40, "is not text"),
        ("zeros.txt", b"\x00" * 4000, "is not text"),
        ("photo.txt", b"\xff\xd8\xff\xe0\x00\x10JFIF" + b"\x00\x90" * 200, "is a picture"),
        ("photo.png", b"\x89PNG\r\n\x1a\n" + b"\x00" * 50, "is a picture"),
        ("long.txt", b"Rnd 1: sc in each st around.\n" * 180_000, "far more than a pattern"),
        ("broken.pdf", b"%PDF-1.7\nnothing more", "damaged or unusual PDF"),
        ("archive.docx", zipped("hello.txt"), "an archive or a kind of document"),
        ("broken.docx", zipped("word/document.xml"), "damaged or unusual DOCX"),
        ("buoy.rtf", b"{\\rtf1\\ansi Rnd 1: 6 sc.}", "is an RTF file"),
    ],
)
def test_bad_files_get_one_sentence(
    tmp_path: Path, name: str, content: bytes, expected: str
) -> None:
    """What, where, and what to do; never a traceback, and at once whatever the size."""
    path = written(tmp_path, name, content)
    began_s = time.monotonic()
    told = sentence(path)
    assert expected in told
    assert name in told
    assert ";" in told  # behind it stands what to do
    assert time.monotonic() - began_s < 2


def test_no_file_and_a_folder(tmp_path: Path) -> None:
    """A wrong name and a folder are told apart."""
    assert "There is no file" in sentence(tmp_path / "lost.txt")
    assert "is a folder" in sentence(tmp_path)


def test_a_pipe_is_refused_and_never_waited_for(tmp_path: Path) -> None:
    """A pipe that nobody writes to would wait for ever."""
    os.mkfifo(tmp_path / "pipe")
    assert "is a pipe" in sentence(tmp_path / "pipe")


@pytest.mark.skipif(os.geteuid() == 0, reason="the superuser may open every file")
def test_a_file_that_may_not_be_opened(tmp_path: Path) -> None:
    """The system's own reason is told, and what to do."""
    path = written(tmp_path, "closed.txt", ROWS)
    path.chmod(0)
    assert "permission denied" in sentence(path)


def test_a_file_of_many_gigabytes_is_not_even_opened(tmp_path: Path) -> None:
    """A sparse file as large as a film's."""
    path = tmp_path / "film.txt"
    with path.open("wb") as film:
        film.truncate(8_000_000_000)
    assert "8000 megabytes" in sentence(path)


def test_a_book_as_pdf_and_a_packed_flood_as_docx(tmp_path: Path) -> None:
    """Both are refused before they are taken apart."""
    pytest.importorskip("pypdf")
    pytest.importorskip("docx")
    assert "201 pages" in sentence(written(tmp_path, "book.pdf", pdf(*["Rnd 1: 6 sc."] * 201)))
    flood = io.BytesIO()
    with zipfile.ZipFile(flood, "w", zipfile.ZIP_DEFLATED) as archive:
        archive.writestr("word/document.xml", b"<w:p>" + b" " * 30_000_000)
    assert "far more than a pattern" in sentence(written(tmp_path, "flood.docx", flood.getvalue()))


@pytest.mark.parametrize("words", [("work", "--plain", "--no-voice", "--no-mic"), ("check",)])
def test_five_megabytes_are_refused_by_the_program_at_once(
    tmp_path: Path, words: tuple[str, ...], capsys: pytest.CaptureFixture[str]
) -> None:
    """No verb begins to take such a text apart: one sentence, status not 0, within two seconds."""
    path = written(tmp_path, "library.txt", ROWS * 65_000)
    began_s = time.monotonic()
    assert cli.main([words[0], str(path), *words[1:]]) != 0
    assert time.monotonic() - began_s < 2
    told = capsys.readouterr().err.strip()
    assert "far more than a pattern" in told
    assert len(told.splitlines()) == 1
