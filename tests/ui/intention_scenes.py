"""What the made-up painters mean to do with the room, and its windows led through their states for pictures."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import date

import numpy as np
from PySide6.QtWidgets import QWidget

from studiowatch.room.intentions import Doing
from studiowatch.service.commands import Refused
from studiowatch.service.intention_view import IntentionView
from studiowatch.service.room_band import RoomBand
from studiowatch.service.snapshot import Snapshot
from studiowatch.studio.meant import OFF_M_S, Meant
from studiowatch.studio.meant_words import cautions, vapour_sentence, withheld_sentence, words
from studiowatch.ui.window import StudioWindow

from .laying_scenes import WAIT
from .plan_scenes import FOUR_PLANNED, GLOSS
from .scenes import FOUR_CALM, NOW_MS, ScriptedDesk

HOUR_MS = 3_600_000
COAT = "gloss 1 on Two Herons, Waiting"
TODAY = date(2026, 3, 4)
HEATER = Meant(
    key="heater", doing=Doing.HEATER, from_min=18 * 60, to_min=23 * 60, target=21.0, first_day=TODAY, days=None
)
DRYER = Meant(key="dryer", doing=Doing.DEHUMIDIFIER, from_min=22 * 60, to_min=6 * 60, target=50.0, first_day=TODAY)
FAN_OFF = Meant(key="fan-off", doing=Doing.FAN, from_min=0, to_min=24 * 60, target=OFF_M_S, first_day=TODAY, days=None)


def view_of(meant: Meant, *, coat: str = "") -> IntentionView:
    return IntentionView(
        meant=meant,
        words=words(meant),
        cautions=cautions(meant.doing, is_on=meant.is_on),
        withheld=withheld_sentence(coat, meant.doing) if coat else "",
    )


def band(*, is_meant: bool) -> RoomBand:
    """Return a room that cools by night and warms by day, ever less certainly."""
    hours = np.arange(97.0)
    middle = 18.5 + 1.8 * np.cos(2.0 * np.pi * (hours - 2.0) / 24.0)
    spread = 2.0 * (1.0 - np.exp(-hours / 10.0))
    damp = 108.0 - 2.7 * middle
    return RoomBand(
        time_ms=NOW_MS + HOUR_MS * hours.astype(np.int64),
        temperature_C=np.array([middle - spread, middle, middle + spread]),
        humidity_pct=np.array([damp - 3.0 * spread, damp, damp + 3.0 * spread]),
        is_meant=is_meant,
    )


MEANT = replace(
    FOUR_PLANNED,
    best_hours=(GLOSS,),
    intentions=(view_of(HEATER), view_of(DRYER), view_of(FAN_OFF)),
    room_band=band(is_meant=True),
)
WITHHELD = replace(MEANT, intentions=(view_of(HEATER, coat=COAT), view_of(FAN_OFF, coat=COAT)), vapour_near=COAT)
NEXT = (
    "Next good hours for it: Thu 10:00 to Thu 13:00, in nine of ten ways that this room may go. 15:00 to Thu 09:00: "
    "likely too damp before it is safe"
)
WAIT_BEST = replace(WAIT, best_hours=(replace(GLOSS, sheet="gloss-waterborne", next_line=NEXT),))
FREE = replace(FOUR_CALM, room_band=band(is_meant=False))


def intention_states(window: StudioWindow, desk: ScriptedDesk) -> Iterator[tuple[str, QWidget]]:
    """Put list and form into one state after the other, and yield its name and what to picture."""
    before, answer = window.feed.latest, desk.answer
    for name, snapshot in (("meant-none", FREE), ("meant", MEANT), ("meant-withheld", WITHHELD)):
        _show(window, desk, snapshot)
        shown = window.deeds.intentions.show()
        yield name, shown
        shown.accept()
    for at, name in enumerate(("heater", "dehumidifier", "fan", "fan-off")):
        form = window.deeds.intentions.add()
        form.what_field.setCurrentIndex(at)
        yield f"meant-{name}", form
        if name == "heater":
            desk.answer = Refused(vapour_sentence(COAT, Doing.HEATER))
            form.command_or_fault()
            yield "meant-refused", form
            desk.answer = answer
        form.drop()
    _show(window, desk, WAIT_BEST)
    laying = window.deeds.lay_coat("orchard")
    yield "lay-wait-best", laying
    laying.drop()
    _show(window, desk, MEANT)
    yield "meant-history", window
    window.pages.show_plan()
    yield "meant-plan", window
    window.pages.show_rack()
    if before is not None:
        _show(window, desk, before)


def _show(window: StudioWindow, desk: ScriptedDesk, snapshot: Snapshot) -> None:
    desk.publish(snapshot)
    window.deeds.set_snapshot(snapshot)
    window.plan.show_snapshot(snapshot)
