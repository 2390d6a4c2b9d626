"""A room that is known by typed readings: how often to read it, when that was missed, and the words for it."""

from __future__ import annotations

from studiowatch.speech.words import mark, say
from studiowatch.studio.concern import TypedAir

READ_WET_MS = 3_600_000  # ms between two readings while a coat is wet: the room drifts about 1 K an hour; assumption
READ_DRYING_MS = 4 * READ_WET_MS  # ms, from dry to touch until the next coat may go on; assumption
MISSED = 2  # intervals without a reading, after which it is a caution; assumption
FRESH_S = 3_600.0  # s, an older reading does not tell whether a coat may be laid now; assumption
READ_IT = mark("Read the hygrometer, and type what it says.")
TRY_TISSUE = mark("Hold a strip of tissue beside the pieces, and say with the reading how it hangs.")


def read_every_ms(*, wet: bool) -> int:
    """Return how often the room should be read for a coat that is not dry yet, ms."""
    return READ_WET_MS if wet else READ_DRYING_MS


def is_missed(typed: TypedAir, *, wet: bool) -> bool:
    """Return whether the next reading has been missed for long."""
    return typed.age_s * 1000 > MISSED * read_every_ms(wet=wet)


def typed_words(typed: TypedAir) -> str:
    """Return what every verdict on a typed room ends with."""
    minutes = int(typed.age_s // 60)
    if minutes < 1:
        return say("Last read just now; air speed is not measured.")
    if minutes < 2 * 60:
        return say("Last read {minutes} min ago; air speed is not measured.", minutes=minutes)
    hours = minutes // 60
    if hours < 2 * 24:
        return say("Last read {hours} h ago; air speed is not measured.", hours=hours)
    return say("Last read {days} days ago; air speed is not measured.", days=hours // 24)
