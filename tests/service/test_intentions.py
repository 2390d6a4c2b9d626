"""What is meant for the room, through the whole watch: foretold at once, kept, and never near solvent vapour."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

import pytest

from studiowatch.board.events import LineCounts, ReadingArrived
from studiowatch.coats.stages import Stage
from studiowatch.room.intentions import Doing
from studiowatch.room.readings import Reading
from studiowatch.service.commands import Command, Refused
from studiowatch.service.correction_commands import Redo, Undo
from studiowatch.service.intention_commands import AddIntention, DropIntention
from studiowatch.service.letters import NoLetter, read, written
from studiowatch.service.piece_view import StageTime
from studiowatch.service.plan_only import watch_at
from studiowatch.service.replaying import NoLog
from studiowatch.service.rounds import ADVANCE_MS
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.studio.best_hours import Reason
from studiowatch.studio.concern import Kind
from studiowatch.studio.pieces import Coat

from .meant_rooms import (
    DAY_MS,
    GLOSS,
    HOUR_MS,
    MINUTE_MS,
    NOW_MS,
    ColdNights,
    heater,
    piece,
    reason_at,
    watch_over,
)


def test_that_a_heater_at_night_makes_the_cold_hours_good_at_once_and_dropping_it_takes_them_back() -> None:
    watch = watch_over(GLOSS)
    assert reason_at(watch, 12.0) is Reason.COLD
    key = watch.carry_out(heater(), NOW_MS, 0.0)
    assert reason_at(watch, 12.0) is None
    (view,) = watch.snapshot(NOW_MS).intentions
    assert "Fresh air" in " ".join(view.cautions)
    assert "clear of fabric" in " ".join(view.cautions)
    watch.carry_out(DropIntention(intention_key=key), NOW_MS, 0.0)
    assert watch.snapshot(NOW_MS).intentions == ()
    assert reason_at(watch, 12.0) is Reason.COLD


def test_that_it_is_kept_and_counted_on_by_the_next_watch() -> None:
    watch = watch_over(GLOSS)
    watch.carry_out(heater(), NOW_MS, 0.0)
    again = watch_at(NOW_MS, watch.records, ColdNights(), SheetShelf.open(), foretell=True)  # type: ignore[arg-type]
    again.make_plan(NOW_MS)
    assert reason_at(again, 12.0) is None


def test_that_one_that_is_over_is_told_no_more() -> None:
    watch = watch_over(GLOSS)
    watch.carry_out(heater(), NOW_MS, 0.0)
    assert len(watch.snapshot(NOW_MS + 17 * HOUR_MS).intentions) == 1
    assert watch.snapshot(NOW_MS + 19 * HOUR_MS).intentions == ()


@pytest.mark.parametrize("doing", list(Doing))
def test_that_nothing_is_heated_or_dried_while_a_coat_gives_off_vapour(doing: Doing) -> None:
    wet = piece("marsh", Coat(key="s", sheet="gloss-solventborne", laid_ms=NOW_MS - HOUR_MS, volume_mL=10))
    watch = watch_over(wet, GLOSS)
    asked = heater()
    target = {Doing.HEATER: 21.0, Doing.DEHUMIDIFIER: 50.0, Doing.FAN: 0.5}[doing]
    with pytest.raises(Refused, match=r"on Marsh still gives off flammable vapour.*air the room"):
        watch.carry_out(
            AddIntention(
                doing=doing, from_min=asked.from_min, to_min=asked.to_min, target=target, first_day=asked.first_day
            ),
            NOW_MS,
            0.0,
        )
    assert watch.snapshot(NOW_MS).intentions == ()


def test_that_a_heater_meant_before_is_withheld_once_a_coat_gives_off_vapour() -> None:
    watch = watch_over(GLOSS)
    watch.carry_out(heater(), NOW_MS, 0.0)
    records = watch.records
    records.save_piece(piece("marsh", Coat(key="s", sheet="gloss-solventborne", laid_ms=NOW_MS - HOUR_MS)))
    again = watch_at(NOW_MS, records, ColdNights(), SheetShelf.open(), foretell=True)  # type: ignore[arg-type]
    again.make_plan(NOW_MS)
    assert reason_at(again, 12.0) is Reason.COLD
    (view,) = again.snapshot(NOW_MS).intentions
    assert "not counted on until that coat is ready" in view.withheld


def test_that_the_hours_of_a_solvent_borne_coat_count_on_no_heater_and_ask_for_air_first() -> None:
    watch = watch_over(piece("marsh", Coat(key="s", sheet="gloss-solventborne")))
    (before,) = watch.snapshot(NOW_MS).best_hours
    assert before.caution.startswith("Fresh air first")
    assert {hour.reason for hour in before.hours} >= {Reason.COLD}
    watch.carry_out(heater(), NOW_MS, 0.0)
    (after,) = watch.snapshot(NOW_MS).best_hours
    assert after is not before
    assert [hour.chance for hour in after.hours] == [hour.chance for hour in before.hours]


@pytest.mark.parametrize(
    ("command", "says"),
    [
        (heater(target_C=90.0), "target of the heater is 90"),
        (heater(hours_from_now=-30.0), "Those hours are over"),
        (DropIntention(intention_key="none"), "not meant any more"),
    ],
)
def test_that_what_cannot_be_is_refused_and_changes_nothing(command: Command, says: str) -> None:
    watch = watch_over(GLOSS)
    with pytest.raises(Refused, match=says):
        watch.carry_out(command, NOW_MS, 0.0)
    assert watch.snapshot(NOW_MS).intentions == ()


def test_that_undo_takes_it_back_and_redo_means_it_again() -> None:
    watch = watch_over(GLOSS)
    key = watch.carry_out(heater(), NOW_MS, 0.0)
    assert watch.snapshot(NOW_MS).undo.undo.startswith("meant for the room: heater")
    watch.carry_out(Undo(), NOW_MS, 0.0)
    assert watch.snapshot(NOW_MS).intentions == ()
    assert watch.records.intentions() == ()
    assert reason_at(watch, 12.0) is Reason.COLD
    watch.carry_out(Redo(), NOW_MS, 0.0)
    assert reason_at(watch, 12.0) is None
    watch.carry_out(DropIntention(intention_key=key), NOW_MS, 0.0)
    assert watch.snapshot(NOW_MS).undo.undo.startswith("no longer meant for the room: heater")
    watch.carry_out(Undo(), NOW_MS, 0.0)
    (view,) = watch.snapshot(NOW_MS).intentions
    assert view.meant.key == key
    assert reason_at(watch, 12.0) is None


def fan(hours_from_now: float, hours: float, *, is_on: bool = True) -> AddIntention:
    return replace(heater(hours_from_now, hours), doing=Doing.FAN, target=0.6 if is_on else 0.0)


class WarmRoom(NoLog):
    """A log of a room at 21 °C and 50 %, with a fan on from five to seven hours after NOW_MS's time of day."""

    def minute_means(self, start_ms: int, end_ms: int) -> Sequence[Reading]:
        first_ms = max(start_ms, NOW_MS - 20 * DAY_MS)
        return [
            Reading(
                time_ms=time_ms,
                temperature_C=21.0,
                humidity_pct=50.0,
                air_speed_m_s=0.5 if 5 <= (time_ms - NOW_MS) / HOUR_MS % 24 < 7 else 0.05,
            )
            for time_ms in range(first_ms, end_ms, 5 * MINUTE_MS)
        ]


