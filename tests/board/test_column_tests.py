"""The breath and fan tests against mixed air as an independent library of moist air computes it."""

import random
from collections.abc import Callable, Sequence
from itertools import product

import psychrolib
import pytest

from studiowatch.board.column_tests import (
    ACT_MS,
    QUIET_MS,
    ColumnTest,
    Kind,
    Stage,
    Verdict,
    advance,
    begin,
    judge,
    settle,
)
from studiowatch.board.guess import guess
from studiowatch.board.loose_lines import Row, read_loose_line
from studiowatch.board.mapping import Choice, Outcome, Sureness
from studiowatch.room.readings import Channel

PRESSURE_PA = 101_325
BREATH_C, BREATH_PCT = 34.0, 99.0  # physiology handbooks, from memory
STEP_MS = 1000
HUMID, WARM = (Channel.HUMIDITY,), (Channel.TEMPERATURE,)
MOVING = (Channel.AIR_SPEED, Channel.AIR_SIGNAL)

Columns = dict[str, float | None]


@pytest.fixture(autouse=True)
def _metric() -> None:
    psychrolib.SetUnitSystem(psychrolib.SI)


def mixed(t_C: float, h_pct: float, share: float) -> tuple[float, float, float]:
    """Return temperature, °C, humidity, %RH, and dew point, °C, of room air with a share of breath."""
    room = psychrolib.GetHumRatioFromRelHum(t_C, h_pct / 100, PRESSURE_PA)
    breath = psychrolib.GetHumRatioFromRelHum(BREATH_C, BREATH_PCT / 100, PRESSURE_PA)
    mixed_C = t_C + share * (BREATH_C - t_C)
    most = psychrolib.GetHumRatioFromRelHum(mixed_C, 1.0, PRESSURE_PA)
    ratio = min(room + share * (breath - room), most)
    return (
        mixed_C,
        100 * psychrolib.GetRelHumFromHumRatio(mixed_C, ratio, PRESSURE_PA),
        psychrolib.GetTDewPointFromHumRatio(mixed_C, ratio, PRESSURE_PA),
    )


def played(kind: Kind, columns: Callable[[float], Columns]) -> ColumnTest:
    """Play a test; `columns` gives a row for how strongly she acts, 0 to 1, growing with a time constant of 5 s."""
    test = begin(kind, 0)
    for time_ms in range(0, QUIET_MS + ACT_MS, STEP_MS):
        acting_s = max(time_ms - QUIET_MS, 0) / 1000
        test = advance(test, columns(1 - 2 ** (-acting_s / 3.5)), time_ms)
    return advance(test, columns(1.0), QUIET_MS + ACT_MS)


def breathed(
    t_C: float, h_pct: float, share: float, *, unit: str, digits: int = 1, more: Sequence[str] = ()
) -> Verdict:
    noise = random.Random(7)

    def columns(strength: float) -> Columns:
        warm_C, humid_pct, dew_C = mixed(t_C, h_pct, share * strength)
        shown = {"°C": warm_C, "°F": warm_C * 1.8 + 32, "K": warm_C + 273.15}[unit]
        row: Columns = {
            "1": round(shown + noise.gauss(0, 0.02), digits),
            "2": round(humid_pct + noise.gauss(0, 0.1), digits),
            "3": round(596 + noise.gauss(0, 2)),
            "dew": round(dew_C * 1.8 + 32, digits),
            "warm": round(warm_C + 1.5, digits),
        }
        return {key: value for key, value in row.items() if key in {"1", "2", "3", *more}}

    return judge(played(Kind.BREATH, columns))


@pytest.mark.parametrize("unit", ["°C", "°F", "K"])
@pytest.mark.parametrize(("t_C", "h_pct"), [(16.0, 40.0), (20.0, 55.0), (21.5, 47.0), (25.0, 35.0)])
def test_that_breath_tells_humidity_and_temperature_in_usual_rooms(t_C: float, h_pct: float, unit: str) -> None:
    assert breathed(t_C, h_pct, 0.25, unit=unit).found == {"2": HUMID, "1": WARM}


@pytest.mark.parametrize("unit", ["°C", "°F", "K"])
def test_that_breath_never_tells_wrongly_in_any_room(unit: str) -> None:
    rooms = product(
        (-6.0, 2.0, 5.0, 8.3, 15.0, 21.0, 27.0, 31.0, 33.0), (15, 30, 47, 68, 85, 97), (0.02, 0.1, 0.25, 0.45)
    )
    verdicts = [breathed(t_C, h_pct, share, unit=unit).found for t_C, h_pct, share in rooms]
    assert all({"2": HUMID, "1": WARM}.items() >= found.items() for found in verdicts)
    assert any(verdicts)


