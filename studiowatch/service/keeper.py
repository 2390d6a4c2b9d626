"""The keeper: one thread that owns the store and the model, and hands out frozen snapshots."""

from __future__ import annotations

import threading
from collections.abc import Callable, Sequence
from concurrent.futures import Future
from dataclasses import replace
from itertools import zip_longest
from pathlib import Path
from typing import ParamSpec

from studiowatch.board.events import BoardEvent, ReadingArrived
from studiowatch.board.onlooker import Onlooker
from studiowatch.board.port import PortFault
from studiowatch.service.commands import AcceptColumns, BoardCommand, Command, Refused
from studiowatch.service.correction_commands import Redo, TakePhoto, Undo
from studiowatch.service.errand_thread import in_a_thread
from studiowatch.service.inbox import Errand, Inbox
from studiowatch.service.leavings import Leavings
from studiowatch.service.letterbox import Letterbox
from studiowatch.service.own_fault import OwnFault
from studiowatch.service.pace import LOOK_S, Pace
from studiowatch.service.photos import PhotoFolder
from studiowatch.service.ports import BoardSource, Clock
from studiowatch.service.product_views import SheetChoice, SheetEntry
from studiowatch.service.sheet_commands import SheetCommand
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.service.snapshot import Snapshot
from studiowatch.service.tidying import Tidying
from studiowatch.service.watchkeeping import Watchkeeping
from studiowatch.speech.words import say

JOIN_S = 30.0  # s, a stop that takes longer is a fault: the first coats take ten on a machine that is busy otherwise

P = ParamSpec("P")


