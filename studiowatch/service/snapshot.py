"""Snapshots: all that the window and the terminal may know, frozen, handed over whole."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date

from studiowatch.coats.stages import Orientation, Stage, Surface
from studiowatch.room.air_movement import Movement
from studiowatch.service.best_hours_view import BestHoursView
from studiowatch.service.board_view import BoardView
from studiowatch.service.calibration_views import CalibrationsView
from studiowatch.service.intention_view import IntentionView
from studiowatch.service.product_views import LearntView
from studiowatch.service.room_band import RoomBand
from studiowatch.speech.units import METRIC, Units
from studiowatch.studio.concern import TypedAir
from studiowatch.studio.pieces import Coat, Shape, face_m2
from studiowatch.studio.plan_shapes import FinishingPlan
from studiowatch.studio.preparation import ChoreNow, Phase, Preparation
from studiowatch.studio.recipes import BUILT_IN, Recipe
from studiowatch.studio.review_views import Risk
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
class StageTime:
    """When a stage was or will be reached, UTC ms.

    `reached` is True when it lies behind. `p10_ms` to `p90_ms` bound it. DRY_TO_RECOAT counts as reached at its upper
    bound, which is what she is told and never before the sheet's own recoat time. None means that it is not reached
    within the horizon in this air.
    """

    stage: Stage
    time_ms: int | None
    reached: bool
    p10_ms: int | None = None
    p90_ms: int | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class CoatView:
    """One coat, as drawn in the rack and in its lane.

    Attributes
    ----------
    label : str
        Short name within the stack: "isolation", "gloss 1", "paint".
    laid_ms : int or None
        None while planned.
    surface : Surface or None
        Wet, tacky or dry; None while planned.
    milky : bool
        True while a clear coat has not yet cleared.
    wet_um, dry_um : float
        Thickness as laid and when dry, µm.
    water_g_m2 : float or None
        Water still in the film, g/m².
    stages : tuple of StageTime
        In the order of Stage.
    limit_C : float or None
        Temperature that this film must stay above, °C.
    limit_humidity_pct : float or None
        Humidity that the room must stay below while it dries, %.
    unlogged_ms : int
        How long this coat dried with nobody watching the room, ms; its times are less certain for it.
    film_trace : tuple of (int, float)
        Film temperature, °C, about once a minute (UTC ms) while it was wet.
    unwatched, doubt : str
        One sentence each, or "": why a laid coat is not watched, and where a touch test or a look does not fit anything
        that the sheet allows.
    solvent, sealed_in_g_m2, trapped_g_m2, sealed_fluid, soaked_g_m2
        Whether it is solvent-borne, and `water_g_m2` is solvent; what was sealed in below when it was laid too early,
        what is left of it, g/m², and its name: "water"; what a bare support took up at its laying, g/m².
    blush_from_ms, blush_min, weighing
        UTC ms from which a solvent-borne coat may have blushed, or None, and for how long it was near the dew point,
        min; what weighing the bottle would narrow, one sentence at the newest coat of each product, else "".
    risk : Risk or None
        The present risk that a clear coat comes out cloudy, with its strongest reason; None if it is not followed.
    recorded : Coat or None
        The coat as it stands in the records, for whoever corrects it.
    """

    key: str
    sheet: str
    label: str
    sheen: str
    clear_film: bool
    laid_ms: int | None
    surface: Surface | None
    milky: bool
    wet_um: float
    dry_um: float
    water_g_m2: float | None = None
    film_C: float | None = None
    covered: bool = False
    stages: tuple[StageTime, ...] = ()
    limit_C: float | None = None
    limit_humidity_pct: float | None = None
    unlogged_ms: int = 0
    film_trace: tuple[tuple[int, float], ...] = ()
    unwatched: str = ""
    doubt: str = ""
    solvent: bool = False
    sealed_in_g_m2: float = 0.0
    trapped_g_m2: float = 0.0
    sealed_fluid: str = "water"
    soaked_g_m2: float = 0.0
    blush_from_ms: int | None = None
    blush_min: float = 0.0
    weighing: str = ""
    risk: Risk | None = None
    recorded: Coat | None = None

    def stage(self, stage: Stage) -> StageTime | None:
        """Return the time of `stage`, or None if this coat has no such stage."""
        return next((time for time in self.stages if time.stage is stage), None)


@dataclass(frozen=True, slots=True, kw_only=True)
class SolventView:
    """What one coat as thick as its sheet says gives off on a piece: solvent, g, and the time in which it leaves, h."""

    sheet: str
    solvent_g: float
    over_h: float


@dataclass(frozen=True, slots=True, kw_only=True)
class CorrectionView:
    """What was corrected at a time, UTC ms: "gloss 1: laid 13:05 instead of 13:50"."""

    time_ms: int
    words: str


@dataclass(frozen=True, slots=True, kw_only=True)
class ArchivedView:
    """A piece that is off the rack, as the archive lists it; `last_ms` is when its last coat was laid, UTC ms."""

    key: str
    title: str
    width_cm: float
    height_cm: float
    support: str
    notes: str
    due: date | None
    sheets: tuple[str, ...]
    last_ms: int | None
    photo: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class UndoView:
    """What undo and redo would do, in words, or "" where there is nothing: "laid gloss 1 on Kiln Light"."""

    undo: str = ""
    redo: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class PieceView:
    """One piece on the rack.

    Attributes
    ----------
    next_step : str
        In plain words: "recoat: satin, 62 mL".
    next_ms, next_p10_ms, next_p90_ms : int or None
        When it is ready for that, as it is told, and the likely range, UTC ms.
    not_yet : Sentence or None
        Why no coat should go on it now, whatever the room: the one below is wet, or not ready; None if it may.
    may_cloud : Sentence or None
        Why the next coat planned may come out cloudy if it were laid now and the room stayed so; None if it hardly may.
    stack_checks : tuple of (str, Sentence)
        For each sheet that would break the order of coats if it were laid now: how.
    would_seal_g_m2, would_seal_fluid
        What a coat laid now would seal in, g/m², and its name; `solvents` is for each solvent-borne sheet.
    untested : str
        Label of its topmost coat if nobody has touched or looked at it yet, and it is a clear one; else "".
    corrections : tuple of CorrectionView
        What was corrected on it, newest first.
    """

    key: str
    title: str
    width_cm: float
    height_cm: float
    support: str
    orientation: Orientation
    due: date | None
    coats: tuple[CoatView, ...]
    shape: Shape = Shape.RECTANGLE
    panels: int = 1
    photo: str = ""
    notes: str = ""
    next_step: str = ""
    next_ms: int | None = None
    next_p10_ms: int | None = None
    next_p90_ms: int | None = None
    slack_days: int | None = None
    not_yet: Sentence | None = None
    stack_checks: tuple[tuple[str, Sentence], ...] = ()
    may_cloud: Sentence | None = None
    would_seal_g_m2: float = 0.0
    would_seal_fluid: str = "water"
    solvents: tuple[SolventView, ...] = ()
    untested: str = ""
    corrections: tuple[CorrectionView, ...] = ()

    @property
    def area_m2(self) -> float:
        """Area to be coated, m²: that of all the panels of a set."""
        return face_m2(self.shape, self.width_cm, self.height_cm) * self.panels

    @property
    def top(self) -> CoatView | None:
        """The topmost coat that has been laid, or None."""
        laid = [coat for coat in self.coats if coat.laid_ms is not None]
        return laid[-1] if laid else None


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
