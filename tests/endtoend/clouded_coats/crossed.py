"""Moderate cases: the true cause is plain but not glaring, and another stands beside it with evidence of its own."""

from __future__ import annotations

from dataclasses import replace

from .case import Case
from .early_and_damp import ALL, OWN, PATCHES, POWDER, below, top
from .making import NO_AIR, PAINT, case
from .rooms import cool, damp, day, fan, level, warm
from .sheets import own_sheet

GLOSS, THICK, ISO, SATIN = "gloss-waterborne", "gloss-waterborne-thick", "isolation-waterborne", "satin-waterborne"
WAITED = below(ISO, 50.0, amount="")
AIR_LOG = replace(NO_AIR, air_column=True, every_s=60.0)


def _shelf(made: Case) -> Case:
    """Return the case with her own sheet beside it where a coat is of that sheet."""
    return replace(made, own_sheets={OWN: own_sheet()}) if any(coat.sheet == OWN for coat in made.coats) else made


def crossed() -> list[Case]:
    """Return the moderate cases."""
    return [_shelf(each) for each in (*_too_soon(), *_weather(), *_laying(), *_leaving())]


def _too_soon() -> list[Case]:
    return [
        case(
            "crossed-sealed-thick",
            "sealed-in-water",
            "laid a third heavy too, but over a coat two hours old that needed most of the night in a room this cool",
            day(17.0, 68.0, laid_at=19.0),
            [PAINT, below(GLOSS, 2.0, times=1.2), top(GLOSS, PATCHES, times=1.35)],
            hour=19.0,
        ),
        case(
            "crossed-sealed-fan",
            "sealed-in-water",
            "a fan ran for a few minutes once the top was dry, which is late; the wait of two hours was the fault",
            fan(day(17.5, 69.0, laid_at=19.0), 3.5, 3.8, 0.8),
            [PAINT, below(THICK, 2.5), top(GLOSS, ALL, thinned_pct=10)],
            hour=19.0,
            traces=False,
        ),
        case(
            "crossed-sealed-satin",
            "sealed-in-water",
            "milky in patches, not dull: of two satin coats the first was an hour and a half old",
            day(18.0, 65.0),
            [PAINT, below(ISO, 60.0), below(SATIN, 1.5), top(SATIN, PATCHES)],
        ),
    ]


def _weather() -> list[Case]:
    rainy = damp(day(20.0, 78.0), -2.0, 20.0, 86.0)
    frosty = cool(day(13.0, 68.0, laid_at=22.0), 0.05, 8.0, 6.0, 0.15)
    return [
        case(
            "crossed-damp-thick",
            "damp-air",
            "a fifth heavy, but the air of 86 % held the water in the film for a whole day",
            rainy,
            [PAINT, below(ISO, 72.0, amount=""), top(GLOSS, ALL, times=1.2)],
            traces=False,
        ),
        case(
            "crossed-damp-thinned",
            "damp-air",
            "a tenth of water does little; 87 % all day does much",
            day(23.0, 87.0, swing_pct=1.0),
            [PAINT, below(ISO, 72.0, amount=""), top(ISO, ALL, thinned_pct=10)],
            traces=False,
        ),
        case(
            "crossed-cold-damp",
            "below-mfft",
            "74 % was damp but allowed; a powdery film at 6 °C is one that never knitted",
            replace(frosty, humidity_pct=level(frosty.humidity_pct, 0.1, 8.0, 74.0)),
            [PAINT, below(ISO, 60.0), top(GLOSS, POWDER)],
            hour=22.0,
            traces=False,
        ),
        case(
            "crossed-cold-thick",
            "below-mfft",
            "a little heavy, and three degrees under what the sheet needs to form a film",
            day(7.0, 60.0, swing_K=0.4),
            [PAINT, below(ISO, 96.0, amount=""), top(GLOSS, POWDER, times=1.35)],
            traces=False,
        ),
        case(
            "crossed-dew-damp",
            "condensation",
            "damp at 78 %, but the piece came from a cold van: its face was under the dew point for an hour",
            replace(
                day(21.0, 78.0, swing_pct=0.5),
                surface_C=[(0, 8.0), (0.5, 12.0), (1.0, 15.5), (1.5, 17.5), (2.5, 19.5), (4.0, 20.7)],
            ),
            [PAINT, below(ISO, 72.0, amount=""), top(GLOSS, PATCHES)],
            traces=False,
        ),
    ]


