"""Prompts are told once, kept until ticked, put right with the coat, and gone from the file when they apply no more."""

from __future__ import annotations

from dataclasses import replace

import pytest

from studiowatch.service.commands import Refused
from studiowatch.service.disk import Disk
from studiowatch.service.prompt_desk import PromptDesk, Tended
from studiowatch.service.replaying import MemoryRecords
from studiowatch.store.shapes import PromptRecord
from studiowatch.store.trouble import StoreTrouble
from studiowatch.studio.prompts import CoatToTend, Step, prompt_key

LAID_MS = 1_772_442_000_000  # 2026-03-02T09:00:00Z
MINUTE_MS = 60_000
BUBBLES = prompt_key("c", Step.BUBBLES)
COVER = prompt_key("c", Step.COVER)
RECOAT = prompt_key("c", Step.RECOAT)
PROMISED_MS = LAID_MS + 240 * MINUTE_MS


class RefusingRecords(MemoryRecords):
    """Records that take no prompt while told so."""

    refuses = False

    def save_prompt(self, prompt: PromptRecord) -> None:
        if self.refuses:
            raise StoreTrouble("It is in use.")
        super().save_prompt(prompt)


def tended(*past: Step, **changes: object) -> Tended:
    coat = CoatToTend(coat_key="c", laid_ms=LAID_MS, clear_film=True, recoat_ms=PROMISED_MS, following="satin")
    return Tended(coat=replace(coat, **changes), piece_key="p", piece_title="Low Tide", past=frozenset(past))


def desk_on(records: MemoryRecords) -> PromptDesk:
    desk = PromptDesk(records=records, disk=Disk())
    desk.reopen()
    return desk


def keys(desk: PromptDesk, now_ms: int) -> list[str]:
    return [view.key for view in desk.views(now_ms)]


def test_that_what_fell_due_while_nobody_watched_is_told_once_at_reopening() -> None:
    records = MemoryRecords(held={})
    before = desk_on(records)
    before.settle([tended()], LAID_MS)
    assert before.due(LAID_MS) == []
    before.disk.catch_up(0.0)
    after = desk_on(records)
    late_ms = LAID_MS + 16 * MINUTE_MS
    after.settle([tended()], late_ms)
    assert [told.text.split(",")[0] for told in after.due(late_ms)] == ["Second bubble pass"]
    after.settle([tended()], late_ms + 1000)
    assert after.due(late_ms + 1000) == []


def test_that_a_tick_that_the_disk_refuses_leaves_the_prompt() -> None:
    records = RefusingRecords(held={})
    desk = desk_on(records)
    desk.settle([tended()], LAID_MS)
    records.refuses = True
    with pytest.raises(StoreTrouble):
        desk.tick(BUBBLES, LAID_MS)
    assert BUBBLES in keys(desk, LAID_MS)
    records.refuses = False
    desk.tick(BUBBLES, LAID_MS)
    desk.settle([tended()], LAID_MS)
    assert BUBBLES not in keys(desk, LAID_MS)
    with pytest.raises(Refused, match="gone"):
        desk.tick(BUBBLES, LAID_MS)


def test_that_a_ticked_prompt_stays_done_whatever_was_still_to_be_written() -> None:
    records = MemoryRecords(held={})
    desk = desk_on(records)
    desk.settle([tended()], LAID_MS)
    desk.disk.catch_up(0.0)
    desk.tick(BUBBLES, LAID_MS)
    desk.settle([tended()], LAID_MS)
    desk.disk.catch_up(0.0)
    assert records.done_prompts() == {BUBBLES}


def test_that_prompts_that_apply_no_longer_leave_the_file() -> None:
    records = MemoryRecords(held={})
    desk = desk_on(records)
    desk.settle([tended()], LAID_MS)
    desk.disk.catch_up(0.0)
    assert {BUBBLES, COVER} <= {prompt.key for prompt in records.prompts()}
    desk.settle([tended(Step.BUBBLES, is_covered=True)], LAID_MS)
    desk.disk.catch_up(0.0)
    assert not {BUBBLES, COVER} & {prompt.key for prompt in records.prompts()}
    desk.settle([], LAID_MS)
    desk.disk.catch_up(0.0)
    assert records.prompts() == ()


def test_that_a_due_prompt_keeps_its_time_but_for_a_coat_that_was_corrected() -> None:
    records = MemoryRecords(held={})
    desk = desk_on(records)
    desk.settle([tended()], LAID_MS)
    now_ms = PROMISED_MS + MINUTE_MS
    later_ms = PROMISED_MS + 60 * MINUTE_MS
    drifted = tended(Step.BUBBLES, Step.COVER, recoat_ms=later_ms)
    desk.settle([drifted], now_ms)
    assert {view.due_ms for view in desk.views(now_ms) if view.key == RECOAT} == {PROMISED_MS}
    assert desk.due(now_ms)
    desk.settle([drifted], now_ms, corrected={"another"})
    assert {view.due_ms for view in desk.views(now_ms) if view.key == RECOAT} == {PROMISED_MS}
    desk.settle([drifted], now_ms, corrected={"c"})
    assert {view.due_ms for view in desk.views(now_ms) if view.key == RECOAT} == {later_ms}
    desk.settle([drifted], later_ms)
    assert any("satin" in told.text for told in desk.due(later_ms))  # told again: its time is another
