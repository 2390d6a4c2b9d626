"""The products as the window sees them: what may be laid, and how it was found to dry here."""

from __future__ import annotations

from dataclasses import dataclass

from studiowatch.coats.data_sheet import DataSheet


@dataclass(frozen=True, slots=True, kw_only=True)
class SheetChoice:
    """A data sheet as offered in a list. 1 µm of wet film on 1 m² is 1 mL, so area times `wet_um` suggests the mL.

    `cautions` are shown at the step where they bite: before the brush goes down.
    """

    name: str
    title: str
    sheen: str
    clear_film: bool
    solvent: bool
    wet_um: float
    density_kg_m3: float
    cautions: tuple[str, ...] = ()
    flash_point_C: float | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class SheetEntry:
    """A data sheet on the shelf, and whether it is one of hers."""

    sheet: DataSheet
    is_own: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class LearntView:
    """How a product dries in this studio, learnt from her touch tests and looks.

    Attributes
    ----------
    sheet : str
        Name of the data sheet.
    times_as_long, low, high : float
        How many times as long as the sheet says it takes at the sheet's own conditions: middle, and p10 to p90.
    tests, coats : int
        How many tests that rests on, and on how many coats.
    sentence : str
        The same in words.
    """

    sheet: str
    times_as_long: float
    low: float
    high: float
    tests: int
    coats: int
    sentence: str
