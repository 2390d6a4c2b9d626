"""One coat in one room, told beforehand: what `predict` answers."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from studiowatch.coats.anchoring import anchor
from studiowatch.coats.belief import PRIOR
from studiowatch.coats.data_sheet import DataSheet, Kind
from studiowatch.coats.exposure import air_at_film
from studiowatch.coats.film import Film, advance, lay
from studiowatch.coats.free_water import steady
from studiowatch.coats.readiness import Ready, outlook, ready_times
from studiowatch.coats.stages import Orientation, Stage
from studiowatch.coats.standing import Standing, standing_on
from studiowatch.coats.support import Support
from studiowatch.coats.vapour import solvent_laid_g, vapour_build_up
from studiowatch.coats.waterborne import Product
from studiowatch.coats.weighing import weighing_gain
from studiowatch.physics.air import Air
from studiowatch.physics.constants import REFERENCE_TEMPERATURE_C, ZERO_CELSIUS_K
from studiowatch.physics.ranges import Array, OutOfRange, check

Room = Air | Sequence[tuple[float, Air]]
"""The same air throughout, or (seconds since laying, air from then on) in order of time."""

TRUSTED_TEMPERATURE_C = (10.0, 30.0)  # °C; outside it the times are extrapolated; assumption
TRUSTED_HUMIDITY_PCT = (30.0, 80.0)  # %; outside it the times are extrapolated; assumption
LONGEST_BRIDGE_S = 600.0  # s without a reading that pass without a note; assumption
THICK = 1.5  # times the sheet's film: beyond it the coat is called thick; assumption
LEAST_CHANCE = 0.01  # chance of a film too cold to form that is worth a sentence; assumption
SMALL_ROOM_M3 = 30.0  # m³, a spare room, for the vapour of a solvent-borne coat; assumption
SHUT_CHANGES_PER_H = 0.3  # air changes an hour with windows shut; common practice, no source
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
    chance_below_mfft : float
        Share of the draws too cold to form at some time from packing to clear, 0-1.
    initial_water_g_m2 : float
        Water in the film as laid, g/m²; solvent, if the coat is solvent-borne.
    """

    constant_rate_g_m2_h: float | None
    constant_rate_temperature_C: float | None
    chance_below_mfft: float
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
        How many draws make the range, and which; 1 is the nominal run alone.
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
    check("horizon", horizon_h, *HORIZON_RANGE_H, "h")
    standing = standing_on(PRIOR, draws_n, seed, measured=measured)
    tied = anchor(sheet, standing.particles.draws)
    log = _log(room)
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
    for air, span_s in _spans(log, horizon_h * 3600.0):
        film, _ = advance(film, air, span_s, covered=covered)
    used = [air for at_s, air in log if at_s < horizon_h * 3600.0]
    table = outlook(film, used[-1], horizon_s=0.0, covered=covered)
    extrapolated = any(map(_outside_trust, used))
    return Prediction(
        sheet=sheet.name,
        kappa=tied.kappa,
        extrapolated=extrapolated,
        stages=ready_times(sheet, table, standing.weights(table)),
        film=_figures(fresh, film, used[0], covered=covered),
        notes=(
            *_notes(film, extrapolated=extrapolated),
            *_log_notes(log, horizon_h),
            *_weighing_note(standing, table),
        ),
    )


def _log(room: Room) -> Sequence[tuple[float, Air]]:
    """Return the room as a log that begins at the laying; times must be in order."""
    if isinstance(room, Air):
        return [(0.0, room)]
    if not room:
        raise OutOfRange("the room log holds no reading; it must hold at least one")
    previous_s = -1.0
    for at_s, _ in room:
        check("time in the room log", at_s, 0.0, float("inf"), "s")
        if at_s <= previous_s:
            raise OutOfRange(f"the room log goes from {previous_s:g} s to {at_s:g} s; times must rise")
        previous_s = at_s
    return room


def _spans(log: Sequence[tuple[float, Air]], horizon_s: float) -> Iterator[tuple[Air, float]]:
    """Yield each air and how long it holds; the first holds from the laying on, the last to the horizon."""
    starts = [0.0, *(at_s for at_s, _ in log[1:])]
    ends = [*starts[1:], horizon_s]
    for (_, air), start_s, end_s in zip(log, starts, ends, strict=True):
        if start_s < horizon_s:
            yield air, min(end_s, horizon_s) - start_s


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


