"""What coats to come will need, from the film model in the air ahead; what was once asked is remembered."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field, replace

from studiowatch.coats.anchoring import Anchor, anchor
from studiowatch.coats.belief import PRIOR, Belief
from studiowatch.coats.data_sheet import DataSheet
from studiowatch.coats.film import advance_through, lay
from studiowatch.coats.readiness import Ready, next_ready, outlook, ready_times
from studiowatch.coats.stages import Orientation, Stage
from studiowatch.coats.standing import Standing, standing_on
from studiowatch.physics.air import AnyAir
from studiowatch.physics.ranges import OutOfRange
from studiowatch.service.air_ahead import AirAhead
from studiowatch.service.coat_run import DRAWS, SEED
from studiowatch.studio.plan_shapes import Times, Waits
from studiowatch.studio.prompts import COVER_MS

AHEAD_S = 14 * 86_400.0  # s of air ahead that a coat to come is followed through; its last air is carried on
FAR_S = 400 * 86_400.0  # s, how far a stage is looked for: over a year
COVER_S = COVER_MS / 1000  # s after laying, when the mesh cover is set: common practice

_Key = tuple[DataSheet, float, Orientation, bool, Sequence[tuple[AnyAir, float]]]


class PlanDropped(Exception):  # noqa: N818 - nobody waits for it any more, so it is no fault
    """The plan that this was for is not wanted any more: the studio is being closed."""


@dataclass(slots=True)
class FilmWaits:
    """Answers for one state of the room and of what is held of the products.

    Attributes
    ----------
    beliefs : mapping of str to Belief
        What touch tests have taught of a product, by the name of its sheet.
    is_wanted : callable
        Whether anyone still waits for the answers; asked before each run of the model.
    """

    air_ahead: AirAhead
    beliefs: Mapping[str, Belief] = field(default_factory=dict)
    is_wanted: Callable[[], bool] = lambda: True
    runs: int = 0
    _tied: dict[DataSheet, tuple[Standing, Anchor]] = field(default_factory=dict)
    _kept: dict[_Key, Waits | None] = field(default_factory=dict)

    def in_air(self, air_ahead: AirAhead) -> FilmWaits:
        """Return one for the same products in another room: to tie a sheet to its draws takes part of a second."""
        return replace(self, air_ahead=air_ahead, runs=0, _kept={})

    def of(
        self, sheet: DataSheet, *, side_m: float, orientation: Orientation, through: bool, lay_ms: int
    ) -> Waits | None:
        """Return what a coat as thick as its sheet says needs when it is laid at `lay_ms`, on what is ready for it.

        None if the model refuses it: the air or the size lies outside what it knows.

        Raises
        ------
        PlanDropped
            If nobody waits for it any more.
        """
        spans = tuple(self.air_ahead(lay_ms, AHEAD_S))
        key = (sheet, side_m, orientation, through, spans)
        if key not in self._kept:
            if not self.is_wanted():
                raise PlanDropped
            self.runs += 1
            try:
                self._kept[key] = self._run(sheet, side_m, orientation, spans, through=through)
            except OutOfRange:
                self._kept[key] = None
        return self._kept[key]

    def _run(
        self,
        sheet: DataSheet,
        side_m: float,
        orientation: Orientation,
        spans: Sequence[tuple[AnyAir, float]],
        *,
        through: bool,
    ) -> Waits:
        standing, tied = self._tied_to(sheet)
        film = lay(sheet, tied, wet_um=sheet.wet_um, side_m=side_m, orientation=orientation)
        first, rest = _split(spans, COVER_S)
        film, _ = advance_through(film, first)
        film, _ = advance_through(film, rest, covered=True)
        table = outlook(film, spans[-1][0], horizon_s=FAR_S, covered=True)
        times = ready_times(sheet, table, standing.weights(table))
        return waits_of(sheet, times, through=through)

    def _tied_to(self, sheet: DataSheet) -> tuple[Standing, Anchor]:
        if sheet not in self._tied:
            standing = standing_on(self.beliefs.get(sheet.name, PRIOR), DRAWS, SEED, measured=False)
            self._tied[sheet] = standing, anchor(sheet, standing.particles.draws)
        return self._tied[sheet]


def _split(
    spans: Sequence[tuple[AnyAir, float]], at_s: float
) -> tuple[list[tuple[AnyAir, float]], list[tuple[AnyAir, float]]]:
    """Return the spans before and after `at_s`."""
    before: list[tuple[AnyAir, float]] = []
    after: list[tuple[AnyAir, float]] = []
    passed_s = 0.0
    for air, span_s in spans:
        early_s = min(max(at_s - passed_s, 0.0), span_s)
        before += [(air, early_s)] if early_s > 0.0 else []
        after += [(air, span_s - early_s)] if span_s > early_s else []
        passed_s += span_s
    return before, after


def waits_of(sheet: DataSheet, times: Mapping[Stage, Ready], *, through: bool) -> Waits:
    """Return the waits of a coat's stages, ms after laying; the next never before the sheet's own recoat time."""
    floor = round(sheet.recoat_h * 3_600_000)
    after = later(_ms(next_ready(times, through=through)), Times(p10=floor, p50=floor, p90=floor))
    return Waits(next=after, handle=_ms(times[Stage.DRY_HARD]), cured=_ms(times[Stage.CURED]))


def later(one: Times, other: Times) -> Times:
    """Return the later of two, each by each; not in sight where one of them is not."""
    p10, p50, p90 = (
        None if a is None or b is None else max(a, b)
        for a, b in ((one.p10, other.p10), (one.p50, other.p50), (one.p90, other.p90))
    )
    return Times(p10=p10, p50=p50, p90=p90)


def _ms(ready: Ready) -> Times:
    p10, p50, p90 = (None if s is None else round(s * 1000) for s in (ready.p10_s, ready.p50_s, ready.p90_s))
    return Times(p10=p10, p50=p50, p90=p90)
