"""A made-up hour behind the room history, and as many pieces as a test asks for."""

from __future__ import annotations

import numpy as np
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QWheelEvent
from PySide6.QtWidgets import QApplication, QWidget

from studiowatch.coats.stages import Orientation, Stage, Surface
from studiowatch.room.readings import Channel
from studiowatch.service.board_view import BoardView
from studiowatch.service.piece_view import CoatView, PieceView, StageTime
from studiowatch.service.ports import PastView, Series
from studiowatch.service.snapshot import RoomView, Snapshot
from studiowatch.studio.words import Level, Sentence
from studiowatch.ui.models.history_live import EMPTY
from studiowatch.ui.models.history_view import HOUR_MS

NOW_MS = 1_795_000_000_000
VALUES = {Channel.TEMPERATURE: 20.0, Channel.HUMIDITY: 50.0, Channel.AIR_SPEED: 0.05}


class HourOfReadings:
    """An hour at one reading a second, all the same, whatever is asked for."""

    def __init__(self) -> None:
        self.closed = False

    def span_ms(self) -> tuple[int, int] | None:
        return NOW_MS - HOUR_MS, NOW_MS

    def series(self, channel: Channel, start_ms: int, end_ms: int, buckets: int) -> Series:
        del start_ms, end_ms, buckets
        return flat_hour(VALUES.get(channel, 0.0))

    def past(self) -> PastView:
        return PastView()

    def close(self) -> None:
        self.closed = True


def flat_hour(value: float, before_ms: int = 0) -> Series:
    time_ms = NOW_MS - before_ms + 1000 * np.arange(-3600, 0)
    values = np.full(3600, value)
    return Series(time_ms=time_ms, low=values, high=values, mean=values, bucket_ms=1000)


def coat(key: str) -> CoatView:
    return CoatView(
        key=key,
        sheet="sheet",
        label="gloss 1",
        sheen="gloss",
        clear_film=True,
        laid_ms=NOW_MS - HOUR_MS,
        surface=Surface.WET,
        milky=False,
        wet_um=100.0,
        dry_um=40.0,
        stages=(StageTime(stage=Stage.DRY_TO_RECOAT, time_ms=NOW_MS + HOUR_MS, reached=False),),
    )


def piece(key: str) -> PieceView:
    return PieceView(
        key=key,
        title=f"Piece {key}",
        width_cm=60,
        height_cm=90,
        support="canvas",
        orientation=Orientation.FACE_UP,
        due=None,
        coats=(coat(f"coat {key}"),),
    )


def snapshot(time_ms: int = NOW_MS, pieces: int = 0) -> Snapshot:
    return Snapshot(
        time_ms=time_ms,
        board=BoardView(),
        room=RoomView(time_ms=time_ms, film_C=18.5),
        sentence=Sentence(level=Level.CALM, headline=""),
        pieces=tuple(piece(str(number)) for number in range(pieces)),
    )


class NothingRead(HourOfReadings):
    """A log without a reading."""

    def span_ms(self) -> tuple[int, int] | None:
        return None

    def series(self, channel: Channel, start_ms: int, end_ms: int, buckets: int) -> Series:
        del channel, start_ms, end_ms, buckets
        return EMPTY


def wheel(
    plot: QWidget, place: QPointF, notches: int, held: Qt.KeyboardModifier = Qt.KeyboardModifier.NoModifier
) -> bool:
    """Turn the wheel over `plot`; return whether it took it."""
    where = QPointF(plot.mapToGlobal(place.toPoint()))
    event = QWheelEvent(
        place,
        where,
        QPoint(),
        QPoint(0, 120 * notches),
        Qt.MouseButton.NoButton,
        held,
        Qt.ScrollPhase.NoScrollPhase,
        False,  # noqa: FBT003 - Qt's own signature
    )
    QApplication.sendEvent(plot, event)  # a made-up wheel event does not rise from child to parent, a real one does
    return event.isAccepted()