class Keeper:
    """Runs a `Watchkeeping` on its own thread, fed by a board source and by commands.

    `start` does not wait for the coats: the keeper dries them through the log while it works.

    Parameters
    ----------
    open_watch : callable
        Makes the watchkeeping; called on the keeper's thread, so that the database connection lives where it is used.
    other_trouble : callable
        What else is wrong with the disk, said where the watch itself has nothing to say of it.
    photos : PhotoFolder or None
        Where pictures are taken in; on a thread of its own, since a large one takes its time.
    shelf : SheetShelf
        The shelf of the watch that `open_watch` makes.
    letters : Letterbox or None
        Where calls in another process ask for something.
    """

    def __init__(
        self,
        *,
        open_watch: Callable[[], Watchkeeping],
        source: BoardSource,
        clock: Clock,
        shelf: SheetShelf,
        other_trouble: Callable[[], str] = lambda: "",
        photos: PhotoFolder | None = None,
        letters: Letterbox | None = None,
    ) -> None:
        self._open_watch = open_watch
        self._source = source
        self._clock = clock
        self._shelf = shelf
        self._sheets, self._entries = tuple(shelf.choices()), shelf.entries()
        self._other_trouble = other_trouble
        self._photos = photos
        self._letters = letters
        self._inbox = Inbox()
        self._listeners: list[Callable[[Snapshot], None]] = []
        self._stopping = threading.Event()
        self._opened: Future[None] = Future()
        self._pace = Pace()
        self._tidying = Tidying(clock)
        self._faults = OwnFault(clock)
        self._left = Leavings()
        self._thread = threading.Thread(target=self._run, name="keeper", daemon=True)

    def start(self) -> None:
        """Open the store on the keeper's thread, then let the board speak.

        Raises
        ------
        Exception
            Whatever kept the store from opening, as raised there.
        """
        self._thread.start()
        try:
            self._opened.result()
            self._source.start(self._inbox.deliver)
        except BaseException:
            self._end()
            raise

    def stop(self) -> None:
        """Stop the board, drain what came, put everything on disk, and join; see `left`.

        Raises
        ------
        RuntimeError
            If a thread lives on.
        """
        try:
            self._source.stop()
        finally:
            self._end()

    @property
    def is_running(self) -> bool:
        """Whether the thread lives, and with it a hold on the store."""
        return self._thread.is_alive()

    @property
    def left(self) -> Leavings:
        """What could not be put on disk at the end."""
        return self._left

    def _end(self) -> None:
        self._stopping.set()
        self._inbox.wake()
        self._thread.join(JOIN_S)
        if self._thread.is_alive():
            raise RuntimeError("the keeper's thread did not end")  # not said

    def submit(self, command: Command) -> Future[str]:
        """Have `command` carried out; see `studiowatch.service.ports.Desk`."""
        if isinstance(command, TakePhoto) and self._photos is not None:
            return in_a_thread(self._photos.take, command.path)
        return self._inbox.ask(command)

    @property
    def photo_folder(self) -> Path | None:
        """Where the photos of pieces lie."""
        return None if self._photos is None else self._photos.folder

    def subscribe(self, listener: Callable[[Snapshot], None]) -> None:
        """Have `listener` called with each new snapshot, on the keeper's thread."""
        self._listeners.append(listener)

    def look(self, *, closely: bool) -> None:
        """Keep pace with who looks; see `studiowatch.service.ports.Desk`."""
        self._pace.closely = closely
        if closely:
            self._inbox.wake()

    @property
    def onlooker(self) -> Onlooker:
        """What may be seen of the board's reader, from any thread."""
        return self._source.onlooker

    def sheets(self) -> Sequence[SheetChoice]:
        """Return the data sheets that may be laid."""
        return self._sheets

    def shelf(self) -> Sequence[SheetEntry]:
        """Return the data sheets with all their figures."""
        return self._entries

    def _run(self) -> None:
        try:
            watch = self._open_watch()
        except BaseException as fault:  # noqa: BLE001 - handed to the thread that asked
            self._inbox.refuse_rest()
            self._opened.set_exception(fault)
            return
        watch.is_ending = self._stopping.is_set
        self._opened.set_result(None)
        self._guard(watch, self._publish, watch)
        try:
            while not self._stopping.is_set():
                self._turn(watch, 0.0 if watch.is_opening else LOOK_S)
            self._inbox.close()
            while self._turn(watch, 0.0):
                pass
        finally:
            self._inbox.refuse_rest()
            self._guard(watch, watch.close, self._clock.monotonic_s())
            self._left = watch.leavings()

    def _turn(self, watch: Watchkeeping, wait_s: float) -> int:
        """Take what came, look at the clock, say, write, publish; return how much came.

        A fault in one step is reported, and the others are taken all the same.
        """
        if self._letters is not None:
            self._guard(watch, self._collect, self._letters)
        together = self._pace.together(self._clock.utc_ms(), is_stirred=watch.is_stirred)
        items = self._inbox.take(wait_s, together)
        for item, after in zip_longest(items, items[1:]):
            self._guard(watch, self._attend, watch, item, is_followed=isinstance(after, ReadingArrived))
            self._guard(watch, watch.speak)
        self._faults.look()
        self._say_fault(watch)
        now_ms, now_s, lost = self._clock.utc_ms(), self._clock.monotonic_s(), self._inbox.overflowed
        self._guard(watch, watch.look, now_ms, now_s, lost, is_seen=self._pace.closely)
        self._guard(watch, watch.speak)
        self._guard(watch, watch.write, self._clock.utc_ms(), self._clock.monotonic_s())
        if self._is_due(watch, len(items)) and not self._guard(watch, self._publish, watch):
            self._guard(watch, self._publish_fault, watch)
        self._guard(watch, self._tidying.look)
        return len(items)

    def _collect(self, letters: Letterbox) -> None:
        letters.collect(self.submit)

    def _attend(self, watch: Watchkeeping, item: BoardEvent | Errand, *, is_followed: bool) -> None:
        if isinstance(item, Errand):
            if item.answer.set_running_or_notify_cancel():
                self._answer(watch, item)
            return
        now_s = self._clock.monotonic_s()
        watch.mind_the_clock(self._clock.utc_ms(), now_s)
        watch.take(item, now_s, is_followed=is_followed)

    def _answer(self, watch: Watchkeeping, errand: Errand) -> None:
        now_ms, now_s = self._clock.utc_ms(), self._clock.monotonic_s()
        try:
            watch.mind_the_clock(now_ms, now_s)
            if isinstance(errand.command, BoardCommand):
                key = self._ask_board(errand.command)
            else:
                key = watch.carry_out(errand.command, now_ms, now_s)
            if isinstance(errand.command, SheetCommand | Undo | Redo):
                self._sheets, self._entries = tuple(self._shelf.choices()), self._shelf.entries()
        except Refused as refusal:
            errand.answer.set_exception(refusal)
        except Exception as fault:
            errand.answer.set_exception(
                Refused(say("That could not be done, through a fault of ours: {fault}.", fault=fault))
            )
            raise
        else:
            errand.answer.set_result(key)

    def _ask_board(self, command: BoardCommand) -> str:
        try:
            if isinstance(command, AcceptColumns):
                self._source.accept(command.board, command.mapping)
            else:
                self._source.choose(command.port)
        except PortFault as fault:
            raise Refused(str(fault)) from fault
        except OSError as fault:
            raise Refused(
                say("What you said is used until the program ends, but could not be kept: {fault}.", fault=fault)
            ) from fault
        return ""

    def _is_due(self, watch: Watchkeeping, count: int) -> bool:
        """Return whether a snapshot is to go out after `count` things came: at once after what happened."""
        return watch.changed or (watch.drifted and self._pace.is_due(self._clock.monotonic_s(), count))

    def _publish(self, watch: Watchkeeping) -> None:
        self._pace.handed_s = self._clock.monotonic_s()
        seen = watch.snapshot(self._clock.utc_ms())
        self._pace.latest = replace(seen, store_trouble=seen.store_trouble or self._other_trouble())
        self._hand_out(watch, self._pace.latest)

    def _publish_fault(self, watch: Watchkeeping) -> None:
        """Show the fault on what was seen last, since no snapshot could be taken."""
        if self._pace.latest is not None:
            self._hand_out(watch, replace(self._pace.latest, own_fault=watch.own_fault))

    def _hand_out(self, watch: Watchkeeping, snapshot: Snapshot) -> None:
        for listener in tuple(self._listeners):
            self._guard(watch, listener, snapshot)

    def _guard(self, watch: Watchkeeping, work: Callable[P, None], *arguments: P.args, **named: P.kwargs) -> bool:
        """Do `work` and return whether it went well; a fault of ours is reported and must not end the watch."""
        try:
            work(*arguments, **named)
        except Exception as fault:  # noqa: BLE001 - the thread's top
            self._faults.meet(fault)
            self._say_fault(watch)
            return False
        return True

    def _say_fault(self, watch: Watchkeeping) -> None:
        if watch.own_fault != self._faults.sentence:
            watch.own_fault = self._faults.sentence
            watch.changed = True
