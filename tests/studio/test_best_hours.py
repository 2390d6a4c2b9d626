"""The best hours against a minute-by-minute count in the same made-up room, and their chances against fresh days."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass, replace
from datetime import date, datetime, time, timedelta
from zoneinfo import ZoneInfo

import numpy as np
import psychrolib
import pytest

from studiowatch.coats.data_sheet import DataSheet, Kind
from studiowatch.physics.ranges import Array
from studiowatch.room.hourly_log import HourlyLog
from studiowatch.room.outlook import Outlook, look_ahead
from studiowatch.studio.best_hours import (
    GOOD,
    HOUR_MS,
    Reason,
    Room,
    StartHour,
    asides,
    room_hours,
    start_hours,
    stretches,
)
from studiowatch.studio.plan_shapes import Times
from studiowatch.studio.working_hours import WallClock, WorkingHours

psychrolib.SetUnitSystem(psychrolib.SI)
BERLIN = ZoneInfo("Europe/Berlin")
ALWAYS = WorkingHours(days=((0, 24 * 60),) * 7)
GLOSS = DataSheet(
    name="own-gloss",
    title="Own gloss",
    kind=Kind.WATERBORNE,
    volume_solids=0.35,
    density_kg_m3=1030.0,
    wet_um=80.0,
    dry_um=28.0,
    touch_dry_min=30.0,
    clear_h=2.0,
    recoat_h=4.0,
    cure_days=14.0,
    mfft_C=5.0,
    apply_C=(15.0, 30.0),
    max_humidity_pct=75.0,
)
NOW_MS = int(datetime(2026, 3, 2, 8, 20, tzinfo=BERLIN).timestamp() * 1000)


def clock_in(zone: ZoneInfo) -> WallClock:
    def day(time_ms: int) -> date:
        return datetime.fromtimestamp(time_ms / 1000, zone).date()

    def at(of: date, minutes: int) -> int:
        midnight = datetime.combine(of, time(), zone) + timedelta(minutes=minutes)  # on her wall
        return round(midnight.timestamp() * 1000)

    return WallClock(day=day, at=at)


CLOCK = clock_in(BERLIN)


@dataclass(frozen=True)
class Day:
    """A made-up room: damp around one o'clock at night, cold around seven in the morning, each as its day wills."""

    damp_pct: float
    cold_K: float

    def air(self, hour_of_day: float) -> tuple[float, float]:
        at_night = np.exp(-(((hour_of_day - 1.0 + 12.0) % 24.0 - 12.0) ** 2) / 8.0)
        at_seven = np.exp(-(((hour_of_day - 7.0 + 12.0) % 24.0 - 12.0) ** 2) / 3.0)
        return 20.0 - self.cold_K * at_seven, 50.0 + self.damp_pct * at_night


def made_up_days(count: int, seed: int) -> list[Day]:
    chance = np.random.default_rng(seed)
    return [Day(damp_pct=chance.normal(28.0, 6.0), cold_K=chance.normal(5.5, 1.5)) for _ in range(count)]


def hour_of_day(time_ms: float) -> float:
    moment = datetime.fromtimestamp(time_ms / 1000, BERLIN)
    return moment.hour + moment.minute / 60.0 + moment.second / 3600.0


def room_of(days: list[Day], made_ms: int = NOW_MS) -> Room:
    air = np.array([[day.air(hour_of_day(made_ms + hour * HOUR_MS)) for hour in range(97)] for day in days])
    return Room(
        outlook=Outlook(
            temperature_C=air[..., 0], humidity_pct=air[..., 1], air_speed_m_s=np.full(air.shape[:2], 0.05)
        ),
        made_ms=made_ms,
    )


def room_keeps(room: Room, day: int, lay_ms: int) -> bool:
    """Follow a coat minute by minute: its water leaves as the vapour that the air has room for over the sheet's."""
    at_hours = np.arange(97)
    sheet_Pa = 0.5 * psychrolib.GetSatVapPres(23.0)
    left_min = 120.0
    minute = 0
    while left_min > 0.0:
        at_h = (lay_ms + minute * 60_000 - room.made_ms) / HOUR_MS
        temperature_C = float(np.interp(at_h, at_hours, room.outlook.temperature_C[day]))
        humidity_pct = float(np.interp(at_h, at_hours, room.outlook.humidity_pct[day]))
        dew_C = psychrolib.GetTDewPointFromRelHum(temperature_C, humidity_pct / 100.0)
        if humidity_pct > 75.0 or temperature_C < 15.0 or temperature_C - dew_C < 3.0:
            return False
        left_min -= min(1.0, (1.0 - humidity_pct / 100.0) * psychrolib.GetSatVapPres(temperature_C) / sheet_Pa)
        minute += 1
    return True


