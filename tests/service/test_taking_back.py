"""Undo, redo and corrections on the rack: pieces, runs, what was learnt and the records go along."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from pathlib import Path

import pytest

from studiowatch.coats.stages import Stage
from studiowatch.service.commands import ArchivePiece, LayCoat, MovePiece, RecordLook, Refused, RegisterPiece
from studiowatch.service.correction_commands import CorrectCoat, Redo, TakeBackCoat, TakeBackLook, Undo
from studiowatch.service.disk import Disk
from studiowatch.service.intention_desk import IntentionDesk
from studiowatch.service.local_time import wall_clock
from studiowatch.service.orders import PieceCommand
from studiowatch.service.plan_desk import PlanDesk
from studiowatch.service.prompt_desk import PromptDesk
from studiowatch.service.rack import Rack
from studiowatch.service.rack_views import piece_views
from studiowatch.service.sheet_desk import SheetDesk
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.service.taking_back import Desks, take_back
from studiowatch.service.undo_pile import MOST, Deed, UndoPile
from studiowatch.service.warning_desk import WarningDesk
from studiowatch.speech.units import US, choose
from studiowatch.store.database import open_database
from studiowatch.store.records import RecordsStore
from studiowatch.studio.pieces import Coat, Finding, Piece

from .racks import HOUR_MS, MINUTE_MS, MinuteLog
from .rooms import START_MS

NOW_MS = START_MS + 6 * HOUR_MS


class Bench:
    """A rack on real records, and the prompts beside it."""

    def __init__(self, folder: Path, pieces: Sequence[Piece]) -> None:
        self.now_ms = NOW_MS
        self.database = open_database(folder / "studio.sqlite3")
        self.records = RecordsStore(self.database, lambda: self.now_ms)
        self.records.save_pieces(pieces)
        self.rack = Rack(shelf=SheetShelf.open(), records=self.records, log=MinuteLog(NOW_MS))
        self.rack.open(NOW_MS)
        self.prompts = PromptDesk(records=self.records, disk=Disk())
        self.desks = Desks(
            rack=self.rack,
            prompts=self.prompts,
            warnings=WarningDesk(records=self.records, disk=Disk(), clock_text=str, silent_after_s=10.0),
            plans=PlanDesk(rack=self.rack, records=self.records, clock=wall_clock()),
            intentions=IntentionDesk(records=self.records, clock=wall_clock(), vapour=lambda _: ""),
            sheets=SheetDesk(rack=self.rack),
        )

    def do(self, command: PieceCommand) -> str:
        key = self.rack.carry_out(command, self.now_ms)
        self.rack.follow(self.now_ms)
        return key

    def back(self, command: Undo | Redo) -> str:
        words, _ = take_back(command, self.desks, self.now_ms)
        self.rack.follow(self.now_ms)
        return words

    def ready_ms(self) -> int | None:
        (view, *_) = piece_views(self.rack, lambda _: None, self.now_ms)  # type: ignore[arg-type, return-value]
        return view.next_ms

    def stages(self, key: str) -> list[float | None]:
        return [None if (at := self.rack.runs[key].ahead.get(stage)) is None else at.nominal_s for stage in Stage]


@pytest.fixture
def bench(tmp_path: Path) -> Bench:
    gloss = Coat(key="low", sheet="gloss-waterborne", laid_ms=START_MS, volume_mL=12.8)
    to_come = Coat(key="top", sheet="gloss-waterborne")
    return Bench(tmp_path, [Piece(key="p", title="Low Tide", width_cm=40, height_cm=40, coats=(gloss, to_come))])


def lay_top(bench: Bench) -> None:
    bench.do(LayCoat(piece_key="p", coat_key="top", sheet="gloss-waterborne", laid_ms=NOW_MS - HOUR_MS))


def test_that_a_coat_laid_by_mistake_is_undone_as_if_it_had_never_been(bench: Bench) -> None:
    before, stages = bench.ready_ms(), bench.stages("low")
    lay_top(bench)
    assert bench.rack.runs["top"].over is bench.rack.runs["low"]
    assert bench.rack.pile.view().undo == "laid gloss 2 on Low Tide"
    assert bench.back(Undo()) == "laid gloss 2 on Low Tide"
    assert "top" not in bench.rack.runs
    assert bench.rack.runs["low"].film.seal is None
    assert bench.ready_ms() == before
    assert bench.stages("low") == stages
    assert bench.records.pieces()[0].coats[1].laid_ms is None
    assert bench.back(Redo()) == "laid gloss 2 on Low Tide"
    assert bench.records.pieces()[0].coats[1].laid_ms == NOW_MS - HOUR_MS
    assert bench.rack.runs["top"].over is bench.rack.runs["low"]


def test_that_each_kind_of_deed_is_undone_in_turn_and_the_records_are_as_they_were(bench: Bench) -> None:
    first = bench.records.pieces()
    bench.do(RegisterPiece(title="Gate", width_cm=20, height_cm=20, sheets=("isolation-waterborne",)))
    bench.do(MovePiece(piece_key="p", place=1))
    bench.do(RecordLook(coat_key="low", time_ms=NOW_MS - 60_000, finding=Finding.DRY))
    bench.do(TakeBackCoat(coat_key="low", plan_again=True))
    bench.do(ArchivePiece(piece_key="p"))
    said = [bench.back(Undo()) for _ in range(5)]
    assert said == [
        "took Low Tide off the rack",
        "took back gloss 1 on Low Tide",
        "tested gloss 1 on Low Tide",
        "moved Low Tide",
        "registered Gate",
    ]
    there = [piece for piece in bench.records.pieces() if not piece.archived]
    assert there == list(first)
    with pytest.raises(Refused, match="nothing to undo"):
        bench.back(Undo())
    for _ in said:
        bench.back(Redo())
    assert [piece.title for piece in bench.rack.on_rack()] == ["Gate"]
    with pytest.raises(Refused, match="nothing to do again"):
        bench.back(Redo())


def test_that_a_piece_taken_off_the_rack_by_mistake_is_as_dry_as_before_once_that_is_undone(bench: Bench) -> None:
    before, stages = bench.ready_ms(), bench.stages("low")
    bench.do(ArchivePiece(piece_key="p"))
    bench.back(Undo())
    assert bench.stages("low") == stages
    assert bench.ready_ms() == before


def test_that_a_new_deed_ends_what_could_be_done_again(bench: Bench) -> None:
    lay_top(bench)
    bench.back(Undo())
    bench.do(RecordLook(coat_key="low", time_ms=NOW_MS - 60_000, finding=Finding.DRY))
    assert bench.rack.pile.view().redo == ""


def test_that_what_a_test_taught_is_unlearnt_with_it_and_learnt_again(bench: Bench) -> None:
    unlearnt = bench.ready_ms()
    look_ms = START_MS + 50 * MINUTE_MS
    key = bench.do(RecordLook(coat_key="low", time_ms=look_ms, finding=Finding.TACKY))
    learnt = bench.ready_ms()
    assert learnt is not None
    assert unlearnt is not None
    assert bench.rack.learning.views()[0].tests == 1
    bench.do(TakeBackLook(look_key=key))
    assert bench.rack.learning.views() == ()
    assert [record.tests for record in bench.records.learnt()] == [0]
    assert bench.ready_ms() == unlearnt
    bench.back(Undo())
    assert bench.rack.learning.views()[0].tests == 1
    assert bench.ready_ms() == pytest.approx(learnt, abs=MINUTE_MS)


def test_that_a_tested_coat_taken_back_teaches_nothing_and_undone_teaches_again(bench: Bench) -> None:
    bench.do(RecordLook(coat_key="low", time_ms=START_MS + 50 * MINUTE_MS, finding=Finding.TACKY))
    bench.do(TakeBackCoat(coat_key="low"))
    assert bench.rack.learning.views() == ()
    assert list(bench.records.learnt()) == []
    bench.back(Undo())
    assert [(record.coat_key, record.tests) for record in bench.records.learnt()] == [("low", 1)]


def test_that_a_later_laying_moves_the_ready_time_by_as_much(bench: Bench) -> None:
    before = bench.rack.runs["low"].ahead[Stage.DRY_TO_RECOAT]
    corrected = CorrectCoat(coat_key="low", sheet="gloss-waterborne", laid_ms=START_MS + HOUR_MS, volume_mL=12.8)
    bench.do(corrected)
    after = bench.rack.runs["low"]
    assert after.laid_ms == START_MS + HOUR_MS
    # the room is the same all day, so the coat takes as long as it did, from an hour later on
    assert after.ahead[Stage.DRY_TO_RECOAT].nominal_s == pytest.approx(before.nominal_s or 0, rel=0.01)


def test_that_coats_corrected_into_another_order_dry_in_that_order(bench: Bench) -> None:
    lay_top(bench)
    bench.do(CorrectCoat(coat_key="top", sheet="gloss-waterborne", laid_ms=START_MS - HOUR_MS))
    assert bench.rack.runs["low"].over is bench.rack.runs["top"]
    assert bench.rack.runs["top"].over is None


def test_that_the_history_of_corrections_says_what_stood_there(bench: Bench) -> None:
    bench.do(RecordLook(coat_key="low", time_ms=NOW_MS - 60_000, finding=Finding.DRY))
    assert bench.rack.corrections.views(bench.rack.pieces["p"]) == ()
    bench.now_ms += 600_000
    bench.do(CorrectCoat(coat_key="low", sheet="gloss-waterborne", laid_ms=START_MS + 45 * MINUTE_MS, volume_mL=14))
    (amount, laid) = sorted(bench.rack.corrections.views(bench.rack.pieces["p"]), key=lambda one: one.words)
    assert laid.time_ms == NOW_MS + 600_000
    assert laid.words.startswith("gloss 1: laid ")
    assert ":45 instead of " in laid.words
    assert amount.words == "gloss 1: 14 mL instead of 12.8 mL"
    bench.back(Undo())
    assert len(bench.rack.corrections.views(bench.rack.pieces["p"])) == 4


def test_that_the_history_of_corrections_is_said_in_the_units_that_she_chose_since(bench: Bench) -> None:
    bench.do(CorrectCoat(coat_key="low", sheet="gloss-waterborne", laid_ms=START_MS, volume_mL=59.147))
    (metric,) = bench.rack.corrections.views(bench.rack.pieces["p"])
    assert metric.words.endswith(" instead of 12.8 mL")
    choose(US)
    (ours,) = bench.rack.corrections.views(bench.rack.pieces["p"])
    assert ours.words.startswith("gloss 1: 2 fl oz instead of ")  # a US fluid ounce is 29.5735 mL, by definition


def test_that_a_set_clock_takes_the_pile_along(bench: Bench) -> None:
    lay_top(bench)
    moved = bench.rack.shift(-30 * MINUTE_MS)
    bench.records.save_pieces(moved)
    assert bench.back(Undo()) == "laid gloss 2 on Low Tide"
    assert bench.rack.pieces["p"].coats[1].laid_ms is None


def test_that_what_was_changed_by_other_means_is_not_undone(bench: Bench) -> None:
    lay_top(bench)
    bench.rack.pieces["p"] = replace(bench.rack.pieces["p"], notes="another hand")
    with pytest.raises(Refused, match="changed since"):
        bench.back(Undo())


def test_that_the_pile_keeps_the_newest_deeds_only() -> None:
    pile = UndoPile()
    for number in range(MOST + 2):
        pile.record(Deed(words=f"deed {number}"))
    assert [deed.words for deed in pile.done] == [f"deed {number}" for number in range(2, MOST + 2)]
