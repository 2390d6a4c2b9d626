"""The finishing record on paper: A4 or US Letter."""

from __future__ import annotations

from html import escape
from pathlib import Path

from PySide6.QtCore import QSizeF, QUrl
from PySide6.QtGui import QImage, QTextCursor, QTextDocument, QTextFormat

from studiowatch.service.record_page import (
    FILM_HEIGHT,
    ROOM_HEIGHT,
    WIDTH,
    body,
    film_drawing,
    headings,
    page_title,
    room_drawing,
)
from studiowatch.studio.finishing_record import FinishingRecord
from studiowatch.ui.print.drawing import picture_of
from studiowatch.ui.print.paper import MARGIN, new_document, page_pictures, print_document

PHOTO_HEIGHT = 130.0  # pt, at most


def write_pdf(record: FinishingRecord, path: Path, photo: bytes, paper: str) -> None:
    """Write the record; `photo` is a JPEG or empty, `paper` one of `paper.PAPERS`. Raises OSError."""
    print_document(lambda points: _document(record, photo, points), path, page_title(record), paper)


def record_pictures(record: FinishingRecord, photo: bytes, paper: str) -> list[QImage]:
    """Return the pages that `write_pdf` would print, as pictures."""
    return page_pictures(lambda points: _document(record, photo, points), page_title(record), paper)


def _document(record: FinishingRecord, photo: bytes, points: QSizeF) -> QTextDocument:
    document = new_document()
    wide = points.width() - 2 * MARGIN
    film = _drawn(document, "film", film_drawing(record), (wide, wide * FILM_HEIGHT / WIDTH))
    drawn = room_drawing(record)
    room = _drawn(document, "room", drawn, (wide, wide * ROOM_HEIGHT / WIDTH)) if drawn else ""
    picture = QImage.fromData(photo) if photo else QImage()
    shown = ""
    if not picture.isNull():
        scale = min(PHOTO_HEIGHT / picture.height(), wide / picture.width())
        sides = (picture.width() * scale, picture.height() * scale)
        shown = _placed(document, "photo", picture, sides)
    words = body(record, shown, film, room)  # a heading of Qt's own has a size that no style changes
    document.setHtml(words.replace("<h2>", '<p class="head">').replace("</h2>", "</p>"))
    document.setPageSize(QSizeF(wide, points.height() - 2 * MARGIN))
    _keep_together(document)
    return document


def _keep_together(document: QTextDocument) -> None:
    """Move each heading at the foot of a page to the page of what it heads, and a paragraph that would break whole."""
    layout, tall = document.documentLayout(), document.pageSize().height()
    block = document.begin()
    while block.isValid() and block.next().isValid():
        is_heading = block.text() in headings()
        top, last = (layout.blockBoundingRect(one) for one in (block, block.next() if is_heading else block))
        page, last_page = int(top.top() // tall), int((last.bottom() - 1) // tall)
        if last_page == page + 1 and QTextCursor(block).currentTable() is None:
            form = block.blockFormat()
            form.setPageBreakPolicy(QTextFormat.PageBreakFlag.PageBreak_AlwaysBefore)
            QTextCursor(block).setBlockFormat(form)
        block = block.next()


def _drawn(document: QTextDocument, name: str, svg: str, sides: tuple[float, float]) -> str:
    return _placed(document, name, picture_of(svg), sides)


def _placed(document: QTextDocument, name: str, picture: QImage, sides: tuple[float, float]) -> str:
    document.addResource(QTextDocument.ResourceType.ImageResource.value, QUrl(name), picture)
    return f'<p><img src="{escape(name)}" width="{sides[0]:.0f}" height="{sides[1]:.0f}"></p>'
