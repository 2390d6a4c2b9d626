"""`demo`: a made-up studio on the simulated board, in a folder of its own."""

from __future__ import annotations

import argparse

from studiowatch.cli import watch
from studiowatch.service.demo import furnish, scenario
from studiowatch.service.outfit import Outfit
from studiowatch.service.watched_studio import watching
from studiowatch.store.folder import StudioFolder, Watching

TITLE = "a made-up studio"
FAN_SPELL_S = (40.0, 240.0)  # s after the start: long enough to be seen, and to see it end


def run(call: argparse.Namespace, outfit: Outfit) -> int:
    """Answer the call."""
    folder = StudioFolder(path=outfit.demo_folder)
    made_up = scenario()
    room = outfit.made_up_room(made_up.seed)
    folder.make()
    lock = Watching(folder)
    try:
        for old in folder.path.glob(f"{folder.database.name}*"):
            old.unlink()
        store = outfit.open_store(folder.database)
        now_ms = outfit.clock.utc_ms()
        furnish(made_up, now_ms=now_ms, log=store.log, records=store.records, past_readings=room.past)
        store.close()
    finally:
        lock.release()
    source = room.source(FAN_SPELL_S)
    if call.headless:
        return watch.run(outfit, folder, source, call.seconds)
    with watching(outfit, folder, source) as keeper:
        return outfit.window(keeper, outfit.open_history(folder.database), TITLE)
