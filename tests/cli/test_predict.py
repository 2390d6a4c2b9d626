"""`predict`: the document that other programs read, and what is refused."""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from .conftest import Answer, room_text

CALL = ("predict", "--sheet", "gloss-waterborne", "--wet-um", "80", "--side-m", "0.4")
SHEETS = Path(__file__).parents[2] / "resources" / "sheets"
STAGES = {"set_to_touch", "dry_to_touch", "clear", "dry_to_recoat", "cured"}


def test_that_the_document_has_the_fixed_names(call: Callable[..., Answer]) -> None:
    answer = call(*CALL, "--air", "21,50,0.05", "--draws", "32", "--json")
    assert answer.code == 0
    document = answer.document
    assert set(document) == {"sheet", "kappa", "extrapolated", "stages_h", "film", "notes"}
    assert set(document["stages_h"]) >= STAGES
    for quantiles in document["stages_h"].values():
        assert quantiles["p10"] <= quantiles["p50"] <= quantiles["p90"]
        assert quantiles["p10"] < quantiles["nominal"] < quantiles["p90"]
    assert set(document["film"]) == {
        "constant_rate_g_m2_h",
        "constant_rate_temperature_C",
        "chance_below_mfft",
        "initial_water_g_m2",
    }
    assert document["extrapolated"] is False
    assert 0.5 <= document["kappa"] <= 2.5


def test_that_the_same_seed_gives_the_same_answer_and_one_draw_the_nominal_run(call: Callable[..., Answer]) -> None:
    same = [call(*CALL, "--air", "21,50,0.05", "--draws", "32", "--seed", "5", "--json").out for _ in range(2)]
    assert same[0] == same[1]
    nominal = call(*CALL, "--air", "21,50,0.05", "--draws", "1", "--json").document["stages_h"]["dry_to_recoat"]
    assert nominal["p10"] == nominal["p90"] == nominal["nominal"]


def test_that_a_cold_damp_room_is_slower_and_said_to_be_extrapolated(call: Callable[..., Answer]) -> None:
    fair = call(*CALL, "--air", "21,50,0.05", "--draws", "1", "--json").document
    harsh = call(*CALL, "--air", "9,85,0.05", "--draws", "1", "--json").document
    assert harsh["extrapolated"] is True
    assert harsh["stages_h"]["dry_to_touch"]["nominal"] > fair["stages_h"]["dry_to_touch"]["nominal"]
    assert harsh["stages_h"]["dry_to_recoat"] is None  # damper than 85 % it stays milky, and recoat waits for clear


def test_that_a_constant_log_gives_what_the_same_air_gives(call: Callable[..., Answer], tmp_path: Path) -> None:
    log = tmp_path / "room.csv"
    log.write_text(room_text([(f"2026-03-02T{hour:02}:00:00Z", 21, 50, 0.05) for hour in range(9, 24)]), "utf-8")
    logged = call(*CALL, "--room", log, "--laid", "2026-03-02T09:00:00Z", "--draws", "1", "--json").document
    held = call(*CALL, "--air", "21,50,0.05", "--draws", "1", "--json").document
    for stage in STAGES:
        assert logged["stages_h"][stage]["nominal"] == pytest.approx(held["stages_h"][stage]["nominal"], rel=1e-3)


