"""What is meant for the room, through the whole watch: foretold at once, kept, and never near solvent vapour."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from concurrent.futures import Future, ThreadPoolExecutor
from dataclasses import replace
from math import cos, pi
from threading import get_ident

import pytest

from studiowatch.board.events import LineCounts, ReadingArrived
from studiowatch.coats.stages import Stage
from studiowatch.room.intentions import Doing
from studiowatch.room.readings import Reading
from studiowatch.service.best_hours_desk import RoomHours
from studiowatch.service.commands import Command, Refused, SpeakIn
from studiowatch.service.correction_commands import Redo, Undo
from studiowatch.service.intention_commands import AddIntention, DropIntention
from studiowatch.service.letters import NoLetter, read, written
from studiowatch.service.local_time import wall_clock, when_text
from studiowatch.service.piece_view import StageTime
from studiowatch.service.plan_commands import SetWorkingHours
from studiowatch.service.plan_desk import UNSEEN_AGAIN_MS
from studiowatch.service.plan_only import watch_at
from studiowatch.service.replaying import MemoryRecords, NoLog
from studiowatch.service.room_ahead import AGAIN_MS
from studiowatch.service.rounds import ADVANCE_MS
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.service.watchkeeping import Watchkeeping
from studiowatch.speech.units import US, choose
from studiowatch.studio.best_hours import SURE, Reason
from studiowatch.studio.concern import Kind
from studiowatch.studio.pieces import Coat, Piece
from studiowatch.studio.plan_shapes import Times
from studiowatch.studio.working_hours import WorkingHours

NOW_MS = 1_772_460_000_000
MINUTE_MS, HOUR_MS, DAY_MS = 60_000, 3_600_000, 86_400_000
ALWAYS = WorkingHours(days=((0, 24 * 60),) * 7)


class ColdNights(NoLog):
    """A log of a room that is 20 °C at NOW_MS's time of day and 8 °C twelve hours from it."""

    def __init__(self, days: int = 30) -> None:
        self.days = days

    def minute_means(self, start_ms: int, end_ms: int) -> Sequence[Reading]:
        first_ms = max(start_ms, NOW_MS - self.days * DAY_MS)
        return [
            Reading(
                time_ms=time_ms,
                temperature_C=14.0 + 6.0 * cos(2.0 * pi * (time_ms - NOW_MS) / DAY_MS),
                humidity_pct=45.0,
                air_speed_m_s=0.05,
            )
            for time_ms in range(first_ms, end_ms, 5 * MINUTE_MS)
        ]


def piece(key: str, *coats: Coat) -> Piece:
    return Piece(key=key, title=key.title(), width_cm=30, height_cm=30, place=0, coats=coats)


def watch_over(*pieces: Piece, log: NoLog | None = None, hours: WorkingHours = ALWAYS) -> Watchkeeping:
    records = MemoryRecords(held={one.key: one for one in pieces}, kept_hours=hours)
    watch = watch_at(NOW_MS, records, log or ColdNights(), SheetShelf.open(), foretell=True)
    watch.make_plan(NOW_MS)
    return watch


def heater(hours_from_now: float = 4.0, hours: float = 14.0, target_C: float = 21.0) -> AddIntention:
    clock = wall_clock()
    start_ms = NOW_MS + round(hours_from_now * HOUR_MS)
    day = clock.day(start_ms)
    from_min = (start_ms - clock.at(day, 0)) // MINUTE_MS
    return AddIntention(
        doing=Doing.HEATER,
        from_min=from_min,
        to_min=round(from_min + 60 * hours) % (24 * 60),
        target=target_C,
        first_day=day,
    )


SATIN = "satin-waterborne"
GLOSS = piece("kiln", Coat(key="g", sheet="gloss-waterborne"))


def reason_at(watch: Watchkeeping, hours_ahead: float, now_ms: int = NOW_MS) -> Reason | None:
    (told,) = (one for one in watch.snapshot(now_ms).best_hours if one.sheet == "gloss-waterborne")
    return next(hour.reason for hour in told.hours if hour.start_ms >= NOW_MS + hours_ahead * HOUR_MS)


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


