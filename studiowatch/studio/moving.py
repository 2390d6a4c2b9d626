"""Moving air over a wet coat: shown at stage one of the detector, aloud from stage two or a strong draught."""

from __future__ import annotations

from collections.abc import Sequence

from studiowatch.room.air_movement import Movement
from studiowatch.room.limits import AIR_SPEED, Standing
from studiowatch.studio.concern import CoatAtRisk, Concern, Kind
from studiowatch.studio.counting import counted, is_or_are, listed
from studiowatch.studio.scene import Scene, titles_of
from studiowatch.studio.words import Level, Sentence

STILL_M_S = 0.1  # m/s, below which the air counts as still: the board's sensor is swamped by its own warmth there


def air_moving(scene: Scene) -> Concern | None:
    """Say that air moves over a coat that it still harms: at stage one; aloud from stage two or a strong draught.

    Over covered coats it is said from stage two on.
    """
    wet = [coat for coat in scene.coats if coat.wet]
    if not wet or not scene.air.is_moving:
        return None
    bare = [coat for coat in wet if not coat.covered]
    lasts = scene.air.movement is Movement.FAN or _is_felt(scene) or Kind.AIR_MOVING in scene.before
    if not bare and not lasts:
        return None  # who walks by stirs nothing under a cover
    sentence = _moving_over_bare(scene, bare) if bare else _moving_over_covered(scene, wet)
    earlier = scene.before.get(Kind.AIR_MOVING)
    speed_m_s = scene.air.air_speed_m_s
    may_sound = bool(bare) and (
        scene.air.movement is Movement.FAN
        or (speed_m_s is not None and speed_m_s > AIR_SPEED.act)
        or (earlier is not None and earlier.may_sound)
    )
    began_ms = scene.air.moving_since_ms
    return scene.concern(
        Kind.AIR_MOVING, bare or wet, sentence, began_ms=began_ms, may_sound=may_sound, basis=AIR_SPEED.basis
    )


def _moving_over_bare(scene: Scene, bare: Sequence[CoatAtRisk]) -> Sentence:
    speed_m_s = scene.air.air_speed_m_s
    is_strong = speed_m_s is None or speed_m_s >= AIR_SPEED.caution
    was_strong = scene.standing_before(Kind.AIR_MOVING) is Standing.ACT
    titles = titles_of(bare)
    verb = "Air is moving over"
    advice = "Turn it off or turn it away." if scene.air.movement is Movement.FAN else "Look for a fan, window or door."
    if _is_felt(scene):
        advice = f"{advice} Once it is still, type a reading that says so."
    if scene.has_solvent:
        advice = "Turn it away from the pieces, and keep fresh air coming in."
    if speed_m_s is not None and speed_m_s < STILL_M_S:
        verb, advice = (
            "The air is calming over",
            "Leave it so: this stays until the air has been still a little longer.",
        )
    return Sentence(
        level=Level.ACT if is_strong or was_strong else Level.CAUTION,
        headline=f"{verb} {counted(len(bare), 'wet coat')}",
        detail=f"{_movement_text(scene)} {listed(titles)} {is_or_are(titles)} still wet.",
        advice=advice,
    )


def _moving_over_covered(scene: Scene, covered: Sequence[CoatAtRisk]) -> Sentence:
    titles = titles_of(covered)
    return Sentence(
        level=Level.CAUTION,
        headline=f"Air is moving over {counted(len(covered), 'covered coat')}",
        detail=f"{_movement_text(scene)} {listed(titles)} {is_or_are(titles)} still wet under the cover.",
        advice="Leave the cover on." if scene.has_solvent else "Leave the cover on until the air is still.",
    )


def _movement_text(scene: Scene) -> str:
    since_ms = scene.air.moving_since_ms or scene.now_ms
    if _is_felt(scene):
        return f"Felt at {scene.clock_text(since_ms)}; air speed is not measured."
    speed_m_s = scene.air.air_speed_m_s
    speed_text = "" if speed_m_s is None else f" ({scene.units.air_speed(speed_m_s)})"
    if scene.air.movement is Movement.FAN:
        return f"A fan came on at {scene.clock_text(since_ms)}{speed_text}."
    return f"The air has moved since {scene.clock_text(since_ms)}{speed_text}."


def _is_felt(scene: Scene) -> bool:
    """Return whether she felt the air move, and no board says so."""
    return scene.air.typed is not None and scene.air.typed.felt is not None