@pytest.mark.parametrize(
    ("words", "says"),
    [
        (("--air", "21,50"), "--air"),
        (("--air", "21,fifty,0.05"), "'fifty'"),
        (("--air", "21,150,0.05"), "150"),
        (("--air", "nan,50,0.05"), "'nan'"),
        (("--air", "21,50,0.05", "--draws", "0"), "--draws"),
        (("--air", "21,50,0.05", "--wet-um", "-5"), "-5"),
        (("--air", "21,50,0.05", "--seed", "-1"), "--seed"),
        (("--air", "21,50,0.05", "--thinned-pct", "130"), "thinning is 130 %"),
        (("--air", "21,50,0.05", "--laid", "2026-03-02T09:00:00Z"), "--laid belongs to --room"),
        (("--air", "21,50,0.05", "--explain", "-1"), "the moment to explain is -1 h"),
        (("--air", "21,50,0.05", "--explain", "nan"), "the moment to explain is nan h"),
        (("--room", "none.csv"), "--laid"),
        (("--room", "none.csv", "--laid", "yesterday"), "yesterday"),
        (("--room", "none.csv", "--laid", "2026-03-02T09:00:00"), "zone"),
    ],
)
def test_that_a_wrong_call_gets_one_sentence(call: Callable[..., Answer], words: tuple[str, ...], says: str) -> None:
    answer = call(*CALL, *words)
    assert answer.code == 2
    assert answer.out == ""
    assert says in answer.err
    assert len(answer.err.strip().splitlines()) == 1


def test_that_an_unknown_sheet_names_those_there_are(call: Callable[..., Answer]) -> None:
    answer = call("predict", "--sheet", "glos", "--wet-um", "80", "--side-m", "0.4", "--air", "21,50,0.05")
    assert answer.code == 2
    assert "gloss-waterborne" in answer.err


def test_that_a_sheet_that_is_no_text_is_refused(call: Callable[..., Answer], tmp_path: Path) -> None:
    sheet = tmp_path / "sheet.toml"
    sheet.write_bytes(b'name = "\xff"')
    answer = call("predict", "--sheet", sheet, "--wet-um", "80", "--side-m", "0.4", "--air", "21,50,0.05")
    assert answer.code == 2
    assert "not UTF-8 text (byte 8)" in answer.err
    assert len(answer.err.strip().splitlines()) == 1


def test_that_people_get_a_table_in_hours_and_minutes(call: Callable[..., Answer]) -> None:
    answer = call(*CALL, "--air", "21,50,0.05", "--draws", "16")
    assert answer.out.startswith("Gloss varnish, water-borne (generic): 80 µm wet on 0.4 × 0.4 m, face-up\n")
    assert "Room: 21 °C, 50 % RH, 0.05 m/s" in answer.out
    assert "EXTRAPOLATED" not in answer.out
    rows = answer.out.split("\n\n")[1].splitlines()
    assert [heading.strip() for heading in rows[0].split("  ") if heading.strip()][-1] == "ready by"
    assert len({len(row) for row in rows}) == 1
    (recoat,) = (row for row in rows if row.startswith("dry to recoat"))
    assert re.search(r"\d h \d\d min +\d h \d\d min +\d h \d\d min$", recoat)
    (cured,) = (row for row in rows if row.startswith("cured"))
    assert re.search(r"\d+ d \d+ h$", cured)


def test_that_an_extrapolated_table_says_so_and_what_is_not_reached(call: Callable[..., Answer]) -> None:
    answer = call(*CALL, "--air", "9,88,0.05", "--draws", "16", "--thinned-pct", "10", "--covered", "--measured")
    assert "EXTRAPOLATED times after laying" in answer.out
    assert "not reached" in answer.out
    assert "thinned by 10 %, under a mesh cover, measured" in answer.out.splitlines()[0]


def test_that_ready_by_is_never_before_the_sheets_own_recoat_time(call: Callable[..., Answer]) -> None:
    # a thin film in a warm, dry, moving room is ready long before the 4 h that the sheet names
    words = ("predict", "--sheet", "gloss-waterborne", "--wet-um", "40", "--side-m", "0.4", "--air", "29,32,0.3")
    document = call(*words, "--draws", "32", "--json").document
    assert document["stages_h"]["dry_to_recoat"]["p90"] < 4.0
    (note,) = (note for note in document["notes"] if "ready by" in note)
    assert "ready by 4 h 00 min for the next coat" in note
    table = call(*words, "--draws", "32").out
    (row,) = (line for line in table.splitlines() if line.startswith("dry to recoat"))
    assert row.endswith("4 h 00 min")
    slow = call(*CALL, "--air", "18,60,0.05", "--draws", "32", "--json").document
    assert not any("ready by" in note for note in slow["notes"])


