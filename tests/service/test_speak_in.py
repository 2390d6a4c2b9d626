"""Units on the keeper's side: sentences follow at once, and the records keep the words they were said in."""

from __future__ import annotations

from studiowatch.service.commands import LayCoat, SpeakIn
from studiowatch.speech.units import METRIC, US

from .test_laying_day import SHEET, Studio, studio

__all__ = ["studio"]


def test_that_sentences_and_checks_follow_the_units_at_once(studio: Studio) -> None:
    now_ms = studio.clock.now_ms
    before = studio.watch.snapshot(now_ms)
    assert before.units == METRIC
    assert "°C" in before.sentence.detail
    studio.ask(SpeakIn(units=US))
    after = studio.watch.snapshot(now_ms)
    assert after.units == US
    assert "°F" in after.sentence.detail
    assert "°C" not in " ".join(check.detail for _, check in after.room_checks)
    assert after.room == before.room


def test_that_a_warning_that_is_over_keeps_its_words(studio: Studio) -> None:
    studio.ask(LayCoat(piece_key="marsh", laid_ms=studio.clock.now_ms, sheet=SHEET, volume_mL=43))
    studio.run(10, humidity_pct=93.0)
    studio.run(20)
    over = studio.records.warnings(10)
    assert over
    studio.ask(SpeakIn(units=US))
    assert studio.records.warnings(10) == over


def test_that_units_are_nothing_to_undo(studio: Studio) -> None:
    undo = studio.watch.snapshot(studio.clock.now_ms).undo
    studio.ask(SpeakIn(units=US))
    assert studio.watch.snapshot(studio.clock.now_ms).undo == undo
