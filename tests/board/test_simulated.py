import itertools
import math
from queue import Queue

import psychrolib
import pytest

from studiowatch.board.events import BoardEvent, BoardNamed, PortOpened, ReadingArrived
from studiowatch.board.intake import Intake
from studiowatch.board.port import PortGone
from studiowatch.board.reader import Reader
from studiowatch.board.simulated import SIMULATED_NAME, SimulatedPort, SteppedClock, past_readings
from studiowatch.board.simulated_room import SimulatedRoom

MIDNIGHT_MS = 1_772_409_600_000  # 2026-03-02T00:00:00Z
HOUR_MS = 3_600_000
DAY_MS = 24 * HOUR_MS
WITHIN_S = 20.0


@pytest.fixture
def room() -> SimulatedRoom:
    return SimulatedRoom(seed=4)


@pytest.fixture
def clock() -> SteppedClock:
    return SteppedClock(MIDNIGHT_MS)


@pytest.fixture
def port(room: SimulatedRoom, clock: SteppedClock) -> SimulatedPort:
    return SimulatedPort(clock=clock, room=room, advance=clock.advance)


def readings(port: SimulatedPort, clock: SteppedClock, seconds: int, intake: Intake | None = None) -> list:
    intake = intake or Intake()
    events = [event for _ in range(seconds) for event in intake.feed(port.read_some(1.0), clock.utc_ms())]
    return [event.reading for event in events if isinstance(event, ReadingArrived)]


def test_that_the_bytes_are_checked_lines_with_a_hello_and_a_sequence(port: SimulatedPort, clock: SteppedClock) -> None:
    intake = Intake()
    events = [event for _ in range(200) for event in intake.feed(port.read_some(1.0), clock.utc_ms())]
    assert isinstance(events[0], BoardNamed)
    assert intake.counts.faulty == intake.counts.lost == intake.counts.resets == 0
    assert intake.counts.good == 200 + 1 + 3  # data lines, the hello at boot, and one every 60 lines


def test_that_the_board_says_hello_when_it_is_asked(port: SimulatedPort) -> None:
    port.read_some(1.0)
    port.write(b"?")
    assert port.read_some(0.0).startswith(b"$H v=1 ")


def test_that_a_moment_follows_from_the_seed_alone() -> None:
    times = range(MIDNIGHT_MS, MIDNIGHT_MS + DAY_MS, 977_000)
    one, same, other = SimulatedRoom(seed=4), SimulatedRoom(seed=4), SimulatedRoom(seed=5)
    backwards = [same.room_at(time_ms) for time_ms in reversed(times)][::-1]
    assert [one.room_at(time_ms) for time_ms in times] == backwards
    assert [other.room_at(time_ms) for time_ms in times] != backwards


def test_that_a_past_is_what_the_board_would_have_sent(
    room: SimulatedRoom, port: SimulatedPort, clock: SteppedClock
) -> None:
    sent = readings(port, clock, 120)
    past = list(past_readings(room, sent[0].time_ms, sent[-1].time_ms + 1, 1.0))
    assert past == sent


@pytest.mark.parametrize("seed", range(5))
def test_that_two_weeks_stay_what_a_heated_room_can_be(seed: int) -> None:
    # a living room in use; ranges: common practice, no source
    for moment in past_readings(SimulatedRoom(seed=seed), MIDNIGHT_MS, MIDNIGHT_MS + 14 * DAY_MS, 600):
        assert 15 < moment.temperature_C < 26
        assert 20 < moment.humidity_pct < 80
        assert 0 <= moment.air_speed_m_s < 0.7
        assert not moment.faults


def test_that_warming_alone_dries_the_air_as_psychrometry_says(monkeypatch: pytest.MonkeyPatch) -> None:
    # without weather and doors the vapour pressure is constant, so the humidity ratio at every hour must be the same
    monkeypatch.setattr("studiowatch.board.simulated_room.WEATHER_VAPOUR", ())
    room = SimulatedRoom(seed=4)
    monkeypatch.setattr(room, "_spells", lambda _time_s, _kind: iter(()))
    psychrolib.SetUnitSystem(psychrolib.SI)
    moments = [room.room_at(MIDNIGHT_MS + hour * HOUR_MS) for hour in range(24)]
    assert max(m.temperature_C for m in moments) - min(m.temperature_C for m in moments) > 1
    ratios = [psychrolib.GetHumRatioFromRelHum(m.temperature_C, m.humidity_pct / 100, 101_325) for m in moments]
    # psychrolib's saturation pressure (Hyland & Wexler 1983) and ours are each within 0.1 % of IAPWS-95 at 0 to 50 °C
    assert max(ratios) / min(ratios) - 1 < 0.002


