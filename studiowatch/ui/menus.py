"""The menu bar: everything the window can do, each with its key."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from functools import partial

from PySide6.QtCore import QSignalBlocker
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QMainWindow, QMenu, QMenuBar

from studiowatch.service.snapshot import UndoView
from studiowatch.studio.review_causes import Cause
from studiowatch.ui.help_menu import add_help
from studiowatch.ui.records_menu import RecordsDeeds, add_records, add_saving

_REMINDERS = (
    ("Remind me in &10 min", "Ctrl+R"),
    ("Remind me in &30 min", "Ctrl+Shift+R"),
    ("Not until the coat is &dry", "Ctrl+Alt+R"),
)
UNDO, REDO = "&Undo", "Do a&gain"


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
    edit: Callable[[], object]
    cover: Callable[[], object]
    take_off: Callable[[], object]
    correct: Callable[[], object]
    outcome: Callable[[], object]
    finishing: Callable[[], object]
    archive: Callable[[], object]
    sheets: Callable[[], object]
    find: Callable[[], object]
    undo: Callable[[], object]
    redo: Callable[[], object]
    quit: Callable[[], object]
    night: Callable[[bool], object]
    contrast: Callable[[bool], object]
    larger: Callable[[], object]
    smaller: Callable[[], object]
    plain_size: Callable[[], object]
    units: Callable[[], object]
    across: Callable[[], object]
    board: Callable[[], object]
    why: Callable[[], object]
    example: Callable[[Cause], object]
    plan: Callable[[], object]
    first: Callable[[], object]
    span: Callable[[str], object]
    records: RecordsDeeds


@dataclass(frozen=True, slots=True, kw_only=True)
class MenuActions:
    """The entries that say how things stand: the colours, and what undo and redo would do."""

    night: QAction
    contrast: QAction
    undo: QAction
    redo: QAction

    def show_colours(self, *, night: bool, contrast: bool) -> None:
        """Tick the colours that are in use."""
        for action, on in ((self.night, night), (self.contrast, contrast)):
            with QSignalBlocker(action):  # it tells what is; it asks for nothing
                action.setChecked(on)

    def show_undo(self, view: UndoView) -> None:
        """Name what undo and redo would do."""
        for action, word, words in ((self.undo, UNDO, view.undo), (self.redo, REDO, view.redo)):
            text = f"{word}: {words.replace('&', '&&')}" if words else word
            if action.text() != text:
                action.setText(text)


def add_menus(
    window: QMainWindow, deeds: MenuDeeds, spans: tuple[str, ...], *, starts_at_login: bool = False
) -> MenuActions:
    """Fill the window's menu bar, and return the entries that change."""
    bar = window.menuBar()
    bar.setAccessibleName("Menus")
    rack = _rack_menu(bar, deeds, starts_at_login=starts_at_login)
    edit = bar.addMenu("&Edit")
    undo = edit.addAction(UNDO, deeds.undo)
    undo.setShortcut(QKeySequence("Ctrl+Z"))
    redo = edit.addAction(REDO, deeds.redo)
    redo.setShortcuts([QKeySequence("Ctrl+Shift+Z"), QKeySequence("Ctrl+Y")])
    warnings = _warnings_menu(bar, deeds)
    view, night, contrast = _view_menu(bar, deeds)
    history = bar.addMenu("&History")
    for index, span in enumerate(spans, start=1):
        history.addAction(f"&{span}", QKeySequence(f"Ctrl+{index}"), partial(deeds.span, span))
    add_saving(history, deeds.records)
    records = add_records(bar, deeds.records)
    shown = add_help(bar, deeds.example)
    for menu in (rack, edit, warnings, view, history, records, shown):
        window.addActions(menu.actions())  # so that their keys work while the menu bar is away
    return MenuActions(night=night, contrast=contrast, undo=undo, redo=redo)


def _view_menu(bar: QMenuBar, deeds: MenuDeeds) -> tuple[QMenu, QAction, QAction]:
    view = bar.addMenu("&View")
    night = view.addAction("&Night colours")
    night.setCheckable(True)
    night.setShortcut(QKeySequence("Ctrl+D"))
    night.toggled.connect(deeds.night)
    contrast = view.addAction("High &contrast")
    contrast.setCheckable(True)
    contrast.setShortcut(QKeySequence("Ctrl+Shift+C"))
    contrast.toggled.connect(deeds.contrast)
    view.addSeparator()
    larger = view.addAction("&Larger text")
    larger.setShortcuts([QKeySequence("Ctrl++"), QKeySequence("Ctrl+=")])
    larger.triggered.connect(deeds.larger)
    view.addAction("&Smaller text", QKeySequence("Ctrl+-"), deeds.smaller)
    view.addAction("Text at &100 %", QKeySequence("Ctrl+0"), deeds.plain_size)
    view.addAction("&Units and language…", QKeySequence("Ctrl+Shift+U"), deeds.units)
    view.addSeparator()
    view.addAction("&From across the room", QKeySequence("F11"), deeds.across)
    view.addAction("The finishing &plan", QKeySequence("Ctrl+P"), deeds.plan)
    view.addAction("The &board", QKeySequence("Ctrl+B"), deeds.board)
    view.addSeparator()
    view.addAction("F&irst steps", QKeySequence("Ctrl+Shift+F"), deeds.first)
    return view, night, contrast


def _rack_menu(bar: QMenuBar, deeds: MenuDeeds, *, starts_at_login: bool) -> QMenu:
    rack = bar.addMenu("&Rack")
    rack.addAction("&Register a piece…", QKeySequence("Ctrl+N"), deeds.register)
    rack.addAction("&Lay a coat…", QKeySequence("Ctrl+L"), deeds.lay)
    rack.addAction("The &mesh cover is set", QKeySequence("Ctrl+M"), deeds.cover)
    rack.addAction("&Touch test or look…", QKeySequence("Ctrl+T"), deeds.test)
    rack.addAction("How did it come &out…", QKeySequence("Ctrl+O"), deeds.outcome)
    rack.addAction("&Why did it cloud?", QKeySequence("Ctrl+E"), deeds.why)
    rack.addAction("Type a read&ing…", QKeySequence("Ctrl+G"), deeds.read)
    rack.addSeparator()
    rack.addAction("&Edit the piece…", QKeySequence("F2"), deeds.edit)
    rack.addAction("&Corrections…", QKeySequence("Ctrl+K"), deeds.correct)
    rack.addAction("Finis&hing record…", QKeySequence("Ctrl+Shift+P"), deeds.finishing)
    rack.addAction("Ta&ke off the rack…", deeds.take_off)
    rack.addSeparator()
    rack.addAction("&Find on the rack", QKeySequence("Ctrl+F"), deeds.find)
    rack.addAction("&Archived pieces…", QKeySequence("Ctrl+Shift+A"), deeds.archive)
    rack.addAction("&Data sheets…", QKeySequence("Ctrl+Shift+D"), deeds.sheets)
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
