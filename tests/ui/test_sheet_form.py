"""Data sheets in the window: the bottle's units, faults at their lines, and hers made from built-in ones."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from studiowatch.coats.data_sheet import DataSheet
from studiowatch.coats.sheet_file import sheet_of
from studiowatch.service.product_views import SheetEntry
from studiowatch.service.sheet_commands import DropSheet, KeepSheet
from studiowatch.service.sheet_shelf import built_in_sheets
from studiowatch.ui.models.sheet_figures import LINES
from studiowatch.ui.models.sheet_form import SheetTyped, new_name, read_sheet, shown_of
from studiowatch.ui.widgets.sheet_dialog import SheetDialog

from .conftest import Show
from .scenes import FOUR_CALM, ScriptedDesk

pytestmark = pytest.mark.window
LINE = {line.field: line for line in LINES}
SHEETS = built_in_sheets()
GLOSS = SHEETS["gloss-waterborne"]


def typed(**figures: tuple[str, str]) -> SheetTyped:
    shown = shown_of(GLOSS)
    return replace(shown, figures={**shown.figures, **figures})


@pytest.mark.parametrize(
    ("field", "figure", "unit", "ours"),
    [
        ("wet_um", 1.0, "mil", 25.4),  # 1 mil is 0.001 inch of 25.4 mm: by definition
        ("wet_um", 10.0, "m²/L", 100.0),  # 1 L over 10 m² stands 0.1 mm high
        ("wet_um", 1604.0, "ft²/gal (US)", 25.4),  # a US gallon covers 1604 ft² one mil thick: a painter's constant
        ("mfft_C", 50.0, "°F", 10.0),
        ("flash_point_C", 104.0, "°F", 40.0),
        ("volume_solids", 38.0, "%", 0.38),
        ("touch_dry_min", 1.5, "h", 90.0),
        ("recoat_h", 240.0, "min", 4.0),
        ("cure_days", 2.0, "weeks", 14.0),
        ("density_kg_m3", 1.03, "g/mL", 1030.0),
        ("density_kg_m3", 8.6, "lb/US gal", 1030.5),
    ],
)
def test_that_a_figure_is_taken_in_the_unit_that_the_bottle_prints(
    field: str, figure: float, unit: str, ours: float
) -> None:
    line = LINE[field]
    assert line.in_ours(figure, unit) == pytest.approx(ours, rel=5e-4)
    assert line.in_unit(line.in_ours(figure, unit), unit) == pytest.approx(figure)
    assert unit in line.units


@pytest.mark.parametrize("sheet", list(SHEETS.values()), ids=list(SHEETS))
def test_that_every_built_in_sheet_comes_out_of_the_form_as_it_went_in(sheet: DataSheet) -> None:
    found = read_sheet(shown_of(sheet), sheet.name)
    assert found.faults == {}
    again = sheet_of(dict(found.fields), "form")
    assert again.dry_um == pytest.approx(sheet.dry_um, rel=1e-3)
    assert replace(again, dry_um=sheet.dry_um) == sheet


@pytest.mark.parametrize(
    ("field", "figure", "unit"),
    [
        ("wet_um", "12", "m²/L"),  # 83.3333 µm
        ("density_kg_m3", "8.7", "lb/US gal"),  # 1042.49 kg/m³
        ("mfft_C", "45", "°F"),  # 7.22222 °C
        ("volume_solids", "33.333", "%"),
    ],
)
def test_that_a_figure_that_stays_as_it_is_shown_stays_as_it_is_kept(field: str, figure: str, unit: str) -> None:
    kept = read_sheet(typed(**{field: (figure, unit)}), "mine")
    assert kept.faults == {}
    again = read_sheet(shown_of(sheet_of(dict(kept.fields), "form")), "mine")
    assert again.fields[field] == kept.fields[field]


@pytest.mark.parametrize(
    ("figures", "at", "words"),
    [
        ({"touch_dry_min": ("", "min")}, "touch_dry_min", ["Dry to touch after", "missing"]),
        ({"recoat_h": ("soon", "h")}, "recoat_h", ["soon", "no number"]),
        ({"wet_um": ("0", "m²/L")}, "wet_um", ["no number that can stand here"]),
        ({"volume_solids": ("380", "%")}, "volume_solids", ["3.8", "0.05 to 1"]),
        ({"recoat_h": ("10", "min")}, "recoat_h", ["must not be shorter", "Clear after"]),
        ({"apply_high": ("", "°C")}, "apply_high", ["both"]),
        ({"apply_low": ("30", "°C"), "apply_high": ("20", "°C")}, "apply_low", ["least, greatest"]),
        ({"dry_um": ("200", "µm")}, "dry_um", ["Dry film", "gives 30.4 µm"]),
    ],
)
def test_that_a_fault_stands_at_its_line_in_her_words(
    figures: dict[str, tuple[str, str]], at: str, words: list[str]
) -> None:
    found = read_sheet(typed(**figures), "mine")
    assert list(found.faults) == [at]
    assert all(word in found.faults[at] for word in words)
    assert not any(line.field in found.faults[at] for line in LINES)


def test_that_what_looks_like_a_slip_is_a_doubt_and_not_a_fault() -> None:
    found = read_sheet(typed(mfft_C=("50", "°C")), "mine")
    assert found.faults == {}
    assert "°F" in found.doubts["mfft_C"]


def test_that_a_new_sheet_gets_a_name_of_its_own() -> None:
    assert new_name("Gloss, from the Tall Bottle", ()) == "gloss-from-the-tall-bottle"
    assert new_name("Gloss", ("gloss", "gloss-2")) == "gloss-3"
    assert new_name("±", ()) == "sheet"


def test_that_a_sheet_of_her_own_is_made_from_a_built_in_one(shown: Show, desk: ScriptedDesk, qtbot: QtBot) -> None:
    desk.on_shelf = (SheetEntry(sheet=GLOSS, is_own=False),)
    deeds = shown(FOUR_CALM).deeds.sheets
    shelf = deeds.show_shelf()
    assert not shelf.drop.isVisible()
    form = deeds.edit(shelf, desk.on_shelf[0])
    form.title_field.setText("Tall bottle")
    figure, unit = form.figures["wet_um"]
    figure.setText("3")
    unit.setCurrentText("mil")
    with qtbot.waitSignal(form.recorded):
        form.command_or_fault()
    (command,) = desk.commands
    assert isinstance(command, KeepSheet)
    assert (command.fields["name"], command.fields["title"]) == ("tall-bottle", "Tall bottle")
    assert command.fields["wet_um"] == pytest.approx(76.2)


def test_that_faults_are_shown_at_their_lines_until_they_are_mended(shown: Show, desk: ScriptedDesk) -> None:
    desk.on_shelf = (SheetEntry(sheet=GLOSS, is_own=True),)
    deeds = shown(FOUR_CALM).deeds.sheets
    form = deeds.edit(deeds.show_shelf(), desk.on_shelf[0])
    form.figures["recoat_h"][0].setText("soon")
    form.figures["touch_dry_min"][0].setText("")
    form.command_or_fault()
    assert form.line_faults["recoat_h"].text().startswith("“soon”")
    assert "missing" in form.line_faults["touch_dry_min"].text()
    form.figures["recoat_h"][0].setText("4")
    assert form.line_faults["recoat_h"].isHidden()
    assert desk.commands == []


def test_that_hers_are_edited_under_their_name_and_deleted_when_asked(
    shown: Show, desk: ScriptedDesk, qtbot: QtBot
) -> None:
    desk.on_shelf = (SheetEntry(sheet=replace(GLOSS, name="tall"), is_own=True),)
    deeds = shown(FOUR_CALM).deeds.sheets
    shelf = deeds.show_shelf()
    form = deeds.edit(shelf, desk.on_shelf[0])
    with qtbot.waitSignal(form.recorded):
        form.command_or_fault()
    assert isinstance(desk.commands[0], KeepSheet)
    assert desk.commands[0].fields["name"] == "tall"
    box = deeds.drop(shelf, desk.on_shelf[0])
    assert len(desk.commands) == 1
    box.accept()
    assert desk.commands[1] == DropSheet(name="tall")


def test_that_return_on_a_sheet_opens_its_form_and_keeps_nothing(shown: Show, desk: ScriptedDesk, qtbot: QtBot) -> None:
    desk.on_shelf = (SheetEntry(sheet=GLOSS, is_own=False),)
    window = shown(FOUR_CALM)
    shelf = window.deeds.sheets.show_shelf()
    qtbot.waitExposed(shelf)
    qtbot.keyClick(shelf.list, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: bool(shelf.findChildren(SheetDialog)))
    (form,) = shelf.findChildren(SheetDialog)
    assert form.isVisible()
    assert desk.commands == []
