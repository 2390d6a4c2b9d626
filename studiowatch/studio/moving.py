"""Moving air over a wet coat: shown at stage one of the detector, aloud from stage two or a strong draught."""

from __future__ import annotations

from collections.abc import Sequence

from studiowatch.room.air_movement import Movement
from studiowatch.room.limits import AIR_SPEED, Standing
from studiowatch.speech.words import say, say_counted
from studiowatch.studio.concern import CoatAtRisk, Concern, Kind
from studiowatch.studio.counting import listed, number_word
from studiowatch.studio.scene import Scene, titles_of
from studiowatch.studio.words import Level, Sentence

COUNTS_AS_STILL_M_S = (
    0.1  # m/s, below which the air counts as still: the board's sensor is swamped by its own warmth there
)


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
    is_calming = speed_m_s is not None and speed_m_s < COUNTS_AS_STILL_M_S
    still_wet = say_counted(len(titles), "{titles} is still wet.", "{titles} are still wet.", titles=listed(titles))
    return Sentence(
        level=Level.ACT if is_strong or was_strong else Level.CAUTION,
        headline=_calming_headline(len(bare)) if is_calming else _moving_headline(len(bare)),
        detail=f"{_movement_text(scene)} {still_wet}",
        advice=say("Leave it so: this stays until the air has been still a little longer.")
        if is_calming
        else _still_it(scene),
    )


def _moving_headline(number: int) -> str:
    return say_counted(
        number, "Air is moving over a wet coat", "Air is moving over {n} wet coats", n=number_word(number)
    )


def _calming_headline(number: int) -> str:
    return say_counted(
        number, "The air is calming over a wet coat", "The air is calming over {n} wet coats", n=number_word(number)
    )


def _still_it(scene: Scene) -> str:
    if scene.has_solvent:
        return say("Turn what moves the air away from the pieces, and keep fresh air coming in.")
    advice = (
        say("Turn the fan off or turn it away.")
        if scene.air.movement is Movement.FAN
        else say("Look for a fan, window or door.")
    )
    return f"{advice} {say('Once the air is still, type a reading that says so.')}" if _is_felt(scene) else advice


def _moving_over_covered(scene: Scene, covered: Sequence[CoatAtRisk]) -> Sentence:
    titles = titles_of(covered)
    still_wet = say_counted(
        len(titles),
        "{titles} is still wet under the cover.",
        "{titles} are still wet under the cover.",
        titles=listed(titles),
    )
    return Sentence(
        level=Level.CAUTION,
        headline=say_counted(
            len(covered),
            "Air is moving over a covered coat",
            "Air is moving over {n} covered coats",
            n=number_word(len(covered)),
        ),
        detail=f"{_movement_text(scene)} {still_wet}",
        advice=say("Leave the cover on.") if scene.has_solvent else say("Leave the cover on until the air is still."),
    )


def _movement_text(scene: Scene) -> str:
    time = scene.clock_text(scene.air.moving_since_ms or scene.now_ms)
    if _is_felt(scene):
        return say("Felt at {time}; air speed is not measured.", time=time)
    speed_m_s = scene.air.air_speed_m_s
    is_fan = scene.air.movement is Movement.FAN
    if speed_m_s is None:
        return (
            say("A fan came on at {time}.", time=time) if is_fan else say("The air has moved since {time}.", time=time)
        )
    speed = scene.units.air_speed(speed_m_s)
    if speed_m_s < COUNTS_AS_STILL_M_S:
        return _calming_text(time, speed, is_fan=is_fan)
    if is_fan:
        return say("A fan came on at {time} ({speed}).", time=time, speed=speed)
    return say("The air has moved since {time} ({speed}).", time=time, speed=speed)


def _calming_text(time: str, speed: str, *, is_fan: bool) -> str:
    if is_fan:
        return say("A fan came on at {time}; the air is down to {speed} now.", time=time, speed=speed)
    return say("The air has moved since {time}; it is down to {speed} now.", time=time, speed=speed)


def _is_felt(scene: Scene) -> bool:
    """Return whether she felt the air move, and no board says so."""
    return scene.air.typed is not None and scene.air.typed.felt is not None
