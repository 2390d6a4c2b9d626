"""Where nothing stands yet, one sentence says what will stand there and what to do, by a key that is in the menus."""

from __future__ import annotations

import re

import pytest
from pytestqt.qtbot import QtBot

from studiowatch.ui.models.empty import NO_PIECE, NO_PLAN, NO_PROMPT, NO_PROMPT_YET, NO_READING, NO_WARNING
from studiowatch.ui.window import StudioWindow

from .conftest import Show
from .scenes import EMPTY, FOUR_CALM

pytestmark = pytest.mark.window


@pytest.mark.parametrize("words", [NO_PIECE, NO_PLAN, NO_PROMPT_YET, NO_READING, NO_WARNING])
def test_that_the_key_it_names_is_one_of_the_window(shown: Show, words: str) -> None:
    keys = {key.toString() for action in shown(EMPTY).actions() for key in action.shortcuts()}
    named = re.findall(r"Ctrl\+(?:Shift\+)?\w", words)
    assert named
    assert set(named) <= keys


def test_that_prompts_teach_until_a_coat_was_laid(shown: Show, window: StudioWindow, qtbot: QtBot) -> None:
    shown(EMPTY)
    qtbot.waitUntil(lambda: window.page.prompts.empty_words == NO_PROMPT_YET)
    shown(FOUR_CALM)
    qtbot.waitUntil(lambda: window.page.prompts.empty_words == NO_PROMPT)
