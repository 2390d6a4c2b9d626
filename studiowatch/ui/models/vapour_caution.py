"""The vapour of a solvent-borne coat, told before the tin is opened: to ventilate first, then an estimate."""

from __future__ import annotations

from studiowatch.coats.remarks import SHUT_CHANGES_PER_H, SMALL_ROOM_M3
from studiowatch.coats.solvent import WHITE_SPIRIT
from studiowatch.coats.vapour import TEMPERATURE_C, VENTILATE, vapour_build_up
from studiowatch.physics.constants import REFERENCE_TEMPERATURE_C
from studiowatch.service.piece_view import PieceView, SolventView
from studiowatch.service.product_views import SheetChoice
from studiowatch.speech.units import chosen
from studiowatch.speech.words import say
from studiowatch.ui.models.coat_form import Amounts

_G_PER_ML = 1e-3 * WHITE_SPIRIT.density_kg_m3


def vapour_cautions(
    piece: PieceView, sheet: SheetChoice, amounts: Amounts, room_C: float | None = None
) -> tuple[str, ...]:
    """Return the cautions for the vapour of a coat, to ventilate first; none for one that is not solvent-borne.

    Parameters
    ----------
    amounts : Amounts
        What she typed; what cannot be read counts as the sheet's own.
    room_C : float, optional
        Air temperature, °C; at a usual one if it is not measured.
    """
    if not sheet.solvent:
        return ()
    solvent = next((one for one in piece.solvents if one.sheet == sheet.name), None)
    if solvent is None:
        return (say(VENTILATE),)
    solvent_g = _solvent_g(solvent, amounts)
    low_C, high_C = TEMPERATURE_C
    shut = vapour_build_up(
        solvent_g=solvent_g,
        over_h=solvent.over_h,
        room_m3=SMALL_ROOM_M3,
        changes_per_h=SHUT_CHANGES_PER_H,
        temperature_C=REFERENCE_TEMPERATURE_C if room_C is None else min(max(room_C, low_C), high_C),
    )
    first, *others = shut.sentences
    assumed = say(
        "{grams} g of solvent, assuming a room of {volume} m³ with its windows shut.",
        grams=chosen().number(solvent_g, 1),
        volume=chosen().plain(SMALL_ROOM_M3),
    )
    return first, " ".join((assumed, *others))


def _solvent_g(solvent: SolventView, amounts: Amounts) -> float:
    """Return the solvent of the amount typed, with the thinner that is part of it, g."""
    whole_g = amounts.usual_mL * _G_PER_ML  # if there were nothing solid in it
    solid_g = (whole_g - solvent.solvent_g) / (1.0 + amounts.thinned_pct / 100.0)
    return amounts.times * (whole_g - solid_g)
