"""What cases share: loggers, sizes, seasons, and how one row of a table becomes a case."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import UTC, datetime, timedelta

import numpy as np

from .case import Case, Laid
from .room import Air, Logger
from .rooms import small_traces

LOGGERS = (
    Logger(every_s=60),
    Logger(every_s=300, empty_share=0.02, drift_pct=1.0),
    Logger(every_s=10, noise_pct=0.2),
    Logger(every_s=900, noise_K=0.1),
    Logger(every_s=60, gaps_h=((0.9, 1.0), (13.0, 14.5)), offset_K=0.2),
    Logger(every_s=300, zone_h=5.5),
    Logger(every_s=60, unix_time=True, drift_pct=-1.5),
    Logger(every_s=60, empty_share=0.05, zone_h=-8.0, noise_pct=0.8),
    Logger(every_s=300, air_cells=False),
    Logger(every_s=300, gaps_h=((5.0, 7.0),), offset_K=-0.3),
)
NO_AIR = Logger(every_s=300, air_column=False)
SIZES = ((40.0, 40.0), (60.0, 90.0), (20.0, 20.0), (100.0, 100.0), (30.0, 40.0), (50.0, 120.0), (80.0, 60.0))
AMOUNTS = ("volume_mL", "grams", "wet_um", "volume_mL", "")
SEASONS = (
    datetime(2026, 1, 12, tzinfo=UTC),
    datetime(2026, 4, 20, tzinfo=UTC),
    datetime(2026, 7, 6, tzinfo=UTC),
    datetime(2026, 10, 19, tzinfo=UTC),
)
PAINT = Laid(sheet="paint-brushed", at_h=-96.0, amount="")


def case(
    name: str,
    cause: str,
    why: str,
    air: Air,
    coats: Sequence[Laid],
    *,
    hour: float = 10.0,
    traces: bool = True,
    logger: Logger | None = None,
    seed: int = 0,
    **more: object,
) -> Case:
    """Return a case; what an expert would not care about is drawn from the case's name."""
    rng = np.random.default_rng([17, seed, *name.encode()])
    if logger is None:
        logger = LOGGERS[int(rng.integers(len(LOGGERS)))]
    last = coats[-1]
    if last.amount == "volume_mL" and last.times == 1.0:
        last = replace(last, amount=AMOUNTS[int(rng.integers(len(AMOUNTS)))])
    made = Case(
        name=name,
        cause=cause,
        why=why,
        air=small_traces(air, int(rng.integers(6))) if traces else air,
        coats=[*coats[:-1], last],
        logger=logger,
        laid=SEASONS[int(rng.integers(4))] + timedelta(hours=hour, minutes=int(rng.integers(60))),
        size_cm=SIZES[int(rng.integers(len(SIZES)))],
        neighbours=int(rng.integers(4)),
        seed=seed,
    )
    return replace(made, **more)  # type: ignore[arg-type]
