"""The built-in sheets: generic, each number with its basis, times and thickness in agreement, in line with practice.

Facts of the trade are "common practice, no source".
"""

from __future__ import annotations

import tomllib
from importlib.resources import files
from itertools import pairwise

import pytest

from studiowatch.coats.anchoring import PLAUSIBLE_KAPPA, anchor
from studiowatch.coats.data_sheet import DataSheet, Kind
from studiowatch.coats.prediction import predict
from studiowatch.coats.sheet_file import read_sheet
from studiowatch.coats.stages import Stage
from studiowatch.physics.air import Air

FILES = sorted(
    (entry for entry in (files("studiowatch.resources") / "sheets").iterdir() if entry.name.endswith(".toml")),
    key=lambda entry: entry.name,
)
TEXTS = {entry.name.removesuffix(".toml"): entry.read_text("utf-8") for entry in FILES}
SHEETS = {name: read_sheet(text, f"{name}.toml") for name, text in TEXTS.items()}
CLEAR_COATS = [name for name, sheet in SHEETS.items() if sheet.kind is Kind.WATERBORNE]
THIN_COATS = [name for name in CLEAR_COATS if SHEETS[name].wet_um <= 100.0]
BASES = ("from memory", "assumption", "common practice, no source")
ORDINARY_ROOMS = [
    Air(temperature_C=temperature_C, humidity_pct=humidity_pct, air_speed_m_s=0.05)
    for temperature_C in (18.0, 20.0, 23.0)
    for humidity_pct in (40.0, 50.0, 60.0)
]
ROOM = Air(temperature_C=20.0, humidity_pct=50.0, air_speed_m_s=0.05)


def hours(sheet: DataSheet, stage: Stage, room: Air, quantile: str, draws_n: int) -> float | None:
    told = predict(sheet, wet_um=sheet.wet_um, side_m=0.4, room=room, draws_n=draws_n).stages[stage]
    seconds: float | None = getattr(told, quantile)
    return None if seconds is None else seconds / 3600.0


def test_that_there_is_a_sheet_for_each_coat_of_a_piece() -> None:
    assert {
        "isolation-waterborne",
        "gloss-waterborne",
        "satin-waterborne",
        "matt-waterborne",
        "gloss-waterborne-thin",
        "gloss-waterborne-thick",
        "paint-brushed",
        "paint-poured",
    } <= set(SHEETS)


@pytest.mark.parametrize("name", SHEETS)
def test_that_a_sheet_says_that_it_is_generic_and_names_all_it_needs(name: str) -> None:
    sheet = SHEETS[name]
    assert sheet.name == name
    assert "(generic)" in sheet.title
    assert "This sheet is generic" in sheet.cautions[0]
    assert "local codes and licensed advice come first" in sheet.cautions[0]
    assert sheet.assumed == ()


@pytest.mark.parametrize("name", SHEETS)
def test_that_each_number_has_its_basis_and_nothing_else_has(name: str) -> None:
    raw = tomllib.loads(TEXTS[name])
    basis = raw.pop("basis")
    words_and_flags = {field for field, value in raw.items() if isinstance(value, str | bool)}
    assert set(basis) == set(raw) - words_and_flags - {"cautions"}
    for field, words in basis.items():
        assert any(word in words for word in BASES), f"{field}: {words}"


@pytest.mark.parametrize("name", CLEAR_COATS)
def test_that_times_and_thickness_agree(name: str) -> None:
    tied = anchor(SHEETS[name])
    assert PLAUSIBLE_KAPPA[0] <= tied.kappa <= PLAUSIBLE_KAPPA[1], tied.sentence


def test_that_a_thicker_coat_takes_longer_on_its_own_sheet() -> None:
    order = [SHEETS[name] for name in ("gloss-waterborne-thin", "gloss-waterborne", "gloss-waterborne-thick")]
    for thinner, thicker in pairwise(order):
        assert thinner.dry_um < thicker.dry_um
        assert thinner.touch_dry_min < thicker.touch_dry_min
        assert thinner.recoat_h < thicker.recoat_h
    assert SHEETS["paint-brushed"].recoat_h < SHEETS["paint-poured"].recoat_h


