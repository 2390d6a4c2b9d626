"""Commands as changes of a piece: what is allowed, and that a refusal says what, value, unit and allowed."""

from __future__ import annotations

import itertools
from dataclasses import replace
from datetime import date

import pytest

from studiowatch.service.bench import Bench
from studiowatch.service.commands import (
    AmendPiece,
    ArchivePiece,
    CoverCoat,
    LayCoat,
    MovePiece,
    RecordLook,
    RecordOutcome,
    Refused,
    RegisterPiece,
)
from studiowatch.service.orders import PieceCommand, carry_out
from studiowatch.service.plan_commands import PlanCoat
from studiowatch.store.field_values import read_title
from studiowatch.studio.pieces import Coat, Finding, Outcome, Piece

NOW_MS = 1_800_000_000_000
HOUR_MS = 3_600_000


def bench(*pieces: Piece) -> Bench:
    numbers = itertools.count()
    return Bench(
        pieces=pieces,
        sheets=frozenset({"isolation", "gloss", "satin"}),
        now_ms=NOW_MS,
        new_key=lambda: f"new{next(numbers)}",
    )


def piece(**changes: object) -> Piece:
    plain = Piece(
        key="p",
        title="Quarry Steps",
        width_cm=40,
        height_cm=30,
        coats=(
            Coat(key="iso", sheet="isolation", laid_ms=NOW_MS - 20 * HOUR_MS),
            Coat(key="g1", sheet="gloss"),
            Coat(key="s1", sheet="satin"),
        ),
    )
    return replace(plain, **changes)


@pytest.mark.parametrize(
    "order",
    [
        RegisterPiece(title="Low Tide", width_cm=60, height_cm=90, due=date(9999, 12, 31)),
        AmendPiece(piece_key="p", due=date(2201, 1, 1)),
        RegisterPiece(title="Low Tide", width_cm=60, height_cm=90, due=date(1, 1, 1)),
        AmendPiece(piece_key="p", due=date(1969, 12, 31)),
    ],
)
def test_that_a_day_is_refused_that_a_studio_file_could_not_be_read_with(order: PieceCommand) -> None:
    with pytest.raises(Refused, match=r"due is \d{4}-\d\d-\d\d; allowed is a day of the years 1970 to 2200"):
        carry_out(order, bench(piece()))


def test_that_a_piece_is_registered_with_its_planned_coats_at_the_end_of_the_rack() -> None:
    order = RegisterPiece(
        title="  Low   Tide ", width_cm=60, height_cm=90, due=date(2026, 5, 1), sheets=("isolation", "gloss")
    )
    made = carry_out(order, bench(piece(place=4))).piece
    assert made.title == "Low Tide"
    assert [coat.sheet for coat in made.coats] == ["isolation", "gloss"]
    assert all(coat.laid_ms is None for coat in made.coats)
    assert made.place == 5
    assert made.area_m2 == pytest.approx(0.54)


@pytest.mark.parametrize(
    ("changes", "words"),
    [
        ({"title": "   "}, ["title", "0 characters", "1 to 120"]),
        ({"title": "Quarry Steps"}, ["Quarry Steps", "already"]),
        ({"title": "Low\0Tide"}, ["cannot be shown"]),
        ({"title": "Low \udcff Tide"}, ["cannot be shown"]),
        ({"title": "Low \u202e Tide"}, ["cannot be shown"]),
        ({"title": "\u200d"}, ["title", "0 characters", "1 to 120"]),
        ({"width_cm": 0.0}, ["width", "0 cm", "1 to 1000 cm"]),
        ({"height_cm": float("nan")}, ["height", "nan cm", "1 to 1000 cm"]),
        ({"sheets": ("isolation", "glos")}, ["glos", "choose"]),
    ],
)
def test_that_a_bad_registration_is_refused_in_one_sentence(changes: dict[str, object], words: list[str]) -> None:
    order = replace(RegisterPiece(title="Low Tide", width_cm=60, height_cm=90), **changes)
    with pytest.raises(Refused) as refusal:
        carry_out(order, bench(piece()))
    for word in words:
        assert word in str(refusal.value)


@pytest.mark.parametrize("title", ["\u0645\u06cc\u200c\u062e\u0648\u0645", "Kiln 👩\u200d🎨"])
def test_that_words_that_need_a_joiner_or_a_parting_sign_are_taken_and_read_again(title: str) -> None:
    """The Unicode Standard, 23.2: they stand within words of Persian, and within one emoji of several."""
    made = carry_out(RegisterPiece(title=title, width_cm=60, height_cm=90), bench(piece())).piece
    assert made.title == title == read_title(title)


def test_that_a_planned_coat_is_laid_in_its_place_and_the_rest_stays_planned() -> None:
    order = LayCoat(piece_key="p", laid_ms=NOW_MS, sheet="gloss", coat_key="g1", volume_mL=12)
    changed = carry_out(order, bench(piece()))
    assert changed.key == "g1"
    assert [(coat.key, coat.laid_ms) for coat in changed.piece.coats] == [
        ("iso", NOW_MS - 20 * HOUR_MS),
        ("g1", NOW_MS),
        ("s1", None),
    ]
    assert changed.piece.coats[1].volume_mL == 12


