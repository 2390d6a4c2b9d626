"""Start: for those who want a window its frame first, then all that is behind it."""

from __future__ import annotations

import os
import signal
import sys
from collections.abc import Callable, Iterator, Mapping, Sequence
from contextlib import AbstractContextManager, contextmanager, nullcontext
from pathlib import Path

from studiowatch.service.screen import has_screen

FOLDER = "--folder"
WITHOUT_WINDOW = {"-h", "--help", "--version", "--headless"}
INTERRUPTED = 130  # Ctrl-C, as shells have it


def wants_window(words: Sequence[str], environ: Mapping[str, str], platform: str) -> bool:
    """Return whether a call opens the window, as far as its words tell before they are judged."""
    if not has_screen(environ, platform):
        return False
    after_folder = [word for at, word in enumerate(words) if at == 0 or words[at - 1] != FOLDER]
    calls = [word for word in after_folder if not word.startswith("-")]
    return WITHOUT_WINDOW.isdisjoint(words) and (not calls or calls[0] == "demo")


@contextmanager
def _ending_at_once() -> Iterator[None]:
    """Have Ctrl-C end the process at once: while the program is read in, there is nothing yet to put in order."""
    before = signal.getsignal(signal.SIGINT)
    if before is signal.default_int_handler:  # who started it in the background may have it ignored
        signal.signal(signal.SIGINT, lambda _signal, _frame: os._exit(INTERRUPTED))
    try:
        yield
    finally:
        signal.signal(signal.SIGINT, before)


def _open_closed_streams() -> None:
    """Put a stream that keeps nothing where the caller left one closed: nobody else has to ask whether it is there."""
    for name, mode in (("stdin", "r"), ("stdout", "w"), ("stderr", "w")):
        if getattr(sys, name) is None:
            setattr(sys, name, Path(os.devnull).open(mode, encoding="utf-8"))  # noqa: SIM115 - open until the end


def main() -> int:
    """Run studiowatch and return its exit code."""
    words = sys.argv[1:]
    beginning: Callable[[], AbstractContextManager[object]] = nullcontext
    with _ending_at_once():
        _open_closed_streams()
        _settle()
        if wants_window(words, os.environ, sys.platform):
            from studiowatch.ui.starting import starting  # noqa: PLC0415 - only for those who want a window

            beginning = starting
    with beginning():
        with _ending_at_once():
            from studiowatch.compose import answer  # noqa: PLC0415 - the frame of a window comes first
        return answer(words)


def _settle() -> None:
    from studiowatch.language import speak  # noqa: PLC0415 - Ctrl-C may come while it is read in
    from studiowatch.service.heap import settle_heap  # noqa: PLC0415

    settle_heap()
    speak()


if __name__ == "__main__":
    raise SystemExit(main())
