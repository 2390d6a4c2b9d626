"""Which bare column is which: she breathes on the sensor, or turns a fan on it, and the columns that answer are named.

Breath is about 34 °C and saturated (physiology handbooks, from memory). Mixed into room air it raises the relative
humidity by tens of per cent, and the temperature by a share of what is missing to 34 °C. So a column that rises
further than any temperature could, in °C or °F, is the humidity. Both tests decline to decide when nothing moved or too
much did.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from enum import StrEnum
from itertools import pairwise
from math import inf
from statistics import median, pstdev

from studiowatch.board.loose_units import UNITS
from studiowatch.board.mapping import Column, ColumnMapping, Outcome, Sureness
from studiowatch.room.readings import Channel
from studiowatch.speech.words import mark, say

QUIET_MS = 15_000  # ms of watching the columns undisturbed: assumption
ACT_MS = 30_000  # ms of watching for an answer: chips answer within 8 s (data sheets, from memory), breath included
MIN_ROWS = 5  # rows in each stage: assumption
MIN_HUMIDITY_RISE = 10.0  # %RH, well beyond drift and a person's coming near: assumption
MIN_TEMPERATURE_RISE = 0.1  # °C or °F, ten steps of a usual chip: assumption
CLEAR = 4.0  # standard deviations of the quiet stage, or steps of the column, that count as moved: assumption
FAN_CLEAR = 8.0  # likewise for the fan, which is to stand out: assumption
FAN_LEAD = 3.0  # the air's column moves by this many times the next one's share: assumption
BREATH_SHARE = 0.5  # of breath in the air at the sensor, at most, a hand's breadth away: assumption
# lowest and highest of a room, and breath; in rooms warmer than 30 °C breath hardly warms: assumptions
ROOM_TEMPERATURES = {"°C": (5.0, 30.0, 34.0), "°F": (41.0, 86.0, 93.2), "K": (278.15, 303.15, 307.15)}
DAMPEST_PCT = 100.5  # %RH, with what a sensor rounds up: assumption
DAMP_PCT = 85.0  # a column from here to 100 may be a humidity that has no room to rise: assumption


class Kind(StrEnum):
    """What she does."""

    BREATH = "breath"
    FAN = "fan"


class Stage(StrEnum):
    """How far a test is."""

    QUIET = "quiet"
    ACT = "act"
    DONE = "done"


_TOLD = {
    (Kind.BREATH, Stage.QUIET): mark("Stand back from the sensor for 15 seconds."),
    (Kind.BREATH, Stage.ACT): mark("Breathe slowly on the sensor from a hand's breadth away until the time is up."),
    (Kind.FAN, Stage.QUIET): mark("Keep the air at the sensor still for 15 seconds."),
    (Kind.FAN, Stage.ACT): mark(
        "Turn a fan on the sensor, away from any wet coat, and leave it on until the time is up."
    ),
}
AGAIN = {
    Kind.BREATH: mark("Wait a minute, then breathe on the sensor from nearer."),
    Kind.FAN: mark("Let the air settle, then hold the fan nearer to the air sensor."),
}

Values = Mapping[str, float | None]


@dataclass(frozen=True, slots=True, kw_only=True)
class ColumnTest:
    """A test under way; `quiet` and `acted` are the rows of its two stages, by column."""

    kind: Kind
    started_ms: int
    now_ms: int
    quiet: tuple[Values, ...] = ()
    acted: tuple[Values, ...] = ()

    @property
    def stage(self) -> Stage:
        """How far it is."""
        elapsed_ms = self.now_ms - self.started_ms
        if elapsed_ms < QUIET_MS:
            return Stage.QUIET
        return Stage.ACT if elapsed_ms < QUIET_MS + ACT_MS else Stage.DONE

    @property
    def told(self) -> str:
        """What she is to do now, in one sentence; "" when it is done."""
        words = _TOLD.get((self.kind, self.stage))
        return say(words) if words else ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Verdict:
    """What a test showed: a channel for each column that it named (no unit), and one sentence."""

    found: Mapping[str, tuple[Channel, ...]]
    why: str


def begin(kind: Kind, time_ms: int) -> ColumnTest:
    """Return a test that starts at `time_ms`."""
    return ColumnTest(kind=kind, started_ms=time_ms, now_ms=time_ms)


def advance(test: ColumnTest, values: Values, time_ms: int) -> ColumnTest:
    """Return the test after a row of `values` by column, raw as the sketch sent them, came at `time_ms`."""
    test = replace(test, now_ms=max(time_ms, test.now_ms))
    if test.stage is Stage.QUIET:
        return replace(test, quiet=(*test.quiet, values))
    return replace(test, acted=(*test.acted, values)) if test.stage is Stage.ACT else test


def judge(test: ColumnTest) -> Verdict:
    """Return what the test shows. `found` is empty if it cannot be told; `why` then says what to do."""
    if min(len(test.quiet), len(test.acted)) < MIN_ROWS:
        return _declined(say("Too few lines came to judge by: see that the board sends a line every few seconds."))
    answers = {key: answer for key in test.quiet[0] if (answer := _answer(test, key))}
    return _judge_breath(answers) if test.kind is Kind.BREATH else _judge_fan(answers)


def settle(mapping: ColumnMapping, verdict: Verdict) -> ColumnMapping:
    """Return the mapping with what a test showed; a unit that is still open, °C or °F, is asked for."""
    for key, channels in verdict.found.items():
        column = mapping.column(key)
        if column.sureness is Sureness.OPEN and set(channels).isdisjoint(c.channel for c in mapping.chosen.values()):
            mapping = mapping.with_column(_narrowed(column, channels, verdict.why))
    return mapping


def _narrowed(column: Column, channels: tuple[Channel, ...], why: str) -> Column:
    candidates = tuple(choice for choice in column.candidates if choice.channel in channels)
    if len(candidates) == 1:
        return replace(
            column,
            outcome=Outcome.MAPPED,
            sureness=Sureness.INFERRED,
            why=why,
            choice=candidates[0],
            candidates=(),
        )
    return replace(column, candidates=candidates, why=f"{why} {say('Say in which unit.')}") if candidates else column


@dataclass(frozen=True, slots=True, kw_only=True)
class _Answer:
    """How a column answered, in its own unit: `clear` is the change as multiples of its noise."""

    before: float
    peak: float
    change: float
    clear: float

    @property
    def rise(self) -> float:
        return self.peak - self.before


def _answer(test: ColumnTest, key: str) -> _Answer | None:
    quiet = [value for row in test.quiet if (value := row.get(key)) is not None]
    acted = [value for row in test.acted if (value := row.get(key)) is not None]
    if min(len(quiet), len(acted)) < MIN_ROWS:
        return None
    before = median(quiet)
    peak = sorted(acted)[-2]  # one odd value alone is not an answer
    late = acted[len(acted) // 3 :]
    change = median(late) - before
    noise = max(pstdev(quiet), _step([*quiet, *acted]))
    biggest = max(abs(change), peak - before)
    return _Answer(before=before, peak=peak, change=change, clear=biggest / noise if noise else 0.0)


def _step(values: list[float]) -> float:
    """Return the smallest difference between two values, which is the column's resolution, or 0."""
    ordered = sorted(set(values))
    return min((b - a for a, b in pairwise(ordered)), default=0.0)


