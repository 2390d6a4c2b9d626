"""`replay`: the whole watch over a room log, faster than life."""

from __future__ import annotations

import argparse
import json

from studiowatch.cli import inputs
from studiowatch.cli.answers import DONE
from studiowatch.service.happenings import Happening, WarningHappened
from studiowatch.service.local_time import clock_text, local_date, seconds_text
from studiowatch.service.replaying import replay
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.studio.warnings import WarningState
from studiowatch.studio.words import Level


class JsonPrinter:
    """Prints one JSON object a line; a warning again only in another state, at a higher level, or once expected."""

    def __init__(self) -> None:
        self._told: dict[str, tuple[WarningState, Level, bool]] = {}

    def show(self, happening: Happening) -> None:
        """Print what happened."""
        if isinstance(happening, WarningHappened):
            warning = happening.warning
            before = self._told.get(warning.key)
            is_expected = warning.expected_ms is not None
            self._told[warning.key] = (warning.state, warning.level, is_expected)
            known = before is not None and before[0] is warning.state and warning.level <= before[1]
            if known and before is not None and is_expected <= before[2]:
                return
        print(json.dumps(happening.document(), ensure_ascii=False), flush=True)


def run(call: argparse.Namespace, shelf: SheetShelf) -> int:
    """Answer the call."""
    log = inputs.room_log(call.room, inputs.log_form(call))
    pieces, shelf = inputs.studio(call.studio, shelf)
    replay(
        log.readings(),
        pieces,
        shelf=shelf,
        tell=JsonPrinter().show if call.json else _print_line,
        clock_text=clock_text,
        local_date=local_date,
    )
    return DONE


def happening_line(happening: Happening) -> str:
    """Return what happened, and when, for people."""
    return f"{local_date(happening.time_ms)} {seconds_text(happening.time_ms)}  {happening.line()}"


def _print_line(happening: Happening) -> None:
    print(happening_line(happening), flush=True)
