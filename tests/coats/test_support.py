from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

import pytest

from studiowatch.coats.anchoring import anchor
from studiowatch.coats.data_sheet import DataSheet
from studiowatch.coats.film import Film, advance, lay
from studiowatch.coats.stages import Stage
from studiowatch.coats.support import Support, support_of
from studiowatch.physics.air import Air

ROOM = Air(temperature_C=21.0, humidity_pct=50.0, air_speed_m_s=0.05)


def on(sheet: DataSheet, support: Support, over: Film | None = None) -> Film:
    return lay(sheet, anchor(sheet), wet_um=sheet.wet_um, side_m=0.4, support=support, over=over)


@pytest.mark.parametrize(
    ("support", "share"),
    [(Support.SEALED, 0.0), (Support.PANEL, 0.10), (Support.CANVAS, 0.20), (Support.PAPER, 0.35)],
)
def test_that_what_the_support_takes_up_is_missing_from_the_film(
    gloss: DataSheet, support: Support, share: float
) -> None:
    # stated in the model, as are the shares: of 90 µm with 64 % of water of 0.998 g/mL all is free but 6 % of the
    # polymer, 32.4 µm of 1.1 g/mL
    free_g_m2 = 90.0 * 0.64 * 0.998 - 0.06 * 32.4 * 1.1
    film = on(gloss, support)
    assert film.soaked_g_m2 == pytest.approx(share * free_g_m2)
    assert film.water_g_m2 + film.soaked_g_m2 == pytest.approx(on(gloss, Support.SEALED).water_g_m2, rel=1e-12)


def test_that_a_coat_sets_the_sooner_the_more_its_support_takes_up(gloss: DataSheet) -> None:
    times = []
    for support in (Support.PAPER, Support.CANVAS, Support.PANEL, Support.SEALED):
        film, _ = advance(on(gloss, support), ROOM, 4 * 3600.0)
        set_s = film.reached_s(Stage.SET_TO_TOUCH)
        assert set_s is not None
        times.append(set_s)
    assert all(sooner < later for sooner, later in pairwise(times))


def test_that_suction_ends_when_the_polymer_packs(gloss: DataSheet) -> None:
    # 63 of 90 µm are polymer, which packs at 63/0.74 = 85.1 µm: 4.9 µm of water are over it, and paper would take 8.0
    stiff = replace(gloss, volume_solids=0.7, dry_um=63.0)
    assert on(stiff, Support.PAPER).soaked_g_m2 == pytest.approx(0.998 * (90.0 - 63.0 / 0.74))


def test_that_an_upper_coat_does_not_meet_the_support(gloss: DataSheet) -> None:
    below, _ = advance(on(gloss, Support.PAPER), ROOM, 48 * 3600.0)
    assert on(gloss, Support.PAPER, below).soaked_g_m2 == 0.0


@pytest.mark.parametrize(
    ("words", "support"),
    [
        ("canvas", Support.SEALED),
        ("paper on panel", Support.SEALED),
        ("", Support.SEALED),
        ("bare", Support.SEALED),
        ("raw silk", Support.SEALED),
        ("Raw canvas, 40 cm", Support.CANVAS),
        ("UNPRIMED LINEN", Support.CANVAS),
        ("unsized cotton on board", Support.CANVAS),
        ("bare panel", Support.PANEL),
        ("plywood, unsealed", Support.PANEL),
        ("bare paper on panel", Support.PAPER),
        ("painted raw canvas", Support.SEALED),
        ("raw linen, sized", Support.SEALED),
        ("panel, not bare", Support.SEALED),
        ("strawboard", Support.SEALED),
        ("rohe Leinwand, 40 cm", Support.CANVAS),
        ("Sperrholz, ungrundiert", Support.PANEL),
        ("rohes Papier auf Holztafel", Support.PAPER),
        ("rohe Leinwand, geleimt", Support.SEALED),
        ("grundierte Tafel, nicht roh", Support.SEALED),
        ("Leinwand", Support.SEALED),
    ],
)
def test_that_only_what_is_called_bare_absorbs(words: str, support: Support) -> None:
    assert support_of(words) is support


@pytest.mark.parametrize("support", list(Support))
def test_that_a_support_by_its_own_name_is_itself(support: Support) -> None:
    assert support_of(support.value) is support
