"""Concerns that cannot be looked at now: what is not measured is not over."""

from __future__ import annotations

from dataclasses import replace

from studiowatch.room.air_movement import Movement
from studiowatch.speech.words import say, say_counted
from studiowatch.studio.ahead import still_ahead
from studiowatch.studio.concern import AirNow, CoatAtRisk, Concern, Kind
from studiowatch.studio.counting import listed
from studiowatch.studio.past import WAS_DRYING, WAS_WET, air_over_covered
from studiowatch.studio.scene import Scene, titles_of
from studiowatch.studio.words import Level, Sentence


def is_missing(kind: Kind, air: AirNow) -> bool:
    """Return whether what a concern of `kind` rests on is not measured, or not to be believed.

    Whether the air is damp rests on the humidity alone; the temperature only makes it worse.
    """
    match kind:
        case Kind.AIR_MOVING:
            return air.movement is Movement.UNKNOWN
        case Kind.TOO_COLD:
            return bool(air.implausible) or air.temperature_C is None
        case Kind.DAMP | Kind.DUST:
            return bool(air.implausible) or air.humidity_pct is None
        case Kind.NEAR_DEW_POINT | Kind.DRYING_TOO_FAST:
            return bool(air.implausible) or air.temperature_C is None or air.humidity_pct is None
        case _:
            return False


def standing(scene: Scene, earlier: Concern) -> Concern | None:
    """Return an earlier concern as it stands unseen, told as past; None if all its coats are past harm.

    Its level is kept, but for a cover that was set since, and `seen_ms` stays at the last reading that showed it.
    """
    coats = [coat for coat in scene.coats if coat.piece_key in earlier.piece_keys and _can_harm(earlier.kind, coat)]
    bare = [coat for coat in coats if not coat.covered]
    if earlier.piece_keys and not coats:
        return None
    if earlier.is_ahead:
        return still_ahead(scene, earlier)
    last = replace(earlier, seen_ms=min(earlier.seen_ms, scene.air.blind_since_ms(scene.now_ms)))
    if earlier.kind is Kind.AIR_MOVING and bare:
        coats = bare
    elif earlier.kind is Kind.AIR_MOVING:
        last = replace(last, level=Level.CAUTION, may_sound=False)
    kept = scene.concern(
        last.kind, coats, _told_as_past(scene, last, coats), may_sound=last.may_sound, basis=last.basis
    )
    return replace(kept, seen_ms=last.seen_ms, unseen_ms=scene.now_ms)


def _can_harm(kind: Kind, coat: CoatAtRisk) -> bool:
    match kind:
        case Kind.AIR_MOVING | Kind.DRYING_TOO_FAST:
            return coat.wet
        case Kind.DUST:
            return coat.sticky and not coat.covered
        case Kind.TOO_COLD | Kind.DAMP:
            return coat.forming
        case _:
            return True


def _told_as_past(scene: Scene, earlier: Concern, coats: list[CoatAtRisk]) -> Sentence:
    if earlier.kind not in WAS_WET:
        return earlier.sentence
    is_covered = earlier.kind is Kind.AIR_MOVING and all(coat.covered for coat in coats)
    was = air_over_covered if is_covered else WAS_DRYING.get(earlier.kind, WAS_WET[earlier.kind])
    titles = titles_of(coats)
    still = (
        say_counted(len(titles), "{titles} is still drying.", "{titles} are still drying.", titles=listed(titles))
        if earlier.kind in WAS_DRYING
        else say_counted(len(titles), "{titles} is still wet.", "{titles} are still wet.", titles=listed(titles))
    )
    since = say("Not measured since {time}.", time=scene.clock_text(earlier.seen_ms))
    return Sentence(
        level=earlier.level,
        headline=was(len(coats)),
        detail=f"{since} {still}",
        advice=earlier.sentence.advice,
    )