def test_that_a_fan_that_is_meant_keeps_its_hours_from_being_good_ones() -> None:
    watch = watch_over(GLOSS, log=WarmRoom())
    assert (reason_at(watch, 10.0), reason_at(watch, 6.0)) == (None, Reason.MOVING_AIR)
    watch.carry_out(fan(9.0, 3.0), NOW_MS, 0.0)
    assert reason_at(watch, 10.0) is Reason.FAN_MEANT


def test_that_a_habit_of_the_room_is_not_counted_on_while_the_fan_stays_off() -> None:
    watch = watch_over(GLOSS, log=WarmRoom())
    key = watch.carry_out(fan(3.0, 8.0, is_on=False), NOW_MS, 0.0)
    assert reason_at(watch, 6.0) is None
    watch.carry_out(DropIntention(intention_key=key), NOW_MS, 0.0)
    assert reason_at(watch, 6.0) is Reason.MOVING_AIR


def test_that_a_fan_that_is_meant_brings_a_wet_coat_s_ready_time_forward_in_every_draw() -> None:
    wet = piece("kiln", Coat(key="g", sheet="gloss-waterborne", laid_ms=NOW_MS - 20 * MINUTE_MS, volume_mL=9))

    def told(time_ms: int) -> StageTime:
        reading = Reading(time_ms=time_ms, temperature_C=21.0, humidity_pct=50.0, air_speed_m_s=0.05)
        watch.take(ReadingArrived(reading=reading, counts=LineCounts()), time_ms / 1000.0)
        (view,) = watch.snapshot(time_ms).pieces
        time = view.coats[0].stage(Stage.CLEAR)
        assert time is not None
        return time

    watch = watch_over(wet, log=WarmRoom())
    free = told(NOW_MS + 6000)
    watch.carry_out(fan(0.0, 4.0), NOW_MS + 6000, 6.0)
    blown = told(NOW_MS + 6000 + ADVANCE_MS)
    for part in ("p10_ms", "time_ms", "p90_ms"):
        assert getattr(blown, part) < getattr(free, part), part