def _laying() -> list[Case]:
    return [
        case(
            "crossed-thick-damp",
            "too-thick",
            "damp for an hour, but two and a half times the film stays milky for its own sake",
            damp(day(20.0, 58.0), 4.0, 5.0, 76.0),
            [PAINT, WAITED, top(GLOSS, PATCHES, times=2.5, amount="grams", seen_h=96.0)],
            traces=False,
        ),
        case(
            "crossed-thick-soon",
            "too-thick",
            "laid after the label's wait, in a fair room; poured at almost three times the sheet",
            day(22.0, 50.0),
            [PAINT, below(ISO, 9.0), top(THICK, PATCHES, times=2.8, amount="volume_mL", seen_h=120.0)],
        ),
        case(
            "crossed-thinned-cool",
            "thinned",
            "16 °C is allowed; two fifths of water is not",
            day(16.5, 60.0),
            [PAINT, below(ISO, 60.0), top(GLOSS, POWDER, thinned_pct=40)],
        ),
        case(
            "crossed-thinned-fan",
            "thinned",
            "a fan after the film was dry; a third of water before",
            fan(day(21.0, 48.0), 4.0, 4.5, 1.0),
            [PAINT, WAITED, top(OWN, PATCHES, thinned_pct=35)],
            traces=False,
        ),
        case(
            "crossed-matting-thick",
            "matting-build-up",
            "a little heavy, but dull only in the darks: three satin coats lie over each other",
            day(21.0, 60.0),
            [
                replace(PAINT, at_h=-300.0),
                below(SATIN, 60.0, amount=""),
                below(SATIN, 30.0, amount=""),
                top(SATIN, "dull in darks", times=1.3, seen_h=60.0),
            ],
        ),
    ]


def _leaving() -> list[Case]:
    dry = damp(warm(day(21.0, 40.0), 0.1, 2.5, 27.0, 0.3), 0.1, 2.5, 28.0, 0.3)
    return [
        case(
            "crossed-skinned-thick",
            "skinned",
            "a third heavy, but the fan at 1.3 m/s was on from the first minute until the film was closed",
            fan(day(22.0, 40.0), 0.02, 2.0, 1.3),
            [PAINT, WAITED, top(GLOSS, PATCHES, times=1.3)],
            logger=AIR_LOG,
            traces=False,
        ),
        case(
            "crossed-skinned-thinned",
            "skinned",
            "a tenth of water is nothing beside a fan heater over the wet film",
            fan(dry, 0.1, 2.5, 0.7),
            [PAINT, WAITED, top(THICK, PATCHES, thinned_pct=10)],
            logger=AIR_LOG,
            traces=False,
        ),
        case(
            "crossed-touched-damp",
            "touched",
            "72 % is no reason; a cover three minutes after laying is",
            day(20.0, 71.0),
            [PAINT, below(ISO, 72.0, amount=""), top(GLOSS, PATCHES, covered_h=0.05)],
        ),
        case(
            "crossed-touched-thick",
            "touched",
            "a third heavy, which only kept it soft for the cover that came after two minutes",
            day(21.0, 50.0),
            [PAINT, WAITED, top(ISO, PATCHES, covered_h=1 / 30, times=1.35)],
        ),
        case(
            "crossed-look-cool",
            "still-clearing",
            "seen after an hour and a half at 17 °C: the sheet's time is for a warmer room",
            day(17.0, 62.0),
            [PAINT, below(ISO, 60.0, amount=""), top(GLOSS, ALL, seen_h=1.5)],
            traces=False,
        ),
        case(
            "crossed-look-thick",
            "still-clearing",
            "a third heavy and looked at before its sheet says it is clear",
            day(20.5, 55.0),
            [PAINT, WAITED, top(THICK, ALL, times=1.3, seen_h=2.5)],
            traces=False,
        ),
        case(
            "crossed-unknown",
            "unknown",
            "61 %, a tenth heavy, one satin coat, a walk past the rack: none of them clouds a coat",
            fan(day(19.0, 61.0), 0.1, 0.15, 0.25),
            [PAINT, below(ISO, 30.0), top(SATIN, PATCHES, times=1.1, thinned_pct=5)],
            traces=False,
        ),
    ]
