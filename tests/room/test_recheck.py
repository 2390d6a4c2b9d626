from __future__ import annotations

from studiowatch.room.recheck import recheck_due_ms

DAY_MS = 86_400_000
CHECKED_MS = 1_772_442_000_000


def due_days(*solvent_days: float) -> float:
    laid_ms = [CHECKED_MS + round(days * DAY_MS) for days in solvent_days]
    return (recheck_due_ms(CHECKED_MS, laid_ms) - CHECKED_MS) / DAY_MS


def test_that_a_sensor_is_due_after_a_month() -> None:
    assert due_days() == 30.0


def test_that_solvent_borne_work_makes_it_due_a_day_after_the_last_coat_of_it() -> None:
    assert due_days(4.0) == 5.0
    assert due_days(4.0, 6.5, 5.0) == 7.5


def test_that_solvent_before_the_last_check_asks_for_nothing() -> None:
    assert due_days(-3.0, -0.5) == 30.0


def test_that_solvent_late_in_the_month_puts_nothing_off() -> None:
    assert due_days(29.5) == 30.0
