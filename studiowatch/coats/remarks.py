"""What a prediction says in sentences: what to doubt in its times, and what to do about it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from studiowatch.coats.data_sheet import Kind
from studiowatch.coats.film import Film
from studiowatch.coats.solventborne import BLUSH_MARGIN_K
from studiowatch.coats.stages import Stage
from studiowatch.coats.support import Support, soaked_sentence
from studiowatch.coats.vapour import OVER_H, TEMPERATURE_C, solvent_laid_g, vapour_build_up
from studiowatch.physics.air import Air
from studiowatch.physics.constants import REFERENCE_TEMPERATURE_C
from studiowatch.speech.units import chosen
from studiowatch.speech.words import say

TRUSTED_TEMPERATURE_C = (10.0, 30.0)  # °C; outside it the times are extrapolated; assumption
TRUSTED_HUMIDITY_PCT = (30.0, 80.0)  # %; outside it the times are extrapolated; assumption
LONGEST_BRIDGE_S = 600.0  # s without a reading that pass without a note; assumption
THICK = 1.5  # times the sheet's film: beyond it the coat is called thick; assumption
LEAST_CHANCE = 0.01  # chance of a film too cold to form that is worth a sentence; assumption
SMALL_ROOM_M3 = 30.0  # m³, a spare room, for the vapour of a solvent-borne coat; assumption
SHUT_CHANGES_PER_H = 0.3  # air changes an hour with windows shut; common practice, no source
LEAST_DRAWS = 10  # nine beside the nominal run: on average a tenth lies below the lowest of nine, and above the highest


def freezing() -> str:
    """Return that the water of the film would freeze, of which the model knows nothing."""
    return say(
        "the water in the wet film would be at or below {freezing} and may freeze, which ruins the film; the model "
        "knows no ice, so these times do not hold: lay the coat in a warmer room",
        freezing=chosen().limit(0.0),
    )


def is_outside_trust(air: Air) -> bool:
    """Return whether the times in this air are extrapolated."""
    low_C, high_C = TRUSTED_TEMPERATURE_C
    low_pct, high_pct = TRUSTED_HUMIDITY_PCT
    return not (low_C <= air.temperature_C <= high_C and low_pct <= air.humidity_pct <= high_pct)


def extrapolated() -> str:
    """Return that the room leaves what the times hold for."""
    units = chosen()
    low_C, high_C = (units.degrees.from_celsius(one) for one in TRUSTED_TEMPERATURE_C)
    return say(
        "the room leaves {low} to {high} {degrees} or {dry} to {damp} % RH: the times are extrapolated",
        low=units.plain(low_C),
        high=units.plain(high_C),
        degrees=units.degrees.value,
        dry=units.plain(TRUSTED_HUMIDITY_PCT[0]),
        damp=units.plain(TRUSTED_HUMIDITY_PCT[1]),
    )


def on_film(film: Film) -> Iterator[str]:
    """Yield what is to be said of a coat that was dried to the horizon."""
    sheet = film.sheet
    if not film.anchor.agrees:
        yield film.anchor.sentence
    yield from sheet.assumed
    if film.dry_um > THICK * sheet.dry_um:
        yield say(
            "the coat is {times} times as thick as the sheet's ({film} dry, sheet {sheet}): it dries "
            "through much later",
            times=chosen().number(film.dry_um / sheet.dry_um, 1),
            film=chosen().film(film.dry_um),
            sheet=chosen().film(sheet.dry_um),
        )
    if sheet.kind is Kind.WATERBORNE:
        yield from _on_forming(film)
    if film.chance_of_blush >= LEAST_CHANCE:
        yield say(
            "the film may blush ({share} % of draws come within {margin} of the dew point while it is wet): wait for "
            "drier air, or warm the room before the solvent is opened; it does not mend",
            margin=chosen().difference_limit(BLUSH_MARGIN_K),
            share=chosen().number(100.0 * film.chance_of_blush),
        )
    if sheet.kind is Kind.SOLVENTBORNE:
        yield from _on_vapour(film)


def _on_forming(film: Film) -> Iterator[str]:
    chance = film.chance_below_mfft
    if chance is None:
        yield say(
            "mfft_C is not on the sheet, so whether the film may be too cold to form is not known: look for the "
            "minimum film-forming temperature on the product's sheet"
        )
    elif chance >= LEAST_CHANCE:
        yield say(
            "the film may be too cold to form ({share} % of draws fall below {least}): "
            "warm the room before you lay it; later warmth does not mend it",
            share=chosen().number(100.0 * chance),
            least=chosen().limit(film.sheet.mfft_C or 0.0),
        )


def _on_vapour(film: Film) -> Iterator[str]:
    """Yield to ventilate first, and what the coat's vapour would come to in a small room that is shut."""
    area_m2, touch_s = film.layer.side_m**2, film.reached_s(Stage.DRY_TO_TOUCH)
    solvent_g = solvent_laid_g(film.sheet, wet_um=film.wet_um, area_m2=area_m2, thinned_pct=film.thinned_pct)
    over_h = film.sheet.touch_dry_min / 60.0 if touch_s is None else touch_s / 3600.0
    film_C = REFERENCE_TEMPERATURE_C if film.film_C is None else film.film_C
    shut = vapour_build_up(
        solvent_g=solvent_g,
        over_h=_into(over_h, *OVER_H),
        room_m3=SMALL_ROOM_M3,
        changes_per_h=SHUT_CHANGES_PER_H,
        temperature_C=_into(film_C, *TEMPERATURE_C),
    )
    first, *others = shut.sentences
    yield first
    shut_room = say(
        "{grams} g of solvent in a room of {room} m³ with its windows shut.",
        grams=chosen().number(solvent_g, 1),
        room=chosen().plain(SMALL_ROOM_M3),
    )
    yield " ".join((shut_room, *others))


def _into(value: float, low: float, high: float) -> float:
    """Return the value, or the end of a range that it lies beyond: an order of size is told of any coat."""
    return min(max(value, low), high)


def on_support(fresh: Film, support: Support) -> Iterator[str]:
    """Yield what is taken to happen to a coat laid straight on a support that absorbs."""
    if fresh.soaked_g_m2 > 0.0:
        yield soaked_sentence(support, fresh.soaked_g_m2)


def on_draws(draws_n: int) -> Iterator[str]:
    """Yield that there are too few draws for a range, if there are."""
    if draws_n == 1:
        yield say("1 draw is the nominal run alone, so the times have no range")
    elif draws_n < LEAST_DRAWS:
        yield say(
            "{number} draws are too few for a range, which they only hint at: take {least} or more, or 1 for "
            "the nominal run alone",
            number=draws_n,
            least=LEAST_DRAWS,
        )


def on_log(log: Sequence[tuple[float, Air]], horizon_h: float) -> Iterator[str]:
    """Yield a sentence for each gap that was bridged with the air before it, and for a log that ends early."""
    times_s = [at_s for at_s, _ in log if at_s < horizon_h * 3600.0]
    for start_s, end_s in zip([0.0, *times_s], times_s, strict=False):
        if end_s - start_s > LONGEST_BRIDGE_S:
            yield say(
                "no reading for {minutes} min from {start} h after laying: the nearest air is taken to have held",
                minutes=round((end_s - start_s) / 60.0),
                start=chosen().number(start_s / 3600.0, 2),
            )
    if len(log) > 1 and len(times_s) == len(log):
        yield say(
            "the room log ends {end} h after laying: its last air is carried on",
            end=chosen().number(times_s[-1] / 3600.0, 1),
        )
