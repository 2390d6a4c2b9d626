"""Readings and records out and in again: nothing is lost, nothing is taken twice, every fault is told by line."""

from __future__ import annotations

import csv
import gzip
import io
from collections.abc import Callable
from contextlib import closing
from pathlib import Path

import pytest

from studiowatch.room.readings import Reading
from studiowatch.store.all_records import take_all
from studiowatch.store.database import open_database
from studiowatch.store.readings import ReadingsStore
from studiowatch.store.studio_file import read_studio

from .conftest import Answer, room_text

MIDNIGHT_MS = 1_772_409_600_000  # date -u -d 2026-03-02T00:00:00Z +%s
HEADER = "time,temperature_C,humidity_pct,air_speed_m_s"


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    return tmp_path / "data"


@pytest.fixture
def log_file(tmp_path: Path) -> Callable[[str | bytes], Path]:
    def write(content: str | bytes) -> Path:
        path = tmp_path / "room.csv"
        path.write_bytes(content if isinstance(content, bytes) else content.encode())
        return path

    return write


def stored(folder: Path) -> list[Reading]:
    database = open_database(folder / "studio.sqlite3", read_only=True)
    readings = list(ReadingsStore(database).between(0, 2**60))
    database.close()
    return readings


def store(folder: Path, readings: list[Reading], *, seal_before_ms: int = 0) -> None:
    folder.mkdir(exist_ok=True)
    database = open_database(folder / "studio.sqlite3")
    log = ReadingsStore(database)
    log.append(readings)
    log.seal(seal_before_ms)
    database.close()


def minutes(count: int, **values: float) -> list[Reading]:
    return [
        Reading(time_ms=MIDNIGHT_MS + 60_000 * at, temperature_C=20 + at / 7, humidity_pct=50.0, **values)
        for at in range(count)
    ]


def test_that_what_is_written_is_taken_back_bit_for_bit_and_once(
    call: Callable[..., Answer], folder: Path, tmp_path: Path
) -> None:
    readings = minutes(150, air_speed_m_s=0.1 + 0.2, pressure_Pa=101_325.0)
    store(folder, readings, seal_before_ms=MIDNIGHT_MS + 3_600_000)
    out = tmp_path / "out.csv"
    assert call("history", "--csv", out).code == 0
    rows = list(csv.reader(io.StringIO(out.read_bytes().decode(), newline="")))
    assert rows[0][:4] == HEADER.split(",")
    assert len(rows) == 151
    assert out.read_bytes().count(b"\r\n") == 151  # RFC 4180, section 2, rule 1
    again = call("import", out)
    assert (again.code, again.err.splitlines()[-1]) == (
        0,
        f"studiowatch: {out}: Taken: 0; there already: 150; refused: 0.",
    )
    other = tmp_path / "other"
    taken = call("--folder", other, "import", out)
    assert (taken.code, taken.err.splitlines()[-1]) == (
        0,
        f"studiowatch: {out}: Taken: 150; there already: 0; refused: 0.",
    )
    values = [
        (one.time_ms, one.temperature_C, one.humidity_pct, one.air_speed_m_s, one.pressure_Pa) for one in readings
    ]
    assert [
        (one.time_ms, one.temperature_C, one.humidity_pct, one.air_speed_m_s, one.pressure_Pa) for one in stored(other)
    ] == values
    # a board's checksum stands behind none of them any more
    assert not any(one.checked for one in stored(other))


def test_that_a_range_has_its_beginning_and_not_its_end(call: Callable[..., Answer], folder: Path) -> None:
    store(folder, minutes(150), seal_before_ms=MIDNIGHT_MS + 3_600_000)
    answer = call("history", "--from", "2026-03-02T00:59:00Z", "--to", "2026-03-02T01:01:00Z", "--csv", "-")
    times = [row[0] for row in csv.reader(io.StringIO(answer.out, newline=""))]
    assert times == ["time", "2026-03-02T00:59:00.000Z", "2026-03-02T01:00:00.000Z"]
    assert answer.err == "studiowatch: Written to stdout, as they were read: 2 readings.\n"


def test_that_a_range_may_begin_before_there_was_any_reading(call: Callable[..., Answer], folder: Path) -> None:
    store(folder, minutes(3))
    answer = call("history", "--from", "0001-01-01", "--csv", "-")
    assert answer.err == "studiowatch: Written to stdout, as they were read: 3 readings.\n"
    assert call("history", "--to", "0001-01-01", "--csv", "-").code == 2


