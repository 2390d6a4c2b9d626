"""Correcting a coat: what stands in the records as the form shows it, and what she typed as a command."""

from __future__ import annotations

from dataclasses import dataclass, field
from enum import StrEnum

from studiowatch.service.bench import AMOUNT, THINNED_pct
from studiowatch.service.correction_commands import CorrectCoat
from studiowatch.speech.units import Thickness, Volume, chosen
from studiowatch.speech.words import mark, say
from studiowatch.studio.pieces import Coat
from studiowatch.ui.models.forms import FormError, number
from studiowatch.ui.models.measures import FILMS_UM, GRAMS, VOLUMES_ML, Unit, measured, shown_in


class Measure(StrEnum):
    """How the amount of a coat is known; the value, said, is its word."""

    SHEET = mark("as the sheet says")
    ML = "mL"
    FLUID_OUNCES = "fl oz"  # not said
    GRAMS = "g"
    UM = mark("µm wet")
    MILS = mark("mil wet")


VOLUMES = {Volume.MILLILITRES: Measure.ML, Volume.FLUID_OUNCES: Measure.FLUID_OUNCES}
FILMS = {Thickness.MICROMETRES: Measure.UM, Thickness.MILS: Measure.MILS}
_AMOUNTS = (0.1, AMOUNT["mL"][1])  # mL or g
_FILM_UM = AMOUNT["µm"]
_DIGITS = 4  # of an amount that is shown in another unit than it is stored in


def offered_measures() -> tuple[Measure, ...]:
    """Return how an amount may be given, in the units that she chose."""
    return (Measure.SHEET, VOLUMES[chosen().volume], Measure.GRAMS, FILMS[chosen().thickness])


@dataclass(frozen=True, slots=True, kw_only=True)
class CoatTyped:
    """What stands in the form, as typed; times in UTC ms, `covered_ms` is None for a coat without a cover.

    `kept` is the stored amount behind what is shown: mL, g or µm.
    """

    sheet: str
    laid_ms: int
    measure: Measure
    amount: str
    thinned: str
    covered_ms: int | None
    kept: float | None = field(default=None, compare=False)


def shown_of(coat: Coat) -> CoatTyped:
    """Return what the form shows of a laid coat."""
    measure, amount = _measured(coat)
    return CoatTyped(
        sheet=coat.sheet,
        laid_ms=coat.laid_ms or 0,
        measure=measure,
        amount="" if amount is None else shown_in(amount, _unit(measure), _DIGITS),
        thinned=chosen().plain(coat.thinned_pct),
        covered_ms=coat.covered_from_ms,
        kept=amount,
    )


def _measured(coat: Coat) -> tuple[Measure, float | None]:
    if coat.volume_mL is not None:
        return VOLUMES[chosen().volume], coat.volume_mL
    if coat.grams is not None:
        return Measure.GRAMS, coat.grams
    return (Measure.SHEET, None) if coat.wet_um is None else (FILMS[chosen().thickness], coat.wet_um)


def _unit(measure: Measure) -> Unit:
    """Return the unit of a measure, by mL, g or µm."""
    if measure is VOLUMES[chosen().volume]:
        return Unit(sign=measure.value, size=chosen().volume.mL)
    if measure is FILMS[chosen().thickness]:
        return Unit(sign=say(measure.value), size=chosen().thickness.um)
    return Unit(sign=say(measure.value), size=1.0)


def read_correction(typed: CoatTyped, coat_key: str, now_ms: int, shown: CoatTyped | None = None) -> CorrectCoat:
    """Return the command to correct a coat; an amount that stands as it was `shown` stays what is stored.

    Raises
    ------
    FormError
        If a field cannot be taken.
    """
    if typed.laid_ms > now_ms:
        raise FormError("laid", say("The brush went down in the future: choose a time that has passed."))
    if typed.covered_ms is not None and not typed.laid_ms <= typed.covered_ms <= now_ms:
        raise FormError(
            "covered", say("The cover was set before the coat was laid, or in the future: correct its time.")
        )
    amount = shown.kept if shown is not None and _is_as_shown(typed, shown) else _amount(typed)
    return CorrectCoat(
        coat_key=coat_key,
        sheet=typed.sheet,
        laid_ms=typed.laid_ms,
        volume_mL=amount if typed.measure in VOLUMES.values() else None,
        grams=amount if typed.measure is Measure.GRAMS else None,
        wet_um=amount if typed.measure in FILMS.values() else None,
        thinned_pct=number(
            typed.thinned or "0",
            field="thinned",
            name=say("What it was thinned by"),
            unit=say("% of the volume"),
            low=THINNED_pct[0],
            high=THINNED_pct[1],
            example="5",
        ),
        covered_ms=typed.covered_ms,
    )


def _amount(typed: CoatTyped) -> float | None:
    if typed.measure is Measure.SHEET:
        return None
    is_film = typed.measure in FILMS.values()
    low, high = _FILM_UM if is_film else _AMOUNTS
    return measured(
        typed.amount,
        field="amount",
        name=say("The amount"),
        known=FILMS_UM if is_film else GRAMS if typed.measure is Measure.GRAMS else VOLUMES_ML,
        ours=_unit(typed.measure),
        low=low,
        high=high,
        example=54.0,
    )


def _is_as_shown(typed: CoatTyped, shown: CoatTyped) -> bool:
    return (typed.measure, typed.amount.strip()) == (shown.measure, shown.amount)
