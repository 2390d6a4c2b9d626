"""Finds the gaps of a log as it goes by: steps much longer than the usual one around them."""

from __future__ import annotations

import statistics
from collections.abc import Iterator
from dataclasses import dataclass, field

GAP_STEPS = 5  # a step this many times the usual one is a gap: assumption
BLOCK = 60  # steps that are judged together, by their median and that of the block before


@dataclass(slots=True)
class GapFinder:
    """Judges steps in blocks, so that a log of any length takes the same memory."""

    _steps: list[tuple[int, int]] = field(default_factory=list)
    _before: list[int] = field(default_factory=list)

    def take(self, line: int, step_ms: int) -> Iterator[str]:
        """Take the step before the row in `line`; yield a sentence for each gap that shows by now."""
        self._steps.append((line, step_ms))
        if len(self._steps) >= BLOCK:
            yield from self.judge()

    def judge(self) -> Iterator[str]:
        """Judge what waits: to be called at the end."""
        steps_ms = [step_ms for _, step_ms in self._steps]
        if not steps_ms:
            return
        longest_ms = GAP_STEPS * statistics.median([*self._before, *steps_ms])
        for line, step_ms in self._steps:
            if step_ms > longest_ms:
                yield f"line {line}: no reading for {step_ms / 60_000:.4g} min before this row."
        self._before = steps_ms
        self._steps = []
