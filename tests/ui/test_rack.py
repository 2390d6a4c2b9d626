"""What the cards say."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC

import pytest

from studiowatch.coats.stages import Stage, Surface
from studiowatch.service.piece_view import PieceView, StageTime
from studiowatch.studio.pieces import Finding
from studiowatch.studio.unready import Unready
from studiowatch.ui.models.rack import PieceCard, rack_cards, state_words
from studiowatch.ui.models.tones import Tone

from .scenes import (
    BLUSHED,
    DOUBT,
    DOUBTED,
    FOUR_WARNED,
    HERONS,
    LADDER,
    LEARNT,
    NOW_MS,
    ORCHARD,
    QUARRY,
    SEALING,
    VARNISH_HOURS,
    coat,
)

MINUTE_MS, HOUR_MS = 60_000, 3_600_000


def card(piece: PieceView) -> PieceCard:
    return rack_cards(replace(FOUR_WARNED, pieces=(piece,)), UTC)[0]


def test_that_a_wet_coat_says_how_long_it_has_been_wet() -> None:
    one = card(ORCHARD)
    assert (one.state, one.state_tone) == ("Gloss 1 · wet and milky, 38 min", Tone.LINK)
    assert one.ahead == "set to touch 14:40"
    assert (one.step, one.ready) == ("Recoat: gloss 2, 54\u00a0mL", "from Thu 08:12")
    assert one.likely == "perhaps from 07:12"
    night = replace(ORCHARD, next_p10_ms=NOW_MS + 9 * HOUR_MS)
    assert card(night).likely == "perhaps from Wed\u00a023:12"  # Thursday was named last
    month = replace(ORCHARD, next_ms=NOW_MS + 40 * 24 * HOUR_MS, next_p10_ms=NOW_MS + 20 * 24 * HOUR_MS)
    assert (card(month).ready, card(month).likely) == ("from 13 Apr", "perhaps from 24\u00a0Mar")
    week = replace(ORCHARD, next_ms=NOW_MS + 48 * HOUR_MS, next_p10_ms=NOW_MS + 17 * HOUR_MS)
    assert card(week).likely == "perhaps from Thu\u00a007:12"
    assert (one.due, one.slack, one.slack_tone) == ("due 20 Mar", "6 days to spare", Tone.GOOD)


def test_that_a_dry_coat_says_what_it_reached_and_since_when() -> None:
    dry = coat("c", "gloss 2", 5 * HOUR_MS, surface=Surface.DRY)
    assert VARNISH_HOURS[4] == (Stage.CLEAR, 3.0)
    assert state_words(dry, NOW_MS, UTC) == ("Gloss 2 · clear since 12:12", Tone.INK)


def test_that_a_dry_coat_that_is_still_milky_says_so() -> None:
    milky = coat("c", "isolation", 5 * HOUR_MS, surface=Surface.DRY, milky=True)
    assert state_words(milky, NOW_MS, UTC)[0] == "Isolation · dry, still milky"


def test_that_a_coat_found_tacky_is_said_as_it_was_found_until_it_is_ready() -> None:
    # 10 h old when it was found tacky 20 min ago, at 13:52: to be tested again an hour after that, at 14:52
    found_ms = NOW_MS - 20 * MINUTE_MS
    tacky = Unready.of(Finding.TACKY, found_ms, laid_ms=found_ms - 10 * HOUR_MS)
    top = coat("c", "gloss 2", 10 * HOUR_MS + 20 * MINUTE_MS, surface=Surface.DRY)
    unready = replace(top, unready=tacky, stages=tuple(replace(time, reached=False) for time in top.stages))
    one = card(replace(ORCHARD, coats=(unready,), next_ms=None, next_p10_ms=None, next_p90_ms=None))
    assert (one.state, one.state_tone) == ("Gloss 2 · found tacky, 13:52", Tone.CAUTION)
    assert (one.ready, one.ready_tone, one.likely) == ("test again from 14:52", Tone.CAUTION, "")
    late = replace(unready, unready=replace(tacky, again_ms=NOW_MS))
    assert card(replace(ORCHARD, coats=(late,), next_ms=None)).ready == "test again now"
    ready = replace(top, stages=tuple(replace(time, reached=True) for time in top.stages))
    assert state_words(replace(ready, unready=tacky), NOW_MS, UTC) == state_words(ready, NOW_MS, UTC)


def test_that_a_covered_coat_says_so() -> None:
    assert card(QUARRY).state == "Gloss 2 · tacky, 2 h · covered"


def test_that_paint_counts_its_days() -> None:
    assert card(HERONS).state == "Paint · drying through, day 3"


def test_that_a_piece_without_a_coat_says_so() -> None:
    bare = replace(ORCHARD, coats=(coat("c", "gloss"),))
    assert card(bare).state == "No coat laid yet"


def test_that_a_range_is_said_only_where_there_is_one() -> None:
    assert card(LADDER).likely == ""
    equal = replace(ORCHARD, next_p10_ms=ORCHARD.next_ms, next_p90_ms=ORCHARD.next_ms)
    assert card(equal).likely == ""
    begun = replace(ORCHARD, next_p10_ms=NOW_MS - MINUTE_MS)
    assert card(begun).likely == "perhaps ready already"


def test_that_what_is_ready_says_since_when() -> None:
    ready = card(replace(ORCHARD, next_ms=NOW_MS - 2 * MINUTE_MS))
    assert (ready.ready, ready.ready_tone, ready.likely) == ("ready since 14:10", Tone.GOOD, "")


def test_that_a_coat_this_room_never_dries_is_said_plainly() -> None:
    never = StageTime(stage=Stage.DRY_TO_RECOAT, time_ms=None, reached=False)
    top = replace(ORCHARD.coats[2], stages=(never,))
    stuck = replace(ORCHARD, coats=(*ORCHARD.coats[:2], top), next_ms=None, next_p10_ms=None, next_p90_ms=None)
    assert (card(stuck).ready, card(stuck).ready_tone) == ("not in this room as it is", Tone.CAUTION)


def test_that_a_far_too_thick_coat_is_named_as_the_cause() -> None:
    never = StageTime(stage=Stage.DRY_TO_RECOAT, time_ms=None, reached=False)
    top = replace(ORCHARD.coats[2], stages=(never,), wet_um=9300)
    stuck = replace(ORCHARD, coats=(*ORCHARD.coats[:2], top), next_ms=None, next_p10_ms=None, next_p90_ms=None)
    snapshot = replace(FOUR_WARNED, pieces=(stuck,))
    one = rack_cards(snapshot, UTC, sheet_um={"gloss-waterborne": 100})[0]
    assert (one.ready, one.likely) == ("no time in sight", "laid 93 × as thick as the sheet says")
    thin = rack_cards(snapshot, UTC, sheet_um={"gloss-waterborne": 5000})[0]
    assert thin.ready == "not in this room as it is"


def test_that_a_piece_is_fit_to_wrap_only_when_it_is() -> None:
    last = replace(ORCHARD, next_step="fit to wrap", next_ms=NOW_MS + 12 * 24 * HOUR_MS)
    assert (card(last).step, card(last).ready, card(last).likely) == ("", "wrap from 16 Mar", "")
    done = replace(last, next_ms=NOW_MS - 24 * HOUR_MS)
    assert (card(done).ready, card(done).ready_tone, card(done).likely) == ("Fit to wrap", Tone.GOOD, "since 3 Mar")


def test_that_a_coat_that_is_not_watched_says_so_and_why() -> None:
    why = "Its data sheet is gone: put it back into the folder of sheets."
    top = replace(ORCHARD.coats[2], surface=None, milky=False, stages=(), unwatched=why)
    one = card(replace(ORCHARD, coats=(*ORCHARD.coats[:2], top)))
    assert (one.state, one.state_tone) == ("Gloss 1 · not watched", Tone.CAUTION)
    assert one.cautions == (why,)
    assert why in one.spoken
    layer = one.section.layers[-1]
    assert (layer.surface, layer.words) == (Surface.DRY, "gloss 1, not watched")


def test_that_what_was_sealed_in_and_what_is_left_of_it_is_said() -> None:
    one = card(SEALING)
    assert one.sealed == "3.3 g/m² of water sealed in when laid, 1.9 left"
    assert one.sealed in one.spoken
    assert card(QUARRY).sealed == ""


def test_that_a_blush_and_a_test_that_does_not_fit_are_cautions() -> None:
    assert card(BLUSHED).cautions == ("May have blushed from 14:10",)
    assert card(DOUBTED).cautions == (DOUBT,)
    assert DOUBT in card(DOUBTED).spoken
    assert card(LADDER).cautions == ()


def test_that_a_solvent_borne_coat_is_never_milky_and_never_said_to_clear() -> None:
    assert card(BLUSHED).state == "Gloss · wet, 40 min"
    dry = replace(BLUSHED.coats[1], laid_ms=NOW_MS - 5 * HOUR_MS, surface=Surface.DRY)
    hours = (Stage.DRY_TO_TOUCH, 2.6), (Stage.CLEAR, 3.0)
    reached = tuple(
        StageTime(stage=stage, time_ms=dry.laid_ms + round(late * HOUR_MS), reached=True) for stage, late in hours
    )
    assert state_words(replace(dry, stages=reached), NOW_MS, UTC)[0] == "Gloss · dry to touch since 11:48"
    assert state_words(replace(dry, stages=reached, solvent=False), NOW_MS, UTC)[0] == "Gloss · clear since 12:12"
    ahead = replace(dry, surface=Surface.TACKY, stages=(replace(reached[1], time_ms=NOW_MS + 1, reached=False),))
    assert card(replace(BLUSHED, coats=(ahead,))).ahead == ""


def test_that_what_was_learnt_stands_on_the_card_in_a_few_words_and_is_read_out_whole() -> None:
    one = rack_cards(replace(FOUR_WARNED, pieces=(ORCHARD,), learnt=(LEARNT,)), UTC)[0]
    assert one.learnt == "gloss 1: 1.3 × the sheet's time here, 3 tests"
    assert one.learnt_whole == LEARNT.sentence
    assert LEARNT.sentence in one.spoken


@pytest.mark.parametrize(
    ("slack", "words", "tone"),
    [(1, "1 day to spare", Tone.GOOD), (0, "no day to spare", Tone.CAUTION), (-1, "1 day late", Tone.ACT)],
)
def test_that_the_slack_has_words_beside_its_colour(slack: int, words: str, tone: Tone) -> None:
    one = card(replace(ORCHARD, slack_days=slack))
    assert (one.slack, one.slack_tone) == (words, tone)


def test_that_a_piece_without_a_due_date_has_no_slack() -> None:
    one = card(replace(ORCHARD, due=None))
    assert (one.due, one.slack) == ("", "")


def test_that_the_card_is_read_out_whole() -> None:
    said = card(ORCHARD).spoken
    for part in ("Orchard at Low Water", "60 × 90 cm", "wet", "Thu 08:12", "20 Mar", "6 days to spare"):
        assert part in said
