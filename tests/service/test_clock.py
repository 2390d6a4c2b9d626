"""A wall clock that jumps is told from one that runs."""

from __future__ import annotations

import pytest

from studiowatch.service.clock import JumpWatch


def test_that_ordinary_running_and_slewing_is_no_jump() -> None:
    watch = JumpWatch()
    jumps = [watch.look(1_000_000 + second * 1000 + second // 2, second) for second in range(1000)]
    assert jumps == [0.0] * 1000


@pytest.mark.parametrize("jump_s", [-7200.0, -3.0, 3.0, 3600.0])
def test_that_a_clock_step_or_a_resume_is_measured_once(jump_s: float) -> None:
    watch = JumpWatch()
    watch.look(1_000_000, 10.0)
    assert watch.look(1_000_000 + int(1000 * (jump_s + 1)), 11.0) == pytest.approx(jump_s)
    assert watch.look(1_000_000 + int(1000 * (jump_s + 2)), 12.0) == 0.0
