"""The window's frame, on the screen before the program behind it is read in: she sees at once that it starts."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager

from PySide6.QtCore import QEventLoop, QRect, Qt, QTimer, Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent
from PySide6.QtWidgets import QApplication, QWidget

from studiowatch.speech.words import say
from studiowatch.ui.settings import ViewSettings
from studiowatch.ui.theme import LIGHT, NIGHT
from studiowatch.ui.unread import leave_sources_unread

SIZE = (1280, 800)  # px, where no size is kept yet
TEXT_PX = 21
SHOWN_WITHIN_MS = 1500  # ms, no longer is the start held up for a frame; only a computer that is busy needs so much


class StartingWindow(QWidget):
    """Says that the studio opens, where the window will stand."""

    painted = Signal()

    def __init__(self, settings: ViewSettings) -> None:
        super().__init__()
        theme = NIGHT if settings.night else LIGHT
        self._ground, self._ink = QColor(theme.ground), QColor(theme.muted)
        self.is_painted = False
        self.setWindowTitle("studiowatch")
        self.setAccessibleName(say("studiowatch is opening"))
        self.resize(*SIZE)
        self.restoreGeometry(settings.geometry)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the words on the ground of her colours."""
        painter = QPainter(self)
        painter.fillRect(event.rect(), self._ground)
        painter.setPen(self._ink)
        font = painter.font()
        font.setPixelSize(TEXT_PX)
        painter.setFont(font)
        painter.drawText(QRect(self.rect()), Qt.AlignmentFlag.AlignCenter, say("Opening the studio…"))
        painter.end()
        self.is_painted = True
        self.painted.emit()


@contextmanager
def starting() -> Iterator[StartingWindow]:
    """Show the frame until the window is there (`end_starting`), or the start ended otherwise."""
    leave_sources_unread()
    _application = QApplication.instance() or QApplication(["studiowatch"])
    frame = StartingWindow(ViewSettings())
    frame.show()
    until_painted = QEventLoop()
    frame.painted.connect(until_painted.quit)
    QTimer.singleShot(SHOWN_WITHIN_MS, until_painted, until_painted.quit)
    until_painted.exec()
    try:
        yield frame
    finally:
        frame.close()


def end_starting() -> None:
    """Take the frame away: the window stands in its place."""
    for window in QApplication.topLevelWidgets():
        if isinstance(window, StartingWindow):
            window.close()
