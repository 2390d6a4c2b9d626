"""Made-up rooms, the board that reads them, and what each product says of the room."""

from __future__ import annotations

from dataclasses import replace

from studiowatch.board.events import LineCounts
from studiowatch.room.air_movement import Movement
from studiowatch.service.board_view import BoardView
from studiowatch.service.snapshot import RoomView
from studiowatch.studio.words import Level, Sentence
from studiowatch.ui.models.times import MINUTE_MS

from .clock import NOW_MS

GOOD_BOARD = BoardView(
    connected=True, port="/dev/ttyUSB0", sensor="SHT4x", last_ms=NOW_MS - 400, counts=LineCounts(good=41_230)
)
CALM_ROOM = RoomView(
    time_ms=NOW_MS,
    temperature_C=20.6,
    humidity_pct=52,
    air_speed_m_s=0.04,
    dew_point_C=10.4,
    film_above_dew_K=10.2,
    movement=Movement.STILL,
)
FAN_ROOM = replace(
    CALM_ROOM,
    humidity_pct=57,
    air_speed_m_s=0.34,
    dew_point_C=11.8,
    film_C=18.4,
    film_above_dew_K=6.6,
    movement=Movement.FAN,
    moving_since_ms=NOW_MS - 5 * MINUTE_MS,
    air_level=Level.ACT,
    particles_per_m3_5um=2400,
)
GOOD = Sentence(
    level=Level.CALM,
    headline="Good to lay a coat",
    detail="The air is still, 20.6 °C and 52 %. Nothing on the rack is wet.",
    advice="",
)
CHECKS = (
    ("isolation-waterborne", GOOD),
    ("gloss-waterborne", GOOD),
    (
        "satin-waterborne",
        Sentence(
            level=Level.CAUTION,
            headline="Not yet: a fan is on",
            detail="Air at the rack moves at 0.34 m/s.",
            advice="Turn it off first.",
        ),
    ),
    ("gloss-solvent", GOOD),
)
