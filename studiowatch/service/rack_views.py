"""The rack as the window sees it."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import replace
from datetime import date

from studiowatch.coats.data_sheet import DataSheet, Kind
from studiowatch.coats.film import Film, sealed_in_g_m2
from studiowatch.coats.stages import Stage
from studiowatch.coats.vapour import solvent_laid_g
from studiowatch.coats.weighing import weighing_gain
from studiowatch.room.limits import humidity_limit
from studiowatch.service.coat_run import CoatRun
from studiowatch.service.local_time import when_text
from studiowatch.service.piece_view import ArchivedView, CoatView, PieceView, SolventView
from studiowatch.service.rack import Rack
from studiowatch.service.rack_coats import following_coat, told_ms_of, untested_label, waits_through
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.service.told_times import ToldTimes
from studiowatch.studio.amounts import wet_um_of
from studiowatch.studio.labels import next_step, slack_days, suggested_mL
from studiowatch.studio.laying import may_cloud, not_yet
from studiowatch.studio.pieces import Coat, Piece
from studiowatch.studio.review_live import laying_risk
from studiowatch.studio.review_severity import unready_water_g_m2
from studiowatch.studio.review_views import Risk
from studiowatch.studio.words import Sentence

_WATER, _SOLVENT = "water", "solvent"


def piece_views(rack: Rack, local_date: Callable[[int], date], now_ms: int) -> tuple[PieceView, ...]:
    """Return all pieces on the rack, made afresh; `local_date` turns UTC ms into her calendar day."""
    advice = weighing_advice(rack)
    return tuple(piece_view(rack, piece, local_date, now_ms, advice) for piece in rack.on_rack())


def weighing_advice(rack: Rack) -> dict[str, str]:
    """Return what weighing the bottle would narrow, by the key of the newest coat of each product that was guessed."""
    newest: dict[str, CoatRun] = {}
    for run in sorted(rack.runs.values(), key=lambda run: run.laid_ms):
        if not (run.standing.measured or run.film.seal is not None or run.is_cured):
            newest[run.sheet.name] = run
    return {run.coat.key: _advice(run) for run in newest.values()}


def _advice(run: CoatRun) -> str:
    table = run.table
    gain = None if table is None else weighing_gain(run.standing, table, run.tests(), stage=Stage.DRY_TO_RECOAT)
    return "" if gain is None else gain.advice


def piece_view(
    rack: Rack, piece: Piece, local_date: Callable[[int], date], now_ms: int, advice: Mapping[str, str]
) -> PieceView:
    """Return one piece on the rack; `local_date` turns UTC ms into her calendar day, `advice` is of all coats."""
    labels = rack.stacks.labels(piece)
    following = following_coat(piece)
    run = rack.stacks.top(piece)
    next_ms = next_p10_ms = next_p90_ms = top_label = stop = stop_through = None
    if run is not None:
        told = run.told
        goal = told.stage(Stage.CURED) if following is None else told.next_coat(through=waits_through(rack, piece, run))
        next_ms, next_p10_ms, next_p90_ms = told_ms_of(goal)
        top_label = labels[piece.index_of(run.coat.key)]
        stop = _not_yet(told, top_label, now_ms, through=False)
        if run.sheet.kind is not Kind.SOLVENTBORNE:
            stop_through = _not_yet(told, top_label, now_ms, through=True)
    volume_mL = None
    following_label = None
    if following is not None:
        sheet = rack.shelf.stand_in(following.sheet)
        following_label = labels[piece.coats.index(following)]
        volume_mL = suggested_mL(piece.area_m2, sheet.wet_um)
    return PieceView(
        key=piece.key,
        title=piece.title,
        width_cm=piece.width_cm,
        height_cm=piece.height_cm,
        support=piece.support,
        orientation=piece.orientation,
        due=piece.due,
        shape=piece.shape,
        panels=piece.panels,
        photo=piece.photo,
        notes=piece.notes,
        coats=tuple(
            replace(
                _coat_view(piece, coat, label, rack.shelf.stand_in(coat.sheet), rack.runs.get(coat.key)),
                risk=_risk(rack, coat),
                unwatched=rack.stacks.why_unwatched(coat, now_ms),
                weighing=advice.get(coat.key, ""),
            )
            for coat, label in zip(piece.coats, labels, strict=True)
        ),
        next_step=next_step(top=top_label, following=following_label, volume_mL=volume_mL),
        next_ms=next_ms,
        next_p10_ms=next_p10_ms,
        next_p90_ms=next_p90_ms,
        slack_days=_slack_days(piece, following, next_ms, local_date),
        not_yet=stop,
        not_yet_solvent=stop_through,
        may_cloud=None if stop is not None else _may_cloud(rack, piece, following, following_label),
        would_seal_g_m2=0.0 if run is None else sealed_in_g_m2(run.film),
        would_seal_fluid=_WATER if run is None else _unready_fluid(run.film),
        solvents=_solvents(rack.shelf, piece),
        untested="" if run is None else untested_label(rack, piece, run.coat),
        corrections=rack.corrections.views(piece),
    )


def archived_views(rack: Rack) -> tuple[ArchivedView, ...]:
    """Return the pieces off the rack, by title."""
    pieces = sorted((piece for piece in rack.pieces.values() if piece.archived), key=lambda piece: piece.title.lower())
    return tuple(_archived_view(rack.shelf, piece) for piece in pieces)


def _archived_view(shelf: SheetShelf, piece: Piece) -> ArchivedView:
    return ArchivedView(
        key=piece.key,
        title=piece.title,
        width_cm=piece.width_cm,
        height_cm=piece.height_cm,
        support=piece.support,
        notes=piece.notes,
        due=piece.due,
        sheets=tuple(dict.fromkeys(shelf.stand_in(coat.sheet).title for coat in piece.coats)),
        last_ms=max((coat.laid_ms for coat in piece.coats if coat.laid_ms is not None), default=None),
        photo=piece.photo,
    )


def _risk(rack: Rack, coat: Coat) -> Risk | None:
    """Return the present risk that a coat comes out cloudy, or None if it is not followed, or its outcome is known."""
    run = rack.runs.get(coat.key)
    return None if run is None or run.risk is None or coat.outcome else run.risk.told(run.lived, rack.stacks.curves)


def _may_cloud(rack: Rack, piece: Piece, following: Coat | None, label: str | None) -> Sentence | None:
    """Return why the next coat planned may come out cloudy if it were laid now, or None."""
    run = rack.stacks.top(piece)
    if following is None or label is None or run is None or run.air is None or following.sheet not in rack.shelf.sheets:
        return None
    sheet = rack.shelf.get(following.sheet)
    if sheet.kind is Kind.PAINT:
        return None
    laid = [rack.shelf.stand_in(coat.sheet) for coat in piece.coats if coat.laid_ms is not None]
    sealed_g_m2 = float(unready_water_g_m2(run.film)[0])
    risk = laying_risk(rack.stacks.curves, sheet, run.air, below=laid, sealed_g_m2=sealed_g_m2, side_m=piece.side_m)
    return may_cloud(risk, label=label)


def _unready_fluid(film: Film) -> str:
    """Return what a coat laid on `film` now would seal in."""
    return _fluid(one for one in (*film.below, film) if one.unready[0])


def _sealed_fluid(film: Film) -> str:
    """Return what `film` sealed in when it was laid."""
    return _fluid(one for one in film.below if one.seal is not None and one.seal.mask[0])


def _fluid(films: Iterable[Film]) -> str:
    names = {_SOLVENT if film.sheet.kind is Kind.SOLVENTBORNE else _WATER for film in films}
    return " and ".join(sorted(names, reverse=True)) or _WATER


def _solvents(shelf: SheetShelf, piece: Piece) -> tuple[SolventView, ...]:
    return tuple(
        SolventView(
            sheet=sheet.name,
            solvent_g=solvent_laid_g(sheet, wet_um=sheet.wet_um, area_m2=piece.area_m2),
            over_h=sheet.touch_dry_min / 60.0,
        )
        for sheet in shelf.sheets.values()
        if sheet.kind is Kind.SOLVENTBORNE
    )


def _slack_days(
    piece: Piece, following: Coat | None, ready_ms: int | None, local_date: Callable[[int], date]
) -> int | None:
    """Return the days to spare once the last coat is on; nothing is promised while coats are still to come."""
    if piece.due is None or following is not None or ready_ms is None:
        return None
    return slack_days(piece.due, local_date(ready_ms))


def _not_yet(told: ToldTimes, label: str, now_ms: int, *, through: bool) -> Sentence | None:
    told_ms, likely_ms, _ = told_ms_of(told.next_coat(through=through))
    return not_yet(
        label=label,
        surface=told.film.surface,
        ready_ms=told_ms,
        likely_ms=likely_ms,
        now_ms=now_ms,
        unready=told.unready,
        when_text=when_text,
    )


def _coat_view(piece: Piece, coat: Coat, label: str, sheet: DataSheet, run: CoatRun | None) -> CoatView:
    wet_um = wet_um_of(coat, area_m2=piece.area_m2, density_kg_m3=sheet.density_kg_m3, sheet_wet_um=sheet.wet_um)
    as_laid = CoatView(
        key=coat.key,
        sheet=coat.sheet,
        label=label,
        sheen=sheet.sheen.value if sheet.sheen else "",
        clear_film=sheet.clear_film,
        laid_ms=coat.laid_ms,
        surface=None,
        milky=False,
        wet_um=wet_um,
        dry_um=wet_um * sheet.volume_solids / (1.0 + coat.thinned_pct / 100.0),
        solvent=sheet.kind is Kind.SOLVENTBORNE,
        recorded=coat,
    )
    if run is None:
        return as_laid
    forming = run.film.milky or run.reached_ms(Stage.DRY_TO_TOUCH) is None
    return replace(
        as_laid,
        surface=run.film.surface,
        milky=run.film.milky,
        water_g_m2=run.film.water_g_m2,
        film_C=run.film.film_C,
        covered=run.covered,
        stages=run.told.stages(),
        limit_C=sheet.mfft_C if forming else None,
        limit_humidity_pct=_limit_humidity_pct(sheet) if forming else None,
        unlogged_ms=run.unlogged_ms,
        film_trace=run.film_trace,
        doubt=run.doubt,
        unready=run.unready(),
        sealed_in_g_m2=run.film.sealed_in_g_m2,
        trapped_g_m2=run.film.trapped_g_m2,
        sealed_fluid=_sealed_fluid(run.film),
        soaked_g_m2=run.film.soaked_g_m2,
        blush_from_ms=run.after_ms(run.film.blush_from_s),
        blush_min=run.film.blush_s / 60.0,
    )


def _limit_humidity_pct(sheet: DataSheet) -> float | None:
    """Return the humidity that the room must stay below, %: for paint none, for a solvent-borne coat its sheet's."""
    water_borne = sheet.kind is Kind.WATERBORNE
    named = sheet.kind is Kind.SOLVENTBORNE and sheet.max_humidity_pct is not None
    return humidity_limit(sheet.max_humidity_pct).caution if water_borne or named else None
