"""The command line: which calls there are and what they take."""

from __future__ import annotations

import argparse
from pathlib import Path

from studiowatch import __version__
from studiowatch.cli.figures import SYSTEMS
from studiowatch.cli.parsing import Parser
from studiowatch.cli.piece_calls import add_piece_calls
from studiowatch.coats.stages import Orientation
from studiowatch.coats.support import Support
from studiowatch.speech.words import say


def parser() -> Parser:
    """Return the parser of all calls."""
    top = Parser(
        prog="studiowatch",
        description=say(
            "Watches a painter's drying room: ready times for wet coats, and warnings before the air spoils one."
        ),
    )
    top.add_argument(
        "--version",
        action="version",
        version=f"studiowatch {__version__}",
        help=say("show program's version number and exit"),
    )
    top.add_argument("--folder", type=Path, help=say("the studio's records; default: the user's data folder"))
    top.add_argument(
        "--units", choices=SYSTEMS, help=say("what figures for people are in; default: as the window shows them")
    )
    calls = top.add_subparsers(dest="call", metavar="command")
    _watching(calls)
    _asking(calls)
    add_piece_calls(calls)
    _exchanging(calls)
    _at_the_rack(calls)
    return top


def _watching(calls: argparse._SubParsersAction[Parser]) -> None:
    demo = calls.add_parser("demo", help=say("look around: a made-up studio and the built-in simulated board"))
    demo.add_argument("--headless", action="store_true", help=say("print instead of opening a window"))
    demo.add_argument("--seconds", type=float, help=say("end by itself after so long"))
    record = calls.add_parser("record", help=say("watch without a window: store, and print warnings"))
    source = record.add_mutually_exclusive_group()
    source.add_argument("--port", help=say("the board's port; default: the one that answers, the last one first"))
    source.add_argument("--simulated", action="store_true", help=say("use the built-in simulated board"))
    record.add_argument(
        "--sound", action="store_true", help=say("sound warnings too, until Enter is pressed; quiet hours hold")
    )
    record.add_argument("--seconds", type=float, help=say("end by itself after so long"))
    replay = calls.add_parser("replay", help=say("run the whole watch over a room log, faster than life"))
    replay.add_argument("room", type=Path, metavar="ROOM.csv")
    replay.add_argument("--studio", type=Path, required=True, metavar="STUDIO.toml")
    _log_form(replay)
    replay.add_argument("--json", action="store_true", help=say("one JSON object a line"))


def _asking(calls: argparse._SubParsersAction[Parser]) -> None:
    boards = calls.add_parser("boards", help=say("ports seen, and what answers on each"))
    boards.add_argument("--json", action="store_true")
    boards.add_argument(
        "--listen-s", type=float, default=5.0, help=say("how long to listen on each port in each format, s")
    )
    boards.add_argument(
        "--accept", metavar="PORT", help=say("read the unchecked lines of this port as shown from now on")
    )
    boards.add_argument(
        "--column",
        action="append",
        default=[],
        metavar="KEY=CHANNEL:UNIT",
        help=say("with --accept, what a column is: 2=humidity_pct:%%, or 3=none"),
    )
    check = calls.add_parser("check", help=say("diagnose board, database, clock and sound, or a data sheet"))
    check.add_argument("--sheet", type=Path, metavar="FILE.toml", help=say("look at this data sheet instead"))
    check.add_argument("--rebuild", action="store_true", help=say("make the history's overview anew from its readings"))
    check.add_argument(
        "--salvage", type=Path, metavar="NEWFILE", help=say("save what damaged records still hold into this")
    )
    check.add_argument("--json", action="store_true")
    login = calls.add_parser("login", help=say("whether the window opens when you log in"))
    wish = login.add_mutually_exclusive_group()
    wish.add_argument("--on", action="store_true", help=say("open it at login from now on"))
    wish.add_argument("--off", action="store_true", help=say("do not"))
    wish.add_argument("--status", action="store_true", help=say("only say whether it does"))
    login.add_argument("--json", action="store_true")
    _predicting(calls)
    _explaining(calls)
    _planning(calls)
    _intending(calls)
    _asking_what_if(calls)


def _at_the_rack(calls: argparse._SubParsersAction[Parser]) -> None:
    prompts = calls.add_parser("prompts", help=say("what to do at the rack: list it, tick it off, or put it off"))
    deeds = prompts.add_subparsers(dest="deed", metavar="deed", required=True)
    shown = deeds.add_parser("list", help=say("open prompts, soonest first, each with its number"))
    shown.add_argument("--json", action="store_true", help=say("one JSON document, with keys"))
    for deed, words in (("tick", say("these were done")), ("snooze", say("say these again later"))):
        made = deeds.add_parser(deed, help=words)
        made.add_argument("prompt", nargs="+", metavar="NUMBER|KEY")
        if deed == "snooze":
            made.add_argument("--minutes", type=float, default=5.0, help=say("for how long; default: 5"))


