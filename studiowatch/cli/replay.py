"""`replay`: the whole watch over a room log, faster than life."""

from __future__ import annotations

import argparse
import json

from studiowatch.cli import inputs
from studiowatch.cli.answers import DONE
from studiowatch.service.happenings import Happening
from studiowatch.service.local_time import clock_text, local_date
from studiowatch.service.replaying import replay
from studiowatch.service.sheet_shelf import SheetShelf


def run(call: argparse.Namespace, shelf: SheetShelf) -> int:
    """Answer the call."""
    log = inputs.room_log(call.room, call.columns)
    pieces, shelf = inputs.studio(call.studio, shelf)
    replay(
        log.readings(),
        pieces,
        shelf=shelf,
        tell=_print_json if call.json else print_line,
        clock_text=clock_text,
        local_date=local_date,
    )
    return DONE


def _print_json(happening: Happening) -> None:
    print(json.dumps(happening.document(), ensure_ascii=False), flush=True)


def print_line(happening: Happening) -> None:
    """Print what happened for people."""
    when = f"{local_date(happening.time_ms)} {clock_text(happening.time_ms)}"
    print(f"{when}  {happening.line()}", flush=True)
