"""The coats on the rack that the watch judges."""

from __future__ import annotations

from studiowatch.coats.data_sheet import Kind
from studiowatch.coats.stages import Stage
from studiowatch.service.coat_run import CoatRun
from studiowatch.service.rack import Rack
from studiowatch.studio.concern import CoatAtRisk
from studiowatch.studio.pieces import Coat, Piece


def coats_at_risk(rack: Rack) -> list[CoatAtRisk]:
    """Return the laid coats that the room may still spoil, in the order of the rack."""
    at_risk = []
    for piece in rack.on_rack():
        risky = [coat for coat in piece.coats if (run := rack.runs.get(coat.key)) and _may_be_spoilt(run)]
        if not risky:  # names are not made for pieces that are past harm: this is asked several times a second
            continue
        labels = rack.stacks.labels(piece)
        for coat in risky:
            matting = sum(rack.shelf.stand_in(one.sheet).matting_agent for one in _laid_up_to(piece, coat))
            at_risk.append(_at_risk(piece, labels[piece.coats.index(coat)], rack.runs[coat.key], matting))
    return at_risk


def _may_be_spoilt(run: CoatRun) -> bool:
    return run.sheet.kind is not Kind.PAINT and (run.is_wet_on_top or not _is_formed(run))


def _is_formed(run: CoatRun) -> bool:
    return run.reached_ms(Stage.CLEAR) is not None and run.reached_ms(Stage.DRY_TO_TOUCH) is not None


def _laid_up_to(piece: Piece, coat: Coat) -> list[Coat]:
    return [one for one in piece.coats[: piece.coats.index(coat) + 1] if one.laid_ms is not None]


def _at_risk(piece: Piece, label: str, run: CoatRun, matting_coats: int) -> CoatAtRisk:
    return CoatAtRisk(
        piece_key=piece.key,
        piece_title=piece.title,
        coat_label=label,
        wet=run.is_wet_on_top,
        forming=not _is_formed(run),
        covered=run.covered,
        film_C=run.film.film_C,
        mfft_C=run.sheet.mfft_C,
        max_humidity_pct=run.sheet.max_humidity_pct,
        solvent=run.sheet.kind is Kind.SOLVENTBORNE,
        sticky=run.is_wet_on_top and run.reached_ms(Stage.DUST_FREE) is None,
        dust_free_ms=_ahead_ms(run, Stage.DUST_FREE),
        pace=run.pace if run.film.seal is None else 0.0,
        apply_most_C=None if run.sheet.apply_C is None else run.sheet.apply_C[1],
        matting_coats=matting_coats if run.sheet.matting_agent else 0,
        max_matting_coats=run.sheet.max_matting_coats,
        laid_ms=run.laid_ms,
        unready_below=run.unready_below if run.film.seal is None else 0.0,
        sheet_wait_h=run.sheet_wait_h if run.film.seal is None else None,
        safe_ms=_ahead_ms(run, Stage.CLEAR) or _ahead_ms(run, Stage.DRY_TO_TOUCH),
    )


def _ahead_ms(run: CoatRun, stage: Stage) -> int | None:
    ready = run.ahead.get(stage)
    return None if ready is None else run.after_ms(ready.nominal_s)
