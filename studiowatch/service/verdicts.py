"""The verdicts of a snapshot: the one sentence, and whether the room is fit for each sheet."""

from __future__ import annotations

from dataclasses import dataclass, replace

from studiowatch.coats.data_sheet import DataSheet
from studiowatch.service.bench import AHEAD_MS
from studiowatch.service.board_view import BoardView
from studiowatch.service.local_time import when_text
from studiowatch.service.rack import Rack
from studiowatch.service.rack_seen import RackFacts
from studiowatch.service.room_now import RoomNow
from studiowatch.service.warning_desk import WarningDesk
from studiowatch.studio.concern import AirNow
from studiowatch.studio.sentence import CLOCK_BEHIND, most_urgent, room_check
from studiowatch.studio.waiting import Outlook, how_long, unmet
from studiowatch.studio.watch import SILENT_AFTER_IDLE_S
from studiowatch.studio.words import Level, Sentence

CHECKED_MS = 5_000  # ms for which the verdict on each sheet stays as it was said, unless what is known of the air moves


@dataclass(slots=True)
class RoomChecks:
    """Says for each sheet by name whether the room is fit to lay it now, or why not yet and about for how long."""

    rack: Rack
    desk: WarningDesk
    outlook: Outlook
    _told: tuple[tuple[str, Sentence], ...] = ()
    _told_of: tuple[object, ...] | None = None

    def forget(self) -> None:
        """Say all anew the next time: something was done."""
        self._told_of = None

    def told(self, air: AirNow, now_ms: int) -> tuple[tuple[str, Sentence], ...]:
        """Return what is said of the room as it is now; the figures in it are at most some seconds old."""
        known = (air.temperature_C is None, air.humidity_pct is None, air.movement, air.implausible, air.typed is None)
        of = (known, self.desk.units, now_ms // CHECKED_MS)
        if of != self._told_of:
            self._told, self._told_of = self._said(air, now_ms), of
        return self._told

    def _said(self, air: AirNow, now_ms: int) -> tuple[tuple[str, Sentence], ...]:
        desk = self.desk
        return tuple(
            (
                name,
                _with_wait(
                    room_check(air, sheet, clock_text=desk.clock_text, units=desk.units),
                    air,
                    sheet,
                    self.outlook,
                    now_ms,
                ),
            )
            for name, sheet in self.rack.shelf.sheets.items()
        )


def _with_wait(check: Sentence, air: AirNow, sheet: DataSheet, outlook: Outlook, now_ms: int) -> Sentence:
    if air.implausible or air.typed is not None:
        return check  # nobody knows what the room does, or only how it was
    wait = how_long(unmet(air, sheet), outlook, now_ms, lambda time_ms: when_text(time_ms, now_ms))
    return replace(check, detail=f"{check.detail} {wait}") if wait else check


def sentence_now(rack: RackFacts, room: RoomNow, desk: WarningDesk, board: BoardView, now_ms: int) -> Sentence:
    """Return what to say above all else at `now_ms`; a clock behind all records leaves only the urgent before it."""
    said = _said(rack, room, desk, board, now_ms)
    return CLOCK_BEHIND.said if said.level < Level.ACT and is_clock_behind(rack, desk, now_ms) else said


def is_clock_behind(rack: RackFacts, desk: WarningDesk, now_ms: int) -> bool:
    """Return whether a coat was laid, or a warning began, at a time that is still to come by the clock."""
    laid_ms = now_ms if rack.last_laid_ms is None else rack.last_laid_ms
    began_ms = (warning.began_ms for warning in (*desk.book.open, *desk.book.recent))
    return max(laid_ms, *began_ms, 0) > now_ms + AHEAD_MS


def _said(rack: RackFacts, room: RoomNow, desk: WarningDesk, board: BoardView, now_ms: int) -> Sentence:
    return most_urgent(
        desk.book.open,
        None if room.last_ms is None else room.air_now(now_ms),
        now_ms=now_ms,
        clock_text=desk.clock_text,
        units=desk.units,
        sheets=rack.next_sheets,
        wet_titles=tuple(dict.fromkeys(coat.piece_title for coat in rack.at_risk)),
        connected=board.connected,
        trouble=board.trouble,
        unreadable=0 if board.counts.good else board.counts.faulty,
        silent_after_s=desk.silent_after_s if rack.at_risk else max(desk.silent_after_s, SILENT_AFTER_IDLE_S),
    )