@pytest.mark.parametrize("name", CLEAR_COATS)
def test_that_the_density_is_that_of_water_and_polymer_in_these_shares(name: str) -> None:
    # water 0.998 g/mL (IAPWS-95) and acrylic polymer 1.05 to 1.19 g/mL (polymer handbooks, from memory); 2 % for
    # what else is in the bottle
    sheet = SHEETS[name]
    low, high = (998.0 + sheet.volume_solids * (polymer - 998.0) for polymer in (1050.0, 1190.0))
    assert 0.98 * low < sheet.density_kg_m3 < 1.02 * high


@pytest.mark.parametrize("room", ORDINARY_ROOMS)
@pytest.mark.parametrize("name", THIN_COATS)
def test_that_a_thin_coat_is_touch_dry_in_under_two_hours(name: str, room: Air) -> None:
    # common practice, no source; it is said of coats laid thin, so the thick one is left out
    touch_h = hours(SHEETS[name], Stage.DRY_TO_TOUCH, room, "nominal_s", 1)
    assert touch_h is not None
    assert touch_h < 2.0


@pytest.mark.parametrize("name", CLEAR_COATS)
def test_that_labels_hold_and_a_day_is_enough_in_ordinary_rooms(name: str) -> None:
    # common practice, no source: labels name 3 to 8 h between coats, and a day is enough
    sheet = SHEETS[name]
    assert 3.0 <= sheet.recoat_h <= 8.0
    for room in ORDINARY_ROOMS:
        recoat_h = hours(sheet, Stage.DRY_TO_RECOAT, room, "p90_s", 128)
        assert recoat_h is not None
        assert recoat_h < 24.0


@pytest.mark.parametrize("name", CLEAR_COATS)
def test_that_the_labels_own_hours_lie_inside_the_range(name: str) -> None:
    # common practice, no source: what a label says is neither the soonest nor the latest
    p10_h, p90_h = (hours(SHEETS[name], Stage.DRY_TO_RECOAT, ROOM, quantile, 128) for quantile in ("p10_s", "p90_s"))
    assert p10_h is not None
    assert p90_h is not None
    assert p10_h < SHEETS[name].recoat_h < p90_h


@pytest.mark.parametrize("room", [ROOM, Air(temperature_C=22.0, humidity_pct=45.0, air_speed_m_s=0.05)])
def test_that_an_isolation_coat_is_clear_in_about_two_hours(room: Air) -> None:
    # common practice, no source: milky when fresh, clear in a couple of hours; "about" is an hour either way
    clear_h = hours(SHEETS["isolation-waterborne"], Stage.CLEAR, room, "nominal_s", 1)
    assert clear_h is not None
    assert 1.0 < clear_h < 3.0


@pytest.mark.parametrize(
    ("name", "least_h", "most_h"), [("paint-brushed", 0.5, 24.0), ("paint-poured", 48.0, 21.0 * 24.0)]
)
def test_that_poured_paint_takes_days_and_brushed_paint_hours_to_dry_through(
    name: str, least_h: float, most_h: float
) -> None:
    # common practice, no source: days to weeks by thickness
    assert SHEETS[name].kind is Kind.PAINT
    through_h = hours(SHEETS[name], Stage.DRY_THROUGH, ROOM, "nominal_s", 1)
    assert through_h is not None
    assert least_h < through_h < most_h


@pytest.mark.parametrize("name", CLEAR_COATS)
def test_that_a_day_is_not_enough_in_a_damp_room(name: str) -> None:
    # common practice, no source: a coat in a damp room stays cloudy
    damp = Air(temperature_C=20.0, humidity_pct=85.0, air_speed_m_s=0.05)
    recoat_h = hours(SHEETS[name], Stage.DRY_TO_RECOAT, damp, "p90_s", 128)
    assert recoat_h is None or recoat_h > 24.0


@pytest.mark.parametrize("name", CLEAR_COATS)
def test_that_matting_agent_and_sheen_belong_together(name: str) -> None:
    # common practice, no source: no more than one or two coats with matting agent
    sheet = SHEETS[name]
    assert sheet.matting_agent is (sheet.sheen is not None and sheet.sheen.value != "gloss")
    if sheet.matting_agent:
        assert sheet.max_matting_coats in {1, 2}
