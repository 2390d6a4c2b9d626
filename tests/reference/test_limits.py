"""Limits of the room against the standards that they rest on."""

from __future__ import annotations

from collections.abc import Callable

from studiowatch.room.limits import AIR_SPEED

Rows = list[dict[str, str]]


def test_that_care_about_moving_air_begins_where_people_feel_a_draught(table: Callable[[str], Rows]) -> None:
    # source: draught rate of ISO 7730; see the file
    speeds = [float(row["air_speed_m_s"]) for row in table("draught")]
    assert min(speeds) <= AIR_SPEED.caution <= max(speeds)
    assert AIR_SPEED.act > max(speeds)


def test_that_the_basis_of_the_air_limit_quotes_the_table(table: Callable[[str], Rows]) -> None:
    # source: draught rate of ISO 7730; see the file
    coolest, *_, warmest = table("draught")
    speeds = f"{coolest['air_speed_m_s']} to {warmest['air_speed_m_s']} m/s"
    temperatures = f"{coolest['temperature_C']} to {warmest['temperature_C']} °C"
    assert f"{speeds} at {temperatures}" in AIR_SPEED.basis
