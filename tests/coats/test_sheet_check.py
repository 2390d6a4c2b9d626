"""The checker of data sheets: all faults at once, slips of units, times against thickness, what is assumed."""

from __future__ import annotations

import json
import re
import tomllib

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from studiowatch.coats.anchoring import anchor
from studiowatch.coats.sheet_check import check_sheet
from studiowatch.coats.sheet_file import NUMBERS, read_sheet

CLEAN = """
name = "mine"
kind = "waterborne"
volume_solids = 0.38
density_kg_m3 = 1030
wet_um = 80
touch_dry_min = 32
clear_h = 1.5
recoat_h = 4
cure_days = 14
mfft_C = 10
apply_C = [14, 28]
max_humidity_pct = 75
"""


def with_line(line: str) -> str:
    """Return the clean sheet with one field in other words, or one more."""
    field = line.split(" =", maxsplit=1)[0]
    kept = [old for old in CLEAN.splitlines() if not old.startswith(f"{field} =")]
    return "\n".join([*kept, line])


def test_that_a_clean_sheet_has_no_fault_and_nothing_to_assume() -> None:
    report = check_sheet(CLEAN, "mine.toml")
    assert (report.faults, report.assumed) == ((), ())
    assert report.sheet == read_sheet(CLEAN, "mine.toml")
    assert report.kappa is not None
    assert 0.5 <= report.kappa <= 2.5


# 1 inch is 25.4 mm, °C is 5/9 (°F - 32), 1 lb/US gal is 119.826 kg/m³ (NIST SP 811): numbers a bottle may print
@pytest.mark.parametrize(
    ("line", "said"),
    [
        ("wet_um = 3.2", "if that is 3.2 mil, write 81.3"),
        ("wet_um = 0.08", "if that is 0.08 mm, write 80"),
        ("density_kg_m3 = 1.03", "if that is 1.03 g/mL, write 1030"),
        ("density_kg_m3 = 8.6", "if that is 8.6 lb/US gal, write 1030"),
        ("volume_solids = 38", "if that is 38 %, write 0.38"),
        ("touch_dry_min = 0.5", "if that is 0.5 h, write 30"),
        ("max_humidity_pct = 0.75", "if that is 0.75 of 1, write 75"),
        ("apply_C = [57, 82]", "if that is [57, 82] °F, write [13.9, 27.8]"),
    ],
)
def test_that_a_number_out_of_range_that_fits_another_unit_is_recognised(line: str, said: str) -> None:
    report = check_sheet(with_line(line), "mine.toml")
    assert report.sheet is None
    assert any(said in fault for fault in report.faults), report.faults
    assert all(fault.startswith("mine.toml: ") for fault in report.faults)


@pytest.mark.parametrize(
    ("line", "said"),
    [
        ("recoat_h = 240", "recoat_h is 240 h; usual is 0.5 to 72 h: if it is in min, write 4, else leave it"),
        ("cure_days = 336", "cure_days is 336 days; usual is 1 to 180 days: if it is in h, write 14, else leave it"),
        ("mfft_C = 50", "mfft_C is 50 °C; usual is -5 to 30 °C: if it is in °F, write 10, else leave it"),
        ("apply_C = [50, 60]", "apply_C is [50, 60] °C; usual is 0 to 40 °C: if it is in °F, write [10, 15.6]"),
    ],
)
def test_that_an_allowed_but_unusual_number_is_doubted_and_the_sheet_still_read(line: str, said: str) -> None:
    report = check_sheet(with_line(line), "mine.toml")
    assert report.sheet is not None
    assert len(report.faults) == 1
    assert said in report.faults[0]


def test_that_poured_paint_may_wait_for_weeks() -> None:
    paint = 'name = "p"\nkind = "paint"\nvolume_solids = 0.4\nwet_um = 1500\ntouch_dry_min = 720\nrecoat_h = 240'
    assert check_sheet(paint, "p.toml").faults == ()


