"""What was sealed in, and a blush: the words, and that they come from the film itself."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import UTC, date, datetime

import pytest

from studiowatch.physics.air import Air
from studiowatch.service.piece_view import PieceView
from studiowatch.service.rack import Rack
from studiowatch.service.rack_views import piece_views
from studiowatch.service.replaying import MemoryRecords
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.studio.pieces import Coat, Piece
from studiowatch.ui.models.sealing import blush_words, sealed_words, verdict_below

from .scenes import BLUSHED, EARLY, NOW_MS, ORCHARD, NoLog, coat

MINUTE_MS, HOUR_MS = 60_000, 3_600_000
ROOM = Air(temperature_C=20.5, humidity_pct=50.0, air_speed_m_s=0.05)
NEAR_DEW = replace(ROOM, temperature_C=15.0, humidity_pct=95.0)  # its dew point is 14.2 °C, within 3 K of the air


def seen(coats: Sequence[Coat], until_ms: int, air: Air = ROOM) -> PieceView:
    """Return a piece 40 cm square as the window sees it after its coats dried in one air."""
    records = MemoryRecords(held={"p": Piece(key="p", title="Gate", width_cm=40, height_cm=40)})
    rack = Rack(shelf=SheetShelf.open(), records=records, log=NoLog())
    rack.open(NOW_MS)
    rack.pieces["p"] = replace(rack.pieces["p"], coats=tuple(coats))
    for time_ms in range(NOW_MS, until_ms + 1, 5 * MINUTE_MS):
        rack.advance(air, time_ms)
    return piece_views(rack, _day, until_ms)[0]


def _day(time_ms: int) -> date:
    return datetime.fromtimestamp(time_ms / 1000, UTC).date()


def laid(key: str, sheet: str, after_ms: int) -> Coat:
    return Coat(key=key, sheet=sheet, laid_ms=NOW_MS + after_ms)


def test_that_a_coat_over_a_wet_one_seals_in_less_than_was_laid_and_lets_it_go() -> None:
    sheet = SheetShelf.open().get("gloss-waterborne")
    laid_g_m2 = sheet.wet_um * (1.0 - sheet.volume_solids)  # 1 µm on 1 m² is 1 mL, and 1 mL of water 1 g
    before = seen([laid("a", sheet.name, 0)], NOW_MS + HOUR_MS)
    early = [laid("a", sheet.name, 0), laid("b", sheet.name, HOUR_MS)]
    fresh, later = (seen(early, NOW_MS + hours * HOUR_MS) for hours in (1, 40))
    assert 0.0 < before.would_seal_g_m2 < laid_g_m2
    top = fresh.coats[1]
    assert top.sealed_in_g_m2 == pytest.approx(before.would_seal_g_m2, rel=0.02)
    assert sealed_words(top).endswith(" left")
    assert later.coats[1].sealed_in_g_m2 == top.sealed_in_g_m2
    assert later.coats[1].trapped_g_m2 < top.trapped_g_m2
    assert fresh.coats[0].sealed_in_g_m2 == 0.0


@pytest.mark.parametrize(
    ("below", "fluid"),
    [("gloss-waterborne", "water"), ("gloss-solventborne", "solvent"), ("paint-poured", "water")],
)
def test_that_what_is_sealed_in_is_named(below: str, fluid: str) -> None:
    early = [laid("a", below, 0), laid("b", "gloss-solventborne", HOUR_MS)]
    assert seen(early[:1], NOW_MS + HOUR_MS).would_seal_fluid == fluid
    piece = seen(early, NOW_MS + HOUR_MS)
    assert piece.coats[1].sealed_fluid == fluid
    both = {"water": "water and solvent", "solvent": "solvent"}
    assert piece.would_seal_fluid == both[fluid]


def test_that_a_solvent_borne_coat_near_the_dew_point_may_have_blushed_from_its_laying() -> None:
    near = seen([laid("a", "gloss-solventborne", 0)], NOW_MS + HOUR_MS // 2, NEAR_DEW).coats[0]
    assert near.blush_from_ms is not None
    assert NOW_MS <= near.blush_from_ms <= NOW_MS + 5 * MINUTE_MS
    assert 20.0 <= near.blush_min <= 30.0
    dry = seen([laid("a", "gloss-solventborne", 0)], NOW_MS + HOUR_MS // 2).coats[0]
    assert (dry.blush_from_ms, dry.blush_min, dry.milky, dry.solvent) == (None, 0.0, False, True)


def test_that_weighing_is_advised_only_for_a_coat_that_was_not_measured() -> None:
    guessed = seen([laid("a", "gloss-waterborne", 0)], NOW_MS + HOUR_MS).coats[0]
    measured = seen([replace(laid("a", "gloss-waterborne", 0), volume_mL=16.0)], NOW_MS + HOUR_MS).coats[0]
    assert guessed.weighing.startswith("Weigh the bottle: it would narrow the range of dry to recoat from ")
    assert measured.weighing == ""
    early = [laid("a", "gloss-waterborne", 0), laid("b", "gloss-waterborne", HOUR_MS)]
    lower, upper = seen(early, NOW_MS + 2 * HOUR_MS).coats
    assert lower.weighing == ""
    assert upper.weighing != ""


def test_that_each_solvent_borne_sheet_says_what_it_gives_off_here() -> None:
    solvents = {one.sheet: one for one in seen([], NOW_MS).solvents}
    assert set(solvents) == {"gloss-solventborne", "satin-solventborne"}
    # 0.16 m² at 75 µm is 12 mL, 60 % of it solvent: 7.2 mL, of white spirit of about 0.78 kg/L 5.6 g
    assert solvents["gloss-solventborne"].solvent_g == pytest.approx(5.6, abs=0.1)
    assert solvents["gloss-solventborne"].over_h == 1.0


def test_that_nothing_is_said_where_nothing_was_sealed_in() -> None:
    assert sealed_words(coat("c", "gloss")) == ""
    gone = coat("c", "gloss", sealed_in_g_m2=3.3, trapped_g_m2=0.01)
    assert sealed_words(gone) == "3.3 g/m² of water sealed in when laid, none left"
    solvent = coat("c", "gloss", sealed_in_g_m2=2.0, trapped_g_m2=1.0, sealed_fluid="water and solvent")
    assert sealed_words(solvent) == "2.0 g/m² of water and solvent sealed in when laid, 1.0 left"


def test_that_what_a_bare_support_took_up_is_said() -> None:
    assert sealed_words(coat("c", "gloss", soaked_g_m2=9.51)) == (
        "about 9.5 g/m² of water taken up by the bare support when laid"
    )
    assert "9.5 g/m² of solvent" in sealed_words(coat("c", "gloss", soaked_g_m2=9.51, solvent=True))


def test_that_a_blush_says_since_when() -> None:
    assert blush_words(BLUSHED.coats[1], NOW_MS, UTC) == "may have blushed from 14:10"
    assert blush_words(ORCHARD.coats[2], NOW_MS, UTC) == ""


def test_that_the_verdict_says_what_a_coat_now_would_seal_in() -> None:
    verdict = verdict_below(EARLY, solvent=False)
    assert verdict is not None
    assert verdict.detail.endswith("A coat now would seal in 41.6 g/m² of water.")
    assert (verdict.headline, verdict.advice) == (EARLY.not_yet.headline, EARLY.not_yet.advice)
    assert verdict_below(replace(EARLY, would_seal_g_m2=0.0), solvent=False) == EARLY.not_yet
    assert verdict_below(replace(EARLY, not_yet=None), solvent=False) is None


def test_that_a_solvent_borne_coat_is_held_back_by_what_holds_it_back() -> None:
    through = replace(EARLY.not_yet, detail="Ready from Tue 14:00.")
    dry = replace(EARLY, not_yet=None, not_yet_solvent=through, would_seal_g_m2=0.0)
    assert verdict_below(dry, solvent=True) == through
    assert verdict_below(dry, solvent=False) is None
    assert verdict_below(replace(EARLY, not_yet_solvent=None, would_seal_g_m2=0.0), solvent=True) == EARLY.not_yet
