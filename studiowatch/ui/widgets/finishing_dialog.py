"""The finishing record of a piece before it is saved: its pages as they will be, and the few choices."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QImage, QPixmap
from PySide6.QtWidgets import (
    QCheckBox,
    QDialog,
    QFrame,
    QHBoxLayout,
    QLabel,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from studiowatch.speech.words import mark, say, say_counted
from studiowatch.ui.models.finishing import PAPER_WORDS, FinishingChoice, Form
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.drop_down import DropDown
from studiowatch.ui.widgets.text import button, label, put

DRAWING, PAGE_UNITS = mark("Drawing the pages…"), 430
WHAT_FOR = mark(
    "For the collector, the gallery, and whoever cleans it one day. Nothing leaves this computer until you save it."
)


class FinishingDialog(QDialog):
    """`changed` carries the new choice, for which pages are wanted; `save_asked` the form to save it in."""

    changed = Signal(object)
    save_asked = Signal(object)

    def __init__(self, piece_title: str, style: Style, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(say("Finishing record: {title}", title=piece_title))
        self.setAccessibleName(self.windowTitle())
        self._style = style
        self.pages: list[QLabel] = []
        self.paper = DropDown()
        self.paper.setAccessibleName(say("Paper"))
        self.paper.addItems([say(words) for words in PAPER_WORDS.values()])
        self.without_notes = QCheckBox(say("Leave my notes out"))
        self.without_notes.setAccessibleName(say("Leave my notes out"))
        self.state = label("body", Tone.MUTED, say(DRAWING), wrap=True)
        self.pdf = button(say("Save as &PDF…"), "primary")
        self.html = button(say("Save as a &web page…"))
        self._close = button(say("Close"))
        self._compose()
        self.paper.currentIndexChanged.connect(self._change)
        self.without_notes.toggled.connect(self._change)
        self.pdf.clicked.connect(lambda: self.save_asked.emit(Form.PDF))
        self.html.clicked.connect(lambda: self.save_asked.emit(Form.HTML))
        self._close.clicked.connect(self.reject)
        room = self.screen().availableSize()
        self.resize(min(style.px(860), room.width() - 40), min(style.px(680), room.height() - 60))

    def _compose(self) -> None:
        px = self._style.px
        for made, name in ((self.pdf, say("Save as PDF")), (self.html, say("Save as a web page"))):
            made.setAccessibleName(name)
        self._sheet = QWidget()
        self._sheet.setObjectName("inside")
        self._sheet.setAccessibleName(say("Pages"))
        self._stack = QVBoxLayout(self._sheet)
        self._stack.setContentsMargins(0, 0, px(8), 0)
        self._stack.setSpacing(px(10))
        self._stack.addStretch(1)
        self.preview = QScrollArea()
        self.preview.setAccessibleName(say("How it will look"))
        self.preview.setFrameShape(QFrame.Shape.NoFrame)
        self.preview.setWidgetResizable(True)
        self.preview.setWidget(self._sheet)
        side = QVBoxLayout()
        side.setSpacing(px(10))
        side.addWidget(label("headline", text=self.windowTitle(), wrap=True))
        side.addWidget(label("body", Tone.MUTED, say(WHAT_FOR), wrap=True))
        caption = label("small", Tone.MUTED, say("Paper"))
        caption.setBuddy(self.paper)
        for part in (caption, self.paper, self.without_notes, self.state):
            side.addWidget(part)
        side.addStretch(1)
        for made in (self.pdf, self.html, self._close):
            side.addWidget(made)
        whole = QHBoxLayout(self)
        whole.setContentsMargins(px(20), px(14), px(20), px(14))
        whole.setSpacing(px(18))
        whole.addWidget(self.preview, 5)
        whole.addLayout(side, 3)

    @property
    def choice(self) -> FinishingChoice:
        """What is chosen now."""
        papers = list(PAPER_WORDS)
        return FinishingChoice(paper=papers[self.paper.currentIndex()], with_notes=not self.without_notes.isChecked())

    def _change(self) -> None:
        put(self.state, say(DRAWING), Tone.MUTED)
        self.changed.emit(self.choice)

    def show_pages(self, choice: FinishingChoice, pictures: Sequence[QImage], trouble: str) -> None:
        """Show the pages drawn for `choice`, unless another choice was made since."""
        if choice != self.choice:
            return
        for old in self.pages:
            self._stack.removeWidget(old)
            old.deleteLater()
        self.pages = []
        wide = min(self._style.px(PAGE_UNITS), max(self.preview.viewport().width() - self._style.px(26), 200))
        for number, picture in enumerate(pictures, start=1):
            shown = QLabel()
            shown.setProperty("frame", "true")
            shown.setAccessibleName(say("Page {number} of {count}", number=number, count=len(pictures)))
            dense = self.devicePixelRatioF()
            drawn = QPixmap.fromImage(picture).scaledToWidth(
                round(wide * dense), Qt.TransformationMode.SmoothTransformation
            )
            drawn.setDevicePixelRatio(dense)
            shown.setPixmap(drawn)
            self._stack.insertWidget(len(self.pages), shown, 0, Qt.AlignmentFlag.AlignHCenter)
            self.pages.append(shown)
        put(self.state, trouble or _count(len(pictures)), Tone.CAUTION if trouble else Tone.MUTED)

    def show_fault(self, sentence: str) -> None:
        """Say why there is no record."""
        put(self.state, sentence, Tone.ACT)
        for made in (self.pdf, self.html):
            made.setEnabled(False)


def _count(pages: int) -> str:
    return say_counted(pages, "One page.", "{n} pages.")
