"""Clock: seconds that never run backwards, and today's date."""

from __future__ import annotations

import time
from datetime import date


class SystemClock:
    """The machine's own clock."""

    def now_s(self) -> float:
        """Seconds since some fixed moment; the same clock as time.monotonic."""
        return time.monotonic()

    def today(self) -> str:
        """The local date, as 2026-11-25."""
        return date.today().isoformat()
