"""The finishing plan's page: what she sees, and that what she does there becomes the right command."""

from __future__ import annotations

import os
from collections.abc import Callable
from dataclasses import replace
from errno import ENOSPC
from os import strerror
from pathlib import Path

import icalendar
import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from studiowatch.service.plan_commands import (
    MovePlanned,
    PlanCoat,
    PlanCoats,
    ReplacePlanned,
    SaveRecipe,
    SetWorkingHours,
    UnplanCoat,
)
from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.words import say
from studiowatch.studio.plan_shapes import Milestone, Times
from studiowatch.studio.recipes import BUILT_IN, Recipe
from studiowatch.studio.words import Level, Sentence
from studiowatch.studio.working_hours import WorkingHours
from studiowatch.ui.models.laying import check_of
from studiowatch.ui.models.plan_words import BEING_MADE, NO_COATS, NO_PIECES, first_words, piece_editor, plan_rows
from studiowatch.ui.models.times import local
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.widgets.plan_dialogs import HOW_TO, HoursDialog, RecipeDialog
from studiowatch.ui.widgets.plan_table import legend_words
from studiowatch.ui.window import StudioWindow

from .conftest import push
from .plan_scenes import BROKEN_PLANNED, BUSY_PLANNED, FOUR_PLANNED, TWELVE_PLANNED
from .scenes import EMPTY, FOUR_CALM, NOW_MS, SHEETS, ScriptedDesk

OFFERED = {sheet.name: sheet for sheet in SHEETS}
Shown = Callable[[Snapshot], StudioWindow]


@pytest.fixture
def plan_window(shown: Shown) -> StudioWindow:
    window = shown(FOUR_PLANNED)
    window.pages.show_plan()
    return window


def sent(desk: ScriptedDesk) -> object:
    return desk.commands[-1]


def test_that_rows_tell_the_day_due_and_the_slack_of_the_plan_in_words_and_tone() -> None:
    rows = {row.title: row for row in plan_rows(FOUR_PLANNED)}
    orchard, lamp = rows["Orchard at Low Water"], rows["Lamp in the Fog"]
    assert (orchard.due, orchard.slack_tone) == ("due Fri 20 Mar", Tone.GOOD)
    assert lamp.slack_tone is Tone.ACT
    assert lamp.slack.endswith("late")


def test_that_without_a_plan_or_pieces_the_page_says_what_to_expect() -> None:
    assert first_words(EMPTY) == NO_PIECES
    assert first_words(FOUR_CALM) == BEING_MADE


def test_that_a_piece_tells_what_its_coats_break_the_worst_first() -> None:
    told = piece_editor(BROKEN_PLANNED, "orchard", OFFERED)
    assert told is not None
    levels = [row.level for row in told.said if row.is_marked]
    assert levels == sorted(levels, reverse=True)
    assert any("no data sheet 'the-old-bottle'" in row.sentence for row in told.said)
    assert "5 things to look at" in [row.note for row in plan_rows(BROKEN_PLANNED)]


def test_that_times_beside_one_another_tell_the_day_of_each() -> None:
    # it is Wednesday 14:12
    plan, hour_ms = FOUR_PLANNED.plan, 3_600_000
    assert plan is not None
    orchard, *others = plan.pieces
    ready = Times(p10=NOW_MS + hour_ms, p50=NOW_MS + 2 * hour_ms, p90=NOW_MS + 20 * hour_ms)
    coat = replace(orchard.coats[0], ready=ready, lay_ms=ready.p90)
    handle = orchard.milestone(Milestone.HANDLE)
    assert handle is not None
    handle = replace(handle, times=Times(p10=NOW_MS + hour_ms, p50=None, p90=NOW_MS + 29 * hour_ms))
    changed = replace(orchard, coats=(coat, *orchard.coats[1:]), milestones=(handle,))
    told = piece_editor(replace(FOUR_PLANNED, plan=replace(plan, pieces=(changed, *others))), "orchard", OFFERED)
    assert told is not None
    today, lay, by = (local(NOW_MS + hours * hour_ms) for hours in (1, 20, 29))
    assert told.coats[0].dates == f"lay {lay:%a %H:%M}; perhaps ready from {today:%a %H:%M}"
    assert told.fit[0].sentence == f"Fit to handle by {by:%a %H:%M}, perhaps {today:%a %H:%M}"


