"""Laying a coat: how much to pour, what it makes, what to see to first, and the command."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from studiowatch.service.bench import AMOUNT, THINNED_pct
from studiowatch.service.commands import LayCoat
from studiowatch.service.piece_view import CoatView, PieceView
from studiowatch.service.product_views import SheetChoice
from studiowatch.speech.units import chosen
from studiowatch.speech.words import mark, say
from studiowatch.studio.hazards import own_cautions
from studiowatch.studio.pouring import ALLOWANCE_PCT, VERY_THICK, Pour, laid_of, pours, thickness, thinning
from studiowatch.ui.models.amounts import (
    Unit,
    amount_words,
    measured_words,
    plain_words,
    poured_words,
    read_amount,
    volume_unit,
    weighed_words,
)
from studiowatch.ui.models.forms import FormError, number
from studiowatch.ui.models.tones import LEVEL_TONES, Tone

GREATEST_AMOUNT = AMOUNT["mL"][1]  # mL or g
_LETTERS_ON_BUTTON = 28
_G_PER_ML_PER_KG_M3 = 1e-3


@dataclass(frozen=True, slots=True, kw_only=True)
class Amounts:
    """What she typed so far, as far as it can be read.

    Attributes
    ----------
    usual_mL : float
        What makes the sheet's wet thickness on the piece, mL.
    times : float
        How many times as much goes on.
    thinned_pct : float
        Water or thinner added, % of the volume.
    """

    usual_mL: float
    times: float = 1.0
    thinned_pct: float = 0.0


@dataclass(frozen=True, slots=True, kw_only=True)
class SheetOption:
    """One line of the list of sheets; `coat_key` names the planned coat it would lay, or None for an added one."""

    words: str
    name: str
    sheet: SheetChoice
    coat_key: str | None


@dataclass(frozen=True, slots=True, kw_only=True)
class Thickness:
    """What the amount makes on this piece."""

    words: str
    tone: Tone


def sheet_options(piece: PieceView, sheets: Sequence[SheetChoice]) -> tuple[SheetOption, ...]:
    """Return the planned next coat first, then every sheet as an added coat."""
    by_name = {sheet.name: sheet for sheet in sheets}
    planned = next((coat for coat in piece.coats if coat.laid_ms is None and coat.sheet in by_name), None)
    added = [SheetOption(words=sheet.title, name=sheet.title, sheet=sheet, coat_key=None) for sheet in sheets]
    if planned is None:
        return tuple(added)
    return (_planned_option(planned, by_name[planned.sheet]), *added)


def _planned_option(coat: CoatView, sheet: SheetChoice) -> SheetOption:
    words = say("{coat}, planned · {sheet}", coat=coat.label, sheet=sheet.title)
    return SheetOption(words=words, name=coat.label, sheet=sheet, coat_key=coat.key)


def suggested_amount(piece: PieceView, sheet: SheetChoice, unit: Unit) -> float:
    """Return how much in `unit` makes the sheet's wet thickness: 1 µm on 1 m² is 1 mL."""
    return _usual(piece, sheet, unit) / unit.size


def _usual(piece: PieceView, sheet: SheetChoice, unit: Unit) -> float:
    """Return the mL, or for grams the g, that make the sheet's wet thickness."""
    volume_mL = piece.area_m2 * sheet.wet_um
    return volume_mL * sheet.density_kg_m3 * _G_PER_ML_PER_KG_M3 if unit is Unit.GRAMS else volume_mL


def pours_for(piece: PieceView, sheet: SheetChoice, allowance_pct: float = 0.0) -> tuple[Pour, ...]:
    """Return what to pour for each panel of a piece."""
    return pours(
        [piece.area_m2 / piece.panels] * piece.panels,
        wet_um=sheet.wet_um,
        density_kg_m3=sheet.density_kg_m3,
        allowance_pct=allowance_pct,
    )


def suggestion_words(piece: PieceView, sheet: SheetChoice, allowance_pct: float = 0.0) -> str:
    """Return how much to pour by volume and by weight, panel by panel, and why."""
    made = pours_for(piece, sheet, allowance_pct)
    one, set_of, one_more, set_more = _SUGGESTIONS
    is_one = len(made) == 1
    values = {
        "whole": _both(sum(each.poured_mL for each in made), sum(each.poured_g for each in made)),
        "thickness": chosen().film(sheet.wet_um),
        "area": chosen().number(piece.area_m2, 2),
    }
    if not is_one:
        values |= {"each": _both(made[0].poured_mL, made[0].poured_g), "panels": str(len(made))}
    if not allowance_pct:
        return say(one if is_one else set_of, **values)
    return say(one_more if is_one else set_more, **values, share=chosen().plain(allowance_pct))


_SUGGESTIONS = (
    mark("{whole} makes the sheet's {thickness} on {area} m²"),
    mark("{each} on each of {panels} panels, {whole} in all, makes the sheet's {thickness} on {area} m²"),
    mark("{whole} makes the sheet's {thickness} on {area} m², with {share} % for brush and cup"),
    mark(
        "{each} on each of {panels} panels, {whole} in all, makes the sheet's {thickness} on {area} m², "
        "with {share} % for brush and cup"
    ),
)


def _both(volume_mL: float, grams: float) -> str:
    return say("{volume} or {weight}", volume=poured_words(volume_mL), weight=weighed_words(grams))


