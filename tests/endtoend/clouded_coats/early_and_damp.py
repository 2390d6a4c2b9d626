"""Coats that clouded by water: sealed in below, damp air above, a dew on the film, a room too cold for it to knit."""

from __future__ import annotations

from dataclasses import replace

from .case import Case, Laid
from .making import NO_AIR, PAINT, case
from .room import Knots
from .rooms import cool, damp, day, fan, level
from .sheets import own_sheet

OWN = "bottle.toml"
ALL, PATCHES, POWDER = "milky all over", "milky in patches", "powdery"


def top(sheet: str = "gloss-waterborne", outcome: str = ALL, **more: float | str | None) -> Laid:
    """Return the reviewed coat, looked at a day later unless told otherwise."""
    return Laid(sheet=sheet, at_h=0.0, outcome=outcome, **{"seen_h": 26.0, "covered_h": 0.4, **more})  # type: ignore[arg-type]


def below(sheet: str, hours: float, **more: float | str) -> Laid:
    return Laid(sheet=sheet, at_h=-hours, **more)  # type: ignore[arg-type]


def sealed_in_water() -> list[Case]:
    why = "the next coat went on {} h after the one below, far from the label's wait, in a room at {} °C and {} % RH"
    rows = (  # coat below, wait h, °C, % RH, times the sheet below, look
        ("isolation-waterborne", 1.5, 16.0, 72.0, 1.0, PATCHES),
        ("isolation-waterborne", 2.0, 15.5, 73.0, 1.0, ALL),
        ("gloss-waterborne", 1.5, 17.0, 70.0, 1.2, ALL),
        ("gloss-waterborne-thick", 3.0, 17.0, 68.0, 1.0, PATCHES),
        ("gloss-waterborne", 2.0, 18.0, 66.0, 1.4, PATCHES),
        ("gloss-waterborne-thin", 1.0, 16.0, 74.0, 1.0, ALL),
        ("isolation-waterborne", 2.5, 15.0, 74.0, 1.3, ALL),
        ("gloss-waterborne-thick", 4.0, 16.5, 72.0, 1.2, ALL),
        ("gloss-waterborne", 1.0, 20.0, 58.0, 1.0, PATCHES),
        ("isolation-waterborne", 1.2, 19.0, 62.0, 1.2, PATCHES),
    )
    cases = [
        case(
            f"sealed-{index}",
            "sealed-in-water",
            why.format(wait, warm_C, humid),
            day(warm_C, humid, swing_K=0.6, laid_at=20.0),
            [PAINT, below(sheet, wait, times=times), top(outcome=look)],
            hour=20.0,
        )
        for index, (sheet, wait, warm_C, humid, times, look) in enumerate(rows)
    ]
    poured = [below("paint-poured", 26.0, amount=""), top("isolation-waterborne", PATCHES)]
    own = [PAINT, below(OWN, 2.0, times=1.2), top(OWN, ALL, thinned_pct=5)]
    return [
        *cases,
        case(
            "sealed-paint",
            "sealed-in-water",
            "an isolation coat a day after a poured layer of paint, which needs a week: its water was still there",
            day(18.5, 62.0),
            poured,
        ),
        case(
            "sealed-own",
            "sealed-in-water",
            "two hours after a coat whose sheet asks for six, on a cool damp evening",
            day(16.5, 71.0, laid_at=20.0),
            own,
            hour=20.0,
            own_sheets={OWN: own_sheet(recoat_h=6.0)},
        ),
    ]


def damp_air() -> list[Case]:
    why = "the air stood at {} % RH while the film dried, above what any sheet allows; warm enough, and no dew"
    rows = (  # °C, % RH, sheet, look
        (21.0, 88.0, "gloss-waterborne", ALL),
        (23.0, 90.0, "isolation-waterborne", ALL),
        (19.0, 87.0, "gloss-waterborne-thick", ALL),
        (24.0, 86.0, "gloss-waterborne-thin", ALL),
        (22.0, 91.0, "satin-waterborne", ALL),
        (20.0, 85.5, "gloss-waterborne", ALL),
        (25.0, 89.0, "gloss-waterborne", PATCHES),
    )
    cases = [
        case(
            f"damp-{index}",
            "damp-air",
            why.format(humid),
            day(warm_C, humid, swing_pct=1.0, swing_K=0.3),
            [PAINT, below("isolation-waterborne", 72.0, amount=""), top(sheet, look)],
            traces=False,
        )
        for index, (warm_C, humid, sheet, look) in enumerate(rows)
    ]
    rain = damp(day(21.0, 66.0), 0.1, 14.0, 88.0, 0.2)
    return [
        *cases,
        case(
            "damp-rain",
            "damp-air",
            "a fair room until the window was opened to the rain: near 88 % from minutes after laying, all afternoon",
            rain,
            [PAINT, below("isolation-waterborne", 48.0), top()],
            traces=False,
        ),
        case(
            "damp-own",
            "damp-air",
            "her sheet allows 65 % and the room stood at 84 % until the next morning",
            fan(day(22.0, 84.0, swing_pct=1.0), 8.0, 8.2, 0.6),
            [PAINT, below("isolation-waterborne", 72.0), top(OWN, times=1.2)],
            own_sheets={OWN: own_sheet(max_humidity_pct=65)},
            traces=False,
            logger=NO_AIR,
        ),
    ]


