"""What warm, dry or dusty air does to a coat: it dries into a skin, or catches what falls.

Moving air speaks for all that it does: while it is said of a piece, its faster drying and its dust are not said again.
Dry air is said once: as drying too fast, not as clinging dust too.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from studiowatch.room.dust import dust_load
from studiowatch.room.limits import DRY_AIR, DRYING_PACE, DUST, Limit, Standing, warmth_limit
from studiowatch.speech.units import Units
from studiowatch.speech.words import say, say_counted
from studiowatch.studio.concern import CoatAtRisk, Concern, Kind
from studiowatch.studio.counting import listed, number_word
from studiowatch.studio.moving import air_moving
from studiowatch.studio.scene import Scene, titles_of
from studiowatch.studio.words import Level, Sentence

SHOWN_FASTER = 1.05  # from here on the pace is shown as more than 1.0

_Reason = tuple[Standing, str, str]  # how it stands, what is said of it, and the basis of its limit


def drying_too_fast(scene: Scene) -> Concern | None:
    """Say that a water-borne coat dries so fast that it skins: by its own pace, in dry air, or in warm air."""
    reasons: list[_Reason] = []
    touched: list[CoatAtRisk] = []
    stirred = scene.spoken_for(Kind.AIR_MOVING, air_moving(scene))
    for coat in scene.coats:
        if coat.solvent or not coat.wet:
            continue
        own = _reasons(scene, coat, in_moving_air=coat.piece_key in stirred)
        if own:
            reasons += own
            touched.append(coat)
    if not touched:
        return None
    standing, said, basis = max(reasons, key=lambda reason: reason[0])
    level = Level(int(standing))
    skin = say("A skin may close over what is still wet: {titles}.", titles=listed(titles_of(touched)))
    sentence = Sentence(
        level=level,
        headline=_fast_headline(level, len(touched)),
        detail=f"{said} {skin}",
        advice=say("Cool the room, or set a bowl of water in it; keep sun and heaters off the pieces."),
    )
    return scene.concern(Kind.DRYING_TOO_FAST, touched, sentence, may_sound=level is Level.ACT, basis=basis)


def _reasons(scene: Scene, coat: CoatAtRisk, *, in_moving_air: bool) -> list[_Reason]:
    before = scene.standing_before(Kind.DRYING_TOO_FAST)
    air = scene.air
    looks: list[tuple[float | None, Limit, Callable[[float], str]]] = [
        (air.temperature_C, warmth_limit(coat.apply_most_C), partial(_warm, scene.units)),
        (air.humidity_pct, DRY_AIR, partial(_dry, scene.units)),
    ]
    if not in_moving_air:
        looks.append((coat.pace, DRYING_PACE, partial(_fast, scene.units)))
    return [
        (standing, said(value), limit.basis)
        for value, limit, said in looks
        if value is not None and (standing := limit.standing(value, before)) > Standing.FINE
    ]


def _fast_headline(level: Level, number: int) -> str:
    if level is Level.ACT:
        return say_counted(
            number, "Drying too fast: a wet coat", "Drying too fast: {n} wet coats", n=number_word(number)
        )
    return say_counted(
        number, "Drying rather fast: a wet coat", "Drying rather fast: {n} wet coats", n=number_word(number)
    )


def _dry(units: Units, humidity_pct: float) -> str:
    return say("The air is at {humidity} % and takes up water fast.", humidity=units.number(humidity_pct))


def _warm(units: Units, temperature_C: float) -> str:
    return say("The air is at {temperature}.", temperature=units.temperature(temperature_C, places=0))


def _fast(units: Units, pace: float) -> str:
    """Return what is said of the pace; a warning is held for a while below its limit, and must not deny itself."""
    if pace < SHOWN_FASTER:
        return say("It dries about as fast as on its sheet, and was faster just before.")
    return say("It dries {times} times as fast as on its sheet.", times=units.number(pace, 1))


def dust(scene: Scene) -> Concern | None:
    """Say that dust falls on a film that is still sticky, and not under a cover."""
    sticky = [coat for coat in scene.coats if coat.sticky and not coat.covered]
    if not sticky:
        return None
    said_before = scene.spoken_for(Kind.AIR_MOVING, air_moving(scene))
    load = dust_load(
        scene.air.particles_per_m3_5um,
        humidity_pct=scene.air.humidity_pct,
        air_speed_m_s=scene.air.air_speed_m_s,
    )
    if not load.is_counted:  # a guess says no more than the air that it is guessed from
        dry = scene.spoken_for(Kind.DRYING_TOO_FAST, drying_too_fast(scene))
        sticky = [coat for coat in sticky if coat.piece_key not in said_before | dry]
    standing = DUST.standing(load.counts_as_per_m3, scene.standing_before(Kind.DUST))
    if not sticky or standing is Standing.FINE:
        return None
    level = Level(int(standing))
    counted = scene.units.count(load.per_m3) if load.is_counted else ""
    sentence = Sentence(
        level=level,
        headline=_dust_headline(level, len(sticky)),
        detail=_dust_text(scene, sticky, counted),
        advice=say("Set the mesh cover once no more bubbles rise; move little, and stir nothing up."),
    )
    return scene.concern(Kind.DUST, sticky, sentence, may_sound=level is Level.ACT, basis=DUST.basis)


def _dust_headline(level: Level, number: int) -> str:
    if level is Level.ACT:
        return say_counted(
            number, "Much dust over a sticky coat", "Much dust over {n} sticky coats", n=number_word(number)
        )
    return say_counted(number, "Dust over a sticky coat", "Dust over {n} sticky coats", n=number_word(number))


def _dust_text(scene: Scene, sticky: list[CoatAtRisk], counted: str) -> str:
    """Return how much dust there is and until when it sticks; `counted` is "" where it is guessed."""
    titles = listed(titles_of(sticky))
    ends_ms = [coat.dust_free_ms for coat in sticky if coat.dust_free_ms is not None]
    if not ends_ms or max(ends_ms) <= scene.now_ms:
        if not counted:
            return say(
                "Guessed, for nothing counts it; it sticks until the film is dust-free: {titles}.", titles=titles
            )
        return say(
            "{specks} specks over 5 µm in a cubic metre; it sticks until the film is dust-free: {titles}.",
            specks=counted,
            titles=titles,
        )
    time = scene.clock_text(max(ends_ms))
    if not counted:
        return say("Guessed, for nothing counts it; it sticks until about {time}: {titles}.", time=time, titles=titles)
    return say(
        "{specks} specks over 5 µm in a cubic metre; it sticks until about {time}: {titles}.",
        specks=counted,
        time=time,
        titles=titles,
    )
