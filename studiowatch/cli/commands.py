"""From the words of a call to its answer."""

from __future__ import annotations

import argparse
import io
import os
import sys
from collections.abc import Callable, Mapping, Sequence

from studiowatch.cli import (
    backup,
    boards,
    check,
    coat,
    demo,
    export,
    figures,
    history,
    inputs,
    intend,
    login,
    piece,
    plan,
    predict,
    prompts,
    record_sheet,
    replay,
    take,
    watch,
    what_if,
    why,
)
from studiowatch.cli.answers import DONE, FAULT, INTERRUPTED, WRONG, WrongCall, complain, wrong
from studiowatch.cli.calls import parser
from studiowatch.coats.sheet_file import SheetFaults
from studiowatch.service.doors import doors_of
from studiowatch.service.outfit import Outfit
from studiowatch.service.ports import BoardSource
from studiowatch.service.sheet_shelf import SheetShelf, SheetUnknown
from studiowatch.service.watched_studio import watching
from studiowatch.speech.units import METRIC, choose
from studiowatch.speech.words import say, speak_by
from studiowatch.store.folder import FolderRefused, FolderWatched, StudioFolder, default_folder
from studiowatch.store.trouble import StoreTrouble

SIMULATED_SEED = 1


def run(words: Sequence[str], outfit: Outfit) -> int:
    """Answer the call in `words` and return the exit code: 0 done, 1 a fault to act on, 2 the call is wrong."""
    for stream in (sys.stdout, sys.stderr):
        if isinstance(stream, io.TextIOWrapper):
            stream.reconfigure(errors="replace")  # a terminal without µ or ° still gets its line
    try:
        return _answered(words, outfit)
    except KeyboardInterrupt:
        return INTERRUPTED
    except WrongCall as fault:
        complain(str(fault))
        return WRONG
    except (FolderRefused, StoreTrouble, SheetFaults, SheetUnknown) as fault:
        complain(str(fault))
        return FAULT
    except BrokenPipeError:
        return DONE  # whoever read has had enough; say no more
    except OSError as fault:
        complain(
            say(
                "{file} cannot be used: {fault}.",
                file=fault.filename or say("The output"),
                fault=fault.strerror or fault,
            )
        )
        return FAULT


def _answered(words: Sequence[str], outfit: Outfit) -> int:
    """Answer the call, and have all that was printed on its way: else its loss would show only after the exit code."""
    try:
        return _answer(parser().parse_args(words), outfit)
    finally:
        try:
            sys.stdout.flush()
        except OSError:
            os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())  # what is left cannot go anywhere
            raise


def _answer(call: argparse.Namespace, outfit: Outfit) -> int:
    _choose_words(call)
    folder = StudioFolder(path=call.folder) if call.folder else default_folder(outfit.data_folder)
    if call.call != "demo":  # which has a folder of its own
        folder.refuse_unusable()
    return _ANSWERS[call.call](call, outfit, folder)


def _choose_words(call: argparse.Namespace) -> None:
    """Choose language and units of what the call prints; other programs read English and SI, whatever she chose."""
    if getattr(call, "json", False):
        speak_by(None)
        choose(METRIC)
    elif call.units is not None:
        if call.call is None or (call.call == "demo" and not call.headless):
            wrong(say("--units is for what a command prints; in the window, choose under View, Units."))
        choose(figures.in_system(call.units))


def _demo(call: argparse.Namespace, outfit: Outfit, _folder: StudioFolder) -> int:
    if call.folder is not None:
        wrong(say("demo has a folder of its own and takes no --folder; leave it out."))
    return demo.run(call, outfit)


def _record(call: argparse.Namespace, outfit: Outfit, folder: StudioFolder) -> int:
    source, seconds = _source(call, outfit, folder), inputs.seconds(call.seconds)
    return watch.run(outfit, folder, source, seconds, sound=call.sound)


def _source(call: argparse.Namespace, outfit: Outfit, folder: StudioFolder) -> BoardSource:
    if call.simulated:
        return outfit.made_up_room(SIMULATED_SEED).source()
    return outfit.board(inputs.port(call.port), folder)


def _window(_call: argparse.Namespace, outfit: Outfit, folder: StudioFolder) -> int:
    trouble = outfit.display_trouble()
    if trouble:
        complain(trouble)
        return FAULT
    try:
        return _open_window(outfit, folder)
    except FolderWatched:
        if not outfit.bring_to_front(folder):
            raise
        print(say("studiowatch is open on this studio already; its window was brought to the front."))
        return DONE


def _open_window(outfit: Outfit, folder: StudioFolder) -> int:
    with (
        watching(outfit, folder, outfit.board(None, folder)) as keeper,
        doors_of(outfit, folder, keeper) as doors,
    ):
        return outfit.window(keeper, doors, "")


_ANSWERS: Mapping[str | None, Callable[[argparse.Namespace, Outfit, StudioFolder], int]] = {
    None: _window,
    "demo": _demo,
    "record": _record,
    "boards": boards.run,
    "check": check.run,
    "predict": lambda call, _, folder: predict.run(call, SheetShelf.open(folder.sheets)),
    "prompts": prompts.run,
    "piece": piece.run,
    "coat": coat.run,
    "plan": plan.run,
    "intend": intend.run,
    "what-if": what_if.run,
    "replay": lambda call, _, folder: replay.run(call, SheetShelf.open(folder.sheets)),
    "why": lambda call, _, folder: why.run(call, folder),
    "record-sheet": record_sheet.run,
    "backup": backup.run,
    "login": login.run,
    "history": lambda call, _, folder: history.run(call, folder),
    "import": take.run,
    "export": lambda call, _, folder: export.run(call, folder),
}
