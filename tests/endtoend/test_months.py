"""The short form of `months.py`: the whole program over some minutes of board time, with three wet coats."""

from __future__ import annotations

import threading
from pathlib import Path

import pytest

from studiowatch.service.happenings import PromptHappened

from .month_sums import MONTH_DAYS, MOST_WAITING_S, Day, Months
from .months import BEGAN_MS, SPOILT_EVERY, run

pytestmark = pytest.mark.window
HOURS = 0.35  # the first prompts are told after 15 and 20 min
STEP_DAYS = HOURS / 24 / 6
PROMPT = PromptHappened.__name__
AHEAD_S = MOST_WAITING_S + 1
OUT = f"{PROMPT} was told out of order, by {AHEAD_S + 1} s"
FEW = 3  # pieces: each wet coat costs as much as all else


def day(at: float, *, resident_MB: float = 100.0, threads: int = 9, files: int = 20) -> Day:
    return Day(day=at, resident_MB=resident_MB, most_MB=resident_MB, threads=threads, files=files)


@pytest.mark.timeout(300)
@pytest.mark.usefixtures("qtbot")
def test_that_every_line_is_accounted_for_and_nothing_piles_up(tmp_path: Path) -> None:
    months = run(tmp_path, HOURS / 24, STEP_DAYS, pieces=FEW)
    assert months.missing() == []
    assert months.sent >= HOURS * 3600
    assert months.faulty == months.spoilt >= HOURS * 3600 // SPOILT_EVERY
    assert months.stored == months.data
    assert PROMPT in months.latest_ms


@pytest.mark.timeout(120)
@pytest.mark.usefixtures("qtbot")
def test_that_a_run_that_is_stopped_ends_though_its_board_is_ahead_of_the_watch(tmp_path: Path) -> None:
    stop = threading.Event()
    months = run(tmp_path, 1.0, STEP_DAYS, lambda _: stop.set(), pieces=1, stop=stop)
    assert STEP_DAYS <= months.days[-1].day < 1.0


def test_that_the_slope_is_that_of_a_line_through_what_came_after_the_first_day() -> None:
    """By hand: 2 MB a day is 60 MB in a month of thirty days; what the first day held counts for nothing."""
    climbing = [day(1.0, resident_MB=900.0), *(day(at, resident_MB=100.0 + 2.0 * at) for at in (2.0, 3.0, 4.0, 5.0))]
    assert Months(days=climbing).slope_MB_a_month(1.0) == pytest.approx(2.0 * MONTH_DAYS)


@pytest.mark.parametrize(
    ("months", "words"),
    [
        (Months(days=[day(1.0)], sent=5, good=4), "5 lines were sent"),
        (Months(days=[day(1.0)], sent=5, good=4, faulty=1), "0 lines were spoilt"),
        (Months(days=[day(1.0)], notes=3), "set 3 times"),
        (Months(days=[day(1.0)], overflowed=2), "2 readings were refused"),
        (Months(days=[day(1.0), day(2.0), day(3.0, threads=12)]), "threads went from 9 to 12"),
        (Months(days=[day(1.0), day(2.0), day(3.0, files=24)]), "open files went from 20 to 24"),
    ],
    ids=["lost", "miscounted", "clock", "overflow", "threads", "files"],
)
def test_that_what_does_not_hold_is_said(months: Months, words: str) -> None:
    assert any(words in wrong for wrong in months.missing())


@pytest.mark.parametrize(("back_s", "wrong"), [(AHEAD_S, []), (AHEAD_S + 1, [OUT])])
def test_that_what_is_told_out_of_order_is_said(back_s: int, wrong: list[str]) -> None:
    months = Months(days=[day(1.0)])
    for time_ms in (BEGAN_MS, BEGAN_MS - 1000 * back_s, BEGAN_MS):
        months.tell(PromptHappened(time_ms=time_ms, piece_title="Kiln Light", text="Scrape drips"))
    assert months.missing() == wrong
    assert months.told == 3
