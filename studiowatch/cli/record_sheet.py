"""`record-sheet`: the finishing record of a piece, as PDF or as an HTML page, from the records or from files."""

from __future__ import annotations

import argparse
from collections.abc import Sequence
from difflib import get_close_matches
from pathlib import Path

from studiowatch.board.room_log_header import CLIMATE
from studiowatch.cli import inputs
from studiowatch.cli.answers import DONE, complain, wrong
from studiowatch.cli.called import called
from studiowatch.cli.outputs import written
from studiowatch.service.finishing_sheets import record_by_log
from studiowatch.service.outfit import Outfit
from studiowatch.service.photos import OUTSIDE, photo_path
from studiowatch.service.record_page import page
from studiowatch.service.review_log import LogInMemory
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.service.whole_file import replacing
from studiowatch.speech.words import say
from studiowatch.store.database import looking
from studiowatch.store.folder import StudioFolder
from studiowatch.store.review_records import ReviewRecords
from studiowatch.studio.finishing_record import FinishingRecord
from studiowatch.studio.pieces import Piece

NEAR = 0.5  # likeness, 0-1, from which a title is named as near


def run(call: argparse.Namespace, outfit: Outfit, folder: StudioFolder) -> int:
    """Answer the call."""
    if call.pdf is None and call.html is None:
        wrong(say("record-sheet needs --pdf FILE or --html FILE."))
    if call.room is not None and call.studio is None:
        wrong(
            say(
                "{given} needs {lacking} beside it; without both, the records are asked.",
                given="--room",
                lacking="--studio",
            )
        )
    if call.room is None:
        inputs.refuse_log_form(call)
    for path in (call.pdf, call.html):
        if path is not None and path.exists():
            wrong(say("{file} is there already; choose a new name, or move it away first.", file=path))
    shelf = SheetShelf.open(folder.sheets)
    now_ms = outfit.clock.utc_ms()
    record = _from_records(call, shelf, folder, now_ms) if call.studio is None else _from_files(call, shelf, now_ms)
    home = folder.path if call.studio is None else call.studio.parent
    photo = _photo(record, outfit, home)
    if call.html is not None:
        with written(str(call.html)) as out:
            out.write(page(record, photo))
    if call.pdf is not None:
        _print(outfit, record, call.pdf, photo, call.paper)
    return DONE


def _from_records(call: argparse.Namespace, shelf: SheetShelf, folder: StudioFolder, now_ms: int) -> FinishingRecord:
    with looking(folder.database) as database:
        records = ReviewRecords(database)
        piece = piece_like(records.pieces(), call.piece, str(folder.database))
        correct = records.corrections().corrected
        return record_by_log(piece, shelf, records, correct, now_ms=now_ms, with_notes=not call.without_notes)


def _from_files(call: argparse.Namespace, shelf: SheetShelf, now_ms: int) -> FinishingRecord:
    pieces, shelf = inputs.studio(call.studio, shelf)
    readings = inputs.room_log(call.room, inputs.log_form(call, CLIMATE)).readings() if call.room else ()
    log = LogInMemory(readings=readings)
    piece = piece_like(pieces, call.piece, str(call.studio))
    return record_by_log(piece, shelf, log, now_ms=now_ms, with_notes=not call.without_notes)


def piece_like(pieces: Sequence[Piece], title: str, origin: str) -> Piece:
    """Return the one piece with this title, whatever its capitals; another call is refused, near titles named."""
    wanted = " ".join(title.split()).casefold()
    found = called(title, pieces, origin)
    if found is None:
        titles = {piece.title.casefold(): piece.title for piece in pieces}
        near = [titles[one] for one in get_close_matches(wanted, titles, cutoff=NEAR)]
        near = near or [name for key, name in titles.items() if wanted and wanted in key]
        wrong(
            say(
                "There is no piece {given} in {origin}; near it: {titles}.",
                given=repr(title),
                origin=origin,
                titles=", ".join(near),
            )
            if near
            else say(
                "There is no piece {given} in {origin}; it has {titles}.",
                given=repr(title),
                origin=origin,
                titles=", ".join(titles.values()) or say("none"),
            )
        )
    return found


def _photo(record: FinishingRecord, outfit: Outfit, home: Path) -> bytes:
    if not record.photo:
        return b""
    path = photo_path(home / "photos", record.photo)
    photo, why = outfit.photo(path) if path else (b"", say(OUTSIDE, name=record.photo))
    if why:
        complain(why)
    return photo


def _print(outfit: Outfit, record: FinishingRecord, path: Path, photo: bytes, paper: str) -> None:
    with replacing(path) as unfinished:
        outfit.print_record(record, unfinished, photo, paper)
