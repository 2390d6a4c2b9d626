"""The films on the rack as they stand, lent to whoever asks what another room would make of them."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace

import numpy as np

from studiowatch.coats.data_sheet import DataSheet, Kind
from studiowatch.coats.film import Film
from studiowatch.coats.readiness import Ready, next_ready, ready_at, recoat_s
from studiowatch.coats.stage_table import ROW
from studiowatch.coats.stages import Stage
from studiowatch.physics.moist_air import dew_point_if_any
from studiowatch.physics.ranges import Array
from studiowatch.service.air_ahead import calm
from studiowatch.service.coat_run import HORIZON_S, CoatRun
from studiowatch.service.rack import Rack
from studiowatch.service.rack_coats import following_coat, waits_through
from studiowatch.service.rack_risks import coats_at_risk
from studiowatch.service.room_ahead import RoomAhead, Spans
from studiowatch.studio.concern import AirNow, CoatAtRisk
from studiowatch.studio.pieces import Piece
from studiowatch.studio.unready import Unready


@dataclass(frozen=True, slots=True, kw_only=True)
class When:
    """When a piece is ready, UTC ms: nine in ten by `by_ms`, and the likely range; None is not in sight."""

    by_ms: int | None
    p10_ms: int | None
    p90_ms: int | None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class FilmToCome:
    """The topmost coat of a piece, and when the rack tells that it reaches what is waited for.

    Attributes
    ----------
    through : bool
        Whether the next coat waits until this one is dry through as well.
    laid_ms, at_ms : int
        UTC ms of its laying, and up to which the film has dried.
    coming : sequence of (air, s)
        The air that it will be in if nothing is done, and how long each of it holds.
    times : mapping of Stage to Ready
        As the rack tells them: when the room no longer spoils it, if it still may, and last what the piece waits for.
    table, weights : ndarray
        What stands behind them: when each draw reaches each stage, s, and how likely it is.
    unready : Unready or None
        Her last test of it, if that found it tacky or milky.
    """

    piece_key: str
    title: str
    coat: str
    sheet: DataSheet
    film: Film
    laid_ms: int
    at_ms: int
    through: bool
    covered: bool
    coming: Spans
    times: Mapping[Stage, Ready]
    table: Array
    weights: Array
    unready: Unready | None = None

    @property
    def goal(self) -> Stage:
        """What the piece waits for."""
        return list(self.times)[-1]

    @property
    def goal_s(self) -> Array:
        """When each draw is ready for what the piece waits for, s since the laying."""
        stages = (self.goal, Stage.DRY_THROUGH) if self.through else (self.goal,)
        reached_s: Array = self.table[[ROW[stage] for stage in stages]].max(axis=0)
        return reached_s

    @property
    def followed(self) -> tuple[Stage, ...]:
        """The stages that its times are made of."""
        return (*self.times, Stage.DRY_THROUGH) if self.through else tuple(self.times)

    def ready(self, table: Array, weights: Array | None) -> Mapping[Stage, Ready]:
        """Return its times by a table as of `outlook`; `weights` as in `ready_at`."""
        found = {stage: ready_at(table[ROW[stage]], weights) for stage in self.followed}
        return _waited_for(found, self.times, through=self.through)

    def when(self, stage: Stage, ready: Ready) -> When:
        """Return `ready` in UTC ms, told as on the rack: in no room is what it waits for there before a new test."""
        p10_s, p90_s = ready.p10_s, ready.p90_s
        if stage is Stage.DRY_TO_RECOAT:
            p10_s, p90_s = recoat_s(self.sheet, p10_s), recoat_s(self.sheet, p90_s)
        p10_ms, p90_ms = self._ms(p10_s), self._ms(p90_s)
        if stage is self.goal and self.unready is not None:
            p10_ms, p90_ms = self.unready.likely_ms(p10_ms), self.unready.likely_ms(p90_ms)
        return When(by_ms=p90_ms, p10_ms=p10_ms, p90_ms=p90_ms)

    def _ms(self, after_s: float | None) -> int | None:
        return None if after_s is None else self.laid_ms + round(after_s * 1000)


@dataclass(frozen=True, slots=True, kw_only=True)
class FilmsToCome:
    """What is lent: nothing of the rack is changed by asking.

    Attributes
    ----------
    air, at_risk
        The room as it is now, or where nothing is read as the films have it, and the coats that it could spoil.
    vapour : str
        In words the coat that gives off flammable vapour, or "".
    """

    now_ms: int
    films: tuple[FilmToCome, ...]
    air: AirNow
    at_risk: tuple[CoatAtRisk, ...]
    vapour: str = ""


def films_to_come(rack: Rack, room: RoomAhead, air: AirNow, now_ms: int, vapour: str) -> FilmsToCome:
    """Return the films of the pieces that wait for something still; for the keeper's thread."""
    films = []
    for piece in rack.on_rack():
        run = rack.stacks.top(piece)
        goal = Stage.CURED if following_coat(piece) is None else Stage.DRY_TO_RECOAT
        if run is not None:
            label = rack.stacks.labels(piece)[piece.index_of(run.coat.key)]
            through = waits_through(rack, piece, run)
            film = _film(run, room, piece, coat=label, goal=goal, through=through)
            if film is not None and _is_awaited(film, now_ms):
                films.append(film)
    return FilmsToCome(
        now_ms=now_ms, films=tuple(films), air=_known(air, films), at_risk=tuple(coats_at_risk(rack)), vapour=vapour
    )


