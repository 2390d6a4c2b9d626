"""What is really drawn of the log: these pixels carry data."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

import numpy as np
import pytest
from numpy.typing import NDArray
from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor, QImage, QPainter
from pytestqt.qtbot import QtBot

from studiowatch.coats.stages import Orientation, Stage, Surface
from studiowatch.room.readings import Channel
from studiowatch.service.board_view import BoardView
from studiowatch.service.piece_view import CoatView, PieceView, StageTime
from studiowatch.service.ports import PastView, Series
from studiowatch.service.snapshot import RoomView, Snapshot
from studiowatch.studio.words import Level, Sentence
from studiowatch.ui.models.history_axis import TimeScale
from studiowatch.ui.models.history_layout import layout_of
from studiowatch.ui.models.history_live import EMPTY
from studiowatch.ui.models.history_view import HOUR_MS
from studiowatch.ui.models.pace import HISTORY_REDRAW_MS
from studiowatch.ui.theme import LIGHT, NIGHT, Theme
from studiowatch.ui.widgets.history import RoomHistory
from studiowatch.ui.widgets.history_axis import Paper

NOW_MS = 1_795_000_000_000
PEAK_MS = NOW_MS - 30 * HOUR_MS
BESIDE_NOW_PX = 3  # clear of the line of now, within the dot of the live value
DIAMOND_PX = 14  # no digit of the labels is as high, and any diamond higher
GAP_MS = (NOW_MS - 60 * HOUR_MS, NOW_MS - 40 * HOUR_MS)


class WeekOfSeconds:
    """A week at one reading a second: one second of fast air, and a gap of twenty hours."""

    def __init__(self) -> None:
        time_ms = NOW_MS + 1000 * np.arange(-7 * 86_400, 0)
        self.time_ms = time_ms[(time_ms < GAP_MS[0]) | (time_ms > GAP_MS[1])]
        air = np.full(len(self.time_ms), 0.05)
        air[np.searchsorted(self.time_ms, PEAK_MS)] = 0.6
        self.values = {
            Channel.TEMPERATURE: np.full(len(self.time_ms), 20.0),
            Channel.HUMIDITY: np.full(len(self.time_ms), 50.0),
            Channel.AIR_SPEED: air,
        }

    def span_ms(self) -> tuple[int, int] | None:
        return int(self.time_ms[0]), int(self.time_ms[-1])

    def series(self, channel: Channel, start_ms: int, end_ms: int, buckets: int) -> Series:
        first, last = np.searchsorted(self.time_ms, (start_ms, end_ms))
        if channel not in self.values or first == last:
            return EMPTY
        width_ms = max((end_ms - start_ms) // buckets, 1000)
        values = self.values[channel][first:last]
        number, start, count = np.unique(self.time_ms[first:last] // width_ms, return_index=True, return_counts=True)
        return Series(
            time_ms=number * width_ms + width_ms // 2,
            low=np.minimum.reduceat(values, start),
            high=np.maximum.reduceat(values, start),
            mean=np.add.reduceat(values, start) / count,
            bucket_ms=width_ms,
        )

    def past(self) -> PastView:
        return PastView()

    def close(self) -> None:
        """Hold nothing."""


NOTHING_WET = Snapshot(
    time_ms=NOW_MS,
    board=BoardView(),
    room=RoomView(time_ms=NOW_MS),
    sentence=Sentence(level=Level.CALM, headline=""),
)


@pytest.fixture
def filled(qtbot: QtBot) -> Iterator[RoomHistory]:
    """Show a history with a week of readings in view."""
    shown = RoomHistory()
    qtbot.addWidget(shown)
    shown.resize(700, 560)
    shown.set_snapshot(NOTHING_WET)
    with qtbot.waitExposed(shown):
        shown.show()
    shown.set_history(WeekOfSeconds())
    shown.set_span("week")
    qtbot.waitUntil(lambda: len(shown.canvas.data.temperature.time_ms) > 0)
    yield shown
    shown.stop()


def pixels(plot: RoomHistory) -> NDArray[np.int64]:
    """Return the picture as rows of (red, green, blue)."""
    image = plot.canvas.grab().toImage().convertToFormat(QImage.Format.Format_RGB888)
    assert image.width() == plot.canvas.width()
    rows = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), image.bytesPerLine())
    return rows[:, : 3 * image.width()].reshape(image.height(), image.width(), 3).astype(np.int64)


def inked(plot: RoomHistory, panel: int, time_ms: int, theme: Theme, around_px: int = 1) -> NDArray[np.bool_]:
    """Return, for each row of a panel's plot, whether anything nearer to ink than to paper is drawn at a time."""
    layout = plot.canvas.arrange()
    x = round(plot.canvas.time_scale(layout).x(time_ms))
    band = layout.panels[panel].plot
    part = pixels(plot)[round(band.top_px) : round(band.bottom_px), x - around_px : x + around_px + 1]
    ink, paper = (np.array(QColor(color).getRgb()[:3]) for color in (theme.ink, theme.card))
    share = np.abs(part - paper).sum(axis=2) / np.abs(ink - paper).sum()
    found: NDArray[np.bool_] = (share > 0.35).any(axis=1)  # a grid line is a tenth, a bar about a half
    return found


