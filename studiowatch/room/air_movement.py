"""Is the air over the rack moving? A two-stage detector on one signal, fast for a fan and hard to fool by drift.

Stage one is a clipped cumulative sum: it lights within seconds and goes out within seconds. Stage two asks for
45 s on end, or half of two minutes, and then stands until the air has been quiet for a while.
"""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from enum import StrEnum
from math import isfinite

from studiowatch.room.baseline import Baseline, begun_anew, learn
from studiowatch.room.cusum import Cusum, accumulate
from studiowatch.room.limits import AIR_SPEED

SLACK = 1.0  # k of stage one, in spreads
LIGHT = 6.0  # h of stage one, in spreads
RISING = 1.0  # in spreads; above this sum one more reading may light it: 1.25 s of CLIP - SLACK
GO_OUT = 3.0  # a lit stage one goes out at this sum, in spreads; assumption
CEILING = 8.0  # the sum never grows past this, so that it runs down in about 5 s; assumption
CLIP = 5.0  # no reading counts as more than this many spreads: one spike gives 4, under LIGHT; assumption
FULL_WEIGHT_S = 2.0  # s that one reading may stand for in the sum when readings are rarer than that; assumption
QUIET_WEIGHT_S = CEILING  # s that a quiet one may stand for: in a log of one a minute it puts stage one out
RELEARN = 60.0  # lower sum at which the quiet signal has plainly fallen, and the baseline was of moving air; assumption
ABOVE = 4.0  # stage two counts readings further above the baseline than this, in spreads
STAY = 3.0  # a fan is still on while readings are above this, in spreads; assumption
STEADY_MS = 45_000  # ms on end above ABOVE make a fan
WINDOW_MS = 120_000  # ms looked back on for a swinging fan
SHARE_MS = 60_000  # ms above ABOVE within the window make a fan: half of it
FAN_READINGS = 3  # readings above ABOVE at least, so that rare ones are not taken for a fan; assumption
QUIET_MS = 20_000  # ms without a reading above STAY end a fan: longer than a swing is away; assumption
READING_MS = 1_000  # ms that a reading above may stand for before it; assumption
STALE_MS = 3_600_000  # ms without readings after which the baseline is learnt anew; assumption
OUTLASTED_MS = 7_200_000  # ms after which a fan known by change alone is taken for a new quiet signal; assumption


class Movement(StrEnum):
    """What the air over the rack does."""

    UNKNOWN = "unknown"
    STILL = "still"
    MOVING = "moving"
    FAN = "fan"


@dataclass(frozen=True, slots=True, kw_only=True)
class AirSignal:
    """What kind of number the detector is fed.

    Attributes
    ----------
    floor : float
        Least spread that the quiet signal is credited with, in its unit.
    still, limit : float or None
        Under `still` the air counts as still, and above `limit` as moving, whatever the baseline, in its unit; None if
        the signal has no absolute meaning.
    """

    floor: float
    still: float | None = None
    limit: float | None = None


SPEED = AirSignal(
    floor=0.02,  # m/s, least that a heated bead resolves; assumption
    still=0.1,  # m/s, under which free convection hides what a bead reads; assumption after Collis & Williams 1959
    limit=AIR_SPEED.caution,
)
VOLTAGE = AirSignal(floor=20.0)  # mV of an uncalibrated bead, four steps of a 10-bit converter; assumption


@dataclass(frozen=True, slots=True, kw_only=True)
class Run:
    """A stretch of readings above `ABOVE`, UTC ms."""

    start_ms: int
    end_ms: int
    readings: int = 1


@dataclass(frozen=True, slots=True, kw_only=True)
class AirMovement:
    """All that the detector remembers; feed one signal only, and begin anew when the signal changes.

    Attributes
    ----------
    movement : Movement
        UNKNOWN while the baseline is being learnt, which takes the first ten quiet readings.
    began_ms : int or None
        UTC ms when the present movement began, back-dated to the first reading that showed it; None if none is on.
    time_ms, interval_ms : int or None
        UTC ms of the last reading, and ms between it and the latest one of another time.
    rising_ms : int or None
        UTC ms when the upper sum last left 0.
    runs : tuple of Run
        Stretches above `ABOVE` that reach into the window, oldest first.
    stirred_ms : int or None
        UTC ms of the last reading above `STAY`.
    """

    movement: Movement = Movement.UNKNOWN
    began_ms: int | None = None
    time_ms: int | None = None
    interval_ms: int | None = None
    cusum: Cusum = field(default_factory=Cusum)
    rising_ms: int | None = None
    baseline: Baseline = field(default_factory=Baseline)
    runs: tuple[Run, ...] = ()
    stirred_ms: int | None = None

    @property
    def is_on(self) -> bool:
        """Whether either stage is lit."""
        return self.movement in (Movement.MOVING, Movement.FAN)

    @property
    def is_rising(self) -> bool:
        """Whether another reading, at one a second or so, may light stage one, or it is lit."""
        return self.cusum.high > RISING


