"""The hand on the time axis of the room history: a drag moves in time, the wheel and a pinch zoom."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QPointF
from PySide6.QtGui import QMouseEvent, QNativeGestureEvent, QWheelEvent

from studiowatch.ui.widgets.history_canvas import HistoryCanvas

NOTCH = 120  # eighths of a degree in one step of a wheel
ZOOM_PER_NOTCH = 1.25
PAN_PER_NOTCH = 0.1  # of the view's width
ROWS_PER_NOTCH = 1.0


class TimeHand:
    """Turns what the pointer does on `canvas` into `pan(by_ms)` and `zoom_about(x_px, factor)`."""

    def __init__(
        self, canvas: HistoryCanvas, pan: Callable[[float], None], zoom_about: Callable[[float, float], None]
    ) -> None:
        self._canvas = canvas
        self._pan = pan
        self._zoom_about = zoom_about
        self._from: QPointF | None = None

    def press(self, event: QMouseEvent) -> None:
        """Take hold of the time axis."""
        self._from = event.globalPosition()

    def move(self, event: QMouseEvent) -> None:
        """Drag the time axis, if it is held."""
        if self._from is None:
            return
        by_px = self._from.x() - event.globalPosition().x()
        if by_px:
            self._from = event.globalPosition()
            self._pan(by_px * self._canvas.time_scale(self._canvas.arrange()).ms_per_px)

    def release(self) -> None:
        """Let go of the time axis."""
        self._from = None

    def wheel(self, event: QWheelEvent) -> None:
        """Zoom about the pointer; sideways pans, and over lanes that do not all fit it scrolls them."""
        place = self._canvas.mapFromGlobal(event.globalPosition())
        across, along = event.angleDelta().x() / NOTCH, event.angleDelta().y() / NOTCH
        layout = self._canvas.arrange()
        if layout.rows.furthest_px and layout.lanes.holds(place.y()) and not across:
            self._canvas.scroll_lanes(-along * ROWS_PER_NOTCH * layout.rows.row_px)
        elif abs(across) > abs(along):
            self._pan(-across * PAN_PER_NOTCH * self._canvas.view.width_ms)
        elif along:
            self._zoom_about(place.x(), ZOOM_PER_NOTCH**-along)

    def pinch(self, event: QNativeGestureEvent) -> None:
        """Zoom about the fingers on a touch pad."""
        self._zoom_about(self._canvas.mapFromGlobal(event.globalPosition()).x(), 1 / max(1 + event.value(), 0.1))
