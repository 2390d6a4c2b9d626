"""The best hours on the plan's page: told with reasons, away while no coat is to come."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import pytest
from pytestqt.qtbot import QtBot

from studiowatch.service.snapshot import Snapshot
from studiowatch.ui.models.best_hours import ASIDES, best_lines
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.window import StudioWindow

from .plan_scenes import FOUR_PLANNED, GLOSS
from .scenes import ScriptedDesk

UNKNOWN = replace(GLOSS, lines=(), aside_lines=(), caution="", unknown="Not known yet.")


def test_that_caution_stands_before_the_hours_and_reasons_after_them() -> None:
    lines = best_lines(replace(FOUR_PLANNED, best_hours=(GLOSS,)))
    assert lines[0].strong
    assert lines[0].text.endswith("Orchard at Low Water, Lamp in the Fog")
    assert (lines[1].text, lines[1].tone) == ("Fresh air first.", Tone.CAUTION)
    assert lines[2].text == GLOSS.lines[0]
    assert [line.text for line in lines[3:]] == list(GLOSS.aside_lines[:ASIDES])
    assert [line.text for line in best_lines(replace(FOUR_PLANNED, best_hours=(UNKNOWN,)))][1:] == ["Not known yet."]


@pytest.mark.window
def test_that_the_card_comes_and_goes_with_what_is_planned(
    shown: Callable[[Snapshot], StudioWindow], desk: ScriptedDesk, qtbot: QtBot
) -> None:
    window = shown(FOUR_PLANNED)
    window.pages.show_plan()
    assert not window.plan.best.isVisible()
    desk.publish(replace(FOUR_PLANNED, best_hours=(GLOSS,)))
    qtbot.waitUntil(window.plan.best.isVisible)
    assert GLOSS.lines[0] in [line.text() for line in window.plan.best.lines]
    desk.publish(FOUR_PLANNED)
    qtbot.waitUntil(lambda: not window.plan.best.isVisible())
    assert not window.plan.best.isVisible()


@pytest.mark.window
def test_that_four_pieces_stand_whole_below_the_hours_of_many_products(
    shown: Callable[[Snapshot], StudioWindow], desk: ScriptedDesk, qtbot: QtBot
) -> None:
    window = shown(FOUR_PLANNED)
    window.resize(1280, 800)
    window.pages.show_plan()
    desk.publish(replace(FOUR_PLANNED, best_hours=(GLOSS,) * 5))
    best, table = window.plan.best, window.plan.table
    qtbot.waitUntil(lambda: window.plan.height() // 2 < best.height() < best.geometry().bottom() < table.y())
    rows = table.rows
    assert len(rows) == 4
    view = rows[0].parentWidget().parentWidget()
    qtbot.waitUntil(lambda: all(0 <= row.mapTo(view, row.rect().bottomLeft()).y() < view.height() for row in rows))