@pytest.mark.parametrize("theme", [LIGHT, NIGHT], ids=lambda theme: theme.name)
def test_that_a_peak_of_one_second_is_seen_in_a_week(filled: RoomHistory, theme: Theme) -> None:
    filled.set_theme(theme)
    height = len(inked(filled, 2, PEAK_MS, theme))
    # the axis runs from 0 to no more than 0.8 m/s, so a peak from 0.05 to 0.6 covers most of the way
    assert inked(filled, 2, PEAK_MS, theme).sum() > 0.6 * height
    assert inked(filled, 2, PEAK_MS - 3 * HOUR_MS, theme).sum() < 0.2 * height
    assert inked(filled, 2, PEAK_MS + 3 * HOUR_MS, theme).sum() < 0.2 * height


@pytest.mark.parametrize("panel", [0, 1, 2])
def test_that_a_gap_in_the_log_stays_a_gap_in_the_picture(filled: RoomHistory, panel: int) -> None:
    middle_ms = sum(GAP_MS) // 2
    assert not inked(filled, panel, middle_ms, LIGHT).any()
    assert inked(filled, panel, GAP_MS[0] - 4 * HOUR_MS, LIGHT).any()
    assert inked(filled, panel, GAP_MS[1] + 4 * HOUR_MS, LIGHT).any()


def test_that_no_curve_reaches_beyond_now(filled: RoomHistory) -> None:
    assert not inked(filled, 1, NOW_MS + 2 * HOUR_MS, LIGHT, around_px=0).any()


def coat_ready_in(hours: float, laid_hours: float = -3.0) -> Snapshot:
    made = CoatView(
        key="c",
        sheet="sheet",
        label="gloss 1",
        sheen="gloss",
        clear_film=True,
        laid_ms=NOW_MS + round(laid_hours * HOUR_MS),
        surface=Surface.WET,
        milky=False,
        wet_um=100.0,
        dry_um=40.0,
        stages=(
            StageTime(
                stage=Stage.SET_TO_TOUCH, time_ms=NOW_MS + round((laid_hours + 1) * HOUR_MS), reached=laid_hours < -1
            ),
            StageTime(
                stage=Stage.TACK_FREE, time_ms=NOW_MS + round((laid_hours + 2) * HOUR_MS), reached=laid_hours < -2
            ),
            StageTime(stage=Stage.DRY_TO_RECOAT, time_ms=NOW_MS + round(hours * HOUR_MS), reached=hours <= 0),
        ),
    )
    piece = PieceView(
        key="p",
        title="Salt Marsh",
        width_cm=60,
        height_cm=90,
        support="canvas",
        orientation=Orientation.FACE_UP,
        due=None,
        coats=(made,),
    )
    return replace(NOTHING_WET, pieces=(piece,))


def ready_marks(plot: RoomHistory) -> NDArray[np.bool_]:
    """Return, for each pixel of the lanes, whether the colour of what is ready stands there."""
    layout = plot.canvas.arrange()
    part = pixels(plot)[round(layout.lanes.top_px) : round(layout.lanes.bottom_px)]
    good = np.array(QColor(LIGHT.good).getRgb()[:3])
    found: NDArray[np.bool_] = np.abs(part - good).sum(axis=2) < 24  # of 765: the same colour, or its core
    return found


