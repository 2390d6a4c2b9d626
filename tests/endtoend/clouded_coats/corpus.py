"""All cases, by name."""

from __future__ import annotations

from . import crossed, early_and_damp, laid_and_left
from .case import Case


def clouded() -> list[Case]:
    """Return the coats that clouded, each with its cause."""
    return [
        *early_and_damp.sealed_in_water(),
        *early_and_damp.damp_air(),
        *early_and_damp.below_film_forming(),
        *early_and_damp.condensation(),
        *laid_and_left.skinned(),
        *laid_and_left.too_thick(),
        *laid_and_left.thinned(),
        *laid_and_left.matting(),
        *laid_and_left.touched(),
        *laid_and_left.still_clearing(),
        *laid_and_left.unknown(),
        *crossed.crossed(),
    ]


def clear() -> list[Case]:
    """Return the coats that came out clear."""
    return laid_and_left.clear()
