"""The coats that lie on each piece, dried together: from the log up to now, and by the reading from then on."""

from __future__ import annotations

from collections import deque
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field, replace
from functools import partial

from studiowatch.coats.stages import Stage
from studiowatch.physics.air import Air
from studiowatch.physics.ranges import OutOfRange
from studiowatch.service.air_ahead import STAYS, RoomToCome
from studiowatch.service.bench import AHEAD_MS
from studiowatch.service.coat_laying import begin_run
from studiowatch.service.coat_run import CoatRun
from studiowatch.service.happenings import StageHappened
from studiowatch.service.learning_desk import LearningDesk
from studiowatch.service.log_air import UNSEEN_AIR, JudgedLog, Moment, moments, width_for
from studiowatch.service.ports import ReadingsLog
from studiowatch.service.room_now import BRIDGED_MS
from studiowatch.service.set_clock import ClockStep, LostHours, lost_hours
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.speech.words import say
from studiowatch.studio.labels import stack_labels
from studiowatch.studio.pieces import Coat, Piece
from studiowatch.studio.review_curves import PRIOR, Curves

TOGETHER = 256  # moments of the log that a stack which nobody can mark any more takes in one step
RESTING_MS = 60_000  # ms between two steps of such a stack while it is watched
SETTLED_MS = 300_000  # ms, the same where it is settled and nobody looks


class DryingDropped(Exception):  # noqa: N818 - nobody waits for it any more, so it is no fault
    """A piece was not dried to the end, since the watch is to end: its runs stand somewhere in between."""


