"""Studios with a known truth: drawn from the stated spreads, dried by the same physics, tested as she might.

Each studio has one room and one product for all its coats, and a thickness of its own for each coat. Its truth is an
independent draw, none of the draws of the ranges. She tests each coat at plausible times, with the stated rate of
mistakes. The ranges are then asked whether they held what truly happened.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field

import numpy as np

from studiowatch.coats.anchoring import anchor
from studiowatch.coats.belief import COAT, PRIOR, Evidence, belief_of
from studiowatch.coats.data_sheet import DataSheet
from studiowatch.coats.draws import FIELDS, Draws, draws_of
from studiowatch.coats.film import advance, lay
from studiowatch.coats.learning import EDGE, MISTAKEN, Seen
from studiowatch.coats.readiness import outlook, ready_at
from studiowatch.coats.stage_table import ROW
from studiowatch.coats.stages import Stage
from studiowatch.coats.standing import Standing, standing_on
from studiowatch.physics.air import Air
from studiowatch.physics.ranges import Array

STAGES = (Stage.TACK_FREE, Stage.CLEAR, Stage.DRY_TO_RECOAT)
TESTED = {Stage.TACK_FREE: 3, Stage.CLEAR: 2}  # how many times at most a coat is tested for it
HORIZON_S = 30 * 86400.0  # s, beyond any stage in these rooms
DRAWS = 256  # draws of a range, as of a live coat


@dataclass(frozen=True, kw_only=True)
class Spell:
    """One coat as it is laid in every studio of a group: how thick she says it is, and the airs over it."""

    sheet: DataSheet
    wet_um: float
    side_m: float
    airs: tuple[tuple[float, Air], ...]
    last: Air

    def table(self, draws: Draws) -> Array:
        """Return when each draw reaches each stage, s since laying."""
        film = lay(self.sheet, anchor(self.sheet, draws), wet_um=self.wet_um, side_m=self.side_m)
        for span_s, air in self.airs:
            film, _ = advance(film, air, span_s)
        return outlook(film, self.last, horizon_s=HORIZON_S)


@dataclass
class Score:
    """How often a range held the truth, and how wide the ranges were."""

    held: list[bool] = field(default_factory=list)
    ln_width: list[float] = field(default_factory=list)

    @property
    def share_held(self) -> float:
        """Share of the truths inside p10 to p90."""
        return float(np.mean(self.held))

    @property
    def width(self) -> float:
        """p90 over p10, geometric mean."""
        return float(np.exp(np.mean(self.ln_width)))


Scores = dict[tuple[str, Stage], Score]
"""By moment ("first, untested", …) and stage."""


def spell(sheet: DataSheet, rng: np.random.Generator) -> Spell:
    """Return a coat in an ordinary room that drifts while it dries."""

    def air() -> Air:
        return Air(
            temperature_C=rng.uniform(17.0, 25.0),
            humidity_pct=rng.uniform(35.0, 62.0),
            air_speed_m_s=rng.uniform(0.03, 0.12),
        )

    return Spell(
        sheet=sheet,
        wet_um=sheet.wet_um * rng.uniform(0.8, 1.2),
        side_m=rng.uniform(0.2, 0.8),
        airs=((2400.0, air()), (7200.0, air())),
        last=air(),
    )


def truths(studios: int, coats: int, rng: np.random.Generator) -> Iterator[Array]:
    """Yield for each coat the coordinates of every studio; row 0 is the nominal one and no studio."""
    common = rng.standard_normal((studios + 1, len(FIELDS)))
    own = [FIELDS.index(name) for name in COAT]
    for _ in range(coats):
        coordinates = common.copy()
        coordinates[:, own] = rng.standard_normal((studios + 1, len(own)))
        coordinates[0] = 0.0
        yield coordinates


def tests_of(truth_s: dict[Stage, float], sheet_s: dict[Stage, float], rng: np.random.Generator) -> tuple[Seen, ...]:
    """Return her tests on one coat: from about when the sheet lets her hope, further apart each time, until reached."""
    seen = []
    for stage, most in TESTED.items():
        after_s = sheet_s[stage] * rng.uniform(0.7, 1.2)
        for _ in range(most):
            hers_s = truth_s[stage] * np.exp(EDGE * rng.standard_normal())
            reached = bool(hers_s <= after_s) != bool(rng.uniform() < MISTAKEN)
            seen.append(Seen(after_s=after_s, stage=stage, reached=reached))
            if reached:
                break
            after_s *= rng.uniform(1.15, 1.6)
    return tuple(seen)


def settled(standing: Standing, table: Array, coat: Spell, seen: Sequence[Seen]) -> tuple[Standing, Array]:
    """Return what the coat stands on after her tests, dried anew where that was asked for."""
    while (other := standing.anew(table, seen)) is not None:
        standing, table = other, coat.table(other.particles.draws)
    return standing, table


@dataclass(frozen=True, kw_only=True)
class Plan:
    """What is run: how many studios, how many coats each, and how they are dealt with.

    `dry_anew` is False where only weights are asked about: the draws then stay the first ones.
    """

    studios: int
    coats: int
    seed: int
    measured: bool = False
    dry_anew: bool = True


def run_group(sheet: DataSheet, plan: Plan) -> Scores:
    """Return how the ranges did for one product in many studios, over several coats one after the other."""
    rng = np.random.default_rng(plan.seed)
    scores: Scores = defaultdict(Score)
    evidence: list[list[Evidence]] = [[] for _ in range(plan.studios)]
    untaught = standing_on(PRIOR, DRAWS, plan.seed, measured=plan.measured)
    for number, coordinates in enumerate(truths(plan.studios, plan.coats, rng), start=1):
        coat = spell(sheet, rng)
        truth = coat.table(draws_of(coordinates, measured=plan.measured))
        first = coat.table(untaught.particles.draws)
        hoped_s = {stage: float(truth[ROW[stage], 0]) for stage in TESTED}
        for studio in range(plan.studios):
            truth_s = {stage: float(truth[ROW[stage], studio + 1]) for stage in STAGES}
            standing, table = untaught, first
            if evidence[studio]:
                belief = belief_of(sheet.name, evidence[studio])
                standing = standing_on(belief, DRAWS, plan.seed + number, measured=plan.measured)
                table = coat.table(standing.particles.draws)
                _score(scores, f"coat {number}, had nothing been learnt", truth_s, first, untaught.weights(first))
            _score(scores, f"coat {number}, before its tests", truth_s, table, standing.weights(table))
            if number == plan.coats > 1:
                continue
            seen = tests_of(truth_s, hoped_s, rng)
            if plan.dry_anew:
                standing, table = settled(standing, table, coat, seen)
            _score(scores, f"coat {number}, after its tests", truth_s, table, standing.weights(table, seen))
            told = standing.observation(table, seen).shared()
            evidence[studio].append(
                Evidence(product=sheet.name, laid_ms=number, loadings=told.loadings, values=told.values)
            )
    return scores


def pooled(groups: Sequence[Scores]) -> Scores:
    """Return the scores of several groups as one."""
    whole: Scores = defaultdict(Score)
    for group in groups:
        for key, score in group.items():
            whole[key].held += score.held
            whole[key].ln_width += score.ln_width
    return whole


def _score(scores: Scores, moment: str, truth_s: dict[Stage, float], table: Array, weights: Array) -> None:
    for stage in STAGES:
        ready = ready_at(table[ROW[stage]], weights)
        assert ready.p10_s is not None
        assert ready.p90_s is not None
        score = scores[moment, stage]
        score.held.append(ready.p10_s <= truth_s[stage] <= ready.p90_s)
        score.ln_width.append(float(np.log(ready.p90_s / ready.p10_s)))
