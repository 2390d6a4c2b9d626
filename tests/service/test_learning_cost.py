"""What many draws cost while coats dry: looks ahead are taken when the air asks for them, and never all at once."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

import pytest

from studiowatch.physics.air import Air
from studiowatch.service import coat_run
from studiowatch.service.rack import AHEAD_AT_ONCE, Rack
from studiowatch.service.replaying import MemoryRecords, NoLog
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.studio.pieces import Coat, Piece

from .rooms import START_MS

MINUTE_MS = 60_000
CALM = Air(temperature_C=20.0, humidity_pct=50.0, air_speed_m_s=0.04)


@pytest.fixture
def looks(monkeypatch: pytest.MonkeyPatch) -> list[float]:
    """Return the ages, s, of the films that were looked ahead for, as they are."""
    seen: list[float] = []
    own = coat_run.outlook

    def counting(film: coat_run.Film, air: Air, **named: object) -> object:
        seen.append(film.elapsed_s)
        return own(film, air, **named)

    monkeypatch.setattr(coat_run, "outlook", counting)
    return seen


def rack(pieces: int) -> Rack:
    held = {}
    for at in range(pieces):
        coat = Coat(key=f"c{at}", sheet="gloss-waterborne", laid_ms=START_MS)
        held[f"p{at}"] = Piece(key=f"p{at}", title=f"P{at}", width_cm=30, height_cm=30, place=at, coats=(coat,))
    opened = Rack(shelf=SheetShelf.open(), records=MemoryRecords(held=held), log=NoLog())
    opened.open(START_MS)
    return opened


def minutes(opened: Rack, airs: Sequence[Air]) -> None:
    for at, air in enumerate(airs, start=1):
        opened.advance(air, START_MS + at * MINUTE_MS)


def test_that_steady_air_is_looked_ahead_for_every_ten_minutes(looks: list[float]) -> None:
    minutes(rack(1), [CALM] * 31)
    assert looks == [60.0, 660.0, 1260.0, 1860.0]


@pytest.mark.parametrize("change", [{"temperature_C": 20.3}, {"humidity_pct": 52.0}, {"air_speed_m_s": 0.3}])
def test_that_a_change_of_the_air_is_looked_ahead_for_within_a_minute(
    looks: list[float], change: dict[str, float]
) -> None:
    minutes(rack(1), [CALM] * 4 + [replace(CALM, **change)] * 2)
    assert looks == [60.0, 300.0]


def test_that_a_full_rack_is_looked_ahead_for_a_few_coats_at_a_time_and_none_is_left_out(looks: list[float]) -> None:
    many = 3 * AHEAD_AT_ONCE
    full = rack(many)
    for second in (5, 10, 15):
        before = len(looks)
        full.advance(CALM, START_MS + second * 1000)
        assert len(looks) - before == AHEAD_AT_ONCE
    assert all(run.ahead for run in full.runs.values())
