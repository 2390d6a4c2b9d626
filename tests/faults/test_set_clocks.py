"""A clock that is set while a coat of an earlier session dries, and a restart after that, over a real store."""

from __future__ import annotations

import itertools
from pathlib import Path

import pytest

from studiowatch.service.commands import RemindLater, SnoozePrompt
from studiowatch.service.correction_commands import Undo
from studiowatch.service.rounds import ADVANCE_MS
from studiowatch.service.snapshot import WarningView
from studiowatch.studio.warnings import WarningState

from ..service.scripted import ScriptedClock  # noqa: TID252 - shared with the keeper's tests
from .test_watch_faults import Stepped

HOUR_MS = 3_600_000
MINUTE_MS = 60_000


class Warned(Stepped):
    """A watch over one wet coat whose clock can be set, with a look at how its one warning of a kind stands."""

    def begin(self) -> None:
        self.open()
        self.lay()
        self.read(120)

    def set_clock(self, by_ms: int) -> None:
        """Set the wall clock; the keeper minds it before each reading."""
        self.clock.now_ms += by_ms
        self.watch.mind_the_clock(self.clock.now_ms, self.clock.now_s)

    def the_one(self, kind: str) -> WarningView:
        (found,) = [warning for warning in self.snapshot().warnings if warning.kind == kind]
        return found


@pytest.mark.parametrize("set_by_ms", [0, HOUR_MS, 8 * HOUR_MS, 30 * 24 * HOUR_MS])
def test_that_after_a_restart_a_coat_of_an_earlier_session_dried_only_as_long_as_it_lay_there(
    set_by_ms: int, tmp_path: Path
) -> None:
    stepped = Stepped(tmp_path / "studio.sqlite3", clock=ScriptedClock())
    stepped.open()
    stepped.read(60)
    key = stepped.lay()
    laid_s = stepped.clock.now_s
    stepped.read(60)
    stepped.restart()
    stepped.read(60)
    stepped.clock.now_ms += set_by_ms
    stepped.read(60)
    stepped.restart()
    stepped.read(60)
    lay_s = stepped.clock.now_s - laid_s
    film = stepped.watch.desks.rack.runs[key].film
    assert lay_s - ADVANCE_MS / 1000 <= film.elapsed_s <= lay_s
    assert film.is_wet
    stepped.close()


@pytest.mark.parametrize("set_by_ms", [-2 * HOUR_MS, -5 * MINUTE_MS, 0, 5 * MINUTE_MS])
def test_that_moving_air_that_is_still_again_is_over_soon_whatever_the_clock_was_set_to(
    set_by_ms: int, tmp_path: Path
) -> None:
    stepped = Warned(tmp_path / "studio.sqlite3")
    stepped.begin()
    stepped.read(30, air_speed_m_s=0.6)
    assert stepped.the_one("air-moving").sound
    began_ms = stepped.the_one("air-moving").began_ms
    stepped.set_clock(set_by_ms)
    assert stepped.the_one("air-moving").began_ms == began_ms + set_by_ms
    stepped.read(60)
    over = stepped.the_one("air-moving")
    assert over.state is WarningState.CLEARED
    assert 30_000 <= (over.cleared_ms or 0) - over.began_ms <= 90_000  # it blew for 30 s, and 60 s were read since
    stepped.close()


@pytest.mark.parametrize("set_by_ms", [-2 * HOUR_MS, 0, 2 * HOUR_MS])
def test_that_the_course_of_a_films_temperature_goes_on_by_the_minute_whatever_the_clock_was_set_to(
    set_by_ms: int, tmp_path: Path
) -> None:
    stepped = Warned(tmp_path / "studio.sqlite3")
    stepped.begin()
    stepped.read(180)
    (run,) = stepped.watch.desks.rack.runs.values()
    before = run.film_trace
    stepped.set_clock(set_by_ms)
    assert run.film_trace == tuple((time_ms + set_by_ms, film_C) for time_ms, film_C in before)
    stepped.read(180)
    times_ms = [time_ms for time_ms, _ in run.film_trace]
    between_ms = [after - earlier for earlier, after in itertools.pairwise(times_ms)]
    assert all(MINUTE_MS <= one_ms < MINUTE_MS + ADVANCE_MS for one_ms in between_ms)  # with the step after a minute
    assert len(times_ms) >= len(before) + 2  # three minutes hold two such
    stepped.close()


