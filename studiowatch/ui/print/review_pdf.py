"""A review on paper."""

from __future__ import annotations

from html import escape
from pathlib import Path

from PySide6.QtCore import QRectF, QSizeF, QUrl
from PySide6.QtGui import QImage, QPainter, QTextDocument

from studiowatch.speech.words import say
from studiowatch.studio.review_views import Review
from studiowatch.ui.models.review import CHANGE_HEADS, CauseRow, ChangeRow, ReviewWords, review_words
from studiowatch.ui.models.review_plot import picture_of
from studiowatch.ui.print.paper import MARGIN, new_document, print_document
from studiowatch.ui.theme import LIGHT
from studiowatch.ui.widgets.review_picture import ReviewPicture

PLOT_HIGH = 290.0  # pt
LEAST_SHOWN = 0.02  # share from which a cause is printed
SHARPNESS = 5  # pixels a point


def write_review(review: Review, path: Path, paper: str, now_ms: int) -> None:
    """Write `review` as PDF on "a4" or "letter", its times seen from `now_ms`. Raises OSError."""
    words = review_words(review, now_ms)
    print_document(lambda points: _document(review, words, points), path, f"{review.piece_title}: {words.title}", paper)


def _document(review: Review, words: ReviewWords, points: QSizeF) -> QTextDocument:
    document = new_document()
    wide = points.width() - 2 * MARGIN
    document.addResource(QTextDocument.ResourceType.ImageResource.value, QUrl("room"), _drawn(review, wide))
    document.setHtml(_body(words, wide))
    document.setPageSize(QSizeF(wide, points.height() - 2 * MARGIN))
    return document


def _drawn(review: Review, wide: float) -> QImage:
    image = QImage(round(wide * SHARPNESS), round(PLOT_HIGH * SHARPNESS), QImage.Format.Format_RGB32)
    image.fill(LIGHT.card)
    painter = QPainter(image)
    painter.scale(SHARPNESS, SHARPNESS)
    font = new_document().defaultFont()
    ReviewPicture(
        picture=picture_of(review),
        painter=painter,
        place=QRectF(0.0, 0.0, wide, PLOT_HIGH),
        theme=LIGHT,
        font=font,
        unit_px=0.7,
    ).draw()
    painter.end()
    return image


def _body(words: ReviewWords, wide: float) -> str:
    causes = "".join(_cause(cause) for cause in words.causes if cause.share >= LEAST_SHOWN)
    steps = "".join(f"<p>{number}. {escape(step)}</p>" for number, step in enumerate(words.steps, start=1))
    cautions = "".join(f'<p style="color: {LIGHT.act}">! {escape(caution)}</p>' for caution in words.cautions)
    blind = "".join(f"<p>{escape(sentence)}</p>" for sentence in words.blind)
    blind = f"{_head(say('What the records do not show'))}{blind}" if blind else ""
    return (
        f"<h1>{escape(words.title)}</h1>"
        f'<p class="facts">{escape(words.subtitle)}</p><p><b>{escape(words.headline)}</b></p>'
        f"{_head(say('Likely causes, strongest first'))}{causes}{blind}"
        f"{_head(say('What the room did under this coat'))}"
        f'<p><img src="room" width="{wide:.0f}" height="{PLOT_HIGH:.0f}"></p>'
        f"{_head(say('What would have changed it'))}{_table(words.changes)}"
        f"{_head(say('What to do now'))}{steps}{cautions}"
        f'<p class="facts">{escape(words.learnt)}</p>'
    )


def _head(words: str) -> str:
    return f'<p class="head">{escape(words)}</p>'


def _cause(cause: CauseRow) -> str:
    sentences = " ".join((*cause.sentences, *((cause.often,) if cause.often else ())))
    return f"<p><b>{cause.percent} {escape(cause.title)}.</b> {escape(sentences)}</p>"


def _table(rows: tuple[ChangeRow, ...]) -> str:
    head = "".join(f'<th align="left">{escape(say(words))}</th>' for words in CHANGE_HEADS)
    lines = "".join(
        "<tr>" + "".join(f"<td>{escape(cell)}</td>" for cell in (*row.cells, row.verdict)) + "</tr>" for row in rows
    )
    return f'<table width="100%" cellpadding="2"><tr>{head}</tr>{lines}</table>'
