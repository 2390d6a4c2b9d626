"""The room of a review: what was read, and what the air most likely was where nothing was.

The live watch takes the harsher end of a hole, so that nothing is called ready too early. A review looks for what
happened, so it goes in a straight line from one end to the other, and lets the draws stray the further from it the
longer ago the nearest reading is.
"""

from __future__ import annotations

from collections.abc import Sequence
from copy import copy
from dataclasses import dataclass, field, replace
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray

from studiowatch.physics.air import Air
from studiowatch.physics.ranges import Array
from studiowatch.studio.otherwise import Otherwise

BRIDGED_MS = 600_000  # ms without a reading that are no hole; as the watch bridges
USUAL_STEPS = 2.5  # of a log's usual step without a reading that are no hole; assumption
UNSEEN = Air(temperature_C=18.0, humidity_pct=65.0, air_speed_m_s=0.05)  # where nothing was ever read; assumption
NEVER_READ_S = 1.0e6  # s, the age of air that nobody ever read
_EVEN_MS = 1000  # ms, the resolution that steps are cut to
_WIDTH = 7  # of a row: the air's four numbers, whether its speed is known, the surface or 0, whether that is known


@dataclass(frozen=True, slots=True, kw_only=True)
class RoomMoment:
    """The air at one reading.

    Attributes
    ----------
    speed_known : bool
        Whether anything told how fast the air moves.
    surface_C : float or None
        Temperature of the surface beside the piece, °C, where it is measured.
    """

    time_ms: int
    air: Air
    speed_known: bool = True
    surface_C: float | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Step:
    """The mean air from one time to the next, UTC ms; `is_read` is False in a hole of the log."""

    start_ms: int
    end_ms: int
    air: Air
    is_read: bool
    speed_known: bool
    surface_C: float | None = None

    @property
    def dt_s(self) -> float:
        """How long it is, s."""
        return (self.end_ms - self.start_ms) / 1000.0


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Room:
    """The air at the films over time.

    Attributes
    ----------
    held : Otherwise or None
        What is held, to see what that would have changed; of a step, by when it begins.
    hole_ms : float
        How long no reading may come before that is a hole, ms.
    usual_ms : float
        How far apart two readings usually are, ms; 0 for fewer than two. Past the last by more than that, nothing is
        read yet.
    """

    moments: tuple[RoomMoment, ...]
    held: Otherwise | None = None
    _times_ms: NDArray[np.int64] = field(init=False)
    _sums: Array = field(init=False)
    hole_ms: float = field(init=False)
    usual_ms: float = field(init=False)
    _rows: Array = field(init=False)

    def __post_init__(self) -> None:
        rows = np.array([_row(moment) for moment in self.moments], dtype=np.float64).reshape(-1, _WIDTH)
        object.__setattr__(self, "_times_ms", np.array([moment.time_ms for moment in self.moments], dtype=np.int64))
        object.__setattr__(self, "_rows", rows)
        steps_ms = np.diff(self._times_ms)
        usual_ms = float(np.median(steps_ms)) if steps_ms.size else 0.0
        object.__setattr__(self, "usual_ms", usual_ms)
        object.__setattr__(self, "hole_ms", max(float(BRIDGED_MS), USUAL_STEPS * usual_ms))
        object.__setattr__(self, "_sums", np.vstack([np.zeros(_WIDTH), np.cumsum(rows, axis=0)]))

    def holding(self, held: Otherwise) -> Room:
        """Return the same room with its air held otherwise."""
        other = copy(self)
        object.__setattr__(other, "held", held)
        return other

    def steps(self, ends_ms: Sequence[int], start_ms: int) -> list[Step]:
        """Return the mean air of each step from `start_ms` through `ends_ms`, which rise."""
        steps = []
        for end_ms in ends_ms:
            step = self._step(start_ms, end_ms)
            if self.held is not None and self.held.holds_at(start_ms):
                step = replace(step, air=self.held.of(step.air))
            steps.append(step)
            start_ms = end_ms
        return steps

    def holes(self, start_ms: int, end_ms: int) -> list[tuple[int, int]]:
        """Return the holes of the log between two times, UTC ms."""
        first, last = np.searchsorted(self._times_ms, [start_ms, end_ms])
        within = self._times_ms[first:last].tolist()
        before = int(self._times_ms[first - 1]) if first > 0 else -1
        after = int(self._times_ms[last]) if last < self._times_ms.size else -1
        edges = [start_ms if before < 0 else before, *within, end_ms if after < 0 else after]
        return [
            (max(one, start_ms), min(other, end_ms)) for one, other in pairwise(edges) if other - one > self.hole_ms
        ]

    def _step(self, start_ms: int, end_ms: int) -> Step:
        if not self.moments:
            air = replace(UNSEEN, age_s=NEVER_READ_S, speed_is_measured=False)
            return Step(start_ms=start_ms, end_ms=end_ms, air=air, is_read=False, speed_known=False)
        first, last = np.searchsorted(self._times_ms, [start_ms, end_ms])
        if last > first:
            row = (self._sums[last] - self._sums[first]) / (last - first)
            return _made(start_ms, end_ms, row, age_ms=0.0, typed_s=self._typed_s(first, last))
        middle_ms = (start_ms + end_ms) // 2
        before, after = max(first - 1, 0), min(first, self._times_ms.size - 1)
        ends_ms = self._times_ms[[before, after]]
        share = 0.0 if before == after else (middle_ms - ends_ms[0]) / (ends_ms[1] - ends_ms[0])
        row = self._rows[before] + min(max(share, 0.0), 1.0) * (self._rows[after] - self._rows[before])
        apart_ms = float(np.abs(ends_ms - middle_ms).min())
        longest_ms = self.usual_ms if first == self._times_ms.size else self.hole_ms
        is_hole = (ends_ms[1] - ends_ms[0] if before != after else apart_ms) > longest_ms
        return _made(start_ms, end_ms, row, age_ms=apart_ms if is_hole else 0.0, typed_s=self._typed_s(before, after))

    def _typed_s(self, first: int, last: int) -> float | None:
        """Return the age of the air that was typed among these moments, s, or None if it was measured."""
        return self.moments[min(first, last, len(self.moments) - 1)].air.age_s


