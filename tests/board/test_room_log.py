import csv
import io
from datetime import UTC
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studiowatch.board.room_log import LogForm, RoomLog, RoomLogFaults, open_room_log, read_room_log
from studiowatch.room.readings import Reading
from studiowatch.speech.words import speak_by

HEADER = "time,temperature_C,humidity_pct,air_speed_m_s"
NINE_MS = 1_772_442_000_000  # 2026-03-02T09:00:00Z: date -u -d 2026-03-02T09:00:00Z +%s


def read(*rows: str, header: str = HEADER, columns: dict[str, str] | None = None) -> RoomLog:
    return read_room_log(
        io.StringIO("\r\n".join([header, *rows, ""]), newline=""), "room.csv", LogForm(columns=columns or {})
    )


def faults(*rows: str, header: str = HEADER, columns: dict[str, str] | None = None) -> tuple[str, ...]:
    with pytest.raises(RoomLogFaults) as told:
        read(*rows, header=header, columns=columns)
    return told.value.sentences


def test_that_rows_become_readings() -> None:
    log = read(
        "2026-03-02T09:00:00Z,20.5,48,0.05,18.5,101325,12,1",
        "2026-03-02T10:01:00+01:00,-2.25,,,,,,0",
        "2026-03-02T09:02:00.5Z,20.7,47.5,0.3,,,,",
        header=f"{HEADER},surface_C,pressure_Pa,particles_per_m3_5um,cover",
    )
    assert log.readings() == (
        Reading(
            time_ms=NINE_MS,
            temperature_C=20.5,
            humidity_pct=48.0,
            air_speed_m_s=0.05,
            surface_C=18.5,
            pressure_Pa=101325.0,
            particles_per_m3_5um=12.0,
        ),
        Reading(time_ms=NINE_MS + 60_000, temperature_C=-2.25),
        Reading(time_ms=NINE_MS + 120_500, temperature_C=20.7, humidity_pct=47.5, air_speed_m_s=0.3),
    )
    assert [row.cover for row in log.rows] == [True, False, None]
    assert log.notes == ()


def test_that_unix_seconds_are_taken() -> None:
    log = read("1772442000,20,48,0", "1772442001.5,20,48,0", header=HEADER.replace("time,", "time_unix,"))
    assert [reading.time_ms for reading in log.readings()] == [NINE_MS, NINE_MS + 1500]


def test_that_cells_may_be_quoted_and_columns_in_any_order() -> None:
    log = read('48,"20.5","2026-03-02T09:00:00Z",0', header='humidity_pct,temperature_C,"time",air_speed_m_s')
    assert log.readings()[0] == Reading(time_ms=NINE_MS, temperature_C=20.5, humidity_pct=48.0, air_speed_m_s=0.0)


def test_that_other_headers_are_mapped() -> None:
    log = read(
        "2026-03-02T09:00:00Z,20.5,48,0",
        header="When,Temp,RH,air_speed_m_s",
        columns={"When": "time", "Temp": "temperature_C", "RH": "humidity_pct"},
    )
    assert log.readings()[0].temperature_C == 20.5


def test_that_a_mapped_column_that_is_not_there_is_told() -> None:
    (sentence,) = faults("2026-03-02T09:00:00Z,20,48,0", columns={"Temp": "temperature_C"})
    assert sentence.startswith(
        'room.csv, line 1: there is no column "Temp" to map; the columns are time, temperature_C'
    )


def test_that_a_column_that_is_not_used_is_noted() -> None:
    log = read("2026-03-02T09:00:00Z,20,48,0,7", header=f"{HEADER},battery")
    assert log.notes == ("room.csv: these columns are not used: battery.",)


@pytest.mark.parametrize(
    ("row", "clause"),
    [
        ("{cell},20,48,0,", 'time "{cut}" is no ISO 8601 time'),
        ("2026-03-02T09:00:00Z,{cell},48,0,", 'temperature_C "{cut}" is no number'),
        ("2026-03-02T09:00:00Z,20,48,0,{cell}", 'cover "{cut}" must be 1'),
    ],
)
def test_that_a_cell_without_end_is_cut_where_it_is_quoted(row: str, clause: str) -> None:
    cells = {"cell": "x" * 100_000, "cut": "x" * 59 + "…"}
    (sentence,) = faults(row.format(**cells), header=f"{HEADER},cover")
    assert sentence.startswith(f"room.csv, line 2: {clause.format(**cells)}")
    (sentence,) = faults(row.format(cell="x" * 60), header=f"{HEADER},cover")
    assert "x" * 60 in sentence


