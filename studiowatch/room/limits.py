"""Limits of a room for a wet coat: when to take care, when to act, and on what basis."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field, replace
from enum import IntEnum
from math import inf

from studiowatch.room import figures
from studiowatch.speech.units import chosen
from studiowatch.speech.words import mark, say


class Standing(IntEnum):
    """How a condition stands against its limits."""

    FINE = 0
    CAUTION = 1
    ACT = 2


@dataclass(frozen=True, slots=True, kw_only=True)
class Limit:
    """Two limits on one condition.

    Attributes
    ----------
    caution, act : float
        Where care and where action begins, in `unit`; the limit itself is still allowed.
    worse_above : bool
        True if high values are bad, False if low ones are.
    release : float
        How far back inside the limit a value must come before its standing falls again, in `unit`.
    told : callable
        Returns `basis`.
    """

    unit: str
    caution: float
    act: float
    worse_above: bool
    release: float
    told: Callable[[], str] = field(compare=False)

    @property
    def basis(self) -> str:
        """Where the figures come from, to be shown on request."""
        return self.told()

    def standing(self, value: float, before: Standing = Standing.FINE) -> Standing:
        """Return how `value` stands; with the standing `before`, a value at the limit does not flicker."""
        crossed = self._crossed(value, 0.0)
        if crossed >= before:
            return crossed
        return min(before, self._crossed(value, self.release))

    def _crossed(self, value: float, release: float) -> Standing:
        sign = 1.0 if self.worse_above else -1.0
        for standing, limit in ((Standing.ACT, self.act), (Standing.CAUTION, self.caution)):
            if sign * (value - limit) > -release:
                return standing
        return Standing.FINE


SHEET_HUMIDITY_CARE_PCT = 5.0  # %RH under the sheet's own limit where care begins: a sensor errs by 3; assumption

HUMIDITY = Limit(
    unit="%",
    caution=75.0,
    act=85.0,
    worse_above=True,
    release=2.0,
    told=lambda: say(
        "85 %: coating practice of ISO 12944-7 and ISO 8502-4; 75 %: from memory. The product's sheet comes first."
    ),
)
DEW_MARGIN = Limit(
    unit="K",
    caution=5.0,
    act=3.0,
    worse_above=False,
    release=0.5,
    told=lambda: say("{act}: ISO 8502-4; {care}: from memory.", act=figures.span(3.0), care=figures.span(5.0)),
)
FILM_MARGIN = Limit(
    unit="K",
    caution=5.0,
    act=0.0,
    worse_above=False,
    release=0.5,
    told=lambda: say(
        "Minimum film-forming temperature by ISO 2115 or ASTM D2354, from the product's sheet; {care}: from memory.",
        care=figures.span(5.0),
    ),
)
AIR_SPEED = Limit(
    unit="m/s",
    caution=0.2,
    act=0.5,
    worse_above=True,
    release=0.03,
    told=lambda: say(
        "Draught rate of ISO 7730: {slow} to {fast} {speed_unit} at {cool} to {warm} {unit}, 20 % dissatisfied, "
        "turbulence 40 %; {act}: assumption.",
        slow=figures.pace(0.15),
        fast=figures.pace(0.31),
        speed_unit=chosen().speed.value,
        cool=figures.degrees(18.0),
        warm=figures.degrees(28.0),
        unit=chosen().degrees.value,
        act=chosen().air_speed_limit(0.5),
    ),
)


DRYING_PACE = Limit(
    unit="times the sheet's own",  # not said
    caution=1.0,
    act=2.0,
    worse_above=True,
    release=0.1,
    told=lambda: say(
        "Péclet number of the wet film over that of its sheet's own run ({temperature}, 50 %, {speed}); above it "
        "particles pile up into a skin: A. F. Routh, W. B. Russel (1998), AIChE J. 44, 2088; that twice is too much: "
        "assumption.",
        temperature=chosen().limit(23.0),
        speed=chosen().air_speed_limit(0.1),
    ),
)
DRY_AIR = Limit(
    unit="%",
    caution=35.0,
    act=-inf,
    worse_above=False,
    release=2.0,
    told=lambda: say("35 %: from memory; no limit to act on. The product's sheet comes first."),
)
WARMTH = Limit(
    unit="°C",
    caution=30.0,
    act=35.0,
    worse_above=True,
    release=0.5,
    told=lambda: say(
        "{care} and {act}: from memory. The product's sheet comes first.",
        care=figures.degrees(30.0),
        act=chosen().limit(35.0),
    ),
)
DUST = Limit(
    unit="/m³",
    caution=293_000.0,
    act=2_930_000.0,
    worse_above=True,
    release=30_000.0,
    told=lambda: say(
        "{care} /m³: the limit of class 9, the least clean, of ISO 14644-1:2015; ten times that: assumption. Air under "
        "40 % counts for more, under 30 % for much more, for dust clings then: common practice, no source; how much: "
        "assumption.",
        care=chosen().count(293_000.0),
    ),
)
RECOAT = Limit(
    unit="of 1",
    caution=0.1,
    act=0.5,
    worse_above=True,
    release=0.0,
    told=lambda: say(
        "A coat counts as ready once nine of ten runs of the model are, and not before its sheet's own recoat time."
    ),
)
_NO_MATTING_LIMIT = mark("No more than {most}: common practice, no source; the product's sheet names none.")
_MATTING_LIMIT = mark("No more than {most}: the product's sheet.")
MATTING_COATS = 2  # coats with matting agent; "more than one or two dull the colours below": common practice, no source


def warmth_limit(apply_most_C: float | None = None) -> Limit:
    """Return the limit on warm air, the sheet's own if it names the greatest temperature to apply at, °C."""
    if apply_most_C is None:
        return WARMTH
    return replace(
        WARMTH,
        caution=apply_most_C,
        act=apply_most_C + WARMTH.act - WARMTH.caution,
        told=lambda: say(
            "{limit}: the product's sheet; {more} more: from memory.",
            limit=chosen().limit(apply_most_C),
            more=chosen().difference_limit(WARMTH.act - WARMTH.caution),
        ),
    )


