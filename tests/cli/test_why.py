"""`why`: the document that other programs read, from files and from the records, and what is refused."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest

from .conftest import Answer, room_text

STUDIO = """
[[piece]]
title = "Kiln Light"
width_cm = 40
height_cm = 40
[[piece.coat]]
sheet = "paint-brushed"
laid = 2026-02-27T09:00:00Z
[[piece.coat]]
sheet = "isolation-waterborne"
laid = 2026-03-02T09:00:00Z
volume_mL = 13
[[piece.coat]]
sheet = "gloss-waterborne"
laid = 2026-03-02T10:45:00Z
volume_mL = 13
outcome = "milky in patches"
seen = 2026-03-03T09:20:00Z
[[piece.coat]]
sheet = "satin-waterborne"
"""
CAUSES = {
    "sealed-in-water",
    "damp-air",
    "below-mfft",
    "condensation",
    "skinned",
    "too-thick",
    "thinned",
    "matting-build-up",
    "touched",
    "still-clearing",
    "unknown",
}


@pytest.fixture
def files(tmp_path: Path) -> tuple[Path, Path]:
    studio, log = tmp_path / "studio.toml", tmp_path / "room.csv"
    studio.write_text(STUDIO, "utf-8")
    rows = [
        (f"2026-03-0{2 + hour // 24}T{hour % 24:02}:{minute:02}:00Z", 20, 52, 0.05)
        for hour in range(7, 36)
        for minute in range(0, 60, 5)
    ]
    log.write_text(room_text(rows), "utf-8")
    return studio, log


def why(call: Callable[..., Answer], files: tuple[Path, Path], *more: str, coat: str = "3") -> Answer:
    studio, log = files
    return call("why", "--studio", studio, "--room", log, "--piece", "Kiln Light", "--coat", coat, *more)


def test_that_the_document_has_the_fixed_names_and_finds_the_cause(
    call: Callable[..., Answer], files: tuple[Path, Path]
) -> None:
    answer = why(call, files, "--json")
    assert answer.code == 0
    document = answer.document
    assert set(document) == {
        "piece",
        "coat",
        "outcome",
        "chance_of_clouding",
        "causes",
        "what_would_have_changed_it",
        "blind_spots",
    }
    assert (document["piece"], document["coat"], document["outcome"]) == ("Kiln Light", 3, "milky in patches")
    assert {cause["cause"] for cause in document["causes"]} == CAUSES
    assert all(set(cause) == {"cause", "share", "evidence", "severity", "unit"} for cause in document["causes"])
    shares = [cause["share"] for cause in document["causes"]]
    assert shares == sorted(shares, reverse=True)
    assert sum(shares) == pytest.approx(1.0, abs=0.001)
    first = document["causes"][0]
    assert (first["cause"], first["unit"]) == ("sealed-in-water", "g/m2")
    assert first["severity"] > 0.5
    change = document["what_would_have_changed_it"][0]
    assert set(change) == {"change", "chance_of_clouding"}
    assert change["chance_of_clouding"] < 0.1 < document["chance_of_clouding"]


def test_that_people_get_causes_the_table_and_what_to_do_with_its_cautions(
    call: Callable[..., Answer], files: tuple[Path, Path]
) -> None:
    out = why(call, files).out
    assert "laid Mon 2 Mar 2026 " in out.splitlines()[0]
    parts = ["Likely causes", "What would have changed it", "As it was", "Waited until", "What to do now"]
    assert [out.index(part) for part in parts] == sorted(out.index(part) for part in parts)
    for hazard in ("no flame", "gloves", "catch fire by themselves"):
        assert hazard in out


def test_that_the_records_give_the_same_review_and_keep_what_was_worked_out(
    call: Callable[..., Answer], files: tuple[Path, Path], tmp_path: Path
) -> None:
    studio, log = files
    assert call("import", log).code == 0
    assert call("import", studio).code == 0
    asked = ("why", "--piece", "kiln light", "--coat", "3", "--json")
    first = call(*asked)
    assert first.code == 0
    from_files = why(call, files, "--json").document
    assert first.document["causes"][0]["share"] == pytest.approx(from_files["causes"][0]["share"], abs=0.02)
    assert (tmp_path / "data" / "severities.json").exists()
    assert call(*asked).document == first.document
    (tmp_path / "data" / "severities.json").write_text("no JSON", "utf-8")
    assert call(*asked).document == first.document


@pytest.mark.parametrize(
    ("coat", "sentence"),
    [
        ("4", "Coat 4 of Kiln Light has not been laid yet; its laid coats are 1, the lowest, to 3."),
        ("9", "Kiln Light has no coat 9; its laid coats are 1, the lowest, to 3."),
        ("0", "Kiln Light has no coat 0; its laid coats are 1, the lowest, to 3."),
        ("1", "Coat 1 of Kiln Light is paint, which does not cloud; ask about a clear coat."),
    ],
)
def test_that_a_coat_that_cannot_be_reviewed_is_refused_in_one_sentence(
    call: Callable[..., Answer], files: tuple[Path, Path], coat: str, sentence: str
) -> None:
    answer = why(call, files, coat=coat)
    assert (answer.code, answer.out) == (2, "")
    assert answer.err == f"studiowatch: {sentence}\n"


def test_that_calls_that_do_not_fit_together_are_refused(call: Callable[..., Answer], files: tuple[Path, Path]) -> None:
    studio, log = files
    alone = call("why", "--studio", studio, "--piece", "Kiln Light", "--coat", "3")
    assert (alone.code, alone.err) == (
        2,
        "studiowatch: --studio needs --room beside it; without both, the records are asked.\n",
    )
    other = call("why", "--studio", studio, "--room", log, "--piece", "Nobody's", "--coat", "3")
    assert other.code == 2
    assert 'There is no piece "Nobody\'s"' in other.err
    no_records = call("why", "--piece", "Kiln Light", "--coat", "3")
    assert no_records.code == 1
    assert no_records.err.count("\n") == 1


def test_that_a_log_that_holds_nothing_of_its_time_is_said_to_be_blind(
    call: Callable[..., Answer], files: tuple[Path, Path]
) -> None:
    studio, log = files
    log.write_text(room_text([("2026-03-09T09:00:00Z", 20, 50, 0.05)]), "utf-8")
    answer = why(call, (studio, log), "--json")
    assert answer.code == 0
    assert any("no reading of its time" in spot for spot in answer.document["blind_spots"])


def test_that_missing_channels_and_a_sheet_beside_the_studio_file_are_taken(
    call: Callable[..., Answer], files: tuple[Path, Path]
) -> None:
    studio, log = files
    sheets = Path(__file__).parents[2] / "resources" / "sheets"
    (studio.parent / "hers.toml").write_text(
        (sheets / "gloss-waterborne.toml").read_text("utf-8").replace('name = "gloss-waterborne"', 'name = "hers"'),
        "utf-8",
    )
    studio.write_text(STUDIO.replace('"gloss-waterborne"', '"hers.toml"'), "utf-8")
    rows = log.read_text("utf-8").replace(",0.05\n", ",\n")
    log.write_text(rows, "utf-8")
    answer = why(call, (studio, log), "--json")
    assert answer.code == 0
    assert answer.document["causes"][0]["cause"] == "sealed-in-water"
    assert any("Air speed was not measured" in spot for spot in answer.document["blind_spots"])
