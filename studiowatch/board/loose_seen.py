"""Columns as they came, over the lines of one board: their labels, stated units and numbers."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise, permutations

from studiowatch.board.loose_lines import Row
from studiowatch.board.loose_numbers import SENTINELS, Field, Number
from studiowatch.board.loose_units import UNITS, Dimension
from studiowatch.board.loose_words import Name, Quantity, read_label
from studiowatch.board.mapping import POWER_ON_C

MIN_SEEN = 3  # values of a column before anything is said of it: assumption
SENDERS = re.compile(r"(?i)(?:^|[\W_])(?:id|node|sensor|channel|ch|device|dev|addr(?:ess)?|pin|port)(?:$|[\W_0-9])")
COUNTER_ROWS = 5  # whole numbers that rise in each of so many lines are a clock or counter: assumption

IMPLIED = {  # units that name their quantity: % and V do not
    "%RH": Quantity.HUMIDITY,
    **{name: Quantity.TEMPERATURE for name, unit in UNITS.items() if unit.dimension is Dimension.TEMPERATURE},
    **{name: Quantity.AIR for name, unit in UNITS.items() if unit.dimension is Dimension.SPEED},
    **{name: Quantity.PRESSURE for name, unit in UNITS.items() if unit.dimension is Dimension.PRESSURE},
}


@dataclass(frozen=True, slots=True, kw_only=True)
class Seen:
    """A column as it came: `unit` is the stated one by the name of `UNITS`, "%RH" and "other" included, or ""."""

    key: str
    name: Name
    label: str
    unit: str
    is_contradictory: bool
    numbers: tuple[Number, ...]

    @property
    def values(self) -> list[float]:
        """The numbers, without those that stand for none."""
        is_thermometer = self.quantity in {Quantity.TEMPERATURE, Quantity.SURFACE} and self.unit in {"", "°C"}
        dropped = {POWER_ON_C} if is_thermometer else set()
        return [
            number.value
            for number in self.numbers
            if number.value is not None and number.value not in SENTINELS | dropped
        ]

    @property
    def quantity(self) -> Quantity | None:
        """The one quantity that name or unit says, or None if none or several."""
        if len(self.name.quantities) == 1:
            return next(iter(self.name.quantities))
        return None if self.name.quantities else IMPLIED.get(self.unit)

    @property
    def is_whole_numbers(self) -> bool:
        """True if no value has a point or comma."""
        return all(number.decimals == 0 for number in self.numbers)

    @property
    def is_counter(self) -> bool:
        """True if whole numbers rise with every line."""
        values = self.values
        return len(values) >= COUNTER_ROWS and self.is_whole_numbers and all(a < b for a, b in pairwise(values))

    @property
    def is_sender(self) -> bool:
        """True if it is named as the number of a sensor, and a few numbers come again and again."""
        values = self.values
        return SENDERS.search(self.label) is not None and 1 < len(set(values)) <= len(values) / MIN_SEEN


def collect(rows: Sequence[Row]) -> list[Seen]:
    """Return the columns of `rows` that came often enough, in the order in which they first came."""
    numbers: dict[str, list[Number]] = {}
    first: dict[str, Field] = {}
    for row in rows:
        for field in row.fields:
            first.setdefault(field.key, field)
            numbers.setdefault(field.key, []).append(field.number)
    seen = []
    for key, field in first.items():
        if len(numbers[key]) < MIN_SEEN:
            continue
        name = read_label(field.label)
        stated = {unit for unit in (field.unit, name.unit) if unit}
        if stated == {"%", "%RH"}:
            stated = {"%RH"}
        seen.append(
            Seen(
                key=key,
                name=name,
                label=field.label,
                unit=min(stated, default=""),
                is_contradictory=len(stated) > 1,
                numbers=tuple(numbers[key]),
            )
        )
    return seen


def twins(rows: Sequence[Row], columns: Sequence[Seen]) -> list[tuple[Seen, Seen]]:
    """Return pairs of columns that say one temperature in °C and in another unit, all along."""
    temperatures = [
        column for column in columns if column.quantity is Quantity.TEMPERATURE and not column.is_contradictory
    ]
    return [
        (celsius, other)
        for celsius, other in permutations(temperatures, 2)
        for unit in ("°F", "K")
        if celsius.unit in ("", "°C") and other.unit in ("", unit) and _is_same(rows, celsius, other, unit)
    ]


def _is_same(rows: Sequence[Row], celsius: Seen, other: Seen, unit: str) -> bool:
    """Tell whether `other` in `unit` is `celsius` within the digits printed, and not only where both stand still."""
    pairs = []
    for row in rows:
        numbers = {field.key: field.number for field in row.fields}
        if celsius.key in numbers and other.key in numbers:
            pairs.append((numbers[celsius.key], numbers[other.key]))
    told = [(a, b, a.value, b.value) for a, b in pairs if a.value is not None and b.value is not None]
    moved = len({value for _, _, value, _ in told})
    is_stated = bool(celsius.unit and other.unit)
    return (
        len(told) >= MIN_SEEN
        and (is_stated or moved > 1)
        and all(
            abs(UNITS[unit].convert(there) - here) <= 10.0**-a.decimals + UNITS[unit].factor * 10.0**-b.decimals
            for a, b, here, there in told
        )
    )
