"""One laid coat under the logged room: the film as it is, and where it is heading in the present air."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field, replace

from studiowatch.coats.anchoring import NotModelled, anchor
from studiowatch.coats.data_sheet import DataSheet
from studiowatch.coats.draws import Draws, sample
from studiowatch.coats.film import Film, StageReached, advance, lay
from studiowatch.coats.readiness import Ready, forecast, ready_by_s
from studiowatch.coats.stages import Stage
from studiowatch.physics.air import Air
from studiowatch.physics.ranges import OutOfRange
from studiowatch.room.readings import Reading
from studiowatch.service.log_air import Moment, moments
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.service.snapshot import StageTime
from studiowatch.studio.amounts import is_measured, wet_um_of
from studiowatch.studio.pieces import Coat, Piece

DRAWS = 64  # draws of a live coat: enough for p10 and p90, and cheap at one reading a second
SEED = 20260301  # any fixed number: a coat shows the same range after a restart
HORIZON_S = 96 * 3600.0  # s, how far ahead a ready time is sought
NEVER_MS = 2**62  # ms
CALM_M_S = 0.1  # m/s, the most that a look ahead counts on: a fan over a wet coat is not there to stay; assumption
TRACE_EVERY_MS = 60_000  # ms between two points of a film's temperature


def live_draws(*, measured: bool) -> Draws:
    """Return the draws of a live coat; a measured amount narrows the thickness."""
    return sample(DRAWS, SEED, measured=measured)


def coat_fault(coat: Coat, piece: Piece, shelf: SheetShelf) -> str:
    """Return why a laid coat could not be watched, one sentence, or ""; a coat that is not modelled is no fault."""
    if coat.laid_ms is None:
        return ""
    try:
        CoatRun.begin(coat, piece, shelf.get(coat.sheet), None)
    except OutOfRange as fault:
        sentence = str(fault)
        return f"{sentence[:1].upper()}{sentence[1:]}. Check the amount and the size."
    except NotModelled:
        return ""
    return ""


@dataclass(slots=True)
class CoatRun:
    """The run of one coat.

    Attributes
    ----------
    laid_ms : int
        UTC ms when the coat was laid, by the wall clock as it is set now.
    film : Film
        The film at `at_ms`.
    at_ms : int
        UTC ms up to which the film has been advanced.
    air : Air or None
        The air it dries in now; None before the first reading.
    ahead : mapping of Stage to Ready
        When each stage was or will be reached, in seconds from `laid_ms`.
    unlogged_ms : int
        How long it dried with nobody watching, ms.
    film_trace : tuple of (int, float)
        Film temperature, °C, about once a minute (UTC ms) from the laying until it is dry to touch.
    recoat_told : bool
        Whether it was said that the next coat may go on.
    """

    coat: Coat
    sheet: DataSheet
    laid_ms: int
    film: Film
    at_ms: int
    air: Air | None = None
    ahead: Mapping[Stage, Ready] = field(default_factory=dict)
    unlogged_ms: int = 0
    film_trace: tuple[tuple[int, float], ...] = ()
    recoat_told: bool = False
    _ahead_ms: int | None = None

    @classmethod
    def begin(cls, coat: Coat, piece: Piece, sheet: DataSheet, below: Film | None) -> CoatRun:
        """Lay `coat` on `piece` over the film `below`; the coat must have been laid."""
        if coat.laid_ms is None:
            raise ValueError(f"the coat {coat.key} has not been laid")
        draws = live_draws(measured=is_measured(coat))
        wet_um = wet_um_of(coat, area_m2=piece.area_m2, density_kg_m3=sheet.density_kg_m3, sheet_wet_um=sheet.wet_um)
        film = lay(
            sheet,
            anchor(sheet, draws),
            wet_um=wet_um,
            side_m=piece.side_m,
            orientation=piece.orientation,
            thinned_pct=coat.thinned_pct,
            over=below,
        )
        return cls(coat=coat, sheet=sheet, laid_ms=coat.laid_ms, film=film, at_ms=coat.laid_ms)

    @property
    def covered(self) -> bool:
        """Whether a mesh cover stands over the coat at `at_ms`."""
        return self.coat.covered_from_ms is not None and self.at_ms >= self.coat.covered_from_ms

    def advance(self, moment: Moment) -> tuple[StageReached, ...]:
        """Dry the film up to a moment; an earlier time than the film's own changes nothing."""
        passed_ms = moment.time_ms - self.at_ms
        if passed_ms <= 0:
            return ()
        if self.is_cured:
            self.at_ms, self.air = moment.time_ms, moment.air
            return ()
        self.film, reached = advance(self.film, moment.air, passed_ms / 1000.0, covered=self.covered)
        self.at_ms, self.air = moment.time_ms, moment.air
        self.unlogged_ms += passed_ms if moment.unseen else 0
        self._trace()
        return reached

    def catch_up(self, means: Iterable[Reading], until_ms: int) -> None:
        """Dry the film through the log, from where it stands until `until_ms`; `means` are of a minute each."""
        begun_ms = self.at_ms
        waiting = (reading for reading in means if begun_ms < reading.time_ms <= until_ms)
        for moment in moments(waiting, self.laid_ms, before=self.air, before_ms=begun_ms):
            self.advance(moment)

    def shift(self, step_ms: int) -> None:
        """Move the run along with a wall clock that was set: the film is as old as it was."""
        self.laid_ms += step_ms
        self.at_ms += step_ms
        if self._ahead_ms is not None:
            self._ahead_ms += step_ms

    @property
    def is_cured(self) -> bool:
        """Whether nothing more happens to this film."""
        return self.film.reached_s(Stage.CURED) is not None

    @property
    def is_settled(self) -> bool:
        """Whether all that it will reach lies behind it and is known."""
        return self.is_cured and Stage.CURED in self.ahead

    def recoat_ms(self) -> int | None:
        """Return when she is told that the next coat may go on, UTC ms, or None if that is not in sight."""
        ready = self.ahead.get(Stage.DRY_TO_RECOAT)
        return None if ready is None else self.after_ms(ready_by_s(self.sheet, ready))

    def _trace(self) -> None:
        film_C = self.film.film_C
        last_ms = self.film_trace[-1][0] if self.film_trace else self.laid_ms - TRACE_EVERY_MS
        dry_ms = self.reached_ms(Stage.DRY_TO_TOUCH)
        is_dry = dry_ms is not None and dry_ms < last_ms
        if film_C is not None and not is_dry and self.at_ms - last_ms >= TRACE_EVERY_MS:
            self.film_trace = (*self.film_trace, (self.at_ms, film_C))

    @property
    def ahead_age_ms(self) -> int:
        """How far `ahead` lies behind, ms; beyond all if there is none yet, and 0 if none can be made."""
        if self.air is None:
            return 0
        return NEVER_MS if self._ahead_ms is None else self.at_ms - self._ahead_ms

    def look_ahead(self) -> None:
        """Bring `ahead` up to date."""
        if self.air is None:
            return
        calm = replace(self.air, air_speed_m_s=min(self.air.air_speed_m_s, CALM_M_S))
        self.ahead = forecast(self.film, calm, horizon_s=HORIZON_S, covered=self.covered)
        self._ahead_ms = self.at_ms

    def reached_ms(self, stage: Stage) -> int | None:
        """Return when `stage` was reached, UTC ms, or None."""
        reached_s = self.film.reached_s(stage)
        return None if reached_s is None else self.laid_ms + round(reached_s * 1000)

    def stage_times(self) -> tuple[StageTime, ...]:
        """Return the times of all stages that this coat has."""
        return tuple(self._stage_time(stage, ready) for stage, ready in self.ahead.items())

    def _stage_time(self, stage: Stage, ready: Ready) -> StageTime:
        p10_ms, p90_ms = self.after_ms(ready.p10_s), self.after_ms(ready.p90_s)
        if stage is Stage.DRY_TO_RECOAT:
            p90_ms = self.recoat_ms()
            reached_ms = p90_ms if p90_ms is not None and p90_ms <= self.at_ms else None
        else:
            reached_ms = self.reached_ms(stage)
        if reached_ms is not None:
            return StageTime(stage=stage, time_ms=reached_ms, reached=True)
        return StageTime(
            stage=stage, time_ms=self.after_ms(ready.nominal_s), reached=False, p10_ms=p10_ms, p90_ms=p90_ms
        )

    def after_ms(self, elapsed_s: float | None) -> int | None:
        """Return the UTC ms at which the coat is `elapsed_s` old; None stays None."""
        return None if elapsed_s is None else self.laid_ms + round(elapsed_s * 1000)
