"""The coats on the rack as the prompts tend them."""

from __future__ import annotations

from dataclasses import replace

from studiowatch.coats.data_sheet import Kind
from studiowatch.coats.stages import Stage
from studiowatch.service.coat_run import CoatRun
from studiowatch.service.prompt_desk import Tended
from studiowatch.service.rack import Rack
from studiowatch.service.rack_coats import (
    following_coat,
    told_ms_of,
    untested_label,
    vapour_in_room,
    waits_through,
)
from studiowatch.studio.labels import suggested_mL
from studiowatch.studio.pieces import Coat, Finding, Piece
from studiowatch.studio.prompts import CoatToTend, FilmNow
from studiowatch.studio.rereading import read_every_ms


def coats_to_tend(rack: Rack, typed_ms: int | None = None) -> list[Tended]:
    """Return the topmost coat of each piece, as the prompts need it.

    Where the room is known by a reading that was typed at `typed_ms`, one coat, the wettest, asks for the next.
    """
    tops = [(piece, run) for piece in rack.on_rack() if (run := rack.stacks.top(piece)) is not None]
    tended = [_tended(rack, piece, run) for piece, run in tops]
    asking = [(every_ms, at) for at, (_, run) in enumerate(tops) if (every_ms := _read_every_ms(run)) is not None]
    if typed_ms is not None and asking:
        every_ms, at = min(asking)
        asks = replace(tended[at].coat, typed_ms=typed_ms, read_again_ms=typed_ms + every_ms)
        tended[at] = replace(tended[at], coat=asks)
    return tended


def _read_every_ms(run: CoatRun) -> int | None:
    """Return how often the room should be read for this coat, ms; None once it is ready for the next, or dry paint."""
    is_wet = run.reached_ms(Stage.DRY_TO_TOUCH) is None
    is_over = not is_wet and (run.recoat_told or run.sheet.kind is Kind.PAINT)
    return None if is_over else read_every_ms(wet=is_wet)


def _tended(rack: Rack, piece: Piece, run: CoatRun) -> Tended:
    following = following_coat(piece)
    sheet = None if following is None else rack.shelf.stand_in(following.sheet)
    told, through = run.told, waits_through(rack, piece, run)
    clear = run.ahead.get(Stage.CLEAR) if run.sheet.kind is Kind.WATERBORNE else None  # else it was never milky
    coat = CoatToTend(
        coat_key=run.coat.key,
        laid_ms=run.laid_ms,
        clear_film=run.sheet.clear_film,
        solvent=run.sheet.kind is Kind.SOLVENTBORNE,
        is_covered=run.coat.covered_from_ms is not None,
        is_seen_clear=any(look.finding is Finding.CLEAR for look in run.coat.looks) or run.coat.outcome is not None,
        clear_ms=None if clear is None else run.after_ms(clear.nominal_s),
        recoat_ms=told_ms_of(told.next_coat(through=through))[0],
        cured_ms=told_ms_of(told.stage(Stage.CURED))[0],
        following=None if following is None else rack.stacks.labels(piece)[piece.coats.index(following)],
        following_mL=None if sheet is None else suggested_mL(piece.area_m2, sheet.wet_um),
        following_through=through,
        following_solvent=sheet is not None and sheet.kind is Kind.SOLVENTBORNE,
        film=_film_now(run),
        touch_dry_ms=run.after_ms(run.sheet.touch_dry_min * 60.0) if run.air is None else None,
        untested=_untested_below(rack, piece, run.coat),
        unready=told.unready,
        vapour_near=vapour_in_room(rack, but=piece.key),
    )
    return Tended(coat=coat, piece_key=piece.key, piece_title=piece.title)


def _film_now(run: CoatRun) -> FilmNow:
    return FilmNow(
        is_set=run.reached_ms(Stage.SET_TO_TOUCH) is not None,
        is_tack_free=run.reached_ms(Stage.TACK_FREE) is not None,
    )


def _untested_below(rack: Rack, piece: Piece, coat: Coat) -> str:
    at = piece.index_of(coat.key)
    return untested_label(rack, piece, piece.coats[at - 1]) if at > 0 else ""
