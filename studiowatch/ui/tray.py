"""The icon beside the desktop's clock: how things stand, messages while the window is away, and the way back to it."""

from __future__ import annotations

from PySide6.QtCore import QObject, QRectF, Qt, Signal
from PySide6.QtGui import QIcon, QPainter, QPixmap
from PySide6.QtWidgets import QMenu, QSystemTrayIcon

from studiowatch.speech.words import in_turn, say
from studiowatch.studio.words import Level, Sentence
from studiowatch.ui.plain import for_the_desktop, literal
from studiowatch.ui.theme import LIGHT
from studiowatch.ui.widgets.marks import paint_mark

_SIDE_PX = 64
_MARK_SHARE = 0.62  # of the icon, at its lower right: told apart by shape at 16 pixels


def tray_words() -> Sentence:
    """Return what is said once, as the window closes and the watch goes on."""
    return Sentence(
        level=Level.CALM,
        headline=say("studiowatch keeps watching"),
        detail=say("The window is closed; the watch goes on from the tray."),
        advice=say("Quit from the tray's menu."),
    )


class Tray(QObject):
    """A tray icon where the desktop has a tray; elsewhere `exists` is False and nothing happens."""

    opened = Signal()
    across_asked = Signal()
    quit_asked = Signal()

    def __init__(self, icon: QIcon, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._icon: QSystemTrayIcon | None = None
        self._plain = icon
        self._shown: tuple[Sentence, str] | None = None
        if not QSystemTrayIcon.isSystemTrayAvailable():
            return
        self._menu = QMenu()
        self._menu.setAccessibleName("studiowatch")
        self._sentence = self._menu.addAction(say("Starting"), self.opened.emit)
        self._prompt = self._menu.addAction("", self.opened.emit)
        self._prompt.setVisible(False)
        self._menu.addSeparator()
        self._menu.addAction(say("Open the window"), self.opened.emit)
        self._menu.addAction(say("From across the room"), self.across_asked.emit)
        self._menu.addAction(say("Quit"), self.quit_asked.emit)
        self._icon = QSystemTrayIcon(icon, self)
        self._icon.setToolTip("studiowatch")
        self._icon.setContextMenu(self._menu)
        self._icon.activated.connect(self._activated)
        self._icon.messageClicked.connect(self.opened.emit)
        self._icon.show()

    @property
    def exists(self) -> bool:
        """Whether there is a tray to live in."""
        return self._icon is not None

    def show(self, sentence: Sentence, prompt: str) -> None:
        """Show how things stand, and the next prompt; touched only where something changed."""
        if self._icon is None or self._shown == (sentence, prompt):
            return
        if self._shown is None or self._shown[0].level is not sentence.level:
            self._icon.setIcon(marked(self._plain, sentence.level))
        self._shown = (sentence, prompt)
        self._icon.setToolTip(for_the_desktop(f"studiowatch: {sentence.headline}"))
        self._sentence.setText(literal(sentence.headline))
        self._prompt.setText(literal(prompt))
        self._prompt.setVisible(bool(prompt))

    def say(self, sentence: Sentence) -> None:
        """Show `sentence` as a message of the desktop, where there is one."""
        if self._icon is None:
            return
        icons = {
            Level.ACT: QSystemTrayIcon.MessageIcon.Critical,
            Level.CAUTION: QSystemTrayIcon.MessageIcon.Warning,
            Level.CALM: QSystemTrayIcon.MessageIcon.Information,
        }
        text = in_turn(sentence.detail, sentence.advice)
        self._icon.showMessage(for_the_desktop(sentence.headline), for_the_desktop(text), icons[sentence.level])

    def close(self) -> None:
        """Take the icon away."""
        if self._icon is not None:
            self._icon.hide()

    def _activated(self, reason: QSystemTrayIcon.ActivationReason) -> None:
        if reason is QSystemTrayIcon.ActivationReason.Trigger:
            self.opened.emit()


def marked(icon: QIcon, level: Level) -> QIcon:
    """Return the icon with the mark of `level`: a ticked circle, a diamond or a triangle."""
    drawn = QPixmap(_SIDE_PX, _SIDE_PX)
    drawn.fill(Qt.GlobalColor.transparent)
    painter = QPainter(drawn)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    icon.paint(painter, drawn.rect())
    side = _MARK_SHARE * _SIDE_PX
    box = QRectF(_SIDE_PX - side, _SIDE_PX - side, side, side)
    paint_mark(painter, box, level, LIGHT, good=level is Level.CALM)
    painter.end()
    return QIcon(drawn)
