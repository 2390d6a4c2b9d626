"""The calls about pieces and their coats: which there are and what they take."""

from __future__ import annotations

import argparse
from pathlib import Path

from studiowatch.cli.parsing import Parser
from studiowatch.coats.stages import Orientation
from studiowatch.speech.words import say
from studiowatch.studio.pieces import Finding, Outcome, Shape

OPEN = "open"  # the outcome that takes one back


def add_piece_calls(calls: argparse._SubParsersAction[Parser]) -> None:
    """Add `piece` and `coat`."""
    _piece(calls.add_parser("piece", help=say("list, add, edit, archive and restore pieces; a watch may be on")))
    _coat(
        calls.add_parser("coat", help=say("record, correct and take back coats, looks and outcomes; a watch may be on"))
    )


def _piece(call: Parser) -> None:
    deeds = call.add_subparsers(dest="deed", metavar="deed", required=True)
    listing = deeds.add_parser("list", help=say("the pieces on the rack"))
    listing.add_argument("--archived", action="store_true", help=say("those off the rack instead"))
    listing.add_argument("--find", default="", metavar="WORDS", help=say("only those with all these words"))
    listing.add_argument("--json", action="store_true")
    show = deeds.add_parser("show", help=say("all that was recorded of a piece, and its corrections"))
    show.add_argument("piece", metavar="TITLE")
    show.add_argument("--json", action="store_true")
    add = deeds.add_parser("add", help=say("register a piece"))
    add.add_argument("title", metavar="TITLE")
    edit = deeds.add_parser("edit", help=say("change what is registered of a piece; what is not given stays"))
    edit.add_argument("piece", metavar="TITLE")
    edit.add_argument("--title")
    for parser in (add, edit):
        _fields(parser, is_new=parser is add)
    edit.needs_an_option()
    for name, words in (("archive", say("take a piece off the rack")), ("restore", say("put an archived piece back"))):
        deeds.add_parser(name, help=words).add_argument("piece", metavar="TITLE")
    move = deeds.add_parser("move", help=say("put a piece at another place on the rack"))
    move.add_argument("piece", metavar="TITLE")
    move.add_argument("place", type=int, help=say("1 is the first"))


def _fields(call: Parser, *, is_new: bool) -> None:
    due, photo = call.add_mutually_exclusive_group(), call.add_mutually_exclusive_group()
    due.add_argument("--due", metavar="DAY", help=say("like 2026-03-20"))
    photo.add_argument("--photo", type=Path, metavar="FILE", help=say("copied beside the records, scaled down"))
    if not is_new:
        due.add_argument("--no-due", action="store_true", help=say("it is due on no day"))
        photo.add_argument("--no-photo", action="store_true")
    call.add_argument("--width-cm", type=float, required=is_new, help=say("of one panel, where it is a set"))
    call.add_argument("--height-cm", type=float, required=is_new)
    call.add_argument("--shape", choices=[one.value for one in Shape])
    call.add_argument("--panels", type=int, help=say("how many equal panels a set has"))
    call.add_argument("--support", help=say("what it is painted on"))
    call.add_argument("--orientation", choices=[one.value for one in Orientation])
    call.add_argument("--notes")
    call.add_argument("--paint", metavar="SHEET", help=say("the data sheet of the paint layer; needs --painted"))
    call.add_argument("--painted", metavar="ISO", help=say("when the last of the paint was laid, with zone"))
    call.add_argument("--paint-um", type=float, help=say("how thick it was laid, µm; default: not known"))
    call.add_argument(
        "--coat", action="append", metavar="SHEET", help=say("a coat to come, lowest first; edit replaces all of them")
    )


def _coat(call: Parser) -> None:
    deeds = call.add_subparsers(dest="deed", metavar="deed", required=True)
    lay = deeds.add_parser("lay", help=say("a coat was laid; the one planned next, if that is of the sheet"))
    lay.add_argument("piece", metavar="TITLE")
    lay.add_argument("sheet", metavar="SHEET")
    lay.add_argument("--laid", metavar="ISO", help=say("when the brush went down, with zone; default: now"))
    lay.add_argument("--below", action="store_true", help=say("it was forgotten: coats laid later lie on it already"))
    _amount(lay)
    plan = deeds.add_parser("plan", help=say("add a coat to come"))
    plan.add_argument("piece", metavar="TITLE")
    plan.add_argument("sheet", metavar="SHEET")
    correct = _of_coat(deeds, "correct", say("correct what was recorded of a coat; what is not given stays"))
    correct.add_argument("--laid", metavar="ISO", help=say("when the brush went down, with zone"))
    correct.add_argument("--sheet")
    _amount(correct)
    correct.add_argument("--as-sheet", action="store_true", help=say("the amount was not measured"))
    covered = correct.add_mutually_exclusive_group()
    covered.add_argument("--covered", metavar="ISO", help=say("when the mesh cover was set over it, with zone"))
    covered.add_argument("--no-cover", action="store_true")
    correct.needs_an_option()
    remove = _of_coat(deeds, "remove", say("take a coat back: it was not laid, or is not to come"))
    remove.add_argument("--plan-again", action="store_true", help=say("it is still to come"))
    cover = _of_coat(deeds, "cover", say("a mesh cover was set over a coat"))
    look = _of_coat(deeds, "look", say("a touch test or look"))
    look.add_argument("finding", choices=[one.value for one in Finding])
    look.add_argument(
        "--instead-of", type=int, metavar="LOOK", help=say("correct this look, as `piece show` numbers them")
    )
    forget = _of_coat(deeds, "forget-look", say("take a look back"))
    forget.add_argument("look", type=int, metavar="LOOK", help=say("as `piece show` numbers them"))
    outcome = _of_coat(deeds, "outcome", say("how a coat came out"))
    outcome.add_argument(
        "outcome",
        choices=[*(one.value for one in Outcome), OPEN],
        help=say("{outcome}: not known after all", outcome=OPEN),
    )
    for parser in (cover, look, outcome):
        parser.add_argument("--at", metavar="ISO", help=say("when, with zone; default: now"))


def _of_coat(deeds: argparse._SubParsersAction[Parser], name: str, words: str) -> Parser:
    made = deeds.add_parser(name, help=words)
    made.add_argument("piece", metavar="TITLE")
    made.add_argument("number", type=int, metavar="COAT", help=say("1 is the lowest, as `piece show` numbers them"))
    return made


def _amount(call: Parser) -> None:
    call.add_argument("--mL", dest="volume_mL", type=float, help=say("how much was laid"))
    call.add_argument("--grams", type=float, help=say("how much was laid"))
    call.add_argument("--wet-um", type=float, help=say("how thick it was laid, µm"))
    call.add_argument("--thinned-pct", type=float, help=say("water or thinner added, %% of the volume"))
