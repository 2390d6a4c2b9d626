"""What is foreseen for wet coats: raised once, becoming what it foretold, and gone when the room turns."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, date, datetime

import pytest

from studiowatch.coats.stages import Stage
from studiowatch.service.happenings import Happening, StageHappened, WarningHappened
from studiowatch.service.replaying import replay
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.studio.concern import Kind
from studiowatch.studio.pieces import Coat, Piece
from studiowatch.studio.warnings import WarningState
from studiowatch.studio.words import Level

from .rooms import START_MS, room

HOUR_S = 3600
MINUTE_MS = 60_000
EARLY_H = 0.1  # h, of a laying whose coat is clear before the room is too damp


def happened(tmp_path: object, hours: float, laid_h: float = 0.75, **course: Callable[[int], float]) -> list[Happening]:
    coat = Coat(key="c", sheet="gloss-waterborne", laid_ms=START_MS + round(laid_h * HOUR_S * 1000), wet_um=80.0)
    piece = Piece(key="p", title="Heron", width_cm=40, height_cm=40, coats=(coat,))
    told: list[Happening] = []

    def clock_text(time_ms: int) -> str:
        return datetime.fromtimestamp(time_ms / 1000, UTC).strftime("%H:%M")

    def local_date(time_ms: int) -> date:
        return datetime.fromtimestamp(time_ms / 1000, UTC).date()

    replay(
        room(round(hours * HOUR_S), step_s=20, **course),
        [piece],
        shelf=SheetShelf.open(tmp_path),  # type: ignore[arg-type]
        tell=told.append,
        clock_text=clock_text,
        local_date=local_date,
    )
    return told


def watched(
    tmp_path: object, hours: float, laid_h: float = 0.75, **course: Callable[[int], float]
) -> list[WarningHappened]:
    told = happened(tmp_path, hours, laid_h, **course)
    return [one for one in told if isinstance(one, WarningHappened)]


def test_that_damp_is_foretold_once_and_becomes_what_it_foretold(tmp_path: object) -> None:
    told = watched(tmp_path, 2.5, humidity_pct=lambda second: 55.0 + 12.0 * second / HOUR_S)
    damp = [one for one in told if one.warning.kind is Kind.DAMP]
    assert {one.warning.key for one in told} == {damp[0].warning.key}  # one cause, one warning
    first = damp[0]
    assert first.warning.level is Level.CAUTION
    assert first.warning.state is WarningState.RAISED
    # the built-in sheet allows 75 %
    passes_ms = START_MS + round((75.0 - 55.0) / 12.0 * HOUR_S * 1000)
    assert first.warning.expected_ms == pytest.approx(passes_ms, abs=10 * 60_000)
    assert first.warning.sentence.headline.startswith("Humidity will pass the limit in about ")
    assert first.document()["expected"]
    acted = next(one for one in damp if one.warning.level is Level.ACT)
    assert acted.time_ms == pytest.approx(passes_ms, abs=3 * 60_000)
    assert acted.is_new
    assert acted.warning.expected_ms is None
    assert "expected" not in acted.document()


def test_that_cold_is_foretold_for_a_film_that_must_still_form(tmp_path: object) -> None:
    told = watched(tmp_path, 1.6, temperature_C=lambda second: 19.0 - 5.0 * second / HOUR_S)
    cold = [one for one in told if one.warning.kind is Kind.TOO_COLD]
    assert cold[0].warning.level is Level.CAUTION
    assert cold[0].warning.expected_ms is not None
    assert "too cold in about" in cold[0].warning.sentence.headline


def test_that_nothing_is_foretold_for_a_coat_that_will_be_past_harm_but_for_one_that_will_not(tmp_path: object) -> None:
    """The room passes 75 % in the 200th minute, which its last hour foretells from the 140th on."""
    told = {
        laid_h: happened(tmp_path, 3.4, laid_h=laid_h, humidity_pct=lambda second: 55.0 + 6.0 * second / HOUR_S)
        for laid_h in (EARLY_H, 2.0)
    }
    (clear_ms,) = (one.time_ms for one in told[EARLY_H] if isinstance(one, StageHappened) and one.stage is Stage.CLEAR)
    assert 145 * MINUTE_MS < clear_ms - START_MS < 195 * MINUTE_MS  # it was open when it would have been foretold
    damp = {
        laid_h: [one for one in every if isinstance(one, WarningHappened) and one.warning.kind is Kind.DAMP]
        for laid_h, every in told.items()
    }
    assert [one.warning.expected_ms for one in damp[EARLY_H]] == [None, None]  # it is damp at 70 %, and over when clear
    assert damp[2.0][0].warning.expected_ms is not None


def test_that_a_room_that_turns_takes_it_back(tmp_path: object) -> None:
    told = watched(tmp_path, 2.2, humidity_pct=lambda second: 58.0 + min(12.0 * second / HOUR_S, 10.0), laid_h=0.75)
    damp = [one for one in told if one.warning.kind is Kind.DAMP]
    assert damp[0].warning.expected_ms is not None
    assert damp[-1].warning.state is WarningState.CLEARED
