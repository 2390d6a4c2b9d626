"""Times of a room log: ISO 8601, seconds or milliseconds since 1970, or local times in a named zone."""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from datetime import UTC, datetime, timedelta, timezone, tzinfo
from typing import Protocol

import numpy as np
from numpy.typing import NDArray

from studiowatch.board.room_log_cells import CellFault, FaultKind, read_number, shown
from studiowatch.speech.words import mark, say

FIRST_TIME_S = 946_684_800  # 2000-01-01T00:00:00Z: no room log is older
LAST_TIME_S = 4_102_444_800  # 2100-01-01T00:00:00Z
TIME_COLUMNS = ("time", "time_unix", "time_unix_ms")

_FIRST = mark("times from {text} on come twice that night in {zone}; by their order the first")
_SECOND = mark("times from {text} on come twice that night in {zone}; by their order the second")
_HOUR = timedelta(hours=1)
_EPOCH = datetime(1970, 1, 1, tzinfo=UTC)


class ReadTime(Protocol):
    """Reads one cell; `before_ms` is the time of the row before, None for the first."""

    def __call__(self, text: str, before_ms: int | None, /) -> tuple[int, str]:
        """Return UTC ms and a clause for the reader of the log, or "". Raises `CellFault`."""
        ...


def time_reader(column: str, zone: tzinfo | None, form: str | None, *, decimal_comma: bool = False) -> ReadTime:
    """Return what reads the cells of a time column.

    Parameters
    ----------
    column : str
        One of `TIME_COLUMNS`.
    zone : tzinfo or None
        What times without a zone are in; None refuses them.
    form : str or None
        How times are written, as for `datetime.strptime`; None for ISO 8601.
    decimal_comma : bool
        Whether numbers may have one.
    """
    if column != "time":
        return _since_1970(column, 1.0 if column == "time_unix_ms" else 1000.0, decimal_comma=decimal_comma)
    parse = _iso if form is None else _formed(form)

    def read(text: str, before_ms: int | None) -> tuple[int, str]:
        _refuse_empty(column, text)
        moment = parse(text)
        text = shown(text)
        if moment.tzinfo is not None:
            return _within(column, text, moment.timestamp()), ""
        if zone is None:
            raise CellFault(
                FaultKind.TIME,
                say(
                    'time "{text}" has no zone; write Z for UTC, or the offset, such as +01:00, '
                    "or give the log's zone.",
                    text=text,
                ),
            )
        settled, doubt = _in_zone(text, moment, zone, before_ms)
        return _within(column, text, settled.timestamp()), doubt

    return read


def iso_times_ms(texts: Sequence[str]) -> NDArray[np.int64] | None:
    """Return the UTC ms of ISO times that all have a zone and lie in the allowed years, None if any does not.

    What it returns is what the reader of single cells returns for each.
    """
    try:
        times_s = np.array([(datetime.fromisoformat(text.strip()) - _EPOCH).total_seconds() for text in texts])
    except (ValueError, TypeError):  # the latter for a time without a zone
        return None
    if not ((times_s >= FIRST_TIME_S) & (times_s < LAST_TIME_S)).all():
        return None
    times_ms: NDArray[np.int64] = np.rint(times_s * 1000).astype(np.int64)
    return times_ms


def _since_1970(column: str, per_unit: float, *, decimal_comma: bool) -> ReadTime:
    def read(text: str, _before_ms: int | None) -> tuple[int, str]:
        _refuse_empty(column, text)
        written = read_number(column, text, decimal_comma=decimal_comma)
        return _within(column, text, written * per_unit / 1000), ""

    return read


def _refuse_empty(column: str, text: str) -> None:
    if not text:
        raise CellFault(FaultKind.TIME, say("{column} is empty; every row needs its time.", column=column))


def _within(column: str, text: str, time_s: float) -> int:
    if FIRST_TIME_S <= time_s < LAST_TIME_S:
        return round(time_s * 1000)
    if column == "time_unix" and FIRST_TIME_S <= time_s / 1000 < LAST_TIME_S:
        raise CellFault(
            FaultKind.UNIT,
            say("time_unix {text} looks like milliseconds; write it in seconds, or call it time_unix_ms.", text=text),
        )
    raise CellFault(
        FaultKind.TIME, say("{column} {text} is outside 2000-01-01 to 2100-01-01.", column=column, text=text)
    )


def _iso(text: str) -> datetime:
    try:
        return datetime.fromisoformat(text)
    except ValueError:
        raise CellFault(
            FaultKind.TIME, say('time "{text}" is no ISO 8601 time such as 2026-03-02T09:00:00Z.', text=shown(text))
        ) from None


def _formed(form: str) -> Callable[[str], datetime]:
    def parse(text: str) -> datetime:
        try:
            return datetime.strptime(text, form)  # noqa: DTZ007 - the zone is told by the caller
        except (ValueError, re.error):  # the latter from a form that names one thing twice
            raise CellFault(
                FaultKind.TIME, say('time "{text}" is not written as {form}.', text=shown(text), form=form)
            ) from None

    return parse


def _in_zone(text: str, local: datetime, zone: tzinfo, before_ms: int | None) -> tuple[datetime, str]:
    """Return a local time with its zone. One that comes twice is settled by the row before, if that tells which."""
    first, second = (local.replace(tzinfo=zone, fold=fold) for fold in (0, 1))
    ahead, behind = (moment.utcoffset() or timedelta() for moment in (first, second))
    if ahead == behind:
        return first, ""
    if ahead < behind:
        raise CellFault(
            FaultKind.NIGHT,
            say(
                'time "{text}" is not there in {zone}: that night the clock went forward past it; write the offset.',
                text=text,
                zone=zone,
            ),
        )
    since = None if before_ms is None else first.timestamp() - before_ms / 1000
    if since is None or since > _HOUR.total_seconds():
        raise CellFault(
            FaultKind.NIGHT,
            say(
                'time "{text}" comes twice that night in {zone}, and no row of the hour before tells which it is; '
                "write the offset, {first} or {second}.",
                text=text,
                zone=zone,
                first=_offset(ahead),
                second=_offset(behind),
            ),
        )
    settled, sentence, offset = (first, _FIRST, ahead) if since > 0 else (second, _SECOND, behind)
    return settled, f"{say(sentence, text=text, zone=zone)}, {_offset(offset)}"


def _offset(offset: timedelta) -> str:
    return datetime(2000, 1, 1, tzinfo=timezone(offset)).isoformat()[-6:]
