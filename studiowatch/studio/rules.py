"""One rule for each concern but moving air: from a look at the room to what is wrong with it, or nothing."""

from __future__ import annotations

from collections.abc import Sequence

from studiowatch.room.limits import (
    DEW_MARGIN,
    FILM_MARGIN,
    Limit,
    Standing,
    dew_margin_standing,
    film_margin_standing,
    humidity_limit,
    humidity_standing,
)
from studiowatch.speech.words import in_turn, say, say_counted
from studiowatch.studio.concern import AirNow, CoatAtRisk, Concern, Kind
from studiowatch.studio.counting import listed, number_word
from studiowatch.studio.rereading import READ_IT, is_missed
from studiowatch.studio.scene import Scene, titles_of
from studiowatch.studio.words import Level, Sentence


def board_silent(scene: Scene) -> Concern:
    """Say that nothing has been heard of the room for too long: blindness is a concern of its own."""
    since_ms = scene.air.blind_since_ms(scene.now_ms)
    level = Level.ACT if scene.coats else Level.CAUTION
    titles = titles_of(scene.coats)
    sentence = Sentence(
        level=level,
        headline=_silent(len(scene.coats)),
        detail=in_turn(
            say("No reading since {time}.", time=scene.clock_text(since_ms)),
            _still_drying(titles) if titles else say("No coat is wet."),
        ),
        advice=say("Check the board's cable and its port, or type what a hygrometer says."),
    )
    return scene.concern(Kind.BOARD_SILENT, scene.coats, sentence, began_ms=since_ms, may_sound=level is Level.ACT)


def reading_old(scene: Scene) -> Concern | None:
    """Say that a room without a board has not been read for long, while a coat dries in it."""
    typed = scene.air.typed
    if typed is None or not scene.coats or not is_missed(typed, wet=any(coat.wet for coat in scene.coats)):
        return None
    titles = titles_of(scene.coats)
    sentence = Sentence(
        level=Level.CAUTION,
        headline=say("The room was not read since {time}", time=scene.clock_text(typed.time_ms)),
        detail=say_counted(
            len(titles),
            "{titles} is still drying, in air that nobody knows: the ready times are the wider for it.",
            "{titles} are still drying, in air that nobody knows: the ready times are the wider for it.",
            titles=listed(titles),
        ),
        advice=say(READ_IT),
    )
    return scene.concern(Kind.READING_OLD, scene.coats, sentence, began_ms=typed.time_ms)


def _silent(number: int) -> str:
    if not number:
        return say("The board is silent: the room is not watched")
    return say_counted(
        number,
        "The board is silent: a coat is not watched",
        "The board is silent: {n} coats are not watched",
        n=number_word(number),
    )


def _still_drying(titles: Sequence[str]) -> str:
    return say_counted(len(titles), "{titles} is still drying.", "{titles} are still drying.", titles=listed(titles))


def implausible(scene: Scene) -> Concern | None:
    """Say that a reading cannot be right, or is missing over a coat at risk, so that nobody trusts what rests on it."""
    sentence = _wrong(scene.air) if scene.air.implausible else _missing(scene.air) if scene.coats else None
    return None if sentence is None else scene.concern(Kind.READING_IMPLAUSIBLE, scene.coats, sentence)


def _wrong(air: AirNow) -> Sentence:
    return Sentence(
        level=Level.CAUTION,
        headline=say("A reading cannot be right"),
        detail=air.implausible,
        advice=say("Check the sensor; do not trust the ready times until it reads well again."),
    )


def _missing(air: AirNow) -> Sentence | None:
    if air.temperature_C is not None and air.humidity_pct is not None:
        return None
    headline = say("Neither temperature nor humidity is measured")
    danger = say("Nobody can say whether it gets too cold or too damp for what is drying.")
    if air.humidity_pct is not None:
        headline = say("The temperature is not measured")
        danger = say("Nobody can say whether it gets too cold for what is drying.")
    elif air.temperature_C is not None:
        headline = say("The humidity is not measured")
        danger = say("Nobody can say whether it gets too damp for what is drying.")
    return Sentence(
        level=Level.CAUTION,
        headline=headline,
        detail=danger,
        advice=say("Check the sensor and its wires; do not trust the ready times until it reads again."),
    )


