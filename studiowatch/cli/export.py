"""`export`: all records but readings as one studio file."""

from __future__ import annotations

import argparse

from studiowatch.cli.answers import DONE, complain
from studiowatch.cli.outputs import written
from studiowatch.speech.words import say
from studiowatch.store.all_records import read_all
from studiowatch.store.database import looking
from studiowatch.store.folder import StudioFolder
from studiowatch.store.studio_file import write_studio


def run(call: argparse.Namespace, folder: StudioFolder) -> int:
    """Answer the call."""
    with looking(folder.database) as database:
        studio = read_all(database, str(folder.database))
    with written(call.file) as out:
        out.write(write_studio(studio.pieces, studio.rows))
    complain(
        say(
            "Written to {file}: pieces: {pieces}; rows of what belongs to them: {rows}.",
            file="stdout" if call.file == "-" else call.file,
            pieces=len(studio.pieces),
            rows=len(studio.rows),
        )
    )
    return DONE
