"""Warnings ahead of their time: damp, dew and cold that the room is heading for, and a fan that is meant to go on.

Each only while a coat is still open to it.

They are a caution of the same kind as what they foretell, and become it once the limit is passed.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace

from studiowatch.room.limits import DEW_MARGIN, FILM_MARGIN, Limit, humidity_limit
from studiowatch.room.trend import Crossing
from studiowatch.speech.units import Units, chosen
from studiowatch.speech.words import mark, say
from studiowatch.studio.concern import CoatAtRisk, Concern, Kind
from studiowatch.studio.counting import listed
from studiowatch.studio.fan_ahead import fan_meant
from studiowatch.studio.heading import Figure
from studiowatch.studio.scene import Scene, titles_of
from studiowatch.studio.words import Level, Sentence

MINUTE_MS = 60_000  # ms
HOUR_MS = 60 * MINUTE_MS  # ms
LONG_MS = 90 * MINUTE_MS  # ms, beyond which hours are said: minutes are read more easily up to an hour and a half
_SAYS = {
    Kind.DAMP: mark("Humidity will pass the limit in about {minutes} minutes"),
    Kind.NEAR_DEW_POINT: mark("The dew point will be too near in about {minutes} minutes"),
    Kind.TOO_COLD: mark("It will be too cold in about {minutes} minutes"),
}
_SAYS_HOURS = {
    Kind.DAMP: mark("Humidity will pass the limit in about {hours} hours"),
    Kind.NEAR_DEW_POINT: mark("The dew point will be too near in about {hours} hours"),
    Kind.TOO_COLD: mark("It will be too cold in about {hours} hours"),
}
_DETAILS = {
    Kind.DAMP: mark(
        "If the room goes on like this it passes {limit} at about {at}, between {low} and {high}: {titles}."
    ),
    Kind.NEAR_DEW_POINT: mark(
        "If the room goes on like this the film is less than {limit} above the dew point at "
        "about {at}, between {low} and {high}: {titles}."
    ),
    Kind.TOO_COLD: mark(
        "If the room goes on like this the film is below {limit} at about {at}, between {low} and {high}: {titles}."
    ),
}
_TOLD: dict[Kind, Callable[[Units, float], str]] = {
    Kind.DAMP: lambda units, limit_pct: f"{units.plain(limit_pct)} %",
    Kind.NEAR_DEW_POINT: Units.difference_limit,
    Kind.TOO_COLD: Units.limit,
}
_Foreseen = tuple[Crossing, CoatAtRisk, float, str]  # when, which coat, the limit that is passed, and its basis


@dataclass(frozen=True, slots=True, kw_only=True)
class _Look:
    """How a coat stands to a limit: its figure, the value of that now, and the limit as it is told."""

    kind: Kind
    figure: Figure
    limit: Limit
    value: float
    told: float


def foreseen(scene: Scene, kind: Kind, found: Concern | None) -> Concern | None:
    """Return what the rule of `kind` found, with what the room is heading for; itself if there is nothing to add."""
    if kind is Kind.AIR_MOVING:
        return found or fan_meant(scene)
    rule = _RULES.get(kind)
    if rule is None or (found is not None and found.level is Level.ACT):
        return found
    ahead = [one for one in rule(scene) if _matters(scene, one)]
    if not ahead:
        return found
    crossing, _, limit, basis = min(ahead, key=lambda one: one[0].middle_ms)
    coats = [coat for _, coat, _, _ in ahead]
    at_ms = scene.now_ms + crossing.middle_ms
    sentence = Sentence(
        level=Level.CAUTION,
        headline=_headline(kind, crossing.middle_ms),
        detail=say(
            _DETAILS[kind],
            limit=_TOLD[kind](scene.units, limit),
            at=scene.clock_text(at_ms),
            low=scene.clock_text(scene.now_ms + crossing.low_ms),
            high=scene.clock_text(scene.now_ms + crossing.high_ms),
            titles=listed(titles_of(coats)),
        ),
        advice=scene.warm_advice,
    )
    if found is not None:
        return replace(found, sentence=sentence, expected_ms=at_ms)
    line = say("Foreseen by the room's days so far.") if crossing.by_days else say("Foreseen by the room's last hour.")
    return scene.concern(kind, coats, sentence, basis=f"{basis} {line}", expected_ms=at_ms, is_ahead=True)


def unmeasured(scene: Scene, found: Sequence[Concern]) -> list[Concern]:
    """Return what is ahead where nobody measures the air: the fan that is meant, unless air that moved still stands."""
    meant = None if any(concern.kind is Kind.AIR_MOVING for concern in found) else fan_meant(scene)
    return [] if meant is None else [meant]


def still_ahead(scene: Scene, earlier: Concern) -> Concern | None:
    """Return what was ahead when the room was last seen, until its time comes; None for a fan, which is asked anew."""
    left_ms = (earlier.expected_ms or scene.now_ms) - scene.now_ms
    if left_ms <= 0 or earlier.kind not in _RULES:
        return None
    sentence = replace(earlier.sentence, headline=_headline(earlier.kind, left_ms))
    return replace(earlier, sentence=sentence, unseen_ms=scene.now_ms)


def _headline(kind: Kind, ahead_ms: int) -> str:
    if ahead_ms <= LONG_MS:
        return say(_SAYS[kind], minutes=_about(ahead_ms))
    return say(_SAYS_HOURS[kind], hours=chosen().plain(round(2.0 * ahead_ms / HOUR_MS) / 2.0))


def _matters(scene: Scene, one: _Foreseen) -> bool:
    """Return whether the coat is still open to harm by then."""
    crossing, coat, _, _ = one
    return coat.safe_ms is None or scene.now_ms + crossing.middle_ms < coat.safe_ms


def _about(ahead_ms: int) -> int:
    """Return minutes as one says them: to five, and to ten beyond half an hour."""
    minutes = ahead_ms / MINUTE_MS
    step = 10 if minutes > 30 else 5  # noqa: PLR2004 - half an hour
    return max(step, round(minutes / step) * step)


def _damp(scene: Scene) -> Iterator[_Foreseen]:
    humidity_pct = scene.air.humidity_pct
    for coat in scene.coats:
        if humidity_pct is not None and coat.forming and not coat.solvent:
            limit = humidity_limit(coat.max_humidity_pct)
            look = _Look(kind=Kind.DAMP, figure=Figure.HUMIDITY, limit=limit, value=humidity_pct, told=limit.act)
            yield from _passed(scene, coat, look)


def _dew(scene: Scene) -> Iterator[_Foreseen]:
    dew_C = scene.air.dew_point_C
    for coat in scene.coats:
        film_C = scene.film_C(coat)
        if dew_C is not None and film_C is not None:
            look = _Look(
                kind=Kind.NEAR_DEW_POINT,
                figure=Figure.ABOVE_DEW,
                limit=DEW_MARGIN,
                value=film_C - dew_C,
                told=DEW_MARGIN.act,
            )
            yield from _passed(scene, coat, look)


def _cold(scene: Scene) -> Iterator[_Foreseen]:
    for coat in scene.coats:
        film_C = scene.film_C(coat)
        if coat.forming and coat.mfft_C is not None and film_C is not None:
            look = _Look(
                kind=Kind.TOO_COLD,
                figure=Figure.TEMPERATURE,
                limit=FILM_MARGIN,
                value=film_C - coat.mfft_C,
                told=coat.mfft_C,
            )
            yield from _passed(scene, coat, look)


def _passed(scene: Scene, coat: CoatAtRisk, look: _Look) -> Iterator[_Foreseen]:
    earlier = scene.before.get(look.kind)
    said_before = earlier is not None and earlier.expected_ms is not None
    crossing = scene.heading.until(look.figure, look.limit.act - look.value, said_before=said_before)
    if crossing is not None:
        yield crossing, coat, look.told, look.limit.basis


_RULES: dict[Kind, Callable[[Scene], Iterator[_Foreseen]]] = {
    Kind.DAMP: _damp,
    Kind.NEAR_DEW_POINT: _dew,
    Kind.TOO_COLD: _cold,
}


def without_doubles(found: Sequence[Concern]) -> list[Concern]:
    """Return the concerns with damp and dew said once of the same pieces: what is worse, else damp.

    Where one is about a piece that the other does not name, both stand: nothing is left unsaid.
    """
    damp = next((one for one in found if one.kind is Kind.DAMP), None)
    dew = next((one for one in found if one.kind is Kind.NEAR_DEW_POINT), None)
    if damp is None or dew is None:
        return list(found)
    spare, kept = (damp, dew) if dew.level > damp.level else (dew, damp)
    if not set(spare.piece_keys) <= set(kept.piece_keys):
        return list(found)
    return [one for one in found if one is not spare]
