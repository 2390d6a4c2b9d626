"""The calibrations that hold, as the board page lists them."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import tzinfo

from studiowatch.room.humidity_calibration import HumidityCalibration
from studiowatch.service.calibration_views import CalibrationsView, CalibrationView
from studiowatch.ui.models.times import clock_words, day_words, local
from studiowatch.ui.models.tones import Tone

NONE_HOLD = "None yet: humidity is shown as the sensor says it, and air speed only where the sensor gives m/s."
WITHDRAW_DETAIL = (
    "What was read since is shown as without it, and the coats are dried anew by that. "
    "The readings themselves are stored as the sensor gave them, and stay."
)


@dataclass(frozen=True, slots=True, kw_only=True)
class HoldingRow:
    """One calibration; `recheck_tone` says whether a check is due."""

    key: str
    title: str
    made: str
    effect: str
    recheck: str
    recheck_tone: Tone

    @property
    def spoken(self) -> str:
        """Return the row as one phrase."""
        return f"{self.title}. {self.made}. {self.effect} {self.recheck}."

    @property
    def question(self) -> str:
        """Return what to ask before it is withdrawn."""
        return f"Withdraw the calibration of {self.title[:1].lower()}{self.title[1:]}?"


def holding_rows(view: CalibrationsView, now_ms: int, zone: tzinfo | None = None) -> tuple[HoldingRow, ...]:
    """Return the calibrations, those of the sensor that is on first, the newest first."""
    ordered = sorted(view.holding, key=lambda one: (not one.is_present, -one.made_ms))
    return tuple(_row(one, now_ms, zone) for one in ordered)


def _row(view: CalibrationView, now_ms: int, zone: tzinfo | None) -> HoldingRow:
    is_due = view.recheck_ms <= now_ms
    day = day_words(local(view.recheck_ms, zone).date())
    kind = "Humidity" if isinstance(view.calibration, HumidityCalibration) else "Air speed"
    where = "on the board now" if view.is_present else "not on the board now"
    return HoldingRow(
        key=view.key,
        title=f"{kind}, {sensor_words(view.sensor)}",
        made=f"Made {clock_words(view.made_ms, now_ms, zone)}, {where}",
        effect=view.sentence,
        recheck=f"A check is due since {day}" if is_due else f"To be checked again from {day}",
        recheck_tone=Tone.CAUTION if is_due else Tone.MUTED,
    )


def sensor_words(sensor: str) -> str:
    """Return how a sensor is called."""
    return f"sensor {sensor}" if sensor else "a sensor without a serial number"
