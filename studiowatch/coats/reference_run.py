"""The sheet's film dried in the sheet's room, and the search for the factor that gives the sheet's touch-dry time."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np

from studiowatch.coats.bound_water import Drift
from studiowatch.coats.data_sheet import DataSheet
from studiowatch.coats.draws import Draws
from studiowatch.coats.solventborne import SolventState
from studiowatch.coats.stage_table import ROW
from studiowatch.coats.stages import Stage
from studiowatch.coats.waterborne import WaterState
from studiowatch.physics.plate_transfer import PlateAir
from studiowatch.physics.ranges import Array

DriedWith = Callable[[Array], WaterState | SolventState]
"""From kappa to the state in which each draw was when what is free in it had just gone."""

_KAPPA = (0.02, 50.0)  # where kappa is sought
_TOLERANCE_S = 0.05  # s, of the touch-dry time
_CLOSED = 1e-6  # of 1/kappa, a bracket in which nothing is left to find: the steps jump over the time in it
_STUCK_S = 1.0  # s, good enough where the step, which all draws share, moves a draw's time under its bracket
_ATTEMPTS = 60
_LEAST_GAP_S = 60.0  # s from touch-dry to clear and on, where kappa could not be found


def kappa_for(dried: DriedWith, wanted_s: Array) -> Array:
    """Return the kappa with which a film is touch-dry at `wanted_s`: in each draw the end of the range if none does.

    The time is all but linear in 1/kappa, so the bracket is cut where the chord through its ends crosses zero, and
    the weight of an end that stays twice is halved (the Illinois rule).
    """

    def miss_of(inverse: Array) -> Array:
        return touch_dry_s(dried(1.0 / inverse)) - wanted_s

    low, high = np.full(wanted_s.size, 1.0 / _KAPPA[1]), np.full(wanted_s.size, 1.0 / _KAPPA[0])
    at_low, at_high = miss_of(low), miss_of(high)
    inverse = np.where(at_low >= 0.0, low, high)
    sought = (at_low < 0.0) & (at_high > 0.0)
    last = np.zeros(wanted_s.size)
    best, closest_s = inverse, np.where(sought, np.inf, 0.0)
    for _ in range(_ATTEMPTS):
        if not sought.any():
            break
        chord = (low * at_high - high * at_low) / np.where(sought, at_high - at_low, 1.0)
        inverse = np.where(sought, chord, inverse)
        miss_s = miss_of(inverse)
        side = np.sign(miss_s)
        at_high = np.where(side > 0.0, miss_s, np.where(side == last, at_high / 2.0, at_high))
        at_low = np.where(side < 0.0, miss_s, np.where(side == last, at_low / 2.0, at_low))
        low, high = np.where(side < 0.0, inverse, low), np.where(side > 0.0, inverse, high)
        last = side
        closer = np.abs(miss_s) < closest_s
        best, closest_s = np.where(closer, inverse, best), np.where(closer, np.abs(miss_s), closest_s)
        sought &= (closest_s >= _TOLERANCE_S) & (high - low > _CLOSED * high)
    if (closest_s[sought] < _STUCK_S).all():
        return 1.0 / best
    raise ArithmeticError("kappa was not found; the drying time must rise with the resistance of the air")  # not said


def touch_dry_s(state: WaterState | SolventState) -> Array:
    """Return when each draw was dry to touch, s since laying."""
    when_s: Array = state.reached[ROW[Stage.DRY_TO_TOUCH]]
    return when_s


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class SheetAges:
    """The ages that the later times on a sheet stand for, read off a run that ended touch-dry in `state`."""

    sheet: DataSheet
    draws: Draws
    state: WaterState | SolventState
    plate: PlateAir

    def diffusion_age(self, hours: float) -> Array:
        """Return the recoat age gathered from touch-dry to a time on the sheet, s at 23 °C."""
        return self._drift.diffusion_age(self._from_touch_dry_s(hours))

    def cure_age(self) -> Array:
        """Return the cure age at the sheet's cure time, s at 23 °C."""
        return self.state.cure_age_s + self._drift.cure_age(self._from_touch_dry_s(self.sheet.cure_days * 24.0))

    @property
    def _drift(self) -> Drift:
        return Drift.between(self.state.film_K, self.plate.air_K, self.draws)

    def _from_touch_dry_s(self, hours: float) -> Array:
        return np.maximum(hours * 3600.0 * self.draws.sheet_time_factor - touch_dry_s(self.state), _LEAST_GAP_S)
