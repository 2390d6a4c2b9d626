from __future__ import annotations

from dataclasses import replace

from studiowatch.studio.missed import TEST_FIRST
from studiowatch.studio.pieces import Finding
from studiowatch.studio.prompts import CoatToTend, Prompt, Step, prompt_key, prompts_for
from studiowatch.studio.unready import Unready

LAID_MS = 1_772_460_000_000
MINUTE_MS = 60_000
HOUR_MS = 60 * MINUTE_MS
GLOSS = CoatToTend(
    coat_key="c7",
    laid_ms=LAID_MS,
    clear_film=True,
    clear_ms=LAID_MS + 2 * HOUR_MS,
    recoat_ms=LAID_MS + 5 * HOUR_MS,
    following="satin",
    following_mL=62.4,
)


def asked(coat: CoatToTend, now_ms: int = LAID_MS, **before: int) -> dict[Step, Prompt]:
    keyed = {prompt_key(coat.coat_key, Step(step)): due_ms for step, due_ms in before.items()}
    return {prompt.step: prompt for prompt in prompts_for(coat, now_ms=now_ms, before=keyed)}


def test_that_a_clear_coat_is_tended_step_by_step_in_order_of_time() -> None:
    prompts = prompts_for(GLOSS, now_ms=LAID_MS)
    assert [prompt.step for prompt in prompts] == [
        Step.BUBBLES,
        Step.COVER,
        Step.CLARITY,
        Step.TOUCH_TEST,
        Step.RECOAT,
    ]
    assert [prompt.due_ms - LAID_MS for prompt in prompts] == [
        15 * MINUTE_MS,
        20 * MINUTE_MS,
        2 * HOUR_MS,
        5 * HOUR_MS,
        5 * HOUR_MS,
    ]


def test_that_the_second_pass_and_the_scrape_are_one_prompt_a_quarter_of_an_hour_after_laying() -> None:
    # common practice, no source
    prompt = asked(GLOSS)[Step.BUBBLES]
    assert prompt.headline == "Second bubble pass, scrape drips"
    assert prompt.due_ms == LAID_MS + 15 * MINUTE_MS


def test_that_recoating_says_what_and_how_much() -> None:
    assert asked(GLOSS)[Step.RECOAT].text == "Recoat: satin, 62 mL"
    assert asked(replace(GLOSS, following_mL=None))[Step.RECOAT].text == "Recoat: satin"


def test_that_the_torch_stays_far_from_solvent_and_from_the_cover() -> None:
    caution = asked(GLOSS)[Step.BUBBLES].caution
    assert all(word in caution for word in ("solvent", "mesh cover", "extinguisher", "sheet"))
    assert asked(GLOSS)[Step.COVER].caution == "No torch or flame near the mesh cover."


def test_that_no_flame_is_offered_for_a_solvent_borne_coat() -> None:
    prompts = asked(replace(GLOSS, solvent=True, clear_ms=None))
    assert prompts[Step.BUBBLES].caution.startswith("No torch, flame or spark")
    assert Step.CLARITY not in prompts


def test_that_a_solvent_borne_coat_to_come_brings_its_cautions() -> None:
    caution = asked(replace(GLOSS, following_solvent=True))[Step.RECOAT].caution
    assert all(word in caution for word in ("ventilate", "gloves", "no flame or spark", "rags", "sheet"))


def test_that_a_covered_coat_needs_no_cover_and_a_clear_one_no_look() -> None:
    prompts = asked(replace(GLOSS, is_covered=True, is_seen_clear=True))
    assert Step.COVER not in prompts
    assert Step.CLARITY not in prompts


def test_that_the_last_coat_is_not_to_be_recoated() -> None:
    assert set(asked(replace(GLOSS, following=None))) == {Step.BUBBLES, Step.COVER, Step.CLARITY}


def test_that_a_stage_that_is_not_reached_has_no_prompt() -> None:
    assert set(asked(replace(GLOSS, clear_ms=None, recoat_ms=None))) == {Step.BUBBLES, Step.COVER}


def test_that_paint_is_only_touched_and_coated() -> None:
    paint = replace(GLOSS, clear_film=False, following="isolation", following_mL=14.0)
    assert set(asked(paint)) == {Step.TOUCH_TEST, Step.RECOAT}


def test_that_paint_is_coated_and_not_recoated() -> None:
    paint = replace(GLOSS, clear_film=False, following="isolation", following_mL=14.0)
    assert asked(paint)[Step.RECOAT].text == "Lay isolation, 14 mL"


def test_that_a_prompt_moves_with_the_model_until_it_is_due_and_then_stays() -> None:
    slower = replace(GLOSS, clear_ms=LAID_MS + 3 * HOUR_MS)
    first_due_ms = LAID_MS + 2 * HOUR_MS
    assert asked(slower, first_due_ms - 1, clarity=first_due_ms)[Step.CLARITY].due_ms == LAID_MS + 3 * HOUR_MS
    assert asked(slower, first_due_ms, clarity=first_due_ms)[Step.CLARITY].due_ms == first_due_ms


def test_that_keys_are_stable_and_unique() -> None:
    keys = [prompt.key for prompt in prompts_for(GLOSS, now_ms=LAID_MS)]
    assert keys == [prompt.key for prompt in prompts_for(GLOSS, now_ms=LAID_MS + HOUR_MS)]
    assert len(set(keys)) == len(keys)
    assert keys[0] == "c7:bubbles"


def test_that_a_recoat_that_was_due_is_put_off_by_a_test_that_finds_the_coat_tacky() -> None:
    # due at 5 h, found tacky at 6 h: by what that taught it is 8 h, and the test is another one than that of 5 h
    due_ms, found_ms = LAID_MS + 5 * HOUR_MS, LAID_MS + 6 * HOUR_MS
    coat = replace(GLOSS, recoat_ms=LAID_MS + 8 * HOUR_MS, unready=Unready.of(Finding.TACKY, found_ms, laid_ms=LAID_MS))
    kept = asked(GLOSS, found_ms, recoat=due_ms)
    assert kept[Step.RECOAT].due_ms == due_ms
    prompts = asked(coat, found_ms, recoat=due_ms, **{"touch-test": due_ms})
    assert prompts[Step.RECOAT].due_ms == prompts[Step.TOUCH_TEST].due_ms == LAID_MS + 8 * HOUR_MS
    assert prompts[Step.TOUCH_TEST].key != kept[Step.TOUCH_TEST].key
    assert prompts[Step.BUBBLES].key == kept[Step.BUBBLES].key


def test_that_a_last_coat_found_tacky_is_to_be_tested_again_unless_its_cure_is_told_still() -> None:
    # laid, and found tacky 10 h later: a tenth of that later a new test says something
    found_ms = LAID_MS + 10 * HOUR_MS
    last = replace(GLOSS, following=None, unready=Unready.of(Finding.TACKY, found_ms, laid_ms=LAID_MS))
    prompt = asked(last, found_ms)[Step.TOUCH_TEST]
    assert (prompt.headline, prompt.due_ms) == ("Touch test at an edge before it is wrapped", LAID_MS + 11 * HOUR_MS)
    late = asked(last, LAID_MS + 13 * HOUR_MS)[Step.TOUCH_TEST]
    assert (late.headline, late.caution) == (prompt.headline, TEST_FIRST)
    assert Step.TOUCH_TEST not in asked(replace(last, cured_ms=LAID_MS + 700 * HOUR_MS), found_ms)
