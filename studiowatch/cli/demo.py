"""`demo`: a made-up studio on the simulated board, in a folder of its own."""

from __future__ import annotations

import argparse

from studiowatch.cli import inputs, watch
from studiowatch.cli.answers import FAULT, complain, wrong
from studiowatch.service.demo import Scenario, furnish, scenario
from studiowatch.service.doors import doors_of
from studiowatch.service.outfit import MadeUpRoom, Outfit
from studiowatch.service.watched_studio import watching
from studiowatch.speech.words import mark, say
from studiowatch.store.folder import StudioFolder, Watching

TITLE = mark("a made-up studio")
FAN_SPELL_S = (40.0, 240.0)  # s after the start: long enough to be seen, and to see it end


def run(call: argparse.Namespace, outfit: Outfit) -> int:
    """Answer the call."""
    folder = StudioFolder(path=outfit.demo_folder)
    made_up = scenario()
    room = outfit.made_up_room(made_up.seed)
    seconds = inputs.seconds(call.seconds)
    if seconds is not None and not call.headless:
        wrong(say("--seconds belongs to --headless: a window stays open until you close it."))
    trouble = "" if call.headless else outfit.display_trouble()
    if trouble:
        complain(trouble)
        return FAULT
    _build(folder, made_up, outfit, room)
    source = room.source(FAN_SPELL_S)
    if call.headless:
        return watch.run(outfit, folder, source, seconds, keep_backups=False)
    with (
        watching(outfit, folder, source, keep_backups=False) as keeper,
        doors_of(outfit, folder, keeper) as doors,
    ):
        return outfit.window(keeper, doors, say(TITLE))


def _build(folder: StudioFolder, made_up: Scenario, outfit: Outfit, room: MadeUpRoom) -> None:
    """Make the studio anew in its folder.

    Raises
    ------
    FolderRefused, StoreTrouble
        If another demo is running there, or the folder cannot be written.
    """
    folder.make()
    lock = Watching(folder)
    try:
        folder.clear()
        store = outfit.open_store(folder.database)
        try:
            now_ms = outfit.clock.utc_ms()
            furnish(made_up, now_ms=now_ms, log=store.log, records=store.records, past_readings=room.past)
        finally:
            store.close()
    finally:
        lock.release()
