"""The studio book: pages of HTML that come with the program, in her language where it has them."""

from __future__ import annotations

from importlib.resources import files
from pathlib import Path

from PySide6.QtCore import QUrl
from PySide6.QtWidgets import QDialog, QHBoxLayout, QTextBrowser, QVBoxLayout, QWidget

from studiowatch.speech.words import say
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.text import button

FIRST_PAGE = "index.html"
ENGLISH = "en"


def page_of(language: str, name: str = FIRST_PAGE) -> Path:
    """Return the file of a page in a language, or in English where the book does not speak it."""
    books = Path(str(files("studiowatch.resources"))) / "help"
    translated = books / language / name
    return translated if translated.is_file() else books / ENGLISH / name


class Book(QDialog):
    """Shows the book beside the window, which goes on working."""

    def __init__(self, language: str, style: Style, parent: QWidget) -> None:
        super().__init__(parent)
        self.setModal(False)
        self.setWindowTitle(say("The studio book"))
        self.setAccessibleName(say("The studio book"))
        self.finished.connect(self.deleteLater)
        self._contents = QUrl.fromLocalFile(str(page_of(language)))
        self.pages = QTextBrowser()
        self.pages.setAccessibleName(say("Page"))
        self.pages.setOpenExternalLinks(False)
        self.pages.document().setDocumentMargin(style.px(18))
        self.pages.setSource(self._contents)
        self.back, self.contents, self.close_it = button(say("Back")), button(say("Contents")), button(say("Close"))
        self.back.clicked.connect(self.pages.backward)
        self.back.setEnabled(False)
        self.pages.backwardAvailable.connect(self.back.setEnabled)
        self.contents.clicked.connect(lambda: self.pages.setSource(self._contents))
        self.close_it.clicked.connect(self.close)
        self._lay_out(style)

    def _lay_out(self, style: Style) -> None:
        whole, foot = QVBoxLayout(self), QHBoxLayout()
        whole.setContentsMargins(*[style.px(14)] * 4)
        whole.setSpacing(style.px(10))
        foot.addWidget(self.back)
        foot.addWidget(self.contents)
        foot.addStretch(1)
        foot.addWidget(self.close_it)
        whole.addWidget(self.pages, 1)
        whole.addLayout(foot)
        room = self.screen().availableSize()
        self.resize(min(style.px(760), room.width() - 40), min(style.px(640), room.height() - 60))
