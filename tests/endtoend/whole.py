"""The whole program on a simulated chip: machine code, pty, reader, keeper, store and window."""

from __future__ import annotations

import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import replace
from pathlib import Path

from PySide6.QtCore import QObject, QSettings, Signal

from studiowatch.board.port import SerialPort
from studiowatch.board.reader import Reader
from studiowatch.compose import outfit
from studiowatch.service.commands import LayCoat, RegisterPiece
from studiowatch.service.keeper import Keeper
from studiowatch.service.watched_studio import watching
from studiowatch.store.folder import StudioFolder
from studiowatch.store.history import HistoryReader
from studiowatch.studio.words import Sentence
from studiowatch.ui.app import build_window
from studiowatch.ui.models.alarm import Sound
from studiowatch.ui.settings import ViewSettings
from studiowatch.ui.window import StudioWindow

ANSWER_S = 30.0


class ScaledClock:
    """A clock that runs `speed` times as fast as life, as the chip beside it does."""

    def __init__(self, speed: float) -> None:
        self._speed = speed
        self._began_s = time.monotonic()
        self._began_ms = time.time_ns() // 1_000_000

    def utc_ms(self) -> int:
        return self._began_ms + round(self.monotonic_s() * 1000)

    def monotonic_s(self) -> float:
        return (time.monotonic() - self._began_s) * self._speed


class TimedPort(SerialPort):
    """The real port; remembers when its last bytes came, in real seconds."""

    last_s = 0.0

    def read_some(self, timeout_s: float) -> bytes:
        data = super().read_some(timeout_s)
        if data:
            TimedPort.last_s = time.monotonic()
        return data


class QuietSpeaker:
    """Counts what would have been heard."""

    trouble = ""

    def __init__(self) -> None:
        self.played: list[Sound] = []

    def play(self, sound: Sound, _loudness: float = 1.0) -> None:
        self.played.append(sound)

    def close(self) -> None:
        """Have nothing to close."""


class NoTray(QObject):
    """A desktop without a tray."""

    opened = Signal()
    across_asked = Signal()
    quit_asked = Signal()
    exists = False

    def say(self, sentence: Sentence) -> None:
        """Have nowhere to say it."""

    def show(self, sentence: Sentence, prompt: str) -> None:
        """Have nowhere to show it."""

    def close(self) -> None:
        """Have nothing to close."""


@contextmanager
def whole_program(
    pty: str, folder: Path, *, speed: float, open_port: Callable[[str, int], SerialPort] = TimedPort
) -> Iterator[tuple[Keeper, StudioWindow, ScaledClock, QuietSpeaker]]:
    """Run everything on the board at `pty`, with the records in `folder`."""
    clock = ScaledClock(speed)
    parts = replace(outfit(), clock=clock)
    studio = StudioFolder(path=folder / "studio")
    source = Reader(clock=clock, wanted=pty, open_port=open_port, list_ports=lambda: ())
    speaker = QuietSpeaker()
    with watching(parts, studio, source) as keeper:
        window = build_window(
            keeper,
            HistoryReader(studio.database),
            clock,
            settings=ViewSettings(QSettings(str(folder / "window.ini"), QSettings.Format.IniFormat)),
            speaker=speaker,
            tray=NoTray(),
        )
        window.show()
        try:
            yield keeper, window, clock, speaker
        finally:
            window.leave()
            window.deleteLater()


def lay_wet_coat(keeper: Keeper, clock: ScaledClock) -> None:
    """Register a piece and lay a coat on it now."""
    piece = RegisterPiece(title="Low Tide", width_cm=60, height_cm=50, sheets=("gloss-waterborne",))
    piece_key = keeper.submit(piece).result(ANSWER_S)
    coat = LayCoat(piece_key=piece_key, laid_ms=clock.utc_ms(), sheet="gloss-waterborne", volume_mL=24)
    keeper.submit(coat).result(ANSWER_S)
