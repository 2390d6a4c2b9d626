"""Corrections as changes of a piece: what is kept, in which order the coats then lie, and what is refused."""

from __future__ import annotations

import itertools
from dataclasses import replace

import pytest

from studiowatch.service.bench import Bench
from studiowatch.service.commands import AmendPiece, LayCoat, Paint, Refused, RegisterPiece
from studiowatch.service.correction_commands import (
    CorrectCoat,
    CorrectLook,
    RestorePiece,
    TakeBackCoat,
    TakeBackLook,
    TakeBackOutcome,
)
from studiowatch.service.orders import PieceCommand, carry_out
from studiowatch.store.studio_file import read_studio, write_studio
from studiowatch.studio.pieces import Coat, Finding, Look, Outcome, Piece, Shape

NOW_MS = 1_800_000_000_000
HOUR_MS = 3_600_000


def bench(*pieces: Piece) -> Bench:
    numbers = itertools.count()
    return Bench(
        pieces=pieces,
        sheets=frozenset({"isolation", "gloss", "satin", "poured"}),
        now_ms=NOW_MS,
        new_key=lambda: f"new{next(numbers)}",
        paints=frozenset({"poured"}),
    )


def piece(**changes: object) -> Piece:
    look = Look(key="seen", time_ms=NOW_MS - HOUR_MS, finding=Finding.TACKY)
    plain = Piece(
        key="p",
        title="Quarry Steps",
        width_cm=40,
        height_cm=30,
        coats=(
            Coat(key="iso", sheet="isolation", laid_ms=NOW_MS - 20 * HOUR_MS, volume_mL=12, outcome=Outcome.CLEAR),
            Coat(key="g1", sheet="gloss", laid_ms=NOW_MS - 2 * HOUR_MS, looks=(look,)),
            Coat(key="s1", sheet="satin"),
        ),
    )
    return replace(plain, **changes)


def done(command: PieceCommand, *pieces: Piece) -> Piece:
    return carry_out(command, bench(*(pieces or (piece(),)))).piece


def refused(command: PieceCommand, *pieces: Piece) -> str:
    with pytest.raises(Refused) as refusal:
        done(command, *pieces)
    return str(refusal.value)


def test_that_a_corrected_coat_keeps_its_looks_and_takes_what_is_given() -> None:
    command = CorrectCoat(coat_key="g1", sheet="satin", laid_ms=NOW_MS - 3 * HOUR_MS, grams=9, thinned_pct=5)
    coat = done(command).coats[1]
    assert (coat.key, coat.sheet, coat.laid_ms, coat.grams, coat.thinned_pct) == (
        "g1",
        "satin",
        NOW_MS - 3 * HOUR_MS,
        9,
        5,
    )
    assert [look.key for look in coat.looks] == ["seen"]


def test_that_a_coat_laid_before_the_one_below_goes_under_it() -> None:
    command = CorrectCoat(coat_key="g1", sheet="gloss", laid_ms=NOW_MS - 30 * HOUR_MS)
    assert [coat.key for coat in done(command).coats] == ["g1", "iso", "s1"]


