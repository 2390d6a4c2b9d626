"""Preparations as rows, and what was done with prompts short of ticking them."""

from __future__ import annotations

import json
from collections.abc import Sequence
from dataclasses import asdict, astuple
from math import isfinite
from typing import Any

from studiowatch.speech.words import say
from studiowatch.store.database import Database
from studiowatch.store.shapes import PreparationRecord, TellingRecord
from studiowatch.studio.chores import Task
from studiowatch.studio.preparation import CoatToLay, Preparation, Tick

_PUT = (
    "INSERT INTO preparation (key, began_ms, ended_ms, state) VALUES (?, ?, ?, ?) ON CONFLICT (key) DO UPDATE SET "
    "began_ms = excluded.began_ms, ended_ms = excluded.ended_ms, state = excluded.state"
)
_PUT_TELLING = (
    "INSERT INTO prompt_telling (key, told_ms, snoozed_ms) VALUES (?, ?, ?) ON CONFLICT (key) DO UPDATE SET "
    "told_ms = excluded.told_ms, snoozed_ms = excluded.snoozed_ms"
)
_APART = ("key", "began_ms", "ended_ms")  # columns of their own; the rest of a preparation is its state


def record_of(preparation: Preparation) -> PreparationRecord:
    """Return a preparation as it is kept."""
    state = {name: value for name, value in asdict(preparation).items() if name not in _APART}
    return PreparationRecord(
        key=preparation.key,
        began_ms=preparation.began_ms,
        ended_ms=preparation.ended_ms,
        state=json.dumps(state, allow_nan=False),
    )


def preparation_of(record: PreparationRecord) -> Preparation:
    """Return a preparation from how it is kept.

    Raises
    ------
    KeyError, TypeError, ValueError
        If its state is not one that `record_of` makes.
    """
    state = json.loads(record.state)
    state["coats"] = tuple(CoatToLay(**coat) for coat in state["coats"])
    state["ticks"] = tuple(Tick(**{**tick, "task": Task(tick["task"])}) for tick in state["ticks"])
    return Preparation(key=record.key, began_ms=record.began_ms, ended_ms=record.ended_ms, **state)


def preparation_fault(record: PreparationRecord) -> str:
    """Return what is wrong with a preparation that comes from a file, or "" for one that could have been made here."""
    try:
        made = preparation_of(record)
        if not made.coats or not _is_whole(made):
            raise ValueError(say("not all of it is what it should be"))  # noqa: TRY301 - one sentence for all that may be wrong
    except (KeyError, TypeError, ValueError, AttributeError) as fault:
        return say(
            "preparation {key} cannot be one ({fault}); export it again, or leave it out.", key=record.key, fault=fault
        )
    return ""


def _is_whole(made: Preparation) -> bool:
    texts = [text for coat in made.coats for text in (coat.piece_key, coat.sheet)]
    texts += [coat.coat_key for coat in made.coats if coat.coat_key is not None]
    amounts = [amount for coat in made.coats for amount in (coat.volume_mL, coat.grams, coat.thinned_pct)]
    times: list[Any] = [coat.laid_ms for coat in made.coats if coat.laid_ms is not None]
    times += [tick.time_ms for tick in made.ticks]
    flags = [made.solvent, made.torch, made.vapour_in_room, *(tick.told for tick in made.ticks)]
    return (
        all(isinstance(text, str) for text in texts)
        and all(_is_amount(amount) for amount in amounts if amount is not None)
        and all(isinstance(time_ms, int) and not isinstance(time_ms, bool) for time_ms in times)
        and all(isinstance(flag, bool) for flag in flags)
    )


def _is_amount(amount: object) -> bool:
    return isinstance(amount, int | float) and not isinstance(amount, bool) and isfinite(amount) and amount >= 0


def put_preparation(database: Database, preparation: Preparation) -> None:
    """Insert or replace one preparation."""
    with database.transaction() as connection:
        connection.execute(_PUT, astuple(record_of(preparation)))


def open_preparations(database: Database) -> list[Preparation]:
    """Return the preparations that nobody ended, in the order in which they were begun."""
    rows = database.rows(
        "SELECT key, began_ms, ended_ms, state FROM preparation WHERE ended_ms IS NULL ORDER BY began_ms, rowid"
    )
    records = [
        PreparationRecord(key=key, began_ms=began, ended_ms=ended, state=state) for key, began, ended, state in rows
    ]
    return [preparation_of(record) for record in records]


def put_telling(database: Database, telling: TellingRecord) -> None:
    """Insert or replace what was done with one prompt; nothing is kept of a prompt that is gone."""
    with database.transaction() as connection:
        known = connection.execute("SELECT 1 FROM prompt WHERE key = ?", (telling.key,)).fetchone()
        if known is not None:
            connection.execute(_PUT_TELLING, astuple(telling))


def all_tellings(database: Database) -> Sequence[TellingRecord]:
    """Return what was done with the prompts that are not ticked."""
    rows = database.rows(
        "SELECT key, told_ms, snoozed_ms FROM prompt_telling "
        "WHERE key IN (SELECT key FROM prompt WHERE done_ms IS NULL)"
    )
    return [TellingRecord(key=key, told_ms=told_ms, snoozed_ms=snoozed_ms) for key, told_ms, snoozed_ms in rows]
