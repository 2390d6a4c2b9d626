"""Twenty pieces at once: found, kept in view, dense; and the archive, from which a piece comes back."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from studiowatch.service.commands import MovePiece
from studiowatch.service.correction_commands import RestorePiece
from studiowatch.service.piece_view import ArchivedView
from studiowatch.ui.models.archive import NONE_FOUND, NONE_THERE
from studiowatch.ui.models.finding import found_in_archive, found_on_rack, is_met
from studiowatch.ui.widgets.piece_card import PieceCardView

from .conftest import Show, activate
from .scenes import FOUR_CALM, NOW_MS, TWENTY, ScriptedDesk

pytestmark = pytest.mark.window


def gone(key: str, title: str, **changes: object) -> ArchivedView:
    plain = ArchivedView(
        key=key,
        title=title,
        width_cm=40,
        height_cm=30,
        support="canvas",
        notes="",
        due=None,
        sheets=("Gloss varnish",),
        last_ms=NOW_MS - 86_400_000,
    )
    return replace(plain, **changes)


ARCHIVE = replace(
    FOUR_CALM,
    archived=(
        gone("a", "Gate in March", notes="for the stairs"),
        gone("b", "Salt Road", support="raw panel", sheets=("Matt varnish",)),
        gone("c", "Tide Tables", last_ms=None),
    ),
)


@pytest.mark.parametrize(
    ("asked", "keys"),
    [
        ("", "abc"),
        ("GATE", "a"),
        ("stairs march", "a"),
        ("panel", "b"),
        ("matt", "b"),
        ("gloss", "ac"),
        ("gloss salt", ""),
    ],
)
def test_that_each_word_is_looked_for_in_title_support_notes_and_sheets(asked: str, keys: str) -> None:
    assert [piece.key for piece in found_in_archive(ARCHIVE, asked)] == list(keys)


def test_that_a_piece_on_the_rack_is_found_by_its_coats() -> None:
    assert found_on_rack(FOUR_CALM, "satin orchard") == {"orchard"}
    assert is_met("  ", ())


def test_that_an_archived_piece_is_found_shown_and_put_back(shown: Show, desk: ScriptedDesk) -> None:
    window = shown(ARCHIVE)
    archive = window.deeds.records.show_archive()
    assert archive is not None
    assert archive.list.count() == 3
    archive.search.setText("salt")
    assert archive.list.count() == 1
    assert "raw panel" in archive._words.text()
    archive.back.click()
    assert desk.commands == [RestorePiece(piece_key="b")]
    archive.search.setText("no such")
    assert archive._none.text() == NONE_FOUND
    assert not archive.back.isEnabled()


def test_that_an_empty_archive_says_what_comes_there(shown: Show) -> None:
    archive = shown(FOUR_CALM).deeds.records.show_archive()
    assert archive is not None
    assert archive._none.text() == NONE_THERE


def test_that_ctrl_f_finds_on_the_rack_and_escape_shows_all_again(shown: Show, qtbot: QtBot) -> None:
    window = shown(TWENTY)
    activate(window, qtbot)
    qtbot.keyClick(window, Qt.Key.Key_F, Qt.KeyboardModifier.ControlModifier)
    finder = window.page.finder
    assert finder.isVisible()
    finder.field.setText("blue")
    assert finder.told == "5 of 20"
    assert len(window.page.rack._views) == 5
    qtbot.keyClick(finder, Qt.Key.Key_Escape)
    assert not finder.isVisible()
    assert len(window.page.rack._views) == 20


@pytest.mark.parametrize("page", ["show_board", "show_plan", "show_what_if", "show_why", "show_first", "show_across"])
def test_that_finding_goes_to_the_rack_from_any_page(shown: Show, qtbot: QtBot, page: str) -> None:
    window = shown(TWENTY)
    activate(window, qtbot)
    getattr(window.pages, page)()
    action = next(action for action in window.actions() if action.shortcut().toString() == "Ctrl+F")
    action.trigger()
    assert window.page.isVisible()
    assert window.page.finder.field.isVisible()
    assert window.menuBar().isVisible()


def test_that_what_was_found_is_not_reordered(shown: Show, desk: ScriptedDesk) -> None:
    window = shown(TWENTY)
    window.page.finder.begin()
    window.page.finder.field.setText("blue")
    window.page.rack._move(window.page.rack._views[0].key, 1)
    window.page.finder.leave()
    window.page.rack._move(window.page.rack._views[0].key, 1)
    assert desk.commands == [MovePiece(piece_key=TWENTY.pieces[0].key, place=1)]


def test_that_twenty_cards_are_short_but_the_chosen_one(shown: Show, qtbot: QtBot) -> None:
    rack = shown(TWENTY).page.rack
    qtbot.waitUntil(lambda: rack._views[5].height() < rack._views[0].height())
    assert [view.is_short for view in rack._views] == [False] + [True] * 19
    rack.choose(rack._views[7].key)
    assert [view.is_short for view in rack._views].index(False) == 7


def test_that_the_chosen_piece_stays_in_view_when_it_is_moved(shown: Show, desk: ScriptedDesk, qtbot: QtBot) -> None:
    window = shown(TWENTY)
    rack = window.page.rack
    first = TWENTY.pieces[0]
    moved = replace(TWENTY, pieces=(*TWENTY.pieces[1:], first))
    desk.publish(moved)

    def in_view(view: PieceCardView) -> bool:
        top = view.mapTo(rack.viewport(), view.rect().topLeft()).y()
        return 0 <= top < rack.viewport().height()

    qtbot.waitUntil(lambda: rack._views[-1].key == first.key and in_view(rack._views[-1]))
