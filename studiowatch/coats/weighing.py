"""Weighing the bottle: how much narrower a ready time would be if the amount laid were known."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from studiowatch.coats.draws import FIELDS, GUESSED_SPREAD, MEASURED_SPREAD
from studiowatch.coats.learning import Seen
from studiowatch.coats.readiness import Ready, ready_at
from studiowatch.coats.stage_table import ROW
from studiowatch.coats.stages import Stage
from studiowatch.coats.standing import Standing
from studiowatch.physics.ranges import Array
from studiowatch.speech.units import chosen
from studiowatch.speech.words import mark, say

_LEFT = MEASURED_SPREAD / GUESSED_SPREAD  # of the spread of thickness once the amount is measured
_WORTH_SAYING = 0.9  # of the present width, above which weighing is not worth a sentence; assumption


_SENTENCE = mark(
    "weighing the bottle would narrow the range of {stage} from {early} to {late} h to about {weighed_early} to "
    "{weighed_late} h"
)
_ADVICE = mark(
    "Weigh the bottle: it would narrow the range of {stage} from {early} to {late} h to about {weighed_early} to "
    "{weighed_late} h."
)


@dataclass(frozen=True, slots=True, kw_only=True)
class WeighingGain:
    """When a stage is reached as things stand, and as they would if the amount laid were measured."""

    stage: Stage
    now: Ready
    weighed: Ready

    @property
    def sentence(self) -> str:
        """What to tell of it; "" where it would gain little or the stage is not reached."""
        return self._told(_SENTENCE)

    @property
    def advice(self) -> str:
        """What to tell her at the rack; "" where there is nothing to tell."""
        return self._told(_ADVICE)

    def _told(self, template: str) -> str:
        now, weighed = _hours(self.now), _hours(self.weighed)
        if now is None or weighed is None or weighed[1] - weighed[0] >= _WORTH_SAYING * (now[1] - now[0]):
            return ""
        number = chosen().number
        return say(
            template,
            stage=self.stage.word,
            early=number(now[0], 1),
            late=number(now[1], 1),
            weighed_early=number(weighed[0], 1),
            weighed_late=number(weighed[1], 1),
        )


def weighing_gain(standing: Standing, table: Array, seen: Sequence[Seen], *, stage: Stage) -> WeighingGain | None:
    """Return what measuring the amount would narrow, or None if it was measured.

    The draws are weighed anew about the thickness that they now hold likeliest: what she will find is not known, so
    only the width is foretold, not the place.

    Parameters
    ----------
    table : ndarray, (stages, draws)
        When each draw reaches each stage, s since laying.
    seen : sequence of Seen
        The tests so far.
    """
    if standing.measured:
        return None
    weights = standing.weights(table, seen)
    thickness = standing.particles.coordinates[:, FIELDS.index("thickness_factor")]
    likeliest = float(weights @ thickness)
    known = weights * np.exp(0.5 * thickness**2 - 0.5 * ((thickness - likeliest) / _LEFT) ** 2)
    times_s = table[ROW[stage]]
    return WeighingGain(stage=stage, now=ready_at(times_s, weights), weighed=ready_at(times_s, known))


def _hours(ready: Ready) -> tuple[float, float] | None:
    if ready.p10_s is None or ready.p90_s is None:
        return None
    return ready.p10_s / 3600.0, ready.p90_s / 3600.0
