"""The what-if page: what she would do with the room, and what that makes of every piece's ready times."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from enum import StrEnum

from studiowatch.coats.stages import Stage
from studiowatch.service.films_to_come import When
from studiowatch.service.room_now import MOVING_M_S
from studiowatch.service.what_if import BothWays, Otherways
from studiowatch.speech.words import mark, say
from studiowatch.studio.otherwise import STILL_M_S, Otherwise
from studiowatch.ui.models.times import HOUR_MS, MINUTE_MS, lasting_words, near_words
from studiowatch.ui.models.tones import Tone

NOTHING_YET = mark("Move a slider: every piece's ready time moves with it. Nothing in the room or the records changes.")
NO_PIECE = mark("No piece on the rack waits for anything. Lay a coat, and ask here what another room would make of it.")
WAITING = mark("Reading how the coats stand…")
_GOALS = {
    Stage.CLEAR: mark("Clear by {time}"),
    Stage.DRY_TO_TOUCH: mark("Dry to touch by {time}"),
    Stage.DRY_TO_RECOAT: mark("Next coat from {time}"),
    Stage.CURED: mark("Cured by {time}"),
}
_UNSEEN = {
    Stage.CLEAR: mark("Clear: not in sight"),
    Stage.DRY_TO_TOUCH: mark("Dry to touch: not in sight"),
    Stage.DRY_TO_RECOAT: mark("Next coat: not in sight"),
    Stage.CURED: mark("Cured: not in sight"),
}


class AirWish(StrEnum):
    """What she would do with the air."""

    AS_IT_COMES = "as-it-comes"
    STILL = "still"
    FAN = "fan"


AIR_WORDS: Mapping[AirWish, str] = {
    AirWish.AS_IT_COMES: mark("as it comes"),
    AirWish.STILL: mark("nothing on"),
    AirWish.FAN: mark("a fan on"),
}
HOURS: Mapping[int | None, str] = {
    6: mark("6 h"),
    12: mark("12 h"),
    24: mark("a day"),
    48: mark("2 days"),
    None: mark("for good"),
}


@dataclass(frozen=True, slots=True, kw_only=True)
class Wish:
    """What she would do; None is as it comes. `hours` counts from now, None is for good."""

    temperature_C: float | None = None
    humidity_pct: float | None = None
    air: AirWish = AirWish.AS_IT_COMES
    cover: bool = False
    hours: int | None = None

    def held(self, now_ms: int) -> Otherwise:
        """Return what of the room is held from now, UTC ms, on."""
        return Otherwise(
            temperature_C=self.temperature_C,
            humidity_pct=self.humidity_pct,
            air_speed_m_s=MOVING_M_S if self.air is AirWish.FAN else None,
            most_air_speed_m_s=STILL_M_S if self.air is AirWish.STILL else None,
            until_ms=None if self.hours is None else now_ms + self.hours * HOUR_MS,
        )


@dataclass(frozen=True, slots=True, kw_only=True)
class Bar:
    """A likely range and the time that is told, as shares of the line's length; None is beyond its end."""

    low: float | None
    high: float | None
    by: float | None


@dataclass(frozen=True, slots=True, kw_only=True)
class StageLine:
    """One stage of a piece in both rooms; the line reaches from now to `end`, which is "" where no time is told."""

    told: str
    change: str
    tone: Tone
    as_it_comes: Bar
    otherwise: Bar
    end: str

    @property
    def spoken(self) -> str:
        """All of it for a screen reader."""
        return f"{self.told}, {self.change}" if self.change else self.told


@dataclass(frozen=True, slots=True, kw_only=True)
class PieceLines:
    """One piece with its stages."""

    key: str
    title: str
    coat: str
    stages: tuple[StageLine, ...]


def piece_lines(answers: Iterable[Otherways], now_ms: int) -> tuple[PieceLines, ...]:
    """Return the rows of the page; `now_ms` is UTC ms."""
    return tuple(
        PieceLines(
            key=one.piece_key,
            title=one.title,
            coat=one.coat,
            stages=tuple(_line(stage, now_ms) for stage in one.stages),
        )
        for one in answers
    )


def _line(stage: BothWays, now_ms: int) -> StageLine:
    by_ms = stage.otherwise.by_ms
    told = say(_UNSEEN[stage.stage]) if by_ms is None else say(_GOALS[stage.stage], time=near_words(by_ms, now_ms))
    change, tone = _change(stage)
    end_ms = max(_ends_ms(stage), default=now_ms + HOUR_MS)
    return StageLine(
        told=told,
        change=change,
        tone=tone,
        as_it_comes=_bar(stage.as_it_comes, now_ms, end_ms),
        otherwise=_bar(stage.otherwise, now_ms, end_ms),
        end=near_words(end_ms, now_ms) if _is_any_told(stage) else "",
    )


def _change(stage: BothWays) -> tuple[str, Tone]:
    sooner_ms = stage.sooner_ms
    if sooner_ms is None:
        if stage.otherwise.by_ms is None and stage.as_it_comes.by_ms is not None:
            return say("later than is foretold"), Tone.CAUTION
        return "", Tone.MUTED
    if abs(sooner_ms) < MINUTE_MS:
        return say("as it is"), Tone.MUTED
    length = lasting_words(abs(sooner_ms))
    if sooner_ms > 0:
        return say("{length} sooner", length=length), Tone.GOOD
    return say("{length} later", length=length), Tone.CAUTION


def _is_any_told(stage: BothWays) -> bool:
    """Return whether the line ends at a time that is told, and not where a range that has no end begins."""
    return stage.as_it_comes.by_ms is not None or stage.otherwise.by_ms is not None


def _ends_ms(stage: BothWays) -> Sequence[int]:
    both = (stage.as_it_comes, stage.otherwise)
    return [end for when in both for end in (when.by_ms, when.p90_ms, when.p10_ms) if end is not None]


def _bar(when: When, now_ms: int, end_ms: int) -> Bar:
    def share(time_ms: int | None) -> float | None:
        return None if time_ms is None else min(max((time_ms - now_ms) / max(end_ms - now_ms, 1), 0.0), 1.0)

    return Bar(low=share(when.p10_ms), high=share(when.p90_ms), by=share(when.by_ms))
