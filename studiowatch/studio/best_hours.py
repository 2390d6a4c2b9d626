"""The best hours to lay a coat in the next two days, by the draws of the room to come, and why the others are not.

An hour's chance is the share of the draws in which the room keeps what the coat's sheet asks for from laying at that
hour until the coat is past clouding: until it is clear, or, where it is not milky, until it is dry to the touch.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from enum import StrEnum
from functools import cached_property
from itertools import groupby

import numpy as np
from numpy.typing import NDArray

from studiowatch.coats.data_sheet import DataSheet, Kind
from studiowatch.physics.moist_air import dew_point, saturation_pressure
from studiowatch.physics.ranges import Array, Mask
from studiowatch.room.limits import AIR_SPEED
from studiowatch.room.outlook import Outlook
from studiowatch.studio.plan_dates import PREPARE_MS, PRESENCE_MS
from studiowatch.studio.plan_shapes import Times
from studiowatch.studio.waiting import Need, Quantity, needs_of
from studiowatch.studio.working_hours import Span, WallClock, WorkingHours

HOURS = 48  # h ahead
WATCHED_H = 36  # h after laying that are looked at: the draws reach no farther behind two days; assumption
STEPS_H = 12  # steps of five minutes an hour
HOUR_MS = 3_600_000  # ms
STEP_MS = HOUR_MS // STEPS_H
TOGETHER = 8  # draws that are looked at together: their arrays are small enough not to be mapped anew each time
GOOD = 0.6  # chance from which an hour is named; that from which a warning ahead is said, see SOURCES.md
SURE = 0.9  # chance from which it is named apart from those that are only likely; assumption
_SHEET_C, _SHEET_PCT = 23.0, 50.0  # air of a sheet's own times: ISO 3270, ASTM D3924
_LEAST_PACE = 0.01  # of the sheet's own, so that a coat in a fog clears at last; assumption


class Reason(StrEnum):
    """Why an hour is not good."""

    OUTSIDE_HOURS = "outside working hours"  # not said
    NOT_READY = "coat below not ready"  # not said
    DAMP = "too damp"  # not said
    COLD = "too cold"  # not said
    WARM = "too warm"  # not said
    NEAR_DEW = "too near its dew point"  # not said
    MOVING_AIR = "air usually moving"  # not said
    FAN_MEANT = "fan meant to be on"  # not said


@dataclass(frozen=True, slots=True, kw_only=True)
class StartHour:
    """Laying at `start_ms`, UTC ms: the chance that the room keeps the limits, 0 to 1, and why not, if it is not good.

    `reason` is the one that weighs most: her hours before the coat below, and that before the room.
    """

    start_ms: int
    chance: float
    reason: Reason | None


_Chance = tuple[float, Reason | None]


@dataclass(frozen=True, slots=True, kw_only=True)
class Stretch:
    """Hours on end to lay at, from the first to the last of them, UTC ms; `chance` is the least of them, 0 to 1."""

    first_ms: int
    last_ms: int
    chance: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Aside:
    """Hours on end that are not good for one reason, from the first to the last of them, UTC ms."""

    first_ms: int
    last_ms: int
    reason: Reason


@dataclass(frozen=True, slots=True, kw_only=True)
class Room:
    """The room to come: column 0 of `outlook` is at `made_ms`, UTC ms."""

    outlook: Outlook
    made_ms: int


def room_hours(room: Room, sheet: DataSheet, clock: WallClock, *, now_ms: int) -> tuple[StartHour, ...]:
    """Return each full hour of her clock in the next two days as one to lay a coat of `sheet` at, by the room alone."""
    starts_ms = tuple(_full_hours(now_ms, clock))
    return tuple(
        StartHour(start_ms=start_ms, chance=chance, reason=None if chance >= GOOD else worst)
        for start_ms, (chance, worst) in zip(starts_ms, _chances(room, sheet, starts_ms), strict=True)
    )


def start_hours(
    by_room: Sequence[StartHour], hours: WorkingHours, clock: WallClock, *, ready: Times | None = None
) -> tuple[StartHour, ...]:
    """Return hours as `room_hours` has them with what else is against each.

    Parameters
    ----------
    ready : Times or None
        When what lies below is ready for it, UTC ms; None for a bare support.
    """
    if not by_room:
        return ()
    working = _joined(hours.spans(clock.day(by_room[0].start_ms - HOURS * HOUR_MS), 2 + 2 * HOURS // 24, clock))
    return tuple(_judged(hour, working, ready) for hour in by_room)


def stretches(hours: Sequence[StartHour]) -> tuple[Stretch, ...]:
    """Return the good hours merged, the surest first; of like ones the longer, then the earlier."""
    found = []
    for rank, run in groupby(hours, _rank):
        one = tuple(run)
        if rank:
            chance = min(hour.chance for hour in one)
            found.append(Stretch(first_ms=one[0].start_ms, last_ms=one[-1].start_ms, chance=chance))
    return tuple(sorted(found, key=lambda one: (one.chance < SURE, one.first_ms - one.last_ms, one.first_ms)))


def asides(hours: Sequence[StartHour]) -> tuple[Aside, ...]:
    """Return the hours that are not good, those on end with the same reason merged, by time."""
    found = []
    for reason, run in groupby(hours, lambda hour: hour.reason):
        one = tuple(run)
        if reason is not None:
            found.append(Aside(first_ms=one[0].start_ms, last_ms=one[-1].start_ms, reason=reason))
    return tuple(found)


def _rank(hour: StartHour) -> int:
    return 0 if hour.reason is not None else 2 if hour.chance >= SURE else 1


def _full_hours(now_ms: int, clock: WallClock) -> Iterator[int]:
    """Yield the full hours of her clock; a clock that is set by an hour in between keeps them."""
    midnight_ms = clock.at(clock.day(now_ms), 0)
    first = -(-(now_ms - midnight_ms) // HOUR_MS)
    return (midnight_ms + (first + hour) * HOUR_MS for hour in range(HOURS))


def _joined(spans: Iterator[Span]) -> tuple[Span, ...]:
    """Return working spans with those that touch, at midnight, made one."""
    joined: list[Span] = []
    for from_ms, until_ms in spans:
        if joined and joined[-1][1] >= from_ms:
            joined[-1] = (joined[-1][0], until_ms)
        else:
            joined.append((from_ms, until_ms))
    return tuple(joined)


def _judged(hour: StartHour, working: Sequence[Span], ready: Times | None) -> StartHour:
    reason = hour.reason
    if ready is not None and (ready.p90 is None or hour.start_ms < ready.p90):
        reason = Reason.NOT_READY
    from_ms, until_ms = hour.start_ms - PREPARE_MS, hour.start_ms + PRESENCE_MS
    if not any(opens_ms <= from_ms and until_ms <= closes_ms for opens_ms, closes_ms in working):
        reason = Reason.OUTSIDE_HOURS
    return replace(hour, reason=reason)


def _chances(room: Room, sheet: DataSheet, starts_ms: Sequence[int]) -> list[_Chance]:
    """Return for each of the starts the chance of laying then, and what most often spoils it.

    Some draws are looked at after the others, for all of them at once would fill 20 MB.
    """
    outlook = room.outlook
    first = np.maximum(-((room.made_ms - np.asarray(starts_ms)) // STEP_MS), 0)
    first = np.minimum(first, outlook.hours * STEPS_H)
    failing: dict[Reason, NDArray[np.intp]] = {}
    spoilt = np.zeros(len(first), dtype=np.intp)
    draws = len(outlook.temperature_C)
    for begin in range(0, draws, TOGETHER):
        fails = _Walked(outlook=_some(outlook, slice(begin, begin + TOGETHER)), sheet=sheet).fails(first)
        for reason, mask in fails.items():
            failing[reason] = failing.get(reason, 0) + mask.sum(axis=0)
        spoilt += np.any(list(fails.values()), axis=0).sum(axis=0)
    worst = [max(failing, key=lambda reason: int(failing[reason][at])) for at in range(len(first))]
    return [
        (float(1.0 - count / draws), reason if count else None) for count, reason in zip(spoilt, worst, strict=True)
    ]


def _some(outlook: Outlook, draws: slice) -> Outlook:
    return replace(
        outlook,
        temperature_C=outlook.temperature_C[draws],
        humidity_pct=outlook.humidity_pct[draws],
        air_speed_m_s=outlook.air_speed_m_s[draws],
    )


@dataclass(frozen=True, kw_only=True)
class _Walked:
    """Draws at steps of five minutes, and where in them each limit is broken."""

    outlook: Outlook
    sheet: DataSheet

    def fails(self, first: NDArray[np.intp]) -> dict[Reason, Mask]:
        """Return where each limit is broken before a coat laid at the step `first` is past it, (draws, starts)."""
        end = self._end(first)
        return {
            reason: np.take_along_axis(broken, end + 1, axis=1) > broken[:, first]
            for reason, broken in self._broken().items()
        }

    def _end(self, first: NDArray[np.intp]) -> NDArray[np.intp]:
        """Return the last step that matters to a coat laid at each of `first`, (draws, starts)."""
        dose = self._dose()
        past = dose[:, first] + (_milky_h(self.sheet) - 0.5 / STEPS_H)  # the nearest step
        above = max(float(past.max()), float(dose.max())) + 1.0
        apart = np.arange(len(dose))[:, np.newaxis] * above  # so that all rows are one that rises
        steps = dose.shape[1]
        found = np.searchsorted((dose + apart).ravel(), (past + apart).ravel()).reshape(past.shape)
        last = np.minimum(first + WATCHED_H * STEPS_H, steps) - 1
        end: NDArray[np.intp] = np.minimum(found - np.arange(len(dose))[:, np.newaxis] * steps, last)
        return end

    @cached_property
    def _temperature_C(self) -> Array:
        return _stepped(self.outlook.temperature_C)

    @cached_property
    def _humidity_pct(self) -> Array:
        return _stepped(self.outlook.humidity_pct)

    def _dose(self) -> Array:
        """Return the hours of drying at the sheet's own pace that have passed by each step, (draws, steps)."""
        pace = _pace(self.sheet, self._temperature_C, self._humidity_pct)
        dose: Array = np.cumsum(pace / STEPS_H, axis=1) - pace[:, :1] / STEPS_H
        return dose

    def _broken(self) -> dict[Reason, NDArray[np.int16]]:
        """Return how many steps before each one broke a limit, (draws, steps + 1)."""
        masks: dict[Reason, Mask] = {}
        for need in needs_of(self.sheet):
            values = self._values(need.quantity)
            masks[_reason(need)] = values < need.limit if need.is_least else values > need.limit
        if self.sheet.kind is not Kind.SOLVENTBORNE:  # that one is laid with fresh air moving through, always
            speed, fanned = self.outlook.air_speed_m_s, self.outlook.fanned
            if fanned is not None:
                masks[Reason.FAN_MEANT] = _held(np.broadcast_to(fanned, speed.shape)).astype(np.bool_)
            masks[Reason.MOVING_AIR] = _held(speed) > AIR_SPEED.caution
        return {reason: _counted(mask) for reason, mask in masks.items()}

    def _values(self, quantity: Quantity) -> Array:
        if quantity is Quantity.TEMPERATURE:
            return self._temperature_C
        if quantity is Quantity.HUMIDITY:
            return self._humidity_pct
        above_K: Array = self._temperature_C - dew_point(self._temperature_C, self._humidity_pct)
        return above_K


