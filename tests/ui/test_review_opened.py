"""The ways into a review and out of it: keys, foot, menu, lane, the answer after a look; and what is refused."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, field, replace
from functools import cache

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QMenu, QMessageBox, QPushButton
from pytestqt.qtbot import QtBot

from studiowatch.service.atlas import example_of
from studiowatch.service.piece_view import CoatView, PieceView
from studiowatch.service.review_log import ReviewedCoat
from studiowatch.studio.pieces import Outcome
from studiowatch.studio.review_causes import TITLES, Cause
from studiowatch.studio.review_views import OtherCoat, Reliability, Review
from studiowatch.ui.app import build_window
from studiowatch.ui.models.review import review_words
from studiowatch.ui.review_deeds import NOT_HERE, NOTHING_LAID, meant_coat
from studiowatch.ui.settings import ViewSettings
from studiowatch.ui.widgets.review_page import TO_RACK
from studiowatch.ui.window import StudioWindow

from .conftest import KeptSpeaker, KeptTray, StandInPlot, activate, push
from .scenes import BLUSHED, EMPTY, FOUR_CALM, MadeUpHistory, ScriptedClock, ScriptedDesk

GONE = "This coat is not among the records, or has not been laid yet."


@cache
def clouded() -> Review:
    return example_of(Cause.DAMP_AIR)


@dataclass
class ReviewsAtOnce:
    """Answers each question with a made-up review, and keeps which coats were asked for."""

    asked: list[str] = field(default_factory=list)
    refusal: str = ""

    def review(self, coat_key: str, progress: Callable[[float], None]) -> Review:
        progress(1.0)
        self.asked.append(coat_key)
        if self.refusal:
            raise ReviewedCoat(self.refusal)
        return replace(clouded(), coat_key=coat_key)

    def others(self, coat_key: str) -> Sequence[OtherCoat]:
        del coat_key
        return ()

    def reliability(self, progress: Callable[[float], None]) -> Reliability:
        progress(1.0)
        return Reliability(bins=(), coats=0, clouded=0, sentence="")


@pytest.fixture
def reviews() -> ReviewsAtOnce:
    return ReviewsAtOnce()


@pytest.fixture
def window(
    qtbot: QtBot, desk: ScriptedDesk, clock: ScriptedClock, settings: ViewSettings, reviews: ReviewsAtOnce
) -> Iterator[StudioWindow]:
    parts = {"settings": settings, "speaker": KeptSpeaker(), "tray": KeptTray(), "make_plot": StandInPlot}
    made = build_window(desk, MadeUpHistory(), clock, reviews=reviews, **parts)
    made.show()
    qtbot.waitExposed(made)
    desk.publish(FOUR_CALM)
    qtbot.waitUntil(lambda: made.page.sentence.headline == FOUR_CALM.sentence.headline)
    yield made
    made.leave()
    made.deleteLater()


def chosen(window: StudioWindow) -> PieceView:
    """Choose the first piece that has a clear coat on, and return it."""
    piece = next(piece for piece in FOUR_CALM.pieces if meant_coat(piece) is not None)
    window.page.rack.reveal(piece.key)
    return piece


def meant(piece: PieceView) -> str:
    coat = meant_coat(piece)
    assert coat is not None
    return coat.key


def wait_for_review(window: StudioWindow, qtbot: QtBot) -> None:
    qtbot.waitUntil(lambda: window.why.review is not None, timeout=30_000)
    assert window.why.isVisible()
    assert window.focusWidget() is window.why.back


def test_that_the_key_opens_the_review_of_the_chosen_piece_and_escape_leaves_it(
    window: StudioWindow, reviews: ReviewsAtOnce, qtbot: QtBot
) -> None:
    piece = chosen(window)
    activate(window, qtbot)
    qtbot.keyClick(window, Qt.Key.Key_E, Qt.KeyboardModifier.ControlModifier)
    wait_for_review(window, qtbot)
    assert reviews.asked == [meant(piece)]
    qtbot.keyClick(window.why, Qt.Key.Key_Escape)
    qtbot.waitUntil(lambda: window.page.isVisible() and not window.why.isVisible())


def test_that_the_foot_and_a_menu_open_the_same_review(
    window: StudioWindow, reviews: ReviewsAtOnce, qtbot: QtBot
) -> None:
    piece = chosen(window)
    push(window.foot, "Why did it cloud?").click()
    wait_for_review(window, qtbot)
    window.why.go_back()
    window.deeds.review_asked.emit(piece.key)
    qtbot.waitUntil(lambda: len(reviews.asked) == 2)
    assert reviews.asked == [meant(piece)] * 2


def test_that_a_lane_opens_the_review_of_its_own_coat(
    window: StudioWindow, reviews: ReviewsAtOnce, qtbot: QtBot
) -> None:
    qtbot.waitUntil(lambda: bool(window.findChildren(StandInPlot)))
    window.findChildren(StandInPlot)[0].review_asked.emit("coat-of-a-lane")
    wait_for_review(window, qtbot)
    assert reviews.asked == ["coat-of-a-lane"]


def test_that_a_refusal_stands_on_the_page_and_nothing_can_be_saved(
    window: StudioWindow, reviews: ReviewsAtOnce, qtbot: QtBot
) -> None:
    reviews.refusal = GONE
    window.reviews.open_coat("gone")
    qtbot.waitUntil(lambda: window.why._headline.text() == GONE, timeout=30_000)
    shown = {one.text() for one in window.why.findChildren(QPushButton) if one.isVisible()}
    assert not {"Save as PDF…", "Save as CSV…"} & shown


def test_that_a_coat_recorded_as_clouded_offers_its_review_and_forces_none(
    window: StudioWindow, reviews: ReviewsAtOnce, qtbot: QtBot
) -> None:
    records = window.deeds.records
    records._offer_review("")  # it came out clear: nothing is asked
    assert not window.findChildren(QMessageBox)
    records._offer_review("coat-not-now")
    asked = window.findChildren(QMessageBox)[-1]
    next(one for one in asked.buttons() if one.text() == "Not now").click()
    assert not window.why.isVisible()
    records._offer_review("coat-looked-at")
    asked = window.findChildren(QMessageBox)[-1]
    next(one for one in asked.buttons() if one.text() == "Look at why").click()
    wait_for_review(window, qtbot)
    assert reviews.asked == ["coat-looked-at"]


def test_that_an_empty_rack_and_a_window_without_records_say_why_there_is_no_review(
    window: StudioWindow, make_window: Callable[[ViewSettings], StudioWindow], settings: ViewSettings, qtbot: QtBot
) -> None:
    with qtbot.waitSignal(window.reviews.refused) as nothing:
        window.reviews.open_piece(None)
    assert nothing.args == [NOTHING_LAID]
    assert EMPTY.pieces == ()
    bare = make_window(settings)
    with qtbot.waitSignal(bare.reviews.refused) as nowhere:
        bare.reviews.open_coat("any")
    assert nowhere.args == [NOT_HERE]
    bare.leave()
    bare.deleteLater()


def test_that_the_coat_that_came_out_badly_is_meant_before_a_newer_one() -> None:
    def with_outcome(coat: CoatView, outcome: Outcome | None) -> CoatView:
        assert coat.recorded is not None
        return replace(coat, recorded=replace(coat.recorded, outcome=outcome))

    laid = [coat for coat in BLUSHED.coats if coat.recorded and coat.laid_ms is not None and coat.clear_film]
    assert laid, "the scene has a clear coat with its record"
    first = replace(with_outcome(laid[0], Outcome.MILKY_ALL_OVER), key="first")
    newer = replace(with_outcome(laid[0], Outcome.CLEAR), key="newer")
    for coats, key in (((first, newer), "first"), ((newer,), "newer"), ((), None)):
        found = meant_coat(replace(BLUSHED, coats=coats))
        assert (found and found.key) == key


@pytest.mark.parametrize(
    ("outcome", "title", "recorded"),
    [
        (Outcome.MILKY_ALL_OVER, "Why did it cloud?", "recorded milky all over"),
        (Outcome.CLEAR, "Why did it come out clear?", "recorded clear"),
        (None, "Would it cloud?", "how it came out is not recorded"),
    ],
)
def test_that_title_and_subtitle_say_how_it_came_out(outcome: Outcome | None, title: str, recorded: str) -> None:
    words = review_words(replace(clouded(), outcome=outcome), clouded().laid_ms)
    assert words.title == title
    assert recorded in words.subtitle


def test_that_the_help_shows_a_made_up_coat_of_each_cause(window: StudioWindow, qtbot: QtBot) -> None:
    help_menu = next(menu for menu in window.menuBar().findChildren(QMenu) if menu.title() == "Hel&p")
    (causes,) = help_menu.findChildren(QMenu)
    assert [action.text().split("   ")[1] for action in causes.actions()] == [TITLES[cause] for cause in Cause]
    causes.actions()[list(Cause).index(Cause.SKINNED)].trigger()
    qtbot.waitUntil(lambda: window.why.review is not None, timeout=60_000)
    assert window.why.review.causes[0].cause is Cause.SKINNED
    assert window.why._title.text().startswith("Made up:")
    assert window.why.back.text() == TO_RACK


def test_that_a_review_at_twice_the_text_makes_the_window_no_wider(window: StudioWindow, qtbot: QtBot) -> None:
    chosen(window)
    window.dressing.set_text_pct(200)
    window.resize(1000, 760)
    before_px = window.minimumSizeHint().width()
    push(window.foot, "Why did it cloud?").click()
    wait_for_review(window, qtbot)
    assert window.minimumSizeHint().width() == before_px
