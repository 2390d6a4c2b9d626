"""What she means to do with the room, as rows of the records and as a table of the studio file."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import astuple, dataclass
from datetime import date
from typing import Any

from studiowatch.physics.ranges import OutOfRange
from studiowatch.room.intentions import TARGETS, Doing
from studiowatch.speech.words import mark, say
from studiowatch.store.database import Database
from studiowatch.store.field_values import Wrong
from studiowatch.store.studio_fields import Field
from studiowatch.studio.meant import DAYS_MOST, Meant, meant_fault, read_span, span_text

_DOINGS = tuple(Doing)
_EVERY_DAY = 0


@dataclass(frozen=True, slots=True, kw_only=True)
class IntentionRecord:
    """One as it is kept; see `Meant`. Of `days` 0 is every day, a fan with `target` 0 stays off."""

    key: str
    doing: str
    hours: str
    target: float
    first_day: str
    days: int


def _key(value: Any) -> str:  # noqa: ANN401 - whatever the file holds
    if not isinstance(value, str) or not value.strip():
        raise Wrong
    return value


def _doing(value: Any) -> str:  # noqa: ANN401
    if value not in _DOINGS:
        raise Wrong
    return str(value)


def _hours(value: Any) -> str:  # noqa: ANN401
    try:
        read_span(value if isinstance(value, str) else "")
    except ValueError as fault:
        raise Wrong from fault
    return str(value).strip()


def _target(value: Any) -> float:  # noqa: ANN401
    if isinstance(value, bool) or not isinstance(value, int | float):
        raise Wrong
    try:
        return float(value)
    except OverflowError as fault:
        raise Wrong from fault


def _day(value: Any) -> str:  # noqa: ANN401
    try:
        return date.fromisoformat(value if isinstance(value, str) else "").isoformat()
    except ValueError as fault:
        raise Wrong from fault


def _days(value: Any) -> int:  # noqa: ANN401
    if isinstance(value, bool) or not isinstance(value, int) or not _EVERY_DAY <= value <= DAYS_MOST:
        raise Wrong
    return value


INTENTION_FIELDS = (
    Field(name="key", attribute="key", read=_key, allowed=mark("a text in quotes that no other has")),
    Field(
        name="doing", attribute="doing", read=_doing, allowed=", ".join(f'"{one}"' for one in _DOINGS), required=True
    ),
    Field(name="hours", attribute="hours", read=_hours, allowed=mark('from and until, "18:00-23:00"'), required=True),
    Field(
        name="target",
        attribute="target",
        read=_target,
        allowed=mark(
            "a number: {low_C} to {high_C} °C of a heater, {low_pct} to {high_pct} % of a dehumidifier, {low_m_s} to "
            "{high_m_s} m/s of a fan, where 0 is off"
        ),
        limits={
            "low_C": f"{TARGETS['heater'][0]:g}",
            "high_C": f"{TARGETS['heater'][1]:g}",
            "low_pct": f"{TARGETS['dehumidifier'][0]:g}",
            "high_pct": f"{TARGETS['dehumidifier'][1]:g}",
            "low_m_s": f"{TARGETS['fan'][0]:g}",
            "high_m_s": f"{TARGETS['fan'][1]:g}",
        },
        required=True,
    ),
    Field(
        name="first_day", attribute="first_day", read=_day, allowed=mark('a day in quotes, "2026-03-20"'), required=True
    ),
    Field(
        name="days",
        attribute="days",
        read=_days,
        allowed=mark("a whole number, 1 to {most}, or 0 for every day"),
        limits={"most": str(DAYS_MOST)},
        required=True,
    ),
)


def record_of(meant: Meant) -> IntentionRecord:
    """Return one as it is kept."""
    return IntentionRecord(
        key=meant.key,
        doing=meant.doing.value,
        hours=span_text(meant),
        target=meant.target,
        first_day=meant.first_day.isoformat(),
        days=_EVERY_DAY if meant.days is None else meant.days,
    )


def meant_of(record: IntentionRecord) -> Meant:
    """Return one from how it is kept.

    Raises
    ------
    ValueError
        If it is not one that `record_of` makes.
    """
    from_min, to_min = read_span(record.hours)
    return Meant(
        key=record.key,
        doing=Doing(record.doing),
        from_min=from_min,
        to_min=to_min,
        target=record.target,
        first_day=date.fromisoformat(record.first_day),
        days=None if record.days == _EVERY_DAY else record.days,
    )


def intention_fault(record: IntentionRecord) -> str:
    """Return what is wrong with one that comes from a file, or ""."""
    try:
        fault = meant_fault(meant_of(record))
    except (ValueError, OutOfRange) as error:
        fault = str(error)
    return say("intention {key}: {fault}", key=record.key, fault=fault) if fault else ""


def all_intentions(database: Database) -> Sequence[Meant]:
    """Return all of them, in the order in which they were meant."""
    rows = database.rows("SELECT key, doing, hours, target, first_day, days FROM intention ORDER BY rowid")
    return [
        meant_of(IntentionRecord(key=key, doing=doing, hours=hours, target=target, first_day=first_day, days=days))
        for key, doing, hours, target, first_day, days in rows
    ]


def put_intention(database: Database, meant: Meant) -> None:
    """Insert or replace one."""
    with database.transaction() as connection:
        connection.execute(
            "INSERT INTO intention (key, doing, hours, target, first_day, days) VALUES (?, ?, ?, ?, ?, ?) "
            "ON CONFLICT (key) DO UPDATE SET doing = excluded.doing, hours = excluded.hours, "
            "target = excluded.target, first_day = excluded.first_day, days = excluded.days",
            astuple(record_of(meant)),
        )


def drop_intention(database: Database, key: str) -> None:
    """Forget one."""
    with database.transaction() as connection:
        connection.execute("DELETE FROM intention WHERE key = ?", (key,))
