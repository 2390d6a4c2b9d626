"""How dusty the air is for a film that is still sticky: counted where the board counts, else guessed.

What falls on a face that looks up is concentration times settling speed (see `physics.settling`); the sizes of a
room's dust are not known, so that concentrations are compared and no specks are promised.
"""

from __future__ import annotations

from dataclasses import dataclass

GUESSED_PER_M3 = 35_000.0  # /m³ over 5 µm in a lived-in room with nothing stirring; assumption
CLINGING = ((30.0, 40.0), (3.0, 1.0))  # %RH, and how many times as much dust counts; that it does: common practice
STIRRED = ((0.1, 0.5), (1.0, 3.0))  # m/s, and how many times as much dust moving air carries; assumption


@dataclass(frozen=True, slots=True, kw_only=True)
class DustLoad:
    """Specks over 5 µm in a cubic metre.

    Attributes
    ----------
    per_m3 : float
        As many as were counted or guessed.
    counts_as_per_m3 : float
        As many as that comes to in air so dry that dust clings.
    is_counted : bool
        True where a board counted them, False where they are guessed from the movement of the air.
    """

    per_m3: float
    counts_as_per_m3: float
    is_counted: bool


def dust_load(
    counted_per_m3: float | None, *, humidity_pct: float | None = None, air_speed_m_s: float | None = None
) -> DustLoad:
    """Return the dust in the air; what is not measured is taken to do no harm.

    Parameters
    ----------
    counted_per_m3 : float or None
        Particles over 5 µm, /m³, as the board counts them.
    humidity_pct, air_speed_m_s : float or None
        %RH, and m/s at the pieces.
    """
    per_m3 = counted_per_m3
    if per_m3 is None:
        per_m3 = GUESSED_PER_M3 * (1.0 if air_speed_m_s is None else _along(STIRRED, air_speed_m_s))
    clinging = 1.0 if humidity_pct is None else _along(CLINGING, humidity_pct)
    return DustLoad(per_m3=per_m3, counts_as_per_m3=clinging * per_m3, is_counted=counted_per_m3 is not None)


def _along(ramp: tuple[tuple[float, float], tuple[float, float]], value: float) -> float:
    """Return what `ramp` gives at a value: it is level on both sides of it. Asked for each reading."""
    (low, high), (first, last) = ramp
    return first + (last - first) * min(max((value - low) / (high - low), 0.0), 1.0)