def test_that_the_editor_shows_the_coats_as_they_are_though_the_plan_is_older() -> None:
    unplanned = piece_editor(FOUR_CALM, "orchard", OFFERED)
    assert unplanned is not None
    assert [row.dates for row in unplanned.coats] == ["date to come", "date to come"]
    assert piece_editor(FOUR_CALM, "nobody", OFFERED) is None


def test_that_ctrl_p_opens_the_page_and_escape_leaves_it(shown: Shown, qtbot: QtBot) -> None:
    window = shown(FOUR_PLANNED)
    action = next(action for action in window.actions() if action.shortcut().toString() == "Ctrl+P")
    action.trigger()
    assert window.plan.isVisible()
    assert window.plan.today.first.text() == FOUR_PLANNED.plan.first  # type: ignore[union-attr]
    with qtbot.waitSignal(window.plan.left):
        window.plan.back.click()
    assert window.page.isVisible()


def test_that_what_is_to_be_laid_today_stands_in_order(shown: Shown) -> None:
    window = shown(BUSY_PLANNED)
    window.pages.show_plan()
    plan = BUSY_PLANNED.plan
    assert plan is not None
    rows = [row for row in window.plan.today.steps if row.isVisible()]
    assert len(rows) == len(plan.today) >= 2
    assert all(step.piece_title in row.accessibleName() for row, step in zip(rows, plan.today, strict=True))


def test_that_choosing_a_row_shows_that_piece(plan_window: StudioWindow, qtbot: QtBot) -> None:
    page = plan_window.plan
    qtbot.keyClick(page.table.rows[1], Qt.Key.Key_Return)
    assert page.editor._title.text() == "Blue Ladder"
    qtbot.mouseClick(page.table.rows[0], Qt.MouseButton.LeftButton)
    assert page.editor._title.text() == "Orchard at Low Water"
    assert [row.property("chosen") for row in page.table.rows[:2]] == ["true", "false"]


def test_that_the_page_opens_on_the_piece_that_is_chosen_on_the_rack(shown: Shown, qtbot: QtBot) -> None:
    window = shown(TWELVE_PLANNED)
    window.resize(1280, 800)
    last = TWELVE_PLANNED.pieces[-1]
    window.page.rack.choose(last.key)
    window.pages.show_plan()
    table = window.plan.table
    assert window.plan.editor._title.text() == last.title
    (chosen,) = [row for row in table.rows if row.property("chosen") == "true"]
    assert chosen.key == last.key
    qtbot.waitUntil(lambda: not chosen.visibleRegion().isEmpty())  # the rows scroll to it
    window.pages.show_rack()
    window.page.rack.choose(TWELVE_PLANNED.pieces[0].key)
    window.pages.show_plan()
    assert window.plan.editor._title.text() == TWELVE_PLANNED.pieces[0].title


def test_that_a_sheet_that_she_made_since_may_be_planned(plan_window: StudioWindow, desk: ScriptedDesk) -> None:
    editor = plan_window.plan.editor
    mine = replace(SHEETS[1], name="mine", title="Oil & wax")
    desk.offered = (*SHEETS, mine)
    plan_window.plan.show_snapshot(FOUR_PLANNED)
    for menu in (editor.add.menu(), editor.coats[0].change.menu()):
        assert [one.text() for one in menu.actions()] == [*(sheet.title for sheet in SHEETS), "Oil && wax"]
    editor.add.menu().actions()[-1].trigger()
    assert sent(desk) == PlanCoat(piece_key="orchard", sheet="mine")
    editor.coats[0].change.menu().actions()[-1].trigger()
    assert sent(desk) == ReplacePlanned(coat_key=editor.coats[0]._shown.key, sheet="mine")