def observe(state: AirMovement, time_ms: int, value: float, signal: AirSignal = SPEED) -> AirMovement:
    """Return the state after one reading.

    Parameters
    ----------
    state : AirMovement
        The state so far; `AirMovement()` to begin.
    time_ms : int
        UTC ms of the reading, at any cadence; several may share one time. A gap, or a clock set back, ends what was
        on and keeps the baseline.
    value : float
        Air speed, m/s, or voltage, mV.
    signal : AirSignal
        `SPEED` or `VOLTAGE`.

    Raises
    ------
    ValueError
        If `value` is not a finite number.
    """
    if not isfinite(value):
        raise ValueError(
            f"air signal is {value}; a finite number is needed: leave out readings that failed"  # not said
        )
    state = _across_gap(state, time_ms)
    z = _clipped_deviation(state.baseline, value, signal)
    cusum = accumulate(state.cusum, z, slack=SLACK, weight=_weight(state, time_ms, z))
    baseline = state.baseline
    if cusum.low > RELEARN and z < -ABOVE:
        cusum, baseline = Cusum(), begun_anew(baseline)
    elif _is_outlasted(state, time_ms, value, signal):
        return observe(AirMovement(baseline=begun_anew(baseline)), time_ms, value, signal)
    seen = AirMovement(
        movement=state.movement,
        began_ms=state.began_ms,
        time_ms=time_ms,
        interval_ms=_interval_ms(state, time_ms),
        cusum=replace(cusum, high=min(cusum.high, CEILING)),
        rising_ms=None if cusum.high == 0.0 else (state.rising_ms or time_ms),
        baseline=baseline,
        runs=_runs(state, time_ms, above=z > ABOVE),
        stirred_ms=time_ms if z > STAY else state.stirred_ms,
    )
    seen = _judged(seen)
    if seen.movement is Movement.FAN or z > ABOVE:
        return seen
    return replace(seen, baseline=learn(baseline, time_ms, value))


def _across_gap(state: AirMovement, time_ms: int) -> AirMovement:
    """Forget the sums and runs when readings were missing too long, or when the clock was set back.

    How long they were missing is kept: if it comes again, the log is a slow one and that is its step.
    """
    if state.time_ms is None:
        return state
    passed_ms = time_ms - state.time_ms
    usual_ms = state.interval_ms or 0
    if 0 <= passed_ms <= max(WINDOW_MS, 3 * usual_ms):
        return state
    stale = passed_ms > STALE_MS or not state.baseline.learnt
    baseline = begun_anew(state.baseline) if stale else replace(state.baseline, sampled_ms=time_ms)
    movement = Movement.STILL if baseline.learnt else Movement.UNKNOWN
    return AirMovement(movement=movement, baseline=baseline, interval_ms=passed_ms if passed_ms > 0 else None)


def _interval_ms(state: AirMovement, time_ms: int) -> int | None:
    """Return how long a reading is after the one before; lines of one delivery share a time and tell nothing."""
    if state.time_ms is None or time_ms == state.time_ms:
        return state.interval_ms
    return time_ms - state.time_ms


def _is_outlasted(state: AirMovement, time_ms: int, value: float, signal: AirSignal) -> bool:
    """Tell whether a fan has been on for so long that a drifted signal is the likelier cause."""
    if state.movement is not Movement.FAN or state.began_ms is None:
        return False
    is_over_limit = signal.limit is not None and value > signal.limit
    return time_ms - state.began_ms > OUTLASTED_MS and not is_over_limit


def _clipped_deviation(baseline: Baseline, value: float, signal: AirSignal) -> float:
    """Return how far `value` is from the quiet signal, in spreads; what its unit says in itself comes first."""
    if signal.limit is not None and value > signal.limit:
        return CLIP
    if not baseline.learnt:
        return 0.0
    highest = 0.0 if signal.still is not None and value < signal.still else CLIP
    return max(-CLIP, min(baseline.deviation(value, signal.floor), highest))


def _weight(state: AirMovement, time_ms: int, z: float) -> float:
    """Return how many one-second readings this one stands for; after a lost line it counts no more than usual."""
    if state.time_ms is None or state.interval_ms is None:
        return 1.0
    most_s = FULL_WEIGHT_S if z > SLACK else QUIET_WEIGHT_S
    return min((time_ms - state.time_ms) / 1000, state.interval_ms / 1000, most_s)


def _runs(state: AirMovement, time_ms: int, *, above: bool) -> tuple[Run, ...]:
    """Return the runs after one reading; each reading above stands for the time since the one before, 1 s at most."""
    runs = state.runs
    if above and runs and runs[-1].end_ms == state.time_ms:
        runs = (*runs[:-1], replace(runs[-1], end_ms=time_ms, readings=runs[-1].readings + 1))
    elif above:
        start_ms = time_ms - READING_MS if state.time_ms is None else max(state.time_ms, time_ms - READING_MS)
        runs = (*runs, Run(start_ms=start_ms, end_ms=time_ms))
    return tuple(run for run in runs if run.end_ms >= time_ms - WINDOW_MS)


def _judged(seen: AirMovement) -> AirMovement:
    """Give the state its movement, and the time when that began."""
    fan_ms = _fan_since(seen)
    lit = seen.cusum.high > (GO_OUT if seen.is_on else LIGHT)
    if fan_ms is not None:
        began_ms = fan_ms if seen.began_ms is None else min(fan_ms, seen.began_ms)
        return replace(seen, movement=Movement.FAN, began_ms=began_ms)
    if lit:
        return replace(seen, movement=Movement.MOVING, began_ms=seen.began_ms or seen.rising_ms)
    still = Movement.STILL if seen.baseline.learnt else Movement.UNKNOWN
    return replace(seen, movement=still, began_ms=None)


def _fan_since(seen: AirMovement) -> int | None:
    """Return since when a fan is on, UTC ms, or None."""
    now_ms = seen.time_ms or 0
    if seen.movement is Movement.FAN and now_ms - (seen.stirred_ms or 0) <= QUIET_MS:
        return seen.began_ms
    runs = seen.runs
    if not runs or runs[-1].end_ms != now_ms or sum(run.readings for run in runs) < FAN_READINGS:
        return None
    if now_ms - runs[-1].start_ms >= STEADY_MS:
        return runs[-1].start_ms
    window_start_ms = now_ms - WINDOW_MS
    above_ms = sum(run.end_ms - max(run.start_ms, window_start_ms) for run in runs)
    return runs[0].start_ms if above_ms >= SHARE_MS else None
