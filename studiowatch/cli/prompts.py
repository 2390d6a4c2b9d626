"""`prompts`: what to do at the rack as it stands in the records; tick it off, or put it off."""

from __future__ import annotations

import argparse
from collections.abc import Iterable
from dataclasses import dataclass, replace

from studiowatch.cli.answers import DONE, print_document, wrong
from studiowatch.cli.take import opened
from studiowatch.service.happenings import iso
from studiowatch.service.local_time import when_text
from studiowatch.service.outfit import Outfit
from studiowatch.service.plan_only import records_of, watch_at
from studiowatch.service.prompt_desk import LONGEST_SNOOZE_MS
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.speech.words import say
from studiowatch.store.all_records import read_all
from studiowatch.store.calibrations import kept_calibrations
from studiowatch.store.database import Database, looking
from studiowatch.store.folder import StudioFolder
from studiowatch.store.readings import ReadingsStore
from studiowatch.store.shapes import PromptRecord, TellingRecord
from studiowatch.store.studio_file import Studio

MINUTE_MS = 60_000  # ms
MOST_MINUTES = LONGEST_SNOOZE_MS // MINUTE_MS


@dataclass(frozen=True, slots=True, kw_only=True)
class _Line:
    """An open prompt, the title of its piece, and when it is due, UTC ms, put off or not."""

    prompt: PromptRecord
    title: str
    due_ms: int
    is_snoozed: bool


def run(call: argparse.Namespace, outfit: Outfit, folder: StudioFolder) -> int:
    """Answer the call."""
    now_ms = outfit.clock.utc_ms()
    lines = _open_prompts(folder, now_ms)
    if call.deed == "list":
        _list(lines, now_ms, as_json=call.json)
        return DONE
    chosen = [_chosen(word, lines) for word in dict.fromkeys(call.prompt)]
    minutes = _minutes(call.minutes) if call.deed == "snooze" else 0.0
    with opened(outfit, folder) as store:
        for line in chosen:
            if call.deed == "tick":
                store.records.save_prompt(replace(line.prompt, done_ms=now_ms))
                print(say("Ticked off: {title}: {prompt}", title=line.title, prompt=line.prompt.text))
            else:
                until_ms = now_ms + round(minutes * MINUTE_MS)
                store.records.save_prompt(line.prompt)  # no watch may have kept it yet, and a telling needs it there
                store.records.save_telling(TellingRecord(key=line.prompt.key, snoozed_ms=until_ms))
                print(
                    say(
                        "Put off until {time}: {title}: {prompt}",
                        time=when_text(until_ms, now_ms),
                        title=line.title,
                        prompt=line.prompt.text,
                    )
                )
    return DONE


def _open_prompts(folder: StudioFolder, now_ms: int) -> list[_Line]:
    """Return the open prompts of pieces on the rack, soonest first, as a watch that begins now has them.

    That takes up what the last one left, ticked or due; what it says of it, it says anew: the last may have spoken
    another language, and a coat may have been tested, or corrected, since.
    """
    with looking(folder.database) as database:
        studio = read_all(database, str(folder.database))
        rows = tuple(_given_now(database, studio, folder, now_ms))
    titles = {coat.key: piece.title for piece in studio.pieces if not piece.archived for coat in piece.coats}
    snoozed = {row.key: row.snoozed_ms for row in studio.rows if isinstance(row, TellingRecord)}
    lines = []
    for row in rows:
        if row.done_ms is None and row.coat_key in titles:
            due_ms = max(row.due_ms, snoozed.get(row.key) or row.due_ms)
            lines.append(_Line(prompt=row, title=titles[row.coat_key], due_ms=due_ms, is_snoozed=due_ms > row.due_ms))
    return sorted(lines, key=lambda line: (line.due_ms, line.prompt.key))


def _given_now(database: Database, studio: Studio, folder: StudioFolder, now_ms: int) -> Iterable[PromptRecord]:
    """Return the prompts that a watch of this moment has."""
    calibrations, sightings = kept_calibrations(database)
    records = records_of(studio, calibrations=calibrations, sightings=sightings)
    watch = watch_at(now_ms, records, ReadingsStore(database), SheetShelf.open(folder.sheets))
    watch.write(now_ms, 0.0)  # into these records, which are gone with it
    return records.kept_prompts.values()


def _list(lines: list[_Line], now_ms: int, *, as_json: bool) -> None:
    if as_json:
        print_document([_document(line, now_ms) for line in lines])
        return
    if not lines:
        print(say("Nothing to do at the rack."))
    for number, line in enumerate(lines, start=1):
        print(f"{number:>3}  {_due(line, now_ms)}  {line.title}: {line.prompt.text}")


def _due(line: _Line, now_ms: int) -> str:
    time = when_text(line.due_ms, now_ms)
    if line.due_ms <= now_ms:
        return say("now, since {time}, put off", time=time) if line.is_snoozed else say("now, since {time}", time=time)
    return say("{time}, put off", time=time) if line.is_snoozed else time


def _document(line: _Line, now_ms: int) -> dict[str, object]:
    return {
        "key": line.prompt.key,
        "due": iso(line.due_ms),
        "overdue": line.due_ms <= now_ms,
        "snoozed": line.is_snoozed,
        "piece": line.title,
        "text": line.prompt.text,
    }


def _chosen(word: str, lines: list[_Line]) -> _Line:
    by_name = {line.prompt.key: line for line in lines}
    by_name |= {str(number): line for number, line in enumerate(lines, start=1)}
    if word not in by_name:
        wrong(
            say(
                "There is no prompt {given}; allowed is a number from 1 to {last}, or a key, as `prompts list` shows.",
                given=repr(word),
                last=len(lines),
            )
            if lines
            else say("There is no prompt {given}; allowed is none: nothing is open.", given=repr(word))
        )
    return by_name[word]


def _minutes(minutes: float) -> float:
    if not 1 <= minutes <= MOST_MINUTES:
        wrong(
            say(
                "--minutes is {given}; allowed is 1 to {most} min. Give another.",
                given=f"{minutes:g}",
                most=MOST_MINUTES,
            )
        )
    return minutes
