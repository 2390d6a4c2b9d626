"""All records go out and in again without a difference, and nothing that is there is lost to what comes in."""

from __future__ import annotations

import json
from contextlib import closing
from dataclasses import replace
from pathlib import Path
from tempfile import TemporaryDirectory

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from studiowatch.room.corrections import UNNAMED, Sighting
from studiowatch.store.all_records import StudioConflict, read_all, take_all
from studiowatch.store.database import Database, open_database
from studiowatch.store.migrations import STEPS
from studiowatch.store.records import RecordsStore
from studiowatch.store.shapes import (
    CalibrationRecord,
    CheckRecord,
    CorrectionRecord,
    LearntRecord,
    NoteRecord,
    PromptRecord,
    WarningChange,
    WarningRecord,
)
from studiowatch.store.studio_faults import StudioFileError
from studiowatch.store.studio_file import Studio, read_studio, write_studio
from studiowatch.store.studio_tables import Row
from studiowatch.studio.pieces import Coat, Finding, Look, Piece, Shape

NOON_MS = 1_772_452_800_000
_TEXT = st.text(st.characters(exclude_categories=["Cs"]), min_size=1, max_size=12).filter(str.strip)
_TITLE = st.text(st.characters(categories=["L", "M", "N", "P", "S"]), min_size=1, max_size=12)
_ANY = st.text(st.characters(exclude_categories=["Cs"]), max_size=12)
_TIMES = st.integers(min_value=0, max_value=7_000_000_000_000)
_KEYS = st.uuids().map(str)
_NUMBERS = st.floats(allow_nan=False, allow_infinity=False)


# 33 % RH and 75 % RH at 25 °C: OIML R 121 (1996), from memory; here read a little off
HUMIDITY = CalibrationRecord(
    key="h",
    sensor="CAFE0042",
    made_ms=NOON_MS,
    withdrawn_ms=None,
    kind="humidity",
    measured=json.dumps(
        {
            "magnesium": {"raw_pct": 34.5, "temperature_C": 22.1, "time_ms": NOON_MS - 2000},
            "sodium": {"raw_pct": 77.1, "temperature_C": 22.7, "time_ms": NOON_MS - 1000},
        }
    ),
)
AIR = CalibrationRecord(
    key="v",
    sensor="CAFE0042",
    made_ms=NOON_MS,
    withdrawn_ms=NOON_MS + 1,
    kind="air-speed",
    measured=json.dumps(
        {
            "law": {"offset_mV2": 1e6, "slope": 8e5, "exponent": 0.47, "reference_C": 21.3, "bead_C": 75.0},
            "points": [{"speed_m_s": 0.0, "signal_mV": 1000.1, "temperature_C": 21.0}],
        }
    ),
)


@st.composite
def _studios(draw: st.DrawFn) -> Studio:
    coat_keys = draw(st.lists(_KEYS, min_size=1, max_size=3, unique=True))
    coats = [
        Coat(
            key=key,
            sheet=draw(_TEXT),
            looks=tuple(
                draw(st.lists(st.builds(Look, key=_KEYS, time_ms=_TIMES, finding=st.sampled_from(Finding)), max_size=2))
            ),
        )
        for key in coat_keys
    ]
    piece = Piece(
        key=draw(_KEYS),
        title=draw(_TITLE),
        width_cm=20.0,
        height_cm=30.0,
        shape=draw(st.sampled_from(Shape)),
        panels=draw(st.integers(min_value=1, max_value=50)),
        notes=draw(_ANY),
        coats=tuple(coats),
    )
    warnings = draw(
        st.lists(
            st.builds(
                WarningRecord,
                key=_KEYS,
                kind=_ANY,
                level=st.integers(0, 5),
                state=_ANY,
                headline=_ANY,
                detail=_ANY,
                advice=_ANY,
                began_ms=_TIMES,
                raised_ms=_TIMES,
                cleared_ms=st.none() | _TIMES,
                pieces=st.lists(_ANY, max_size=3).map(tuple),
                remind_ms=st.none() | _TIMES,
                ahead_ms=st.none() | _TIMES,
            ),
            max_size=2,
        )
    )
    rows: list[Row] = [
        PromptRecord(
            key=draw(_KEYS), coat_key=key, due_ms=draw(_TIMES), text=draw(_ANY), done_ms=draw(st.none() | _TIMES)
        )
        for key in coat_keys
    ]
    row = st.dictionaries(_TEXT, _NUMBERS, max_size=3)
    rows += [
        LearntRecord(
            coat_key=key,
            sheet=draw(_TEXT),
            sheet_hash=draw(_ANY),
            laid_ms=draw(_TIMES),
            tests=draw(st.integers(0, 9)),
            rows=tuple(draw(st.lists(row, max_size=2))),
        )
        for key in coat_keys
    ]
    rows += warnings
    rows += [WarningChange(warning_key=each.key, time_ms=draw(_TIMES), state=draw(_ANY)) for each in warnings]
    rows += draw(st.lists(st.just(HUMIDITY) | st.just(AIR), max_size=2, unique=True))
    rows += draw(st.lists(st.builds(Sighting, time_ms=_TIMES, sensor=_ANY), max_size=2, unique=True))
    rows += draw(st.lists(st.builds(CheckRecord, time_ms=_TIMES, sensor=_ANY), max_size=2, unique=True))
    rows += draw(st.lists(st.builds(NoteRecord, time_ms=_TIMES, kind=_ANY, text=_ANY), max_size=2, unique=True))
    rows += draw(
        st.lists(st.builds(CorrectionRecord, time_ms=_TIMES, piece_key=_KEYS, earlier=_ANY), max_size=2, unique=True)
    )
    return Studio(origin="studio.toml", pieces=(piece,), rows=tuple(rows))


