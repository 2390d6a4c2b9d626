"""The room of a prediction, as the call gives it: one air held all the time, or a log from the laying on."""

from __future__ import annotations

import argparse
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import groupby
from statistics import fmean

from studiowatch.board.room_log import RoomRow
from studiowatch.cli import figures, inputs
from studiowatch.cli.answers import wrong
from studiowatch.coats.prediction import Room
from studiowatch.physics.air import Air, steady_speed
from studiowatch.physics.constants import STANDARD_PRESSURE_PA
from studiowatch.service.room_now import BRIDGED_MS
from studiowatch.speech.units import chosen
from studiowatch.speech.words import say
from studiowatch.studio.otherwise import STILL_M_S

MINUTE_MS = 60_000  # ms; a log of seconds is taken by the minute, as the live watch takes it for a coat laid before
HOUR_MS = 3_600_000  # ms


@dataclass(frozen=True, slots=True, kw_only=True)
class GivenRoom:
    """The room, what to call it, and a sentence for each thing that its log lacks."""

    room: Room
    words: str
    notes: tuple[str, ...] = ()


def room_of(call: argparse.Namespace) -> GivenRoom:
    """Return the room that `--air`, or `--room` with `--laid`, gives.

    Raises
    ------
    WrongCall
        If they do not fit together, or the log has nothing to go by.
    """
    if call.air is None:
        return _logged(call)
    if call.laid is not None:
        wrong(say("--laid belongs to --room; with --air the same air is held from the laying on."))
    inputs.refuse_log_form(call)
    air = inputs.air(call.air)
    words = say(
        "{temperature}, {humidity} % RH, {speed}, held all the time",
        temperature=figures.temperature(air.temperature_C),
        humidity=chosen().plain(air.humidity_pct),
        speed=figures.air_speed(air.air_speed_m_s),
    )
    return GivenRoom(room=air, words=words)


def _logged(call: argparse.Namespace) -> GivenRoom:
    """Return what the log gives from the laying on; the last reading before it counts if it is fresh."""
    if call.laid is None:
        wrong(say("--room needs --laid: when the brush went down, as 2026-03-02T09:00:00Z."))
    laid_ms = inputs.moment_ms(call.laid)
    log = inputs.room_log(call.room, inputs.log_form(call))
    rows = [row for row in log.rows if row.reading.time_ms >= laid_ms - BRIDGED_MS and _is_whole(row)]
    before = [row for row in rows if row.reading.time_ms <= laid_ms][-1:]
    used = [*before, *(row for row in rows if row.reading.time_ms > laid_ms)]
    if not used:
        wrong(
            say(
                "The room log {file} has no temperature with humidity at or after {moment}.",
                file=call.room,
                moment=call.laid,
            )
        )
    return GivenRoom(
        room=list(_by_minute(used, laid_ms)),
        words=say("{file}, from {moment} on", file=call.room, moment=call.laid),
        notes=tuple(_notes(used, laid_ms + call.horizon_h * HOUR_MS, covered=call.covered)),
    )


def _is_whole(row: RoomRow) -> bool:
    return row.reading.temperature_C is not None and row.reading.humidity_pct is not None


def _by_minute(used: Sequence[RoomRow], laid_ms: int) -> Iterator[tuple[float, Air]]:
    """Yield the mean air of each minute after the laying that has any, from its first reading on, in s."""
    times_ms = [max(row.reading.time_ms - laid_ms, 0) for row in used]
    for _, pairs in groupby(zip(times_ms, used, strict=True), key=lambda pair: pair[0] // MINUTE_MS):
        group = list(pairs)
        yield group[0][0] / 1000, _mean_air([row for _, row in group])


def _mean_air(rows: Sequence[RoomRow]) -> Air:
    readings = [row.reading for row in rows]
    return Air(
        temperature_C=fmean(one.temperature_C for one in readings if one.temperature_C is not None),
        humidity_pct=fmean(one.humidity_pct for one in readings if one.humidity_pct is not None),
        air_speed_m_s=steady_speed([STILL_M_S if one.air_speed_m_s is None else one.air_speed_m_s for one in readings]),
        pressure_Pa=fmean(STANDARD_PRESSURE_PA if one.pressure_Pa is None else one.pressure_Pa for one in readings),
    )


def _notes(used: Sequence[RoomRow], end_ms: float, *, covered: bool) -> Iterator[str]:
    """Yield what the readings up to the horizon, UTC ms, lack."""
    dried = [row for row in used if row.reading.time_ms < end_ms]
    still = sum(row.reading.air_speed_m_s is None for row in dried)
    if still:
        yield say(
            "{some} of {all} readings have no air speed: still air of {speed} is taken",
            some=still,
            all=len(dried),
            speed=figures.air_speed(STILL_M_S),
        )
    under_cover = sum(row.cover is True for row in dried)
    if under_cover and not covered:
        yield say(
            "{some} of {all} readings are from under a cover, left out here: --covered takes it for all",
            some=under_cover,
            all=len(dried),
        )
    if len(used) == 1:
        yield say("the room log has one reading from the laying on: its air is carried on")
