"""How long from moving air to the painted warning: machine code, pty, reader, keeper, window. A script, run by hand.

    xvfb-run -a python tests/benchmarks/warning_latency.py --fans 50

For each fan it prints the board time from the step in the air to the painted banner, and the real time from the last
byte at the port to that paint.
"""

from __future__ import annotations

import argparse
import importlib.util
import random
import statistics
import sys
import tempfile
import time
from pathlib import Path
from types import ModuleType

from PySide6.QtCore import QEvent, QEventLoop, QObject, QTimer
from PySide6.QtWidgets import QApplication

STILL_MV, FAN_MV = 600, 760
LEARN_S, ON_S, REST_S = 20.0, 6.0, 24.0  # board seconds: before the first fan, each fan, and between two
START_S, DEADLINE_S = 3.0, 20.0  # real seconds: for the board to say hello, and until a warning counts as missed
ENDTOEND = Path(__file__).resolve().parents[1] / "endtoend"


def load(name: str) -> ModuleType:
    """Load one of the end-to-end helpers, which are no package of their own."""
    spec = importlib.util.spec_from_file_location(f"endtoend_{name}", ENDTOEND / f"{name}.py")
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


class PaintWatch(QObject):
    """Notes when the banner was first painted with the warning."""

    def __init__(self, window: object) -> None:
        super().__init__()
        self._banner = window.page.sentence  # type: ignore[attr-defined]
        self.painted_s: float | None = None
        self._banner.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Look at paint events of the banner."""
        is_paint = watched is self._banner and event.type() == QEvent.Type.Paint
        if is_paint and self.painted_s is None and self._banner.headline.startswith("Air is moving"):
            self.painted_s = time.monotonic()
        return False


def spin(seconds: float) -> None:
    """Let the window live for a while."""
    loop = QEventLoop()
    QTimer.singleShot(round(seconds * 1000), loop.quit)
    loop.exec()


class Bench:
    """One running program, and the two times of each fan over its wet coat."""

    def __init__(self, chip: object, window: object, kits: tuple[ModuleType, ModuleType], speed: float) -> None:
        self._chip, self._window, self._speed = chip, window, speed
        self._chip_kit, self._whole = kits
        self._drawn = random.Random(1)
        self.board_s: list[float] = []
        self.real_ms: list[float] = []

    def fan(self) -> None:
        """Turn the air up, wait for the painted warning, and turn it down, with a rest of another length after it."""
        watch = PaintWatch(self._window)
        began_s = self._chip_kit.time_of(self._tell(f"air {FAN_MV}"))
        deadline_s = time.monotonic() + DEADLINE_S
        while watch.painted_s is None and time.monotonic() < deadline_s:
            spin(0.002)
        if watch.painted_s is None:
            raise SystemExit(f"no warning within {DEADLINE_S:g} s")
        chip_s = self._chip_kit.time_of(self._tell("time"))
        painted_chip_s = chip_s - (time.monotonic() - watch.painted_s) * self._speed
        self.board_s.append(painted_chip_s - began_s)
        self.real_ms.append((watch.painted_s - self._whole.TimedPort.last_s) * 1000)
        spin(ON_S / self._speed)
        self._tell(f"air {STILL_MV}")
        spin((REST_S + self._drawn.random()) / self._speed)

    def _tell(self, command: str) -> str:
        answer: str = self._chip.tell(command)  # type: ignore[attr-defined]
        return answer


def main() -> None:
    """Measure and print."""
    words = argparse.ArgumentParser()
    words.add_argument("--fans", type=int, default=50)
    words.add_argument("--speed", type=float, default=1.0)
    call = words.parse_args()
    app = QApplication(sys.argv[:1])
    chip_kit, whole = load("chip"), load("whole")
    with tempfile.TemporaryDirectory() as folder, chip_kit.Chip(Path(folder), speed=call.speed) as chip:
        chip.tell(f"air {STILL_MV}")
        with whole.whole_program(chip.pty, Path(folder), speed=call.speed) as (keeper, window, clock, _):
            spin(START_S)
            whole.lay_wet_coat(keeper, clock)
            spin(LEARN_S / call.speed)
            bench = Bench(chip, window, (chip_kit, whole), call.speed)
            for number in range(call.fans):
                bench.fan()
                print(f"{number + 1:>3}  board {bench.board_s[-1]:.3f} s  byte to paint {bench.real_ms[-1]:.1f} ms")
    for name, values, unit in (("board time", bench.board_s, "s"), ("byte to paint", bench.real_ms, "ms")):
        low, middle, high = min(values), statistics.median(values), max(values)
        print(f"{name}: least {low:.2f}, median {middle:.2f}, most {high:.2f} {unit} over {len(values)} fans")
    app.quit()


if __name__ == "__main__":
    main()
