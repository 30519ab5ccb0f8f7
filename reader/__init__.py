"""A companion that reads a craft pattern aloud, waits, listens, counts and keeps the place."""

__version__ = "0.1.0"
