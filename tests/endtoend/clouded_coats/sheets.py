"""What a sheet says, read without the program, and invented sheets that stand beside a studio file."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from pathlib import Path
from typing import Any


def numbers_of(path: Path) -> dict[str, Any]:
    """Return a sheet's fields as they stand in the file."""
    return tomllib.loads(path.read_text("utf-8"))


def own_sheet(**changed: object) -> Mapping[str, object]:
    """Return an invented water-borne gloss varnish, with these fields changed or added."""
    return {
        "name": "bottle",
        "title": "From her own bottle",
        "kind": "waterborne",
        "sheen": "gloss",
        "matting_agent": False,
        "volume_solids": 0.35,
        "density_kg_m3": 1025,
        "wet_um": 90,
        "touch_dry_min": 40,
        "clear_h": 2.0,
        "recoat_h": 5.0,
        "cure_days": 12,
        "mfft_C": 9,
        **changed,
    }