def _declined(why: str) -> Verdict:
    return Verdict(found={}, why=why)


def _judge_breath(answers: Mapping[str, _Answer]) -> Verdict:
    if not any(_rose(answer) for answer in answers.values()):
        return _declined(f"{say('No column rose.')} {say(AGAIN[Kind.BREATH])}")
    humid = [key for key, answer in answers.items() if _rose(answer) and _is_humidity(answer)]
    if not humid:
        return _declined(f"{say('No column rose as far as humidity does.')} {say(AGAIN[Kind.BREATH])}")
    if len(humid) > 1:
        return _declined(
            say(
                "Columns {first} and {second} both rose as humidity does: say which it is.",
                first=humid[0],
                second=humid[1],
            )
        )
    if any(DAMP_PCT <= answer.before <= DAMPEST_PCT for key, answer in answers.items() if key != humid[0]):
        return _declined(say("The air may be too damp for this test: say which column is which."))
    found: dict[str, tuple[Channel, ...]] = {humid[0]: (Channel.HUMIDITY,)}
    warm = [key for key, answer in answers.items() if key not in found and _highest_temperature(answer) is not None]
    if len(warm) == 1 and _rose(answers[warm[0]]) and _is_temperature(answers[warm[0]]):
        found[warm[0]] = (Channel.TEMPERATURE,)
        return Verdict(
            found=found,
            why=say("When you breathed on it, {humid} jumped and {warm} rose a little.", humid=humid[0], warm=warm[0]),
        )
    return Verdict(
        found=found,
        why=say("When you breathed on it, {humid} jumped; which is the temperature is not clear.", humid=humid[0]),
    )


def _rose(answer: _Answer) -> bool:
    return answer.rise > 0 and answer.clear >= CLEAR


def _is_humidity(answer: _Answer) -> bool:
    is_possible = UNITS["%"].allows((answer.before, answer.peak), Channel.HUMIDITY)
    highest = _highest_temperature(answer)
    return is_possible and answer.rise >= MIN_HUMIDITY_RISE and (highest is None or answer.peak > highest)


def _is_temperature(answer: _Answer) -> bool:
    highest = _highest_temperature(answer)
    return highest is not None and answer.rise >= MIN_TEMPERATURE_RISE and answer.peak <= highest


def _highest_temperature(answer: _Answer) -> float | None:
    """Return how high breath could bring the column if it were a temperature, or None if no room begins there."""
    reached = [
        answer.before + BREATH_SHARE * (breath - answer.before)
        for low, high, breath in ROOM_TEMPERATURES.values()
        if low <= answer.before <= high
    ]
    return max(reached, default=None)


def _judge_fan(answers: Mapping[str, _Answer]) -> Verdict:
    ranked = sorted(answers, key=lambda key: answers[key].clear, reverse=True)
    if not ranked or answers[ranked[0]].clear < FAN_CLEAR:
        return _declined(f"{say('No column moved clearly.')} {say(AGAIN[Kind.FAN])}")
    first = ranked[0]
    next_clear = answers[ranked[1]].clear if len(ranked) > 1 else -inf
    if next_clear * FAN_LEAD > answers[first].clear:
        return _declined(
            f"{say('Columns {first} and {second} moved alike.', first=first, second=ranked[1])} {say(AGAIN[Kind.FAN])}"
        )
    return Verdict(
        found={first: (Channel.AIR_SPEED, Channel.AIR_SIGNAL)},
        why=say("When the fan blew on it, {column} moved by far the most.", column=first),
    )
