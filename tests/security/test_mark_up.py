"""Signs of mark-up in what she types are shown as signs, wherever the window, a box or the desktop shows them."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import fields, is_dataclass, replace
from pathlib import Path
from typing import Any

import pytest
from PySide6.QtCore import QObject, QSettings, Qt
from PySide6.QtGui import QAction, QIcon, QTextDocument
from PySide6.QtGui import Qt as TextOf
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QComboBox,
    QDialog,
    QLabel,
    QSystemTrayIcon,
    QTextEdit,
    QWidget,
)
from pytestqt.qtbot import QtBot

from studiowatch.service.snapshot import Snapshot
from studiowatch.studio.words import Level, Sentence
from studiowatch.ui.app import build_window
from studiowatch.ui.plain import for_the_desktop, plain_box, set_tip
from studiowatch.ui.settings import ViewSettings
from studiowatch.ui.tray import Tray
from studiowatch.ui.widgets.question import question, stop_question
from studiowatch.ui.widgets.text import ElidedLabel
from studiowatch.ui.window import StudioWindow
from tests.ui.conftest import KeptSpeaker, KeptTray, StandInPlot
from tests.ui.laying_scenes import LAYING_SCENES
from tests.ui.plan_scenes import BUSY_PLANNED
from tests.ui.scenes import FOUR_WARNED, SCENES, MadeUpHistory, ScriptedClock, ScriptedDesk
from tests.ui.test_every_widget import DIALOGS, PAGES

HOSTILE = "<img src=x onerror=1><b>&"
_TAG = "<img"
_TITLES = ("Orchard at Low Water", "Blue Ladder", "Lamp in the Fog", "Two Herons, Waiting")
pytestmark = pytest.mark.window


def hostile(thing: Any) -> Any:  # noqa: ANN401 - all that a snapshot is made of
    """Return `thing` with all titles in it, and all that was said of them, as `HOSTILE`; basis and notes too."""
    if isinstance(thing, str) and type(thing) is str:
        for title in _TITLES:
            thing = thing.replace(title, HOSTILE)
        return thing
    if isinstance(thing, tuple) and type(thing) is tuple:
        return tuple(hostile(one) for one in thing)
    if is_dataclass(thing) and not isinstance(thing, type):
        changed = {one.name: hostile(getattr(thing, one.name)) for one in fields(thing) if one.init}
        changed |= {name: HOSTILE for name in ("basis", "notes", "support") if changed.get(name)}
        return replace(thing, **changed)
    return thing


@pytest.fixture
def show(qtbot: QtBot, tmp_path: Path) -> Iterator[Callable[[Snapshot], StudioWindow]]:
    """Open one window, and show hostile snapshots in it."""
    desk = ScriptedDesk()
    window = build_window(
        desk,
        MadeUpHistory(),
        ScriptedClock(),
        settings=ViewSettings(QSettings(str(tmp_path / "window.ini"), QSettings.Format.IniFormat)),
        speaker=KeptSpeaker(),
        tray=KeptTray(),
        make_plot=StandInPlot,
    )
    window.show()
    qtbot.waitExposed(window)

    def publish(snapshot: Snapshot) -> StudioWindow:
        made = hostile(snapshot)
        desk.publish(made)
        qtbot.waitUntil(lambda: window.feed.latest is made)
        window.feed.draw()
        return window

    yield publish
    window.leave()
    window.deleteLater()


def read_as_mark_up(top: QObject) -> Iterator[str]:
    """Yield what below `top` would not be shown as it was typed."""
    for one in (top, *top.findChildren(QObject)):
        for where, words in words_of(one):
            if TextOf.mightBeRichText(words) and _TAG in words:
                yield f"{type(one).__name__} {one.objectName()}, {where}: {words}"
        text = one.text() if isinstance(one, QAbstractButton | QAction) else ""
        if _TAG in text and "&" in text.replace("&&", ""):
            yield f"{type(one).__name__}, its key: {text}"


def words_of(one: QObject) -> Iterator[tuple[str, str]]:
    """Yield the words of an object that Qt looks through for mark-up."""
    if isinstance(one, QWidget | QAction):
        yield "tool tip", one.toolTip()
        yield "help", one.whatsThis()
    if isinstance(one, QLabel) and one.textFormat() is not Qt.TextFormat.PlainText:
        yield "text", one.text()
    if isinstance(one, QTextEdit) and _TAG in one.toHtml():
        yield "document", one.toHtml()
    if isinstance(one, QAbstractItemView | QComboBox):
        model = one.model()
        for row in range(model.rowCount() if model is not None else 0):
            yield "an item's tool tip", str(model.index(row, 0).data(Qt.ItemDataRole.ToolTipRole) or "")


def test_that_the_check_finds_what_qt_would_take_for_mark_up(qtbot: QtBot) -> None:
    parent = QWidget()
    qtbot.addWidget(parent)
    QLabel(HOSTILE, parent)
    QWidget(parent).setToolTip(f"Wet: {HOSTILE}</b>")
    assert len(list(read_as_mark_up(parent))) == 2


@pytest.mark.parametrize("name", [*SCENES, *LAYING_SCENES])
def test_that_no_state_of_the_rack_reads_a_title_as_mark_up(
    show: Callable[[Snapshot], StudioWindow], name: str
) -> None:
    window = show({**SCENES, **LAYING_SCENES}[name])
    assert list(read_as_mark_up(window)) == []


@pytest.mark.parametrize("name", PAGES)
def test_that_no_page_reads_a_title_as_mark_up(show: Callable[[Snapshot], StudioWindow], name: str) -> None:
    window = show(BUSY_PLANNED)
    PAGES[name](window)
    assert list(read_as_mark_up(window)) == []


@pytest.mark.parametrize("name", DIALOGS)
def test_that_no_dialog_reads_a_title_as_mark_up(show: Callable[[Snapshot], StudioWindow], name: str) -> None:
    window = show(FOUR_WARNED)
    DIALOGS[name](window)
    assert [one for one in window.findChildren(QDialog) if one.isVisible()]
    assert list(read_as_mark_up(window)) == []


def test_that_the_menu_of_a_piece_reads_no_title_as_mark_up(show: Callable[[Snapshot], StudioWindow]) -> None:
    menu = show(FOUR_WARNED).deeds.menu_for("orchard")
    assert list(read_as_mark_up(menu)) == []
    menu.deleteLater()


def test_that_questions_show_words_as_they_are(qtbot: QtBot) -> None:
    parent = QWidget()
    qtbot.addWidget(parent)
    boxes = [
        question(parent, f"Delete {HOSTILE}?", f"{HOSTILE} stays.", "Delete it"),
        stop_question(parent, (HOSTILE,)),
        plain_box(parent, HOSTILE),
    ]
    for box in boxes:
        assert list(read_as_mark_up(box)) == []
        assert HOSTILE in box.text() + box.informativeText()


@pytest.mark.parametrize("words", [HOSTILE, f"{HOSTILE}\nand on", "5 < 6 & 7 > 2", "Kiln Light", "<i>"])
def test_that_a_tool_tip_reads_as_its_words(qtbot: QtBot, words: str) -> None:
    shown, elided = QWidget(), ElidedLabel("body")
    qtbot.addWidget(shown)
    qtbot.addWidget(elided)
    set_tip(shown, words)
    elided.setText(words)
    for tip in (shown.toolTip(), elided.toolTip()):
        document = QTextDocument()
        (document.setHtml if TextOf.mightBeRichText(tip) else document.setPlainText)(tip)
        assert document.toPlainText() == words


def test_that_the_desktop_is_given_no_mark_up(monkeypatch: pytest.MonkeyPatch, qtbot: QtBot) -> None:
    del qtbot  # there has to be an application
    said: list[str] = []
    monkeypatch.setattr(QSystemTrayIcon, "isSystemTrayAvailable", lambda: True)
    monkeypatch.setattr(QSystemTrayIcon, "showMessage", lambda _icon, title, text, _mark: said.extend((title, text)))
    monkeypatch.setattr(QSystemTrayIcon, "setToolTip", lambda _icon, text: said.append(text))
    tray = Tray(QIcon())
    sentence = Sentence(level=Level.ACT, headline=f"{HOSTILE} is wet", detail=HOSTILE, advice=HOSTILE)
    tray.show(sentence, HOSTILE)
    tray.say(sentence)
    tray.close()
    assert [words for words in said if "onerror" in words]
    assert not [words for words in said if "<" in words or ">" in words]
    assert for_the_desktop("5 & 6") == "5 & 6"
