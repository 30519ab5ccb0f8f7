"""What a command could be called instead, where a maker's own voice is often missed with it."""

from __future__ import annotations

OTHER_WORDS: dict[str, tuple[str, ...]] = {
    "yes": ("correct", "affirmative", "all right"),
    "no": ("negative", "never", "not that"),
    "next": ("onward", "carry forward", "keep going"),
    "again": ("repeat", "one more time", "tell me"),
    "go back": ("return", "earlier", "the one before"),
    "where am i": ("my place", "position", "tell the place"),
    "how many": ("number of stitches", "tally", "give me numbers"),
    "row done": ("finished this one", "all complete", "turn the work"),
    "pause": ("wait a moment", "take a break", "hold on"),
    "hush": ("be quiet", "silence", "enough talking"),
    "carry on": ("continue", "resume working", "off we go"),
    "undo that": ("mistake", "take it away", "wrong move"),
}
"""By the taught phrase; our own proposals, none of them taught for anything else."""
