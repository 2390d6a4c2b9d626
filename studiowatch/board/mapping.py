"""What the numbers of an unchecked board mean: for each column a channel and a unit, how sure that is, and why."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from enum import StrEnum
from math import isclose
from typing import Any

from studiowatch.board.loose_lines import Row, Style
from studiowatch.board.loose_numbers import SENTINELS, Number
from studiowatch.board.loose_units import CHANNELS, UNITS
from studiowatch.board.translate import FAULT_RANGE, LIMITS, converted
from studiowatch.room.readings import Channel, ChannelFault, Reading
from studiowatch.speech.words import say

FAULT_MISSING = "missing"  # beside the codes of `translate`: the sketch sent no number, or one that stands for none
POWER_ON_C = 85.0  # °C, what one-wire thermometers report before they have measured: their data sheet, from memory

_STYLES = {style.name.lower(): style for style in Style}
_MAY_BE_LARGE = (Channel.AIR_SIGNAL, Channel.PRESSURE, Channel.PARTICLES)  # 999 is a value there


class Outcome(StrEnum):
    """What became of a column."""

    MAPPED = "mapped"
    ASKED = "asked"
    UNKNOWN = "unknown"


class Sureness(StrEnum):
    """Where a decision comes from, surest first."""

    BY_HAND = "set by hand"  # not said
    STATED = "stated by the sketch"  # not said
    INFERRED = "inferred"
    OPEN = "open"


@dataclass(frozen=True, slots=True)
class Choice:
    """A meaning that a column can have: a channel, and the name of one of `loose_units.UNITS`.

    Raises
    ------
    ValueError
        If the unit is not known or does not measure the channel.
    """

    channel: Channel
    unit: str

    def __post_init__(self) -> None:
        unit = UNITS.get(self.unit)
        if unit is None or self.channel not in CHANNELS[unit.dimension]:
            fitting = [name for name, unit in UNITS.items() if self.channel in CHANNELS[unit.dimension]]
            raise ValueError(
                say(
                    "The unit {unit} cannot be of {channel}; allowed: {units}.",
                    unit=repr(self.unit),
                    channel=self.channel,
                    units=", ".join(fitting),
                )
            )

    def read(self, number: Number) -> tuple[float | None, str]:
        """Return the value in the channel's own unit and "", or None and the code of the fault."""
        raw = number.value
        if raw is None or (raw in SENTINELS and self.channel not in _MAY_BE_LARGE):
            return None, FAULT_MISSING
        unit = UNITS[self.unit]
        own = converted(raw, unit.factor, unit.offset)
        if self.channel is Channel.TEMPERATURE and isclose(own, POWER_ON_C):
            return None, FAULT_MISSING
        value = LIMITS[self.channel].admit(own)
        return (value, "") if value is not None else (None, FAULT_RANGE)