def matting_limit(max_coats: int | None = None) -> Limit:
    """Return the limit on coats with matting agent on each other, the sheet's own if it names one."""
    most = MATTING_COATS if max_coats is None else max_coats
    return Limit(
        unit="coats",
        caution=float(most),
        act=float(most + 1),
        worse_above=True,
        release=0.0,
        told=lambda: say(_NO_MATTING_LIMIT if max_coats is None else _MATTING_LIMIT, most=most),
    )


def humidity_limit(max_humidity_pct: float | None = None) -> Limit:
    """Return the humidity limit, the sheet's own if it states one, %RH."""
    if max_humidity_pct is None:
        return HUMIDITY
    return Limit(
        unit=HUMIDITY.unit,
        caution=max_humidity_pct - SHEET_HUMIDITY_CARE_PCT,
        act=max_humidity_pct,
        worse_above=True,
        release=HUMIDITY.release,
        told=lambda: say(
            "{limit} %: the product's sheet; care {below} % below it: assumption.",
            limit=chosen().plain(max_humidity_pct),
            below=chosen().plain(SHEET_HUMIDITY_CARE_PCT),
        ),
    )


def humidity_standing(
    humidity_pct: float, max_humidity_pct: float | None = None, before: Standing = Standing.FINE
) -> Standing:
    """Return how the room's humidity stands, %RH, against the sheet's limit or the general one."""
    return humidity_limit(max_humidity_pct).standing(humidity_pct, before)


def dew_margin_standing(margin_K: float, before: Standing = Standing.FINE) -> Standing:
    """Return how a surface that is `margin_K` above the dew point stands."""
    return DEW_MARGIN.standing(margin_K, before)


def film_margin_standing(margin_K: float, before: Standing = Standing.FINE) -> Standing:
    """Return how a film that is `margin_K` above its minimum film-forming temperature stands."""
    return FILM_MARGIN.standing(margin_K, before)
