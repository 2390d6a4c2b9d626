"""What if, in the window: a slider moves, and every piece's ready time with it."""

from __future__ import annotations

from collections.abc import Iterator
from threading import Event

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLabel
from pytestqt.qtbot import QtBot

from studiowatch.coats.stages import Stage
from studiowatch.service.films_to_come import When
from studiowatch.service.lend_films import LendFilms
from studiowatch.service.what_if import BothWays, Otherways, WhatIf
from studiowatch.speech.units import Degrees, Units, choose, chosen
from studiowatch.studio.otherwise import Otherwise
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.models.what_if import NO_PIECE, NOTHING_YET, AirWish, Wish, piece_lines
from studiowatch.ui.what_if_worker import Question, Told
from studiowatch.ui.widgets.what_if_page import WhatIfPage
from studiowatch.ui.window import StudioWindow

from .conftest import activate, push
from .scenes import FOUR_CALM, NOW_MS, SHEETS
from .what_if_scenes import HOUR_MS, LendingDesk, lent


@pytest.fixture
def desk() -> LendingDesk:
    return LendingDesk(offered=SHEETS)


@pytest.fixture
def page(qtbot: QtBot, window: StudioWindow, desk: LendingDesk) -> WhatIfPage:
    window.show()
    desk.publish(FOUR_CALM)
    qtbot.waitUntil(lambda: window.feed.latest is not None)
    window.pages.show_what_if()
    settled(qtbot, window.what_if)
    return window.what_if


def settled(qtbot: QtBot, page: WhatIfPage) -> Told:
    """Wait until all draws, or nobody, can say more, and return what was told last."""
    told: list[Told] = []
    page.worker.answered.connect(told.append)
    try:
        qtbot.waitUntil(lambda: bool(told) and (told[-1].is_whole or bool(told[-1].refused)), timeout=20_000)
    finally:
        page.worker.answered.disconnect(told.append)
    return told[-1]


def said(page: WhatIfPage) -> list[str]:
    """Return what each row in sight tells a screen reader."""
    return [row.accessibleDescription() for row in page.rows if row.isVisible()]


def test_that_the_times_of_the_rack_stand_there_before_anything_is_moved(page: WhatIfPage) -> None:
    assert page.lead.text() == NOTHING_YET
    assert len(said(page)) == len(lent(6).films)
    assert all("as it is" in words for words in said(page))


def test_that_every_ready_time_moves_with_the_slider(page: WhatIfPage, qtbot: QtBot) -> None:
    before = said(page)
    page.hand.temperature.slider.setFocus()
    qtbot.keyClick(page.hand.temperature.slider, Qt.Key.Key_End)
    told = settled(qtbot, page)
    assert told.question.held.temperature_C == 30.0
    assert page.lead.text() == "Room kept at 30 °C"
    assert all("sooner" in words for words in said(page))
    assert all(one != other for one, other in zip(before, said(page), strict=True))
    assert any("heater" in shown.text() for shown in page.beside if shown.isVisible())
    push(page, "The room as it comes").click()
    settled(qtbot, page)
    assert said(page) == before


