"""`record` and `demo --headless`: the watch without a window, for a small computer at the rack."""

from __future__ import annotations

import signal
import sys
import time
from collections.abc import Callable
from contextlib import ExitStack, suppress
from math import inf
from queue import Empty, SimpleQueue
from types import FrameType

from studiowatch.cli.answers import DONE, complain
from studiowatch.cli.recorded_words import AIR, told
from studiowatch.cli.replay import happening_line
from studiowatch.cli.sounding import Sounding, typed
from studiowatch.service.happenings import Happening
from studiowatch.service.local_time import clock_text, local_date, seconds_text
from studiowatch.service.outfit import Outfit
from studiowatch.service.piece_view import CoatView, PieceView
from studiowatch.service.ports import BoardSource
from studiowatch.service.snapshot import RoomView, Snapshot
from studiowatch.service.watched_studio import watching
from studiowatch.speech.dates import day_of_week
from studiowatch.speech.units import chosen
from studiowatch.speech.words import say
from studiowatch.store.folder import StudioFolder
from studiowatch.studio.rereading import typed_words
from studiowatch.studio.sentence import OPENING

ENDING = ("SIGINT", "SIGTERM", "SIGHUP")  # a closed terminal ends the watch in good order, too, unless that is ignored
ROOM_EVERY_MS = 10_000  # ms between two printed readings
NOTICED_S = 0.5  # s, within which a signal is noticed at any moment
RACK_EVERY_MS = 600_000  # ms between two printed racks


class Printer:
    """Prints happenings at once, and the room and the rack now and then; called on the keeper's thread.

    A terminal that is full or gone ends the printing, not the watch.
    """

    def __init__(self) -> None:
        self._room_ms: int | None = None
        self._rack_ms: int | None = None
        self._troubles: tuple[str, ...] = ()
        self._gone = False

    def tell(self, happening: Happening) -> None:
        """Print what happened."""
        self._say(happening_line(happening))

    def show(self, snapshot: Snapshot) -> None:
        """Print what is due of a snapshot."""
        now_ms = snapshot.time_ms
        troubles = (snapshot.own_fault, snapshot.store_trouble, snapshot.board.trouble)
        for trouble in troubles:
            if trouble and trouble not in self._troubles:
                self._say(f"{seconds_text(now_ms)}  {trouble}")
        self._troubles = troubles
        is_unread = snapshot.board.last_ms is None and snapshot.room.typed is None
        if is_unread or snapshot.sentence == OPENING.said:
            return
        if self._rack_ms is None or now_ms - self._rack_ms >= RACK_EVERY_MS:
            self._rack_ms = now_ms
            for piece in snapshot.pieces:
                self._say(_piece_line(piece))
        if self._room_ms is None or now_ms - self._room_ms >= ROOM_EVERY_MS:
            self._room_ms = now_ms
            self._say(_room_line(snapshot.room, snapshot))

    def _say(self, line: str) -> None:
        if self._gone:
            return
        try:
            print(line, flush=True)
        except OSError as fault:
            self._gone = True
            with suppress(OSError):  # both streams are often one terminal
                complain(
                    say("The terminal takes no more lines ({fault}); the watch goes on.", fault=fault.strerror or fault)
                )


def _room_line(room: RoomView, snapshot: Snapshot) -> str:
    if snapshot.board.silent:
        return f"{seconds_text(snapshot.time_ms)}  {snapshot.sentence.headline}"
    units = chosen()
    figures = (
        _figure(room.temperature_C, units.temperature),
        _figure(room.humidity_pct, lambda value: f"{units.number(value)} %"),
        _figure(room.air_speed_m_s, units.air_speed) if room.air_signal_mV is None else say(AIR[room.movement]),
    )
    said = [*figures, snapshot.sentence.headline, *([] if room.typed is None else [typed_words(room.typed)])]
    return f"{seconds_text(snapshot.time_ms)}  {'  '.join(said)}"


def _figure(value: float | None, form: Callable[[float], str]) -> str:
    return say("not measured") if value is None else form(value)


def _piece_line(piece: PieceView) -> str:
    top = piece.top
    said = [say("nothing laid yet") if top is None else _state(top)]
    if piece.next_ms is not None:
        day, time = day_of_week(local_date(piece.next_ms)), clock_text(piece.next_ms)
        said.append(say("{step} by {day} {time}", step=piece.next_step, day=day, time=time))
    return f"       {piece.title}: {', '.join(said)}"


def _state(top: CoatView) -> str:
    if top.surface is None:
        return say("{coat} not watched", coat=top.label)
    return say("{coat} {surface}", coat=top.label, surface=told(top.surface))


def run(
    outfit: Outfit,
    folder: StudioFolder,
    source: BoardSource,
    seconds: float | None,
    *,
    keep_backups: bool = True,
    sound: bool = False,
) -> int:
    """Watch until asked to stop, or for `seconds`; with `sound`, warnings are heard too."""
    endings: SimpleQueue[int] = SimpleQueue()  # takes one signal in the middle of another, where an event would hang

    def end(number: int, _frame: FrameType | None) -> None:
        endings.put(number)

    for name in ENDING:
        number = getattr(signal, name, None)
        if number is not None and not _is_to_outlive(name, number):
            signal.signal(number, end)
    printer = Printer()
    with ExitStack() as parts:
        sounding = Sounding(outfit.ringer()) if sound else None
        if sounding is not None:
            parts.callback(sounding.close)

        def show(snapshot: Snapshot) -> None:
            printer.show(snapshot)
            if sounding is not None:
                sounding.show(snapshot)

        watch = watching(outfit, folder, source, tell=printer.tell, listener=show, keep_backups=keep_backups)
        keeper = parts.enter_context(watch)
        if sounding is not None and sys.stdin.isatty():
            complain(say("Press Enter once you have heard a warning; it is then silent."))
            sounding.take_answers(keeper, typed())
        _wait_for(endings, inf if seconds is None else seconds)
    return DONE


def _is_to_outlive(name: str, number: int) -> bool:
    """Tell whether the watch was started so that it outlives its terminal, as by `nohup`: POSIX, "nohup"."""
    return name == "SIGHUP" and signal.getsignal(number) is signal.SIG_IGN


def _wait_for(endings: SimpleQueue[int], seconds: float) -> None:
    """Wait for a signal, or for so long; again and again, since one that comes just before a wait does not wake it."""
    until_s = time.monotonic() + seconds
    while (left_s := until_s - time.monotonic()) > 0.0:
        with suppress(Empty):
            endings.get(timeout=min(left_s, NOTICED_S))
            return