@pytest.mark.parametrize("unit", ["°C", "°F"])
def test_that_a_dew_point_is_never_taken_for_humidity_or_temperature(unit: str) -> None:
    for t_C, h_pct in product((8.0, 15.0, 21.0, 27.0), (20, 47, 80)):
        found = breathed(t_C, h_pct, 0.25, unit=unit, more=["dew"]).found
        assert "dew" not in found


def test_that_two_thermometers_leave_the_temperature_open() -> None:
    assert breathed(21.0, 47.0, 0.25, unit="°C", more=["warm"]).found == {"2": HUMID}


def test_that_whole_degrees_that_hardly_move_leave_the_temperature_open() -> None:
    assert breathed(21.0, 35.0, 0.1, unit="°C", digits=0).found == {"2": HUMID}


def test_that_a_thermometer_alone_is_never_taken_for_humidity() -> None:
    for t_C, share in product((6.0, 10.0, 15.0, 21.0, 27.0), (0.1, 0.3, 0.45)):
        warmed = played(Kind.BREATH, lambda s, t=t_C, f=share: {"1": round(mixed(t, 50, f * s)[0] * 1.8 + 32, 1)})
        assert judge(warmed).found == {}


def test_that_breath_declines_when_nothing_moved() -> None:
    verdict = breathed(21.0, 47.0, 0.0, unit="°C")
    assert verdict.found == {}
    assert "breathe on the sensor from nearer" in verdict.why


def test_that_breath_declines_when_everything_jumped() -> None:
    verdict = judge(played(Kind.BREATH, lambda s: {str(at): 20.0 * at + 30 * s for at in (1, 2, 3)}))
    assert verdict.found == {}
    assert "both rose" in verdict.why


def test_that_too_few_lines_are_said() -> None:
    test = begin(Kind.BREATH, 0)
    for time_ms in range(0, QUIET_MS + ACT_MS + 1, 12_000):
        test = advance(test, {"1": 21.0, "2": 47.0}, time_ms)
    assert judge(test).found == {}
    assert "Too few lines" in judge(test).why


def fanned(shift_mV: float, *, drag_C: float = 0.0, drag_pct: float = 0.0) -> Verdict:
    noise = random.Random(11)

    def columns(strength: float) -> Columns:
        return {
            "1": round(21.4 + drag_C * strength + noise.gauss(0, 0.02), 2),
            "2": round(47 + drag_pct * strength + noise.gauss(0, 0.2), 1),
            "3": round(596 + shift_mV * strength + noise.gauss(0, 3)),
            "4": None,
        }

    return judge(played(Kind.FAN, columns))


@pytest.mark.parametrize("shift_mV", [-150.0, 150.0, 400.0])
def test_that_the_fan_tells_the_air_signal_whichever_way_it_goes(shift_mV: float) -> None:
    assert fanned(shift_mV).found == {"3": MOVING}


def test_that_the_fan_declines_when_nothing_or_everything_moved() -> None:
    assert fanned(0.0).found == {}
    assert fanned(150.0, drag_C=-2.0, drag_pct=15.0).found == {}


def test_that_she_is_told_what_to_do_in_each_stage() -> None:
    for kind in Kind:
        test = begin(kind, 0)
        stages = [advance(test, {}, time_ms) for time_ms in (0, QUIET_MS, QUIET_MS + ACT_MS)]
        assert [one.stage for one in stages] == [Stage.QUIET, Stage.ACT, Stage.DONE]
        assert [one.told.endswith(".") for one in stages] == [True, True, False]


def rows(template: str) -> list[Row]:
    lines = [read_loose_line((template % (21.4 + at % 3 / 10, 47.0 + at % 5 / 10)).encode()) for at in range(10)]
    return [line for line in lines if isinstance(line, Row)]


def test_that_a_verdict_settles_humidity_and_leaves_the_unit_of_the_temperature_to_her() -> None:
    mapping = guess(rows("%.1f,%.1f,596"))
    after = settle(mapping, breathed(21.4, 47.0, 0.25, unit="°C"))
    assert after.column("2").choice == Choice(Channel.HUMIDITY, "%")
    assert after.column("2").sureness is Sureness.INFERRED
    assert after.column("1").outcome is Outcome.ASKED
    assert {choice.channel for choice in after.column("1").candidates} == {Channel.TEMPERATURE}
    assert {"°C", "°F"} <= {choice.unit for choice in after.column("1").candidates}


def test_that_a_verdict_never_overrules_her_or_the_sketch() -> None:
    verdict = breathed(21.4, 47.0, 0.25, unit="°C")
    by_hand = guess(rows("%.1f,%.1f,596")).set_by_hand("2", None)
    assert settle(by_hand, verdict).column("2") == by_hand.column("2")
    elsewhere = guess(rows("%.1f,%.1f,596")).set_by_hand("3", None).set_by_hand("1", Choice(Channel.HUMIDITY, "%"))
    assert settle(elsewhere, verdict).chosen == elsewhere.chosen
