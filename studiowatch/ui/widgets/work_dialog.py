"""The dialog of long work: how far it is, a way to end it, and what came of it."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QCloseEvent
from PySide6.QtWidgets import QDialog, QHBoxLayout, QListWidget, QProgressBar, QVBoxLayout, QWidget

from studiowatch.speech.words import say
from studiowatch.ui.long_work import LongWork
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.models.work import WorkState, WorkView, ended, progressed, with_told
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.text import button, label, put

TONES = {WorkState.DONE: Tone.GOOD, WorkState.FAILED: Tone.ACT}
WIDTH_UNITS, HEIGHT_UNITS, LIST_UNITS = 460, 150, 420


class WorkDialog(QDialog):
    """Shows one `LongWork` until she closes it; `over` carries its last `WorkView`."""

    over = Signal(object)

    def __init__(self, view: WorkView, work: LongWork, style: Style, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(view.title)
        self.setAccessibleName(view.title)
        self.view = view
        self.work = work
        self._style = style
        work.setParent(self)
        self.bar = QProgressBar()
        self.bar.setAccessibleName(say("How much is done"))
        self.bar.setTextVisible(False)
        self.words = label("strong", wrap=True)
        self.told_words = label("small", Tone.MUTED, wrap=True)
        self.told = QListWidget()
        self.told.setAccessibleName(say("What to look at, by line of the file"))
        self.told.setWordWrap(True)
        self.told.hide()
        self.end = button(say("Cancel"))
        self.end.clicked.connect(self._end)
        self._compose()
        work.progressed.connect(lambda share, words: self.show_view(progressed(self.view, share, words)))
        work.told.connect(self._tell)
        work.done.connect(lambda words: self._ended(WorkState.DONE, words))
        work.failed.connect(lambda words: self._ended(WorkState.FAILED, words))
        work.cancelled.connect(lambda: self._ended(WorkState.CANCELLED, ""))
        self.show_view(view)

    def _compose(self) -> None:
        px = self._style.px
        column = QVBoxLayout(self)
        column.setContentsMargins(px(20), px(14), px(20), px(14))
        column.setSpacing(px(10))
        column.addWidget(label("headline", text=self.view.title, wrap=True))
        column.addWidget(self.bar)
        column.addWidget(self.words)
        column.addWidget(self.told_words)
        column.addWidget(self.told, 1)
        column.addStretch(0)
        foot = QHBoxLayout()
        foot.addStretch(1)
        foot.addWidget(self.end)
        column.addLayout(foot)
        self.resize(px(WIDTH_UNITS), px(HEIGHT_UNITS))

    def show_view(self, view: WorkView) -> None:
        """Show how it stands."""
        self.view = view
        self.bar.setVisible(not view.is_over)
        self.bar.setValue(view.pct)
        put(self.words, view.words, TONES.get(view.state, Tone.INK))
        put(self.told_words, view.list_words, Tone.MUTED)
        self.told_words.setVisible(bool(view.list_words))
        self.setMinimumHeight(min(self.heightForWidth(self.width()), self.screen().availableSize().height()))
        self.end.setText(say("Close") if view.is_over else say("Cancel"))
        self.end.setEnabled(view.state is not WorkState.ENDING)

    def reject(self) -> None:
        """Cancel, or close once it is over: as Escape does."""
        self._end()

    def closeEvent(self, event: QCloseEvent) -> None:
        """Close only once nothing runs any more."""
        if self.view.is_over:
            super().closeEvent(event)
        else:
            event.ignore()
            self._end()

    def _end(self) -> None:
        if self.view.is_over:
            self.accept()
        else:
            self.work.cancel()

    def _tell(self, sentence: str) -> None:
        before = len(self.view.told)
        self.view = with_told(self.view, sentence)
        if len(self.view.told) > before:
            self.told.addItem(sentence)
        if self.told.isHidden():
            self.told.show()
            self.resize(self.width(), self._style.px(LIST_UNITS))
        self.show_view(self.view)

    def _ended(self, state: WorkState, words: str) -> None:
        self.work.stop()
        self.show_view(ended(self.view, state, words))
        self.over.emit(self.view)
