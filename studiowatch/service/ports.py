"""What the service needs from outside, as Protocols met structurally; only the entry point picks the classes."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from concurrent.futures import Future
from pathlib import Path
from typing import Protocol

from studiowatch.board.clock import Clock
from studiowatch.board.events import BoardEvent
from studiowatch.board.mapping import ColumnMapping
from studiowatch.board.onlooker import Onlooker
from studiowatch.room.corrections import Imported, Kept, Sighting
from studiowatch.room.readings import Channel, Reading
from studiowatch.service.commands import Command
from studiowatch.service.past import PastView
from studiowatch.service.product_views import SheetChoice, SheetEntry
from studiowatch.service.snapshot import Snapshot
from studiowatch.store.shapes import LearntRecord, PromptRecord, Series, TellingRecord, WarningRecord
from studiowatch.studio.meant import Meant
from studiowatch.studio.pieces import Piece
from studiowatch.studio.preparation import Preparation
from studiowatch.studio.recipes import Recipe
from studiowatch.studio.working_hours import WorkingHours

__all__ = [
    "BoardSource",
    "Clock",
    "Desk",
    "History",
    "LearntRecord",
    "PastView",
    "PromptRecord",
    "ReadingsLog",
    "Records",
    "Series",
    "TellingRecord",
    "WarningRecord",
]


class BoardSource(Protocol):
    """A board, real, simulated or replayed. `start` returns at once; events come from the source's own thread."""

    def start(self, deliver: Callable[[BoardEvent], None]) -> None:
        """Begin to deliver events."""
        ...

    def stop(self) -> None:
        """Stop, join the thread, and raise if it lives on."""
        ...

    def accept(self, board: str, mapping: ColumnMapping) -> None:
        """Read the columns of `board` by `mapping` and keep it. Raises `PortGone` if it is not read, or OSError."""
        ...

    def choose(self, port: str | None) -> None:
        """Read `port` and no other, or whichever answers if that is None. Raises `PortGone` if there is none."""
        ...

    @property
    def onlooker(self) -> Onlooker:
        """What may be seen of its work, from any thread."""
        ...


class History(Protocol):
    """Reads log and records without holding up the writer. Every call may come from any one thread."""

    def span_ms(self) -> tuple[int, int] | None:
        """Return the times of the first and the last reading, or None if there is none."""
        ...

    def series(self, channel: Channel, start_ms: int, end_ms: int, buckets: int) -> Series:
        """Return `channel` between two times in at most about `buckets` buckets."""
        ...

    def past(self) -> PastView:
        """Return pieces that left the rack, all warnings and all prompts; the same value until they change."""
        ...

    def close(self) -> None:
        """Let go of the file."""
        ...


class ReadingsLog(Protocol):
    """The keeper's own way to write and re-read readings."""

    def append(self, readings: Sequence[Reading]) -> None:
        """Commit `readings` in one transaction; on return they are on disk."""
        ...

    def between(self, start_ms: int, end_ms: int) -> Sequence[Reading]:
        """Return the readings with start <= time < end, in the order of time."""
        ...

    def seal(self, before_ms: int, most_hours: int | None = None) -> int:
        """Pack the hours that ended by `before_ms`, so many at the most; return how many readings were moved."""
        ...

    def minute_means(self, start_ms: int, end_ms: int) -> Sequence[Reading]:
        """Return one reading per minute that has any, each channel the mean of that minute, at the minute's middle.

        Of air speed it is the steady one that carries off as much, see `physics.air.steady_speed`.
        """
        ...


