"""The first line of a room log: what stands between the cells, and what each column is."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import tzinfo
from functools import partial

from studiowatch.board.room_log_cells import VALUE_COLUMNS, channel_of, listed, read_value, shown
from studiowatch.board.room_log_times import TIME_COLUMNS, ReadTime, time_reader
from studiowatch.room.readings import Channel
from studiowatch.speech.words import say

COVER_COLUMN = "cover"
CLIMATE = (Channel.TEMPERATURE, Channel.HUMIDITY)
NEEDED = (*CLIMATE, Channel.AIR_SPEED)
OWN_COLUMNS = ["time", *Channel]  # of the logs that this program writes, in their order; of no other logger
SEPARATORS = (",", ";", "\t")  # RFC 4180, and what spreadsheets write where the comma is the decimal mark


@dataclass(frozen=True, slots=True, kw_only=True)
class LogForm:
    """How a log is to be read.

    Attributes
    ----------
    columns : mapping of str to str
        The file's own header names to the names used here.
    zone : tzinfo or None
        What times without a zone are in; None refuses them.
    time_form : str or None
        How times are written, as for `datetime.strptime`; None for ISO 8601.
    needed : tuple of Channel
        What must have a column; empty takes any that has one column of values.
    """

    columns: Mapping[str, str] = field(default_factory=dict)
    zone: tzinfo | None = None
    time_form: str | None = None
    needed: tuple[Channel, ...] = NEEDED


@dataclass(frozen=True, slots=True, kw_only=True)
class Layout:
    """What a header says: where time, cover (None if not there) and values stand, and how they are read.

    `is_iso` says that times are in ISO 8601, which many of can be read at once.
    """

    width: int
    time_at: int
    read_time: ReadTime
    is_iso: bool
    cover_at: int | None
    values: tuple[tuple[int, Channel, Callable[[str], float | None]], ...]


def separator_of(line: str) -> str:
    """Return what stands between the cells of a header, by what there is most of outside quotes."""
    counts = Counter("".join(line.split('"')[::2]))
    return max(SEPARATORS, key=lambda each: counts[each])


def names_of(record: Sequence[str], form: LogForm) -> list[str]:
    """Return the columns' names as used here."""
    return [form.columns.get(name, name) for name in _own(record)]


def header_faults(record: Sequence[str], form: LogForm) -> Iterator[str]:
    """Yield a clause for each thing that is wrong with a header."""
    own, names = _own(record), names_of(record, form)
    for wanted in sorted(set(form.columns) - set(own)):
        yield say(
            'there is no column "{column}" to map; the columns are {columns}.', column=wanted, columns=listed(own)
        )
    for wanted in sorted(set(form.columns.values()) - {*TIME_COLUMNS, *VALUE_COLUMNS, COVER_COLUMN}):
        yield say(
            '"{column}" is no name to map to; there are {columns}.',
            column=wanted,
            columns=", ".join((*TIME_COLUMNS, *VALUE_COLUMNS, COVER_COLUMN)),
        )
    for name, count in sorted(Counter(names).items()):
        if count > 1:
            yield say('the column "{column}" is there {count} times; leave one.', column=shown(name), count=count)
    if sum(name in TIME_COLUMNS for name in names) != 1:
        yield say("there must be one column of time: time (ISO 8601 with zone) or time_unix (s).")
    yield from _channel_faults(names, form)


def unused(names: Sequence[str]) -> list[str]:
    """Return the names of the columns that are read for nothing."""
    known = {*TIME_COLUMNS, COVER_COLUMN, *VALUE_COLUMNS}
    return [name for name in names if name not in known]


def layout_of(names: Sequence[str], form: LogForm, *, decimal_comma: bool) -> Layout:
    """Return what a header without faults says."""
    time_at = next(at for at, name in enumerate(names) if name in TIME_COLUMNS)
    is_own = not form.columns and list(names) == OWN_COLUMNS
    return Layout(
        width=len(names),
        time_at=time_at,
        read_time=time_reader(names[time_at], form.zone, form.time_form, decimal_comma=decimal_comma),
        is_iso=names[time_at] == "time" and form.time_form is None,
        cover_at=names.index(COVER_COLUMN) if COVER_COLUMN in names else None,
        values=tuple(
            (at, channel, partial(read_value, name, decimal_comma=decimal_comma, is_own=is_own))
            for at, name in enumerate(names)
            if (channel := channel_of(name)) is not None
        ),
    )


def _own(record: Sequence[str]) -> list[str]:
    return [name.strip().removeprefix("\ufeff") for name in record]


def _channel_faults(names: Sequence[str], form: LogForm) -> Iterator[str]:
    there = Counter(channel for name in names if (channel := channel_of(name)) is not None)
    for channel, count in there.items():
        if count > 1 and names.count(channel) <= 1:
            yield say('the column "{column}" is there in {count} units; leave one.', column=channel, count=count)
    if form.needed:
        for channel in form.needed:
            if channel not in there:
                yield say(
                    'the column "{column}" is missing; if it was not measured, add it with empty cells.', column=channel
                )
    elif not there:
        yield say(
            "there is no column of values; there may be {columns}: map the log's own with --columns.",
            columns=", ".join(VALUE_COLUMNS),
        )