def _film(run: CoatRun, room: RoomAhead, piece: Piece, *, coat: str, goal: Stage, through: bool) -> FilmToCome | None:
    if run.air is None or run.table is None or run.weights is None or goal not in run.ahead:
        return None
    stages = [stage for stage in (_safe(run.sheet), goal) if stage is goal or run.film.reached_s(stage) is None]
    return FilmToCome(
        piece_key=piece.key,
        title=piece.title,
        coat=coat,
        sheet=run.sheet,
        film=run.film,
        laid_ms=run.laid_ms,
        at_ms=run.at_ms,
        through=through,
        covered=run.covered,
        coming=room.spans(calm(run.air), run.at_ms, HORIZON_S),
        times=_waited_for(run.ahead, stages, through=through),
        table=run.table,
        weights=run.weights,
        unready=run.unready(),
    )


def _waited_for(found: Mapping[Stage, Ready], stages: Iterable[Stage], *, through: bool) -> Mapping[Stage, Ready]:
    """Return the times of `stages`, that of the next coat with what else it waits for."""
    return {
        stage: next_ready(found, through=through) if stage is Stage.DRY_TO_RECOAT else found[stage] for stage in stages
    }


def _known(air: AirNow, films: Sequence[FilmToCome]) -> AirNow:
    """Return the room with what is not read of it as the films have it."""
    if not films or (air.temperature_C is not None and air.humidity_pct is not None):
        return air
    first = films[0].coming[0][0]
    temperature_C, humidity_pct = (float(np.ravel(one)[0]) for one in (first.temperature_C, first.humidity_pct))
    return replace(
        air,
        temperature_C=temperature_C,
        humidity_pct=humidity_pct,
        dew_point_C=dew_point_if_any(temperature_C, humidity_pct),
        age_s=0.0,
    )


def _is_awaited(film: FilmToCome, now_ms: int) -> bool:
    """Return whether a film is not ready yet, and no test speaks against the time of it."""
    by_ms = film.when(film.goal, film.times[film.goal]).by_ms
    return by_ms is None or (by_ms > now_ms and (film.unready is None or film.unready.told_ms(by_ms) is not None))


def _safe(sheet: DataSheet) -> Stage:
    """Return the stage from which the room no longer spoils a coat."""
    return Stage.CLEAR if sheet.clear_film and sheet.kind is Kind.WATERBORNE else Stage.DRY_TO_TOUCH
