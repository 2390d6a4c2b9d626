"""What is kept of the rack between two readings says what would be found afresh, and is found seldom."""

from __future__ import annotations

from itertools import pairwise

import pytest

from studiowatch.board.events import LineCounts, ReadingArrived
from studiowatch.service import rack_seen
from studiowatch.service.commands import CoverCoat, LayCoat
from studiowatch.service.happenings import PromptHappened
from studiowatch.service.preparation_commands import StartPreparation, TickChore
from studiowatch.service.rack import Rack
from studiowatch.service.rack_risks import coats_at_risk
from studiowatch.service.rack_views import piece_views
from studiowatch.service.rounds import ADVANCE_MS
from studiowatch.studio.chores import BUBBLES_RISE_MS, Task
from studiowatch.studio.concern import CoatAtRisk
from studiowatch.studio.preparation import CoatToLay
from studiowatch.studio.prompts import SECOND_PASS_MS

from .scripted import still
from .test_laying_day import SHEET, Studio, studio

__all__ = ["studio"]
MINUTE_S = 60


def read(studio: Studio, seconds: int) -> None:
    """Let a reading come each second, and a snapshot go out after each."""
    for _ in range(seconds):
        studio.clock.pass_s(1)
        studio.watch.take(ReadingArrived(reading=still(studio.clock.now_ms), counts=LineCounts()), studio.clock.now_s)
        studio.look()
        studio.watch.snapshot(studio.clock.now_ms)


def lay(studio: Studio, piece_key: str = "marsh") -> None:
    studio.ask(LayCoat(piece_key=piece_key, laid_ms=studio.clock.now_ms, sheet=SHEET, volume_mL=43))


def test_that_the_rack_is_looked_through_once_for_each_drying_of_the_films(
    studio: Studio, monkeypatch: pytest.MonkeyPatch
) -> None:
    lay(studio)
    looks = 0

    def counted(rack: Rack) -> list[CoatAtRisk]:
        nonlocal looks
        looks += 1
        return coats_at_risk(rack)

    monkeypatch.setattr(rack_seen, "coats_at_risk", counted)
    read(studio, MINUTE_S)
    dryings = MINUTE_S * 1000 // ADVANCE_MS
    # what is judged with the reading that dries the films is the rack before it
    assert dryings <= looks <= dryings + 1


def test_that_views_are_the_same_values_between_two_dryings(studio: Studio) -> None:
    lay(studio)
    shown = []
    for _ in range(2 * MINUTE_S):
        read(studio, 1)
        shown.append(studio.watch.snapshot(studio.clock.now_ms).pieces)
    makings = sum(one is not other for one, other in pairwise(shown))
    assert 0 < makings <= 2 * MINUTE_S * 1000 // ADVANCE_MS + 3  # and once where a minute is full


def test_that_what_was_done_and_what_dried_is_seen_at_once(studio: Studio) -> None:
    rack = studio.watch.desks.rack
    for step in range(MINUTE_S):
        if step == 7:
            lay(studio)
        if step == 23:
            coat = rack.pieces["marsh"].coats[-1]
            studio.ask(CoverCoat(coat_key=coat.key, covered_ms=studio.clock.now_ms))
        read(studio, 1)
        snapshot = studio.watch.snapshot(studio.clock.now_ms)
        afresh = piece_views(rack, studio.watch.local_date, studio.clock.now_ms)
        assert [(one.key, one.coats, one.not_yet) for one in snapshot.pieces] == [
            (one.key, one.coats, one.not_yet) for one in afresh
        ]
        assert list(studio.watch.desks.seen.facts.at_risk) == coats_at_risk(rack)
    assert studio.watch.desks.seen.facts.at_risk[0].covered


@pytest.mark.parametrize("seconds", [3, 6, 9])
def test_that_a_prompt_is_told_with_the_reading_at_which_it_falls_due(studio: Studio, seconds: int) -> None:
    laid_ms = studio.clock.now_ms
    lay(studio)
    read(studio, seconds)
    lay(studio, "kiln")  # which dries the films, so that the next drying falls between two full tens of seconds
    read(studio, SECOND_PASS_MS // 1000 + MINUTE_S)
    told = [one.time_ms for one in studio.told if isinstance(one, PromptHappened) and "bubble pass" in one.text]
    assert told == [laid_ms + SECOND_PASS_MS, laid_ms + seconds * 1000 + SECOND_PASS_MS]


def test_that_a_timer_is_told_with_the_reading_at_which_it_runs_out(studio: Studio) -> None:
    key = studio.ask(StartPreparation(coats=(CoatToLay(piece_key="marsh", sheet=SHEET),)))
    read(studio, 4)  # so that it does not run out with a drying by chance
    ticked_ms = studio.clock.now_ms
    studio.ask(TickChore(preparation_key=key, task=Task.BOTTLE))
    read(studio, BUBBLES_RISE_MS // 1000 + MINUTE_S)
    assert [one.time_ms for one in studio.told if isinstance(one, PromptHappened)] == [ticked_ms + BUBBLES_RISE_MS]