@given(_studios())
def test_that_what_is_written_reads_back_the_same(studio: Studio) -> None:
    assert read_studio(write_studio(studio.pieces, studio.rows), "studio.toml") == studio


def test_that_what_is_known_of_a_sensor_without_a_serial_number_reads_back_the_same() -> None:
    rows: tuple[Row, ...] = (
        replace(HUMIDITY, sensor=UNNAMED),
        Sighting(time_ms=NOON_MS, sensor=UNNAMED),
        CheckRecord(time_ms=NOON_MS, sensor=UNNAMED),
    )
    assert read_studio(write_studio((), rows), "studio.toml").rows == rows


@settings(max_examples=20)
@given(_studios())
def test_that_records_taken_in_come_out_the_same_and_are_taken_once(studio: Studio) -> None:
    with TemporaryDirectory() as folder, closing(open_database(Path(folder) / "studio.sqlite3")) as database:
        told = take_all(database, studio, lambda: 0, replace=False)
        assert (told.new, told.there, told.replaced) == (1 + len(studio.rows), 0, 0)
        assert read_all(database, "studio.toml") == studio
        told = take_all(database, studio, lambda: 0, replace=False)
        assert (told.new, told.there, told.replaced) == (0, 1 + len(studio.rows), 0)
        assert read_all(database, "studio.toml") == studio


@pytest.fixture
def piece() -> Piece:
    look = Look(key="look", time_ms=NOON_MS, finding=Finding.DRY)
    coat = Coat(key="coat", sheet="gloss-waterborne", laid_ms=NOON_MS, looks=(look,))
    return Piece(key="piece", title="Kiln Light", width_cm=40.0, height_cm=40.0, coats=(coat,))


@pytest.fixture
def filled(database: Database, piece: Piece) -> Database:
    RecordsStore(database, lambda: NOON_MS).save_piece(piece)
    return database


def test_that_a_conflict_takes_nothing_over(filled: Database, piece: Piece) -> None:
    before = read_all(filled, "")
    other = replace(piece, key="other", title="New", coats=())
    with pytest.raises(StudioConflict, match='"Kiln Light" in another form'):
        take_all(filled, Studio(origin="f", pieces=(other, replace(piece, width_cm=41.0))), lambda: 0, replace=False)
    prompt = PromptRecord(key="p", coat_key="nowhere", due_ms=NOON_MS, text="")
    with pytest.raises(StudioConflict, match="prompt of a coat that is not there, nowhere"):
        take_all(filled, Studio(origin="f", pieces=(other,), rows=(prompt,)), lambda: 0, replace=False)
    assert read_all(filled, "") == before


def test_that_no_two_pieces_of_one_title_come_to_stand_on_the_rack(filled: Database, piece: Piece) -> None:
    def taken(*pieces: Piece) -> int:
        return take_all(filled, Studio(origin="f", pieces=pieces), lambda: 0, replace=True).new

    twin = replace(piece, key="twin", coats=())
    with pytest.raises(StudioConflict, match='two pieces called "Kiln Light" on the rack'):
        taken(twin)
    with pytest.raises(StudioConflict, match='two pieces called "New" on the rack'):
        taken(replace(twin, title="New"), replace(twin, key="third", title="New"))
    assert taken(replace(twin, archived=True)) == 1
    with pytest.raises(StudioConflict, match='two pieces called "Kiln Light" on the rack'):
        taken(twin)
    assert taken(replace(piece, archived=True), twin, replace(twin, key="third", title="New")) == 1


