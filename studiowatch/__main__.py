"""Start: for those who want a window its frame first, then all that is behind it."""

from __future__ import annotations

import os
import sys
from collections.abc import Mapping, Sequence

from studiowatch.language import speak
from studiowatch.service.heap import settle_heap
from studiowatch.service.screen import has_screen

FOLDER = "--folder"
WITHOUT_WINDOW = {"-h", "--help", "--version", "--headless"}


def wants_window(words: Sequence[str], environ: Mapping[str, str], platform: str) -> bool:
    """Return whether a call opens the window, as far as its words tell before they are judged."""
    if not has_screen(environ, platform):
        return False
    after_folder = [word for at, word in enumerate(words) if at == 0 or words[at - 1] != FOLDER]
    calls = [word for word in after_folder if not word.startswith("-")]
    return WITHOUT_WINDOW.isdisjoint(words) and (not calls or calls[0] == "demo")


def main() -> int:
    """Run studiowatch and return its exit code."""
    words = sys.argv[1:]
    settle_heap()
    speak()
    if not wants_window(words, os.environ, sys.platform):
        from studiowatch.compose import answer  # noqa: PLC0415 - the frame of a window comes first

        return answer(words)
    from studiowatch.ui.starting import starting  # noqa: PLC0415 - only for those who want a window

    with starting():
        from studiowatch.compose import answer  # noqa: PLC0415 - the frame comes first

        return answer(words)


if __name__ == "__main__":
    raise SystemExit(main())