def test_that_coats_to_come_are_moved_changed_taken_out_and_added(
    plan_window: StudioWindow, desk: ScriptedDesk, qtbot: QtBot
) -> None:
    editor = plan_window.plan.editor
    first, second = editor.coats[:2]
    assert (first.up.isEnabled(), first.down.isEnabled(), second.down.isEnabled()) == (False, True, False)
    first.down.click()
    assert sent(desk) == MovePlanned(coat_key="o3", place=1)
    second.drop.click()
    assert sent(desk) == UnplanCoat(coat_key="o4")
    second.change.menu().actions()[1].trigger()
    assert sent(desk) == ReplacePlanned(coat_key="o4", sheet="gloss-waterborne")
    editor.add.menu().actions()[2].trigger()
    assert sent(desk) == PlanCoat(piece_key="orchard", sheet="satin-waterborne")
    qtbot.waitUntil(lambda: plan_window.foot.words == "A coat was added to the plan.")


def test_that_a_recipe_is_applied_whole(plan_window: StudioWindow, desk: ScriptedDesk) -> None:
    plan_window.plan.editor.recipes.actions()[1].trigger()
    assert sent(desk) == PlanCoats(piece_key="orchard", sheets=BUILT_IN[1].sheets)


def test_that_a_refusal_is_told_at_the_foot(plan_window: StudioWindow, desk: ScriptedDesk, qtbot: QtBot) -> None:
    desk.refuse("That coat of Orchard at Low Water is on already, so the plan cannot change it.")
    plan_window.plan.editor.coats[0].drop.click()
    qtbot.waitUntil(lambda: plan_window.foot.words.startswith("That coat of Orchard"))


def test_that_a_recipe_of_hers_is_deleted_and_a_built_in_one_cannot_be(
    shown: Shown, desk: ScriptedDesk, qtbot: QtBot
) -> None:
    own = Recipe(name="Panels & more", sheets=("gloss-waterborne",), own=True)
    window = shown(replace(FOUR_PLANNED, recipes=(*BUILT_IN, own)))
    window.pages.show_plan()
    editor = window.plan.editor
    (forget,) = [one.menu() for one in editor.recipes.actions() if one.menu() is not None]
    assert [one.text() for one in forget.actions()] == ["Panels && more"]
    forget.actions()[0].trigger()
    assert sent(desk) == SaveRecipe(name="Panels & more", sheets=())
    qtbot.waitUntil(lambda: window.foot.words == "Deleted: the recipe Panels & more. Undo brings it back.")
    window.plan.show_snapshot(FOUR_PLANNED)
    assert [one for one in editor.recipes.actions() if one.menu() is not None] == []


def test_that_coats_to_come_are_kept_as_a_recipe_under_a_name(
    plan_window: StudioWindow, desk: ScriptedDesk, qtbot: QtBot
) -> None:
    plan_window.plan.editor.keep.click()
    (form,) = plan_window.findChildren(RecipeDialog)
    form.command_or_fault()
    assert form.fault_words.startswith("The recipe has no name")
    form.name_field.setText("Panels, satin")
    push(form, "Keep the recipe").click()
    assert sent(desk) == SaveRecipe(name="Panels, satin", sheets=("gloss-waterborne", "satin-waterborne"))
    qtbot.waitUntil(lambda: plan_window.foot.words == "Kept as the recipe Panels, satin.")


def test_that_hours_are_set_and_a_slip_names_its_day(plan_window: StudioWindow, desk: ScriptedDesk) -> None:
    plan_window.plan.today.hours.click()
    (form,) = plan_window.findChildren(HoursDialog)
    form.days["sunday"].setText("10 to 2")
    form.command_or_fault()
    assert form.fault_words.startswith("Sunday: Working hours are '10 to 2'")
    assert form.days["sunday"].property("wrong") == "true"
    form.days["sunday"].setText("10:00-14:00")
    form.command_or_fault()
    assert sent(desk) == SetWorkingHours(hours=WorkingHours().with_day("sunday", "10:00-14:00"))


def test_that_the_hours_open_with_the_keyboard_in_the_first_day(plan_window: StudioWindow, qtbot: QtBot) -> None:
    plan_window.plan.today.hours.click()
    (form,) = plan_window.findChildren(HoursDialog)
    with qtbot.waitActive(form):
        form.activateWindow()
    qtbot.waitUntil(form.days["monday"].hasFocus)
    assert '"' not in say(HOW_TO, off="off")  # as the other forms quote
    assert "“off”" in say(HOW_TO, off="off")