def too_cold(scene: Scene) -> Concern | None:
    """Say that a film nears, or is below, the temperature at which it can form; later warmth does not undo that."""
    before = scene.standing_before(Kind.TOO_COLD)
    coldest: list[tuple[float, CoatAtRisk]] = []
    for coat in scene.coats:
        film_C = scene.film_C(coat)
        if coat.forming and coat.mfft_C is not None and film_C is not None:
            coldest.append((film_C - coat.mfft_C, coat))
    standings = [(film_margin_standing(margin_K, before), coat) for margin_K, coat in coldest]
    touched = _touched(standings)
    if not touched:
        return None
    level = _level(standings)
    margin_K, worst = min(coldest, key=lambda pair: pair[0])
    mfft_C = worst.mfft_C or 0.0
    titles = titles_of(touched)
    sentence = Sentence(
        level=level,
        headline=_cold_headline(level, len(touched)),
        detail=say(
            "The film is at {temperature} and must stay above {limit} until it is clear: {titles}.",
            temperature=scene.units.temperature(mfft_C + margin_K),
            limit=scene.units.limit(mfft_C),
            titles=listed(titles),
        ),
        advice=scene.warm_advice,
    )
    return scene.concern(Kind.TOO_COLD, touched, sentence, may_sound=level is Level.ACT, basis=FILM_MARGIN.basis)


def near_dew_point(scene: Scene) -> Concern | None:
    """Say that a film is so cold that water may settle on it, in air that is not damp for it in itself."""
    before = scene.standing_before(Kind.NEAR_DEW_POINT)
    every = [(margin_K, dew_margin_standing(margin_K, before), coat) for margin_K, coat in _dew_margins(scene)]
    if not any(standing for _, standing, _ in every):
        return None  # as with most readings: whether the air is damp need not be asked
    damp_air = damp(scene)
    spoken_for = () if damp_air is None else damp_air.piece_keys
    margins = [(margin_K, coat) for margin_K, _, coat in every if coat.piece_key not in spoken_for]
    standings = [(standing, coat) for _, standing, coat in every if coat.piece_key not in spoken_for]
    touched = _touched(standings)
    if not touched:
        return None
    level = _level(standings)
    titles = titles_of(touched)
    sentence = Sentence(
        level=level,
        headline=_dew_headline(level, len(touched)),
        detail=f"{_dew_text(scene, margins)} {_still_drying(titles)}",
        advice=scene.warm_advice,
    )
    return scene.concern(Kind.NEAR_DEW_POINT, touched, sentence, may_sound=level is Level.ACT, basis=DEW_MARGIN.basis)


def damp(scene: Scene) -> Concern | None:
    """Say that the air is too damp for a water-borne coat, the worse if its film is near the dew point."""
    humidity_pct = scene.air.humidity_pct
    if humidity_pct is None:
        return None
    before = scene.standing_before(Kind.DAMP)
    drying = [coat for coat in scene.coats if coat.forming and not coat.solvent]
    standings = [(humidity_standing(humidity_pct, coat.max_humidity_pct, before), coat) for coat in drying]
    touched = _touched(standings)
    if not touched:
        return None
    margins = [(margin_K, coat) for margin_K, coat in _dew_margins(scene) if coat in touched]
    dew_standings = [(dew_margin_standing(margin_K, before), coat) for margin_K, coat in margins]
    level = _level([*standings, *dew_standings])
    if scene.air.dew_point_C is None:
        level = max(level, Level(int(before)))
    strictest = min((humidity_limit(coat.max_humidity_pct) for coat in touched), key=lambda limit: limit.act)
    titles = titles_of(touched)
    sentence = Sentence(
        level=level,
        headline=_damp_headline(level, len(touched)),
        detail=in_turn(
            _damp_text(scene, humidity_pct, strictest),
            _dew_text(scene, margins) if any(standing for standing, _ in dew_standings) else "",
            _still_drying(titles),
        ),
        advice=scene.warm_advice,
    )
    return scene.concern(Kind.DAMP, touched, sentence, may_sound=level is Level.ACT, basis=strictest.basis)


