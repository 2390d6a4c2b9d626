"""A watch without a board: the room is known by what she types."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from datetime import date

from studiowatch.board.events import LineCounts, ReadingArrived
from studiowatch.coats.stages import Stage
from studiowatch.room.readings import Reading
from studiowatch.room.typed import Felt
from studiowatch.service.commands import TypeReading
from studiowatch.service.happenings import Happening, PromptHappened
from studiowatch.service.piece_view import CoatView
from studiowatch.service.replaying import MemoryRecords, NoLog
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.service.snapshot import Snapshot
from studiowatch.service.watchkeeping import Watchkeeping
from studiowatch.store.trouble import StoreTrouble
from studiowatch.studio.concern import Kind
from studiowatch.studio.pieces import Coat, Piece
from studiowatch.studio.warnings import WarningState

from .scripted import START_MS, still

MINUTE_MS = 60_000
HOUR_MS = 60 * MINUTE_MS
PLAIN = TypeReading(time_ms=START_MS, temperature_C=20.5, humidity_pct=50.0, felt=Felt.STILL)


class Log(NoLog):
    """A log in memory; it may refuse."""

    def __init__(self, readings: Sequence[Reading] = ()) -> None:
        self.readings = list(readings)
        self.is_full = False

    def append(self, readings: Sequence[Reading]) -> None:
        if self.is_full:
            raise StoreTrouble("The disk is full.")
        self.readings += readings

    def between(self, start_ms: int, end_ms: int) -> Sequence[Reading]:
        found = [reading for reading in self.readings if start_ms <= reading.time_ms < end_ms]
        return sorted(found, key=lambda reading: reading.time_ms)

    minute_means = between


@dataclass
class Studio:
    """A watch without a board, and the clock that it is kept by."""

    coats: tuple[Coat, ...] = (Coat(key="g", sheet="gloss-waterborne", laid_ms=START_MS, volume_mL=43),)
    log: Log = field(default_factory=Log)
    now_ms: int = START_MS
    told: list[Happening] = field(default_factory=list)
    watch: Watchkeeping = field(init=False)

    def __post_init__(self) -> None:
        self.open()

    def open(self) -> None:
        piece = Piece(key="p", title="Low Tide", width_cm=60, height_cm=90, coats=self.coats)
        self.watch = Watchkeeping(
            log=self.log,
            records=MemoryRecords(held={"p": piece}),
            shelf=SheetShelf.open(),
            clock_text=lambda time_ms: f"{(time_ms - START_MS) / HOUR_MS:.2f} h",
            local_date=lambda time_ms: date.fromordinal(time_ms // 86_400_000 + 1),
            began_ms=self.now_ms,
            tell=self.told.append,
        )
        self.watch.open()

    def wait(self, span_ms: int, *, step_ms: int = 20_000) -> Snapshot:
        end_ms = self.now_ms + span_ms
        while self.now_ms < end_ms:
            self.now_ms = min(self.now_ms + step_ms, end_ms)
            self.look()
        return self.snapshot()

    def look(self) -> None:
        self.watch.look(self.now_ms, self.now_ms / 1000)
        self.watch.speak()

    def type_in(self, command: TypeReading = PLAIN, **changes: object) -> Snapshot:
        command = replace(command, **{"time_ms": self.now_ms, **changes})
        self.watch.carry_out(command, self.now_ms, self.now_ms / 1000)
        self.look()
        return self.snapshot()

    def hear_board(self, **changes: object) -> None:
        event = ReadingArrived(reading=still(self.now_ms, **changes), counts=LineCounts(good=1))
        self.watch.take(event, self.now_ms / 1000)
        self.watch.speak()

    def snapshot(self) -> Snapshot:
        return self.watch.snapshot(self.now_ms)

    def coat(self) -> CoatView:
        return self.snapshot().pieces[0].coats[0]

    def raised(self) -> list[Kind]:
        return [Kind(one.kind) for one in self.snapshot().warnings if one.state is not WarningState.CLEARED]

    def prompted(self) -> list[str]:
        return [one.text for one in self.told if isinstance(one, PromptHappened) and "hygrometer" in one.text]


def span_ms(coat: CoatView, stage: Stage) -> tuple[int, int]:
    time = coat.stage(stage)
    assert time is not None
    assert time.p10_ms is not None
    assert time.p90_ms is not None
    return time.p10_ms, time.p90_ms
