"""Laying a coat, step by step: the verdict, what may be laid along with it, the hazards, and the chores as rows."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum, auto

from studiowatch.service.piece_view import PieceView
from studiowatch.service.product_views import SheetChoice
from studiowatch.service.snapshot import PreparationView, Snapshot
from studiowatch.speech.words import mark, say
from studiowatch.studio.chores import Task
from studiowatch.studio.hazards import first_hazards
from studiowatch.studio.lay_check import lay_check
from studiowatch.studio.plan_checks import joined
from studiowatch.studio.preparation import ChoreNow, ChoreState, CoatToLay, Preparation, chores_now
from studiowatch.studio.words import Level, Sentence
from studiowatch.ui.models.amounts import Unit, poured_words, weighed_words, with_unit
from studiowatch.ui.models.coat_form import (
    Amounts,
    SheetOption,
    cautions_of,
    pours_for,
    sheet_options,
)
from studiowatch.ui.models.sealing import room_or_risk, verdict_below
from studiowatch.ui.models.times import countdown_words
from studiowatch.ui.models.vapour_caution import vapour_cautions

CHORE_STATES = {
    ChoreState.TO_DO: mark("to do"),
    ChoreState.RESTING: mark("resting"),
    ChoreState.DONE: mark("done"),
    ChoreState.STALE: mark("do it again"),
}


class LayingStep(Enum):
    """Where the form is: what goes on, what is prepared, or when it went on already."""

    WHAT = auto()
    READY = auto()
    LATE = auto()


@dataclass(frozen=True, slots=True, kw_only=True)
class ChoreRow:
    """A chore as it is shown; `share` is how much of its rest is over, 0 to 1."""

    task: Task
    words: str
    note: str
    caution: str
    state: ChoreState
    share: float = 0.0

    @property
    def spoken(self) -> str:
        """Return the row as one phrase."""
        stands = self.note or say(CHORE_STATES[self.state])
        return ". ".join(part for part in (f"{self.words}: {stands}", self.caution) if part)


def chore_rows(preparation: Preparation, now_ms: int) -> tuple[ChoreRow, ...]:
    """Return the chores as rows at `now_ms`, UTC ms."""
    return tuple(_chore_row(one, now_ms) for one in chores_now(preparation, now_ms))


def _chore_row(one: ChoreNow, now_ms: int) -> ChoreRow:
    chore = one.chore
    note, share = "", 0.0
    if one.state is ChoreState.RESTING and one.until_ms is not None:
        left_ms = one.until_ms - now_ms
        note, share = f"{chore.resting}: {countdown_words(left_ms)}", 1.0 - left_ms / chore.wait_ms
    elif one.state is ChoreState.DONE and chore.wait_ms:
        note = chore.rested
    elif one.state is ChoreState.STALE:
        note = say("Too long ago: do it again")
    caution = chore.caution if one.state in (ChoreState.TO_DO, ChoreState.STALE) else ""
    return ChoreRow(task=chore.task, words=chore.words, note=note, caution=caution, state=one.state, share=share)


def waiting_words(rows: Sequence[ChoreRow]) -> str:
    """Return what rests or was not seen to, for the line above the button, or ""."""
    resting = [row.note for row in rows if row.state is ChoreState.RESTING]
    if resting:
        return " · ".join(resting)
    missing = sum(row.state in (ChoreState.TO_DO, ChoreState.STALE) for row in rows)
    return say("{missing} of {all} not seen to yet", missing=missing, all=len(rows)) if missing else ""


def check_of(snapshot: Snapshot, piece: PieceView, sheet: SheetChoice) -> Sentence | None:
    """Return whether `sheet` may go on `piece` now, from the newest snapshot; None if nothing is known."""
    newest = next((one for one in snapshot.pieces if one.key == piece.key), piece)
    stop = joined(verdict_below(newest, solvent=sheet.solvent), dict(newest.stack_checks).get(sheet.name))
    room = room_or_risk(newest, snapshot.room_check(sheet.name), sheet.name)
    if room is None:
        return stop
    return lay_check(room=room, piece=stop, untested=newest.untested)


def next_hours(snapshot: Snapshot, sheet: SheetChoice) -> str:
    """Return when `sheet` is better laid, in one line, where the room says to wait; else "", or if nobody knows."""
    room = snapshot.room_check(sheet.name)
    if room is None or room.level is Level.CALM:
        return ""
    return next((view.next_line for view in snapshot.best_hours if view.sheet == sheet.name), "")


def laid_along(
    snapshot: Snapshot, piece: PieceView, option: SheetOption, sheets: Sequence[SheetChoice]
) -> tuple[tuple[PieceView, SheetOption], ...]:
    """Return the other pieces whose planned next coat is of the same sheet and that are ready for it."""
    found = []
    for other in snapshot.pieces:
        planned = sheet_options(other, sheets)[0]
        is_same = planned.coat_key is not None and planned.sheet.name == option.sheet.name
        if other.key != piece.key and is_same and other.stop(solvent=planned.sheet.solvent) is None:
            found.append((other, planned))
    return tuple(found)


def coat_to_lay(
    piece: PieceView,
    option: SheetOption,
    *,
    volume_mL: float | None = None,
    grams: float | None = None,
    thinned_pct: float = 0.0,
) -> CoatToLay:
    """Return one coat of a preparation."""
    return CoatToLay(
        piece_key=piece.key,
        sheet=option.sheet.name,
        coat_key=option.coat_key,
        volume_mL=volume_mL,
        grams=grams,
        thinned_pct=thinned_pct,
    )


def option_for(coat: CoatToLay, options: Sequence[SheetOption]) -> int:
    """Return which of `options` a coat of a preparation is, as an index; the first if none is."""
    for at, option in enumerate(options):
        if (option.coat_key, option.sheet.name) == (coat.coat_key, coat.sheet):
            return at
    return 0


def open_for(snapshot: Snapshot, piece_key: str) -> PreparationView | None:
    """Return the open preparation in which a coat on this piece is still to be laid, or None."""
    for view in snapshot.preparations:
        if any(coat.piece_key == piece_key and coat.laid_ms is None for coat in view.preparation.coats):
            return view
    return None


def hazards_for(
    piece: PieceView, sheet: SheetChoice, amounts: Amounts, *, snapshot: Snapshot, torch: bool
) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """Return the cautions for laying this coat now: those right above the button, and those that may be scrolled to."""
    first = first_hazards(
        solvent=sheet.solvent,
        flash_point_C=sheet.flash_point_C,
        vapour=vapour_cautions(piece, sheet, amounts, snapshot.room.temperature_C),
        torch=torch,
        vapour_near=snapshot.vapour_near,
    )
    own = cautions_of(sheet)
    return (first, own) if sheet.solvent else ((*first, *own), ())


def pour_words(piece: PieceView, sheet: SheetChoice, unit: Unit, amount: str) -> str:
    """Return how much goes on this piece, for the step at which it is poured."""
    if amount.strip():
        return say("{amount} on {title}", amount=with_unit(amount, unit), title=piece.title)
    made = pours_for(piece, sheet)
    volume, weight = poured_words(made[0].poured_mL), weighed_words(made[0].poured_g)
    whole, each = (
        mark("Pour {volume} or {weight} on {title}"),
        mark("Pour {volume} or {weight} on each panel of {title}"),
    )
    return say(whole if len(made) == 1 else each, volume=volume, weight=weight, title=piece.title)
