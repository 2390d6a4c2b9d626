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
from studiowatch.speech.dates import day_of_year
from studiowatch.speech.units import chosen
from studiowatch.speech.words import mark, say
from studiowatch.store.chunk_check import moment
from studiowatch.store.folder import StudioFolder, Watching
from studiowatch.store.header import refuse_unwritable
from studiowatch.store.trouble import StoreTrouble

FIRST_YEAR = 2026  # a clock before the program was written is wrong
VERDICT_WIDTH = 5  # characters before what was found
WHAT = {"board": mark("board"), "database": mark("database"), "clock": mark("clock"), "sound": mark("sound")}


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
        wrong(say("--{first} and --{second} exclude each other; leave one out.", first=asked[0], second=asked[1]))
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
            print(f"{_verdict(fine=finding.fine)} {say(WHAT[finding.what])}: {finding.sentence}")
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
        wrong(say("The data sheet {file} cannot be read: {fault}.", file=path, fault=fault.strerror or fault))
    except UnicodeDecodeError as fault:
        wrong(
            say(
                "The data sheet {file} is not UTF-8 text (byte {place}); save it as UTF-8.",
                file=path,
                place=fault.start,
            )
        )


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
        print(f"{_verdict(fine=False)} {fault}")
    for sentence in report.assumed:
        print(f"{say('note'):<{VERDICT_WIDTH}} {path}: {sentence}")
    if not report.faults:
        print(f"{_verdict(fine=True)} {path}: {_no_fault(report.kappa)}")
    elif report.sheet is None:
        print(f"{'':<{VERDICT_WIDTH}} {say('{file} cannot be used before its faults are mended', file=path)}")
    else:
        print(f"{'':<{VERDICT_WIDTH}} {say('{file} can be used as it stands', file=path)}")


def _verdict(*, fine: bool) -> str:
    return f"{say('fine') if fine else say('LOOK'):<{VERDICT_WIDTH}}"


def _no_fault(kappa: float | None) -> str:
    if kappa is None:
        return say("no fault")
    low, high = PLAUSIBLE_KAPPA
    units = chosen()
    return say(
        "no fault; kappa is {kappa}, plausible is {low} to {high}",
        kappa=units.number(kappa, 2),
        low=units.plain(low),
        high=units.plain(high),
    )


def _board(outfit: Outfit) -> Finding:
    names = [port.name for port in outfit.list_ports() if port.vid is not None]
    if not names:
        return Finding(what="board", fine=False, sentence=say("No USB port with a board was found; plug it in."))
    sentence = say("A board may be on {ports}; `studiowatch boards` listens to it.", ports=", ".join(names))
    return Finding(what="board", fine=True, sentence=sentence)


def _database(outfit: Outfit, folder: StudioFolder) -> Finding:
    if not folder.database.exists():
        sentence = say("There are no records yet; they will lie in {file}.", file=folder.database)
        return Finding(what="database", fine=True, sentence=sentence)
    try:
        refuse_unwritable(folder.database)
        examination = outfit.check_store(folder.database)
    except StoreTrouble as trouble:
        return Finding(what="database", fine=False, sentence=str(trouble))
    if examination.faults:
        return Finding(what="database", fine=False, sentence=" ".join(examination.faults))
    last_ms = examination.last_ms
    last = (
        say("there is no reading yet")
        if last_ms is None
        else say("the last reading is of {moment}", moment=moment(last_ms))
    )
    sentence = say(
        "{file} is whole: pages, tables, sealed hours ({hours}) and their overview; {last}.",
        file=folder.database,
        hours=examination.hours,
        last=last,
    )
    return Finding(what="database", fine=True, sentence=sentence)


def _rebuild(call: argparse.Namespace, outfit: Outfit, folder: StudioFolder) -> int:
    if not folder.database.exists():
        wrong(say("There are no records in {folder}; there is nothing to rebuild.", folder=folder.path))
    lock = Watching(folder)
    try:
        outfit.rebuild_store(folder.database)
    finally:
        lock.release()
    sentence = say("The overview of {file} was made anew from its readings.", file=folder.database)
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
            print(f"{say('kept'):<{VERDICT_WIDTH}} {sentence}")
        for sentence in told.lost:
            print(f"{say('LOST'):<{VERDICT_WIDTH}} {sentence}")
        print(
            say(
                "What could be read is in {new}; keep {old} as it is until you have looked at it.",
                new=call.salvage,
                old=folder.database,
            )
        )
    return FAULT if told.lost else DONE


def _clock(outfit: Outfit) -> Finding:
    now = datetime.fromtimestamp(outfit.clock.utc_ms() / 1000).astimezone()
    told = f"{day_of_year(now)} {chosen().clock(now)}"
    if now.year < FIRST_YEAR:
        sentence = say("The clock says {moment}, which cannot be; set it, or ready times will be wrong.", moment=told)
        return Finding(what="clock", fine=False, sentence=sentence)
    return Finding(what="clock", fine=True, sentence=f"{told} {now.tzname()}.")


def _sound(outfit: Outfit) -> Finding:
    trouble = outfit.sound_trouble()
    if trouble:
        sentence = say(
            "Warnings cannot be heard: {trouble}. What is left: {way}. Connect a loudspeaker.",
            trouble=trouble,
            way=outfit.sound_way(),
        )
        return Finding(what="sound", fine=False, sentence=sentence)
    sentence = say(
        "Warnings are heard through {way}; try the sound in the window, under Warnings.", way=outfit.sound_way()
    )
    return Finding(what="sound", fine=True, sentence=sentence)
