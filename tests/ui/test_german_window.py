"""The window in German: nothing that it says itself is left in English, and its menus and dates go by German."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterator

import pytest
from PySide6.QtCore import QDate, QLocale
from PySide6.QtWidgets import (
    QAbstractButton,
    QComboBox,
    QDialog,
    QGroupBox,
    QLabel,
    QLineEdit,
    QMenu,
    QProgressBar,
    QWidget,
)

from studiowatch.speech.units import Numbers, Units, choose
from studiowatch.speech.words import NO_NUMBER, speak_by
from studiowatch.ui.translation import translate_dates
from studiowatch.ui.window import StudioWindow
from tests.test_said import LANGUAGES, gather

from .conftest import Show, StandInPlot
from .scenes import FOUR_WARNED, SCENES
from .test_every_widget import DIALOGS, PAGES, menus

pytestmark = pytest.mark.window

WINDOWS_OWN = ("ui", "ui.widgets", "ui.models")  # the scenes tell of their studio in English, as if stored so
GERMAN = {one: forms for one, forms in gather.translated(LANGUAGES / "de").items() if forms}
SPOKEN = {one for package in WINDOWS_OWN for one in gather.spoken()[package]}
NAMES = {"Gloss", "Satin", "paint"}  # of sheets and coats in the scenes, as she may have named them
MORE_DIALOGS = {
    "units": lambda window: window.menuBar() and _trigger(window, "Einheiten und Sprache…"),
    "stop": lambda window: window._ask_to_quit(),
    "hours": lambda window: (window.pages.show_plan(), window.plan.today.hours.click()),
    "sheet": lambda window: window.deeds.sheets.edit(window.deeds.sheets.show_shelf(), window._parts.desk.shelf()[0]),
}


def translate(text: str, about: str, number: int) -> str:
    """Return what the German file says, as Qt would take it from there."""
    forms = GERMAN.get(gather.Sentence(text, about, number != NO_NUMBER), ())
    return forms[0 if len(forms) == 1 or number == 1 else 1] if forms else ""


@pytest.fixture(autouse=True)
def german() -> None:
    """Speak German with a decimal comma; `plain_english` takes it back."""
    speak_by(translate)
    choose(Units(numbers=Numbers.COMMA))


def _pattern(text: str) -> str:
    parts = re.split(r"\{\w+\}", text)
    return ".+".join(re.escape(part) for part in parts)


def _left_in_english() -> re.Pattern[str]:
    """Return what matches an English sentence of the window that reads otherwise in German."""
    texts = {one.text for one in SPOKEN if GERMAN.get(one, (one.text,))[0] != one.text}
    said = {
        text for text in texts if "{" not in text or len(re.findall(r"[A-Za-z]{2,}", re.sub(r"\{\w+\}", "", text))) > 1
    }
    german = {form for forms in GERMAN.values() for form in forms} | NAMES
    return re.compile("|".join(f"(?:{_pattern(text)})" for text in sorted(said - german)), re.DOTALL)


ENGLISH = _left_in_english()


def texts_of(widget: QWidget) -> Iterator[str]:
    """Yield everything that a widget shows, says to a screen reader, or tells under the pointer."""
    yield from (widget.accessibleName(), widget.toolTip(), widget.windowTitle())
    if isinstance(widget, QLabel | QAbstractButton):
        yield widget.text()
    elif isinstance(widget, QGroupBox):
        yield widget.title()
    elif isinstance(widget, QLineEdit):
        yield widget.placeholderText()
    elif isinstance(widget, QProgressBar):
        yield widget.format()
    elif isinstance(widget, QComboBox):
        yield from (widget.itemText(at) for at in range(widget.count()))
    yield from (action.text() for action in widget.actions())


def english_on(parent: QWidget) -> list[str]:
    """Return what is left in English on a window, in everything that it shows."""
    inside = parent.findChildren(QWidget)
    shown = [
        one
        for one in inside
        if (one.isVisibleTo(parent) or isinstance(one, QMenu)) and not isinstance(one, StandInPlot)
    ]
    return sorted({text for one in (parent, *shown) for text in texts_of(one) if text and ENGLISH.fullmatch(text)})


def _trigger(window: StudioWindow, words: str) -> None:
    actions = [one for menu in menus(window) for one in menu.actions() if one.text().replace("&", "") == words]
    assert actions, words
    actions[0].trigger()


@pytest.mark.parametrize("name", PAGES)
def test_that_a_page_says_nothing_of_its_own_in_english(shown: Show, name: str) -> None:
    window = shown(FOUR_WARNED)
    PAGES[name](window)
    assert english_on(window) == []


@pytest.mark.parametrize("scene", ["empty", "silent", "four-calm"])
def test_that_the_rack_says_nothing_of_its_own_in_english(shown: Show, scene: str) -> None:
    assert english_on(shown(SCENES[scene])) == []


def test_that_the_view_across_the_room_says_nothing_of_its_own_in_english(shown: Show) -> None:
    window = shown(FOUR_WARNED)
    window.pages.toggle_across()
    assert english_on(window) == []


@pytest.mark.parametrize("name", [*DIALOGS, *MORE_DIALOGS])
def test_that_a_dialog_says_nothing_of_its_own_in_english(shown: Show, name: str) -> None:
    window = shown(FOUR_WARNED)
    (DIALOGS | MORE_DIALOGS)[name](window)
    dialogs = [one for one in window.findChildren(QDialog) if one.isVisible()]
    assert dialogs
    assert [english_on(dialog) for dialog in dialogs] == [[] for _ in dialogs]


def test_that_the_menus_are_german_and_each_key_is_one_entrys(shown: Show) -> None:
    window = shown(FOUR_WARNED)
    bar = [action.text().replace("&", "") for action in window.menuBar().actions()]
    assert bar == ["Gestell", "Bearbeiten", "Warnungen", "Ansicht", "Verlauf", "Aufzeichnungen", "Hilfe"]
    for holder in (window.menuBar(), *menus(window), window.deeds.menu_for("orchard")):
        texts = [action.text().replace("&&", "") for action in holder.actions() if not action.isSeparator()]
        keys = Counter(found[1].casefold() for text in texts if (found := re.search(r"&(.)", text)))
        assert [key for key, times in keys.items() if times > 1] == [], texts
        assert [text for text in texts if text and "&" not in text] == []


def test_that_a_form_reads_a_decimal_comma_and_keeps_what_its_german_choices_mean(
    shown: Show,
) -> None:
    form = shown(FOUR_WARNED).deeds.register_piece()
    form.title_field.setText("Nachtfähre")
    form.width_field.setText("40,5")
    form.height_field.setText("60")
    form.lies_field.setCurrentText("aufrecht")
    command = form.read()
    assert (command.width_cm, command.height_cm, command.orientation.name) == (40.5, 60.0, "VERTICAL")
    assert command.support == "canvas"
    assert form.windowTitle() == "Bild eintragen"


@pytest.mark.parametrize(
    ("language", "own", "month"), [("de", "en_US", "Dez"), ("en", "de_DE", "Dec"), ("de", "de_AT", "Dez")]
)
def test_that_dates_in_forms_speak_the_language_of_the_program(
    monkeypatch: pytest.MonkeyPatch, language: str, own: str, month: str
) -> None:
    usual = QLocale()
    monkeypatch.setattr(QLocale, "system", staticmethod(lambda: QLocale(own)))
    QLocale.setDefault(QLocale(own))
    try:
        translate_dates(language)
        assert QLocale().toString(QDate(2025, 12, 13), "d MMM yyyy").split()[1].rstrip(".") == month
    finally:
        QLocale.setDefault(usual)
