"""A room that is known by typed readings: how often to read it, when that was missed, and the words for it."""

from __future__ import annotations

from studiowatch.studio.concern import TypedAir

READ_WET_MS = 3_600_000  # ms between two readings while a coat is wet: the room drifts about 1 K an hour; assumption
READ_DRYING_MS = 4 * READ_WET_MS  # ms, from dry to touch until the next coat may go on; assumption
MISSED = 2  # intervals without a reading, after which it is a caution; assumption
FRESH_S = 3_600.0  # s, an older reading does not tell whether a coat may be laid now; assumption
READ_IT = "Read the hygrometer, and type what it says."
TRY_TISSUE = "Hold a strip of tissue beside the pieces, and say with the reading how it hangs."


def read_every_ms(*, wet: bool) -> int:
    """Return how often the room should be read for a coat that is not dry yet, ms."""
    return READ_WET_MS if wet else READ_DRYING_MS


def is_missed(typed: TypedAir, *, wet: bool) -> bool:
    """Return whether the next reading has been missed for long."""
    return typed.age_s * 1000 > MISSED * read_every_ms(wet=wet)


def typed_words(typed: TypedAir) -> str:
    """Return what every verdict on a typed room ends with."""
    return f"Last read {_ago(typed.age_s)}; air speed is not measured."


def _ago(age_s: float) -> str:
    minutes = int(age_s // 60)
    if minutes < 1:
        return "just now"
    if minutes < 2 * 60:
        return f"{minutes} min ago"
    hours = minutes // 60
    return f"{hours} h ago" if hours < 2 * 24 else f"{hours // 24} days ago"