def _counted(mask: Mask) -> NDArray[np.int16]:
    """Return how many are true before each place, and in all."""
    counts = np.zeros((mask.shape[0], mask.shape[1] + 1), dtype=np.int16)
    np.cumsum(mask, axis=1, dtype=np.int16, out=counts[:, 1:])
    return counts


def _milky_h(sheet: DataSheet) -> float:
    """Return how long a coat can cloud at its sheet's own pace, h."""
    return sheet.touch_dry_min / 60.0 if sheet.clear_h is None else sheet.clear_h


def _pace(sheet: DataSheet, temperature_C: Array, humidity_pct: Array) -> Array:
    """Return how fast water leaves, as a share of the pace of the sheet's own air; never counted as faster."""
    if sheet.kind is Kind.SOLVENTBORNE:
        return np.ones_like(temperature_C)
    room_Pa = saturation_pressure(temperature_C) * (1.0 - humidity_pct / 100.0)
    sheet_Pa = float(saturation_pressure(np.array(_SHEET_C))) * (1.0 - _SHEET_PCT / 100.0)
    pace: Array = np.clip(room_Pa / sheet_Pa, _LEAST_PACE, 1.0)
    return pace


def _reason(need: Need) -> Reason:
    if need.quantity is Quantity.TEMPERATURE:
        return Reason.COLD if need.is_least else Reason.WARM
    return Reason.DAMP if need.quantity is Quantity.HUMIDITY else Reason.NEAR_DEW


def _stepped(draws: Array) -> Array:
    """Return hourly draws at steps of five minutes, straight between."""
    at_h = np.arange((draws.shape[1] - 1) * STEPS_H + 1) / STEPS_H
    before = np.minimum(at_h.astype(np.intp), draws.shape[1] - 2)
    part = at_h - before
    values: Array = (1.0 - part) * draws[:, before] + part * draws[:, before + 1]
    return values


def _held(draws: Array) -> Array:
    """Return the mean of each hour held from half an hour before it to half an hour after: a fan is on or off."""
    at_h = np.arange((draws.shape[1] - 1) * STEPS_H + 1) / STEPS_H
    held: Array = draws[:, np.minimum(np.floor(at_h + 0.5).astype(np.intp), draws.shape[1] - 1)]
    return held
