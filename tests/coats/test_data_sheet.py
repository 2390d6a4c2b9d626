from __future__ import annotations

import pytest

from studiowatch.coats.data_sheet import Kind, Sheen
from studiowatch.coats.sheet_file import SheetFaults, read_sheet

WHOLE = """
name = "my-gloss"
title = "My gloss"
kind = "waterborne"
sheen = "gloss"
volume_solids = 0.35
density_kg_m3 = 1040
wet_um = 100
touch_dry_min = 45
clear_h = 2
recoat_h = 4
cure_days = 14
mfft_C = 8
apply_C = [12, 30]
max_humidity_pct = 75
matting_agent = true
max_matting_coats = 2
flash_point_C = 100
removable_with = "soapy water"
cautions = ["Ventilate."]

[basis]
recoat_h = "from its label"
"""
LEAST = """
name = "least"
kind = "waterborne"
volume_solids = 0.4
touch_dry_min = 30
recoat_h = 4
"""


def faults_of(text: str) -> tuple[str, ...]:
    with pytest.raises(SheetFaults) as caught:
        read_sheet(text, "mine.toml")
    return caught.value.faults


def test_that_a_whole_sheet_is_read() -> None:
    sheet = read_sheet(WHOLE, "mine.toml")
    assert (sheet.name, sheet.title, sheet.kind, sheet.sheen) == ("my-gloss", "My gloss", Kind.WATERBORNE, Sheen.GLOSS)
    assert (sheet.wet_um, sheet.dry_um) == (100.0, pytest.approx(35.0))
    assert (sheet.touch_dry_min, sheet.clear_h, sheet.recoat_h, sheet.cure_days) == (45.0, 2.0, 4.0, 14.0)
    assert (sheet.mfft_C, sheet.apply_C, sheet.max_humidity_pct) == (8.0, (12.0, 30.0), 75.0)
    assert (sheet.matting_agent, sheet.max_matting_coats, sheet.flash_point_C) == (True, 2, 100.0)
    assert (sheet.removable_with, sheet.cautions, sheet.assumed) == ("soapy water", ("Ventilate.",), ())
    assert sheet.clear_film


def test_that_wet_film_follows_from_dry_film_and_solids() -> None:
    assert read_sheet(LEAST + "dry_um = 30", "mine.toml").wet_um == pytest.approx(75.0)


def test_that_what_the_sheet_leaves_out_is_assumed_aloud() -> None:
    sheet = read_sheet(LEAST, "mine.toml")
    # ASTM D1640: 25 µm dry where nothing is named
    assert (sheet.dry_um, sheet.wet_um) == (25.0, pytest.approx(62.5))
    assert sheet.title == "least"
    assert [sentence.split()[0] for sentence in sheet.assumed] == ["dry_um", "density_kg_m3", "clear_h", "cure_days"]
    assert "25 µm is assumed" in sheet.assumed[0]
    assert sheet.clear_h is not None
    assert 0.5 < sheet.clear_h < 4.0


def test_that_paint_never_clears() -> None:
    sheet = read_sheet(LEAST.replace("waterborne", "paint"), "mine.toml")
    assert sheet.clear_h is None
    assert not sheet.clear_film


def test_that_all_faults_are_told_at_once() -> None:
    faults = faults_of(
        """
kind = "lacquer"
volume_solids = 35
wet_um = "thick"
recoat_h = 4
clear_h = nan
apply_C = [30, 12]
matting_agent = "no"
max_matting_coats = 1.5
cautions = "Ventilate."
recote_h = 5
"""
    )
    assert [fault.split()[1] for fault in faults] == [
        "recote_h", "kind", "name", "volume_solids", "wet_um", "touch_dry_min", "clear_h", "max_matting_coats",
        "apply_C", "matting_agent", "cautions",
    ]  # fmt: skip
    assert all(fault.startswith("mine.toml: ") for fault in faults)
    assert "volume_solids is 35 of the volume; it must be a number from 0.05 to 1 of the volume" in faults[3]


@pytest.mark.parametrize(
    ("line", "told"),
    [
        ("touch_dry_min = -1", "touch_dry_min is -1 min; it must be a number from 1 to 2880 min"),
        ("touch_dry_min = true", "touch_dry_min is True; it must be a number"),
        ("recoat_h = inf", "recoat_h is inf; it must be a number"),
        ("kind = 3", "kind is 3; it must be one of waterborne, solventborne, paint"),
        ('name = " "', "name is missing"),
        ("volume_solids = 0.9", "a waterborne coat is a liquid only up to 0.7"),
        ("recoat_h = 0.4", "recoat_h is 0.4 h; it must not be shorter than touch_dry_min (0.5 h)"),
    ],
)
def test_that_one_fault_is_one_sentence(line: str, told: str) -> None:
    field = line.split(" =", maxsplit=1)[0]
    text = "\n".join(line if old.startswith(f"{field} =") else old for old in LEAST.splitlines())
    faults = faults_of(text)
    assert len(faults) == 1
    assert told in faults[0]


@pytest.mark.parametrize(
    ("lines", "told"),
    [
        ("clear_h = 5", "recoat_h is 4 h; it must not be shorter than clear_h (5 h)"),
        ("clear_h = 0.5", "clear_h is 0.5 h; it must not be shorter than touch_dry_min (0.5 h)"),
        ("cure_days = 0.1", "cure_days is 2.4 h; it must not be shorter than recoat_h (4 h)"),
        ("wet_um = 100\ndry_um = 25", "dry_um is 25 µm; 100 µm wet at 0.4 solids gives 40 µm"),
        ("dry_um = 6000", "dry_um is 6000 µm: at 0.4 solids 15000 µm wet; at most 10000 can be"),
    ],
)
def test_that_fields_that_contradict_each_other_are_told(lines: str, told: str) -> None:
    faults = faults_of(LEAST + lines)
    assert len(faults) == 1
    assert told in faults[0]


def test_that_wet_and_dry_film_may_differ_by_rounding() -> None:
    assert read_sheet(LEAST + "wet_um = 100\ndry_um = 41", "mine.toml").dry_um == 41.0


def test_that_text_which_is_no_toml_is_one_fault_with_its_line() -> None:
    faults = faults_of("name = \nkind = 3")
    assert len(faults) == 1
    assert "mine.toml: this is not a TOML file" in faults[0]
    assert "line 1" in faults[0]
