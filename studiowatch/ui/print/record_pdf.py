"""The finishing record on paper: A4 or US Letter."""

from __future__ import annotations

from html import escape
from pathlib import Path

from PySide6.QtCore import QMarginsF, QRectF, QSizeF, QUrl
from PySide6.QtGui import (
    QAbstractTextDocumentLayout,
    QColor,
    QFont,
    QImage,
    QPageLayout,
    QPageSize,
    QPainter,
    QPalette,
    QPdfWriter,
    QTextCursor,
    QTextDocument,
    QTextFormat,
)

from studiowatch.service.record_page import FILM_HEIGHT, HEADINGS, ROOM_HEIGHT, WIDTH, body, film_drawing, room_drawing
from studiowatch.studio.finishing_record import FinishingRecord
from studiowatch.ui.print.drawing import picture_of

PAPERS = {"a4": QPageSize.PageSizeId.A4, "letter": QPageSize.PageSizeId.Letter}
MARGIN, FOOT = 44.0, 26.0  # pt
PHOTO_HEIGHT = 130.0  # pt, at most
STYLE = """
h1 { font-size: 22px; font-weight: 400; margin-bottom: 0; }
.head { font-size: 10px; font-weight: 600; margin-top: 9px; margin-bottom: 3px; }
p, li, td, th { font-size: 8px; } .facts { color: #6d675e; margin-top: 1px; } .notes { white-space: pre-wrap; }
ul { margin-top: 0; margin-bottom: 0; margin-left: 0; -qt-list-indent: 0; } li { margin-left: 9px; margin-bottom: 2px; }
"""


def write_pdf(record: FinishingRecord, path: Path, photo: bytes, paper: str) -> None:
    """Write the record; `photo` is a JPEG or empty, `paper` one of `PAPERS`."""
    writer = QPdfWriter(str(path))
    writer.setTitle(f"{record.title}: finishing record")
    writer.setCreator("studiowatch")
    writer.setResolution(720)
    size = QPageSize(PAPERS[paper])
    writer.setPageLayout(QPageLayout(size, QPageLayout.Orientation.Portrait, QMarginsF()))
    points = QSizeF(size.sizePoints())
    painter = QPainter()
    if not painter.begin(writer):
        raise OSError(0, "it cannot be written", str(path))
    try:
        painter.scale(10.0, 10.0)
        paint_record(painter, writer, _document(record, photo, points), record.title, points)
    finally:
        painter.end()


def paint_record(painter: QPainter, writer: QPdfWriter, document: QTextDocument, title: str, points: QSizeF) -> None:
    """Paint all pages; the painter's unit is the point."""
    tall = document.pageSize().height()
    for number in range(document.pageCount()):
        if number:
            writer.newPage()
        painter.save()
        painter.translate(MARGIN, MARGIN - number * tall)
        context = QAbstractTextDocumentLayout.PaintContext()
        context.palette.setColor(QPalette.ColorRole.Text, QColor("#2b2a28"))
        context.clip = QRectF(0, number * tall, document.pageSize().width(), tall)
        painter.setClipRect(context.clip)
        document.documentLayout().draw(painter, context)
        painter.restore()
        painter.setFont(_font(7))
        painter.setPen(QColor("#6d675e"))
        foot = f"{title}: finishing record, page {number + 1} of {document.pageCount()}"
        painter.drawText(QRectF(MARGIN, points.height() - MARGIN + 8, points.width() - 2 * MARGIN, FOOT), 0, foot)


def _document(record: FinishingRecord, photo: bytes, points: QSizeF) -> QTextDocument:
    document = QTextDocument()
    document.setDocumentMargin(0)
    document.setUseDesignMetrics(True)
    document.setDefaultFont(_font(8))
    document.setDefaultStyleSheet(STYLE)
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
    _keep_headings(document)
    return document


def _keep_headings(document: QTextDocument) -> None:
    """Move each heading at the foot of a page to the page of what it heads."""
    layout, tall = document.documentLayout(), document.pageSize().height()
    block = document.begin()
    while block.isValid() and block.next().isValid():
        following = block.next()
        page = int(layout.blockBoundingRect(block).top() // tall)
        if block.text() in HEADINGS and int((layout.blockBoundingRect(following).bottom() - 1) // tall) > page:
            form = block.blockFormat()
            form.setPageBreakPolicy(QTextFormat.PageBreakFlag.PageBreak_AlwaysBefore)
            QTextCursor(block).setBlockFormat(form)
        block = block.next()


def _drawn(document: QTextDocument, name: str, svg: str, sides: tuple[float, float]) -> str:
    return _placed(document, name, picture_of(svg), sides)


def _placed(document: QTextDocument, name: str, picture: QImage, sides: tuple[float, float]) -> str:
    document.addResource(QTextDocument.ResourceType.ImageResource.value, QUrl(name), picture)
    return f'<p><img src="{escape(name)}" width="{sides[0]:.0f}" height="{sides[1]:.0f}"></p>'


def _font(size: int) -> QFont:
    font = QFont("sans-serif")
    font.setPixelSize(size)
    font.setHintingPreference(QFont.HintingPreference.PreferNoHinting)
    return font
