"""The watch: from the room now and the coats at risk to concerns, each said once and in plain words.

A concern found before is given back in, so that a value at its limit does not flicker and a beginning is kept.
One cause gives one concern: a silent board hides all the rest, a suspect reading hides what rests on it, and damp
air speaks for the nearness of the dew point that it causes.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence

from studiowatch.studio import rules
from studiowatch.studio.concern import AirNow, CoatAtRisk, Concern, Kind
from studiowatch.studio.rules import Scene

SILENT_AFTER_S = 10.0  # s without a reading while a coat is wet; assumption
SILENT_AFTER_IDLE_S = 60.0  # s without a reading while none is; assumption
HOLD_MS = {  # ms that a concern is kept after it last held; assumption
    Kind.AIR_MOVING: 10_000,
    Kind.TOO_COLD: 30_000,
    Kind.NEAR_DEW_POINT: 30_000,
    Kind.DAMP: 30_000,
    Kind.BOARD_SILENT: 0,
    Kind.READING_IMPLAUSIBLE: 30_000,
}
SAME_CAUSE = frozenset({Kind.NEAR_DEW_POINT, Kind.DAMP})


def find_concerns(
    air: AirNow,
    coats: Sequence[CoatAtRisk],
    *,
    now_ms: int,
    clock_text: Callable[[int], str],
    before: Sequence[Concern] = (),
    silent_after_s: float = SILENT_AFTER_S,
) -> tuple[Concern, ...]:
    """Return what is wrong now, the most urgent first.

    Parameters
    ----------
    air : AirNow
        The room as last read.
    coats : sequence of CoatAtRisk
        Laid coats that the room may still spoil, in the order of the rack.
    now_ms : int
        UTC ms.
    clock_text : callable
        Turns UTC ms into the time of day as she reads it.
    before : sequence of Concern
        What was returned the last time.
    silent_after_s : float
        Seconds without a reading after which a wet coat counts as unwatched; longer for a log of one a minute.
    """
    scene = Scene(
        air=air,
        coats=tuple(coat for coat in coats if coat.wet or coat.forming),
        now_ms=now_ms,
        clock_text=clock_text,
        before={concern.kind: concern for concern in before},
    )
    patience_s = silent_after_s if scene.coats else max(SILENT_AFTER_IDLE_S, silent_after_s)
    if now_ms - air.blind_since_ms(now_ms) > patience_s * 1000:
        return (rules.board_silent(scene),)
    asked = [rules.air_moving, rules.implausible]
    if not air.implausible:
        asked += [rules.too_cold, rules.near_dew_point, rules.damp]
    found = [concern for concern in (rule(scene) for rule in asked) if concern is not None]
    found += _held(scene, {concern.kind for concern in found})
    order = list(Kind)
    return tuple(sorted(found, key=lambda concern: (-concern.level, order.index(concern.kind))))


def _held(scene: Scene, found: set[Kind]) -> list[Concern]:
    """Return earlier concerns that no longer hold but are too fresh to drop, about pieces still at risk."""
    spoken_for = found | SAME_CAUSE if found & SAME_CAUSE else found
    keys = {coat.piece_key for coat in scene.coats}
    return [
        concern
        for kind, concern in scene.before.items()
        if kind not in spoken_for
        and scene.now_ms - concern.seen_ms < HOLD_MS[kind]
        and (not concern.piece_keys or keys.intersection(concern.piece_keys))
    ]