@dataclass(frozen=True, slots=True, kw_only=True)
class Column:
    """One column, label or JSON path.

    Attributes
    ----------
    key : str
        What it is known by from line to line.
    choice : Choice or None
        What it is, if it is mapped.
    candidates : tuple of Choice
        What to offer her, the likeliest first, if it is asked.
    why : str
        One sentence for her.
    """

    key: str
    outcome: Outcome
    sureness: Sureness
    why: str
    choice: Choice | None = None
    candidates: tuple[Choice, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class ColumnMapping:
    """What every column of one board's lines means. `columns` stand in the order of the line."""

    style: Style
    columns: tuple[Column, ...]

    @property
    def keys(self) -> tuple[str, ...]:
        """The columns' keys."""
        return tuple(column.key for column in self.columns)

    @property
    def chosen(self) -> dict[str, Choice]:
        """What is mapped, by key."""
        return {column.key: column.choice for column in self.columns if column.choice}

    def column(self, key: str) -> Column:
        """Return the column `key`. Raises ValueError if there is none."""
        found = next((column for column in self.columns if column.key == key), None)
        if found is None:
            raise ValueError(
                say(
                    "There is no column {column}; there are: {columns}.", column=repr(key), columns=", ".join(self.keys)
                )
            )
        return found

    def with_column(self, new: Column) -> ColumnMapping:
        """Return the mapping with the column of the same key replaced."""
        return replace(self, columns=tuple(new if column.key == new.key else column for column in self.columns))

    def set_by_hand(self, key: str, choice: Choice | None) -> ColumnMapping:
        """Return the mapping with what she says of column `key`; None if it is not to be used.

        Raises
        ------
        ValueError
            If there is no such column, or another one already is this channel.
        """
        column = self.column(key)
        others = [other for other, chosen in self.chosen.items() if choice and chosen.channel is choice.channel]
        if choice and others and others != [key]:
            raise ValueError(
                say(
                    "Column {column} already is {channel}: set that one to “not used” first.",
                    column=repr(others[0]),
                    channel=choice.channel,
                )
            )
        return self.with_column(
            replace(
                column,
                outcome=Outcome.MAPPED if choice else Outcome.UNKNOWN,
                sureness=Sureness.BY_HAND,
                why=say("You set it.") if choice else say("You set it to “not used”."),
                choice=choice,
                candidates=(),
            )
        )

    def to_plain(self) -> dict[str, object]:
        """Return it in texts, lists and tables alone, as TOML and JSON hold them."""
        return {"style": self.style.name.lower(), "columns": [_column_to_plain(column) for column in self.columns]}

    @classmethod
    def from_plain(cls, plain: Mapping[str, object]) -> ColumnMapping:
        """Return what `to_plain` gave.

        Raises
        ------
        ValueError
            If it is anything else, with a sentence that says what.
        """
        style, columns = str(plain.get("style")), plain.get("columns")
        if style not in _STYLES or not isinstance(columns, list):
            raise ValueError(
                "The kept mapping of the board has no style or no list of columns: map the board anew."  # not said
            )
        mapping = cls(style=_STYLES[style], columns=tuple(_column_from_plain(column) for column in columns))
        channels = [choice.channel for choice in mapping.chosen.values()]
        if len(set(mapping.keys)) < len(mapping.keys) or len(set(channels)) < len(channels):
            raise ValueError("The kept mapping names a column or a channel twice: map the board anew.")  # not said
        return mapping


def _column_to_plain(column: Column) -> dict[str, object]:
    plain: dict[str, object] = {
        "key": column.key,
        "outcome": column.outcome.value,
        "sureness": column.sureness.value,
        "why": column.why,
        "candidates": [[choice.channel.value, choice.unit] for choice in column.candidates],
    }
    if column.choice:
        plain["choice"] = [column.choice.channel.value, column.choice.unit]
    return plain


def _column_from_plain(plain: Mapping[str, Any]) -> Column:
    try:
        choice = plain.get("choice")
        column = Column(
            key=str(plain["key"]),
            outcome=Outcome(plain["outcome"]),
            sureness=Sureness(plain["sureness"]),
            why=str(plain["why"]),
            choice=_choice(choice) if choice is not None else None,
            candidates=tuple(_choice(one) for one in plain["candidates"]),
        )
    except (AttributeError, KeyError, TypeError, ValueError) as fault:
        raise ValueError(
            f"A column of the kept mapping cannot be read ({fault}): map the board anew."  # not said
        ) from fault
    if (column.choice is not None) != (column.outcome is Outcome.MAPPED):
        raise ValueError(
            f"Column {column.key!r} of the kept mapping contradicts itself: map the board anew."  # not said
        )
    return column


def _choice(plain: Sequence[str]) -> Choice:
    channel, unit = plain
    return Choice(Channel(channel), unit)


def read_row(row: Row, mapping: ColumnMapping, time_ms: int) -> Reading:
    """Return the unchecked reading that `row` gives by `mapping`, stamped `time_ms` (UTC ms).

    A mapped column that is not in the row is None without a fault, as a key that the board did not send.
    """
    chosen = mapping.chosen
    values: dict[str, float] = {}
    faults: list[ChannelFault] = []
    for field in row.fields:
        choice = chosen.get(field.key)
        if choice is None:
            continue
        value, code = choice.read(field.number)
        if value is None:
            faults.append(ChannelFault(channel=choice.channel, code=code))
        else:
            values[choice.channel.value] = value
    return Reading(time_ms=time_ms, checked=False, faults=tuple(faults), **values)


def gist(mapping: ColumnMapping) -> Sequence[object]:
    """Return what of a mapping is news to her."""
    return [(column.key, column.outcome, column.choice, frozenset(column.candidates)) for column in mapping.columns]


def merged(old: ColumnMapping, new: ColumnMapping) -> ColumnMapping:
    """Return `old` with its open columns as in `new`, unless another one has the channel, and new columns."""
    taken = {choice.channel for choice in old.chosen.values()}
    news = {column.key: column for column in new.columns if not (column.choice and column.choice.channel in taken)}
    kept = [news.get(column.key, column) if column.sureness is Sureness.OPEN else column for column in old.columns]
    return replace(old, columns=(*kept, *(column for column in new.columns if column.key not in old.keys)))
