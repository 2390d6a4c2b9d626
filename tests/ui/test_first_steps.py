"""The first run: shown while there is nothing, by keys alone, left out at any step, taken up again, never twice."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QDialog
from pytestqt.qtbot import QtBot

from studiowatch.service.snapshot import Snapshot
from studiowatch.studio.sentence import OPENING
from studiowatch.ui.app import build_window
from studiowatch.ui.first_deeds import NOT_STARTED
from studiowatch.ui.models.first_steps import DONE, STEPS
from studiowatch.ui.settings import ViewSettings
from studiowatch.ui.window import StudioWindow

from .conftest import KeptSpeaker, KeptTray, StandInPlot, activate
from .scenes import EMPTY, FOUR_CALM, MadeUpHistory, ScriptedClock, ScriptedDesk

pytestmark = pytest.mark.window
Make = Callable[[], StudioWindow]
DEMO = ("studiowatch-here", "demo")


@pytest.fixture
def fresh(desk: ScriptedDesk, clock: ScriptedClock, settings: ViewSettings, qtbot: QtBot) -> Iterator[Make]:
    """Return how a window is made as the program makes it the first time; it may be made again."""
    made: list[StudioWindow] = []

    def make() -> StudioWindow:
        parts = {"settings": settings, "speaker": KeptSpeaker(), "tray": KeptTray(), "make_plot": StandInPlot}
        window = build_window(desk, MadeUpHistory(), clock, demo=DEMO, **parts)
        made.append(window)
        window.show()
        qtbot.waitExposed(window)
        return window

    yield make
    for window in made:
        window.leave()
        window.deleteLater()


def publish(window: StudioWindow, desk: ScriptedDesk, snapshot: Snapshot, qtbot: QtBot) -> None:
    desk.publish(snapshot)
    qtbot.waitUntil(lambda: window.feed.latest is snapshot)


def test_that_an_empty_studio_opens_with_the_first_step_and_says_how_the_board_does(
    fresh: Make, desk: ScriptedDesk, qtbot: QtBot
) -> None:
    window = fresh()
    publish(window, desk, EMPTY, qtbot)
    assert window.first_page.isVisible()
    assert window.first_page.heading.text() == STEPS[0].heading
    qtbot.waitUntil(lambda: "Board on" in window.first_page._state.text())


@pytest.mark.parametrize("snapshot", [FOUR_CALM, replace(EMPTY, sentence=OPENING)], ids=["pieces", "not-read-yet"])
def test_that_nothing_is_asked_where_there_are_records_or_none_were_read(
    fresh: Make, desk: ScriptedDesk, qtbot: QtBot, snapshot: Snapshot
) -> None:
    window = fresh()
    publish(window, desk, snapshot, qtbot)
    assert window.page.isVisible()


def test_that_all_three_steps_go_by_the_return_key_alone(
    fresh: Make, desk: ScriptedDesk, settings: ViewSettings, qtbot: QtBot
) -> None:
    window = fresh()
    activate(window, qtbot)
    publish(window, desk, EMPTY, qtbot)
    seen = []
    for _ in STEPS:
        seen.append(window.first_page.heading.text())
        qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_Space)
    assert seen == [step.heading for step in STEPS]
    assert window.page.isVisible()
    assert settings.first_run_step == DONE


def test_that_they_are_taken_up_where_they_were_left(fresh: Make, desk: ScriptedDesk, qtbot: QtBot) -> None:
    window = fresh()
    publish(window, desk, EMPTY, qtbot)
    window.first_page.next.click()
    qtbot.keyClick(window.first_page, Qt.Key.Key_Escape)
    window.leave()
    again = fresh()
    publish(again, desk, EMPTY, qtbot)
    assert again.first_page.isVisible()
    assert again.first_page.heading.text() == STEPS[1].heading


def test_that_what_was_skipped_is_not_asked_again_but_stays_in_the_menu(
    fresh: Make, desk: ScriptedDesk, qtbot: QtBot
) -> None:
    window = fresh()
    publish(window, desk, EMPTY, qtbot)
    window.first_page.skip.click()
    assert window.page.isVisible()
    window.leave()
    again = fresh()
    publish(again, desk, EMPTY, qtbot)
    assert again.page.isVisible()
    next(one for one in again.actions() if one.text() == "F&irst steps").trigger()
    assert again.first_page.isVisible()


def test_that_a_first_piece_ends_them(fresh: Make, desk: ScriptedDesk, settings: ViewSettings, qtbot: QtBot) -> None:
    window = fresh()
    publish(window, desk, EMPTY, qtbot)
    publish(window, desk, FOUR_CALM, qtbot)
    assert window.page.isVisible()
    assert settings.first_run_step == DONE


@pytest.mark.parametrize("begins", [True, False])
def test_that_the_made_up_studio_opens_beside_hers_and_sends_nothing_to_her_records(
    fresh: Make, desk: ScriptedDesk, qtbot: QtBot, *, begins: bool
) -> None:
    window = fresh()
    publish(window, desk, EMPTY, qtbot)
    asked: list[Sequence[str]] = []
    window.first._start = lambda words: asked.append(words) or begins
    window.first_page.offers[2].click()
    assert asked == [DEMO]
    assert desk.commands == []
    assert window.first_page.isVisible()
    assert ("of its own" in window.foot.words) is begins
    assert (window.foot.words == NOT_STARTED) is not begins


@pytest.mark.parametrize("place", [(step, n) for step, one in enumerate(STEPS) for n in range(len(one.offers))])
def test_that_every_offer_opens_something(
    fresh: Make, desk: ScriptedDesk, qtbot: QtBot, place: tuple[int, int]
) -> None:
    step, number = place
    if STEPS[step].offers[number].deed == "demo":
        pytest.skip("has a test of its own")
    window = fresh()
    publish(window, desk, EMPTY, qtbot)
    window.first_page.begin(step)
    window.first_page.offers[number].click()
    dialogs = [one for one in window.findChildren(QDialog) if one.isVisible()]
    assert window.board.isVisible() if STEPS[step].offers[number].deed == "board" else len(dialogs) == 1
