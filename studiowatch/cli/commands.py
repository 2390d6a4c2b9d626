"""From the words of a call to its answer."""

from __future__ import annotations

import argparse
from collections.abc import Sequence

from studiowatch.cli import boards, check, demo, predict, replay, watch
from studiowatch.cli.answers import FAULT, WRONG, WrongCall, complain
from studiowatch.cli.calls import parser
from studiowatch.coats.data_sheet import SheetFaults
from studiowatch.service.outfit import Outfit
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.service.watched_studio import watching
from studiowatch.store.folder import FolderRefused, StudioFolder, default_folder
from studiowatch.store.trouble import StoreTrouble

SIMULATED_SEED = 1


def run(words: Sequence[str], outfit: Outfit) -> int:
    """Answer the call in `words` and return the exit code: 0 done, 1 a fault to act on, 2 the call is wrong."""
    call = parser().parse_args(words)
    try:
        return _answer(call, outfit)
    except WrongCall as fault:
        complain(str(fault))
        return WRONG
    except (FolderRefused, StoreTrouble, SheetFaults) as fault:
        complain(str(fault))
        return FAULT


def _answer(call: argparse.Namespace, outfit: Outfit) -> int:
    folder = StudioFolder(path=call.folder) if call.folder else default_folder(outfit.data_folder)
    match call.call:
        case "predict":
            code = predict.run(call, SheetShelf.open(folder.sheets))
        case "replay":
            code = replay.run(call, SheetShelf.open(folder.sheets))
        case "boards":
            code = boards.run(call, outfit)
        case "check":
            code = check.run(call, outfit, folder)
        case "demo":
            code = demo.run(call, outfit)
        case "record":
            source = outfit.made_up_room(SIMULATED_SEED).source() if call.simulated else outfit.board(call.port)
            code = watch.run(outfit, folder, source, call.seconds)
        case _:
            code = _window(outfit, folder)
    return code


def _window(outfit: Outfit, folder: StudioFolder) -> int:
    with watching(outfit, folder, outfit.board(None)) as keeper:
        return outfit.window(keeper, outfit.open_history(folder.database), "")
