"""Cells of a room log: text to a value or a cover, or a clause that says what is wrong and what is allowed."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from enum import StrEnum
from types import MappingProxyType

from studiowatch.board.translate import KELVIN_OFFSET, LIMITS, converted
from studiowatch.room.readings import Channel
from studiowatch.speech.words import mark, say, say_counted

_NUMBER = re.compile(r"[-+]?[0-9]{1,20}(?:\.[0-9]{0,20})?(?:[eE][-+]?[0-9]{1,2})?")
_LONGEST = 60  # characters of a cell that a sentence shows: more than any time or number has
_MOST_NAMES = 12  # of columns in one sentence; assumption


class FaultKind(StrEnum):
    """Why a row is refused, as a summary counts it."""

    CSV = mark("no CSV")
    CELLS = mark("wrong number of cells")
    TIME = mark("time that cannot be read")
    NIGHT = mark("local time that is missing or comes twice that night")
    ORDER = mark("time before that of an earlier row")
    AHEAD = mark("time ahead of the clock")
    SAME_TIME = mark("another reading at the same time")
    NUMBER = mark("no number")
    UNIT = mark("another unit")
    RANGE = mark("out of range")
    COVER = mark("cover that is neither 0 nor 1")


class CellFault(Exception):  # noqa: N818 - a fault of the file, not of the program
    """A cell that cannot be taken; the text is a clause that ends its sentence."""

    def __init__(self, kind: FaultKind, clause: str) -> None:
        super().__init__(clause)
        self.kind = kind


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
    Channel.HUMIDITY: (_Slip(lambda value: 0 < value <= 1, mark("a fraction of 1")),),
    Channel.AIR_SPEED: (_Slip(lambda value: value > 15, mark("ft/min, cm/s or mV")),),  # noqa: PLR2004 - a gale, m/s
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


@dataclass(frozen=True, slots=True, kw_only=True)
class _OtherUnit:
    """A column in another unit: value × factor + offset is in the channel's own."""

    channel: Channel
    factor: float = 1.0
    offset: float = 0.0


# exact: 1 °F = 5/9 K with 32 °F = 0 °C, and 1 ft = 0.3048 m (NIST SP 811, 2008, appendix B.8)
_F = {"factor": 5 / 9, "offset": -32 * 5 / 9}
_K = {"offset": KELVIN_OFFSET}
_OTHER_UNITS: Mapping[str, _OtherUnit] = MappingProxyType(
    {
        "temperature_F": _OtherUnit(channel=Channel.TEMPERATURE, **_F),
        "temperature_K": _OtherUnit(channel=Channel.TEMPERATURE, **_K),
        "surface_F": _OtherUnit(channel=Channel.SURFACE, **_F),
        "surface_K": _OtherUnit(channel=Channel.SURFACE, **_K),
        "humidity_fraction": _OtherUnit(channel=Channel.HUMIDITY, factor=100.0),
        "pressure_hPa": _OtherUnit(channel=Channel.PRESSURE, factor=100.0),
        "pressure_kPa": _OtherUnit(channel=Channel.PRESSURE, factor=1000.0),
        "air_speed_cm_s": _OtherUnit(channel=Channel.AIR_SPEED, factor=0.01),
        "air_speed_ft_min": _OtherUnit(channel=Channel.AIR_SPEED, factor=0.3048 / 60),
    }
)
_CHANNELS: Mapping[str, Channel] = MappingProxyType(
    {channel.value: channel for channel in Channel} | {name: unit.channel for name, unit in _OTHER_UNITS.items()}
)
VALUE_COLUMNS = tuple(_CHANNELS)


def shown(text: str) -> str:
    """Return a cell as a sentence shows it, cut if long."""
    return text if len(text) <= _LONGEST else text[: _LONGEST - 1] + "…"


def listed(names: Sequence[str]) -> str:
    """Return the names of columns as a sentence lists them; of many the first, and how many more there are."""
    told, more = ", ".join(map(shown, names[:_MOST_NAMES])), len(names) - _MOST_NAMES
    return told if more <= 0 else say_counted(more, "{columns} and 1 more", "{columns} and {n} more", columns=told)


def channel_of(column: str) -> Channel | None:
    """Return the channel that a column of this name fills, None if none."""
    return _CHANNELS.get(column)


def read_value(column: str, text: str, *, decimal_comma: bool = False, is_own: bool = False) -> float | None:
    """Return the value of a cell in its channel's unit, None if it is empty. Raises `CellFault`.

    In a log that this program wrote (`is_own`) no value that a sensor can mean is doubted: it was read in that unit.
    """
    if not text:
        return None
    channel = _CHANNELS[column]
    written = read_number(column, text, decimal_comma=decimal_comma)
    value = written if column == channel else _converted(column, written)
    if column == channel and not is_own:
        _refuse_slip(channel, text, value)
    limits = LIMITS[channel]
    admitted = limits.admit(value)
    if admitted is None:
        given = {"column": column, "text": text, "range": _allowed(channel)}
        if column == channel:
            clause = say(
                "{column} {text} is outside {range}; correct it, or leave the cell empty if it was not measured.",
                **given,
            )
        else:
            clause = say(
                "{column} {text} is {value}, which is outside {range}; correct it, or leave the cell empty if it was "
                "not measured.",
                **given,
                value=f"{value:g} {_UNITS[channel]}",
            )
        raise CellFault(FaultKind.RANGE, clause)
    return admitted


def read_cover(text: str) -> bool | None:
    """Return whether the piece was covered, None if the cell is empty. Raises `CellFault`."""
    if text in {"0", "1", ""}:
        return text == "1" if text else None
    raise CellFault(
        FaultKind.COVER, say('cover "{text}" must be 1 (covered), 0 (not covered) or empty.', text=shown(text))
    )


def read_number(column: str, text: str, *, decimal_comma: bool = False) -> float:
    """Return the number in a cell that is not empty. Raises `CellFault`."""
    if _NUMBER.fullmatch(text):
        return float(text)
    pointed = text.replace(",", ".", 1)
    if _NUMBER.fullmatch(pointed):
        if decimal_comma:
            return float(pointed)
        raise CellFault(
            FaultKind.NUMBER,
            say(
                '{column} "{text}" has a decimal comma; write a point, or put semicolons between the cells.',
                column=column,
                text=shown(text),
            ),
        )
    raise CellFault(
        FaultKind.NUMBER,
        say(
            '{column} "{text}" is no number; write digits with a decimal point, or leave the cell empty.',
            column=column,
            text=shown(text),
        ),
    )


def _converted(column: str, written: float) -> float:
    unit = _OTHER_UNITS[column]
    return converted(written, unit.factor, unit.offset)


def _refuse_slip(channel: Channel, text: str, value: float) -> None:
    for slip in _SLIPS.get(channel, ()):
        if slip.looks_wrong(value):
            raise CellFault(
                FaultKind.UNIT,
                say(
                    "{column} {text} looks like {other}; write it in {unit} ({range}), or leave the cell empty if it "
                    "is a fault of the sensor.",
                    column=channel.value,
                    text=text,
                    other=say(slip.unit),
                    unit=_UNITS[channel],
                    range=_allowed(channel),
                ),
            )


def _allowed(channel: Channel) -> str:
    limits = LIMITS[channel]
    low, high = (f"{end:,g}".replace(",", " ") for end in (limits.low, limits.high))
    return say("{low} to {high} {unit}", low=low, high=high, unit=_UNITS[channel])
