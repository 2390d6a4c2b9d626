"""The curves carried on to the newest live value."""

from __future__ import annotations

from dataclasses import replace

import numpy as np

from studiowatch.service.board_view import BoardView
from studiowatch.service.ports import Series
from studiowatch.service.snapshot import RoomView, Snapshot
from studiowatch.studio.words import Level, Sentence
from studiowatch.ui.models.history_live import EMPTY, RoomData, carried_on
from studiowatch.ui.models.history_panels import panels_of
from studiowatch.ui.models.history_view import HOUR_MS

NOW_MS = 1_795_000_000_000
QUIET = Snapshot(
    time_ms=NOW_MS,
    board=BoardView(),
    room=RoomView(time_ms=NOW_MS),
    sentence=Sentence(level=Level.CALM, headline=""),
)


def flat(first_s: int, last_s: int, value: float, bucket_ms: int = 1000) -> Series:
    """Return one value a second, from `first_s` to before `last_s`, seconds from now."""
    time_ms = NOW_MS + 1000 * np.arange(first_s, last_s)
    values = np.full(len(time_ms), value)
    return Series(time_ms=time_ms, low=values, high=values, mean=values, bucket_ms=bucket_ms)


def test_that_curves_end_at_the_live_value_before_the_log_is_asked_again() -> None:
    data = RoomData(air=flat(-600, -60, 0.05))
    room = RoomView(time_ms=NOW_MS, air_speed_m_s=0.45, temperature_C=20.0, humidity_pct=48.0)
    live = replace(QUIET, room=room)
    temperature, humidity, air = panels_of(data, EMPTY, live)
    assert air.reading(air.curves[0], NOW_MS) == "0.45"
    assert humidity.reading(humidity.curves[0], NOW_MS) == "48"
    assert temperature.reading(temperature.curves[0], NOW_MS) == "20.0"
    assert air.scale(NOW_MS - HOUR_MS, NOW_MS + HOUR_MS, 4).high >= 0.45
    assert np.all(np.diff(air.curves[0].series.time_ms) > 0)


def test_that_the_live_value_follows_a_bucket_whose_middle_lies_ahead() -> None:
    ahead = flat(20, 21, 0.05, bucket_ms=80_000)
    assert np.all(np.diff(carried_on(ahead, NOW_MS, 0.4).time_ms) > 0)


def test_that_a_silent_board_adds_no_live_value() -> None:
    silent = replace(
        QUIET, board=BoardView(silent=True), room=RoomView(time_ms=NOW_MS, air_speed_m_s=0.45, temperature_C=20.0)
    )
    assert not any(panel.logged(NOW_MS - HOUR_MS, NOW_MS + HOUR_MS) for panel in panels_of(RoomData(), EMPTY, silent))


def test_that_an_uncalibrated_signal_is_carried_on_in_its_own_unit() -> None:
    data = RoomData(air=flat(-600, -1, 55.0), signal=True)
    room = RoomView(time_ms=NOW_MS, air_signal_mV=70.0)
    air = panels_of(data, EMPTY, replace(QUIET, room=room))[2]
    assert air.unit == "mV"
    assert air.reading(air.curves[0], NOW_MS) == "70"