class Records(Protocol):
    """Her records. Every write is one transaction and is on disk on return."""

    def pieces(self) -> Sequence[Piece]:
        """Return all pieces with their coats and looks, archived ones too, by place."""
        ...

    def save_piece(self, piece: Piece) -> None:
        """Insert or replace one piece with all its coats and looks; the earlier form is kept as a correction."""
        ...

    def save_pieces(self, pieces: Sequence[Piece]) -> None:
        """Save pieces that change together: all of them or none."""
        ...

    def corrections(self, piece_key: str) -> Sequence[tuple[int, Piece]]:
        """Return the earlier forms of a piece, each with the UTC ms at which it was changed, oldest first."""
        ...

    def warnings(self, limit: int) -> Sequence[WarningRecord]:
        """Return the latest warnings, newest first; open ones are always among them."""
        ...

    def save_warning(self, warning: WarningRecord) -> None:
        """Insert or replace one warning and log its change of state."""
        ...

    def prompts(self) -> Sequence[PromptRecord]:
        """Return the prompts that are not done."""
        ...

    def done_prompts(self) -> frozenset[str]:
        """Return the keys of the prompts that were ticked."""
        ...

    def save_prompt(self, prompt: PromptRecord) -> None:
        """Insert or replace one prompt."""
        ...

    def drop_prompt(self, key: str) -> None:
        """Forget a prompt that applies no longer; one that was ticked stays."""
        ...

    def tellings(self) -> Sequence[TellingRecord]:
        """Return what was done with the prompts that are not ticked: told, put off."""
        ...

    def save_telling(self, telling: TellingRecord) -> None:
        """Insert or replace what was done with one prompt; nothing is kept of a prompt that is gone."""
        ...

    def preparations(self) -> Sequence[Preparation]:
        """Return the preparations that nobody ended, in the order in which they were begun."""
        ...

    def save_preparation(self, preparation: Preparation) -> None:
        """Insert or replace one preparation."""
        ...

    def learnt(self) -> Sequence[LearntRecord]:
        """Return what the tests on each coat taught, in the order in which the coats were laid."""
        ...

    def save_learnt(self, learnt: LearntRecord) -> None:
        """Insert or replace what the tests on one coat taught."""
        ...

    def calibrations(self) -> Sequence[Kept]:
        """Return all calibrations, withdrawn ones too, in the order in which they were made."""
        ...

    def save_calibration(self, kept: Kept) -> None:
        """Insert a calibration, or the time at which one was withdrawn; what was measured never changes."""
        ...

    def sightings(self) -> Sequence[Sighting]:
        """Return which sensor was on from when."""
        ...

    def imported(self) -> Sequence[Imported]:
        """Return which stretches of the log came from outside."""
        ...

    def save_sighting(self, sighting: Sighting) -> None:
        """Add a sighting of a sensor."""
        ...

    def checks(self) -> Sequence[Sighting]:
        """Return when which sensor was checked and found right."""
        ...

    def save_check(self, check: Sighting) -> None:
        """Add a check of a sensor."""
        ...

    def recipes(self) -> Sequence[Recipe]:
        """Return the recipes that she saved."""
        ...

    def save_recipe(self, name: str, sheets: Sequence[str]) -> None:
        """Insert or replace a recipe of hers; no sheets drop it."""
        ...

    def working_hours(self) -> WorkingHours:
        """Return her working hours."""
        ...

    def save_working_hours(self, hours: WorkingHours) -> None:
        """Keep her working hours."""
        ...

    def intentions(self) -> Sequence[Meant]:
        """Return what she means to do with the room, over or not, in the order in which it was meant."""
        ...

    def save_intention(self, meant: Meant) -> None:
        """Insert or replace something that she means to do with the room."""
        ...

    def drop_intention(self, key: str) -> None:
        """Forget something that she meant to do with the room."""
        ...

    def note(self, time_ms: int, kind: str, text: str) -> None:
        """Keep a fact about the log itself: a clock step, a resume, a reset, an overflow."""
        ...

    def noted(self, kind: str) -> Sequence[tuple[int, str]]:
        """Return the facts of one kind, UTC ms and text, in the order in which they were kept."""
        ...


class Desk(Protocol):
    """What the window and the commands hold: a way to ask for things, and to be told what is."""

    def submit(self, command: Command) -> Future[str]:
        """Carry out `command` on the keeper's thread.

        The future holds the key of what was made or changed, or raises `Refused` with one sentence for her.
        """
        ...

    def subscribe(self, listener: Callable[[Snapshot], None]) -> None:
        """Have `listener` called with each new snapshot, on the keeper's thread: it must hand over and return."""
        ...

    def look(self, *, closely: bool) -> None:
        """Say whether anybody sees the snapshots: else they come seldom, but for what happens.

        What is only shown is worked out seldom then, and brought up once somebody looks again.
        """
        ...

    @property
    def onlooker(self) -> Onlooker:
        """What may be seen of the board's reader, from any thread: it does not wait for the keeper."""
        ...

    @property
    def photo_folder(self) -> Path | None:
        """Where the photos of pieces lie, or None where none are kept."""
        ...

    def sheets(self) -> Sequence[SheetChoice]:
        """Return the data sheets that may be laid, built-in ones first."""
        ...

    def shelf(self) -> Sequence[SheetEntry]:
        """Return the data sheets with all their figures, built-in ones first."""
        ...


class Ringer(Protocol):
    """What sounds the warnings where there is no window."""

    @property
    def trouble(self) -> str:
        """Why nothing can be heard, or ""."""
        ...

    def listen(self, snapshot: Snapshot) -> bool:
        """Ring if something in `snapshot` is due to be heard, return whether it was; it must return at once."""
        ...

    def close(self) -> None:
        """Fall silent."""
        ...
