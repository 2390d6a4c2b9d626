"""The form of a coat to lay: what it offers, shows and asks before anything is laid."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import QDateTime
from PySide6.QtWidgets import QLabel

from studiowatch.service.commands import LayCoat
from studiowatch.studio.words import Level, Sentence
from studiowatch.ui.widgets.sentence import SentenceView

from .conftest import Show, let_go
from .scenes import EMPTY, FOUR_WARNED, NOW_MS, ORCHARD, ScriptedDesk

pytestmark = pytest.mark.window


def test_that_the_planned_coat_is_offered_first_with_its_amount(shown: Show, desk: ScriptedDesk) -> None:
    form = shown(FOUR_WARNED).deeds.lay_coat("orchard")
    assert form.sheet_field.currentText().startswith("gloss 2, planned")
    # 60 cm x 90 cm is 0.54 m2; 100 um of wet film on it is 0.54e-4 m3, that is 54 mL.
    assert form.amount_field.placeholderText() == "54"
    form.amount_field.setText("54")
    form.command_or_fault()
    assert desk.commands == [
        LayCoat(piece_key="orchard", laid_ms=NOW_MS, sheet="gloss-waterborne", coat_key="o3", volume_mL=54.0)
    ]


def test_that_grams_are_suggested_from_the_density(shown: Show, desk: ScriptedDesk) -> None:
    form = shown(FOUR_WARNED).deeds.lay_coat("orchard")
    form.unit_field.setCurrentText("g")
    assert form.amount_field.placeholderText() == "56"  # 54 mL at 1.04 g/mL
    form.amount_field.setText("50")
    form.thinned_field.setText("5")
    form.command_or_fault()
    laid = desk.commands[-1]
    assert isinstance(laid, LayCoat)
    assert (laid.grams, laid.volume_mL, laid.thinned_pct) == (50.0, None, 5.0)


def test_that_a_coat_laid_earlier_keeps_its_time(shown: Show, desk: ScriptedDesk) -> None:
    form = shown(FOUR_WARNED).deeds.lay_coat("orchard")
    form.buttons.earlier.setChecked(True)
    earlier_ms = NOW_MS - 45 * 60_000
    form.time_field.setDateTime(QDateTime.fromMSecsSinceEpoch(earlier_ms))
    form.command_or_fault()
    assert desk.commands[-1].laid_ms == earlier_ms


def test_that_a_coat_cannot_be_laid_tomorrow(shown: Show, desk: ScriptedDesk) -> None:
    form = shown(FOUR_WARNED).deeds.lay_coat("orchard")
    form.buttons.earlier.setChecked(True)
    form.time_field.setDateTime(QDateTime.fromMSecsSinceEpoch(NOW_MS + 86_400_000))
    form.command_or_fault()
    assert "future" in form.fault_words
    assert desk.commands == []


def test_that_the_look_at_the_room_is_live(shown: Show) -> None:
    window = shown(FOUR_WARNED)
    form = window.deeds.lay_coat("lamp")
    room = form.findChild(SentenceView)
    assert room.headline == "Not yet: a fan is on"  # the planned coat is satin, whose check says so
    good = dict(FOUR_WARNED.room_checks)["gloss-waterborne"]
    shown(
        type(FOUR_WARNED)(
            time_ms=NOW_MS,
            board=FOUR_WARNED.board,
            room=FOUR_WARNED.room,
            sentence=EMPTY.sentence,
            pieces=FOUR_WARNED.pieces,
            room_checks=(("satin-waterborne", good),),
        )
    )
    assert room.headline == "Go: good to lay a coat"
    assert good.detail in room.accessibleName()


def test_that_a_solvent_sheet_shows_its_hazards_before_the_brush_goes_down(shown: Show) -> None:
    form = shown(FOUR_WARNED).deeds.lay_coat("orchard")
    index = form.sheet_field.findText("Gloss varnish, solvent-borne")
    form.sheet_field.setCurrentIndex(index)
    let_go()
    said = " ".join((*form._cautions.cautions, *form._own_cautions.cautions))
    assert "fresh air" in said
    assert "no flame" in said
    assert "The product's own sheet" in said


def test_that_a_piece_that_is_not_ready_says_so_before_the_room(shown: Show) -> None:
    why = Sentence(level=Level.ACT, headline="Not yet: gloss 1 is still wet", advice="Wait.")
    wet = replace(FOUR_WARNED, pieces=(replace(ORCHARD, not_yet=why), *FOUR_WARNED.pieces[1:]))
    form = shown(wet).deeds.lay_coat("orchard")
    verdict = form.findChild(SentenceView)
    assert verdict.headline == why.headline
    assert why.advice in verdict.accessibleName()
    shown(replace(FOUR_WARNED, sentence=EMPTY.sentence))
    assert verdict.headline == "Go: good to lay a coat"
    form.piece_field.setCurrentText("Blue Ladder")
    assert verdict.headline == "Go: good to lay a coat"


def test_that_the_form_and_its_button_name_the_piece(shown: Show) -> None:
    form = shown(FOUR_WARNED).deeds.lay_coat("ladder")
    assert form.heading.text() == "Lay a coat: Blue Ladder"
    assert form.buttons.brush_down.text() == "The brush is down on Blue Ladder"
    form.piece_field.setCurrentText("Two Herons, Waiting")
    assert form.buttons.brush_down.text() == "The brush is down on Two Herons, Waiting"


def test_that_an_amount_far_too_large_is_asked_once_more(shown: Show, desk: ScriptedDesk) -> None:
    form = shown(FOUR_WARNED).deeds.lay_coat("orchard")
    form.amount_field.setText("4000")
    form.command_or_fault()
    assert "4000 mL is 74 times the sheet's film; did you mean 54?" in form.fault_words
    assert desk.commands == []
    form.amount_field.setText("3000")
    assert form.fault_words == ""
    form.command_or_fault()
    assert desk.commands == []
    form.command_or_fault()
    assert desk.commands[-1].volume_mL == 3000.0


def test_that_a_wrong_amount_is_told_once(shown: Show) -> None:
    form = shown(FOUR_WARNED).deeds.lay_coat("orchard")
    form.amount_field.setText("a lot")
    form.command_or_fault()
    said = [one for one in form.findChildren(QLabel) if "a lot" in one.text() and one.isVisible()]
    assert len(said) == 1
