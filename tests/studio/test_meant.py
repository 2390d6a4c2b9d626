"""What is meant for the room: its hours on her clock, and what cannot be meant."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, datetime, time, timedelta
from zoneinfo import ZoneInfo

import pytest

from studiowatch.room.intentions import Doing
from studiowatch.speech.units import US, choose
from studiowatch.studio.meant import OFF_M_S, Meant, intentions_of, meant_fault, read_span, span_text
from studiowatch.studio.meant_words import cautions, words
from studiowatch.studio.working_hours import WallClock

BERLIN = ZoneInfo("Europe/Berlin")
HEATER = Meant(key="h", doing=Doing.HEATER, from_min=18 * 60, to_min=23 * 60, target=21.0, first_day=date(2026, 3, 2))
CLOCK = WallClock(
    day=lambda time_ms: datetime.fromtimestamp(time_ms / 1000, BERLIN).date(),
    at=lambda day, minutes: ms(datetime.combine(day, time(), BERLIN) + timedelta(minutes=minutes)),
)


def ms(moment: datetime) -> int:
    return round(moment.timestamp() * 1000)


def hours_from(now: datetime, meant: Meant) -> list[tuple[float, float]]:
    return [(one.start_h, one.end_h) for one in intentions_of([meant], CLOCK, ms(now))]


def test_that_each_day_has_its_hours_as_far_as_an_outlook_goes() -> None:
    noon = datetime(2026, 3, 2, 12, tzinfo=BERLIN)
    assert hours_from(noon, HEATER) == [(6.0, 11.0)]
    assert hours_from(noon, replace(HEATER, days=9)) == [(6.0 + 24 * day, 11.0 + 24 * day) for day in range(4)]


def test_that_hours_that_run_count_from_before_now_and_those_over_not_at_all() -> None:
    assert hours_from(datetime(2026, 3, 2, 20, tzinfo=BERLIN), HEATER) == [(-2.0, 3.0)]
    late = datetime(2026, 3, 2, 23, tzinfo=BERLIN)
    assert hours_from(late, HEATER) == []
    assert HEATER.is_over(CLOCK, ms(late))
    assert not replace(HEATER, days=2).is_over(CLOCK, ms(late))


def test_that_a_night_on_which_the_clock_is_set_is_an_hour_shorter() -> None:
    night = replace(HEATER, from_min=22 * 60, to_min=6 * 60, first_day=date(2026, 3, 28))
    ((start_h, end_h),) = hours_from(datetime(2026, 3, 28, 21, tzinfo=BERLIN), night)
    assert (start_h, end_h) == (1.0, 8.0)


@pytest.mark.parametrize(
    ("from_min", "to_min", "first_h"),
    [(105, 150, [(0.75, 1.5), (23.75, 24.5)]), (150, 190, [(24.5, 25.0 + 10 / 60)])],
    ids=["ends in what is skipped", "nothing is left"],
)
def test_that_hours_in_what_a_clock_change_skips_stop_nothing(
    from_min: int, to_min: int, first_h: list[tuple[float, float]]
) -> None:
    """By hand: in Berlin 01:45 comes 0.75 h after 01:00, and 02:30, by the offset before the change, 1.5 h after it.

    That is 03:30 on the clock, after 03:10; on the next day the same hours come 24 h later by the clock, 23 h in all.
    """
    drying = replace(HEATER, from_min=from_min, to_min=to_min, first_day=date(2026, 3, 29), days=2)
    told = hours_from(datetime(2026, 3, 29, 1, tzinfo=BERLIN), drying)
    assert told == [pytest.approx(span) for span in first_h]


def test_that_every_day_is_never_over_and_goes_as_far_as_an_outlook() -> None:
    daily = replace(HEATER, days=None)
    long_after = datetime(2031, 3, 2, 12, tzinfo=BERLIN)
    assert not daily.is_over(CLOCK, ms(long_after))
    assert hours_from(long_after, daily) == [(6.0 + 24 * day, 11.0 + 24 * day) for day in range(4)]
    night = replace(daily, from_min=22 * 60, to_min=6 * 60)
    assert hours_from(datetime(2026, 3, 9, 2, tzinfo=BERLIN), night)[0] == (-4.0, 4.0)


def test_that_all_day_on_every_day_leaves_no_hour_out() -> None:
    off = replace(HEATER, doing=Doing.FAN, target=OFF_M_S, from_min=0, to_min=24 * 60, days=None)
    spans = hours_from(datetime(2026, 3, 9, 15, tzinfo=BERLIN), off)
    assert spans[0] == (-15.0, 9.0)
    assert [end for _, end in spans[:-1]] == [start for start, _ in spans[1:]]
    assert spans[-1][1] >= 96.0


FAN = replace(HEATER, doing=Doing.FAN, target=0.5)
OFF = replace(FAN, target=OFF_M_S, from_min=0, to_min=24 * 60, days=None)


@pytest.mark.parametrize(
    ("meant", "metric", "us"),
    [
        (HEATER, "heater 18:00-23:00 to 21 °C, Mon 2 Mar", "heater 6:00 pm-11:00 pm to 69.8 °F, Mon 2 Mar"),
        (
            replace(HEATER, days=3),
            "heater 18:00-23:00 to 21 °C, from Mon 2 Mar on, 3 days",
            "heater 6:00 pm-11:00 pm to 69.8 °F, from Mon 2 Mar on, 3 days",
        ),
        (
            replace(FAN, days=None),
            "fan on 18:00-23:00, 0.5 m/s at the pieces, every day from Mon 2 Mar on",
            "fan on 6:00 pm-11:00 pm, 98 ft/min at the pieces, every day from Mon 2 Mar on",
        ),
        (OFF, "fan off all day, every day from Mon 2 Mar on", "fan off all day, every day from Mon 2 Mar on"),
    ],
)
def test_that_it_is_said_in_her_units_and_on_her_clock(meant: Meant, metric: str, us: str) -> None:
    assert words(meant) == metric
    choose(US)
    assert words(meant) == us


@pytest.mark.parametrize("doing", list(Doing))
def test_that_what_goes_on_has_its_cautions_and_defers_to_its_maker(doing: Doing) -> None:
    told = " ".join(cautions(doing))
    for part in ("its own instructions", "solvent", "Mains", "nothing left on alone", "local codes", "Fresh air"):
        assert part in told


def test_that_still_air_is_never_asked_for_beside_solvent_vapour() -> None:
    assert "keep the room aired" in " ".join(cautions(Doing.FAN, is_on=False))


@pytest.mark.parametrize("text", ["18:00-23:00", "22:30-06:00", "00:00-24:00"])
def test_that_hours_are_written_as_they_are_read(text: str) -> None:
    from_min, to_min = read_span(text)
    assert span_text(replace(HEATER, from_min=from_min, to_min=to_min)) == text


@pytest.mark.parametrize("text", ["", "18-23", "18:00", "18:00-18:00", "18:60-19:00", "25:00-26:00", "24:00-01:00"])
def test_that_other_texts_are_no_hours(text: str) -> None:
    with pytest.raises(ValueError, match="give from and until"):
        read_span(text)


@pytest.mark.parametrize(
    ("meant", "says"),
    [
        (replace(HEATER, target=90.0), "target of the heater is 90 °C"),
        (replace(HEATER, target=float("nan")), "target of the heater"),
        (replace(HEATER, doing=Doing.DEHUMIDIFIER), "target of the dehumidifier is 21 %"),
        (replace(HEATER, days=0), "Days in a row are 0"),
        (replace(HEATER, days=10**9), "Days in a row"),
        (replace(HEATER, from_min=-5), "two times of the day"),
        (replace(HEATER, doing=Doing.FAN, target=-0.5), "target of the fan is -0.5 m/s"),
    ],
)
def test_that_what_cannot_be_is_refused_in_one_sentence(meant: Meant, says: str) -> None:
    assert meant_fault(HEATER) == ""
    assert says in meant_fault(meant)
