"""While nobody looks at the rack, what is only shown is brought up to date seldom, and what is told is told in time."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace
from itertools import pairwise

import pytest

from studiowatch.coats.stages import Stage
from studiowatch.physics.air import Air
from studiowatch.service.ahead_due import TOLD_SOON_MS
from studiowatch.service.air_ahead import OTHER_K, Stays
from studiowatch.service.coat_run import CoatRun
from studiowatch.service.looked_ahead import IDLE_EVERY_MS, RESTING_EVERY_MS, STEADY_EVERY_MS
from studiowatch.service.rack import AHEAD_AT_ONCE, Rack
from studiowatch.service.replaying import MemoryRecords, NoLog
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.service.stacks import RESTING_MS, SETTLED_MS
from studiowatch.studio.pieces import Coat, Piece

from .planned_studio import Later, live, watch_of
from .rooms import START_MS

MINUTE_MS = 60_000
HOUR_MS = 3_600_000
AIR = Air(temperature_C=20.0, humidity_pct=52.0, air_speed_m_s=0.05)


class Foretold(Stays):
    """A room that was foretold to stay as it is."""

    made_ms = START_MS


def one_coat(key: str = "c", laid_ms: int = START_MS) -> Piece:
    coat = Coat(key=key, sheet="gloss-waterborne", laid_ms=laid_ms, volume_mL=12.8)
    return Piece(key=f"p{key}", title=f"Low Tide {key}", width_cm=40, height_cm=40, coats=(coat,))


@pytest.fixture
def rack() -> Rack:
    piece = one_coat()
    made = Rack(shelf=SheetShelf.open(), records=MemoryRecords(held={piece.key: piece}), log=NoLog())
    made.stacks.room = Foretold()
    made.open(START_MS)
    return made


def looks(rack: Rack, is_over: Callable[[CoatRun], bool], air: Air = AIR) -> Iterator[int]:
    """Yield when the coat was looked ahead at, UTC ms, while it dries by the minute until it is over."""
    run = rack.runs.get("c")
    now_ms, table = START_MS if run is None else run.at_ms, None if run is None else run.table
    while run is None or not is_over(run):
        now_ms += MINUTE_MS
        rack.advance(air, now_ms)
        run = rack.runs["c"]
        if run.table is not table:
            table = run.table
            yield now_ms


def is_clear(run: CoatRun) -> bool:
    return run.reached_ms(Stage.CLEAR) is not None


def is_told(run: CoatRun) -> bool:
    return run.recoat_told


def gaps(times_ms: list[int]) -> list[tuple[int, int]]:
    return [(one_ms, other_ms - one_ms) for one_ms, other_ms in pairwise(times_ms)]


def test_that_a_coat_is_looked_ahead_at_seldom_but_often_before_a_time_that_is_told(rack: Rack) -> None:
    rack.stacks.is_seen = False
    found = gaps(list(looks(rack, is_told)))
    run = rack.runs["c"]
    stages = (Stage.DUST_FREE, Stage.DRY_TO_TOUCH, Stage.CLEAR)
    told_ms = [*(run.reached_ms(stage) or 0 for stage in stages), run.told.recoat_ms() or 0]
    near = {gap for at_ms, gap in found if any(told - TOLD_SOON_MS < at_ms < told - gap for told in told_ms)}
    far = {gap for at_ms, gap in found if not any(0 < told - at_ms < TOLD_SOON_MS + gap for told in told_ms)}
    assert (near, far) == ({STEADY_EVERY_MS}, {RESTING_EVERY_MS})


def test_that_it_is_looked_ahead_at_anew_where_the_room_is_another_though_nobody_looks(rack: Rack) -> None:
    *_, cleared_ms = looks(rack, is_clear)
    rack.stacks.is_seen = False
    warmer = replace(AIR, temperature_C=AIR.temperature_C + OTHER_K)
    seldom = list(looks(rack, lambda run: run.at_ms >= cleared_ms + HOUR_MS))
    begun_ms = rack.runs["c"].at_ms
    assert seldom
    assert begun_ms < next(looks(rack, is_told, warmer)) <= seldom[-1] + STEADY_EVERY_MS + MINUTE_MS


@pytest.mark.parametrize(("is_seen", "every_ms"), [(True, RESTING_EVERY_MS), (False, IDLE_EVERY_MS)])
def test_that_a_coat_that_only_hardens_is_looked_ahead_at_hardly_ever(rack: Rack, is_seen: bool, every_ms: int) -> None:  # noqa: FBT001
    *_, told_ms = looks(rack, is_told)
    rack.stacks.is_seen = is_seen
    found = list(looks(rack, lambda run: run.at_ms >= told_ms + 9 * HOUR_MS))
    assert {gap for _, gap in gaps(found)} == {every_ms}


@pytest.mark.parametrize(
    ("is_seen", "is_over", "every_ms"),
    [
        (True, is_told, RESTING_MS),
        (False, is_told, SETTLED_MS),
        (False, lambda run: not run.film.is_wet, RESTING_MS),  # dry to touch, but not ready for the next coat
    ],
    ids=["seen", "settled", "not settled"],
)
def test_that_a_stack_that_is_dry_to_touch_is_dried_seldom(
    rack: Rack,
    is_seen: bool,  # noqa: FBT001
    is_over: Callable[[CoatRun], bool],
    every_ms: int,
) -> None:
    list(looks(rack, is_over))
    run = rack.runs["c"]
    assert run.is_settled is (is_over is is_told)
    rack.stacks.is_seen = is_seen
    now_ms, dried_ms = run.at_ms, {run.at_ms}
    for _ in range(22):
        now_ms += MINUTE_MS // 2
        rack.advance(AIR, now_ms)
        dried_ms.add(run.at_ms)
    assert {other - one for one, other in pairwise(sorted(dried_ms))} == {every_ms}


def test_that_what_was_left_is_brought_up_with_the_next_readings_once_somebody_looks_again() -> None:
    later = Later()
    watch = watch_of(*(one_coat(str(number), START_MS - 9 * HOUR_MS // 2) for number in range(5)), work=later)
    watch.desks.rack.stacks.room = Foretold()
    runs = watch.desks.rack.runs.values()
    for second in range(1, 200):
        live(watch, second)
    while later.asked:
        later.work()
    watch.look(START_MS + 200_000, 200.0, is_seen=False)
    before = [run.table for run in runs]
    for second in range(201, 1400):
        live(watch, second, is_seen=False)
    assert all(run.table is table for run, table in zip(runs, before, strict=True))
    assert not later.asked
    watch.look(START_MS + 1_400_000, 1400.0)
    later.work()  # the plan that a look has made at once, by times as old
    readings = -(-len(before) // AHEAD_AT_ONCE)
    for second in range(1401, 1401 + readings):
        live(watch, second)
    assert not any(run.table is table for run, table in zip(runs, before, strict=True))
    live(watch, 1401 + readings)
    assert later.asked  # the plan by the new times


def test_that_the_next_coat_is_told_as_soon_as_it_may_go_on_though_nobody_looks(rack: Rack) -> None:
    rack.stacks.is_seen = False
    now_ms, told = START_MS, []
    while not told:
        now_ms += MINUTE_MS // 2
        told = [one for one in rack.advance(AIR, now_ms) if one.stage is Stage.DRY_TO_RECOAT]
        was_wet = rack.runs["c"].film.is_wet
    assert not was_wet  # it rested by then
    assert now_ms - told[0].time_ms < MINUTE_MS // 2
