"""Another logger's readings go through the watch that is on: it owns the log."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest

from studiowatch.compose import outfit
from studiowatch.room.readings import Reading
from studiowatch.service.exchange import ExchangeFault, Interrupted
from studiowatch.service.studio_exchange import StudioExchange
from studiowatch.service.watched_studio import watching
from studiowatch.store.database import looking
from studiowatch.store.examine import examine
from studiowatch.store.folder import StudioFolder
from studiowatch.store.imported import all_imported
from studiowatch.store.readings import ReadingsStore

MIDNIGHT_S = 1_772_409_600  # date -u -d 2026-03-02T00:00:00Z +%s
ROWS = 300


@contextmanager
def watched(tmp_path: Path) -> Iterator[StudioExchange]:
    """Give the exchange of a studio that a keeper watches over on its own thread, fed by the simulated board."""
    folder, parts = StudioFolder(path=tmp_path / "studio"), outfit()
    with watching(parts, folder, parts.made_up_room(1).source(), keep_backups=False) as keeper:
        yield StudioExchange(folder=folder, clock=parts.clock, desk=keeper, check=examine)


def logged(folder: StudioFolder) -> list[Reading]:
    with looking(folder.database) as database:
        return list(ReadingsStore(database).between(0, (MIDNIGHT_S + 86_400) * 1000))


@pytest.fixture
def log(tmp_path: Path) -> Path:
    path = tmp_path / "logger.csv"
    rows = [f"{MIDNIGHT_S + 60 * at},{at % 30}" for at in range(ROWS)]
    rows[7] = f"{MIDNIGHT_S + 60 * 7},215"
    path.write_text("\n".join(["time_unix,temperature_C", *rows, ""]))
    return path


def quietly(share: float, words: str) -> None:
    assert 0.0 <= share <= 1.0
    assert words


def test_that_the_good_rows_are_taken_and_the_others_told_while_it_watches(tmp_path: Path, log: Path) -> None:
    told: list[str] = []
    with watched(tmp_path) as exchange:
        words = exchange.take_in(log, quietly, told.append)
        again = exchange.take_in(log, quietly, told.append)
    assert words.startswith(f"logger.csv: Taken: {ROWS - 1}; there already: 0; refused: 1")
    assert again.startswith(f"logger.csv: Taken: 0; there already: {ROWS - 1}; refused: 1")
    assert [sentence.split(":")[0] for sentence in told] == ["logger.csv, line 9"] * 2
    readings = logged(exchange.folder)
    assert [one.time_ms for one in readings] == [(MIDNIGHT_S + 60 * at) * 1000 for at in range(ROWS) if at != 7]
    assert not any(one.checked for one in readings)
    assert examine(exchange.folder.database).faults == ()
    with looking(exchange.folder.database) as database:
        assert [one.start_ms for one in all_imported(database)] == [MIDNIGHT_S * 1000]
        notes = database.rows("SELECT text FROM note WHERE kind = 'import'")
    assert len(notes) == 1
    assert "299 readings of logger.csv" in notes[0][0]


def test_that_what_was_taken_before_it_was_cancelled_is_kept_and_noted(tmp_path: Path, log: Path) -> None:
    def cancel(_share: float, _words: str) -> None:
        raise Interrupted

    with watched(tmp_path) as exchange, pytest.raises(Interrupted):
        exchange.take_in(log, cancel, lambda _: None)
    assert len(logged(exchange.folder)) == 59  # one hour of a row a minute, but for the one that is out of range
    with looking(exchange.folder.database) as database:
        assert len(database.rows("SELECT text FROM note WHERE kind = 'import'")) == 1


def test_that_a_studio_file_is_refused_with_what_to_do(tmp_path: Path) -> None:
    with watched(tmp_path) as exchange, pytest.raises(ExchangeFault, match=r"quit studiowatch .* `studiowatch import"):
        exchange.take_in(tmp_path / "studio.toml", quietly, lambda _: None)


def test_that_a_log_with_a_wrong_header_takes_nothing_and_says_why(tmp_path: Path) -> None:
    path, told = tmp_path / "other.csv", list[str]()
    path.write_text("when,warmth\n1,2\n")
    with watched(tmp_path) as exchange, pytest.raises(ExchangeFault, match="header"):
        exchange.take_in(path, quietly, told.append)
    assert told
