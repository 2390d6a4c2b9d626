"""The floor that the film model is held against: what its equations ask of numpy, and how often.

The floor is the exponentials, logarithms and powers that the equations of a step ask for, each as one bare numpy call
on an array of all draws, as often as the run takes such steps. A wet film in a new air needs

    of the air:   saturation pressure (exp, log), conductivity (10^x, sqrt T), diffusivity (T^1.81), sqrt Re
    of the film:  saturation pressure (exp, log), Ra^1/4 (two sqrt), Ra^1/3, the cube roots that join forced and free
                  flow (heat, vapour), and the course of its temperature within the step (exp)

and one without free water the two rates of its ages and the decay of its bound water (three exp); its drift to the
room is one number for all draws. Two floors are given for the course: of the whole step, all of these at each reading;
and of the steps that were needed, counted in a run of their own, where a film without free water has no more than its
three. The second knows that most readings meet a dry film, where the arithmetic between the exponentials takes time.
The course is taken as a log is, many readings of a dry film together; the floor stays that of a call for each step.
"""

from __future__ import annotations

import gc
import time
from collections import Counter
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from unittest.mock import patch

import numpy as np

from studiowatch.coats import exposure, kinds, resting
from studiowatch.coats.free_water import Layer
from studiowatch.coats.stretch import Stretch
from studiowatch.coats.waterborne import Product, WaterState
from studiowatch.physics.ranges import Array

REPEATS = 5
OPERATIONS: dict[str, Sequence[Callable[[Array], Array]]] = {
    "air": (np.exp, np.log, lambda x: np.power(10.0, x), np.sqrt, lambda x: np.power(x, 1.81), np.sqrt),
    "wet": (np.exp, np.log, np.sqrt, np.sqrt, np.cbrt, np.cbrt, np.cbrt, np.exp),
    "dry": (np.exp, np.exp, np.exp),
}


@contextmanager
def counted() -> Iterator[Counter[str]]:
    """Count the steps that the film takes while this is open."""
    steps: Counter[str] = Counter()

    lose_free_water, rest = kinds.lose_free_water, resting.rest

    def wet_step(*arguments: object, **named: object) -> object:
        steps["wet"] += 1
        return lose_free_water(*arguments, **named)

    def dry_steps(coat: Layer, product: Product, state: WaterState, stretch: Stretch, **named: object) -> object:
        steps["dry"] += len(stretch.dry_s)
        return rest(coat, product, state, stretch, **named)

    with patch.object(kinds, "lose_free_water", wet_step), patch.object(resting, "rest", dry_steps):
        exposure.air_at_film.cache_clear()
        yield steps
        steps["air"] = min(exposure.air_at_film.cache_info().misses, steps["wet"])


def floor_s(steps: Counter[str], draws: int) -> float:
    """Return how long the bare numpy calls of these steps take, s; the best of a few runs."""
    values = np.linspace(0.5, 2.0, draws)

    def bare() -> None:
        for kind, count in steps.items():
            for _ in range(count):
                for operation in OPERATIONS[kind]:
                    operation(values)

    return best_s(bare)


def best_s(work: Callable[[], object], repeats: int = REPEATS) -> float:
    """Return the shortest time that `work` took, s."""
    times = []
    for _ in range(repeats):
        gc.collect()
        began_s = time.perf_counter()
        work()
        times.append(time.perf_counter() - began_s)
    return min(times)
