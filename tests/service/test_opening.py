"""The watch opens without waiting for its coats: they follow piece by piece, and only then the room is judged."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import date

from studiowatch.board.events import LineCounts, ReadingArrived
from studiowatch.coats.stages import Surface
from studiowatch.room.readings import Reading
from studiowatch.service.commands import AmendPiece, LayCoat, RecordOutcome
from studiowatch.service.replaying import MemoryRecords, NoLog
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.service.watchkeeping import Watchkeeping
from studiowatch.store.trouble import StoreTrouble
from studiowatch.studio.pieces import Coat, Outcome, Piece

from .rooms import START_MS, room

NOW_MS = START_MS + 60_000
MANY = 3


@dataclass
class Log(NoLog):
    """A log of one minute, which may be unreadable."""

    readable: bool = True
    readings: list[Reading] = field(default_factory=lambda: room(60))
    packed: int = 0

    def between(self, start_ms: int, end_ms: int) -> Sequence[Reading]:
        return [reading for reading in self.readings if start_ms <= reading.time_ms < end_ms]

    def minute_means(self, start_ms: int, end_ms: int) -> Sequence[Reading]:
        if not self.readable:
            raise StoreTrouble("The log cannot be read.")
        return [reading for reading in self.readings[30::60] if start_ms <= reading.time_ms < end_ms]

    def seal(self, before_ms: int, most_hours: int | None = None) -> int:
        del before_ms, most_hours
        self.packed += 1
        return 1


def watch_of(log: Log, began_ms: int = NOW_MS) -> Watchkeeping:
    held = {}
    for at in range(MANY):
        coats = (
            Coat(key=f"c{at}", sheet="gloss-waterborne", laid_ms=START_MS),
            Coat(key=f"d{at}", sheet="gloss-waterborne"),
        )
        held[f"p{at}"] = Piece(key=f"p{at}", title=f"P{at}", width_cm=30, height_cm=30, place=at, coats=coats)
    made = Watchkeeping(
        log=log,
        records=MemoryRecords(held=held),
        shelf=SheetShelf.open(),
        clock_text=lambda time_ms: f"{time_ms}",
        local_date=lambda time_ms: date.fromordinal(time_ms // 86_400_000 + 1),
        began_ms=began_ms,
    )
    made.take_up()
    return made


def surfaces(watch: Watchkeeping) -> list[Surface | None]:
    return [piece.coats[0].surface for piece in watch.snapshot(NOW_MS).pieces]


def read(watch: Watchkeeping, seconds: int, *, fan: bool) -> None:
    for second, reading in enumerate(room(60 + seconds, fan=lambda second: fan and second > 90)[60:]):
        watch.take(ReadingArrived(reading=reading, counts=LineCounts(good=second)), reading.time_ms / 1000)


def test_that_all_pieces_are_shown_before_any_coat_is_dried_and_each_look_dries_one() -> None:
    watch = watch_of(Log())
    assert surfaces(watch) == [None] * MANY
    for done in range(1, MANY + 1):
        assert watch.is_opening
        watch.look(NOW_MS, NOW_MS / 1000)
        assert surfaces(watch) == [Surface.WET] * done + [None] * (MANY - done)
    assert not watch.is_opening


def test_that_readings_that_come_meanwhile_count_once_the_coats_are_there() -> None:
    watch = watch_of(Log())
    read(watch, 120, fan=True)
    assert not watch.snapshot(NOW_MS).warnings
    later_ms = NOW_MS + 120_000
    for _ in range(MANY + 1):
        watch.look(later_ms, later_ms / 1000)
    warned = watch.snapshot(later_ms).warnings
    assert [sorted(warning.piece_titles) for warning in warned] == [[f"P{at}" for at in range(MANY)]]


def test_that_a_coat_laid_meanwhile_is_dried_once_the_others_are() -> None:
    watch = watch_of(Log())
    coat = LayCoat(piece_key="p2", coat_key="d2", sheet="gloss-waterborne", laid_ms=NOW_MS - 1000)
    watch.carry_out(coat, NOW_MS, NOW_MS / 1000)
    for _ in range(MANY + 2):
        watch.look(NOW_MS, NOW_MS / 1000)
    assert watch.snapshot(NOW_MS).pieces[2].coats[1].surface is Surface.WET


def test_that_a_log_that_cannot_be_read_is_said_and_tried_again_while_the_watch_begins() -> None:
    log = Log(readable=False)
    watch = watch_of(log)
    watch.look(NOW_MS, NOW_MS / 1000)
    assert not watch.is_opening
    assert watch.snapshot(NOW_MS).store_trouble == "The log cannot be read."
    log.readable = True
    watch.look(NOW_MS + 1000, NOW_MS / 1000 + 1)
    assert surfaces(watch) == [Surface.WET] * MANY
    assert not watch.snapshot(NOW_MS).store_trouble


def test_that_a_watch_that_is_to_end_dries_no_further_coat_and_has_no_plan_made() -> None:
    asked: list[object] = []
    watch = watch_of(Log())
    watch.desks.plans.work = asked.append
    watch.is_ending = lambda: True
    for _ in range(MANY + 1):
        watch.look(NOW_MS, NOW_MS / 1000)
    assert surfaces(watch) == [None] * MANY
    assert not asked


def test_that_coats_being_dried_anew_do_not_hold_up_the_end() -> None:
    watch = watch_of(Log())
    for _ in range(MANY):
        watch.look(NOW_MS, NOW_MS / 1000)
    dried: list[bool] = []

    def is_ending() -> bool:
        dried.append(True)
        return len(dried) > 1  # asked before anything is dried, then before the first piece

    for at in range(MANY):
        watch.carry_out(AmendPiece(piece_key=f"p{at}", width_cm=40.0), NOW_MS, NOW_MS / 1000)
    watch.is_ending = is_ending
    watch.look(NOW_MS, NOW_MS / 1000)
    watch.is_ending = lambda: False
    assert len(dried) == 2
    watch.look(NOW_MS, NOW_MS / 1000)
    assert surfaces(watch) == [Surface.WET] * MANY


def test_that_a_piece_that_is_being_dried_does_not_hold_up_the_end_and_is_dried_whole_by_the_next_watch() -> None:
    """Of an hour of the log a few minutes are taken; then nothing is judged by a film that stands in between."""
    now_ms = START_MS + 3_600_000
    log = Log(readings=room(3600, fan=lambda second: second > 3500))
    whole, dropped = watch_of(log, now_ms), watch_of(log, now_ms)
    asked: list[bool] = []

    def is_ending() -> bool:
        asked.append(True)
        return len(asked) > 10

    dropped.is_ending = is_ending
    dropped.look(now_ms, now_ms / 1000)
    assert len(asked) == 11
    assert dropped.is_opening
    for second in range(5):
        dropped.look(now_ms + 1000 * second, now_ms / 1000 + second)
    assert not dropped.snapshot(now_ms).warnings
    dropped.is_ending = lambda: False
    for watch in (whole, dropped):
        for _ in range(MANY + 1):
            watch.look(now_ms, now_ms / 1000)
    assert dropped.snapshot(now_ms).pieces == whole.snapshot(now_ms).pieces


def test_that_no_old_hour_is_packed_while_coats_are_to_be_dried_or_the_watch_is_to_end() -> None:
    log = Log()
    watch = watch_of(log)
    watch.write(NOW_MS, 0.0)
    assert log.packed == 0
    for _ in range(MANY):
        watch.look(NOW_MS, NOW_MS / 1000)
    watch.is_ending = lambda: True
    watch.write(NOW_MS, 1.0)
    assert log.packed == 0
    watch.is_ending = lambda: False
    watch.write(NOW_MS, 2.0)
    assert log.packed == 1


def test_that_readings_that_come_right_behind_a_change_of_a_coat_find_it_by_its_key() -> None:
    """Its film follows the change with the next look only."""
    watch = watch_of(Log())
    for _ in range(MANY):
        watch.look(NOW_MS, NOW_MS / 1000)
    seen = RecordOutcome(coat_key="c0", seen_ms=NOW_MS, outcome=Outcome.CLEAR)
    watch.carry_out(seen, NOW_MS, NOW_MS / 1000)
    read(watch, 30, fan=False)
    assert {prompt.piece_title for prompt in watch.snapshot(NOW_MS + 30_000).prompts} == {
        f"P{at}" for at in range(MANY)
    }