@pytest.mark.parametrize("set_by_ms", [-2 * HOUR_MS, -5 * MINUTE_MS, 0, 5 * MINUTE_MS])
def test_that_a_fan_that_runs_on_while_the_clock_is_set_is_told_once(set_by_ms: int, tmp_path: Path) -> None:
    stepped = Warned(tmp_path / "studio.sqlite3")
    stepped.begin()
    stepped.read(30, air_speed_m_s=0.6)
    stepped.told.clear()
    stepped.set_clock(set_by_ms)
    stepped.read(30, air_speed_m_s=0.6)
    assert stepped.warned("air-moving") == []
    assert stepped.the_one("air-moving").sound
    stepped.close()


@pytest.mark.parametrize("restarts", [False, True])
@pytest.mark.parametrize("set_by_ms", [-2 * HOUR_MS, 0, 2 * HOUR_MS])
def test_that_a_warning_put_off_for_two_minutes_comes_back_after_two_minutes_whatever_the_clock_was_set_to(
    set_by_ms: int, tmp_path: Path, *, restarts: bool
) -> None:
    stepped = Warned(tmp_path / "studio.sqlite3")
    stepped.begin()
    stepped.read(30, humidity_pct=93.0)
    key = stepped.the_one("damp").key
    stepped.do(RemindLater(warning_key=key, until_ms=stepped.clock.now_ms + 2 * MINUTE_MS))
    stepped.set_clock(set_by_ms)
    if restarts:
        stepped.restart()
    stepped.read(110, humidity_pct=93.0)
    assert (stepped.the_one("damp").key, stepped.the_one("damp").state) == (key, WarningState.REMIND)
    stepped.read(20, humidity_pct=93.0)
    assert (stepped.the_one("damp").key, stepped.the_one("damp").state) == (key, WarningState.RAISED)
    stepped.close()


def test_that_a_warning_that_is_over_keeps_its_times_when_the_clock_is_set(tmp_path: Path) -> None:
    stepped = Warned(tmp_path / "studio.sqlite3")
    stepped.begin()
    stepped.read(30, humidity_pct=93.0)
    stepped.read(60)
    over = stepped.the_one("damp")
    assert over.state is WarningState.CLEARED
    stepped.set_clock(-2 * HOUR_MS)
    assert stepped.the_one("damp") == over
    stepped.restart()
    again = stepped.the_one("damp")
    assert (again.began_ms, again.cleared_ms) == (over.began_ms, over.cleared_ms)
    stepped.close()


@pytest.mark.parametrize("set_by_ms", [-2 * HOUR_MS, 2 * HOUR_MS])
def test_that_a_prompt_put_off_before_the_clock_was_set_can_be_taken_back(set_by_ms: int, tmp_path: Path) -> None:
    stepped = Warned(tmp_path / "studio.sqlite3")
    stepped.begin()
    stepped.read(20 * 60)
    late = next(prompt for prompt in stepped.snapshot().prompts if prompt.overdue)
    stepped.do(SnoozePrompt(prompt_key=late.key, until_ms=stepped.clock.now_ms + 5 * MINUTE_MS))
    stepped.set_clock(set_by_ms)
    stepped.read(60)
    assert [one.snoozed for one in stepped.snapshot().prompts if one.key == late.key] == [True]
    stepped.do(Undo())
    assert [one.snoozed for one in stepped.snapshot().prompts if one.key == late.key] == [False]
    assert len(stepped.snapshot().pieces[0].coats) == 1
    stepped.close()


def test_that_a_warning_put_off_before_the_clock_was_set_can_be_taken_back(tmp_path: Path) -> None:
    stepped = Warned(tmp_path / "studio.sqlite3")
    stepped.begin()
    stepped.read(30, humidity_pct=93.0)
    key = stepped.the_one("damp").key
    stepped.do(RemindLater(warning_key=key, until_ms=stepped.clock.now_ms + 10 * MINUTE_MS))
    stepped.set_clock(-2 * HOUR_MS)
    stepped.do(Undo())
    assert stepped.the_one("damp").state is WarningState.RAISED
    stepped.close()
