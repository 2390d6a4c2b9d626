"""Finds the gaps of a log as it goes by: steps much longer than the usual one around them."""

from __future__ import annotations

import statistics
from collections.abc import Iterator
from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray

from studiowatch.speech.words import say

GAP_STEPS = 5  # a step this many times the usual one is a gap: assumption
BLOCK = 60  # steps that are judged together, by their median and that of the block before

Integers = NDArray[np.int64]


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

    def take_many(self, lines: Integers, steps_ms: Integers) -> Iterator[str]:
        """Take the steps before rows that follow each other, as `take` takes one; whole blocks are judged together."""
        first = min(BLOCK - len(self._steps), len(lines))
        for line, step_ms in zip(lines[:first].tolist(), steps_ms[:first].tolist(), strict=True):
            yield from self.take(line, step_ms)
        whole = (len(lines) - first) // BLOCK
        after = first + whole * BLOCK
        if whole:
            yield from self._judge_blocks(lines[first:after], steps_ms[first:after].reshape(whole, BLOCK))
        for line, step_ms in zip(lines[after:].tolist(), steps_ms[after:].tolist(), strict=True):
            yield from self.take(line, step_ms)

    def _judge_blocks(self, lines: Integers, steps_ms: Integers) -> Iterator[str]:
        """Judge blocks of (k, BLOCK) steps, each by its median and that of the block before."""
        before = np.array([self._before]) if len(self._before) == BLOCK else steps_ms[:0]
        if not len(before):  # the first of all has none before it, or a shorter one
            yield from self._judge_one(lines[:BLOCK], steps_ms[0])
            before, lines, steps_ms = steps_ms[:1], lines[BLOCK:], steps_ms[1:]
        pairs = np.concatenate([np.concatenate([before, steps_ms[:-1]]), steps_ms], axis=1)
        longest_ms = GAP_STEPS * np.median(pairs, axis=1)
        long = np.flatnonzero((steps_ms > longest_ms[:, None]).ravel())
        for line, step_ms in zip(lines[long].tolist(), steps_ms.ravel()[long].tolist(), strict=True):
            yield _sentence(line, step_ms)
        if len(steps_ms):
            self._before = steps_ms[-1].tolist()

    def _judge_one(self, lines: Integers, steps_ms: Integers) -> Iterator[str]:
        self._steps = list(zip(lines.tolist(), steps_ms.tolist(), strict=True))
        yield from self.judge()

    def judge(self) -> Iterator[str]:
        """Judge what waits: to be called at the end."""
        steps_ms = [step_ms for _, step_ms in self._steps]
        if not steps_ms:
            return
        longest_ms = GAP_STEPS * statistics.median([*self._before, *steps_ms])
        for line, step_ms in self._steps:
            if step_ms > longest_ms:
                yield _sentence(line, step_ms)
        self._before = steps_ms
        self._steps = []


def _sentence(line: int, step_ms: int) -> str:
    return say(
        "line {line}: no reading for {minutes} min before this row.", line=line, minutes=f"{step_ms / 60_000:.4g}"
    )
