"""What the room may do, right of now: in the panels' range, under the pointer, and painted."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from PySide6.QtGui import QFontMetricsF, QImage, QPainter
from pytestqt.qtbot import QtBot

from studiowatch.room.outlook import Outlook
from studiowatch.service.ports import Series
from studiowatch.service.room_band import RoomBand, band_of
from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.units import US
from studiowatch.ui.models.history_live import RoomData
from studiowatch.ui.models.history_panels import panels_of
from studiowatch.ui.widgets.history_canvas import HistoryCanvas
from studiowatch.ui.widgets.history_title import TitlePainter

from .scenes import FOUR_CALM, NOW_MS
from .test_history_panels import EMPTY

HOUR_MS = 3_600_000
BAND = RoomBand(
    time_ms=NOW_MS + HOUR_MS * np.arange(5),
    temperature_C=np.array(
        [[20.0, 18.0, 16.0, 15.0, 15.0], [20.0, 19.0, 18.0, 17.0, 17.0], [20.0, 20.0, 21.0, 19.0, 19.0]]
    ),
    humidity_pct=np.array([[50.0] * 5, [51.0] * 5, [52.0] * 5]),
)
COMING = replace(FOUR_CALM, pieces=(), room_band=BAND)


def held(value: float) -> Series:
    values = np.full(600, value)
    time_ms = NOW_MS + 1000 * np.arange(-600, 0)
    return Series(time_ms=time_ms, low=values, high=values, mean=values, bucket_ms=1000)


DATA = RoomData(temperature=held(20.0), humidity=held(50.0))


def test_that_the_band_is_the_middle_and_the_outer_tenths_of_the_draws() -> None:
    draws = np.arange(11.0)[:, None] + np.zeros((11, 3))
    band = band_of(Outlook(temperature_C=draws, humidity_pct=5 * draws, air_speed_m_s=draws), NOW_MS)
    assert band.time_ms.tolist() == [NOW_MS, NOW_MS + HOUR_MS, NOW_MS + 2 * HOUR_MS]
    assert band.temperature_C[:, 1].tolist() == [1.0, 5.0, 9.0]  # of 0 to 10 a tenth lies below 1, and above 9
    assert band.humidity_pct[:, 2].tolist() == [5.0, 25.0, 45.0]


def test_that_the_range_of_a_panel_holds_what_may_come_in_view_and_no_more() -> None:
    temperature = panels_of(DATA, EMPTY, COMING)[0]
    behind = temperature.scale(NOW_MS - HOUR_MS, NOW_MS, 4)
    ahead = temperature.scale(NOW_MS - HOUR_MS, NOW_MS + 3 * HOUR_MS, 4)
    assert behind.low > 16.0
    assert ahead.low <= 15.0


def test_what_is_likely_at_a_time_to_come() -> None:
    temperature, humidity, air = panels_of(DATA, EMPTY, COMING)
    assert temperature.expected(NOW_MS + 90 * 60_000) == "likely 17.0\N{EN DASH}20.5"  # halfway from 18, 20 to 16, 21
    assert humidity.expected(NOW_MS + HOUR_MS) == "likely 50\N{EN DASH}52"
    assert air.expected(NOW_MS + HOUR_MS) == ""
    assert temperature.expected(NOW_MS) == temperature.expected(NOW_MS + 5 * HOUR_MS) == ""
    in_us = panels_of(DATA, EMPTY, replace(COMING, units=US))[0]
    assert in_us.expected(NOW_MS + HOUR_MS) == "likely 64.4\N{EN DASH}68.0"  # t/°F = 1.8 t/°C + 32: NIST SP 811


@pytest.mark.window
def test_that_the_band_is_painted_right_of_now_alone(qtbot: QtBot) -> None:
    def painted(snapshot: Snapshot) -> list[QImage]:
        canvas = HistoryCanvas()
        qtbot.addWidget(canvas)
        canvas.resize(900, 600)
        canvas.data = DATA
        canvas.view = replace(canvas.view, start_ms=NOW_MS - HOUR_MS, end_ms=NOW_MS + 3 * HOUR_MS)
        canvas.show_snapshot(snapshot)
        canvas.grab()
        layout = canvas.arrange()
        now_px = canvas.time_scale(layout).x(NOW_MS)
        picture = canvas.grab().toImage()
        plot = layout.panels[1].plot  # its range is the same with and without: 25 wide and more
        left = (layout.left_px, now_px - 6)
        right = (now_px + 6, layout.left_px + layout.width_px)
        return [
            picture.copy(round(one), round(plot.top_px), round(other - one), round(plot.height_px))
            for one, other in (left, right)
        ]

    with_band, without = painted(COMING), painted(replace(COMING, room_band=None))
    assert with_band[0] == without[0]
    assert with_band[1] != without[1]


@pytest.mark.window
def test_that_the_title_says_what_the_band_counts_on_as_far_as_there_is_room(qtbot: QtBot) -> None:
    canvas = HistoryCanvas()
    qtbot.addWidget(canvas)
    canvas.resize(1400, 600)
    snapshot = replace(COMING, room_band=replace(BAND, is_meant=True))

    def told(snapshot: Snapshot, ahead_h: float, room_px: float | None = None) -> list[str]:
        canvas.view = replace(canvas.view, start_ms=NOW_MS - 4 * HOUR_MS, end_ms=NOW_MS + round(ahead_h * HOUR_MS))
        canvas.show_snapshot(snapshot)
        layout, panel = canvas.arrange(), panels_of(DATA, EMPTY, snapshot)[0]
        picture = QImage(canvas.size(), QImage.Format.Format_RGB32)
        painter = QPainter(picture)
        title = TitlePainter(canvas._paper(painter, layout), panel, layout.panels[0].title)
        words = title.titled(None) if room_px is None else title._counted_on(room_px)
        painter.end()
        return [word.text for word in words if "to come" in word.text]

    long, short = "to come: with what you mean to do", "to come: as meant"
    needed_px = [QFontMetricsF(canvas.font()).horizontalAdvance(words) for words in (long, short)]
    assert told(snapshot, 8.0) == [long]
    assert told(snapshot, 8.0, needed_px[0] - 1.0) == [short]
    assert told(snapshot, 8.0, needed_px[1] - 1.0) == []
    assert told(snapshot, -1.0) == told(COMING, 8.0) == []
