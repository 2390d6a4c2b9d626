"""Prompts are told once, kept until ticked, put right with the coat, and gone from the file when they apply no more."""

from __future__ import annotations

from dataclasses import replace

import pytest

from studiowatch.service.commands import Refused
from studiowatch.service.disk import Disk
from studiowatch.service.prompt_desk import PromptDesk, Reminder, Tended
from studiowatch.service.replaying import MemoryRecords
from studiowatch.store.shapes import PromptRecord
from studiowatch.store.trouble import StoreTrouble
from studiowatch.studio.missed import FilmNow
from studiowatch.studio.prompts import CoatToTend, Step, prompt_key

LAID_MS = 1_772_442_000_000  # 2026-03-02T09:00:00Z
MINUTE_MS = 60_000
BUBBLES = prompt_key("c", Step.BUBBLES)
COVER = prompt_key("c", Step.COVER)
RECOAT = prompt_key("c", Step.RECOAT)
TACK_FREE = FilmNow(is_set=True, is_tack_free=True)
PROMISED_MS = LAID_MS + 240 * MINUTE_MS


class RefusingRecords(MemoryRecords):
    """Records that take no prompt while told so."""

    refuses = False

    def save_prompt(self, prompt: PromptRecord) -> None:
        if self.refuses:
            raise StoreTrouble("It is in use.")
        super().save_prompt(prompt)


def tended(**changes: object) -> Tended:
    coat = CoatToTend(coat_key="c", laid_ms=LAID_MS, clear_film=True, recoat_ms=PROMISED_MS, following="satin")
    return Tended(coat=replace(coat, **changes), piece_key="p", piece_title="Low Tide")


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


def test_that_a_reminder_is_told_once_in_each_run_until_it_is_ticked() -> None:
    records, ticked = MemoryRecords(held={}), list[int]()
    check = Reminder(
        key="sht4x:1:sensor-check", due_ms=LAID_MS, headline="Check", caution="Ventilate.", tick=ticked.append
    )
    for run in range(2):
        desk = desk_on(records)
        desk.reminder = check
        now_ms = LAID_MS + run * MINUTE_MS
        assert [told.text for told in desk.due(now_ms)] == ["Check. Ventilate."]
        assert desk.due(now_ms + 1000) == []
        desk.disk.catch_up(0.0)
    desk.tick(check.key, now_ms + 2000)
    assert desk.due(now_ms + 3000) == []
    assert ticked == [LAID_MS + MINUTE_MS + 2000]


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
    desk.settle([tended(film=FilmNow(is_set=True), is_covered=True)], LAID_MS)
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
    drifted = tended(film=TACK_FREE, recoat_ms=later_ms)
    desk.settle([drifted], now_ms)
    assert {view.due_ms for view in desk.views(now_ms) if view.key == RECOAT} == {PROMISED_MS}
    assert desk.due(now_ms)
    desk.settle([drifted], now_ms, corrected={"another"})
    assert {view.due_ms for view in desk.views(now_ms) if view.key == RECOAT} == {PROMISED_MS}
    desk.settle([drifted], now_ms, corrected={"c"})
    assert {view.due_ms for view in desk.views(now_ms) if view.key == RECOAT} == {later_ms}
    desk.settle([drifted], later_ms)
    assert any("satin" in told.text for told in desk.due(later_ms))  # told again: its time is another


def restarted(records: MemoryRecords, desk: PromptDesk) -> PromptDesk:
    desk.disk.catch_up(0.0)
    return desk_on(records)


def test_that_what_was_told_is_not_told_again_after_a_restart() -> None:
    records = MemoryRecords(held={})
    desk = desk_on(records)
    desk.settle([tended()], LAID_MS)
    now_ms = LAID_MS + 16 * MINUTE_MS
    desk.settle([tended()], now_ms)
    assert len(desk.due(now_ms)) == 1
    again = restarted(records, desk)
    again.settle([tended()], now_ms + MINUTE_MS)
    assert again.due(now_ms + MINUTE_MS) == []
    assert BUBBLES in keys(again, now_ms + MINUTE_MS)


def test_that_what_fell_due_in_a_sleep_is_told_once_as_missed_and_what_is_of_no_use_goes() -> None:
    records = MemoryRecords(held={})
    desk = desk_on(records)
    desk.settle([tended()], LAID_MS)
    woken_ms = LAID_MS + 90 * MINUTE_MS
    desk.settle([tended(film=FilmNow(is_set=True))], woken_ms)
    told = {one.text.split(":")[0]: one for one in desk.due(woken_ms)}
    assert set(told) == {"Second pass missed", "The cover is late"}
    assert all(one.is_missed and one.document()["missed"] for one in told.values())
    assert desk.due(woken_ms + 1000) == []
    assert {view.key: view.useless for view in desk.views(woken_ms)} == {BUBBLES: True, COVER: False, RECOAT: False} | {
        prompt_key("c", Step.TOUCH_TEST): False
    }
    again = restarted(records, desk)
    later_ms = woken_ms + 31 * MINUTE_MS
    again.settle([tended(film=FilmNow(is_set=True))], later_ms)
    assert BUBBLES not in keys(again, later_ms)
    assert COVER in keys(again, later_ms)


def test_that_a_coat_entered_late_is_not_blamed_for_a_pass_that_nobody_was_asked_for() -> None:
    desk = desk_on(MemoryRecords(held={}))
    late_ms = LAID_MS + 90 * MINUTE_MS
    desk.settle([tended(film=FilmNow(is_set=True))], late_ms)
    assert BUBBLES not in keys(desk, late_ms)


