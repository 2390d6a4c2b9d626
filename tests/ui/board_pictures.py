"""The board page led through its states, for pictures."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from studiowatch.board.column_tests import Kind
from studiowatch.board.onlooker import Onlooker
from studiowatch.service.commands import Refused
from studiowatch.ui.models.air_guide import AirGuide, AirStep
from studiowatch.ui.models.humidity_guide import HumidityGuide, HumidityStep
from studiowatch.ui.window import StudioWindow

from .board_scenes import (
    READ,
    SALTS,
    UNREAD,
    UNWELL,
    WALKED,
    ask_columns,
    drafted,
    heard,
    in_box,
    refused,
    searching,
)
from .scenes import FIRST_RUN, FOUR_WARNED, MINUTE_MS, NOW_MS, ScriptedDesk

NOT_LIKELY = "The sensor's gain would be 0.62; 0.8 to 1.2 is allowed: check both slurries and the seal of the box."


def board_states(window: StudioWindow, desk: ScriptedDesk) -> Iterator[str]:
    """Put the page into one state after the other, and yield its name."""
    page = window.board
    window.pages.show_board()
    for name, snapshot, tell in (
        ("board-none", FIRST_RUN, lambda _: None),
        ("board-searching", FIRST_RUN, searching),
        ("board-refused", UNREAD, refused),
        ("board-read", READ, heard),
        ("board-unwell", UNWELL, heard),
        ("board-warned", replace(FOUR_WARNED, calibrations=READ.calibrations), heard),
    ):
        desk.onlooker = Onlooker()
        desk.onlooker.look(on=True)
        tell(desk.onlooker)
        desk.publish(snapshot)
        page.show_snapshot(snapshot)
        yield name
    yield from _humidity(window, desk)
    yield from _air(window, desk)
    yield from _columns(window, desk)
    page.go_to(page.overview)
    window.pages.show_rack()


def _humidity(window: StudioWindow, desk: ScriptedDesk) -> Iterator[str]:
    page = window.board.humidity
    window.board.go_to(page)
    shut_ms = NOW_MS - 41 * MINUTE_MS
    waiting = HumidityGuide(step=HumidityStep.WAIT_MAGNESIUM, shut_ms=shut_ms)
    result = HumidityGuide(
        step=HumidityStep.RESULT, magnesium_ms=SALTS.magnesium_ms, sodium_ms=SALTS.sodium_ms, shut_ms=shut_ms
    )
    for name, guide, snapshot in (
        ("humidity-needed", HumidityGuide(), READ),
        ("humidity-shut", HumidityGuide(step=HumidityStep.SHUT_MAGNESIUM), READ),
        ("humidity-early", replace(waiting, shut_ms=NOW_MS - 12 * MINUTE_MS), in_box(36.1, minutes=12)),
        ("humidity-settling", waiting, in_box(36.1, minutes=40)),
        ("humidity-flat", waiting, in_box(36.1, minutes=40, from_pct=36.1)),
        ("humidity-leaks", waiting, in_box(52.0, minutes=40, from_pct=52.0)),
        ("humidity-result", result, drafted(SALTS)),
    ):
        page.guide = guide
        desk.publish(snapshot)
        page.show_snapshot(snapshot)
        yield name
    page._refused(NOT_LIKELY)
    yield "humidity-refused"
    page._turn_to(HumidityGuide())


def _air(window: StudioWindow, desk: ScriptedDesk) -> Iterator[str]:
    page = window.board.air
    window.board.go_to(page)
    for name, guide, snapshot in (
        ("air-needed", AirGuide(), READ),
        ("air-still", AirGuide(step=AirStep.STILL, started_ms=NOW_MS - 12_000), READ),
        ("air-walks", AirGuide(step=AirStep.WALKS, still=WALKED.still, walks=WALKED.walks[:2]), READ),
        ("air-fit", AirGuide(step=AirStep.RESULT, still=WALKED.still, walks=WALKED.walks), drafted(WALKED)),
    ):
        page.guide = guide
        desk.publish(snapshot)
        page.show_snapshot(snapshot)
        yield name
    page._refused("The walks at 0.30, 0.31, 0.32 m/s lie too close together; 3 speeds are needed.")
    yield "air-refused"
    page._turn_to(AirGuide())


def _columns(window: StudioWindow, desk: ScriptedDesk) -> Iterator[str]:
    page = window.board.columns
    asked = ask_columns()
    desk.publish(asked)
    window.board.show_snapshot(asked)
    window.board.go_to(window.board.overview)
    yield "board-unchecked"
    window.board.go_to(page)
    yield "columns-asked"
    page._begin(Kind.BREATH)
    yield "columns-breath"
    page._test = None
    desk.answer = Refused("No board was found: push its USB plug home.")
    page._accept()
    yield "columns-unsaid"
