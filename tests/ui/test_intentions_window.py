"""What is meant for the room, in the window: listed with its cautions, added in her units, taken away, refused."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace
from datetime import date

import pytest
from PySide6.QtCore import QDate, Qt
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QAbstractButton, QLabel
from pytestqt.qtbot import QtBot

from studiowatch.room.intentions import Doing
from studiowatch.service.intention_commands import AddIntention, DropIntention
from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.units import METRIC, US, Units, choose
from studiowatch.studio.meant_words import vapour_sentence
from studiowatch.ui.models.best_hours import best_lines
from studiowatch.ui.models.forms import FormError
from studiowatch.ui.models.history_words import description
from studiowatch.ui.models.intention_form import (
    CHOICES,
    HOW_OFTEN,
    asked_for,
    counted_in,
    first_target,
    read_intention,
)
from studiowatch.ui.models.laying import next_hours
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.widgets.intention_form import IntentionForm
from studiowatch.ui.window import StudioWindow

from .intention_scenes import COAT, FREE, HEATER, MEANT, NEXT, WAIT_BEST, WITHHELD, view_of
from .laying_scenes import GO
from .plan_scenes import GLOSS
from .scenes import SHEETS, ScriptedDesk

Show = Callable[[Snapshot], StudioWindow]
HEATER_ON, DRYER_ON, FAN_ON, FAN_OFF = CHOICES
TODAY = date(2026, 3, 4)


@pytest.fixture(autouse=True)
def metric() -> Iterator[None]:
    choose(METRIC)
    yield
    choose(METRIC)


def read(choice: object, target: str, **more: object) -> AddIntention:
    plain: dict[str, object] = {"from_min": 1080, "to_min": 1380, "first_day": TODAY, "days": 1}
    return read_intention(choice, target=target, **(plain | more))  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("choice", "text", "units", "target"),
    [
        (HEATER_ON, "21", METRIC, 21.0),
        (HEATER_ON, "20,5", METRIC, 20.5),
        (HEATER_ON, "68", US, 20.0),  # t/°F = 1.8 t/°C + 32: NIST SP 811
        (HEATER_ON, "68 F", METRIC, 20.0),
        (DRYER_ON, "50", US, 50.0),
        (DRYER_ON, "50 %", METRIC, 50.0),
        (FAN_ON, "0.5", METRIC, 0.5),
        (FAN_ON, "100", US, 0.508),  # 1 ft = 0.3048 m: NIST SP 811
        (FAN_ON, "100 ft/min", METRIC, 0.508),
        (FAN_OFF, "", METRIC, 0.0),
    ],
)
def test_that_what_she_types_is_taken_in_her_unit(choice: object, text: str, units: Units, target: float) -> None:
    choose(units)
    assert read(choice, text).target == pytest.approx(target)


@pytest.mark.parametrize(
    ("choice", "text", "says"),
    [
        (HEATER_ON, "", "The temperature is empty: type a number from 5 to 35"),
        (HEATER_ON, "90", "The temperature is 90 °C: type a number from 5 to 35"),
        (DRYER_ON, "10", "The humidity is 10 %: type a number from 25 to 80"),
        (FAN_ON, "0", "The air speed is 0 m/s: type a number from 0.05 to 3"),
        (FAN_ON, "fast", "The air speed is “fast”"),
    ],
)
def test_that_what_cannot_be_is_said_in_one_sentence(choice: object, text: str, says: str) -> None:
    with pytest.raises(FormError, match="type a number") as caught:
        read(choice, text)
    assert caught.value.field == "target"
    assert str(caught.value).startswith(says)


def test_that_hours_that_end_as_they_begin_are_refused() -> None:
    with pytest.raises(FormError, match="begins and ends at the same time") as caught:
        read(HEATER_ON, "21", to_min=1080)
    assert caught.value.field == "until"


def test_that_a_form_begins_in_her_units_with_what_it_then_takes() -> None:
    for units in (METRIC, US):
        choose(units)
        for choice in CHOICES:
            assert bool(asked_for(choice)) is choice.is_on
            read(choice, first_target(choice))


def test_that_the_plan_says_what_is_counted_in_and_why_not() -> None:
    assert best_lines(MEANT)[-1].text == counted_in(MEANT)
    assert counted_in(MEANT).startswith("Counted in: heater 18:00-23:00 to 21 °C, every day")
    told = best_lines(WITHHELD)
    assert counted_in(WITHHELD) == ""
    assert [line.text for line in told if line.tone is Tone.CAUTION and "not counted on" in line.text]


def test_that_a_screen_reader_hears_where_the_room_is_heading_in_her_unit() -> None:
    told = description(MEANT)
    low_C, _, high_C = MEANT.room_band.temperature_C[:, 6]
    assert f"In six hours the room is likely at {low_C:.0f} to {high_C:.0f} °C and " in told
    assert "In an hour" in told
    assert "In a day" in told
    assert "What you mean to do with the room is counted in." in told
    assert "counted in" not in description(FREE)
    low_F, high_F = 1.8 * low_C + 32.0, 1.8 * high_C + 32.0  # NIST SP 811
    assert f"likely at {low_F:.0f} to {high_F:.0f} °F" in description(replace(MEANT, units=US))
    assert "the room is likely" not in description(replace(FREE, room_band=None))


def spoken(window: StudioWindow) -> list[str]:
    dialog = window.deeds.intentions.show()
    return [one.text() for one in dialog.findChildren(QLabel) if one.isVisibleTo(dialog)]


@pytest.mark.window
def test_that_the_list_teaches_while_it_is_empty(shown: Show) -> None:
    words = " ".join(spoken(shown(FREE)))
    assert "Nothing is meant so far." in words
    assert "switches nothing on or off" in words


@pytest.mark.window
def test_that_the_list_tells_each_with_its_cautions_and_why_it_is_withheld(shown: Show) -> None:
    words = spoken(shown(WITHHELD))
    assert view_of(HEATER).words in words
    for part in ("not counted on until that coat is ready", "its own instructions", "Mains", "local codes"):
        assert any(part in one for one in words), part


@pytest.mark.window
def test_that_one_is_taken_away_and_the_list_follows(shown: Show, desk: ScriptedDesk, qtbot: QtBot) -> None:
    window = shown(MEANT)
    dialog = window.deeds.intentions.show()
    first, *_ = [one for one in dialog.findChildren(QAbstractButton) if "Take away" in one.accessibleName()]
    first.click()
    assert desk.commands[-1] == DropIntention(intention_key="heater")
    desk.publish(replace(MEANT, intentions=MEANT.intentions[1:]))
    qtbot.waitUntil(lambda: view_of(HEATER).words not in [one.text() for one in dialog.findChildren(QLabel)])


def fill(form: IntentionForm, what: int, target: str) -> None:
    form.what_field.setCurrentIndex(what)
    form.target_field.setText(target)
    form.from_field.setCurrentText("19:30")
    form.until_field.setCurrentText("05:00")
    form.day_field.setDate(QDate(2026, 3, 6))
    form.often_field.setCurrentIndex(list(HOW_OFTEN.values()).index(3))


@pytest.mark.window
def test_that_a_filled_form_is_the_command(shown: Show, desk: ScriptedDesk, qtbot: QtBot) -> None:
    window = shown(FREE)
    form = window.deeds.intentions.add()
    fill(form, 1, "55")
    with qtbot.waitSignal(form.told) as told:
        form.command_or_fault()
    assert desk.commands[-1] == AddIntention(
        doing=Doing.DEHUMIDIFIER, from_min=1170, to_min=300, target=55.0, first_day=date(2026, 3, 6), days=3
    )
    assert told.args == ["Counted in: dehumidifier 19:30-05:00 to 55 %, from Fri 6 Mar on, 3 days"]


@pytest.mark.window
def test_that_a_fan_that_stays_off_asks_for_nothing_and_is_all_day_every_day(shown: Show, desk: ScriptedDesk) -> None:
    form = shown(FREE).deeds.intentions.add()
    form.what_field.setCurrentIndex(3)
    assert not form.target_field.isVisible()
    form.command_or_fault()
    asked = desk.commands[-1]
    assert isinstance(asked, AddIntention)
    assert (asked.from_min, asked.to_min, asked.target, asked.days) == (0, 1440, 0.0, None)


@pytest.mark.window
def test_that_cautions_change_with_what_is_chosen_and_stand_above_the_button(shown: Show) -> None:
    form = shown(FREE).deeds.intentions.add()
    for at, choice in enumerate(CHOICES):
        form.what_field.setCurrentIndex(at)
        assert form.cautions.cautions == choice.cautions
        assert form.cautions.isVisible()


@pytest.mark.window
def test_that_a_refusal_beside_vapour_is_one_sentence_and_loses_nothing(
    shown: Show, desk: ScriptedDesk, qtbot: QtBot
) -> None:
    desk.refuse(vapour_sentence(COAT, Doing.HEATER))
    form = shown(FREE).deeds.intentions.add()
    fill(form, 0, "19")
    form.command_or_fault()
    qtbot.waitUntil(lambda: "still gives off flammable vapour" in form.fault_words)
    assert "air the room" in form.fault_words
    assert form.isVisible()
    assert form.target_field.text() == "19"


@pytest.mark.window
def test_that_escape_asks_before_what_was_changed_is_lost(shown: Show, qtbot: QtBot) -> None:
    form = shown(FREE).deeds.intentions.add()
    assert not form.is_filled()
    form.target_field.setText("19")
    assert form.is_filled()
    qtbot.keyClick(form, Qt.Key.Key_Escape)
    assert form.isVisible()
    form.drop()


@pytest.mark.window
def test_that_who_is_told_to_wait_with_a_coat_is_told_the_next_good_hours_for_it(shown: Show) -> None:
    form = shown(WAIT_BEST).deeds.lay_coat("orchard")
    assert NEXT in [one.text() for one in form.findChildren(QLabel) if one.isVisibleTo(form)]
    gloss = next(sheet for sheet in SHEETS if sheet.name == "gloss-waterborne")
    assert next_hours(WAIT_BEST, gloss) == NEXT
    assert next_hours(replace(WAIT_BEST, room_checks=GO.room_checks), gloss) == ""
    assert next_hours(replace(WAIT_BEST, best_hours=(replace(GLOSS, next_line=NEXT),)), gloss) == ""  # another sheet's


@pytest.mark.window
def test_that_it_is_reached_by_its_key_and_from_the_best_hours(shown: Show) -> None:
    window = shown(MEANT)
    keyed = [one for one in window.findChildren(QAction) if one.shortcut().toString() == "Ctrl+I"]
    assert len(keyed) == 1
    keyed[0].trigger()
    (first,) = window.findChildren(type(window.deeds.intentions.show()))[:1]
    first.accept()
    window.pages.show_plan()
    assert window.plan.best.intend.isVisible()