def test_that_a_prompt_put_off_is_told_again_when_that_is_over_and_not_before() -> None:
    records = MemoryRecords(held={})
    desk = desk_on(records)
    desk.settle([tended()], LAID_MS)
    now_ms = LAID_MS + 15 * MINUTE_MS
    desk.settle([tended()], now_ms)
    assert len(desk.due(now_ms)) == 1
    desk.disk.catch_up(0.0)
    desk.snooze(BUBBLES, now_ms + 4 * MINUTE_MS, now_ms)
    (view,) = (view for view in desk.views(now_ms) if view.key == BUBBLES)
    assert (view.snoozed, view.overdue, view.due_ms) == (True, False, now_ms + 4 * MINUTE_MS)
    again = restarted(records, desk)
    again.settle([tended()], now_ms + 3 * MINUTE_MS)
    assert again.due(now_ms + 3 * MINUTE_MS) == []
    again.settle([tended()], now_ms + 4 * MINUTE_MS)
    assert len(again.due(now_ms + 4 * MINUTE_MS)) == 1


@pytest.mark.parametrize("minutes", [-1, 0, 361])
def test_that_a_prompt_is_not_put_off_into_the_past_or_for_good(minutes: int) -> None:
    desk = desk_on(MemoryRecords(held={}))
    desk.settle([tended()], LAID_MS)
    with pytest.raises(Refused, match="1 to 360 min"):
        desk.snooze(BUBBLES, LAID_MS + minutes * MINUTE_MS, LAID_MS)


def test_that_putting_off_what_is_gone_or_of_no_use_is_refused() -> None:
    desk = desk_on(MemoryRecords(held={}))
    desk.settle([tended()], LAID_MS)
    now_ms = LAID_MS + 20 * MINUTE_MS
    desk.settle([tended(film=FilmNow(is_set=True))], now_ms)
    for key, words in (("x:bubbles", "gone"), (BUBBLES, "no use")):
        with pytest.raises(Refused, match=words):
            desk.snooze(key, now_ms + MINUTE_MS, now_ms)


def test_that_what_fell_due_before_the_coat_was_recorded_is_due_now_and_was_missed_by_nobody() -> None:
    # registered nine days after the paint, which was ready on the third; left open for 90 min it is missed from then on
    records = MemoryRecords(held={})
    desk = desk_on(records)
    now_ms = LAID_MS + 9 * 24 * 60 * MINUTE_MS
    paint = tended(clear_film=False, recoat_ms=LAID_MS + 2 * 24 * 60 * MINUTE_MS)
    desk.settle([paint], now_ms)
    assert [(view.text, view.due_ms, view.overdue, view.missed) for view in desk.views(now_ms)] == [
        ("Lay satin", now_ms, True, False),
        ("Touch test at an edge before the next coat", now_ms, True, False),
    ]
    assert all(not one.is_missed for one in desk.due(now_ms))
    again = restarted(records, desk)
    again.settle([paint], now_ms + 10 * MINUTE_MS)
    assert {view.due_ms for view in again.views(now_ms)} == {now_ms}
    again.settle([paint], now_ms + 90 * MINUTE_MS)
    assert [view.due_ms for view in again.views(now_ms) if view.missed] == [now_ms]


def test_that_a_step_at_a_film_recorded_late_is_late_by_the_film_and_missed_by_nobody() -> None:
    desk = desk_on(MemoryRecords(held={}))
    now_ms = LAID_MS + 40 * MINUTE_MS
    for later_ms, is_missed in ((now_ms, False), (now_ms + MINUTE_MS, False), (now_ms + 6 * MINUTE_MS, True)):
        desk.settle([tended(film=FilmNow(is_set=True))], later_ms)
        (cover,) = (view for view in desk.views(later_ms) if view.key == COVER)
        assert (cover.text, cover.due_ms, cover.missed) == ("The cover is late: set it now", now_ms, is_missed)


def test_that_a_coat_found_to_be_older_than_recorded_makes_nothing_missed_that_was_promised_for_later() -> None:
    # promised for the 240th minute; 230 min after, the laying is put right by 20 min: it is due at once
    desk = desk_on(MemoryRecords(held={}))
    desk.settle([tended()], LAID_MS)
    now_ms = LAID_MS + 230 * MINUTE_MS
    right = tended(laid_ms=LAID_MS - 20 * MINUTE_MS, recoat_ms=PROMISED_MS - 20 * MINUTE_MS)
    desk.settle([right], now_ms, corrected={"c"})
    (recoat,) = (view for view in desk.views(now_ms) if view.key == RECOAT)
    assert (recoat.due_ms, recoat.missed) == (now_ms, False)


def test_that_no_cover_is_asked_for_over_a_film_that_its_sheet_has_dry_before_any_air_was_read() -> None:
    desk = desk_on(MemoryRecords(held={}))
    coat = tended(touch_dry_ms=LAID_MS + 60 * MINUTE_MS, recoat_ms=None)
    desk.settle([coat], LAID_MS + 61 * MINUTE_MS)
    assert COVER not in keys(desk, LAID_MS + 61 * MINUTE_MS)
    desk.settle([coat], LAID_MS + 59 * MINUTE_MS)
    assert COVER in keys(desk, LAID_MS + 59 * MINUTE_MS)
