"""`login`: whether studiowatch starts when she logs in."""

from __future__ import annotations

import argparse

from studiowatch.cli.answers import DONE, print_document
from studiowatch.service.outfit import Outfit
from studiowatch.speech.words import say
from studiowatch.store.folder import StudioFolder


def run(call: argparse.Namespace, outfit: Outfit, folder: StudioFolder) -> int:
    """Answer the call."""
    entry = outfit.login_entry(folder if call.folder else None)
    if call.on or call.off:
        entry.set_on(on=call.on)
    says = (
        say("studiowatch starts at login ({file}).", file=entry.path)
        if entry.is_on
        else say("studiowatch does not start at login ({file}).", file=entry.path)
    )
    if call.json:
        print_document({"on": entry.is_on, "file": str(entry.path), "says": says})
    else:
        print(says)
    return DONE
