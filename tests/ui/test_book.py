"""The studio book: every page there in each language, every link and picture in it, opened beside the window."""

from __future__ import annotations

import re
from html.parser import HTMLParser
from pathlib import Path

import pytest
from PySide6.QtCore import QUrl
from PySide6.QtGui import QAction
from pytestqt.qtbot import QtBot

from studiowatch.room.limits import AIR_SPEED, DEW_MARGIN, HUMIDITY
from studiowatch.ui.widgets.book import Book, page_of
from studiowatch.ui.window import StudioWindow

ROOT = Path(__file__).resolve().parents[2]
BOOKS = ROOT / "resources" / "help"
PAGES = sorted(path for path in BOOKS.glob("*/*.html"))


class Named(HTMLParser):
    """Collects what a page links to and shows, and which of its pictures have words."""

    def __init__(self) -> None:
        super().__init__()
        self.targets: list[str] = []
        self.wordless: list[str] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        named = dict(attrs)
        self.targets += [value for key in ("href", "src") if (value := named.get(key))]
        if tag == "img" and not named.get("alt"):
            self.wordless.append(str(named.get("src")))


@pytest.mark.parametrize("page", PAGES, ids=[f"{page.parent.name}/{page.name}" for page in PAGES])
def test_that_what_a_page_points_at_is_there(page: Path) -> None:
    named = Named()
    named.feed(page.read_text(encoding="utf-8"))
    assert [target for target in named.targets if not (page.parent / target).is_file()] == []
    assert named.wordless == []


def test_that_each_language_has_every_page_and_the_contents_name_them() -> None:
    english = {page.name for page in (BOOKS / "en").glob("*.html")}
    for book in BOOKS.iterdir():
        assert {page.name for page in book.glob("*.html")} == english
        named = Named()
        named.feed((book / "index.html").read_text(encoding="utf-8"))
        assert {*named.targets, "index.html"} == english


def test_that_the_limits_in_the_book_are_those_of_the_watch() -> None:
    text = re.sub(r"\s+", " ", (BOOKS / "en" / "warnings.html").read_text(encoding="utf-8"))
    assert f"{AIR_SPEED.caution:g} m/s care, {AIR_SPEED.act:g} m/s act" in text
    assert f"{HUMIDITY.caution:g} % care, {HUMIDITY.act:g} % act" in text
    assert f"{DEW_MARGIN.caution:g} K care, {DEW_MARGIN.act:g} K act" in text


def test_that_a_language_without_a_book_reads_the_english_one() -> None:
    assert page_of("eo", "start.html") == page_of("en", "start.html")


@pytest.mark.window
def test_that_f1_opens_it_beside_the_window_and_its_pages_turn(window: StudioWindow, qtbot: QtBot) -> None:
    (open_it,) = (action for action in window.findChildren(QAction) if action.shortcut().toString() == "F1")
    open_it.trigger()
    (book,) = window.findChildren(Book)
    qtbot.addWidget(book)
    assert not book.isModal()
    assert "The studio book" in book.pages.toPlainText()
    book.pages.setSource(QUrl.fromLocalFile(str(page_of("en", "ranges.html"))))
    assert "eight of ten" in book.pages.toPlainText()
    book.back.click()
    assert "The studio book" in book.pages.toPlainText()
