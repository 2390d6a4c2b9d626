"""Times that go along with a wall clock that was set."""

from __future__ import annotations


def set_on(time_ms: int | None, step_ms: int) -> int | None:
    """Return a time, UTC ms, `step_ms` later, or earlier where that is below 0; none stays none."""
    return None if time_ms is None else time_ms + step_ms
