from collections.abc import Mapping

from hypothesis import given
from hypothesis import strategies as st

from studiowatch.board.events import BoardNamed, BoardTrouble, LineCounts, LineRefused, ReadingArrived
from studiowatch.board.intake import SETTLE_MS, Intake
from studiowatch.board.wire import Kind, encode

NOW_MS = 1_772_442_000_000


def accepted(vectors: Mapping) -> list[bytes]:
    return [vector["line"].encode() for vector in vectors["accepted"]]


def test_that_the_vectors_become_a_named_board_and_counted_readings(vectors: Mapping) -> None:
    intake = Intake()
    events = intake.feed(b"".join(accepted(vectors)), NOW_MS)
    assert [type(event) for event in events] == [BoardNamed, *[ReadingArrived] * 3, BoardTrouble]
    assert events[0] == BoardNamed(
        time_ms=NOW_MS,
        board_id="8DF9E785",
        sensor="sht4x",
        sensor_serial="CAFE0042",
        firmware="rack-ref/0.1",
        boots=1,
    )
    assert events[-1].counts == intake.counts == LineCounts(good=5, lost=39, troubles=1)


def test_that_a_trouble_of_the_board_is_told_in_its_own_words(vectors: Mapping) -> None:
    (event,) = Intake().feed(accepted(vectors)[4], NOW_MS)
    assert event == BoardTrouble(
        time_ms=NOW_MS, code="bus", message="no_pull_up", counts=LineCounts(good=1, troubles=1)
    )


def test_that_a_trouble_without_words_is_told_all_the_same() -> None:
    (event,) = Intake().feed(encode(Kind.ERROR, {"n": "0"}), NOW_MS)
    assert (event.code, event.message) == ("", "")


def test_that_a_refused_line_is_told_with_its_bytes(vectors: Mapping) -> None:
    intake = Intake()
    intake.feed(accepted(vectors)[0], NOW_MS)
    (event,) = intake.feed(accepted(vectors)[1].replace(b"21.40", b"99.99"), NOW_MS)
    assert isinstance(event, LineRefused)
    assert "t=99.99" in event.quoted
    assert event.counts == LineCounts(good=1, faulty=1)


def test_that_the_restart_of_a_board_by_its_opening_is_no_fault(vectors: Mapping) -> None:
    intake = Intake()
    hello, first, *_ = accepted(vectors)
    cut_off = b"$D n=41 u=410"
    for portion in (b"03 t=21.4*00", cut_off, b"\x00\xf8boot loader 8\r\n", b"\xff\n" + hello):
        events = intake.feed(portion, NOW_MS)
    assert [type(event) for event in events] == [BoardNamed]
    assert intake.counts == LineCounts(good=1)
    intake.feed(first + b"boot loader 8\r\n", NOW_MS)
    assert intake.counts == LineCounts(good=2, faulty=1)


def test_that_a_port_that_only_sends_noise_is_counted_once_a_board_would_have_settled() -> None:
    intake = Intake()
    intake.feed(b"\n", NOW_MS)
    assert intake.feed(b"noise\n", NOW_MS + SETTLE_MS - 1) == []
    assert intake.feed(b"noise\n", NOW_MS + SETTLE_MS)[0].counts == LineCounts(faulty=1)
    intake.reopened()
    assert intake.feed(b"noise\nnoise\n", NOW_MS + 3 * SETTLE_MS) == []


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
    events = intake.feed(data, NOW_MS + SETTLE_MS)
    assert intake.counts.good + intake.counts.faulty == len(events)
