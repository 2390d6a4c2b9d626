"""Belief: what is held of one room and its products, as a normal distribution over the coordinates of the draws.

The room is shared by all products, each product by its coats; thickness and back belong to a single coat and are never
carried on. Before anything was seen all coordinates are standard normal.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from math import exp, log, pi

import numpy as np

from studiowatch.coats.draws import FIELDS, SHEET_TIME_SPREAD
from studiowatch.physics.ranges import Array

ROOM = ("air_speed_factor", "air_speed_floor_m_s", "temperature_offset_K", "humidity_offset_pct")
COAT = ("thickness_factor", "back_conductance_W_m2_K")
PRODUCT = tuple(field for field in FIELDS if field not in ROOM + COAT)
SHARED = ROOM + PRODUCT  # in the order in which evidence names them
HALVED_AFTER_COATS = 10  # newer coats of a product after which an older one counts half: bottles vary; assumption
FARTHEST = 3.0  # s.d. from the centre that a draw may lie: sheet times of 0.64 to 1.6 times as stated; assumption
_Z90 = 1.2816  # standard deviations from the middle to p90 of a normal distribution


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Belief:
    """A normal distribution over the coordinates of the draws, in the order of `FIELDS`.

    Attributes
    ----------
    mean : ndarray, (fields,)
    covariance : ndarray, (fields, fields)
    """

    mean: Array
    covariance: Array

    def at(self, standard: Array) -> Array:
        """Return standard normal coordinates, shape (n, fields), moved and stretched to this belief.

        None lies beyond `FARTHEST`: a widened belief must not ask for coats that no drying could make.
        """
        moved = self.mean + standard @ np.linalg.cholesky(self.covariance).T
        return np.clip(moved, -FARTHEST, FARTHEST)

    def log_density(self, coordinates: Array) -> Array:
        """Return ln of the density at each row of `coordinates`, shape (n, fields)."""
        root = np.linalg.cholesky(self.covariance)
        apart = np.linalg.solve(root, (coordinates - self.mean).T)
        scale = float(np.log(np.diag(root)).sum()) + 0.5 * self.mean.size * log(2.0 * pi)
        density: Array = -0.5 * (apart**2).sum(axis=0) - scale
        return density

    def widened(self, factor: float) -> Belief:
        """Return the same centre with every standard deviation `factor` times as large."""
        return Belief(mean=self.mean, covariance=factor**2 * self.covariance)

    def given(self, loadings: Array, values: Array) -> Belief:
        """Return what is held once `loadings @ coordinates` was found to be `values`, each give or take 1.

        Parameters
        ----------
        loadings : ndarray, (k, fields)
        values : ndarray, (k,)
        """
        gain = np.linalg.solve(
            loadings @ self.covariance @ loadings.T + np.eye(values.size), loadings @ self.covariance
        ).T
        covariance = self.covariance - gain @ loadings @ self.covariance
        return Belief(mean=self.mean + gain @ (values - loadings @ self.mean), covariance=_symmetric(covariance))

    def times_as_long(self) -> tuple[float, float, float]:
        """Return how many times as long as its sheet says the product takes: p10, middle, p90."""
        at = FIELDS.index("sheet_time_factor")
        middle, spread = float(self.mean[at]), float(np.sqrt(self.covariance[at, at]))
        low, centre, high = (exp(SHEET_TIME_SPREAD * (middle + z * spread)) for z in (-_Z90, 0.0, _Z90))
        return low, centre, high


PRIOR = Belief(mean=np.zeros(len(FIELDS)), covariance=np.eye(len(FIELDS)))


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Evidence:
    """What the tests on one coat say of its room and its product: `loadings @ shared coordinates` is `values` ± 1.

    Attributes
    ----------
    product : str
        The product with its sheet's numbers: another sheet is another product.
    laid_ms : int
        When the coat was laid, UTC ms: newer coats count more.
    loadings : ndarray, (k, shared)
        In the order of `SHARED`.
    values : ndarray, (k,)
    """

    product: str
    laid_ms: int
    loadings: Array
    values: Array


def belief_of(product: str, evidence: Iterable[Evidence]) -> Belief:
    """Return what is held of the room and of `product`; other products count in so far as they tell of the room."""
    newest_first = sorted(evidence, key=lambda told: told.laid_ms, reverse=True)
    if not newest_first:
        return PRIOR
    others = sorted({told.product for told in newest_first} - {product})
    place = {name: len(ROOM) + at * len(PRODUCT) for at, name in enumerate([product, *others])}
    size = len(ROOM) + len(place) * len(PRODUCT)
    precision, shift = np.eye(size), np.zeros(size)
    for told, share in zip(newest_first, _shares(newest_first), strict=True):
        own = np.r_[0 : len(ROOM), place[told.product] : place[told.product] + len(PRODUCT)]
        precision[np.ix_(own, own)] += share * told.loadings.T @ told.loadings
        shift[own] += share * told.loadings.T @ told.values
    covariance = np.asarray(np.linalg.inv(precision), dtype=np.float64)
    mean: Array = covariance @ shift
    return _with_a_fresh_coat(mean[: len(SHARED)], covariance[: len(SHARED), : len(SHARED)])


def _shares(newest_first: Sequence[Evidence]) -> list[float]:
    """Return how much each coat counts: the newest of its product 1."""
    newer: Counter[str] = Counter()
    shares = []
    for told in newest_first:
        shares.append(0.5 ** (newer[told.product] / HALVED_AFTER_COATS))
        newer[told.product] += 1
    return shares


def _with_a_fresh_coat(mean: Array, covariance: Array) -> Belief:
    """Return the belief of all fields from that of the shared ones: nothing is known of a coat not yet laid."""
    shared = shared_places()
    whole_mean, whole = PRIOR.mean.copy(), PRIOR.covariance.copy()
    whole_mean[shared] = mean
    whole[np.ix_(shared, shared)] = _symmetric(covariance)
    return Belief(mean=whole_mean, covariance=whole)


def shared_places() -> list[int]:
    """Return where the fields of `SHARED` stand among `FIELDS`."""
    return [FIELDS.index(field) for field in SHARED]


def _symmetric(matrix: Array) -> Array:
    """Return `matrix` without the asymmetry that rounding leaves."""
    even: Array = 0.5 * (matrix + matrix.T)
    return even
