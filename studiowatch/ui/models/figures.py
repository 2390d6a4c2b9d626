"""The room's figures: a number for two metres away, and what it means for a wet coat."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import tzinfo

from studiowatch.coats.stages import Surface
from studiowatch.room.air_movement import Movement
from studiowatch.room.limits import AIR_SPEED, DEW_MARGIN, DUST, FILM_MARGIN, HUMIDITY
from studiowatch.room.typed import Felt
from studiowatch.service.snapshot import RoomView, Snapshot
from studiowatch.speech.units import Units
from studiowatch.speech.words import mark, say
from studiowatch.studio.concern import TypedAir
from studiowatch.studio.rereading import FRESH_S
from studiowatch.studio.words import Level
from studiowatch.ui.models.times import ago_words, clock_words

# Below this a heated bead cannot tell a draught from its own rising warmth: free convection swamps it
# (Collis and Williams 1959); what is left is called still.
STILL_BELOW_M_S = 0.1
# Dust over 5 µm, per m³: ISO 14644-1 allows its class 8 29 300 and its class 9 293 000. That specks in a wet coat
# become few below the one and many above the other is an assumption.
LITTLE_DUST_PER_M3, MUCH_DUST_PER_M3 = 29_300, 293_000
NOT_MEASURED = "–"
FELT_WORDS = {Felt.STILL: mark("still"), Felt.MOVING: mark("moving")}


@dataclass(frozen=True, slots=True, kw_only=True)
class Figure:
    """One large figure. `stale` is True when the board has fallen silent and the number is its last word.

    `basis` says where the limits of the figure come from.
    """

    name: str
    value: str
    unit: str = ""
    meaning: str = ""
    level: Level = Level.CALM
    stale: bool = False
    basis: str = ""

    @property
    def spoken(self) -> str:
        """Return the figure as one phrase for a screen reader."""
        value = say("not measured") if self.value == NOT_MEASURED else f"{self.value} {self.unit}".strip()
        return f"{self.name}: {value}. {self.meaning}".strip()


def room_figures(snapshot: Snapshot, zone: tzinfo | None = None) -> tuple[Figure, ...]:
    """Return temperature, humidity and air speed, and dust where the board counts it."""
    room, board = snapshot.room, snapshot.board
    last = say("no reading yet")
    if board.last_ms:
        last = say("last heard {time}", time=clock_words(board.last_ms, snapshot.time_ms, zone))
    blind = room.typed is None and (board.silent or not board.connected)
    units = snapshot.units
    figures = [
        _temperature(room, _wet_films(snapshot), units),
        _humidity(room, units),
        _air(room, units, snapshot.time_ms, zone),
    ]
    if room.particles_per_m3_5um is not None:
        figures.append(_dust(room.particles_per_m3_5um, units))
    if room.typed is not None:
        return tuple(_typed(one, room.typed, snapshot.time_ms) for one in figures)
    if not blind:
        return tuple(figures)
    return tuple(
        Figure(name=one.name, value=one.value, unit=one.unit, meaning=last, level=Level.CALM, stale=True)
        for one in figures
    )


def _typed(figure: Figure, typed: TypedAir, now_ms: int) -> Figure:
    """Return a figure with how old it is; the air's with what was felt of it. One that is old is its own last word."""
    ago = ago_words(typed.time_ms, now_ms)
    first = figure.meaning.partition("\n")[0]
    if not figure.unit:
        if typed.felt is None:
            return figure
        felt = say("felt {air} {ago}", air=say(FELT_WORDS[typed.felt]), ago=ago)
        return replace(figure, meaning=f"{first}\n{felt}")
    return replace(figure, meaning=f"{first}\n{say('read {ago}', ago=ago)}", stale=typed.age_s > FRESH_S)


def _wet_films(snapshot: Snapshot) -> tuple[tuple[float, str], ...]:
    """Return temperature, °C, and title of every piece whose top coat is not dry and clear yet, the coldest first."""
    tops = [(piece.title, piece.top) for piece in snapshot.pieces if piece.top is not None]
    fresh = [(title, top) for title, top in tops if top.milky or top.surface in {Surface.WET, Surface.TACKY}]
    return tuple(sorted((top.film_C, title) for title, top in fresh if top.film_C is not None))


def _temperature(room: RoomView, films: tuple[tuple[float, str], ...], units: Units) -> Figure:
    if room.temperature_C is None:
        return Figure(name=say("Air temperature"), value=NOT_MEASURED, meaning=say("not measured"))
    return Figure(
        name=say("Air temperature"),
        value=_minus(units.number(units.degrees.from_celsius(room.temperature_C), 1)),
        unit=units.degrees.value,
        meaning=_film_words(room.film_C, films, units),
        level=room.temperature_level,
        basis=say("{film} Above the dew point: {dew}", film=say(FILM_MARGIN.basis), dew=say(DEW_MARGIN.basis)),
    )


