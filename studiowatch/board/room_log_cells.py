"""Cells of a room log: text to a time, a value or a cover, or a clause that says what is wrong and what is allowed."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime

from studiowatch.board.translate import LIMITS
from studiowatch.room.readings import Channel

FIRST_TIME_S = 946_684_800  # 2000-01-01T00:00:00Z: no room log is older
LAST_TIME_S = 4_102_444_800  # 2100-01-01T00:00:00Z
TIME_ALLOWED = "2000-01-01 to 2100-01-01"

_NUMBER = re.compile(r"[-+]?[0-9]{1,20}(?:\.[0-9]{0,20})?(?:[eE][-+]?[0-9]{1,2})?")


class CellFault(Exception):  # noqa: N818 - a fault of the file, not of the program
    """A cell that cannot be taken; the text is a clause that ends its sentence."""


@dataclass(frozen=True, slots=True)
class _Slip:
    """Values that can hardly be meant in the column's unit, and the unit that they were probably written in."""

    looks_wrong: Callable[[float], bool]
    unit: str


# where a room's air cannot be, but the same room in another unit is; thresholds: assumption
_SLIPS = {
    Channel.TEMPERATURE: (
        _Slip(lambda value: 50 < value <= 120, "°F"),  # noqa: PLR2004 - 10 to 49 °C written in °F
        _Slip(lambda value: 250 <= value <= 330, "K"),  # noqa: PLR2004 - -23 to 57 °C written in K
    ),
    Channel.HUMIDITY: (_Slip(lambda value: 0 < value <= 1, "a fraction of 1"),),
    Channel.AIR_SPEED: (_Slip(lambda value: value > 15, "ft/min, cm/s or mV"),),  # noqa: PLR2004 - a gale, m/s
    Channel.PRESSURE: (
        _Slip(lambda value: 300 <= value <= 1100, "hPa"),  # noqa: PLR2004 - the span of LIMITS in hPa
        _Slip(lambda value: 30 <= value <= 110, "kPa"),  # noqa: PLR2004 - the span of LIMITS in kPa
    ),
}
_UNITS = {
    Channel.TEMPERATURE: "°C",
    Channel.HUMIDITY: "%RH",
    Channel.AIR_SPEED: "m/s",
    Channel.AIR_SIGNAL: "mV",
    Channel.SURFACE: "°C",
    Channel.PRESSURE: "Pa",
    Channel.PARTICLES: "1/m³",
}


def read_value(channel: Channel, text: str) -> float | None:
    """Return the value of a cell in the channel's unit, None if it is empty. Raises `CellFault`."""
    if not text:
        return None
    unit = _UNITS[channel]
    value = _number(channel.value, text)
    limits = LIMITS[channel]
    allowed = f"{limits.low:,g} to {limits.high:,g} {unit}".replace(",", " ")
    for slip in _SLIPS.get(channel, ()):
        if slip.looks_wrong(value):
            raise CellFault(
                f"{channel.value} {text} looks like {slip.unit}; write it in {unit} ({allowed}), "
                "or leave the cell empty if it is a fault of the sensor."
            )
    admitted = limits.admit(value)
    if admitted is None:
        raise CellFault(
            f"{channel.value} {text} is outside {allowed}; correct it, or leave the cell empty if it was not measured."
        )
    return admitted


def read_time_ms(name: str, text: str) -> int:
    """Return UTC ms from a cell of the column ``time`` or ``time_unix``. Raises `CellFault`."""
    if not text:
        raise CellFault(f"{name} is empty; every row needs its time.")
    time_s = _number(name, text) if name == "time_unix" else _iso_s(text)
    if FIRST_TIME_S <= time_s < LAST_TIME_S:
        return round(time_s * 1000)
    if FIRST_TIME_S <= time_s / 1000 < LAST_TIME_S:
        raise CellFault(f"time_unix {text} looks like milliseconds; write it in seconds.")
    raise CellFault(f"{name} {text} is outside {TIME_ALLOWED}.")


def read_cover(text: str) -> bool | None:
    """Return whether the piece was covered, None if the cell is empty. Raises `CellFault`."""
    if text in {"0", "1", ""}:
        return text == "1" if text else None
    raise CellFault(f'cover "{text}" must be 1 (covered), 0 (not covered) or empty.')


def _iso_s(text: str) -> float:
    try:
        time = datetime.fromisoformat(text)
    except ValueError:
        raise CellFault(f'time "{text}" is no ISO 8601 time such as 2026-03-02T09:00:00Z.') from None
    if time.tzinfo is None:
        raise CellFault(f'time "{text}" has no zone; write Z for UTC, or the offset, such as +01:00.')
    return time.timestamp()


def _number(name: str, text: str) -> float:
    if _NUMBER.fullmatch(text):
        return float(text)
    if _NUMBER.fullmatch(text.replace(",", ".", 1)):
        raise CellFault(f'{name} "{text}" has a decimal comma; write a point.')
    raise CellFault(f'{name} "{text}" is no number; write digits with a decimal point, or leave the cell empty.')
