"""Made-up studios for the window's tests and pictures: one snapshot for each state worth looking at."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from concurrent.futures import Future
from dataclasses import dataclass, field, replace
from datetime import UTC, date, datetime
from math import exp
from pathlib import Path

import numpy as np

from studiowatch.board.events import LineCounts
from studiowatch.board.onlooker import Onlooker
from studiowatch.coats.stages import Orientation, Stage, Surface
from studiowatch.room.air_movement import Movement
from studiowatch.room.readings import Channel, Reading
from studiowatch.room.typed import Felt
from studiowatch.service.board_view import BoardView
from studiowatch.service.commands import Command, Refused
from studiowatch.service.ports import PastView, Series
from studiowatch.service.product_views import LearntView, SheetChoice, SheetEntry
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.service.snapshot import (
    CoatView,
    PieceView,
    PromptView,
    RoomView,
    Snapshot,
    SolventView,
    StageTime,
    WarningView,
)
from studiowatch.studio.concern import TypedAir
from studiowatch.studio.pieces import Coat
from studiowatch.studio.sentence import NO_BOARD
from studiowatch.studio.warnings import WarningState
from studiowatch.studio.words import Level, Sentence
from studiowatch.ui.models.times import DAY_MS, HOUR_MS, MINUTE_MS
from tests.ui.past_scenes import past

NOW_MS = int(datetime(2026, 3, 4, 14, 12, tzinfo=UTC).timestamp() * 1000)
PAST = past(NOW_MS)

SHEETS = (
    SheetChoice(
        name="isolation-waterborne",
        title="Isolation coat, water-borne",
        sheen="gloss",
        clear_film=True,
        solvent=False,
        wet_um=90,
        density_kg_m3=1030,
        cautions=("Keep the torch away until the mesh cover is off and no solvent stands open.",),
    ),
    SheetChoice(
        name="gloss-waterborne",
        title="Gloss varnish, water-borne",
        sheen="gloss",
        clear_film=True,
        solvent=False,
        wet_um=100,
        density_kg_m3=1040,
    ),
    SheetChoice(
        name="satin-waterborne",
        title="Satin varnish, water-borne",
        sheen="satin",
        clear_film=True,
        solvent=False,
        wet_um=80,
        density_kg_m3=1040,
        cautions=("One or two coats with matting agent at most: more dull the colours below.",),
    ),
    SheetChoice(
        name="gloss-solvent",
        title="Gloss varnish, solvent-borne",
        sheen="gloss",
        clear_film=True,
        solvent=True,
        wet_um=70,
        density_kg_m3=880,
    ),
)


PAINT_SHEET = SheetChoice(
    name="paint-poured",
    title="Acrylic paint, poured layer",
    sheen="",
    clear_film=False,
    solvent=False,
    wet_um=1500,
    density_kg_m3=1200,
)


def _stages(laid_ms: int, hours: Sequence[tuple[Stage, float]], now_ms: int) -> tuple[StageTime, ...]:
    times = [(stage, laid_ms + round(late * HOUR_MS)) for stage, late in hours]
    return tuple(StageTime(stage=stage, time_ms=at, reached=at <= now_ms) for stage, at in times)


VARNISH_HOURS = (
    (Stage.SET_TO_TOUCH, 1.1),
    (Stage.DUST_FREE, 1.4),
    (Stage.TACK_FREE, 2.2),
    (Stage.DRY_TO_TOUCH, 2.6),
    (Stage.CLEAR, 3.0),
    (Stage.DRY_TO_RECOAT, 18.0),
    (Stage.CURED, 24.0 * 14),
)


def coat(
    key: str, label: str, laid_ago_ms: int | None = None, *, sheet: str = "gloss-waterborne", **more: object
) -> CoatView:
    """Return a clear coat laid some time ago, or planned."""
    laid_ms = None if laid_ago_ms is None else NOW_MS - laid_ago_ms
    plain = CoatView(
        key=key,
        sheet=sheet,
        label=label,
        sheen="satin" if "satin" in label else "gloss",
        clear_film=True,
        laid_ms=laid_ms,
        surface=None,
        milky=False,
        wet_um=100,
        dry_um=34,
        stages=() if laid_ms is None else _stages(laid_ms, VARNISH_HOURS, NOW_MS),
        limit_C=9,
        limit_humidity_pct=75,
        film_trace=() if laid_ms is None else _film_trace(laid_ms),
        recorded=Coat(key=key, sheet=sheet, laid_ms=laid_ms, volume_mL=None if laid_ms is None else 54),
    )
    return replace(plain, **more)


def _film_trace(laid_ms: int) -> tuple[tuple[int, float], ...]:
    """Return a film that cools within minutes and warms again as it dries, up to now, °C."""
    minutes = range(min((NOW_MS - laid_ms) // 60_000, 156) + 1)
    return tuple(
        (laid_ms + minute * 60_000, 18.4 + 2.1 * exp(-minute / 6) + 1.6 * (minute / 156) ** 6) for minute in minutes
    )


def paint(key: str, laid_ago_ms: int, dry_um: float = 90, **more: object) -> CoatView:
    """Return the paint beneath."""
    made = CoatView(
        key=key,
        sheet="paint-acrylic",
        label="paint",
        sheen="satin",
        clear_film=False,
        laid_ms=NOW_MS - laid_ago_ms,
        surface=Surface.DRY,
        milky=False,
        wet_um=dry_um * 2,
        dry_um=dry_um,
    )
    return replace(made, **more)


DRY_MONTH = 30 * DAY_MS

ORCHARD = PieceView(
    key="orchard",
    title="Orchard at Low Water",
    width_cm=60,
    height_cm=90,
    support="canvas",
    orientation=Orientation.FACE_UP,
    due=date(2026, 3, 20),
    coats=(
        paint("o0", DRY_MONTH),
        coat("o1", "isolation", 2 * DAY_MS, sheet="isolation-waterborne", surface=Surface.DRY, dry_um=30),
        coat("o2", "gloss 1", 38 * MINUTE_MS, surface=Surface.WET, milky=True, water_g_m2=52, film_C=18.9),
        coat("o3", "gloss 2"),
        coat("o4", "satin", sheet="satin-waterborne", dry_um=28),
    ),
    next_step="recoat: gloss 2, 54 mL",
    next_ms=NOW_MS + 18 * HOUR_MS,
    next_p10_ms=NOW_MS + 17 * HOUR_MS,
    next_p90_ms=NOW_MS + 20 * HOUR_MS,
    slack_days=6,
)
LADDER = PieceView(
    key="ladder",
    title="Blue Ladder",
    width_cm=40,
    height_cm=40,
    support="canvas",
    orientation=Orientation.FACE_UP,
    due=date(2026, 3, 12),
    coats=(
        paint("l0", DRY_MONTH, 110),
        coat(
            "l1",
            "isolation",
            20 * MINUTE_MS,
            sheet="isolation-waterborne",
            surface=Surface.WET,
            milky=True,
            water_g_m2=60,
            wet_um=92,
            dry_um=32,
            film_C=18.4,
        ),
        coat("l2", "gloss 1"),
        coat("l3", "gloss 2"),
    ),
    next_step="recoat: gloss 1, 16 mL",
    next_ms=NOW_MS + 21 * HOUR_MS,
    slack_days=0,
)
QUARRY = PieceView(
    key="lamp",
    title="Lamp in the Fog",
    width_cm=100,
    height_cm=100,
    support="panel",
    orientation=Orientation.FACE_UP,
    due=date(2026, 3, 6),
    coats=(
        paint("q0", DRY_MONTH, 70),
        coat("q1", "isolation", 4 * DAY_MS, sheet="isolation-waterborne", surface=Surface.DRY, dry_um=30),
        coat("q2", "gloss 1", 3 * DAY_MS, surface=Surface.DRY),
        coat("q3", "gloss 2", 2 * HOUR_MS, surface=Surface.TACKY, water_g_m2=6, covered=True),
        coat("q4", "satin", sheet="satin-waterborne", dry_um=28),
    ),
    next_step="recoat: satin, 62 mL",
    next_ms=NOW_MS + 4 * HOUR_MS,
    next_p10_ms=NOW_MS + 3 * HOUR_MS,
    next_p90_ms=NOW_MS + 6 * HOUR_MS,
    slack_days=-2,
)
HERONS = PieceView(
    key="herons",
    title="Two Herons, Waiting",
    width_cm=30,
    height_cm=30,
    support="paper on panel",
    orientation=Orientation.VERTICAL,
    due=date(2026, 4, 9),
    coats=(
        paint("h0", 2 * DAY_MS + HOUR_MS, 420, surface=Surface.DRY),
        coat("h1", "isolation", sheet="isolation-waterborne", dry_um=30),
        coat("h2", "satin", sheet="satin-waterborne", dry_um=28),
    ),
    next_step="isolation coat, 8 mL",
    next_ms=NOW_MS + 50 * HOUR_MS,
    slack_days=21,
)

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
AIR = Sentence(
    level=Level.ACT,
    headline="Air is moving over two wet coats",
    detail="A fan came on at 14:07 (0.34 m/s). Orchard at Low Water and Blue Ladder are still wet.",
    advice="Turn it off or turn it away.",
)
DAMP = Sentence(level=Level.CAUTION, headline="Humidity above 75 %", detail="The room was at 78 %.")
BLIND = Sentence(
    level=Level.ACT,
    headline="The board has fallen silent",
    detail="No reading for 40 seconds while Orchard at Low Water is wet.",
    advice="Check the USB plug at both ends.",
)


def warning(key: str, sentence: Sentence, state: WarningState, ago_ms: int, **more: object) -> WarningView:
    """Return a warning that began some time ago."""
    cleared = NOW_MS - ago_ms + 12 * MINUTE_MS if state is WarningState.CLEARED else None
    plain = WarningView(
        key=key,
        kind="air-moving",
        state=state,
        level=sentence.level,
        sentence=sentence,
        began_ms=NOW_MS - ago_ms,
        cleared_ms=cleared,
        piece_titles=("Orchard at Low Water", "Blue Ladder"),
    )
    return replace(plain, **more)


AIR_WARNING = warning("w1", AIR, WarningState.RAISED, 5 * MINUTE_MS, sound=True)
PAST_WARNINGS = (
    warning(
        "w2",
        replace(AIR, level=Level.CAUTION, headline="Air moving, coat covered"),
        WarningState.CLEARED,
        6 * HOUR_MS,
        piece_titles=("Lamp in the Fog",),
    ),
    warning("w3", DAMP, WarningState.CLEARED, 26 * HOUR_MS, kind="damp", piece_titles=()),
    warning(
        "w4",
        Sentence(level=Level.CALM, headline="Board unplugged for 6 min"),
        WarningState.CLEARED,
        28 * HOUR_MS,
        kind="board-silent",
        piece_titles=(),
    ),
)
PROMPTS = (
    PromptView(
        key="p1",
        due_ms=NOW_MS - 2 * MINUTE_MS,
        text="Second bubble pass, scrape drips",
        piece_key="ladder",
        piece_title="Blue Ladder",
        overdue=True,
        caution="Torch: no solvent, vapour or mesh cover near; extinguisher at hand.",
    ),
    PromptView(
        key="p2",
        due_ms=NOW_MS + 19 * MINUTE_MS,
        text="Scrape drips",
        piece_key="orchard",
        piece_title="Orchard at Low Water",
    ),
    PromptView(
        key="p3",
        due_ms=NOW_MS + 108 * MINUTE_MS,
        text="Has the milkiness cleared?",
        piece_key="ladder",
        piece_title="Blue Ladder",
    ),
    PromptView(
        key="p4",
        due_ms=NOW_MS + 4 * HOUR_MS,
        text="Recoat: satin, 62 mL",
        piece_key="lamp",
        piece_title="Lamp in the Fog",
    ),
    PromptView(
        key="p5",
        due_ms=NOW_MS + 18 * HOUR_MS,
        text="Recoat: gloss 2, 54 mL",
        piece_key="orchard",
        piece_title="Orchard at Low Water",
    ),
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
    warnings=(
        warning(
            "w9",
            BLIND,
            WarningState.RAISED,
            40_000,
            kind="board-silent",
            sound=True,
            piece_titles=("Orchard at Low Water",),
        ),
    ),
)
LEARNT = LearntView(
    sheet="gloss-waterborne",
    times_as_long=1.3,
    low=1.1,
    high=1.6,
    tests=3,
    coats=2,
    sentence="Gloss varnish, water-borne dries 1.3 times as long here as its sheet says (1.1 to 1.6), from 3 tests.",
)
# 0.54 m² at 70 µm is 37.8 mL; at 0.4 of solids 22.7 mL of solvent of 0.78 g/mL: 17.7 g.
VAPOUR = (SolventView(sheet="gloss-solvent", solvent_g=17.7, over_h=1.0),)
WEIGHING = "Weigh the bottle: it would narrow the range of dry to recoat from 15.0 to 21.0 h to about 16.5 to 19.5 h."
DOUBT = (
    "Found tacky 5.2 h after laying, which does not fit its sheet, its amount and this room: test again, and check "
    "what was recorded; its range is wider for it."
)
NOT_YET = Sentence(
    level=Level.ACT,
    headline="Not yet: gloss 1 is still wet",
    detail="Ready from Thu 08:12, perhaps from Thu 07:12.",
    advice="Water sealed in below clouds the coat above. A touch test at an edge comes before the next coat.",
)
EARLY = replace(
    ORCHARD,
    coats=(*ORCHARD.coats[:2], replace(ORCHARD.coats[2], weighing=WEIGHING), *ORCHARD.coats[3:]),
    not_yet=NOT_YET,
    would_seal_g_m2=41.6,
    solvents=VAPOUR,
)
SEALING = replace(
    QUARRY, coats=(*QUARRY.coats[:3], replace(QUARRY.coats[3], sealed_in_g_m2=3.3, trapped_g_m2=1.9), QUARRY.coats[4])
)
DOUBTED = replace(LADDER, coats=(LADDER.coats[0], replace(LADDER.coats[1], doubt=DOUBT), *LADDER.coats[2:]))
BLUSHED = replace(
    HERONS,
    coats=(
        *HERONS.coats[:1],
        coat(
            "h1",
            "gloss",
            40 * MINUTE_MS,
            sheet="gloss-solvent",
            solvent=True,
            surface=Surface.WET,
            water_g_m2=24,
            wet_um=70,
            dry_um=28,
            film_C=12.1,
            blush_from_ms=NOW_MS - 2 * MINUTE_MS,
            blush_min=2.0,
        ),
        HERONS.coats[2],
    ),
    next_step="recoat: satin, 8 mL",
)
TOLD = replace(FOUR_CALM, pieces=(EARLY, SEALING, DOUBTED, BLUSHED), learnt=(LEARNT,))
UNCALIBRATED = replace(
    FOUR_CALM,
    room=replace(CALM_ROOM, air_speed_m_s=None, air_signal_mV=612.4, film_C=18.4, film_above_dew_K=8.0),
    board=replace(GOOD_BOARD, checked=False, counts=LineCounts(good=900, faulty=3, lost=1204)),
)
READ_AGAIN = PromptView(
    key=f"room@{NOW_MS - 72 * MINUTE_MS}:read-room",
    due_ms=NOW_MS - 12 * MINUTE_MS,
    text="Read the hygrometer, and type it",
    piece_key="orchard",
    piece_title="Orchard at Low Water",
    overdue=True,
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
NOT_READ = Sentence(
    level=Level.CAUTION,
    headline="The room was not read since 11:02",
    detail="Orchard at Low Water is still drying, in air that nobody knows: the ready times are the wider for it.",
    advice="Read the hygrometer, and type what it says.",
)
TYPED_LONG_AGO = replace(
    TYPED,
    room=replace(TYPED.room, typed=TypedAir(time_ms=NOW_MS - 190 * MINUTE_MS, age_s=11_400.0)),
    sentence=NOT_READ,
    pieces=(ORCHARD, LADDER),
    prompts=(READ_AGAIN, *PROMPTS),
    warnings=(
        warning(
            "w10",
            NOT_READ,
            WarningState.RAISED,
            190 * MINUTE_MS,
            kind="reading-old",
            piece_titles=("Orchard at Low Water",),
        ),
        warning(
            "w11",
            NOT_READ,
            WarningState.CLEARED,
            27 * HOUR_MS,
            kind="reading-old",
            piece_titles=("Orchard at Low Water",),
        ),
    ),
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
AHEAD = Sentence(
    level=Level.CAUTION,
    headline="Humidity will pass the limit in about 40 minutes",
    detail="If the room goes on like this it passes 75 % at about 14:54, between 14:38 and 15:20: Orchard at "
    "Low Water.",
    advice="Warm the room gently; keep the heater's air off the pieces, and the heater clear of fabric.",
)
DUSTY = Sentence(
    level=Level.CAUTION,
    headline="Dust over two sticky coats",
    detail="400,000 specks over 5 µm in a cubic metre; it sticks until about 15:05: Orchard at Low Water.",
    advice="Set the mesh cover once no more bubbles rise; move little, and stir nothing up.",
)
MATTING = Sentence(
    level=Level.CAUTION,
    headline="Too many coats with matting agent",
    detail="3 lie on each other, 2 are enough: Blue Ladder.",
    advice="Lay no more satin or matt on it: each one dulls the dark colours below.",
)
AHEAD_WARNING = warning(
    "w11",
    AHEAD,
    WarningState.RAISED,
    2 * MINUTE_MS,
    kind="damp",
    piece_titles=("Orchard at Low Water",),
    basis="75 %: the product's sheet; care 5 % below it: assumption. Foreseen by the room's last hour.",
    expected_ms=NOW_MS + 42 * MINUTE_MS,
)
MANY_WARNED = replace(
    FOUR_WARNED,
    warnings=(
        replace(AIR_WARNING, basis="Draught rate of ISO 7730: 0.15 to 0.31 m/s at 18 to 28 °C; 0.5 m/s: assumption."),
        AHEAD_WARNING,
        warning("w12", DUSTY, WarningState.HEARD, 9 * MINUTE_MS, kind="dust", basis="ISO 14644-1, class 9."),
        warning("w13", MATTING, WarningState.RAISED, 50 * MINUTE_MS, kind="matting-build-up", basis="The sheet."),
        *PAST_WARNINGS,
    ),
)
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


@dataclass
class ScriptedDesk:
    """A desk that keeps what it was asked, and answers as the test says."""

    answer: str | Exception = "made"
    hold: bool = False
    commands: list[Command] = field(default_factory=list)
    futures: list[Future[str]] = field(default_factory=list)
    listeners: list[Callable[[Snapshot], None]] = field(default_factory=list)
    offered: tuple[SheetChoice, ...] = SHEETS
    onlooker: Onlooker = field(default_factory=Onlooker)
    photo_folder: Path | None = None
    on_shelf: tuple[SheetEntry, ...] = ()

    def submit(self, command: Command) -> Future[str]:
        future: Future[str] = Future()
        self.commands.append(command)
        self.futures.append(future)
        if not self.hold:
            self.settle(future)
        return future

    def settle(self, future: Future[str]) -> None:
        if isinstance(self.answer, Exception):
            future.set_exception(self.answer)
        else:
            future.set_result(self.answer)

    def refuse(self, sentence: str) -> None:
        self.answer = Refused(sentence)

    def subscribe(self, listener: Callable[[Snapshot], None]) -> None:
        self.listeners.append(listener)

    def sheets(self) -> Sequence[SheetChoice]:
        return self.offered

    def shelf(self) -> Sequence[SheetEntry]:
        return self.on_shelf or SheetShelf.open().entries()

    def publish(self, snapshot: Snapshot) -> None:
        for listener in self.listeners:
            listener(snapshot)


@dataclass
class ScriptedClock:
    """A clock that stands until it is moved."""

    now_ms: int = NOW_MS
    seconds: float = 100.0

    def utc_ms(self) -> int:
        return self.now_ms

    def monotonic_s(self) -> float:
        return self.seconds


class NoLog:
    """A log that holds nothing: what is laid now needs none."""

    def append(self, readings: Sequence[Reading]) -> None:
        raise AssertionError(f"nothing is appended here, not {len(readings)} readings")

    def seal(self, before_ms: int) -> int:
        raise AssertionError(f"nothing is sealed here, not up to {before_ms}")

    def between(self, start_ms: int, end_ms: int) -> Sequence[Reading]:
        del start_ms, end_ms
        return ()

    minute_means = between


class MadeUpHistory:
    """Two days of a believable room, drawn from a few sines: only for the eye."""

    def span_ms(self) -> tuple[int, int] | None:
        return NOW_MS - 2 * DAY_MS, NOW_MS

    def series(self, channel: Channel, start_ms: int, end_ms: int, buckets: int) -> Series:
        end_ms = min(end_ms, NOW_MS)
        start_ms = max(start_ms, NOW_MS - 2 * DAY_MS)
        step = max(1000, (end_ms - start_ms) // max(1, buckets))
        times = np.arange(start_ms, max(start_ms, end_ms), step, dtype=np.int64)
        phase = 2 * np.pi * (times % DAY_MS) / DAY_MS
        wobble = 0.5 * np.sin(times / 61_000.0) + 0.5 * np.sin(times / 173_000.0)
        mean, noise = {
            Channel.TEMPERATURE: (20.0 - 1.4 * np.cos(phase - 0.6) + 0.06 * wobble, 0.08),
            Channel.HUMIDITY: (56.0 + 8.0 * np.cos(phase - 0.3) + 0.5 * wobble, 0.5),
            Channel.AIR_SPEED: (_fan(times) + 0.012 * wobble, 0.02),
        }.get(channel, (np.empty(0), 0.0))
        if not len(mean):
            times = np.empty(0, dtype=np.int64)
        return Series(time_ms=times, low=mean - noise, high=mean + noise, mean=mean, bucket_ms=int(step))

    def past(self) -> PastView:
        return PAST

    def close(self) -> None:
        """Nothing is held."""


def _fan(times: np.ndarray) -> np.ndarray:
    ago = NOW_MS - times
    on = (ago < 5 * MINUTE_MS) | ((ago > 5 * HOUR_MS) & (ago < 5.8 * HOUR_MS))
    return np.where(on, 0.33, 0.05)
