"""The room before now: a day of the log at a look, minutes from then on, and what a fault of the log leaves."""

from __future__ import annotations

from collections.abc import Sequence

from studiowatch.room.readings import Reading
from studiowatch.service.replaying import NoLog
from studiowatch.service.room_past import AGAIN_MS, RoomPastDesk
from studiowatch.store.trouble import StoreTrouble
from studiowatch.studio.concern import AirNow
from studiowatch.studio.waiting import MOST_DAYS, Need, Quantity

NOW_MS = 1_772_460_000_000
MINUTE_MS = 60_000
HOUR_MS = 60 * MINUTE_MS
DRY_ENOUGH = Need(quantity=Quantity.HUMIDITY, limit=75.0, is_least=False)
DAMP = AirNow(temperature_C=20.0, humidity_pct=80.0)


class DampNights(NoLog):
    """A log of rooms that are fit from two hours after now's time of day on, for six hours; it counts the days read."""

    def __init__(self) -> None:
        self.read = 0
        self.refuses = False

    def minute_means(self, start_ms: int, end_ms: int) -> Sequence[Reading]:
        if self.refuses:
            raise StoreTrouble("It is in use.")
        self.read += 1
        return [
            Reading(
                time_ms=time_ms,
                temperature_C=20.0,
                humidity_pct=60.0 if 2 * HOUR_MS <= (time_ms - NOW_MS) % (24 * HOUR_MS) < 8 * HOUR_MS else 80.0,
                air_speed_m_s=None,
            )
            for time_ms in range(start_ms, end_ms, MINUTE_MS)
        ]


def test_that_a_look_reads_one_day_and_all_looks_no_more_than_a_fortnight() -> None:
    log = DampNights()
    desk = RoomPastDesk(log=log)
    for look in range(MOST_DAYS + 5):
        desk.look(DAMP, NOW_MS + look * 1000)
        assert log.read == min(look + 1, MOST_DAYS)
    guess = desk.met(DRY_ENOUGH, NOW_MS + 30_000)
    assert guess is not None
    assert abs(guess.time_ms - NOW_MS - 2 * HOUR_MS) <= 2 * MINUTE_MS


def test_that_a_log_that_cannot_be_read_is_left_alone_for_a_while_and_nothing_is_known() -> None:
    log = DampNights()
    log.refuses = True
    desk = RoomPastDesk(log=log)
    desk.look(DAMP, NOW_MS)
    assert desk.met(DRY_ENOUGH, NOW_MS) is None
    log.refuses = False
    desk.look(DAMP, NOW_MS + 1000)
    assert log.read == 0
    desk.look(DAMP, NOW_MS + AGAIN_MS)
    assert log.read == 1


def test_that_live_minutes_make_a_trend() -> None:
    desk = RoomPastDesk(log=NoLog())
    for minute in range(50):
        air = AirNow(temperature_C=20.0, humidity_pct=85.0 - 0.1 * minute)  # 6 % an hour
        desk.look(air, NOW_MS + minute * MINUTE_MS)
        desk.look(air, NOW_MS + minute * MINUTE_MS + 5_000)
    guess = desk.met(DRY_ENOUGH, NOW_MS + 49 * MINUTE_MS)
    assert guess is not None
    assert abs(guess.time_ms - NOW_MS - 100 * MINUTE_MS) <= MINUTE_MS


def test_that_a_set_clock_makes_it_read_again() -> None:
    log = DampNights()
    desk = RoomPastDesk(log=log)
    desk.look(DAMP, NOW_MS)
    desk.forget()
    desk.look(DAMP, NOW_MS + 7_200_000)
    assert log.read == 2
