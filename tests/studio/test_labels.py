from __future__ import annotations

from datetime import date

import pytest

from studiowatch.coats.data_sheet import DataSheet, Kind, Sheen
from studiowatch.studio.labels import next_step, slack_days, stack_labels, suggested_mL, volume_text


def sheet(name: str, kind: Kind = Kind.WATERBORNE, sheen: Sheen | None = None) -> DataSheet:
    return DataSheet(
        name=name,
        title=name.title(),
        kind=kind,
        volume_solids=0.35,
        density_kg_m3=1030.0,
        wet_um=100.0,
        dry_um=35.0,
        touch_dry_min=45.0,
        recoat_h=4.0,
        cure_days=14.0,
        sheen=sheen,
    )


PAINT = sheet("paint", Kind.PAINT)
ISOLATION = sheet("isolation-waterborne", sheen=Sheen.GLOSS)
GLOSS = sheet("gloss-waterborne", sheen=Sheen.GLOSS)
SATIN = sheet("satin-waterborne", sheen=Sheen.SATIN)
PLAIN = sheet("clear", Kind.SOLVENTBORNE)


@pytest.mark.parametrize(
    ("stack", "labels"),
    [
        ([PAINT, ISOLATION, GLOSS, GLOSS, SATIN], ("paint", "isolation", "gloss 1", "gloss 2", "satin")),
        ([PAINT, ISOLATION, GLOSS, SATIN], ("paint", "isolation", "gloss", "satin")),
        ([PAINT, PLAIN], ("paint", "varnish")),
        ([], ()),
    ],
)
def test_that_coats_are_named_by_what_they_are_and_numbered_when_there_are_more(
    stack: list[DataSheet], labels: tuple[str, ...]
) -> None:
    assert stack_labels(stack) == labels


def test_that_an_isolation_coat_is_not_counted_as_gloss() -> None:
    assert stack_labels([ISOLATION, GLOSS]) == ("isolation", "gloss")


def test_that_a_micrometre_on_a_square_metre_is_a_millilitre() -> None:
    # 1 um x 1 m2 = 1e-6 m3 = 1 mL
    assert suggested_mL(1.0, 1.0) == pytest.approx(1e-6 * 1e6)
    assert suggested_mL(0.6 * 0.9, 115.0) == pytest.approx(62.1)


def test_that_a_tenth_is_said_only_where_it_matters() -> None:
    assert volume_text(62.1) == "62 mL"
    assert volume_text(3.62) == "3.6 mL"
    assert volume_text(9.96) == "10 mL"


@pytest.mark.parametrize(
    ("top", "following", "volume_mL", "words"),
    [
        ("gloss 2", "satin", 62.1, "recoat: satin, 62 mL"),
        ("paint", "isolation", 14.2, "lay isolation, 14 mL"),
        (None, "isolation", None, "lay isolation"),
        ("satin", None, None, "fit to wrap"),
        ("paint", None, None, "plan its coats"),
        (None, None, None, "plan its coats"),
    ],
)
def test_that_the_next_step_is_said_in_few_words(
    top: str | None, following: str | None, volume_mL: float | None, words: str
) -> None:
    assert next_step(top=top, following=following, volume_mL=volume_mL) == words


@pytest.mark.parametrize(
    ("ready", "days"),
    [(date(2026, 12, 3), 6), (date(2026, 12, 9), 0), (date(2026, 12, 12), -3)],
)
def test_that_slack_is_counted_in_days(ready: date, days: int) -> None:
    assert slack_days(date(2026, 12, 9), ready) == days
