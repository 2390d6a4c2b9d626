"""The list at the rack: its order, what is one row, and what a tick leaves in its place."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC

from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from studiowatch.service.commands import SnoozePrompt
from studiowatch.service.snapshot import PromptView, Snapshot
from studiowatch.studio.prompts import CoatToTend, Step, prompt_key, prompts_for
from studiowatch.ui.models.laying import LayingStep
from studiowatch.ui.models.prompts import Deed, PromptRow, counted_down, next_prompt_words, prompt_rows, with_ticked
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.widgets.coat_dialog import CoatDialog

from .conftest import Show
from .laying_scenes import RESTING
from .scenes import EMPTY, FOUR_WARNED, NOW_MS, ScriptedClock, ScriptedDesk

MINUTE_MS = 60_000


def prompt(step: Step, piece: str, due_ms: int = NOW_MS, **more: str) -> PromptView:
    plain = {"text": step.name, "piece_title": piece.title()}
    return PromptView(key=prompt_key(f"{piece}-top", step), due_ms=due_ms, piece_key=piece, **{**plain, **more})


def rows(*prompts: PromptView) -> tuple[PromptRow, ...]:
    snapshot: Snapshot = replace(FOUR_WARNED, prompts=prompts)
    return prompt_rows(snapshot, UTC)


def test_that_prompts_come_soonest_first_and_late_ones_say_so() -> None:
    shown = rows(*FOUR_WARNED.prompts[::-1])
    assert [row.keys for row in shown] == [("p1",), ("p2",), ("p3",), ("p4",), ("p5",)]
    assert shown[0].when == "now, since 14:10 · Blue Ladder"
    assert shown[0].tone is Tone.CAUTION
    assert "Torch" in shown[0].spoken
    assert shown[4].when == "Thu 08:12 · Orchard at Low Water"


def test_that_the_next_prompt_is_said_for_the_far_end_of_the_room() -> None:
    assert next_prompt_words(FOUR_WARNED, UTC).startswith("Second bubble pass, scrape drips\nnow")
    assert next_prompt_words(EMPTY, UTC) == "Nothing to do at the rack"


def test_that_seconds_are_counted_down_in_their_rows_alone() -> None:
    soon = [prompt(Step.COVER, piece, NOW_MS + 45_000) for piece in ("kiln", "boat")]
    later = prompt(Step.RECOAT, "kiln", NOW_MS + 90 * MINUTE_MS)
    snapshot = replace(FOUR_WARNED, prompts=(*soon, later))
    first, far = prompt_rows(snapshot, UTC)
    assert (first.when.split(",")[0], first.keys) == ("in 45 s", ("kiln-top:cover", "boat-top:cover"))
    after = replace(snapshot, time_ms=NOW_MS + 4000)
    told, same = counted_down((first, far), after, UTC)
    assert told.when.startswith("in 41 s, ")
    assert same is far
    assert (told, same) == prompt_rows(after, UTC)


def test_that_the_touch_test_comes_before_the_recoat_that_is_due_with_it() -> None:
    shown = rows(prompt(Step.RECOAT, "a"), prompt(Step.TOUCH_TEST, "a"))
    assert [row.deed for row in shown] == [Deed.TOUCH, Deed.LAY]


def test_that_prompts_alike_and_due_together_are_one_row_with_one_caution() -> None:
    shown = rows(
        prompt(Step.BUBBLES, "kiln", caution="Torch."),
        prompt(Step.BUBBLES, "marsh", NOW_MS + 3 * MINUTE_MS, caution="Torch."),
        prompt(Step.BUBBLES, "gate", NOW_MS + 30 * MINUTE_MS, caution="Torch."),
    )
    assert [row.when for row in shown] == ["now, since 14:12 · Kiln · Marsh", "in 30 min, 14:42 · Gate"]
    assert shown[0].keys == ("kiln-top:bubbles", "marsh-top:bubbles")
    assert shown[0].caution == "Torch."


def test_that_another_caution_or_an_answer_per_piece_keeps_rows_apart() -> None:
    assert len(rows(prompt(Step.BUBBLES, "a", caution="Torch."), prompt(Step.BUBBLES, "b", caution="No flame."))) == 2
    assert len(rows(prompt(Step.CLARITY, "a"), prompt(Step.CLARITY, "b"))) == 2
    assert len(rows(prompt(Step.RECOAT, "a"), prompt(Step.RECOAT, "b"))) == 2


def test_that_what_a_tick_asks_depends_on_the_step() -> None:
    deeds = {step: rows(prompt(step, "a"))[0].deed for step in Step}
    assert deeds == {
        Step.BUBBLES: Deed.TICK,
        Step.COVER: Deed.TICK,
        Step.CLARITY: Deed.LOOK,
        Step.TOUCH_TEST: Deed.TOUCH,
        Step.READ_ROOM: Deed.READ,
        Step.RECOAT: Deed.LAY,
    }


def test_that_the_cautions_of_a_solvent_borne_coat_stand_at_its_steps() -> None:
    tended = CoatToTend(
        coat_key="c",
        laid_ms=NOW_MS,
        clear_film=True,
        solvent=True,
        recoat_ms=NOW_MS + 60 * MINUTE_MS,
        following="satin",
    )
    by_step = {one.step: one for one in prompts_for(tended, now_ms=NOW_MS)}
    assert Step.CLARITY not in by_step
    assert "fresh air" in by_step[Step.BUBBLES].caution
    assert "vapour" in by_step[Step.COVER].caution
    assert "dull or blushed" in by_step[Step.TOUCH_TEST].caution
    water = {one.step: one for one in prompts_for(replace(tended, solvent=False), now_ms=NOW_MS)}
    assert water[Step.TOUCH_TEST].caution == ""
    assert not any("blush" in one.caution or "vapour gathers" in one.caution for one in water.values())


def test_that_a_ticked_row_stays_in_its_place_as_done() -> None:
    before = rows(prompt(Step.BUBBLES, "a"), prompt(Step.COVER, "a"), prompt(Step.CLARITY, "a"))
    ticked = before[1].keys[0]
    for newest in (before, (before[0], before[2])):
        after = with_ticked(newest, before, {ticked})
        assert [row.keys for row in after] == [row.keys for row in before]
        assert [row.done for row in after] == [False, True, False]
    assert with_ticked((before[0], before[2]), before, set()) == (before[0], before[2])


def test_that_a_check_of_a_sensor_stands_below_the_coats_however_long_it_is_due() -> None:
    check = PromptView(
        key="CAFE0042:1:sensor-check", due_ms=NOW_MS - 9 * 86_400_000, text="Check", piece_key="", piece_title=""
    )
    shown = rows(check, prompt(Step.BUBBLES, "kiln"), prompt(Step.RECOAT, "gate", NOW_MS + 30 * MINUTE_MS))
    assert [row.keys[0] for row in shown] == ["kiln-top:bubbles", "gate-top:recoat", "CAFE0042:1:sensor-check"]
    assert shown[-1].deed is Deed.TICK
    assert shown[-1].when == "now, since 23 Feb 14:12"


def test_that_what_comes_within_the_hour_is_counted_down() -> None:
    shown = rows(
        prompt(Step.BUBBLES, "a", NOW_MS + 90_000),
        prompt(Step.CLARITY, "b", NOW_MS + 12 * MINUTE_MS),
        prompt(Step.CLARITY, "c", NOW_MS + 61 * MINUTE_MS),
    )
    assert [row.when for row in shown] == ["in 90 s, 14:13 · A", "in 12 min, 14:24 · B", "15:13 · C"]
    assert [row.is_near for row in shown] == [True, False, False]


def test_that_only_what_is_due_and_of_use_can_be_put_off() -> None:
    late = prompt(Step.BUBBLES, "a", NOW_MS - MINUTE_MS)
    shown = rows(
        late,
        replace(prompt(Step.BUBBLES, "b", NOW_MS - 30 * MINUTE_MS), missed=True, useless=True),
        prompt(Step.CLARITY, "c", NOW_MS + MINUTE_MS),
    )
    assert {row.piece_key: row.can_snooze for row in shown} == {"a": True, "b": False, "c": False}


def test_that_a_missed_prompt_and_one_put_off_say_so() -> None:
    shown = rows(
        replace(prompt(Step.BUBBLES, "a", NOW_MS - 30 * MINUTE_MS), missed=True),
        replace(prompt(Step.COVER, "b", NOW_MS + 4 * MINUTE_MS), snoozed=True),
    )
    assert [row.when for row in shown] == ["missed, was due 13:42 · A", "put off, in 4 min, 14:16 · B"]


def test_that_an_open_preparation_stands_behind_what_is_due_and_leads_back_to_its_form() -> None:
    snapshot = replace(
        RESTING, prompts=(prompt(Step.COVER, "a", NOW_MS - MINUTE_MS), prompt(Step.CLARITY, "b", NOW_MS + MINUTE_MS))
    )
    due, preparing, coming = prompt_rows(snapshot, UTC)
    assert (due.piece_key, coming.piece_key) == ("a", "b")
    assert preparing.deed is Deed.PREPARE
    assert preparing.text == "Prepare: lay a coat on Orchard at Low Water"
    assert preparing.when.startswith("The bottle rests: 9 min · The surface dries: 8 min")
    assert preparing.piece_key == "orchard"


def test_that_the_button_puts_all_prompts_of_a_row_off_for_five_minutes(shown: Show, desk: ScriptedDesk) -> None:
    window = shown(
        replace(FOUR_WARNED, prompts=(prompt(Step.BUBBLES, "kiln"), prompt(Step.BUBBLES, "marsh")), warnings=())
    )
    window.page.prompts.views[0].later.click()
    assert desk.commands == [
        SnoozePrompt(prompt_key=f"{piece}-top:bubbles", until_ms=NOW_MS + 5 * MINUTE_MS) for piece in ("kiln", "marsh")
    ]


def test_that_the_row_of_a_preparation_opens_it_where_it_stood(shown: Show) -> None:
    window = shown(replace(RESTING, prompts=()))
    window.page.prompts.views[0].target.click()
    form = window.findChild(CoatDialog)
    assert form.step is LayingStep.READY
    assert form.heading.text() == "Lay a coat: Orchard at Low Water"


def test_that_each_second_is_counted_between_two_snapshots_while_one_looks(shown: Show, clock: ScriptedClock) -> None:
    window = shown(replace(FOUR_WARNED, prompts=(prompt(Step.BUBBLES, "kiln", NOW_MS + 45_500),)))
    (view,) = window.page.prompts.views
    told = []
    for _ in range(3):
        clock.now_ms += 1000
        window.feed._tick()
        told.append(view._when.text().split(",")[0])
    assert told == ["in 45 s", "in 44 s", "in 43 s"]
    window.pages.toggle_across()
    clock.now_ms += 2000
    window.feed._tick()
    assert "in 41 s" in window.across._prompt.text()
    window.feed.set_awake(awake=False)
    clock.now_ms += 1000
    window.feed._tick()
    assert "in 41 s" in window.across._prompt.text()


def test_that_prompts_that_were_missed_behind_another_page_have_no_blank_lines(
    shown: Show, desk: ScriptedDesk, qtbot: QtBot
) -> None:
    def missed(title: str) -> Snapshot:
        steps = (Step.BUBBLES, Step.COVER, Step.CLARITY)
        late = [prompt(step, "kiln", NOW_MS - 90 * MINUTE_MS, piece_title=title) for step in steps]
        return replace(FOUR_WARNED, prompts=tuple(replace(one, missed=True) for one in late))

    def settle() -> None:
        for _ in range(4):  # what was asked for is laid out, and what is asked for then
            QApplication.processEvents()

    window = shown(missed("Boat on the River at Dawn in the Last Days of May"))
    views = window.page.prompts.views
    window.resize(1280, 800)
    settle()
    before = [view._when.height() for view in views]
    window.pages.show_plan()
    desk.publish(missed("Kiln"))
    qtbot.waitUntil(lambda: views[0]._when.text().endswith("· Kiln"))
    window.pages.show_rack()
    settle()
    after = [view._when.height() for view in views]
    assert after == [view._when.heightForWidth(view._when.width()) for view in views]
    assert all(one < other for one, other in zip(after, before, strict=True))
