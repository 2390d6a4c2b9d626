"""The room history's states beyond the last day: the time behind at several widths, and a chosen range."""

from __future__ import annotations

from collections.abc import Iterator

from PySide6.QtCore import QPointF

from studiowatch.ui.models.history_view import View
from studiowatch.ui.models.times import DAY_MS, HOUR_MS
from studiowatch.ui.window import StudioWindow
from tests.ui.scenes import NOW_MS, ScriptedDesk


def past_states(window: StudioWindow, desk: ScriptedDesk) -> Iterator[str]:
    """Bring the window into each state, and yield its name."""
    del desk
    plot = window._plot
    if plot is None:
        return
    plot._move(View(start_ms=NOW_MS - 175 * DAY_MS, end_ms=NOW_MS + 5 * DAY_MS, following=False))
    yield "past-half-year"
    plot._move(View(start_ms=NOW_MS - 157 * DAY_MS, end_ms=NOW_MS - 138 * DAY_MS, following=False))
    yield "past-weeks"
    start_ms = NOW_MS - 152 * DAY_MS - 6 * HOUR_MS
    plot._move(View(start_ms=start_ms, end_ms=start_ms + 8 * HOUR_MS, following=False))
    layout = plot.canvas.arrange()
    plot.canvas.pointer = QPointF(layout.left_px + layout.width_px * 0.16, layout.lanes.bottom_px - 12)
    plot.canvas.update()
    yield "past-hours"
    plot.canvas.pointer = None
    plot.set_span("8 h")
