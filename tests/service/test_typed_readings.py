"""No board at all: the room is known by what she types."""

from __future__ import annotations

from dataclasses import replace

import pytest

from studiowatch.room.typed import Felt, felt_in, is_typed, typed_reading
from studiowatch.service.commands import Refused
from studiowatch.studio.concern import Kind
from studiowatch.studio.prompts import Step
from studiowatch.studio.words import Level

from .scripted import START_MS, still
from .typed_studio import HOUR_MS, MINUTE_MS, PLAIN, Log, Studio


def test_that_a_typed_reading_is_on_disk_before_it_is_answered_and_says_that_it_was_typed() -> None:
    studio = Studio()
    studio.watch.carry_out(replace(PLAIN, felt=Felt.MOVING), START_MS, 0.0)
    (stored,) = studio.log.readings
    assert is_typed(stored)
    assert felt_in(stored) is Felt.MOVING
    assert (stored.temperature_C, stored.humidity_pct, stored.air_speed_m_s, stored.checked) == (
        20.5,
        50.0,
        None,
        False,
    )


def test_that_a_reading_that_the_disk_refuses_is_refused_and_not_dried_in() -> None:
    studio = Studio()
    studio.log.is_full = True
    with pytest.raises(Refused, match="disk is full"):
        studio.type_in()
    assert studio.snapshot().room.typed is None


@pytest.mark.parametrize(
    ("changes", "said"),
    [
        ({"temperature_C": 69.0}, "temperature is 69 °C; allowed is -10 to 50"),
        ({"temperature_C": float("nan")}, "temperature is nan"),
        ({"humidity_pct": 0.0}, "humidity is 0 %; allowed is 1 to 100"),
        ({"humidity_pct": 101.0}, "humidity is 101 %"),
        ({"time_ms": START_MS + 5 * HOUR_MS}, "ahead of the clock"),
        ({"time_ms": START_MS - 25 * HOUR_MS}, "25 h old; allowed is 0 to 24 h"),
    ],
)
def test_that_what_cannot_be_is_refused_in_one_sentence_and_nothing_is_stored(
    changes: dict[str, object], said: str
) -> None:
    studio = Studio()
    with pytest.raises(Refused, match=said.replace("+", r"\+")):
        studio.type_in(**changes)
    assert studio.log.readings == []


def test_that_a_reading_before_the_latest_is_refused() -> None:
    studio = Studio()
    studio.type_in()
    studio.wait(HOUR_MS)
    studio.type_in()
    with pytest.raises(Refused, match="30 min before the latest"):
        studio.type_in(time_ms=studio.now_ms - 30 * MINUTE_MS)


def test_that_no_reading_may_be_typed_while_a_board_reads_and_one_may_when_it_has_gone() -> None:
    studio = Studio()
    studio.hear_board()
    with pytest.raises(Refused, match="The board reads the room"):
        studio.type_in()
    studio.wait(2 * MINUTE_MS)
    assert Kind.BOARD_SILENT in studio.raised()
    studio.type_in()
    assert studio.raised() == []


def test_that_a_board_that_reads_neither_may_be_helped_out_and_still_tells_of_moving_air() -> None:
    studio = Studio()
    for _ in range(20):
        studio.hear_board(temperature_C=None, humidity_pct=None)
        studio.now_ms += 1000
    studio.type_in(felt=None)
    for _ in range(20):
        studio.now_ms += 1000
        studio.hear_board(temperature_C=None, humidity_pct=None)
    room = studio.snapshot().room
    assert (room.temperature_C, room.humidity_pct, room.air_speed_m_s) == (20.5, 50.0, 0.04)
    assert room.typed is not None


def test_that_without_any_reading_the_watch_is_blind_and_says_that_one_may_be_typed() -> None:
    studio = Studio()
    snapshot = studio.wait(MINUTE_MS)
    assert studio.raised() == [Kind.BOARD_SILENT]
    assert "type" in snapshot.sentence.advice


def test_that_a_board_that_is_plugged_in_takes_over() -> None:
    studio = Studio()
    studio.type_in()
    studio.wait(20 * MINUTE_MS)
    for _ in range(20):
        studio.now_ms += 1000
        studio.hear_board(temperature_C=21.5)
    room = studio.snapshot().room
    assert room.typed is None
    assert room.temperature_C == 21.5
    assert not [prompt for prompt in studio.snapshot().prompts if prompt.key.endswith(Step.READ_ROOM)]
    studio.wait(MINUTE_MS)
    assert studio.raised() == [Kind.BOARD_SILENT]


@pytest.mark.parametrize("felt", [None, *Felt])
@pytest.mark.parametrize("humidity_pct", [50.0, 90.0])
@pytest.mark.parametrize("age_ms", [0, 3 * HOUR_MS])
def test_that_every_verdict_says_that_air_speed_is_not_measured(
    felt: Felt | None, humidity_pct: float, age_ms: int
) -> None:
    studio = Studio(coats=())
    studio.type_in(felt=felt, humidity_pct=humidity_pct)
    studio.now_ms += age_ms
    studio.look()
    snapshot = studio.snapshot()
    said = "just now" if age_ms == 0 else "3 h ago"
    for _, check in (("now", snapshot.sentence), *snapshot.room_checks):
        assert check.detail.endswith(f"Last read {said}; air speed is not measured.")
    is_good = felt is Felt.STILL and humidity_pct == 50.0 and age_ms == 0
    assert (snapshot.sentence.level is Level.CALM) is is_good


def test_that_air_that_she_felt_move_is_a_warning_until_she_finds_it_still_and_hastens_no_film() -> None:
    studio, calm = Studio(), Studio()
    studio.type_in(felt=Felt.MOVING)
    studio.wait(MINUTE_MS)
    assert studio.raised() == [Kind.AIR_MOVING]
    assert "air speed is not measured" in studio.snapshot().sentence.detail
    calm.type_in()
    calm.wait(MINUTE_MS)
    assert studio.coat().water_g_m2 == calm.coat().water_g_m2
    studio.type_in(felt=Felt.STILL)
    studio.wait(MINUTE_MS)
    assert studio.raised() == []


def test_that_damp_air_is_told_as_it_was_when_it_was_read() -> None:
    studio = Studio()
    studio.type_in(humidity_pct=88.0)
    studio.wait(30 * MINUTE_MS)
    assert studio.raised() == [Kind.DAMP]
    assert "was at 88 % when it was read at 0.00 h" in studio.snapshot().sentence.detail


def test_that_a_log_of_typed_readings_of_the_day_before_is_still_what_the_room_is_known_by() -> None:
    evening = typed_reading(time_ms=START_MS - 12 * HOUR_MS, temperature_C=19.0, humidity_pct=55.0, felt=None)
    studio = Studio(log=Log([evening]))
    assert studio.snapshot().room.temperature_C == 19.0
    board = still(START_MS - HOUR_MS)
    studio = Studio(log=Log([evening, board]))
    assert studio.snapshot().room.typed is None
