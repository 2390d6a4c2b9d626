"""The air ahead of coats to come, as the finishing plan asks for it: the room's outlook from their laying on."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field

from studiowatch.coats.readiness import lasting
from studiowatch.physics.air import Air, AnyAir
from studiowatch.room.outlook import Outlook
from studiowatch.service.air_ahead import AirAhead, steady
from studiowatch.service.coat_run import DRAWS
from studiowatch.service.coming_air import coming_air
from studiowatch.service.room_ahead import RoomAhead

SLOT_MS = 6 * 3_600_000  # ms of layings that are followed as one: a plan is of days

Spans = Sequence[tuple[AnyAir, float]]


@dataclass(slots=True)
class PlanAir:
    """One outlook, for layings at any time; those beyond it meet the mean of each of its draws.

    `is_meant` says that it counts on what she means to do with the room.

    It is made on the keeper's thread and then used by one worker.
    """

    outlook: Outlook
    made_ms: int
    pressure_Pa: float
    is_meant: bool = False
    _slots: dict[tuple[int, float], Spans] = field(default_factory=dict)

    def __call__(self, from_ms: int, horizon_s: float) -> Spans:
        """Return the air of `horizon_s` from a UTC ms on; see `AirAhead`."""
        last = self.outlook.hours * 3_600_000 // SLOT_MS
        slot = min(max(from_ms - self.made_ms, 0) // SLOT_MS, last)
        if (slot, horizon_s) not in self._slots:
            self._slots[slot, horizon_s] = self._from(slot * SLOT_MS / 1000.0, horizon_s)
        return self._slots[slot, horizon_s]

    def _from(self, passed_s: float, horizon_s: float) -> Spans:
        left_s = min(self.outlook.hours * 3600.0 - passed_s, horizon_s)
        told = self._told(passed_s, left_s) if left_s > 0.0 else ()
        if left_s >= horizon_s:
            return told
        whole = self._told(0.0, self.outlook.hours * 3600.0)
        return (*told, (lasting(whole), horizon_s - max(left_s, 0.0)))

    def _told(self, passed_s: float, horizon_s: float) -> Spans:
        return coming_air(self.outlook, DRAWS, passed_s=passed_s, horizon_s=horizon_s, pressure_Pa=self.pressure_Pa)


def foretold_by(room: RoomAhead) -> Callable[[Air], AirAhead]:
    """Return what turns the air as it is into the air ahead: by the room's outlook, or held where there is none."""

    def air_ahead(air: Air) -> AirAhead:
        if room.outlook is None or room.made_ms is None or air.age_s is not None:
            return steady(air)
        return PlanAir(
            outlook=room.outlook,
            made_ms=room.made_ms,
            pressure_Pa=air.pressure_Pa,
            is_meant=room.outlook is not room.free,
        )

    return air_ahead
