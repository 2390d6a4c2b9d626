"""What the window is given from outside."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtGui import QIcon

from studiowatch.service.exchange import Exchange
from studiowatch.service.finishing_sheets import FinishingSheets
from studiowatch.service.login_entry import LoginEntry
from studiowatch.service.ports import Clock, Desk, History
from studiowatch.service.review_ports import Reviews
from studiowatch.ui.settings import ViewSettings
from studiowatch.ui.sound import Speaker
from studiowatch.ui.tray import Tray

if TYPE_CHECKING:
    from studiowatch.ui.widgets.history import RoomHistory


@dataclass(frozen=True, slots=True, kw_only=True)
class Parts:
    """The parts that a test may exchange.

    `make_plot` imports the history's library when it is called. `login` is None where nothing may start at login.
    Without an `exchange` nothing can be saved from the window, without `reviews` no coat reviewed, without
    `finishing` no finishing record shown. `demo`
    starts the made-up studio, program and words; without it there is no first run either.
    """

    desk: Desk
    history: History
    clock: Clock
    settings: ViewSettings
    speaker: Speaker
    tray: Tray
    icon: QIcon
    login: LoginEntry | None
    make_plot: Callable[[], RoomHistory]
    exchange: Exchange | None = None
    reviews: Reviews | None = None
    finishing: FinishingSheets | None = None
    demo: Sequence[str] = ()
    language: str = "en"
