"""The watch: from the room now and the coats at risk to concerns, each said once and in plain words.

A concern found before is given back in, so that a value at its limit does not flicker and a beginning is kept.
One cause gives one concern: a silent board or a suspect reading lets nothing new be raised from what rests on it, and
damp air speaks for the nearness of the dew point that it causes. Where she types the room's readings no board is
silent; a reading that is missed for long is a concern then.

What is not measured is not over. While the board is silent, or the channels that an earlier concern rests on are
missing or not to be believed, that concern stands: told as past, its `seen_ms` frozen, its level kept, until all its
coats are past harm. When the channels are back, it is held as long as any other before it is called over.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from types import MappingProxyType

from studiowatch.speech.units import METRIC, Units
from studiowatch.studio import ahead, drying_rules, laid_rules, moving, rules, unseen
from studiowatch.studio.concern import AirNow, CoatAtRisk, Concern, Kind
from studiowatch.studio.heading import NOT_KNOWN, Heading
from studiowatch.studio.scene import Scene

SILENT_AFTER_S = 10.0  # s without a reading while a coat is wet; assumption
SILENT_AFTER_IDLE_S = 60.0  # s without a reading while none is; assumption
HOLD_MS = {  # ms that a concern is kept after it last held; assumption
    Kind.AIR_MOVING: 10_000,
    Kind.TOO_COLD: 30_000,
    Kind.NEAR_DEW_POINT: 30_000,
    Kind.DAMP: 30_000,
    Kind.DRYING_TOO_FAST: 30_000,
    Kind.DUST: 30_000,
    Kind.RECOAT_EARLY: 0,
    Kind.MATTING_BUILD_UP: 0,
    Kind.BOARD_SILENT: 0,
    Kind.READING_IMPLAUSIBLE: 30_000,
    Kind.READING_OLD: 0,
}
RULES: Mapping[Kind, Callable[[Scene], Concern | None]] = MappingProxyType(
    {
        Kind.AIR_MOVING: moving.air_moving,
        Kind.TOO_COLD: rules.too_cold,
        Kind.NEAR_DEW_POINT: rules.near_dew_point,
        Kind.DAMP: rules.damp,
        Kind.DRYING_TOO_FAST: drying_rules.drying_too_fast,
        Kind.DUST: drying_rules.dust,
        Kind.RECOAT_EARLY: laid_rules.recoat_early,
        Kind.MATTING_BUILD_UP: laid_rules.matting_build_up,
        Kind.READING_IMPLAUSIBLE: rules.implausible,
        Kind.READING_OLD: rules.reading_old,
    }
)
AS_LAID = frozenset({Kind.RECOAT_EARLY, Kind.MATTING_BUILD_UP})  # known without the room
SAME_CAUSE = frozenset({Kind.NEAR_DEW_POINT, Kind.DAMP})


def find_concerns(
    air: AirNow,
    coats: Sequence[CoatAtRisk],
    *,
    now_ms: int,
    clock_text: Callable[[int], str],
    before: Sequence[Concern] = (),
    silent_after_s: float = SILENT_AFTER_S,
    heading: Heading = NOT_KNOWN,
    units: Units = METRIC,
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
    heading : Heading
        Says where the room is heading.
    units : Units
        What she reads temperatures and air speeds in.
    """
    scene = Scene(
        air=air,
        coats=tuple(coat for coat in coats if coat.wet or coat.forming),
        now_ms=now_ms,
        clock_text=clock_text,
        before={concern.kind: concern for concern in before},
        heading=heading,
        units=units,
    )
    patience_s = silent_after_s if scene.coats else max(SILENT_AFTER_IDLE_S, silent_after_s)
    is_silent = air.typed is None and now_ms - air.blind_since_ms(now_ms) > patience_s * 1000
    hidden = {kind for kind in RULES if kind not in AS_LAID and (is_silent or unseen.is_missing(kind, air))}
    found = [rules.board_silent(scene)] if is_silent else []
    looked = [ahead.foreseen(scene, kind, rule(scene)) for kind, rule in RULES.items() if kind not in hidden]
    found += ahead.without_doubles([concern for concern in looked if concern is not None])
    found += _held(scene, {concern.kind for concern in found}, hidden)
    earlier = [concern for kind, concern in scene.before.items() if kind in hidden]
    found += [concern for old in earlier if (concern := unseen.standing(scene, old)) is not None]
    if Kind.AIR_MOVING in hidden:
        found += ahead.unmeasured(scene, found)
    order = list(Kind)
    return tuple(sorted(found, key=lambda concern: (-concern.level, order.index(concern.kind))))


def _held(scene: Scene, found: set[Kind], hidden: set[Kind]) -> list[Concern]:
    """Return earlier concerns that no longer hold but are too fresh to drop, about pieces still at risk."""
    spoken_for = found | hidden | (SAME_CAUSE if found & SAME_CAUSE else set())
    keys = {coat.piece_key for coat in scene.coats}
    return [
        concern
        for kind, concern in scene.before.items()
        if kind not in spoken_for
        and scene.now_ms - (concern.unseen_ms or concern.seen_ms) < HOLD_MS[kind]
        and (not concern.piece_keys or keys.intersection(concern.piece_keys))
    ]
