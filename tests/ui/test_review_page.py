"""The page of a review, on made-up coats of the atlas and on a small studio of files."""

from __future__ import annotations

import csv
import io
from collections.abc import Callable, Sequence
from dataclasses import replace
from errno import ENOSPC
from functools import cache
from os import strerror
from pathlib import Path
from threading import Event
from unicodedata import normalize

import numpy as np
import pypdf
import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QFontMetricsF
from PySide6.QtWidgets import QPushButton, QWidget
from pytestqt.qtbot import QtBot

from studiowatch.board.simulated import SteppedClock
from studiowatch.service.atlas import example_of
from studiowatch.service.review_log import ReviewedCoat
from studiowatch.studio.pieces import TITLE_MOST
from studiowatch.studio.review_causes import TITLES, Cause
from studiowatch.studio.review_views import OtherCoat, Reliability, ReliabilityBin, Review
from studiowatch.ui.models.review import review_words
from studiowatch.ui.models.review_csv import review_csv
from studiowatch.ui.models.review_plot import beside_of, picture_of
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.print.paper import foot_words, paper_font
from studiowatch.ui.print.review_pdf import write_review
from studiowatch.ui.review_deeds import ReviewDeeds
from studiowatch.ui.review_worker import Example, ReviewWorker
from studiowatch.ui.widgets.review_page import ALONE, BESIDE, NO_OTHERS, TO_OWN, TO_RACK, WORKING, ReviewPage

DAY_MS = 86_400_000
FULL = Path("/dev/full")


@cache
def coat(cause: Cause) -> Review:
    return example_of(cause)


@pytest.fixture
def page(qtbot: QtBot) -> ReviewPage:
    shown = ReviewPage()
    qtbot.addWidget(shown)
    shown.resize(1250, 760)
    shown.show()
    return shown


def buttons(page: ReviewPage) -> dict[str, QPushButton]:
    return {button.text(): button for button in page.findChildren(QPushButton) if button.isVisible()}


def others(count: int) -> tuple[OtherCoat, ...]:
    hours = np.linspace(-0.5, 10.0, 60)
    return tuple(
        OtherCoat(
            words=f"Piece {number}",
            clouded=number % 2 == 1,
            hours=hours,
            temperature_C=np.full(60, 18.0 + number),
            humidity_pct=np.full(60, 50.0 + 10.0 * number),
        )
        for number in range(count)
    )


@pytest.mark.parametrize("cause", list(Cause))
def test_that_each_cause_is_shown_first_with_its_evidence_and_what_to_do(cause: Cause) -> None:
    review = coat(cause)
    words = review_words(review, review.laid_ms + DAY_MS)
    assert words.causes[0].title == TITLES[cause]
    assert words.causes[0].sentences == review.causes[0].evidence
    assert sum(row.share for row in words.causes) == pytest.approx(1.0)
    assert words.steps
    assert set(words.cautions) == {caution for one in (review.remedy, *review.further) for caution in one.cautions}


def test_that_a_likely_cloudy_row_is_told_by_word_and_tone() -> None:
    words = review_words(coat(Cause.SEALED_IN_WATER), 0)
    was, *otherwise = words.changes
    assert was.cells[0] == "As it was"
    assert (was.verdict.split(",")[0], was.tone) == ("cloudy: likely", Tone.ACT)
    assert otherwise[0].verdict.startswith("cloudy: unlikely")


def test_that_the_page_says_what_it_shows(page: ReviewPage, qtbot: QtBot) -> None:
    page.wait()
    assert page._headline.text() == WORKING
    page.show_progress(0.4)
    assert page._headline.text() == f"{WORKING} 40 %"
    page.show_progress(1.0)
    assert page._headline.text() == WORKING
    review = coat(Cause.DAMP_AIR)
    page.show_review(review, review.laid_ms + DAY_MS)
    assert page._headline.text() == review.headline
    assert page.accessibleName() == "Why did it cloud?"
    assert {"Save as PDF…", "Save as CSV…", BESIDE, TO_RACK} <= set(buttons(page))
    page.refuse("That coat is not in the records any more.")
    assert page.review is None
    assert "Save as PDF…" not in buttons(page)
    with qtbot.waitActive(page):  # a shortcut needs the keyboard, which no window manager gives it here
        page.activateWindow()
    with qtbot.waitSignal(page.left):
        qtbot.keyClick(page, Qt.Key.Key_Escape)


def test_that_the_plot_reads_the_log_where_the_keys_go(page: ReviewPage, qtbot: QtBot) -> None:
    review = coat(Cause.DAMP_AIR)
    page.show_review(review, review.laid_ms + DAY_MS)
    qtbot.keyClick(page._plot, Qt.Key.Key_Home)
    picture = picture_of(review)
    assert page._plot.read_words == picture.read(review.laid_ms)
    row = int(np.searchsorted(review.room.time_ms, review.laid_ms, side="right")) - 1
    assert f"humidity {review.room.humidity_pct[row]:.0f} %" in page._plot.read_words
    at_laying = page._plot.read_words
    qtbot.keyClick(page._plot, Qt.Key.Key_Right)
    assert page._plot.read_words != at_laying
    assert page._plot.accessibleDescription() == page._plot.read_words


