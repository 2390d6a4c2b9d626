"""How much of a coat, in the unit that she measures in; inside everything is mL, g and µm."""

from __future__ import annotations

from collections.abc import Mapping
from enum import StrEnum

from studiowatch.speech.units import FLUID_OUNCE_ML, chosen
from studiowatch.speech.words import say
from studiowatch.ui.models import measures
from studiowatch.ui.models.measures import film_unit, measured, shown_in, written_unit

_WHOLE_FROM = 10.0  # mL or g, from which on a measuring cup is not read to a tenth
_PLAIN_DIGITS = 3  # of what was recorded in another unit
_TURN_DIGITS = 6  # so that what she typed in her unit stands there again as she typed it


class Unit(StrEnum):
    """How the amount is measured."""

    ML = "mL"
    FLUID_OUNCES = "fl oz"  # not said
    GRAMS = "g"

    @property
    def size(self) -> float:
        """How many mL it is, or how many g."""
        return FLUID_OUNCE_ML if self is Unit.FLUID_OUNCES else 1.0

    @property
    def known(self) -> Mapping[str, float]:
        """The units that may be written instead."""
        return measures.GRAMS if self is Unit.GRAMS else measures.VOLUMES_ML


def volume_unit() -> Unit:
    """Return the unit in which she pours."""
    return Unit(chosen().volume.value)


def offered_units() -> tuple[Unit, Unit]:
    """Return what an amount may be measured in: a volume first, then by weight."""
    return volume_unit(), Unit.GRAMS


def amount_words(amount: float, unit: Unit = Unit.ML) -> str:
    """Return an amount in `unit` as one would measure it: of mL and g whole from 10 on, one decimal below."""
    places = 0 if amount * unit.size >= _WHOLE_FROM else 1
    return chosen().number(amount, places if unit is not Unit.FLUID_OUNCES else places + chosen().volume.more_places)


def poured_words(volume_mL: float) -> str:
    """Return a volume in her unit as one would measure it, "54 mL"."""
    unit = volume_unit()
    return f"{amount_words(volume_mL / unit.size, unit)} {unit}"


def weighed_words(grams: float) -> str:
    """Return a weight as one would weigh it, "56 g"."""
    return f"{amount_words(grams, Unit.GRAMS)} {Unit.GRAMS}"


def measured_words(amount: float, unit: Unit) -> str:
    """Return an amount, mL or g, as it is measured in `unit`."""
    return f"{amount_words(amount / unit.size, unit)} {unit}"


def plain_words(amount: float, unit: Unit) -> str:
    """Return an amount, mL or g, that was recorded, in `unit`."""
    return f"{shown_in(amount, measures.Unit(sign=unit.value, size=unit.size), _PLAIN_DIGITS)} {unit}"


def turn_text(amount: float, unit: Unit) -> str:
    """Return an amount, mL or g, as it is filled in again for `unit`."""
    return shown_in(amount, measures.Unit(sign=unit.value, size=unit.size), _TURN_DIGITS)


def plain_film(wet_um: float) -> str:
    """Return a film that was recorded, "90 µm", "3.54 mil"."""
    unit = film_unit()
    return f"{shown_in(wet_um, unit, _PLAIN_DIGITS)} {unit.sign}"


def read_amount(text: str, unit: Unit, most: float) -> float | None:
    """Return what was typed, mL or g up to `most`, or None if it is empty. Raises FormError."""
    if not text.strip():
        return None
    return measured(
        text,
        field="amount",
        name=say("The amount"),
        known=unit.known,
        ours=measures.Unit(sign=unit.value, size=unit.size),
        low=0.1,
        high=most,
        example=54.0,
    )


def with_unit(text: str, unit: Unit) -> str:
    """Return what she typed with its unit: that which she wrote, else `unit`."""
    bare, found = written_unit(text, unit.known, measures.Unit(sign=unit.value, size=unit.size))
    return f"{bare.strip()} {found.sign}"