def _outside_trust(air: Air) -> bool:
    low_C, high_C = TRUSTED_TEMPERATURE_C
    low_pct, high_pct = TRUSTED_HUMIDITY_PCT
    return not (low_C <= air.temperature_C <= high_C and low_pct <= air.humidity_pct <= high_pct)


def _notes(film: Film, *, extrapolated: bool) -> Iterator[str]:
    sheet = film.sheet
    if not film.anchor.agrees:
        yield film.anchor.sentence
    yield from sheet.assumed
    if film.dry_um > THICK * sheet.dry_um:
        yield (
            f"the coat is {film.dry_um / sheet.dry_um:.1f} times as thick as the sheet's ({film.dry_um:.0f} µm dry, "
            f"sheet {sheet.dry_um:.0f} µm): it dries through much later"
        )
    if film.chance_below_mfft >= LEAST_CHANCE:
        yield (
            f"the film may be too cold to form ({100.0 * film.chance_below_mfft:.0f} % of draws fall below "
            f"{sheet.mfft_C:g} °C): warm the room before you lay it; later warmth does not mend it"
        )
    if film.chance_of_blush >= LEAST_CHANCE:
        yield (
            f"the film may blush ({100.0 * film.chance_of_blush:.0f} % of draws come within 3 K of the dew point while "
            "it is wet): wait for drier air, or warm the room before the solvent is opened; it does not mend"
        )
    if sheet.kind is Kind.SOLVENTBORNE:
        yield from _vapour_notes(film)
    if extrapolated:
        yield (
            f"the room leaves {TRUSTED_TEMPERATURE_C[0]:g} to {TRUSTED_TEMPERATURE_C[1]:g} °C or "
            f"{TRUSTED_HUMIDITY_PCT[0]:g} to {TRUSTED_HUMIDITY_PCT[1]:g} % RH: the times are extrapolated"
        )


def _vapour_notes(film: Film) -> Iterator[str]:
    """Yield to ventilate first, and what the coat's vapour would come to in a small room that is shut."""
    area_m2, touch_s = film.layer.side_m**2, film.reached_s(Stage.DRY_TO_TOUCH)
    solvent_g = solvent_laid_g(film.sheet, wet_um=film.wet_um, area_m2=area_m2, thinned_pct=film.thinned_pct)
    shut = vapour_build_up(
        solvent_g=solvent_g,
        over_h=film.sheet.touch_dry_min / 60.0 if touch_s is None else touch_s / 3600.0,
        room_m3=SMALL_ROOM_M3,
        changes_per_h=SHUT_CHANGES_PER_H,
        temperature_C=REFERENCE_TEMPERATURE_C if film.film_C is None else film.film_C,
    )
    first, *others = shut.sentences
    yield first
    yield f"{solvent_g:.1f} g of solvent in a room of {SMALL_ROOM_M3:g} m³ with its windows shut. {' '.join(others)}"


def _weighing_note(standing: Standing, table: Array) -> Iterator[str]:
    """Yield what knowing the amount would narrow, where that is worth a sentence."""
    gain = weighing_gain(standing, table, (), stage=Stage.DRY_TO_RECOAT)
    if gain is not None and gain.sentence:
        yield gain.sentence


def _log_notes(log: Sequence[tuple[float, Air]], horizon_h: float) -> Iterator[str]:
    """Yield a sentence for each gap that was bridged with the air before it, and for a log that ends early."""
    times_s = [at_s for at_s, _ in log if at_s < horizon_h * 3600.0]
    for start_s, end_s in zip([0.0, *times_s], times_s, strict=False):
        if end_s - start_s > LONGEST_BRIDGE_S:
            yield (
                f"no reading for {(end_s - start_s) / 60.0:.0f} min from {start_s / 3600.0:.2f} h after laying: "
                "the nearest air is taken to have held"
            )
    if len(log) > 1 and len(times_s) == len(log):
        yield f"the room log ends {times_s[-1] / 3600.0:.1f} h after laying: its last air is carried on"
