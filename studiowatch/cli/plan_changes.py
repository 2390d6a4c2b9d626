"""What `plan` changes in the records: working hours, recipes, and the coats to come of a piece."""

from __future__ import annotations

import argparse
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from studiowatch.cli.answers import DONE, wrong
from studiowatch.cli.asking import carried_out, pieces_in, refused
from studiowatch.cli.piece import piece_called
from studiowatch.service.commands import Refused
from studiowatch.service.outfit import Outfit
from studiowatch.service.plan_commands import PlanCoats, PlanCommand, SaveRecipe, SetWorkingHours
from studiowatch.service.plan_only import records_of
from studiowatch.service.replaying import MemoryRecords
from studiowatch.speech.words import say
from studiowatch.store.all_records import read_all
from studiowatch.store.database import looking
from studiowatch.store.folder import StudioFolder
from studiowatch.studio.recipes import with_built_in
from studiowatch.studio.working_hours import DAYS, WorkingHours, week_text

_CHANGES = ("hours", "keep_recipe", "drop_recipe", "apply")
_ASKS = ("ics", "json")


@dataclass(frozen=True, slots=True, kw_only=True)
class Change:
    """A command, and what to print once it is carried out."""

    command: PlanCoats | PlanCommand
    words: str


def changes(call: argparse.Namespace, folder: StudioFolder) -> Sequence[Change]:
    """Return what the call changes, checked; nothing if it only asks for the plan."""
    if not any(getattr(call, option) for option in _CHANGES):
        return ()
    if call.studio is not None:
        wrong(say("--studio is only planned; hours, recipes and coats to come are changed in the file itself."))
    if any(getattr(call, option) for option in _ASKS):
        wrong(say("A change is not asked for together with the plan; call `plan` again for that."))
    return tuple(_changes(call, folder))


def carry_out(asked: Sequence[Change], outfit: Outfit, folder: StudioFolder) -> int:
    """Carry the changes out one by one, and return the exit code."""
    for change in asked:
        try:
            carried_out(change.command, outfit, folder)
        except Refused as fault:
            return refused(fault)
        print(change.words)
    return DONE


def _changes(call: argparse.Namespace, folder: StudioFolder) -> Iterator[Change]:
    known = _known(folder)
    if call.hours:
        hours = _hours(call.hours, known.working_hours())
        yield Change(
            command=SetWorkingHours(hours=hours), words=say("Recorded: working hours, {week}", week=week_text(hours))
        )
    if call.keep_recipe is not None:
        name, _, sheets = call.keep_recipe.partition("=")
        names = tuple(one.strip() for one in sheets.split(",") if one.strip())
        if not names:
            wrong(
                say(
                    "--keep-recipe is {given}; give a name and its sheets, as Panels=gloss,satin.",
                    given=repr(call.keep_recipe),
                )
            )
        yield Change(
            command=SaveRecipe(name=name, sheets=names), words=say("Recorded: the recipe {recipe}", recipe=name)
        )
    if call.drop_recipe is not None:
        if call.drop_recipe not in known.kept_recipes:
            own = ", ".join(known.kept_recipes) or say("none")
            wrong(
                say(
                    "There is no recipe {given} of your own; there are: {recipes}.",
                    given=repr(call.drop_recipe),
                    recipes=own,
                )
            )
        yield Change(
            command=SaveRecipe(name=call.drop_recipe, sheets=()),
            words=say("Recorded: {recipe} is forgotten", recipe=call.drop_recipe),
        )
    if call.apply is not None:
        yield _applied(call.apply, known, folder)


def _hours(asked: Sequence[str], hours: WorkingHours) -> WorkingHours:
    for text in asked:
        day, _, of_day = text.partition("=")
        if day.lower() not in DAYS:
            wrong(
                say(
                    "--hours is {given}; give a day and its hours, as monday=09:00-18:00 or sunday=off.",
                    given=repr(text),
                )
            )
        try:
            hours = hours.with_day(day.lower(), of_day)
        except ValueError as fault:
            wrong(str(fault))
    return hours


def _applied(apply: Sequence[str], known: MemoryRecords, folder: StudioFolder) -> Change:
    name, title = apply
    recipes = {recipe.name: recipe for recipe in with_built_in(known.recipes())}
    if name not in recipes:
        wrong(say("There is no recipe {given}; there are: {recipes}.", given=repr(name), recipes=", ".join(recipes)))
    piece = piece_called(title, pieces_in(folder))
    return Change(
        command=PlanCoats(piece_key=piece.key, sheets=recipes[name].sheets),
        words=say("Recorded: {recipe}, to come on {title}", recipe=name, title=piece.title),
    )


def _known(folder: StudioFolder) -> MemoryRecords:
    if not folder.database.exists():
        return MemoryRecords(held={})
    with looking(folder.database) as database:
        return records_of(read_all(database, str(folder.database)))
