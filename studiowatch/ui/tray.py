"""The icon beside the desktop's clock: messages while the window is away, and the way back to it."""

from __future__ import annotations

from PySide6.QtCore import QObject, Signal
from PySide6.QtGui import QIcon
from PySide6.QtWidgets import QMenu, QSystemTrayIcon

from studiowatch.studio.words import Level, Sentence

TRAY_WORDS = Sentence(
    level=Level.CALM,
    headline="studiowatch keeps watching",
    detail="The window is closed; the watch goes on from the tray.",
    advice="Quit from the tray's menu.",
)


class Tray(QObject):
    """A tray icon where the desktop has a tray; elsewhere `exists` is False and nothing happens."""

    opened = Signal()
    quit_asked = Signal()

    def __init__(self, icon: QIcon, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._icon: QSystemTrayIcon | None = None
        if not QSystemTrayIcon.isSystemTrayAvailable():
            return
        self._menu = QMenu()
        self._menu.addAction("Open the window", self.opened.emit)
        self._menu.addAction("Quit", self.quit_asked.emit)
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

    def say(self, sentence: Sentence) -> None:
        """Show `sentence` as a message of the desktop, where there is one."""
        if self._icon is None:
            return
        icons = {
            Level.ACT: QSystemTrayIcon.MessageIcon.Critical,
            Level.CAUTION: QSystemTrayIcon.MessageIcon.Warning,
            Level.CALM: QSystemTrayIcon.MessageIcon.Information,
        }
        text = " ".join(part for part in (sentence.detail, sentence.advice) if part)
        self._icon.showMessage(sentence.headline, text, icons[sentence.level])

    def close(self) -> None:
        """Take the icon away."""
        if self._icon is not None:
            self._icon.hide()

    def _activated(self, reason: QSystemTrayIcon.ActivationReason) -> None:
        if reason is QSystemTrayIcon.ActivationReason.Trigger:
            self.opened.emit()
