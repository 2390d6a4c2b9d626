"""Commands about her own data sheets."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class KeepSheet:
    """Keep a data sheet of her own: its fields by name, as a sheet's file has them; one of that name is replaced.

    Coats on the rack that were laid by it are dried anew by its figures, as after any correction, and what their tests
    teach is learnt anew. What was learnt of the product by other figures no longer counts for it.
    """

    fields: Mapping[str, object]


@dataclass(frozen=True, slots=True, kw_only=True)
class DropSheet:
    """Delete a data sheet of her own; a built-in one of its name holds again."""

    name: str


SheetCommand = KeepSheet | DropSheet
