"""`predict`: stage times of one coat in a given room."""

from __future__ import annotations

import argparse
from collections.abc import Sequence

from studiowatch.cli import inputs
from studiowatch.cli.answers import DONE, WrongCall, print_document, wrong
from studiowatch.coats.film import NotModelled
from studiowatch.coats.prediction import Prediction, predict
from studiowatch.coats.readiness import Ready
from studiowatch.coats.stages import Orientation
from studiowatch.physics.air import Air
from studiowatch.physics.ranges import OutOfRange
from studiowatch.service.sheet_shelf import SheetShelf

HOUR_S = 3600.0
QUANTILES = ("p10", "p50", "p90", "nominal")
MOST_DRAWS = 100_000


def run(call: argparse.Namespace, shelf: SheetShelf) -> int:
    """Answer the call."""
    if not 1 <= call.draws <= MOST_DRAWS:
        wrong(f"--draws is {call.draws}; allowed is 1 to {MOST_DRAWS}.")
    if call.seed < 0:
        wrong(f"--seed is {call.seed}; allowed is 0 and up.")
    sheet = inputs.sheet(call.sheet, shelf)
    try:
        told = predict(
            sheet,
            wet_um=call.wet_um,
            side_m=call.side_m,
            room=_room(call),
            orientation=Orientation(call.orientation),
            draws_n=call.draws,
            seed=call.seed,
            horizon_h=call.horizon_h,
        )
    except (OutOfRange, NotModelled) as fault:
        raise WrongCall(str(fault)) from fault
    if call.json:
        print_document(document(told))
    else:
        _print_table(told)
    return DONE


def _room(call: argparse.Namespace) -> Air | Sequence[tuple[float, Air]]:
    if call.air is not None:
        return inputs.air(call.air)
    if call.laid is None:
        wrong("--room needs --laid: when the brush went down, as 2026-03-02T09:00:00Z.")
    laid_ms = inputs.moment_ms(call.laid)
    log = inputs.room_log(call.room, call.columns)
    airs = [
        (
            (reading.time_ms - laid_ms) / 1000,
            Air(
                temperature_C=reading.temperature_C,
                humidity_pct=reading.humidity_pct,
                air_speed_m_s=0.05 if reading.air_speed_m_s is None else reading.air_speed_m_s,
            ),
        )
        for reading in log.readings()
        if reading.temperature_C is not None and reading.humidity_pct is not None
    ]
    before = [(0.0, air) for at_s, air in airs if at_s <= 0.0][-1:]
    room = [*before, *((at_s, air) for at_s, air in airs if at_s > 0.0)]
    if not room:
        wrong(f"The room log {call.room} has no temperature with humidity at or after {call.laid}.")
    return room


def document(told: Prediction) -> dict[str, object]:
    """Return a prediction in the form that other programs read."""
    film = told.film
    return {
        "sheet": told.sheet,
        "kappa": round(told.kappa, 4),
        "extrapolated": told.extrapolated,
        "stages_h": {stage.value: _hours(ready) for stage, ready in told.stages.items()},
        "film": {
            "constant_rate_g_m2_h": film.constant_rate_g_m2_h,
            "constant_rate_temperature_C": film.constant_rate_temperature_C,
            "chance_below_mfft": film.chance_below_mfft,
            "initial_water_g_m2": film.initial_water_g_m2,
        },
        "notes": list(told.notes),
    }


def _hours(ready: Ready) -> dict[str, float | None] | None:
    seconds = (ready.p10_s, ready.p50_s, ready.p90_s, ready.nominal_s)
    if all(value is None for value in seconds):
        return None
    hours = (None if value is None else round(value / HOUR_S, 4) for value in seconds)
    return dict(zip(QUANTILES, hours, strict=True))


def _print_table(told: Prediction) -> None:
    print(f"{told.sheet}: hours after laying{', extrapolated' if told.extrapolated else ''}")
    print(f"{'':<16}{'likely from':>14}{'middle':>10}{'ready by':>10}")
    for stage, ready in told.stages.items():
        cells = [_cell(value) for value in (ready.p10_s, ready.p50_s, ready.p90_s)]
        print(f"{stage.value.replace('_', ' '):<16}{cells[0]:>14}{cells[1]:>10}{cells[2]:>10}")
    for note in told.notes:
        print(f"note: {note}")


def _cell(seconds: float | None) -> str:
    return "not reached" if seconds is None else f"{seconds / HOUR_S:.1f} h"
