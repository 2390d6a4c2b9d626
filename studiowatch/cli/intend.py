"""`intend`: what she means to do with the room, so that what is foretold counts on it."""

from __future__ import annotations

import argparse
from collections.abc import Iterable, Sequence
from dataclasses import replace
from datetime import timedelta

from studiowatch.cli.answers import DONE, print_document, wrong
from studiowatch.cli.asking import carried_out, refused
from studiowatch.room.intentions import Doing
from studiowatch.service.commands import Refused
from studiowatch.service.intention_commands import AddIntention, DropIntention
from studiowatch.service.local_time import wall_clock
from studiowatch.service.outfit import Outfit
from studiowatch.service.plan_only import records_of
from studiowatch.speech.words import mark, say
from studiowatch.store.all_records import read_all
from studiowatch.store.database import looking
from studiowatch.store.folder import StudioFolder
from studiowatch.studio.meant import FAN_M_S, OFF_M_S, Meant, meant_fault, read_span, span_text
from studiowatch.studio.meant_words import cautions, words
from studiowatch.studio.working_hours import DAY_MIN

_DOINGS = {
    "heater": Doing.HEATER,
    "dehumidifier": Doing.DEHUMIDIFIER,
    "fan": Doing.FAN,
    "fan_off": Doing.FAN,
}
_TARGETS = {"heater": "to_C", "dehumidifier": "to_pct", "fan": "at_m_s"}
_WHEN = ("days", "every_day")
_WRONG_TARGET = {
    "heater": mark("A heater is set with --to-C, as --to-C 21; give that."),
    "dehumidifier": mark("A dehumidifier is set with --to-pct, as --to-pct 50; give that."),
    "fan": mark("A fan is set with --at-m-s, as --at-m-s 0.5, or with nothing; leave the others out."),
    "fan_off": mark("A fan that stays off is set to nothing; leave --to-C, --to-pct and --at-m-s out."),
}


def run(call: argparse.Namespace, outfit: Outfit, folder: StudioFolder) -> int:
    """Answer the call."""
    now_ms = outfit.clock.utc_ms()
    try:
        if call.drop is not None:
            return _drop(call, _to_come(folder, now_ms), outfit, folder)
        if not _given(call, _DOINGS):
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
    for option in _given(call, (*_TARGETS.values(), *_WHEN)):
        wrong(
            say(
                "{option} goes with --heater, --dehumidifier, --fan or --fan-off; give one.",
                option=f"--{option.replace('_', '-')}",
            )
        )
    if call.json:
        print_document([_document(one) for one in to_come])
        return DONE
    if not to_come:
        print(say("Nothing is meant for the room."))
    for number, one in enumerate(to_come, start=1):
        print(f"{number:>3}  {words(one)}")
    for caution in dict.fromkeys(caution for one in to_come for caution in cautions(one.doing, is_on=one.is_on)):
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
        "cautions": list(cautions(meant.doing, is_on=meant.is_on)),
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
    if call.json or _given(call, (*_DOINGS, *_TARGETS.values(), *_WHEN)):
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
    for caution in cautions(meant.doing, is_on=meant.is_on):
        print(f"  {caution}")
    return DONE


def _given(call: argparse.Namespace, options: Iterable[str]) -> list[str]:
    """Return those of `options` that were given."""
    return [one for one in options if getattr(call, one) is not None and getattr(call, one) is not False]


def _asked(call: argparse.Namespace, now_ms: int) -> Meant:
    """Return what is asked for, checked; from today on, or from tomorrow where today's hours are over."""
    (kind,) = _given(call, _DOINGS)
    from_min, to_min = _hours(getattr(call, kind))
    if call.days is not None and call.every_day:
        wrong(say("Give --days or --every-day, not both."))
    is_without_end = call.every_day or (call.fan_off == "" and call.days is None)
    clock = wall_clock()
    today = clock.day(now_ms)
    meant = Meant(
        key="",
        doing=_DOINGS[kind],
        from_min=from_min,
        to_min=to_min,
        target=_target(call, kind),
        first_day=today,
        days=None if is_without_end else 1 if call.days is None else call.days,
    )
    trouble = meant_fault(meant)
    if trouble:
        wrong(trouble)
    first = next(meant.spans(clock, now_ms), None)  # none where a clock change leaves nothing of today's hours
    if meant.days is not None and (first is None or first[1] <= now_ms):
        return replace(meant, first_day=today + timedelta(days=1))
    return meant


def _hours(text: str) -> tuple[int, int]:
    """Return minutes into the day; no text is all day."""
    if not text:
        return 0, DAY_MIN
    try:
        return read_span(text)
    except ValueError as fault:
        wrong(str(fault))


def _target(call: argparse.Namespace, kind: str) -> float:
    """Return what it is set to, °C, % or m/s."""
    own = _TARGETS.get(kind)
    target = {"fan": FAN_M_S, "fan_off": OFF_M_S}.get(kind)
    if own is not None and getattr(call, own) is not None:
        target = float(getattr(call, own))
    if target is None or _given(call, [one for one in _TARGETS.values() if one != own]):
        wrong(say(_WRONG_TARGET[kind]))
    if kind == "fan" and target == OFF_M_S:
        wrong(say("A fan that is on moves the air; give --at-m-s more than 0, or --fan-off."))
    return target
