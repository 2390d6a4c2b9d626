"""`predict`: the document that other programs read, and what is refused."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest

from .conftest import Answer, room_text

CALL = ("predict", "--sheet", "gloss-waterborne", "--wet-um", "80", "--side-m", "0.4")
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


def test_that_people_get_a_table(call: Callable[..., Answer]) -> None:
    answer = call(*CALL, "--air", "21,50,0.05", "--draws", "16")
    assert "dry to recoat" in answer.out
    assert "ready by" in answer.out