def test_that_a_range_that_ends_before_it_begins_is_a_wrong_call(call: Callable[..., Answer], folder: Path) -> None:
    store(folder, minutes(2))
    answer = call("history", "--from", "2026-03-03T00:00Z", "--to", "2026-03-02T00:00Z", "--csv", "-")
    assert answer.code == 2
    assert "not after --from" in answer.err
    for start, says in (("2026-03-03T00:00", "without a zone"), ("spring", "give date and time with zone")):
        answer = call("history", "--from", start, "--csv", "-")
        assert answer.code == 2
        assert f"--from is '{start}'" in answer.err
        assert says in answer.err


def test_that_no_file_of_hers_is_written_over(call: Callable[..., Answer], folder: Path, tmp_path: Path) -> None:
    store(folder, minutes(2))
    hers = tmp_path / "hers.csv"
    hers.write_text("hers")
    answer = call("history", "--csv", hers)
    assert (answer.code, hers.read_text()) == (2, "hers")
    assert "there already" in answer.err
    assert call("history", "--csv", tmp_path / "no" / "such.csv").code == 1
    assert call("history", "--csv", tmp_path).code == 2


def test_that_looking_leaves_nothing_beside_the_records(call: Callable[..., Answer], folder: Path) -> None:
    store(folder, minutes(2))
    for words in (("history", "--csv", "-"), ("export", "-"), ("check",)):
        call(*words)
        assert [path.name for path in folder.iterdir()] == ["studio.sqlite3"], words


def test_that_records_that_are_not_there_are_one_sentence(call: Callable[..., Answer]) -> None:
    for words in (("history", "--csv", "-"), ("export", "-")):
        answer = call(*words)
        assert (answer.code, answer.err.count("\n")) == (1, 1)
        assert "is not there or is empty" in answer.err


def test_that_what_is_there_stays_and_the_other_reading_is_a_fault(
    call: Callable[..., Answer], folder: Path, log_file: Callable[..., Path]
) -> None:
    store(folder, minutes(90), seal_before_ms=MIDNIGHT_MS + 3_600_000)
    rows = [
        ("2026-03-02T00:00:00Z", 20, 50, ""),  # there, in the sealed hour
        ("2026-03-02T00:00:30Z", 20.1, 50, ""),  # new, in the sealed hour
        ("2026-03-02T00:01:00Z", 25, 50, ""),  # another reading, in the sealed hour
        ("2026-03-02T01:10:00Z", 25, 50, ""),  # another reading, in an open hour
        ("2026-03-02T01:10:30Z", 25, 50, ""),  # new, in an open hour
    ]
    path = log_file(room_text(rows))
    before = stored(folder)
    answer = call("import", path)
    assert answer.code == 1
    assert f"{path}, line 4: the records have another reading at this time" in answer.err
    assert f"{path}, line 5: the same again" in answer.err
    assert answer.err.splitlines()[-1].endswith(
        "Taken: 2; there already: 1; refused: 2 (another reading at the same time: 2)."
    )
    after = stored(folder)
    assert [one for one in after if one in before] == before
    assert sorted({one.time_ms for one in after} - {one.time_ms for one in before}) == [
        MIDNIGHT_MS + 30_000,
        MIDNIGHT_MS + 4_230_000,
    ]


def test_that_good_rows_are_taken_and_each_bad_one_is_told(
    call: Callable[..., Answer], folder: Path, log_file: Callable[..., Path]
) -> None:
    rows: list[tuple[object, ...]] = [(f"2026-03-02T00:{minute:02}:00Z", 20, 50, 0) for minute in range(10)]
    rows[2] = ("2026-03-02T00:02:00Z", 68, 50, 0)
    rows[3] = ("2026-03-02T00:03:00Z", 69, 50, 0)
    rows[4] = ("2026-03-02T00:04:00Z", 70, 50, 0)
    rows[6] = ("2026-03-02T00:05:00Z", 20, 50, 0)  # the row before again
    rows[7] = ("2026-03-02T00:01:00Z", 20, 50, 0)
    rows[8] = ("soon", 20, 120, 0)
    path = log_file(room_text(rows))
    answer = call("import", path)
    assert answer.code == 1
    told = answer.err.splitlines()
    assert f"studiowatch: {path}, line 4: temperature_C 68 looks like °F" in told[0]
    assert f"studiowatch: {path}, lines 5 to 6: the same again (another unit)." in told
    assert any(f"{path}, line 9: time 2026-03-02T00:01:00Z is before that in line 7" in line for line in told)
    assert sum(f"{path}, line 10: " in line for line in told) == 2
    assert told[-1].startswith(f"studiowatch: {path}: Taken: 4; there already: 1; refused: 5 (another unit: 3, ")
    assert len(stored(folder)) == 4


def test_that_a_header_without_rows_says_so(call: Callable[..., Answer], log_file: Callable[..., Path]) -> None:
    answer = call("import", log_file(f"{HEADER}\n"))
    assert answer.code == 0
    assert "has a header and no rows" in answer.err
    assert "Taken: 0" in answer.err


