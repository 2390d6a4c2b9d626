"""`import`: a room log, or the records of a studio file, into the records."""

from __future__ import annotations

import argparse
import os
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path

from studiowatch.board.room_log import RoomLogFaults, log_text
from studiowatch.board.room_log_blocks import log_blocks
from studiowatch.cli import inputs
from studiowatch.cli.answers import DONE, FAULT, WRONG, WrongCall, complain, wrong
from studiowatch.cli.progress import Progress, progress
from studiowatch.service.importing import Summary, import_note, take_log
from studiowatch.service.outfit import OpenStore, Outfit
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.service.times_ahead import coats_ahead
from studiowatch.speech.words import say, say_counted
from studiowatch.store.all_records import StudioConflict
from studiowatch.store.folder import StudioFolder, Watching


def run(call: argparse.Namespace, outfit: Outfit, folder: StudioFolder) -> int:
    """Answer the call."""
    if call.file.suffix.lower() == ".toml":
        return _take_studio(call, outfit, folder)
    if call.replace:
        wrong(say("--replace belongs to a studio file: a reading that is there is never replaced."))
    return _take_log(call, outfit, folder)


@contextmanager
def opened(outfit: Outfit, folder: StudioFolder) -> Iterator[OpenStore]:
    """Give the records for writing, and keep a watch out meanwhile: there is one writer.

    Raises
    ------
    FolderRefused, StoreTrouble
        If a watch is on, or the records cannot be opened.
    """
    folder.make()
    lock = Watching(folder)
    try:
        store = outfit.open_store(folder.database)
        try:
            yield store
        finally:
            store.close()
    finally:
        lock.release()


def _take_log(call: argparse.Namespace, outfit: Outfit, folder: StudioFolder) -> int:
    form = inputs.log_form(call, needed=())
    try:
        with inputs.opened(call.file) as file, log_text(file, str(call.file)) as lines, opened(outfit, folder) as store:
            size = os.fstat(file.fileno()).st_size
            with progress("import") as bar:
                summary = Summary()
                try:
                    for summary in take_log(
                        log_blocks(lines, form),
                        store.take_in,
                        origin=str(call.file),
                        now_ms=outfit.clock.utc_ms(),
                        tell=_above(bar),
                    ):
                        bar.show(
                            file.tell() / size if size else 0.0,
                            say_counted(summary.taken, "{n} reading", "{n} readings"),
                        )
                finally:
                    _note(store, summary, call.file, outfit.clock.utc_ms())
                    bar.clear()
                    complain(f"{call.file}: {summary.sentence()}")
    except RoomLogFaults as faults:
        raise WrongCall(str(faults)) from faults
    if summary.taken:
        folder.severities.unlink(missing_ok=True)  # worked out without these readings
    if summary.header:
        return WRONG
    return FAULT if summary.refused else DONE


def _take_studio(call: argparse.Namespace, outfit: Outfit, folder: StudioFolder) -> int:
    for option in inputs.LOG_FORM:
        if getattr(call, option) is not None:
            name = f"--{option.replace('_', '-')}"
            wrong(say("{option} belongs to a room log, and {file} is a studio file.", option=name, file=call.file))
    studio = inputs.studio_file(call.file)
    shelf = SheetShelf.open(folder.sheets)
    names = sorted({coat.sheet for piece in studio.pieces for coat in piece.coats} - set(shelf.sheets))
    for name in names:
        if name.endswith(".toml"):
            wrong(
                say(
                    "{file}: {sheet} is a sheet beside it; put it into {folder}, and write its name instead.",
                    file=call.file,
                    sheet=name,
                    folder=folder.sheets,
                )
            )
        complain(
            say(
                "{file}: there is no data sheet {sheet}; its coats are kept, and dry once it is in {folder}.",
                file=call.file,
                sheet=repr(name),
                folder=folder.sheets,
            )
        )
    with opened(outfit, folder) as store:
        ahead = coats_ahead(studio.pieces, store.records.pieces(), outfit.clock.utc_ms())
        conflict = "\n".join(f"{call.file}: {sentence}" for sentence in ahead)
        if not conflict:
            try:
                told = store.take_studio(studio, replace=call.replace)
            except StudioConflict as fault:
                conflict = str(fault)
        if conflict:
            complain(f"{conflict}\n{say('{file}: nothing was taken over.', file=call.file)}")
            return FAULT
    complain(
        say(
            "{file}: new: {new}; there already: {there}; replaced: {replaced}.",
            file=call.file,
            new=told.new,
            there=told.there,
            replaced=told.replaced,
        )
    )
    return DONE


def _above(bar: Progress) -> Callable[[str], None]:
    def tell(sentence: str) -> None:
        bar.clear()
        complain(sentence)

    return tell


def _note(store: OpenStore, summary: Summary, path: Path, now_ms: int) -> None:
    """Keep where the readings came from, as a fact about the log."""
    if summary.taken:
        store.records.note(now_ms, "import", import_note(path.name, summary))
