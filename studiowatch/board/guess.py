"""What the columns of an unknown sketch mean, from names, units and the limits of sensors: mapped only if it is plain.

A wrong mapping would spoil coats in silence, a question costs her one click. So a column is mapped only if

* its name says one quantity in whole words, or its unit does, and no word is left that is not understood;
* its unit is stated, or is the only one in which a sensor could mean all its values (1013 can only be hPa; 21 or 68
  can be °C as well as °F, and is asked);
* what it then says is possible in a room where people work, and a humidity could not be a vapour density as well; and
* no other column claims the same channel, and its lines do not come from several sensors in turn.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import replace
from math import inf
from statistics import median

from studiowatch.board.loose_lines import Row
from studiowatch.board.loose_seen import IMPLIED, Seen, collect, twins
from studiowatch.board.loose_units import CHANNELS, OTHER_UNIT, UNITS, Dimension
from studiowatch.board.loose_words import Quantity
from studiowatch.board.mapping import Choice, Column, ColumnMapping, Outcome, Sureness
from studiowatch.physics.moist_air import vapour_concentration
from studiowatch.room.readings import Channel
from studiowatch.speech.words import mark, say

SURE_COUNTER_ROWS = 60  # of numbers that only rise; fewer may be a room that warms up: assumption
DRIEST_PCT = 1.0  # %RH; below it is a fraction, or a dead sensor: assumption
# °C; outside, values look like one of °C and °F taken for the other, and are asked: assumption
MAPPED_ROOM_C = (0.0, 40.0)
USUAL_C = (10.0, 35.0)  # °C, orders what is offered, decides nothing: assumption
USUAL_PCT = (20.0, 80.0)  # %RH, likewise

_CHANNELS: dict[Quantity, tuple[Channel, ...]] = {
    Quantity.TEMPERATURE: (Channel.TEMPERATURE,),
    Quantity.SURFACE: (Channel.SURFACE,),
    Quantity.HUMIDITY: (Channel.HUMIDITY,),
    Quantity.AIR: (Channel.AIR_SPEED, Channel.AIR_SIGNAL),
    Quantity.PRESSURE: (Channel.PRESSURE,),
}
_RIVALS = {
    Quantity.TEMPERATURE: mark("{count} columns may be the air temperature: say which one is measured at the rack."),
    Quantity.HUMIDITY: mark("{count} columns may be the relative humidity: say which one is measured at the rack."),
    Quantity.AIR: mark("{count} columns may be the moving air: say which one is measured at the rack."),
    Quantity.SURFACE: mark("{count} columns may be the surface temperature: say which one is measured at the rack."),
    Quantity.PRESSURE: mark("{count} columns may be the air pressure: say which one is measured at the rack."),
}
_USUAL = {Channel.TEMPERATURE: USUAL_C, Channel.SURFACE: USUAL_C, Channel.HUMIDITY: USUAL_PCT}
_OF_A_ROOM = {Channel.TEMPERATURE: MAPPED_ROOM_C, Channel.HUMIDITY: (DRIEST_PCT, 100.5)}


def guess(rows: Sequence[Row]) -> ColumnMapping | None:
    """Return what the columns of `rows`, all lines of one board, mean; None if nothing came often enough."""
    styles = Counter(row.style for row in rows)
    if not styles:
        return None
    style = styles.most_common(1)[0][0]
    kept = [row for row in rows if row.style is style]
    seen = collect(kept)
    if not seen:
        return None
    columns = {column.key: _judge(column) for column in seen}
    pairs = twins(rows, seen)
    for celsius, other in pairs:
        columns[celsius.key], columns[other.key] = _part(celsius, other, columns[celsius.key])
    _ask_dense(columns, seen)
    _ask_mixed(columns, seen, kept)
    _ask_rivals(columns, [column for column in seen if column not in [other for _, other in pairs]])
    return ColumnMapping(style=style, columns=tuple(columns.values()))


def _judge(seen: Seen) -> Column:
    unused = _unused(seen)
    if unused:
        return unused
    choices = _choices(seen)
    doubt = _doubt(seen, choices)
    if not doubt and seen.unit:
        why = (
            say("It says {label} and {unit}.", label=_quoted(seen), unit=seen.unit)
            if seen.label
            else say("It says {unit}.", unit=seen.unit)
        )
        return _mapped(seen, choices[0], Sureness.STATED, why)
    if not doubt:
        why = say(
            "It says {label}, and only in {unit} are its values possible.",
            label=_quoted(seen),
            unit=say(choices[0].unit),
        )
        return _mapped(seen, choices[0], Sureness.INFERRED, why)
    if not (choices and _is_of_a_room(choices[0], seen.values)):  # the stated unit, or the name, may be wrong
        choices = [*choices, *(one for one in _choices(replace(seen, unit="")) if one not in choices)]
    if not choices:
        return _unknown(seen, say("No sensor that is used here could mean these values."), Sureness.OPEN)
    return Column(key=seen.key, outcome=Outcome.ASKED, sureness=Sureness.OPEN, why=doubt, candidates=tuple(choices))


def _unused(seen: Seen) -> Column | None:
    """Return the column if nothing need be asked of it: it is plainly something else, or has said nothing yet."""
    if Quantity.OTHER in seen.name.quantities:
        return _unknown(seen, say("{label} is not used here.", label=_quoted(seen)), Sureness.STATED)
    if seen.unit == OTHER_UNIT:
        return _unknown(seen, say("Its unit is not used here."), Sureness.STATED)
    if not seen.values:
        return _unknown(seen, say("No value has come yet."), Sureness.OPEN)
    if seen.is_counter and not seen.unit and not (seen.quantity and seen.name.is_whole):
        is_sure = len(seen.values) >= SURE_COUNTER_ROWS
        why = say("It rises with every line: a clock or a counter.")
        return _unknown(seen, why, Sureness.INFERRED if is_sure else Sureness.OPEN)
    return None


def _choices(seen: Seen) -> list[Choice]:
    """Return what a sensor could mean by the values, the likeliest first."""
    quantities = seen.name.quantities or ({IMPLIED[seen.unit]} if seen.unit in IMPLIED else set(_CHANNELS))
    channels = [channel for quantity in _CHANNELS if quantity in quantities for channel in _CHANNELS[quantity]]
    unit_name = "%" if seen.unit == "%RH" else seen.unit
    units = [UNITS[unit_name]] if unit_name else list(UNITS.values())
    found = [
        Choice(channel, unit.name)
        for channel in channels
        for unit in units
        if channel in CHANNELS[unit.dimension]
        and unit.allows(seen.values, channel)
        and (seen.is_whole_numbers or not unit.integers_only)
    ]
    found = [choice for choice in found if not _is_absurd(choice, seen.values)] or found
    return sorted(found, key=lambda choice: not _is_usual(choice, seen.values))


def _is_absurd(choice: Choice, values: Sequence[float]) -> bool:
    """Tell whether tenths or hundredths of a per cent would make a room drier than any."""
    unit = UNITS[choice.unit]
    return unit.dimension is Dimension.HUMIDITY and unit.integers_only and unit.convert(max(values)) <= 10 * DRIEST_PCT


def _is_usual(choice: Choice, values: Sequence[float]) -> bool:
    low, high = _USUAL.get(choice.channel, (-inf, inf))
    return low <= median(map(UNITS[choice.unit].convert, values)) <= high


def _doubt(seen: Seen, choices: Sequence[Choice]) -> str:
    """Return why it must be asked, or "" if it is plain."""
    if seen.is_contradictory or not choices:
        return say("{label} and its unit or values do not fit together: say what it is.", label=_quoted(seen))
    if seen.quantity is None or not seen.name.is_understood:
        return _name_doubt(seen)
    if any(number.doubtful_comma for number in seen.numbers) and _fits_in_thousands(seen, choices[0]):
        return say("The comma may part decimals or thousands: say which value is right.")
    if not seen.unit:
        return _unit_doubt(seen, choices)
    return _value_doubt(seen, choices[0])


def _value_doubt(seen: Seen, choice: Choice) -> str:
    if not seen.name.is_whole and choice.channel is Channel.AIR_SIGNAL:
        return say("{label} may be any voltage: say whether it is the air sensor's.", label=_quoted(seen))
    if _is_of_a_room(choice, seen.values):
        return ""
    return say("In {unit} no room is like this: say what the unit is.", unit=seen.unit)


def _name_doubt(seen: Seen) -> str:
    if len(seen.name.quantities) > 1:
        return say("{label} names several things: say which it is.", label=_quoted(seen))
    if seen.label:
        return say(
            "{label} is not fully understood: say whether it is measured at the rack, and what it is.",
            label=_quoted(seen),
        )
    return say("It has no name: breathe on the sensor, then turn a fan on it, to find out.")


def _unit_doubt(seen: Seen, choices: Sequence[Choice]) -> str:
    if not seen.name.is_whole:
        return say("{label} is only an initial, without a unit: say what it is.", label=_quoted(seen))
    if len(choices) > 1:
        return say(
            "{label} has no unit, and {first} is as possible as {second}: say which.",
            label=_quoted(seen),
            first=say(choices[0].unit),
            second=say(choices[1].unit),
        )
    if not _is_of_a_room(choices[0], seen.values):
        return say("{label} has no unit, and its values are unusual: say what it is.", label=_quoted(seen))
    return ""


def _is_of_a_room(choice: Choice, values: Sequence[float]) -> bool:
    low, high = _OF_A_ROOM.get(choice.channel, (-inf, inf))
    return all(low <= UNITS[choice.unit].convert(value) <= high for value in values)


def _fits_in_thousands(seen: Seen, choice: Choice) -> bool:
    return _is_of_a_room(choice, thousands := [value * 1000 for value in seen.values]) and UNITS[choice.unit].allows(
        thousands, choice.channel
    )


def _part(celsius: Seen, other: Seen, judged: Column) -> tuple[Column, Column]:
    """Return the columns of a temperature that is printed in two units: the one in °C is used."""
    why = say("It is the same temperature in another unit as {column}, and this one is in °C.", column=repr(other.key))
    choice = Choice(Channel.TEMPERATURE, "°C")
    is_plain = celsius.name.is_understood and _is_of_a_room(choice, celsius.values)
    if judged.outcome is Outcome.ASKED and is_plain:
        judged = _mapped(celsius, choice, Sureness.INFERRED, why)
    return judged, _unknown(
        other, say("It is the same temperature as {column}.", column=repr(celsius.key)), Sureness.INFERRED
    )


def _ask_dense(columns: dict[str, Column], seen: Sequence[Seen]) -> None:
    """Ask for a humidity without a unit that could also be the vapour's density in g/m³ at the lines' temperature."""
    hottest_C = max(
        (UNITS[choice.unit].convert(max(one.values)) for one in seen for choice in _of_temperature(columns[one.key])),
        default=MAPPED_ROOM_C[1],
    )
    coldest_C, warmest_C = MAPPED_ROOM_C
    densest_g_m3 = float(vapour_concentration(min(max(hottest_C, coldest_C), warmest_C), 100.0))
    for one in seen:
        column = columns[one.key]
        is_bare = column.choice and column.choice.channel is Channel.HUMIDITY and not (one.unit or one.name.is_relative)
        if is_bare and column.choice and min(one.values) <= densest_g_m3:
            columns[one.key] = _asked(
                column, say("{label} has no unit, and may be in % or in g/m³: say which.", label=_quoted(one))
            )


def _ask_mixed(columns: dict[str, Column], seen: Sequence[Seen], rows: Sequence[Row]) -> None:
    """Ask for columns that may come from several sensors in turn: lines of two kinds, or a number of the sensor."""
    kinds = Counter(tuple(field.key for field in row.fields) for row in rows)
    common = [kind for kind, count in kinds.items() if count > 1]
    senders = any(one.is_sender for one in seen)
    for key, column in columns.items():
        if column.choice and (senders or sum(key in kind for kind in common) > 1):
            why = say("{column} may be of several sensors in turn: say whether it is of one only.", column=repr(key))
            columns[key] = _asked(column, why)


def _of_temperature(column: Column) -> list[Choice]:
    """Return the choices for a column that can be a temperature of a room."""
    return [choice for choice in _options(column) if choice.channel is Channel.TEMPERATURE]


def _ask_rivals(columns: dict[str, Column], seen: Sequence[Seen]) -> None:
    """Ask for all columns of a channel that more than one named column claims."""
    named = [one for one in seen if one.quantity]
    for channel in Channel:
        rivals = [one for one in named if channel in {choice.channel for choice in _options(columns[one.key])}]
        for one in rivals if len(rivals) > 1 else ():
            why = say(_RIVALS[one.quantity], count=len(rivals)) if one.quantity else ""
            columns[one.key] = _asked(columns[one.key], why)


def _options(column: Column) -> tuple[Choice, ...]:
    return (column.choice,) if column.choice else column.candidates


def _asked(column: Column, why: str) -> Column:
    return replace(
        column, outcome=Outcome.ASKED, sureness=Sureness.OPEN, why=why, choice=None, candidates=_options(column)
    )


def _mapped(seen: Seen, choice: Choice, sureness: Sureness, why: str) -> Column:
    return Column(key=seen.key, outcome=Outcome.MAPPED, sureness=sureness, why=why, choice=choice)


def _unknown(seen: Seen, why: str, sureness: Sureness) -> Column:
    return Column(key=seen.key, outcome=Outcome.UNKNOWN, sureness=sureness, why=why)


def _quoted(seen: Seen) -> str:
    return f"“{seen.label or seen.key}”"
