"""What passes between the films of a stack: water that was sealed in goes up, and holds the film on top back.

A film that was not ready when the next was laid keeps its water until the one on top has lost its free water. Then it
leaves through both: by the clock of the film on top, with the thicknesses of all that is sealed in added to its own.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from studiowatch.coats.stages import Stage
from studiowatch.physics.ranges import Array, Mask

Hold = Mapping[Stage, Array]
"""Age before which a film on top cannot reach a stage, s per draw: infinite while a film below is not there."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Seal:
    """How a film lies under another, per draw.

    Attributes
    ----------
    mask : ndarray of bool
        The draws in which it was not ready when it was covered. In the others it goes on as before.
    rate_per_s : ndarray
        Rate at 23 °C at which what is sealed in leaves, 1/s.
    slowness : ndarray
        How much slower than in the sheet's own film of the coat on top.
    """

    mask: Mask
    rate_per_s: Array
    slowness: Array


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Seep:
    """What the sealed films give to the film on top in a step, or in steps one after another.

    Attributes
    ----------
    water_kg_m2 : ndarray, (draws,) or (steps, draws)
        Water sealed in as the step begins.
    polymer_kg_m2 : ndarray, (draws,)
        The polymer that keeps some of it.
    rate_per_s : ndarray
        As in `Seal`.
    """

    water_kg_m2: Array
    polymer_kg_m2: Array
    rate_per_s: Array
