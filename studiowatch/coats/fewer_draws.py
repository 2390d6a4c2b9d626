"""A film with fewer of its draws: quicker to dry again, and spread as all of them are."""

from __future__ import annotations

from dataclasses import fields, is_dataclass, replace
from typing import Any, TypeVar

import numpy as np
from numpy.typing import NDArray

from studiowatch.coats.film import Film
from studiowatch.physics.ranges import Array

Whole = TypeVar("Whole")
Rows = NDArray[np.intp]


def spread_draws(times_s: Array, weights: Array, count: int) -> Rows:
    """Return `count` draws that stand for all: the nominal one, then one from each equal share of the weight.

    Parameters
    ----------
    times_s : ndarray, (draws,)
        What they are to be spread in: a ready time, infinite where it is not reached.
    weights : ndarray, (draws,)
        How likely each draw is against the others; that of draw 0 is not used. One of much weight stands in several
        times.
    """
    order = 1 + np.argsort(times_s[1:], kind="stable")
    share = np.cumsum(weights[order])
    middles = (np.arange(count - 1) + 0.5) / (count - 1) * share[-1]
    return np.concatenate([[0], order[np.searchsorted(share, middles)]])


def with_draws(film: Film, rows: Rows) -> Film:
    """Return the film, and those below, in these draws only, in this order."""
    return _taken(film, rows, len(film.anchor.draws), {})


def _taken(whole: Whole, rows: Rows, count: int, known: dict[int, Any]) -> Whole:
    """Return `whole` with the draws of all arrays in it taken, their last axis; what it holds twice stays one."""
    if id(whole) not in known:
        known[id(whole)] = _made(whole, rows, count, known)
    made: Whole = known[id(whole)]
    return made


def _made(whole: Any, rows: Rows, count: int, known: dict[int, Any]) -> Any:  # noqa: ANN401 - any part of a film
    if isinstance(whole, np.ndarray):
        return whole[..., rows] if whole.shape[-1:] == (count,) else whole
    if isinstance(whole, tuple):
        return tuple(_taken(one, rows, count, known) for one in whole)
    if is_dataclass(whole) and not isinstance(whole, type):
        parts = {part.name: getattr(whole, part.name) for part in fields(whole)}
        changed = {name: _taken(part, rows, count, known) for name, part in parts.items()}
        same = all(changed[name] is part for name, part in parts.items())
        return whole if same else replace(whole, **changed)
    return whole