@pytest.mark.parametrize(
    ("line", "replaces", "said"),
    [
        ("recoat_min = 240", "recoat_h", "write recoat_h = 4"),
        ("wet_mils = 3.2", "wet_um", "write wet_um = 81.3"),
        ("mfft_F = 50", "mfft_C", "write mfft_C = 10"),
        ("apply_F = [57, 82]", "apply_C", "write apply_C = [13.9, 27.8]"),
        ("touch_dry_h = 0.5", "touch_dry_min", "write touch_dry_min = 30"),
        ("volume_solids_pct = 38", "volume_solids", "write volume_solids = 0.38"),
        ("density_g_mL = 1.03", "density_kg_m3", "write density_kg_m3 = 1030"),
        ("touchdry_min = 32", "touch_dry_min", "the nearest is touch_dry_min"),
        ("Volume-Solids = 0.38", "volume_solids", "the nearest is volume_solids"),
        ("recoat_minutes = true", "recoat_h", "the nearest is recoat_h"),
        ("viscosity = 3", "", "the fields are apply_C"),
        ("recoat_min = 240", "", "recoat_h is, and is there already: take this line out"),
    ],
)
def test_that_an_unknown_field_names_the_one_that_was_meant_and_only_that(line: str, replaces: str, said: str) -> None:
    text = "\n".join([*(old for old in CLEAN.splitlines() if not replaces or not old.startswith(replaces)), line])
    faults = check_sheet(text, "mine.toml").faults
    assert len(faults) == 1, faults
    assert said in faults[0]
    assert f"mine.toml: {line.split(' =', maxsplit=1)[0]} is not a field" in faults[0]


def test_that_everything_wrong_is_told_at_once() -> None:
    text = CLEAN.replace("touch_dry_min = 32", "touch_dry_min = 8").replace("recoat_h = 4", "recoat_h = 240")
    faults = check_sheet(f"{text}cautions = 3\nsheeen = 'gloss'\n[basis]\nrecoat = 'bottle'\nwet_um = 3\n", "m").faults
    assert [fault.split()[1] for fault in faults] == [
        "sheeen", "cautions", "basis.recoat", "basis.wet_um", "recoat_h", "times",
    ]  # fmt: skip


@pytest.mark.parametrize(
    ("lines", "slip"),
    [
        ("wet_um = 80\ntouch_dry_min = 8", "look at both on the product's sheet again"),
        ("wet_um = 30\ntouch_dry_min = 32", "if 30 µm is the dry film, write it as dry_um"),
        ("dry_um = 80\ntouch_dry_min = 32", "if 80 µm is the wet film, write it as wet_um"),
        ("touch_dry_min = 240", "the sheet names no film and 25 µm dry was assumed, so name wet_um or dry_um"),
    ],
)
def test_that_times_that_disagree_with_thickness_are_said_with_what_would_mend_them(lines: str, slip: str) -> None:
    start = 'name = "mine"\nkind = "waterborne"\nvolume_solids = 0.38\nrecoat_h = 8\n'
    report = check_sheet(start + lines, "mine.toml")
    assert len(report.faults) == 1
    told = report.faults[0]
    assert "times and thickness disagree" in told
    assert f"kappa {report.kappa:.2g}, which must be from 0.5 to 2.5" in told
    assert told.endswith(slip)
    assert report.sheet is not None
    quick, slow, thin, thick = (
        float(number) for number in re.findall(r"(\d+) (?:to|min|µm)", told.split("; ")[1].split(": ")[0])
    )
    # each end that it names is where the sheet begins to agree: kappa there is the end of its range, to the minute or
    # micrometre printed; kappa moves up to four times as far as they do, for the dry layer's share of the time stays
    wet_um = report.sheet.wet_um
    for touch_dry_min, film_um, kappa in (
        (quick, wet_um, 2.5),
        (slow, wet_um, 0.5),
        (report.sheet.touch_dry_min, thin, 0.5),
        (report.sheet.touch_dry_min, thick, 2.5),
    ):
        mended = read_sheet(f"{start}wet_um = {film_um}\ntouch_dry_min = {touch_dry_min}", "mended.toml")
        half_a_digit = 0.5 / min(touch_dry_min, film_um)
        assert anchor(mended).kappa == pytest.approx(kappa, rel=4.0 * half_a_digit + 0.01)