@dataclass(slots=True)
class Stacks:
    """Holds the run of every coat that is on.

    Attributes
    ----------
    runs : dict
        The run of each laid coat of a piece on the rack, by the coat's key.
    unwatched : dict
        Why a laid coat has no run, one sentence, by the coat's key.
    curves : Curves
        By which the risk of each coat is weighed.
    room : RoomToCome
        Foretells the room that the coats will dry in.
    is_ending : callable
        Whether the watch is to end: a piece that is being dried through the log is then dropped.
    is_seen : bool
        Whether somebody looks; else what hardly changes is brought up to date seldom.
    clock_steps : list of ClockStep
        How the wall clock was set: what it left out is no drying time of a coat that is dried through the log.
    """

    shelf: SheetShelf
    log: ReadingsLog
    learning: LearningDesk
    runs: dict[str, CoatRun] = field(default_factory=dict)
    unwatched: dict[str, str] = field(default_factory=dict)
    curves: Curves = PRIOR
    room: RoomToCome = STAYS
    is_ending: Callable[[], bool] = lambda: False
    is_seen: bool = True
    clock_steps: list[ClockStep] = field(default_factory=list)
    _lost: deque[LostHours] = field(default_factory=deque)  # of the piece that is being dried through the log
    _judged: JudgedLog = field(init=False)

    def __post_init__(self) -> None:
        self._judged = JudgedLog(self.log)

    def labels(self, piece: Piece) -> tuple[str, ...]:
        """Return the short names of a piece's coats."""
        return stack_labels([self.shelf.stand_in(coat.sheet) for coat in piece.coats])

    def top(self, piece: Piece) -> CoatRun | None:
        """Return the run of the topmost laid coat, or None."""
        laid = [self.runs[coat.key] for coat in piece.coats if coat.key in self.runs]
        return laid[-1] if laid else None

    def why_unwatched(self, coat: Coat, now_ms: int) -> str:
        """Return why a laid coat is not watched, one sentence, or ""."""
        if coat.laid_ms is not None and coat.laid_ms > now_ms + AHEAD_MS:
            return say("It was laid at a time that is still to come by this computer's clock; set the clock.")
        return self.unwatched.get(coat.key, "")

    def let_go(self, piece: Piece) -> None:
        """Forget the runs of a piece that is off the rack."""
        for coat in piece.coats:
            self.runs.pop(coat.key, None)

    def let_go_of(self, coat: Coat) -> None:
        """Forget the run of a coat that is not on any more."""
        self.runs.pop(coat.key, None)
        self.unwatched.pop(coat.key, None)

    def forget_log(self) -> None:
        """Let go of what was read from the log: there is more by the next time."""
        self._judged.forget()

    def is_logged(self, run: CoatRun) -> bool:
        """Return whether the log reaches up to where the film is: without it the film cannot be dried anew."""
        return any(self._judged.airs(max(run.laid_ms, run.at_ms - BRIDGED_MS), run.at_ms + 1))

    def advance(self, piece: Piece, air: Air, now_ms: int) -> list[StageHappened]:
        """Dry the coats of `piece` in `air` until `now_ms`, beginning those whose time of laying has come.

        A stack that is dry to touch is taken along every minute only, a settled one that nobody sees more seldom yet:
        they hardly change.
        """
        top = self.top(piece)
        if top is None:
            return self._take(piece, [Moment(time_ms=now_ms, air=air)])
        resting_ms = SETTLED_MS if top.is_settled and not self.is_seen else RESTING_MS
        is_resting = 0 <= now_ms - top.at_ms < resting_ms and not top.film.is_wet
        if is_resting and top.untold_recoat_ms(now_ms) is None and not self._due(piece, now_ms):
            return []
        return self._take(piece, [Moment.after(top.air, air, top.at_ms, now_ms)])

    def dry_through_log(self, piece: Piece, now_ms: int, lowest: Coat | None = None) -> None:
        """Run the laid coats of `piece` through the log: from `lowest` up where it is laid on what is there.

        Raises
        ------
        DryingDropped
            If the watch is to end; nothing may be judged or learnt by the runs of this piece any more.
        StoreTrouble
            If the log cannot be read.
        """
        laid = [coat for coat in piece.coats if coat.laid_ms is not None and coat.laid_ms <= now_ms]
        first = laid.index(lowest) if lowest in laid and self._bare_until(piece, lowest) else 0
        for coat in laid[first:]:
            self.runs.pop(coat.key, None)
            self.unwatched.pop(coat.key, None)
        layings_ms = [laid_ms for _, laid_ms in self._due(piece, now_ms)]
        if not layings_ms:
            return
        anew = {coat.key for coat, _ in self._due(piece, now_ms)}
        self._lost = deque(lost_hours(piece, anew, self.clock_steps))
        try:
            self._take_log(piece, now_ms, layings_ms)
            self._take_rest(piece, now_ms)
        finally:
            self._lost.clear()
        for run in [self.runs[coat.key] for coat in laid if coat.key in self.runs]:
            run.heard_ms = now_ms
            run.look_ahead(self.room)
            recoat_ms = run.told.recoat_ms()
            run.recoat_told = recoat_ms is not None and recoat_ms <= now_ms

    def _take_rest(self, piece: Piece, now_ms: int) -> None:
        """Lay the coats that came after all that was read, and leave out what the clock left out since."""
        ends_ms = sorted({lost.start_ms for lost in self._lost} | {laid_ms for _, laid_ms in self._due(piece, now_ms)})
        for time_ms in ends_ms:
            top = self.top(piece)
            air = UNSEEN_AIR if top is None or top.air is None else top.air
            self._take(piece, [Moment.after(air, air, time_ms if top is None else top.at_ms, time_ms)])

    def _take_log(self, piece: Piece, now_ms: int, layings_ms: Sequence[int]) -> None:
        """Dry the coats of `piece` through the log, as many moments at once as they are dry to touch."""
        top = self.top(piece)
        since_ms = layings_ms[0] if top is None else top.at_ms
        before = None if top is None else top.air
        airs, width_ms = self._judged.airs(since_ms, now_ms), partial(self._width_ms, piece)
        waiting: list[Moment] = []
        breaks_ms = [*layings_ms, *(lost.start_ms for lost in self._lost)]
        for moment in moments(airs, since_ms, width_ms=width_ms, layings_ms=breaks_ms, before=before):
            if self.is_ending():
                raise DryingDropped
            waiting.append(moment)
            is_dry = self._width_ms(piece, moment.time_ms) > 0
            is_break = self._lost and self._lost[0].start_ms <= moment.time_ms
            if is_dry and len(waiting) < TOGETHER and not is_break and not self._due(piece, moment.time_ms):
                continue
            self._take(piece, waiting)
            waiting = []
            if self._is_over(piece, now_ms):
                return
        if waiting:
            self._take(piece, waiting)

    def _width_ms(self, piece: Piece, time_ms: int) -> int:
        top = self.top(piece)
        return 0 if top is None else width_for(top.film, time_ms - top.laid_ms)

    def _is_over(self, piece: Piece, now_ms: int) -> bool:
        """Return whether nothing more happens to the coats of `piece` that were laid by `now_ms`."""
        top = self.top(piece)
        return top is not None and top.is_cured and not self._due(piece, now_ms)

    def _bare_until(self, piece: Piece, coat: Coat) -> bool:
        """Return whether the coat below `coat` is run, not beyond its laying, and nothing lies on it."""
        below = piece.coats[: piece.coats.index(coat)]
        run = self.runs.get(below[-1].key) if below else None
        return run is not None and run.film.seal is None and run.at_ms <= (coat.laid_ms or 0)

    def _take(self, piece: Piece, ahead: Sequence[Moment]) -> list[StageHappened]:
        """Dry a piece's coats up to the last of `ahead`, the only one that may reach over a laying or lost hours.

        Each coat whose time has come is laid on the one below as that is by then; one that did not live some hours
        is as old after them as before.
        """
        happened: list[StageHappened] = []
        left = ahead
        while self._lost and self._lost[0].start_ms <= ahead[-1].time_ms:
            lost = self._lost.popleft()
            happened += self._take_lived(piece, [*left[:-1], replace(left[-1], time_ms=lost.start_ms)])
            for run in [self.runs[key] for key in lost.keys if key in self.runs]:
                run.leave_out(lost)
            left = left[-1:]
        return happened + self._take_lived(piece, left)

    def _take_lived(self, piece: Piece, ahead: Sequence[Moment]) -> list[StageHappened]:
        happened: list[StageHappened] = []
        left = ahead
        for coat, laid_ms in self._due(piece, ahead[-1].time_ms):
            happened += self._dry(piece, [*left[:-1], replace(left[-1], time_ms=laid_ms)])
            self._begin(piece, coat)
            left = left[-1:]
        return happened + self._dry(piece, left)

    def _due(self, piece: Piece, now_ms: int) -> list[tuple[Coat, int]]:
        """Return the coats that are on by now and have no run yet, with the times of their laying."""
        on = [(coat, coat.laid_ms) for coat in piece.coats if coat.laid_ms is not None and coat.laid_ms <= now_ms]
        return [(coat, laid_ms) for coat, laid_ms in on if coat.key not in self.runs and coat.key not in self.unwatched]

    def _dry(self, piece: Piece, ahead: Sequence[Moment]) -> list[StageHappened]:
        """Dry the coats that are on up to the last of `ahead`."""
        top = self.top(piece)
        if top is None:
            return []
        began_ms, until_ms = top.at_ms, ahead[-1].time_ms
        reached: list[tuple[CoatRun, Stage, int]] = [
            (run, step.stage, min(max(run.laid_ms + round(step.elapsed_s * 1000), began_ms), until_ms))
            for run, step in top.advance(ahead)
            if step.stage is not Stage.DRY_TO_RECOAT
        ]
        if (recoat_ms := top.untold_recoat_ms(until_ms)) is not None:
            top.recoat_told = True
            reached.append((top, Stage.DRY_TO_RECOAT, max(recoat_ms, began_ms)))
        if not reached:
            return []
        labelled = enumerate(zip(piece.coats, self.labels(piece), strict=True), start=1)
        labels = {coat.key: (place, label) for place, (coat, label) in labelled}
        return [
            StageHappened(
                time_ms=time_ms,
                piece_title=piece.title,
                coat_number=labels[run.coat.key][0],
                coat_label=labels[run.coat.key][1],
                stage=stage,
            )
            for run, stage, time_ms in reached
        ]

    def _begin(self, piece: Piece, coat: Coat) -> None:
        if coat.sheet not in self.shelf.sheets:
            self.unwatched[coat.key] = say(
                "The data sheet {sheet} is missing; put it back among your sheets.", sheet=coat.sheet
            )
            return
        sheet = self.shelf.get(coat.sheet)
        try:
            run = begin_run(coat, piece, sheet, self.top(piece), self.learning.standing(coat, sheet))
        except OutOfRange as fault:
            self.unwatched[coat.key] = f"{fault}."
            return
        self.runs[coat.key] = run