def _cold_headline(level: Level, number: int) -> str:
    if level is Level.ACT:
        return say_counted(number, "Too cold for a drying coat", "Too cold for {n} drying coats", n=number_word(number))
    return say_counted(
        number,
        "It is getting cold for a drying coat",
        "It is getting cold for {n} drying coats",
        n=number_word(number),
    )


def _dew_headline(level: Level, number: int) -> str:
    if level is Level.ACT:
        return say_counted(
            number,
            "Water may settle on a drying coat",
            "Water may settle on {n} drying coats",
            n=number_word(number),
        )
    return say_counted(
        number,
        "The dew point is near for a drying coat",
        "The dew point is near for {n} drying coats",
        n=number_word(number),
    )


def _damp_headline(level: Level, number: int) -> str:
    if level is Level.ACT:
        return say_counted(number, "Too damp for a drying coat", "Too damp for {n} drying coats", n=number_word(number))
    return say_counted(
        number,
        "It is getting damp for a drying coat",
        "It is getting damp for {n} drying coats",
        n=number_word(number),
    )


def _damp_text(scene: Scene, humidity_pct: float, limits: Limit) -> str:
    limit_pct = limits.act if humidity_pct > limits.act else limits.caution
    humidity, limit = scene.units.beside(humidity_pct, limit_pct), scene.units.plain(limit_pct)
    typed = scene.air.typed
    if humidity_pct <= limit_pct:
        return _damp_still_text(scene, humidity, limit, scene.units.plain(limit_pct - limits.release))
    if typed is None:
        return say("The air is at {humidity} %; the limit is {limit} %.", humidity=humidity, limit=limit)
    return say(
        "The air was at {humidity} % when it was read at {time}; the limit is {limit} %.",
        humidity=humidity,
        time=scene.clock_text(typed.time_ms),
        limit=limit,
    )


def _damp_still_text(scene: Scene, humidity: str, limit: str, end: str) -> str:
    """Return how damp the air is that is within its limit again: the warning is held, and must not deny itself."""
    typed = scene.air.typed
    if typed is None:
        return say(
            "The air is at {humidity} %, within the limit of {limit} % again; this stays until it is at {end} %.",
            humidity=humidity,
            limit=limit,
            end=end,
        )
    return say(
        "The air was at {humidity} % when it was read at {time}, within the limit of {limit} % again; this stays until "
        "it is at {end} %.",
        humidity=humidity,
        time=scene.clock_text(typed.time_ms),
        limit=limit,
        end=end,
    )


def _dew_margins(scene: Scene) -> list[tuple[float, CoatAtRisk]]:
    dew_C = scene.air.dew_point_C
    if dew_C is None:
        return []
    films = [(scene.film_C(coat), coat) for coat in scene.coats]
    return [(film_C - dew_C, coat) for film_C, coat in films if film_C is not None]


def _dew_text(scene: Scene, margins: Sequence[tuple[float, CoatAtRisk]]) -> str:
    margin_K = min(margin_K for margin_K, _ in margins)
    margin = scene.units.difference(abs(margin_K))
    dew = scene.units.temperature(scene.air.dew_point_C or 0.0)
    if margin_K >= 0:
        return say("The film is {margin} above the dew point ({dew}).", margin=margin, dew=dew)
    return say("The film is {margin} below the dew point ({dew}).", margin=margin, dew=dew)


def _touched(standings: Sequence[tuple[Standing, CoatAtRisk]]) -> list[CoatAtRisk]:
    return [coat for standing, coat in standings if standing > Standing.FINE]


def _level(standings: Sequence[tuple[Standing, CoatAtRisk]]) -> Level:
    return Level(int(max(standing for standing, _ in standings)))