@pytest.mark.parametrize(
    ("content", "says"),
    [
        (gzip.compress(b"time", mtime=0), "packed with gzip"),
        ("time,temperature_C\n".encode("utf-16"), "text in UTF-16"),
        ("time,temperature_C\n".encode("utf-16-be"), "zero bytes"),
        (b"PK\x03\x04....", "a ZIP archive"),
        (b"", "the log is empty"),
        (b"when,what\n1,2\n", "one column of time"),
    ],
)
def test_that_what_is_no_log_is_refused_in_sentences(
    call: Callable[..., Answer], log_file: Callable[..., Path], content: bytes, says: str
) -> None:
    answer = call("import", log_file(content))
    assert answer.code == 2
    assert says in answer.err
    assert "Traceback" not in answer.err


def test_that_a_log_of_another_logger_is_taken(
    call: Callable[..., Answer], folder: Path, log_file: Callable[..., Path]
) -> None:
    text = "\ufeffWhen;Temp;RH;Battery\n02.03.2026 01:00;68,0;48,5;3,1\n02.03.2026 01:01;69,8;48;3,1\n"
    answer = call(
        "import", log_file(text),
        "--columns", "time=When,temperature_F=Temp,humidity_pct=RH",
        "--zone", "Europe/Berlin",
        "--time-format", "%d.%m.%Y %H:%M",
    )  # fmt: skip
    assert answer.code == 0, answer.err
    assert "these columns are not used: Battery" in answer.err
    first, second = stored(folder)
    # 68 °F is 20 °C and 69.8 °F is 21 °C; Berlin is an hour ahead of UTC in winter
    assert (first.time_ms, first.temperature_C, first.humidity_pct, first.air_speed_m_s) == (
        MIDNIGHT_MS, 20.0, 48.5, None,
    )  # fmt: skip
    assert (second.time_ms, second.temperature_C) == (MIDNIGHT_MS + 60_000, 21.0)


def test_that_an_import_is_kept_as_a_fact_and_kept_out_while_a_watch_is_on(
    call: Callable[..., Answer], folder: Path, log_file: Callable[..., Path]
) -> None:
    from studiowatch.store.folder import StudioFolder, Watching  # noqa: PLC0415

    path = log_file(room_text([("2026-03-02T00:00:00Z", 20, 50, 0)]))
    folder.mkdir()
    lock = Watching(StudioFolder(path=folder))
    assert call("import", path).code == 1
    lock.release()
    assert call("import", path).code == 0
    answer = call("export", "-")
    assert 'kind = "import"' in answer.out
    assert "1 readings of room.csv, raw" in answer.out


def test_that_all_records_go_out_and_in_the_same(
    call: Callable[..., Answer], studio_file: Path, tmp_path: Path
) -> None:
    assert call("import", studio_file).code == 0
    out = tmp_path / "out.toml"
    assert call("export", out).code == 0
    other = tmp_path / "other"
    assert call("--folder", other, "import", out).code == 0
    assert call("--folder", other, "export", "-").out == out.read_text("utf-8")
    again = call("import", out)
    assert (again.code, again.err) == (0, f"studiowatch: {out}: new: 0; there already: 1; replaced: 0.\n")


@pytest.mark.parametrize(
    ("line", "field"),
    [
        ("laid = 2150-03-02T09:01:00Z", "laid"),
        ("laid = 2026-03-02T09:01:00Z\ncovered_from = 2150-03-02T09:01:00Z", "covered_from"),
        ('laid = 2026-03-02T09:01:00Z\noutcome = "clear"\nseen = 2150-03-02T09:01:00Z', "seen"),
        ('laid = 2026-03-02T09:01:00Z\n[[piece.coat.look]]\ntime = 2150-03-02T09:01:00Z\nfinding = "dry"', "time"),
    ],
)
def test_that_a_time_of_a_coat_ahead_of_the_clock_takes_nothing_over(
    call: Callable[..., Answer], studio_file: Path, line: str, field: str
) -> None:
    text = studio_file.read_text("utf-8").replace("volume_mL = 14\n", "")
    studio_file.write_text(text.replace("laid = 2026-03-02T09:01:00Z", line), "utf-8")
    answer = call("import", studio_file)
    assert answer.code == 1
    told = f'studiowatch: {studio_file}: "Kiln Light", coat 1: {field} is 2150-03-02T09:01:00Z, which lies ahead of the'
    assert answer.err.startswith(told)
    assert answer.err.endswith(f"{studio_file}: nothing was taken over.\n")
    assert call("piece", "list", "--json").document == []