def test_that_the_hours_stay_the_same_for_ten_minutes_but_for_other_working_hours() -> None:
    watch = watch_over(GLOSS)
    first = watch.snapshot(NOW_MS).best_hours
    assert watch.snapshot(NOW_MS + AGAIN_MS - 1).best_hours is first
    watch.carry_out(SetWorkingHours(hours=WorkingHours(days=(None,) * 7)), NOW_MS, 0.0)
    assert reason_at(watch, 0.0) is Reason.OUTSIDE_HOURS
    before = watch.snapshot(NOW_MS + 1).best_hours
    assert watch.snapshot(NOW_MS + 1 + AGAIN_MS).best_hours is not before


def test_that_hours_that_nobody_sees_stay_until_somebody_looks() -> None:
    watch = watch_over(GLOSS)
    first = watch.snapshot(NOW_MS).best_hours
    watch.desks.see(is_seen=False)
    assert watch.snapshot(NOW_MS + UNSEEN_AGAIN_MS - 1).best_hours is first
    watch.desks.see(is_seen=True)
    assert watch.snapshot(NOW_MS + UNSEEN_AGAIN_MS - 1).best_hours is not first
    second = watch.snapshot(NOW_MS + UNSEEN_AGAIN_MS - 1).best_hours
    watch.desks.see(is_seen=False)
    assert watch.snapshot(NOW_MS + 2 * UNSEEN_AGAIN_MS).best_hours is not second


def test_that_hours_by_an_old_plan_are_worked_out_anew_with_the_new_one() -> None:
    watch = watch_over(GLOSS)
    later_ms = NOW_MS + AGAIN_MS
    by_the_old = watch.snapshot(later_ms).best_hours
    watch.make_plan(later_ms - 1)
    assert watch.snapshot(later_ms).best_hours is by_the_old  # by one that is hardly newer they would say the same
    watch.make_plan(later_ms)
    assert watch.snapshot(later_ms).best_hours is not by_the_old


def test_that_hours_that_are_as_good_are_told_by_time_though_those_of_tomorrow_are_more() -> None:
    (told,) = watch_over(GLOSS).snapshot(NOW_MS).best_hours
    assert all(one.chance >= SURE for one in told.good)
    firsts_ms = [one.first_ms for one in told.good]
    assert firsts_ms != sorted(firsts_ms)  # the longest goes first: the room is warmest now, half of today's is over
    for line, first_ms in zip(told.lines, sorted(firsts_ms), strict=True):
        assert line.startswith(f"lay from {when_text(first_ms, NOW_MS)} to ")


def test_that_the_hours_are_said_by_the_clock_that_she_turns_to() -> None:
    watch = watch_over(GLOSS)
    (before,) = watch.snapshot(NOW_MS).best_hours
    assert not any(line.endswith((" am", " pm")) or " am " in line or " pm " in line for line in before.lines)
    choose(US)
    watch.carry_out(SpeakIn(units=US), NOW_MS, 0.0)
    (after,) = watch.snapshot(NOW_MS + 1000).best_hours
    firsts = sorted(one.first_ms for one in after.good)
    assert [line.split(" to ")[0] for line in after.lines] == [f"lay from {when_text(ms, NOW_MS)}" for ms in firsts]
    assert all(" am" in words or " pm" in words for words in (*after.lines, after.next_line))


def test_that_the_hours_are_said_by_the_plan_beside_them_with_nothing_worked_out_anew() -> None:
    watch = watch_over(
        piece("kiln", Coat(key="g", sheet="gloss-waterborne", laid_ms=NOW_MS), Coat(key="h", sheet=SATIN))
    )
    watch.snapshot(NOW_MS)
    worker = watch.desks.best_hours.work = Later()
    plan = watch.desks.plans.plan
    assert plan is not None
    (kiln,) = plan.pieces
    later_ms = NOW_MS + 7 * HOUR_MS
    coats = (replace(kiln.coats[0], ready=Times(p10=NOW_MS, p50=NOW_MS, p90=later_ms)),)
    watch.desks.plans.plan = replace(plan, made_ms=NOW_MS + MINUTE_MS, pieces=(replace(kiln, coats=coats),))
    (told,) = watch.snapshot(NOW_MS + MINUTE_MS).best_hours
    assert told.ready_ms == later_ms
    assert f"before {when_text(later_ms, NOW_MS)}: what lies below is not ready" in told.aside_lines
    assert {hour.reason for hour in told.hours if hour.start_ms < later_ms} == {Reason.NOT_READY}
    assert worker.asked == []


