"""One laid coat under the logged room: the film as it is, and where it is heading in the present air."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from functools import partial

from studiowatch.coats.data_sheet import DataSheet
from studiowatch.coats.drying_pace import pace_after
from studiowatch.coats.evidence import NOTHING, Observation
from studiowatch.coats.film import LONGEST_STEP_S, Film, StageReached, advance_through, newly_reached
from studiowatch.coats.learning import Seen
from studiowatch.coats.readiness import Ready, outlook, ready_times
from studiowatch.coats.stages import Stage
from studiowatch.coats.standing import Standing
from studiowatch.physics.air import Air
from studiowatch.physics.ranges import Array
from studiowatch.service.air_ahead import STAYS, RoomToCome, calm
from studiowatch.service.coat_risk import CoatRisk
from studiowatch.service.coat_tests import doubt_words, her_tests, last_unready
from studiowatch.service.log_air import Moment
from studiowatch.service.looked_ahead import LookedAhead
from studiowatch.service.set_clock import LostHours, lived_as, with_times
from studiowatch.service.told_times import ToldTimes
from studiowatch.studio.pieces import Coat
from studiowatch.studio.unready import Unready

DRAWS = 256  # draws of a live coat: enough for p10 and p90 when tests weigh them, and cheap at a reading a second
SEED = 20260301  # any fixed number: a coat shows the same range after a restart
HORIZON_S = 96 * 3600.0  # s, how far ahead a ready time is sought
CARRIED_ON = (Stage.DRY_TO_RECOAT, Stage.DRY_THROUGH)
"""Sought as far ahead as cure, since coats wait for them: poured paint waits weeks, by its sheet already."""
TRACE_EVERY_MS = 60_000  # ms between two points of a film's temperature
HOUR_MS = 3_600_000  # ms


@dataclass(slots=True)
class CoatRun:
    """The run of one coat. Only the topmost of a stack is advanced; it takes those below along.

    Attributes
    ----------
    coat, lived : Coat
        As it is recorded, and with its times by the clock of the film, as `laid_ms` and `at_ms` are: those that were
        recorded before the wall clock was set are moved along with the film, in the records only those of this session.
    over : CoatRun or None
        The run of the coat that this one lies on.
    film : Film
        The film at `at_ms`.
    at_ms : int
        UTC ms up to which the film has been advanced.
    heard_ms : int
        UTC ms up to which her tests were heard of; the film may lag behind, by what the log lacks.
    air : Air or None
        The air it dries in now; None before the first reading.
    ahead : mapping of Stage to Ready
        When each stage was or will be reached, in seconds from `laid_ms`.
    unlogged_ms : int
        How long it dried with nobody watching, ms.
    film_trace : tuple of (int, float)
        Film temperature, °C, about once a minute (UTC ms) from the laying until it is dry to touch.
    standing : Standing
        What its range stands on.
    heeded : tuple of Seen or None
        The tests that were learnt from; None before the first look whether there are any.
    doubt : str
        One sentence where a test does not fit anything that the sheet allows, else "".
    recoat_told : bool
        Whether it was said that the next coat may go on.
    table : ndarray or None
        When each draw reaches each stage, as last looked ahead, s; None before that.
    weights : ndarray or None
        How likely each draw was then.
    risk : CoatRisk or None
        What it has met that clouds a coat.
    looked : LookedAhead or None
        What the last look ahead went by; None before it, and where it is to be told anew with the next air.
    """

    coat: Coat
    lived: Coat
    sheet: DataSheet
    laid_ms: int
    film: Film
    at_ms: int
    standing: Standing
    over: CoatRun | None = None
    heard_ms: int = 0
    air: Air | None = None
    ahead: Mapping[Stage, Ready] = field(default_factory=dict)
    unlogged_ms: int = 0
    film_trace: tuple[tuple[int, float], ...] = ()
    heeded: tuple[Seen, ...] | None = None
    doubt: str = ""
    recoat_told: bool = False
    table: Array | None = None
    weights: Array | None = None
    pace: float = 0.0
    risk: CoatRisk | None = None
    looked: LookedAhead | None = None
    _held: Array | None = None  # the table in air that stays: tests are learnt by it, the room to come taught nothing

    @property
    def covered(self) -> bool:
        """Whether a mesh cover stands over the coat at `at_ms`."""
        return self.lived.covered_from_ms is not None and self.at_ms >= self.lived.covered_from_ms

    def advance(self, ahead: Sequence[Moment]) -> list[tuple[CoatRun, StageReached]]:
        """Dry the stack through moments in the order of time, and return what its coats reached.

        Those up to the film's own time change nothing. The film's temperature is only noted at the last.
        """
        steps: list[tuple[Moment, int]] = []
        before_ms = self.at_ms
        for moment in ahead:
            if moment.time_ms > before_ms:
                steps.append((moment, moment.time_ms - before_ms))
                before_ms = moment.time_ms
        if not steps:
            return []
        if self.is_cured:
            self._note(steps[-1][0], 0)
            return []
        spans = [(moment.air, min(passed_ms / 1000.0, LONGEST_STEP_S)) for moment, passed_ms in steps]
        unseen_ms = sum(passed_ms for moment, passed_ms in steps if moment.unseen)
        laid_before = self.film
        self.film, reached = advance_through(self.film, spans, covered=self.covered)
        self.pace = pace_after(self.pace, laid_before, self.film)
        if self.risk is not None:
            self.risk.follow(self.film, spans)
        found = [(self, step) for step in reached]
        for lower, lower_film in self.films_below():
            found += [(lower, step) for step in newly_reached(lower.film, lower_film)]
            lower.film = lower_film
        self._note(steps[-1][0], unseen_ms)
        self._trace()
        return found

    def _note(self, moment: Moment, unseen_ms: int) -> None:
        """Note for the whole stack up to when it was dried, in what air, and for how long nobody watched."""
        run: CoatRun | None = self
        while run is not None:
            run.at_ms, run.air = moment.time_ms, moment.air
            run.unlogged_ms += unseen_ms
            run = run.over

    @property
    def is_cured(self) -> bool:
        """Whether nothing more happens to this film."""
        return self.film.reached_s(Stage.CURED) is not None

    @property
    def is_settled(self) -> bool:
        """Whether it has cleared and the next coat may go on: it only hardens from here on, and no damp harms it."""
        is_clear = self.reached_ms(Stage.CLEAR) is not None or not self.sheet.clear_film
        return is_clear and self.recoat_told

    @property
    def is_wet_on_top(self) -> bool:
        """Whether the coat lies open and is not dry to touch."""
        return self.film.seal is None and self.reached_ms(Stage.DRY_TO_TOUCH) is None

    @property
    def unready_below(self) -> float:
        """Chance that the coat below was not ready when this one was laid, 0 to 1."""
        seal = self.film.below[-1].seal if self.film.below else None
        return 0.0 if seal is None else float(seal.mask.mean())

    @property
    def sheet_wait_h(self) -> float | None:
        """The recoat time of the sheet of the coat below, h, if this one was laid before that was over, else None."""
        if self.over is None or self.laid_ms - self.over.laid_ms >= self.over.sheet.recoat_h * HOUR_MS:
            return None
        return self.over.sheet.recoat_h

    def record(self, coat: Coat) -> None:
        """Take the coat as it is recorded now, if that dries as it did."""
        self.lived = lived_as(coat, self.coat, self.lived)
        self.coat = coat

    def shift(self, step_ms: int) -> None:
        """Move the run along with a wall clock that was set: the film is as old as it was, now and when tested."""
        self._move(step_ms, with_times(self.lived, lambda time_ms: time_ms + step_ms))

    def leave_out(self, lost: LostHours) -> None:
        """Take the run over hours that it did not live, up to which it has been advanced."""
        self._move(lost.end_ms - lost.start_ms, with_times(self.lived, lost.moved))

    def _move(self, step_ms: int, lived: Coat) -> None:
        self.lived = lived
        self.laid_ms += step_ms
        self.at_ms += step_ms
        self.heard_ms += step_ms
        self.film_trace = tuple((time_ms + step_ms, film_C) for time_ms, film_C in self.film_trace)
        if self.looked is not None:
            self.looked = self.looked.shifted(step_ms)

    def films_below(self) -> Iterator[tuple[CoatRun, Film]]:
        """Yield the runs below and their films as this coat's film has them, from the nearest down."""
        lower = self.over
        for film in reversed(self.film.below):
            if lower is None:
                raise ValueError(f"the coat {self.coat.key} lies on more films than there are runs")  # not said
            yield lower, film
            lower = lower.over

    def _trace(self) -> None:
        film_C = self.film.film_C
        last_ms = self.film_trace[-1][0] if self.film_trace else self.laid_ms - TRACE_EVERY_MS
        dry_ms = self.reached_ms(Stage.DRY_TO_TOUCH)
        is_dry = dry_ms is not None and dry_ms < last_ms
        if film_C is not None and not is_dry and self.at_ms - last_ms >= TRACE_EVERY_MS:
            self.film_trace = (*self.film_trace, (self.at_ms, film_C))

    def looking(self, air: Air, room: RoomToCome) -> LookedAhead:
        """Return what a look ahead would go by now."""
        return LookedAhead(at_ms=self.at_ms, air=calm(air), is_covered=self.covered, foretold_ms=room.made_ms)

    def heed_the_room(self) -> None:
        """Have `ahead` told anew with the next air: the room to come is another."""
        self.looked = None

    def look_ahead(self, room: RoomToCome = STAYS) -> None:
        """Bring `ahead` up to date; before the first air there is nothing to go by."""
        if self.air is None:
            return
        looking = self.looking(self.air, room)
        air = looking.air
        coming = room.spans(air, self.at_ms, HORIZON_S)
        ahead = partial(outlook, self.film, air, horizon_s=HORIZON_S, covered=self.covered, carried_on=CARRIED_ON)
        self.table = ahead(coming=coming)
        self._held = self.table
        if coming is not None and self.tests():
            self._held = ahead()
        self.looked = looking
        self.weigh()

    def weigh(self) -> None:
        """Bring the ranges of `ahead` in line with the tests and with what is held of the product."""
        if self.table is None or self._held is None:
            return
        tests = self.tests()
        self.weights = self.standing.weights(self._held, tests)
        self.ahead = ready_times(self.sheet, self.table, self.weights)
        self.doubt = self._doubted(self._held, tests) if tests else ""
        told = self.told
        if told.unready is not None:
            recoat_ms = told.recoat_ms()
            self.recoat_told = self.recoat_told and recoat_ms is not None and recoat_ms <= self.at_ms

    def tests(self) -> tuple[Seen, ...]:
        """Return her tests up to now that count, of the stages that this coat goes through."""
        return her_tests(self.lived, self.sheet, self.laid_ms, self.at_ms)

    def unready(self) -> Unready | None:
        """Return her last test of it if that found it tacky or milky, though the film lags behind it; else None."""
        tests = her_tests(self.lived, self.sheet, self.laid_ms, max(self.at_ms, self.heard_ms))
        return last_unready(self.lived, tests, self.laid_ms)

    def anew(self) -> Standing | None:
        """Return what this coat should be dried anew with for her tests, or None while its draws will do."""
        return None if self._held is None else self.standing.anew(self._held, self.tests())

    def observation(self) -> Observation:
        """Return what her tests say of the room, the product and this coat."""
        return NOTHING if self._held is None else self.standing.observation(self._held, self.tests())

    def _doubted(self, table: Array, tests: tuple[Seen, ...]) -> str:
        test = self.standing.surprise or self.standing.surprising(table, tests)
        return doubt_words(test, is_wider=self.standing.surprise is not None) if test in tests else ""

    def reached_ms(self, stage: Stage) -> int | None:
        """Return when `stage` was reached, UTC ms, or None."""
        reached_s = self.film.reached_s(stage)
        return None if reached_s is None else self.laid_ms + round(reached_s * 1000)

    @property
    def told(self) -> ToldTimes:
        """What is told of its times now."""
        return ToldTimes(
            sheet=self.sheet,
            film=self.film,
            laid_ms=self.laid_ms,
            at_ms=self.at_ms,
            ahead=self.ahead,
            is_learnt=bool(self.heeded),
            unready=self.unready(),
        )

    def untold_recoat_ms(self, now_ms: int) -> int | None:
        """Return when the next coat could go on, UTC ms, if that lies behind at `now_ms` and was not said yet."""
        recoat_ms = None if self.recoat_told else self.told.recoat_ms()
        return recoat_ms if recoat_ms is not None and recoat_ms <= now_ms else None

    def after_ms(self, elapsed_s: float | None) -> int | None:
        """Return the UTC ms at which the coat is `elapsed_s` old; None stays None."""
        return None if elapsed_s is None else self.laid_ms + round(elapsed_s * 1000)
