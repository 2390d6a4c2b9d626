"""Units in the window: figures, history, the form for a reading, and the choice that is kept and shown at once."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import UTC

import numpy as np
import pytest
from PySide6.QtCore import QLocale, QSettings
from PySide6.QtWidgets import QApplication, QPushButton
from pytestqt.qtbot import QtBot

from studiowatch.service.commands import SpeakIn
from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.units import CHOICES, METRIC, US, Degrees, Hours, Numbers, Speed, Units
from studiowatch.ui.models.figures import room_figures
from studiowatch.ui.models.forms import FormError
from studiowatch.ui.models.history_live import RoomData
from studiowatch.ui.models.history_panels import panels_of
from studiowatch.ui.models.reading_form import read_reading, reading_words
from studiowatch.ui.settings import ViewSettings
from studiowatch.ui.units_deeds import choose_units
from studiowatch.ui.window import StudioWindow

from .conftest import MakeWindow
from .scenes import FAN_ROOM, FOUR_WARNED, NOW_MS, ScriptedDesk
from .test_history_panels import EMPTY, Surface, coat, series, snapshot


def reading_C(typed: str, chosen: Degrees) -> float:
    return read_reading(
        temperature=typed, degrees=chosen, humidity="48", felt=None, time_ms=NOW_MS, now_ms=NOW_MS
    ).temperature_C


def test_that_the_figures_are_shown_in_us_units() -> None:
    # °F = 1.8 °C + 32 and 1 ft = 0.3048 m: 19.2 °C is 66.6, a film of 18.4 °C is 65.1, 6.6 K is 11.9 °F.
    room = replace(
        FAN_ROOM, temperature_C=19.2, film_C=18.4, film_above_dew_K=6.6, dew_point_C=11.8, air_speed_m_s=0.34
    )
    temperature, humidity, air, *_ = room_figures(replace(FOUR_WARNED, room=room, units=US), UTC)
    assert (temperature.value, temperature.unit) == ("66.6", "°F")
    assert "65.1 °F" in temperature.meaning
    assert humidity.meaning == "dew point 53.2 °F\n11.9 °F below film"
    assert (air.value, air.unit) == ("67", "ft/min")


def test_that_still_air_is_under_a_whole_number_of_feet_a_minute() -> None:
    # 0.1 m/s is 19.7 ft/min.
    figures = room_figures(replace(FOUR_WARNED, room=replace(FAN_ROOM, air_speed_m_s=0.05), units=US), UTC)
    assert "under 20 ft/min" in figures[2].meaning


def test_that_the_history_is_drawn_in_us_units() -> None:
    data = RoomData(temperature=series((-1, 20.0, 21.0, 20.5)), air=series((-1, 0.1, 0.2, 0.127)))
    shown = replace(snapshot(coat(Surface.WET, 10.0, 75.0)), units=US)
    temperature, _, air = panels_of(data, EMPTY, shown)
    assert (temperature.title, air.title) == ("temperature °F", "air speed ft/min")
    # 20, 21 and 20.5 °C are 68, 69.8 and 68.9 °F; 10 °C is 50 °F.
    drawn = temperature.curves[0].series
    assert np.allclose([drawn.low[0], drawn.high[0], drawn.mean[0]], [68.0, 69.8, 68.9])
    assert [(limit.value, limit.words) for limit in temperature.limits] == [(50.0, "film must stay above 50 °F")]
    # 0.127 m/s is 25 ft/min; 0.2 m/s is 39.37.
    assert air.curves[0].series.mean[0] == pytest.approx(25.0)
    assert air.limits[0].value == pytest.approx(39.37, abs=0.005)
    assert data.temperature.mean[0] == 20.5


@pytest.mark.parametrize(
    ("typed", "chosen", "temperature_C"),
    [
        ("70 F", Degrees.CELSIUS, 21.111),
        ("70°F", Degrees.CELSIUS, 21.111),
        ("70 fahrenheit", Degrees.CELSIUS, 21.111),
        ("70", Degrees.FAHRENHEIT, 21.111),
        ("21,5", Degrees.CELSIUS, 21.5),
        ("21,5 C", Degrees.FAHRENHEIT, 21.5),
        ("21.5 °C", Degrees.FAHRENHEIT, 21.5),
        ("  68,0 deg F ", Degrees.CELSIUS, 20.0),
    ],
)
def test_that_a_unit_that_is_written_counts(typed: str, chosen: Degrees, temperature_C: float) -> None:
    assert reading_C(typed, chosen) == pytest.approx(temperature_C, abs=0.0005)


@pytest.mark.parametrize("typed", ["70 K", "F", "warm", "1.021,5", "70 FF"])
def test_that_what_is_no_temperature_gets_one_sentence(typed: str) -> None:
    with pytest.raises(FormError, match=r"^The temperature .*: type a number from .*\.$"):
        reading_C(typed, Degrees.CELSIUS)


def test_that_a_word_is_repeated_as_it_was_typed() -> None:
    with pytest.raises(FormError, match="abc"):
        reading_C("abc", Degrees.CELSIUS)


def test_that_a_typed_reading_is_repeated_in_her_unit() -> None:
    command = read_reading(
        temperature="70", degrees=Degrees.FAHRENHEIT, humidity="48", felt=None, time_ms=NOW_MS, now_ms=NOW_MS
    )
    assert reading_words(command, Degrees.FAHRENHEIT).startswith("Recorded: 70.0 °F, 48 %")


@pytest.mark.parametrize("kept", ["", "kelvin", "\x00", "1"])
def test_that_a_damaged_choice_counts_as_metric(settings: ViewSettings, kept: str) -> None:
    settings.units = US
    assert settings.units == US
    store: QSettings = settings._store

    for name in CHOICES:
        store.setValue(name, kept)
    assert settings.units == METRIC


@pytest.mark.window
def test_that_a_choice_is_kept_told_and_said(
    window: StudioWindow, desk: ScriptedDesk, settings: ViewSettings, qtbot: QtBot
) -> None:
    said: list[str] = []
    window.deeds.done.connect(said.append)
    form = choose_units(settings, window.deeds, window)
    qtbot.addWidget(form)
    form.degrees_field.setCurrentText("°F")
    assert form.units == Units(degrees=Degrees.FAHRENHEIT, speed=Speed.METRES_PER_SECOND)
    form._take()
    assert settings.units == Units(degrees=Degrees.FAHRENHEIT)
    assert desk.commands[-1] == SpeakIn(units=Units(degrees=Degrees.FAHRENHEIT))
    assert said == ["Shown in °F and m/s from now on."]


def test_that_figures_and_history_are_written_with_a_comma() -> None:
    comma = Units(numbers=Numbers.COMMA)
    temperature, humidity, air, dust = room_figures(replace(FOUR_WARNED, room=FAN_ROOM, units=comma), UTC)
    assert not any("." in f"{one.value}{one.meaning}" for one in (temperature, humidity, air, dust))
    assert "11,8 °C" in humidity.meaning
    assert dust.meaning == "2\N{NARROW NO-BREAK SPACE}400 /m³\nover 5 µm"
    data = RoomData(temperature=series((-1, 20.0, 21.0, 20.5)), air=series((-1, 0.127, 0.127, 0.127)))
    temperatures, _, speeds = panels_of(data, EMPTY, replace(snapshot(), units=comma))
    at_ms = float(data.temperature.time_ms[0])
    assert temperatures.reading(temperatures.curves[0], at_ms) == "20,0\N{EN DASH}21,0"
    assert speeds.reading(speeds.curves[0], at_ms) == "0,13"
    assert speeds.scale(NOW_MS - 60_000, NOW_MS, 4).label(0.2) == "0,2"


@pytest.mark.parametrize(
    ("language", "units"),
    [("de_DE", Units(numbers=Numbers.COMMA)), ("en_US", Units(hours=Hours.TWELVE)), ("en_GB", METRIC)],
)
def test_that_numbers_and_the_clock_follow_the_locale_until_she_chooses(
    settings: ViewSettings, language: str, units: Units
) -> None:
    usual = QLocale()
    QLocale.setDefault(QLocale(language))
    try:
        assert settings.units == units
        settings.units = METRIC
        assert settings.units == METRIC
    finally:
        QLocale.setDefault(usual)


@pytest.mark.window
@pytest.mark.parametrize("text_pct", [100, 200])
def test_that_the_choice_never_stands_taller_than_the_screen(
    text_pct: int, window: StudioWindow, settings: ViewSettings, qtbot: QtBot
) -> None:
    window.dressing.set_text_pct(text_pct)
    form = choose_units(settings, window.deeds, window)
    qtbot.addWidget(form)
    QApplication.processEvents()
    assert form.height() <= form.screen().availableSize().height()
    takes = next(one for one in form.findChildren(QPushButton) if one.text() == "Take it")
    assert form.rect().contains(takes.geometry())


@pytest.mark.window
def test_that_nothing_of_the_choice_is_scrolled_away_where_there_is_room(
    window: StudioWindow, settings: ViewSettings, qtbot: QtBot
) -> None:
    form = choose_units(settings, window.deeds, window)
    qtbot.addWidget(form)
    QApplication.processEvents()
    assert form._scroll.verticalScrollBar().maximum() == 0


@pytest.mark.window
def test_that_all_us_leaves_how_numbers_are_written(window: StudioWindow, settings: ViewSettings, qtbot: QtBot) -> None:
    settings.units = Units(numbers=Numbers.COMMA)
    form = choose_units(settings, window.deeds, window)
    qtbot.addWidget(form)
    form.show_units(US)
    assert form.units == replace(US, numbers=Numbers.COMMA)


@pytest.mark.window
def test_that_the_window_speaks_as_it_was_left(
    make_window: MakeWindow, settings: ViewSettings, desk: ScriptedDesk
) -> None:
    settings.units = US
    window = make_window(settings)
    assert SpeakIn(units=US) in desk.commands
    window.leave()


@pytest.mark.window
def test_that_another_unit_shows_with_the_next_snapshot(shown: Callable[[Snapshot], StudioWindow]) -> None:
    window = shown(replace(FOUR_WARNED, units=US))
    assert any("°F" in view._figure.unit for view in window.page.band._views)
