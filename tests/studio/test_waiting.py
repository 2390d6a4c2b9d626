"""About how long until the room is fit: against rooms that are made so that the answer is known."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from studiowatch.coats.data_sheet import DataSheet
from studiowatch.physics.moist_air import dew_point
from studiowatch.room.air_movement import Movement
from studiowatch.service.sheet_shelf import built_in_sheets
from studiowatch.studio.concern import AirNow
from studiowatch.studio.sentence import room_check
from studiowatch.studio.waiting import UNKNOWN, Guess, Need, Quantity, how_long, unmet
from studiowatch.studio.words import Level

NOW_MS = 1_772_460_000_000
MINUTE_MS = 60_000
DRY_ENOUGH = Need(quantity=Quantity.HUMIDITY, limit=75.0, is_least=False)
WARM_ENOUGH = Need(quantity=Quantity.TEMPERATURE, limit=16.0, is_least=True)
SHEETS = built_in_sheets()


def test_that_nothing_to_wait_for_says_nothing() -> None:
    assert how_long((), Fixed(), NOW_MS, str) == ""


class Fixed:
    """Another outlook: each quantity is met at a time of its own, or at none."""

    def __init__(self, **minutes: int) -> None:
        self._minutes = minutes

    def met(self, need: Need, now_ms: int) -> Guess | None:
        minutes = self._minutes.get(need.quantity.value)
        return None if minutes is None else Guess(time_ms=now_ms + minutes * MINUTE_MS, basis=need.quantity.value)


def test_that_the_last_of_several_needs_counts_and_one_unknown_makes_all_unknown() -> None:
    both = (DRY_ENOUGH, WARM_ENOUGH)
    words = how_long(both, Fixed(humidity=40, temperature=130), NOW_MS, lambda ms: f"+{(ms - NOW_MS) // MINUTE_MS}")
    assert words == "That is likely from about +130 (2 h): temperature."
    assert how_long(both, Fixed(humidity=40), NOW_MS, str) == UNKNOWN


@pytest.mark.parametrize("sheet", SHEETS.values(), ids=SHEETS)
def test_that_the_room_waits_for_something_exactly_where_the_check_says_to_wait(sheet: DataSheet) -> None:
    plain = AirNow(movement=Movement.STILL)
    for temperature_C in np.arange(4.0, 40.0, 1.5):
        for humidity_pct in np.arange(20.0, 99.0, 4.5):
            dew_C = float(dew_point(temperature_C, humidity_pct))
            air = replace(
                plain, temperature_C=float(temperature_C), humidity_pct=float(humidity_pct), dew_point_C=dew_C
            )
            waits = room_check(air, sheet, clock_text=str).level > Level.CALM
            assert waits == bool(unmet(air, sheet)), (temperature_C, humidity_pct)
