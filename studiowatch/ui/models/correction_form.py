"""Correcting a coat: what stands in the records as the form shows it, and what she typed as a command."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from studiowatch.service.correction_commands import CorrectCoat
from studiowatch.studio.pieces import Coat
from studiowatch.ui.models.forms import FormError, number

THINNED_MOST_PCT = 60.0


class Measure(StrEnum):
    """How the amount of a coat is known."""

    SHEET = "as the sheet says"
    ML = "mL"
    GRAMS = "g"
    UM = "µm wet"


_RANGES = {Measure.ML: (0.1, 20_000.0), Measure.GRAMS: (0.1, 20_000.0), Measure.UM: (5.0, 5_000.0)}


@dataclass(frozen=True, slots=True, kw_only=True)
class CoatTyped:
    """What stands in the form, as typed; times in UTC ms, `covered_ms` is None for a coat without a cover."""

    sheet: str
    laid_ms: int
    measure: Measure
    amount: str
    thinned: str
    covered_ms: int | None


def shown_of(coat: Coat) -> CoatTyped:
    """Return what the form shows of a laid coat."""
    measure, amount = _measured(coat)
    return CoatTyped(
        sheet=coat.sheet,
        laid_ms=coat.laid_ms or 0,
        measure=measure,
        amount="" if amount is None else f"{amount:g}",
        thinned=f"{coat.thinned_pct:g}",
        covered_ms=coat.covered_from_ms,
    )


def _measured(coat: Coat) -> tuple[Measure, float | None]:
    if coat.volume_mL is not None:
        return Measure.ML, coat.volume_mL
    if coat.grams is not None:
        return Measure.GRAMS, coat.grams
    return (Measure.SHEET, None) if coat.wet_um is None else (Measure.UM, coat.wet_um)


def read_correction(typed: CoatTyped, coat_key: str, now_ms: int) -> CorrectCoat:
    """Return the command to correct a coat.

    Raises
    ------
    FormError
        If a field cannot be taken.
    """
    if typed.laid_ms > now_ms:
        raise FormError("laid", "The brush went down in the future: choose a time that has passed.")
    if typed.covered_ms is not None and not typed.laid_ms <= typed.covered_ms <= now_ms:
        raise FormError("covered", "The cover was set before the coat was laid, or in the future: correct its time.")
    amount = _amount(typed)
    return CorrectCoat(
        coat_key=coat_key,
        sheet=typed.sheet,
        laid_ms=typed.laid_ms,
        volume_mL=amount if typed.measure is Measure.ML else None,
        grams=amount if typed.measure is Measure.GRAMS else None,
        wet_um=amount if typed.measure is Measure.UM else None,
        thinned_pct=number(
            typed.thinned or "0",
            field="thinned",
            name="What it was thinned by",
            unit="% of the volume",
            low=0,
            high=THINNED_MOST_PCT,
            example="5",
        ),
        covered_ms=typed.covered_ms,
    )


def _amount(typed: CoatTyped) -> float | None:
    if typed.measure is Measure.SHEET:
        return None
    low, high = _RANGES[typed.measure]
    return number(
        typed.amount, field="amount", name="The amount", unit=typed.measure.value, low=low, high=high, example="54"
    )
