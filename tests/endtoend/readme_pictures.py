"""Take the README's pictures from the real program on its made-up studio. A script, run by hand under an X display.

xvfb-run -a -s "-screen 0 1400x1000x24" python tests/endtoend/readme_pictures.py resources/screens
"""

from __future__ import annotations

import sys
import tempfile
import time
from collections.abc import Callable
from dataclasses import replace
from datetime import datetime
from pathlib import Path

from PySide6.QtCore import QEventLoop, QSettings, QTimer
from PySide6.QtWidgets import QApplication, QDialog, QWidget

from studiowatch.board.simulated_room import SimulatedRoom
from studiowatch.cli.commands import run
from studiowatch.compose import SimulatedStudio, outfit
from studiowatch.service.doors import Doors
from studiowatch.service.ports import Desk
from studiowatch.ui.app import build_window
from studiowatch.ui.settings import ViewSettings
from studiowatch.ui.window import StudioWindow

SHOWN = datetime(2026, 3, 4, 14, 11).astimezone()  # an afternoon at the rack
SIZE = (1280, 800)
PATIENCE_S = 90.0


class AfternoonClock:
    """The machine's clock, moved to the afternoon that is shown."""

    def __init__(self) -> None:
        self._began_s = time.monotonic()

    def utc_ms(self) -> int:
        return round(SHOWN.timestamp() * 1000 + self.monotonic_s() * 1000)

    def monotonic_s(self) -> float:
        return time.monotonic() - self._began_s


def spin(milliseconds: int) -> None:
    """Let the window live for a while."""
    loop = QEventLoop()
    QTimer.singleShot(milliseconds, loop.quit)
    loop.exec()


def until(holds: Callable[[], bool]) -> None:
    """Let the window live until something holds."""
    deadline_s = time.monotonic() + PATIENCE_S
    while not holds():
        if time.monotonic() > deadline_s:
            raise SystemExit(f"not seen within {PATIENCE_S:g} s")
        spin(100)


def keep(widget: QWidget, out: Path, name: str) -> None:
    """Save what `widget` shows."""
    spin(600)
    if not widget.grab().save(str(out / f"{name}.png")):
        raise SystemExit(f"{out / name}.png cannot be written")


def take(window: StudioWindow, out: Path) -> None:
    """Go through the pictures."""
    until(lambda: window.page.sentence.headline.startswith("All is well"))
    spin(3000)
    keep(window, out, "calm")
    window.pages.show_what_if()
    window.what_if.hand.temperature.slider.setValue(26)
    window.what_if.hand.humidity.slider.setValue(18)
    until(lambda: bool(window.what_if.rows) and window.what_if.lead.text().startswith("Room kept at"))
    keep(window, out, "what-if")
    window.what_if.hand.let_go()
    window.pages.show_rack()
    window.foot.lay_asked.emit()
    until(lambda: window.findChild(QDialog) is not None)
    dialog = window.findChild(QDialog)
    keep(dialog, out, "lay-a-coat")
    dialog.close()
    until(lambda: window.page.sentence.headline.startswith("Air is moving"))
    spin(12_000)
    keep(window, out, "warning")
    window.menus.night.setChecked(True)
    keep(window, out, "night")
    window.menus.night.setChecked(False)
    window.pages.toggle_across()
    keep(window, out, "across-the-room")


def main() -> int:
    """Run the demo with a window that takes its own pictures."""
    out = Path(sys.argv[1])
    out.mkdir(parents=True, exist_ok=True)
    app = QApplication(sys.argv[:1])
    clock = AfternoonClock()

    with tempfile.TemporaryDirectory() as folder:
        settings = ViewSettings(QSettings(f"{folder}/window.ini", QSettings.Format.IniFormat))

        def window_for(desk: Desk, doors: Doors, note: str) -> int:
            window = build_window(
                desk,
                doors.history,
                clock,
                exchange=doors.exchange,
                reviews=doors.reviews,
                title_note=note,
                night=False,
                settings=settings,
            )
            window.resize(*SIZE)
            window.show()
            take(window, out)
            window.leave()
            app.processEvents()
            return 0

        parts = replace(
            outfit(),
            clock=clock,
            demo_folder=Path(folder) / "demo",
            made_up_room=lambda seed: SimulatedStudio(room=SimulatedRoom(seed=seed), clock=clock),
            window=window_for,
        )
        return run(["demo"], parts)


if __name__ == "__main__":
    raise SystemExit(main())
