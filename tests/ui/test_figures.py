"""The figures: what is measured is shown, what is not is said, and nothing is made up."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC

import pytest

from studiowatch.room.air_movement import Movement
from studiowatch.service.snapshot import RoomView, Snapshot
from studiowatch.studio.words import Level
from studiowatch.ui.models.figures import NOT_MEASURED, Figure, room_figures

from .scenes import CALM_ROOM, FAN_ROOM, FIRST_RUN, FOUR_WARNED, ONE_WET, SILENT, UNCALIBRATED


def shown(room: RoomView) -> dict[str, Figure]:
    snapshot: Snapshot = replace(FOUR_WARNED, room=room)
    return {figure.name: figure for figure in room_figures(snapshot, UTC)}


def test_that_each_figure_says_what_it_means_for_a_wet_coat() -> None:
    figures = shown(FAN_ROOM)
    assert figures["Air temperature"].meaning == "coldest wet film 18.4 °C\nBlue Ladder"
    assert figures["Relative humidity"].meaning == "dew point 11.8 °C\n6.6 °C below film"
    assert figures["Air speed"].meaning == "a fan since 14:07"
    assert figures["Air speed"].level is Level.ACT


def test_that_a_film_colder_than_the_dew_point_is_said_the_right_way_round() -> None:
    assert "1.5 °C above film" in shown(replace(FAN_ROOM, film_above_dew_K=-1.5))["Relative humidity"].meaning


def test_that_speed_under_the_floor_is_still_and_no_number() -> None:
    still = shown(replace(CALM_ROOM, air_speed_m_s=0.099))["Air speed"]
    assert (still.value, still.unit, still.meaning) == ("still", "", "under 0.1 m/s")
    assert shown(replace(CALM_ROOM, air_speed_m_s=0.101))["Air speed"].value == "0.10"


@pytest.mark.parametrize(
    ("movement", "value"),
    [
        (Movement.STILL, "still"),
        (Movement.MOVING, "moving"),
        (Movement.FAN, "moving"),
        (Movement.UNKNOWN, NOT_MEASURED),
    ],
)
def test_that_a_signal_without_calibration_is_never_a_speed(movement: Movement, value: str) -> None:
    figure = shown(replace(UNCALIBRATED.room, movement=movement))["Air"]
    assert figure.value == value
    assert "612 mV" in figure.meaning
    assert "m/s" not in figure.spoken


def test_that_what_is_not_measured_says_so() -> None:
    figures = shown(RoomView(time_ms=0))
    assert all(figure.value == NOT_MEASURED for figure in figures.values())
    assert all("not measured" in figure.spoken for figure in figures.values())
    assert "Dust" not in figures


def test_that_dust_is_shown_only_where_it_is_counted() -> None:
    assert "Dust" not in shown(CALM_ROOM)
    assert shown(FAN_ROOM)["Dust"].meaning == "2,400 /m³\nover 5 µm"


@pytest.mark.parametrize(("count", "told"), [(0.0, "0"), (7.0, "7"), (44_288.0, "44,000"), (44_612.0, "45,000")])
def test_that_dust_is_told_no_finer_than_it_is_counted(count: float, told: str) -> None:
    room = replace(CALM_ROOM, particles_per_m3_5um=count)
    assert shown(room)["Dust"].meaning == f"{told} /m³\nover 5 µm"


@pytest.mark.parametrize(
    ("count", "word"),
    # ISO 14644-1:2015, table 1: class 8 has up to 29 300, class 9 up to 293 000 particles of 5 µm and more per m³.
    [(0, "low"), (29_299, "low"), (29_301, "some"), (292_999, "some"), (293_001, "high")],
)
def test_that_dust_says_first_whether_it_is_much(count: float, word: str) -> None:
    assert shown(replace(FAN_ROOM, particles_per_m3_5um=count))["Dust"].value == word


def test_that_a_lone_wet_film_needs_no_name() -> None:
    one = room_figures(ONE_WET, UTC)[0]
    assert one.meaning == "wet film 18.9 °C"


def test_that_frost_has_a_minus_sign() -> None:
    assert shown(replace(CALM_ROOM, temperature_C=-2.25))["Air temperature"].value.startswith("−2.2")


def test_that_a_silent_board_makes_every_figure_old() -> None:
    figures = room_figures(SILENT, UTC)
    assert all(figure.stale and figure.meaning == "last heard 14:11" for figure in figures)
    assert all(figure.level is Level.CALM for figure in figures)
    assert all(figure.meaning == "no reading yet" for figure in room_figures(FIRST_RUN, UTC))