def _exchanging(calls: argparse._SubParsersAction[Parser]) -> None:
    history = calls.add_parser("history", help=say("readings out, as they were read: a room log (CSV), or SenML"))
    history.add_argument(
        "--from", dest="start", metavar="ISO", help=say("with zone, or a day; default: the first reading")
    )
    history.add_argument(
        "--to", dest="end", metavar="ISO", help=say("up to here, with zone, or a day; default: the last")
    )
    form = history.add_mutually_exclusive_group(required=True)
    form.add_argument("--csv", metavar="FILE", help=say("a room log; - for stdout"))
    form.add_argument("--senml", metavar="FILE", help=say("one pack of RFC 8428 in JSON; - for stdout"))
    history.add_argument(
        "--name", help=say("for SenML: what its names begin with; default: one of this machine and folder")
    )
    backup = calls.add_parser(
        "backup", help=say("copy records, readings and sheets, and check the copy; a watch may go on")
    )
    backup.add_argument("--to", type=Path, metavar="FOLDER", help=say("default: the studio's own folder of backups"))
    export = calls.add_parser("export", help=say("all records out, as one studio file"))
    export.add_argument("file", metavar="STUDIO.toml", help=say("- for stdout"))
    take = calls.add_parser("import", help=say("a room log, or the records of a studio file, into the records"))
    take.add_argument("file", type=Path, metavar="FILE.csv|STUDIO.toml")
    take.add_argument(
        "--replace", action="store_true", help=say("of a studio file: also what the records have otherwise")
    )
    _log_form(take)


def _explaining(calls: argparse._SubParsersAction[Parser]) -> None:
    why = calls.add_parser("why", help=say("why a coat clouded, what would have changed it, and what to do now"))
    why.add_argument("--piece", required=True, metavar="TITLE")
    why.add_argument(
        "--coat", type=int, required=True, metavar="N", help=say("among its laid coats, paint too, from 1")
    )
    why.add_argument("--studio", type=Path, metavar="STUDIO.toml", help=say("with --room; without both, the records"))
    why.add_argument("--room", type=Path, metavar="ROOM.csv")
    _log_form(why)
    why.add_argument("--json", action="store_true", help=say("one JSON document"))
    sheet = calls.add_parser(
        "record-sheet", help=say("the finishing record of a piece, for the client and the conservator")
    )
    sheet.add_argument("piece", metavar="PIECE", help=say("its title"))
    sheet.add_argument("--pdf", type=Path, metavar="FILE")
    sheet.add_argument("--html", type=Path, metavar="FILE", help=say("one page that needs no other file"))
    sheet.add_argument("--paper", choices=("a4", "letter"), default="a4", help=say("default: a4"))
    sheet.add_argument("--without-notes", action="store_true", help=say("leave out the notes on the piece"))
    sheet.add_argument("--studio", type=Path, metavar="STUDIO.toml", help=say("instead of the records"))
    sheet.add_argument("--room", type=Path, metavar="ROOM.csv", help=say("with --studio"))
    _log_form(sheet)


def _planning(calls: argparse._SubParsersAction[Parser]) -> None:
    plan = calls.add_parser("plan", help=say("finishing plan and prompts, from the records or of a studio file"))
    _studio_then(plan)
    plan.add_argument(
        "--hours",
        action="append",
        default=[],
        metavar="DAY=HOURS",
        help=say("set them: monday=09:00-18:00, sunday=off"),
    )
    plan.add_argument("--keep-recipe", metavar="NAME=SHEET,SHEET", help=say("keep coats, lowest first, under a name"))
    plan.add_argument("--drop-recipe", metavar="NAME", help=say("forget a recipe of your own"))
    plan.add_argument("--apply", nargs=2, metavar=("RECIPE", "TITLE"), help=say("plan a recipe's coats for a piece"))
    plan.add_argument("--ics", metavar="FILE", help=say("also write a calendar file (RFC 5545); - for stdout, alone"))
    plan.add_argument("--json", action="store_true", help=say("one JSON document"))


