"""Coats of another making: other seeds and other stories, kept apart from those that the review was tried on."""

from __future__ import annotations

from dataclasses import replace

from .case import Case
from .early_and_damp import ALL, OWN, PATCHES, POWDER, below, top
from .making import NO_AIR, PAINT, case
from .room import Logger
from .rooms import cool, damp, day, fan, level
from .sheets import own_sheet

SEED = 2
GLOSS, ISO, MATT = "gloss-waterborne", "isolation-waterborne", "matt-waterborne"
FINE = Logger(every_s=10, noise_K=0.03, gaps_h=((2.0, 2.1),))


def held_out() -> list[Case]:
    """Return the coats that are told apart from the rest."""
    return [*_of_the_room(), *_of_the_hand()]


def _of_the_room() -> list[Case]:
    gusts = replace(day(22.0, 43.0), air_m_s=[(h / 20, 1.9 if h % 4 < 3 else 0.3) for h in range(45)] + [(2.4, 0.05)])
    cellar = day(14.5, 89.0, swing_K=0.2, swing_pct=0.5)
    laundry = level(day(15.0, 70.0).humidity_pct, 0.2, 4.0, 100.0, 0.15)
    return [
        case(
            "held-gusts",
            "skinned",
            "gusts from an open door, one after the other, for the two hours in which the film closed",
            gusts,
            [PAINT, below(ISO, 40.0), top(GLOSS, PATCHES)],
            logger=FINE,
            traces=False,
            seed=SEED,
        ),
        case(
            "held-cellar",
            "damp-air",
            "a cellar: 89 % from morning to morning, cool but warm enough for the film",
            cellar,
            [replace(PAINT, at_h=-200.0), below(ISO, 120.0, amount=""), top(GLOSS, ALL)],
            traces=False,
            seed=SEED,
        ),
        case(
            "held-laundry",
            "condensation",
            "wet laundry and a shut door: water on the panes, and the air saturated for hours over the wet coat",
            replace(day(15.0, 70.0), humidity_pct=laundry),
            [PAINT, below(ISO, 60.0, amount=""), top(GLOSS, ALL)],
            traces=False,
            seed=SEED,
        ),
        case(
            "held-porch",
            "below-mfft",
            "dried on a porch that fell from 9 to 3 °C through the evening",
            cool(day(8.5, 63.0, laid_at=17.0), 0.5, 14.0, 3.0, 2.0),
            [PAINT, below(ISO, 96.0, amount=""), top(OWN, POWDER)],
            hour=17.0,
            own_sheets={OWN: own_sheet(mfft_C=11)},
            traces=False,
            seed=SEED,
        ),
        case(
            "held-nothing",
            "unknown",
            "a fair room, twice a day's wait and a thin coat",
            damp(day(21.5, 49.0), 14.0, 15.0, 70.0),
            [PAINT, below(ISO, 55.0), top(GLOSS, ALL, times=0.9)],
            traces=False,
            seed=SEED,
        ),
    ]


def _of_the_hand() -> list[Case]:
    return [
        case(
            "held-three-in-a-day",
            "sealed-in-water",
            "three coats in one afternoon, two hours apart: neither of those below had let its water go",
            day(18.5, 64.0, laid_at=18.0),
            [PAINT, below(ISO, 4.0), below(GLOSS, 2.0), top(GLOSS, ALL)],
            hour=18.0,
            seed=SEED,
        ),
        case(
            "held-small-panel",
            "too-thick",
            "the whole of the little bottle on a small panel, stood upright before it was set",
            day(21.0, 52.0),
            [PAINT, below(ISO, 70.0), top(GLOSS, PATCHES, times=3.2, amount="volume_mL", seen_h=120.0)],
            size_cm=(15.0, 15.0),
            orientation="vertical",
            seed=SEED,
        ),
        case(
            "held-rinsed-brush",
            "thinned",
            "water by the glass, to make it run on a metre of canvas",
            fan(day(20.0, 55.0), 6.0, 6.3, 0.7),
            [PAINT, below(ISO, 30.0), top(GLOSS, PATCHES, thinned_pct=45)],
            size_cm=(100.0, 140.0),
            traces=False,
            seed=SEED,
        ),
        case(
            "held-matt-again",
            "matting-build-up",
            "matt over matt over matt, a day apart, and only the blacks look grey",
            day(20.0, 56.0),
            [
                replace(PAINT, at_h=-200.0),
                below(MATT, 56.0),
                below(MATT, 28.0),
                top(MATT, "dull in darks", seen_h=50.0),
            ],
            seed=SEED,
        ),
        case(
            "held-tent",
            "touched",
            "a tent of film over the piece as soon as the brush was down, against the cat",
            day(23.0, 47.0),
            [PAINT, below(ISO, 40.0), top(GLOSS, PATCHES, covered_h=0.03)],
            logger=replace(NO_AIR, air_column=True, zone_h=-3.5),
            seed=SEED,
        ),
        case(
            "held-impatient",
            "still-clearing",
            "photographed for a message forty minutes after laying",
            day(21.0, 53.0),
            [PAINT, below(ISO, 40.0), top(ISO, ALL, seen_h=0.65)],
            traces=False,
            seed=SEED,
        ),
    ]