def _film_words(film_C: float | None, films: tuple[tuple[float, str], ...], units: Units) -> str:
    if film_C is None:
        return say("no wet film")
    film = _minus(units.temperature(film_C))
    if len(films) > 1:
        return f"{say('coldest wet film {temperature}', temperature=film)}\n{films[0][1]}"
    return say("wet film {temperature}", temperature=film)


def _humidity(room: RoomView, units: Units) -> Figure:
    if room.humidity_pct is None:
        return Figure(name=say("Relative humidity"), value=NOT_MEASURED, meaning=say("not measured"))
    meaning = ""
    if room.dew_point_C is not None:
        meaning = say("dew point {temperature}", temperature=_minus(units.temperature(room.dew_point_C)))
    if room.film_above_dew_K is not None:
        meaning += f"\n{_beside_dew(room.film_above_dew_K, units, of_film=room.film_C is not None)}"
    return Figure(
        name=say("Relative humidity"),
        value=f"{room.humidity_pct:.0f}",
        unit="%",
        meaning=meaning.strip(),
        level=room.humidity_level,
        basis=say(HUMIDITY.basis),
    )


def _beside_dew(above_dew_K: float, units: Units, *, of_film: bool) -> str:
    """Return how far the dew point lies below or above the film, or the air where no film is wet."""
    difference = units.difference(abs(above_dew_K))
    if above_dew_K >= 0:
        below = mark("{difference} below film") if of_film else mark("{difference} below air")
        return say(below, difference=difference)
    above = mark("{difference} above film") if of_film else mark("{difference} above air")
    return say(above, difference=difference)


def _air(room: RoomView, units: Units, now_ms: int, zone: tzinfo | None) -> Figure:
    if room.air_speed_m_s is not None:
        return _calibrated_air(room, room.air_speed_m_s, units, now_ms, zone)
    if room.air_signal_mV is not None:
        return _uncalibrated_air(room, room.air_signal_mV)
    return Figure(name=say("Air"), value=NOT_MEASURED, meaning=say("not measured"))


def _calibrated_air(room: RoomView, speed_m_s: float, units: Units, now_ms: int, zone: tzinfo | None) -> Figure:
    meaning = _movement_words(room, now_ms, zone)
    if speed_m_s < STILL_BELOW_M_S:
        below = say("under {limit}", limit=units.air_speed_limit(STILL_BELOW_M_S))
        return Figure(
            name=say("Air speed"),
            value=say("still"),
            meaning=below if room.movement is Movement.STILL else f"{below}\n{meaning}".strip(),
            level=room.air_level,
            basis=say(AIR_SPEED.basis),
        )
    return Figure(
        name=say("Air speed"),
        value=units.number(units.speed.from_si(speed_m_s), units.speed.places),
        unit=units.speed.value,
        meaning=meaning,
        level=room.air_level,
        basis=say(AIR_SPEED.basis),
    )


def _movement_words(room: RoomView, now_ms: int, zone: tzinfo | None) -> str:
    if room.movement is Movement.STILL:
        return say("the air is still")
    if room.movement is Movement.UNKNOWN:
        return say("learning what still air is")
    is_fan = room.movement is Movement.FAN
    if room.moving_since_ms is None:
        return say("a fan") if is_fan else say("moving")
    since = clock_words(room.moving_since_ms, now_ms, zone)
    return say("a fan since {time}", time=since) if is_fan else say("moving since {time}", time=since)


def _uncalibrated_air(room: RoomView, signal_mV: float) -> Figure:
    value = {Movement.STILL: say("still"), Movement.MOVING: say("moving"), Movement.FAN: say("moving")}.get(
        room.movement, NOT_MEASURED
    )
    known = say("no calibration") if value != NOT_MEASURED else say("learning still air")
    return Figure(name=say("Air"), value=value, meaning=f"{signal_mV:.0f} mV, {known}", level=room.air_level)


def _dust(particles_per_m3: float, units: Units) -> Figure:
    if particles_per_m3 < LITTLE_DUST_PER_M3:
        value = say("low", about="dust")
    elif particles_per_m3 < MUCH_DUST_PER_M3:
        value = say("some", about="dust")
    else:
        value = say("high", about="dust")
    meaning = f"{units.count(_as_counted(particles_per_m3))} /m³\n{say('over 5 µm')}"
    return Figure(name=say("Dust"), value=value, meaning=meaning, basis=say(DUST.basis))


def _as_counted(particles_per_m3: float) -> float:
    """Return a count with as many figures as a cheap counter can tell apart, two: assumption, some ten in a hundred."""
    return float(f"{particles_per_m3:.1e}")


def _minus(figure: str) -> str:
    return figure.replace("-", "−")
