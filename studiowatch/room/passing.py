"""When a figure of the room passes a limit, by the draws of its outlook."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from studiowatch.physics.ranges import Array, Mask

STEPS_H = 6  # steps of ten minutes an hour


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Passing:
    """When each draw has moved by so much: hours from now; infinite where it has not within the hours looked at.

    `chance` is the share of the draws that do, 0 to 1; it is asked with each reading.
    """

    after_h: Array
    chance: float

    def by(self, share: float) -> float:
        """Return when this share of all draws has, h; infinite if fewer do."""
        return float(np.quantile(self.after_h, share, method="higher"))


def passing(draws: Array, passed_h: float, distance: float, within_h: float) -> Passing:
    """Return when each draw first lies `distance` from where it is now, up if positive, down if not.

    Parameters
    ----------
    draws : ndarray, (draws, hours + 1)
        A figure of the room hour by hour; straight between.
    passed_h : float
        How long ago column 0 was, h: what each draw did since is not counted, for the room is known to be where it is.
    within_h : float
        How far is looked, h; no farther than the draws reach.
    """
    steps, values = _walked(draws, passed_h, within_h)
    way = 1.0 if distance >= 0.0 else -1.0
    there: Mask = np.asarray(way * (values[:, 1:] - values[:, :1]) >= abs(distance))
    return _first(steps[1:], there)


def lasting_passing(draws: Array, passed_h: float, distance: float, within_h: float, lasts_h: float) -> Passing:
    """Return as `passing`, but for draws that stay beyond it for `lasts_h` from then on."""
    steps, values = _walked(draws, passed_h, within_h + lasts_h)
    way = 1.0 if distance >= 0.0 else -1.0
    beyond = way * (values[:, 1:] - values[:, :1]) >= abs(distance)
    width = round(lasts_h * STEPS_H) + 1
    stays: Mask = np.asarray(np.lib.stride_tricks.sliding_window_view(beyond, width, axis=1).all(axis=2))
    return _first(steps[1 : stays.shape[1] + 1], stays)


def _walked(draws: Array, passed_h: float, hours: float) -> tuple[Array, Array]:
    """Return times from now on, h, the first now, and each draw at them, (draws, times)."""
    steps = np.arange(0, round(hours * STEPS_H) + 1) / STEPS_H
    at_h = np.minimum(passed_h + steps, draws.shape[1] - 1.0)
    before = np.minimum(at_h.astype(np.intp), draws.shape[1] - 2)
    part = at_h - before
    values: Array = (1.0 - part) * draws[:, before] + part * draws[:, before + 1]
    return steps, values


def _first(steps: Array, there: Mask) -> Passing:
    after_h: Array = np.where(there.any(axis=1), steps[there.argmax(axis=1)], np.inf)
    return Passing(after_h=after_h, chance=float(np.isfinite(after_h).mean()))
