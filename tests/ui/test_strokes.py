"""Lines and boxes from an array come out as those drawn one by one."""

from __future__ import annotations

import numpy as np
from PySide6.QtCore import QLineF, QRectF, Qt
from PySide6.QtGui import QColor, QImage, QPainter
from pytestqt.qtbot import QtBot

from studiowatch.ui.widgets.strokes import Rows, draw_boxes, draw_lines


def paper() -> QImage:
    image = QImage(64, 48, QImage.Format.Format_RGB32)
    image.fill(QColor("white"))
    return image


def rows(count: int) -> Rows:
    return np.random.default_rng(3).uniform(2.0, 40.0, (count, 4))


def test_that_lines_from_an_array_are_those_drawn_one_by_one(qtbot: QtBot) -> None:
    del qtbot
    at_once, singly = paper(), paper()
    with QPainter(at_once) as painter:
        draw_lines(painter, rows(30))
    with QPainter(singly) as painter:
        for row in rows(30).tolist():
            painter.drawLine(QLineF(*row))
    assert at_once == singly
    assert at_once != paper()


def test_that_boxes_from_an_array_are_those_drawn_one_by_one(qtbot: QtBot) -> None:
    del qtbot
    at_once, singly = paper(), paper()
    for image, whole in ((at_once, True), (singly, False)):
        with QPainter(image) as painter:
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(QColor("red"))
            if whole:
                draw_boxes(painter, rows(12)[::2])
            else:
                for row in rows(12)[::2].tolist():
                    painter.drawRect(QRectF(*row))
    assert at_once == singly
    assert at_once != paper()


def test_that_no_rows_draw_nothing(qtbot: QtBot) -> None:
    del qtbot
    image = paper()
    with QPainter(image) as painter:
        draw_lines(painter, np.empty((0, 4)))
        draw_boxes(painter, np.empty((0, 4)))
    assert image == paper()