def _row(moment: RoomMoment) -> tuple[float, ...]:
    air = moment.air
    known = 1.0 if moment.speed_known else 0.0
    surface = (0.0, 0.0) if moment.surface_C is None else (moment.surface_C, 1.0)
    return air.temperature_C, air.humidity_pct, air.air_speed_m_s, air.pressure_Pa, known, *surface


def _made(start_ms: int, end_ms: int, row: Array, *, age_ms: float, typed_s: float | None) -> Step:
    temperature_C, humidity_pct, speed_m_s, pressure_Pa, known, surface_C, surfaces = (float(value) for value in row)
    is_read, speed_known = age_ms == 0.0, known > 0.5  # noqa: PLR2004 - most of the readings
    air = Air(
        temperature_C=temperature_C,
        humidity_pct=humidity_pct,
        air_speed_m_s=speed_m_s,
        pressure_Pa=pressure_Pa,
        age_s=typed_s if is_read else age_ms / 1000.0 + (typed_s or 0.0),
        speed_is_measured=speed_known and is_read,
    )
    return Step(
        start_ms=start_ms,
        end_ms=end_ms,
        air=air,
        is_read=is_read,
        speed_known=speed_known and is_read,
        surface_C=surface_C / surfaces if is_read and surfaces > 0.0 else None,
    )


def step_ends_ms(start_ms: int, end_ms: int, steps: Sequence[tuple[int, int]]) -> list[int]:
    """Return the ends of steps from one time to another, UTC ms.

    Parameters
    ----------
    steps : sequence of (int, int)
        How far from the start a width holds, and the width, ms; the last width holds from there on.
    """
    ends, at_ms = [], start_ms
    while at_ms < end_ms:
        width_ms = next((width for until, width in steps if at_ms - start_ms < until), steps[-1][1])
        at_ms = min(at_ms + max(width_ms, _EVEN_MS), end_ms)
        ends.append(at_ms)
    return ends
