"""Colours and sizes held against published limits."""

from __future__ import annotations

from math import atan, degrees

import pytest

from studiowatch.ui.theme import LIGHT, NIGHT, Theme
from studiowatch.ui.widgets.room_band import FIGURE_PX

# W3C, Web Content Accessibility Guidelines 2.1, success criteria 1.4.3 (text 4.5:1, large text 3:1) and 1.4.11
# (marks 3:1); relative luminance and contrast ratio as its glossary defines them.
TEXT, LARGE_OR_MARK = 4.5, 3.0


def luminance(colour: str) -> float:
    channels = [int(colour[start : start + 2], 16) / 255 for start in (1, 3, 5)]
    linear = [one / 12.92 if one <= 0.03928 else ((one + 0.055) / 1.055) ** 2.4 for one in channels]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def contrast(one: str, other: str) -> float:
    light, dark = sorted((luminance(one), luminance(other)), reverse=True)
    return (light + 0.05) / (dark + 0.05)


def test_that_the_contrast_formula_is_the_published_one() -> None:
    assert contrast("#000000", "#ffffff") == pytest.approx(21.0)  # the glossary's own range is 1 to 21
    assert contrast("#777777", "#ffffff") == pytest.approx(4.48, abs=0.01)  # the known near miss of 4.5


@pytest.mark.parametrize("theme", [LIGHT, NIGHT], ids=lambda theme: theme.name)
@pytest.mark.parametrize("role", ["ink", "muted", "link", "act", "caution", "good"])
def test_that_text_can_be_read_on_cards_and_ground(theme: Theme, role: str) -> None:
    for behind in (theme.card, theme.ground):
        assert contrast(getattr(theme, role), behind) >= TEXT


@pytest.mark.parametrize("theme", [LIGHT, NIGHT], ids=lambda theme: theme.name)
@pytest.mark.parametrize("role", ["act", "caution", "good"])
def test_that_the_sentence_can_be_read_on_its_wash(theme: Theme, role: str) -> None:
    wash = getattr(theme, f"{role}_wash")
    for colour in (getattr(theme, role), theme.ink, theme.muted):
        assert contrast(colour, wash) >= TEXT


@pytest.mark.parametrize("theme", [LIGHT, NIGHT], ids=lambda theme: theme.name)
def test_that_a_primary_button_can_be_read(theme: Theme) -> None:
    assert contrast(theme.card, theme.link) >= TEXT


@pytest.mark.parametrize("theme", [LIGHT, NIGHT], ids=lambda theme: theme.name)
def test_that_the_marks_of_a_film_stand_out_from_it(theme: Theme) -> None:
    assert contrast(theme.film_wet_mark, theme.film_wet) >= LARGE_OR_MARK


def test_that_the_figures_are_large_enough_for_two_metres() -> None:
    # ISO 9241-303: character height of at least 16 minutes of arc (from memory).
    # Height of a digit in DejaVu Sans: 1493 of 2048 units of its em. A dot is 1/96 inch, Qt's logical dot at 100 %.
    height_m = FIGURE_PX * 1493 / 2048 / 96 * 0.0254
    assert degrees(atan(height_m / 2.0)) * 60 >= 16
