"""Invented sheets that tests of the film in several rooms share, and the option for a hard life of the file."""

from __future__ import annotations

import os
import sys
import time
from collections.abc import Iterator

import pytest
from hypothesis import settings
from pytestqt.qtbot import QtBot

from studiowatch.coats.data_sheet import DataSheet, Kind, Sheen
from studiowatch.speech.units import METRIC, choose
from studiowatch.speech.words import speak_by


def pytest_addoption(parser: pytest.Parser) -> None:
    parser.addoption(
        "--hard-life",
        action="store_true",
        help="kill, tear and fill the file hundreds of times; review all coats of a known cause",
    )


os.environ["STUDIOWATCH_LANGUAGE"] = "en"  # for what tests start as a process of its own


PATIENCE_MS = 60_000  # ms that a window is waited for: a busy machine is no fault of it


def pytest_configure() -> None:
    """Give this worker the screen that was opened for it, and patience; a run without workers keeps the first."""
    for wait in (QtBot.waitUntil, QtBot.waitSignal, QtBot.waitExposed, QtBot.waitActive):
        wait.__kwdefaults__ = {**(wait.__kwdefaults__ or {}), "timeout": PATIENCE_MS}
    screens = os.environ.get("STUDIOWATCH_TEST_SCREENS", "").split()
    number = int(os.environ.get("PYTEST_XDIST_WORKER", "gw0").removeprefix("gw"))
    if screens:
        os.environ["DISPLAY"] = screens[number % len(screens)]


settings.register_profile("untimed", deadline=None)  # a busy machine is no fault of an example
settings.load_profile("untimed")


@pytest.fixture(autouse=True)
def plain_english() -> Iterator[None]:
    """Have each test begin in English and metric, whatever the one before it chose."""
    yield
    speak_by(None)
    choose(METRIC)


@pytest.fixture(scope="module", autouse=True)
def plain_looks() -> Iterator[None]:
    """Have each file of tests begin with Qt's own looks, whatever text size or night the one before it ended in."""
    yield
    widgets = sys.modules.get("PySide6.QtWidgets")
    if widgets is not None and widgets.QApplication.instance() is not None:
        widgets.QApplication.instance().setStyleSheet("")
        widgets.QApplication.setPalette(widgets.QApplication.style().standardPalette())


@pytest.fixture
def often(request: pytest.FixtureRequest) -> bool:
    """Tell whether what takes minutes is to be done in full."""
    return bool(request.config.getoption("--hard-life"))


@pytest.fixture
def berlin(monkeypatch: pytest.MonkeyPatch) -> Iterator[None]:
    """Have the computer's clock go by the time of Berlin, which is set forward and back."""
    monkeypatch.setenv("TZ", "Europe/Berlin")
    time.tzset()
    yield
    monkeypatch.undo()
    time.tzset()


@pytest.fixture(scope="session")
def gloss() -> DataSheet:
    """Return an invented water-borne gloss varnish."""
    return DataSheet(
        name="gloss",
        title="Gloss",
        kind=Kind.WATERBORNE,
        sheen=Sheen.GLOSS,
        volume_solids=0.36,
        density_kg_m3=1030.0,
        wet_um=90.0,
        dry_um=32.4,
        touch_dry_min=40.0,
        clear_h=2.0,
        recoat_h=5.0,
        cure_days=10.0,
        mfft_C=10.0,
    )


@pytest.fixture(scope="session")
def paint_sheet() -> DataSheet:
    """Return an invented acrylic paint, laid thick."""
    return DataSheet(
        name="paint",
        title="Paint",
        kind=Kind.PAINT,
        volume_solids=0.4,
        density_kg_m3=1200.0,
        wet_um=500.0,
        dry_um=200.0,
        touch_dry_min=90.0,
        recoat_h=20.0,
        cure_days=20.0,
    )
