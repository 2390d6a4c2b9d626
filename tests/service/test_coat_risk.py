"""The present risk of drying coats, and of the next one, by the curves of the review."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import pytest

from studiowatch.physics.air import Air
from studiowatch.service.piece_view import PieceView
from studiowatch.service.rack import Rack
from studiowatch.service.rack_views import piece_views
from studiowatch.service.replaying import MemoryRecords, NoLog
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.studio.pieces import Coat, Outcome, Piece
from studiowatch.studio.review_causes import Cause
from studiowatch.studio.words import Level

from .rooms import START_MS

MINUTE_MS = 60_000
HOUR_MS = 60 * MINUTE_MS
GOOD = Air(temperature_C=20.0, humidity_pct=52.0, air_speed_m_s=0.05)
DAMP = replace(GOOD, humidity_pct=90.0)


def coat(key: str, hours: float | None, sheet: str = "gloss-waterborne", **given: object) -> Coat:
    laid_ms = None if hours is None else START_MS + round(hours * HOUR_MS)
    return Coat(key=key, sheet=sheet, laid_ms=laid_ms, **{"volume_mL": 12.8, **given})  # type: ignore[arg-type]


def after(hours: float, *coats: Coat, air: Air = GOOD) -> tuple[Rack, PieceView]:
    """Return the rack, and its one piece as it is shown, so long after the start."""
    piece = Piece(key="p", title="P", width_cm=40, height_cm=40, coats=coats)
    rack = Rack(shelf=SheetShelf.open(), records=MemoryRecords(held={"p": piece}), log=NoLog())
    rack.open(START_MS)
    for minute in range(1, round(60 * hours) + 1):
        rack.advance(air, START_MS + minute * MINUTE_MS)
    return rack, shown(rack, hours)


def shown(rack: Rack, hours: float) -> PieceView:
    (view,) = piece_views(rack, lambda _: date(2026, 3, 2), START_MS + round(hours * HOUR_MS))
    return view


def test_that_a_coat_in_a_good_room_has_little_risk_and_says_so() -> None:
    _, view = after(1.0, coat("g", 0.0))
    risk = view.coats[0].risk
    assert risk is not None
    assert risk.chance < 0.1
    assert risk.sentence == "Nothing so far that clouds a coat."


def test_that_damp_air_raises_the_risk_while_it_lasts_and_is_named() -> None:
    early = after(0.5, coat("g", 0.0), air=DAMP)[1].coats[0].risk
    late = after(3.0, coat("g", 0.0), air=DAMP)[1].coats[0].risk
    assert early is not None
    assert late is not None
    assert early.chance < late.chance
    assert late.cause is Cause.DAMP_AIR
    assert "air too damp" in late.sentence


def test_that_a_coat_over_one_that_was_not_ready_is_at_risk_from_the_first_minutes() -> None:
    _, view = after(1.7, coat("i", 0.0, "isolation-waterborne"), coat("g", 1.5))
    risk = view.coats[1].risk
    assert risk is not None
    assert risk.cause is Cause.SEALED_IN_WATER
    assert risk.chance > 0.5
    assert "g/m²" in risk.sentence


def test_that_paint_and_a_coat_whose_outcome_is_known_have_no_risk() -> None:
    _, view = after(0.5, coat("a", 0.0, "paint-brushed"))
    assert view.coats[0].risk is None
    _, view = after(0.5, coat("g", 0.0, outcome=Outcome.CLEAR))
    assert view.coats[0].risk is None


def test_that_the_next_coat_is_warned_of_in_damp_air_and_not_in_good_air() -> None:
    coats = coat("i", 0.0, "isolation-waterborne"), coat("g", None)
    rack, view = after(30.0, *coats)
    assert view.not_yet is None
    assert view.may_cloud is None
    for minute in range(5):
        rack.advance(DAMP, START_MS + 30 * HOUR_MS + minute * MINUTE_MS)
    warned = shown(rack, 30.1).may_cloud
    assert warned is not None
    assert warned.level is Level.ACT
    assert "air too damp" in warned.detail


def test_that_one_more_coat_with_matting_agent_than_may_be_is_warned_of_before_it_is_laid() -> None:
    def next_satin(below: int) -> PieceView:
        laid = [coat(f"s{place}", -40.0 + 15.0 * place, "satin-waterborne") for place in range(below)]
        return after(30.0, coat("i", -60.0, "isolation-waterborne"), *laid, coat("n", None, "satin-waterborne"))[1]

    assert next_satin(1).may_cloud is None
    warned = next_satin(2).may_cloud
    assert warned is not None
    assert "matting agent" in warned.detail
    assert warned.advice == "Gloss first, one satin or matt coat last."


@pytest.mark.parametrize("times", [1, 5])
def test_that_a_risk_is_weighed_once_however_often_it_is_shown(monkeypatch: pytest.MonkeyPatch, times: int) -> None:
    from studiowatch.service import coat_risk  # noqa: PLC0415

    weighed: list[float] = []
    own = coat_risk.present_risk

    def counting(curves: object, severities: object) -> object:
        weighed.append(1.0)
        return own(curves, severities)  # type: ignore[arg-type]

    monkeypatch.setattr(coat_risk, "present_risk", counting)
    rack, _ = after(0.2, coat("g", 0.0))
    weighed.clear()
    for _ in range(times):
        shown(rack, 0.2)
    assert weighed == []
    for minute in range(4):
        rack.advance(GOOD, START_MS + (13 + minute) * MINUTE_MS)
        for _ in range(times):
            shown(rack, 0.3)
    assert len(weighed) == 2  # every two minutes of the film's time
