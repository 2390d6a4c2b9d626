"""Names of coats within a stack, the next step of a piece, and its slack."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from datetime import date

from studiowatch.coats.data_sheet import DataSheet, Kind

PAINT = "paint"
ISOLATION = "isolation"
VARNISH = "varnish"
FINE_BELOW_ML = 10.0  # mL under which a tenth still matters in a measuring cup


def coat_word(sheet: DataSheet) -> str:
    """Return what a coat of `sheet` is called: "paint", "isolation", its sheen, or "varnish"."""
    if sheet.kind is Kind.PAINT:
        return PAINT
    if ISOLATION in sheet.name.lower() or ISOLATION in sheet.title.lower():
        return ISOLATION
    return VARNISH if sheet.sheen is None else sheet.sheen.value


def stack_labels(sheets: Sequence[DataSheet]) -> tuple[str, ...]:
    """Return a short name for each coat of a stack, lowest first; a word that comes again is numbered."""
    words = [coat_word(sheet) for sheet in sheets]
    totals, seen = Counter(words), Counter[str]()
    labels = []
    for word in words:
        seen[word] += 1
        labels.append(f"{word} {seen[word]}" if totals[word] > 1 else word)
    return tuple(labels)


def suggested_mL(area_m2: float, wet_um: float) -> float:
    """Return how much to pour, mL: 1 µm of wet film on 1 m² is 1 mL."""
    return area_m2 * wet_um


def volume_text(volume_mL: float) -> str:
    """Return "62 mL", or "3.6 mL" where a tenth matters."""
    return f"{volume_mL:.1f} mL" if round(volume_mL, 1) < FINE_BELOW_ML else f"{volume_mL:.0f} mL"


def next_step(*, top: str | None, following: str | None, volume_mL: float | None = None) -> str:
    """Return the next step of a piece.

    Parameters
    ----------
    top, following : str or None
        Labels of the topmost coat laid, and of the next one planned; None if there is none.
    volume_mL : float or None
        How much of the next one to pour, mL.
    """
    is_on_varnish = top is not None and top.split()[0] != PAINT
    if following is None:
        return "fit to wrap" if is_on_varnish else "plan its coats"
    amount = "" if volume_mL is None else f", {volume_text(volume_mL)}"
    return f"recoat: {following}{amount}" if is_on_varnish else f"lay {following}{amount}"


def slack_days(due: date, ready: date) -> int:
    """Return the days between being ready and being due; negative if it will be late."""
    return (due - ready).days
