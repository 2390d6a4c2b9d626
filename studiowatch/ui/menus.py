"""The menu bar: everything the window can do, each with its key."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from functools import partial

from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QMainWindow, QMenu, QMenuBar

from studiowatch.ui.records_menu import RecordsDeeds, add_records, add_saving

_REMINDERS = (
    ("Remind me in &10 min", "Ctrl+R"),
    ("Remind me in &30 min", "Ctrl+Shift+R"),
    ("Not until the coat is &dry", "Ctrl+Alt+R"),
)


@dataclass(frozen=True, slots=True, kw_only=True)
class MenuDeeds:
    """What the entries do."""

    register: Callable[[], object]
    lay: Callable[[], object]
    test: Callable[[], object]
    read: Callable[[], object]
    hear: Callable[[], object]
    put_off: Callable[[int], object]
    try_sound: Callable[[], object]
    quiet: Callable[[], object]
    login: Callable[[bool], object]
    quit: Callable[[], object]
    night: Callable[[bool], object]
    larger: Callable[[], object]
    smaller: Callable[[], object]
    plain_size: Callable[[], object]
    across: Callable[[], object]
    board: Callable[[], object]
    why: Callable[[], object]
    span: Callable[[str], object]
    records: RecordsDeeds


def add_menus(
    window: QMainWindow, deeds: MenuDeeds, spans: tuple[str, ...], *, starts_at_login: bool = False
) -> QAction:
    """Fill the window's menu bar, and return the action that shows whether the night colours are on."""
    bar = window.menuBar()
    bar.setAccessibleName("Menus")
    rack, warnings = _rack_menu(bar, deeds, starts_at_login=starts_at_login), _warnings_menu(bar, deeds)
    view, night = _view_menu(bar, deeds)
    history = bar.addMenu("&History")
    for index, span in enumerate(spans, start=1):
        history.addAction(f"&{span}", QKeySequence(f"Ctrl+{index}"), partial(deeds.span, span))
    add_saving(history, deeds.records)
    records = add_records(bar, deeds.records)
    for menu in (rack, warnings, view, history, records):
        window.addActions(menu.actions())  # so that their keys work while the menu bar is away
    return night


def _view_menu(bar: QMenuBar, deeds: MenuDeeds) -> tuple[QMenu, QAction]:
    view = bar.addMenu("&View")
    night = view.addAction("&Night colours")
    night.setCheckable(True)
    night.setShortcut(QKeySequence("Ctrl+D"))
    night.toggled.connect(deeds.night)
    view.addSeparator()
    larger = view.addAction("&Larger text")
    larger.setShortcuts([QKeySequence("Ctrl++"), QKeySequence("Ctrl+=")])
    larger.triggered.connect(deeds.larger)
    view.addAction("&Smaller text", QKeySequence("Ctrl+-"), deeds.smaller)
    view.addAction("Text at &100 %", QKeySequence("Ctrl+0"), deeds.plain_size)
    view.addSeparator()
    view.addAction("&From across the room", QKeySequence("F11"), deeds.across)
    view.addAction("The &board", QKeySequence("Ctrl+B"), deeds.board)
    return view, night


def _rack_menu(bar: QMenuBar, deeds: MenuDeeds, *, starts_at_login: bool) -> QMenu:
    rack = bar.addMenu("&Rack")
    rack.addAction("&Register a piece…", QKeySequence("Ctrl+N"), deeds.register)
    rack.addAction("&Lay a coat…", QKeySequence("Ctrl+L"), deeds.lay)
    rack.addAction("&Touch test or look…", QKeySequence("Ctrl+T"), deeds.test)
    rack.addAction("Type a read&ing…", QKeySequence("Ctrl+G"), deeds.read)
    rack.addAction("&Why did it cloud?", QKeySequence("Ctrl+E"), deeds.why)
    rack.addSeparator()
    login = rack.addAction("&Start at login")
    login.setCheckable(True)
    login.setChecked(starts_at_login)
    login.toggled.connect(deeds.login)
    rack.addAction("&Quit", QKeySequence("Ctrl+Q"), deeds.quit)
    return rack


def _warnings_menu(bar: QMenuBar, deeds: MenuDeeds) -> QMenu:
    warnings = bar.addMenu("&Warnings")
    warnings.addAction("&Heard", QKeySequence("Ctrl+H"), deeds.hear)
    for number, (words, keys) in enumerate(_REMINDERS):
        warnings.addAction(words, QKeySequence(keys), partial(deeds.put_off, number))
    warnings.addSeparator()
    warnings.addAction("&Quiet hours…", QKeySequence("Ctrl+U"), deeds.quiet)
    warnings.addAction("&Try the sound", QKeySequence("Ctrl+Shift+S"), deeds.try_sound)
    return warnings
