"""Makes the atlas in resources/atlas: for each cause a made-up coat that shows it. Usage: atlas_files.py OUT_DIR.

The rooms are made up, with the ups and downs of a day and the noise of a sensor; nothing in them was measured.
"""

from __future__ import annotations

import sys
from collections.abc import Callable
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from math import pi, sin
from pathlib import Path
from random import Random

LAID = datetime(2026, 2, 11, 16, 0, tzinfo=UTC)
BEFORE_H, AFTER_H, STEP_MIN = 26, 18, 3
Air = tuple[float, float, float]  # °C, %, m/s
ISOLATION = 'sheet = "isolation-waterborne"\nvolume_mL = 9.6\noutcome = "clear"\n'


@dataclass(frozen=True)
class Page:
    """One coat: its piece, what was laid below (hours before), the coat's own lines, and its room by the hour."""

    title: str
    coat: str
    outcome: str
    room: Callable[[float], Air]
    below: tuple[tuple[float, str], ...] = ((24.0, ISOLATION),)
    seen_h: float = 16.5
    covered_min: float = 20.0


def fair(hour: float) -> Air:
    """Return an ordinary room: a day's swing about 20 °C and 52 %."""
    swing = sin(2.0 * pi * (hour + 1.0) / 24.0)
    return 20.0 + 0.8 * swing, 52.0 - 3.0 * swing, 0.05


def during(start_h: float, end_h: float, there: Air) -> Callable[[float], Air]:
    """Return the ordinary room, but for some hours."""
    return lambda hour: there if start_h <= hour < end_h else fair(hour)


def cold(hour: float) -> Air:
    """Return a room whose heating went off an hour after the laying, and the window stood open."""
    temperature_C, humidity_pct, speed_m_s = fair(hour)
    fallen = min(max(hour + 0.5, 0.0) / 1.0, 1.0)
    return temperature_C - 12.5 * fallen, humidity_pct + 14.0 * fallen, speed_m_s


GLOSS = 'sheet = "gloss-waterborne"\nvolume_mL = 9.6\n'
SATIN = 'sheet = "satin-waterborne"\nvolume_mL = 9.6\noutcome = "clear"\n'
PAGES = {
    "sealed-in-water": Page(
        title="Harbour Steps",
        coat=GLOSS,
        outcome="milky in patches",
        room=fair,
        below=((1.5, ISOLATION.replace('outcome = "clear"\n', "")),),
    ),
    "damp-air": Page(
        title="Rain on Slate", coat=GLOSS, outcome="milky all over", room=during(-2, 9, (18.5, 87.0, 0.05))
    ),
    "below-mfft": Page(title="North Window", coat=GLOSS, outcome="powdery", room=cold),
    "condensation": Page(
        title="Kettle Song", coat=GLOSS, outcome="milky in patches", room=during(0.4, 1.2, (21.5, 97.5, 0.05))
    ),
    "skinned": Page(title="Dry Wind", coat=GLOSS, outcome="milky in patches", room=during(-0.2, 4, (23.0, 33.0, 1.1))),
    "too-thick": Page(
        title="Deep Pool", coat=GLOSS.replace("9.6", "27"), outcome="milky all over", room=fair, seen_h=17.0
    ),
    "thinned": Page(title="Thin Ice", coat=f"{GLOSS}thinned_pct = 40\n", outcome="milky all over", room=fair),
    "matting-build-up": Page(
        title="Velvet Night",
        coat=SATIN.replace('outcome = "clear"\n', ""),
        outcome="dull in darks",
        room=fair,
        below=((25.0, ISOLATION), (17.0, SATIN), (8.5, SATIN)),
    ),
    "touched": Page(title="Green Field", coat=GLOSS, outcome="milky in patches", room=fair, covered_min=1.0),
    "still-clearing": Page(title="First Look", coat=GLOSS, outcome="milky all over", room=fair, seen_h=0.7),
    "unknown": Page(title="Plain Day", coat=GLOSS, outcome="milky all over", room=fair),
}


def main(out: Path) -> None:
    """Write two files for each page."""
    for name, page in PAGES.items():
        (out / f"{name}.toml").write_text(studio_text(page), "utf-8")
        (out / f"{name}.csv").write_text(room_text(page, Random(name)), "utf-8")


def studio_text(page: Page) -> str:
    """Return the studio file of a page."""
    blocks = [f'[[piece]]\ntitle = "{page.title}"\nwidth_cm = 30\nheight_cm = 40\n']
    blocks += [f"[[piece.coat]]\nlaid = {at(-hours)}\n{lines}" for hours, lines in page.below]
    own = f"covered_from = {at(page.covered_min / 60.0)}\n"
    own += f'outcome = "{page.outcome}"\nseen = {at(page.seen_h)}\n'
    return "\n".join([*blocks, f"[[piece.coat]]\nlaid = {at(0.0)}\n{page.coat}{own}"])


def room_text(page: Page, chance: Random) -> str:
    """Return the room log of a page."""
    lines = ["time,temperature_C,humidity_pct,air_speed_m_s"]
    for minute in range(-60 * BEFORE_H, 60 * AFTER_H, STEP_MIN):
        temperature_C, humidity_pct, speed_m_s = page.room(minute / 60.0)
        noisy = (
            f"{temperature_C + chance.gauss(0.0, 0.06):.2f}",
            f"{min(humidity_pct + chance.gauss(0.0, 0.3), 100.0):.1f}",
            f"{max(speed_m_s * chance.gauss(1.0, 0.12), 0.02):.2f}",
        )
        lines.append(",".join((at(minute / 60.0), *noisy)))
    return "\n".join(lines) + "\n"


def at(hours: float) -> str:
    """Return a time so long after the laying, as TOML and ISO 8601 have it."""
    return (LAID + timedelta(hours=hours)).strftime("%Y-%m-%dT%H:%M:%SZ")


if __name__ == "__main__":
    main(Path(sys.argv[1]))