def test_that_other_coats_are_told_apart_by_dash_and_weight(page: ReviewPage, qtbot: QtBot) -> None:
    review = coat(Cause.DAMP_AIR)
    page.show_review(review, review.laid_ms + DAY_MS)
    with qtbot.waitSignal(page.others_asked):
        buttons(page)[BESIDE].click()
    page.show_others(others(4))
    assert ALONE in buttons(page)
    humidity = beside_of(others(4)).panels[0].lines
    assert [line.wide for line in humidity] == [False, False, False, True]
    assert [line.dashed for line in humidity] == [True, False, True, False]
    buttons(page)[ALONE].click()
    assert BESIDE in buttons(page)
    page.show_others(others(1))
    assert page._learnt.text() == NO_OTHERS


def test_that_a_made_up_coat_is_marked_and_hers_comes_back(page: ReviewPage, qtbot: QtBot) -> None:
    hers, made_up = coat(Cause.DAMP_AIR), coat(Cause.SKINNED)
    page.show_review(hers, hers.laid_ms + DAY_MS)
    with qtbot.waitSignal(page.example_asked) as asked:
        page._causes.atlas_asked.emit(Cause.SKINNED)
    assert asked.args == [Cause.SKINNED]
    page.show_example(made_up)
    assert page._title.text().startswith("Made up:")
    assert "Save as PDF…" not in buttons(page)
    assert buttons(page)[TO_OWN].accessibleName() == TO_OWN
    page.go_back()
    assert page.review is hers
    assert not page._title.text().startswith("Made up:")
    with qtbot.waitSignal(page.left):
        page.go_back()


def test_that_how_often_it_was_right_is_plotted_and_said(page: ReviewPage) -> None:
    review = coat(Cause.DAMP_AIR)
    page.show_review(review, review.laid_ms + DAY_MS)
    assert not page._reliability.isVisible()
    one = ReliabilityBin(low=0.2, high=0.4, told=0.3, came_true=0.25, least=0.1, most=0.5, coats=12)
    page.show_reliability(Reliability(bins=(one,), coats=12, clouded=3, sentence="Of 12 coats 3 clouded."))
    assert page._reliability.isVisible()
    assert "told 30 %, came true 25 % of 12 coats" in page._reliability.accessibleDescription()
    assert page._learnt.text() == "Of 12 coats 3 clouded."


def test_that_the_figures_are_a_table_with_empty_cells_where_nothing_was_read() -> None:
    whole = coat(Cause.SEALED_IN_WATER)
    humidity_pct = whole.room.humidity_pct.copy()
    unread = [*np.flatnonzero(np.isnan(humidity_pct)).tolist(), 60]  # the hours before the log began, and one moment
    humidity_pct[60] = np.nan
    review = replace(whole, room=replace(whole.room, humidity_pct=humidity_pct))
    head, *rows = list(csv.reader(io.StringIO(review_csv(review), newline="")))
    assert head[:5] == ["time", "air_temperature_C", "dew_point_C", "humidity_pct", "air_speed_m_s"]
    assert len(rows) == len(review.room.time_ms)
    assert all(len(row) == len(head) for row in rows)
    assert [at for at, row in enumerate(rows) if row[3] == ""] == unread
    told_pct = [float(row[3] or "nan") for row in rows]
    assert told_pct == pytest.approx(humidity_pct.tolist(), rel=1e-3, nan_ok=True)
    top_ms = review.films[-1].time_ms
    is_on = (review.room.time_ms >= top_ms[0]) & (review.room.time_ms <= top_ms[-1])
    assert 0 < is_on.sum() < is_on.size
    assert [row[-1] != "" for row in rows] == is_on.tolist()


@pytest.mark.parametrize("paper", ["a4", "letter"])
def test_that_it_goes_on_paper_with_all_its_words(tmp_path: Path, qapp: object, paper: str) -> None:
    del qapp
    review = coat(Cause.SEALED_IN_WATER)
    write_review(review, tmp_path / "review.pdf", paper, review.laid_ms + DAY_MS)
    read = pypdf.PdfReader(tmp_path / "review.pdf")
    text = normalize("NFKC", " ".join(" ".join(page.extract_text().split()) for page in read.pages))  # fi is one glyph
    assert 1 <= len(read.pages) <= 3
    assert review.headline in text
    for step in review.remedy.steps:
        assert step[:40] in text
    for caution in review.remedy.cautions:
        assert caution[:40] in text