def test_that_thinning_a_cover_and_measuring_count(call: Callable[..., Answer]) -> None:
    def touch(*words: str) -> Any:  # noqa: ANN401 - whatever was printed
        air = ("--air", "21,50,0.3", "--draws", "128", "--json")
        return call(*CALL, *air, *words).document["stages_h"]["dry_to_touch"]

    plain = touch()
    assert touch("--thinned-pct", "20")["nominal"] > plain["nominal"]
    assert touch("--covered")["nominal"] > plain["nominal"]
    measured = touch("--measured")
    assert measured["nominal"] == plain["nominal"]
    assert measured["p90"] - measured["p10"] < plain["p90"] - plain["p10"]


def test_that_an_mfft_that_the_sheet_does_not_name_is_not_taken_for_a_warm_film(
    call: Callable[..., Answer], tmp_path: Path
) -> None:
    built_in = (SHEETS / "gloss-waterborne.toml").read_text("utf-8")
    sheet = tmp_path / "bottle.toml"
    sheet.write_text("\n".join(line for line in built_in.splitlines() if not line.startswith("mfft_C")), "utf-8")
    words = ("--wet-um", "80", "--side-m", "0.4", "--air", "12,50,0.05", "--draws", "16")
    document = call("predict", "--sheet", sheet, *words, "--json").document
    assert document["film"]["chance_below_mfft"] is None
    assert any("mfft_C is not on the sheet" in note for note in document["notes"])
    assert "too cold to form: not known" in call("predict", "--sheet", sheet, *words).out
    named = call("predict", "--sheet", "gloss-waterborne", *words).out
    assert re.search(r"^too cold to form: \d+ % of the draws$", named, re.MULTILINE)
    solvent = call("predict", "--sheet", "gloss-solventborne", *words).out
    assert "too cold to form" not in solvent


def test_that_support_and_orientation_count_and_are_named(call: Callable[..., Answer]) -> None:
    words = (*CALL, "--air", "21,50,0.05", "--draws", "1")

    def touch_h(*more: str) -> float:
        hours: float = call(*words, *more, "--json").document["stages_h"]["dry_to_touch"]["nominal"]
        return hours

    assert touch_h("--support", "bare paper") < touch_h("--support", "bare panel") < touch_h()
    assert touch_h("--orientation", "face-down") < touch_h()
    first = call(*words, "--support", "raw canvas", "--orientation", "face-down").out.splitlines()[0]
    assert first.endswith("face-down, straight on raw canvas")
    explained = call(*words, "--support", "raw canvas", "--explain", "--json").document["explain"]
    assert explained["film"]["soaked_g_m2"] > 1.0


def test_that_two_draws_are_said_to_be_too_few(call: Callable[..., Answer]) -> None:
    answer = call(*CALL, "--air", "21,50,0.05", "--draws", "2")
    assert "note: 2 draws are too few for a range" in answer.out


def test_that_weighing_the_bottle_is_a_note_for_people_and_programs(call: Callable[..., Answer]) -> None:
    words = (*CALL, "--air", "21,50,0.05", "--draws", "256")
    (note,) = (note for note in call(*words, "--json").document["notes"] if "weighing the bottle" in note)
    assert re.search(r"from [\d.]+ to [\d.]+ h to about [\d.]+ to [\d.]+ h$", note)
    assert f"note: {note}\n" in call(*words).out
    assert "weighing the bottle" not in call(*words, "--measured").out


def test_that_a_stage_that_the_sheet_has_not_is_left_out_and_one_not_reached_is_null(
    call: Callable[..., Answer],
) -> None:
    words = ("--wet-um", "80", "--side-m", "0.4", "--air", "20,50,0.05", "--draws", "8", "--horizon-h", "1", "--json")
    coat = call("predict", "--sheet", "gloss-waterborne", *words).document["stages_h"]
    assert coat["dry_to_recoat"] is None
    assert coat["cured"] is not None
    paint = call("predict", "--sheet", "paint-brushed", *words).document["stages_h"]
    assert "clear" not in paint


