"""Failing: which errors are ours to explain, and the sentence and exit status for each."""

from __future__ import annotations

WRONG_USE = 2
"""Exit status for a command line that cannot be understood: argparse's own."""

BROKEN_OFF = 130
"""Exit status after Ctrl C: 128 + SIGINT, the shell's custom."""


def sentence_for(error: Exception) -> str | None:
    """One sentence for an error that the maker can do something about, None for a fault of ours."""
    # Imported here so that a verb without sound starts without numpy.
    from reader.devices.ports import ReaderError

    return str(error) if isinstance(error, ReaderError) else None