def test_that_a_slider_that_never_rests_is_followed_all_the_same(
    page: WhatIfPage, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Each time the few draws are asked, the slider has moved on before they answer: all but its last place."""
    places_C = [14.0, 16.0, 18.0, 20.0]
    left, answers, films = iter(places_C[1:]), WhatIf.answers, lent(2)

    def moved_on(self: WhatIf, held: Otherwise, *, cover: bool = False, whole: bool = False) -> Iterator[Otherways]:
        if not whole and (place_C := next(left, None)) is not None:
            page.worker.ask(Question(films=films, held=Otherwise(temperature_C=place_C), cover=cover))
        return answers(self, held, cover=cover, whole=whole)

    monkeypatch.setattr(WhatIf, "answers", moved_on)
    told: list[Told] = []
    page.worker.answered.connect(told.append)
    page.worker.ask(Question(films=films, held=Otherwise(temperature_C=places_C[0]), cover=False))
    qtbot.waitUntil(lambda: bool(told) and told[-1].is_whole, timeout=20_000)
    assert [one.question.held.temperature_C for one in told] == [*places_C, places_C[-1]]
    assert [one.is_whole for one in told] == [False] * 4 + [True]


def test_that_nothing_is_told_to_a_window_that_is_gone(
    page: WhatIfPage, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The window goes while the few draws are asked: what the thread finds then would reach a widget of the past."""
    answers, over = WhatIf.answers, Event()

    def while_it_goes(
        self: WhatIf, held: Otherwise, *, cover: bool = False, whole: bool = False
    ) -> Iterator[Otherways]:
        page.worker.close()
        yield from answers(self, held, cover=cover, whole=whole)

    def work(serial: int, question: Question) -> None:
        worked(serial, question)
        over.set()

    worked, emitted = page.worker._work, []
    monkeypatch.setattr(page.worker._thread, "_work", work)
    monkeypatch.setattr(WhatIf, "answers", while_it_goes)
    page.worker._worked.connect(lambda *told: emitted.append(told))
    page.worker.ask(Question(films=lent(2), held=Otherwise(temperature_C=14.0), cover=False))
    qtbot.waitUntil(over.is_set)
    QApplication.processEvents()
    assert emitted == []


def test_that_what_was_asked_last_is_told_last(page: WhatIfPage, qtbot: QtBot) -> None:
    for place in range(10, 40, 3):
        page.hand.temperature.slider.setValue(place)
    told = settled(qtbot, page)
    assert told.question.held.temperature_C == 10.0 + 0.5 * 37


def test_that_the_watchs_warnings_in_that_room_stand_beside_it(page: WhatIfPage, qtbot: QtBot) -> None:
    page.hand.air.choose(AirWish.FAN)
    settled(qtbot, page)
    words = [shown.text() for shown in page.beside if shown.isVisible()]
    assert "In that room: Air is moving over three wet coats." in words
    page.hand.air.choose(AirWish.STILL)
    settled(qtbot, page)
    assert [shown.text() for shown in page.beside if shown.isVisible()] == []


def test_that_nothing_is_told_that_heats_beside_vapour(page: WhatIfPage, desk: LendingDesk, qtbot: QtBot) -> None:
    desk.films = lent(2, vapour=True)
    page.window().pages.show_rack()
    page.window().pages.show_what_if()
    settled(qtbot, page)
    page.hand.temperature.slider.setValue(30)
    settled(qtbot, page)
    assert "still gives off flammable vapour" in page.lead.text()
    assert said(page) == []


def test_that_a_rack_on_which_nothing_waits_teaches(page: WhatIfPage, desk: LendingDesk, qtbot: QtBot) -> None:
    desk.films = lent(0)
    page.window().pages.show_rack()
    page.window().pages.show_what_if()
    settled(qtbot, page)
    assert page.lead.text() == NO_PIECE


def test_that_films_are_lent_once_a_minute_and_only_in_sight(
    page: WhatIfPage, desk: LendingDesk, window: StudioWindow
) -> None:
    def lends() -> int:
        return sum(isinstance(command, LendFilms) for command in desk.commands)

    before = lends()
    page.show_snapshot(FOUR_CALM)
    assert lends() == before
    window.pages.show_rack()
    window.feed.draw()
    assert lends() == before
    window.pages.show_what_if()
    assert lends() == before + 1


def test_that_escape_and_the_button_lead_back(page: WhatIfPage, window: StudioWindow, qtbot: QtBot) -> None:
    push(page, "← Back to the rack").click()
    assert not page.isVisible()
    window.pages.show_what_if()
    activate(window, qtbot)
    qtbot.keyClick(page.hand.temperature.slider, Qt.Key.Key_Escape)
    qtbot.waitUntil(lambda: not page.isVisible())


@pytest.fixture
def units() -> Iterator[None]:
    before = chosen()
    yield
    choose(before)


@pytest.mark.usefixtures("units")
def test_that_the_sliders_speak_her_units(page: WhatIfPage, qtbot: QtBot) -> None:
    """20 °C is 68 °F: NIST SP 811, appendix B.8."""
    choose(Units(degrees=Degrees.FAHRENHEIT))
    page.hand.temperature.slider.setValue(20)
    settled(qtbot, page)
    assert "68.0 °F" in [shown.text() for shown in page.hand.findChildren(QLabel)]
    assert page.lead.text() == "Room kept at 68 °F"


def when(hours: float | None) -> When:
    at = None if hours is None else NOW_MS + round(hours * HOUR_MS)
    return When(by_ms=at, p10_ms=None if at is None else at - HOUR_MS, p90_ms=at)


@pytest.mark.parametrize(
    ("before_h", "after_h", "change", "tone"),
    [
        (10.0, 7.5, "2 h 30 min sooner", Tone.GOOD),
        (7.5, 10.0, "2 h 30 min later", Tone.CAUTION),
        (10.0, 10.0, "as it is", Tone.MUTED),
        (10.0, None, "later than is foretold", Tone.CAUTION),
        (None, None, "", Tone.MUTED),
        (None, 5.0, "", Tone.MUTED),
    ],
)
def test_that_a_change_is_said_in_words_and_tone(
    before_h: float | None, after_h: float | None, change: str, tone: Tone
) -> None:
    stage = BothWays(stage=Stage.CURED, as_it_comes=when(before_h), otherwise=when(after_h))
    (row,) = piece_lines([Otherways(piece_key="a", title="A", coat="gloss", stages=(stage,), is_whole=True)], NOW_MS)
    (line,) = row.stages
    assert (line.change, line.tone) == (change, tone)
    assert (line.told == "Cured: not in sight") is (after_h is None)
    if before_h is not None and after_h is not None:
        assert line.as_it_comes.by == pytest.approx(before_h / max(before_h, after_h))
        assert line.otherwise.by == pytest.approx(after_h / max(before_h, after_h))


def test_that_a_stage_that_is_not_in_sight_has_no_time_at_the_end_of_its_line() -> None:
    never = When(by_ms=None, p10_ms=NOW_MS + 30 * HOUR_MS, p90_ms=None)
    seen = When(by_ms=NOW_MS + 40 * HOUR_MS, p10_ms=NOW_MS + 30 * HOUR_MS, p90_ms=NOW_MS + 40 * HOUR_MS)
    ends = []
    for otherwise in (never, seen):
        both = BothWays(stage=Stage.DRY_TO_RECOAT, as_it_comes=never, otherwise=otherwise)
        one = Otherways(piece_key="p", title="Low Tide", coat="gloss 1", stages=(both,), is_whole=True)
        (piece,) = piece_lines([one], NOW_MS)
        ends.append((piece.stages[0].told.endswith("not in sight"), piece.stages[0].end == ""))
    assert ends == [(True, True), (False, False)]


def test_that_a_wish_is_what_is_held() -> None:
    wish = Wish(temperature_C=21.0, air=AirWish.STILL, hours=6)
    held = wish.held(NOW_MS)
    assert (held.temperature_C, held.humidity_pct, held.air_speed_m_s) == (21.0, None, None)
    assert held.most_air_speed_m_s == 0.05
    assert held.until_ms == NOW_MS + 6 * HOUR_MS
    assert Wish().held(NOW_MS).is_as_it_comes
