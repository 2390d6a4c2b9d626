from collections.abc import Mapping

from hypothesis import given
from hypothesis import strategies as st

from studiowatch.board.events import BoardNamed, LineCounts, LineRefused, ReadingArrived
from studiowatch.board.intake import Intake

NOW_MS = 1_772_442_000_000


def accepted(vectors: Mapping) -> list[bytes]:
    return [vector["line"].encode() for vector in vectors["accepted"]]


def test_that_the_vectors_become_a_named_board_and_counted_readings(vectors: Mapping) -> None:
    intake = Intake()
    events = intake.feed(b"".join(accepted(vectors)), NOW_MS)
    assert [type(event) for event in events] == [BoardNamed, *[ReadingArrived] * 4]
    assert events[0] == BoardNamed(
        time_ms=NOW_MS,
        board_id="8DF9E785",
        sensor="sht4x",
        sensor_serial="CAFE0042",
        firmware="rack-ref/0.1",
        boots=1,
    )
    assert events[-1].counts == intake.counts == LineCounts(good=5, lost=39)


def test_that_a_refused_line_is_told_with_its_bytes(vectors: Mapping) -> None:
    intake = Intake()
    line = accepted(vectors)[1].replace(b"21.40", b"99.99")
    (event,) = intake.feed(line, NOW_MS)
    assert isinstance(event, LineRefused)
    assert "t=99.99" in event.quoted
    assert event.counts == LineCounts(faulty=1)


def test_that_a_repeated_hello_is_told_once_and_a_changed_one_again(vectors: Mapping) -> None:
    intake = Intake()
    hello = accepted(vectors)[0]
    assert len(intake.feed(hello, NOW_MS)) == 1
    assert intake.feed(hello, NOW_MS) == []
    intake.reopened()
    assert len(intake.feed(hello, NOW_MS)) == 1
    assert intake.counts.good == 3


def test_that_units_and_counts_outlive_a_reopening(vectors: Mapping) -> None:
    intake = Intake()
    intake.feed(b"".join(accepted(vectors)[:2]) + b"$D n=1 u=11", NOW_MS)
    intake.reopened()
    (event,) = intake.feed(b"94 t=21.40*0000\r\n" + accepted(vectors)[2], NOW_MS)
    assert event.counts == LineCounts(good=3, lost=2)


@given(st.binary(max_size=400))
def test_that_any_bytes_are_counted(data: bytes) -> None:
    intake = Intake()
    intake.feed(b"\n", NOW_MS)
    events = intake.feed(data, NOW_MS)
    assert intake.counts.good + intake.counts.faulty == len(events)
