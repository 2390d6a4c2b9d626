"""A film in gusts: what is taken for them when readings are put together must dry it as they do, and never sooner."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from statistics import fmean

import numpy as np
import pytest

from studiowatch.coats.anchoring import anchor
from studiowatch.coats.draws import sample
from studiowatch.coats.film import advance_through, lay
from studiowatch.coats.stages import Stage
from studiowatch.physics.air import Air, steady_speed
from studiowatch.physics.plate_transfer import forced_nusselt
from studiowatch.service.sheet_shelf import built_in_sheets

SWEEP_S, BLOWN_S = 20, 5  # a fan that swings to and fro, and how long of each swing it blows on the piece
STILL_M_S, BLOWN_M_S = 0.05, 0.5
HOURS_S = 3 * 3600
LATEST = 1.03  # times what single seconds give: free convection takes over between two gusts, and is not counted in


def gusts(count: int) -> list[float]:
    return [BLOWN_M_S if second % SWEEP_S < BLOWN_S else STILL_M_S for second in range(count)]


def dry_after_s(name: str, width_s: int, mean: Callable[[Sequence[float]], float]) -> float:
    """Return when a coat is dry to touch if its air is put together over `width_s`."""
    sheet = built_in_sheets()[name]
    speeds = gusts(HOURS_S)
    airs = [
        Air(temperature_C=20.0, humidity_pct=50.0, air_speed_m_s=mean(speeds[at : at + width_s]))
        for at in range(0, HOURS_S, width_s)
    ]
    film = lay(sheet, anchor(sheet, sample(1, 1)), wet_um=sheet.wet_um, side_m=0.5)
    dried, _ = advance_through(film, [(air, float(width_s)) for air in airs])
    reached_s = dried.reached_s(Stage.DRY_TO_TOUCH)
    assert reached_s is not None
    return reached_s


def test_that_the_steady_speed_carries_off_what_the_gusts_do() -> None:
    speeds = gusts(SWEEP_S)
    prandtl = np.array(0.71)  # of air; the law is Pohlhausen's, see `forced_nusselt`
    carried = forced_nusselt(np.array(speeds) * 0.5 / 1.5e-5, prandtl).mean()
    assert forced_nusselt(np.array(steady_speed(speeds)) * 0.5 / 1.5e-5, prandtl) == pytest.approx(carried, rel=1e-12)


@pytest.mark.parametrize("name", ["gloss-waterborne", "gloss-solventborne"])
def test_that_a_coat_dries_in_gusts_put_together_as_second_by_second_and_not_sooner(name: str) -> None:
    by_second_s = dry_after_s(name, 1, fmean)
    for width_s in (10, 30, 60):
        assert 1.0 <= dry_after_s(name, width_s, steady_speed) / by_second_s < LATEST
    assert dry_after_s(name, 60, fmean) / by_second_s < 0.93  # why their mean will not do