def told_of(room: Room, hours: WorkingHours = ALWAYS, ready: Times | None = None) -> tuple[StartHour, ...]:
    return start_hours(room_hours(room, GLOSS, CLOCK, now_ms=room.made_ms), hours, CLOCK, ready=ready)


def local(hour: StartHour) -> str:
    return datetime.fromtimestamp(hour.start_ms / 1000, BERLIN).strftime("%a %H")


def test_that_chances_are_those_of_a_count_minute_by_minute() -> None:
    room = room_of(made_up_days(60, seed=1))
    for hour in told_of(room)[:24]:
        kept = float(np.mean([room_keeps(room, day, hour.start_ms) for day in range(60)]))
        assert hour.chance == pytest.approx(kept, abs=0.05), local(hour)  # three days of sixty


def test_that_the_damp_night_and_the_cold_morning_are_named_as_such() -> None:
    reasons = {local(hour): hour.reason for hour in told_of(room_of(made_up_days(256, seed=2)))}
    assert reasons["Mon 12"] is None
    assert reasons["Tue 00"] is Reason.DAMP
    assert reasons["Tue 06"] is Reason.COLD
    assert reasons["Tue 12"] is None


def test_that_good_hours_are_merged_and_the_others_go_by_time() -> None:
    hours = told_of(room_of(made_up_days(256, seed=3)))
    good, others = stretches(hours), asides(hours)
    assert good
    chances = {hour.start_ms: hour for hour in hours}
    for one in good:
        inside = [hour for start_ms, hour in chances.items() if one.first_ms <= start_ms <= one.last_ms]
        assert one.chance == min(hour.chance for hour in inside) >= GOOD
        assert all(hour.reason is None for hour in inside)
    assert [one.first_ms for one in others] == sorted(one.first_ms for one in others)
    covered = Counter((span.last_ms - span.first_ms) // HOUR_MS + 1 for span in (*good, *others))
    assert sum(length * count for length, count in covered.items()) == len(hours) == 48


def test_that_sure_hours_go_first_and_of_like_ones_the_longer_then_the_earlier() -> None:
    chances = [0.7, 0.7, 0.7, 0.3, 0.95, 0.3, 0.8, 0.3, 0.92, 0.99, 0.3, 0.9]  # 0.3 is no good hour, 0.9 is a sure one
    hours = [
        StartHour(start_ms=at * HOUR_MS, chance=chance, reason=Reason.DAMP if chance < GOOD else None)
        for at, chance in enumerate(chances)
    ]
    told = [(one.first_ms // HOUR_MS, one.last_ms // HOUR_MS, one.chance) for one in stretches(hours)]
    assert told == [(8, 9, 0.92), (4, 4, 0.95), (11, 11, 0.9), (0, 2, 0.7), (6, 6, 0.8)]


def wandering_log(seed: int, days: int) -> tuple[Array, Array]:
    """Return °C and % of a room hour by hour from midnight: a daily round, and what the weather adds to it."""
    chance = np.random.default_rng(seed)
    hours = np.arange(24 * days)
    away = np.zeros((hours.size, 2))
    for at in range(1, hours.size):
        away[at] = 0.9 * away[at - 1] + chance.standard_normal(2) * [0.35, 2.2]
    round_ = np.sin(2.0 * np.pi * (hours - 9.0) / 24.0)
    return 18.0 + 2.5 * round_ + away[:, 0], np.clip(64.0 - 10.0 * round_ + away[:, 1], 5.0, 98.0)


def test_that_hours_told_about_eight_of_ten_hold_in_seven_to_nine_of_ten_fresh_days() -> None:
    held = []
    for seed in range(60):
        temperature_C, humidity_pct = wandering_log(seed, 34)
        now_h = 24 * 30 + seed % 24
        log = HourlyLog(
            temperature_C=temperature_C[: now_h + 1],
            humidity_pct=humidity_pct[: now_h + 1],
            air_speed_m_s=np.full(now_h + 1, 0.05),
        )
        made_ms = CLOCK.at(date(2026, 3, 2), 60 * (seed % 24))
        room = Room(outlook=look_ahead(log, 96, seed=seed), made_ms=made_ms)
        truth = Room(
            outlook=Outlook(
                temperature_C=temperature_C[np.newaxis, now_h : now_h + 73],
                humidity_pct=humidity_pct[np.newaxis, now_h : now_h + 73],
                air_speed_m_s=np.full((1, 73), 0.05),
            ),
            made_ms=made_ms,
        )
        for told, was in zip(told_of(room), told_of(truth), strict=True):
            if 0.7 <= told.chance <= 0.9:
                held.append(was.chance == 1.0)
    assert len(held) > 200
    assert 0.7 <= np.mean(held) <= 0.9


@pytest.mark.parametrize(("day", "skipped", "first", "count"), [(29, "02", "01", 1), (25, "none", "02", 2)])
def test_that_a_day_on_which_the_clock_is_set_keeps_full_hours(day: int, skipped: str, first: str, count: int) -> None:
    month = 3 if day == 29 else 10
    made_ms = int(datetime(2026, month, day, 0, 10, tzinfo=BERLIN).timestamp() * 1000)
    told = told_of(room_of([Day(0.0, 0.0)], made_ms))
    moments = [datetime.fromtimestamp(hour.start_ms / 1000, BERLIN) for hour in told]
    assert len(told) == 48
    assert {moment.minute for moment in moments} == {0}
    shown = Counter(moment.strftime("%H") for moment in moments if moment.day == day)
    assert shown[skipped] == 0
    assert shown[first] == count


def test_that_hours_of_two_days_that_touch_at_midnight_are_one() -> None:
    late = WorkingHours(days=((18 * 60, 24 * 60), (0, 3 * 60), None, None, None, None, None))
    reasons = {local(hour): hour.reason for hour in told_of(room_of([Day(0.0, 0.0)]), late)}
    assert reasons["Tue 00"] is None  # prepared before midnight
    assert reasons["Mon 18"] is Reason.OUTSIDE_HOURS  # nothing is prepared yet
    assert reasons["Mon 19"] is None
    assert reasons["Tue 02"] is None  # 45 min to its side
    assert reasons["Tue 03"] is Reason.OUTSIDE_HOURS
    short = WorkingHours(days=((18 * 60, 24 * 60), None, None, None, None, None, None))
    assert {local(hour): hour.reason for hour in told_of(room_of([Day(0.0, 0.0)]), short)}["Tue 00"] is not None


def test_that_what_lies_below_is_waited_for() -> None:
    ready_ms = NOW_MS + 5 * HOUR_MS
    told = told_of(room_of([Day(0.0, 0.0)]), ready=Times(p10=NOW_MS, p50=NOW_MS, p90=ready_ms))
    assert {hour.reason for hour in told if hour.start_ms < ready_ms} == {Reason.NOT_READY}
    assert {hour.reason for hour in told if hour.start_ms >= ready_ms} == {None}
    never = told_of(room_of([Day(0.0, 0.0)]), ready=Times(p10=None, p50=None, p90=None))
    assert {hour.reason for hour in never} == {Reason.NOT_READY}


@pytest.mark.parametrize(("kind", "reason"), [(Kind.WATERBORNE, Reason.MOVING_AIR), (Kind.SOLVENTBORNE, None)])
def test_that_a_fan_spoils_a_waterborne_coat_and_is_never_held_against_airing_vapour(
    kind: Kind, reason: Reason | None
) -> None:
    room = room_of([Day(0.0, 0.0)])
    speed = room.outlook.air_speed_m_s.copy()
    speed[:, 4:8] = 0.6
    blown = replace(room, outlook=replace(room.outlook, air_speed_m_s=speed))
    sheet = replace(GLOSS, kind=kind)
    told = start_hours(room_hours(blown, sheet, CLOCK, now_ms=NOW_MS), ALWAYS, CLOCK)
    assert told[4].reason is reason
