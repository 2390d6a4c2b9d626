"""`check`: is everything that the watch rests on in order: board, database, clock, sound; or one data sheet."""

from __future__ import annotations

import argparse
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from studiowatch.cli.answers import DONE, FAULT, print_document, wrong
from studiowatch.cli.inputs import whole_text
from studiowatch.coats.anchoring import PLAUSIBLE_KAPPA
from studiowatch.coats.sheet_check import SheetReport, check_sheet
from studiowatch.service.outfit import Outfit
from studiowatch.store.chunk_check import moment
from studiowatch.store.folder import StudioFolder, Watching
from studiowatch.store.header import refuse_unwritable
from studiowatch.store.trouble import StoreTrouble

FIRST_YEAR = 2026  # a clock before the program was written is wrong


@dataclass(frozen=True, slots=True, kw_only=True)
class Finding:
    """One thing looked at; `sentence` says what was found, and what to do if `fine` is False."""

    what: str
    fine: bool
    sentence: str


def run(call: argparse.Namespace, outfit: Outfit, folder: StudioFolder) -> int:
    """Answer the call."""
    asked = [name for name in ("sheet", "rebuild", "salvage") if getattr(call, name)]
    if len(asked) > 1:
        wrong(f"--{asked[0]} and --{asked[1]} exclude each other; leave one out.")
    if asked:
        alone: Mapping[str, Callable[[], int]] = {
            "sheet": lambda: _look_at_sheet(call),
            "rebuild": lambda: _rebuild(call, outfit, folder),
            "salvage": lambda: _salvage(call, outfit, folder),
        }
        return alone[asked[0]]()
    looks: Sequence[Callable[[], Finding]] = (
        lambda: _board(outfit),
        lambda: _database(outfit, folder),
        lambda: _clock(outfit),
        lambda: _sound(outfit),
    )
    findings = [look() for look in looks]
    if call.json:
        print_document({finding.what: {"fine": finding.fine, "says": finding.sentence} for finding in findings})
    else:
        for finding in findings:
            print(f"{'fine' if finding.fine else 'LOOK':<5} {finding.what}: {finding.sentence}")
    return DONE if all(finding.fine for finding in findings) else FAULT


def _look_at_sheet(call: argparse.Namespace) -> int:
    report = check_sheet(_text_of(call.sheet), str(call.sheet))
    if call.json:
        print_document(_document(call.sheet, report))
    else:
        _print_report(call.sheet, report)
    return FAULT if report.faults else DONE


def _text_of(path: Path) -> str:
    try:
        return whole_text(path)
    except OSError as fault:
        wrong(f"The data sheet {path} cannot be read: {fault.strerror or fault}.")
    except UnicodeDecodeError as fault:
        wrong(f"The data sheet {path} is not UTF-8 text (byte {fault.start}); save it as UTF-8.")


def _document(path: Path, report: SheetReport) -> dict[str, object]:
    return {
        "file": str(path),
        "sheet": report.sheet.name if report.sheet else None,
        "usable": report.sheet is not None,
        "kappa": None if report.kappa is None else round(report.kappa, 4),
        "faults": list(report.faults),
        "assumed": list(report.assumed),
    }


def _print_report(path: Path, report: SheetReport) -> None:
    for fault in report.faults:
        print(f"LOOK  {fault}")
    for sentence in report.assumed:
        print(f"note  {path}: {sentence}")
    low, high = PLAUSIBLE_KAPPA
    agrees = "" if report.kappa is None else f"; kappa is {report.kappa:.2f}, plausible is {low:g} to {high:g}"
    if not report.faults:
        print(f"fine  {path}: no fault{agrees}")
    elif report.sheet is None:
        print(f"      {path} cannot be used before its faults are mended")
    else:
        print(f"      {path} can be used as it stands")


def _board(outfit: Outfit) -> Finding:
    names = [port.name for port in outfit.list_ports() if port.vid is not None]
    if not names:
        return Finding(what="board", fine=False, sentence="No USB port with a board was found; plug it in.")
    sentence = f"A board may be on {', '.join(names)}; `studiowatch boards` listens to it."
    return Finding(what="board", fine=True, sentence=sentence)


def _database(outfit: Outfit, folder: StudioFolder) -> Finding:
    if not folder.database.exists():
        sentence = f"There are no records yet; they will lie in {folder.database}."
        return Finding(what="database", fine=True, sentence=sentence)
    try:
        refuse_unwritable(folder.database)
        examination = outfit.check_store(folder.database)
    except StoreTrouble as trouble:
        return Finding(what="database", fine=False, sentence=str(trouble))
    if examination.faults:
        return Finding(what="database", fine=False, sentence=" ".join(examination.faults))
    last_ms = examination.last_ms
    last = "there is no reading yet" if last_ms is None else f"the last reading is of {moment(last_ms)}"
    parts = f"pages, tables, sealed hours ({examination.hours}) and their overview"
    sentence = f"{folder.database} is whole: {parts}; {last}."
    return Finding(what="database", fine=True, sentence=sentence)


def _rebuild(call: argparse.Namespace, outfit: Outfit, folder: StudioFolder) -> int:
    if not folder.database.exists():
        wrong(f"There are no records in {folder.path}; there is nothing to rebuild.")
    lock = Watching(folder)
    try:
        outfit.rebuild_store(folder.database)
    finally:
        lock.release()
    sentence = f"The overview of {folder.database} was made anew from its readings."
    if call.json:
        print_document({"rebuilt": str(folder.database), "says": sentence})
    else:
        print(sentence)
    return DONE


def _salvage(call: argparse.Namespace, outfit: Outfit, folder: StudioFolder) -> int:
    told = outfit.salvage_store(folder.database, call.salvage)
    if call.json:
        print_document({"file": str(call.salvage), "saved": list(told.saved), "lost": list(told.lost)})
    else:
        for sentence in told.saved:
            print(f"kept  {sentence}")
        for sentence in told.lost:
            print(f"LOST  {sentence}")
        print(f"What could be read is in {call.salvage}; keep {folder.database} as it is until you have looked at it.")
    return FAULT if told.lost else DONE


def _clock(outfit: Outfit) -> Finding:
    now = datetime.fromtimestamp(outfit.clock.utc_ms() / 1000).astimezone()
    if now.year < FIRST_YEAR:
        sentence = f"The clock says {now:%Y-%m-%d %H:%M}, which cannot be; set it, or ready times will be wrong."
        return Finding(what="clock", fine=False, sentence=sentence)
    return Finding(what="clock", fine=True, sentence=f"{now:%Y-%m-%d %H:%M} {now.tzname()}.")


def _sound(outfit: Outfit) -> Finding:
    trouble = outfit.sound_trouble()
    if trouble:
        sentence = f"Warnings cannot be heard: {trouble}. What is left: {outfit.sound_way()}. Connect a loudspeaker."
        return Finding(what="sound", fine=False, sentence=sentence)
    sentence = f"Warnings are heard through {outfit.sound_way()}; try the sound in the window, under Warnings."
    return Finding(what="sound", fine=True, sentence=sentence)
