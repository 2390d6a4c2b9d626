"""What weighing the bottle would narrow: against coats whose amount was measured."""

from __future__ import annotations

import math

import pytest

from studiowatch.coats.belief import PRIOR
from studiowatch.coats.data_sheet import DataSheet
from studiowatch.coats.learning import Seen
from studiowatch.coats.readiness import Ready, ready_at
from studiowatch.coats.stage_table import ROW
from studiowatch.coats.stages import Stage
from studiowatch.coats.standing import standing_on
from studiowatch.coats.weighing import WeighingGain, weighing_gain

from .dried_films import looked_ahead


def width(ready: Ready) -> float:
    assert ready.p10_s is not None
    assert ready.p90_s is not None
    return math.log(ready.p90_s / ready.p10_s)


def test_that_the_gain_foretold_is_the_gain_of_a_coat_that_was_measured(gloss: DataSheet) -> None:
    guessed = standing_on(PRIOR, 2001, 5, measured=False)
    measured = standing_on(PRIOR, 2001, 5, measured=True)
    gain = weighing_gain(guessed, looked_ahead(gloss, guessed), (), stage=Stage.DRY_TO_RECOAT)
    assert gain is not None
    truth = ready_at(looked_ahead(gloss, measured)[ROW[Stage.DRY_TO_RECOAT]])
    assert width(gain.weighed) == pytest.approx(width(truth), rel=0.1)  # two quantiles of some 700 draws each
    assert width(gain.weighed) < 0.8 * width(gain.now)


def test_that_the_sentence_gives_both_ranges_in_hours(gloss: DataSheet) -> None:
    guessed = standing_on(PRIOR, 256, 5, measured=False)
    gain = weighing_gain(guessed, looked_ahead(gloss, guessed), (), stage=Stage.DRY_TO_RECOAT)
    assert gain is not None
    assert gain.now.p10_s is not None
    assert gain.sentence.startswith("weighing the bottle would narrow the range of dry to recoat from ")
    assert f"{gain.now.p10_s / 3600.0:.1f} to " in gain.sentence


def test_that_an_amount_that_was_measured_gains_nothing(gloss: DataSheet) -> None:
    measured = standing_on(PRIOR, 64, 5, measured=True)
    assert weighing_gain(measured, looked_ahead(gloss, measured), (), stage=Stage.CLEAR) is None


def test_that_the_gain_is_less_where_tests_have_narrowed_the_range_already(gloss: DataSheet) -> None:
    guessed = standing_on(PRIOR, 2001, 5, measured=False)
    table = looked_ahead(gloss, guessed)
    middle_s = float(table[ROW[Stage.CLEAR], 0])
    seen = [
        Seen(after_s=0.95 * middle_s, stage=Stage.CLEAR, reached=False),
        Seen(after_s=1.1 * middle_s, stage=Stage.CLEAR, reached=True),
    ]
    before = weighing_gain(guessed, table, (), stage=Stage.CLEAR)
    after = weighing_gain(guessed, table, seen, stage=Stage.CLEAR)
    assert before is not None
    assert after is not None
    assert width(after.weighed) / width(after.now) > width(before.weighed) / width(before.now)


@pytest.mark.parametrize(("low_h", "high_h"), [(4.0, None), (4.05, 7.95)], ids=["not reached", "hardly narrower"])
def test_that_a_gain_not_worth_saying_has_no_sentence(low_h: float, high_h: float | None) -> None:
    def ready(p10_h: float, p90_h: float | None) -> Ready:
        high_s = None if p90_h is None else p90_h * 3600.0
        return Ready(p10_s=p10_h * 3600.0, p50_s=6.0 * 3600.0, p90_s=high_s, nominal_s=6.0 * 3600.0)

    assert WeighingGain(stage=Stage.CLEAR, now=ready(4.0, 8.0), weighed=ready(low_h, high_h)).sentence == ""
