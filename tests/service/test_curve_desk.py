"""The curves during a watch: each outcome teaches them beside the keeper, and only the coat it is of is dried."""

from __future__ import annotations

from concurrent.futures import Future
from contextlib import closing
from pathlib import Path

import pytest

from studiowatch.service.commands import MovePiece, RecordOutcome
from studiowatch.service.correction_commands import Undo
from studiowatch.service.curve_desk import CurveDesk, learn_from
from studiowatch.service.local_time import clock_text, local_date
from studiowatch.service.replaying import MemoryRecords, NoLog
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.service.watchkeeping import Watchkeeping
from studiowatch.store.database import open_database
from studiowatch.store.folder import StudioFolder
from studiowatch.store.kept_severities import KeptSeverities
from studiowatch.store.readings import ReadingsStore
from studiowatch.store.records import RecordsStore
from studiowatch.store.trouble import StoreTrouble
from studiowatch.studio.pieces import Outcome
from studiowatch.studio.review_causes import Cause
from studiowatch.studio.review_curves import LEARNING, PRIOR, Curves

from .rooms import START_MS
from .test_reviewer import HOUR_MS, log, studio


class Later:
    """Learns when the test says so."""

    def __init__(self) -> None:
        self.asked: list[tuple[str, Future[Curves]]] = []

    def __call__(self, coat_key: str) -> Future[Curves]:
        self.asked.append((coat_key, Future()))
        return self.asked[-1][1]


def outcome(coat_key: str = "c0") -> RecordOutcome:
    return RecordOutcome(coat_key=coat_key, seen_ms=START_MS + 20 * HOUR_MS, outcome=Outcome.MILKY_ALL_OVER)


def test_that_an_outcome_is_learnt_from_and_what_teaches_nothing_is_not() -> None:
    later = Later()
    desk = CurveDesk(work=later)
    desk.heed(MovePiece(piece_key="p0", place=1))
    assert desk.tend() is None
    assert not later.asked
    desk.heed(outcome("c0"))
    desk.heed(Undo())
    assert desk.tend() is None
    assert desk.tend() is None  # the first is not done: nothing waits for it, and the second is not begun
    assert [key for key, _ in later.asked] == ["c0"]
    later.asked[0][1].set_result(PRIOR)
    assert desk.tend() is PRIOR
    assert [key for key, _ in later.asked] == ["c0", ""]


def test_that_curves_that_cannot_be_learnt_leave_the_old_ones_and_are_logged(caplog: pytest.LogCaptureFixture) -> None:
    later = Later()
    desk = CurveDesk(work=later)
    desk.heed(outcome())
    desk.tend()
    later.asked[0][1].set_exception(StoreTrouble("The file cannot be read."))
    assert desk.tend() is None
    assert "The file cannot be read." in caplog.text


def test_that_the_watch_weighs_by_them_from_its_next_look_on() -> None:
    later, pieces = Later(), studio([None])
    watch = Watchkeeping(
        log=NoLog(),
        records=MemoryRecords(held={piece.key: piece for piece in pieces}),
        shelf=SheetShelf.open(),
        clock_text=clock_text,
        local_date=local_date,
        began_ms=START_MS + 21 * HOUR_MS,
        curves=CurveDesk(work=later),
    )
    watch.open()
    watch.carry_out(outcome(), START_MS + 21 * HOUR_MS, 0.0)
    watch.look(START_MS + 21 * HOUR_MS, 0.0)
    assert watch.desks.rack.stacks.curves is PRIOR
    learnt = Curves(shifts=PRIOR.shifts - 0.1, leak=PRIOR.leak, learnt_from=1)
    later.asked[0][1].set_result(learnt)
    watch.look(START_MS + 21 * HOUR_MS + 1000, 1.0)
    assert watch.desks.rack.stacks.curves is learnt


def test_that_only_the_coat_of_the_outcome_is_dried_and_kept(tmp_path: Path) -> None:
    folder = StudioFolder(path=tmp_path)
    with closing(open_database(folder.database)) as database:
        RecordsStore(database, lambda: START_MS).save_pieces(studio([Outcome.MILKY_ALL_OVER] * 2))
        ReadingsStore(database).append(log(2, damp_days=(0, 1)).readings)
    learn = learn_from(folder)
    assert learn("").learnt_from == 0
    assert not folder.severities.exists()
    learnt = learn("c1")
    assert learnt.learnt_from == 1
    assert learnt.shifts[LEARNING.index(Cause.DAMP_AIR)] < 0.0
    assert set(KeptSeverities(path=folder.severities)._all()) == {"c1"}
    assert learn("c0").learnt_from == 2
