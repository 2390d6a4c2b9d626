"""What the window relies on in Qt: a version of the binding that was seen to abort must not come back."""

from __future__ import annotations

import sys

import pytest
from PySide6.QtWidgets import QLabel
from pytestqt.qtbot import QtBot

pytestmark = pytest.mark.window


def test_that_void_calls_do_not_eat_references_to_none(qtbot: QtBot) -> None:
    # PySide6 6.12.0 under Python 3.10 and 3.11 dropped one reference to None on every void call.
    label = QLabel()
    qtbot.addWidget(label)
    before = sys.getrefcount(None)
    for number in range(20_000):
        label.setNum(number)
    assert sys.getrefcount(None) > before - 1000
