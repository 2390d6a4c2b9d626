"""Reviews from the records: each coat by curves that learnt from the others, and what is kept of them."""

from __future__ import annotations

import json
import struct
from base64 import b64encode
from collections.abc import Sequence
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest

from studiowatch.room.corrections import Imported, corrections
from studiowatch.room.readings import Reading
from studiowatch.service.other_coats import other_coats
from studiowatch.service.replaying import MemoryRecords
from studiowatch.service.review_log import (
    FINE_MS,
    LogInMemory,
    ReviewedCoat,
    means_of,
    minute_means,
    minutes_of,
    room_from,
    stack_of,
)
from studiowatch.service.reviewer import Reviewer, kept_curves
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.store.kept_severities import KeptSeverities
from studiowatch.studio.pieces import Coat, Outcome, Piece
from studiowatch.studio.review_causes import Cause
from studiowatch.studio.review_curves import LEARNING

from .rooms import START_MS

MINUTE_MS = 60_000
HOUR_MS = 60 * MINUTE_MS
DAMP_PCT, FAIR_PCT = 86.0, 52.0


class CountingLog(LogInMemory):
    """Counts the stretches that are read of it; what goes on where the last ended is of the same stretch."""

    def minute_means(self, start_ms: int, end_ms: int) -> Sequence[Reading]:
        reads = self.reads  # type: ignore[attr-defined]
        goes_on = bool(reads) and reads[-1][1] == start_ms
        reads.append((reads.pop()[0] if goes_on else start_ms, end_ms))
        return super().minute_means(start_ms, end_ms)


def studio(outcomes: Sequence[Outcome | None]) -> list[Piece]:
    """Return a coat a day, each on a piece of its own."""
    return [
        Piece(
            key=f"p{day}",
            title=f"P{day}",
            width_cm=30,
            height_cm=30,
            place=day,
            coats=(
                Coat(
                    key=f"c{day}",
                    sheet="gloss-waterborne",
                    laid_ms=START_MS + day * 24 * HOUR_MS,
                    volume_mL=7.2,
                    outcome=outcome,
                    seen_ms=None if outcome is None else START_MS + (day * 24 + 20) * HOUR_MS,
                ),
            ),
        )
        for day, outcome in enumerate(outcomes)
    ]


def log(days: int, damp_days: Sequence[int] = ()) -> CountingLog:
    readings = [
        Reading(
            time_ms=START_MS + minute * MINUTE_MS,
            temperature_C=20.0,
            humidity_pct=DAMP_PCT if minute // 1440 in damp_days and minute % 1440 < 180 else FAIR_PCT,
            air_speed_m_s=0.05,
        )
        for minute in range(-60, days * 1440, 5)
    ]
    found = CountingLog(readings=readings)
    object.__setattr__(found, "reads", [])
    return found


def reviewer(
    pieces: Sequence[Piece],
    under: LogInMemory,
    kept: KeptSeverities | None = None,
    imported: Sequence[Imported] = (),
) -> Reviewer:
    return Reviewer(
        pieces=pieces,
        shelf=SheetShelf.open(),
        log=under,
        kept=kept or KeptSeverities(path=None),
        known=corrections([], [], imported),
    )


def test_that_a_coat_is_weighed_by_the_others_and_not_by_itself() -> None:
    pieces = studio([Outcome.CLEAR] * 3 + [Outcome.MILKY_ALL_OVER])
    found = reviewer(pieces, log(4, damp_days=(0, 1, 2, 3))).review(pieces[3], 1)
    alone = reviewer(pieces[3:], log(4, damp_days=(3,))).review(pieces[3], 1)
    assert (found.learnt_from, alone.learnt_from) == (3, 0)
    assert found.chance < alone.chance  # three that were as damp came out clear
    assert found.causes[0].cause is Cause.DAMP_AIR


def test_that_it_is_said_how_often_a_cause_came_first_here() -> None:
    pieces = studio([Outcome.MILKY_ALL_OVER, Outcome.MILKY_ALL_OVER, Outcome.CLEAR])
    found = reviewer(pieces, log(3, damp_days=(0, 1))).review(pieces[1], 1)
    assert found.causes[0].often == "First in 2 of 2 clouded coats here."
    only = reviewer(pieces[:1], log(1, damp_days=(0,))).review(pieces[0], 1)
    assert only.causes[0].often == ""


def test_that_what_was_worked_out_is_not_worked_out_again_until_the_coat_changes(tmp_path: Path) -> None:
    pieces, kept = studio([Outcome.CLEAR, Outcome.MILKY_ALL_OVER]), tmp_path / "severities.json"
    first, again = log(2, damp_days=(1,)), log(2, damp_days=(1,))
    before = reviewer(pieces, first, KeptSeverities(path=kept)).curves()
    after = reviewer(pieces, again, KeptSeverities(path=kept)).curves()
    assert first.reads  # type: ignore[attr-defined]
    assert not again.reads  # type: ignore[attr-defined]
    assert before.shifts == pytest.approx(after.shifts)
    thinned = replace(pieces[0], coats=(replace(pieces[0].coats[0], thinned_pct=30.0),))
    reviewer([thinned, pieces[1]], again, KeptSeverities(path=kept)).curves()
    assert len(again.reads) == 1  # type: ignore[attr-defined]


