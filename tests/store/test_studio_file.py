"""The studio file: read whole or with every fault named, written so that it reads back the same.

The standard library's own TOML reader is the judge of what is written.
"""

from __future__ import annotations

import tomllib
from datetime import UTC, date, datetime
from pathlib import Path
from tempfile import TemporaryDirectory

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from studiowatch.coats.stages import Orientation
from studiowatch.store.database import open_database
from studiowatch.store.records import RecordsStore
from studiowatch.store.studio_faults import StudioFileError
from studiowatch.store.studio_file import read_studio, write_studio
from studiowatch.studio.pieces import Coat, Finding, Look, Outcome, Piece, Shape, SIDE_cm

EXAMPLE = """\
[[piece]]
title = "Kiln Light"
width_cm = 40
height_cm = 40
due = 2026-03-20
[[piece.coat]]
sheet = "isolation-waterborne"
laid = 2026-03-02T09:00:00Z
volume_mL = 14            # or wet_um, or grams
thinned_pct = 0           # water added, % of volume
covered_from = 2026-03-02T09:20:00Z
outcome = "clear"
"""


FACE = """\
[[piece]]
title = "Three Tides"
width_cm = 20
height_cm = 30
shape = "panels"
panels = 3
photo = "tides.jpg"
notes = "wired at the back"
"""


def _ms(*moment: int) -> int:
    return int(datetime(*moment, tzinfo=UTC).timestamp() * 1000)


def _faults(text: str) -> list[str]:
    with pytest.raises(StudioFileError) as error:
        read_studio(text, "studio.toml")
    return str(error.value).split("\n")


def test_that_the_documented_example_is_read() -> None:
    (piece,) = read_studio(EXAMPLE, "studio.toml").pieces
    (coat,) = piece.coats
    assert (piece.title, piece.width_cm, piece.height_cm) == ("Kiln Light", 40.0, 40.0)
    assert piece.due == date(2026, 3, 20)
    assert (piece.support, piece.orientation, piece.place, piece.archived) == ("canvas", Orientation.FACE_UP, 0, False)
    assert coat.sheet == "isolation-waterborne"
    assert coat.laid_ms == _ms(2026, 3, 2, 9)
    assert coat.covered_from_ms == _ms(2026, 3, 2, 9, 20)
    assert (coat.volume_mL, coat.grams, coat.wet_um, coat.thinned_pct) == (14.0, None, None, 0.0)
    assert (coat.outcome, coat.seen_ms) == (Outcome.CLEAR, None)


def test_that_the_face_of_a_piece_its_photo_and_notes_are_read() -> None:
    (piece,) = read_studio(FACE, "studio.toml").pieces
    assert (piece.shape, piece.panels, piece.photo) == (Shape.PANELS, 3, "tides.jpg")
    assert piece.notes == "wired at the back"
    assert read_studio(write_studio([piece]), "studio.toml").pieces == (piece,)


@pytest.mark.parametrize(
    ("field", "value", "line"),
    [
        ("shape", '"star"', 5),
        ("panels", "0", 6),
        ("panels", "2.5", 6),
        ("panels", "true", 6),
        ("photo", '"../tides.jpg"', 7),
        ("photo", '"C:tides.jpg"', 7),
        ("photo", '"..\\\\tides.jpg"', 7),
        ("photo", '".tides"', 7),
    ],
)
def test_that_what_cannot_be_a_face_or_lies_in_another_folder_is_refused(field: str, value: str, line: int) -> None:
    lines = FACE.splitlines()
    assert lines[line - 1].startswith(field)
    lines[line - 1] = f"{field} = {value}"
    (sentence,) = _faults("\n".join(lines))
    assert sentence.startswith(f"studio.toml, line {line}: piece 1")
    assert f"{field} is " in sentence


def test_that_a_zone_other_than_utc_is_the_same_moment() -> None:
    text = EXAMPLE.replace("2026-03-02T09:00:00Z", "2026-03-02T10:00:00.250+01:00")
    (piece,) = read_studio(text, "studio.toml").pieces
    assert piece.coats[0].laid_ms == _ms(2026, 3, 2, 9) + 250


def test_that_a_byte_order_mark_and_windows_line_ends_do_no_harm() -> None:
    text = "\ufeff" + EXAMPLE.replace("\n", "\r\n")
    assert read_studio(text, "studio.toml").pieces == read_studio(EXAMPLE, "studio.toml").pieces


def test_that_keys_left_out_are_made_the_same_each_time_and_all_differ() -> None:
    text = EXAMPLE * 2 + '[[piece.coat.look]]\ntime = 2026-03-02T10:00:00Z\nfinding = "tacky"\n'
    once, again = (read_studio(text, origin).pieces for origin in ("a", "b"))
    assert once == again
    keys = [piece.key for piece in once]
    keys += [coat.key for piece in once for coat in piece.coats]
    keys += [look.key for piece in once for coat in piece.coats for look in coat.looks]
    assert len(keys) == len(set(keys)) == 5
    assert [piece.place for piece in once] == [0, 1]


