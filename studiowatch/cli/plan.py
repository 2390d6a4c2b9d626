"""`plan`: the finishing plan and the prompts, from the records, or of a studio file in a room."""

from __future__ import annotations

import argparse
from collections.abc import Sequence
from dataclasses import dataclass

from studiowatch.cli import plan_changes, plan_text
from studiowatch.cli.answers import DONE, complain, print_document, wrong
from studiowatch.cli.outputs import STDOUT, written
from studiowatch.cli.plan_document import document
from studiowatch.cli.studio_then import check_room, studio_then
from studiowatch.service.best_hours_view import BestHoursView
from studiowatch.service.local_time import wall_clock
from studiowatch.service.outfit import Outfit
from studiowatch.service.plan_calendar import plan_calendar
from studiowatch.service.snapshot import PromptView
from studiowatch.service.watchkeeping import Watchkeeping
from studiowatch.speech.words import say
from studiowatch.store.folder import StudioFolder
from studiowatch.studio.plan_shapes import FinishingPlan


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
    with studio_then(call, outfit, folder) as then:
        told = _planned(then.watch, then.now_ms)
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
    check_room(call)
    if call.json and call.ics == STDOUT:
        wrong(say("--json and --ics - both write to stdout; give --ics the name of a file."))


def _planned(watch: Watchkeeping, now_ms: int) -> Planned:
    plan = watch.make_plan(now_ms)
    seen = watch.snapshot(now_ms)
    return Planned(plan=plan, prompts=seen.prompts, best=seen.best_hours)
