"""A warning as she reads it in German, whole, and in the units of the United States; the words are the trade's."""

from __future__ import annotations

from collections.abc import Iterator

import pytest

from studiowatch.speech.units import METRIC, US, Units
from studiowatch.speech.words import speak_by
from studiowatch.studio.concern import Kind
from studiowatch.studio.watch import find_concerns
from studiowatch.ui.translation import translation

from .watched_room import FAN, MARSH, NOW_MS, clock_text


@pytest.fixture(autouse=True)
def _german() -> Iterator[None]:
    speak_by(translation("de"))
    yield
    speak_by(None)


@pytest.mark.parametrize(("units", "speed"), [(METRIC, "0.34 m/s"), (US, "67 ft/min")])  # 0.34 m/s / 0.3048 m × 60 s
def test_that_a_fan_over_a_wet_coat_is_told_in_german(units: Units, speed: str) -> None:
    found = find_concerns(FAN, (MARSH,), now_ms=NOW_MS, clock_text=clock_text, units=units)
    fan = next(concern for concern in found if concern.kind is Kind.AIR_MOVING)
    assert fan.sentence.headline == "Luft bewegt sich über einer nassen Schicht"
    assert fan.sentence.detail == f"Um 14:07 ging ein Ventilator an ({speed}). {MARSH.piece_title} ist noch nass."
    assert fan.sentence.advice == "Den Ventilator ausschalten oder wegdrehen."
