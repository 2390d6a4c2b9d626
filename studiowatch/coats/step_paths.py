"""Arithmetic on steps one after another: arrays of (steps, draws), or (steps, 1) where all draws have the same."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from studiowatch.physics.ranges import Array

Steps = NDArray[np.intp]
"""One step per draw, by its place among the steps."""


def following(start: Array, kept: Array, gained: Array) -> Array:
    """Return x before each step and after the last, (steps + 1, draws), where a step makes of x `kept` x + `gained`."""
    path = np.empty((len(gained) + 1, start.size))
    path[0] = start
    for before, after, share, gain in zip(path, path[1:], kept, gained, strict=False):
        np.multiply(before, share, out=after)
        np.add(after, gain, out=after)
    return path


def gathering(start: Array, gained: Array) -> Array:
    """Return x before each step and after the last, (steps + 1, draws), where a step adds `gained` to x."""
    path = np.empty((len(gained) + 1, start.size))
    path[0] = start
    np.cumsum(gained, axis=0, out=path[1:])
    path[1:] += start
    return path


def picked(values: Array, steps: Steps) -> Array:
    """Return of each draw the value at its step, (draws,)."""
    if len(values) == 1:
        return np.broadcast_to(values[0], steps.shape)
    return values[steps, np.arange(values.shape[1])]
