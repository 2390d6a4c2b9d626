"""Laying a coat: its run begins on the run of the coat below, as that stands then."""

from __future__ import annotations

from studiowatch.coats.anchoring import anchor
from studiowatch.coats.data_sheet import DataSheet
from studiowatch.coats.film import lay
from studiowatch.coats.standing import Standing
from studiowatch.coats.support import Support, support_of
from studiowatch.service.coat_risk import CoatRisk
from studiowatch.service.coat_run import CoatRun
from studiowatch.studio.amounts import wet_um_of
from studiowatch.studio.pieces import Coat, Piece


def begin_run(coat: Coat, piece: Piece, sheet: DataSheet, over: CoatRun | None, standing: Standing) -> CoatRun:
    """Return the run of `coat`, just laid on `piece` over the coat of the run `over`, whose films it takes along.

    Raises
    ------
    OutOfRange
        If the model knows no such film.
    ValueError
        If the coat has not been laid.
    """
    if coat.laid_ms is None:
        raise ValueError(f"the coat {coat.key} has not been laid")  # not said
    wet_um = wet_um_of(coat, area_m2=piece.area_m2, density_kg_m3=sheet.density_kg_m3, sheet_wet_um=sheet.wet_um)
    film = lay(
        sheet,
        anchor(sheet, standing.particles.draws),
        wet_um=wet_um,
        side_m=piece.side_m,
        orientation=piece.orientation,
        thinned_pct=coat.thinned_pct,
        over=None if over is None else over.film,
        support=_met(coat, piece),
    )
    laid_ms = coat.laid_ms
    run = CoatRun(coat=coat, lived=coat, sheet=sheet, laid_ms=laid_ms, film=film, at_ms=laid_ms, standing=standing)
    run.over, run.air = over, None if over is None else over.air
    run.risk = CoatRisk.of(film, None if over is None else over.film, [*_sheets_below(run), sheet])
    for lower, lower_film in run.films_below():
        lower.film = lower_film
    return run


def _sheets_below(run: CoatRun) -> list[DataSheet]:
    """Return the sheets of the coats below, lowest first."""
    sheets, lower = [], run.over
    while lower is not None:
        sheets.append(lower.sheet)
        lower = lower.over
    return sheets[::-1]


def _met(coat: Coat, piece: Piece) -> Support:
    """Return what the brush meets under `coat`: only the lowest on record lies straight on the support."""
    return support_of(piece.support) if coat.key == piece.coats[0].key else Support.SEALED
