"""Warnings outlive a restart as they stood, keep every state, and are put off for a day at the most."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

import pytest

from studiowatch.room.air_movement import Movement
from studiowatch.room.trend import Crossing
from studiowatch.service.commands import Refused
from studiowatch.service.disk import Disk
from studiowatch.service.replaying import MemoryRecords
from studiowatch.service.room_heading import RoomHeading
from studiowatch.service.warning_desk import WarningDesk
from studiowatch.speech.units import METRIC, Numbers, choose
from studiowatch.store.shapes import WarningRecord
from studiowatch.studio.concern import AirNow, CoatAtRisk, Kind
from studiowatch.studio.heading import Figure
from studiowatch.studio.warnings import WarningState
from studiowatch.studio.words import Level

NOW_MS = 1_772_442_000_000  # 2026-03-02T09:00:00Z
MINUTE_MS = 60_000
HOUR_MS = 60 * MINUTE_MS
DRY = AirNow(temperature_C=20.5, humidity_pct=50.0, air_speed_m_s=0.04, dew_point_C=9.7, movement=Movement.STILL)
CAUTIONED = replace(DRY, humidity_pct=78.0, dew_point_C=16.6)
DAMP = replace(DRY, humidity_pct=93.0, dew_point_C=19.3)
COAT = CoatAtRisk(piece_key="p", piece_title="Low Tide", coat_label="gloss", wet=True, forming=True)
OTHER = replace(COAT, piece_key="q", piece_title="Kiln Light")


class ListedRecords(MemoryRecords):
    """Records that list every state that was saved."""

    def __init__(self) -> None:
        super().__init__(held={})
        self.saved: list[str] = []

    def save_warning(self, warning: WarningRecord) -> None:
        super().save_warning(warning)
        self.saved.append(warning.state)


class Dampening(RoomHeading):
    """A room that will be too damp in 40 minutes."""

    def until(self, figure: Figure, distance: float, *, said_before: bool) -> Crossing | None:
        del distance, said_before
        at_ms = (30 * MINUTE_MS, 40 * MINUTE_MS, 50 * MINUTE_MS)
        return Crossing(low_ms=at_ms[0], middle_ms=at_ms[1], high_ms=at_ms[2]) if figure is Figure.HUMIDITY else None


def desk_on(records: MemoryRecords, pieces: Sequence[CoatAtRisk] = (COAT,)) -> WarningDesk:
    desk = WarningDesk(records=records, disk=Disk(), clock_text=str, silent_after_s=10.0)
    desk.reopen({coat.piece_title: coat.piece_key for coat in pieces}, NOW_MS)
    return desk


def states(desk: WarningDesk) -> list[tuple[str, WarningState]]:
    return [(warning.kind.value, warning.state) for warning in desk.book.open]


def left_heard(records: MemoryRecords) -> None:
    desk = desk_on(records)
    (raised,) = desk.settle(DAMP, [COAT], NOW_MS)
    desk.hear(raised.warning.key, NOW_MS)
    desk.disk.catch_up(0.0)


def test_that_a_watch_without_a_window_warns_in_the_units_it_was_started_in() -> None:
    choose(replace(METRIC, numbers=Numbers.COMMA))
    desk = desk_on(MemoryRecords(held={}))
    (raised,) = desk.settle(replace(DRY, air_speed_m_s=0.26, movement=Movement.FAN), [COAT], NOW_MS)
    assert "0,26 m/s" in raised.warning.sentence.detail


def test_that_a_heard_warning_stays_heard_over_a_restart() -> None:
    records = ListedRecords()
    left_heard(records)
    desk = desk_on(records)
    assert not any(one.is_new for one in desk.settle(DAMP, [COAT], NOW_MS + 1000))
    assert states(desk) == [("damp", WarningState.HEARD)]
    assert not desk.book.sounds
    (worse,) = desk.settle(DAMP, [COAT, OTHER], NOW_MS + 2000)
    assert (worse.warning.state, worse.is_new) == (WarningState.RAISED, True)


def test_that_a_warning_put_off_comes_back_at_its_time_over_a_restart() -> None:
    records = ListedRecords()
    before = desk_on(records)
    (raised,) = before.settle(DAMP, [COAT], NOW_MS)
    before.remind(raised.warning.key, NOW_MS + HOUR_MS, NOW_MS)
    before.disk.catch_up(0.0)
    desk = desk_on(records)
    desk.settle(DAMP, [COAT], NOW_MS + 1000)
    assert states(desk) == [("damp", WarningState.REMIND)]
    desk.settle(DAMP, [COAT], NOW_MS + HOUR_MS)
    assert states(desk) == [("damp", WarningState.RAISED)]
    assert desk.book.sounds


def test_that_a_danger_that_passed_meanwhile_is_over_after_a_restart() -> None:
    records = ListedRecords()
    left_heard(records)
    desk = desk_on(records)
    told = [one for second in range(60) for one in desk.settle(DRY, [COAT], NOW_MS + 1000 * second)]
    assert [one.warning.state for one in told] == [WarningState.CLEARED]


def test_that_what_was_only_foreseen_ends_as_foreseen_over_a_restart() -> None:
    records = ListedRecords()
    desk = desk_on(records)
    desk.heading = Dampening()
    (raised,) = desk.settle(DRY, [COAT], NOW_MS)
    assert (raised.warning.kind, raised.warning.level) == (Kind.DAMP, Level.CAUTION)
    desk.disk.catch_up(0.0)
    again = desk_on(records)
    (over,) = [one for second in range(60) for one in again.settle(DRY, [COAT], NOW_MS + 1000 * second)]
    assert (over.warning.state, over.warning.sentence.headline) == (WarningState.CLEARED, "Damp air was foreseen")


def test_that_what_was_foreseen_stands_over_a_restart_to_an_unread_room_until_its_time() -> None:
    records = ListedRecords()
    desk = desk_on(records)
    desk.heading = Dampening()
    desk.settle(DRY, [COAT], NOW_MS)
    desk.disk.catch_up(0.0)
    again = desk_on(records)
    unread = replace(DRY, humidity_pct=None, dew_point_C=None)
    again.settle(unread, [COAT], NOW_MS + 39 * MINUTE_MS)
    assert ("damp", WarningState.RAISED) in states(again)
    again.settle(unread, [COAT], NOW_MS + 40 * MINUTE_MS)
    assert "damp" not in dict(states(again))


def test_that_what_came_after_it_was_foreseen_ends_as_having_been_over_a_restart() -> None:
    records = ListedRecords()
    desk = desk_on(records)
    desk.heading = Dampening()
    desk.settle(DRY, [COAT], NOW_MS)
    (came,) = desk.settle(CAUTIONED, [COAT], NOW_MS + 1000)
    assert came.warning.level is Level.CAUTION
    desk.disk.catch_up(0.0)
    again = desk_on(records)
    (over,) = [one for second in range(60) for one in again.settle(DRY, [COAT], NOW_MS + 1000 * second)]
    assert over.warning.sentence.headline == "It was damp for a wet coat"


def test_that_a_warning_about_a_piece_that_left_the_rack_is_over() -> None:
    records = ListedRecords()
    left_heard(records)
    desk = desk_on(records, pieces=())
    (over,) = desk.settle(DAMP, [], NOW_MS + 1000)
    assert over.warning.state is WarningState.CLEARED


def test_that_every_state_is_kept_while_the_disk_refuses() -> None:
    records = ListedRecords()
    desk = desk_on(records)
    (raised,) = desk.settle(DAMP, [COAT], NOW_MS)
    desk.hear(raised.warning.key, NOW_MS)
    for second in range(60):
        desk.settle(DRY, [COAT], NOW_MS + 1000 * second)
    assert records.saved == []
    desk.disk.catch_up(0.0)
    assert records.saved == ["raised", "heard", "cleared"]


@pytest.mark.parametrize(("ahead_h", "words"), [(25.0, "25.0 h"), (-1.0, "-1.0 h")])
def test_that_a_reminder_beyond_a_day_or_in_the_past_is_refused(ahead_h: float, words: str) -> None:
    desk = desk_on(ListedRecords())
    (raised,) = desk.settle(DAMP, [COAT], NOW_MS)
    with pytest.raises(Refused) as refusal:
        desk.remind(raised.warning.key, NOW_MS + round(ahead_h * HOUR_MS), NOW_MS)
    assert words in str(refusal.value)
    assert "0 to 24 h" in str(refusal.value)
    assert states(desk) == [("damp", WarningState.RAISED)]
