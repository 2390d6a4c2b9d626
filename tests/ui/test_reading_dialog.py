"""Type a reading: its fields and their refusals, the ways to it, and how a typed room is shown."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC

import pytest
from PySide6.QtCore import QDateTime, Qt
from pytestqt.qtbot import QtBot

from studiowatch.room.typed import Felt
from studiowatch.service.commands import TypeReading
from studiowatch.speech.units import Degrees
from studiowatch.ui.models.board import board_line, may_type
from studiowatch.ui.models.figures import room_figures
from studiowatch.ui.models.forms import FormError
from studiowatch.ui.models.notices import warning_rows
from studiowatch.ui.models.pace import is_event
from studiowatch.ui.models.prompts import Deed, prompt_rows
from studiowatch.ui.models.reading_form import read_reading, reading_doubt, reading_words
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.widgets.reading_dialog import ReadingDialog

from .conftest import Show, activate, push
from .scenes import FIRST_RUN, FOUR_CALM, NOW_MS, SILENT, TYPED, TYPED_LONG_AGO, ScriptedDesk

pytestmark = pytest.mark.window
MINUTE_MS = 60_000


def read(**changes: object) -> TypeReading:
    plain: dict[str, object] = {
        "temperature": "20.5",
        "degrees": Degrees.CELSIUS,
        "humidity": "48",
        "felt": None,
        "time_ms": NOW_MS,
        "now_ms": NOW_MS,
    }
    return read_reading(**plain | changes)


def test_that_a_comma_and_either_unit_are_read() -> None:
    assert read(temperature="20,5", humidity="48,5").temperature_C == 20.5
    # 68 °F is 20 °C, 32 °F is 0 °C: the definition of the scale
    assert read(temperature="68", degrees=Degrees.FAHRENHEIT).temperature_C == pytest.approx(20.0)
    assert read(temperature="32", degrees=Degrees.FAHRENHEIT).temperature_C == pytest.approx(0.0)


@pytest.mark.parametrize(
    ("changes", "field", "said"),
    [
        ({"temperature": ""}, "temperature", "The temperature is empty: type a number from -10 to 50"),
        ({"temperature": "69"}, "temperature", "The temperature is 69 °C"),
        ({"temperature": "135", "degrees": Degrees.FAHRENHEIT}, "temperature", "135 °F: type a number from 14 to 122"),
        ({"humidity": "damp"}, "humidity", "The humidity is “damp”"),
        ({"humidity": "0"}, "humidity", "type a number from 1 to 100"),
        ({"time_ms": NOW_MS + MINUTE_MS}, "read", "in the future"),
    ],
)
def test_that_what_cannot_be_a_reading_is_one_sentence_about_its_field(
    changes: dict[str, object], field: str, said: str
) -> None:
    with pytest.raises(FormError, match=said) as caught:
        read(**changes)
    assert caught.value.field == field


def test_that_an_odd_room_is_asked_about_in_both_units_and_a_usual_one_is_not() -> None:
    assert reading_doubt(read()) == ""
    assert reading_doubt(read(temperature="45")).startswith("That is 45 °C, or 113 °F")


def test_that_what_was_recorded_is_told_with_what_was_felt() -> None:
    assert reading_words(read(felt=Felt.STILL), Degrees.CELSIUS) == "Recorded: 20.5 °C, 48 %, air still"


def test_that_the_form_sends_what_was_typed_and_closes(shown: Show, desk: ScriptedDesk, qtbot: QtBot) -> None:
    window = shown(FIRST_RUN)
    push(window.foot, "Type a reading").click()
    (form,) = window.findChildren(ReadingDialog)
    form.temperature_field.setText("20.5")
    form.humidity_field.setText("48")
    form.air_field.setCurrentText("the tissue hangs still")
    push(form, "Take the reading").click()
    expected = TypeReading(time_ms=NOW_MS, temperature_C=20.5, humidity_pct=48.0, felt=Felt.STILL)
    assert desk.commands == [expected]
    qtbot.waitUntil(lambda: window.foot.words == "Recorded: 20.5 °C, 48 %, air still")
    qtbot.waitUntil(lambda: not window.findChildren(ReadingDialog))


def test_that_a_reading_of_earlier_is_sent_with_its_time(shown: Show, desk: ScriptedDesk) -> None:
    form = shown(FIRST_RUN).deeds.type_reading()
    form.temperature_field.setText("20.5")
    form.humidity_field.setText("48")
    form.time_field.setDateTime(QDateTime.fromMSecsSinceEpoch(NOW_MS - 20 * MINUTE_MS))
    form.command_or_fault()
    assert [command.time_ms for command in desk.commands] == [NOW_MS - 20 * MINUTE_MS]


def test_that_a_fault_and_a_refusal_keep_what_was_typed(shown: Show, desk: ScriptedDesk, qtbot: QtBot) -> None:
    form = shown(FIRST_RUN).deeds.type_reading()
    form.temperature_field.setText("20.5")
    form.humidity_field.setText("480")
    form.command_or_fault()
    assert form.fault_words.startswith("The humidity is 480 %")
    assert form.humidity_field.property("wrong") == "true"
    form.humidity_field.setText("48")
    desk.refuse("The board reads the room now; a typed reading is for when no board does.")
    form.command_or_fault()
    qtbot.waitUntil(lambda: form.fault_words.startswith("The board reads"))
    assert (form.temperature_field.text(), form.humidity_field.text()) == ("20.5", "48")


def test_that_an_odd_temperature_is_sent_only_when_pressed_again(shown: Show, desk: ScriptedDesk) -> None:
    form = shown(FIRST_RUN).deeds.type_reading()
    form.temperature_field.setText("45")
    form.humidity_field.setText("48")
    form.command_or_fault()
    assert "113 °F" in form.fault_words
    assert desk.commands == []
    form.command_or_fault()
    assert len(desk.commands) == 1


def test_that_the_unit_of_the_hygrometer_is_remembered(shown: Show, qtbot: QtBot) -> None:
    deeds = shown(FIRST_RUN).deeds
    form = deeds.type_reading()
    form.degrees_field.setCurrentText("°F")
    form.temperature_field.setText("69")
    form.humidity_field.setText("48")
    with qtbot.waitSignal(form.recorded):
        form.command_or_fault()
    assert deeds.type_reading().degrees is Degrees.FAHRENHEIT


def test_that_its_key_opens_the_form(shown: Show, qtbot: QtBot) -> None:
    window = shown(TYPED)
    activate(window, qtbot)
    qtbot.keyClick(window, Qt.Key.Key_G, Qt.KeyboardModifier.ControlModifier)
    assert len(window.findChildren(ReadingDialog)) == 1


def test_that_the_prompt_to_read_again_opens_the_form_and_a_reading_answers_it(
    shown: Show, desk: ScriptedDesk, qtbot: QtBot
) -> None:
    window = shown(TYPED_LONG_AGO)
    row = prompt_rows(TYPED_LONG_AGO, UTC)[0]
    assert row.deed is Deed.READ
    assert row.when == "now, since 14:00 · Orchard at Low Water"
    form = window.prompted.answer(row)
    form.temperature_field.setText("19")
    form.humidity_field.setText("50")
    with qtbot.waitSignal(window.prompted.answered) as answered:
        form.command_or_fault()
    assert answered.args == [row]
    assert [type(command) for command in desk.commands] == [TypeReading]


def test_that_the_foot_offers_a_reading_only_where_no_board_reads(shown: Show) -> None:
    assert [may_type(one) for one in (FIRST_RUN, TYPED, SILENT, FOUR_CALM)] == [True, True, True, False]
    window = shown(TYPED)
    assert window.foot._read.isVisible()
    assert shown(FOUR_CALM).foot._read.isHidden()


def test_that_the_boards_line_says_when_the_room_was_read_and_that_air_speed_is_not_measured() -> None:
    line = board_line(TYPED)
    assert (line.words, line.tone) == ("No board · room read 12 min ago · air speed not measured", Tone.MUTED)
    missed = board_line(TYPED_LONG_AGO)
    assert "3 h 10 min ago" in missed.words
    assert missed.tone is Tone.CAUTION
    lost = replace(TYPED, board=SILENT.board)
    assert board_line(lost).words.startswith("The board on ttyUSB0 was unplugged. · room read")
    assert "or type a reading" in board_line(FIRST_RUN).words


def test_that_typed_figures_say_how_old_they_are_and_grow_quiet() -> None:
    temperature, humidity, air = room_figures(TYPED, UTC)
    assert temperature.meaning == "wet film 18.9 °C\nread 12 min ago"
    assert humidity.meaning == "dew point 10.4 °C\nread 12 min ago"
    assert air.meaning == "not measured\nfelt still 12 min ago"
    assert not temperature.stale
    old = room_figures(TYPED_LONG_AGO, UTC)
    assert [figure.stale for figure in old] == [True, True, False]
    assert old[2].spoken == "Air: not measured. not measured"


def test_that_a_new_reading_is_drawn_at_once() -> None:
    later = replace(TYPED, room=replace(TYPED.room, typed=replace(TYPED.room.typed, time_ms=NOW_MS)))
    assert is_event(TYPED, later)


def test_that_a_missed_reading_is_told_as_past_once_the_room_was_read() -> None:
    still_open, over = warning_rows(TYPED_LONG_AGO, UTC)
    assert still_open.headline == "The room was not read since 11:02"
    assert over.headline == "The room was not read after 11:02"
