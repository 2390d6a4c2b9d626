"""`what-if`: when the pieces would be ready in a room that is held otherwise from now on."""

from __future__ import annotations

import argparse
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import UTC, datetime

from studiowatch.cli.answers import DONE, FAULT, complain, print_document, wrong
from studiowatch.cli.hours import told
from studiowatch.cli.studio_then import check_room, studio_then
from studiowatch.coats.stages import Stage
from studiowatch.physics.ranges import OutOfRange
from studiowatch.service.films_to_come import FilmsToCome, When
from studiowatch.service.local_time import clock_text, when_text
from studiowatch.service.outfit import Outfit
from studiowatch.service.what_if import BothWays, Otherways, WhatIf
from studiowatch.service.what_if_room import care, refusal, warnings_in
from studiowatch.speech.units import chosen
from studiowatch.speech.words import mark, say
from studiowatch.store.folder import StudioFolder
from studiowatch.studio.otherwise import STILL_M_S, Otherwise
from studiowatch.studio.words import Sentence

HOUR_MS = 3_600_000
LEAST_MS = 60_000  # ms, a difference below that is none
LONGEST_H = 96.0  # h, as far as the room is foretold
_GOAL = {
    Stage.CLEAR: mark("clear"),
    Stage.DRY_TO_TOUCH: mark("dry to touch"),
    Stage.DRY_TO_RECOAT: mark("ready for the next coat"),
    Stage.CURED: mark("cured"),
}


@dataclass(frozen=True, slots=True, kw_only=True)
class _Told:
    """The answer: each piece, what the watch would warn of, what care it takes."""

    held: Otherwise
    cover: bool
    now_ms: int
    pieces: Sequence[Otherways]
    warnings: Sequence[Sentence]
    cautions: Sequence[str]


def run(call: argparse.Namespace, outfit: Outfit, folder: StudioFolder) -> int:
    """Answer the call."""
    check_room(call)
    with studio_then(call, outfit, folder) as then:
        lent = then.watch.films_to_come(then.now_ms)
        held = _held(call, then.now_ms)
        refused = refusal(lent, held)
        if refused:
            complain(refused)
            return FAULT
        answer = _told(lent, held, cover=call.cover)
    if call.json:
        print_document(_document(answer))
    else:
        for line in _lines(answer):
            print(line)
    return DONE


def _held(call: argparse.Namespace, now_ms: int) -> Otherwise:
    speed_m_s = call.air_m_s
    is_still = speed_m_s is not None and 0.0 <= speed_m_s <= STILL_M_S
    if call.hours is not None and not 0.0 < call.hours <= LONGEST_H:
        wrong(
            say(
                "--hours is {given}; allowed is over 0, up to {most}.",
                given=chosen().plain(call.hours),
                most=chosen().plain(LONGEST_H),
            )
        )
    try:
        held = Otherwise(
            temperature_C=call.temperature_C,
            humidity_pct=call.humidity_pct,
            air_speed_m_s=None if is_still else speed_m_s,
            most_air_speed_m_s=STILL_M_S if is_still else None,
            until_ms=None if call.hours is None else now_ms + round(call.hours * HOUR_MS),
        )
    except OutOfRange as fault:
        wrong(str(fault))
    if held.is_as_it_comes and not call.cover:
        wrong(say("Say what would be otherwise: --temperature-C, --humidity-pct, --air-m-s or --cover."))
    return held


def _told(lent: FilmsToCome, held: Otherwise, *, cover: bool) -> _Told:
    return _Told(
        held=held,
        cover=cover,
        now_ms=lent.now_ms,
        pieces=tuple(WhatIf(lent=lent).answers(held, cover=cover, whole=True)),
        warnings=warnings_in(lent, held, cover=cover, clock_text=clock_text, units=chosen()),
        cautions=care(lent, held),
    )


def _lines(answer: _Told) -> Iterator[str]:
    words = [answer.held.words] if answer.held.words else []
    words += [say("every coat under a mesh cover")] if answer.cover else []
    until = answer.held.until_ms
    if until is not None:
        words.append(say("until {time}", time=when_text(until, answer.now_ms)))
    yield say("What if: {room}", room=" · ".join(words))
    if not answer.pieces:
        yield say("No piece on the rack waits for anything.")
    for piece in answer.pieces:
        for stage in piece.stages:
            yield f"{piece.title}, {piece.coat}: {_times(stage, answer.now_ms)}"
    for sentence in answer.warnings:
        yield say("! In that room: {warning}", warning=f"{sentence.headline}. {sentence.detail}".strip())
    for caution in answer.cautions:
        yield f"  {caution}"


def _times(piece: BothWays, now_ms: int) -> str:
    goal, by_ms = say(_GOAL[piece.stage]), piece.otherwise.by_ms
    if by_ms is None:
        return say("{goal}: not in sight", goal=goal)
    time, sooner_ms = when_text(by_ms, now_ms), piece.sooner_ms
    if sooner_ms is None:
        return say("{goal} by {time}, which is not in sight else", goal=goal, time=time)
    if abs(sooner_ms) < LEAST_MS:
        return say("{goal} by {time}, as it is", goal=goal, time=time)
    length = told(abs(sooner_ms) / 1000.0)
    before = when_text(piece.as_it_comes.by_ms or 0, now_ms)
    if sooner_ms > 0:
        return say(
            "{goal} by {time}, {length} sooner than {before}", goal=goal, time=time, length=length, before=before
        )
    return say("{goal} by {time}, {length} later than {before}", goal=goal, time=time, length=length, before=before)


def _document(answer: _Told) -> dict[str, object]:
    held = answer.held
    return {
        "now": _moment(answer.now_ms),
        "held": {
            "temperature_C": held.temperature_C,
            "humidity_pct": held.humidity_pct,
            "air_m_s": held.most_air_speed_m_s if held.air_speed_m_s is None else held.air_speed_m_s,
            "until": _moment(held.until_ms),
            "cover": answer.cover,
        },
        "pieces": [
            {
                "piece": piece.title,
                "coat": piece.coat,
                "stages": [
                    {
                        "stage": stage.stage.value,
                        "as_it_comes": _when(stage.as_it_comes),
                        "otherwise": _when(stage.otherwise),
                    }
                    for stage in piece.stages
                ],
            }
            for piece in answer.pieces
        ],
        "warnings": [
            {"headline": one.headline, "detail": one.detail, "level": one.level.name.lower()} for one in answer.warnings
        ],
        "cautions": list(answer.cautions),
    }


def _when(when: When) -> dict[str, str | None]:
    return {"by": _moment(when.by_ms), "p10": _moment(when.p10_ms), "p90": _moment(when.p90_ms)}


def _moment(time_ms: int | None) -> str | None:
    return None if time_ms is None else datetime.fromtimestamp(time_ms / 1000, tz=UTC).isoformat(timespec="minutes")
