"""A desk that does what a test says."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from concurrent.futures import Future
from dataclasses import dataclass, field
from pathlib import Path

from studiowatch.board.onlooker import Onlooker
from studiowatch.service.commands import Command, Refused
from studiowatch.service.product_views import SheetChoice, SheetEntry
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.service.snapshot import Snapshot

from .sheets import SHEETS


@dataclass
class ScriptedDesk:
    """A desk that keeps what it was asked, and answers as the test says."""

    answer: str | Exception = "made"
    hold: bool = False
    commands: list[Command] = field(default_factory=list)
    futures: list[Future[str]] = field(default_factory=list)
    listeners: list[Callable[[Snapshot], None]] = field(default_factory=list)
    offered: tuple[SheetChoice, ...] = SHEETS
    onlooker: Onlooker = field(default_factory=Onlooker)
    photo_folder: Path | None = None
    on_shelf: tuple[SheetEntry, ...] = ()
    looked: list[bool] = field(default_factory=list)

    def submit(self, command: Command) -> Future[str]:
        future: Future[str] = Future()
        self.commands.append(command)
        self.futures.append(future)
        if not self.hold:
            self.settle(future)
        return future

    def settle(self, future: Future[str]) -> None:
        if isinstance(self.answer, Exception):
            future.set_exception(self.answer)
        else:
            future.set_result(self.answer)

    def refuse(self, sentence: str) -> None:
        self.answer = Refused(sentence)

    def subscribe(self, listener: Callable[[Snapshot], None]) -> None:
        self.listeners.append(listener)

    def look(self, *, closely: bool) -> None:
        self.looked.append(closely)

    def sheets(self) -> Sequence[SheetChoice]:
        return self.offered

    def shelf(self) -> Sequence[SheetEntry]:
        return self.on_shelf or SheetShelf.open().entries()

    def publish(self, snapshot: Snapshot) -> None:
        for listener in self.listeners:
            listener(snapshot)
