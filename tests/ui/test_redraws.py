"""What is made and painted again with each reading: only what would look otherwise."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import pytest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from studiowatch.coats.stages import Surface
from studiowatch.service.piece_view import PieceView
from studiowatch.service.snapshot import Snapshot
from studiowatch.ui.models.figures import room_figures
from studiowatch.ui.models.film import Base, Layer, Section
from studiowatch.ui.models.pace import CARDS_REDRAW_MS, ROWS_REDRAW_MS
from studiowatch.ui.widgets import page
from studiowatch.ui.widgets.film_section import FilmSection
from studiowatch.ui.window import StudioWindow

from . import counting
from .scenes import FOUR_CALM

pytestmark = pytest.mark.window
Show = Callable[[Snapshot], StudioWindow]
MINUTE_S = 60
FULL_UM = 260.0


def counted(monkeypatch: pytest.MonkeyPatch, name: str) -> list[Snapshot]:
    """Return the snapshots of which the page makes the view model of that name."""
    made, of = getattr(page, name), []

    def make(snapshot: Snapshot, *arguments: object, **named: object) -> object:
        of.append(snapshot)
        return made(snapshot, *arguments, **named)

    monkeypatch.setattr(page, name, make)
    return of


def test_that_cards_and_prompts_are_made_anew_only_as_often_as_they_may_say_something_else(
    shown: Show, monkeypatch: pytest.MonkeyPatch
) -> None:
    calm = replace(FOUR_CALM, prompts=tuple(one for one in FOUR_CALM.prompts if one.overdue))
    assert calm.prompts
    window = shown(calm)
    cards, rows = counted(monkeypatch, "rack_cards"), counted(monkeypatch, "prompt_rows")
    for second in range(1, MINUTE_S + 1):
        window.page.show_snapshot(replace(calm, time_ms=calm.time_ms + second * 1000), {})
    assert len(cards) in range(1, MINUTE_S * 1000 // CARDS_REDRAW_MS + 2)  # and once for the other sheets
    assert len(rows) in range(1, MINUTE_S * 1000 // ROWS_REDRAW_MS + 1)


def section(thickness_um: float) -> Section:
    return Section(
        layers=(
            Layer(label="canvas", base=Base.SUPPORT, surface=Surface.DRY, thickness_um=None),
            Layer(label="gloss", base=Base.FILM, surface=Surface.WET, thickness_um=thickness_um),
        )
    )


def test_that_a_film_is_painted_again_once_it_is_a_pixel_thinner(qtbot: QtBot) -> None:
    film = FilmSection()
    qtbot.addWidget(film)
    film.resize(210, film.sizeHint().height())
    film.set_section(section(100.0), FULL_UM)
    with qtbot.waitExposed(film):
        film.show()
    QApplication.processEvents()
    paints = counting.paints(film)
    um_per_px = FULL_UM / film.height()
    for step in range(1, 11):
        film.set_section(section(100.0 - step * um_per_px / 100), FULL_UM)
        QApplication.processEvents()
    assert paints.count <= 1  # where the edge stands, a tenth of a pixel may be the next one
    film.set_section(section(100.0 - 3 * um_per_px), FULL_UM)
    qtbot.waitUntil(lambda: paints.count >= 1)
    painted = paints.count
    film.set_section(replace(section(100.0 - 3 * um_per_px), covered=True), FULL_UM)
    qtbot.waitUntil(lambda: paints.count == painted + 1)


def test_that_a_film_that_thins_by_less_than_a_pixel_at_a_time_is_painted_all_the_same(qtbot: QtBot) -> None:
    film = FilmSection()
    qtbot.addWidget(film)
    film.resize(210, film.sizeHint().height())
    film.set_section(section(100.0), FULL_UM)
    with qtbot.waitExposed(film):
        film.show()
    QApplication.processEvents()
    paints = counting.paints(film)
    for step in range(1, 101):
        film.set_section(section(100.0 - step * FULL_UM / film.height() / 10), FULL_UM)
        QApplication.processEvents()
    assert 9 <= paints.count <= 22  # ten pixels thinner, its upper edge and the edge of what lies over it


def settle(window: StudioWindow, qtbot: QtBot) -> None:
    """Wait until the history is in its place, which comes after the first frame, and nothing is left to lay out."""
    qtbot.waitUntil(lambda: window.history.plot is not None)
    layouts = counting.layouts(window.page._inside)

    def is_calm() -> bool:
        before = layouts.count
        QApplication.processEvents()
        return layouts.count == before

    qtbot.waitUntil(is_calm)


def test_that_a_reading_with_other_figures_lays_nothing_out_anew(shown: Show, qtbot: QtBot) -> None:
    window = shown(FOUR_CALM)
    settle(window, qtbot)
    layouts = counting.layouts(window.page._inside)
    for second in range(1, 11):
        room = replace(FOUR_CALM.room, temperature_C=20.0 + second / 10, humidity_pct=50.0 + second)
        window.page.band.set_figures(room_figures(replace(FOUR_CALM, room=room)))
        QApplication.processEvents()
    assert layouts.count == 0


def dried(piece: PieceView, by_um: float) -> PieceView:
    return replace(piece, coats=tuple(replace(coat, dry_um=coat.dry_um - by_um) for coat in piece.coats))


def test_that_twelve_dense_cards_stay_where_they_are_while_their_films_dry(shown: Show, qtbot: QtBot) -> None:
    pieces = tuple(replace(FOUR_CALM.pieces[at % 4], key=f"piece {at}") for at in range(12))
    many = replace(FOUR_CALM, pieces=pieces)
    window = shown(many)
    window.page.show_snapshot(many, {})
    settle(window, qtbot)
    layouts = counting.layouts(window.page.rack._column)
    for step in range(1, 6):
        window.page.show_snapshot(replace(many, pieces=tuple(dried(one, step / 1000) for one in pieces)), {})
        QApplication.processEvents()
    assert layouts.count == 0
