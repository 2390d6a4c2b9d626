"""How much goes on: between mL, grams, area and wet film thickness."""

from __future__ import annotations

from studiowatch.studio.pieces import Coat


def wet_um_of(coat: Coat, *, area_m2: float, density_kg_m3: float, sheet_wet_um: float) -> float:
    """Return the wet film thickness of `coat` as laid, µm.

    One mL spread over one m² is one µm. Without a measured amount the sheet's own thickness is taken.

    Parameters
    ----------
    area_m2 : float
        Area of the face, m², > 0.
    density_kg_m3 : float
        Density of the wet product, kg/m³, > 0.
    sheet_wet_um : float
        Thickness that the sheet's times are stated for, µm.
    """
    if coat.wet_um is not None:
        return coat.wet_um
    if coat.volume_mL is not None:
        return coat.volume_mL / area_m2
    if coat.grams is not None:
        return coat.grams * 1000.0 / density_kg_m3 / area_m2
    return sheet_wet_um


def is_measured(coat: Coat) -> bool:
    """Return whether she weighed or measured what was laid, which narrows every ready time."""
    return coat.wet_um is not None or coat.volume_mL is not None or coat.grams is not None
