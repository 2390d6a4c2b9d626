"""Names of coats within a stack, the next step of a piece, and its slack."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Mapping, Sequence
from datetime import date

from studiowatch.coats.data_sheet import DataSheet, Kind, Sheen
from studiowatch.speech.units import chosen
from studiowatch.speech.words import say

PAINT = "paint"
ISOLATION = "isolation"
VARNISH = "varnish"
_NAMES: Mapping[str, Callable[[], str]] = {
    PAINT: lambda: say("paint", about="a coat"),
    ISOLATION: lambda: say("isolation", about="a coat"),
    VARNISH: lambda: say("varnish", about="a coat"),
    Sheen.GLOSS.value: lambda: say("gloss", about="a coat"),
    Sheen.SATIN.value: lambda: say("satin", about="a coat"),
    Sheen.MATT.value: lambda: say("matt", about="a coat"),
}
FINE_BELOW_ML = 10.0  # mL under which a tenth still matters in a measuring cup


def coat_word(sheet: DataSheet) -> str:
    """Return the kind of coat that `sheet` makes, as it is stored: "paint", "isolation", its sheen, or "varnish"."""
    if sheet.kind is Kind.PAINT:
        return PAINT
    if ISOLATION in sheet.name.lower() or ISOLATION in sheet.title.lower():
        return ISOLATION
    return VARNISH if sheet.sheen is None else sheet.sheen.value


def coat_name(word: str) -> str:
    """Return what a coat of a `coat_word` is called in her language."""
    return _NAMES[word]()


def stack_labels(sheets: Sequence[DataSheet]) -> tuple[str, ...]:
    """Return a short name for each coat of a stack, lowest first; a word that comes again is numbered."""
    words = [coat_word(sheet) for sheet in sheets]
    totals, seen = Counter(words), Counter[str]()
    labels = []
    for word in words:
        seen[word] += 1
        labels.append(f"{coat_name(word)} {seen[word]}" if totals[word] > 1 else coat_name(word))
    return tuple(labels)


def suggested_mL(area_m2: float, wet_um: float) -> float:
    """Return how much to pour, mL: 1 µm of wet film on 1 m² is 1 mL."""
    return area_m2 * wet_um


def volume_text(volume_mL: float) -> str:
    """Return "62 mL", "2.10 fl oz", with a place more where little is poured: "3.6 mL"."""
    return chosen().poured(volume_mL, places=1 if round(volume_mL, 1) < FINE_BELOW_ML else 0)


def measured_text(volume_mL: float) -> str:
    """Return a volume as she measured it, "12.8 mL", "0.43 fl oz"."""
    volume = chosen().volume
    return f"{_as_measured(volume_mL, volume.mL)} {volume.value}"


def measured_film_text(wet_um: float) -> str:
    """Return the thickness of a wet film as she measured it, "62.5 µm", "2.46 mil"."""
    thickness = chosen().thickness
    return f"{_as_measured(wet_um, thickness.um)} {thickness.value}"


def _as_measured(value: float, unit: float) -> str:
    return chosen().plain(value if unit == 1.0 else round(value / unit, 2))


def next_step(*, top: str | None, following: str | None, volume_mL: float | None = None) -> str:
    """Return the next step of a piece.

    Parameters
    ----------
    top, following : str or None
        Labels of the topmost coat laid, and of the next one planned; None if there is none.
    volume_mL : float or None
        How much of the next one to pour, mL.
    """
    paint = coat_name(PAINT)
    is_on_varnish = top is not None and top != paint and not top.startswith(f"{paint} ")
    if following is None:
        return say("fit to wrap") if is_on_varnish else say("plan its coats")
    coat = following if volume_mL is None else f"{following}, {volume_text(volume_mL)}"
    return say("recoat: {coat}", coat=coat) if is_on_varnish else say("lay {coat}", coat=coat)


def slack_days(due: date, ready: date) -> int:
    """Return the days between being ready and being due; negative if it will be late."""
    return (due - ready).days
