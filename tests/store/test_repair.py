"""A file is looked through without a trace, a wrong overview is made anew, a damaged file gives up what it holds."""

from __future__ import annotations

import shutil
import sqlite3
from collections.abc import Sequence
from contextlib import closing
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from studiowatch.room.readings import Channel, Reading
from studiowatch.store.all_records import read_all
from studiowatch.store.database import looking, open_database
from studiowatch.store.examine import examine, rebuild
from studiowatch.store.quiet import whole
from studiowatch.store.readings import ReadingsStore
from studiowatch.store.records import RecordsStore
from studiowatch.store.salvage import salvage
from studiowatch.store.sealing import LEVELS_MS
from studiowatch.store.trouble import StoreRefused, StoreTrouble
from studiowatch.studio.pieces import Coat, Finding, Look, Piece

MIDNIGHT_MS = 1_772_409_600_000  # date -u -d 2026-03-02T00:00:00Z +%s
HOUR_MS = 3_600_000
READINGS = [
    Reading(time_ms=MIDNIGHT_MS + 10_000 * at, temperature_C=round(20 + at % 97 / 100, 2), humidity_pct=50.0 + at % 7)
    for at in range(360 * 30)
]
SEALED = 360 * 8  # readings in the eight hours that are sealed
PIECES = [
    Piece(
        key=f"piece{number}",
        title=f"Study {number}",
        width_cm=20.0,
        height_cm=30.0,
        place=number,
        coats=(
            Coat(
                key=f"coat{number}",
                sheet="gloss-waterborne",
                laid_ms=MIDNIGHT_MS,
                looks=(Look(key=f"look{number}", time_ms=MIDNIGHT_MS, finding=Finding.DRY),),
            ),
        ),
    )
    for number in range(40)
]


@pytest.fixture(scope="module")
def original(tmp_path_factory: pytest.TempPathFactory) -> Path:
    path = tmp_path_factory.mktemp("original") / "studio.sqlite3"
    database = open_database(path)
    log = ReadingsStore(database)
    log.append(READINGS)
    log.seal(MIDNIGHT_MS + 8 * HOUR_MS)
    records = RecordsStore(database, lambda: MIDNIGHT_MS)
    records.save_pieces(PIECES)
    records.note(MIDNIGHT_MS, "board", "of our own")
    database.close()
    return path


@pytest.fixture
def file(original: Path, tmp_path: Path) -> Path:
    return Path(shutil.copy(original, tmp_path / "studio.sqlite3"))


def change(path: Path, *statements: str) -> None:
    with closing(sqlite3.connect(path, isolation_level=None)) as connection:
        for statement in statements:
            connection.execute(statement)


def pages_of(path: Path, table: str) -> tuple[int, Sequence[int]]:
    """Return the page size and the leaf pages of a table that a walk over the whole file tells (file format, 1.6)."""
    data = path.read_bytes()
    with closing(sqlite3.connect(f"{path.as_uri()}?immutable=1", uri=True)) as connection:
        (size,) = connection.execute("PRAGMA page_size").fetchone()
        (root,) = connection.execute("SELECT rootpage FROM sqlite_schema WHERE name = ?", (table,)).fetchone()

    def leaves(page: int) -> list[int]:
        at = (page - 1) * size
        if data[at] == 13:  # a leaf of a table
            return [page]
        count = int.from_bytes(data[at + 3 : at + 5], "big")
        cells = [int.from_bytes(data[at + 12 + 2 * n : at + 14 + 2 * n], "big") for n in range(count)]
        children = [int.from_bytes(data[at + cell : at + cell + 4], "big") for cell in cells]
        children.append(int.from_bytes(data[at + 8 : at + 12], "big"))
        return [leaf for child in children for leaf in leaves(child)]

    return size, leaves(root)


def blank(path: Path, page: int, size: int) -> None:
    data = bytearray(path.read_bytes())
    data[(page - 1) * size : page * size] = bytes(size)
    path.write_bytes(data)


def readings_in(path: Path) -> list[Reading]:
    database = open_database(path)
    try:
        return list(ReadingsStore(database).between(0, 2**60))
    finally:
        database.close()


def test_that_a_whole_file_is_fine_and_looking_leaves_no_trace(file: Path) -> None:
    before = file.read_bytes()
    examination = examine(file)
    assert (examination.faults, examination.hours, examination.last_ms) == ((), 8, READINGS[-1].time_ms)
    assert [path.name for path in file.parent.iterdir()] == [file.name]
    assert file.read_bytes() == before