def test_that_what_a_wrong_clock_put_into_the_records_is_there_already(
    call: Callable[..., Answer], folder: Path, studio_file: Path
) -> None:
    studio = read_studio(studio_file.read_text("utf-8").replace("2026-03-02", "2150-03-02"), "studio.toml")
    folder.mkdir()
    with closing(open_database(folder / "studio.sqlite3")) as database:
        take_all(database, studio, lambda: MIDNIGHT_MS, replace=False)
    studio_file.write_text(call("export", "-").out, "utf-8")
    answer = call("import", studio_file)
    assert (answer.code, answer.err) == (0, f"studiowatch: {studio_file}: new: 0; there already: 1; replaced: 0.\n")


def test_that_a_piece_in_another_form_is_a_conflict_and_replaced_only_when_asked(
    call: Callable[..., Answer], studio_file: Path
) -> None:
    call("import", studio_file)
    studio_file.write_text(studio_file.read_text("utf-8").replace("volume_mL = 14", "volume_mL = 15"), "utf-8")
    answer = call("import", studio_file)
    assert answer.code == 1
    assert 'piece "Kiln Light" in another form' in answer.err
    assert "volume_mL = 14" in call("export", "-").out
    assert call("import", studio_file, "--replace").code == 0
    out = call("export", "-").out
    assert "volume_mL = 15" in out
    assert '\\"volume_mL\\": 14' in out  # the earlier form, kept as a correction


def test_that_a_backup_is_a_studio_that_is_checked_and_opens(
    call: Callable[..., Answer], folder: Path, tmp_path: Path
) -> None:
    readings = minutes(90)
    store(folder, readings, seal_before_ms=MIDNIGHT_MS + 3_600_000)
    answer = call("backup", "--to", tmp_path / "elsewhere")
    assert answer.code == 0
    copy = Path(answer.out.strip())
    assert copy.parent == tmp_path / "elsewhere"
    assert call("--folder", copy, "history", "--csv", "-").out.count("\n") == 91
    assert stored(copy) == readings
    assert call("backup").code == 0
    assert len(list((folder / "backups").iterdir())) == 1


def test_that_there_is_nothing_to_back_up_rebuild_or_salvage_before_the_first_record(
    call: Callable[..., Answer], tmp_path: Path
) -> None:
    for words, code in (
        (("backup",), 1),
        (("check", "--rebuild"), 2),
        (("check", "--salvage", tmp_path / "new"), 1),
        (("check", "--salvage", tmp_path / "new", "--rebuild"), 2),
    ):
        answer = call(*words)
        assert (answer.code, answer.err.count("\n")) == (code, 1), answer.err


def test_that_check_rebuilds_and_salvages(call: Callable[..., Answer], folder: Path, tmp_path: Path) -> None:
    store(folder, minutes(90), seal_before_ms=MIDNIGHT_MS + 3_600_000)
    assert call("check", "--rebuild").code == 0
    answer = call("check", "--salvage", tmp_path / "new.sqlite3")
    assert answer.code == 0
    assert "kept  reading: rows saved: 30." in answer.out
    document = call("check", "--json").document
    assert document["database"]["fine"] is True
    assert (
        "sealed hours (1) and their overview; the last reading is of 2026-03-02T01:29:00Z"
        in document["database"]["says"]
    )


def test_that_an_import_that_cannot_be_carried_out_says_why(
    call: Callable[..., Answer], log_file: Callable[..., Path], studio_file: Path
) -> None:
    log = log_file(f"{HEADER}\n")
    for words, says in (
        ((log, "--replace"), "--replace belongs to a studio file"),
        ((studio_file, "--zone", "UTC"), f"--zone belongs to a room log, and {studio_file} is a studio file."),
        (("none.csv",), "none.csv cannot be read: "),
        ((log, "--zone", "Mars/Olympus"), "--zone is 'Mars/Olympus', which is not known here"),
        ((log, "--columns", "temperature_C=Temp"), 'there is no column "Temp" to map'),
    ):
        answer = call("import", *words)
        assert answer.code == 2, answer.err
        assert says in answer.err
        assert "Traceback" not in answer.err


@pytest.mark.parametrize("words", [("import",), ("plan", "--studio"), ("check", "--sheet")])
def test_that_a_file_without_end_is_refused_before_it_fills_the_memory(
    call: Callable[..., Answer], tmp_path: Path, words: tuple[str, ...]
) -> None:
    huge = tmp_path / "huge.toml"
    with huge.open("wb") as stream:
        stream.truncate(64_000_001)  # sparse: it takes no room on the disk
    answer = call(*words, huge)
    assert answer.code == 2
    assert "huge.toml holds more than 64 MB of text; give the file that was meant." in answer.err
