"""How fast another room is answered for a full rack, beside the rack's own look ahead. A script, run by hand.

    python tests/benchmarks/what_if_speed.py

Twenty pieces, from just laid to days old, in a room foretold from a month of log. A slider is moved through the
temperatures; each place of it asks for all pieces by the few draws, and where it rests by all. The floor is what the
rack itself takes to look ahead for the same pieces once, in the same run.
"""

from __future__ import annotations

import time

import numpy as np
from model_speed import LIVE_PIECES, NOW_MS, live_pieces, steady_air, studio

from studiowatch.coats.data_sheet import Kind
from studiowatch.coats.stages import Stage
from studiowatch.service.films_to_come import FilmsToCome, films_to_come
from studiowatch.service.rack import Rack
from studiowatch.service.room_ahead import RoomAhead
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.service.what_if import WhatIf
from studiowatch.studio.concern import AirNow
from studiowatch.studio.otherwise import Otherwise

DAYS = 30
GOAL_MS = 100.0
SLIDER_C = np.arange(15.0, 28.0, 0.5)


def ms_of(what_if: WhatIf, held: Otherwise, *, whole: bool = False) -> float:
    """Return how long the answer for all pieces takes, ms."""
    began_s = time.process_time()
    answers = list(what_if.answers(held, whole=whole))
    took_ms = 1000.0 * (time.process_time() - began_s)
    if len(answers) != len(what_if.lent.films):
        raise SystemExit("a piece has no answer")
    return took_ms


def lent() -> tuple[FilmsToCome, float]:
    """Return the films of a full rack, and how long its own look ahead takes, ms."""
    with studio(DAYS) as store:
        store.records.save_pieces(live_pieces())
        room = RoomAhead(log=store.log)
        room.read_whole(NOW_MS)
        rack = Rack(shelf=SheetShelf.open(), records=store.records, log=store.log)
        rack.stacks.room = room
        rack.open(NOW_MS)
        tops = [run for piece in rack.on_rack() if (run := rack.stacks.top(piece)) is not None]
        began_s = time.process_time()
        for run in tops:
            run.look_ahead(room)
        floor_ms = 1000.0 * (time.process_time() - began_s)
        air = steady_air(0.0)
        now = AirNow(temperature_C=air.temperature_C, humidity_pct=air.humidity_pct, air_speed_m_s=air.air_speed_m_s)
        wet = sum(run.film.is_wet and run.sheet.kind is not Kind.PAINT for run in tops)
        dry = sum(run.reached_ms(Stage.DRY_TO_TOUCH) is not None for run in tops)
        print(f"{LIVE_PIECES} pieces: {wet} wet in some draw, {dry} dry to touch; floor {floor_ms:.0f} ms")
        return films_to_come(rack, room, now, NOW_MS, ""), floor_ms


def main() -> None:
    """Time it."""
    films, floor_ms = lent()
    what_if = WhatIf(lent=films)
    began_s = time.process_time()
    ahead = len(list(what_if.prepare()))
    ahead_ms = 1000.0 * (time.process_time() - began_s)
    first_ms = ms_of(what_if, Otherwise(temperature_C=float(SLIDER_C[0])))
    print(f"{ahead} pieces wait; made ready ahead in {ahead_ms:.0f} ms; first place of the slider {first_ms:.0f} ms")
    for name, whole in (("few draws", False), ("all draws", True)):
        ms_of(what_if, Otherwise(temperature_C=20.0), whole=whole)
        for held, words in (("temperature", "temperature"), ("temperature and humidity", "both")):
            took = [
                ms_of(
                    what_if,
                    Otherwise(temperature_C=float(at_C), humidity_pct=50.0 if words == "both" else None),
                    whole=whole,
                )
                for at_C in SLIDER_C
            ]
            middle_ms, worst_ms = float(np.median(took)), max(took)
            goal = "" if whole else f"; goal {GOAL_MS:g} ms: {'met' if worst_ms < GOAL_MS else 'not met'}"
            over = sum(one >= GOAL_MS for one in took)
            times = f"{middle_ms:.0f} ms, at most {worst_ms:.0f}, {over} of {len(took)} places over {GOAL_MS:g}, "
            times += f"{middle_ms / floor_ms:.2f} x the floor"
            print(f"  {name}, {held}: {times}{goal}")


if __name__ == "__main__":
    main()
