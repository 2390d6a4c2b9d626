"""Every widget of the window, its pages and dialogs: named, reached by the keyboard, left by Escape."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QAction
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractScrollArea,
    QApplication,
    QDialog,
    QLabel,
    QMenu,
    QWidget,
)
from pytestqt.qtbot import QtBot

from studiowatch.ui.models.recorded import recorded_lines
from studiowatch.ui.window import StudioWindow

from .conftest import Show, activate
from .scenes import FOUR_WARNED, NOW_MS

pytestmark = pytest.mark.window

PAGES = {
    "rack": lambda window: window.pages.show_rack(),
    "board": lambda window: window.pages.show_board(),
    "plan": lambda window: window.pages.show_plan(),
    "what if": lambda window: window.pages.show_what_if(),
    "why": lambda window: window.pages.show_why(),
    "first steps": lambda window: window.first.show_again(),
}
DIALOGS = {
    "register": lambda window: window.deeds.register_piece(),
    "edit": lambda window: window.deeds.edit_piece("orchard"),
    "lay": lambda window: window.deeds.lay_coat("orchard"),
    "test": lambda window: window.deeds.touch_test("orchard"),
    "reading": lambda window: window.deeds.type_reading(),
    "meant": lambda window: window.deeds.intentions.show(),
    "mean": lambda window: window.deeds.intentions.add(),
    "recorded": lambda window: window.deeds.records.show_recorded("orchard"),
    "outcome": lambda window: window.deeds.records.ask_outcome("orchard"),
    "archive": lambda window: window.deeds.records.show_archive(),
    "sheets": lambda window: window.deeds.sheets.show_shelf(),
    "quiet": lambda window: window.warned.choose_quiet_hours(),
    "take-off": lambda window: window.deeds.take_off("orchard"),
}


def seen(parent: QWidget) -> Iterator[QWidget]:
    """Yield every widget that is shown below `parent`, but what Qt builds inside its own."""
    for one in parent.findChildren(QWidget):
        if one.isVisibleTo(parent) and not one.objectName().startswith("qt_"):
            yield one


def spoken(widget: QWidget) -> str:
    """Return what a screen reader says of `widget`: its name, or the words of a label or button."""
    words = widget.text() if isinstance(widget, QLabel | QAbstractButton) else ""
    return (widget.accessibleName() or words).strip()


def must_be_named(widget: QWidget) -> bool:
    return widget.focusPolicy() != Qt.FocusPolicy.NoFocus or isinstance(widget, QAbstractButton | QAbstractScrollArea)


def opened(window: StudioWindow, name: str) -> QDialog:
    DIALOGS[name](window)
    dialogs = [one for one in window.findChildren(QDialog) if one.isVisible()]
    assert len(dialogs) == 1, name
    return dialogs[0]


@pytest.mark.parametrize("name", DIALOGS)
def test_that_all_of_a_dialog_is_named_and_no_two_actions_alike(shown: Show, name: str) -> None:
    dialog = opened(shown(FOUR_WARNED), name)
    assert spoken(dialog) or dialog.windowTitle()
    unnamed = [repr(one) for one in seen(dialog) if must_be_named(one) and not spoken(one)]
    assert unnamed == []
    actions = Counter(spoken(one) for one in seen(dialog) if isinstance(one, QAbstractButton))
    assert [words for words, times in actions.items() if times > 1] == []


@pytest.mark.parametrize("name", PAGES)
def test_that_all_of_a_page_is_named_and_no_two_actions_alike(shown: Show, name: str) -> None:
    window = shown(FOUR_WARNED)
    PAGES[name](window)
    unnamed = [repr(one) for one in seen(window) if must_be_named(one) and not spoken(one)]
    assert unnamed == []
    actions = Counter(spoken(one) for one in seen(window) if isinstance(one, QAbstractButton))
    assert [words for words, times in actions.items() if times > 1] == []


@pytest.mark.parametrize("name", PAGES)
def test_that_tab_reaches_every_action_of_a_page(shown: Show, qtbot: QtBot, name: str) -> None:
    window = shown(FOUR_WARNED)
    activate(window, qtbot)
    PAGES[name](window)
    window.setFocus()
    wanted = {
        one
        for one in seen(window)
        if isinstance(one, QAbstractButton) and one.isEnabled() and one.isVisible() and not one.visibleRegion().isNull()
    }
    assert wanted
    reached = set(_walk(qtbot, window, len(wanted)))
    missed = [spoken(one) for one in wanted - reached if not _by_arrows(one, reached)]
    assert missed == []


def _by_arrows(one: QAbstractButton, reached: set[QWidget]) -> bool:
    """Tell whether `one` is of a choice that Tab enters: Qt goes on in it with the arrow keys."""
    group = one.group()
    return group is not None and group.exclusive() and not reached.isdisjoint(group.buttons())


def _walk(qtbot: QtBot, window: StudioWindow, least: int) -> Iterator[QWidget]:
    """Press Tab until the focus has come round."""
    for _ in range(4 * least + 60):
        at = QApplication.focusWidget() or window
        yield at
        qtbot.keyClick(at, Qt.Key.Key_Tab)


@pytest.mark.parametrize("name", DIALOGS)
def test_that_escape_leaves_a_dialog(shown: Show, qtbot: QtBot, name: str) -> None:
    dialog = opened(shown(FOUR_WARNED), name)
    qtbot.keyClick(dialog, Qt.Key.Key_Escape)
    assert not dialog.isVisible()


@pytest.mark.parametrize("name", [name for name in PAGES if name != "rack"])
def test_that_escape_leaves_a_page(shown: Show, qtbot: QtBot, name: str) -> None:
    window = shown(FOUR_WARNED)
    activate(window, qtbot)
    PAGES[name](window)
    qtbot.keyClick(QApplication.focusWidget() or window, Qt.Key.Key_Escape)
    qtbot.waitUntil(window.page.isVisible)


def menus(window: StudioWindow) -> list[QMenu]:
    return [action.menu() for action in window.menuBar().actions()]


def mnemonic(action: QAction) -> str:
    plain = action.text().replace("&&", "")
    at = plain.find("&")
    return plain[at + 1].lower() if at >= 0 else ""


def test_that_every_menu_and_entry_has_a_letter_of_its_own(shown: Show) -> None:
    window = shown(FOUR_WARNED)
    for actions in (window.menuBar().actions(), *(menu.actions() for menu in menus(window))):
        letters = [mnemonic(one) for one in actions if not one.isSeparator()]
        assert all(letters), [one.text() for one in actions]
        assert [letter for letter, times in Counter(letters).items() if times > 1] == [], [
            one.text() for one in actions
        ]


def test_that_no_key_does_two_things(shown: Show) -> None:
    window = shown(FOUR_WARNED)
    keys = Counter(key.toString() for one in window.actions() for key in one.shortcuts())
    assert [key for key, times in keys.items() if times > 1] == []


def test_that_the_menu_of_a_piece_has_a_letter_for_each_entry(shown: Show) -> None:
    menu = shown(FOUR_WARNED).deeds.menu_for("orchard")
    letters = [mnemonic(one) for one in menu.actions() if not one.isSeparator()]
    assert all(letters)
    assert len(set(letters)) == len(letters)
    menu.deleteLater()


def test_that_what_was_recorded_is_corrected_by_names_of_its_own(shown: Show) -> None:
    window = shown(FOUR_WARNED)
    lines = recorded_lines(window.deeds.piece("orchard"), NOW_MS)
    dialog = opened(window, "recorded")
    names = [spoken(one) for one in seen(dialog) if isinstance(one, QAbstractButton)]
    assert len([name for name in names if name.startswith("Correct: ")]) == len(lines)
