"""What a coat to come needs: by the film model, in the air ahead of its laying, and remembered."""

from __future__ import annotations

from dataclasses import replace

import pytest

from studiowatch.coats.anchoring import Anchor, anchor
from studiowatch.coats.data_sheet import DataSheet
from studiowatch.coats.draws import Draws
from studiowatch.coats.prediction import predict
from studiowatch.coats.stages import Stage
from studiowatch.physics.air import Air
from studiowatch.service import film_waits
from studiowatch.service.air_ahead import steady
from studiowatch.service.film_waits import FilmWaits

from .planned_studio import AIR, HOUR_MS, SHEETS, piece
from .scripted import START_MS


def test_that_a_coat_to_come_needs_what_predict_says_of_it_in_the_same_air() -> None:
    # predict is another road through the model; it takes the cover from the laying on or not at all, and the waits from
    # the twentieth minute on, so they lie between its two
    sheet = SHEETS["gloss-waterborne"]
    waits = FilmWaits(air_ahead=steady(AIR)).of(
        sheet, side_m=0.4, orientation=piece().orientation, through=False, lay_ms=START_MS
    )
    assert waits is not None
    bare, covered = (
        predict(sheet, wet_um=sheet.wet_um, side_m=0.4, room=AIR, covered=cover, seed=20260301)
        for cover in (False, True)
    )
    for stage, told in ((Stage.DRY_HARD, waits.handle), (Stage.CURED, waits.cured)):
        for share in ("p10", "p50", "p90"):
            low, high = (getattr(one.stages[stage], f"{share}_s") for one in (bare, covered))
            assert low * 0.999 <= getattr(told, share) / 1000 <= high * 1.001
    low, high = (one.stages[Stage.DRY_TO_RECOAT].p90_s for one in (bare, covered))
    assert low is not None
    assert high is not None
    assert low * 0.999 <= (waits.next.p90 or 0) / 1000 <= high * 1.001


def test_that_the_next_coat_never_waits_less_than_the_sheet_says() -> None:
    # 4 h on the generic sheet; its own recoat time is the least, whatever a warm dry room would give
    warm = replace(AIR, temperature_C=29.0, humidity_pct=35.0)
    waits = FilmWaits(air_ahead=steady(warm)).of(
        SHEETS["gloss-waterborne"], side_m=0.4, orientation=piece().orientation, through=False, lay_ms=START_MS
    )
    assert waits is not None
    assert waits.next.p10 == 4 * HOUR_MS  # the model alone would have one draw in ten ready before


def test_that_what_was_asked_once_is_remembered_while_the_air_ahead_is_the_same() -> None:
    waits = FilmWaits(air_ahead=steady(AIR))
    for lay_ms in (START_MS, START_MS + 5 * HOUR_MS):
        waits.of(SHEETS["gloss-waterborne"], side_m=0.4, orientation=piece().orientation, through=False, lay_ms=lay_ms)
    assert waits.runs == 1


def test_that_another_room_has_no_sheet_tied_to_its_draws_anew(monkeypatch: pytest.MonkeyPatch) -> None:
    tied: list[str] = []

    def tie(sheet: DataSheet, draws: Draws) -> Anchor:
        tied.append(sheet.name)
        return anchor(sheet, draws)

    monkeypatch.setattr(film_waits, "anchor", tie)
    waits = FilmWaits(air_ahead=steady(AIR))
    warmer = waits.in_air(steady(replace(AIR, temperature_C=27.0)))
    cool, warm = (
        one.of(SHEETS["gloss-waterborne"], side_m=0.4, orientation=piece().orientation, through=False, lay_ms=START_MS)
        for one in (waits, warmer)
    )
    assert tied == ["gloss-waterborne"]
    assert cool is not None
    assert warm is not None
    assert cool.cured.p50 > warm.cured.p50  # type: ignore[operator]


def test_that_the_air_ahead_of_the_laying_is_what_counts() -> None:
    cold = replace(AIR, temperature_C=15.0, humidity_pct=70.0)

    def turning(from_ms: int, horizon_s: float) -> tuple[tuple[Air, float], ...]:
        return ((AIR if from_ms < START_MS + HOUR_MS else cold, horizon_s),)

    waits = FilmWaits(air_ahead=turning)
    told = [
        waits.of(SHEETS["gloss-waterborne"], side_m=0.4, orientation=piece().orientation, through=False, lay_ms=lay_ms)
        for lay_ms in (START_MS, START_MS + 2 * HOUR_MS)
    ]
    assert all(one is not None and one.cured.p50 is not None for one in told)
    assert told[0].cured.p50 < told[1].cured.p50  # type: ignore[union-attr, operator]
