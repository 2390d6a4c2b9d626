"""Lay a coat: what it would seal in, what its vapour comes to, and what weighing the bottle would gain."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import QEvent, Qt
from PySide6.QtWidgets import QApplication, QLabel, QWidget
from pytestqt.qtbot import QtBot
from shiboken6 import isValid

from studiowatch.coats.vapour import VENTILATE
from studiowatch.service.commands import LayCoat
from studiowatch.service.preparation_commands import EndPreparation, StartPreparation, TickChore
from studiowatch.service.snapshot import Snapshot
from studiowatch.studio.chores import Task
from studiowatch.studio.preparation import CoatToLay
from studiowatch.ui.models.laying import LayingStep
from studiowatch.ui.widgets.coat_dialog import CoatDialog
from studiowatch.ui.widgets.sentence import SentenceView

from .conftest import Show
from .laying_scenes import GO, RESTING, SOLVENT_NEAR, WAIT
from .scenes import EARLY, NOW_MS, TOLD, WEIGHING, ScriptedClock, ScriptedDesk

pytestmark = pytest.mark.window
SOLVENT = "Gloss varnish, solvent-borne"


def words(part: QWidget) -> list[str]:
    return [one.text() for one in part.findChildren(QLabel) if one.text()]


def opened(shown: Show, sheet: str = "") -> CoatDialog:
    form = shown(TOLD).deeds.lay_coat("orchard")
    if sheet:
        choose(form, sheet)
    return form


def choose(form: CoatDialog, sheet: str) -> None:
    form.sheet_field.setCurrentIndex(form.sheet_field.findText(sheet))
    QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)


def test_that_the_verdict_says_what_would_be_sealed_in_and_follows_the_film(shown: Show) -> None:
    form = opened(shown)
    verdict = form.findChild(SentenceView)
    assert verdict.headline == EARLY.not_yet.headline
    assert "A coat now would seal in 41.6 g/m² of water." in verdict.accessibleName()
    drier = replace(EARLY, would_seal_g_m2=12.0)
    form.set_snapshot(replace(TOLD, pieces=(drier, *TOLD.pieces[1:])))
    assert "would seal in 12.0 g/m²" in verdict.accessibleName()


def test_that_ventilating_stands_first_among_the_cautions_of_a_solvent_borne_coat(shown: Show) -> None:
    form = opened(shown, SOLVENT)
    said = words(form._cautions)
    assert said[0] == VENTILATE
    assert said[1].startswith("17.7 g of solvent, assuming a room of 30 m³")
    assert len(said) == 2
    assert any("Rags" in one for one in words(form._own_cautions))
    water = opened(shown)
    assert not any("solvent, assuming" in one for one in words(water._cautions))
    assert water._own_cautions.cautions == ()


def test_that_a_list_that_drops_down_shows_its_last_row_whole(shown: Show, qtbot: QtBot) -> None:
    form = opened(shown)
    for field in (form.piece_field, form.unit_field):
        rows = field.view()
        field.showPopup()
        qtbot.waitUntil(rows.isVisible)
        last = rows.visualRect(rows.model().index(field.count() - 1, 0))
        assert rows.viewport().rect().top() <= last.top()
        assert last.bottom() <= rows.viewport().rect().bottom()
        assert last.height() >= form.dress.px(24)
        field.hidePopup()


def test_that_the_names_of_sheets_drop_down_whole_at_twice_the_text(shown: Show, qtbot: QtBot) -> None:
    window = shown(TOLD)
    window.dressing.set_text_pct(200)
    form = window.deeds.lay_coat("orchard")
    rows = form.sheet_field.view()
    form.sheet_field.setFixedWidth(rows.sizeHintForColumn(0) // 2)
    form.sheet_field.showPopup()
    qtbot.waitUntil(rows.isVisible)
    assert rows.sizeHintForColumn(0) <= rows.viewport().width()
    form.sheet_field.hidePopup()


def test_that_all_cautions_stand_above_the_button_from_the_first(shown: Show) -> None:
    form = shown(RESTING).deeds.lay_coat("orchard")
    before = form._cautions.cautions
    form._show_cautions()
    assert form._cautions.cautions == before
    assert len(before) > 1


def test_that_the_vapour_follows_the_amount(shown: Show) -> None:
    form = opened(shown, SOLVENT)
    form.amount_field.setText("75.6")  # twice the 37.8 mL of 70 µm on 0.54 m²
    QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    assert words(form._cautions)[1].startswith("35.4 g of solvent")


def test_that_a_solvent_borne_coat_is_thinned_with_thinner(shown: Show) -> None:
    form = opened(shown, SOLVENT)
    assert form.thinned_field.accessibleName() == "Thinner added, %"
    form.thinned_field.setText("much")
    form.command_or_fault()
    assert form.fault_words.startswith("The thinner added is “much”")
    choose(form, "Satin varnish, water-borne")
    assert form.thinned_field.accessibleName() == "Water added, %"
    assert "Water added, %" in words(form)


def test_that_weighing_the_bottle_is_advised_until_an_amount_is_typed(shown: Show) -> None:
    form = opened(shown)
    assert WEIGHING in words(form)
    form.amount_field.setText("54")
    assert WEIGHING not in words(form)
    form.amount_field.clear()
    choose(form, SOLVENT)  # of this product no coat was laid
    assert WEIGHING not in words(form)


def is_gone(form: CoatDialog) -> bool:
    """Return whether the form has closed; one that has is deleted."""
    return not isValid(form) or not form.isVisible()


def prepared(shown: Show, snapshot: Snapshot = GO, key: str = "orchard") -> CoatDialog:
    form = shown(snapshot).deeds.lay_coat(key)
    form.prepare()
    QApplication.processEvents()
    return form


def test_that_enter_and_enter_lay_a_coat(shown: Show, desk: ScriptedDesk, qtbot: QtBot) -> None:
    form = shown(GO).deeds.lay_coat("orchard")
    qtbot.keyClick(form.amount_field, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: form.step is LayingStep.READY and form.buttons.brush_down.isEnabled())
    qtbot.keyClick(form.focusWidget(), Qt.Key.Key_Return)
    coat = CoatToLay(piece_key="orchard", sheet="gloss-waterborne", coat_key="o3")
    assert desk.commands == [
        StartPreparation(coats=(coat,)),
        LayCoat(piece_key="orchard", laid_ms=NOW_MS, sheet="gloss-waterborne", coat_key="o3"),
    ]
    qtbot.waitUntil(lambda: is_gone(form))


def test_that_what_cannot_be_taken_is_said_before_anything_is_prepared(shown: Show, desk: ScriptedDesk) -> None:
    form = shown(GO).deeds.lay_coat("orchard")
    form.what.allowance.setText("80")
    form.prepare()
    assert "brush and cup is 80 %" in form.fault_words
    form.what.allowance.clear()
    form.amount_field.setText("4000")
    form.prepare()
    assert "did you mean 54?" in form.fault_words
    assert desk.commands == []
    assert form.step is LayingStep.WHAT


def test_that_water_past_what_a_coat_may_hold_is_said_before_anything_is_prepared(
    shown: Show, desk: ScriptedDesk
) -> None:
    form = shown(GO).deeds.lay_coat("orchard")
    form.thinned_field.setText("61")  # a coat is laid with up to 60 %
    form.prepare()
    assert "from 0 to 60" in form.fault_words
    assert desk.commands == []
    form.thinned_field.setText("60")
    form.prepare()
    assert form.fault_words == ""
    assert [type(one) for one in desk.commands] == [StartPreparation]


def test_that_a_refusal_keeps_the_form_at_its_step(shown: Show, desk: ScriptedDesk, qtbot: QtBot) -> None:
    desk.refuse("The disk is full.")
    form = prepared(shown)
    qtbot.waitUntil(lambda: form.fault_words == "The disk is full.")
    assert form.step is LayingStep.WHAT


def test_that_of_what_was_poured_only_what_lies_on_the_piece_is_recorded(shown: Show, desk: ScriptedDesk) -> None:
    form = shown(GO).deeds.lay_coat("orchard")
    form.what.allowance.setText("10")
    assert form.amount_field.placeholderText() == "59"  # 54 mL and a tenth of it
    form.amount_field.setText("59.4")
    assert "54 mL on the piece" in " ".join(words(form.what))
    form.command_or_fault()
    assert desk.commands[-1].volume_mL == pytest.approx(54.0)


def test_that_a_set_is_poured_panel_by_panel(shown: Show) -> None:
    form = shown(GO).deeds.lay_coat("panels")
    # nine panels of 20 cm x 20 cm: 0.04 m2 each, at 90 um 3.6 mL, 32.4 mL in all
    assert any(one.startswith("3.6 mL or 3.7 g on each of 9 panels, 32 mL or 33 g in all") for one in words(form.what))


def test_that_a_press_ticks_a_chore_and_another_takes_it_back(shown: Show, desk: ScriptedDesk) -> None:
    form = prepared(shown)
    bottle = form.chores.buttons[Task.BOTTLE]
    bottle.click()
    assert desk.commands[-1] == TickChore(preparation_key="made", task=Task.BOTTLE)
    assert "The bottle rests: 15 min" in bottle.accessibleName()
    bottle.click()
    assert desk.commands[-1] == TickChore(preparation_key="made", task=Task.BOTTLE, is_done=False)
    assert "to do" in bottle.accessibleName()


def test_that_the_countdown_runs_by_the_clock_and_not_by_snapshots(shown: Show, clock: ScriptedClock) -> None:
    form = prepared(shown)
    form.chores.buttons[Task.BOTTLE].click()
    clock.now_ms += 14 * 60_000 + 20_000
    form._show_chores()
    assert "The bottle rests: 40 s" in form.chores.buttons[Task.BOTTLE].accessibleName()
    clock.now_ms += 60_000
    form._show_chores()
    assert "The bottle has rested" in form.chores.buttons[Task.BOTTLE].accessibleName()


def test_that_a_preparation_that_is_open_is_gone_on_with(shown: Show) -> None:
    form = shown(RESTING).deeds.lay_coat("orchard")
    assert form.step is LayingStep.READY
    assert "The bottle rests: 9 min" in form.chores.buttons[Task.BOTTLE].accessibleName()
    assert Task.EXTINGUISHER in form.chores.buttons
    assert any("extinguisher" in one for one in form._cautions.cautions)


def test_that_three_pieces_are_laid_one_after_the_other(shown: Show, desk: ScriptedDesk, qtbot: QtBot) -> None:
    form = shown(RESTING).deeds.lay_coat("orchard")
    for title in ("Orchard at Low Water", "Blue Ladder", "Lamp in the Fog"):
        qtbot.waitUntil(lambda title=title: form.heading.text() == f"Lay a coat: {title}")
        assert form.buttons.brush_down.accessibleName() == f"The brush is down on {title}"
        qtbot.waitUntil(form.buttons.brush_down.isEnabled)
        form.buttons.brush_down.click()
    qtbot.waitUntil(lambda: is_gone(form))
    assert [one.piece_key for one in desk.commands] == ["orchard", "ladder", "lamp"]


def test_that_others_of_the_same_coat_may_be_laid_along(shown: Show, desk: ScriptedDesk) -> None:
    form = shown(GO).deeds.lay_coat("orchard")
    (chip,) = form.what._chips.values()
    chip.click()
    form.prepare()
    assert [coat.piece_key for coat in desk.commands[-1].coats] == ["orchard", "ladder"]


def test_that_a_second_press_on_prepare_lays_nothing(shown: Show, desk: ScriptedDesk, qtbot: QtBot) -> None:
    form = prepared(shown)
    sent = list(desk.commands)
    for _ in range(2):
        qtbot.keyClick(form, Qt.Key.Key_Return)
        qtbot.mouseDClick(form.buttons.brush_down, Qt.MouseButton.LeftButton)
    assert desk.commands == sent
    qtbot.waitUntil(form.buttons.brush_down.isEnabled)
    assert form.focusWidget() is form.buttons.brush_down
    qtbot.keyClick(form, Qt.Key.Key_Return)
    assert isinstance(desk.commands[-1], LayCoat)


def test_that_leaving_it_ends_the_preparation_and_later_does_not(shown: Show, desk: ScriptedDesk, qtbot: QtBot) -> None:
    form = shown(RESTING).deeds.lay_coat("orchard")
    form.buttons.keep.click()
    assert desk.commands == []
    form = shown(RESTING).deeds.lay_coat("orchard")
    form.buttons.leave.click()
    assert desk.commands == [EndPreparation(preparation_key="prep")]
    qtbot.waitUntil(lambda: is_gone(form))


@pytest.mark.parametrize("minutes", [10, 30, 60])
def test_that_a_coat_that_is_on_already_is_recorded_by_one_press_for_its_time(
    shown: Show, desk: ScriptedDesk, minutes: int
) -> None:
    form = shown(GO).deeds.lay_coat("orchard")
    form.buttons.earlier.click()
    assert form.buttons.brush_down.text() == "Record it"
    form.when.ago[minutes].click()
    form.buttons.brush_down.click()
    assert desk.commands[-1].laid_ms == NOW_MS - minutes * 60_000
    assert desk.commands[-1].volume_mL is None


def test_that_a_torch_is_refused_by_name_while_another_coat_gives_off_vapour(shown: Show) -> None:
    form = shown(SOLVENT_NEAR).deeds.lay_coat("orchard")
    assert form._cautions.cautions[0].startswith("No torch: gloss 1 on Two Herons, Waiting gives off solvent vapour")


def test_that_a_fit_room_says_go_and_a_damp_one_what_to_wait_for_and_how_long(shown: Show) -> None:
    form = shown(GO).deeds.lay_coat("orchard")
    verdict = form.findChild(SentenceView)
    assert verdict.headline == "Go: good to lay a coat"
    form.set_snapshot(WAIT)
    assert "wait for 75 % or less" in verdict.headline
    assert "about 15:10 (55 min)" in verdict.accessibleName()
