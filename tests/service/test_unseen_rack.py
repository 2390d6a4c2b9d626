"""While nobody looks at the rack, what is only shown is brought up to date seldom, and what is told is told in time."""

from __future__ import annotations

from itertools import pairwise

import pytest

from studiowatch.coats.stages import Stage
from studiowatch.physics.air import Air
from studiowatch.service.air_ahead import Stays
from studiowatch.service.coat_run import SOON_MS
from studiowatch.service.looked_ahead import RESTING_EVERY_MS, STEADY_EVERY_MS
from studiowatch.service.rack import Rack
from studiowatch.service.replaying import MemoryRecords, NoLog
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.service.stacks import RESTING_MS, UNSEEN_RESTING_MS
from studiowatch.studio.pieces import Coat, Piece

from .rooms import START_MS

MINUTE_MS = 60_000
HOUR_MS = 3_600_000
AIR = Air(temperature_C=20.0, humidity_pct=52.0, air_speed_m_s=0.05)


class Foretold(Stays):
    """A room that was foretold to stay as it is."""

    made_ms = START_MS


@pytest.fixture
def rack() -> Rack:
    coat = Coat(key="c", sheet="gloss-waterborne", laid_ms=START_MS, volume_mL=12.8)
    piece = Piece(key="p", title="Low Tide", width_cm=40, height_cm=40, coats=(coat,))
    made = Rack(shelf=SheetShelf.open(), records=MemoryRecords(held={"p": piece}), log=NoLog())
    made.stacks.room = Foretold()
    made.open(START_MS)
    return made


def test_that_a_coat_is_looked_ahead_at_seldom_but_as_often_as_ever_before_a_time_that_is_told(rack: Rack) -> None:
    rack.stacks.is_seen = False
    looked_ms, table = [], None
    now_ms = START_MS
    while Stage.CLEAR not in (run := rack.runs["c"]).ahead or run.reached_ms(Stage.CLEAR) is None:
        now_ms += MINUTE_MS
        rack.advance(AIR, now_ms)
        if run.table is not table:
            table = run.table
            looked_ms.append(now_ms)
    clear_ms = run.reached_ms(Stage.CLEAR) or 0
    gaps = [(one_ms, other_ms - one_ms) for one_ms, other_ms in pairwise(looked_ms)]
    near = {gap for at_ms, gap in gaps if clear_ms - SOON_MS < at_ms}
    far = {gap for at_ms, gap in gaps if at_ms + gap < clear_ms - SOON_MS}
    assert (near, far) == ({STEADY_EVERY_MS}, {RESTING_EVERY_MS})


@pytest.mark.parametrize(("is_seen", "every_ms"), [(True, RESTING_MS), (False, UNSEEN_RESTING_MS)])
def test_that_a_stack_that_is_dry_to_touch_is_dried_seldom(rack: Rack, is_seen: bool, every_ms: int) -> None:  # noqa: FBT001
    now_ms = START_MS
    while rack.runs["c"].film.is_wet or not rack.runs["c"].recoat_told:
        now_ms += MINUTE_MS
        rack.advance(AIR, now_ms)
    rack.stacks.is_seen = is_seen
    dried_ms = set()
    for _ in range(60):
        now_ms += MINUTE_MS // 2
        rack.advance(AIR, now_ms)
        dried_ms.add(rack.runs["c"].at_ms)
    assert {other - one for one, other in pairwise(sorted(dried_ms))} == {every_ms}


def test_that_the_next_coat_is_told_as_soon_as_it_may_go_on_though_nobody_looks(rack: Rack) -> None:
    rack.stacks.is_seen = False
    now_ms, told = START_MS, []
    while not told:
        now_ms += MINUTE_MS // 2
        told = [one for one in rack.advance(AIR, now_ms) if one.stage is Stage.DRY_TO_RECOAT]
        was_wet = rack.runs["c"].film.is_wet
    assert not was_wet  # it rested by then
    assert now_ms - told[0].time_ms < MINUTE_MS // 2
