"""`what-if` from the terminal: what would be otherwise, and what it asks of her care."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime
from pathlib import Path

import pytest

from .conftest import Answer

Call = Callable[..., Answer]
STUDIO = """[[piece]]
title = "Marsh"
width_cm = 40
height_cm = 30

[[piece.coat]]
sheet = "gloss-waterborne"
laid = 2026-03-02T09:00:00Z

[[piece.coat]]
sheet = "{next}"
"""
NOW = ("--air", "18,60,0.05", "--now", "2026-03-02T10:00:00+00:00")


@pytest.fixture(name="ask")
def _ask(call: Call, tmp_path: Path) -> Callable[..., Answer]:
    def asked(*words: str, sheet: str = "satin-waterborne") -> Answer:
        file = tmp_path / "studio.toml"
        file.write_text(STUDIO.replace("{next}", sheet))
        return call("what-if", *words, "--studio", str(file), *NOW)

    return asked


def test_that_each_stage_is_told_with_how_much_sooner_it_is(ask: Callable[..., Answer]) -> None:
    told = ask("--temperature-C", "24", "--humidity-pct", "45")
    assert told.code == 0
    head, clear, ready, *rest = told.out.splitlines()
    assert head == "What if: Room kept at 24 °C, 45 %"
    assert clear.startswith("Marsh, gloss: clear by ")
    assert ready.startswith("Marsh, gloss: ready for the next coat by ")
    assert "sooner than" in ready
    assert any("Use the heater by its own instructions" in line for line in rest)


def test_that_other_programs_read_it_in_si(ask: Callable[..., Answer]) -> None:
    told = ask("--temperature-C", "24", "--hours", "6", "--cover", "--air-m-s", "0", "--json").document
    assert told["held"] == {
        "temperature_C": 24.0,
        "humidity_pct": None,
        "air_m_s": 0.05,
        "until": "2026-03-02T16:00+00:00",
        "cover": True,
    }
    (piece,) = told["pieces"]
    assert [stage["stage"] for stage in piece["stages"]] == ["clear", "dry_to_recoat"]
    for stage in piece["stages"]:
        before, after = (datetime.fromisoformat(stage[room]["by"]) for room in ("as_it_comes", "otherwise"))
        assert after < before


def test_that_the_watchs_warnings_in_that_room_are_told(ask: Callable[..., Answer]) -> None:
    lines = ask("--air-m-s", "0.5").out.splitlines()
    assert "! In that room: Air is moving over a wet coat." in lines


def test_that_it_is_refused_beside_flammable_vapour(call: Call, tmp_path: Path) -> None:
    file = tmp_path / "studio.toml"
    file.write_text(STUDIO.replace("gloss-waterborne", "gloss-solventborne").replace("{next}", "satin-solventborne"))
    told = call("what-if", "--temperature-C", "26", "--studio", str(file), *NOW)
    assert told.code == 1
    assert "still gives off flammable vapour: no heater" in told.err
    assert told.out == ""
    assert call("what-if", "--air-m-s", "0", "--studio", str(file), *NOW).code == 0


@pytest.mark.parametrize(
    ("words", "says"),
    [
        ((), "Say what would be otherwise"),
        (("--temperature-C", "50"), "from 5 to 40 °C"),
        (("--humidity-pct", "0"), "from 10 to 95 %"),
        (("--air-m-s", "-1"), "from 0 to 3 m/s"),
        (("--air-m-s", "nan"), "from 0 to 3 m/s"),
        (("--temperature-C", "20", "--hours", "0"), "--hours is 0; allowed is over 0, up to 96"),
        (("--temperature-C", "20", "--hours", "97"), "--hours is 97"),
    ],
)
def test_that_a_wrong_call_is_one_sentence(ask: Callable[..., Answer], words: tuple[str, ...], says: str) -> None:
    told = ask(*words)
    assert told.code == 2
    assert says in told.err
    assert told.out == ""


def test_that_a_rack_on_which_nothing_waits_says_so(call: Call, tmp_path: Path) -> None:
    file = tmp_path / "studio.toml"
    file.write_text(STUDIO.split("[[piece.coat]]", maxsplit=1)[0])
    told = call("what-if", "--temperature-C", "24", "--studio", str(file), *NOW)
    assert "No piece on the rack waits for anything." in told.out


def test_that_a_room_in_which_the_humidity_reads_nothing_has_no_dew_point(call: Call, tmp_path: Path) -> None:
    file = tmp_path / "studio.toml"
    file.write_text(STUDIO.replace("{next}", "satin-waterborne"))
    told = call("what-if", "--temperature-C", "24", "--studio", str(file), "--air", "18,0,0.05", *NOW[2:])
    assert told.code == 0
    assert told.out.startswith("What if: Room kept at 24 °C\n")
