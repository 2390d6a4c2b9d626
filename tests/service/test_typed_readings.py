"""No board at all: the room is known by what she types, and the watch goes on from reading to reading."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from datetime import date

import pytest

from studiowatch.board.events import LineCounts, ReadingArrived
from studiowatch.coats.stages import Stage, Surface
from studiowatch.room.readings import Reading
from studiowatch.room.typed import Felt, felt_in, is_typed, typed_reading
from studiowatch.service.commands import LayCoat, RecordLook, Refused, TickPrompt, TypeReading
from studiowatch.service.happenings import Happening, PromptHappened, WarningHappened
from studiowatch.service.replaying import MemoryRecords, NoLog
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.service.snapshot import CoatView, Snapshot
from studiowatch.service.watchkeeping import Watchkeeping
from studiowatch.store.trouble import StoreTrouble
from studiowatch.studio.concern import Kind
from studiowatch.studio.pieces import Coat, Finding, Piece
from studiowatch.studio.prompts import Step
from studiowatch.studio.warnings import WarningState
from studiowatch.studio.words import Level

from .scripted import START_MS, still

MINUTE_MS = 60_000
HOUR_MS = 60 * MINUTE_MS
PLAIN = TypeReading(time_ms=START_MS, temperature_C=20.5, humidity_pct=50.0, felt=Felt.STILL)


class Log(NoLog):
    """A log in memory; it may refuse."""

    def __init__(self, readings: Sequence[Reading] = ()) -> None:
        self.readings = list(readings)
        self.is_full = False

    def append(self, readings: Sequence[Reading]) -> None:
        if self.is_full:
            raise StoreTrouble("The disk is full.")
        self.readings += readings

    def between(self, start_ms: int, end_ms: int) -> Sequence[Reading]:
        found = [reading for reading in self.readings if start_ms <= reading.time_ms < end_ms]
        return sorted(found, key=lambda reading: reading.time_ms)

    minute_means = between


@dataclass
class Studio:
    """A watch without a board, and the clock that it is kept by."""

    coats: tuple[Coat, ...] = (Coat(key="g", sheet="gloss-waterborne", laid_ms=START_MS, volume_mL=43),)
    log: Log = field(default_factory=Log)
    now_ms: int = START_MS
    told: list[Happening] = field(default_factory=list)
    watch: Watchkeeping = field(init=False)

    def __post_init__(self) -> None:
        self.open()

    def open(self) -> None:
        piece = Piece(key="p", title="Low Tide", width_cm=60, height_cm=90, coats=self.coats)
        self.watch = Watchkeeping(
            log=self.log,
            records=MemoryRecords(held={"p": piece}),
            shelf=SheetShelf.open(),
            clock_text=lambda time_ms: f"{(time_ms - START_MS) / HOUR_MS:.2f} h",
            local_date=lambda time_ms: date.fromordinal(time_ms // 86_400_000 + 1),
            began_ms=self.now_ms,
            tell=self.told.append,
        )
        self.watch.open()

    def wait(self, span_ms: int, *, step_ms: int = 20_000) -> Snapshot:
        end_ms = self.now_ms + span_ms
        while self.now_ms < end_ms:
            self.now_ms = min(self.now_ms + step_ms, end_ms)
            self.look()
        return self.snapshot()

    def look(self) -> None:
        self.watch.look(self.now_ms, self.now_ms / 1000)
        self.watch.speak()

    def type_in(self, command: TypeReading = PLAIN, **changes: object) -> Snapshot:
        command = replace(command, **{"time_ms": self.now_ms, **changes})
        self.watch.carry_out(command, self.now_ms, self.now_ms / 1000)
        self.look()
        return self.snapshot()

    def hear_board(self, **changes: object) -> None:
        event = ReadingArrived(reading=still(self.now_ms, **changes), counts=LineCounts(good=1))
        self.watch.take(event, self.now_ms / 1000)
        self.watch.speak()

    def snapshot(self) -> Snapshot:
        return self.watch.snapshot(self.now_ms)

    def coat(self) -> CoatView:
        return self.snapshot().pieces[0].coats[0]

    def raised(self) -> list[Kind]:
        return [Kind(one.kind) for one in self.snapshot().warnings if one.state is not WarningState.CLEARED]

    def prompted(self) -> list[str]:
        return [one.text for one in self.told if isinstance(one, PromptHappened) and "hygrometer" in one.text]


def span_ms(coat: CoatView, stage: Stage) -> tuple[int, int]:
    time = coat.stage(stage)
    assert time is not None
    assert time.p10_ms is not None
    assert time.p90_ms is not None
    return time.p10_ms, time.p90_ms


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


def test_that_a_film_dries_on_in_typed_air_until_the_next_reading_and_nobody_calls_a_board_silent() -> None:
    studio = Studio()
    first = studio.type_in().pieces[0].coats[0]
    after = studio.wait(30 * MINUTE_MS).pieces[0].coats[0]
    assert after.water_g_m2 < 0.9 * first.water_g_m2
    studio.wait(7 * HOUR_MS, step_ms=MINUTE_MS)
    assert studio.coat().surface is Surface.DRY
    assert studio.coat().unlogged_ms == 0
    assert not any(isinstance(one, WarningHappened) and one.warning.kind is Kind.BOARD_SILENT for one in studio.told)


def test_that_without_any_reading_the_watch_is_blind_and_says_that_one_may_be_typed() -> None:
    studio = Studio()
    snapshot = studio.wait(MINUTE_MS)
    assert studio.raised() == [Kind.BOARD_SILENT]
    assert "type" in snapshot.sentence.advice


def test_that_ranges_widen_with_the_age_of_the_reading_and_a_new_one_takes_back_what_is_to_come() -> None:
    studio = Studio(coats=(Coat(key="g", sheet="gloss-waterborne", laid_ms=START_MS + HOUR_MS, volume_mL=43),))
    studio.type_in()
    studio.wait(HOUR_MS + MINUTE_MS)
    old_low, old_high = span_ms(studio.coat(), Stage.TACK_FREE)
    fresh = Studio(coats=studio.coats, now_ms=START_MS + HOUR_MS)
    fresh.type_in()
    fresh.wait(MINUTE_MS)
    low, high = span_ms(fresh.coat(), Stage.TACK_FREE)
    assert old_low < low
    assert old_high > high
    studio.type_in()
    studio.wait(2 * MINUTE_MS)
    again_low, again_high = span_ms(studio.coat(), Stage.TACK_FREE)
    assert again_high - again_low < old_high - old_low


def test_that_a_restart_sees_the_film_that_was_there() -> None:
    studio = Studio()
    studio.type_in()
    studio.wait(50 * MINUTE_MS)
    studio.type_in(temperature_C=18.0, humidity_pct=62.0)
    studio.wait(40 * MINUTE_MS)
    before = studio.coat()
    studio.open()
    studio.look()
    after = studio.coat()
    assert after.water_g_m2 == pytest.approx(before.water_g_m2, rel=1e-3)
    assert after.unlogged_ms == 0
    assert studio.snapshot().room.temperature_C == 18.0
    for stage in (Stage.SET_TO_TOUCH, Stage.TACK_FREE):
        assert after.stage(stage).time_ms == pytest.approx(before.stage(stage).time_ms, abs=2 * MINUTE_MS)


def test_that_a_closed_program_took_nothing_from_a_film_that_dries_in_typed_air() -> None:
    studio = Studio()
    studio.type_in()
    studio.now_ms += 6 * HOUR_MS
    studio.open()
    assert studio.coat().surface is Surface.DRY
    assert studio.coat().unlogged_ms == 0


def test_that_a_computer_that_slept_took_nothing_either() -> None:
    studio = Studio()
    studio.type_in()
    studio.wait(MINUTE_MS)
    studio.now_ms += 6 * HOUR_MS
    studio.look()
    assert studio.coat().surface is Surface.DRY
    assert studio.coat().unlogged_ms == 0


def test_that_a_reading_typed_late_dries_the_coat_anew_from_when_it_was_read() -> None:
    late = Studio()
    late.now_ms += 40 * MINUTE_MS
    late.look()
    late.type_in(time_ms=START_MS)
    prompt = Studio()
    prompt.type_in()
    prompt.wait(40 * MINUTE_MS)
    assert late.coat().unlogged_ms == 0
    assert late.coat().water_g_m2 == pytest.approx(prompt.coat().water_g_m2, rel=2e-2)


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


def test_that_she_is_asked_once_to_read_again_after_an_hour_while_wet_and_a_reading_answers_it() -> None:
    studio = Studio(coats=(Coat(key="g", sheet="gloss-waterborne", laid_ms=START_MS, wet_um=500.0),))
    studio.type_in(humidity_pct=60.0)
    studio.wait(59 * MINUTE_MS)
    assert studio.prompted() == []
    studio.wait(30 * MINUTE_MS)
    assert len(studio.prompted()) == 1
    (view,) = [prompt for prompt in studio.snapshot().prompts if prompt.key.endswith(Step.READ_ROOM)]
    assert view.overdue
    assert view.due_ms == START_MS + HOUR_MS
    studio.type_in(humidity_pct=60.0)
    (view,) = [prompt for prompt in studio.snapshot().prompts if prompt.key.endswith(Step.READ_ROOM)]
    assert not view.overdue
    assert studio.coat().surface is Surface.WET
    assert view.due_ms == studio.now_ms + HOUR_MS


def test_that_a_prompt_that_she_ticked_is_quiet_until_the_next_reading() -> None:
    studio = Studio(coats=(Coat(key="g", sheet="gloss-waterborne", laid_ms=START_MS, wet_um=500.0),))
    studio.type_in(humidity_pct=60.0)
    studio.wait(61 * MINUTE_MS)
    (view,) = [prompt for prompt in studio.snapshot().prompts if prompt.key.endswith(Step.READ_ROOM)]
    studio.watch.carry_out(TickPrompt(prompt_key=view.key), studio.now_ms, studio.now_ms / 1000)
    studio.wait(5 * MINUTE_MS)
    assert not [prompt for prompt in studio.snapshot().prompts if prompt.key.endswith(Step.READ_ROOM)]
    assert len(studio.prompted()) == 1


def test_that_a_dry_coat_is_read_for_every_four_hours_and_one_that_may_be_recoated_no_more() -> None:
    studio = Studio()
    studio.type_in()
    studio.wait(5 * HOUR_MS, step_ms=MINUTE_MS)
    assert studio.coat().surface is Surface.DRY
    studio.type_in()
    (view,) = [prompt for prompt in studio.snapshot().prompts if prompt.key.endswith(Step.READ_ROOM)]
    assert view.due_ms == studio.now_ms + 4 * HOUR_MS
    studio.wait(60 * HOUR_MS, step_ms=10 * MINUTE_MS)
    assert studio.coat().stage(Stage.DRY_TO_RECOAT).reached
    assert not [prompt for prompt in studio.snapshot().prompts if prompt.key.endswith(Step.READ_ROOM)]


def test_that_a_reading_missed_for_two_hours_over_a_wet_coat_is_a_caution_without_sound_until_the_next() -> None:
    studio = Studio(coats=(Coat(key="g", sheet="gloss-waterborne", laid_ms=START_MS, wet_um=500.0),))
    studio.type_in(humidity_pct=60.0)
    snapshot = studio.wait(2 * HOUR_MS + MINUTE_MS)
    assert studio.coat().surface is Surface.WET
    assert Kind.READING_OLD in studio.raised()  # so thick a coat dries too fast on top, too
    (warning,) = [one for one in snapshot.warnings if one.kind == Kind.READING_OLD]
    assert (warning.level, warning.sound) == (Level.CAUTION, False)
    assert warning.sentence.headline == "The room was not read since 0.00 h"
    assert "Low Tide" in warning.sentence.detail
    studio.type_in(humidity_pct=60.0)
    assert Kind.READING_OLD not in studio.raised()


def test_that_nothing_is_asked_of_a_rack_on_which_nothing_dries() -> None:
    studio = Studio(coats=())
    studio.type_in()
    snapshot = studio.wait(10 * HOUR_MS, step_ms=10 * MINUTE_MS)
    assert snapshot.prompts == ()
    assert snapshot.warnings == ()
    assert snapshot.sentence.headline == "Read the room again before you lay a coat"


def test_that_a_coat_laid_on_a_reading_begins_in_its_air() -> None:
    studio = Studio(coats=())
    studio.type_in()
    studio.wait(20 * MINUTE_MS)
    order = LayCoat(piece_key="p", laid_ms=studio.now_ms, sheet="gloss-waterborne")
    studio.watch.carry_out(order, studio.now_ms, studio.now_ms / 1000)
    studio.wait(20 * MINUTE_MS)
    coat = studio.coat()
    assert coat.film_C is not None
    assert coat.unlogged_ms == 0
    assert coat.stage(Stage.DRY_TO_RECOAT).p90_ms is not None


def test_that_a_log_of_typed_readings_of_the_day_before_is_still_what_the_room_is_known_by() -> None:
    evening = typed_reading(time_ms=START_MS - 12 * HOUR_MS, temperature_C=19.0, humidity_pct=55.0, felt=None)
    studio = Studio(log=Log([evening]))
    assert studio.snapshot().room.temperature_C == 19.0
    board = still(START_MS - HOUR_MS)
    studio = Studio(log=Log([evening, board]))
    assert studio.snapshot().room.typed is None


def test_that_a_touch_test_between_two_readings_is_learnt_from_and_dries_the_coat_anew() -> None:
    studio = Studio()
    studio.type_in()
    studio.wait(4 * HOUR_MS, step_ms=MINUTE_MS)
    before = studio.coat()
    # still tacky after four hours: no draw of this sheet in this room holds that, so others must be dried
    studio.watch.carry_out(
        RecordLook(coat_key="g", time_ms=studio.now_ms, finding=Finding.TACKY), studio.now_ms, studio.now_ms / 1000
    )
    studio.wait(2 * MINUTE_MS)
    after = studio.coat()
    assert studio.snapshot().own_fault == ""
    assert "tacky 4.0 h after laying" in after.doubt
    assert after.stage(Stage.DRY_TO_RECOAT).p90_ms > before.stage(Stage.DRY_TO_RECOAT).p90_ms
    assert after.unlogged_ms == 0
