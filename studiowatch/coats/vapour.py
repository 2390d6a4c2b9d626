"""How much solvent vapour a laid coat puts into a room, for the caution beside it. Ventilating comes first in any case.

The room is taken as mixed, with no vapour in the air that comes in. Near the piece, at the floor and over an open tin
there is far more: vapour of white spirit is heavier than air.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import expm1

from studiowatch.coats.data_sheet import DataSheet, Kind
from studiowatch.coats.solvent import WHITE_SPIRIT
from studiowatch.physics.constants import GAS_CONSTANT, STANDARD_PRESSURE_PA, ZERO_CELSIUS_K
from studiowatch.physics.ranges import check
from studiowatch.speech.units import chosen
from studiowatch.speech.words import mark, say

LIMIT_MG_M3 = 350.0  # mg/m³ of white spirit in the breathing air, mean of a working day; NIOSH recommended limit
LOWER_FLAMMABLE_SHARE = 0.006  # of the air's volume, white spirit; WHO Environmental Health Criteria 187: from memory
SAFE_SHARE_OF_FLAMMABLE = 0.10  # of the lower flammable limit, above which nobody should stay; common practice

ROOM_M3 = (1.0, 100_000.0)  # m³
CHANGES_PER_H = (0.0, 100.0)  # 1/h
OVER_H = (0.01, 1000.0)  # h
AREA_M2 = (1e-4, 1000.0)  # m²
WET_UM = (1.0, 10_000.0)  # µm
SOLVENT_G = (0.0, 1e6)  # g
TEMPERATURE_C = (-20.0, 50.0)  # °C

VENTILATE = mark(
    "Ventilate first: fresh air through the room without blowing on the piece; no flame, heater or spark; follow the "
    "product's own sheet and local codes."
)


@dataclass(frozen=True, slots=True, kw_only=True)
class VapourBuildUp:
    """What the vapour of the coats laid at one time comes to in a room.

    Attributes
    ----------
    highest_mg_m3 : float
        At the end of the time in which the solvent leaves, mixed through the room.
    share_of_limit : float
        Of the limit of a working day: 1 is the limit itself.
    share_of_flammable : float
        Of the lower flammable limit, mixed through the room.
    """

    highest_mg_m3: float
    share_of_limit: float
    share_of_flammable: float

    @property
    def sentences(self) -> tuple[str, ...]:
        """Return the caution for her: to ventilate first, then what the estimate says."""
        units = chosen()
        told = say(
            "Mixed through the room it comes to about {highest} mg/m³, {times} times the limit of {limit} mg/m³ for a "
            "working day, and {share} % of what can burn.",
            highest=units.number(self.highest_mg_m3),
            times=units.number(self.share_of_limit, 1),
            limit=units.number(LIMIT_MG_M3),
            share=units.number(100.0 * self.share_of_flammable, 1),
        )
        judged = say("It is an estimate: near the piece and the open tin there is far more.")
        if self.share_of_flammable >= SAFE_SHARE_OF_FLAMMABLE:
            judged = say("This can come near what burns: open the windows, and lay less at a time.")
        elif self.share_of_limit >= 1.0:
            judged = say("Too much to breathe: more fresh air, or fewer pieces at a time.")
        return say(VENTILATE), told, judged


def solvent_laid_g(sheet: DataSheet, *, wet_um: float, area_m2: float, thinned_pct: float = 0.0) -> float:
    """Return the solvent that a coat gives off in all, g; 0 for one that is not solvent-borne.

    Raises
    ------
    OutOfRange
        Names the quantity, its value, the unit and the allowed range; NaN is refused.
    """
    check(mark("wet film"), wet_um, *WET_UM, "µm")
    check(mark("area"), area_m2, *AREA_M2, "m²")
    check(mark("thinning"), thinned_pct, 0.0, 100.0, mark("% of the volume"))
    if sheet.kind is not Kind.SOLVENTBORNE:
        return 0.0
    share = 1.0 - sheet.volume_solids / (1.0 + thinned_pct / 100.0)
    return wet_um * area_m2 * share * WHITE_SPIRIT.density_kg_m3 * 1e-3  # µm m² are mL; kg/m³ are mg/mL


def vapour_build_up(
    *, solvent_g: float, over_h: float, room_m3: float, changes_per_h: float, temperature_C: float
) -> VapourBuildUp:
    """Return what `solvent_g` comes to that leaves evenly within `over_h`.

    The mass balance of a mixed room: V dc/dt = G - n V c, so c = G/(nV) (1 - exp(-n t)) while the solvent leaves.

    Parameters
    ----------
    solvent_g : float
        Solvent of all coats laid at that time, g.
    over_h : float
        Time in which it leaves, h: about the coat's time to touch-dry.
    room_m3, changes_per_h : float
        Volume of the room, m³, and how often an hour its air is changed: 0.3 with windows shut, 3 to 10 with them wide
        open; common practice, no source.

    Raises
    ------
    OutOfRange
        Names the quantity, its value, the unit and the allowed range; NaN is refused.
    """
    check(mark("solvent"), solvent_g, *SOLVENT_G, "g")
    check(mark("time in which it leaves"), over_h, *OVER_H, "h")
    check(mark("room"), room_m3, *ROOM_M3, "m³")
    check(mark("air changes"), changes_per_h, *CHANGES_PER_H, mark("per hour"))
    check(mark("air temperature"), temperature_C, *TEMPERATURE_C, "°C")
    changes = changes_per_h * over_h
    kept = -expm1(-changes) / changes if changes > 0.0 else 1.0
    highest = 1000.0 * solvent_g / room_m3 * kept
    flammable_mg_m3 = 1e6 * _flammable_kg_m3(temperature_C)
    return VapourBuildUp(
        highest_mg_m3=highest,
        share_of_limit=highest / LIMIT_MG_M3,
        share_of_flammable=highest / flammable_mg_m3,
    )


def _flammable_kg_m3(temperature_C: float) -> float:
    """Return the lower flammable limit as a mass of vapour in a volume, kg/m³."""
    moles = STANDARD_PRESSURE_PA / (GAS_CONSTANT * (temperature_C + ZERO_CELSIUS_K))
    return LOWER_FLAMMABLE_SHARE * moles * WHITE_SPIRIT.molar_mass_kg_mol
