"""The hand that chooses a stretch of time: Shift and drag, or Shift and the arrow keys; Escape drops it."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeyEvent, QMouseEvent

from studiowatch.ui.models.history_range import TimeRange, beginning_ms, dragged, stepped
from studiowatch.ui.widgets.history_canvas import HistoryCanvas

STEPS = {Qt.Key.Key_Left: -1, Qt.Key.Key_Right: 1}


class RangeHand:
    """Changes the range on `canvas`, and calls `tell` with each change."""

    def __init__(self, canvas: HistoryCanvas, tell: Callable[[TimeRange | None], None]) -> None:
        self._canvas = canvas
        self._tell = tell
        self._anchor_ms: float | None = None

    def press(self, event: QMouseEvent) -> bool:
        """Begin a range if Shift is held; return whether it did."""
        if not event.modifiers() & Qt.KeyboardModifier.ShiftModifier:
            return False
        self._anchor_ms = self._time_ms(event)
        return True

    def move(self, event: QMouseEvent) -> None:
        """Draw the range on to the pointer."""
        if self._anchor_ms is not None:
            self.choose(dragged(self._anchor_ms, self._time_ms(event), self._canvas.now_ms))

    def release(self) -> None:
        """Let go; a press without a drag drops the range."""
        self._anchor_ms = None

    def key(self, event: QKeyEvent) -> bool:
        """Take a key if it belongs to the range; return whether it did."""
        canvas, key = self._canvas, Qt.Key(event.key())
        if key is Qt.Key.Key_Escape and canvas.chosen_range is not None:
            self.choose(None)
            return True
        if key not in STEPS or not event.modifiers() & Qt.KeyboardModifier.ShiftModifier:
            return False
        at_ms = beginning_ms(canvas.pointed_ms, canvas.view, canvas.now_ms)
        self.choose(stepped(canvas.chosen_range, STEPS[key], canvas.view, at_ms, canvas.now_ms))
        return True

    def choose(self, chosen: TimeRange | None) -> None:
        """Show `chosen` and tell of it."""
        if chosen != self._canvas.chosen_range:
            self._canvas.chosen_range = chosen
            self._canvas.update()
            self._tell(chosen)

    def _time_ms(self, event: QMouseEvent) -> float:
        time = self._canvas.time_scale(self._canvas.arrange())
        x_px = self._canvas.mapFromGlobal(event.globalPosition()).x()
        return time.time_ms(min(max(x_px, time.left_px), time.right_px))
