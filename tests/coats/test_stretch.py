"""Many spans taken together must be the same as one after another: the arithmetic of both is the same but for order."""

from __future__ import annotations

from dataclasses import fields
from itertools import pairwise
from math import sin

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from studiowatch.coats.anchoring import anchor
from studiowatch.coats.bound_water import CLEAR_BELOW
from studiowatch.coats.draws import sample
from studiowatch.coats.film import Film, advance, advance_through, lay
from studiowatch.coats.stage_table import ROW
from studiowatch.coats.stages import Stage
from studiowatch.coats.waterborne import WaterState
from studiowatch.physics.air import Air
from studiowatch.physics.ranges import OutOfRange
from studiowatch.service.sheet_shelf import built_in_sheets

DRAWS = sample(24, 5)
SHEETS = built_in_sheets()
HOUR_S = 3600.0
ROUNDING = 1e-9  # relative; a stage may come to the 1e-8 s to which the ages are inverted
ROOMS = {"temperate": (20.5, 52.0), "cold": (10.0, 60.0), "damp": (17.0, 88.0)}
Spans = list[tuple[Air, float]]


def spans(room: str, hours: float, step_s: float, *, from_h: float = 0.0) -> Spans:
    """Return the airs of a restless room; the damp one goes up to saturation and down again."""
    base_C, base_pct = ROOMS[room]
    starts = from_h * HOUR_S + step_s * np.arange(round(hours * HOUR_S / step_s))
    return [
        (
            Air(
                temperature_C=base_C + 2.0 * sin(at_s / 13_750.0) + 0.5 * sin(at_s / 370.0),
                humidity_pct=min(base_pct + 14.0 * sin(at_s / 17_000.0), 100.0),
                air_speed_m_s=0.05 + 0.05 * sin(at_s / 900.0) ** 8,
            ),
            step_s,
        )
        for at_s in starts
    ]


def laid(name: str, over: Film | None = None) -> Film:
    sheet = SHEETS[name]
    return lay(sheet, anchor(sheet, DRAWS), wet_um=sheet.wet_um, side_m=0.4, over=over)


def one_by_one(film: Film, log: Spans) -> Film:
    for air, dt_s in log:
        film, _ = advance(film, air, dt_s)
    return film


def assert_same(together: Film, apart: Film) -> None:
    for one, other in zip((*together.below, together), (*apart.below, apart), strict=True):
        assert one.elapsed_s == pytest.approx(other.elapsed_s, rel=ROUNDING)
        for field in fields(one.state):
            value, expected = getattr(one.state, field.name), getattr(other.state, field.name)
            if isinstance(value, np.ndarray):
                np.testing.assert_allclose(value, expected, rtol=ROUNDING, atol=1e-15, err_msg=field.name)
            else:
                assert value == expected


@pytest.mark.parametrize("room", ROOMS)
@pytest.mark.parametrize("name", ["gloss-waterborne", "gloss-solventborne", "paint-brushed"])
def test_that_a_log_taken_together_dries_a_coat_as_its_readings_one_by_one(name: str, room: str) -> None:
    log = [*spans(room, 12.0, 120.0), *spans(room, 240.0, 1800.0, from_h=12.0)]
    together, told = advance_through(laid(name), log)
    assert_same(together, one_by_one(laid(name), log))
    times_s = [reached.elapsed_s for reached in told]
    assert times_s == sorted(times_s)
    assert {reached.stage for reached in told} == {stage for stage in Stage if together.reached_s(stage) is not None}


@pytest.mark.parametrize("wait_h", [0.3, 2.0, 9.0, 30.0])
@pytest.mark.parametrize(
    "names",
    [
        ("isolation-waterborne", "gloss-waterborne", "satin-waterborne"),
        ("paint-brushed", "gloss-waterborne"),
        ("gloss-waterborne", "paint-brushed"),
        ("gloss-solventborne", "satin-solventborne"),
        ("satin-solventborne", "matt-waterborne", "gloss-waterborne-thin"),
    ],
)
def test_that_a_log_taken_together_dries_a_stack_as_its_readings_one_by_one(names: list[str], wait_h: float) -> None:
    together = apart = laid(names[0])
    for at, name in enumerate(names[1:], start=1):
        log = spans("damp", wait_h, 120.0, from_h=(at - 1) * wait_h)
        together, _ = advance_through(together, log)
        together, apart = laid(name, together), laid(name, one_by_one(apart, log))
    log = [*spans("damp", 10.0, 120.0), *spans("temperate", 200.0, 1800.0)]
    together, _ = advance_through(together, log)
    assert_same(together, one_by_one(apart, log))


@settings(deadline=None, max_examples=20)
@given(cuts=st.lists(st.integers(0, 300), max_size=4))
def test_that_it_does_not_matter_where_a_log_is_cut(cuts: list[int]) -> None:
    log = spans("cold", 60.0, 720.0)
    whole, _ = advance_through(laid("satin-waterborne"), log)
    film = laid("satin-waterborne")
    for start, end in pairwise([0, *sorted(cuts), len(log)]):
        film, _ = advance_through(film, log[start:end])
    assert_same(film, whole)


def test_that_a_stage_comes_in_the_first_span_that_brings_it_whatever_comes_later() -> None:
    # clear in dry air, the film takes water up again near saturation and clears once more: it was clear at the first
    dry, damp = Air(temperature_C=21.0, humidity_pct=30.0), Air(temperature_C=21.0, humidity_pct=99.0)
    wet, _ = advance(laid("gloss-waterborne"), dry, 2.0 * HOUR_S)
    assert np.isinf(wet.state.reached[ROW[Stage.DRY_HARD]]).all()
    once, _ = advance(wet, dry, 24.0 * HOUR_S)
    assert np.isfinite(once.state.reached[ROW[Stage.CLEAR]]).all()
    cloudy, _ = advance_through(wet, [(dry, 24.0 * HOUR_S), (damp, 240.0 * HOUR_S)])
    assert isinstance(cloudy.state, WaterState)
    assert (cloudy.state.bound > CLEAR_BELOW).any()
    again, _ = advance_through(wet, [(dry, 24.0 * HOUR_S), (damp, 240.0 * HOUR_S), (dry, 24.0 * HOUR_S)])
    for stage in (Stage.CLEAR, Stage.DRY_HARD):
        first_s = once.state.reached[ROW[stage]]
        np.testing.assert_allclose(
            again.state.reached[ROW[stage]][first_s < np.inf], first_s[first_s < np.inf], rtol=1e-9
        )


def test_that_a_log_with_an_impossible_reading_is_refused_as_a_whole() -> None:
    film = laid("gloss-waterborne")
    good = Air(temperature_C=21.0, humidity_pct=50.0)
    with pytest.raises(OutOfRange, match="humidity is 130 %"):
        advance_through(film, [(good, 60.0), (Air(temperature_C=21.0, humidity_pct=130.0), 60.0)])
    with pytest.raises(OutOfRange, match="time step is -1 s"):
        advance_through(film, [(good, 60.0), (good, -1.0)])


def test_that_an_empty_log_changes_nothing() -> None:
    film = laid("gloss-waterborne")
    after, told = advance_through(film, [])
    assert (after.state, after.elapsed_s, told) == (film.state, 0.0, ())
