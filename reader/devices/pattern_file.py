"""Pattern file: a file the maker has in, the text of the pattern out, with line breaks as
written.
"""

from __future__ import annotations

import contextlib
import re
import unicodedata
import zipfile
from collections.abc import Callable
from pathlib import Path

from reader.devices.ports import PatternUnreadable
from reader.devices.web_page import text_of_page

PAGE = 2_500
"""Characters of a closely printed page: common practice, no source."""

LARGEST_TEXT = 300_000
"""Characters: 120 close pages; no pattern is longer, a book of patterns is. What is longer is
refused before it is read for rows, since that alone would take minutes. Judgement.
"""

LARGEST_FILE = 100_000_000
"""Bytes; a document with many photographs stays below. Judgement."""

LARGEST_PAGE = 20_000_000
"""Bytes of a text or web page, whose pictures may be written into it. Judgement."""

LONGEST_TEXT_FILE = 4 * LARGEST_TEXT
"""Bytes: no encoding of the longest text takes more."""

HEAD = 4_096
"""Bytes looked at to tell what kind of text a file is; even, so that UTF-16 is not cut apart."""

WEB_PAGES = {".html", ".htm", ".xhtml"}
PICTURES = {".jpg", ".jpeg", ".png", ".gif", ".webp", ".heic", ".tif", ".tiff", ".bmp"}


def read_pattern(path: Path) -> str:
    """The pattern's text, lines parted by newlines.

    Reads text and Markdown as they stand, web pages, and DOCX and PDF with the optional libraries.
    Raises PatternUnreadable with one sentence: no such file, a folder, a pipe, empty, a picture, no
    text in it, far too long, or not text at all. Whatever the size, it answers within a second,
    PDF and DOCX files of more than a few pages excepted.
    """
    content = _content(path)
    ending = path.suffix.lower()
    if not content.strip():
        raise PatternUnreadable(
            f"The file {path.name} is empty; give the file that holds your pattern."
        )
    if content.startswith(b"%PDF-"):
        text = _pdf(path)
    elif content.startswith(b"PK\x03\x04"):
        text = _docx(path, content)
    elif content.startswith(b"{\\rtf"):
        raise PatternUnreadable(_other_kind(path.name, "an RTF file"))
    elif ending in PICTURES or _picture(content):
        raise PatternUnreadable(
            f"The file {path.name} is a picture, and pictures cannot be read here; "
            "give a file with the pattern as text."
        )
    else:
        text = _plain(content, ending in WEB_PAGES, path.name)
    return _checked(text, path.name)


def _plain(content: bytes, page: bool, name: str) -> str:
    """A text or a web page; what is far too long is refused before it is decoded or taken apart."""
    if len(content) > LONGEST_TEXT_FILE:
        page = page or _page(decoded(content[:HEAD], name))
        if not page or len(content) > LARGEST_PAGE:
            raise PatternUnreadable(_too_long(name, len(content)))
    text = decoded(content, name)
    return text_of_page(text) if page or _page(text) else text


def decoded(content: bytes, name: str) -> str:
    """Text of unknown encoding: what its mark says, else UTF-8, else Windows' western one.

    Raises PatternUnreadable when so much of it is unprintable that it is no text.
    """
    for mark, encoding in (
        (b"\xef\xbb\xbf", "utf-8-sig"),
        (b"\xff\xfe", "utf-16"),
        (b"\xfe\xff", "utf-16"),
    ):
        if content.startswith(mark):
            with contextlib.suppress(UnicodeDecodeError):
                return content.decode(encoding)
    encoding = _wide(content) or "utf-8"
    try:
        text = content.decode(encoding)
    except UnicodeDecodeError:
        # Bytes that Windows never assigned stay as they are, instead of failing the whole file.
        text = content.decode("cp1252", errors="replace")
    odd = sum(
        1
        for c in text[:20_000]
        if unicodedata.category(c) in {"Cc", "Cn", "Co"} and c not in "\n\r\t\f\v"
    )
    odd += text[:20_000].count("\ufffd")
    if odd > max(2, 0.02 * min(len(text), 20_000)):
        raise PatternUnreadable(
            f"The file {name} is not text; give the pattern as a text, web, DOCX or PDF file."
        )
    return text


