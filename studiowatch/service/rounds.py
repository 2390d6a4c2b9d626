"""The rounds of the watch: films dried, the air judged, prompts told, by each reading or by the clock alone."""

from __future__ import annotations

from collections import deque
from collections.abc import Callable, Collection
from dataclasses import dataclass, field

from studiowatch.room.readings import Reading
from studiowatch.service.board_view import BoardView
from studiowatch.service.coat_run import CoatRun
from studiowatch.service.curve_desk import CurveDesk
from studiowatch.service.happenings import Happening
from studiowatch.service.log_air import TICK_MS
from studiowatch.service.rack_tending import coats_to_tend
from studiowatch.service.stacks import DryingDropped
from studiowatch.service.studio_desks import StudioDesks
from studiowatch.store.trouble import StoreTrouble
from studiowatch.studio.review_curves import Curves
from studiowatch.studio.set_on import set_on

ADVANCE_MS = 30_000  # ms of readings that dry the films in one step; from the log it is a minute
TOGETHER_MS = 1_500  # ms of readings that came together and are judged by the last: two of most boards
JUDGE_EVERY_MS = 1_000  # ms without a reading after which the room is judged by the clock alone


@dataclass(slots=True, kw_only=True)
class Rounds:
    """Goes round one studio: nothing is judged before the coats of all pieces are dried up to now.

    Attributes
    ----------
    is_ending : callable
        Whether the watch is to end; no coat is then dried any more.
    changed, drifted : bool
        See `Watchkeeping`.
    is_opening : bool
        Whether coats are still to be dried through the log.
    unfollowed : bool
        Whether something was done that the films have not followed yet.
    unread : str
        Why the log could not be read, one sentence, else "".
    board : BoardView
        How the board stands.
    unsaid : deque of Happening
        What happened and was not told yet.
    """

    desks: StudioDesks
    curves: CurveDesk
    silent_after_s: float
    is_ending: Callable[[], bool]
    changed: bool = True
    drifted: bool = False
    is_opening: bool = False
    unfollowed: bool = False
    unread: str = ""
    board: BoardView = field(default_factory=BoardView)
    unsaid: deque[Happening] = field(default_factory=deque)
    _runs: dict[str, CoatRun] = field(default_factory=dict)
    _dried_ms: int | None = None
    _catches_up: bool = False
    _judged_ms: int | None = None

    def begin(self, began_ms: int) -> None:
        """Take up the records; each `bring_up` then dries one piece, and nothing is judged until all are dried."""
        self.unread = self.desks.reopen(began_ms)
        self.unfollowed = bool(self.unread)
        self.is_opening = True

    def open_next(self, now_ms: int) -> None:
        """Dry the coats of the next piece through the log."""
        self.changed = True
        self.desks.seen.moved()
        try:
            self.is_opening = self.desks.rack.follow_next(now_ms)
        except DryingDropped:
            self._drop()
            return
        except StoreTrouble as trouble:
            self.is_opening, self.unfollowed, self.unread = False, True, str(trouble)
        if not self.is_opening:
            self._judged_ms = None  # the next look judges at once what was dried until now

    def read(self, reading: Reading, *, is_followed: bool = False) -> None:
        """Judge the room by a reading; dry the films once there are enough of them, or where that cannot wait.

        One that `is_followed` by another, which is there already, is judged with that.
        """
        now_ms, room = reading.time_ms, self.desks.room
        typed_ms = room.typed_ms
        room.take(reading)
        is_same_board = room.typed_ms == typed_ms
        if is_followed and is_same_board and 0 <= now_ms - (self._judged_ms or 0) < TOGETHER_MS:
            return
        self.judge(now_ms)
        since_ms = now_ms - (self._dried_ms or 0)
        is_early = 0 <= since_ms < ADVANCE_MS and is_same_board
        may_wait = is_early and not (self._catches_up or self._has_due(now_ms))
        if not (self.is_opening or self.is_ending() or may_wait):
            self.dry(now_ms)

    def catch_up(self) -> None:
        """Bring up with the next readings what was left while nobody looked, and the plan after that."""
        self._catches_up = True

    def _has_due(self, now_ms: int) -> bool:
        """Return whether something is to be told, for which the films are brought up to now first."""
        return self.desks.prompts.has_due(now_ms) or self.desks.preparations.has_due(now_ms)

    def dry(self, now_ms: int) -> None:
        """Dry the films in the air since the last time, and tend the prompts that follow from them."""
        air = self.desks.room.mean_air(now_ms)
        self._dried_ms = now_ms
        try:
            self.unsaid += () if air is None else self.desks.rack.advance(air, now_ms)
        except DryingDropped:
            self._drop()
            return
        self.desks.seen.moved()
        if self._catches_up and not self.desks.rack.is_behind:
            self._catches_up = False
            self.desks.plans.mark()
        self._tend(now_ms)

    def judge(self, now_ms: int) -> None:
        """Judge the air over the coats, and settle the warnings."""
        self._judged_ms = now_ms
        if self._is_waiting(now_ms):
            return
        happened = self.desks.warnings.settle(self.desks.room.air_now(now_ms), self.desks.seen.facts.at_risk, now_ms)
        self.unsaid += happened
        self.changed |= bool(happened)

    def bring_up(self, now_ms: int) -> None:
        """Bring films, warnings, prompts and the plan up to now."""
        if self.is_opening:
            self.open_next(now_ms)
        elif self.unfollowed:
            self._follow(now_ms)
        elif self._judged_ms is None or abs(now_ms - self._judged_ms) >= JUDGE_EVERY_MS:
            self.drifted = True
            self.judge(now_ms)
            is_held = self.desks.room.typed_ms is not None and now_ms - (self._dried_ms or 0) >= TICK_MS
            (self.dry if is_held else self._tend)(now_ms)
        is_up = not (self.is_opening or self.unfollowed)
        if is_up and self.desks.plans.tend(self.desks.room.air(now_ms), now_ms):
            self.drifted = True
        if (learnt := self.curves.tend()) is not None:
            self.weigh_by(learnt)
            self.changed = True

    def weigh_by(self, curves: Curves) -> None:
        """Weigh the risk of each coat by these curves from now on."""
        self.desks.rack.stacks.curves = curves
        self.desks.seen.moved()

    def settle_prompts(self, now_ms: int, *, corrected: Collection[str] = ()) -> None:
        """Bring the prompts in line with the coats; those `corrected` were laid otherwise than was thought."""
        coats = coats_to_tend(self.desks.rack, self.desks.room.typed_ms)
        self.desks.prompts.settle(coats, now_ms, corrected=corrected)

    def shift(self, step_ms: int) -> None:
        """Go along with a wall clock that was set: its step is no drying time."""
        self.desks.shift(step_ms)
        self._dried_ms = set_on(self._dried_ms, step_ms)
        self._judged_ms = None

    def _drop(self) -> None:
        """Judge nothing any more: a film stands somewhere between its laying and now."""
        self.is_opening = self.unfollowed = True

    def _tend(self, now_ms: int) -> None:
        desks = self.desks
        corrected = {key for key, run in self._runs.items() if desks.rack.runs.get(key, run) is not run}
        self._runs = dict(desks.rack.runs)
        self.settle_prompts(now_ms, corrected=corrected)
        desks.prompts.reminder = desks.calibrations.reminder(now_ms, desks.rack)
        desks.preparations.settle(desks.rack, now_ms)
        desks.ahead.look(desks.room.air_now(now_ms), now_ms)
        if not self._is_waiting(now_ms):
            self.unsaid += desks.prompts.due(now_ms)
            self.unsaid += desks.preparations.due(desks.rack, now_ms)
        self.changed |= bool(self.unsaid)

    def _is_waiting(self, now_ms: int) -> bool:
        """Return whether coats, or the first reading, are still to come: until then an empty room says nothing."""
        is_young = 0 <= now_ms - self.desks.room.began_ms <= self.silent_after_s * 1000
        return self.is_opening or (self.board.last_ms is None and is_young)

    def _follow(self, now_ms: int) -> None:
        """Bring films, warnings and prompts in line with what she changed."""
        self.unfollowed, self.unread = False, ""
        self.desks.seen.moved()
        try:
            self.desks.rack.follow(now_ms)
        except DryingDropped:
            self._drop()
            return
        except StoreTrouble as trouble:
            self.unfollowed, self.unread = True, str(trouble)
        self.dry(now_ms)
        self.judge(now_ms)