def test_that_an_empty_file_holds_no_pieces() -> None:
    assert read_studio("", "studio.toml").pieces == ()
    assert read_studio(write_studio([]), "studio.toml").pieces == ()


def test_that_all_faults_are_named_at_once_by_line() -> None:
    text = EXAMPLE + (
        "[[piece]]\n"
        'title = "Quarry"\n'
        "width_cm = -3\n"
        "heigth_cm = 4\n"
        "[[piece.coat]]\n"
        'sheet = "gloss"\n'
        "laid = 2026-03-02T09:00:00\n"
        "grams = 1\n"
        "wet_um = nan\n"
        "[[piece.coat.look]]\n"
        "time = 2026-03-02\n"
    )
    moment = "a date and time with its zone, 1970 to 2200, like 2026-03-02T09:00:00Z"
    piece = (
        "title, width_cm, height_cm, due, support, orientation, place, archived, shape, panels, photo, notes, key, coat"
    )
    amounts = "allowed: only one of volume_mL, grams, wet_um"
    finding = '"tacky", "dry", "still milky", "clear"'
    assert _faults(text) == [
        'studio.toml, line 13: piece 2 "Quarry": height_cm is missing; allowed: a number above 0, up to 1000 (cm).',
        'studio.toml, line 15: piece 2 "Quarry": width_cm is -3; allowed: a number above 0, up to 1000 (cm).',
        f'studio.toml, line 16: piece 2 "Quarry": heigth_cm is not a field here; allowed: {piece}.',
        f'studio.toml, line 19: piece 2 "Quarry", coat 1: laid is 2026-03-02T09:00:00; allowed: {moment}.',
        'studio.toml, line 21: piece 2 "Quarry", coat 1: wet_um is nan; allowed: a number above 0, up to 10000 (µm).',
        f'studio.toml, line 21: piece 2 "Quarry", coat 1: wet_um is given beside grams; {amounts}.',
        f'studio.toml, line 22: piece 2 "Quarry", coat 1, look 1: finding is missing; allowed: {finding}.',
        f'studio.toml, line 23: piece 2 "Quarry", coat 1, look 1: time is 2026-03-02; allowed: {moment}.',
    ]


@pytest.mark.parametrize(
    ("field", "value", "line"),
    [
        ("title", '"  "', 2),
        ("title", "7", 2),
        ("title", '"Kiln\\nLight"', 2),
        ("title", f'"{"K" * 121}"', 2),
        ("width_cm", "0", 3),
        ("width_cm", "true", 3),
        ("width_cm", "inf", 3),
        ("width_cm", '"40"', 3),
        ("width_cm", "1" + "0" * 400, 3),
        ("due", '"2026-03-20"', 5),
        ("due", "2026-03-20T00:00:00Z", 5),
        ("due", "9999-01-01", 5),
        ("due", "1969-12-31", 5),
        ("laid", '"yesterday"', 8),
        ("laid", "2026-03-02", 8),
        ("laid", "1969-12-31T23:59:59Z", 8),
        ("volume_mL", "-1", 9),
        ("thinned_pct", "100.5", 10),
        ("thinned_pct", "nan", 10),
        ("covered_from", "2026-03-02T08:59:59Z", 11),
        ("outcome", '"splendid"', 12),
        ("outcome", "[1]", 12),
    ],
)
def test_that_a_value_that_may_not_stand_there_is_named_with_its_line(field: str, value: str, line: int) -> None:
    lines = EXAMPLE.splitlines()
    assert lines[line - 1].startswith(field)
    lines[line - 1] = f"{field} = {value}"
    (sentence,) = _faults("\n".join(lines))
    assert sentence.startswith(f"studio.toml, line {line}: piece 1")
    assert f"{field} is " in sentence
    assert "allowed: " in sentence


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("title = \n", "not TOML.*line 1"),
        ("x = 1\n", "x is not a field here; allowed: piece"),
        ("piece = 3\n", "piece is 3; allowed: tables under"),
        (EXAMPLE + "sides = 2\n", "line 13: piece 1 .*coat 1: sides is not a field here; allowed: sheet, laid"),
        (EXAMPLE.replace("[[piece.coat]]", "[piece.coat]"), r"coat is .*allowed: tables under \[\[piece.coat\]\]"),
        ("a = " + "9" * 5000, "not TOML"),
        ("a = 0x" + "f" * 5000, "a is not a field"),
        ("[[piece]]\ntitle = 0x" + "f" * 5000, "title is a number too long to show"),
        ("a = " + "[" * 5000, "not TOML"),
    ],
)
def test_that_a_broken_file_is_told_in_sentences(text: str, words: str) -> None:
    with pytest.raises(StudioFileError, match=words):
        read_studio(text, "studio.toml")


