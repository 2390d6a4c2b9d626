"""Coats that clouded by how they were laid and left, by what was looked at too soon, or by nothing in the log."""

from __future__ import annotations

from dataclasses import replace

from .case import Case
from .early_and_damp import ALL, OWN, PATCHES, POWDER, below, top
from .making import NO_AIR, PAINT, case
from .rooms import damp, day, fan, warm
from .sheets import own_sheet

DARKS = "dull in darks"
FAIR = ((21.0, 50.0), (22.5, 46.0), (20.0, 54.0), (23.0, 50.0), (19.5, 52.0), (24.0, 44.0), (20.5, 57.0), (22.0, 41.0))
ISOLATION = below("isolation-waterborne", 50.0, amount="")


def skinned() -> list[Case]:
    fans = (  # on from h, to h, m/s, °C, % RH, sheet
        (0.1, 2.0, 1.2, 22.0, 42.0, "gloss-waterborne"),
        (0.05, 3.0, 0.9, 25.0, 35.0, "gloss-waterborne-thick"),
        (0.15, 1.5, 1.8, 21.0, 45.0, "isolation-waterborne"),
        (0.0, 4.0, 0.8, 27.0, 32.0, "gloss-waterborne-thick"),
        (0.1, 2.5, 2.2, 23.0, 50.0, "satin-waterborne"),
    )
    blown = [
        case(
            f"skinned-fan-{index}",
            "skinned",
            f"a fan at {speed} m/s over the wet film from minutes after laying; all else was fair",
            fan(day(warm_C, humid), on, off, speed),
            [PAINT, ISOLATION, top(sheet, PATCHES, times=1.2)],
            logger=replace(NO_AIR, air_column=True, every_s=60.0),
        )
        for index, (on, off, speed, warm_C, humid, sheet) in enumerate(fans)
    ]
    heats = ((34.0, 18.0, 0.4), (36.0, 15.0, 0.3), (33.0, 20.0, 0.6), (38.0, 17.0, 0.15))  # °C, % RH, m/s
    heated = [
        case(
            f"skinned-heater-{index}",
            "skinned",
            f"a fan heater at the rack: {hot_C} °C and {dry} % RH over the wet film, with moving air",
            fan(damp(warm(day(20.0, 45.0), 0.1, 3.0, hot_C, 0.2), 0.1, 3.0, dry, 0.2), 0.1, 3.0, speed),
            [PAINT, ISOLATION, top("gloss-waterborne-thick" if index % 2 else "gloss-waterborne", PATCHES, times=1.1)],
            logger=NO_AIR if index == 3 else replace(NO_AIR, air_column=True),
        )
        for index, (hot_C, dry, speed) in enumerate(heats)
    ]
    return [*blown, *heated]


def too_thick() -> list[Case]:
    rows = (  # times the sheet, sheet, amount, look, orientation
        (2.2, "gloss-waterborne", "volume_mL", PATCHES, ""),
        (2.5, "gloss-waterborne", "grams", ALL, ""),
        (3.0, "isolation-waterborne", "volume_mL", PATCHES, ""),
        (2.4, "gloss-waterborne-thick", "wet_um", PATCHES, "face-up"),
        (2.8, "gloss-waterborne-thin", "volume_mL", ALL, ""),
        (2.6, "satin-waterborne", "grams", PATCHES, "vertical"),
        (3.0, "gloss-waterborne-thick", "volume_mL", ALL, ""),
        (2.3, OWN, "volume_mL", PATCHES, ""),
        (2.6, "gloss-waterborne", "wet_um", PATCHES, "vertical"),
    )
    return [
        case(
            f"thick-{index}",
            "too-thick",
            f"{times} times the film that the sheet names, in a fair room, after a long wait",
            day(*FAIR[index % len(FAIR)]),
            [PAINT, ISOLATION, top(sheet, look, times=times, amount=amount, seen_h=96.0)],
            orientation=lies,
            own_sheets={OWN: own_sheet()} if sheet == OWN else {},
        )
        for index, (times, sheet, amount, look, lies) in enumerate(rows)
    ]


def thinned() -> list[Case]:
    rows = (  # %, sheet, look, times
        (35, "gloss-waterborne", PATCHES, 1.0),
        (40, "isolation-waterborne", POWDER, 1.0),
        (50, "gloss-waterborne-thick", ALL, 1.0),
        (45, "satin-waterborne", PATCHES, 1.2),
        (50, "gloss-waterborne", POWDER, 1.1),
        (40, OWN, ALL, 1.0),
        (35, "gloss-waterborne-thin", PATCHES, 1.2),
    )
    return [
        case(
            f"thinned-{index}",
            "thinned",
            f"{percent} % water was stirred in, far past what a binder bears; room, wait and thickness were fair",
            day(*FAIR[index % len(FAIR)]),
            [PAINT, ISOLATION, top(sheet, look, thinned_pct=percent, times=times, seen_h=48.0)],
            own_sheets={OWN: own_sheet()} if sheet == OWN else {},
        )
        for index, (percent, sheet, look, times) in enumerate(rows)
    ]