def test_that_a_time_with_much_between_its_parts_is_cut_where_it_is_quoted() -> None:
    form = LogForm(time_form="%Y-%m-%d %H:%M", zone=UTC)
    times = ["2026-03-02 09:01", f"2026-03-02{' ' * 1000}09:00"]
    with pytest.raises(RoomLogFaults) as told:
        read_room_log(io.StringIO("\r\n".join([HEADER, *(f"{time},20,48,0" for time in times)])), "room.csv", form)
    (sentence,) = told.value.sentences
    assert sentence == f"room.csv, line 3: time 2026-03-02{' ' * 49}… is before that in line 2; sort the rows by time."


def test_that_of_many_columns_the_first_are_named_and_each_is_cut() -> None:
    names = ["n" * 61, *(f"more{number}" for number in range(999))]
    log = read(f"2026-03-02T09:00:00Z,20,48,0{',' * 1000}", header=f"{HEADER},{','.join(names)}")
    first = ", ".join(["n" * 59 + "…", *(f"more{number}" for number in range(11))])
    assert log.notes == (f"room.csv: these columns are not used: {first} and 988 more.",)
    log = read(f"2026-03-02T09:00:00Z,20,48,0{',' * 12}", header=f"{HEADER},{','.join(names[1:13])}")
    assert log.notes == (f"room.csv: these columns are not used: {', '.join(names[1:13])}.",)
    (sentence,) = faults(header=f"{HEADER},{','.join(names)}", columns={"Temp": "temperature_C"})
    assert sentence.endswith(" and 992 more.")  # 4 + 1000 columns


@pytest.mark.parametrize(
    ("header", "clause"),
    [
        ("temperature_C,humidity_pct,air_speed_m_s", "one column of time"),
        (f"time_unix,{HEADER}", "one column of time"),
        ("time,humidity_pct,air_speed_m_s", '"temperature_C" is missing'),
        ("time,temperature_C,air_speed_m_s", '"humidity_pct" is missing'),
        ("time,temperature_C,humidity_pct", '"air_speed_m_s" is missing'),
        (f"{HEADER},temperature_C", '"temperature_C" is there 2 times'),
    ],
)
def test_that_a_bad_header_is_told(header: str, clause: str) -> None:
    assert any(clause in sentence and sentence.startswith("room.csv, line 1: ") for sentence in faults(header=header))


@pytest.mark.parametrize("text", ["", "\n", "\r\n\r\n"])
def test_that_an_empty_log_is_told(text: str) -> None:
    with pytest.raises(RoomLogFaults, match=r"^room\.csv, line 1: "):
        read_room_log(io.StringIO(text, newline=""), "room.csv")


@pytest.mark.parametrize(
    ("row", "clauses"),
    [
        ("2026-03-02T09:00:00Z,warm,48,0", ['temperature_C "warm" is no number']),
        ("2026-03-02T09:00:00Z,nan,48,0", ['temperature_C "nan" is no number']),
        ("2026-03-02T09:00:00Z,20,inf,0", ['humidity_pct "inf" is no number']),
        ('2026-03-02T09:00:00Z,"20,5",48,0', ['"20,5" has a decimal comma']),
        ("2026-03-02T09:00:00Z,-41,48,0", ["temperature_C -41 is outside -40 to 85 °C"]),
        ("2026-03-02T09:00:00Z,20,101,0", ["humidity_pct 101 is outside 0 to 100 %RH"]),
        ("2026-03-02T09:00:00Z,20,48,-0.1", ["air_speed_m_s -0.1 is outside 0 to 60 m/s"]),
        # slips: 68 °F is 20 °C and 293.15 K is 20 °C, exact by definition
        ("2026-03-02T09:00:00Z,68,48,0", ["temperature_C 68 looks like °F"]),
        ("2026-03-02T09:00:00Z,293.15,48,0", ["temperature_C 293.15 looks like K"]),
        ("2026-03-02T09:00:00Z,20,0.48,0", ["humidity_pct 0.48 looks like a fraction"]),
        ("2026-03-02T09:00:00Z,20,48,35", ["air_speed_m_s 35 looks like ft/min, cm/s or mV"]),
        ("2026-03-02T09:00:00,20,48,0", ["has no zone"]),
        ("2026-03-02,20,48,0", ["has no zone"]),
        ("02.03.2026 09:00,20,48,0", ["is no ISO 8601 time"]),
        ("1926-03-02T09:00:00Z,20,48,0", ["outside 2000-01-01 to 2100-01-01"]),
        (",20,48,0", ["time is empty"]),
        ("2026-03-02T09:00:00Z,20,48", ["the row has 3 cells; the header has 4"]),
        ("2026-03-02T09:00:00Z,20,5,48,0", ["the row has 5 cells; the header has 4"]),
        ('2026-03-02T09:00:00Z,"20"x,48,0', ["this is no CSV"]),
        ("soon,warm,damp,0", ["ISO 8601", '"warm" is no number', '"damp" is no number']),
    ],
)
def test_that_a_bad_row_is_told_by_line_and_value(row: str, clauses: list[str]) -> None:
    told = faults("2026-03-02T08:00:00Z,20,48,0", row)
    assert len(told) == len(clauses)
    for sentence, clause in zip(told, clauses, strict=True):
        assert sentence.startswith("room.csv, line 3: ")
        assert clause in sentence
        assert sentence.endswith(".")


