"""The order in which products come on a piece: paint, isolation, gloss, satin, matt."""

from __future__ import annotations

from collections.abc import Iterable

from studiowatch.service.product_views import SheetChoice

_ISOLATION = "isolation"
_SHEENS = ("gloss", "satin", "matt")  # the order in which coats are laid: common practice, no source


def in_trade_order(sheets: Iterable[SheetChoice]) -> tuple[SheetChoice, ...]:
    """Return `sheets` as they come on a piece: paint, isolation, gloss, satin, matt."""
    return tuple(sorted(sheets, key=_trade_place))


def clear_coats(sheets: Iterable[SheetChoice]) -> tuple[SheetChoice, ...]:
    """Return the sheets of what goes on over the paint, as they come."""
    return tuple(sheet for sheet in in_trade_order(sheets) if sheet.clear_film)


def paints(sheets: Iterable[SheetChoice]) -> tuple[SheetChoice, ...]:
    """Return the sheets of paint."""
    return tuple(sheet for sheet in sheets if not sheet.clear_film)


def _trade_place(sheet: SheetChoice) -> int:
    if not sheet.clear_film:
        return -2
    if _ISOLATION in f"{sheet.name} {sheet.title}".lower():
        return -1
    return _SHEENS.index(sheet.sheen) if sheet.sheen in _SHEENS else len(_SHEENS)
