"""Made-up studios: one snapshot for each state worth looking at. `SCENES` names those that are drawn."""

from __future__ import annotations

from dataclasses import replace

from studiowatch.board.events import LineCounts
from studiowatch.room.typed import Felt
from studiowatch.service.board_view import BoardView
from studiowatch.service.snapshot import RoomView, Snapshot
from studiowatch.studio.concern import TypedAir
from studiowatch.studio.sentence import NO_BOARD
from studiowatch.studio.warnings import WarningState
from studiowatch.studio.words import Level, Sentence
from studiowatch.ui.models.times import HOUR_MS, MINUTE_MS

from .clock import NOW_MS
from .pieces import BLUSHED, DOUBTED, EARLY, HERONS, LADDER, ORCHARD, QUARRY, SEALING
from .prompts import PROMPTS, READ_AGAIN
from .rooms import CALM_ROOM, CHECKS, FAN_ROOM, GOOD, GOOD_BOARD
from .sheets import LEARNT
from .warned import (
    AHEAD,
    AHEAD_WARNING,
    AIR,
    AIR_WARNING,
    BLIND,
    MANY_WARNINGS,
    NOT_READ,
    NOT_READ_WARNINGS,
    PAST_WARNINGS,
    SILENT_WARNING,
    warning,
)

FIRST_RUN = Snapshot(time_ms=NOW_MS, board=BoardView(), room=RoomView(time_ms=NOW_MS), sentence=NO_BOARD)
EMPTY = Snapshot(time_ms=NOW_MS, board=GOOD_BOARD, room=CALM_ROOM, sentence=GOOD, room_checks=CHECKS)
ONE_WET = Snapshot(
    time_ms=NOW_MS,
    board=GOOD_BOARD,
    room=replace(CALM_ROOM, film_C=18.9, film_above_dew_K=8.5),
    sentence=Sentence(
        level=Level.CALM,
        headline="All is well",
        detail="Orchard at Low Water is wet until about 16:12; the room is still and mild.",
    ),
    pieces=(ORCHARD,),
    prompts=PROMPTS[1:2],
    room_checks=CHECKS,
)
FOUR_WARNED = Snapshot(
    time_ms=NOW_MS,
    board=GOOD_BOARD,
    room=FAN_ROOM,
    sentence=AIR,
    pieces=(ORCHARD, LADDER, QUARRY, HERONS),
    prompts=PROMPTS,
    warnings=(AIR_WARNING, *PAST_WARNINGS),
    room_checks=CHECKS,
)
FOUR_CALM = replace(
    FOUR_WARNED,
    room=replace(CALM_ROOM, film_C=18.4, film_above_dew_K=8.0, air_speed_m_s=0.12),
    sentence=ONE_WET.sentence,
    warnings=(warning("w1", AIR, WarningState.CLEARED, HOUR_MS), *PAST_WARNINGS),
)
HEARD = replace(FOUR_WARNED, warnings=(replace(AIR_WARNING, state=WarningState.HEARD, sound=False), *PAST_WARNINGS))
SILENT = replace(
    ONE_WET,
    board=replace(
        GOOD_BOARD, connected=False, silent=True, last_ms=NOW_MS - 40_000, trouble="The board on ttyUSB0 was unplugged."
    ),
    sentence=BLIND,
    warnings=(SILENT_WARNING,),
)
TOLD = replace(FOUR_CALM, pieces=(EARLY, SEALING, DOUBTED, BLUSHED), learnt=(LEARNT,))
UNCALIBRATED = replace(
    FOUR_CALM,
    room=replace(CALM_ROOM, air_speed_m_s=None, air_signal_mV=612.4, film_C=18.4, film_above_dew_K=8.0),
    board=replace(GOOD_BOARD, checked=False, counts=LineCounts(good=900, faulty=3, lost=1204)),
)
TYPED = replace(
    ONE_WET,
    board=BoardView(),
    room=replace(
        CALM_ROOM,
        air_speed_m_s=None,
        film_C=18.9,
        film_above_dew_K=8.5,
        typed=TypedAir(time_ms=NOW_MS - 12 * MINUTE_MS, age_s=720.0, felt=Felt.STILL),
    ),
    sentence=Sentence(
        level=Level.CALM,
        headline="All is well: a coat drying",
        detail="20.6 °C, 52 %, no moving air felt. Last read 12 min ago; air speed is not measured. "
        "Orchard at Low Water.",
    ),
)
TYPED_LONG_AGO = replace(
    TYPED,
    room=replace(TYPED.room, typed=TypedAir(time_ms=NOW_MS - 190 * MINUTE_MS, age_s=11_400.0)),
    sentence=NOT_READ,
    pieces=(ORCHARD, LADDER),
    prompts=(READ_AGAIN, *PROMPTS),
    warnings=NOT_READ_WARNINGS,
)
_TITLES = (
    "Ferry Slip",
    "The Long Allotment",
    "Copper Beech, First Frost and the Gate Left Open All Night",
    "Nine Buoys",
    "Salt Cellar",
    "Window with Quinces",
    "Rook Weather",
    "Underpass",
)
TWELVE = replace(
    FOUR_WARNED,
    pieces=(
        *FOUR_WARNED.pieces,
        *(
            replace((ORCHARD, LADDER, QUARRY, HERONS)[index % 4], key=f"t{index}", title=title)
            for index, title in enumerate(_TITLES)
        ),
    ),
)
MANY_WARNED = replace(FOUR_WARNED, warnings=MANY_WARNINGS)
FORETOLD = replace(FOUR_WARNED, sentence=AHEAD, warnings=(AHEAD_WARNING, *PAST_WARNINGS))
TWENTY = replace(
    FOUR_CALM,
    pieces=tuple(
        replace(piece, key=f"{piece.key}{number}", title=f"{piece.title}, {number + 1}")
        for number in range(5)
        for piece in FOUR_CALM.pieces
    ),
)
SCENES = {
    "many-warned": MANY_WARNED,
    "foretold": FORETOLD,
    "first-run": FIRST_RUN,
    "empty": EMPTY,
    "one-wet": ONE_WET,
    "four-warned": FOUR_WARNED,
    "four-calm": FOUR_CALM,
    "twelve": TWELVE,
    "twenty": TWENTY,
    "silent": SILENT,
    "uncalibrated": UNCALIBRATED,
    "told": TOLD,
    "typed": TYPED,
    "typed-long-ago": TYPED_LONG_AGO,
}
