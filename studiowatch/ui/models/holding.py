"""The calibrations that hold, as the board page lists them."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import tzinfo

from studiowatch.room.humidity_calibration import HumidityCalibration
from studiowatch.service.calibration_views import CalibrationsView, CalibrationView
from studiowatch.speech.words import mark, say
from studiowatch.ui.models.times import clock_words, day_words, local
from studiowatch.ui.models.tones import Tone

NONE_HOLD = mark("None yet: humidity is shown as the sensor says it, and air speed only where the sensor gives m/s.")
WITHDRAW_DETAIL = mark(
    "What was read since is shown as without it, and the coats are dried anew by that. "
    "The readings themselves are stored as the sensor gave them, and stay."
)

_TITLES = {
    True: (mark("Humidity, {sensor}"), mark("Withdraw the calibration of humidity, {sensor}?")),
    False: (mark("Air speed, {sensor}"), mark("Withdraw the calibration of air speed, {sensor}?")),
}
"""Of a calibration of humidity and of one of air speed: its title, and what to ask before it is withdrawn."""


@dataclass(frozen=True, slots=True, kw_only=True)
class HoldingRow:
    """One calibration; `recheck_tone` says whether a check is due, `question` asks before it is withdrawn."""

    key: str
    title: str
    made: str
    effect: str
    recheck: str
    recheck_tone: Tone
    question: str

    @property
    def spoken(self) -> str:
        """Return the row as one phrase."""
        return f"{self.title}. {self.made}. {self.effect} {self.recheck}."


def holding_rows(view: CalibrationsView, now_ms: int, zone: tzinfo | None = None) -> tuple[HoldingRow, ...]:
    """Return the calibrations, those of the sensor that is on first, the newest first."""
    ordered = sorted(view.holding, key=lambda one: (not one.is_present, -one.made_ms))
    return tuple(_row(one, now_ms, zone) for one in ordered)


def _row(view: CalibrationView, now_ms: int, zone: tzinfo | None) -> HoldingRow:
    is_due = view.recheck_ms <= now_ms
    day = day_words(local(view.recheck_ms, zone).date())
    sensor, made = sensor_words(view.sensor), clock_words(view.made_ms, now_ms, zone)
    here, away = mark("Made {time}, on the board now"), mark("Made {time}, not on the board now")
    due, later = mark("A check is due since {day}"), mark("To be checked again from {day}")
    title, question = _TITLES[isinstance(view.calibration, HumidityCalibration)]
    return HoldingRow(
        key=view.key,
        title=say(title, sensor=sensor),
        made=say(here if view.is_present else away, time=made),
        effect=view.sentence,
        recheck=say(due if is_due else later, day=day),
        recheck_tone=Tone.CAUTION if is_due else Tone.MUTED,
        question=say(question, sensor=sensor),
    )


def sensor_words(sensor: str) -> str:
    """Return how a sensor is called."""
    return say("sensor {name}", name=sensor) if sensor else say("a sensor without a serial number")