def test_that_what_the_sheet_does_not_name_is_said() -> None:
    least = 'name = "l"\nkind = "waterborne"\nvolume_solids = 0.4\ntouch_dry_min = 30\nrecoat_h = 4\n'
    report = check_sheet(least, "l.toml")
    assert report.faults == ()
    assert [sentence.split()[0] for sentence in report.assumed] == [
        "dry_um", "density_kg_m3", "clear_h", "cure_days", "mfft_C", "apply_C", "max_humidity_pct",
    ]  # fmt: skip
    assert all("is not on the sheet: " in sentence for sentence in report.assumed)


@pytest.mark.parametrize(
    ("text", "said"),
    [
        (CLEAN.replace("0.38", "0,38"), "in 'volume_solids = 0,38'; write volume_solids = 0.38"),
        (CLEAN.replace('"mine"', "mine"), "in 'name = mine'; mend that line and read it again"),
        ('name = "mine', "in 'name = \"mine'"),
        ("[", "this is not a TOML file"),
        (f"wet_um = {'9' * 5000}", "this is not a TOML file"),
        (f"cautions = {'[' * 5000}", "this is not a TOML file"),
    ],
)
def test_that_text_which_is_no_toml_is_quoted_where_it_fails(text: str, said: str) -> None:
    report = check_sheet(text, "mine.toml")
    assert report.sheet is None
    assert len(report.faults) == 1
    assert said in report.faults[0]


def test_that_a_number_too_large_for_any_film_is_a_fault() -> None:
    (fault,) = check_sheet(with_line(f"wet_um = {'9' * 400}"), "mine.toml").faults
    assert "it must be a number from 5 to 10000 µm" in fault


def test_that_a_mark_that_editors_put_before_the_text_is_passed_over() -> None:
    assert check_sheet(f"\ufeff{CLEAN}", "mine.toml").faults == ()


def test_that_a_solvent_borne_sheet_without_a_flash_point_is_taken_to_burn() -> None:
    text = 'name = "s"\nkind = "solventborne"\nvolume_solids = 0.3\ntouch_dry_min = 120\nrecoat_h = 24\n'
    assert any(
        "flash_point_C is not on the sheet: take its vapour to catch fire" in said
        for said in check_sheet(text, "s.toml").assumed
    )


ANYTHING = st.one_of(
    st.floats(), st.integers(), st.booleans(), st.text(max_size=5), st.lists(st.floats(), max_size=3), st.none()
)


@settings(max_examples=40, deadline=None)
@given(
    changes=st.dictionaries(st.sampled_from([*NUMBERS, "apply_C", "basis", "kind", "recoat_min"]), ANYTHING, max_size=4)
)
def test_that_the_checker_answers_whatever_stands_in_the_fields(changes: dict[str, object]) -> None:
    # a value of None takes the field out
    raw = {**tomllib.loads(CLEAN), **changes}
    text = "\n".join(f"{field} = {_toml(value)}" for field, value in raw.items() if value is not None)
    report = check_sheet(text, "mine.toml")
    assert (report.sheet is not None) or report.faults
    assert all(fault.startswith("mine.toml: ") for fault in report.faults)


def _toml(value: object) -> str:
    if isinstance(value, list):
        return f"[{', '.join(_toml(one) for one in value)}]"
    return json.dumps(value).replace("NaN", "nan").replace("Infinity", "inf")


def test_that_a_basis_that_is_no_table_is_a_fault() -> None:
    assert "basis is 'bottle'; it must be a table" in check_sheet(with_line('basis = "bottle"'), "m").faults[0]
