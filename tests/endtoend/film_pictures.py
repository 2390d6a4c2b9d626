"""Pictures of the film model in five rooms: how water leaves, how cold the film gets, how wide the ranges are.

python tests/endtoend/film_pictures.py resources/film
"""

from __future__ import annotations

import argparse
from dataclasses import dataclass
from pathlib import Path

import numpy as np
import pyqtgraph
from pyqtgraph.exporters import ImageExporter
from PySide6.QtGui import QColor
from PySide6.QtWidgets import QApplication

from studiowatch.coats.anchoring import anchor
from studiowatch.coats.draws import sample
from studiowatch.coats.film import Film, advance, lay
from studiowatch.coats.readiness import outlook, ready_times
from studiowatch.coats.stages import Stage
from studiowatch.physics.air import Air
from studiowatch.service.sheet_shelf import built_in_sheets

SHEET = "gloss-waterborne"
SIDE_M = 0.4
DRAWS = 512
STEP_S = 60.0
WIDTH_PX = 1100
GROUND, INK, GRID = "#fbfaf6", "#23282b", 40


@dataclass(frozen=True, slots=True, kw_only=True)
class Room:
    """One of the five rooms, with the colour and the dashes of its curves."""

    name: str
    air: Air
    color: str
    dashes: tuple[float, ...]


ROOMS = (
    Room(
        name="usual, 20 °C 50 %",
        air=Air(temperature_C=20, humidity_pct=50, air_speed_m_s=0.05),
        color="#1b6ca8",
        dashes=(),
    ),
    Room(
        name="cool, 14 °C 60 %",
        air=Air(temperature_C=14, humidity_pct=60, air_speed_m_s=0.05),
        color="#6a4c93",
        dashes=(6, 3),
    ),
    Room(
        name="damp, 20 °C 78 %",
        air=Air(temperature_C=20, humidity_pct=78, air_speed_m_s=0.05),
        color="#2a9d5c",
        dashes=(2, 3),
    ),
    Room(
        name="warm and dry, 26 °C 35 %",
        air=Air(temperature_C=26, humidity_pct=35, air_speed_m_s=0.05),
        color="#c0562b",
        dashes=(8, 3, 2, 3),
    ),
    Room(
        name="fan, 20 °C 50 %, 0.8 m/s",
        air=Air(temperature_C=20, humidity_pct=50, air_speed_m_s=0.8),
        color="#8a6d00",
        dashes=(1, 2),
    ),
)
STAGES = {
    Stage.SET_TO_TOUCH: "set to touch",
    Stage.DRY_TO_TOUCH: "dry to touch",
    Stage.CLEAR: "clear",
    Stage.DRY_TO_RECOAT: "dry to recoat",
}


def fresh(draws: int = 1) -> Film:
    """Return a coat as thick as its sheet says."""
    sheet = built_in_sheets()[SHEET]
    return lay(sheet, anchor(sheet, sample(draws, 1)), wet_um=sheet.wet_um, side_m=SIDE_M)


def course(air: Air, hours: float) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Return hours, water left, g/m², and the film's temperature over that of the air, K, of the nominal run."""
    film, rows = fresh(), []
    for at in range(round(hours * 3600.0 / STEP_S)):
        film, _ = advance(film, air, STEP_S)
        rows.append(((at + 1) * STEP_S / 3600.0, film.water_g_m2, (film.film_C or 0.0) - air.temperature_C))
    return tuple(np.array(rows).T)


def plot(title: str, across: str, up: str) -> pyqtgraph.PlotWidget:
    """Return an empty plot with its axes named."""
    widget = pyqtgraph.PlotWidget(background=GROUND)
    widget.resize(WIDTH_PX, 560)
    widget.setTitle(title, color=INK, size="13pt")
    for side, words in (("bottom", across), ("left", up)):
        axis = widget.getAxis(side)
        axis.setPen(INK)
        axis.setTextPen(INK)
        axis.enableAutoSIPrefix(enable=False)
        widget.setLabel(side, words, color=INK, size="11pt")
    widget.showGrid(x=True, y=True, alpha=GRID / 255)
    return widget


def save(widget: pyqtgraph.PlotWidget, path: Path) -> None:
    """Write a plot as a picture."""
    widget.show()
    QApplication.processEvents()
    exporter = ImageExporter(widget.plotItem)
    exporter.parameters()["width"] = WIDTH_PX
    exporter.export(str(path))
    widget.close()


def curves(folder: Path) -> None:
    """Draw how water leaves, and how cold the film gets."""
    water = plot(f"Water left in a coat of {SHEET}", "hours after laying", "water left, g/m²")
    cold = plot("The film is colder than the air while it loses free water", "hours after laying", "film − air, K")
    for widget in (water, cold):
        widget.addLegend(offset=(-20, 20) if widget is water else (-20, -20), labelTextColor=INK)
    for room in ROOMS:
        pen = pyqtgraph.mkPen(QColor(room.color), width=2.2)
        if room.dashes:
            pen.setDashPattern(list(room.dashes))
        hours, water_g_m2, below_K = course(room.air, 4.0)
        water.plot(hours, water_g_m2, pen=pen, name=room.name)
        cold.plot(hours, below_K, pen=pen, name=room.name)
    save(water, folder / "water-left.png")
    save(cold, folder / "film-temperature.png")


def ranges(folder: Path) -> None:
    """Draw the ranges of the stages in each room on one scale of hours, each ten times the one before."""
    widget = plot(f"Ready times of {SHEET}: p10 to p90, with p50 as a tick", "hours after laying", "")
    widget.setLogMode(x=True, y=False)
    widget.addLegend(offset=(-20, 20), labelTextColor=INK)
    ticks = []
    for row, (stage, words) in enumerate(STAGES.items()):
        ticks.append((-6.0 * row - 2.0, words))
        for at, room in enumerate(ROOMS):
            ready = ready_times(built_in_sheets()[SHEET], outlook(fresh(DRAWS), room.air, horizon_s=96 * 3600.0))[stage]
            if ready.p90_s is None or ready.p50_s is None or ready.p10_s is None:
                continue
            up = -6.0 * row - at
            name = room.name if row == 0 else None
            ends_h = np.array([ready.p10_s, ready.p90_s]) / 3600.0
            widget.plot(ends_h, [up, up], pen=pyqtgraph.mkPen(QColor(room.color), width=7), name=name)
            widget.plot([ready.p50_s / 3600.0] * 2, [up - 0.42, up + 0.42], pen=pyqtgraph.mkPen(INK, width=2))
    widget.getAxis("left").setTicks([ticks])
    widget.getAxis("left").setWidth(110)
    widget.getAxis("bottom").setTicks([[(np.log10(hours), f"{hours:g}") for hours in (0.25, 0.5, 1, 2, 4, 8, 16)]])
    save(widget, folder / "ready-times.png")


def main() -> None:
    """Draw all into the folder that was named."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("folder", type=Path)
    folder = parser.parse_args().folder
    folder.mkdir(parents=True, exist_ok=True)
    application = QApplication.instance() or QApplication([])
    curves(folder)
    ranges(folder)
    del application


if __name__ == "__main__":
    main()
