"""What is said of a missed prompt; the order of work is common practice, no source."""

from __future__ import annotations

import pytest

from studiowatch.studio.missed import FilmNow, Missed, Step, missed
from studiowatch.studio.prompts import CoatToTend, Prompt, prompts_for

LAID_MS = 1_772_460_000_000
MINUTE_MS = 60_000
OPEN = FilmNow()
SET = FilmNow(is_set=True)
TACK_FREE = FilmNow(is_set=True, is_tack_free=True)


def told(step: Step, film: FilmNow, late_min: float) -> Missed:
    found = missed(step, film, round(late_min * MINUTE_MS))
    assert found is not None
    return found


def asked(film: FilmNow, now_min: float, **changes: object) -> dict[Step, Prompt]:
    plain = {"coat_key": "c", "laid_ms": LAID_MS, "clear_film": True, "clear_ms": LAID_MS + 120 * MINUTE_MS}
    coat = CoatToTend(**{**plain, **changes}, film=film)
    return {one.step: one for one in prompts_for(coat, now_ms=LAID_MS + round(now_min * MINUTE_MS))}


@pytest.mark.parametrize("step", list(Step))
@pytest.mark.parametrize("late_min", [-30, 0, 4.9])
def test_that_a_prompt_on_time_over_an_open_film_keeps_its_own_words(step: Step, late_min: float) -> None:
    assert missed(step, OPEN, round(late_min * MINUTE_MS)) is None


def test_that_nobody_is_sent_back_into_a_film_that_has_begun_to_set() -> None:
    late = told(Step.BUBBLES, SET, 20)
    assert late.is_useless
    assert "leave it" in late.headline
    assert "going back now marks the film" in late.advice
    assert "torch" not in late.with_caution("Torch far from solvent.").lower()


def test_that_a_late_second_pass_over_an_open_film_is_light_and_keeps_the_flame_caution() -> None:
    late = told(Step.BUBBLES, OPEN, 19)
    assert not late.is_useless
    assert late.with_caution("Torch far from solvent.").endswith("Torch far from solvent.")


def test_that_after_twenty_minutes_the_second_pass_is_left_even_if_the_model_has_the_film_open() -> None:
    # common practice, no source
    assert told(Step.BUBBLES, OPEN, 20.1).is_useless


def test_that_a_late_cover_is_set_until_the_film_takes_no_more_dust() -> None:
    assert not told(Step.COVER, SET, 20).is_useless
    late = told(Step.COVER, TACK_FREE, 20)
    assert late.is_useless
    assert "specks" in late.advice


def test_that_a_missed_look_or_touch_test_is_still_asked_for() -> None:
    for step in (Step.CLARITY, Step.TOUCH_TEST):
        assert not told(step, TACK_FREE, 61).is_useless
        assert missed(step, TACK_FREE, 59 * MINUTE_MS) is None


def test_that_a_step_which_the_film_overtook_before_its_time_is_not_asked_for_at_all() -> None:
    assert Step.BUBBLES not in asked(SET, 14)
    overtaken = asked(SET, 16)[Step.BUBBLES]
    assert overtaken.is_useless
    assert overtaken.due_ms == LAID_MS + 15 * MINUTE_MS


def test_that_a_coat_laid_on_an_untested_one_says_so_at_its_look() -> None:
    assert "without a touch test" in asked(OPEN, 1, untested="gloss 1")[Step.CLARITY].caution
    assert asked(OPEN, 1)[Step.CLARITY].caution == ""
