"""The room history's states beyond the last day: the time behind at several widths, and a chosen range."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from PySide6.QtCore import QPointF

from studiowatch.ui.long_work import LongWork
from studiowatch.ui.models.history_range import TimeRange
from studiowatch.ui.models.history_view import View
from studiowatch.ui.models.times import DAY_MS, HOUR_MS
from studiowatch.ui.models.work import WorkState, WorkView, ended
from studiowatch.ui.widgets.work_dialog import WorkDialog
from studiowatch.ui.window import StudioWindow
from tests.ui.scenes import NOW_MS, ScriptedDesk


def past_states(window: StudioWindow, desk: ScriptedDesk) -> Iterator[str]:
    """Bring the window into each state, and yield its name."""
    del desk
    plot = window.history.plot
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
    plot.canvas.chosen_range = TimeRange(anchor_ms=NOW_MS - 5 * HOUR_MS, end_ms=NOW_MS - 3 * HOUR_MS)
    plot.canvas.update()
    yield "range"
    plot.canvas.chosen_range = None


def work_states(window: StudioWindow) -> Iterator[tuple[str, WorkDialog]]:
    """Open the dialog of long work in each state, and yield its name with it."""
    going = WorkView(title="Save readings as CSV", share=0.42, words="13240000 readings")
    for name, view in (
        ("work-running", going),
        (
            "work-done",
            ended(going, WorkState.DONE, "Written to /home/studio/room.csv, as they were read: 31 readings."),
        ),
        ("work-failed", ended(going, WorkState.FAILED, "The disk of /media/stick is full; make room on it.")),
    ):
        yield name, _work(window, view)
    dialog = _work(window, replace(going, title="Take a file in"))
    for line in (2, 17, 18):
        dialog._tell(f"logger.csv, line {line}: temperature_C is 215.0; allowed is -40 to 80 °C; correct the row.")
    dialog.show_view(ended(dialog.view, WorkState.DONE, "Taken: 8640; there already: 12; refused: 3."))
    yield "work-faults", dialog


def _work(window: StudioWindow, view: WorkView) -> WorkDialog:
    dialog = WorkDialog(view, LongWork(lambda _, __: ""), window.exchange.style, window)
    dialog.open()
    return dialog