@pytest.mark.parametrize(
    ("changes", "words"),
    [
        ({"laid_ms": NOW_MS + HOUR_MS}, ["60 min ahead"]),
        ({"laid_ms": NOW_MS - HOUR_MS // 2}, ["look", "before it was laid"]),
        ({"grams": 3.0, "wet_um": 80.0}, ["once"]),
        ({"volume_mL": float("inf")}, ["inf mL", "20000 mL"]),
        ({"thinned_pct": 61.0}, ["61 %", "0 to 60 %"]),
        ({"covered_ms": NOW_MS - 3 * HOUR_MS}, ["before the coat was laid"]),
        ({"sheet": "glos"}, ["glos", "choose"]),
    ],
)
def test_that_a_correction_that_cannot_be_is_refused_in_one_sentence(
    changes: dict[str, object], words: list[str]
) -> None:
    told = refused(replace(CorrectCoat(coat_key="g1", sheet="gloss", laid_ms=NOW_MS - 2 * HOUR_MS), **changes))
    assert all(word in told for word in words)
    assert told.count(". ") <= 1


def test_that_a_coat_taken_back_is_gone_or_planned_anew() -> None:
    assert [coat.key for coat in done(TakeBackCoat(coat_key="g1")).coats] == ["iso", "s1"]
    again = done(TakeBackCoat(coat_key="g1", plan_again=True)).coats
    assert [(coat.sheet, coat.laid_ms) for coat in again[1:]] == [("gloss", None), ("satin", None)]
    assert again[1].key != "g1"
    assert again[1].looks == ()


def test_that_a_look_is_corrected_and_taken_back() -> None:
    earlier_ms = NOW_MS - HOUR_MS - 600_000
    look = done(CorrectLook(look_key="seen", time_ms=earlier_ms, finding=Finding.DRY)).coats[1].looks[0]
    assert look == Look(key="seen", time_ms=earlier_ms, finding=Finding.DRY)
    assert done(TakeBackLook(look_key="seen")).coats[1].looks == ()
    assert "before the coat" in refused(CorrectLook(look_key="seen", time_ms=0, finding=Finding.DRY))
    assert "not in the records" in refused(TakeBackLook(look_key="none"))


def test_that_an_outcome_is_open_again_once() -> None:
    after = done(TakeBackOutcome(coat_key="iso"))
    assert (after.coats[0].outcome, after.coats[0].seen_ms) == (None, None)
    assert "nothing to take back" in refused(TakeBackOutcome(coat_key="iso"), after)


def test_that_a_forgotten_coat_goes_below_only_when_that_is_said() -> None:
    command = LayCoat(piece_key="p", laid_ms=NOW_MS - 10 * HOUR_MS, sheet="gloss")
    assert "laid later" in refused(command)
    assert [coat.key for coat in done(replace(command, below=True)).coats] == ["iso", "new0", "g1", "s1"]


def test_that_an_archived_piece_comes_back_behind_the_others_unless_its_title_is_taken() -> None:
    away = piece(key="old", archived=True)
    assert refused(RestorePiece(piece_key="old"), away, piece()).startswith("There is another piece")
    back = done(RestorePiece(piece_key="old"), away, piece(title="Low Tide", place=3))
    assert (back.archived, back.place) == (False, 4)
    assert "already" in refused(RestorePiece(piece_key="p"), piece())


def test_that_paint_is_registered_as_the_lowest_coat_laid_when_it_was_finished() -> None:
    paint = Paint(sheet="poured", finished_ms=NOW_MS - 200 * HOUR_MS, wet_um=1500)
    made = done(RegisterPiece(title="Low Tide", width_cm=10, height_cm=10, paint=paint, sheets=("gloss",)))
    assert [(coat.sheet, coat.laid_ms, coat.wet_um) for coat in made.coats] == [
        ("poured", NOW_MS - 200 * HOUR_MS, 1500),
        ("gloss", None, None),
    ]


def test_that_paint_is_corrected_in_its_place_and_never_above_a_coat() -> None:
    paint = Paint(sheet="poured", finished_ms=NOW_MS - 200 * HOUR_MS)
    painted = done(AmendPiece(piece_key="p", paint=paint))
    assert [coat.sheet for coat in painted.coats] == ["poured", "isolation", "gloss", "satin"]
    again = done(AmendPiece(piece_key="p", paint=replace(paint, wet_um=900)), painted)
    assert [coat.key for coat in again.coats] == [coat.key for coat in painted.coats]
    assert again.coats[0].wet_um == 900
    late = AmendPiece(piece_key="p", paint=replace(paint, finished_ms=NOW_MS - HOUR_MS))
    assert "after the first coat" in refused(late)
    assert "not of a paint" in refused(AmendPiece(piece_key="p", paint=replace(paint, sheet="gloss")))


def test_that_paint_that_was_finished_later_is_covered_from_then_and_not_looked_at_before() -> None:
    paint = Paint(sheet="poured", finished_ms=NOW_MS - 200 * HOUR_MS)
    painted = done(AmendPiece(piece_key="p", paint=paint), piece(coats=()))
    covered = replace(painted.coats[0], covered_from_ms=NOW_MS - 199 * HOUR_MS)
    later = AmendPiece(piece_key="p", paint=replace(paint, finished_ms=NOW_MS - 100 * HOUR_MS))
    after = done(later, replace(painted, coats=(covered,)))
    assert (after.coats[0].laid_ms, after.coats[0].covered_from_ms) == (NOW_MS - 100 * HOUR_MS,) * 2
    assert read_studio(write_studio([after]), "studio.toml").pieces == (after,)
    look = Look(key="seen", time_ms=NOW_MS - 150 * HOUR_MS, finding=Finding.TACKY)
    assert "look" in refused(later, replace(painted, coats=(replace(covered, looks=(look,)),)))


def test_that_coats_to_come_are_replaced_and_those_that_stay_keep_their_keys() -> None:
    after = done(AmendPiece(piece_key="p", sheets=("gloss", "satin")))
    assert [(coat.key, coat.sheet) for coat in after.coats[2:]] == [("new0", "gloss"), ("s1", "satin")]


@pytest.mark.parametrize(
    ("changes", "words"),
    [
        ({"shape": Shape.PANELS, "panels": 51}, ["51 panels", "1 to 50"]),
        ({"panels": 3}, ["3", "set of panels"]),
        ({"photo": "../../etc/passwd"}, ["not a photo"]),
        ({"photo": "photo-0123456789abcdef.jpg/../x"}, ["not a photo"]),
        ({"notes": "x" * 4001}, ["4001", "4000"]),
        ({"notes": "a\0b"}, ["cannot be shown"]),
        ({"support": "x" * 121}, ["121", "120"]),
    ],
)
def test_that_a_field_that_cannot_be_is_refused(changes: dict[str, object], words: list[str]) -> None:
    told = refused(replace(AmendPiece(piece_key="p"), **changes))
    assert all(word in told for word in words)


def test_that_a_soft_hyphen_pasted_into_the_notes_is_left_out() -> None:
    assert done(AmendPiece(piece_key="p", notes="var\u00adnish\nmatt")).notes == "varnish\nmatt"


def test_that_a_set_of_panels_becomes_one_rectangle_again() -> None:
    panels = done(AmendPiece(piece_key="p", shape=Shape.PANELS, panels=3))
    assert panels.area_m2 == pytest.approx(3 * 0.4 * 0.3)
    assert done(AmendPiece(piece_key="p", shape=Shape.ROUND), panels).panels == 1


def test_that_a_due_date_can_be_taken_away() -> None:
    assert done(AmendPiece(piece_key="p", no_due=True)).due is None
