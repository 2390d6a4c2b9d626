"""How the window is dressed: its colours and its text size, kept from one time to the next."""

from __future__ import annotations

from PySide6.QtCore import QObject, QSize, Signal
from PySide6.QtWidgets import QApplication

from studiowatch.ui.settings import ViewSettings
from studiowatch.ui.style import TEXT_SCALES_PCT, Style, palette, style_sheet
from studiowatch.ui.theme import CONTRAST, LIGHT, NIGHT, Theme

_FIRST_SIZE = QSize(1280, 800)
_FRAME = QSize(16, 48)  # pixels that a desktop draws around a window, title bar and edges: assumption


class Dressing(QObject):
    """The style in use; `changed` is emitted with each new one."""

    changed = Signal()

    def __init__(self, settings: ViewSettings, *, night: bool | None, parent: QObject) -> None:
        super().__init__(parent)
        self._settings = settings
        self._night = settings.night if night is None else night
        self._contrast = settings.contrast and night is None
        self.style = Style(theme=self._theme, scale=settings.text_pct / 100)

    @property
    def _theme(self) -> Theme:
        if self._contrast:
            return CONTRAST
        return NIGHT if self._night else LIGHT

    @property
    def night(self) -> bool:
        """Whether the night colours are on."""
        return self.style.theme is NIGHT

    def set_night(self, on: bool) -> None:  # noqa: FBT001 - a slot of toggled(bool)
        """Use the night colours, or the light ones, and keep that."""
        self._settings.night = self._night = on
        if on:
            self._settings.contrast = self._contrast = False
        self._take_theme()

    @property
    def contrast(self) -> bool:
        """Whether the colours of high contrast are on."""
        return self.style.theme is CONTRAST

    def set_contrast(self, on: bool) -> None:  # noqa: FBT001 - a slot of toggled(bool)
        """Use the colours of high contrast, or those that stood before, and keep that."""
        self._settings.contrast = self._contrast = on
        self._take_theme()

    def _take_theme(self) -> None:
        if self.style.theme is not self._theme:
            self.style = Style(theme=self._theme, scale=self.style.scale)
            self.changed.emit()

    def put_on(self, dpi: int) -> None:
        """Give the application the style in use; `dpi` is that of the screen the window is on."""
        QApplication.setPalette(palette(self.style.theme))
        app = QApplication.instance()
        if isinstance(app, QApplication):
            app.setStyleSheet(style_sheet(self.style, dpi))

    def step_text(self, step: int) -> None:
        """Go to the next larger or smaller text, while there is one."""
        index = TEXT_SCALES_PCT.index(round(self.style.scale * 100)) + step
        if 0 <= index < len(TEXT_SCALES_PCT):
            self.set_text_pct(TEXT_SCALES_PCT[index])

    def set_text_pct(self, percent: int) -> None:
        """Set the text scale, one of TEXT_SCALES_PCT, and keep it."""
        self._settings.text_pct = percent
        self.style = Style(theme=self.style.theme, scale=percent / 100)
        self.changed.emit()


def first_size(available: QSize) -> QSize:
    """Return how large a window is at first, so that it and its frame fit on what the screen has."""
    return _FIRST_SIZE.boundedTo(available - _FRAME)
