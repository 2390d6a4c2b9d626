import pytest

from studiowatch.board.sequence import Sequence, Step, follow
from studiowatch.board.wire import Kind, WireLine

DAY_MS = 86_400_000


def data(n: int, u: int) -> WireLine:
    return WireLine.of(Kind.DATA, {"n": str(n), "u": str(u)})


def hello(b: int, board_id: str = "8DF9E785") -> WireLine:
    return WireLine.of(Kind.HELLO, {"id": board_id, "b": str(b)})


def steps(*lines: WireLine) -> list[Step]:
    seen, told = Sequence(), []
    for line in lines:
        seen, step = follow(seen, line)
        told.append(step)
    return told


QUIET = Step()
RESET = Step(reset=True)


def test_that_lines_in_order_tell_nothing() -> None:
    assert steps(hello(1), data(0, 194), data(1, 1194), data(2, 2194)) == [QUIET] * 4


def test_that_a_gap_in_the_numbers_is_lost_lines() -> None:
    # the data lines of the vectors: 0, 3, 41 and the error line 42
    error = WireLine.of(Kind.ERROR, {"n": "42", "u": "42003", "c": "bus"})
    told = steps(data(0, 194), data(3, 3076), data(41, 41003), error)
    assert [step.lost for step in told] == [0, 2, 37, 0]


def test_that_lines_before_the_first_one_heard_are_not_lost() -> None:
    assert steps(data(5000, 5_000_000)) == [QUIET]


@pytest.mark.parametrize(
    ("before", "after"),
    [
        (data(41, 41_003), data(0, 194)),
        (data(41, 41_003), data(0, 60_000)),
        (data(0, 1_000), data(0, 194)),
        (data(0, 1_000), data(1, 194)),
        (data(40 * 86_400, 40 * DAY_MS), data(0, 194)),
    ],
)
def test_that_a_falling_number_or_uptime_is_a_restart(before: WireLine, after: WireLine) -> None:
    assert steps(before, after)[1].reset


def test_that_lines_of_the_new_start_that_never_came_are_lost() -> None:
    assert steps(data(41, 41_003), data(3, 3_194))[1] == Step(lost=3, reset=True)


def test_that_a_changed_boot_count_is_one_restart_with_the_lines_after_it() -> None:
    assert steps(hello(1), data(41, 41_003), hello(2), data(0, 194), data(1, 1_194)) == [
        QUIET,
        QUIET,
        RESET,
        QUIET,
        QUIET,
    ]


def test_that_a_restart_is_counted_once_if_its_hello_comes_late() -> None:
    assert steps(hello(1), data(41, 41_003), data(0, 194), hello(2)) == [QUIET, QUIET, RESET, QUIET]


def test_that_a_number_that_fell_short_after_the_hello_is_lost_lines() -> None:
    assert steps(hello(1), data(41, 41_003), hello(2), data(2, 2_194))[3] == Step(lost=2)


def test_that_another_board_is_a_restart() -> None:
    assert steps(hello(1), hello(1, "00C0FFEE"))[1] == RESET


def test_that_a_repeated_hello_is_no_restart() -> None:
    assert steps(hello(1), hello(1)) == [QUIET, QUIET]


def test_that_the_uptime_may_wrap() -> None:
    wrap = 2**32
    assert steps(data(4_294_967, wrap - 500), data(4_294_968, 500)) == [QUIET, QUIET]


def test_that_lines_lost_over_the_wrap_are_lost_lines() -> None:
    assert steps(data(4_294_967, 2**32 - 500), data(4_294_977, 9_500))[1] == Step(lost=9)


def test_that_a_leap_beyond_a_day_of_lines_is_another_numbering_and_no_lost_lines() -> None:
    assert steps(data(7, 7_000), data(7 + 86_400, 86_407_000))[1] == Step(lost=86_399)
    assert steps(data(7, 7_000), data(8 + 86_400, 86_408_000))[1] == RESET
    assert steps(data(7, 7_000), data(4_000_000_000, 8_000))[1] == RESET
    assert steps(data(7, 7_000), data(10**30, 8_000), data(10**30 + 1, 9_000)) == [QUIET, RESET, QUIET]


def test_that_a_new_start_with_a_huge_number_lost_nothing_that_anyone_knows_of() -> None:
    assert steps(data(5_000_000_000, 7_000), data(4_000_000_000, 194))[1] == RESET
    assert steps(hello(1), data(41, 41_003), hello(2), data(4_000_000_000, 194))[2:] == [RESET, QUIET]


@pytest.mark.parametrize("bits", [16, 32])
@pytest.mark.parametrize(("ahead", "lost"), [(0, 0), (3, 3), (598, 598)])
def test_that_the_number_may_wrap(bits: int, ahead: int, lost: int) -> None:
    last = data(2**bits - 1, 65_535_194)
    assert steps(last, data(ahead, 65_536_194 + 1000 * ahead))[1] == Step(lost=lost)
    without_uptime = [WireLine.of(Kind.DATA, {"n": str(n)}) for n in (2**bits - 1, ahead)]
    assert steps(*without_uptime)[1] == Step(lost=lost)


def test_that_a_number_that_falls_with_the_uptime_or_too_far_is_no_wrap() -> None:
    assert steps(data(65_535, 65_535_194), data(0, 194))[1] == RESET
    assert steps(data(65_535, 65_535_194), data(601, 66_137_194))[1] == Step(lost=601, reset=True)
    assert steps(data(40_000, 40_000_194), data(0, 40_001_194))[1] == RESET


def test_that_a_line_without_numbers_tells_nothing() -> None:
    bare = WireLine.of(Kind.DATA, {"t": "21.4"})
    assert steps(data(0, 194), bare, data(1, 1_194)) == [QUIET] * 3
    assert steps(WireLine.of(Kind.HELLO, {"v": "1"})) == [QUIET]


@pytest.mark.parametrize("n", ["-1", "1.5", "!nak"])
def test_that_a_number_that_is_no_count_is_passed_over(n: str) -> None:
    assert steps(data(0, 194), WireLine.of(Kind.DATA, {"n": n}), data(1, 1_194)) == [QUIET] * 3
