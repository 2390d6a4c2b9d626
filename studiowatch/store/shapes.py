"""The values that the store hands out and takes in."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from studiowatch.studio.set_on import set_on


@dataclass(frozen=True, slots=True, kw_only=True)
class Series:
    """A stretch of one channel, in buckets.

    Attributes
    ----------
    time_ms : (n,) int64
        Middle of each bucket, UTC ms, rising.
    low, high, mean : (n,) float64
        Least, greatest and mean value in the bucket. A bucket without readings is not there.
    bucket_ms : int
        Width of a bucket, ms; neighbours further apart than a few of these are a gap.
    """

    time_ms: NDArray[np.int64]
    low: NDArray[np.float64]
    high: NDArray[np.float64]
    mean: NDArray[np.float64]
    bucket_ms: int


@dataclass(frozen=True, slots=True, kw_only=True)
class WarningRecord:
    """A warning as it is kept. `state` is raised, heard, remind or cleared.

    `ahead_ms` is when what it warns of is expected, UTC ms, while that was only ahead ever since it was raised.
    """

    key: str
    kind: str
    level: int
    state: str
    headline: str
    detail: str
    advice: str
    began_ms: int
    raised_ms: int
    cleared_ms: int | None
    pieces: tuple[str, ...]
    remind_ms: int | None = None
    ahead_ms: int | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class PromptRecord:
    """A prompt as it is kept; `done_ms` is None until it is ticked."""

    key: str
    coat_key: str
    due_ms: int
    text: str
    done_ms: int | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class TellingRecord:
    """What was done with a prompt short of ticking it: when it was told, and until when it was put off, UTC ms."""

    key: str
    told_ms: int | None = None
    snoozed_ms: int | None = None

    def shifted(self, step_ms: int) -> TellingRecord:
        """Return the same after a wall clock was set `step_ms` on."""
        return replace(
            self,
            told_ms=set_on(self.told_ms, step_ms),
            snoozed_ms=set_on(self.snoozed_ms, step_ms),
        )


@dataclass(frozen=True, slots=True, kw_only=True)
class PreparationRecord:
    """A preparation as it is kept: `state` is JSON, and `ended_ms` None while it goes on."""

    key: str
    began_ms: int
    ended_ms: int | None
    state: str


@dataclass(frozen=True, slots=True, kw_only=True)
class LearntRecord:
    """What the tests on one coat taught.

    Attributes
    ----------
    sheet, sheet_hash : str
        Name of the data sheet, and a hash of its numbers: other numbers are another product.
    laid_ms : int
        UTC ms when the coat was laid.
    tests : int
        How many tests counted.
    rows : tuple of mapping of str to float
        One observation each: a number by the name of what it weighs, and "value".
    """

    coat_key: str
    sheet: str
    sheet_hash: str
    laid_ms: int
    tests: int
    rows: tuple[Mapping[str, float], ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class WarningChange:
    """A warning came into a state."""

    warning_key: str
    time_ms: int
    state: str


@dataclass(frozen=True, slots=True, kw_only=True)
class CalibrationRecord:
    """A calibration as it is kept: `measured` is JSON, and `withdrawn_ms` None while it holds."""

    key: str
    sensor: str
    made_ms: int
    withdrawn_ms: int | None
    kind: str
    measured: str


@dataclass(frozen=True, slots=True, kw_only=True)
class CheckRecord:
    """She checked this sensor at this time, and found it right; a shape of its own tells its rows from sightings."""

    time_ms: int
    sensor: str


@dataclass(frozen=True, slots=True, kw_only=True)
class NoteRecord:
    """A fact about the log itself: a clock step, a resume, a reset, an overflow, an import."""

    time_ms: int
    kind: str
    text: str


@dataclass(frozen=True, slots=True, kw_only=True)
class CorrectionRecord:
    """What a piece was before it was corrected, as JSON."""

    time_ms: int
    piece_key: str
    earlier: str
