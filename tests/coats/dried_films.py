"""Films that dry in one still room."""

from __future__ import annotations

from studiowatch.coats.anchoring import anchor
from studiowatch.coats.data_sheet import DataSheet
from studiowatch.coats.film import Film, advance, lay
from studiowatch.coats.readiness import outlook
from studiowatch.coats.standing import Standing
from studiowatch.physics.air import Air
from studiowatch.physics.ranges import Array

ROOM = Air(temperature_C=20.0, humidity_pct=50.0, air_speed_m_s=0.05)
HOUR_S = 3600.0


def dried(film: Film, hours: float, *, air: Air = ROOM, step_s: float | None = None) -> Film:
    """Return the film so long after, in one step or in steps of about `step_s`."""
    steps = 1 if step_s is None else round(hours * HOUR_S / step_s)
    for _ in range(steps):
        film, _ = advance(film, air, hours * HOUR_S / steps)
    return film


def looked_ahead(sheet: DataSheet, standing: Standing) -> Array:
    """Return when a coat of the sheet's own film reaches each stage, in each draw of `standing`; s, as `outlook`."""
    film = lay(sheet, anchor(sheet, standing.particles.draws), wet_um=sheet.wet_um, side_m=0.4)
    return outlook(film, ROOM, horizon_s=4 * 86400.0)