def test_that_a_log_is_read_from_the_laying_on_with_what_it_lacks_told(
    call: Callable[..., Answer], tmp_path: Path
) -> None:
    log = tmp_path / "room.csv"
    rows = [(f"2026-03-0{day}T{hour:02}:00:00Z", 21, 50, "") for day in (1, 2) for hour in range(9, 21)]
    log.write_text(room_text(rows), "utf-8")

    def asked(laid: str) -> Answer:
        return call(*CALL, "--room", log, "--laid", laid, "--draws", "1", "--json")

    notes = asked("2026-03-02T09:00:00Z").document["notes"]
    assert any("12 of 12 readings have no air speed: still air of 0.05 m/s" in note for note in notes)
    assert any("no reading for 60 min" in note for note in notes)
    assert any("one reading from the laying on" in note for note in asked("2026-03-02T20:05:00Z").document["notes"])
    late = asked("2026-03-02T20:30:00Z")
    assert late.code == 2
    assert "no temperature with humidity at or after 2026-03-02T20:30:00Z" in late.err
    early = asked("2026-02-20T09:00:00Z")
    assert early.code == 2
    assert "the room log begins 216.0 h after laying; allowed is under 96 h, the horizon" in early.err


def test_that_a_log_of_seconds_is_taken_by_the_minute(call: Callable[..., Answer], tmp_path: Path) -> None:
    # the same room twice: once a second, swinging about its mean, and that mean once a minute
    seconds, minutes = tmp_path / "seconds.csv", tmp_path / "minutes.csv"
    swinging = [
        (f"2026-03-02T{9 + minute // 60:02}:{minute % 60:02}:{second:02}Z", 21 + 1 * (-1) ** second, 50, 0.1)
        for minute in range(90)
        for second in range(60)
    ]
    seconds.write_text(room_text(swinging), "utf-8")
    steady = [(f"2026-03-02T{9 + minute // 60:02}:{minute % 60:02}:00Z", 21, 50, 0.1) for minute in range(90)]
    minutes.write_text(room_text(steady), "utf-8")
    logged = [
        call(*CALL, "--room", log, "--laid", "2026-03-02T09:00:00Z", "--draws", "1", "--json").document["stages_h"]
        for log in (seconds, minutes)
    ]
    assert logged[0] == logged[1]


def test_that_a_cover_in_the_log_is_told(call: Callable[..., Answer], tmp_path: Path) -> None:
    log = tmp_path / "room.csv"
    rows = [f"2026-03-02T09:0{minute}:00Z,21,50,0.1,{int(minute > 4)}" for minute in range(10)]
    log.write_text("\n".join(["time,temperature_C,humidity_pct,air_speed_m_s,cover", *rows, ""]), "utf-8")
    words = (*CALL, "--room", log, "--laid", "2026-03-02T09:00:00Z", "--draws", "1", "--json")
    assert any("5 of 10 readings are from under a cover" in note for note in call(*words).document["notes"])
    assert not any("under a cover" in note for note in call(*words, "--covered").document["notes"])


def test_that_what_the_log_lacks_after_the_horizon_is_not_told(call: Callable[..., Answer], tmp_path: Path) -> None:
    log = tmp_path / "room.csv"
    rows = [(f"2026-03-02T{hour:02}:{minute:02}:00Z", 21, 50, 0.1) for hour in (9, 10) for minute in range(0, 60, 5)]
    later = [(f"2026-03-02T{hour:02}:00:00Z", 21, 50, "") for hour in range(11, 20)]
    log.write_text(room_text([*rows, *later]), "utf-8")
    words = (*CALL, "--room", log, "--laid", "2026-03-02T09:00:00Z", "--draws", "1", "--json")
    assert any("9 of 33 readings have no air speed" in note for note in call(*words).document["notes"])
    soon = call(*words, "--horizon-h", "2").document["notes"]
    assert not any("no air speed" in note for note in soon)
