"""Finishing records for the window: what the records hold of a piece, asked for while the watch goes on."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import Protocol

from studiowatch.coats.sheet_file import SheetFaults
from studiowatch.room.readings import Reading
from studiowatch.service.exchange import ExchangeFault
from studiowatch.service.modelled_times import modelled_times
from studiowatch.service.photos import OUTSIDE, photo_path
from studiowatch.service.ports import Clock
from studiowatch.service.record_room import room_while_wet
from studiowatch.service.review_log import MinuteLog
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.speech.words import mark, say
from studiowatch.store.database import looking
from studiowatch.store.folder import StudioFolder
from studiowatch.store.review_records import ReviewRecords
from studiowatch.store.trouble import StoreTrouble
from studiowatch.studio.finishing_record import FinishingRecord, finishing_record
from studiowatch.studio.pieces import Piece

NO_PIECE = mark("This piece is not in the records any more.")


def record_by_log(
    piece: Piece,
    shelf: SheetShelf,
    log: MinuteLog,
    correct: Callable[[Reading], Reading] = lambda reading: reading,
    *,
    now_ms: int,
    with_notes: bool,
) -> FinishingRecord:
    """Return the record of a piece as of `now_ms`, UTC ms, with the room of its log put right by `correct`.

    It has what the model makes of that room.
    """
    return finishing_record(
        piece,
        shelf.sheets,
        lambda start_ms, end_ms: room_while_wet(log, start_ms, end_ms, correct),
        now_ms=now_ms,
        modelled=modelled_times(piece, shelf, log, correct),
        with_notes=with_notes,
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class FinishingSheet:
    """A finishing record, its photo (JPEG or empty), and one sentence on a photo that cannot be shown, or ""."""

    record: FinishingRecord
    photo: bytes
    photo_trouble: str


class FinishingSheets(Protocol):
    """What the window may ask of finishing records. Calls take long: from a thread of their own."""

    def sheet(self, piece_key: str, *, with_notes: bool) -> FinishingSheet:
        """Return the record of a piece as it stands; raises ExchangeFault with one sentence if there is none."""
        ...


@dataclass(frozen=True, slots=True, kw_only=True)
class StudioFinishing:
    """The finishing records of the studio in `folder`.

    Attributes
    ----------
    photo : callable
        Reads a photo as JPEG; or returns none and one sentence that says why.
    clock : Clock
        Tells when a record is made.
    """

    folder: StudioFolder
    photo: Callable[[Path], tuple[bytes, str]]
    clock: Clock

    def sheet(self, piece_key: str, *, with_notes: bool) -> FinishingSheet:
        """Return the record; see `FinishingSheets`."""
        try:
            record = self._record(piece_key, with_notes=with_notes)
        except OSError as fault:
            raise ExchangeFault(f"{fault.filename}: {fault.strerror or fault}.") from fault
        except (StoreTrouble, SheetFaults) as fault:
            raise ExchangeFault(str(fault)) from fault
        photo, trouble = b"", ""
        if record.photo:
            path = photo_path(self.folder.photos, record.photo)
            photo, trouble = self.photo(path) if path else (b"", say(OUTSIDE, name=record.photo))
        return FinishingSheet(record=record, photo=photo, photo_trouble=trouble)

    def _record(self, piece_key: str, *, with_notes: bool) -> FinishingRecord:
        shelf = SheetShelf.open(self.folder.sheets)
        with looking(self.folder.database) as database:
            records = ReviewRecords(database)
            piece = next((one for one in records.pieces() if one.key == piece_key), None)
            if piece is None:
                raise ExchangeFault(say(NO_PIECE))
            correct, now_ms = records.corrections().corrected, self.clock.utc_ms()
            return record_by_log(piece, shelf, records, correct, now_ms=now_ms, with_notes=with_notes)
