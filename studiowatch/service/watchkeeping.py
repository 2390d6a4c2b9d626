"""The watch itself: each reading is kept, dries every coat and is judged; commands are carried out. No thread here."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field, replace
from datetime import date

from studiowatch.board.events import BoardEvent, BoardNamed, LineRefused, PortLost, PortOpened, ReadingArrived
from studiowatch.service.clock import JumpWatch
from studiowatch.service.commands import Command, HearWarning, Refused, RemindLater, TickPrompt
from studiowatch.service.happenings import Happening
from studiowatch.service.journal import Journal
from studiowatch.service.ports import ReadingsLog, Records
from studiowatch.service.prompt_desk import PromptDesk
from studiowatch.service.rack import Rack
from studiowatch.service.rack_views import coats_at_risk, coats_to_tend, following_coat, piece_views
from studiowatch.service.room_now import RoomNow
from studiowatch.service.room_views import room_view
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.service.snapshot import BoardView, Snapshot
from studiowatch.service.warning_desk import WarningDesk
from studiowatch.store.trouble import StoreTrouble
from studiowatch.studio.concern import AirNow, Kind
from studiowatch.studio.sentence import most_urgent, room_check
from studiowatch.studio.watch import SILENT_AFTER_S
from studiowatch.studio.words import Sentence

ADVANCE_MS = 5_000  # ms of readings that dry the films in one step
JUDGE_EVERY_MS = 1_000  # ms without a reading after which the room is judged by the clock alone
SEAL_EVERY_S = 600.0  # s between looks for an hour that may be packed
SEAL_AGE_MS = 7_200_000  # ms, hours this far back are packed: late readings are not expected any more


@dataclass(slots=True)
class Watchkeeping:
    """Keeps the watch over one studio. `now_s` is the monotonic clock, s; `now_ms` is UTC, ms.

    Attributes
    ----------
    changed : bool
        Whether anything happened since the last snapshot.
    tell : callable
        Called with each happening, once it is on disk.
    shut : callable
        Called last of all, to let go of the store.
    """

    log: ReadingsLog
    records: Records
    shelf: SheetShelf
    clock_text: Callable[[int], str]
    local_date: Callable[[int], date]
    began_ms: int
    tell: Callable[[Happening], None] = lambda _: None
    shut: Callable[[], None] = lambda: None
    silent_after_s: float = SILENT_AFTER_S
    changed: bool = True
    _journal: Journal = field(init=False)
    _rack: Rack = field(init=False)
    _room: RoomNow = field(init=False)
    _warnings: WarningDesk = field(init=False)
    _prompts: PromptDesk = field(init=False)
    _jumps: JumpWatch = field(default_factory=JumpWatch)
    _board: BoardView = field(default_factory=BoardView)
    _dried_ms: int | None = None
    _sealed_s: float | None = None
    _judged_ms: int | None = None

    def __post_init__(self) -> None:
        self._journal = Journal(log=self.log)
        self._rack = Rack(shelf=self.shelf, records=self.records, log=self.log)
        self._room = RoomNow(began_ms=self.began_ms)
        self._warnings = WarningDesk(
            records=self.records, clock_text=self.clock_text, silent_after_s=self.silent_after_s
        )
        self._prompts = PromptDesk(records=self.records)

    def open(self) -> None:
        """Take up the records, and dry every laid coat through the log."""
        self._rack.open(self.began_ms)
        self._warnings.reopen()
        self._prompts.reopen(self.began_ms)

    def take(self, event: BoardEvent, now_s: float) -> None:
        """Take one event of the board."""
        self.changed = True
        match event:
            case ReadingArrived():
                self._read(event, now_s)
            case PortOpened():
                self._board = replace(self._board, connected=True, port=event.port, trouble="")
            case PortLost():
                self._board = replace(self._board, connected=False, port=event.port, trouble=event.reason)
                self._note(event.time_ms, "port-lost", event.reason)
            case BoardNamed():
                self._board = replace(self._board, sensor=event.sensor)
                self._note(event.time_ms, "board", f"{event.board_id} {event.sensor} {event.sensor_serial}")
            case LineRefused():
                self._board = replace(self._board, counts=event.counts)

    def _read(self, event: ReadingArrived, now_s: float) -> None:
        reading = event.reading
        self._journal.add(reading, now_s)
        self._room.take(reading)
        if event.counts.resets > self._board.counts.resets:
            self._note(reading.time_ms, "board-reset", "The board started again.")
        self._board = replace(
            self._board, counts=event.counts, last_ms=reading.time_ms, checked=reading.checked, silent=False
        )
        if self._dried_ms is None or not 0 <= reading.time_ms - self._dried_ms < ADVANCE_MS:
            self._dry(reading.time_ms)
        self._judge(reading.time_ms)

    def _dry(self, now_ms: int) -> None:
        air = self._room.mean_air()
        self._dried_ms = now_ms
        if air is None:
            return
        for happening in self._rack.advance(air, now_ms):
            self.tell(happening)
        for prompt in self._prompts.settle(coats_to_tend(self._rack), now_ms):
            self.tell(prompt)

    def _judge(self, now_ms: int) -> None:
        self._judged_ms = now_ms
        for happening in self._warnings.settle(self._room.air_now(now_ms), coats_at_risk(self._rack), now_ms):
            self.changed = True
            self.tell(happening)

    def carry_out(self, command: Command, now_ms: int) -> str:
        """Carry out a command; on return it is on disk.

        Raises
        ------
        Refused
            If it cannot be done, with one sentence for her; nothing was changed.
        """
        self.changed = True
        try:
            return self._carried_out(command, now_ms)
        except StoreTrouble as trouble:
            raise Refused(str(trouble)) from trouble

    def _carried_out(self, command: Command, now_ms: int) -> str:
        match command:
            case HearWarning():
                happened = self._warnings.hear(command.warning_key, now_ms)
                key = command.warning_key
            case RemindLater():
                happened = self._warnings.remind(command.warning_key, command.until_ms, now_ms)
                key = command.warning_key
            case TickPrompt():
                self._prompts.tick(command.prompt_key, now_ms)
                return command.prompt_key
            case _:
                key = self._rack.carry_out(command, now_ms)
                self._dry(now_ms)
                self._judge(now_ms)
                return key
        for happening in happened:
            self.tell(happening)
        return key

    def look(self, now_ms: int, now_s: float, overflowed: int = 0) -> None:
        """Look at the clock: commit what is old, notice silence, jumps and overflow, pack old hours."""
        self._journal.settle(now_s)
        self.mind_the_clock(now_ms, now_s)
        if overflowed != self._board.overflowed:
            lost = overflowed - self._board.overflowed
            self._note(now_ms, "overflow", f"{lost} readings came faster than they could be kept.")
            self._board = replace(self._board, overflowed=overflowed)
            self.changed = True
        if self._judged_ms is None or abs(now_ms - self._judged_ms) >= JUDGE_EVERY_MS:
            self._judge(now_ms)
            self.changed = True
        if self._sealed_s is None or now_s - self._sealed_s >= SEAL_EVERY_S:
            self._sealed_s = now_s
            self._seal(now_ms)

    def mind_the_clock(self, now_ms: int, now_s: float) -> None:
        """Notice a wall clock that was set, and take everything along: its step is no drying time."""
        jump_s = self._jumps.look(now_ms, now_s)
        if not jump_s:
            return
        step_ms = round(jump_s * 1000)
        self._rack.shift(step_ms)
        self._room.shift(step_ms)
        self._dried_ms = None if self._dried_ms is None else self._dried_ms + step_ms
        self._judged_ms = None
        self._note(now_ms, "clock-set", f"The clock was set by {jump_s:+.0f} s.")

    def _seal(self, now_ms: int) -> None:
        try:
            self.log.seal(now_ms - SEAL_AGE_MS)
        except StoreTrouble as trouble:
            self._journal.trouble = str(trouble)

    def snapshot(self, now_ms: int) -> Snapshot:
        """Return the studio at this moment."""
        self.changed = False
        air = self._room.air_now(now_ms)
        silent = any(concern.kind is Kind.BOARD_SILENT for concern in self._warnings.concerns)
        return Snapshot(
            time_ms=now_ms,
            board=replace(self._board, silent=silent),
            room=room_view(self._room, air, coats_at_risk(self._rack), now_ms),
            sentence=self._sentence(air, now_ms),
            pieces=piece_views(self._rack, self.local_date, now_ms),
            prompts=self._prompts.views(now_ms),
            warnings=self._warnings.views(),
            room_checks=tuple(
                (name, room_check(air, sheet, clock_text=self.clock_text)) for name, sheet in self.shelf.sheets.items()
            ),
            store_trouble=self._journal.trouble or self._warnings.trouble or self._prompts.trouble,
        )

    def close(self, now_s: float) -> None:
        """Put the open batch on disk and let go of the store."""
        self._journal.flush(now_s)
        self.shut()

    def _sentence(self, air: AirNow, now_ms: int) -> Sentence:
        ahead = {coat.sheet for piece in self._rack.on_rack() if (coat := following_coat(piece)) is not None}
        return most_urgent(
            self._warnings.book.open,
            None if self._room.last_ms is None else air,
            now_ms=now_ms,
            clock_text=self.clock_text,
            sheets=[self.shelf.stand_in(name) for name in sorted(ahead)],
            silent_after_s=self.silent_after_s,
        )

    def _note(self, time_ms: int, kind: str, text: str) -> None:
        """Keep a fact about the log; while the disk refuses, the fact is in the trouble that she sees."""
        try:
            self.records.note(time_ms, kind, text)
        except StoreTrouble as trouble:
            self._journal.trouble = str(trouble)