def test_that_a_file_in_use_is_looked_at_with_what_its_log_holds(file: Path) -> None:
    database = open_database(file)
    ReadingsStore(database).append(READINGS[:1])
    assert examine(file).faults == ()
    database.close()


@pytest.mark.parametrize(
    "statement",
    [
        "DELETE FROM pyramid WHERE channel = 'humidity_pct' AND width_ms = 60000",
        """UPDATE pyramid SET data = (SELECT data FROM pyramid WHERE channel = 'temperature_C' AND width_ms = 600000)
        WHERE channel = 'humidity_pct' AND width_ms = 600000""",
        "UPDATE pyramid SET data = x'0102' WHERE channel = 'humidity_pct' AND width_ms = 60000",
    ],
)
def test_that_a_wrong_overview_is_told_and_made_anew(file: Path, statement: str) -> None:
    change(file, statement)
    (fault,) = examine(file).faults
    assert "overview of humidity_pct does not sum up its readings" in fault
    assert "check --rebuild" in fault
    database = open_database(file)
    rebuild(database)
    database.close()
    assert examine(file).faults == ()
    assert readings_in(file) == READINGS


def test_that_the_overview_made_anew_is_that_made_hour_by_hour(file: Path) -> None:
    query = "SELECT channel, width_ms, block, data FROM pyramid ORDER BY 1, 2, 3"
    with closing(sqlite3.connect(file)) as connection:
        before = connection.execute(query).fetchall()
    assert {width_ms for _, width_ms, _, _ in before} == set(LEVELS_MS)
    database = open_database(file)
    rebuild(database)
    database.close()
    with closing(sqlite3.connect(file)) as connection:
        assert connection.execute(query).fetchall() == before


def test_that_a_damaged_hour_is_told_by_its_time_and_columns(file: Path) -> None:
    change(
        file,
        "UPDATE chunk_column SET data = substr(data, 1, length(data) - 9) "
        "WHERE name = 'humidity_pct' AND chunk_id = (SELECT id FROM chunk ORDER BY start_ms LIMIT 1 OFFSET 2)",
    )
    told = examine(file).faults
    assert "2026-03-02T02:00:00Z to 2026-03-02T02:59:50Z are damaged in humidity_pct" in told[0]
    assert "check --salvage" in told[-1]


def test_that_reading_a_damaged_hour_is_one_sentence(file: Path) -> None:
    change(file, "UPDATE chunk_column SET data = substr(data, 1, length(data) - 9) WHERE name = 'humidity_pct'")
    with pytest.raises(StoreTrouble, match=r"damaged in its sealed readings .*studiowatch check"):
        readings_in(file)


def test_that_what_was_read_while_a_watch_began_is_not_trusted(file: Path) -> None:
    looked = looking(file)
    looked.__enter__()
    database = open_database(file)
    ReadingsStore(database).append(READINGS[:1])
    with pytest.raises(StoreTrouble, match="A watch began to write"):
        looked.__exit__(None, None, None)
    database.close()
    database = open_database(file)
    ReadingsStore(database).append(READINGS[:1])
    with looking(file) as seen:
        assert seen.rows("SELECT count(*) FROM note") == [(1,)]
    database.close()


def write_and_close(path: Path) -> None:
    database = open_database(path)
    ReadingsStore(database).append(READINGS[:SEALED])
    database.close()


def test_that_what_was_read_while_a_writer_came_and_went_is_not_trusted(file: Path) -> None:
    looked = looking(file)
    looked.__enter__()
    write_and_close(file)
    with pytest.raises(StoreTrouble, match="do it once more"):
        looked.__exit__(None, None, None)


def test_that_a_look_sees_what_a_writer_left_that_came_and_went_meanwhile(file: Path) -> None:
    counts: list[int] = []

    def look(connection: sqlite3.Connection) -> int:
        counts.append(connection.execute("SELECT count(*) FROM reading").fetchone()[0])
        if len(counts) == 1:
            write_and_close(file)
        return counts[-1]

    open_rows = len(READINGS) - SEALED
    assert whole(file, look) == open_rows + SEALED
    assert counts == [open_rows, open_rows + SEALED]