@pytest.mark.skipif(not FULL.exists(), reason="a disk that is always full, as Linux has it")
@pytest.mark.usefixtures("qapp")
def test_that_a_disk_that_is_full_is_told_and_no_review_passes_for_saved() -> None:
    review = coat(Cause.DAMP_AIR)
    with pytest.raises(OSError, match=strerror(ENOSPC)):
        write_review(review, FULL, "a4", review.laid_ms + DAY_MS)


def test_that_a_review_that_cannot_be_written_leaves_the_one_that_was_there(tmp_path: Path, qtbot: QtBot) -> None:
    def write(path: Path) -> None:
        path.write_text("half of", "utf-8")
        raise OSError(ENOSPC, "No space left on device", str(path))

    window, page = QWidget(), ReviewPage()
    qtbot.addWidget(window)
    qtbot.addWidget(page)
    deeds = ReviewDeeds(None, SteppedClock(0), page, window)
    path = tmp_path / "review.csv"
    path.write_text("the whole of an earlier one", "utf-8")
    with qtbot.waitSignal(deeds.refused):
        deeds._save(path, write)
    assert path.read_text("utf-8") == "the whole of an earlier one"
    assert list(tmp_path.iterdir()) == [path]


@pytest.mark.usefixtures("qapp")
def test_that_the_foot_of_a_page_has_its_number_however_long_the_title_is() -> None:
    wide = 507.0  # pt between the margins of A4
    metrics = QFontMetricsF(paper_font(7))
    long = foot_words("W" * TITLE_MOST, 2, 3, wide)
    assert metrics.horizontalAdvance("W" * TITLE_MOST) > wide
    assert metrics.horizontalAdvance(long) <= wide
    assert long.endswith("…, page 2 of 3")
    assert foot_words("Orchard, Night", 2, 3, wide) == "Orchard, Night, page 2 of 3"


class ScriptedReviews:
    """Answers when it is let."""

    def __init__(self) -> None:
        self.let = Event()
        self.begun = Event()
        self.given_up: list[str] = []

    def review(self, coat_key: str, progress: Callable[[float], None]) -> Review:
        if coat_key == "slow":
            self.begun.set()
            self.let.wait(30)
            try:
                progress(0.5)
            except Exception:
                self.given_up.append(coat_key)
                raise
        if coat_key == "gone":
            raise ReviewedCoat("That coat is not in the records any more.")
        if coat_key == "broken":
            raise RuntimeError("a fault of ours")
        return coat(Cause.DAMP_AIR)

    def others(self, coat_key: str) -> Sequence[OtherCoat]:
        del coat_key
        return others(3)

    def reliability(self, progress: Callable[[float], None]) -> Reliability:
        progress(1.0)
        return Reliability(bins=(), coats=0, clouded=0, sentence="No coat has a recorded outcome yet.")


def test_that_only_what_was_asked_for_last_is_told(qtbot: QtBot) -> None:
    reviews = ScriptedReviews()
    worker = ReviewWorker(reviews)
    told: list[object] = []
    worker.answered.connect(told.append)
    worker.ask("slow")
    assert reviews.begun.wait(30)
    worker.ask_others("slow")
    reviews.let.set()
    qtbot.waitUntil(lambda: bool(told), timeout=30_000)
    assert reviews.given_up == ["slow"]
    assert [len(answer) for answer in told if isinstance(answer, tuple)] == [3]
    worker.close()


def test_that_an_example_and_how_often_it_was_right_come_through_the_same_thread(qtbot: QtBot) -> None:
    worker = ReviewWorker(ScriptedReviews())
    with qtbot.waitSignal(worker.answered, timeout=60_000) as example:
        worker.ask_example(Cause.TOUCHED)
    assert isinstance(example.args[0], Example)
    assert example.args[0].review.causes[0].cause is Cause.TOUCHED
    with qtbot.waitSignal(worker.answered, timeout=60_000) as right:
        worker.ask_reliability()
    assert isinstance(right.args[0], Reliability)
    worker.close()


def test_that_weighing_beforehand_tells_nobody_and_gives_way(qtbot: QtBot) -> None:
    worker = ReviewWorker(ScriptedReviews())
    told: list[object] = []
    worker.answered.connect(told.append)
    worker.refused.connect(told.append)
    worker.warm()
    with qtbot.waitSignal(worker.answered, timeout=30_000):
        worker.ask_others("any")
    assert [type(answer) for answer in told] == [tuple]
    worker.close()


def test_that_a_refusal_is_told_and_a_fault_of_ours_is_told_and_logged(
    qtbot: QtBot, caplog: pytest.LogCaptureFixture
) -> None:
    worker = ReviewWorker(ScriptedReviews())
    with qtbot.waitSignal(worker.refused, timeout=30_000) as refused:
        worker.ask("gone")
    assert refused.args == ["That coat is not in the records any more."]
    with qtbot.waitSignal(worker.refused, timeout=30_000) as broken:
        worker.ask("broken")
    assert "a fault of ours" in broken.args[0]
    assert "a review could not be worked out" in caplog.text
    worker.close()
