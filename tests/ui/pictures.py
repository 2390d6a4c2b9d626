"""Draw every state of the window into PNG files, under an X display.

``python tests/ui/pictures.py [--language de] OUT_DIR [NAME …]``
"""

from __future__ import annotations

import argparse
import sys
import tempfile
import time
from itertools import chain
from pathlib import Path

from PySide6.QtCore import QEventLoop, QSettings, QTimer
from PySide6.QtWidgets import QApplication, QDialog, QWidget

sys.path.insert(0, str(Path(__file__).parents[2]))

from studiowatch.service.commands import Refused
from studiowatch.speech.words import speak_by
from studiowatch.ui.app import build_window
from studiowatch.ui.models.recorded import recorded_lines
from studiowatch.ui.settings import ViewSettings
from studiowatch.ui.translation import translate_dates, translation
from studiowatch.ui.widgets.coat_dialog import CoatDialog
from studiowatch.ui.widgets.dialog import FormDialog
from studiowatch.ui.window import StudioWindow
from tests.ui.board_pictures import board_states
from tests.ui.intention_scenes import intention_states
from tests.ui.laying_scenes import GO, LAYING_SCENES, RESTING, SOLVENT_NEAR, WAIT
from tests.ui.past_pictures import past_states, work_states
from tests.ui.plan_scenes import plan_states
from tests.ui.scenes import NOW_MS, PAINT_SHEET, SCENES, SHEETS, MadeUpHistory, ScriptedClock
from tests.ui.what_if_scenes import LendingDesk, what_if_states

SIZES = {
    "1280x800": (1280, 800, 100),
    "1920x1080": (1920, 1080, 100),
    "1920x1080-200": (1920, 1080, 200),
    "1280x800-200": (1280, 800, 200),
}
_SETTLE_MS = 350
_ROUNDS = 3  # of what waits, such as laying out: on a busy machine the time to settle is over before that is done


class Mute:
    """A speaker for pictures."""

    trouble = ""

    def play(self, sound: object, loudness: float = 1.0) -> None:
        del sound, loudness

    def close(self) -> None:
        """Nothing to close."""


def settle(milliseconds: int = _SETTLE_MS) -> None:
    loop = QEventLoop()
    QTimer.singleShot(milliseconds, loop.quit)
    loop.exec()


def draw(out: Path, wanted: list[str]) -> None:
    with tempfile.TemporaryDirectory() as folder:
        for night in (False, True):
            for size_name, (width, height, percent) in SIZES.items():
                if wanted and not any(f"{'night' if night else 'light'}_{size_name}" in one for one in wanted):
                    continue
                settings = ViewSettings(QSettings(f"{folder}/{night}{size_name}.ini", QSettings.Format.IniFormat))
                settings.text_pct = percent
                desk = LendingDesk(offered=(*SHEETS, PAINT_SHEET))
                window = build_window(
                    desk,
                    MadeUpHistory(),
                    ScriptedClock(),
                    night=night,
                    settings=settings,
                    speaker=Mute(),
                    title_note="made-up studio",
                )
                window.resize(width, height)
                window.show()
                settle()
                tone = "night" if night else "light"
                for name, snapshot in (SCENES | LAYING_SCENES).items():
                    if wanted and f"{name}_{tone}_{size_name}" not in wanted:
                        continue
                    desk.publish(snapshot)
                    settle()
                    save(window, out / f"{name}_{tone}_{size_name}.png")
                desk.publish(SCENES["four-warned"])
                settle()
                laying_states(window, desk, out, f"{tone}_{size_name}", wanted)
                special(window, desk, out, f"{tone}_{size_name}", wanted)
                window.leave()
                settle(50)


def laying_states(window: StudioWindow, desk: LendingDesk, out: Path, suffix: str, wanted: list[str]) -> None:
    """Draw each state of laying a coat: what, with the verdict; late; prepared, in part; solvent in the room."""
    states = {
        "lay-go": (GO, "orchard", lambda _form: None),
        "lay-panels": (GO, "panels", lambda _form: None),
        "lay-wait": (WAIT, "orchard", lambda _form: None),
        "lay-late": (GO, "orchard", lambda form: form.buttons.earlier.setChecked(True)),
        "lay-ready": (RESTING, "orchard", lambda _form: None),
        "lay-solvent": (SOLVENT_NEAR, "orchard", lambda form: form.sheet_field.setCurrentIndex(4)),
        "lay-solvent-ready": (SOLVENT_NEAR, "orchard", _prepare_solvent),
        "lay-thick": (GO, "orchard", _too_much),
    }
    for name, (snapshot, key, change) in states.items():
        if wanted and f"{name}_{suffix}" not in wanted:
            continue
        desk.publish(snapshot)
        settle()
        form = window.deeds.lay_coat(key)
        change(form)
        settle()
        save(form, out / f"{name}_{suffix}.png")
        form.drop()
        settle(50)


