from __future__ import annotations

import pytest

from studiowatch.room.cusum import Cusum, accumulate


def test_that_values_within_the_slack_leave_no_trace() -> None:
    assert accumulate(Cusum(), 1.0, slack=1.0) == Cusum()
    assert accumulate(Cusum(), -1.0, slack=1.0) == Cusum()


def test_that_what_exceeds_the_slack_adds_up_on_its_own_side() -> None:
    after = accumulate(accumulate(Cusum(), 3.0, slack=1.0), 2.5, slack=1.0)
    assert after.high == pytest.approx(2.0 + 1.5)
    assert after.low == 0.0
    assert accumulate(Cusum(), -3.0, slack=1.0) == Cusum(low=2.0)


def test_that_a_quiet_value_runs_a_sum_down_but_not_below_zero() -> None:
    assert accumulate(Cusum(high=1.5), 0.0, slack=1.0).high == pytest.approx(0.5)
    assert accumulate(Cusum(high=0.5), 0.0, slack=1.0).high == 0.0


def test_that_a_weight_counts_as_so_many_values() -> None:
    twice = accumulate(accumulate(Cusum(), 4.0, slack=1.0), 4.0, slack=1.0)
    assert accumulate(Cusum(), 4.0, slack=1.0, weight=2.0) == twice
