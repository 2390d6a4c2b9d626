"""The rack as the window sees it, as the watch judges it, and as the prompts tend it."""

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
from studiowatch.service.prompt_desk import Tended
from studiowatch.service.rack import Rack
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.service.snapshot import ArchivedView, CoatView, PieceView, SolventView
from studiowatch.speech.words import say
from studiowatch.studio.amounts import wet_um_of
from studiowatch.studio.concern import CoatAtRisk
from studiowatch.studio.labels import next_step, slack_days, suggested_mL
from studiowatch.studio.laying import may_cloud, not_yet
from studiowatch.studio.pieces import Coat, Finding, Piece
from studiowatch.studio.prompts import CoatToTend, FilmNow
from studiowatch.studio.rereading import read_every_ms
from studiowatch.studio.review_live import laying_risk
from studiowatch.studio.review_severity import unready_water_g_m2
from studiowatch.studio.review_views import Risk
from studiowatch.studio.words import Sentence

_WATER, _SOLVENT = "water", "solvent"


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
    next_ms = next_p10_ms = next_p90_ms = None
    if run is not None:
        goal = Stage.DRY_TO_RECOAT if following is not None else Stage.CURED
        next_ms, next_p10_ms, next_p90_ms = ready_ms(run, goal)
    top_label = None if run is None else labels[piece.coats.index(run.coat)]
    stop = None if run is None or top_label is None else _not_yet(run, top_label, now_ms)
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
        may_cloud=None if stop is not None else _may_cloud(rack, piece, following, following_label),
        would_seal_g_m2=0.0 if run is None else sealed_in_g_m2(run.film),
        would_seal_fluid=_WATER if run is None else _unready_fluid(run.film),
        solvents=_solvents(rack.shelf, piece),
        untested="" if run is None else _untested(rack, piece, run.coat),
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
    return None if run is None or run.risk is None or coat.outcome else run.risk.told(coat, rack.stacks.curves)


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


def solvent_layings_ms(rack: Rack) -> list[int]:
    """Return the UTC ms at which solvent-borne coats were laid, on pieces that have left the rack too."""
    sheets = rack.shelf.sheets
    return [
        coat.laid_ms
        for piece in rack.pieces.values()
        for coat in piece.coats
        if coat.laid_ms is not None and coat.sheet in sheets and sheets[coat.sheet].kind is Kind.SOLVENTBORNE
    ]


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


def _not_yet(run: CoatRun, label: str, now_ms: int) -> Sentence | None:
    told_ms, likely_ms, _ = ready_ms(run, Stage.DRY_TO_RECOAT)
    return not_yet(
        label=label,
        surface=run.film.surface,
        ready_ms=told_ms,
        likely_ms=likely_ms,
        now_ms=now_ms,
        when_text=lambda time_ms: when_text(time_ms, now_ms),
    )


def following_coat(piece: Piece) -> Coat | None:
    """Return the next coat planned, or None."""
    return next((coat for coat in piece.coats if coat.laid_ms is None), None)


def ready_ms(run: CoatRun, stage: Stage) -> tuple[int | None, int | None, int | None]:
    """Return when a coat is ready, UTC ms: what to tell her, and the likely range.

    What she is told is the upper bound: the next coat may go on when nine draws in ten are ready.
    """
    time = next((time for time in run.stage_times() if time.stage is stage), None)
    if time is None:
        return None, None, None
    if time.reached:
        return time.time_ms, None, None
    return time.p90_ms, time.p10_ms, time.p90_ms


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
        stages=run.stage_times(),
        limit_C=sheet.mfft_C if forming else None,
        limit_humidity_pct=_limit_humidity_pct(sheet) if forming else None,
        unlogged_ms=run.unlogged_ms,
        film_trace=run.film_trace,
        doubt=run.doubt,
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
    clear = run.ahead.get(Stage.CLEAR) if run.sheet.kind is Kind.WATERBORNE else None  # else it was never milky
    coat = CoatToTend(
        coat_key=run.coat.key,
        laid_ms=run.laid_ms,
        clear_film=run.sheet.clear_film,
        solvent=run.sheet.kind is Kind.SOLVENTBORNE,
        is_covered=run.coat.covered_from_ms is not None,
        is_seen_clear=any(look.finding is Finding.CLEAR for look in run.coat.looks) or run.coat.outcome is not None,
        clear_ms=None if clear is None else run.after_ms(clear.nominal_s),
        recoat_ms=ready_ms(run, Stage.DRY_TO_RECOAT)[0],
        following=None if following is None else rack.stacks.labels(piece)[piece.coats.index(following)],
        following_mL=None if sheet is None else suggested_mL(piece.area_m2, sheet.wet_um),
        following_solvent=sheet is not None and sheet.kind is Kind.SOLVENTBORNE,
        film=_film_now(run),
        untested=_untested_below(rack, piece, run.coat),
        vapour_near=vapour_in_room(rack, but=piece.key),
    )
    return Tended(coat=coat, piece_key=piece.key, piece_title=piece.title)


def _film_now(run: CoatRun) -> FilmNow:
    return FilmNow(
        is_set=run.reached_ms(Stage.SET_TO_TOUCH) is not None,
        is_tack_free=run.reached_ms(Stage.TACK_FREE) is not None,
        is_dry=run.reached_ms(Stage.DRY_TO_TOUCH) is not None,
    )


def _untested(rack: Rack, piece: Piece, coat: Coat) -> str:
    """Return the label of `coat` if it is a clear one that was neither tested nor looked at, or ""."""
    is_clear = rack.shelf.stand_in(coat.sheet).clear_film
    is_known = bool(coat.looks) or coat.outcome is not None
    return "" if is_known or not is_clear else rack.stacks.labels(piece)[piece.coats.index(coat)]


def _untested_below(rack: Rack, piece: Piece, coat: Coat) -> str:
    at = piece.coats.index(coat)
    return _untested(rack, piece, piece.coats[at - 1]) if at > 0 else ""


def vapour_in_room(rack: Rack, *, but: str = "") -> str:
    """Return in words the coat, on another piece than that of the key `but`, that gives off solvent still, or ""."""
    for piece in rack.on_rack():
        run = rack.stacks.top(piece)
        if run is not None and piece.key != but and _gives_off_vapour(run):
            label = rack.stacks.labels(piece)[piece.coats.index(run.coat)]
            return say("{coat} on {title}", coat=label, title=piece.title)
    return ""


def _gives_off_vapour(run: CoatRun) -> bool:
    return run.sheet.kind is Kind.SOLVENTBORNE and not run.recoat_told
