"""One coat in one room, told beforehand: what `predict` answers."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

import numpy as np

from studiowatch.coats import remarks
from studiowatch.coats.anchoring import anchor
from studiowatch.coats.belief import PRIOR
from studiowatch.coats.data_sheet import DataSheet, Kind
from studiowatch.coats.exposure import air_at_film
from studiowatch.coats.film import Film, advance, advance_through, lay
from studiowatch.coats.free_water import balance, steady
from studiowatch.coats.readiness import Ready, outlook, ready_times
from studiowatch.coats.stages import Orientation, Stage
from studiowatch.coats.standing import Standing, standing_on
from studiowatch.coats.support import Support
from studiowatch.coats.waterborne import Product
from studiowatch.coats.weighing import weighing_gain
from studiowatch.physics.air import Air
from studiowatch.physics.constants import ZERO_CELSIUS_K
from studiowatch.physics.ranges import Array, OutOfRange, check
from studiowatch.speech.units import chosen
from studiowatch.speech.words import mark, say

Room = Air | Sequence[tuple[float, Air]]
"""The same air throughout, or (seconds since laying, air from then on) in order of time."""

DRAWS = 256  # draws of one prediction
HORIZON_H = 96.0  # h
HORIZON_RANGE_H = (0.1, 8760.0)  # h


@dataclass(frozen=True, slots=True, kw_only=True)
class FilmFigures:
    """The film itself, nominal.

    Attributes
    ----------
    constant_rate_g_m2_h, constant_rate_temperature_C : float or None
        Water leaving a fresh film in the first air, g/(m² h), and its temperature, °C; None for paint.
    chance_below_mfft : float or None
        Share of the draws too cold to form at some time from packing to clear, 0-1; None where that is not known.
    initial_water_g_m2 : float
        Water in the film as laid, less what its support took up, g/m²; solvent, if the coat is solvent-borne.
    """

    constant_rate_g_m2_h: float | None
    constant_rate_temperature_C: float | None
    chance_below_mfft: float | None
    initial_water_g_m2: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Prediction:
    """Stage times of one coat in a given room, s since laying; `notes` are sentences for people."""

    sheet: str
    kappa: float
    extrapolated: bool
    stages: Mapping[Stage, Ready]
    film: FilmFigures
    notes: tuple[str, ...]


def predict(
    sheet: DataSheet,
    *,
    wet_um: float,
    side_m: float,
    room: Room,
    orientation: Orientation = Orientation.FACE_UP,
    thinned_pct: float = 0.0,
    covered: bool = False,
    draws_n: int = DRAWS,
    seed: int = 0,
    measured: bool = False,
    horizon_h: float = HORIZON_H,
    support: Support = Support.SEALED,
) -> Prediction:
    """Return when one coat will reach its stages in `room`.

    Parameters
    ----------
    room
        One air, or a log from the laying on; each air holds until the next, and the last is carried on.
    draws_n, seed
        How many draws make the range, and which; 1 is the nominal run alone, 10 or more make a fair range.
    measured : bool
        Whether the grams or mL of the coat were measured.
    horizon_h : float
        How long after laying a stage is looked for, h.
    support : Support
        What the coat is laid on.

    Raises
    ------
    OutOfRange, ValueError
        One sentence each: a number out of range, a log out of order, no draws.
    """
    check(mark("horizon"), horizon_h, *HORIZON_RANGE_H, "h")
    standing = standing_on(PRIOR, draws_n, seed, measured=measured)
    tied = anchor(sheet, standing.particles.draws)
    log = _log(room, horizon_h)
    film = lay(
        sheet,
        tied,
        wet_um=wet_um,
        side_m=side_m,
        orientation=orientation,
        thinned_pct=thinned_pct,
        support=support,
    )
    fresh = film
    film, freezes = _dried(film, tuple(_spans(log, horizon_h * 3600.0)), covered=covered)
    used = [air for at_s, air in log if at_s < horizon_h * 3600.0]
    table = outlook(film, used[-1], horizon_s=0.0, covered=covered)
    extrapolated = any(map(remarks.is_outside_trust, used))
    return Prediction(
        sheet=sheet.name,
        kappa=tied.kappa,
        extrapolated=extrapolated,
        stages=ready_times(sheet, table, standing.weights(table)),
        film=_figures(fresh, film, used[0], covered=covered),
        notes=(
            *remarks.on_film(film),
            *((remarks.freezing(),) if freezes else ()),
            *((remarks.extrapolated(),) if extrapolated else ()),
            *remarks.on_support(fresh, support),
            *remarks.on_draws(draws_n),
            *remarks.on_log(log, horizon_h),
            *_weighing_note(standing, table),
        ),
    )


def _log(room: Room, horizon_h: float) -> Sequence[tuple[float, Air]]:
    """Return the room as a log that begins at the laying; times must be in order, and one within the horizon."""
    if isinstance(room, Air):
        return [(0.0, room)]
    if not room:
        raise OutOfRange(say("the room log holds no reading; it must hold at least one"))
    first_h = room[0][0] / 3600.0
    if first_h >= horizon_h:
        raise OutOfRange(
            say(
                "the room log begins {first} h after laying; allowed is under {horizon} h, the horizon",
                first=chosen().number(first_h, 1),
                horizon=chosen().plain(horizon_h),
            )
        )
    previous_s = -1.0
    for at_s, _ in room:
        check(mark("time in the room log"), at_s, 0.0, float("inf"), "s")
        if at_s <= previous_s:
            raise OutOfRange(
                say(
                    "the room log goes from {before} s to {time} s; times must rise",
                    before=chosen().plain(previous_s),
                    time=chosen().plain(at_s),
                )
            )
        previous_s = at_s
    return room


def _spans(log: Sequence[tuple[float, Air]], horizon_s: float) -> Iterator[tuple[Air, float]]:
    """Yield each air and how long it holds; the first holds from the laying on, the last to the horizon."""
    starts = [0.0, *(at_s for at_s, _ in log[1:])]
    ends = [*starts[1:], horizon_s]
    for (_, air), start_s, end_s in zip(log, starts, ends, strict=True):
        if start_s < horizon_s:
            yield air, min(end_s, horizon_s) - start_s


def _dried(film: Film, spans: Sequence[tuple[Air, float]], *, covered: bool) -> tuple[Film, bool]:
    """Return the film after `spans`, and whether its water would have frozen before it was dry to touch."""
    freezes, done = False, 0
    while done < len(spans) and film.reached_s(Stage.DRY_TO_TOUCH) is None:
        air, span_s = spans[done]
        freezes = freezes or _freezes(film, air, covered=covered)
        film, _ = advance(film, air, span_s, covered=covered)
        done += 1
    film, _ = advance_through(film, spans[done:], covered=covered)
    return film, freezes


def _figures(fresh: Film, film: Film, air: Air, *, covered: bool) -> FilmFigures:
    rate_g_m2_h = temperature_C = None
    product = fresh.anchor.product
    if isinstance(product, Product):
        plate = air_at_film(air, product.draws, covered=covered, side_m=fresh.layer.side_m, face=fresh.layer.face)
        flux, film_K = steady(plate, product.kappa, product.draws)
        rate_g_m2_h, temperature_C = 3.6e6 * float(flux[0]), float(film_K[0]) - ZERO_CELSIUS_K
    return FilmFigures(
        constant_rate_g_m2_h=rate_g_m2_h,
        constant_rate_temperature_C=temperature_C,
        chance_below_mfft=film.chance_below_mfft,
        initial_water_g_m2=fresh.water_g_m2,
    )


def _freezes(film: Film, air: Air, *, covered: bool) -> bool:
    """Return whether the water of the nominal run, while it is wet, would come to 0 °C or below in this air."""
    product = film.anchor.product
    if not isinstance(product, Product):
        return film.sheet.kind is Kind.PAINT and air.temperature_C <= 0.0
    plate = air_at_film(air, product.draws, covered=covered, side_m=film.layer.side_m, face=film.layer.face)
    at_K = np.full(len(product.draws), ZERO_CELSIUS_K)
    now = balance(plate, at_K, np.zeros(len(product.draws)), kappa=product.kappa, draws=product.draws)
    return float(now.warming(plate, at_K)[0]) <= 0.0


def _weighing_note(standing: Standing, table: Array) -> Iterator[str]:
    """Yield what knowing the amount would narrow, where that is worth a sentence."""
    gain = weighing_gain(standing, table, (), stage=Stage.DRY_TO_RECOAT)
    if gain is not None and gain.sentence:
        yield gain.sentence
