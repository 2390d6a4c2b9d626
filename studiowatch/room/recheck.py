"""When a calibrated sensor is to be checked again: monthly, and after solvent-borne work."""

from __future__ import annotations

from collections.abc import Iterable

DAY_MS = 86_400_000
MONTH_MS = 30 * DAY_MS
AFTER_SOLVENT_MS = DAY_MS  # ms after a solvent-borne coat was laid: the work is over by then; assumption


def recheck_due_ms(checked_ms: int, solvent_laid_ms: Iterable[int]) -> int:
    """Return the UTC ms from which a sensor last calibrated or checked at `checked_ms` is due.

    Parameters
    ----------
    checked_ms : int
        UTC ms.
    solvent_laid_ms : iterable of int
        UTC ms at which solvent-borne coats were laid: their vapour shifts humidity chips. Of those since the last
        check only the last counts, so that one piece of work asks once.
    """
    since = [laid_ms + AFTER_SOLVENT_MS for laid_ms in solvent_laid_ms if laid_ms > checked_ms]
    monthly_ms = checked_ms + MONTH_MS
    return min(monthly_ms, max(since, default=monthly_ms))
