"""Readings from outside on the keeper's desk: it owns the log, and takes them an hour at a time while it watches."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from studiowatch.room.log_columns import LogColumns
from studiowatch.service.commands import EndTaking
from studiowatch.service.rack import Rack
from studiowatch.service.take_readings import TakeReadings
from studiowatch.store.taking_in import Verdicts


@dataclass(frozen=True, slots=True, kw_only=True)
class OutsideDesk:
    """Takes readings into the log with `take_in`."""

    take_in: TakeReadings

    def take(self, readings: LogColumns, now_ms: int) -> str:
        """Take readings of one hour; return a verdict for each, as `verdicts_of` reads them.

        Raises
        ------
        StoreTrouble
            If nothing was written; the same readings may be given again.
        """
        return self.take_in(readings, seal_before_ms=now_ms).astype(np.int8).tobytes().decode("ascii")

    def concerns(self, rack: Rack, taken: EndTaking) -> bool:
        """Return whether a coat on the rack dried, or may have, in what was taken."""
        laid_ms = [run.laid_ms for run in rack.runs.values()]
        return bool(laid_ms) and taken.last_ms >= min(laid_ms)


def verdicts_of(answer: str) -> Verdicts:
    """Return the verdicts, of `Verdict`, that the keeper answered with."""
    return np.frombuffer(answer.encode("ascii"), dtype=np.int8)
