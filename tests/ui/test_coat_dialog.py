"""Lay a coat: what it would seal in, what its vapour comes to, and what weighing the bottle would gain."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import pytest
from PySide6.QtCore import QEvent
from PySide6.QtWidgets import QApplication, QCheckBox, QLabel, QWidget

from studiowatch.coats.vapour import VENTILATE
from studiowatch.service.snapshot import Snapshot
from studiowatch.ui.widgets.coat_dialog import CoatDialog
from studiowatch.ui.widgets.sentence import SentenceView
from studiowatch.ui.window import StudioWindow

from .scenes import EARLY, TOLD, WEIGHING

pytestmark = pytest.mark.window
Show = Callable[[Snapshot], StudioWindow]
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


def test_that_the_brush_is_wetted_only_for_a_water_borne_coat_and_other_ticks_stay(shown: Show) -> None:
    form = opened(shown)
    boxes = form._steps.findChildren(QCheckBox)
    for box in boxes:
        box.setChecked(True)
    assert any("brush wetted" in one for one in words(form._steps))
    choose(form, SOLVENT)
    assert not any("wetted" in one for one in words(form._steps))
    assert [box.isChecked() for box in boxes] == [True, True, True, False]


def test_that_weighing_the_bottle_is_advised_until_an_amount_is_typed(shown: Show) -> None:
    form = opened(shown)
    assert WEIGHING in words(form)
    form.amount_field.setText("54")
    assert WEIGHING not in words(form)
    form.amount_field.clear()
    choose(form, SOLVENT)  # of this product no coat was laid
    assert WEIGHING not in words(form)