@pytest.mark.parametrize("width_px", [420, 563, 905])
def test_that_a_ready_time_beyond_the_edge_is_told_at_the_edge_and_never_missing(
    filled: RoomHistory, width_px: int
) -> None:
    filled.resize(width_px, 560)
    filled.set_snapshot(coat_ready_in(8.5, laid_hours=-0.15))
    filled.set_span("8 h")
    marks, time = ready_marks(filled), filled.canvas.time_scale(filled.canvas.arrange())
    (columns,) = np.nonzero(marks.any(axis=0))
    assert len(columns)
    assert columns.min() > time.right_px - 80
    assert marks.sum(axis=0).max() < DIAMOND_PX  # no diamond: digits are lower


@pytest.mark.parametrize("hours", [1.0, -0.5])
def test_that_a_diamond_stands_at_its_true_hour(filled: RoomHistory, hours: float) -> None:
    filled.set_snapshot(coat_ready_in(hours))
    filled.set_span("8 h")
    time = filled.canvas.time_scale(filled.canvas.arrange())
    x = time.x(NOW_MS + hours * HOUR_MS)
    heights = ready_marks(filled).sum(axis=0)
    assert heights.max() >= DIAMOND_PX
    assert np.flatnonzero(heights == heights.max()).mean() == pytest.approx(x, abs=1.5)


@pytest.mark.parametrize("theme", [LIGHT, NIGHT], ids=lambda theme: theme.name)
def test_that_a_fan_that_has_just_come_on_is_seen_before_the_log_is_asked_again(
    filled: RoomHistory, theme: Theme
) -> None:
    filled.set_theme(theme)
    filled.set_span("8 h")
    filled.set_snapshot(replace(NOTHING_WET, room=RoomView(time_ms=NOW_MS, air_speed_m_s=0.05)))
    beside_ms = NOW_MS - round(BESIDE_NOW_PX * filled.canvas.time_scale(filled.canvas.arrange()).ms_per_px)
    still = inked(filled, 2, beside_ms, theme, around_px=0)
    soon_ms = NOW_MS + HISTORY_REDRAW_MS  # the room band has told of it by then
    filled.set_snapshot(replace(NOTHING_WET, time_ms=soon_ms, room=RoomView(time_ms=soon_ms, air_speed_m_s=0.6)))
    blown = inked(filled, 2, beside_ms, theme, around_px=0)
    assert not still[: len(still) // 2].any()
    assert blown[: len(blown) // 2].any()


def test_that_what_lies_ahead_has_another_ground(filled: RoomHistory) -> None:
    layout = filled.canvas.arrange()
    scale = filled.canvas.time_scale(layout)
    y = round(layout.panels[1].title.top_px)
    ahead, behind = (pixels(filled)[y, round(scale.x(NOW_MS + hours * HOUR_MS))] for hours in (40, -4))
    assert QColor(*map(int, ahead)).name() == LIGHT.ahead
    assert QColor(*map(int, behind)).name() == LIGHT.card


@pytest.mark.usefixtures("qapp")
def test_that_an_empty_stretch_is_told_where_no_limits_words_stand() -> None:
    layout = layout_of(700.0, 560.0, line_px=18.0, gutter_px=100.0, lane_count=2)
    plots = [QRectF(150.0, band.plot.top_px, 500.0, band.plot.height_px) for band in layout.panels]
    for taken, told in (([], [0]), (plots[:1], [1]), (plots[:2], [2]), (plots, [])):
        page = QImage(700, 560, QImage.Format.Format_RGB32)
        page.fill(QColor(LIGHT.card))
        painter = QPainter(page)
        time = TimeScale(start_ms=0, end_ms=500_000, left_px=150.0, width_px=500.0)
        paper = Paper(painter=painter, layout=layout, time=time, theme=LIGHT, font=painter.font(), now_ms=500_000)
        paper.draw_stretch("none here", 0, 500_000, taken)
        painter.end()
        written = [
            any(page.pixelColor(x, y) != QColor(LIGHT.card) for x in range(300, 500) for y in _rows_of(plot))
            for plot in plots
        ]
        assert [index for index, is_written in enumerate(written) if is_written] == told


def _rows_of(plot: QRectF) -> range:
    return range(int(plot.top()), int(plot.bottom()))
