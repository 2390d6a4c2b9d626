"""`predict`: stage times of one coat in a given room."""

from __future__ import annotations

import argparse
from collections.abc import Iterator, Sequence

from studiowatch.cli import explain, figures, inputs, recorded_words
from studiowatch.cli.answers import DONE, WrongCall, print_document, wrong
from studiowatch.cli.given_room import GivenRoom, room_of
from studiowatch.cli.hours import told as time_told
from studiowatch.cli.recorded_words import STRAIGHT_ON
from studiowatch.coats.anchoring import anchor
from studiowatch.coats.data_sheet import DataSheet, Kind
from studiowatch.coats.film import lay
from studiowatch.coats.prediction import Prediction, predict
from studiowatch.coats.readiness import Ready, ready_by_s
from studiowatch.coats.stages import Orientation, Stage
from studiowatch.coats.support import Support
from studiowatch.coats.terms import MomentTerms
from studiowatch.physics.ranges import OutOfRange
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.speech.units import chosen
from studiowatch.speech.words import say

HOUR_S = 3600.0
QUANTILES = ("p10", "p50", "p90", "nominal")
CELL_WIDTH = 14  # characters of a column of times, at least
MOST_DRAWS = 100_000
LARGEST_SEED = 2**32 - 1


def run(call: argparse.Namespace, shelf: SheetShelf) -> int:
    """Answer the call."""
    if not 1 <= call.draws <= MOST_DRAWS:
        wrong(say("--draws is {given}; allowed is 1 to {most}.", given=call.draws, most=MOST_DRAWS))
    if not 0 <= call.seed <= LARGEST_SEED:
        wrong(say("--seed is {given}; allowed is 0 to {most}.", given=call.seed, most=LARGEST_SEED))
    sheet, given = _sheet(call.sheet, shelf), room_of(call)
    try:
        told = predict(
            sheet,
            wet_um=call.wet_um,
            side_m=call.side_m,
            room=given.room,
            orientation=Orientation(call.orientation),
            thinned_pct=call.thinned_pct,
            support=Support(call.support),
            covered=call.covered,
            draws_n=call.draws,
            seed=call.seed,
            measured=call.measured,
            horizon_h=call.horizon_h,
        )
        moment = None if call.explain is None else _moment(call, sheet, given)
    except OutOfRange as fault:
        raise WrongCall(str(fault)) from fault
    notes = (*told.notes, *given.notes, *_recoat_note(sheet, told))
    if call.json:
        explained = {} if moment is None else {"explain": explain.document(moment)}
        print_document({**document(told, notes), **explained})
    else:
        _print_for_people(call, sheet, given.words, told)
        for line in (*(say("note: {note}", note=note) for note in notes), *_explained(moment)):
            print(line)
    return DONE


def _sheet(name: str, shelf: SheetShelf) -> DataSheet:
    try:
        return inputs.sheet(name, shelf)
    except UnicodeDecodeError as fault:
        wrong(
            say(
                "The data sheet {file} is not UTF-8 text (byte {place}); save it as UTF-8.",
                file=name,
                place=fault.start,
            )
        )


def _moment(call: argparse.Namespace, sheet: DataSheet, given: GivenRoom) -> MomentTerms:
    fresh = lay(
        sheet,
        anchor(sheet),
        wet_um=call.wet_um,
        side_m=call.side_m,
        orientation=Orientation(call.orientation),
        thinned_pct=call.thinned_pct,
        support=Support(call.support),
    )
    return explain.moment_at(fresh, given.room, call.explain, covered=call.covered)


def _recoat_note(sheet: DataSheet, told: Prediction) -> Iterator[str]:
    """Yield a sentence where the sheet's own recoat time is what the painter has to wait for."""
    ready = told.stages[Stage.DRY_TO_RECOAT]
    by_s = ready_by_s(sheet, ready)
    if ready.p90_s is not None and by_s is not None and by_s > ready.p90_s:
        yield say(
            "ready by {by} for the next coat: nine draws in ten are there after {drawn}, but it is never called ready "
            "before the sheet's own recoat time",
            by=time_told(by_s),
            drawn=time_told(ready.p90_s),
        )


def document(told: Prediction, notes: Sequence[str]) -> dict[str, object]:
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
        "notes": list(notes),
    }


def _hours(ready: Ready) -> dict[str, float | None] | None:
    seconds = (ready.p10_s, ready.p50_s, ready.p90_s, ready.nominal_s)
    if all(value is None for value in seconds):
        return None
    hours = (None if value is None else round(value / HOUR_S, 4) for value in seconds)
    return dict(zip(QUANTILES, hours, strict=True))


def _print_for_people(call: argparse.Namespace, sheet: DataSheet, room: str, told: Prediction) -> None:
    print(f"{sheet.title}: {_laid(call)}")
    print(say("Room: {air}", air=room))
    print(say("EXTRAPOLATED times after laying:") if told.extrapolated else say("Times after laying:"))
    print()
    heads = (say("one in ten"), say("half of them"), say("ready by"))
    rows = {"": heads} | {stage.word: _cells(sheet, stage, ready) for stage, ready in told.stages.items()}
    wide = max(CELL_WIDTH, 2 + max(len(cell) for cells in rows.values() for cell in cells))
    for name, cells in rows.items():
        print(f"{name:<16}{''.join(f'{cell:>{wide}}' for cell in cells)}")
    print()
    if sheet.kind is Kind.WATERBORNE:
        print(say("too cold to form: {chance}", chance=_chance(told.film.chance_below_mfft)))
    print(
        say(
            "ready by: nine in ten of the studios that fit what is known have got there, and no next coat before the "
            "sheet's own {recoat}",
            recoat=time_told(sheet.recoat_h * HOUR_S),
        )
    )


def _cells(sheet: DataSheet, stage: Stage, ready: Ready) -> tuple[str, str, str]:
    by_s = ready_by_s(sheet, ready) if stage is Stage.DRY_TO_RECOAT else ready.p90_s
    return _cell(ready.p10_s), _cell(ready.p50_s), _cell(by_s)


def _explained(moment: MomentTerms | None) -> Sequence[str]:
    return () if moment is None else ("", *explain.lines(moment))


def _laid(call: argparse.Namespace) -> str:
    parts = [
        say("{film} wet on {size}", film=figures.film(call.wet_um), size=figures.square(call.side_m)),
        recorded_words.told(Orientation(call.orientation)),
    ]
    if call.support != Support.SEALED:
        parts.append(say(STRAIGHT_ON[Support(call.support)]))
    if call.thinned_pct:
        parts.append(say("thinned by {share} %", share=chosen().plain(call.thinned_pct)))
    if call.covered:
        parts.append(say("under a mesh cover"))
    if call.measured:
        parts.append(say("measured"))
    return ", ".join(parts)


def _chance(chance: float | None) -> str:
    if chance is None:
        return say("not known, for the sheet names no minimum film-forming temperature")
    return say("{share} % of the draws", share=f"{100.0 * chance:.0f}")


def _cell(seconds: float | None) -> str:
    return say("not reached") if seconds is None else time_told(seconds)