def test_that_a_fan_that_is_meant_over_a_wet_coat_is_warned_of_within_three_hours_and_no_longer_once_dropped() -> None:
    wet = piece("kiln", Coat(key="g", sheet="gloss-waterborne", laid_ms=NOW_MS - 5 * MINUTE_MS, volume_mL=9))

    def told(end_ms: int) -> list[str]:
        for time_ms in range(end_ms - 5000, end_ms + 1, 1000):
            reading = Reading(time_ms=time_ms, temperature_C=21.0, humidity_pct=50.0, air_speed_m_s=0.05)
            watch.take(ReadingArrived(reading=reading, counts=LineCounts()), time_ms / 1000.0)
        return [one.kind for one in watch.snapshot(end_ms).warnings if one.cleared_ms is None]

    watch = watch_over(wet, log=WarmRoom())
    later = watch.carry_out(fan(4.0, 2.0), NOW_MS, 0.0)
    assert told(NOW_MS + 6000) == []
    soon = watch.carry_out(fan(0.5, 2.0), NOW_MS, 0.0)
    assert told(NOW_MS + 12_000) == [Kind.AIR_MOVING]
    watch.carry_out(DropIntention(intention_key=soon), NOW_MS + 15_000, 15.0)
    assert told(NOW_MS + 40_000) == []
    watch.carry_out(DropIntention(intention_key=later), NOW_MS + 41_000, 41.0)
    watch.carry_out(fan(0.5, 2.0), NOW_MS + 42_000, 42.0)
    watch.carry_out(fan(0.0, 6.0, is_on=False), NOW_MS + 42_000, 42.0)  # what is said last holds
    assert told(NOW_MS + 48_000) == []


@pytest.mark.parametrize("command", [heater(), DropIntention(intention_key="k")])
def test_that_a_letter_about_it_is_read_as_it_was_written(command: Command) -> None:
    assert read(written(command)) == command


def test_that_a_letter_of_another_form_is_none() -> None:
    text = written(heater())
    for spoilt in (text.replace('"heater"', '"kettle"'), text.replace("21.0", '"hot"')):
        assert spoilt != text
        with pytest.raises(NoLetter):
            read(spoilt)