def test_that_an_unplanned_coat_goes_on_top_of_those_laid() -> None:
    changed = carry_out(LayCoat(piece_key="p", laid_ms=NOW_MS, sheet="gloss", grams=15), bench(piece()))
    assert [coat.key for coat in changed.piece.coats] == ["iso", "new0", "g1", "s1"]


@pytest.mark.parametrize(
    ("changes", "words"),
    [
        ({"laid_ms": NOW_MS + HOUR_MS}, ["60 min ahead"]),
        ({"laid_ms": NOW_MS - 30 * HOUR_MS}, ["below", "later"]),
        ({"volume_mL": 10.0, "grams": 10.0}, ["once"]),
        ({"volume_mL": -3.0}, ["-3 mL", "0.05 to 20000 mL"]),
        ({"wet_um": float("inf")}, ["inf µm", "5 to 5000 µm"]),
        ({"thinned_pct": 80.0}, ["80 % of the volume", "0 to 60"]),
        ({"coat_key": "iso"}, ["already"]),
        ({"coat_key": "gone"}, ["not on Quarry Steps any more"]),
        ({"piece_key": "gone"}, ["not on the rack any more"]),
    ],
)
def test_that_a_bad_laying_is_refused_in_one_sentence(changes: dict[str, object], words: list[str]) -> None:
    order = replace(LayCoat(piece_key="p", laid_ms=NOW_MS, sheet="gloss"), **changes)
    with pytest.raises(Refused) as refusal:
        carry_out(order, bench(piece()))
    for word in words:
        assert word in str(refusal.value)


def test_that_looks_cover_and_outcome_are_kept_with_the_coat() -> None:
    state = piece()
    for order in (
        CoverCoat(coat_key="iso", covered_ms=NOW_MS - 19 * HOUR_MS),
        RecordLook(coat_key="iso", time_ms=NOW_MS - 18 * HOUR_MS, finding=Finding.MILKY),
        RecordLook(coat_key="iso", time_ms=NOW_MS - 17 * HOUR_MS, finding=Finding.CLEAR),
        RecordOutcome(coat_key="iso", seen_ms=NOW_MS, outcome=Outcome.CLEAR),
    ):
        state = carry_out(order, bench(state)).piece
    coat = state.coats[0]
    assert coat.covered_from_ms == NOW_MS - 19 * HOUR_MS
    assert [look.finding for look in coat.looks] == [Finding.MILKY, Finding.CLEAR]
    assert (coat.outcome, coat.seen_ms) == (Outcome.CLEAR, NOW_MS)


def test_that_a_look_before_laying_or_at_a_planned_coat_is_refused() -> None:
    early = RecordLook(coat_key="iso", time_ms=NOW_MS - 40 * HOUR_MS, finding=Finding.DRY)
    planned = RecordLook(coat_key="g1", time_ms=NOW_MS, finding=Finding.DRY)
    for order, words in ((early, "before the coat was laid"), (planned, "not on yet")):
        with pytest.raises(Refused, match=words):
            carry_out(order, bench(piece()))


def test_that_moving_a_piece_renumbers_the_others_without_gaps() -> None:
    rack = [piece(key=key, title=key, place=place) for place, key in enumerate("abcd")]
    changed = carry_out(MovePiece(piece_key="d", place=1), bench(*rack))
    places = {old.key: old.place for old in rack} | {old.key: old.place for old in (changed.piece, *changed.moved)}
    assert places == {"a": 0, "d": 1, "b": 2, "c": 3}


def test_that_amending_leaves_what_was_not_named_and_archiving_keeps_the_records() -> None:
    amended = carry_out(AmendPiece(piece_key="p", width_cm=50), bench(piece())).piece
    assert (amended.width_cm, amended.height_cm, amended.title) == (50, 30, "Quarry Steps")
    archived = carry_out(ArchivePiece(piece_key="p"), bench(piece())).piece
    assert archived.archived
    assert len(archived.coats) == 3


def test_that_a_coat_may_be_planned_on_top() -> None:
    changed = carry_out(PlanCoat(piece_key="p", sheet="satin"), bench(piece()))
    assert changed.piece.coats[-1] == Coat(key=changed.key, sheet="satin")


@pytest.mark.parametrize(
    "order",
    [
        AmendPiece(piece_key="p", width_cm=50),
        ArchivePiece(piece_key="p"),
        MovePiece(piece_key="p", place=0),
        PlanCoat(piece_key="p", sheet="satin"),
        LayCoat(piece_key="p", laid_ms=NOW_MS, sheet="gloss"),
        CoverCoat(coat_key="iso", covered_ms=NOW_MS),
        RecordLook(coat_key="iso", time_ms=NOW_MS, finding=Finding.DRY),
        RecordOutcome(coat_key="iso", seen_ms=NOW_MS, outcome=Outcome.CLEAR),
    ],
)
def test_that_nothing_is_done_to_a_piece_off_the_rack(order: PieceCommand) -> None:
    with pytest.raises(Refused, match="not on the rack any more"):
        carry_out(order, bench(piece(archived=True)))
