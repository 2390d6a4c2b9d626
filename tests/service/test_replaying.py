"""The whole watch over made-up logs: what is said, when, and about which piece."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import UTC, datetime

import pytest

from studiowatch.coats.stages import Stage
from studiowatch.room.readings import Reading
from studiowatch.service.happenings import Happening, PromptHappened, StageHappened, WarningHappened
from studiowatch.service.replaying import replay
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.service.watchkeeping import Watchkeeping
from studiowatch.studio.pieces import Coat, Piece
from studiowatch.studio.warnings import WarningState
from studiowatch.studio.words import Level

from .rooms import START_MS, room

MINUTE_S = 60
HOUR_S = 3600


def piece(title: str = "Kiln Light", *, laid_s: float = 60, covered_s: float | None = None) -> Piece:
    coat = Coat(
        key=f"{title} gloss",
        sheet="gloss-waterborne",
        laid_ms=START_MS + round(laid_s * 1000),
        volume_mL=13,
        covered_from_ms=None if covered_s is None else START_MS + round(covered_s * 1000),
    )
    following = Coat(key=f"{title} satin", sheet="satin-waterborne")
    return Piece(key=title, title=title, width_cm=40, height_cm=40, coats=(coat, following))


def watch(readings: Sequence[Reading], *pieces: Piece) -> tuple[list[Happening], Watchkeeping]:
    happened: list[Happening] = []
    kept = replay(
        readings,
        pieces,
        shelf=SheetShelf.open(),
        tell=happened.append,
        clock_text=lambda ms: datetime.fromtimestamp(ms / 1000, UTC).strftime("%H:%M"),
        local_date=lambda ms: datetime.fromtimestamp(ms / 1000, UTC).date(),
    )
    return happened, kept


def warnings(happened: Sequence[Happening], kind: str) -> list[WarningHappened]:
    return [one for one in happened if isinstance(one, WarningHappened) and one.warning.kind == kind]


def since_start_s(time_ms: int) -> float:
    return (time_ms - START_MS) / 1000


def test_that_a_fan_over_a_wet_coat_is_said_within_three_seconds_and_sounds_within_a_minute() -> None:
    on_s, off_s = 600, 900
    happened, _ = watch(room(1200, fan=lambda s: on_s <= s < off_s), piece())
    said = warnings(happened, "air-moving")
    first, last = said[0], said[-1]
    assert 0 <= since_start_s(first.time_ms) - on_s < 3
    assert first.warning.level is Level.ACT
    assert abs(since_start_s(first.warning.began_ms) - on_s) <= 1
    assert first.warning.piece_titles == ("Kiln Light",)
    sounding = next(one for one in said if one.warning.sounds)
    assert 44 <= since_start_s(sounding.time_ms) - on_s <= 60  # 45 readings, one a second, span 44 s
    assert last.warning.state is WarningState.CLEARED
    assert 0 < since_start_s(last.time_ms) - off_s <= 60
    assert len({one.warning.key for one in said}) == 1


def test_that_the_same_fan_over_nothing_wet_or_a_covered_coat_does_not_sound() -> None:
    fan_room = room(1200, fan=lambda s: 600 <= s < 900)
    covered, _ = watch(fan_room, piece(covered_s=120))
    assert {one.warning.level for one in warnings(covered, "air-moving")} == {Level.CAUTION}
    assert not any(one.warning.sounds for one in warnings(covered, "air-moving"))
    dry, _ = watch(fan_room, piece(laid_s=-48 * HOUR_S))
    assert warnings(dry, "air-moving") == []


def test_that_someone_walking_past_does_not_warn() -> None:
    happened, _ = watch(room(1200, fan=lambda s: s in {600, 700, 800}), piece())
    assert warnings(happened, "air-moving") == []


def test_that_a_silent_board_is_a_warning_while_a_coat_is_wet() -> None:
    readings = [reading for reading in room(1200) if not 600 <= since_start_s(reading.time_ms) < 700]
    happened, _ = watch(readings, piece())
    raised, cleared = warnings(happened, "board-silent")
    assert 9 <= since_start_s(raised.time_ms) - 599 <= 11
    assert raised.warning.level is Level.ACT
    assert cleared.warning.state is WarningState.CLEARED
    assert since_start_s(cleared.time_ms) == pytest.approx(700, abs=1)


def test_that_damp_and_cold_are_said_once_each_for_as_long_as_they_stand() -> None:
    damp, _ = watch(room(1800, humidity_pct=lambda s: 50 + 40 * min(max(s - 300, 0) / 300, 1)), piece())
    said = warnings(damp, "damp")
    assert len({one.warning.key for one in said}) == 1
    assert [one.warning.level for one in said][-1] is Level.ACT
    cold, _ = watch(room(1800, temperature_C=lambda s: 20 - 12 * min(max(s - 300, 0) / 900, 1)), piece())
    said = warnings(cold, "too-cold")
    assert len({one.warning.key for one in said}) == 1
    assert [one.warning.level for one in said][-1] is Level.ACT


def test_that_stages_come_in_order_and_recoat_within_common_practice() -> None:
    happened, kept = watch(room(14 * HOUR_S, step_s=MINUTE_S), piece())
    stages = [one for one in happened if isinstance(one, StageHappened)]
    order = [Stage.SET_TO_TOUCH, Stage.DRY_TO_TOUCH, Stage.CLEAR, Stage.DRY_TO_RECOAT]
    reached = {one.stage: since_start_s(one.time_ms) - 60 for one in stages}
    assert sorted(order, key=lambda stage: reached[stage]) == order
    assert reached[Stage.DRY_TO_TOUCH] < 2 * HOUR_S  # touch-dry well under two hours: common practice, no source
    assert reached[Stage.DRY_TO_RECOAT] < 24 * HOUR_S  # a 24 h wait is safe in an ordinary room: common practice
    assert not kept.snapshot(START_MS + 14 * HOUR_S * 1000).pieces[0].coats[0].milky


def test_that_prompts_come_when_due_and_only_once() -> None:
    happened, _ = watch(room(14 * HOUR_S, step_s=10), piece())
    prompts = [one for one in happened if isinstance(one, PromptHappened)]
    texts = [one.text for one in prompts]
    assert len(texts) == len(set(texts))
    assert 900 <= since_start_s(prompts[0].time_ms) - 60 <= 920  # second pass at about 15 minutes: common practice
    assert any("satin" in text for text in texts)


def test_that_two_wet_pieces_share_one_warning() -> None:
    happened, _ = watch(room(900, fan=lambda s: s >= 600), piece(), piece("Low Tide", laid_s=300))
    said = warnings(happened, "air-moving")
    assert len({one.warning.key for one in said}) == 1
    assert set(said[0].warning.piece_titles) == {"Kiln Light", "Low Tide"}


def test_that_a_coat_is_ready_at_the_upper_bound_and_never_before_its_sheet_says() -> None:
    shelf = SheetShelf.open()
    for hours in (1, 4, 8, 12):
        _, kept = watch(room(hours * HOUR_S, step_s=MINUTE_S), piece())
        coat = kept.snapshot(START_MS + hours * HOUR_S * 1000).pieces[0].coats[0]
        recoat = coat.stage(Stage.DRY_TO_RECOAT)
        assert recoat is not None
        told_ms = recoat.time_ms if recoat.reached else recoat.p90_ms
        assert told_ms is not None
        assert told_ms - coat.laid_ms >= shelf.get("gloss-waterborne").recoat_h * 3_600_000
        assert recoat.reached == (told_ms <= START_MS + hours * HOUR_S * 1000)
