"""The made-up studio: past readings from the simulated room, and pieces with coats laid some hours ago."""

from __future__ import annotations

import tomllib
import uuid
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from datetime import UTC, date, datetime, timedelta
from importlib.resources import files
from typing import Any

from studiowatch.room.readings import Reading
from studiowatch.service.ports import ReadingsLog, Records
from studiowatch.studio.pieces import Coat, Outcome, Piece

HOUR_MS = 3_600_000  # ms
PAST_STEP_S = 10.0  # s between the past readings: enough to look at, quick to make
BATCH = 10_000  # readings in one transaction


@dataclass(frozen=True, slots=True, kw_only=True)
class Scenario:
    """A made-up studio, in hours before the moment it is opened."""

    seed: int
    past_h: float
    pieces: tuple[dict[str, Any], ...]


def scenario() -> Scenario:
    """Return the scenario that ships with studiowatch."""
    text = (files("studiowatch.resources") / "demo" / "scenario.toml").read_text("utf-8")
    document = tomllib.loads(text)
    return Scenario(seed=document["seed"], past_h=document["past_h"], pieces=tuple(document["piece"]))


def furnish(
    made_up: Scenario,
    *,
    now_ms: int,
    log: ReadingsLog,
    records: Records,
    past_readings: Callable[[int, int, float], Iterator[Reading]],
) -> None:
    """Fill an empty studio: the room's past up to `now_ms` (UTC ms), and the pieces."""
    batch: list[Reading] = []
    for reading in past_readings(now_ms - round(made_up.past_h * HOUR_MS), now_ms, PAST_STEP_S):
        batch.append(reading)
        if len(batch) == BATCH:
            log.append(batch)
            batch = []
    log.append(batch)
    for place, piece in enumerate(made_up.pieces):
        records.save_piece(_piece(piece, place, now_ms))


def _piece(made_up: dict[str, Any], place: int, now_ms: int) -> Piece:
    today = datetime.fromtimestamp(now_ms / 1000, UTC).date()
    return Piece(
        key=uuid.uuid4().hex,
        title=made_up["title"],
        width_cm=made_up["width_cm"],
        height_cm=made_up["height_cm"],
        support=made_up["support"],
        due=_due(made_up, today),
        place=place,
        coats=tuple(_coat(coat, now_ms) for coat in made_up["coat"]),
    )


def _due(made_up: dict[str, Any], today: date) -> date | None:
    days = made_up.get("due_in_days")
    return None if days is None else today + timedelta(days=days)


def _coat(made_up: dict[str, Any], now_ms: int) -> Coat:
    hours = made_up.get("laid_h_before")
    outcome = made_up.get("outcome")
    laid_ms = None if hours is None else now_ms - round(hours * HOUR_MS)
    covered_h = made_up.get("covered_h_before")
    return Coat(
        key=uuid.uuid4().hex,
        sheet=made_up["sheet"],
        laid_ms=laid_ms,
        volume_mL=made_up.get("volume_mL"),
        covered_from_ms=None if covered_h is None else now_ms - round(covered_h * HOUR_MS),
        outcome=None if outcome is None else Outcome(outcome),
        seen_ms=now_ms if outcome else None,
    )
