"""Preferences outlive the window, and a damaged file does no harm."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import QSettings
from PySide6.QtWidgets import QApplication

from studiowatch.ui.settings import ViewSettings
from studiowatch.ui.theme import CONTRAST, NIGHT

from .conftest import MakeWindow

pytestmark = pytest.mark.window
Reopen = Callable[[], ViewSettings]


@pytest.fixture
def reopen(tmp_path: Path) -> Reopen:
    return lambda: ViewSettings(QSettings(str(tmp_path / "kept.ini"), QSettings.Format.IniFormat))


def test_that_she_finds_the_window_as_she_left_it(reopen: Reopen, make_window: MakeWindow) -> None:
    first = make_window(reopen())
    first.show()
    first.dressing.set_text_pct(150)
    first.menus.night.trigger()
    first.resize(1011, 611)
    first.leave()
    second = make_window(reopen())
    assert (second.dressing.style.scale, second.dressing.style.theme.name) == (1.5, "night")
    assert (second.width(), second.height()) == (1011, 611)
    second.leave()
    QApplication.processEvents()


@pytest.mark.parametrize("kept", ["", "0", "100000", "-100", "large", "\x00", "137"])
def test_that_a_text_size_nobody_chose_counts_as_usual(tmp_path: Path, kept: str) -> None:
    store = QSettings(str(tmp_path / "bad.ini"), QSettings.Format.IniFormat)
    store.setValue("text_pct", kept)
    store.setValue("night", "perhaps")
    store.setValue("geometry", "not a geometry")
    settings = ViewSettings(store)
    assert settings.text_pct == 100
    assert not settings.night
    assert settings.geometry.isEmpty()


def test_that_high_contrast_is_kept_and_night_and_it_take_turns(
    make_window: MakeWindow, settings: ViewSettings
) -> None:
    first = make_window(settings)
    first.menus.night.trigger()
    first.menus.contrast.trigger()
    assert first.dressing.style.theme is CONTRAST
    assert (first.menus.night.isChecked(), first.menus.contrast.isChecked()) == (False, True)
    first.leave()
    second = make_window(settings)
    assert second.dressing.style.theme is CONTRAST
    second.menus.contrast.trigger()
    assert second.dressing.style.theme is NIGHT
    second.menus.contrast.trigger()
    second.menus.night.trigger()
    assert second.dressing.style.theme is NIGHT
    assert not second.menus.contrast.isChecked()
    second.leave()
