"""A clock that is set while a coat of an earlier session dries, and a restart after that, over a real store."""

from __future__ import annotations

from pathlib import Path

import pytest

from studiowatch.service.rounds import ADVANCE_MS

from ..service.scripted import ScriptedClock  # noqa: TID252 - shared with the keeper's tests
from .test_watch_faults import Stepped

HOUR_MS = 3_600_000


@pytest.mark.parametrize("set_by_ms", [0, HOUR_MS, 8 * HOUR_MS, 30 * 24 * HOUR_MS])
def test_that_after_a_restart_a_coat_of_an_earlier_session_dried_only_as_long_as_it_lay_there(
    set_by_ms: int, tmp_path: Path
) -> None:
    stepped = Stepped(tmp_path / "studio.sqlite3", clock=ScriptedClock())
    stepped.open()
    stepped.read(60)
    key = stepped.lay()
    laid_s = stepped.clock.now_s
    stepped.read(60)
    stepped.restart()
    stepped.read(60)
    stepped.clock.now_ms += set_by_ms
    stepped.read(60)
    stepped.restart()
    stepped.read(60)
    lay_s = stepped.clock.now_s - laid_s
    film = stepped.watch.desks.rack.runs[key].film
    assert lay_s - ADVANCE_MS / 1000 <= film.elapsed_s <= lay_s
    assert film.is_wet
    stepped.close()