def test_that_damage_that_a_look_met_while_a_writer_came_and_went_is_looked_at_again(file: Path) -> None:
    looks: list[str] = []

    def look(_: sqlite3.Connection) -> str:
        looks.append("a look")
        if len(looks) == 1:
            write_and_close(file)
            raise sqlite3.DatabaseError("database disk image is malformed")
        return "whole"

    assert whole(file, look) == "whole"
    with pytest.raises(sqlite3.DatabaseError):
        whole(file, lambda connection: connection.execute("SELECT * FROM nowhere"))


def test_that_a_file_whose_log_was_left_behind_is_explained(tmp_path: Path) -> None:
    # tables made in a log that was never folded in are not in the file alone
    path, alone = tmp_path / "a.sqlite3", tmp_path / "alone.sqlite3"
    with closing(sqlite3.connect(path, isolation_level=None)) as connection:
        connection.execute("PRAGMA journal_mode = WAL")
        connection.execute("CREATE TABLE reading (id INTEGER)")
        shutil.copy(path, alone)
    with pytest.raises(StoreRefused, match=r"alone\.sqlite3-wal was left behind"):
        examine(alone)
    with pytest.raises(StoreRefused, match=r"alone\.sqlite3-wal was left behind"):
        open_database(alone)


def test_that_a_file_that_lacks_a_table_is_explained(file: Path) -> None:
    change(file, "DROP TABLE prompt")
    (fault,) = examine(file).faults
    assert "lacks prompt: if it is a copy, its log studio.sqlite3-wal was left behind" in fault


def test_that_a_whole_file_is_salvaged_whole(file: Path, tmp_path: Path) -> None:
    new = tmp_path / "new.sqlite3"
    told = salvage(file, new)
    assert told.lost == ()
    assert f"reading: rows saved: {len(READINGS) - SEALED}." in told.saved
    assert examine(new).faults == ()
    assert readings_in(new) == READINGS
    for path in (file, new):
        database = open_database(path, read_only=True)
        assert list(read_all(database, "").pieces) == PIECES
        database.close()


def test_that_nothing_is_salvaged_over_a_file(file: Path, tmp_path: Path) -> None:
    with pytest.raises(StoreRefused, match="is there already"):
        salvage(file, file)
    with pytest.raises(StoreRefused, match="nothing to save"):
        salvage(tmp_path / "none", tmp_path / "new")
    with pytest.raises(StoreTrouble):
        salvage(file, tmp_path / "nowhere" / "new")


def test_that_all_but_the_damaged_pages_are_saved_and_the_rest_is_told(file: Path, tmp_path: Path) -> None:
    size, leaves = pages_of(file, "reading")
    for page in (leaves[3], leaves[4], leaves[20]):
        blank(file, page, size)
    assert any("check --salvage" in fault for fault in examine(file).faults)
    new = tmp_path / "new.sqlite3"
    told = salvage(file, new)
    kept = readings_in(new)
    assert kept[:SEALED] == READINGS[:SEALED]
    lost = [one for one in READINGS if one not in set(kept)]
    # a row of three numbers, a time and a mark takes some 30 bytes: three pages hold no more than size / 20 rows each
    assert 0 < len(lost) <= 3 * size // 20
    assert len(told.lost) == 2  # two stretches: the pages 3 and 4 touch each other
    assert all(sentence.startswith("reading: rows ") and " after 2026-03-0" in sentence for sentence in told.lost)
    assert examine(new).faults == ()


def test_that_an_hour_keeps_the_channels_that_can_be_read(file: Path, tmp_path: Path) -> None:
    third = "(SELECT id FROM chunk ORDER BY start_ms LIMIT 1 OFFSET 2)"
    fifth = "(SELECT id FROM chunk ORDER BY start_ms LIMIT 1 OFFSET 4)"
    change(
        file,
        "UPDATE chunk_column SET data = x'00' WHERE name IN ('humidity_pct', 'checked') AND chunk_id = " + third,  # noqa: S608
        "UPDATE chunk_column SET data = x'00' WHERE name = 'time_ms' AND chunk_id = " + fifth,  # noqa: S608
    )
    new = tmp_path / "new.sqlite3"
    told = salvage(file, new)
    assert told.lost == (
        "Sealed readings of 2026-03-02T02:00:00Z to 2026-03-02T02:59:50Z: checked, humidity_pct of all 360 is lost.",
        "Sealed readings of 2026-03-02T04:00:00Z to 2026-03-02T04:59:50Z: all 360 are lost.",
    )
    kept = readings_in(new)
    assert [one.time_ms for one in kept] == [one.time_ms for one in READINGS if one not in READINGS[1440:1800]]
    third_hour = kept[720:1080]
    assert [one.temperature_C for one in third_hour] == [one.temperature_C for one in READINGS[720:1080]]
    assert all(one.value(Channel.HUMIDITY) is None and not one.checked for one in third_hour)
    assert examine(new).faults == ()


