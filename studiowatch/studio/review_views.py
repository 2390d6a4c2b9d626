"""A review as it is shown, printed and told: values only, frozen, handed over whole."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

import numpy as np
from numpy.typing import NDArray

from studiowatch.physics.ranges import Array
from studiowatch.speech.words import mark, say
from studiowatch.studio.pieces import Outcome
from studiowatch.studio.review_causes import Cause

LIKELY = 0.5  # chance from which "cloudy: likely" is said; judgement
UNLIKELY = 0.25  # chance under which "cloudy: unlikely" is said; judgement


def verdict(chance: float) -> str:
    """Return a chance of clouding, 0-1, in words: likely, unlikely, or neither."""
    if chance >= LIKELY:
        return say("cloudy: likely")
    return say("cloudy: unlikely") if chance < UNLIKELY else say("cloudy: perhaps")


@dataclass(frozen=True, slots=True, kw_only=True)
class FoundCause:
    """One cause, weighed.

    Attributes
    ----------
    share : float
        Its share of the explanation, 0-1; those of all causes sum to 1.
    severity : float or None
        Of the nominal run, in `unit`; None for what has none: "unknown".
    evidence : tuple of str
        Sentences with figures and times, the first the strongest; never empty.
    often : str
        How often it comes first among her clouded coats, as "first in 2 of 3 clouded coats here", or "".
    basis : str
        Where its curve comes from.
    """

    cause: Cause
    title: str
    share: float
    severity: float | None
    unit: str
    evidence: tuple[str, ...]
    often: str = ""
    basis: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Figures:
    """What a coat met, for the table of what would have changed it. None is "not known", or "nothing below".

    Attributes
    ----------
    below_age_ms : int or None
        Age of the coat below when it was laid, ms.
    temperature_C, humidity_pct, air_speed_m_s : float or None
        Mean air while it was wet.
    sealed_in_g_m2 : float
        Water sealed in below, g/m², nominal.
    """

    below_age_ms: int | None
    temperature_C: float | None
    humidity_pct: float | None
    air_speed_m_s: float | None
    sealed_in_g_m2: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Change:
    """One thing that would have changed it: the words for it, the chance of clouding then, 0-1, and what it met."""

    change: str
    chance: float
    figures: Figures


@dataclass(frozen=True, slots=True, kw_only=True)
class Remedy:
    """What to do about one cause, least invasive first.

    Attributes
    ----------
    steps : tuple of str
        One sentence each, in the order in which they are tried: with waiting times, what to look for, when to stop.
    cautions : tuple of str
        What belongs to the steps and can hurt; to be shown in the colour of warnings, never left out.
    """

    cause: Cause
    steps: tuple[str, ...]
    cautions: tuple[str, ...]


class Phase(StrEnum):
    """A stretch of the coat's time, as it is shaded."""

    WET = "wet"
    CLOSING = "closing and hardening"  # not said

    @property
    def word(self) -> str:
        """What it is called in her language."""
        return say(_PHASES[self])


_PHASES = {Phase.WET: mark("wet"), Phase.CLOSING: mark("closing and hardening")}


@dataclass(frozen=True, slots=True, kw_only=True)
class Span:
    """A stretch of time, UTC ms, of one phase."""

    phase: Phase
    start_ms: int
    end_ms: int


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class FilmTrace:
    """One coat of the stack through the time that is shown.

    Attributes
    ----------
    label : str
        "isolation", "gloss 1".
    time_ms : (n,) int64
        UTC ms, rising.
    film_C, water_g_m2 : (n,) float64
        Its temperature, °C, and the water (or solvent) in it, g/m², nominal.
    """

    label: str
    coat_key: str
    time_ms: NDArray[np.int64]
    film_C: Array
    water_g_m2: Array


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class RoomTrace:
    """The air at the coat. A stretch that nobody read holds NaN, so that a line breaks there.

    Attributes
    ----------
    time_ms : (n,) int64
        UTC ms, rising.
    temperature_C, dew_point_C, humidity_pct, air_speed_m_s : (n,) float64
        As the film model took it, °C, °C, %, m/s; air speed is NaN where it was not measured.
    """

    time_ms: NDArray[np.int64]
    temperature_C: Array
    dew_point_C: Array
    humidity_pct: Array
    air_speed_m_s: Array


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Review:
    """Why a coat clouded, or would: ranked causes with evidence, what would have changed it, what to do now.

    Attributes
    ----------
    coat_number : int
        Among the laid coats of the piece, from 1 at the lowest; paint counts.
    outcome, seen_ms
        As recorded, or None.
    headline : str
        One sentence that says what was found, with how sure.
    chance : float
        Chance that a coat like this comes out cloudy, 0-1, from the records but its outcome.
    causes : tuple of FoundCause
        All of them, the strongest first.
    as_it_was, changes
        The table: its first row, and those of what would have changed it, at most three, the best first.
    blind_spots : tuple of str
        What the records do not show, one sentence each.
    remedy, further : Remedy
        What to do now for the first cause, and for the others of weight, in their order.
    room, films : RoomTrace, tuple of FilmTrace
        What is drawn, from before the coat below, or this one, was laid; `films` lowest first, this coat last.
    spans : tuple of Span
        When it was wet, and when it closed and hardened.
    limit_C, limit_humidity_pct : float or None
        The least film temperature, °C, and the humidity above which damp air is told of, %.
    sealed_in_g_m2 : float
        Drawn at `laid_ms`; 0 if nothing was.
    learnt_from : int
        How many coats with a recorded outcome the curves have learnt from.
    """

    piece_key: str
    piece_title: str
    coat_key: str
    coat_number: int
    coat_label: str
    laid_ms: int
    outcome: Outcome | None
    seen_ms: int | None
    headline: str
    chance: float
    causes: tuple[FoundCause, ...]
    as_it_was: Figures
    changes: tuple[Change, ...]
    blind_spots: tuple[str, ...]
    remedy: Remedy
    further: tuple[Remedy, ...]
    room: RoomTrace
    films: tuple[FilmTrace, ...]
    spans: tuple[Span, ...]
    limit_C: float | None
    limit_humidity_pct: float | None
    sealed_in_g_m2: float
    learnt_from: int = 0


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class OtherCoat:
    """Another coat of hers, to be seen beside the one that is reviewed.

    Attributes
    ----------
    hours : (n,) float64
        Since it was laid, rising.
    temperature_C, humidity_pct : (n,) float64
        The room then, °C and %; NaN where it was not read.
    """

    words: str
    clouded: bool
    hours: Array
    temperature_C: Array
    humidity_pct: Array


@dataclass(frozen=True, slots=True, kw_only=True)
class ReliabilityBin:
    """Of the coats that were given about this chance of clouding, how many clouded.

    Attributes
    ----------
    low, high : float
        The chances that it takes in, 0-1.
    told : float
        Mean chance told, 0-1.
    came_true : float
        Share that clouded, 0-1, with the ends of its 90 % interval, `least` and `most`.
    coats : int
        How many coats.
    """

    low: float
    high: float
    told: float
    came_true: float
    least: float
    most: float
    coats: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Reliability:
    """How often "30 %" came true: each coat judged by curves that had not seen it. Empty bins are left out."""

    bins: tuple[ReliabilityBin, ...]
    coats: int
    clouded: int
    sentence: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Risk:
    """The present risk that a drying coat comes out cloudy, 0-1, with its strongest reason; for its view."""

    chance: float
    cause: Cause
    sentence: str