def test_that_a_fan_blows_between_a_quarter_and_half_a_metre_a_second_in_gusts(
    port: SimulatedPort, clock: SteppedClock
) -> None:
    clock.advance(3 * HOUR_MS)
    port.open(SIMULATED_NAME)
    still = [reading.air_speed_m_s for reading in readings(port, clock, 60)]
    port.fan(on=True)
    blown = [reading.air_speed_m_s for reading in readings(port, clock, 120)][10:]
    port.fan(on=False)
    after = [reading.air_speed_m_s for reading in readings(port, clock, 60)]
    assert max(still) < 0.1
    assert max(after) < 0.1
    assert 0.25 <= sum(blown) / len(blown) <= 0.45
    assert max(blown) - min(blown) > 0.1


def test_that_the_room_has_fan_spells_and_passers_by_of_its_own() -> None:
    speeds = [
        reading.air_speed_m_s for reading in past_readings(SimulatedRoom(seed=4), MIDNIGHT_MS, MIDNIGHT_MS + DAY_MS, 5)
    ]
    runs = [len(list(run)) for moving, run in itertools.groupby(speed > 0.15 for speed in speeds) if moving]
    assert any(run * 5 > 300 for run in runs)
    assert any(run * 5 < 20 for run in runs)


def test_that_the_humidity_can_be_set_and_let_go(port: SimulatedPort, clock: SteppedClock) -> None:
    before = readings(port, clock, 5)[-1].humidity_pct
    port.set_humidity(85.0)
    assert readings(port, clock, 180)[-1].humidity_pct == pytest.approx(85.0, abs=0.5)
    port.set_humidity(None)
    assert readings(port, clock, 5)[-1].humidity_pct == pytest.approx(before, abs=2.0)


@pytest.mark.parametrize("humidity_pct", [-1.0, 101.0, math.nan])
def test_that_an_impossible_humidity_is_refused(port: SimulatedPort, humidity_pct: float) -> None:
    with pytest.raises(ValueError, match="0 to 100 %RH"):
        port.set_humidity(humidity_pct)


def test_that_a_pulled_board_is_gone_and_starts_again_when_it_is_back(port: SimulatedPort, clock: SteppedClock) -> None:
    intake = Intake()
    assert readings(port, clock, 30, intake)
    port.unplug()
    for use in (lambda: port.read_some(1.0), lambda: port.write(b"?"), lambda: port.open(SIMULATED_NAME)):
        with pytest.raises(PortGone, match="plug it in"):
            use()
    port.replug()
    port.open(SIMULATED_NAME)
    assert readings(port, clock, 30, intake)
    assert intake.counts.resets == 1
    assert intake.counts.lost == 0


def test_that_a_paced_board_sends_what_its_clock_says_is_due(room: SimulatedRoom) -> None:
    clock = SteppedClock(MIDNIGHT_MS)
    port = SimulatedPort(clock=clock, room=room)
    assert port.read_some(0.0).count(b"$D") == 1
    assert port.read_some(0.0) == b""
    clock.advance(999)
    assert port.read_some(0.0) == b""
    clock.advance(3001)
    assert port.read_some(0.0).count(b"$D") == 4


def test_that_a_waiting_read_can_be_cancelled(room: SimulatedRoom, clock: SteppedClock) -> None:
    port = SimulatedPort(clock=clock, room=room)
    port.read_some(0.0)
    port.cancel()
    assert port.read_some(WITHIN_S) == b""


def test_that_the_real_reader_reads_it(port: SimulatedPort, clock: SteppedClock) -> None:
    events: Queue[BoardEvent] = Queue()
    reader = Reader(clock=clock, wanted=SIMULATED_NAME, open_port=port.open, list_ports=list)
    reader.start(events.put)
    try:
        first = [events.get(timeout=WITHIN_S) for _ in range(3)]
    finally:
        reader.stop()
    assert [type(event) for event in first] == [PortOpened, BoardNamed, ReadingArrived]


@pytest.mark.parametrize("step_s", [0.0, -1.0])
def test_that_a_past_without_a_step_is_refused(room: SimulatedRoom, step_s: float) -> None:
    with pytest.raises(ValueError, match="above 0 s"):
        list(past_readings(room, MIDNIGHT_MS, MIDNIGHT_MS + 1000, step_s))


def test_that_a_demonstration_opens_in_a_calm_room_at_every_hour_of_a_fortnight() -> None:
    opened_windy = 0
    for half_hour in range(14 * 48):
        now_ms = MIDNIGHT_MS + half_hour * 1_800_000
        plain = SimulatedRoom(seed=7)
        calm = SimulatedRoom(seed=7, calm_ms=(now_ms - 3_600_000, now_ms + 3_600_000))
        opened_windy += plain.room_at(now_ms).air_speed_m_s > 0.22
        for minute in range(-60, 61, 5):
            # a passer-by makes at most 0.15 m/s on top of still air
            assert calm.room_at(now_ms + minute * 60_000).air_speed_m_s < 0.22
    assert opened_windy > 0  # without it, it would not always have been calm