@pytest.mark.parametrize(
    "damage",
    [
        "last_ms = last_ms + 4096",
        "count = 7",
        "start_ms = start_ms + (1 << 50)",
        "start_ms = start_ms | (1 << 62)",
        "start_ms = -1",
    ],
)
def test_that_an_hour_whose_head_is_damaged_is_told_and_saved_whole(file: Path, tmp_path: Path, damage: str) -> None:
    third = "(SELECT id FROM chunk ORDER BY start_ms LIMIT 1 OFFSET 2)"
    change(file, f"UPDATE chunk SET {damage} WHERE id = {third}")  # noqa: S608 - our own
    told = examine(file).faults
    assert "are damaged in time_ms" in told[0]
    assert "check --salvage" in told[-1]
    new = tmp_path / "new.sqlite3"
    assert salvage(file, new).lost == (
        "The head of the sealed readings of 2026-03-02T02:00:00Z to 2026-03-02T02:59:50Z was lost, and made again.",
    )
    assert examine(new).faults == ()
    assert readings_in(new) == READINGS


@pytest.mark.parametrize("time_ms", [2**60, -1])
def test_that_a_reading_of_a_time_beyond_all_calendars_is_left_out_and_told(
    file: Path, tmp_path: Path, time_ms: int
) -> None:
    change(file, f"UPDATE reading SET time_ms = {time_ms} WHERE time_ms = {READINGS[-2].time_ms}")  # noqa: S608 - our own
    new = tmp_path / "new.sqlite3"
    assert salvage(file, new).lost == ("reading: rows that are damaged and were left out: 1.",)
    assert readings_in(new) == [*READINGS[:-2], READINGS[-1]]
    assert examine(new).last_ms == READINGS[-1].time_ms


def test_that_coats_outlive_their_piece(file: Path, tmp_path: Path) -> None:
    change(
        file,
        "PRAGMA foreign_keys = OFF",
        "DELETE FROM piece WHERE key = 'piece3'",
        "DELETE FROM coat WHERE key = 'coat5'",
    )
    new = tmp_path / "new.sqlite3"
    told = salvage(file, new)
    assert told.lost == (
        "piece: pieces that lost title and size, archived so that their coats are kept: 1.",
        "look: rows left out, since the coat that they belong to is lost: 1.",
    )
    database = open_database(new, read_only=True)
    pieces = {piece.key: piece for piece in read_all(database, "").pieces}
    database.close()
    assert pieces["piece3"].coats == PIECES[3].coats
    assert pieces["piece3"].archived
    assert examine(new).faults == ()


@settings(max_examples=20, deadline=None)
@given(data=st.data())
def test_that_any_damage_is_salvaged_or_refused_and_never_invents_a_reading(
    original: Path, tmp_path_factory: pytest.TempPathFactory, data: st.DataObject
) -> None:
    folder = tmp_path_factory.mktemp("damaged")
    file, new = folder / "studio.sqlite3", folder / "new.sqlite3"
    size = original.stat().st_size // 4096
    damaged = bytearray(original.read_bytes())
    for page in data.draw(st.lists(st.integers(1, size - 1), min_size=1, max_size=4)):
        damaged[page * 4096 : (page + 1) * 4096] = bytes(4096)
    file.write_bytes(damaged)
    try:
        told = salvage(file, new)
    except StoreRefused as refused:
        assert "restore a backup" in str(refused)  # noqa: PT017
        assert not list(folder.glob("new*"))
        return
    assert examine(new).faults == ()
    kept = readings_in(new)
    there = {one.time_ms: one for one in READINGS}
    assert len({one.time_ms for one in kept}) == len(kept)
    for one in kept:
        assert one.temperature_C in {there[one.time_ms].temperature_C, None}
        assert one.humidity_pct in {there[one.time_ms].humidity_pct, None}
    assert bool(told.lost) or kept == READINGS