def test_that_what_lies_below_is_told_once_where_it_is_not_ready_over_the_nights() -> None:
    watch = watch_over(
        piece("kiln", Coat(key="g", sheet="gloss-waterborne", laid_ms=NOW_MS), Coat(key="h", sheet=SATIN)),
        hours=WorkingHours(),
    )
    watch.snapshot(NOW_MS)
    plan = watch.desks.plans.plan
    assert plan is not None
    (kiln,) = plan.pieces
    later_ms = NOW_MS + 60 * HOUR_MS  # past two days, with a night between her working hours
    coats = (replace(kiln.coats[0], ready=Times(p10=NOW_MS, p50=NOW_MS, p90=later_ms)),)
    watch.desks.plans.plan = replace(plan, made_ms=NOW_MS + MINUTE_MS, pieces=(replace(kiln, coats=coats),))
    (told,) = watch.snapshot(NOW_MS + MINUTE_MS).best_hours
    below = [line for line in told.aside_lines if line.endswith("what lies below is not ready")]
    assert below == [f"before {when_text(later_ms, NOW_MS)}: what lies below is not ready"]


class Later:
    """A worker that works on another thread, when it is told to."""

    def __init__(self) -> None:
        self.asked: list[tuple[Callable[[], RoomHours], Future[RoomHours]]] = []
        self.threads: set[int] = set()

    def __call__(self, make: Callable[[], RoomHours]) -> Future[RoomHours]:
        self.asked.append((make, Future()))
        return self.asked[-1][1]

    def do(self) -> None:
        make, answer = self.asked.pop()

        def run() -> RoomHours:
            self.threads.add(get_ident())
            return make()

        with ThreadPoolExecutor(max_workers=1) as pool:
            answer.set_result(pool.submit(run).result())


def test_that_a_worker_works_the_hours_out_as_the_watch_would_while_it_goes_on_with_the_earlier_ones() -> None:
    at_once = watch_over(GLOSS)
    worker = Later()
    watch = watch_over(GLOSS)
    watch.desks.best_hours.work = worker
    assert watch.snapshot(NOW_MS).best_hours == ()
    assert watch.snapshot(NOW_MS + 1000).best_hours == ()
    assert len(worker.asked) == 1  # asked once while it is at it
    worker.do()
    first = watch.snapshot(NOW_MS + 2000).best_hours
    assert first == at_once.snapshot(NOW_MS).best_hours
    assert get_ident() not in worker.threads
    for one in (watch, at_once):
        one.carry_out(heater(), NOW_MS + 3000, 3.0)
    assert watch.snapshot(NOW_MS + 3000).best_hours is first
    worker.do()
    assert watch.snapshot(NOW_MS + 4000).best_hours == at_once.snapshot(NOW_MS + 3000).best_hours
    assert reason_at(watch, 12.0, NOW_MS + 4000) is None
    assert worker.asked == []


def test_that_what_a_worker_fails_at_is_not_hidden_and_the_earlier_hours_stand() -> None:
    watch, worker = watch_over(GLOSS), Later()
    first = watch.snapshot(NOW_MS).best_hours
    watch.desks.best_hours.work = worker
    watch.snapshot(NOW_MS + AGAIN_MS)
    _, answer = worker.asked.pop()
    answer.set_exception(ValueError("a fault of ours"))
    with pytest.raises(ValueError, match="a fault of ours"):
        watch.snapshot(NOW_MS + AGAIN_MS + 1000)
    assert watch.snapshot(NOW_MS + AGAIN_MS + 2000).best_hours is first


def test_that_a_room_logged_for_less_than_a_day_is_said_to_be_unknown() -> None:
    class Short(ColdNights):
        def minute_means(self, start_ms: int, end_ms: int) -> Sequence[Reading]:
            return [one for one in super().minute_means(start_ms, end_ms) if one.time_ms > NOW_MS - 20 * HOUR_MS]

    (told,) = watch_over(GLOSS, log=Short()).snapshot(NOW_MS).best_hours
    assert told.hours == told.lines == ()
    assert told.unknown.startswith("Not known yet")


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