def matting() -> list[Case]:
    satin, matt, solvent = "satin-waterborne", "matt-waterborne", "satin-solventborne"
    stacks = (
        (satin, satin, satin),
        (satin, satin, matt),
        (matt, matt, matt),
        (satin, satin, satin, satin),
        (solvent, solvent, solvent),
        (matt, matt, satin),
        (satin, matt, matt, matt),
    )
    return [
        case(
            f"matting-{index}",
            "matting-build-up",
            f"{len(stack)} coats with matting agent on top of each other; the darks went dull, the room was fair",
            day(*FAIR[index % len(FAIR)]),
            [
                replace(PAINT, at_h=-300.0),
                *(below(sheet, 36.0 * (len(stack) - 1 - n), amount="") for n, sheet in enumerate(stack[:-1])),
                top(stack[-1], DARKS, seen_h=72.0),
            ],
        )
        for index, stack in enumerate(stacks)
    ]


def touched() -> list[Case]:
    rows = (  # minutes, sheet, times
        (2.0, "gloss-waterborne", 1.0),
        (3.0, "isolation-waterborne", 1.2),
        (1.0, "gloss-waterborne-thick", 1.0),
        (4.0, "satin-waterborne", 1.1),
        (5.0, "gloss-waterborne", 1.3),
        (2.0, "gloss-solventborne", 1.0),
        (3.0, OWN, 1.0),
    )
    return [
        case(
            f"touched-{index}",
            "touched",
            f"the cover went over the piece {minutes:g} minutes after laying, on a film as wet as it was poured",
            replace(day(*FAIR[index % len(FAIR)]), covered_from_h=minutes / 60 if index % 2 else None),
            [PAINT, ISOLATION, top(sheet, PATCHES, covered_h=minutes / 60, times=times)],
            own_sheets={OWN: own_sheet()} if sheet == OWN else {},
        )
        for index, (minutes, sheet, times) in enumerate(rows)
    ]


def still_clearing() -> list[Case]:
    rows = (  # looked at h, sheet, room
        (0.5, "gloss-waterborne", (22.0, 50.0)),
        (0.75, "isolation-waterborne", (21.0, 52.0)),
        (1.5, "gloss-waterborne-thick", (22.0, 48.0)),
        (0.4, "gloss-waterborne-thin", (20.0, 50.0)),
        (0.9, "satin-waterborne", (20.0, 55.0)),
        (1.4, "gloss-waterborne", (18.0, 58.0)),
        (1.0, OWN, (21.0, 50.0)),
    )
    return [
        case(
            f"early-look-{index}",
            "still-clearing",
            f"looked at after {seen:g} h in a fair room, while a coat like this is milky as it should be",
            day(*room),
            [PAINT, ISOLATION, top(sheet, ALL, seen_h=seen)],
            own_sheets={OWN: own_sheet()} if sheet == OWN else {},
            traces=False,
            to_h=seen + 1.0 if index % 2 else 12.0,
        )
        for index, (seen, sheet, room) in enumerate(rows)
    ]


def unknown() -> list[Case]:
    sheets = ("gloss-waterborne", "isolation-waterborne", "gloss-waterborne-thick", OWN, "gloss-waterborne-thin")
    rows = [(FAIR[n], sheets[n % len(sheets)], (ALL, PATCHES, "specks")[n % 3]) for n in range(8)]
    return [
        case(
            f"unknown-{index}",
            "unknown",
            "room, wait, thickness and handling were all as the sheet asks: the log does not know",
            day(*room),
            [PAINT, ISOLATION, top(sheet, look)],
            own_sheets={OWN: own_sheet()} if sheet == OWN else {},
        )
        for index, (room, sheet, look) in enumerate(rows)
    ]


def clear() -> list[Case]:
    """Return coats in fair rooms that came out clear, or of which nobody said anything."""
    sheets = ("gloss-waterborne", "isolation-waterborne", "gloss-waterborne-thick", "satin-waterborne", OWN)
    return [
        case(
            f"clear-{index}",
            "",
            "a fair room, a day's wait, the sheet's film",
            day(*FAIR[index % len(FAIR)], laid_at=9.0 + index % 5),
            [
                PAINT,
                ISOLATION,
                top(sheets[index % len(sheets)], "clear" if index % 2 else "", times=1.0 + index % 3 / 10),
            ],
            own_sheets={OWN: own_sheet()} if index % len(sheets) == 4 else {},
        )
        for index in range(24)
    ]
