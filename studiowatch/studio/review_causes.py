"""What clouds a coat: the causes by name, what each is measured in, and how each looks."""

from __future__ import annotations

from collections.abc import Mapping
from enum import StrEnum
from types import MappingProxyType

from studiowatch.speech.words import mark
from studiowatch.studio.pieces import Outcome


class Cause(StrEnum):
    """Causes of a clouded coat; the values are fixed names that other programs read."""

    SEALED_IN_WATER = "sealed-in-water"
    DAMP_AIR = "damp-air"
    BELOW_MFFT = "below-mfft"
    CONDENSATION = "condensation"
    SKINNED = "skinned"
    TOO_THICK = "too-thick"
    THINNED = "thinned"
    MATTING_BUILD_UP = "matting-build-up"
    TOUCHED = "touched"
    STILL_CLEARING = "still-clearing"
    UNKNOWN = "unknown"


TITLES: Mapping[Cause, str] = MappingProxyType(
    {
        Cause.SEALED_IN_WATER: mark("Laid over a coat still holding water"),
        Cause.DAMP_AIR: mark("Air too damp while it dried"),
        Cause.BELOW_MFFT: mark("Film too cool to knit together"),
        Cause.CONDENSATION: mark("Water settled on the film"),
        Cause.SKINNED: mark("Dried too fast on top"),
        Cause.TOO_THICK: mark("Coat laid too thick"),
        Cause.THINNED: mark("Thinned too far"),
        Cause.MATTING_BUILD_UP: mark("Matting agent built up"),
        Cause.TOUCHED: mark("Touched or covered while wet"),
        Cause.STILL_CLEARING: mark("Still clearing, as a fresh coat does"),
        Cause.UNKNOWN: mark("Nothing in the records explains it"),
    }
)
"""What each cause is called for people, in English: said where it is shown."""

WITHIN: Mapping[Cause, str] = MappingProxyType(
    {
        Cause.SEALED_IN_WATER: mark("laid over a coat still holding water"),
        Cause.DAMP_AIR: mark("air too damp while it dried"),
        Cause.BELOW_MFFT: mark("film too cool to knit together"),
        Cause.CONDENSATION: mark("water settled on the film"),
        Cause.SKINNED: mark("dried too fast on top"),
        Cause.TOO_THICK: mark("coat laid too thick"),
        Cause.THINNED: mark("thinned too far"),
        Cause.MATTING_BUILD_UP: mark("matting agent built up"),
        Cause.TOUCHED: mark("touched or covered while wet"),
        Cause.STILL_CLEARING: mark("still clearing, as a fresh coat does"),
        Cause.UNKNOWN: mark("nothing in the records explains it"),
    }
)
"""The same within a sentence, after a colon."""

UNITS: Mapping[Cause, str] = MappingProxyType(
    {
        Cause.SEALED_IN_WATER: "g/m2",
        Cause.DAMP_AIR: "h",
        Cause.BELOW_MFFT: "min",
        Cause.CONDENSATION: "min",
        Cause.SKINNED: mark("times the sheet's pace"),
        Cause.TOO_THICK: mark("times the sheet's film"),
        Cause.THINNED: "%",
        Cause.MATTING_BUILD_UP: mark("coats"),
        Cause.TOUCHED: mark("of the wait"),
        Cause.STILL_CLEARING: mark("times its age"),
        Cause.UNKNOWN: "",
    }
)
"""The unit of each cause's severity, in English: said where it is shown; what it measures stands at its severity."""

MEASURED = tuple(cause for cause in Cause if cause is not Cause.UNKNOWN)
"""The causes that have a severity, in the order of every array of severities."""

# How each cause looks: our judgement from what painters tell; no published table is known to us.
_LOOKS = (
    Outcome.MILKY_ALL_OVER,
    Outcome.MILKY_IN_PATCHES,
    Outcome.DULL_IN_DARKS,
    Outcome.POWDERY,
    Outcome.SPECKS,
)
_TABLE: Mapping[Cause, tuple[float, ...]] = MappingProxyType(  # chance of each look, 0-1; judgement, a row sums to 1
    {
        Cause.SEALED_IN_WATER: (0.40, 0.47, 0.08, 0.02, 0.03),
        Cause.DAMP_AIR: (0.62, 0.20, 0.12, 0.03, 0.03),
        Cause.BELOW_MFFT: (0.25, 0.12, 0.08, 0.53, 0.02),
        Cause.CONDENSATION: (0.42, 0.38, 0.10, 0.03, 0.07),
        Cause.SKINNED: (0.33, 0.40, 0.12, 0.08, 0.07),
        Cause.TOO_THICK: (0.45, 0.40, 0.10, 0.02, 0.03),
        Cause.THINNED: (0.30, 0.18, 0.25, 0.22, 0.05),
        Cause.MATTING_BUILD_UP: (0.15, 0.06, 0.75, 0.02, 0.02),
        Cause.TOUCHED: (0.04, 0.60, 0.04, 0.02, 0.30),
        Cause.STILL_CLEARING: (0.70, 0.24, 0.03, 0.01, 0.02),
        Cause.UNKNOWN: (0.22, 0.22, 0.16, 0.12, 0.28),
    }
)


def fit(cause: Cause, outcome: Outcome | None) -> float:
    """Return how likely a coat clouded by `cause` looks as it was recorded, 0-1; 1 where nothing was recorded."""
    return 1.0 if outcome not in _LOOKS else _TABLE[cause][_LOOKS.index(outcome)]
