"""Words put in place of others in a text whose length is kept."""

from __future__ import annotations


def fitted(said: str, whole: str) -> str:
    """The words, filled up with blanks to the length of what they stand for; that itself where they
    are longer.
    """
    return said.ljust(len(whole)) if len(said) <= len(whole) else whole
