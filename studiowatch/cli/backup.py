"""`backup`: a whole copy of the studio, checked, while the watch may go on."""

from __future__ import annotations

import argparse

from studiowatch.cli.answers import DONE, FAULT, complain
from studiowatch.service.outfit import Outfit
from studiowatch.speech.words import say
from studiowatch.store.folder import StudioFolder
from studiowatch.store.rotation import backup_studio


def run(call: argparse.Namespace, outfit: Outfit, folder: StudioFolder) -> int:
    """Answer the call."""
    copy = backup_studio(folder, call.to or folder.backups, outfit.clock.utc_ms())
    faults = outfit.check_store(copy.database).faults
    print(copy.path)
    if faults:
        complain(say("The copy was made, but the records have faults: {faults}", faults=" ".join(faults)))
        return FAULT
    complain(say("Backed up and checked; `studiowatch --folder {folder}` opens it.", folder=copy.path))
    return DONE
