"""The main job: the board's bytes warn a painter that a fan is on over a wet coat."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from pytestqt.qtbot import QtBot

from .chip import Chip
from .whole import lay_wet_coat, whole_program

SPEED = 8.0  # board seconds in a second
STILL_MV, FAN_MV = 600, 760
PATIENCE_MS = 30_000
pytestmark = [pytest.mark.machine_code, pytest.mark.window]


def test_that_air_over_a_wet_coat_reaches_the_window_and_is_heard(
    start_chip: Callable[..., Chip], qtbot: QtBot, tmp_path: Path
) -> None:
    chip = start_chip(speed=SPEED)
    chip.tell(f"air {STILL_MV}")
    with whole_program(chip.pty, tmp_path, speed=SPEED) as (keeper, window, clock, speaker):
        qtbot.waitUntil(lambda: "sht4x" in window.foot.words, timeout=PATIENCE_MS)
        lay_wet_coat(keeper, clock)
        quiet = clock.monotonic_s() + 15
        qtbot.waitUntil(lambda: clock.monotonic_s() > quiet, timeout=PATIENCE_MS)
        assert "Air is moving" not in window.page.sentence.headline
        chip.tell(f"air {FAN_MV}")
        qtbot.waitUntil(lambda: window.page.sentence.headline == "Air is moving over a wet coat", timeout=PATIENCE_MS)
        assert window.page.sentence.isVisible()
        assert speaker.played == []
        qtbot.waitUntil(lambda: speaker.played != [], timeout=PATIENCE_MS)
        chip.tell(f"air {STILL_MV}")
        qtbot.waitUntil(lambda: "Air is moving" not in window.page.sentence.headline, timeout=PATIENCE_MS)


@pytest.mark.parametrize(
    ("fail", "mend"),
    [pytest.param("unplug", "plug", id="pulled-out"), pytest.param("hold", f"speed {SPEED}", id="mute")],
)
def test_that_a_board_that_falls_silent_is_said_while_a_coat_is_wet_and_unsaid_when_it_is_back(
    start_chip: Callable[..., Chip], qtbot: QtBot, tmp_path: Path, fail: str, mend: str
) -> None:
    chip = start_chip(speed=SPEED, link=tmp_path / "board")
    with whole_program(chip.pty, tmp_path, speed=SPEED) as (keeper, window, clock, _):
        qtbot.waitUntil(lambda: "sht4x" in window.foot.words, timeout=PATIENCE_MS)
        lay_wet_coat(keeper, clock)
        chip.tell(fail)
        qtbot.waitUntil(lambda: window.page.sentence.headline.startswith("The board is silent"), timeout=PATIENCE_MS)
        chip.tell(mend)
        qtbot.waitUntil(lambda: "silent" not in window.page.sentence.headline, timeout=PATIENCE_MS)
