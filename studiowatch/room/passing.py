"""When a figure of the room passes a limit, by the draws of its outlook."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from studiowatch.physics.ranges import Array

STEPS_H = 6  # steps of ten minutes an hour


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Passing:
    """When each draw has moved by so much: hours from now; infinite where it has not within the hours looked at."""

    after_h: Array

    @property
    def chance(self) -> float:
        """Share of the draws that do, 0 to 1."""
        return float(np.isfinite(self.after_h).mean())

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
    steps = np.arange(1, round(within_h * STEPS_H) + 1) / STEPS_H
    at_h = np.minimum(passed_h + np.concatenate([[0.0], steps]), draws.shape[1] - 1.0)
    before = np.minimum(at_h.astype(np.intp), draws.shape[1] - 2)
    part = at_h - before
    values = (1.0 - part) * draws[:, before] + part * draws[:, before + 1]
    way = 1.0 if distance >= 0.0 else -1.0
    there = way * (values[:, 1:] - values[:, :1]) >= abs(distance)
    first = there.argmax(axis=1)
    after_h: Array = np.where(there.any(axis=1), steps[first] if steps.size else np.inf, np.inf)
    return Passing(after_h=after_h)
