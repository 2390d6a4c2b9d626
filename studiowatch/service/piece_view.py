"""A piece as the window and the terminal see it: its coats, how far each is, and what comes next."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from studiowatch.coats.stages import Orientation, Stage, Surface
from studiowatch.studio.pieces import Coat, Shape, face_m2
from studiowatch.studio.review_views import Risk
from studiowatch.studio.unready import Unready
from studiowatch.studio.words import Sentence


@dataclass(frozen=True, slots=True, kw_only=True)
class StageTime:
    """When a stage was or will be reached, UTC ms.

    `reached` is True when it lies behind. `p10_ms` to `p90_ms` bound it. DRY_TO_RECOAT counts as reached at its upper
    bound, which is what she is told; none of its times lies before the sheet's own recoat time. None means that it is
    not reached in this air within what is looked at.
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
    unready : Unready or None
        The last touch test or look, if that found it tacky or milky still.
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
    unready: Unready | None = None
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
    not_yet_solvent : Sentence or None
        As `not_yet` for a solvent-borne coat on one that is not, which waits until that is dry through.
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
    not_yet_solvent: Sentence | None = None
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

    def stop(self, *, solvent: bool) -> Sentence | None:
        """Return why no coat, solvent-borne or not, should go on it now, or None if it may."""
        return self.not_yet_solvent or self.not_yet if solvent else self.not_yet

    @property
    def top(self) -> CoatView | None:
        """The topmost coat that has been laid, or None."""
        laid = [coat for coat in self.coats if coat.laid_ms is not None]
        return laid[-1] if laid else None


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
