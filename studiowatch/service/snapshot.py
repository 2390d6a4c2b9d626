"""Snapshots: all that the window and the terminal may know, frozen, handed over whole."""

from __future__ import annotations

from dataclasses import dataclass, field

from studiowatch.room.air_movement import Movement
from studiowatch.service.best_hours_view import BestHoursView
from studiowatch.service.board_view import BoardView
from studiowatch.service.calibration_views import CalibrationsView
from studiowatch.service.intention_view import IntentionView
from studiowatch.service.piece_view import ArchivedView, PieceView
from studiowatch.service.product_views import LearntView
from studiowatch.service.room_band import RoomBand
from studiowatch.speech.units import METRIC, Units
from studiowatch.studio.concern import TypedAir
from studiowatch.studio.plan_shapes import FinishingPlan
from studiowatch.studio.preparation import ChoreNow, Phase, Preparation
from studiowatch.studio.recipes import BUILT_IN, Recipe
from studiowatch.studio.warnings import WarningState
from studiowatch.studio.words import Level, Sentence
from studiowatch.studio.working_hours import WorkingHours


@dataclass(frozen=True, slots=True, kw_only=True)
class RoomView:
    """The room now. None is "not measured".

    Attributes
    ----------
    film_C : float or None
        Temperature of the coldest wet film, °C.
    film_above_dew_K : float or None
        Margin of that film (or of the air, if nothing is wet) over the dew point, K.
    movement : Movement
        What the two-stage detector says; `moving_since_ms` is back-dated to when it began.
    temperature_level, humidity_level, air_level : Level
        How each figure stands against the limits of the coats that are wet now.
    typed : TypedAir or None
        Where temperature or humidity was typed from a hygrometer: when, how long ago, and what was felt of the air.
    """

    time_ms: int
    temperature_C: float | None = None
    humidity_pct: float | None = None
    air_speed_m_s: float | None = None
    air_signal_mV: float | None = None
    particles_per_m3_5um: float | None = None
    dew_point_C: float | None = None
    film_C: float | None = None
    film_above_dew_K: float | None = None
    movement: Movement = Movement.UNKNOWN
    moving_since_ms: int | None = None
    temperature_level: Level = Level.CALM
    humidity_level: Level = Level.CALM
    air_level: Level = Level.CALM
    typed: TypedAir | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class PromptView:
    """Something to do at the rack at a time; `caution` belongs beside it, at the step where it bites.

    `missed` says that its time is long over, `useless` that it is to be left now, `snoozed` that it was put off until
    `due_ms`.
    """

    key: str
    due_ms: int
    text: str
    piece_key: str
    piece_title: str
    overdue: bool = False
    caution: str = ""
    missed: bool = False
    useless: bool = False
    snoozed: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class PreparationView:
    """What is prepared for, how it stands, each chore as it stands, and the title of each coat's piece."""

    preparation: Preparation
    phase: Phase
    chores: tuple[ChoreNow, ...]
    titles: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class WarningView:
    """A warning, open or past.

    `sound` is True while it may be heard. `basis` says where its limit comes from. `expected_ms` is when the limit to
    act on is expected to be passed, UTC ms.
    """

    key: str
    kind: str
    state: WarningState
    level: Level
    sentence: Sentence
    began_ms: int
    cleared_ms: int | None
    piece_titles: tuple[str, ...]
    sound: bool = False
    remind_ms: int | None = None
    basis: str = ""
    expected_ms: int | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class UndoView:
    """What undo and redo would do, in words, or "" where there is nothing: "laid gloss 1 on Kiln Light"."""

    undo: str = ""
    redo: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Snapshot:
    """The studio at one moment.

    `warnings` holds the open ones first (most urgent first), then the latest past ones, newest first.
    `room_checks` holds, for each sheet by name, whether the room is fit to lay it now, or why not yet and for how long.
    `vapour_near` is a coat on the rack that gives off solvent vapour still, in words, or "".
    `own_fault` is one sentence after a fault of ours in the keeper's thread, else "".
    `learnt` holds the products that were tested here; `calibrations` what holds for the sensors.
    `best_hours` are when to lay the next coat of each sheet that is planned, by the room to come; `room_band` is what
    that may do, the same value until it is foretold anew, or None while too little is known.
    `intentions` are what she means to do with the room, as far as it is not over.
    `plan` is the finishing plan, None until the first is made; `recipes` may be applied, `hours` are those she works.
    `store_trouble` is one sentence when readings or records cannot be written, else "".
    `archived` holds the pieces off the rack, by title; `undo` says what undo and redo would do.
    `units` are those of its sentences, and those to show its figures in.
    """

    time_ms: int
    board: BoardView
    room: RoomView
    sentence: Sentence
    pieces: tuple[PieceView, ...] = ()
    prompts: tuple[PromptView, ...] = ()
    preparations: tuple[PreparationView, ...] = ()
    vapour_near: str = ""
    warnings: tuple[WarningView, ...] = ()
    room_checks: tuple[tuple[str, Sentence], ...] = ()
    learnt: tuple[LearntView, ...] = ()
    calibrations: CalibrationsView = field(default_factory=CalibrationsView)
    plan: FinishingPlan | None = None
    best_hours: tuple[BestHoursView, ...] = ()
    room_band: RoomBand | None = None
    intentions: tuple[IntentionView, ...] = ()
    recipes: tuple[Recipe, ...] = BUILT_IN
    hours: WorkingHours = field(default_factory=WorkingHours)
    store_trouble: str = ""
    own_fault: str = ""
    archived: tuple[ArchivedView, ...] = ()
    undo: UndoView = field(default_factory=UndoView)
    units: Units = METRIC

    def room_check(self, sheet: str) -> Sentence | None:
        """Return whether the room is fit to lay `sheet` now, or None if the sheet is not known."""
        return dict(self.room_checks).get(sheet)

    def is_due_within(self, length_ms: int, now_ms: int) -> bool:
        """Return whether a prompt or the timer of a chore falls due within `length_ms` from UTC `now_ms` on."""
        timers = (chore.until_ms for one in self.preparations for chore in one.chores if chore.until_ms is not None)
        dues_ms = (*timers, *(prompt.due_ms for prompt in self.prompts))
        return any(0 <= due_ms - now_ms < length_ms for due_ms in dues_ms)
