"""How the window is dressed: its colours and its text size, kept from one time to the next."""

from __future__ import annotations

from PySide6.QtCore import QObject, QSize, Signal

from studiowatch.ui.settings import ViewSettings
from studiowatch.ui.style import TEXT_SCALES_PCT, Style
from studiowatch.ui.theme import LIGHT, NIGHT

_FIRST_SIZE = QSize(1280, 800)
_FRAME = QSize(16, 48)  # pixels that a desktop draws around a window, title bar and edges: assumption


class Dressing(QObject):
    """The style in use; `changed` is emitted with each new one."""

    changed = Signal()

    def __init__(self, settings: ViewSettings, *, night: bool | None, parent: QObject) -> None:
        super().__init__(parent)
        self._settings = settings
        dark = settings.night if night is None else night
        self.style = Style(theme=NIGHT if dark else LIGHT, scale=settings.text_pct / 100)

    @property
    def night(self) -> bool:
        """Whether the night colours are on."""
        return self.style.theme is NIGHT

    def set_night(self, on: bool) -> None:  # noqa: FBT001 - a slot of toggled(bool)
        """Use the night colours, or the light ones, and keep that."""
        self._settings.night = on
        self.style = Style(theme=NIGHT if on else LIGHT, scale=self.style.scale)
        self.changed.emit()

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
