"""When a coat is to be looked ahead at again: by its film, by what is soon told of it, and by who looks."""

from __future__ import annotations

from studiowatch.coats.stages import Stage
from studiowatch.service.air_ahead import RoomToCome, is_another
from studiowatch.service.coat_run import CoatRun
from studiowatch.service.looked_ahead import IDLE_EVERY_MS, RESTING_EVERY_MS

TOLD_SOON_MS = 3_600_000  # ms before something is told of a coat from which it does not rest
_FORMING = (Stage.DUST_FREE, Stage.DRY_TO_TOUCH, Stage.CLEAR)


def is_ahead_due(run: CoatRun, room: RoomToCome, *, is_seen: bool) -> bool:
    """Return whether `run.ahead` was told too long ago, or before the room was foretold.

    Before the first air it never is. What is not seen may be older in a room that only wanders, unless something is
    soon to be told by it.
    """
    if run.air is None or run.looked is None:
        return run.air is not None
    if run.is_cured and Stage.CURED in run.ahead:
        return False
    looking = run.looking(run.air, room)
    is_idle = not (is_seen or is_another(run.looked.air, looking.air))
    return run.looked.is_stale(looking, is_wet=run.film.is_wet, rests_ms=_rests_ms(run, is_idle=is_idle))


def _rests_ms(run: CoatRun, *, is_idle: bool) -> int | None:
    """Return for how long nobody waits for a time of the coat, ms; None if one does."""
    if _is_soon_told(run):
        return None
    if run.reached_ms(Stage.DRY_TO_RECOAT) is not None:
        return IDLE_EVERY_MS if is_idle else RESTING_EVERY_MS
    return RESTING_EVERY_MS if is_idle else None


def _is_soon_told(run: CoatRun) -> bool:
    """Return whether a time that is told when it comes, of those looked ahead for, is near."""
    times_ms = [] if run.recoat_told else [run.told.recoat_ms()]
    times_ms += [
        run.after_ms(run.ahead[stage].nominal_s)
        for stage in _FORMING
        if stage in run.ahead and run.reached_ms(stage) is None
    ]
    return any(time_ms is not None and 0 <= time_ms - run.at_ms < TOLD_SOON_MS for time_ms in times_ms)
