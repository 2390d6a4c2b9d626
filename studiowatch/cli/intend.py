"""`intend`: what she means to do with the room, so that what is foretold counts on it."""

from __future__ import annotations

import argparse
from collections.abc import Sequence
from dataclasses import replace
from datetime import timedelta

from studiowatch.cli.answers import DONE, print_document, wrong
from studiowatch.cli.asking import carried_out, refused
from studiowatch.room.intentions import Doing
from studiowatch.service.commands import Refused
from studiowatch.service.intention_commands import AddIntention, DropIntention
from studiowatch.service.intention_desk import words
from studiowatch.service.local_time import wall_clock
from studiowatch.service.outfit import Outfit
from studiowatch.service.plan_only import records_of
from studiowatch.speech.words import say
from studiowatch.store.all_records import read_all
from studiowatch.store.database import looking
from studiowatch.store.folder import StudioFolder
from studiowatch.studio.meant import Meant, cautions, meant_fault, read_span, span_text

_UNIT = {Doing.HEATER: "to_C", Doing.DEHUMIDIFIER: "to_pct"}
_OTHER = {Doing.HEATER: "to_pct", Doing.DEHUMIDIFIER: "to_C"}


def run(call: argparse.Namespace, outfit: Outfit, folder: StudioFolder) -> int:
    """Answer the call."""
    now_ms = outfit.clock.utc_ms()
    try:
        if call.drop is not None:
            return _drop(call, _to_come(folder, now_ms), outfit, folder)
        if call.heater is None and call.dehumidifier is None:
            return _list(call, _to_come(folder, now_ms))
        return _add(call, now_ms, outfit, folder)
    except Refused as fault:
        return refused(fault)


def _to_come(folder: StudioFolder, now_ms: int) -> Sequence[Meant]:
    if not folder.database.exists():
        return ()
    with looking(folder.database) as database:
        kept = records_of(read_all(database, str(folder.database))).intentions()
    return [one for one in kept if not one.is_over(wall_clock(), now_ms)]


def _list(call: argparse.Namespace, to_come: Sequence[Meant]) -> int:
    for option in ("to_C", "to_pct", "days"):
        if getattr(call, option) is not None:
            wrong(
                say("{option} goes with --heater or --dehumidifier; give one.", option=f"--{option.replace('_', '-')}")
            )
    if call.json:
        print_document([_document(one) for one in to_come])
        return DONE
    if not to_come:
        print(say("Nothing is meant for the room."))
    for number, one in enumerate(to_come, start=1):
        print(f"{number:>3}  {words(one)}")
    for caution in dict.fromkeys(caution for one in to_come for caution in cautions(one.doing)):
        print(f"     {caution}")
    return DONE


def _document(meant: Meant) -> dict[str, object]:
    return {
        "key": meant.key,
        "doing": meant.doing.value,
        "hours": span_text(meant),
        "target": meant.target,
        "first_day": meant.first_day.isoformat(),
        "days": meant.days,
        "cautions": list(cautions(meant.doing)),
    }


def _drop(call: argparse.Namespace, to_come: Sequence[Meant], outfit: Outfit, folder: StudioFolder) -> int:
    _alone(call)
    named = {str(number): one for number, one in enumerate(to_come, start=1)} | {one.key: one for one in to_come}
    if call.drop not in named:
        known = f"1-{len(to_come)}" if to_come else say("none")
        wrong(
            say(
                "There is no intention {given}; allowed is {known}, as `intend` lists them.",
                given=repr(call.drop),
                known=known,
            )
        )
    carried_out(DropIntention(intention_key=named[call.drop].key), outfit, folder)
    print(say("Forgotten: {intention}", intention=words(named[call.drop])))
    return DONE


def _alone(call: argparse.Namespace) -> None:
    if call.json or any(getattr(call, one) is not None for one in ("heater", "dehumidifier", "to_C", "to_pct", "days")):
        wrong(say("--drop stands alone; leave the others out."))


def _add(call: argparse.Namespace, now_ms: int, outfit: Outfit, folder: StudioFolder) -> int:
    if call.json:
        wrong(say("--json goes with the list; leave it out."))
    meant = _asked(call, now_ms)
    carried_out(
        AddIntention(
            doing=meant.doing,
            from_min=meant.from_min,
            to_min=meant.to_min,
            target=meant.target,
            first_day=meant.first_day,
            days=meant.days,
        ),
        outfit,
        folder,
    )
    print(say("Meant: {intention}", intention=words(meant)))
    for caution in cautions(meant.doing):
        print(f"  {caution}")
    return DONE


def _asked(call: argparse.Namespace, now_ms: int) -> Meant:
    """Return what is asked for, checked; from today on, or from tomorrow where today's hours are over."""
    doing, text = (Doing.HEATER, call.heater) if call.heater is not None else (Doing.DEHUMIDIFIER, call.dehumidifier)
    other = getattr(call, _OTHER[doing])
    target = getattr(call, _UNIT[doing])
    if target is None or other is not None:
        wrong(
            say("A heater is set with --to-C, as --to-C 21; give that.")
            if doing is Doing.HEATER
            else say("A dehumidifier is set with --to-pct, as --to-pct 50; give that.")
        )
    try:
        from_min, to_min = read_span(text)
    except ValueError as fault:
        wrong(str(fault))
    clock = wall_clock()
    today = clock.day(now_ms)
    meant = Meant(
        key="",
        doing=doing,
        from_min=from_min,
        to_min=to_min,
        target=target,
        first_day=today,
        days=1 if call.days is None else call.days,
    )
    trouble = meant_fault(meant)
    if trouble:
        wrong(trouble)
    if next(meant.spans(clock))[1] <= now_ms:
        return replace(meant, first_day=today + timedelta(days=1))
    return meant
