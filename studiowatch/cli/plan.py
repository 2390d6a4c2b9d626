"""`plan`: the finishing plan and the prompts, from the records, or of a studio file in a room."""

from __future__ import annotations

import argparse
from collections.abc import Sequence
from dataclasses import dataclass

from studiowatch.cli import inputs, plan_changes, plan_text
from studiowatch.cli.answers import DONE, complain, print_document, wrong
from studiowatch.cli.outputs import STDOUT, written
from studiowatch.cli.plan_document import document
from studiowatch.service.best_hours_view import BestHoursView
from studiowatch.service.local_time import wall_clock
from studiowatch.service.outfit import Outfit
from studiowatch.service.plan_calendar import plan_calendar
from studiowatch.service.plan_desk import UNKNOWN_AIR
from studiowatch.service.plan_only import HeldRoom, records_of, watch_after, watch_at
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.service.snapshot import PromptView
from studiowatch.service.watchkeeping import Watchkeeping
from studiowatch.speech.words import say
from studiowatch.store.all_records import read_all
from studiowatch.store.calibrations import kept_calibrations
from studiowatch.store.database import looking
from studiowatch.store.folder import StudioFolder
from studiowatch.store.readings import ReadingsStore
from studiowatch.studio.plan_shapes import FinishingPlan

_WITH_STUDIO = ("room", "air", "now")


@dataclass(frozen=True, slots=True, kw_only=True)
class Planned:
    """The plan, the prompts that are open, and when to lay the coats that come next."""

    plan: FinishingPlan
    prompts: Sequence[PromptView]
    best: Sequence[BestHoursView]


def run(call: argparse.Namespace, outfit: Outfit, folder: StudioFolder) -> int:
    """Answer the call."""
    _check(call)
    commands = plan_changes.changes(call, folder)
    if commands:
        return plan_changes.carry_out(commands, outfit, folder)
    shelf = SheetShelf.open(folder.sheets)
    told = _of_records(outfit, folder, shelf) if call.studio is None else _of_studio(call, outfit, shelf)
    if call.ics is not None:
        with written(call.ics) as out:
            out.write(plan_calendar(told.plan))
        complain(
            say("Written to {file}: the plan as a calendar file.", file="stdout" if call.ics == STDOUT else call.ics)
        )
        if call.ics == STDOUT:
            return DONE
    if call.json:
        print_document(document(told.plan, told.prompts, told.best))
    else:
        for line in plan_text.lines(told.plan, told.prompts, wall_clock(), told.best):
            print(line)
    return DONE


def _check(call: argparse.Namespace) -> None:
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
    if call.json and call.ics == STDOUT:
        wrong(say("--json and --ics - both write to stdout; give --ics the name of a file."))
    if call.room is not None and call.now is not None:
        wrong(say("--now does not go with --room: the plan is made at the end of its log; cut the log, or give --air."))


def _of_records(outfit: Outfit, folder: StudioFolder, shelf: SheetShelf) -> Planned:
    now_ms = outfit.clock.utc_ms()
    with looking(folder.database) as database:
        studio = read_all(database, str(folder.database))
        calibrations, sightings = kept_calibrations(database)
        records = records_of(studio, calibrations=calibrations, sightings=sightings)
        watch = watch_at(now_ms, records, ReadingsStore(database), shelf, foretell=True)
        return _planned(watch, now_ms)


def _of_studio(call: argparse.Namespace, outfit: Outfit, shelf: SheetShelf) -> Planned:
    studio, shelf = inputs.whole_studio(call.studio, shelf)
    records = records_of(studio)
    if call.room is not None:
        readings = inputs.room_log(call.room, inputs.log_form(call)).readings()
        if not readings:
            wrong(say("The room log {file} has no reading to plan from.", file=call.room))
        now_ms = readings[-1].time_ms
        watch = watch_after(readings, records, shelf)
    else:
        now_ms = outfit.clock.utc_ms() if call.now is None else inputs.moment_ms(call.now, "--now")
        air = UNKNOWN_AIR if call.air is None else inputs.air(call.air)
        watch = watch_at(now_ms, records, HeldRoom(air), shelf)
    return _planned(watch, now_ms)


def _planned(watch: Watchkeeping, now_ms: int) -> Planned:
    plan = watch.make_plan(now_ms)
    seen = watch.snapshot(now_ms)
    return Planned(plan=plan, prompts=seen.prompts, best=seen.best_hours)
