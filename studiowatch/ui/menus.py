"""The menu bar: everything the window can do, each with its key."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from functools import partial

from PySide6.QtCore import QSignalBlocker
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QMainWindow, QMenu, QMenuBar

from studiowatch.service.snapshot import UndoView
from studiowatch.speech.words import mark, say
from studiowatch.studio.review_causes import Cause
from studiowatch.ui.help_menu import add_help
from studiowatch.ui.records_menu import RecordsDeeds, add_records, add_saving

_REMINDERS = (
    (mark("Remind me in &10 min"), "Ctrl+R"),
    (mark("Remind me in &30 min"), "Ctrl+Shift+R"),
    (mark("Not until the coat is &dry"), "Ctrl+Alt+R"),
)
UNDO, REDO = mark("&Undo"), mark("Do a&gain")


@dataclass(frozen=True, slots=True, kw_only=True)
class MenuDeeds:
    """What the entries do."""

    register: Callable[[], object]
    lay: Callable[[], object]
    test: Callable[[], object]
    read: Callable[[], object]
    intend: Callable[[], object]
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
    book: Callable[[], object]
    plan: Callable[[], object]
    what_if: Callable[[], object]
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
        """Name what undo and redo would do, and offer only what there is to do."""
        for action, word, words in ((self.undo, UNDO, view.undo), (self.redo, REDO, view.redo)):
            text = f"{say(word)}: {words.replace('&', '&&')}" if words else say(word)
            if action.text() != text:
                action.setText(text)
            action.setEnabled(bool(words))


def add_menus(
    window: QMainWindow, deeds: MenuDeeds, spans: Mapping[str, str], *, starts_at_login: bool = False
) -> MenuActions:
    """Fill the window's menu bar, and return the entries that change; `spans` names each span of the history."""
    bar = window.menuBar()
    bar.setAccessibleName(say("Menus"))
    rack = _rack_menu(bar, deeds, starts_at_login=starts_at_login)
    edit = bar.addMenu(say("&Edit"))
    undo = edit.addAction(say(UNDO), deeds.undo)
    undo.setShortcut(QKeySequence("Ctrl+Z"))
    redo = edit.addAction(say(REDO), deeds.redo)
    redo.setShortcuts([QKeySequence("Ctrl+Shift+Z"), QKeySequence("Ctrl+Y")])
    warnings = _warnings_menu(bar, deeds)
    view, night, contrast = _view_menu(bar, deeds)
    history = bar.addMenu(say("&History"))
    for index, (span, words) in enumerate(spans.items(), start=1):
        history.addAction(say(words), QKeySequence(f"Ctrl+{index}"), partial(deeds.span, span))
    add_saving(history, deeds.records)
    records = add_records(bar, deeds.records)
    shown = add_help(bar, deeds.example, deeds.book)
    for menu in (rack, edit, warnings, view, history, records, shown):
        window.addActions(menu.actions())  # so that their keys work while the menu bar is away
    actions = MenuActions(night=night, contrast=contrast, undo=undo, redo=redo)
    actions.show_undo(UndoView())
    return actions


def _view_menu(bar: QMenuBar, deeds: MenuDeeds) -> tuple[QMenu, QAction, QAction]:
    view = bar.addMenu(say("&View"))
    night = view.addAction(say("&Night colours"))
    night.setCheckable(True)
    night.setShortcut(QKeySequence("Ctrl+D"))
    night.toggled.connect(deeds.night)
    contrast = view.addAction(say("High &contrast"))
    contrast.setCheckable(True)
    contrast.setShortcut(QKeySequence("Ctrl+Shift+C"))
    contrast.toggled.connect(deeds.contrast)
    view.addSeparator()
    larger = view.addAction(say("&Larger text"))
    larger.setShortcuts([QKeySequence("Ctrl++"), QKeySequence("Ctrl+=")])
    larger.triggered.connect(deeds.larger)
    view.addAction(say("&Smaller text"), QKeySequence("Ctrl+-"), deeds.smaller)
    view.addAction(say("Text at &100 %"), QKeySequence("Ctrl+0"), deeds.plain_size)
    view.addAction(say("&Units and language…"), QKeySequence("Ctrl+Shift+U"), deeds.units)
    view.addSeparator()
    view.addAction(say("&From across the room"), QKeySequence("F11"), deeds.across)
    view.addAction(say("The finishing &plan"), QKeySequence("Ctrl+P"), deeds.plan)
    view.addAction(say("&What if…"), QKeySequence("Ctrl+Shift+W"), deeds.what_if)
    view.addAction(say("The &board"), QKeySequence("Ctrl+B"), deeds.board)
    view.addSeparator()
    view.addAction(say("F&irst steps"), QKeySequence("Ctrl+Shift+F"), deeds.first)
    return view, night, contrast


def _rack_menu(bar: QMenuBar, deeds: MenuDeeds, *, starts_at_login: bool) -> QMenu:
    rack = bar.addMenu(say("&Rack"))
    rack.addAction(say("&Register a piece…"), QKeySequence("Ctrl+N"), deeds.register)
    rack.addAction(say("&Lay a coat…"), QKeySequence("Ctrl+L"), deeds.lay)
    rack.addAction(say("The &mesh cover is set"), QKeySequence("Ctrl+M"), deeds.cover)
    rack.addAction(say("&Touch test or look…"), QKeySequence("Ctrl+T"), deeds.test)
    rack.addAction(say("How did it come &out…"), QKeySequence("Ctrl+O"), deeds.outcome)
    rack.addAction(say("&Why did it cloud?"), QKeySequence("Ctrl+E"), deeds.why)
    rack.addAction(say("Type a read&ing…"), QKeySequence("Ctrl+G"), deeds.read)
    rack.addAction(say("What &you mean to do with the room…"), QKeySequence("Ctrl+I"), deeds.intend)
    rack.addSeparator()
    rack.addAction(say("&Edit the piece…"), QKeySequence("F2"), deeds.edit)
    rack.addAction(say("&Corrections…"), QKeySequence("Ctrl+K"), deeds.correct)
    rack.addAction(say("Finis&hing record…"), QKeySequence("Ctrl+Shift+P"), deeds.finishing)
    rack.addAction(say("Ta&ke off the rack…"), deeds.take_off)
    rack.addSeparator()
    rack.addAction(say("&Find on the rack"), QKeySequence("Ctrl+F"), deeds.find)
    rack.addAction(say("&Archived pieces…"), QKeySequence("Ctrl+Shift+A"), deeds.archive)
    rack.addAction(say("&Data sheets…"), QKeySequence("Ctrl+Shift+D"), deeds.sheets)
    rack.addSeparator()
    login = rack.addAction(say("&Start at login"))
    login.setCheckable(True)
    login.setChecked(starts_at_login)
    login.toggled.connect(deeds.login)
    rack.addAction(say("&Quit"), QKeySequence("Ctrl+Q"), deeds.quit)
    return rack


def _warnings_menu(bar: QMenuBar, deeds: MenuDeeds) -> QMenu:
    warnings = bar.addMenu(say("&Warnings"))
    warnings.addAction(say("&Heard"), QKeySequence("Ctrl+H"), deeds.hear)
    for number, (words, keys) in enumerate(_REMINDERS):
        warnings.addAction(say(words), QKeySequence(keys), partial(deeds.put_off, number))
    warnings.addSeparator()
    warnings.addAction(say("&Quiet hours…"), QKeySequence("Ctrl+U"), deeds.quiet)
    warnings.addAction(say("&Try the sound"), QKeySequence("Ctrl+Shift+S"), deeds.try_sound)
    return warnings
