"""A log in blocks says and takes the very same as one read row by row."""

from __future__ import annotations

import io
import random
from datetime import UTC, datetime
from itertools import pairwise
from zoneinfo import ZoneInfo

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from studiowatch.board import room_log_blocks
from studiowatch.board.room_log_blocks import RowsTaken, log_blocks
from studiowatch.board.room_log_gaps import BLOCK, GapFinder
from studiowatch.board.room_log_header import LogForm
from studiowatch.board.room_log_rows import Remark, RowTaken, log_events
from studiowatch.room.readings import Reading

START_S = 1_772_409_600
FORM = LogForm(needed=())
HEADER = "time,temperature_C,humidity_pct,cover,note\n"
ODD_CELLS = (
    "",
    " 21.5 ",
    "abc",
    "1,5",
    "nan",
    "1e400",
    "212",
    "68.0",
    "-0.0",
    '"21.5"',
    '"2\n1"',
    "21.5,",
    "٢١",
    "1_0",
)
ODD_TIMES = ("", "2026-03-02", "2026-03-02T25:00:00Z", "1772409600", "2026-03-02T09:00:00", "2026-03-02T00:00:10+01:00")


def taken(events: list[object]) -> list[tuple[int, Reading]]:
    """Return the readings with their lines, from rows and from columns alike."""
    found: list[tuple[int, Reading]] = []
    for event in events:
        if isinstance(event, RowTaken):
            found.append((event.line, event.row.reading))
        elif isinstance(event, RowsTaken):
            columns = event.columns
            for at, time_ms in enumerate(columns.time_ms.tolist()):
                values = {
                    channel.value: None if np.isnan(column[at]) else float(column[at])
                    for channel, column in columns.values.items()
                }
                found.append((event.first_line + at, Reading(time_ms=time_ms, **values)))
    return found


def others(events: list[object]) -> list[object]:
    """Return what is no reading: remarks apart, for a block's come before it."""
    return [event for event in events if not isinstance(event, (RowTaken, RowsTaken, Remark))]


def remarks(events: list[object]) -> list[str]:
    return [event.sentence for event in events if isinstance(event, Remark)]


def both(text: str, form: LogForm = FORM) -> tuple[list[object], list[object]]:
    rows: list[object] = list(log_events(io.StringIO(text, newline=""), form))
    blocks: list[object] = list(log_blocks(io.StringIO(text, newline=""), form))
    assert taken(blocks) == taken(rows)
    assert others(blocks) == others(rows)
    assert remarks(blocks) == remarks(rows)
    return rows, blocks


def row(at_s: int, temperature: str = "21.5", humidity: str = "48.2", cover: str = "1") -> str:
    moment = datetime.fromtimestamp(START_S + at_s, UTC).isoformat().replace("+00:00", "Z")
    return f"{moment},{temperature},{humidity},{cover},\n"


@settings(max_examples=150, deadline=None)
@given(data=st.data())
def test_that_a_log_with_anything_odd_in_it_is_told_the_same(data: st.DataObject) -> None:
    number = st.floats(-60, 130).map(lambda value: f"{value:.1f}")
    cell = st.one_of(number, st.sampled_from(ODD_CELLS))
    steps = st.sampled_from([0, 1, 1, 1, 1, 1, 60, 4000, -5])
    lines, at_s = [HEADER], 0
    for _ in range(data.draw(st.integers(0, 25))):
        at_s += data.draw(steps)
        line = row(at_s, data.draw(st.one_of(number, cell)), data.draw(number), data.draw(st.sampled_from("01 2")))
        if data.draw(st.integers(0, 9)) == 0:
            line = data.draw(st.sampled_from(ODD_TIMES)) + line[20:]
        lines.append(line)
    rows_before = room_log_blocks.ROWS
    room_log_blocks.ROWS = data.draw(st.integers(1, 8))
    try:
        both("".join(lines))
    finally:
        room_log_blocks.ROWS = rows_before


def test_that_a_plain_log_comes_as_columns_alone() -> None:
    text = HEADER + "".join(row(at, f"{20 + at % 7 / 10:.1f}", "") for at in range(5000))
    _, blocks = both(text)
    assert all(isinstance(event, (RowsTaken, Remark)) for event in blocks)
    assert sum(event.columns.size for event in blocks if isinstance(event, RowsTaken)) == 5000


def test_that_a_fault_costs_its_own_block_alone() -> None:
    lines = [row(at) for at in range(3 * room_log_blocks.ROWS)]
    lines[room_log_blocks.ROWS + 5] = row(room_log_blocks.ROWS + 5, "boiling")
    _, blocks = both(HEADER + "".join(lines))
    assert sum(event.columns.size for event in blocks if isinstance(event, RowsTaken)) == 2 * room_log_blocks.ROWS


@pytest.mark.parametrize("zone", ["Europe/Berlin", "UTC"])
def test_that_local_times_of_the_night_of_the_change_are_settled_the_same(zone: str) -> None:
    moments = [datetime.fromtimestamp(1_761_436_800 + 300 * at, UTC).astimezone(ZoneInfo(zone)) for at in range(60)]
    text = "time,temperature_C\n" + "".join(f"{moment:%Y-%m-%dT%H:%M:%S},21.5\n" for moment in moments)
    both(text, LogForm(needed=(), zone=ZoneInfo(zone)))


def test_that_other_units_and_decimal_commas_are_read_the_same() -> None:
    text = "time_unix;temperature_F;humidity_fraction\n" + "".join(
        f"{START_S + at};{60 + at % 30},{at % 10};0,{40 + at % 20}\n" for at in range(500)
    )
    rows, _ = both(text)
    assert len(taken(rows)) == 500


def test_that_texts_without_end_are_forgotten(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(room_log_blocks, "REMEMBERED", 100)
    drawn = random.Random(1)
    both(HEADER + "".join(row(at, f"{drawn.uniform(15, 25):.9f}") for at in range(3000)))


@settings(deadline=None)
@given(
    steps=st.lists(st.sampled_from([1000, 1000, 1001, 5000, 5001, 60_000]), max_size=6 * BLOCK),
    cuts=st.lists(st.integers(0, 6 * BLOCK), max_size=4),
)
def test_that_gaps_are_found_the_same_however_the_rows_come(steps: list[int], cuts: list[int]) -> None:
    one, many = GapFinder(), GapFinder()
    told = [sentence for line, step in enumerate(steps) for sentence in one.take(line, step)] + [*one.judge()]
    edges = [0, *sorted(min(cut, len(steps)) for cut in cuts), len(steps)]
    lines, values = np.arange(len(steps)), np.array(steps, dtype=np.int64)
    found = [
        sentence
        for first, after in pairwise(edges)
        for sentence in many.take_many(lines[first:after], values[first:after])
    ]
    assert [*found, *many.judge()] == told


def test_that_the_header_alone_is_told() -> None:
    both("")
    both(HEADER)
    both("nothing,here\n1,2\n")
