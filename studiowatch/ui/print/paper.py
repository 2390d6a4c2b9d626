"""Printing a text document as PDF: pages, margins, the foot with its numbers."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QBuffer, QIODevice, QMarginsF, QRectF, QSizeF, Qt
from PySide6.QtGui import (
    QAbstractTextDocumentLayout,
    QColor,
    QFont,
    QFontMetricsF,
    QImage,
    QPageLayout,
    QPageSize,
    QPainter,
    QPalette,
    QPdfWriter,
    QTextDocument,
)

from studiowatch.service.whole_file import put_on_disk
from studiowatch.speech.words import say

PAPERS = {"a4": QPageSize.PageSizeId.A4, "letter": QPageSize.PageSizeId.Letter}
MARGIN, FOOT = 44.0, 26.0  # pt
SHOWN_AT = 2.0  # pixels a point: 144 dpi
_FOOT_PX = 7
INK, FAINT = "#2b2a28", "#6d675e"
_UNITS = 10.0  # of the writer in a point
STYLE = f"""
h1 {{ font-size: 22px; font-weight: 400; margin-bottom: 0; }}
.head {{ font-size: 10px; font-weight: 600; margin-top: 9px; margin-bottom: 3px; }}
p, li, td, th {{ font-size: 8px; }} .facts {{ color: {FAINT}; margin-top: 1px; }} .notes {{ white-space: pre-wrap; }}
ul, ol {{ margin-top: 0; margin-bottom: 0; margin-left: 0; -qt-list-indent: 0; }}
li {{ margin-left: 9px; margin-bottom: 2px; }}
"""  # not said


def paper_font(size_px: int) -> QFont:
    """Return the font of printed text; its size in pixels, which are points on this paper."""
    font = QFont("sans-serif")
    font.setPixelSize(size_px)
    font.setHintingPreference(QFont.HintingPreference.PreferNoHinting)
    return font


def new_document() -> QTextDocument:
    """Return an empty document in the style of the paper."""
    document = QTextDocument()
    document.setDocumentMargin(0)
    document.setUseDesignMetrics(True)
    document.setDefaultFont(paper_font(8))
    document.setDefaultStyleSheet(STYLE)
    return document


def print_document(make: Callable[[QSizeF], QTextDocument], path: Path, title: str, paper: str) -> None:
    """Write the document that `make` returns for a page of that many points; `paper` is one of `PAPERS`.

    Raises
    ------
    OSError
        If it cannot be written, or not to its end.
    """
    printed = _printed(make, title, paper)
    with path.open("wb") as out:
        out.write(printed)
        put_on_disk(out)


def _printed(make: Callable[[QSizeF], QTextDocument], title: str, paper: str) -> bytes:
    """Return the document as PDF: into a file Qt's writer would write on over a full disk, and say nothing."""
    printed = QBuffer()
    printed.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(printed)
    writer.setTitle(title)
    writer.setCreator("studiowatch")
    writer.setResolution(round(72 * _UNITS))
    size = QPageSize(PAPERS[paper])
    writer.setPageLayout(QPageLayout(size, QPageLayout.Orientation.Portrait, QMarginsF()))
    points = QSizeF(size.sizePoints())
    painter = QPainter(writer)
    try:
        painter.scale(_UNITS, _UNITS)
        _paint(painter, writer, make(points), title, points)
    finally:
        painter.end()
    return bytes(printed.data().data())


def page_pictures(make: Callable[[QSizeF], QTextDocument], title: str, paper: str) -> list[QImage]:
    """Return each page of what `print_document` would print as a picture, `SHOWN_AT` pixels a point."""
    points = QSizeF(QPageSize(PAPERS[paper]).sizePoints())
    document = make(points)
    pictures = []
    for number in range(document.pageCount()):
        picture = QImage((points * SHOWN_AT).toSize(), QImage.Format.Format_RGB32)
        picture.fill(QColor("white"))
        painter = QPainter(picture)
        painter.setRenderHints(QPainter.RenderHint.Antialiasing | QPainter.RenderHint.SmoothPixmapTransform)
        painter.scale(SHOWN_AT, SHOWN_AT)
        _paint_page(painter, document, number, title, points)
        painter.end()
        pictures.append(picture)
    return pictures


def _paint(painter: QPainter, writer: QPdfWriter, document: QTextDocument, title: str, points: QSizeF) -> None:
    """Paint all pages; the painter's unit is the point."""
    for number in range(document.pageCount()):
        if number:
            writer.newPage()
        _paint_page(painter, document, number, title, points)


def _paint_page(painter: QPainter, document: QTextDocument, number: int, title: str, points: QSizeF) -> None:
    tall = document.pageSize().height()
    painter.save()
    painter.translate(MARGIN, MARGIN - number * tall)
    context = QAbstractTextDocumentLayout.PaintContext()
    context.palette.setColor(QPalette.ColorRole.Text, QColor(INK))
    context.clip = QRectF(0, number * tall, document.pageSize().width(), tall)
    painter.setClipRect(context.clip)
    document.documentLayout().draw(painter, context)
    painter.restore()
    painter.setFont(paper_font(_FOOT_PX))
    painter.setPen(QColor(FAINT))
    wide = points.width() - 2 * MARGIN
    foot = foot_words(title, number + 1, document.pageCount(), wide)
    painter.drawText(QRectF(MARGIN, points.height() - MARGIN + 8, wide, FOOT), 0, foot)


def foot_words(title: str, number: int, count: int, wide: float) -> str:
    """Return the foot of page `number` of `count`, at most `wide` pt: of a long title the end makes way."""
    metrics = QFontMetricsF(paper_font(_FOOT_PX))

    def with_title(shown: str) -> str:
        return say("{title}, page {number} of {count}", title=shown, number=number, count=count)

    left = wide - metrics.horizontalAdvance(with_title(""))
    return with_title(metrics.elidedText(title, Qt.TextElideMode.ElideRight, left))
