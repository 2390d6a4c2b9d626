"""`history`: readings of any range out of the records, as a room log (CSV) or as SenML."""

from __future__ import annotations

import argparse

from studiowatch.cli import inputs
from studiowatch.cli.answers import DONE, complain, wrong
from studiowatch.cli.outputs import written
from studiowatch.cli.progress import progress
from studiowatch.service.readings_out import Wanted, senml_name, write_readings
from studiowatch.speech.words import say
from studiowatch.store.database import looking
from studiowatch.store.folder import StudioFolder


def run(call: argparse.Namespace, folder: StudioFolder) -> int:
    """Answer the call."""
    if call.senml is None and call.name is not None:
        wrong(say("--name belongs to --senml: it is what the names in there begin with."))
    start_ms, end_ms = inputs.time_range_ms(call.start, call.end)
    name = call.csv if call.senml is None else call.senml
    wanted = Wanted(
        start_ms=start_ms,
        end_ms=end_ms,
        senml_name=None if call.senml is None else call.name or senml_name(folder),
    )
    # the records are let go before the file gets its name, so that no reading of two states of them is kept
    with written(name) as out, looking(folder.database) as database, progress("history") as bar:
        first, *more = write_readings(database, out, wanted, bar.show)
    complain(say("Written to {file}, {what}", file="stdout" if name == "-" else name, what=first))
    for sentence in more:
        complain(sentence)
    return DONE
