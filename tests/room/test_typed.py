"""A typed reading says itself that it was typed, and a board's reading cannot say so by chance."""

from __future__ import annotations

import pytest

from studiowatch.room.readings import Channel, ChannelFault, Reading
from studiowatch.room.typed import Felt, felt_in, is_typed, typed_reading


@pytest.mark.parametrize("felt", [None, *Felt])
def test_that_a_typed_reading_tells_what_was_felt_and_has_no_air_speed(felt: Felt | None) -> None:
    reading = typed_reading(time_ms=1, temperature_C=20.5, humidity_pct=48.0, felt=felt)
    assert is_typed(reading)
    assert felt_in(reading) is felt
    assert reading.air_speed_m_s is None
    assert not reading.checked


@pytest.mark.parametrize(
    "reading",
    [
        Reading(time_ms=1, temperature_C=20.5),
        Reading(time_ms=1, checked=False, faults=(ChannelFault(channel=Channel.AIR_SPEED, code="nak"),)),
        Reading(time_ms=1, checked=False, faults=(ChannelFault(channel=Channel.HUMIDITY, code="typed"),)),
        Reading(time_ms=1, faults=(ChannelFault(channel=Channel.AIR_SPEED, code="typed"),)),
    ],
)
def test_that_a_boards_reading_is_not_taken_for_typed(reading: Reading) -> None:
    assert not is_typed(reading)
