"""What the room is heading for, and when it is fit: by the draws of its outlook; by its last hour while it is new."""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np

from studiowatch.physics.moist_air import dew_point
from studiowatch.physics.ranges import Array
from studiowatch.room.intentions import is_fan_on
from studiowatch.room.outlook import Outlook
from studiowatch.room.passing import Passing, lasting_passing, passing
from studiowatch.room.trend import Crossing
from studiowatch.service.room_ahead import RoomAhead
from studiowatch.service.room_heading import RoomHeading
from studiowatch.service.room_hours import DAY_MS, MINUTE_MS
from studiowatch.speech.words import mark, say
from studiowatch.studio.concern import AirNow
from studiowatch.studio.counting import number_word
from studiowatch.studio.heading import Figure
from studiowatch.studio.waiting import Guess, Need, Quantity

HOUR_MS = 3_600_000  # ms
KNOWN_MS = DAY_MS  # ms of the room before its draws are told: until then its last hour says more of it; assumption
WITHIN_H = 3.0  # h ahead in which a limit is warned of; see SOURCES.md
SAID_AT = 0.6  # chance at which that is said; see SOURCES.md
FAN_ON_FOR_H = 1.0 / 60.0  # h from which a fan counts as on
UPHELD_AT = 0.3  # chance down to which it is upheld; see SOURCES.md
WAIT_H = 48.0  # h ahead in which the room is looked at for being fit
LASTS_H = 0.5  # h for which it must stay fit, as long as it takes to lay a coat; assumption
FIT_SHARE = 2.0 / 3.0  # of the draws that must come to it; assumption
_FIGURES = {
    Quantity.HUMIDITY: Figure.HUMIDITY,
    Quantity.TEMPERATURE: Figure.TEMPERATURE,
    Quantity.DEW_MARGIN: Figure.ABOVE_DEW,
}
_RISING = {
    Figure.HUMIDITY: mark("the humidity is rising as it did in the last hour"),
    Figure.TEMPERATURE: mark("the temperature is rising as it did in the last hour"),
    Figure.ABOVE_DEW: mark("the air above its dew point is rising as it did in the last hour"),
}
_FALLING = {
    Figure.HUMIDITY: mark("the humidity is falling as it did in the last hour"),
    Figure.TEMPERATURE: mark("the temperature is falling as it did in the last hour"),
    Figure.ABOVE_DEW: mark("the air above its dew point is falling as it did in the last hour"),
}


@dataclass(slots=True)
class RoomForetold:
    """Answers as `studio.heading.Heading` and as `studio.waiting.Outlook`; the same question once a minute at most."""

    room: RoomAhead
    line: RoomHeading = field(default_factory=RoomHeading)
    _now_ms: int = 0
    _values: dict[Figure, float] = field(default_factory=dict)
    _draws: dict[Figure, Array] = field(default_factory=dict)
    _of: Outlook | None = None
    _minute: int | None = None
    _passings: dict[tuple[Figure, float, bool], Passing] = field(default_factory=dict)

    def take(self, air: AirNow, now_ms: int) -> None:
        """Take the room as measured now."""
        self.line.take(air, now_ms)
        self._now_ms = now_ms
        if air.temperature_C is None or air.humidity_pct is None:
            return
        self._values = {Figure.TEMPERATURE: air.temperature_C, Figure.HUMIDITY: air.humidity_pct}
        if air.dew_point_C is not None:
            self._values[Figure.ABOVE_DEW] = air.temperature_C - air.dew_point_C

    def until(self, figure: Figure, distance: float, *, said_before: bool) -> Crossing | None:
        """Return in how long `figure` will have moved by `distance`; see `studio.heading.Heading`."""
        outlook = self._known(self._now_ms)
        if outlook is None:
            return self.line.until(figure, distance, said_before=said_before)
        if distance == 0.0:
            return None
        told = self._passing(outlook, figure, distance, is_lasting=False)
        if told.chance < (UPHELD_AT if said_before else SAID_AT):
            return None
        passed_h = told.after_h[np.isfinite(told.after_h)]
        return Crossing(
            low_ms=round(told.by(0.1) * HOUR_MS),
            middle_ms=round(float(np.median(passed_h)) * HOUR_MS),
            high_ms=round(min(told.by(0.9), WITHIN_H) * HOUR_MS),
            by_days=True,
        )

    def fan_from_ms(self, now_ms: int) -> int | None:
        """Return when a fan is meant to go on; see `studio.heading.Heading`."""
        meant = self.room.meant(now_ms)
        starts_h = (one.start_h for one in meant if is_fan_on(meant, one.start_h + FAN_ON_FOR_H))
        soon_h = min((start_h for start_h in starts_h if 0.0 < start_h <= WITHIN_H), default=None)
        return None if soon_h is None else now_ms + round(soon_h * HOUR_MS)

    def met(self, need: Need, now_ms: int) -> Guess | None:
        """Return when `need` is likely met; see `studio.waiting.Outlook`."""
        figure = _FIGURES[need.quantity]
        if figure not in self._values:
            return None
        distance = need.limit - self._values[figure]
        self._now_ms = now_ms
        outlook = self._known(now_ms)
        if outlook is None:
            crossing = self.line.until(figure, distance, said_before=False)
            if crossing is None:
                return None
            basis = say((_RISING if distance > 0.0 else _FALLING)[figure])
            return Guess(time_ms=now_ms + crossing.middle_ms, basis=basis)
        told = self._passing(outlook, figure, distance, is_lasting=True)
        if told.chance < FIT_SHARE:
            return None
        basis = say(
            "so it is in {number} of ten ways that this room may go, by its days so far",
            number=number_word(round(10.0 * told.chance)),
        )
        return Guess(time_ms=now_ms + round(told.by(0.5) * HOUR_MS), basis=basis)

    def _known(self, now_ms: int) -> Outlook | None:
        return self.room.outlook if self.room.hours.span_of_log_ms(now_ms) >= KNOWN_MS else None

    def _passing(self, told: Outlook, figure: Figure, distance: float, *, is_lasting: bool) -> Passing:
        if told is not self._of:
            self._of, self._draws = told, {}
            self._minute = None
        minute = max(self._now_ms - (self.room.made_ms or 0), 0) // MINUTE_MS
        if minute != self._minute:
            self._minute = minute
            self._passings.clear()
        key = (figure, round(distance, 1), is_lasting)
        if key not in self._passings:
            if figure not in self._draws:
                self._draws[figure] = _drawn(told, figure)
            passed_h = minute / 60.0
            self._passings[key] = (
                lasting_passing(self._draws[figure], passed_h, distance, WAIT_H, LASTS_H)
                if is_lasting
                else passing(self._draws[figure], passed_h, distance, WITHIN_H)
            )
        return self._passings[key]


def _drawn(told: Outlook, figure: Figure) -> Array:
    if figure is Figure.TEMPERATURE:
        return told.temperature_C
    if figure is Figure.HUMIDITY:
        return told.humidity_pct
    above: Array = told.temperature_C - dew_point(told.temperature_C, told.humidity_pct)
    return above
