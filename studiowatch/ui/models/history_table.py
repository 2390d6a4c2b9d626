"""All lanes as columns, so that hundreds of coats are placed by a few calls; made anew when a lane changes."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

from studiowatch.ui.models.history_axis import TimeScale
from studiowatch.ui.models.history_lanes import Block, CoatSpan, Lane, Look
from studiowatch.ui.models.history_marks import MarkTable, marks_table

LOOKS = tuple(Look)
Ints = NDArray[np.int64]
Floats = NDArray[np.float64]
Mask = NDArray[np.bool_]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Stretches:
    """Stretches of time in lanes.

    Attributes
    ----------
    row : (n,) int64
        Number of the lane.
    start_ms, end_ms : (n,) float64
        UTC ms; an end that is not in sight is infinite.
    """

    row: Ints
    start_ms: Floats
    end_ms: Floats

    def seen(self, time: TimeScale) -> Mask:
        """Return which of them reach into the view."""
        mask: Mask = (self.start_ms < time.end_ms) & (self.end_ms >= time.start_ms)
        return mask

    def edges_px(self, time: TimeScale, at: Any, beyond_px: float) -> tuple[Floats, Floats]:  # noqa: ANN401 - an index
        """Return left and right edges, px; what reaches further than `beyond_px` out of the plot is cut there."""
        least_px, most_px = time.left_px - beyond_px, time.right_px + beyond_px
        left, right = (
            np.clip(time.left_px + (times[at] - time.start_ms) / time.ms_per_px, least_px, most_px)
            for times in (self.start_ms, self.end_ms)
        )
        return left, right


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class LaneTable:
    """The lanes as columns.

    Attributes
    ----------
    lanes : tuple of Lane
        What it was made of.
    spans : Stretches
        One for each of `coats`.
    waiting : tuple of (int, CoatSpan)
        The coats with a time to be ready at, each with the number of its lane.
    parts : Stretches
        One for each of `blocks`, and its place among `LOOKS` in `look`.
    marks : MarkTable
        Warnings of lane n in row 2 n, its prompts in row 2 n + 1.
    """

    lanes: tuple[Lane, ...]
    spans: Stretches
    coats: tuple[CoatSpan, ...]
    waiting: tuple[tuple[int, CoatSpan], ...]
    parts: Stretches
    blocks: tuple[Block, ...]
    look: Ints
    marks: MarkTable


def lane_table(lanes: tuple[Lane, ...]) -> LaneTable:
    """Return the columns of `lanes`."""
    coats = [(row, coat) for row, lane in enumerate(lanes) for coat in lane.coats]
    blocks = [(row, block) for row, coat in coats for block in coat.blocks]
    return LaneTable(
        lanes=lanes,
        spans=_stretches(coats),
        coats=tuple(coat for _, coat in coats),
        waiting=tuple((row, coat) for row, coat in coats if coat.ready_ms is not None),
        parts=_stretches(blocks),
        blocks=tuple(block for _, block in blocks),
        look=np.array([LOOKS.index(block.look) for _, block in blocks], dtype=np.int64),
        marks=marks_table([marks for lane in lanes for marks in (lane.marks, lane.prompts)]),
    )


def _stretches(found: Sequence[tuple[int, CoatSpan | Block]]) -> Stretches:
    return Stretches(
        row=np.array([row for row, _ in found], dtype=np.int64),
        start_ms=np.array([one.start_ms for _, one in found], dtype=np.float64),
        end_ms=np.array([np.inf if one.end_ms is None else one.end_ms for _, one in found], dtype=np.float64),
    )
