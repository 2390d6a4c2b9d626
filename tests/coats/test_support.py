from __future__ import annotations

import pytest

from studiowatch.coats.anchoring import anchor
from studiowatch.coats.data_sheet import DataSheet
from studiowatch.coats.film import Film, advance, lay
from studiowatch.coats.stages import Stage
from studiowatch.coats.support import SOAKED_SHARE, Support, support_of
from studiowatch.physics.air import Air

ROOM = Air(temperature_C=21.0, humidity_pct=50.0, air_speed_m_s=0.05)


def on(sheet: DataSheet, support: Support, over: Film | None = None) -> Film:
    return lay(sheet, anchor(sheet), wet_um=sheet.wet_um, side_m=0.4, support=support, over=over)


@pytest.mark.parametrize("support", list(Support))
def test_that_what_the_support_takes_up_is_missing_from_the_film(gloss: DataSheet, support: Support) -> None:
    film = on(gloss, support)
    assert film.water_g_m2 + film.soaked_g_m2 == pytest.approx(on(gloss, Support.SEALED).water_g_m2, rel=1e-12)
    assert film.soaked_g_m2 <= SOAKED_SHARE[support] * film.layer.wet_m[0] * 1e6


def test_that_a_coat_on_paper_sets_sooner(gloss: DataSheet) -> None:
    times = []
    for support in (Support.PAPER, Support.CANVAS, Support.PANEL, Support.SEALED):
        film, _ = advance(on(gloss, support), ROOM, 4 * 3600.0)
        set_s = film.reached_s(Stage.SET_TO_TOUCH)
        assert set_s is not None
        times.append(set_s)
    assert times == sorted(times)
    assert times[0] < times[-1]


def test_that_suction_ends_when_the_polymer_packs(gloss: DataSheet) -> None:
    thick = lay(gloss, anchor(gloss), wet_um=90.0, side_m=0.4, thinned_pct=0.0, support=Support.PAPER)
    assert thick.state.free[0] >= thick.layer.free_packed[0]  # type: ignore[union-attr]


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
