"""A warning's words are in sight wherever she is: where the page in front does not tell them, the foot does."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from pytestqt.qtbot import QtBot

from studiowatch.ui.window import StudioWindow

from .conftest import Show
from .scenes import FOUR_CALM, FOUR_WARNED

SAID = "Air is moving over two wet coats"
BELOW = ("why", "first")  # pages that do not tell it themselves


def told_below(window: StudioWindow) -> str:
    line = window.foot.warning
    return line.headline.text() if line.isVisibleTo(window) else ""


@pytest.mark.parametrize("page", BELOW)
def test_that_a_page_without_the_sentence_has_it_in_the_foot(shown: Show, page: str) -> None:
    window = shown(FOUR_WARNED)
    assert told_below(window) == ""
    turn: dict[str, Callable[[], None]] = {"why": window.pages.show_why, "first": window.pages.show_first}
    turn[page]()
    assert told_below(window) == SAID
    shown(FOUR_CALM)
    assert told_below(window) == ""
    shown(FOUR_WARNED)
    assert told_below(window) == SAID
    window.pages.show_rack()
    assert told_below(window) == ""


@pytest.mark.parametrize("page", ["board", "plan", "what_if"])
def test_that_a_page_that_tells_it_says_it_once(shown: Show, page: str) -> None:
    window = shown(FOUR_WARNED)
    getattr(window.pages, f"show_{page}")()
    assert getattr(window, page).warning.headline.text() == SAID
    assert told_below(window) == ""


def test_that_a_rack_that_is_scrolled_past_its_sentence_has_it_in_the_foot(shown: Show, qtbot: QtBot) -> None:
    window = shown(FOUR_WARNED)
    window.dressing.set_text_pct(200)
    window.resize(1000, 700)
    bar = window.page.verticalScrollBar()
    qtbot.waitUntil(lambda: bar.maximum() > window.page.sentence.height())
    assert told_below(window) == ""
    bar.setValue(bar.maximum())
    assert told_below(window) == SAID
    shown(FOUR_CALM)
    assert told_below(window) == ""
    shown(FOUR_WARNED)
    bar.setValue(0)
    assert told_below(window) == ""