def _intending(calls: argparse._SubParsersAction[Parser]) -> None:
    intend = calls.add_parser(
        "intend", help=say("what you mean to do with the room; without options, what is meant so far")
    )
    what = intend.add_mutually_exclusive_group()
    what.add_argument("--heater", metavar="HH:MM-HH:MM", help=say("a heater is on then, each day; needs --to-C"))
    what.add_argument(
        "--dehumidifier", metavar="HH:MM-HH:MM", help=say("a dehumidifier is on then, each day; needs --to-pct")
    )
    what.add_argument("--fan", metavar="HH:MM-HH:MM", help=say("a fan is on then, each day"))
    what.add_argument(
        "--fan-off",
        metavar="HH:MM-HH:MM",
        nargs="?",
        const="",
        help=say("the fan stays off then; without hours, at any time until you forget it"),
    )
    what.add_argument("--drop", metavar="NUMBER|KEY", help=say("this one is not meant any more"))
    intend.add_argument("--to-C", type=float, dest="to_C", metavar="T", help=say("what the heater is set to, °C"))
    intend.add_argument("--to-pct", type=float, metavar="RH", help=say("what the dehumidifier is set to, %% RH"))
    intend.add_argument(
        "--at-m-s", type=float, metavar="V", help=say("how the fan moves the air at the pieces, m/s; default: 0.5")
    )
    intend.add_argument("--every-day", action="store_true", help=say("on every day until you forget it"))
    intend.add_argument("--days", type=int, metavar="N", help=say("on how many days in a row; default: 1"))
    intend.add_argument("--json", action="store_true", help=say("one JSON document, with keys"))


def _asking_what_if(calls: argparse._SubParsersAction[Parser]) -> None:
    ask = calls.add_parser("what-if", help=say("when the pieces would be ready in a room held otherwise from now on"))
    ask.add_argument("--temperature-C", type=float, dest="temperature_C", metavar="T", help=say("kept at this, °C"))
    ask.add_argument("--humidity-pct", type=float, metavar="RH", help=say("kept at this, %% RH; else vapour stays"))
    ask.add_argument("--air-m-s", type=float, metavar="V", help=say("air moving at this, m/s; 0: nothing is on"))
    ask.add_argument("--cover", action="store_true", help=say("a mesh cover over every coat from now on"))
    ask.add_argument("--hours", type=float, metavar="H", help=say("for so long; default: for good"))
    _studio_then(ask)
    ask.add_argument("--json", action="store_true", help=say("one JSON document"))


def _studio_then(call: Parser) -> None:
    call.add_argument("--studio", type=Path, metavar="STUDIO.toml", help=say("this studio instead of the records"))
    air = call.add_mutually_exclusive_group()
    air.add_argument(
        "--room", type=Path, metavar="ROOM.csv", help=say("with --studio, its room log; it is told of its end")
    )
    air.add_argument(
        "--air", metavar="T,RH,V", help=say("with --studio, °C, %%, m/s held all the time; default: 23,50,0.1")
    )
    _log_form(call)
    call.add_argument("--now", metavar="ISO", help=say("with --studio, the moment to tell of, with zone; default: now"))


def _log_form(call: Parser) -> None:
    call.add_argument(
        "--columns", help=say("name=header pairs for logs of other loggers: temperature_F=Temp,time=When")
    )
    call.add_argument("--zone", help=say("what times without a zone are in, such as Europe/Berlin"))
    call.add_argument(
        "--time-format", help=say("how times are written if not as ISO 8601, such as '%%d.%%m.%%Y %%H:%%M'")
    )


def _predicting(calls: argparse._SubParsersAction[Parser]) -> None:
    predict = calls.add_parser("predict", help=say("stage times of one coat in a given room"))
    predict.add_argument("--sheet", required=True, metavar="NAME|FILE.toml")
    predict.add_argument("--wet-um", type=float, required=True, help=say("wet film thickness, µm"))
    predict.add_argument("--side-m", type=float, required=True, help=say("side of the square of the piece's area, m"))
    predict.add_argument("--orientation", choices=[one.value for one in Orientation], default=Orientation.FACE_UP)
    predict.add_argument(
        "--support",
        choices=[one.value for one in Support],
        default=Support.SEALED,
        help=say("what the coat is laid straight on; default: sealed"),
    )
    predict.add_argument("--thinned-pct", type=float, default=0.0, help=say("water or thinner added, %% of the volume"))
    predict.add_argument(
        "--covered", action="store_true", help=say("a mesh cover stands over the coat from the laying on")
    )
    predict.add_argument(
        "--measured", action="store_true", help=say("the film follows from mL or grams: a narrower range")
    )
    air = predict.add_mutually_exclusive_group(required=True)
    air.add_argument("--air", metavar="T,RH,V", help=say("°C, %%, m/s held all the time"))
    air.add_argument("--room", type=Path, metavar="ROOM.csv", help=say("a room log; needs --laid"))
    predict.add_argument("--laid", metavar="ISO", help=say("when the brush went down, with zone"))
    _log_form(predict)
    predict.add_argument("--draws", type=int, default=256, help=say("draws of the range"))
    predict.add_argument("--seed", type=int, default=1)
    predict.add_argument("--horizon-h", type=float, default=96.0, help=say("how far to look, h"))
    predict.add_argument(
        "--explain",
        type=float,
        nargs="?",
        const=0.25,
        metavar="HOURS",
        help=say("also print each term of the balance so long after laying; without HOURS at a quarter of an hour"),
    )
    predict.add_argument("--json", action="store_true", help=say("one JSON document"))
