"""`record --sound`: the warnings of a watch without a window are heard, and Enter says that they were."""

from __future__ import annotations

import os
import sys
import threading
from collections.abc import Iterable, Iterator

from studiowatch.cli.answers import complain
from studiowatch.service.commands import HearWarning
from studiowatch.service.ports import Desk, Ringer
from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.words import say
from studiowatch.studio.warnings import WarningState

_BEEP = "\a"


def typed() -> Iterator[bytes]:
    """Yield what is typed, a line at a time; read past `sys.stdin`, whose lock a thread that waits would never give."""
    while True:
        try:
            line = os.read(sys.stdin.fileno(), 4096)
        except OSError:
            return  # the terminal is gone; the watch goes on
        if not line:
            return
        yield line


class Sounding:
    """Has `ringer` ring; `show` is called on the keeper's thread."""

    def __init__(self, ringer: Ringer) -> None:
        self._ringer = ringer
        self._unheard: tuple[str, ...] = ()
        self._is_told = False
        self._tell_trouble()

    def show(self, snapshot: Snapshot) -> None:
        """Ring for what is due in a snapshot; where nothing can be heard, the terminal beeps."""
        self._unheard = tuple(one.key for one in snapshot.warnings if one.sound and one.state is WarningState.RAISED)
        if self._ringer.listen(snapshot) and self._ringer.trouble:
            self._tell_trouble()
            if sys.stderr.isatty():
                print(_BEEP, end="", file=sys.stderr, flush=True)

    def take_answers(self, desk: Desk, lines: Iterable[object]) -> threading.Thread:
        """Have each line that is typed say that all that sounds was heard; return the thread, which may be left."""

        def answer() -> None:
            for _ in lines:
                for key in self._unheard:
                    desk.submit(HearWarning(warning_key=key))

        thread = threading.Thread(target=answer, name="answers", daemon=True)
        thread.start()
        return thread

    def close(self) -> None:
        """Fall silent."""
        self._ringer.close()

    def _tell_trouble(self) -> None:
        if self._ringer.trouble and not self._is_told:
            self._is_told = True
            complain(
                say(
                    "Warnings are printed, but not heard: {trouble}. `studiowatch check` tells of the sound.",
                    trouble=self._ringer.trouble,
                )
            )
