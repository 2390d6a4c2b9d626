"""What if: when each piece would be ready in a room that is held otherwise from now on.

Quick enough to follow a slider: first a few of each film's draws are asked, then all. The rack's own times are
stretched by what the otherwise held room makes of the time to go, from the same draws in the same air, so that a room
that is left alone gives the rack's times.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field, replace

import numpy as np

from studiowatch.coats.fewer_draws import Rows, spread_draws, with_draws
from studiowatch.coats.film import Film
from studiowatch.coats.readiness import Ready, lasting, outlook
from studiowatch.coats.stages import Stage
from studiowatch.physics.air import AirDraws, AnyAir
from studiowatch.physics.ranges import Array
from studiowatch.service.coat_run import CARRIED_ON, HORIZON_S
from studiowatch.service.films_to_come import FilmsToCome, FilmToCome, When
from studiowatch.service.room_ahead import Spans
from studiowatch.studio.otherwise import Otherwise

FEW = 32  # draws that a moving slider is answered with
WIDE_S = ((6 * 3600.0, 3600.0), (24 * 3600.0, 3 * 3600.0), (np.inf, 12 * 3600.0))
"""Up to how far ahead the few have their air in spans of which length, s."""
COARSE = 8.0  # times as far as usual that a wet film of the few goes in a step: it moves their time to go by under 1 %
SOON_S = 60.0  # s to go, below which a time is moved along rather than stretched
_FREE = Otherwise()
QUANTILES = ("p10_s", "p50_s", "p90_s", "nominal_s")


@dataclass(frozen=True, slots=True, kw_only=True)
class BothWays:
    """When one coat reaches one stage in both rooms."""

    stage: Stage
    as_it_comes: When
    otherwise: When

    @property
    def sooner_ms(self) -> int | None:
        """How much sooner it is ready, ms; negative where it is later; None where either is not in sight."""
        if self.as_it_comes.by_ms is None or self.otherwise.by_ms is None:
            return None
        return self.as_it_comes.by_ms - self.otherwise.by_ms


@dataclass(frozen=True, slots=True, kw_only=True)
class Otherways:
    """One piece in both rooms, what it waits for last; `is_whole` says whether all draws were asked."""

    piece_key: str
    title: str
    coat: str
    stages: tuple[BothWays, ...]
    is_whole: bool


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class _Asked:
    """A film as it is asked, and its times if nothing is done; of all its draws where `rows` is None."""

    film: Film
    rows: Rows | None
    weights: Array | None
    times: Mapping[Stage, Ready]


@dataclass(slots=True)
class _Airs:
    """The air that comes, for all draws, and what is carried on beyond it; the films of one minute share both."""

    wide: bool
    _known: dict[tuple[int, Otherwise], tuple[Spans, AnyAir]] = field(default_factory=dict)

    def of(self, coming: Spans, at_ms: int, held: Otherwise) -> tuple[Spans, AnyAir]:
        """Return the air from `at_ms`, UTC ms, on with what is held, and the air after that."""
        key = (id(coming), held)
        if key not in self._known:
            spans = tuple(_widened(coming)) if self.wide else coming
            there = tuple(held_spans(spans, at_ms, held))
            self._known[key] = (there, lasting(there if held.until_ms is None else spans))
        return self._known[key]

    def forget(self, held: Otherwise) -> None:
        """Keep nothing of a room that is not asked for any more."""
        self._known = {key: spans for key, spans in self._known.items() if key[1] in (held, _FREE)}


@dataclass(slots=True)
class WhatIf:
    """Answers for the films that were lent. For one thread at a time."""

    lent: FilmsToCome
    _asked: dict[tuple[str, bool], _Asked] = field(default_factory=dict)
    _airs: dict[bool, _Airs] = field(default_factory=lambda: {whole: _Airs(wide=not whole) for whole in (False, True)})

    def prepare(self) -> Iterator[None]:
        """Ask the few draws of each film in turn what they give if nothing is done, so that the first answer has it."""
        for film in self.lent.films:
            self._asked_of(film, whole=False)
            yield

    def answers(self, held: Otherwise, *, cover: bool = False, whole: bool = False) -> Iterator[Otherways]:
        """Yield each piece as it would be, in the order of the rack.

        Parameters
        ----------
        held : Otherwise
            What is held from now on.
        cover : bool
            Whether a mesh cover is set over every coat now.
        whole : bool
            Whether all draws are asked, not `FEW`.
        """
        self._airs[whole].forget(held)
        for film in self.lent.films:
            covered = film.covered or cover
            is_same = held.is_as_it_comes and covered == film.covered
            otherwise = film.times if is_same else self._stretched(film, held, covered=covered, whole=whole)
            yield Otherways(
                piece_key=film.piece_key,
                title=film.title,
                coat=film.coat,
                stages=tuple(
                    BothWays(
                        stage=stage,
                        as_it_comes=film.when(stage, ready),
                        otherwise=film.when(stage, otherwise[stage]),
                    )
                    for stage, ready in film.times.items()
                ),
                is_whole=whole or is_same,
            )

    def _stretched(self, film: FilmToCome, held: Otherwise, *, covered: bool, whole: bool) -> Mapping[Stage, Ready]:
        """Return the rack's times, the time to go as much longer or shorter as that of the draws that are asked."""
        asked = self._asked_of(film, whole=whole)
        other = self._times(film, asked, held, covered=covered, whole=whole)
        age_s = (film.at_ms - film.laid_ms) / 1000.0
        return {stage: _told(age_s, ready, asked.times[stage], other[stage]) for stage, ready in film.times.items()}

    def _asked_of(self, film: FilmToCome, *, whole: bool) -> _Asked:
        key = (film.piece_key, whole)
        if key not in self._asked:
            rows = None if whole else spread_draws(film.goal_s, film.weights, FEW)
            fresh = _Asked(
                film=film.film if rows is None else with_draws(film.film, rows),
                rows=rows,
                weights=film.weights if rows is None else None,
                times=film.times,
            )
            times = self._times(film, fresh, _FREE, covered=film.covered, whole=whole)
            self._asked[key] = replace(fresh, times=times)
        return self._asked[key]

    def _times(
        self, film: FilmToCome, asked: _Asked, held: Otherwise, *, covered: bool, whole: bool
    ) -> Mapping[Stage, Ready]:
        coming, for_good = self._airs[whole].of(film.coming, film.at_ms, held)
        if asked.rows is not None:
            coming = [(_drawn(air, asked.rows), span_s) for air, span_s in coming]
            for_good = _drawn(for_good, asked.rows)
        table = outlook(
            asked.film,
            coming[0][0],
            horizon_s=HORIZON_S,
            covered=covered,
            coming=coming,
            beyond=for_good,
            coarse=1.0 if whole else COARSE,
            wanted=film.followed,
            carried_on=CARRIED_ON,
        )
        return film.ready(table, asked.weights)