def test_that_the_calendar_file_is_written_and_a_folder_that_refuses_is_told(
    plan_window: StudioWindow, qtbot: QtBot, tmp_path: Path
) -> None:
    page, file = plan_window.plan, tmp_path / "plan.ics"
    page.write_calendar(str(file))
    plan = FOUR_PLANNED.plan
    assert plan is not None
    events = icalendar.Calendar.from_ical(file.read_bytes()).walk("VEVENT")
    coats = [coat for piece in plan.pieces for coat in piece.coats]
    assert sum(": lay " in str(event["SUMMARY"]) for event in events) == len(coats)
    with qtbot.waitSignal(page.refused) as told:
        page.write_calendar(str(tmp_path / "nowhere" / "plan.ics"))
    assert "cannot be written" in told.args[0]


def test_that_a_calendar_on_a_full_disk_leaves_the_earlier_one(
    plan_window: StudioWindow, qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def full(_file: int) -> None:
        raise OSError(ENOSPC, strerror(ENOSPC))

    page, file = plan_window.plan, tmp_path / "plan.ics"
    file.write_bytes(b"of last week")
    monkeypatch.setattr(os, "fsync", full)
    with qtbot.waitSignal(page.refused) as told:
        page.write_calendar(str(file))
    assert strerror(ENOSPC) in told.args[0]
    assert file.read_bytes() == b"of last week"
    assert [each.name for each in tmp_path.iterdir()] == [file.name]


def test_that_twelve_pieces_and_none_have_as_many_rows(shown: Shown) -> None:
    window = shown(TWELVE_PLANNED)
    window.pages.show_plan()
    assert sum(row.isVisibleTo(window) for row in window.plan.table.rows) == 12
    window.plan.show_snapshot(EMPTY)
    assert not any(row.isVisibleTo(window) for row in window.plan.table.rows)
    assert not window.plan.editor.isVisibleTo(window)
    assert not window.plan.today.save.isEnabled()


def test_that_a_piece_without_coats_to_come_says_how_to_plan_some(plan_window: StudioWindow) -> None:
    bare = FOUR_PLANNED.pieces[0]
    kept = tuple(coat for coat in bare.coats if coat.laid_ms is not None)
    plan_window.plan.show_snapshot(replace(FOUR_PLANNED, pieces=(replace(bare, coats=kept),)))
    assert plan_window.plan.editor._empty.isVisibleTo(plan_window)
    assert plan_window.plan.editor._empty.text() == NO_COATS
    assert not plan_window.plan.editor.keep.isEnabled()


def test_that_everything_has_a_name_for_those_who_listen(plan_window: StudioWindow) -> None:
    page = plan_window.plan
    for row in page.table.rows:
        assert row.accessibleName()
        assert row.accessibleDescription()
    for coat in page.editor.coats:
        names = {part.accessibleName() for part in (coat.up, coat.down, coat.change, coat.drop)}
        assert len(names) == 4
        assert all(name.split(": ")[1] for name in names)


def test_that_a_coat_that_breaks_the_order_is_warned_of_when_it_is_about_to_be_laid() -> None:
    against = Sentence(
        level=Level.CAUTION, headline="Too many coats with matting agent", detail="It dulls the colours."
    )
    good = Sentence(level=Level.CALM, headline="Good to lay a coat")
    bare = replace(FOUR_CALM.pieces[0], not_yet=None, stack_checks=(("satin-waterborne", against),))
    snapshot = replace(FOUR_CALM, pieces=(bare,), room_checks=tuple((sheet.name, good) for sheet in SHEETS))
    told = check_of(snapshot, bare, OFFERED["satin-waterborne"])
    assert told is not None
    assert (told.level, told.headline) == (Level.CAUTION, against.headline)
    plain = check_of(snapshot, bare, OFFERED["gloss-waterborne"])
    assert plain is not None
    assert plain.headline.startswith("Go")


def test_that_no_line_of_the_legend_ends_after_a_mark() -> None:
    assert [len(words) for words in map(str.split, legend_words().replace("\u00a0", "-").split("   "))] == [1] * 6
