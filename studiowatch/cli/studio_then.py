"""The watch as it stands at one moment: of the records now, or of a studio file in a room."""

from __future__ import annotations

import argparse
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass

from studiowatch.cli import inputs
from studiowatch.cli.answers import WrongCall, wrong
from studiowatch.coats.exposure import check_air
from studiowatch.physics.air import Air
from studiowatch.physics.ranges import OutOfRange, check
from studiowatch.service.outfit import Outfit
from studiowatch.service.plan_desk import UNKNOWN_AIR
from studiowatch.service.plan_only import HeldRoom, records_of, watch_after, watch_at
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.service.typing_in import TEMPERATURE_C
from studiowatch.service.watchkeeping import Watchkeeping
from studiowatch.speech.words import mark, say
from studiowatch.store.all_records import read_all
from studiowatch.store.calibrations import kept_calibrations
from studiowatch.store.database import looking
from studiowatch.store.field_values import is_of_records
from studiowatch.store.folder import StudioFolder
from studiowatch.store.readings import ReadingsStore
from studiowatch.studio.pieces import EARLIEST_YEAR, LATEST_YEAR

_WITH_STUDIO = ("room", "air", "now")


@dataclass(frozen=True, slots=True, kw_only=True)
class StudioThen:
    """The watch, and the moment, UTC ms."""

    watch: Watchkeeping
    now_ms: int


def check_room(call: argparse.Namespace) -> None:
    """Refuse a room or a moment that does not go with what else is asked."""
    for option in _WITH_STUDIO:
        if call.studio is None and getattr(call, option) is not None:
            wrong(
                say(
                    "{option} belongs to --studio: the records have a room and a clock of their own.",
                    option=f"--{option}",
                )
            )
    if call.room is None:
        inputs.refuse_log_form(call)
    if call.room is not None and call.now is not None:
        wrong(say("--now does not go with --room: its log ends at the moment that is told of; cut it, or give --air."))


@contextmanager
def studio_then(call: argparse.Namespace, outfit: Outfit, folder: StudioFolder) -> Iterator[StudioThen]:
    """Open the studio that a call asks for: its records, or a studio file with its room; nothing of it is kept."""
    shelf = SheetShelf.open(folder.sheets)
    if call.studio is not None:
        yield _of_file(call, outfit, shelf)
        return
    now_ms = outfit.clock.utc_ms()
    with looking(folder.database) as database:
        calibrations, sightings = kept_calibrations(database)
        records = records_of(read_all(database, str(folder.database)), calibrations=calibrations, sightings=sightings)
        watch = watch_at(now_ms, records, ReadingsStore(database), shelf, foretell=True)
        yield StudioThen(watch=watch, now_ms=now_ms)


def _of_file(call: argparse.Namespace, outfit: Outfit, shelf: SheetShelf) -> StudioThen:
    studio, shelf = inputs.whole_studio(call.studio, shelf)
    records = records_of(studio)
    if call.room is not None:
        readings = inputs.room_log(call.room, inputs.log_form(call)).readings()
        if not readings:
            wrong(say("The room log {file} has no reading to go by.", file=call.room))
        return StudioThen(watch=watch_after(readings, records, shelf), now_ms=readings[-1].time_ms)
    now_ms = outfit.clock.utc_ms() if call.now is None else _moment_ms(call.now)
    air = UNKNOWN_AIR if call.air is None else _held(call.air)
    return StudioThen(watch=watch_at(now_ms, records, HeldRoom(air), shelf), now_ms=now_ms)


def _moment_ms(text: str) -> int:
    """Return the moment that is told of, UTC ms: of the years that times in the records may be of."""
    now_ms = inputs.moment_ms(text, "--now")
    if not is_of_records(now_ms):
        wrong(
            say(
                "--now is {given}; allowed is a moment of the years {first} to {last}.",
                given=repr(text),
                first=EARLIEST_YEAR,
                last=LATEST_YEAR,
            )
        )
    return now_ms


def _held(text: str) -> Air:
    """Return the air of a room that is held: one that its watch believes, and in which a coat can be followed."""
    air = inputs.air(text)
    try:
        check(mark("air temperature"), air.temperature_C, *TEMPERATURE_C, "°C")
        check_air(air)
    except OutOfRange as fault:
        raise WrongCall(str(fault)) from fault
    return air