def held_spans(coming: Spans, at_ms: int, held: Otherwise) -> Iterator[tuple[AnyAir, float]]:
    """Yield the air that comes from `at_ms`, UTC ms, on with what is held, each with how long it holds, s."""
    edges_ms = sorted(edge for edge in (held.from_ms, held.until_ms) if edge is not None)
    begins_ms = float(at_ms)
    for air, span_s in coming:
        ends_ms = begins_ms + 1000.0 * span_s
        inside = [float(edge) for edge in edges_ms if begins_ms < edge < ends_ms]
        for end_ms in (*inside, ends_ms):
            yield held.of(air) if held.holds_at(begins_ms) else air, (end_ms - begins_ms) / 1000.0
            begins_ms = end_ms


def _widened(coming: Spans) -> Iterator[tuple[AnyAir, float]]:
    """Yield drawn air as its means over wider spans; air that is the same for all draws as it is."""
    held: list[tuple[AirDraws, float]] = []
    at_s = 0.0
    for air, span_s in coming:
        if isinstance(air, AirDraws):
            held.append((air, span_s))
        else:
            yield air, span_s
        at_s += span_s
        width_s = next(width_s for until_s, width_s in WIDE_S if at_s <= until_s)
        if held and sum(one_s for _, one_s in held) >= width_s:
            yield lasting(held), sum(one_s for _, one_s in held)
            held = []
    if held:
        yield lasting(held), sum(one_s for _, one_s in held)


def _drawn(air: AnyAir, rows: Rows) -> AnyAir:
    if not isinstance(air, AirDraws):
        return air
    return AirDraws(
        temperature_C=air.temperature_C[rows],
        humidity_pct=air.humidity_pct[rows],
        air_speed_m_s=air.air_speed_m_s[rows],
        pressure_Pa=air.pressure_Pa,
    )


def _told(age_s: float, told: Ready, asked: Ready, other: Ready) -> Ready:
    """Return told times as the other room moves them; `age_s` is that of the coat."""
    return Ready(
        **{name: _moved(age_s, *(getattr(ready, name) for ready in (told, asked, other))) for name in QUANTILES}
    )


def _moved(age_s: float, told_s: float | None, asked_s: float | None, other_s: float | None) -> float | None:
    """Return one told time as the other room moves it; all are since the laying, s, None where not reached."""
    if told_s is None or asked_s is None or other_s is None:
        return other_s
    if asked_s - age_s < SOON_S:
        return told_s + other_s - asked_s
    return age_s + (told_s - age_s) * (other_s - age_s) / (asked_s - age_s)
