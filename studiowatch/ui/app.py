"""Start the window and stay until she leaves."""

from __future__ import annotations

import signal
from collections.abc import Callable, Sequence
from contextlib import ExitStack
from functools import partial
from importlib.resources import files
from typing import TYPE_CHECKING

from PySide6.QtCore import QTimer
from PySide6.QtGui import QIcon, QPixmap
from PySide6.QtWidgets import QApplication

from studiowatch.service.doors import Doors
from studiowatch.service.exchange import Exchange
from studiowatch.service.finishing_sheets import FinishingSheets
from studiowatch.service.login_entry import LoginEntry
from studiowatch.service.ports import Clock, Desk, History
from studiowatch.service.review_ports import Reviews
from studiowatch.ui.one_window import OneWindow
from studiowatch.ui.own_faults import OwnFaults
from studiowatch.ui.parts import Parts
from studiowatch.ui.settings import ViewSettings
from studiowatch.ui.sound import DeviceSpeaker, Speaker
from studiowatch.ui.starting import end_starting
from studiowatch.ui.translation import translate_dates, translate_dialogs
from studiowatch.ui.tray import Tray
from studiowatch.ui.window import StudioWindow

if TYPE_CHECKING:
    from studiowatch.ui.widgets.history import RoomHistory


def run_window(
    desk: Desk,
    doors: Doors,
    clock: Clock,
    *,
    title_note: str = "",
    night: bool | None = None,
    login: LoginEntry | None = None,
    demo: Sequence[str] = (),
    language: str = "en",
) -> int:
    """Open the window, and return the exit code once she has left.

    The caller starts the keeper before and stops it after; `night` None takes her own setting. A second start on
    `folder` brings this window to the front. `language` is that of Qt's own buttons; the program speaks hers already.
    """
    app = QApplication.instance() or QApplication(["studiowatch"])
    if not isinstance(app, QApplication):
        raise TypeError("a Qt application without windows is running already")  # not said
    app.setApplicationName("studiowatch")
    app.setDesktopFileName("studiowatch")
    app.setQuitOnLastWindowClosed(False)
    translate_dates(language)
    translate_dialogs(language, app)
    with ExitStack() as unless_built:
        unless_built.callback(doors.history.close)
        window = build_window(
            desk,
            doors.history,
            clock,
            exchange=doors.exchange,
            reviews=doors.reviews,
            finishing=doors.finishing,
            title_note=title_note,
            night=night,
            login=login,
            demo=demo,
            language=language,
        )
        unless_built.pop_all()
    # Once in the loop, for before it an end is lost; and by `exit`, since `quit` first closes windows, which may stay.
    window.left.connect(lambda: QTimer.singleShot(0, app, partial(app.exit, 0)))
    faults = OwnFaults(window)
    faults.told.connect(window.own_fault)
    faults.listen()
    window.left.connect(faults.stop_listening)
    one = OneWindow(doors.folder.path, window)
    one.asked.connect(window.come_back)
    window.left.connect(one.close)
    app.commitDataRequest.connect(window.leave)
    for number in (signal.SIGINT, signal.SIGTERM):
        signal.signal(number, lambda *_: QTimer.singleShot(0, window.leave))  # from the loop: never while it is shown
    window.show()
    end_starting()
    return app.exec()


def build_window(
    desk: Desk,
    history: History,
    clock: Clock,
    *,
    exchange: Exchange | None = None,
    reviews: Reviews | None = None,
    finishing: FinishingSheets | None = None,
    title_note: str = "",
    night: bool | None = None,
    settings: ViewSettings | None = None,
    speaker: Speaker | None = None,
    tray: Tray | None = None,
    login: LoginEntry | None = None,
    make_plot: Callable[[], RoomHistory] | None = None,
    demo: Sequence[str] = (),
    language: str = "en",
) -> StudioWindow:
    """Return the window, not shown yet; what is None is made as the program makes it."""
    QApplication.setStyle("Fusion")
    icon = app_icon()
    parts = Parts(
        desk=desk,
        history=history,
        clock=clock,
        settings=settings or ViewSettings(),
        speaker=speaker or DeviceSpeaker(),
        tray=tray or Tray(icon),
        icon=icon,
        login=login,
        make_plot=make_plot or _room_history,
        exchange=exchange,
        reviews=reviews,
        finishing=finishing,
        demo=demo,
        language=language,
    )
    return StudioWindow(parts, title_note=title_note, night=night)


def app_icon() -> QIcon:
    """Return the icon: a section through a film."""
    drawn = QPixmap()
    drawn.loadFromData(files("studiowatch.resources").joinpath("icons", "studiowatch.svg").read_bytes())
    return QIcon(drawn)


def _room_history() -> RoomHistory:
    from studiowatch.ui.widgets.history import RoomHistory  # noqa: PLC0415 - after the window is on the screen

    return RoomHistory()
