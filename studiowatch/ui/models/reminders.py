"""When a warning may come again: in ten minutes, in thirty, or once its coats are dry."""

from __future__ import annotations

from dataclasses import dataclass

from studiowatch.coats.stages import Stage
from studiowatch.service.snapshot import Snapshot, WarningView
from studiowatch.speech.words import mark, say
from studiowatch.ui.models.times import DAY_MS, MINUTE_MS, REMIND_AFTER_MS

LONGER_MS = 30 * MINUTE_MS
IN_TEN, IN_THIRTY, ONCE_DRY = mark("In 10 min"), mark("In 30 min"), mark("Not until the coat is dry")


@dataclass(frozen=True, slots=True, kw_only=True)
class Reminder:
    """A choice, and until when the warning is quiet then, UTC ms."""

    words: str
    until_ms: int


def reminders(snapshot: Snapshot, warning: WarningView, now_ms: int) -> tuple[Reminder, ...]:
    """Return the choices for `warning`; that of the dry coat only where its time is known and within a day."""
    choices = [
        Reminder(words=say(IN_TEN), until_ms=now_ms + REMIND_AFTER_MS),
        Reminder(words=say(IN_THIRTY), until_ms=now_ms + LONGER_MS),
    ]
    dry_ms = dry_at_ms(snapshot, warning)
    if dry_ms is not None and now_ms < dry_ms < now_ms + DAY_MS:
        choices.append(Reminder(words=say(ONCE_DRY), until_ms=dry_ms))
    return tuple(choices)


def dry_at_ms(snapshot: Snapshot, warning: WarningView) -> int | None:
    """Return when all coats of `warning` are dry to touch by the model, UTC ms; None where one is not in sight."""
    tops = [piece.top for piece in snapshot.pieces if piece.title in warning.piece_titles and piece.top is not None]
    times = [top.stage(Stage.DRY_TO_TOUCH) for top in tops]
    ends_ms = [None if time is None else time.p90_ms or time.time_ms for time in times]
    known = [end_ms for end_ms in ends_ms if end_ms is not None]
    return max(known) if known and len(known) == len(ends_ms) else None