def test_that_the_watch_weighs_by_what_is_kept_and_dries_nothing_for_it(tmp_path: Path) -> None:
    pieces, kept = studio([Outcome.MILKY_ALL_OVER] * 2), tmp_path / "severities.json"
    records = MemoryRecords(held={piece.key: piece for piece in pieces})
    shelf = SheetShelf.open()
    assert kept_curves(records, shelf, KeptSeverities(path=kept)).learnt_from == 0
    reviewer(pieces, log(2, damp_days=(0, 1)), KeptSeverities(path=kept)).curves()
    learnt = kept_curves(records, shelf, KeptSeverities(path=kept))
    assert learnt.learnt_from == 2
    assert learnt.shifts[LEARNING.index(Cause.DAMP_AIR)] < 0.0


def taken_in(begin_h: float, end_h: float) -> Imported:
    return Imported(start_ms=START_MS + round(begin_h * HOUR_MS), end_ms=START_MS + round(end_h * HOUR_MS))


def test_that_an_import_under_a_coat_has_it_worked_out_anew_and_no_other(tmp_path: Path) -> None:
    pieces, kept = studio([Outcome.CLEAR, Outcome.MILKY_ALL_OVER]), tmp_path / "severities.json"
    records = MemoryRecords(held={piece.key: piece for piece in pieces})
    shelf = SheetShelf.open()
    reviewer(pieces, log(2), KeptSeverities(path=kept)).curves()
    records.kept_imported = [taken_in(-100, -99)]  # long before either coat
    assert kept_curves(records, shelf, KeptSeverities(path=kept)).learnt_from == 2
    records.kept_imported.append(taken_in(2, 4))  # while the first coat dried, a day before the second
    assert kept_curves(records, shelf, KeptSeverities(path=kept)).learnt_from == 1
    again = log(2, damp_days=(0,))
    reviewer(pieces, again, KeptSeverities(path=kept), records.imported()).curves()
    assert len(again.reads) == 1  # type: ignore[attr-defined]
    assert kept_curves(records, shelf, KeptSeverities(path=kept)).learnt_from == 2


def test_that_a_second_import_into_the_same_stretch_counts_too(tmp_path: Path) -> None:
    pieces, kept = studio([Outcome.CLEAR]), tmp_path / "severities.json"
    records = MemoryRecords(held={"p0": pieces[0]}, kept_imported=[taken_in(2, 4)])
    reviewer(pieces, log(1), KeptSeverities(path=kept), records.imported()).curves()
    assert kept_curves(records, SheetShelf.open(), KeptSeverities(path=kept)).learnt_from == 1
    records.kept_imported.append(taken_in(2.5, 3))
    assert kept_curves(records, SheetShelf.open(), KeptSeverities(path=kept)).learnt_from == 0


ROWS = np.array([[1.0, 2.5], [0.1, -3.0]])
PACKED = b64encode(struct.pack("<4d", 1.0, 2.5, 0.1, -3.0)).decode()
INFINITE = b64encode(struct.pack("<d", float("inf"))).decode()


@pytest.mark.parametrize(
    "text",
    [
        "",
        "[]",
        "{",
        '{"c0": 5}',
        '{"c0": ["x", [[1.0]]]}',
        '{"c0": ["x", 1, 3]}',
        f'{{"c0": ["x", 3, "{PACKED}"]}}',
        f'{{"c0": ["x", 0, "{PACKED}"]}}',
        f'{{"c0": ["x", true, "{PACKED}"]}}',
        f'{{"c0": ["x", 2, "{PACKED[:-3]}"]}}',
        '{"c0": ["x", 1, "ü"]}',
        f'{{"c0": ["x", 1, "{INFINITE}"]}}',
    ],
)
def test_that_a_damaged_file_of_severities_is_as_none(tmp_path: Path, text: str) -> None:
    path = tmp_path / "severities.json"
    path.write_text(text, "utf-8")
    held = KeptSeverities(path=path)
    assert held.get("c0", "x") is None
    held.put("c1", "y", ROWS)
    held.save()
    assert json.loads(path.read_text("utf-8"))["c1"] == ["y", 2, PACKED]
    again = KeptSeverities(path=path).get("c1", "y")
    assert again is not None
    assert again.tolist() == ROWS.tolist()


def test_that_what_is_no_number_is_never_written(tmp_path: Path) -> None:
    held = KeptSeverities(path=tmp_path / "severities.json")
    held.put("c1", "y", np.array([[np.nan]]))
    with pytest.raises(ValueError, match="no number"):
        held.save()
    assert not (tmp_path / "severities.json").exists()


