"""When the room history is drawn again."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from studiowatch.coats.stages import Orientation, Stage, Surface
from studiowatch.service.board_view import BoardView
from studiowatch.service.piece_view import CoatView, PieceView, StageTime
from studiowatch.service.room_band import RoomBand
from studiowatch.service.snapshot import PromptView, RoomView, Snapshot
from studiowatch.speech.units import US
from studiowatch.studio.words import Level, Sentence
from studiowatch.ui.models.pace import (
    CARDS_REDRAW_MS,
    HISTORY_REDRAW_MS,
    ROWS_REDRAW_MS,
    cards_due,
    history_due,
    rows_due,
)
from studiowatch.ui.models.times import IN_SECONDS_MS

NOW_MS = 1_772_442_000_000
BAND = RoomBand(time_ms=np.array([NOW_MS]), temperature_C=np.full((3, 1), 20.0), humidity_pct=np.full((3, 1), 50.0))
CALM = Sentence(level=Level.CALM, headline="Good to lay a coat", detail="", advice="")
DRAWN = Snapshot(time_ms=NOW_MS, board=BoardView(connected=True), room=RoomView(time_ms=NOW_MS), sentence=CALM)


def later(ms: int) -> Snapshot:
    return replace(DRAWN, time_ms=NOW_MS + ms)


@pytest.mark.parametrize(
    ("after_ms", "ms_per_px", "due"),
    [
        (1_000, 32_000.0, False),
        (HISTORY_REDRAW_MS - 1, 96_000.0, False),
        (HISTORY_REDRAW_MS, 96_000.0, True),
        (1_000, 900.0, True),
        (899, 900.0, False),
        (-1, 32_000.0, True),
    ],
    ids=["a second", "just before", "as long as it waits", "a pixel", "less than a pixel", "clock set back"],
)
def test_that_drift_is_drawn_by_the_pixel_or_every_minute(after_ms: int, ms_per_px: float, *, due: bool) -> None:
    assert history_due(DRAWN, later(after_ms), ms_per_px) is due


def test_that_an_event_is_drawn_at_once() -> None:
    assert history_due(None, DRAWN, 32_000.0)
    assert history_due(DRAWN, replace(later(0), board=BoardView(connected=False)), 32_000.0)
    assert history_due(DRAWN, replace(later(0), sentence=replace(CALM, level=Level.ACT)), 32_000.0)
    assert history_due(DRAWN, replace(later(0), units=US), 32_000.0)
    assert history_due(DRAWN, replace(later(0), room_band=BAND), 32_000.0)


def test_that_cards_wait_while_films_only_thin_and_not_once_something_is_otherwise() -> None:
    clear = StageTime(stage=Stage.CLEAR, time_ms=DRAWN.time_ms, reached=False)
    coat = CoatView(
        key="c",
        sheet="gloss",
        label="gloss 1",
        sheen="gloss",
        clear_film=True,
        laid_ms=DRAWN.time_ms,
        surface=Surface.WET,
        milky=True,
        wet_um=100.0,
        dry_um=30.0,
        stages=(clear,),
    )
    piece = PieceView(
        key="p",
        title="Kiln",
        width_cm=40,
        height_cm=40,
        support="",
        orientation=Orientation.FACE_UP,
        due=None,
        coats=(coat,),
    )
    before = replace(DRAWN, pieces=(piece,))
    soon = replace(before, time_ms=before.time_ms + CARDS_REDRAW_MS - 1)
    assert not cards_due(before, soon)
    assert cards_due(before, replace(soon, time_ms=soon.time_ms + 1))
    assert not cards_due(before, replace(soon, pieces=(replace(piece),)))
    thinner = replace(coat, water_g_m2=20.0, film_C=17.5, stages=(replace(clear, time_ms=DRAWN.time_ms + 1),))
    assert not cards_due(before, replace(soon, pieces=(replace(piece, coats=(thinner,), next_ms=DRAWN.time_ms),)))
    for otherwise in (
        replace(coat, surface=Surface.TACKY),
        replace(coat, covered=True),
        replace(coat, milky=False),
        replace(coat, stages=(replace(clear, reached=True),)),
        replace(coat, doubt="That does not fit its sheet."),
    ):
        assert cards_due(before, replace(soon, pieces=(replace(piece, coats=(otherwise,)),)))
    assert cards_due(before, replace(soon, pieces=(replace(piece, title="Kilns"),)))
    assert cards_due(before, replace(soon, pieces=()))
    assert cards_due(before, replace(soon, units=US))


def test_that_rows_wait_while_they_would_say_the_same_but_for_seconds() -> None:
    far, near = (
        PromptView(key="a:bubble", due_ms=NOW_MS + left_ms, text="Second pass", piece_key="a", piece_title="Kiln")
        for left_ms in (IN_SECONDS_MS + 60_000, IN_SECONDS_MS)
    )
    before = replace(DRAWN, prompts=(far,))
    soon = replace(before, time_ms=before.time_ms + ROWS_REDRAW_MS - 1, prompts=(replace(far),))
    assert not rows_due(before, soon)
    assert rows_due(before, replace(soon, time_ms=soon.time_ms + 1))
    assert rows_due(before, replace(soon, prompts=()))
    assert rows_due(before, replace(soon, prompts=(replace(far, overdue=True),)))
    assert rows_due(before, replace(soon, units=US))
    counted = replace(DRAWN, time_ms=near.due_ms - 2000, prompts=(near,))
    assert not rows_due(counted, replace(counted, time_ms=near.due_ms - 1))
    assert rows_due(counted, replace(counted, time_ms=near.due_ms))  # it falls due
