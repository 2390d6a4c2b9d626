"""Made-up coats under made-up rooms, for tests of the review."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime
from typing import Any

from studiowatch.coats.data_sheet import DataSheet
from studiowatch.physics.air import Air
from studiowatch.service.sheet_shelf import built_in_sheets
from studiowatch.studio.labels import stack_labels
from studiowatch.studio.pieces import Coat, Outcome, Piece
from studiowatch.studio.review import Setting, review
from studiowatch.studio.review_course import LaidStack, laid_stack
from studiowatch.studio.review_room import Room, RoomMoment
from studiowatch.studio.review_views import Review

LAID_MS = int(datetime(2026, 3, 2, 9, 0, tzinfo=UTC).timestamp() * 1000)
MINUTE_MS = 60_000
HOUR_MS = 60 * MINUTE_MS
SHEETS = built_in_sheets()
GOOD = Air(temperature_C=20.0, humidity_pct=52.0, air_speed_m_s=0.05)


def at(hours: float) -> int:
    """Return so long after the laying of the top coat, UTC ms."""
    return LAID_MS + round(hours * HOUR_MS)


def gloss(**given: Any) -> Coat:  # noqa: ANN401
    """Return a gloss coat on 0.16 m², in good order but for what is given."""
    usual = {"key": "g", "sheet": "gloss-waterborne", "laid_ms": LAID_MS, "volume_mL": 12.8}
    seen = {"outcome": Outcome.MILKY_ALL_OVER, "seen_ms": at(20.0)}
    return Coat(**{**usual, **seen, **given})


def isolation(hours_before: float = 24.0, **given: Any) -> Coat:  # noqa: ANN401
    """Return the isolation coat below."""
    return Coat(key="i", sheet="isolation-waterborne", laid_ms=at(-hours_before), **{"volume_mL": 12.8, **given})


def stack(*coats: Coat, sheets: dict[str, DataSheet] | None = None, number: int | None = None) -> LaidStack:
    """Return the stack of a piece of 40 cm with these coats."""
    shelf = SHEETS if sheets is None else sheets
    piece = Piece(key="p", title="Kiln Light", width_cm=40, height_cm=40, coats=coats)
    own = [shelf[coat.sheet] for coat in coats]
    return laid_stack(piece, own, stack_labels(own), len(coats) if number is None else number)


def room(
    air: Callable[[float], Air] = lambda _: GOOD,
    *,
    step_min: int = 5,
    hours: tuple[float, float] = (-30.0, 40.0),
    speed_known: bool = True,
    hole: tuple[float, float] | None = None,
) -> Room:
    """Return a room by the hour since the laying, without readings in `hole`."""
    minutes = range(round(60 * hours[0]), round(60 * hours[1]), step_min)
    return Room(
        moments=tuple(
            RoomMoment(time_ms=LAID_MS + minute * MINUTE_MS, air=air(minute / 60.0), speed_known=speed_known)
            for minute in minutes
            if hole is None or not hole[0] <= minute / 60.0 < hole[1]
        )
    )


def reviewed(laid: LaidStack, under: Room, now_ms: int | None = None) -> Review:
    """Return the review, with times in UTC."""
    return review(laid, under, Setting(when_text=utc_text, now_ms=now_ms))


def utc_text(time_ms: int, now_ms: int) -> str:
    """Return the time of day, with the day where it is not that of `now_ms`."""
    moment, now = (datetime.fromtimestamp(ms / 1000, tz=UTC) for ms in (time_ms, now_ms))
    return moment.strftime("%H:%M" if moment.date() == now.date() else "%d %b %H:%M")
