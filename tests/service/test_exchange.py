"""What goes out of the records while a watch is on."""

from __future__ import annotations

from collections.abc import Sequence
from concurrent.futures import Future
from dataclasses import replace
from pathlib import Path

import pytest

from studiowatch.board.onlooker import Onlooker
from studiowatch.board.room_log import open_room_log
from studiowatch.room.readings import Reading
from studiowatch.room.typed import Felt, typed_reading
from studiowatch.service.commands import Command
from studiowatch.service.exchange import ExchangeFault, Interrupted
from studiowatch.service.product_views import SheetChoice
from studiowatch.service.studio_exchange import StudioExchange
from studiowatch.store.database import Database, open_database
from studiowatch.store.examine import examine
from studiowatch.store.folder import StudioFolder
from studiowatch.store.readings import ReadingsStore
from studiowatch.store.records import RecordsStore
from studiowatch.store.studio_file import read_studio
from studiowatch.studio.pieces import Piece

START_MS = 1_772_442_000_000
HOUR_MS = 3_600_000
READINGS = [
    Reading(time_ms=START_MS + 10_000 * at, temperature_C=20.0 + at / 100, humidity_pct=50.0, air_speed_m_s=0.05)
    for at in range(1000)
]


class StandingClock:
    """A clock that stands."""

    def utc_ms(self) -> int:
        return START_MS

    def monotonic_s(self) -> float:
        return 0.0


class NoDesk:
    """A desk that nothing is asked of: what goes out goes past the watch."""

    onlooker = Onlooker()

    def submit(self, command: Command) -> Future[str]:
        raise AssertionError(command)

    def subscribe(self, listener: object) -> None:
        raise AssertionError(listener)

    def sheets(self) -> Sequence[SheetChoice]:
        return ()


@pytest.fixture
def folder(tmp_path: Path) -> StudioFolder:
    made = StudioFolder(path=tmp_path / "studio")
    made.make()
    return made


@pytest.fixture
def open_records(folder: StudioFolder) -> Database:
    """Return records with readings and a piece, still open for writing as a watch has them."""
    database = open_database(folder.database)
    store = ReadingsStore(database)
    store.append(READINGS)
    store.seal(START_MS + HOUR_MS)
    RecordsStore(database, lambda: START_MS).save_piece(Piece(key="p", title="Kiln Light", width_cm=4, height_cm=4))
    return database


@pytest.fixture
def exchange(folder: StudioFolder, open_records: Database) -> StudioExchange:
    del open_records
    return StudioExchange(folder=folder, clock=StandingClock(), desk=NoDesk(), check=examine)


def quietly(share: float, words: str) -> None:
    assert 0.0 <= share <= 1.0
    assert words


def test_that_a_range_goes_out_beside_a_watch_as_it_was_read(exchange: StudioExchange, tmp_path: Path) -> None:
    out = tmp_path / "room.csv"
    words = exchange.readings_out(out, START_MS + 100_000, START_MS + 5_000_001, quietly)
    assert [row.reading for row in open_room_log(out).rows] == [
        one for one in READINGS if START_MS + 100_000 <= one.time_ms <= START_MS + 5_000_000
    ]
    assert "491 readings" in words


def test_that_of_readings_of_one_time_it_is_not_said_that_the_clock_was_set_back_for_sure(
    exchange: StudioExchange, open_records: Database, tmp_path: Path
) -> None:
    # two lines that one look at the port brought have one time, on a clock that nobody set
    ReadingsStore(open_records).append([replace(READINGS[-1], temperature_C=21.0)])
    words = exchange.readings_out(tmp_path / "room.csv", START_MS, READINGS[-1].time_ms + 1, quietly)
    assert (
        "1 of them share their time with the one before: they came at once, or the clock was set back there." in words
    )


def test_that_readings_that_were_typed_are_told_to_lose_that_in_a_room_log(
    exchange: StudioExchange, open_records: Database, tmp_path: Path
) -> None:
    at_ms = READINGS[-1].time_ms + HOUR_MS
    typed = typed_reading(time_ms=at_ms, temperature_C=20.0, humidity_pct=50.0, felt=Felt.STILL)
    ReadingsStore(open_records).append([typed])
    words = exchange.readings_out(tmp_path / "room.csv", START_MS, at_ms + 1, quietly)
    assert words.endswith(
        "1 of them were typed: a room log does not tell that, and an import takes them for a logger's."
    )
    assert "of them were typed" not in exchange.readings_out(tmp_path / "before.csv", START_MS, at_ms, quietly)


def test_that_what_is_cancelled_leaves_no_file_and_no_earlier_one_is_lost(
    exchange: StudioExchange, tmp_path: Path
) -> None:
    out = tmp_path / "room.csv"
    out.write_text("hers")

    def cancel(_share: float, _words: str) -> None:
        raise Interrupted

    with pytest.raises(Interrupted):
        exchange.readings_out(out, START_MS, START_MS + HOUR_MS, cancel)
    assert out.read_text() == "hers"
    assert [path.name for path in tmp_path.iterdir() if path.is_file()] == ["room.csv"]


def test_that_all_records_go_out_as_a_studio_file(exchange: StudioExchange, tmp_path: Path) -> None:
    out = tmp_path / "studio.toml"
    exchange.records_out(out, quietly)
    assert [piece.title for piece in read_studio(out.read_text(), "studio.toml").pieces] == ["Kiln Light"]


def test_that_a_backup_is_made_beside_a_watch_and_is_whole(exchange: StudioExchange, tmp_path: Path) -> None:
    words = exchange.back_up(tmp_path / "copies", quietly)
    (copy,) = (tmp_path / "copies").iterdir()
    assert str(copy) in words
    assert not examine(StudioFolder(path=copy).database).faults


def test_that_a_place_that_cannot_be_written_is_one_sentence(exchange: StudioExchange, tmp_path: Path) -> None:
    with pytest.raises(ExchangeFault, match=r"cannot be used: .*\. Choose another place\.$"):
        exchange.readings_out(tmp_path / "no" / "room.csv", START_MS, START_MS + HOUR_MS, quietly)
