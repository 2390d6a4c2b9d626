"""The drawn section carries data: its heights are measured in the picture, its patterns told apart without colour."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from PySide6.QtCore import QPoint
from PySide6.QtGui import QColor, QFont, QFontMetrics, QImage, QRegion
from PySide6.QtWidgets import QLabel, QWidget
from pytestqt.qtbot import QtBot

from studiowatch.coats.stages import Surface
from studiowatch.ui.models.film import Base, Layer, Section
from studiowatch.ui.style import Style
from studiowatch.ui.theme import LIGHT, NIGHT, Theme
from studiowatch.ui.widgets.film_section import FilmSection, fitting
from studiowatch.ui.widgets.piece_card import PieceCardView

from .conftest import Show
from .scenes import FOUR_WARNED

pytestmark = pytest.mark.window
FULL_UM = 300.0
SUPPORT = Layer(label="panel", base=Base.SUPPORT, surface=Surface.DRY, thickness_um=None)
PAINT = Layer(label="paint", base=Base.PAINT, surface=Surface.DRY, thickness_um=100.0)
COAT = Layer(label="gloss", base=Base.FILM, surface=Surface.DRY, thickness_um=100.0)


def drawn(qtbot: QtBot, section: Section, theme: Theme = LIGHT) -> np.ndarray:
    """Return the picture as (height, width, 3) values from 0 to 255."""
    widget = FilmSection()
    qtbot.addWidget(widget)
    widget.set_style(Style(theme=theme))
    widget.set_section(section, FULL_UM)
    widget.resize(210, 112)
    image = QImage(widget.size(), QImage.Format.Format_RGB888)
    image.fill(QColor(theme.card))
    widget.render(image, QPoint(), QRegion(), QWidget.RenderFlag.DrawChildren)
    rows = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), image.bytesPerLine())
    return rows[:, : image.width() * 3].reshape(image.height(), image.width(), 3).astype(int)


def near(picture: np.ndarray, colour: str) -> np.ndarray:
    wanted = QColor(colour)
    return np.abs(picture - [wanted.red(), wanted.green(), wanted.blue()]).sum(axis=2) < 12


def coat_part(qtbot: QtBot, **changed: object) -> np.ndarray:
    """Return the middle of the coat's box, without its edges."""
    picture = drawn(qtbot, Section(layers=(SUPPORT, PAINT, replace(COAT, **changed))))
    paint_rows = np.flatnonzero(near(picture, LIGHT.paint)[:, 40])
    top = paint_rows[0] - 26
    return picture[top : paint_rows[0] - 4, 20:75]


@pytest.mark.usefixtures("qapp")
def test_that_a_state_is_told_whole_or_not_at_all() -> None:
    metrics, milky = QFontMetrics(QFont()), replace(COAT, milky=True, surface=Surface.WET)
    whole_px, name_px = (metrics.horizontalAdvance(words) for words in ("gloss, milky", "gloss"))
    assert fitting(metrics, milky, whole_px) == "gloss, milky"
    assert fitting(metrics, milky, whole_px - 1) == "gloss"
    assert fitting(metrics, milky, name_px - 1).endswith("…")


def test_that_twice_the_thickness_is_twice_the_height(qtbot: QtBot) -> None:
    heights = []
    for thickness_um in (60.0, 120.0):
        layers = (SUPPORT, replace(PAINT, thickness_um=thickness_um))
        heights.append(near(drawn(qtbot, Section(layers=layers)), LIGHT.paint)[:, 40].sum())
    assert heights[1] == pytest.approx(2 * heights[0], abs=3)  # edges of one pixel on either side, twice


def test_that_wet_tacky_dry_and_planned_differ_without_colour(qtbot: QtBot) -> None:
    grey = {
        surface: coat_part(qtbot, surface=surface).mean(axis=2)
        for surface in (Surface.WET, Surface.TACKY, Surface.DRY, None)
    }
    marks = {surface: one < one.mean() for surface, one in grey.items() if surface is not None}
    assert grey[None].std() < 1  # planned is empty: only its dashed edge is drawn
    assert all(one.std() > 3 for surface, one in grey.items() if surface is not None)
    kinds = list(marks)
    for index, one in enumerate(kinds):
        for other in kinds[index + 1 :]:
            assert (marks[one] != marks[other]).mean() > 0.1


def test_that_milkiness_is_a_white_veil(qtbot: QtBot) -> None:
    clear = coat_part(qtbot, surface=Surface.WET)
    milky = coat_part(qtbot, surface=Surface.WET, milky=True)
    assert milky.mean() > clear.mean() + 20


def test_that_night_draws_on_the_dark(qtbot: QtBot) -> None:
    picture = drawn(qtbot, Section(layers=(SUPPORT, PAINT, COAT)), NIGHT)
    assert near(picture, NIGHT.paint).any()
    assert near(picture, NIGHT.card).mean() > 0.3


def test_that_the_dots_of_a_capital_letter_are_not_cut(shown: Show) -> None:
    view = shown(FOUR_WARNED).page.rack.findChildren(PieceCardView)[0]
    step = view._step
    step.setText("Ü")
    step.resize(60, step.heightForWidth(60))
    free = QLabel("Ü")
    free.setFont(step.font())
    free.setMargin(20)
    free.resize(80, 80)
    assert ink(step) == ink(free) > 0


def ink(label: QLabel) -> int:
    """Return how many rows of the picture of `label` have ink."""
    image = QImage(label.size(), QImage.Format.Format_Grayscale8)
    image.fill(255)
    label.render(image, QPoint(), QRegion(), QWidget.RenderFlag.DrawChildren)
    rows = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), image.bytesPerLine())
    return int((rows[:, : image.width()].min(axis=1) < 200).sum())
