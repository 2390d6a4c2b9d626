"""What another room would do beside drying: what the watch would warn of in it, and what care its making takes."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace

from studiowatch.physics.air import Air
from studiowatch.physics.moist_air import dew_point_if_any
from studiowatch.room.air_movement import Movement
from studiowatch.room.intentions import Doing
from studiowatch.service.films_to_come import FilmsToCome
from studiowatch.speech.units import Units
from studiowatch.studio.concern import AirNow, CoatAtRisk, Concern, Kind
from studiowatch.studio.meant_words import cautions, vapour_sentence
from studiowatch.studio.moving import COUNTS_AS_STILL_M_S
from studiowatch.studio.otherwise import STILL_M_S, Otherwise
from studiowatch.studio.watch import find_concerns
from studiowatch.studio.words import Sentence


def refusal(lent: FilmsToCome, held: Otherwise) -> str:
    """Return why this is not told, one sentence, or "": nothing warms, dries or blows beside flammable vapour."""
    doings = _doings(lent.air, held) if lent.vapour else ()
    return vapour_sentence(lent.vapour, doings[0]) if doings else ""


def care(lent: FilmsToCome, held: Otherwise) -> tuple[str, ...]:
    """Return what bites at the step of making the room so."""
    is_still = bool(lent.vapour) and held.most_air_speed_m_s is not None
    told = [*(one for doing in _doings(lent.air, held) for one in cautions(doing))]
    told += cautions(Doing.FAN, is_on=False) if is_still else ()
    return tuple(dict.fromkeys(told))


def _doings(air: AirNow, held: Otherwise) -> tuple[Doing, ...]:
    """Return what would have to be on to hold the room so, as far as it is known how it is now."""
    warmer = held.temperature_C is not None and held.temperature_C > (air.temperature_C or 0.0)
    humidity_pct = held.most_humidity_pct if held.humidity_pct is None else held.humidity_pct
    now_pct = 100.0 if air.humidity_pct is None else _same_vapour_pct(air, air.humidity_pct, held)
    drier = humidity_pct is not None and humidity_pct < now_pct
    blown = held.air_speed_m_s is not None and held.air_speed_m_s > COUNTS_AS_STILL_M_S
    return tuple(
        doing for doing, is_on in ((Doing.HEATER, warmer), (Doing.DEHUMIDIFIER, drier), (Doing.FAN, blown)) if is_on
    )


def _same_vapour_pct(air: AirNow, now_pct: float, held: Otherwise) -> float:
    """Return the humidity that the temperature alone would bring, %."""
    if air.temperature_C is None:
        return now_pct
    warmed = Otherwise(temperature_C=held.temperature_C).of(Air(temperature_C=air.temperature_C, humidity_pct=now_pct))
    return warmed.humidity_pct


def warnings_in(
    lent: FilmsToCome,
    held: Otherwise,
    *,
    cover: bool = False,
    clock_text: Callable[[int], str],
    units: Units,
) -> tuple[Sentence, ...]:
    """Return what the watch would say of the coats in that room and does not say now, or not as strongly."""

    def found(air: AirNow, at_risk: Sequence[CoatAtRisk]) -> Sequence[Concern]:
        return find_concerns(air, at_risk, now_ms=lent.now_ms, clock_text=clock_text, units=units)

    now = {concern.kind: concern.level for concern in found(lent.air, lent.at_risk)}
    coats = [_in_it(coat, lent.air, held, cover=cover) for coat in lent.at_risk]
    return tuple(
        _said(concern)
        for concern in found(_air_of(lent.air, held, lent.now_ms), coats)
        if concern.kind not in now or concern.level > now[concern.kind]
    )


def _said(concern: Concern) -> Sentence:
    """Return what is said of a room that is only thought of: no fan came on."""
    return replace(concern.sentence, detail="") if concern.kind is Kind.AIR_MOVING else concern.sentence


def _in_it(coat: CoatAtRisk, air: AirNow, held: Otherwise, *, cover: bool) -> CoatAtRisk:
    """Return a coat in the other room: its film follows the air."""
    warmer_K = 0.0
    if held.temperature_C is not None and air.temperature_C is not None:
        warmer_K = held.temperature_C - air.temperature_C
    film_C = None if coat.film_C is None else coat.film_C + warmer_K
    return replace(coat, film_C=film_C, covered=coat.covered or cover)


def _air_of(air: AirNow, held: Otherwise, now_ms: int) -> AirNow:
    if air.temperature_C is None or air.humidity_pct is None:
        return air
    speed_m_s = air.air_speed_m_s
    other = held.of(
        Air(
            temperature_C=air.temperature_C,
            humidity_pct=air.humidity_pct,
            air_speed_m_s=STILL_M_S if speed_m_s is None else speed_m_s,
        )
    )
    is_held = held.air_speed_m_s is not None or held.most_air_speed_m_s is not None
    moves = Movement.FAN if other.air_speed_m_s > COUNTS_AS_STILL_M_S else Movement.STILL
    return replace(
        air,
        temperature_C=other.temperature_C,
        humidity_pct=other.humidity_pct,
        dew_point_C=dew_point_if_any(other.temperature_C, other.humidity_pct),
        air_speed_m_s=other.air_speed_m_s if is_held or speed_m_s is not None else None,
        movement=moves if is_held else air.movement,
        moving_since_ms=now_ms if is_held else air.moving_since_ms,
        age_s=0.0,
    )