def test_that_no_piece_takes_a_coat_or_a_look_from_another(filled: Database, piece: Piece) -> None:
    before = read_all(filled, "")
    thief = replace(piece, key="thief")
    with pytest.raises(StudioConflict, match="its key at another piece"):
        take_all(filled, Studio(origin="f", pieces=(thief,)), lambda: 0, replace=True)
    thief = replace(thief, coats=(replace(piece.coats[0], key="own"),))
    with pytest.raises(StudioConflict, match="key of its looks at another coat"):
        take_all(filled, Studio(origin="f", pieces=(thief,)), lambda: 0, replace=True)
    assert read_all(filled, "") == before


@pytest.mark.parametrize(
    "changes",
    [
        {"measured": "{"},
        {"measured": "[]"},
        {"measured": HUMIDITY.measured.replace("34.5", '"damp"')},
        {"measured": HUMIDITY.measured.replace("34.5", "NaN")},
        {"measured": HUMIDITY.measured.replace("34.5", "77.1")},
        {"measured": AIR.measured},
        {"kind": "temperature"},
    ],
)
def test_that_what_is_no_calibration_is_not_taken_in(database: Database, changes: dict[str, str]) -> None:
    with pytest.raises(StudioConflict, match="calibration h of CAFE0042 cannot be one"):
        take_all(
            database, Studio(origin="f", pieces=(), rows=(replace(HUMIDITY, **changes),)), lambda: 0, replace=False
        )
    assert read_all(database, "").rows == ()


def test_that_records_of_an_earlier_version_go_out_too(tmp_path: Path) -> None:
    with closing(open_database(tmp_path / "old.sqlite3", steps=STEPS[:1])) as database:
        RecordsStore(database, lambda: NOON_MS).note(NOON_MS, "board", "of our own")
        with database.transaction() as connection:
            connection.execute(
                "INSERT INTO piece (key, title, width_cm, height_cm, support, orientation, place, archived) "
                "VALUES ('old', 'Low Tide', 20, 30, 'canvas', 'face-up', 0, 0)"
            )
        assert read_all(database, "").pieces == (Piece(key="old", title="Low Tide", width_cm=20.0, height_cm=30.0),)
        assert read_all(database, "").rows == (NoteRecord(time_ms=NOON_MS, kind="board", text="of our own"),)


def test_that_a_replaced_piece_is_kept_as_a_correction(filled: Database, piece: Piece) -> None:
    changed = replace(piece, width_cm=41.0)
    told = take_all(filled, Studio(origin="f", pieces=(changed,)), lambda: NOON_MS, replace=True)
    assert (told.new, told.there, told.replaced) == (0, 0, 1)
    after = read_all(filled, "")
    assert after.pieces == (changed,)
    (correction,) = [row for row in after.rows if isinstance(row, CorrectionRecord)]
    assert '"width_cm": 40.0' in correction.earlier


def test_that_faults_of_the_tables_beside_the_pieces_are_named_by_line() -> None:
    text = (
        '[[piece]]\ntitle = "Quarry"\nwidth_cm = 20\nheight_cm = 20\n'
        '[[prompt]]\nkey = "a"\ncoat = "c"\ndue = 2026-03-02\ntext = "look"\n'
        '[[prompt]]\nkey = "a"\ncoat = "c"\ndue = 2026-03-02T09:00:00Z\ntext = "look"\ntone = 3\n'
        '[[note]]\ntime = 2026-03-02T09:00:00Z\nkind = "x"\n'
    )
    with pytest.raises(StudioFileError) as error:
        read_studio(text, "studio.toml")
    told = str(error.value).split("\n")
    assert [line.split(";")[0] for line in told] == [
        "studio.toml, line 8: prompt 1: due is 2026-03-02",
        'studio.toml, line 11: prompt 2: key is "a"',
        "studio.toml, line 15: prompt 2: tone is not a field here",
        "studio.toml, line 16: note 1: text is missing",
    ]


def test_that_a_long_file_is_taken_again_without_comparing_each_row_with_all(
    database: Database, monkeypatch: pytest.MonkeyPatch
) -> None:
    rows = tuple(NoteRecord(time_ms=NOON_MS + at, kind="board", text="of our own") for at in range(300))
    assert take_all(database, Studio(origin="f", pieces=(), rows=rows), lambda: 0, replace=False).new == len(rows)
    compared = 0
    is_same = NoteRecord.__eq__

    def counted(one: NoteRecord, other: object) -> bool:
        nonlocal compared
        compared += 1
        return is_same(one, other)

    monkeypatch.setattr(NoteRecord, "__eq__", counted)
    again = take_all(database, Studio(origin="f", pieces=(), rows=rows), lambda: 0, replace=False)
    assert (again.new, again.there) == (0, len(rows))
    assert compared <= 3 * len(rows)  # once to find it, and once to tell whether it is the same