def _prepare_solvent(form: CoatDialog) -> None:
    form.sheet_field.setCurrentIndex(4)
    settle(50)
    form.prepare()


def _too_much(form: CoatDialog) -> None:
    form.amount_field.setText("130")
    form.thinned_field.setText("30")
    form.what.allowance.setText("10")


def special(window: StudioWindow, desk: LendingDesk, out: Path, suffix: str, wanted: list[str]) -> None:
    if not wanted or f"across_{suffix}" in wanted:
        window.pages.toggle_across()
        for name in ("foretold", "silent", "four-calm", "four-warned"):
            desk.publish(SCENES[name])
            settle()
            save(window, out / f"across-{name}_{suffix}.png")
        save(window, out / f"across_{suffix}.png")
        window.pages.toggle_across()
        settle()
    forms = {
        "register": window.deeds.register_piece,
        "coat": lambda: window.deeds.lay_coat("orchard"),
        "look": lambda: window.deeds.touch_test("ladder"),
        "reading": window.deeds.type_reading,
        "quiet": window.warned.choose_quiet_hours,
        "shelf": window.deeds.sheets.show_shelf,
        "sheet": lambda: window.deeds.sheets.edit(window.deeds.sheets.show_shelf(), desk.shelf()[1]),
        "archive": window.deeds.records.show_archive,
        "edit": lambda: window.deeds.edit_piece("orchard"),
        "outcome": lambda: window.deeds.records.ask_outcome("orchard"),
        "recorded": lambda: window.deeds.records.show_recorded("orchard"),
        "correct": lambda: window.deeds.records.correct(
            "orchard", recorded_lines(window.deeds.piece("orchard"), NOW_MS)[0]
        ),
    }
    desk.answer = Refused("Blue Ladder is not dry to recoat before tomorrow 11:30: wait, or lay it earlier by hand.")
    for name, opened in forms.items():
        if wanted and f"{name}_{suffix}" not in wanted:
            continue
        form = opened()
        settle()
        save(form, out / f"{name}_{suffix}.png")
        if isinstance(form, FormDialog) and name not in ("look", "outcome", "quiet"):
            form.command_or_fault()
            settle()
            save(form, out / f"{name}-fault_{suffix}.png")
        form.reject()
        settle(50)
    dialogs(window, out, suffix, wanted)
    pages = ((name, window) for name in chain(past_states(window, desk), board_states(window, desk)))
    for name, pictured in chain(
        plan_states(window, desk), intention_states(window, desk), what_if_states(window, desk), pages
    ):
        if not wanted or f"{name}_{suffix}" in wanted:
            settle()
            save(pictured, out / f"{name}_{suffix}.png")


def dialogs(window: StudioWindow, out: Path, suffix: str, wanted: list[str]) -> None:
    for name, dialog in work_states(window):
        if not wanted or f"{name}_{suffix}" in wanted:
            settle()
            save(dialog, out / f"{name}_{suffix}.png")
        dialog.deleteLater()


def save(widget: QWidget | QDialog | None, path: Path) -> None:
    for _ in range(_ROUNDS):
        QApplication.processEvents()
    if widget is None or not widget.grab().save(str(path)):
        raise SystemExit(f"could not draw {path}")
    print(path.name)  # noqa: T201 - run by hand


if __name__ == "__main__":
    app = QApplication(["studiowatch"])
    app.setQuitOnLastWindowClosed(False)
    asked = argparse.ArgumentParser(description="Draw every state of the window into PNG files.")
    asked.add_argument("--language", default="en", help="of the window, as the name of its .qm file")
    asked.add_argument("out", type=Path)
    asked.add_argument("names", nargs="*", help="such as coat_light_1280x800-200; all without one")
    given = asked.parse_args()
    speak_by(translation(given.language))
    translate_dates(given.language)
    given.out.mkdir(parents=True, exist_ok=True)
    began = time.monotonic()
    draw(given.out, given.names)
    print(f"{time.monotonic() - began:.0f} s")  # noqa: T201
