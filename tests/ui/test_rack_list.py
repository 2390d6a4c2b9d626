"""Where a dragged card lands. The drag itself belongs to the window system; its events are made here."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

import pytest
from PySide6.QtCore import QEvent, QMimeData, QPoint, QPointF, Qt
from PySide6.QtGui import QDropEvent, QFocusEvent
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from studiowatch.ui.models.rack import rack_cards
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.film_section import SHORTEST, TALLEST
from studiowatch.ui.widgets.piece_card import PIECE_MIME
from studiowatch.ui.widgets.rack_list import RackList

from .scenes import DAY_MS, FOUR_WARNED, NOW_MS, TWELVE

pytestmark = pytest.mark.window


@pytest.fixture
def rack(qtbot: QtBot) -> Iterator[RackList]:
    made = RackList()
    qtbot.addWidget(made)
    made.set_style(Style())
    made.set_cards(rack_cards(FOUR_WARNED))
    made.resize(400, 1000)
    made.show()
    qtbot.waitExposed(made)
    return made


def dropped(rack: RackList, key: str, on: int, *, upper_half: bool) -> list[tuple[str, int]]:
    placed: list[tuple[str, int]] = []
    rack.placed.connect(lambda piece, place: placed.append((piece, place)))
    view = rack._views[on]
    y = view.height() * (0.25 if upper_half else 0.75)
    at = QPointF(view.mapTo(rack.viewport(), QPoint(50, int(y))))
    carried = QMimeData()
    carried.setData(PIECE_MIME, key.encode())
    rack.dropEvent(
        QDropEvent(at, Qt.DropAction.MoveAction, carried, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier)
    )
    return placed


def test_that_a_card_whose_piece_left_the_rack_while_it_was_carried_lands_nowhere(rack: RackList) -> None:
    rack.set_cards(rack_cards(replace(FOUR_WARNED, pieces=FOUR_WARNED.pieces[1:])))
    assert FOUR_WARNED.pieces[0].key == "orchard"
    assert dropped(rack, "orchard", 0, upper_half=True) == []


@pytest.mark.parametrize(
    ("key", "on", "upper_half", "place"),
    [
        ("herons", 0, True, 0),
        ("herons", 1, False, 2),
        ("orchard", 1, False, 1),
        ("orchard", 3, False, 3),
        ("ladder", 3, True, 2),
    ],
)
def test_that_a_card_lands_in_the_gap_it_was_put_down_in(
    rack: RackList, key: str, on: int, place: int, *, upper_half: bool
) -> None:
    assert dropped(rack, key, on, upper_half=upper_half) == [(key, place)]


@pytest.mark.parametrize(("on", "upper_half"), [(1, True), (1, False), (0, False), (2, True)])
def test_that_a_card_put_back_moves_nothing(rack: RackList, on: int, *, upper_half: bool) -> None:
    assert dropped(rack, "ladder", on, upper_half=upper_half) == []


def test_that_a_new_piece_is_chosen_once_it_is_there(rack: RackList) -> None:
    rack.choose_when_there("orchard")
    assert rack.chosen_key == "orchard"
    rack.choose_when_there("new")
    rack.set_cards(rack_cards(FOUR_WARNED))
    assert rack.chosen_key == "orchard"


def test_that_a_focus_that_is_only_given_back_chooses_nothing(rack: RackList) -> None:
    rack.choose("ladder")
    old = rack._views[0]
    old.focusInEvent(QFocusEvent(QEvent.Type.FocusIn, Qt.FocusReason.ActiveWindowFocusReason))
    assert rack.chosen_key == "ladder"
    old.focusInEvent(QFocusEvent(QEvent.Type.FocusIn, Qt.FocusReason.TabFocusReason))
    assert rack.chosen_key == "orchard"


def test_that_a_new_piece_stays_chosen_when_the_cards_move(rack: RackList, qtbot: QtBot) -> None:
    with qtbot.waitActive(rack):
        rack.activateWindow()
    rack._views[0].setFocus()
    rack.choose_when_there("ladder")
    moved = replace(FOUR_WARNED, pieces=(FOUR_WARNED.pieces[1], FOUR_WARNED.pieces[0]))
    rack.set_cards(rack_cards(moved))
    QApplication.processEvents()
    assert rack.chosen_key == "ladder"


def test_that_a_new_piece_is_scrolled_to(rack: RackList, qtbot: QtBot) -> None:
    rack.resize(400, 500)
    rack.choose_when_there(TWELVE.pieces[-1].key)
    rack.set_cards(rack_cards(TWELVE))
    qtbot.waitUntil(lambda: rack.verticalScrollBar().value() > 0)
    last = rack._views[-1]
    assert rack.viewport().rect().intersects(last.rect().translated(last.mapTo(rack.viewport(), QPoint())))


LONG_RANGE = replace(
    FOUR_WARNED,
    pieces=tuple(
        replace(
            piece,
            title="Copper Beech, First Frost and the Gate Left Open All Night",
            next_ms=NOW_MS + 40 * DAY_MS,
            next_p10_ms=NOW_MS + 20 * DAY_MS,
            next_p90_ms=NOW_MS + 40 * DAY_MS,
            width_cm=120.5,
            height_cm=200.25,
        )
        for piece in FOUR_WARNED.pieces
    ),
)


@pytest.mark.parametrize("scale", [1.0, 1.5, 2.0])
def test_that_no_card_is_cut_off_and_all_sections_are_equally_wide(rack: RackList, scale: float) -> None:
    rack.set_style(Style(scale=scale))
    rack.resize(round(398 * scale), 1000)
    rack.set_cards(rack_cards(LONG_RANGE)[:2] + rack_cards(FOUR_WARNED)[2:])
    QApplication.processEvents()
    assert rack.widget().width() == rack.viewport().width()
    assert len({view.section.width() for view in rack._views}) == 1


@pytest.mark.parametrize("height", [300, 1000, 1600])
@pytest.mark.parametrize("scale", [1.0, 2.0])
def test_that_all_sections_are_one_height_so_that_their_scale_is_one(rack: RackList, height: int, scale: float) -> None:
    rack.set_style(Style(scale=scale))
    rack.resize(round(400 * scale), height)
    rack.set_cards(rack_cards(FOUR_WARNED))
    QApplication.processEvents()
    tall = {view.section.height() for view in rack._views}
    assert len(tall) == 1
    assert round(SHORTEST * scale) <= tall.pop() <= round(TALLEST * scale)


def test_that_sections_grow_into_a_tall_rack_and_shrink_back(rack: RackList, qtbot: QtBot) -> None:
    section = rack._views[0].section
    rack.resize(400, 500)
    qtbot.waitUntil(lambda: section.height() == SHORTEST)
    rack.resize(400, 1400)
    qtbot.waitUntil(lambda: section.height() == TALLEST)
    assert rack.verticalScrollBar().maximum() == 0
    rack.resize(400, 500)
    qtbot.waitUntil(lambda: section.height() == SHORTEST)
