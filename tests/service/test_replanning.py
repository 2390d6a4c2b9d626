"""The coats to come as commands leave them; what is laid is never touched by a plan."""

from __future__ import annotations

import itertools
from dataclasses import replace

import pytest

from studiowatch.service.commands import Refused
from studiowatch.service.orders import Bench, carry_out
from studiowatch.service.plan_commands import (
    MovePlanned,
    PlanCoat,
    PlanCoats,
    PlannedCommand,
    ReplacePlanned,
    UnplanCoat,
)
from studiowatch.studio.pieces import Coat, Piece

NOW_MS = 1_800_000_000_000
PIECE = Piece(
    key="p",
    title="Quarry Steps",
    width_cm=40,
    height_cm=30,
    coats=(
        Coat(key="iso", sheet="isolation", laid_ms=NOW_MS - 1000),
        Coat(key="g1", sheet="gloss"),
        Coat(key="g2", sheet="gloss"),
        Coat(key="s1", sheet="satin"),
    ),
)


def after(command: PlannedCommand, piece: Piece = PIECE) -> list[tuple[str, str]]:
    numbers = itertools.count()
    bench = Bench(
        pieces=(piece,),
        sheets=frozenset({"isolation", "gloss", "satin", "matt"}),
        now_ms=NOW_MS,
        new_key=lambda: f"new{next(numbers)}",
    )
    return [(coat.key, coat.sheet) for coat in carry_out(command, bench).piece.coats]


ISO, G1, G2, S1 = [(coat.key, coat.sheet) for coat in PIECE.coats]


def test_that_a_coat_to_come_is_added_taken_out_replaced_and_moved() -> None:
    assert after(PlanCoat(piece_key="p", sheet="matt")) == [ISO, G1, G2, S1, ("new0", "matt")]
    assert after(UnplanCoat(coat_key="g2")) == [ISO, G1, S1]
    assert after(ReplacePlanned(coat_key="s1", sheet="matt")) == [ISO, G1, G2, ("s1", "matt")]
    assert after(MovePlanned(coat_key="s1", place=0)) == [ISO, S1, G1, G2]
    assert after(MovePlanned(coat_key="g1", place=99)) == [ISO, G2, S1, G1]
    assert after(MovePlanned(coat_key="g2", place=-3)) == [ISO, G2, G1, S1]


def test_that_a_recipe_takes_the_place_of_what_was_to_come_and_keeps_the_keys_it_can() -> None:
    told = after(PlanCoats(piece_key="p", sheets=("gloss", "matt", "gloss", "gloss")))
    assert told == [ISO, G1, ("new0", "matt"), G2, ("new1", "gloss")]
    assert after(PlanCoats(piece_key="p", sheets=())) == [ISO]


@pytest.mark.parametrize(
    "command",
    [
        UnplanCoat(coat_key="iso"),
        ReplacePlanned(coat_key="iso", sheet="gloss"),
        MovePlanned(coat_key="iso", place=2),
    ],
)
def test_that_a_coat_that_is_on_is_not_changed_by_the_plan(command: PlannedCommand) -> None:
    with pytest.raises(Refused, match="is on already, so the plan cannot change it"):
        after(command)


@pytest.mark.parametrize(
    ("command", "says"),
    [
        (UnplanCoat(coat_key="gone"), "not on the rack any more"),
        (ReplacePlanned(coat_key="s1", sheet="nowhere"), "no data sheet 'nowhere'"),
        (PlanCoats(piece_key="p", sheets=("gloss", "nowhere")), "no data sheet 'nowhere'"),
        (PlanCoats(piece_key="p", sheets=("gloss",) * 13), "13 coats to come; 12 are the most"),
    ],
)
def test_that_what_cannot_be_planned_is_refused_in_one_sentence(command: PlannedCommand, says: str) -> None:
    with pytest.raises(Refused, match=says):
        after(command)


def test_that_too_many_from_before_may_still_be_thinned_out() -> None:
    full = replace(PIECE, coats=tuple(Coat(key=f"c{n}", sheet="gloss") for n in range(14)))
    assert len(after(UnplanCoat(coat_key="c3"), full)) == 13
    with pytest.raises(Refused, match="12 are the most"):
        after(PlanCoat(piece_key="p", sheet="gloss"), full)
