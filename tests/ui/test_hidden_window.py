"""A window that is away asks for few snapshots, builds and paints nothing; what came is drawn with its return."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import pytest
from PySide6.QtCore import QEvent, QObject
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from studiowatch.service.snapshot import Snapshot
from studiowatch.ui.models.pace import GONE_AFTER_MS, STALLED, STALLED_AFTER_MS
from studiowatch.ui.widgets import page
from studiowatch.ui.window import StudioWindow

from .conftest import KeptTray
from .scenes import FOUR_CALM, FOUR_WARNED, NOW_MS, ScriptedClock, ScriptedDesk

pytestmark = pytest.mark.window
Show = Callable[[Snapshot], StudioWindow]
MODELS = ("room_figures", "sentence_card", "rack_cards", "prompt_rows", "warning_rows")
READINGS = 20
SECOND_MS = 1000


class Paints(QObject):
    """Counts the paint events of the whole program."""

    count = 0

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        self.count += event.type() is QEvent.Type.Paint
        return super().eventFilter(watched, event)


@pytest.fixture
def built(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """Return the names of the page's view models as they are built."""
    names: list[str] = []

    def counted(name: str) -> Callable[..., object]:
        made = getattr(page, name)

        def make(*arguments: object, **named: object) -> object:
            names.append(name)
            return made(*arguments, **named)

        return make

    for name in MODELS:
        monkeypatch.setattr(page, name, counted(name))
    return names


def readings(window: StudioWindow, snapshot: Snapshot) -> Snapshot:
    """Let so many snapshots come, a second apart, and return the last."""
    for _ in range(READINGS):
        snapshot = replace(snapshot, time_ms=snapshot.time_ms + 1000)
        window._parts.desk.publish(snapshot)
        QApplication.processEvents()
    return snapshot


def test_that_a_window_that_is_away_builds_and_paints_nothing(qtbot: QtBot, shown: Show, built: list[str]) -> None:
    window = shown(FOUR_CALM)
    assert set(built) == set(MODELS)
    window.hide()
    QApplication.processEvents()
    built.clear()
    paints = Paints()
    QApplication.instance().installEventFilter(paints)
    readings(window, FOUR_CALM)
    assert (built, paints.count) == ([], 0)
    readings(window, FOUR_WARNED)
    assert (built, paints.count) == ([], 0)
    window.show()
    qtbot.waitUntil(lambda: paints.count > 0)
    assert set(built) == set(MODELS)
    assert window.page.sentence.headline == FOUR_WARNED.sentence.headline


def test_that_it_ticks_each_second_only_while_one_looks_or_a_warning_is_raised(shown: Show) -> None:
    window = shown(FOUR_CALM)
    assert window.feed._seconds.interval() == SECOND_MS
    window.hide()
    QApplication.processEvents()
    assert window.feed._seconds.interval() > SECOND_MS
    readings(window, FOUR_WARNED)
    assert window.feed._seconds.interval() == SECOND_MS
    readings(window, FOUR_CALM)
    assert window.feed._seconds.interval() > SECOND_MS


def test_that_the_watch_is_told_whether_anybody_looks(shown: Show, desk: ScriptedDesk) -> None:
    assert desk.looked[:1] == [False]  # not shown yet
    window = shown(FOUR_CALM)
    assert desk.looked[-1]
    window.hide()
    assert not desk.looked[-1]
    window.show()
    assert desk.looked[-1]


class Elapsed:
    """Stands in for the time since the watch was heard, ms: as it is set, until it begins anew."""

    def __init__(self, ms: int) -> None:
        self.ms = ms

    def restart(self) -> None:
        self.ms = 0

    def elapsed(self) -> int:
        return self.ms


def test_that_a_window_that_comes_back_takes_no_watch_for_stopped_that_spoke_seldom(
    shown: Show, monkeypatch: pytest.MonkeyPatch
) -> None:
    window = shown(FOUR_CALM)
    window.hide()
    seldom = Elapsed(STALLED_AFTER_MS + 1)
    monkeypatch.setattr(window.feed, "_since_heard", seldom)
    window.show()
    QApplication.processEvents()
    assert window.page.sentence.headline == FOUR_CALM.sentence.headline
    seldom.ms = STALLED_AFTER_MS + 1
    window.feed._tick()
    assert window.page.sentence.headline == STALLED.headline


def test_that_the_tray_counts_seconds_while_the_window_is_away(
    shown: Show, clock: ScriptedClock, monkeypatch: pytest.MonkeyPatch
) -> None:
    window = shown(FOUR_CALM)
    window.hide()
    prompt = replace(FOUR_CALM.prompts[0], due_ms=NOW_MS + 45_000, overdue=False)
    said: list[str] = []
    monkeypatch.setattr(window.tray._tray, "show", lambda _, words: said.append(words))
    window._parts.desk.publish(replace(FOUR_CALM, prompts=(prompt,)))
    QApplication.processEvents()
    monkeypatch.setattr(window.feed, "_since_heard", Elapsed(STALLED_AFTER_MS + 1))
    clock.now_ms += 5_000
    window.feed._tick()
    assert ["in 45 s" in said[0], "in 40 s" in said[-1]] == [True, True]


def test_that_a_watch_that_stops_while_the_window_is_away_is_told_once_by_the_tray(
    shown: Show, tray: KeptTray, monkeypatch: pytest.MonkeyPatch
) -> None:
    window = shown(FOUR_CALM)
    tray.exists = True
    window.close()
    told = len(tray.said)
    heard = Elapsed(GONE_AFTER_MS)
    monkeypatch.setattr(window.feed, "_since_heard", heard)
    window.feed._tick()
    window.feed._tick()
    assert len(tray.said) == told  # as seldom as it speaks while nobody looks
    heard.ms = GONE_AFTER_MS + 1
    window.feed._tick()
    assert len(tray.said) == told  # a computer that slept is given one more look
    for _ in range(3):
        window.feed._tick()
    assert tray.said[told:] == [STALLED]
    assert tray.shown[-1][0] == STALLED
    window._parts.desk.publish(FOUR_CALM)
    QApplication.processEvents()
    assert tray.shown[-1][0] == FOUR_CALM.sentence
