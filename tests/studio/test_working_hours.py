"""Working hours: where in a week a piece of work fits, over days off, other work and the nights clocks are changed."""

from __future__ import annotations

from datetime import UTC, date, datetime, time, timedelta
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studiowatch.studio.working_hours import WallClock, WorkingHours, hours_text, read_hours, week_text

BERLIN = ZoneInfo("Europe/Berlin")
MINUTE_MS = 60_000
HOUR_MS = 60 * MINUTE_MS


def clock(zone: ZoneInfo = BERLIN) -> WallClock:
    def at(day: date, minutes: int) -> int:
        moment = datetime.combine(day, time()) + timedelta(minutes=minutes)
        return round(moment.replace(tzinfo=zone).timestamp() * 1000)

    return WallClock(day=lambda ms: datetime.fromtimestamp(ms / 1000, zone).date(), at=at)


def ms(text: str, zone: ZoneInfo = BERLIN) -> int:
    return round(datetime.fromisoformat(text).replace(tzinfo=zone).timestamp() * 1000)


def fit(hours: WorkingHours, from_: str, *, now: str | None = None, busy: tuple[tuple[str, str], ...] = ()) -> str:
    """Return where 25 min before and 45 min after a moment fit, in Berlin."""
    found = hours.fit(
        ms(from_),
        clock(),
        now_ms=ms(now or from_),
        before_ms=25 * MINUTE_MS,
        after_ms=45 * MINUTE_MS,
        busy=[(ms(start), ms(end)) for start, end in busy],
    )
    assert found is not None
    return datetime.fromtimestamp(found / 1000, BERLIN).strftime("%Y-%m-%d %H:%M")


def test_that_the_usual_week_is_nine_to_six_with_sunday_off() -> None:
    assert week_text(WorkingHours()) == "Mon to Sat 09:00-18:00, Sun off"


def test_that_preparing_may_begin_before_a_piece_is_ready_but_not_before_now() -> None:
    # ready at 11:00, now 10:00: prepared from 10:35 on, the brush goes down as it is ready
    assert fit(WorkingHours(), "2026-03-02 11:00", now="2026-03-02 10:00") == "2026-03-02 11:00"
    assert fit(WorkingHours(), "2026-03-02 10:00") == "2026-03-02 10:25"


def test_that_what_would_run_over_the_end_of_the_day_waits_for_the_next_working_day() -> None:
    # 17:15 + 45 min is 18:00 to the minute; five minutes later does not fit any more
    assert fit(WorkingHours(), "2026-03-02 17:15", now="2026-03-02 12:00") == "2026-03-02 17:15"
    assert fit(WorkingHours(), "2026-03-02 17:20", now="2026-03-02 12:00") == "2026-03-03 09:25"
    # 2026-03-07 is a Saturday, and Sunday is off
    assert fit(WorkingHours(), "2026-03-07 17:20", now="2026-03-07 12:00") == "2026-03-09 09:25"


def test_that_other_work_is_gone_round_and_a_gap_that_is_long_enough_is_used() -> None:
    busy = (("2026-03-02 09:00", "2026-03-02 10:10"), ("2026-03-02 11:20", "2026-03-02 12:30"))
    assert fit(WorkingHours(), "2026-03-02 09:00", busy=busy) == "2026-03-02 10:35"
    tight = (("2026-03-02 09:00", "2026-03-02 10:10"), ("2026-03-02 11:15", "2026-03-02 12:30"))
    assert fit(WorkingHours(), "2026-03-02 09:00", busy=tight) == "2026-03-02 12:55"


def test_that_working_hours_follow_her_wall_clock_over_the_change_to_summer_time() -> None:
    # in Berlin clocks go from 02:00 to 03:00 on Sunday 2026-03-29: nine o'clock is 08:00 UTC before and 07:00 after
    (saturday, monday) = WorkingHours().spans(date(2026, 3, 28), 3, clock())
    assert [datetime.fromtimestamp(start / 1000, UTC).hour for start, _ in (saturday, monday)] == [8, 7]


def test_that_without_any_hours_nothing_fits() -> None:
    never = WorkingHours(days=(None,) * 7)
    assert never.is_never
    assert never.fit(0, clock(), now_ms=0, before_ms=0, after_ms=1) is None
    # nor does a work that is longer than any day
    assert WorkingHours().fit(0, clock(), now_ms=0, before_ms=6 * HOUR_MS, after_ms=6 * HOUR_MS) is None


@pytest.mark.parametrize(
    ("text", "minutes"), [("09:00-18:00", (540, 1080)), (" 9:30 – 24:00 ", (570, 1440)), ("Off", None)]
)
def test_that_hours_are_read_as_people_write_them(text: str, minutes: tuple[int, int] | None) -> None:
    assert read_hours(text) == minutes
    assert read_hours(hours_text(minutes)) == minutes


@pytest.mark.parametrize("text", ["", "9-18", "18:00-09:00", "09:00-09:00", "09:60-18:00", "09:00-24:01", "all day"])
def test_that_other_hours_are_refused_with_what_was_written(text: str) -> None:
    with pytest.raises(ValueError, match=f"Working hours are {text!r}"):
        read_hours(text)


def test_that_one_day_is_changed_and_the_week_told_in_stretches() -> None:
    hours = WorkingHours().with_day("wednesday", "off").with_day("sunday", "10:00-14:00")
    assert week_text(hours) == "Mon to Tue 09:00-18:00, Wed off, Thu to Sat 09:00-18:00, Sun 10:00-14:00"


@given(
    from_min=st.integers(0, 14 * 24 * 60),
    busy=st.lists(st.tuples(st.integers(0, 14 * 24 * 60), st.integers(1, 300)), max_size=12),
    before=st.integers(0, 60),
    after=st.integers(1, 120),
)
def test_that_a_place_is_always_within_one_days_hours_and_free(
    from_min: int, busy: list[tuple[int, int]], before: int, after: int
) -> None:
    base = ms("2026-03-20 00:00")
    taken = [(base + start * MINUTE_MS, base + (start + length) * MINUTE_MS) for start, length in busy]
    start_ms = base + from_min * MINUTE_MS
    found = WorkingHours().fit(
        start_ms, clock(), now_ms=base, before_ms=before * MINUTE_MS, after_ms=after * MINUTE_MS, busy=taken
    )
    assert found is not None
    begins, ends = found - before * MINUTE_MS, found + after * MINUTE_MS
    local = [datetime.fromtimestamp(at / 1000, BERLIN) for at in (begins, ends)]
    assert found >= start_ms
    assert local[0].date() == local[1].date()
    assert local[0].weekday() < 6
    assert local[0].time() >= time(9)
    assert local[1].time() <= time(18)
    assert all(end <= begins or start >= ends for start, end in taken)
