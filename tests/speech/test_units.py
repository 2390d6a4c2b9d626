"""Lengths, films, volumes and the clock against the published factors."""

from __future__ import annotations

from datetime import datetime

import pytest

from studiowatch.speech.units import FLUID_OUNCE_ML, METRIC, US, choose, chosen


def test_the_fluid_ounce() -> None:
    # 1 fl oz (US) = 2.957 353 E-05 m³: NIST SP 811 (2008), B.8
    assert pytest.approx(29.57353, abs=5e-6) == FLUID_OUNCE_ML


def test_that_sizes_are_said_in_both() -> None:
    # 1 in = 2.54 cm: 40/2.54 = 15.748, 60/2.54 = 23.622
    assert (METRIC.size(40.0, 60.0), US.size(40.0, 60.0)) == ("40 × 60 cm", "15.7 × 23.6 in")
    assert (METRIC.side(2.5), US.side(25.4)) == ("2.5 cm", "10 in")


def test_that_films_are_said_in_both() -> None:
    # 1 mil = 25.4 µm: 90/25.4 = 3.543
    assert (METRIC.film(90.0), US.film(90.0)) == ("90 µm", "3.5 mil")


def test_that_volumes_are_said_in_both() -> None:
    # 12 mL / 29.57353 = 0.4058
    assert (METRIC.poured(12.0), US.poured(12.0)) == ("12 mL", "0.41 fl oz")


# 12-hour clock: noon is 12 pm and midnight 12 am, as the NIST's page "Times of Day FAQs" says is usual though debatable
@pytest.mark.parametrize(
    ("hour", "words"),
    [(0, "12:07 am"), (1, "1:07 am"), (11, "11:07 am"), (12, "12:07 pm"), (13, "1:07 pm"), (23, "11:07 pm")],
)
def test_the_clock_of_twelve_hours(hour: int, words: str) -> None:
    moment = datetime(2025, 12, 13, hour, 7, 5)  # noqa: DTZ001 - a wall clock
    assert US.clock(moment) == words
    assert US.clock(moment, seconds=True) == words.replace(":07", ":07:05")
    assert METRIC.clock(moment) == f"{hour:02}:07"


def test_that_her_choice_holds_until_another() -> None:
    assert chosen() == METRIC
    choose(US)
    assert chosen() == US


def test_that_what_rounds_to_nothing_has_no_sign() -> None:
    # -17.8 × 1.8 + 32 = -0.04
    assert (METRIC.temperature(-0.04), METRIC.limit(-0.04)) == ("0.0 °C", "0 °C")
    assert (US.temperature(-17.8), US.limit(-17.8)) == ("0.0 °F", "0 °F")
    assert METRIC.temperature(-0.06) == "-0.1 °C"
