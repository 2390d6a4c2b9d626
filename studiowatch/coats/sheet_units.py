"""Units that sheets are printed in elsewhere, and how to tell that a number was typed in one of them."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from studiowatch.speech.words import mark, say


@dataclass(frozen=True, slots=True, kw_only=True)
class OtherUnit:
    """A unit that a product's sheet may use where ours asks for another: ours = (theirs - `zero`) × `size`."""

    name: str
    size: float
    zero: float = 0.0
    suffixes: tuple[str, ...] = ()

    def converted(self, theirs: float) -> float:
        """Return the number in our unit."""
        return (theirs - self.zero) * self.size


MIL = OtherUnit(name="mil", size=25.4, suffixes=("mil", "mils"))  # 0.001 inch; ISO 31-1: 1 inch = 25.4 mm
MILLIMETRE = OtherUnit(name="mm", size=1000.0, suffixes=("mm",))
FAHRENHEIT = OtherUnit(name="°F", size=5.0 / 9.0, zero=32.0, suffixes=("F", "f", "degF"))  # exact, by definition
MINUTE_AS_H = OtherUnit(name="min", size=1.0 / 60.0, suffixes=("min", "mins", "minutes"))
DAY_AS_H = OtherUnit(name=mark("days"), size=24.0, suffixes=("d", "day", "days"))
HOUR_AS_MIN = OtherUnit(name="h", size=60.0, suffixes=("h", "hours"))
HOUR_AS_DAYS = OtherUnit(name="h", size=1.0 / 24.0, suffixes=("h", "hours"))
WEEK_AS_DAYS = OtherUnit(name=mark("weeks"), size=7.0, suffixes=("weeks",))
PERCENT_AS_SHARE = OtherUnit(name="%", size=0.01, suffixes=("pct", "percent"))
SHARE_AS_PERCENT = OtherUnit(name=mark("of 1"), size=100.0)
GRAM_PER_ML = OtherUnit(name="g/mL", size=1000.0, suffixes=("g_mL", "g_ml", "g_cm3", "kg_L"))
POUND_PER_GALLON = OtherUnit(name="lb/US gal", size=119.826, suffixes=("lb_gal",))  # 0.45359237 kg / 3.785411784 L

OTHER_UNITS: Mapping[str, tuple[OtherUnit, ...]] = {  # by field, likeliest first
    "volume_solids": (PERCENT_AS_SHARE,),
    "density_kg_m3": (GRAM_PER_ML, POUND_PER_GALLON),
    "wet_um": (MIL, MILLIMETRE),
    "dry_um": (MIL, MILLIMETRE),
    "touch_dry_min": (HOUR_AS_MIN,),
    "recoat_h": (MINUTE_AS_H, DAY_AS_H),
    "clear_h": (MINUTE_AS_H,),
    "cure_days": (HOUR_AS_DAYS, WEEK_AS_DAYS),
    "mfft_C": (FAHRENHEIT,),
    "apply_C": (FAHRENHEIT,),
    "flash_point_C": (FAHRENHEIT,),
    "max_humidity_pct": (SHARE_AS_PERCENT,),
}
_STEMS = {
    field: field.rsplit("_", maxsplit=1)[0] for field in OTHER_UNITS if field not in {"volume_solids", "density_kg_m3"}
} | {"volume_solids": "volume_solids", "density_kg_m3": "density"}
_RENAMED = {
    f"{_STEMS[field]}_{suffix}": (field, unit)
    for field, units in OTHER_UNITS.items()
    for unit in units
    for suffix in unit.suffixes
}

# what coats and paint for a hand-laid piece are like: common practice, no source, and wide
USUAL: Mapping[str, tuple[float, float]] = {
    "volume_solids": (0.1, 0.7),
    "density_kg_m3": (750.0, 1700.0),
    "wet_um": (20.0, 4000.0),
    "dry_um": (8.0, 2000.0),
    "touch_dry_min": (5.0, 1440.0),
    "recoat_h": (0.5, 72.0),
    "clear_h": (0.1, 24.0),
    "cure_days": (1.0, 180.0),
    "mfft_C": (-5.0, 30.0),
    "apply_C": (0.0, 40.0),
    "max_humidity_pct": (40.0, 100.0),
}
USUAL_OF_PAINT = {**USUAL, "recoat_h": (0.5, 1440.0)}  # poured paint waits weeks


def meant_field(key: str) -> tuple[str, OtherUnit] | None:
    """Return the field and the unit that a key such as ``recoat_min`` or ``wet_mils`` means, or None."""
    return _RENAMED.get(key)


def likely_unit(field: str, *values: float, usual: Mapping[str, tuple[float, float]] = USUAL) -> OtherUnit | None:
    """Return the unit in which all `values` of `field` would be usual while they are not as they stand, or None."""
    if field not in usual or all(_inside(value, usual[field]) for value in values):
        return None
    for unit in OTHER_UNITS[field]:
        if all(_inside(unit.converted(value), usual[field]) for value in values):
            return unit
    return None


def _inside(value: float, bounds: tuple[float, float]) -> bool:
    return bounds[0] <= value <= bounds[1]


def hint(field: str, *values: float) -> str:
    """Return "; if that is 4 mil, write 102", or "" where no other unit fits."""
    unit = likely_unit(field, *values)
    if unit is None:
        return ""
    return say(
        "; if that is {value} {unit}, write {ours}",
        value=as_typed(*values),
        unit=say(unit.name),
        ours=in_ours(unit, *values),
    )


def as_typed(*values: float) -> str:
    """Return one number, or several as the list that a sheet would hold."""
    told = ", ".join(f"{value:g}" for value in values)
    return told if len(values) == 1 else f"[{told}]"


def in_ours(unit: OtherUnit, *values: float) -> str:
    """Return numbers that were given in `unit`, in ours, to three digits."""
    return as_typed(*(float(f"{unit.converted(value):.3g}") for value in values))


def slips(values: Mapping[str, tuple[float, ...]], units: Mapping[str, str], *, paint: bool) -> Iterator[str]:
    """Yield a sentence for each field whose number is allowed but unusual, and usual in another unit.

    Parameters
    ----------
    values : mapping of field to numbers
        One number, or the two of an interval.
    units : mapping of field to unit
        Ours, as people write it.
    paint : bool
        Whether the sheet is of a paint, whose times may be long.
    """
    usual = USUAL_OF_PAINT if paint else USUAL
    for field, numbers in values.items():
        unit = likely_unit(field, *numbers, usual=usual)
        if unit is not None:
            low, high = usual[field]
            yield say(
                "{field} is {value} {ours}; usual is {low} to {high} {ours}: if it is in {unit}, write {mended}, "
                "else leave it",
                field=field,
                value=as_typed(*numbers),
                ours=say(units[field]),
                low=f"{low:g}",
                high=f"{high:g}",
                unit=say(unit.name),
                mended=in_ours(unit, *numbers),
            )
