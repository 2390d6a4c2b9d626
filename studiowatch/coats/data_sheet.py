"""Data sheets: what a product's own sheet says, as numbers."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from studiowatch.speech.words import mark, say


class Kind(StrEnum):
    """What carries the film: the models differ."""

    WATERBORNE = "waterborne"
    SOLVENTBORNE = "solventborne"
    PAINT = "paint"

    @property
    def word(self) -> str:
        """What it is called in her language."""
        return say(_KINDS[self])


_KINDS = {
    Kind.WATERBORNE: mark("waterborne"),
    Kind.SOLVENTBORNE: mark("solventborne"),
    Kind.PAINT: mark("paint"),
}


class Sheen(StrEnum):
    """How the dry coat shines."""

    GLOSS = "gloss"
    SATIN = "satin"
    MATT = "matt"

    @property
    def word(self) -> str:
        """How it shines, in her language."""
        return say(_SHEENS[self])


_SHEENS = {Sheen.GLOSS: mark("gloss"), Sheen.SATIN: mark("satin"), Sheen.MATT: mark("matt")}


@dataclass(frozen=True, slots=True, kw_only=True)
class DataSheet:
    """A product as its sheet describes it. Times hold at 23 °C, 50 % RH and the stated thickness.

    Attributes
    ----------
    name, title : str
        Short name as used in records, and the name shown.
    volume_solids : float
        Polymer's share of the volume as delivered, 0-1.
    wet_um, dry_um : float
        Film of the stated times, µm.
    touch_dry_min, recoat_h, clear_h, cure_days : float
        Times from laying, in the unit of the name; `clear_h` is None for a coat that is never milky.
    mfft_C : float or None
        Minimum film-forming temperature (ISO 2115), °C.
    apply_C : tuple of float or None
        Least and greatest temperature to apply at, °C.
    max_humidity_pct : float or None
        The sheet's own limit, %.
    matting_agent : bool
        Whether the coat holds matting agent; `max_matting_coats` is how many such coats may lie on each other.
    assumed : tuple of str
        One sentence for each number that the sheet did not name.
    """

    name: str
    title: str
    kind: Kind
    volume_solids: float
    density_kg_m3: float
    wet_um: float
    dry_um: float
    touch_dry_min: float
    recoat_h: float
    cure_days: float
    clear_h: float | None = None
    mfft_C: float | None = None
    apply_C: tuple[float, float] | None = None
    max_humidity_pct: float | None = None
    sheen: Sheen | None = None
    matting_agent: bool = False
    max_matting_coats: int | None = None
    flash_point_C: float | None = None
    removable_with: str = ""
    cautions: tuple[str, ...] = ()
    assumed: tuple[str, ...] = ()

    @property
    def clear_film(self) -> bool:
        """Whether this is a clear coat rather than paint."""
        return self.kind is not Kind.PAINT