def _wide(content: bytes) -> str:
    """UTF-16 without a mark: every other byte of western text is zero."""
    head = content[:2000]
    if len(head) < 8:
        return ""
    if head[1::2].count(0) > 0.4 * len(head[1::2]) and head[::2].count(0) == 0:
        return "utf-16-le"
    if head[::2].count(0) > 0.4 * len(head[::2]) and head[1::2].count(0) == 0:
        return "utf-16-be"
    return ""


def _content(path: Path) -> bytes:
    try:
        if path.is_dir():
            raise PatternUnreadable(
                f"{path} is a folder; give the file inside it that is the pattern."
            )
        if path.exists() and not path.is_file():
            raise PatternUnreadable(
                f"{path} is a pipe or a device and not a file; save the pattern as a file and "
                "give that."
            )
        size = path.stat().st_size
        if size > LARGEST_FILE:
            raise PatternUnreadable(
                f"The file {path.name} has {size // 1_000_000} megabytes, far more than a pattern; "
                "give the file that holds your pattern."
            )
        return path.read_bytes()
    except FileNotFoundError as error:
        raise PatternUnreadable(
            f"There is no file {path}; check its name and the folder you are in."
        ) from error
    except (OSError, ValueError) as error:
        reason = (getattr(error, "strerror", None) or str(error)).lower()
        raise PatternUnreadable(
            f"The file {path} cannot be read, because {reason}; check that you may open it, or "
            "give a copy of it."
        ) from error


def _checked(text: str, name: str) -> str:
    text = text.replace("\r\n", "\n").replace("\r", "\n").replace("\x00", "")
    if not any(c.isalnum() for c in text):
        raise PatternUnreadable(f"The file {name} holds no words; give the file with your pattern.")
    if len(text) > LARGEST_TEXT:
        raise PatternUnreadable(_too_long(name, len(text)))
    return text


def _too_long(name: str, length: int) -> str:
    return (
        f"The file {name} holds some {length // PAGE} pages of text, far more than a pattern; "
        "cut the one pattern you want into a file of its own."
    )


def _picture(content: bytes) -> bool:
    starts = (b"\x89PNG", b"\xff\xd8\xff", b"GIF8", b"BM", b"II*\x00", b"MM\x00*")
    if content.startswith(b"RIFF") and content[8:12] == b"WEBP":
        return True
    # "BM" alone also begins words; a bitmap's header is never printable.
    return content.startswith(starts) and (content[:2] != b"BM" or 0 in content[:16])


def _page(text: str) -> bool:
    return bool(re.match(r"\s*(<!doctype html|<html|<\?xml[^>]*>\s*<html)", text, re.IGNORECASE))


def _pdf(path: Path) -> str:
    try:
        from reader.devices.pdf_file import text_of_pdf
    except ImportError as error:
        raise PatternUnreadable(_missing(path.name, "PDF", "pypdf")) from error
    return _opened(text_of_pdf, path, "PDF")


def _docx(path: Path, content: bytes) -> str:
    # Every part's name stands in clear in an archive's directory, which is its end.
    if b"word/document.xml" not in content:
        raise PatternUnreadable(_other_kind(path.name, "an archive or a kind of document"))
    with contextlib.suppress(zipfile.BadZipFile, KeyError), zipfile.ZipFile(path) as archive:
        unpacked = archive.getinfo("word/document.xml").file_size
        if unpacked > LARGEST_PAGE:
            raise PatternUnreadable(_too_long(path.name, unpacked))
    try:
        from reader.devices.docx_file import text_of_docx
    except ImportError as error:
        raise PatternUnreadable(_missing(path.name, "DOCX", "python-docx")) from error
    return _opened(text_of_docx, path, "DOCX")


def _opened(read: Callable[[Path], str], path: Path, kind: str) -> str:
    try:
        return read(path)
    except PatternUnreadable:
        raise
    except Exception as error:  # the libraries raise of every kind on damaged files
        raise PatternUnreadable(
            f"The file {path.name} is a damaged or unusual {kind} file and cannot be opened; "
            "save its text as a plain text file."
        ) from error


def _other_kind(name: str, kind: str) -> str:
    return (
        f"The file {name} is {kind} that cannot be read here; save its text as a plain text, "
        "DOCX or PDF file."
    )


def _missing(name: str, kind: str, library: str) -> str:
    return (
        f"To read the {kind} file {name}, the library {library} is needed: install "
        "reader-for-makers[documents], or save the pattern as plain text."
    )
