"""The keeper: one thread that owns the store and the model, and hands out frozen snapshots."""

from __future__ import annotations

import sys
import threading
import traceback
from collections.abc import Callable, Sequence
from concurrent.futures import Future

from studiowatch.board.events import BoardEvent
from studiowatch.service.commands import Command, Refused
from studiowatch.service.inbox import Errand, Inbox
from studiowatch.service.ports import BoardSource, Clock
from studiowatch.service.snapshot import SheetChoice, Snapshot
from studiowatch.service.watchkeeping import Watchkeeping

LOOK_S = 0.5  # s, longest time between two looks at the clock: silence and prompts are noticed this fast
JOIN_S = 10.0  # s, a stop that takes longer is a fault


class Keeper:
    """Runs a `Watchkeeping` on its own thread, fed by a board source and by commands.

    Parameters
    ----------
    open_watch : callable
        Makes the watchkeeping; called on the keeper's thread, so that the database connection lives where it is used.
    """

    def __init__(
        self,
        *,
        open_watch: Callable[[], Watchkeeping],
        source: BoardSource,
        clock: Clock,
        sheets: Sequence[SheetChoice],
    ) -> None:
        self._open_watch = open_watch
        self._source = source
        self._clock = clock
        self._sheets = tuple(sheets)
        self._inbox = Inbox()
        self._listeners: list[Callable[[Snapshot], None]] = []
        self._stopping = threading.Event()
        self._opened: Future[None] = Future()
        self._thread = threading.Thread(target=self._run, name="keeper", daemon=True)

    def start(self) -> None:
        """Open the store on the keeper's thread, then let the board speak.

        Raises
        ------
        Exception
            Whatever kept the store from opening, as raised there.
        """
        self._thread.start()
        self._opened.result()
        self._source.start(self._inbox.deliver)

    def stop(self) -> None:
        """Stop the board, drain what came, put everything on disk, and join.

        Raises
        ------
        RuntimeError
            If a thread lives on.
        """
        self._source.stop()
        self._stopping.set()
        self._inbox.wake()
        self._thread.join(JOIN_S)
        if self._thread.is_alive():
            raise RuntimeError("the keeper's thread did not end")

    def submit(self, command: Command) -> Future[str]:
        """Have `command` carried out; see `studiowatch.service.ports.Desk`."""
        return self._inbox.ask(command)

    def subscribe(self, listener: Callable[[Snapshot], None]) -> None:
        """Have `listener` called with each new snapshot, on the keeper's thread."""
        self._listeners.append(listener)

    def sheets(self) -> Sequence[SheetChoice]:
        """Return the data sheets that may be laid."""
        return self._sheets

    def _run(self) -> None:
        try:
            watch = self._open_watch()
        except BaseException as fault:  # noqa: BLE001 - handed to the thread that asked
            self._opened.set_exception(fault)
            return
        self._opened.set_result(None)
        try:
            while not self._stopping.is_set():
                self._turn(watch, LOOK_S)
            self._turn(watch, 0.0)
        finally:
            watch.close(self._clock.monotonic_s())

    def _turn(self, watch: Watchkeeping, wait_s: float) -> None:
        """Take what came, look at the clock, publish. A fault in one item is reported; the watch goes on."""
        for item in self._inbox.take(wait_s):
            self._guard(lambda item=item: self._attend(watch, item))  # type: ignore[misc]
        self._guard(lambda: watch.look(self._clock.utc_ms(), self._clock.monotonic_s(), self._inbox.overflowed))
        self._guard(lambda: self._publish(watch))

    def _attend(self, watch: Watchkeeping, item: BoardEvent | Errand) -> None:
        watch.mind_the_clock(self._clock.utc_ms(), self._clock.monotonic_s())
        if not isinstance(item, Errand):
            watch.take(item, self._clock.monotonic_s())
            return
        try:
            key = watch.carry_out(item.command, self._clock.utc_ms())
        except Refused as refusal:
            item.answer.set_exception(refusal)
        except Exception as fault:
            item.answer.set_exception(Refused(f"That could not be done, through a fault of ours: {fault}."))
            raise
        else:
            item.answer.set_result(key)

    def _publish(self, watch: Watchkeeping) -> None:
        if not watch.changed:
            return
        snapshot = watch.snapshot(self._clock.utc_ms())
        for listener in tuple(self._listeners):
            listener(snapshot)

    @staticmethod
    def _guard(work: Callable[[], None]) -> None:
        try:
            work()
        except Exception:  # noqa: BLE001 - the thread's top: a fault of ours must not end the watch
            traceback.print_exc(file=sys.stderr)
