"""One rule for each concern: from a look at the room to what is wrong with it, or nothing."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass

from studiowatch.room.air_movement import Movement
from studiowatch.room.limits import (
    AIR_SPEED,
    Standing,
    dew_margin_standing,
    film_margin_standing,
    humidity_limit,
    humidity_standing,
)
from studiowatch.studio.concern import AirNow, CoatAtRisk, Concern, Kind
from studiowatch.studio.counting import counted, is_or_are, listed
from studiowatch.studio.words import Level, Sentence

WARM_GENTLY = "Warm the room gently; keep the heater's air off the pieces, and the heater clear of fabric."
WARM_NO_FLAME = "Warm the room gently, without flame or glowing element, and keep fresh air coming in."


@dataclass(frozen=True, slots=True, kw_only=True)
class Scene:
    """One look at the room: what a rule may rest on. `coats` are those at risk; `before` is what was found last."""

    air: AirNow
    coats: tuple[CoatAtRisk, ...]
    now_ms: int
    clock_text: Callable[[int], str]
    before: Mapping[Kind, Concern]

    @property
    def has_solvent(self) -> bool:
        """Whether solvent vapour comes off any coat."""
        return any(coat.solvent for coat in self.coats)

    @property
    def warm_advice(self) -> str:
        """How to warm the room without spoiling a coat or starting a fire."""
        return WARM_NO_FLAME if self.has_solvent else WARM_GENTLY

    def standing_before(self, *kinds: Kind) -> Standing:
        """Return how the worst of `kinds` stood when last looked at."""
        levels = [int(self.before[kind].level) for kind in kinds if kind in self.before]
        return Standing(max(levels, default=0))

    def concern(
        self,
        kind: Kind,
        coats: Sequence[CoatAtRisk],
        sentence: Sentence,
        *,
        began_ms: int | None = None,
        may_sound: bool = False,
    ) -> Concern:
        """Return a concern about the pieces of `coats`; it keeps the earliest beginning it ever had."""
        earlier = self.before.get(kind)
        began_ms = self.now_ms if began_ms is None else began_ms
        pieces = {coat.piece_key: coat.piece_title for coat in coats}
        return Concern(
            kind=kind,
            level=sentence.level,
            piece_keys=tuple(pieces),
            piece_titles=tuple(pieces.values()),
            began_ms=began_ms if earlier is None else min(began_ms, earlier.began_ms),
            seen_ms=self.now_ms,
            sentence=sentence,
            may_sound=may_sound,
        )


def board_silent(scene: Scene) -> Concern:
    """Say that nothing has been heard of the room for too long: blindness is a concern of its own."""
    since_ms = scene.air.blind_since_ms(scene.now_ms)
    level = Level.ACT if scene.coats else Level.CAUTION
    titles = _titles(scene.coats)
    sentence = Sentence(
        level=level,
        headline=f"The board is silent: {_watched(scene.coats)}",
        detail=_joined(
            f"No reading since {scene.clock_text(since_ms)}.",
            f"{listed(titles)} {is_or_are(titles)} still drying." if titles else "No coat is wet.",
        ),
        advice="Check the board's cable and its port.",
    )
    return scene.concern(Kind.BOARD_SILENT, scene.coats, sentence, began_ms=since_ms, may_sound=level is Level.ACT)


def _watched(coats: Sequence[CoatAtRisk]) -> str:
    if not coats:
        return "the room is not watched"
    return f"{counted(len(coats), 'coat')} {'is' if len(coats) == 1 else 'are'} not watched"


def implausible(scene: Scene) -> Concern | None:
    """Say that a reading cannot be right, so that nobody trusts what rests on it."""
    if not scene.air.implausible:
        return None
    sentence = Sentence(
        level=Level.CAUTION,
        headline="A reading cannot be right",
        detail=scene.air.implausible,
        advice="Check the sensor; do not trust the ready times until it reads well again.",
    )
    return scene.concern(Kind.READING_IMPLAUSIBLE, scene.coats, sentence)


def air_moving(scene: Scene) -> Concern | None:
    """Say that air moves over a coat that it still harms: at stage one; aloud from stage two or a strong draught."""
    wet = [coat for coat in scene.coats if coat.wet]
    if not wet or not scene.air.is_moving:
        return None
    bare = [coat for coat in wet if not coat.covered]
    sentence = _moving_over_bare(scene, bare) if bare else _moving_over_covered(scene, wet)
    earlier = scene.before.get(Kind.AIR_MOVING)
    speed_m_s = scene.air.air_speed_m_s
    may_sound = bool(bare) and (
        scene.air.movement is Movement.FAN
        or (speed_m_s is not None and speed_m_s > AIR_SPEED.act)
        or (earlier is not None and earlier.may_sound)
    )
    began_ms = scene.air.moving_since_ms
    return scene.concern(Kind.AIR_MOVING, bare or wet, sentence, began_ms=began_ms, may_sound=may_sound)


def _moving_over_bare(scene: Scene, bare: Sequence[CoatAtRisk]) -> Sentence:
    speed_m_s = scene.air.air_speed_m_s
    is_strong = speed_m_s is None or speed_m_s >= AIR_SPEED.caution
    was_strong = scene.standing_before(Kind.AIR_MOVING) is Standing.ACT
    titles = _titles(bare)
    advice = "Turn it off or turn it away." if scene.air.movement is Movement.FAN else "Look for a fan, window or door."
    if scene.has_solvent:
        advice = "Turn it away from the pieces, and keep fresh air coming in."
    return Sentence(
        level=Level.ACT if is_strong or was_strong else Level.CAUTION,
        headline=f"Air is moving over {counted(len(bare), 'wet coat')}",
        detail=f"{_movement_text(scene)} {listed(titles)} {is_or_are(titles)} still wet.",
        advice=advice,
    )


def _moving_over_covered(scene: Scene, covered: Sequence[CoatAtRisk]) -> Sentence:
    titles = _titles(covered)
    return Sentence(
        level=Level.CAUTION,
        headline=f"Air is moving over {counted(len(covered), 'covered coat')}",
        detail=f"{_movement_text(scene)} {listed(titles)} {is_or_are(titles)} still wet under the cover.",
        advice="Leave the cover on." if scene.has_solvent else "Leave the cover on until the air is still.",
    )


def _movement_text(scene: Scene) -> str:
    since_ms = scene.air.moving_since_ms or scene.now_ms
    speed_m_s = scene.air.air_speed_m_s
    speed_text = "" if speed_m_s is None else f" ({speed_m_s:.2f} m/s)"
    if scene.air.movement is Movement.FAN:
        return f"A fan came on at {scene.clock_text(since_ms)}{speed_text}."
    return f"The air has moved since {scene.clock_text(since_ms)}{speed_text}."


def too_cold(scene: Scene) -> Concern | None:
    """Say that a film nears, or is below, the temperature at which it can form; later warmth does not undo that."""
    before = scene.standing_before(Kind.TOO_COLD)
    coldest: list[tuple[float, CoatAtRisk]] = []
    for coat in scene.coats:
        film_C = _film_C(scene, coat)
        if coat.forming and coat.mfft_C is not None and film_C is not None:
            coldest.append((film_C - coat.mfft_C, coat))
    standings = [(film_margin_standing(margin_K, before), coat) for margin_K, coat in coldest]
    touched = _touched(standings)
    if not touched:
        return None
    level = _level(standings)
    margin_K, worst = min(coldest, key=lambda pair: pair[0])
    mfft_C = worst.mfft_C or 0.0
    titles = _titles(touched)
    now = "Too cold for" if level is Level.ACT else "It is getting cold for"
    sentence = Sentence(
        level=level,
        headline=f"{now} {counted(len(touched), 'drying coat')}",
        detail=f"The film is at {mfft_C + margin_K:.1f} °C and must stay above {mfft_C:g} °C until it is clear: "
        f"{listed(titles)}.",
        advice=scene.warm_advice,
    )
    return scene.concern(Kind.TOO_COLD, touched, sentence, may_sound=level is Level.ACT)


def near_dew_point(scene: Scene) -> Concern | None:
    """Say that a film is so cold that water may settle on it, in air that is not damp for it in itself."""
    damp_air = damp(scene)
    spoken_for = () if damp_air is None else damp_air.piece_keys
    margins = [(margin_K, coat) for margin_K, coat in _dew_margins(scene) if coat.piece_key not in spoken_for]
    before = scene.standing_before(Kind.NEAR_DEW_POINT)
    standings = [(dew_margin_standing(margin_K, before), coat) for margin_K, coat in margins]
    touched = _touched(standings)
    if not touched:
        return None
    level = _level(standings)
    now = "Water may settle on" if level is Level.ACT else "The dew point is near for"
    titles = _titles(touched)
    sentence = Sentence(
        level=level,
        headline=f"{now} {counted(len(touched), 'drying coat')}",
        detail=f"{_dew_text(scene, margins)} {listed(titles)} {is_or_are(titles)} still drying.",
        advice=scene.warm_advice,
    )
    return scene.concern(Kind.NEAR_DEW_POINT, touched, sentence, may_sound=level is Level.ACT)


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
    strictest = min((humidity_limit(coat.max_humidity_pct) for coat in touched), key=lambda limit: limit.act)
    limit_pct = strictest.act if humidity_pct > strictest.act else strictest.caution
    titles = _titles(touched)
    now = "Too damp for" if level is Level.ACT else "It is getting damp for"
    sentence = Sentence(
        level=level,
        headline=f"{now} {counted(len(touched), 'drying coat')}",
        detail=_joined(
            f"The air is at {humidity_pct:.0f} %; the limit is {limit_pct:g} %.",
            _dew_text(scene, margins) if any(standing for standing, _ in dew_standings) else "",
            f"{listed(titles)} {is_or_are(titles)} still drying.",
        ),
        advice=scene.warm_advice,
    )
    return scene.concern(Kind.DAMP, touched, sentence, may_sound=level is Level.ACT)


def _dew_margins(scene: Scene) -> list[tuple[float, CoatAtRisk]]:
    dew_C = scene.air.dew_point_C
    if dew_C is None:
        return []
    films = [(_film_C(scene, coat), coat) for coat in scene.coats]
    return [(film_C - dew_C, coat) for film_C, coat in films if film_C is not None]


def _dew_text(scene: Scene, margins: Sequence[tuple[float, CoatAtRisk]]) -> str:
    margin_K = min(margin_K for margin_K, _ in margins)
    side = "above" if margin_K >= 0 else "below"
    return f"The film is {abs(margin_K):.1f} °C {side} the dew point ({scene.air.dew_point_C:.1f} °C)."


def _film_C(scene: Scene, coat: CoatAtRisk) -> float | None:
    return scene.air.temperature_C if coat.film_C is None else coat.film_C


def _touched(standings: Sequence[tuple[Standing, CoatAtRisk]]) -> list[CoatAtRisk]:
    return [coat for standing, coat in standings if standing > Standing.FINE]


def _level(standings: Sequence[tuple[Standing, CoatAtRisk]]) -> Level:
    return Level(int(max(standing for standing, _ in standings)))


def _titles(coats: Sequence[CoatAtRisk]) -> tuple[str, ...]:
    return tuple(dict.fromkeys(coat.piece_title for coat in coats))


def _joined(*sentences: str) -> str:
    return " ".join(sentence for sentence in sentences if sentence)
