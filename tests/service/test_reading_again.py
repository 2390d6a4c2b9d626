"""When she is asked to read the room again, and when a reading that was not made is told."""

from __future__ import annotations

from studiowatch.coats.stages import Stage, Surface
from studiowatch.service.commands import TickPrompt
from studiowatch.studio.concern import Kind
from studiowatch.studio.pieces import Coat
from studiowatch.studio.prompts import Step
from studiowatch.studio.words import Level

from .scripted import START_MS
from .typed_studio import HOUR_MS, MINUTE_MS, Studio


def test_that_she_is_asked_once_to_read_again_after_an_hour_while_wet_and_a_reading_answers_it() -> None:
    studio = Studio(coats=(Coat(key="g", sheet="gloss-waterborne", laid_ms=START_MS, wet_um=500.0),))
    studio.type_in(humidity_pct=60.0)
    studio.wait(59 * MINUTE_MS)
    assert studio.prompted() == []
    studio.wait(30 * MINUTE_MS)
    assert len(studio.prompted()) == 1
    (view,) = [prompt for prompt in studio.snapshot().prompts if prompt.key.endswith(Step.READ_ROOM)]
    assert view.overdue
    assert view.due_ms == START_MS + HOUR_MS
    studio.type_in(humidity_pct=60.0)
    (view,) = [prompt for prompt in studio.snapshot().prompts if prompt.key.endswith(Step.READ_ROOM)]
    assert not view.overdue
    assert studio.coat().surface is Surface.WET
    assert view.due_ms == studio.now_ms + HOUR_MS


def test_that_a_prompt_that_she_ticked_is_quiet_until_the_next_reading() -> None:
    studio = Studio(coats=(Coat(key="g", sheet="gloss-waterborne", laid_ms=START_MS, wet_um=500.0),))
    studio.type_in(humidity_pct=60.0)
    studio.wait(61 * MINUTE_MS)
    (view,) = [prompt for prompt in studio.snapshot().prompts if prompt.key.endswith(Step.READ_ROOM)]
    studio.watch.carry_out(TickPrompt(prompt_key=view.key), studio.now_ms, studio.now_ms / 1000)
    studio.wait(5 * MINUTE_MS)
    assert not [prompt for prompt in studio.snapshot().prompts if prompt.key.endswith(Step.READ_ROOM)]
    assert len(studio.prompted()) == 1


def test_that_a_dry_coat_is_read_for_every_four_hours_and_one_that_may_be_recoated_no_more() -> None:
    studio = Studio()
    studio.type_in()
    studio.wait(5 * HOUR_MS, step_ms=MINUTE_MS)
    assert studio.coat().surface is Surface.DRY
    studio.type_in()
    (view,) = [prompt for prompt in studio.snapshot().prompts if prompt.key.endswith(Step.READ_ROOM)]
    assert view.due_ms == studio.now_ms + 4 * HOUR_MS
    studio.wait(60 * HOUR_MS, step_ms=10 * MINUTE_MS)
    assert studio.coat().stage(Stage.DRY_TO_RECOAT).reached
    assert not [prompt for prompt in studio.snapshot().prompts if prompt.key.endswith(Step.READ_ROOM)]


def test_that_a_reading_missed_for_two_hours_over_a_wet_coat_is_a_caution_without_sound_until_the_next() -> None:
    studio = Studio(coats=(Coat(key="g", sheet="gloss-waterborne", laid_ms=START_MS, wet_um=500.0),))
    studio.type_in(humidity_pct=60.0)
    snapshot = studio.wait(2 * HOUR_MS + MINUTE_MS)
    assert studio.coat().surface is Surface.WET
    assert Kind.READING_OLD in studio.raised()  # so thick a coat dries too fast on top, too
    (warning,) = [one for one in snapshot.warnings if one.kind == Kind.READING_OLD]
    assert (warning.level, warning.sound) == (Level.CAUTION, False)
    assert warning.sentence.headline == "The room was not read since 0.00 h"
    assert "Low Tide" in warning.sentence.detail
    studio.type_in(humidity_pct=60.0)
    assert Kind.READING_OLD not in studio.raised()


def test_that_nothing_is_asked_of_a_rack_on_which_nothing_dries() -> None:
    studio = Studio(coats=())
    studio.type_in()
    snapshot = studio.wait(10 * HOUR_MS, step_ms=10 * MINUTE_MS)
    assert snapshot.prompts == ()
    assert snapshot.warnings == ()
    assert snapshot.sentence.headline == "Read the room again before you lay a coat"
