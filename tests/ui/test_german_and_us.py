"""The view models in German and in the units of the United States: cards, axes, figures, forms, the plan."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime

import numpy as np
import pytest

from studiowatch.board.onlooker import HeardLine
from studiowatch.board.simulated import SIMULATED_NAME
from studiowatch.coats.stages import Surface
from studiowatch.coats.support import SOAKED_SHARE, Support
from studiowatch.room.typed import Felt
from studiowatch.service.atlas import example_of
from studiowatch.service.commands import TypeReading
from studiowatch.service.piece_view import PieceView
from studiowatch.speech.units import METRIC, US, Numbers, choose
from studiowatch.studio.pieces import Coat, Finding, Outcome
from studiowatch.studio.review_causes import Cause
from studiowatch.studio.supports import SUPPORTS, support_named, support_words
from studiowatch.studio.working_hours import read_hours
from studiowatch.ui.models.air_guide import STEPS as AIR_STEPS
from studiowatch.ui.models.board import board_line
from studiowatch.ui.models.board_now import line_words
from studiowatch.ui.models.coat_form import suggestion_words
from studiowatch.ui.models.figures import room_figures
from studiowatch.ui.models.first_steps import STEPS as FIRST_STEPS
from studiowatch.ui.models.forms import FormError, number
from studiowatch.ui.models.history_axis import moment_words, range_words, time_ticks
from studiowatch.ui.models.history_live import RoomData
from studiowatch.ui.models.history_panels import panels_of
from studiowatch.ui.models.humidity_guide import STEPS as HUMIDITY_STEPS
from studiowatch.ui.models.look_form import answer_words
from studiowatch.ui.models.outcome_form import answer_words as outcome_words
from studiowatch.ui.models.pace import stalled
from studiowatch.ui.models.quiet_hours import QuietHours
from studiowatch.ui.models.rack import PieceCard, rack_cards, state_words
from studiowatch.ui.models.reading_form import reading_words
from studiowatch.ui.models.recorded import amount_words
from studiowatch.ui.models.review_plot import picture_of
from studiowatch.ui.models.times import ago_words, clock_words, lasting_words, near_words_beside

from .scenes import FOUR_WARNED, NOW_MS, ORCHARD, SHEETS, coat
from .speaking import speak_german

MINUTE_MS, HOUR_MS = 60_000, 3_600_000
DAY_MS = 24 * HOUR_MS
GERMAN = replace(METRIC, numbers=Numbers.COMMA)
AFTERNOON_MS = round(datetime(2025, 12, 13, 14, 7, 5, tzinfo=UTC).timestamp() * 1000)  # a Saturday


@pytest.fixture
def german() -> None:
    speak_german()
    choose(GERMAN)


@pytest.fixture
def us() -> None:
    choose(US)


def card(piece: PieceView) -> PieceCard:
    return rack_cards(replace(FOUR_WARNED, pieces=(piece,)), UTC)[0]


@pytest.mark.usefixtures("german")
def test_that_a_card_reads_right_in_german() -> None:
    one = card(ORCHARD)
    assert one.state == "Gloss 1 · nass und milchig, 38 min"
    assert one.ahead == "angezogen 14:40"
    assert (one.ready, one.likely) == ("ab Do 08:12", "vielleicht ab 07:12")
    assert one.due == "bis 20. März"


@pytest.mark.usefixtures("us")
def test_that_a_card_reads_right_in_us_units() -> None:
    size = f"{ORCHARD.width_cm / 2.54:.1f} × {ORCHARD.height_cm / 2.54:.1f} in"
    one = card(ORCHARD)
    assert one.size == size
    assert one.ahead == "set to touch 2:40 pm"
    assert (one.ready, one.likely) == ("from Thu 8:12\u00a0am", "perhaps from 7:12\u00a0am")


@pytest.mark.usefixtures("german")
def test_that_a_dry_coat_is_told_whole_in_german() -> None:
    dry = coat("c", "gloss 2", 5 * HOUR_MS, surface=Surface.DRY)
    assert state_words(dry, NOW_MS, UTC)[0] == "Gloss 2 · klar seit 12:12"


@pytest.mark.usefixtures("german")
def test_that_times_and_lengths_bend_in_german() -> None:
    assert clock_words(AFTERNOON_MS, AFTERNOON_MS + 2 * DAY_MS, UTC) == "Sa 14:07"
    assert clock_words(AFTERNOON_MS, AFTERNOON_MS + 20 * DAY_MS, UTC) == "13. Dez. 14:07"
    assert [lasting_words(n * DAY_MS) for n in (1, 3)] == ["1 Tag", "3 Tage"]
    assert [ago_words(0, n * DAY_MS) for n in (1, 3)] == ["vor 1 Tag", "vor 3 Tagen"]
    assert ago_words(0, 38 * MINUTE_MS) == "vor 38 min"


@pytest.mark.usefixtures("us")
def test_that_a_clock_of_twelve_hours_is_not_torn_apart() -> None:
    assert near_words_beside(AFTERNOON_MS, AFTERNOON_MS + HOUR_MS, AFTERNOON_MS - DAY_MS, UTC) == "2:07 pm"
    assert near_words_beside(AFTERNOON_MS, AFTERNOON_MS + DAY_MS, AFTERNOON_MS - DAY_MS, UTC) == "Sat 2:07 pm"
    assert line_words(HeardLine(number=1, text="$a", time_ms=AFTERNOON_MS), UTC) == "2:07:05 pm  $a"
    assert QuietHours(on=True).words() == "Quiet from 10:00 pm to 7:00 am"


@pytest.mark.usefixtures("german")
def test_that_the_time_axis_reads_right_in_german() -> None:
    ticks = time_ticks(AFTERNOON_MS - 20 * HOUR_MS, AFTERNOON_MS + 20 * HOUR_MS, 8, UTC)
    assert [tick.label for tick in ticks][:3] == ["Sa 13. Dez.", "06:00", "12:00"]
    assert range_words(AFTERNOON_MS, AFTERNOON_MS + 8 * DAY_MS, UTC) == "Sa 13. – So 21. Dez. 2025"
    assert moment_words(AFTERNOON_MS, HOUR_MS, UTC) == "Sa 13. Dez. 14:07"


@pytest.mark.usefixtures("us")
def test_that_the_time_axis_reads_right_with_twelve_hours() -> None:
    ticks = time_ticks(AFTERNOON_MS - 20 * HOUR_MS, AFTERNOON_MS + 20 * HOUR_MS, 8, UTC)
    assert [tick.label for tick in ticks][:3] == ["Sat 13 Dec", "6:00 am", "12:00 pm"]
    assert moment_words(AFTERNOON_MS, MINUTE_MS, UTC) == "Sat 13 Dec 2:07:05 pm"


@pytest.mark.usefixtures("german")
def test_that_panels_and_figures_are_named_in_german() -> None:
    temperature, humidity, air = panels_of(RoomData(), RoomData().air, replace(FOUR_WARNED, units=GERMAN))
    assert (temperature.title, humidity.title) == ("Temperatur °C", "relative Luftfeuchte %")
    assert [limit.words for limit in air.limits] == ["bewegte Luft"]
    figures = room_figures(replace(FOUR_WARNED, units=GERMAN), UTC)
    assert [figure.name for figure in figures][:3] == ["Lufttemperatur", "Relative Luftfeuchte", "Luftgeschwindigkeit"]
    assert "," in figures[0].value


@pytest.mark.usefixtures("german")
def test_that_a_refusal_is_one_sentence_in_german() -> None:
    with pytest.raises(FormError) as told:
        number("0,2", field="w", name="Die Breite", unit="cm", low=1, high=1000, example="60.5")
    assert str(told.value) == "Die Breite ist 0,2 cm: Tippen Sie eine Zahl von 1 bis 1000 ein, etwa 60,5."


@pytest.mark.usefixtures("us")
def test_that_what_to_pour_is_told_in_fluid_ounces_and_mils() -> None:
    sheet = SHEETS[1]
    words = suggestion_words(ORCHARD, sheet)
    ounces = ORCHARD.area_m2 * sheet.wet_um / 29.5735295625  # mL in a US fluid ounce: NIST Handbook 44, appendix C
    assert words.startswith(f"{ounces:.2f} fl oz or ")
    assert f"the sheet's {sheet.wet_um / 25.4:.1f} mil on " in words
    laid = Coat(key="c", sheet="gloss", laid_ms=0, volume_mL=29.5735295625)
    assert amount_words(laid) == "1 fl oz"
    assert amount_words(replace(laid, volume_mL=None, wet_um=101.6)) == "4 mil wet"


@pytest.mark.usefixtures("german")
def test_that_answers_and_steps_are_told_in_german() -> None:
    assert answer_words(Finding.MILKY, solvent=False) == "Noch milchig"
    assert answer_words(Finding.MILKY, solvent=True) == "Stumpf, weiß angelaufen"
    assert outcome_words(Outcome.POWDERY) == "Pudrig"
    assert FIRST_STEPS[0].heading == "Ihre Platine"
    assert AIR_STEPS[1].title == "Ruhige Luft, unter dem Becher"
    assert "20 bis 25 °C" in HUMIDITY_STEPS[2].words[1]
    assert stalled(None, 0).sentence.headline == "Die Wache ist nicht gestartet"
    typed = TypeReading(time_ms=0, temperature_C=20.5, humidity_pct=48.0, felt=Felt.STILL)
    assert reading_words(typed, GERMAN.degrees) == "Aufgezeichnet: 20,5 °C, 48 %, Luft still"


@pytest.mark.usefixtures("us")
def test_that_a_guide_tells_temperatures_in_her_degrees() -> None:
    assert "68 to 77 °F" in HUMIDITY_STEPS[2].words[1]  # 20 and 25 °C


def test_that_every_bare_support_is_among_those_that_are_offered() -> None:
    assert {bare.value for bare in Support if SOAKED_SHARE[bare]} <= set(SUPPORTS)


@pytest.mark.usefixtures("german")
@pytest.mark.parametrize("support", SUPPORTS)
def test_that_a_support_is_stored_under_its_own_name(support: str) -> None:
    assert support_words(support) != support
    assert support_named(support_words(support)) == support


@pytest.mark.usefixtures("german")
def test_that_a_support_of_hers_stays_as_she_calls_it() -> None:
    assert support_named(" altes Brett ") == support_words("altes Brett") == "altes Brett"


@pytest.mark.usefixtures("german")
def test_that_a_day_off_is_typed_in_her_language_or_as_it_is_stored() -> None:
    assert [read_hours(text) for text in ("frei", " Frei ", "off")] == [None, None, None]
    with pytest.raises(ValueError, match="oder „frei“"):
        read_hours("nie")


@pytest.mark.usefixtures("german")
def test_that_the_simulated_board_is_named_in_her_language() -> None:
    board = replace(FOUR_WARNED.board, port=SIMULATED_NAME, sensor="simulated")
    assert board_line(replace(FOUR_WARNED, board=board)).words.startswith("Simulierte Platine · letzter Messwert")


@pytest.mark.usefixtures("us")
def test_that_the_review_draws_and_reads_in_her_units() -> None:
    review = example_of(next(iter(Cause)))
    air = review.room
    picture = picture_of(review)
    temperature, speed = picture.panels[0], picture.panels[2]
    assert (temperature.unit, speed.unit) == ("°F", "ft/min")
    assert np.allclose(temperature.lines[0].values, air.temperature_C * 9 / 5 + 32, equal_nan=True)
    assert np.allclose(speed.lines[0].values, air.air_speed_m_s / 0.3048 * 60, equal_nan=True)  # 1 ft = 0.3048 m
    assert "°C" not in picture.read(review.laid_ms + HOUR_MS)
