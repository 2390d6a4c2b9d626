"""Films of made-up pieces in a made-up room, lent as the keeper lends them, and the what-if page in its states."""

from __future__ import annotations

from collections.abc import Iterator
from concurrent.futures import Future
from dataclasses import dataclass, field

from PySide6.QtWidgets import QWidget

from studiowatch.physics.air import Air
from studiowatch.service.commands import Command
from studiowatch.service.films_to_come import FilmsToCome
from studiowatch.service.lend_films import LendFilms
from studiowatch.service.plan_only import HeldRoom, watch_at
from studiowatch.service.replaying import MemoryRecords
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.studio.pieces import Coat, Piece
from studiowatch.ui.models.what_if import AirWish
from studiowatch.ui.window import StudioWindow

from .scenes import FOUR_CALM, NOW_MS, ScriptedDesk

HOUR_MS = 3_600_000
COOL = Air(temperature_C=18.0, humidity_pct=62.0, air_speed_m_s=0.05)
TITLES = ("Low Tide", "Orchard Wall", "Blue Ladder", "The Long Field, Evening", "Kiln", "Two Gates")
_STACKS = (  # sheets and how long ago each was laid, h; None is still to come
    (("gloss-waterborne", 0.3),),
    (("isolation-waterborne", 3.0), ("gloss-waterborne", None)),
    (("isolation-waterborne", 30.0), ("satin-waterborne", 1.5)),
    (("gloss-waterborne", 50.0),),
    (("isolation-waterborne", 0.5), ("matt-waterborne", None)),
    (("gloss-waterborne", 9.0), ("satin-waterborne", None)),
)
VAPOUR = (("gloss-solventborne", 1.0),)


def piece(at: int, stack: tuple[tuple[str, float | None], ...]) -> Piece:
    """Return a made-up piece with these coats."""
    coats = tuple(
        Coat(key=f"c{at}-{number}", sheet=sheet, laid_ms=None if ago_h is None else NOW_MS - round(ago_h * HOUR_MS))
        for number, (sheet, ago_h) in enumerate(stack)
    )
    title = TITLES[at % len(TITLES)] + ("" if at < len(TITLES) else f" {at}")
    return Piece(key=f"p{at}", title=title, width_cm=40, height_cm=30 + at, place=at, coats=coats)


def lent(number: int = 6, *, air: Air = COOL, vapour: bool = False) -> FilmsToCome:
    """Return the films of so many pieces in a room that was always as `air`."""
    stacks = [_STACKS[at % len(_STACKS)] for at in range(number)] + [VAPOUR] * vapour
    pieces = [piece(at, stack) for at, stack in enumerate(stacks)]
    records = MemoryRecords(held={one.key: one for one in pieces})
    return watch_at(NOW_MS, records, HeldRoom(air), SheetShelf.open()).films_to_come(NOW_MS)


@dataclass
class LendingDesk(ScriptedDesk):
    """A desk that lends films."""

    films: FilmsToCome = field(default_factory=lent)

    def submit(self, command: Command) -> Future[str]:
        """Lend, or answer as the test says."""
        future = super().submit(command)
        if isinstance(command, LendFilms) and not self.hold:
            command.to(self.films)
        return future


def what_if_states(window: StudioWindow, desk: LendingDesk) -> Iterator[tuple[str, QWidget]]:
    """Put the page into one state after the other, and yield its name and what to picture."""
    desk.publish(FOUR_CALM)
    window.pages.show_what_if()
    hand = window.what_if.hand
    yield "what-if", window
    hand.temperature.slider.setValue(28)
    hand.humidity.slider.setValue(15)
    yield "what-if-warm", window
    hand.let_go()
    hand.temperature.slider.setValue(2)
    hand.air.choose(AirWish.FAN)
    hand.hours.choose(12)
    yield "what-if-cold-fan", window
    for name, films in (
        ("what-if-twelve", lent(12)),
        ("what-if-empty", lent(0)),
        ("what-if-vapour", lent(2, vapour=True)),
    ):
        desk.films = films
        window.pages.show_rack()
        window.pages.show_what_if()
        hand.let_go()
        hand.temperature.slider.setValue(26)
        yield name, window
    hand.let_go()
    window.pages.show_rack()