def test_that_coats_out_of_order_are_named() -> None:
    later, earlier, planned = (
        f'[[piece.coat]]\nsheet = "gloss"\n{laid}\n'
        for laid in ("laid = 2026-03-04T09:00:00Z", "laid = 2026-03-03T09:00:00Z", "# not yet")
    )
    piece = '[[piece]]\ntitle = "Quarry"\nwidth_cm = 20\nheight_cm = 20\n'
    read_studio(piece + earlier + later + planned, "studio.toml")
    (sentence,) = _faults(piece + later + earlier)
    assert 'line 10: piece 1 "Quarry", coat 2: laid is 2026-03-03T09:00:00Z' in sentence
    assert "laid 2026-03-04T09:00:00Z" in sentence
    (sentence,) = _faults(piece + planned + earlier)
    assert "coat 1, below it, is only planned" in sentence


def test_that_a_key_two_pieces_have_is_named_but_a_piece_and_its_coat_may_share_one() -> None:
    text = EXAMPLE.replace("due =", 'key = "same"\ndue =').replace("laid =", 'key = "{coat}"\nlaid =')
    read_studio(text.replace("{coat}", "same"), "studio.toml")
    (sentence,) = _faults(text.replace("{coat}", "a") + text.replace("{coat}", "b"))
    assert sentence == (
        'studio.toml, line 19: piece 2 "Kiln Light": key is "same"; allowed: a key that no other piece in the file has.'
    )


_TEXT = st.text(st.characters(exclude_categories=["Cs"]), min_size=1, max_size=20).filter(str.strip)
_TIMES = st.integers(min_value=0, max_value=7_000_000_000_000)  # UTC ms, up to the year 2191
_AMOUNT = st.floats(min_value=0, max_value=10_000, exclude_min=True)


@st.composite
def _coats(draw: st.DrawFn) -> list[Coat]:
    laid = sorted(draw(st.lists(_TIMES, max_size=3)))
    coats = []
    for laid_ms in [*laid, *draw(st.lists(st.none(), max_size=2))]:
        after = st.none() | st.integers(min_value=laid_ms or 0, max_value=7_000_000_000_000)
        looks = st.builds(Look, key=st.uuids().map(str), time_ms=_TIMES, finding=st.sampled_from(Finding))
        amount = draw(st.sampled_from(["volume_mL", "grams", "wet_um", "nothing"]))
        coat = Coat(
            key=str(draw(st.uuids())),
            sheet=draw(_TEXT),
            laid_ms=laid_ms,
            thinned_pct=draw(st.floats(min_value=0, max_value=100)),
            covered_from_ms=draw(after),
            outcome=draw(st.none() | st.sampled_from(Outcome)),
            seen_ms=draw(after),
            looks=tuple(draw(st.lists(looks, max_size=2))),
            **({} if amount == "nothing" else {amount: draw(_AMOUNT)}),
        )
        coats.append(coat)
    return coats


_TITLE = st.text(st.characters(categories=("L", "M", "N", "P", "S")), min_size=1, max_size=120)
_PIECES = st.lists(
    st.builds(
        Piece,
        key=st.uuids().map(str),
        title=_TITLE,
        width_cm=st.floats(min_value=0, max_value=SIDE_cm[1], exclude_min=True),
        height_cm=st.floats(min_value=0, max_value=SIDE_cm[1], exclude_min=True),
        due=st.none() | st.dates(min_value=date(1970, 1, 1), max_value=date(2200, 12, 31)),
        support=st.text(st.characters(exclude_categories=["Cs"]), max_size=10),
        orientation=st.sampled_from(Orientation),
        place=st.integers(min_value=0, max_value=100),
        archived=st.booleans(),
        coats=_coats().map(tuple),
    ),
    max_size=3,
)


@given(_PIECES)
def test_that_what_is_written_is_toml_and_reads_back_the_same(pieces: list[Piece]) -> None:
    text = write_studio(pieces)
    assert [table["title"] for table in tomllib.loads(text).get("piece", [])] == [piece.title for piece in pieces]
    assert list(read_studio(text, "studio.toml").pieces) == pieces


@settings(max_examples=25)
@given(_PIECES)
def test_that_records_written_out_and_read_into_another_studio_are_the_same(pieces: list[Piece]) -> None:
    with TemporaryDirectory() as folder:
        database = open_database(Path(folder) / "studio.sqlite3")
        records = RecordsStore(database, lambda: 0)
        for piece in pieces:
            records.save_piece(piece)
        kept = records.pieces()
        database.close()
    assert list(read_studio(write_studio(kept), "studio.toml").pieces) == sorted(pieces, key=lambda each: each.place)


_SCRAPS = st.lists(
    st.sampled_from([*EXAMPLE.splitlines(keepends=True), "[[piece.coat.look]]\n", "key = 'a'\n", "[piece]\n", '"""\n']),
    max_size=20,
).map("".join)


@given(st.text(max_size=40) | _SCRAPS)
def test_that_any_text_is_read_or_refused_in_sentences(text: str) -> None:
    try:
        read_studio(text, "studio.toml")
    except StudioFileError as error:
        assert all(str(fault).startswith("studio.toml") for fault in error.faults)  # noqa: PT017
        assert error.faults  # noqa: PT017
