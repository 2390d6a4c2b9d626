"""Readings that were typed from any hygrometer: no board measured them, and nobody measured the air speed.

A typed reading says so itself: its air speed carries a fault of its own code, which is stored with it.
"""

from __future__ import annotations

from enum import StrEnum

from studiowatch.room.readings import Channel, ChannelFault, Reading

TYPED = "typed"  # how the code of a typed reading begins


class Felt(StrEnum):
    """What a hand or a strip of tissue found of the air: under about 0.2 m/s no hand feels it; from memory."""

    STILL = "still"
    MOVING = "moving"


_CODES: dict[Felt | None, str] = {
    None: TYPED,
    Felt.STILL: f"{TYPED}-{Felt.STILL}",
    Felt.MOVING: f"{TYPED}-{Felt.MOVING}",
}
_FELT = {code: felt for felt, code in _CODES.items()}


def typed_reading(*, time_ms: int, temperature_C: float, humidity_pct: float, felt: Felt | None) -> Reading:
    """Return a reading that was typed, marked as such."""
    return Reading(
        time_ms=time_ms,
        temperature_C=temperature_C,
        humidity_pct=humidity_pct,
        checked=False,
        faults=(ChannelFault(channel=Channel.AIR_SPEED, code=_CODES[felt]),),
    )


def is_typed(reading: Reading) -> bool:
    """Return whether a reading was typed."""
    return not reading.checked and bool(_codes(reading))


def felt_in(reading: Reading) -> Felt | None:
    """Return what was felt of the air at a typed reading, or None if that was not said."""
    return next((_FELT[code] for code in _codes(reading)), None)


def _codes(reading: Reading) -> list[str]:
    faults = [fault for fault in reading.faults if fault.channel is Channel.AIR_SPEED]
    return [fault.code for fault in faults if fault.code in _FELT]