def test_that_a_folder_that_cannot_be_written_costs_time_and_nothing_else(tmp_path: Path) -> None:
    held = KeptSeverities(path=tmp_path / "gone" / "severities.json")
    held.put("c1", "y", ROWS)
    held.save()
    assert "cannot be written" in held.trouble
    assert held.get("c1", "y") is ROWS


def test_that_a_coat_without_its_sheet_or_of_paint_is_refused_in_one_sentence() -> None:
    (piece,) = studio([Outcome.MILKY_ALL_OVER])
    shelf = SheetShelf.open()
    gone = replace(piece, coats=(replace(piece.coats[0], sheet="gone"),))
    with pytest.raises(ReviewedCoat, match="data sheet gone is missing"):
        stack_of(gone, shelf, 1)
    paint = replace(piece, coats=(replace(piece.coats[0], sheet="paint-brushed"),))
    with pytest.raises(ReviewedCoat, match="paint, which does not cloud"):
        stack_of(paint, shelf, 1)


def test_that_reliability_counts_every_coat_with_an_outcome() -> None:
    pieces = studio([Outcome.CLEAR] * 6 + [Outcome.MILKY_ALL_OVER] * 2 + [None])
    found = reviewer(pieces, log(9, damp_days=(6, 7))).reliability()
    assert (found.coats, found.clouded) == (8, 2)
    assert "Of 8 coats" in found.sentence


def test_that_means_keep_all_that_was_read_and_the_times_of_a_coarse_log() -> None:
    rows = [Reading(time_ms=START_MS + second * 1000, temperature_C=float(second % 2)) for second in range(600)]
    minutes = list(minute_means(rows))
    assert len(minutes) == 10
    assert all(minute.temperature_C == pytest.approx(0.5) for minute in minutes)
    assert all(minute.humidity_pct is None for minute in minutes)
    coarse = [Reading(time_ms=START_MS + at * 30 * MINUTE_MS, humidity_pct=50.0) for at in range(4)]
    assert list(means_of(coarse, lambda _: 5 * MINUTE_MS)) == coarse


def test_that_the_air_of_the_wet_film_is_taken_by_the_minute_and_the_rest_in_five() -> None:
    (piece,) = studio([Outcome.CLEAR])
    every_minute = [
        Reading(time_ms=START_MS + minute * MINUTE_MS, temperature_C=20.0, humidity_pct=50.0)
        for minute in range(-60, 1440)
    ]
    room = room_from(LogInMemory(readings=every_minute), stack_of(piece, SheetShelf.open(), 1))
    fine = [one for one in room.moments if START_MS <= one.time_ms < START_MS + FINE_MS]
    assert len(fine) == FINE_MS // MINUTE_MS
    assert len(room.moments) == len(fine) + (1500 - 360) // 5


def test_that_a_log_read_in_parts_is_the_log() -> None:
    whole = LogInMemory(
        readings=[
            Reading(time_ms=START_MS + third * MINUTE_MS // 3, temperature_C=20.0 + third % 7, humidity_pct=50.0)
            for third in range(4500)
        ]
    )
    begin_ms, end_ms = START_MS + 7_001, START_MS + 1400 * MINUTE_MS + 13
    assert list(minutes_of(whole, begin_ms, end_ms)) == list(whole.minute_means(begin_ms, end_ms))


def test_that_work_given_up_is_kept_as_far_as_it_got(tmp_path: Path) -> None:
    pieces, kept = studio([Outcome.CLEAR] * 3), tmp_path / "severities.json"

    def give_up(share: float) -> None:
        if share > 0.5:
            raise KeyboardInterrupt

    with pytest.raises(KeyboardInterrupt):
        reviewer(pieces, log(3), KeptSeverities(path=kept)).told(give_up)
    again = log(3)
    reviewer(pieces, again, KeptSeverities(path=kept)).told()
    assert len(again.reads) == 1  # type: ignore[attr-defined]


def test_that_her_other_coats_are_read_since_each_was_laid_the_newest_first() -> None:
    pieces = studio([Outcome.CLEAR, Outcome.MILKY_ALL_OVER, None, Outcome.CLEAR])
    found = other_coats(reviewer(pieces, log(4, damp_days=(1,))), "c3")
    assert [one.words for one in found] == ["P3, clear", "P1, milky all over", "P0, clear"]
    assert [one.clouded for one in found] == [False, True, False]
    damp = found[1]
    assert damp.hours[0] == pytest.approx(-0.5, abs=0.1)
    assert damp.hours[-1] == pytest.approx(10.0, abs=0.1)
    assert damp.humidity_pct[(damp.hours > 0.1) & (damp.hours < 2.9)] == pytest.approx(DAMP_PCT)
    assert found[2].humidity_pct[found[2].hours > 0.1] == pytest.approx(FAIR_PCT)


def test_that_a_coat_that_is_not_there_has_no_others() -> None:
    with pytest.raises(ReviewedCoat, match="not among the records"):
        other_coats(reviewer(studio([Outcome.CLEAR]), log(1)), "gone")