def below_film_forming() -> list[Case]:
    why = "the room was at {} °C while the film closed, under its film-forming temperature"
    rows = (  # °C, % RH, sheet, look
        (5.0, 60.0, "gloss-waterborne", POWDER),
        (6.0, 66.0, "isolation-waterborne", POWDER),
        (7.0, 58.0, "gloss-waterborne", ALL),
        (7.5, 62.0, "satin-waterborne", POWDER),
        (4.0, 70.0, "gloss-waterborne-thick", ALL),
        (8.0, 55.0, "gloss-waterborne-thin", POWDER),
    )
    cases = [
        case(
            f"cold-{index}",
            "below-mfft",
            why.format(cold_C),
            day(cold_C, humid, swing_K=0.5, laid_at=22.0),
            [PAINT, below("isolation-waterborne", 72.0, amount=""), top(sheet, look)],
            hour=22.0,
            traces=False,
        )
        for index, (cold_C, humid, sheet, look) in enumerate(rows)
    ]
    night = cool(day(16.0, 56.0, laid_at=21.0), 0.4, 9.5, 4.5, 0.3)
    stiff = {OWN: own_sheet(mfft_C=16, apply_C=[19, 30])}
    return [
        *cases,
        case(
            "cold-night",
            "below-mfft",
            "the heating went off and the frosty window stayed open as the coat was laid: under 5 °C within the hour",
            replace(night, humidity_pct=level(night.humidity_pct, 0.4, 9.5, 66.0, 0.3)),
            [PAINT, below("isolation-waterborne", 30.0), top("gloss-waterborne-thick", POWDER)],
            hour=21.0,
            traces=False,
        ),
        case(
            "cold-own",
            "below-mfft",
            "her bottle asks for 16 °C to form a film, and the room had 12",
            fan(day(12.0, 57.0, swing_K=0.4), 9.0, 9.2, 0.5),
            [PAINT, below("isolation-waterborne", 72.0, amount=""), top(OWN, POWDER)],
            own_sheets=stiff,
            traces=False,
        ),
        case(
            "cold-blind",
            "below-mfft",
            "a garage at 6 °C all night; no air speed was logged",
            day(6.0, 68.0, swing_K=1.0),
            [PAINT, below("isolation-waterborne", 96.0, amount=""), top(outcome=POWDER, times=1.2)],
            logger=NO_AIR,
            traces=False,
        ),
    ]


def _thaws(cold_C: float, warm_C: float, half_h: float) -> Knots:
    """Return a cold piece that comes to the room's warmth, halving what is missing every `half_h`."""
    halves = (0, 0.5, 1, 1.5, 2, 3, 4, 6)
    return [(half_h * n, warm_C - (warm_C - cold_C) * 0.5**n) for n in halves]


def condensation() -> list[Case]:
    why = "the piece came in at {} °C into a room whose dew point was well above that: dew on the wet film"
    rows = (  # piece °C, room °C, % RH, half h, sheet, look
        (5.0, 20.0, 72.0, 0.5, "gloss-waterborne", ALL),
        (7.0, 22.0, 70.0, 0.6, "isolation-waterborne", PATCHES),
        (10.0, 24.0, 74.0, 0.5, "gloss-waterborne", ALL),
        (8.0, 21.0, 68.0, 0.7, "satin-waterborne", ALL),
        (11.0, 23.0, 73.0, 0.6, "gloss-solventborne", ALL),
    )
    carried = [
        case(
            f"dew-carried-{index}",
            "condensation",
            why.format(cold_C),
            replace(day(warm_C, humid, swing_pct=0.5, swing_K=0.3), surface_C=_thaws(cold_C, warm_C, half_h)),
            [PAINT, below("isolation-waterborne", 72.0, amount=""), top(sheet, look)],
            traces=False,
        )
        for index, (cold_C, warm_C, humid, half_h, sheet, look) in enumerate(rows)
    ]
    steam = replace(day(17.0, 62.0), humidity_pct=level(day(17.0, 62.0).humidity_pct, 0.3, 3.0, 99.8, 0.2))
    evening = cool(day(19.0, 76.0, laid_at=20.0, swing_pct=0.5, swing_K=0.3), 0.8, 6.0, 14.0, 0.7)
    evening = replace(evening, humidity_pct=level(evening.humidity_pct, 0.8, 6.0, 100.0, 0.7))
    return [
        *carried,
        *(
            case(
                f"dew-steam-{index}",
                "condensation",
                "steam from the kitchen stood in a fair room over the wet coat: the air was saturated for hours",
                steam,
                [PAINT, below("isolation-waterborne", 48.0), top(sheet, look)],
                traces=False,
            )
            for index, (sheet, look) in enumerate((("gloss-waterborne", ALL), ("gloss-solventborne", ALL)))
        ),
        *(
            case(
                f"dew-evening-{index}",
                "condensation",
                "the room cooled under its dew point within an hour of laying, heating off, and stayed there",
                evening,
                [PAINT, below("isolation-waterborne", 48.0), top(sheet, ALL)],
                hour=20.0,
                traces=False,
            )
            for index, sheet in enumerate(("gloss-waterborne", "gloss-waterborne-thick"))
        ),
    ]
