"""A watch whose clock and board the test holds in its hand."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime

from studiowatch.board.onlooker import Onlooker
from studiowatch.service.happenings import Happening
from studiowatch.service.local_time import clock_text, local_date
from studiowatch.service.outfit import Outfit
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.service.watchkeeping import Watchkeeping
from studiowatch.store.folder import StudioFolder

OPENED_MS = int(datetime(2026, 3, 2, 9, 0, tzinfo=UTC).timestamp() * 1000)


class SetClock:
    """A clock that the test sets."""

    now_ms = OPENED_MS

    def utc_ms(self) -> int:
        return self.now_ms

    def monotonic_s(self) -> float:
        return self.now_ms / 1000


class HeldBoard:
    """A board that says what the test says."""

    def __init__(self) -> None:
        self.onlooker = Onlooker()

    def start(self, deliver: object) -> None:
        self.say = deliver

    def stop(self) -> None:
        """Have no thread to join."""


def held_watch(
    parts: Outfit, folder: StudioFolder, shelf: SheetShelf, tell: Callable[[Happening], None], silent_after_s: float
) -> Watchkeeping:
    """Return the watch over the records in `folder`, as a keeper opens it."""
    store = parts.open_store(folder.database)
    watch = Watchkeeping(
        log=store.log,
        records=store.records,
        shelf=shelf,
        clock_text=clock_text,
        local_date=local_date,
        began_ms=parts.clock.utc_ms(),
        tell=tell,
        silent_after_s=silent_after_s,
        shut=store.close,
    )
    watch.take_up()
    return watch
