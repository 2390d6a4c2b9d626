"""The section's geometry: to one scale, nothing outside, labels apart."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studiowatch.coats.stages import Surface
from studiowatch.ui.models.film import (
    PAINT_SHOWN_UM,
    Base,
    Layer,
    Section,
    boxes,
    film_um,
    full_scale_um,
    section_of,
    tags,
)

from .scenes import HERONS, LADDER, ORCHARD, QUARRY, coat

HEIGHT, LINE = 112.0, 14.0


def film(thickness_um: float, surface: Surface | None = Surface.DRY) -> Layer:
    return Layer(label="coat", base=Base.FILM, surface=surface, thickness_um=thickness_um)


SUPPORT = Layer(label="canvas", base=Base.SUPPORT, surface=Surface.DRY, thickness_um=None)


def test_that_the_layers_run_from_the_support_up() -> None:
    section = section_of(ORCHARD)
    assert [layer.words for layer in section.layers] == [
        "canvas",
        "paint",
        "isolation",
        "gloss 1, milky",
        "gloss 2",
        "satin",
    ]
    assert section.spoken.startswith("Section from the top: satin planned, gloss 2 planned, gloss 1, milky")


def test_that_unrecorded_paint_is_drawn_all_the_same() -> None:
    bare = replace(ORCHARD, coats=ORCHARD.coats[1:])
    assert [layer.base for layer in section_of(bare).layers[:2]] == [Base.SUPPORT, Base.PAINT]


def test_that_no_paint_is_drawn_on_a_support_called_bare() -> None:
    bare = replace(ORCHARD, support="raw canvas", coats=ORCHARD.coats[1:])
    assert [layer.base for layer in section_of(bare).layers[:2]] == [Base.SUPPORT, Base.FILM]


def test_that_a_wet_film_is_its_solids_and_its_water() -> None:
    # A film of water of 1 g/m2 is 1 um thick: 1 g / (1 g/cm3) over 1 m2 is 1e-6 m.
    wet = coat("c", "gloss", 60_000, surface=Surface.WET, wet_um=100, dry_um=34, water_g_m2=52)
    assert film_um(wet) == pytest.approx(86)
    assert film_um(replace(wet, water_g_m2=900)) == pytest.approx(100)
    assert film_um(replace(wet, water_g_m2=None)) == pytest.approx(100)
    assert film_um(replace(wet, surface=Surface.DRY, water_g_m2=0)) == pytest.approx(34)
    assert film_um(replace(wet, surface=None, laid_ms=None)) == pytest.approx(34)


def test_that_thick_paint_is_cut_short_and_marked() -> None:
    paint = section_of(HERONS).layers[1]
    assert paint.cut_short
    assert paint.thickness_um == PAINT_SHOWN_UM


def test_that_a_cover_is_shown_over_the_laid_coat_only() -> None:
    assert section_of(QUARRY).covered
    assert not section_of(ORCHARD).covered


def test_that_the_same_film_is_as_tall_in_every_piece() -> None:
    sections = [section_of(piece) for piece in (ORCHARD, LADDER, QUARRY, HERONS)]
    full_um = full_scale_um(sections)
    per_um = {
        round(box.height / box.layer.thickness_um, 6)
        for section in sections
        for box in boxes(section, HEIGHT, full_um)
        if box.layer.thickness_um is not None
    }
    assert len(per_um) == 1


@given(st.lists(st.floats(1, 150), min_size=1, max_size=7), st.integers(60, 400))
def test_that_layers_touch_and_stay_inside(thicknesses: list[float], height: int) -> None:
    section = Section(layers=(SUPPORT, *(film(one) for one in thicknesses)))
    drawn = boxes(section, height, full_scale_um([section]))
    for lower, upper in pairwise(drawn):
        assert upper.top + upper.height == pytest.approx(lower.top)
    assert drawn[0].top + drawn[0].height == pytest.approx(height)
    assert drawn[-1].top >= -1e-6


@given(st.lists(st.floats(1, 150), min_size=1, max_size=6))
def test_that_labels_keep_their_order_and_distance(thicknesses: list[float]) -> None:
    section = Section(layers=(SUPPORT, *(film(one) for one in thicknesses)))
    placed = tags(boxes(section, HEIGHT, full_scale_um([section])), HEIGHT, LINE)
    for lower, upper in pairwise(placed):
        assert lower.middle - upper.middle >= LINE - 1e-6
    assert placed[0].middle <= HEIGHT - LINE / 2 + 1e-6
    assert placed[-1].middle >= LINE / 2 - 1e-6
