"""`predict --explain`: the terms of the balance as a table and as an object, at the moment that was asked for."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from .conftest import Answer, room_text

CALL = ("predict", "--wet-um", "80", "--side-m", "0.4", "--draws", "1")
GLOSS = (*CALL, "--sheet", "gloss-waterborne")
AIR = ("--air", "20,50,0.05")
GROUPS = {"air", "film", "vapour", "transfer", "heat", "skinning", "water", "ages"}


def explained(answer: Answer) -> Any:  # noqa: ANN401 - whatever was printed
    assert answer.code == 0, answer.err
    return answer.document["explain"]


def test_that_the_object_holds_every_term_and_the_document_all_else(call: Callable[..., Answer]) -> None:
    told = explained(call(*GLOSS, *AIR, "--explain", "0.25", "--json"))
    assert set(told) == {"at_h", "phase", *GROUPS}
    assert (told["at_h"], told["phase"]) == (0.25, "open")
    plain = call(*GLOSS, *AIR, "--json").document
    whole = call(*GLOSS, *AIR, "--explain", "--json").document
    assert whole.pop("explain") == told
    assert whole == plain


def test_that_the_numbers_can_be_checked_by_hand(call: Callable[..., Answer]) -> None:
    # the written equations of the balance, from the printed numbers alone; Stefan-Boltzmann constant CODATA 2018
    told = explained(call(*GLOSS, *AIR, "--explain", "0.25", "--json"))
    transfer, heat, film, air = told["transfer"], told["heat"], told["film"], told["air"]
    mass = transfer["kappa"] * transfer["sherwood"] * air["diffusivity_m2_s"] / film["side_m"]
    resistance = 1.0 / mass + transfer["layer_resistance_s_m"]
    flux = (told["vapour"]["at_film_g_m3"] - told["vapour"]["in_air_g_m3"]) / resistance * 3600.0
    assert transfer["flux_g_m2_h"] == pytest.approx(flux)
    cooler_K = air["temperature_C"] - film["temperature_C"]
    convection = transfer["nusselt"] * air["conductivity_W_m_K"] / film["side_m"] * cooler_K
    middle_K = 273.15 + (air["temperature_C"] + film["temperature_C"]) / 2.0
    radiation = 4.0 * heat["emissivity"] * 5.670374419e-8 * middle_K**3 * cooler_K
    latent = -heat["latent_heat_J_kg"] * flux / 3.6e6
    back = heat["back_W_m2_K"] * cooler_K
    assert heat["convection_W_m2"] == pytest.approx(convection)
    assert heat["radiation_W_m2"] == pytest.approx(radiation)
    assert heat["latent_W_m2"] == pytest.approx(latent)
    assert heat["stored_W_m2"] == pytest.approx(convection + radiation + back + latent, abs=1e-6)
    warming = heat["stored_W_m2"] / heat["heat_capacity_J_m2_K"] * 60.0
    assert heat["warming_K_min"] == pytest.approx(warming, abs=1e-9)


def test_that_terms_that_play_no_part_are_null(call: Callable[..., Answer]) -> None:
    told = explained(call(*GLOSS, *AIR, "--explain", "6", "--json"))
    assert told["phase"] == "bound"
    assert set(told["heat"].values()) == {None}
    assert told["water"]["free_g_m2"] == 0.0
    assert told["water"]["bound_flux_g_m2_h"] > 0.0


def test_that_a_fresh_coat_has_the_temperature_of_the_air(call: Callable[..., Answer]) -> None:
    told = explained(call(*GLOSS, *AIR, "--explain", "0", "--json"))
    assert told["film"]["temperature_C"] == pytest.approx(20.0)
    assert told["heat"]["convection_W_m2"] == pytest.approx(0.0)


def test_that_a_log_gives_the_air_of_that_moment(call: Callable[..., Answer], tmp_path: Path) -> None:
    log = tmp_path / "room.csv"
    rows = [(f"2026-03-02T09:{minute:02}:00Z", 20 if minute < 30 else 25, 50, 0.05) for minute in range(60)]
    log.write_text(room_text(rows), "utf-8")

    def air_C(hours: str) -> float:
        words = ("--room", log, "--laid", "2026-03-02T09:00:00Z", "--explain", hours, "--json")
        temperature_C: float = explained(call(*GLOSS, *words))["air"]["temperature_C"]
        return temperature_C

    assert [air_C(hours) for hours in ("0.49", "0.5", "3")] == [20.0, 25.0, 25.0]


def test_that_a_cover_and_thinning_show_in_the_terms(call: Callable[..., Answer]) -> None:
    windy = ("--air", "20,50,0.4", "--explain", "--json")
    plain, covered = (explained(call(*GLOSS, *windy, *words)) for words in ((), ("--covered",)))
    assert covered["air"]["air_speed_at_film_m_s"] == pytest.approx(plain["air"]["air_speed_at_film_m_s"] / 2.0)
    thinned = explained(call(*GLOSS, *windy, "--thinned-pct", "25"))
    # a quarter more water in the same wet film: polymer falls to 1/1.25
    assert thinned["water"]["polymer_g_m2"] == pytest.approx(plain["water"]["polymer_g_m2"] / 1.25)


def test_that_paint_explains_its_own_terms(call: Callable[..., Answer]) -> None:
    told = explained(call(*CALL, "--sheet", "paint-brushed", *AIR, "--explain", "2", "--json"))
    assert told["phase"] == "paint"
    assert set(told) == {"at_h", "phase", "air", "film", "water", "ages"}


def test_that_people_get_a_term_to_a_line_with_its_unit(call: Callable[..., Answer]) -> None:
    out = call(*GLOSS, *AIR, "--explain").out
    assert "The balance 15 min after laying, nominal run" in out
    for unit in ("W/m²", "g/(m² h)", "g/m³", "kg/kg", "s/m", "m/s"):
        assert f" {unit} " in out
    late = call(*GLOSS, *AIR, "--explain", "6").out
    assert "not in play: nothing free is left" in late