@pytest.mark.parametrize(
    ("column", "cell", "clause"),
    [("pressure_Pa", "1013", "looks like hPa"), ("pressure_Pa", "101.3", "looks like kPa"), ("cover", "yes", "1 (cov")],
)
def test_that_a_bad_optional_cell_is_told(column: str, cell: str, clause: str) -> None:
    (sentence,) = faults(f"2026-03-02T09:00:00Z,20,48,0,{cell}", header=f"{HEADER},{column}")
    assert clause in sentence


def test_that_milliseconds_in_the_place_of_seconds_are_told() -> None:
    (sentence,) = faults("1772442000000,20,48,0", header=HEADER.replace("time,", "time_unix,"))
    assert "looks like milliseconds" in sentence


def test_that_rows_out_of_order_and_duplicates_are_told() -> None:
    told = faults(
        "2026-03-02T09:00:00Z,20,48,0",
        "2026-03-02T10:00:00+01:00,20,48,0",
        "2026-03-02T08:59:00Z,20,48,0",
        "2026-03-02T09:01:00Z,20,48,0",
    )
    assert [sentence.split(":")[0] for sentence in told] == ["room.csv, line 3", "room.csv, line 4"]
    assert "the same as in line 2" in told[0]
    assert "before that in line 2" in told[1]


def test_that_line_numbers_count_lines_within_quoted_cells() -> None:
    told = faults('2026-03-02T09:00:00Z,20,48,0,"two\r\nlines"', "never,20,48,0,x", header=f"{HEADER},remark")
    assert told[0].startswith("room.csv, line 4: ")


def test_that_the_first_faults_of_a_kind_are_told_and_the_rest_counted() -> None:
    told = faults(*["2026-03-02T09:00:00,20,48,0"] * 73, "2026-03-02T09:00:00Z,20,200,0")
    assert [sentence.split(":")[0] for sentence in told[:-1]] == [
        *(f"room.csv, line {line}" for line in range(2, 7)),
        "room.csv, line 75",
    ]
    assert "has no zone" in told[0]
    assert told[-1] == "… and 68 more with the same fault (time that cannot be read), 73 in all."


def test_that_a_gap_is_a_note_not_a_fault() -> None:
    minutes = [0, 1, 2, 3, 33, 34, 35]
    log = read(*[f"2026-03-02T09:{minute:02}:00Z,20,48,0" for minute in minutes])
    assert len(log.rows) == 7
    assert log.notes == ("room.csv, line 6: no reading for 30 min before this row.",)


def test_that_a_file_with_a_mark_and_odd_bytes_is_read_or_told(tmp_path: Path) -> None:
    path = tmp_path / "room.csv"
    path.write_bytes(b"\xef\xbb\xbf" + f"{HEADER}\n2026-03-02T09:00:00Z,20,48,0\n".encode())
    assert open_room_log(path).readings()[0].time_ms == NINE_MS
    path.write_bytes(f"{HEADER}\n2026-03-02T09:00:00Z,20,".encode() + b"\xff\x00,0\n")
    with pytest.raises(RoomLogFaults, match=r"room\.csv, line 2: humidity_pct .* is no number"):
        open_room_log(path)


cells = st.one_of(
    st.text(max_size=6),
    st.sampled_from(
        ["", "20", "48.5", "2026-03-02T09:00:00Z", "1e99", "-0", '"', "nan", "\x00", "0001-01-01T00:00+14"]
    ),
)


@given(st.lists(st.lists(cells, min_size=3, max_size=5), max_size=8))
def test_that_any_text_is_whole_readings_or_sentences(rows: list[list[str]]) -> None:
    text = HEADER + "\n" + "\n".join(",".join(row) for row in rows)
    log, told = read_or_told(text)
    if log is None:
        assert told
        assert all(sentence.startswith(("room.csv, line ", "… and ")) for sentence in told)
    else:
        assert len(log.rows) == sum(1 for row in csv.reader(io.StringIO(text, newline="")) if row) - 1


def read_or_told(text: str) -> tuple[RoomLog | None, tuple[str, ...]]:
    try:
        return read_room_log(io.StringIO(text, newline=""), "room.csv"), ()
    except RoomLogFaults as faulty:
        return None, faulty.sentences


def test_that_a_note_on_a_line_is_joined_to_the_log_in_any_language() -> None:
    steps = [f"2026-03-02T09:{minute:02}:00Z,20,50,0" for minute in (0, 1, 2, 3, 40)]
    speak_by(lambda text, _about, _number: text.replace("line {line}", "Zeile {line}"))
    (note,) = read(*steps).notes
    assert note == "room.csv, Zeile 6: no reading for 37 min before this row."
