"""`history`: readings of any range out of the records, as a room log (CSV) or as SenML."""

from __future__ import annotations

import argparse
import platform
from typing import TextIO
from uuid import NAMESPACE_URL, uuid5

from studiowatch.cli import inputs
from studiowatch.cli.answers import DONE, complain, wrong
from studiowatch.cli.outputs import written
from studiowatch.cli.progress import progress
from studiowatch.store.database import looking
from studiowatch.store.folder import StudioFolder
from studiowatch.store.log_out import RoomLogWriter, SenmlWriter, span_ms, stream
from studiowatch.store.trouble import StoreRefused


def run(call: argparse.Namespace, folder: StudioFolder) -> int:
    """Answer the call."""
    if call.senml is None and call.name is not None:
        wrong("--name belongs to --senml: it is what the names in there begin with.")
    start_ms, end_ms = inputs.time_range_ms(call.start, call.end)
    name = call.csv if call.senml is None else call.senml
    # the records are let go before the file gets its name, so that no reading of two states of them is kept
    with written(name) as out, looking(folder.database) as database, progress("history") as bar:
        span = span_ms(database)
        if span is None:
            raise StoreRefused(f"{folder.database} holds no readings yet; there is nothing to write.")
        first_ms, after_ms = max(start_ms, span[0]), min(end_ms, span[1] + 1)
        writer = _writer(call, folder, out)
        for readings in stream(database, first_ms, after_ms):
            writer.write(readings)
            bar.show((readings[-1].time_ms - first_ms) / (after_ms - first_ms), f"{writer.rows} readings")
        writer.close()
    _report(writer, name)
    return DONE


def _writer(call: argparse.Namespace, folder: StudioFolder, out: TextIO) -> RoomLogWriter | SenmlWriter:
    if call.senml is None:
        return RoomLogWriter(out)
    name = uuid5(NAMESPACE_URL, f"studiowatch:{platform.node()}:{folder.path.resolve()}")
    return SenmlWriter(out, call.name or f"urn:uuid:{name}:")


def _report(writer: RoomLogWriter | SenmlWriter, name: str) -> None:
    complain(f"Written to {'stdout' if name == '-' else name}, as they were read: {writer.rows} readings.")
    if isinstance(writer, RoomLogWriter) and writer.same_time:
        complain(f"{writer.same_time} of them share their time with the one before: the clock was set back there.")
    if isinstance(writer, SenmlWriter) and writer.empty:
        complain(f"{writer.empty} of them hold no value, and SenML has no record for such.")
