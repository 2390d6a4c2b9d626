"""The values of a studio file: what may stand there, and what it becomes."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import UTC, date, datetime, timedelta
from enum import StrEnum
from math import isfinite
from typing import Any

from studiowatch.studio.pieces import EARLIEST_YEAR, LATEST_YEAR, PANELS_MOST, TITLE_MOST, can_be_shown

_EPOCH = datetime(EARLIEST_YEAR, 1, 1, tzinfo=UTC)
LAST_PLACE = 100_000  # assumption: no rack is longer


class Wrong(ValueError):  # noqa: N818 - an answer to a value, caught where it is read
    """A value that may not stand there."""


def utc_ms(moment: datetime) -> int:
    """Return an aware `moment` as UTC milliseconds since 1970, exactly."""
    return (moment - _EPOCH) // timedelta(milliseconds=1)


_AFTER_ALL_MS = utc_ms(datetime(LATEST_YEAR + 1, 1, 1, tzinfo=UTC))


def is_of_records(time_ms: int) -> bool:
    """Return whether UTC milliseconds since 1970 lie in `EARLIEST_YEAR` to `LATEST_YEAR`."""
    return 0 <= time_ms < _AFTER_ALL_MS


def moment_of(time_ms: int) -> datetime:
    """Return UTC milliseconds since 1970 as an aware moment, exactly."""
    return _EPOCH + timedelta(milliseconds=time_ms)


def read_text(value: Any) -> str:  # noqa: ANN401 - whatever the file holds
    """Return a text that is not empty, or raise `Wrong`."""
    if not isinstance(value, str) or not value.strip():
        raise Wrong
    return value


def read_title(value: Any) -> str:  # noqa: ANN401
    """Return a title that can be shown and is not too long, or raise `Wrong`."""
    title = read_text(value)
    if not can_be_shown(title) or len(title) > TITLE_MOST:
        raise Wrong
    return title


def read_any_text(value: Any) -> str:  # noqa: ANN401
    """Return a text, an empty one too, or raise `Wrong`."""
    if not isinstance(value, str):
        raise Wrong
    return value


def read_yes_or_no(value: Any) -> bool:  # noqa: ANN401
    """Return a truth value, or raise `Wrong`."""
    if not isinstance(value, bool):
        raise Wrong
    return value


def read_place(value: Any) -> int:  # noqa: ANN401
    """Return a place on the rack, 0 to `LAST_PLACE`, or raise `Wrong`."""
    if isinstance(value, bool) or not isinstance(value, int) or not 0 <= value <= LAST_PLACE:
        raise Wrong
    return value


def read_panels(value: Any) -> int:  # noqa: ANN401
    """Return a number of panels, or raise `Wrong`."""
    if isinstance(value, bool) or not isinstance(value, int) or not 1 <= value <= PANELS_MOST:
        raise Wrong
    return value


def read_file_name(value: Any) -> str:  # noqa: ANN401
    """Return the name of a file that lies in a folder of ours, whichever system wrote it, or ""."""
    name = read_any_text(value)
    if any(sign in name for sign in "/\\:") or name.startswith(".") or not (name.isprintable() or not name):
        raise Wrong
    return name


def read_day(value: Any) -> date:  # noqa: ANN401
    """Return a day of `EARLIEST_YEAR` to `LATEST_YEAR`, or raise `Wrong`."""
    if isinstance(value, datetime) or not isinstance(value, date):
        raise Wrong
    if not EARLIEST_YEAR <= value.year <= LATEST_YEAR:
        raise Wrong
    return value


def read_moment(value: Any) -> int:  # noqa: ANN401
    """Return an aware moment of `EARLIEST_YEAR` to `LATEST_YEAR` as UTC ms, or raise `Wrong`."""
    if not isinstance(value, datetime) or value.tzinfo is None or value < _EPOCH or value.year > LATEST_YEAR:
        raise Wrong
    return utc_ms(value)


def _number(value: Any) -> float:  # noqa: ANN401
    if isinstance(value, bool) or not isinstance(value, int | float):
        raise Wrong
    try:
        return float(value)
    except OverflowError as error:
        raise Wrong from error


def above_zero(most: float) -> Callable[[Any], float]:
    """Return what reads a number above 0 and up to `most`."""

    def read(value: Any) -> float:  # noqa: ANN401
        number = _number(value)
        if not 0 < number <= most:
            raise Wrong
        return number

    return read


def read_percent(value: Any) -> float:  # noqa: ANN401
    """Return a number of 0 to 100, or raise `Wrong`."""
    number = _number(value)
    if not 0 <= number <= 100:  # noqa: PLR2004 - percent
        raise Wrong
    return abs(number)


def read_count(value: Any) -> int:  # noqa: ANN401
    """Return a whole number from 0 that the database can hold, or raise `Wrong`."""
    if isinstance(value, bool) or not isinstance(value, int) or not 0 <= value < 2**63:
        raise Wrong
    return value


def read_texts(value: Any) -> tuple[str, ...]:  # noqa: ANN401
    """Return a list of texts, or raise `Wrong`."""
    if not isinstance(value, list):
        raise Wrong
    return tuple(read_any_text(each) for each in value)


def read_rows(value: Any) -> tuple[Mapping[str, float], ...]:  # noqa: ANN401
    """Return a list of tables of finite numbers, or raise `Wrong`."""
    if not isinstance(value, list) or not all(isinstance(row, dict) for row in value):
        raise Wrong
    rows = tuple({name: _number(number) for name, number in row.items()} for row in value)
    if not all(isfinite(number) for row in rows for number in row.values()):
        raise Wrong
    return rows


def one_of(words: type[StrEnum]) -> Callable[[Any], StrEnum]:
    """Return what reads one of `words`."""

    def read(value: Any) -> StrEnum:  # noqa: ANN401
        if value not in list(words):
            raise Wrong
        return words(value)

    return read
