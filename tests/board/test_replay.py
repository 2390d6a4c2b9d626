from queue import Queue

import pytest

from studiowatch.board.events import BoardEvent, LineCounts, PortLost, PortOpened, ReadingArrived
from studiowatch.board.replay import ReplaySource
from studiowatch.room.readings import Reading

NINE_MS = 1_772_442_000_000
WITHIN_S = 20.0
READINGS = tuple(Reading(time_ms=NINE_MS + 1000 * second, temperature_C=20.0 + second) for second in range(100))


def test_that_the_log_happens_again_with_its_own_times() -> None:
    events: list[BoardEvent] = []
    source = ReplaySource(READINGS, "room.csv")
    source.start(events.append)
    assert source.wait(WITHIN_S)
    source.stop()
    assert events[0] == PortOpened(time_ms=NINE_MS, port="room.csv")
    arrived = [event for event in events if isinstance(event, ReadingArrived)]
    assert tuple(event.reading for event in arrived) == READINGS
    assert arrived[-1].counts == LineCounts(good=100)
    assert events[-1] == PortLost(
        time_ms=READINGS[-1].time_ms, port="room.csv", reason="The log room.csv is at its end."
    )


def test_that_an_empty_log_begins_and_ends() -> None:
    events: list[BoardEvent] = []
    source = ReplaySource((), "room.csv")
    source.start(events.append)
    assert source.wait(WITHIN_S)
    assert [type(event) for event in events] == [PortOpened, PortLost]


def test_that_a_paced_replay_can_be_stopped_in_between() -> None:
    events: Queue[BoardEvent] = Queue()
    source = ReplaySource(READINGS, "room.csv", speed=1e-6)
    source.start(events.put)
    assert isinstance(events.get(timeout=WITHIN_S), PortOpened)
    assert isinstance(events.get(timeout=WITHIN_S), ReadingArrived)
    assert not source.wait(0.0)
    source.stop()
    assert events.empty()


def test_that_a_paced_replay_delivers_all() -> None:
    events: list[BoardEvent] = []
    source = ReplaySource(READINGS, "room.csv", speed=1e6)
    source.start(events.append)
    assert source.wait(WITHIN_S)
    assert len(events) == len(READINGS) + 2


def test_that_what_the_listener_raises_comes_out_where_the_replay_is_waited_for() -> None:
    def deliver(_: BoardEvent) -> None:
        raise LookupError("planted")

    source = ReplaySource(READINGS, "room.csv")
    source.start(deliver)
    with pytest.raises(LookupError, match="planted"):
        source.wait(WITHIN_S)


@pytest.mark.parametrize("speed", [0.0, -1.0])
def test_that_a_speed_that_is_not_above_zero_is_refused(speed: float) -> None:
    with pytest.raises(ValueError, match="above 0"):
        ReplaySource(READINGS, "room.csv", speed=speed)


def test_that_a_source_that_was_never_started_may_be_stopped() -> None:
    ReplaySource(READINGS, "room.csv").stop()
