"""Made-up finishing plans of the made-up studios, and the plan's page led through its states for pictures."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import UTC, datetime, time, timedelta

from PySide6.QtWidgets import QWidget

from studiowatch.coats.data_sheet import DataSheet
from studiowatch.service.best_hours_view import BestHoursView
from studiowatch.service.piece_view import CoatView, PieceView
from studiowatch.service.sheet_shelf import built_in_sheets
from studiowatch.service.snapshot import Snapshot
from studiowatch.studio.finishing_plan import finishing_plan
from studiowatch.studio.labels import suggested_mL
from studiowatch.studio.plan_checks import StackCoat, check_stack
from studiowatch.studio.plan_shapes import CoatToCome, PieceToPlan, Times, Waits
from studiowatch.studio.working_hours import WallClock, WorkingHours
from studiowatch.ui.widgets.plan_dialogs import HoursDialog, RecipeDialog
from studiowatch.ui.window import StudioWindow

from .scenes import EMPTY, FOUR_CALM, FOUR_WARNED, NOW_MS, ONE_WET, TWELVE, ScriptedDesk, coat

HOUR_MS = 3_600_000
DAY_MS = 24 * HOUR_MS
AIR = "Dated for the room as it was read last: 20.6 °C, 52 % RH."
CLOCK = WallClock(
    day=lambda time_ms: datetime.fromtimestamp(time_ms / 1000, UTC).date(),
    at=lambda day, minutes: round((datetime.combine(day, time(), UTC) + timedelta(minutes=minutes)).timestamp() * 1000),
)
SHEETS = built_in_sheets()


def times(p10: float, p50: float, p90: float) -> Times:
    """Return hours as a range."""
    return Times(p10=round(p10 * HOUR_MS), p50=round(p50 * HOUR_MS), p90=round(p90 * HOUR_MS))


WAITS = Waits(next=times(4, 9, 17), handle=times(5, 10, 22), cured=times(5 * 24, 6 * 24, 8 * 24))


def planned(snapshot: Snapshot, hours: WorkingHours | None = None) -> Snapshot:
    """Return the studio with a plan of its coats to come."""
    pieces = [_to_plan(piece) for piece in snapshot.pieces]
    plan = finishing_plan(pieces, hours or WorkingHours(), CLOCK, now_ms=snapshot.time_ms)
    return replace(snapshot, plan=replace(plan, air=AIR), hours=hours or WorkingHours())


def _to_plan(piece: PieceView) -> PieceToPlan:
    ready_ms = piece.next_ms or NOW_MS
    stack = tuple(_stacked(one) for one in piece.coats)
    to_come = [one for one in piece.coats if one.laid_ms is None]
    top = piece.top
    return PieceToPlan(
        key=piece.key,
        title=piece.title,
        due=piece.due,
        coats=tuple(_to_come(piece, one) for one in to_come),
        ready=Times(p10=piece.next_p10_ms or ready_ms, p50=ready_ms, p90=piece.next_p90_ms or ready_ms),
        waits=lambda _coat, _lay_ms: WAITS,
        top="" if top is None else top.label,
        handle=None if top is None else WAITS.handle.after(_at(top)),
        cured=None if top is None else WAITS.cured.after(_at(top)),
        remarks=check_stack(stack),
    )


def _at(top: CoatView) -> Times:
    return Times(p10=top.laid_ms, p50=top.laid_ms, p90=top.laid_ms)


def _to_come(piece: PieceView, one: CoatView) -> CoatToCome:
    mL = suggested_mL(piece.area_m2, one.wet_um)
    return CoatToCome(key=one.key, label=one.label, sheet=one.sheet, title=one.sheet, volume_mL=mL)


def _stacked(one: CoatView) -> StackCoat:
    sheet: DataSheet | None = SHEETS.get(one.sheet)
    if sheet is None and not one.clear_film:
        sheet = SHEETS["paint-brushed"]
    return StackCoat(key=one.key, name=one.sheet, sheet=sheet, laid=one.laid_ms is not None)


def broken(snapshot: Snapshot) -> Snapshot:
    """Return the studio with a first piece whose coats to come break what they can."""
    first, *rest = snapshot.pieces
    laid = tuple(one for one in first.coats if one.laid_ms is not None)[:1]
    to_come = (
        coat("b1", "satin 1", sheet="satin-waterborne"),
        coat("b2", "gloss", sheet="gloss-waterborne"),
        coat("b3", "satin 2", sheet="satin-waterborne"),
        coat("b4", "satin 3", sheet="satin-waterborne"),
        coat("b5", "lost", sheet="the-old-bottle"),
    )
    return replace(snapshot, pieces=(replace(first, coats=(*laid, *to_come)), *rest))


ONE_PLANNED = planned(ONE_WET)
FOUR_PLANNED = planned(FOUR_CALM)
BROKEN_PLANNED = planned(broken(FOUR_WARNED))
TWELVE_PLANNED = planned(TWELVE)
BUSY_PLANNED = planned(
    replace(
        FOUR_CALM,
        pieces=tuple(replace(one, next_ms=NOW_MS, next_p10_ms=None, next_p90_ms=None) for one in FOUR_CALM.pieces),
    )
)

GLOSS = BestHoursView(
    sheet="gloss-solventborne",
    title="Gloss, solvent-borne",
    piece_keys=("orchard", "lamp"),
    piece_titles=("Orchard at Low Water", "Lamp in the Fog"),
    made_ms=NOW_MS,
    caution="Fresh air first.",
    lines=("lay from Thu 10:00 to Thu 13:00: good in nine of ten ways that this room may go",),
    aside_lines=tuple(f"Thu {hour}:00: likely too damp before it is safe" for hour in range(5)),
)


def plan_states(window: StudioWindow, desk: ScriptedDesk) -> Iterator[tuple[str, QWidget]]:
    """Put the page into one state after the other, and yield its name and what to picture."""
    page = window.plan
    window.pages.show_plan()
    for name, snapshot in (
        ("plan-empty", EMPTY),
        ("plan-making", FOUR_CALM),
        ("plan-one", ONE_PLANNED),
        ("plan-four", FOUR_PLANNED),
        ("plan-best", replace(FOUR_PLANNED, best_hours=(GLOSS,))),
        ("plan-busy", BUSY_PLANNED),
        ("plan-broken", BROKEN_PLANNED),
        ("plan-twelve", TWELVE_PLANNED),
    ):
        desk.publish(snapshot)
        page.show_snapshot(snapshot)
        yield name, window
    page.show_snapshot(FOUR_PLANNED)
    page.table.choose("ladder")
    page.table.spans.button(4).click()
    yield "plan-days", window
    page.table.spans.button(35).click()
    yield "plan-weeks", window
    page.table.spans.button(14).click()
    for name, form in (
        ("plan-hours", HoursDialog(WorkingHours(), page._courier, window.dressing.style, window)),
        ("plan-recipe", RecipeDialog(("gloss-waterborne",), page._courier, window.dressing.style, window)),
    ):
        form.open()
        yield name, form
        form.drop()
    window.pages.show_rack()