def thinning_of(sheet: SheetChoice, text: str) -> Thickness:
    """Return what is to be said of the share that is typed; nothing while it cannot be read."""
    try:
        thinned_pct = _thinned(text, sheet)
    except FormError:
        return Thickness(words="", tone=Tone.MUTED)
    verdict = thinning(thinned_pct, thinner=thinner_words(sheet))
    return Thickness(words=verdict.words, tone=LEVEL_TONES[verdict.level])


def thinner_words(sheet: SheetChoice) -> str:
    """Return what the product is thinned with."""
    return say("thinner") if sheet.solvent else say("water")


def amounts_of(piece: PieceView, sheet: SheetChoice, unit: Unit, amount: str, thinned: str) -> Amounts:
    """Return what is typed in the form; what cannot be read yet counts as the sheet's own amount, not thinned."""
    usual = _usual(piece, sheet, unit)
    try:
        measured, thinned_pct = _amount(amount, unit), _thinned(thinned, sheet)
    except FormError:
        measured, thinned_pct = None, 0.0
    return Amounts(
        usual_mL=_usual(piece, sheet, Unit.ML),
        times=1.0 if measured is None else measured / usual,
        thinned_pct=thinned_pct,
    )


def weighing_words(sheet: SheetChoice, pieces: Sequence[PieceView]) -> str:
    """Return what weighing the bottle would narrow, by a coat of `sheet` whose amount was not measured, or ""."""
    coats = (coat for piece in pieces for coat in piece.coats if coat.sheet == sheet.name)
    return next((coat.weighing for coat in coats if coat.weighing), "")


def thickness_of(piece: PieceView, sheet: SheetChoice, unit: Unit, text: str, allowance_pct: float = 0.0) -> Thickness:
    """Return what the typed amount makes; nothing while it cannot be read, for that is told when it is recorded."""
    try:
        amount = _amount(text, unit)
    except FormError:
        return Thickness(words="", tone=Tone.MUTED)
    if amount is None:
        return Thickness(words=say("Left empty: recorded as thick as the sheet says."), tone=Tone.MUTED)
    on_it = laid_of(amount, allowance_pct)
    laid_mL = on_it if unit is not Unit.GRAMS else on_it / (sheet.density_kg_m3 * _G_PER_ML_PER_KG_M3)
    verdict = thickness(laid_mL=laid_mL, area_m2=piece.area_m2, sheet_wet_um=sheet.wet_um)
    words = verdict.words
    if allowance_pct:
        words = say("{amount} on the piece: {verdict}", amount=measured_words(on_it, unit), verdict=words)
    return Thickness(words=words, tone=LEVEL_TONES[verdict.level])


def amount_doubt(piece: PieceView, sheet: SheetChoice, command: LayCoat) -> str:
    """Return what to ask once more before so thick a coat is recorded, or ""."""
    unit = volume_unit() if command.grams is None else Unit.GRAMS
    amount = command.volume_mL if command.grams is None else command.grams
    usual = _usual(piece, sheet, unit)
    if amount is None or amount <= VERY_THICK * usual:
        return ""
    return say(
        "{amount} is {times} times the sheet's film; did you mean {usual}? Press again if it is so much.",
        amount=plain_words(amount, unit),
        times=amount_words(amount / usual),
        usual=amount_words(usual / unit.size, unit),
    )


def _amount(text: str, unit: Unit) -> float | None:
    return read_amount(text, unit, GREATEST_AMOUNT)


def _thinned(text: str, sheet: SheetChoice) -> float:
    return number(
        text or "0",
        field="thinned",
        name=say("The thinner added") if sheet.solvent else say("The water added"),
        unit="%",
        low=THINNED_pct[0],
        high=THINNED_pct[1],
        example="5",
    )


def short_title(title: str) -> str:
    """Return a title that fits a button."""
    return title if len(title) <= _LETTERS_ON_BUTTON else f"{title[: _LETTERS_ON_BUTTON - 1].rstrip(' ,')}…"


def cautions_of(sheet: SheetChoice) -> tuple[str, ...]:
    """Return what to heed before the brush goes down, the sheet's own cautions first; its vapour is told apart."""
    return own_cautions(solvent=sheet.solvent, sheet_cautions=sheet.cautions)


def read_allowance(text: str) -> float:
    """Return what is poured on top for brush and cup, %; nothing typed is none.

    Raises
    ------
    FormError
        If it cannot be read or is not allowed.
    """
    low, high = ALLOWANCE_PCT
    return number(
        text or "0",
        field="allowance",
        name=say("The share for brush and cup"),
        unit="%",
        low=low,
        high=high,
        example="10",
    )


def read_coat(
    *,
    piece: PieceView,
    option: SheetOption,
    unit: Unit,
    amount: str,
    thinned: str,
    laid_ms: int,
    now_ms: int,
    allowance: str = "",
) -> LayCoat:
    """Return the command to lay a coat: of what was poured, what lies on the piece.

    Raises
    ------
    FormError
        If a field cannot be taken.
    """
    measured = _amount(amount, unit)
    allowance_pct = read_allowance(allowance)
    if measured is not None and allowance_pct:
        measured = laid_of(measured, allowance_pct)
    thinned_pct = _thinned(thinned, option.sheet)
    if laid_ms > now_ms:
        raise FormError("laid", say("The brush went down in the future: choose a time that has passed, or now."))
    return LayCoat(
        piece_key=piece.key,
        laid_ms=laid_ms,
        sheet=option.sheet.name,
        coat_key=option.coat_key,
        volume_mL=measured if unit is not Unit.GRAMS else None,
        grams=measured if unit is Unit.GRAMS else None,
        thinned_pct=thinned_pct,
    )
