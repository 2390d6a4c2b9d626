"""The room's figures: a number for two metres away, and what it means for a wet coat."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import tzinfo

from studiowatch.coats.stages import Surface
from studiowatch.room.air_movement import Movement
from studiowatch.room.limits import AIR_SPEED, DEW_MARGIN, DUST, FILM_MARGIN, HUMIDITY
from studiowatch.service.snapshot import RoomView, Snapshot
from studiowatch.speech.units import Units
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
        value = "not measured" if self.value == NOT_MEASURED else f"{self.value} {self.unit}".strip()
        return f"{self.name}: {value}. {self.meaning}".strip()


def room_figures(snapshot: Snapshot, zone: tzinfo | None = None) -> tuple[Figure, ...]:
    """Return temperature, humidity and air speed, and dust where the board counts it."""
    room, board = snapshot.room, snapshot.board
    last = f"last heard {clock_words(board.last_ms, snapshot.time_ms, zone)}" if board.last_ms else "no reading yet"
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
        return figure if typed.felt is None else replace(figure, meaning=f"{first}\nfelt {typed.felt} {ago}")
    return replace(figure, meaning=f"{first}\nread {ago}", stale=typed.age_s > FRESH_S)


def _wet_films(snapshot: Snapshot) -> tuple[tuple[float, str], ...]:
    """Return temperature, °C, and title of every piece whose top coat is not dry and clear yet, the coldest first."""
    tops = [(piece.title, piece.top) for piece in snapshot.pieces if piece.top is not None]
    fresh = [(title, top) for title, top in tops if top.milky or top.surface in {Surface.WET, Surface.TACKY}]
    return tuple(sorted((top.film_C, title) for title, top in fresh if top.film_C is not None))


def _temperature(room: RoomView, films: tuple[tuple[float, str], ...], units: Units) -> Figure:
    if room.temperature_C is None:
        return Figure(name="Air temperature", value=NOT_MEASURED, meaning="not measured")
    meaning = "no wet film" if room.film_C is None else f"wet film {_minus(units.temperature(room.film_C))}"
    if room.film_C is not None and len(films) > 1:
        meaning = f"coldest wet film {_minus(units.temperature(room.film_C))}\n{films[0][1]}"
    return Figure(
        name="Air temperature",
        value=_minus(units.number(units.degrees.from_celsius(room.temperature_C), 1)),
        unit=units.degrees.value,
        meaning=meaning,
        level=room.temperature_level,
        basis=f"{FILM_MARGIN.basis} Above the dew point: {DEW_MARGIN.basis}",
    )


def _humidity(room: RoomView, units: Units) -> Figure:
    if room.humidity_pct is None:
        return Figure(name="Relative humidity", value=NOT_MEASURED, meaning="not measured")
    meaning = "" if room.dew_point_C is None else f"dew point {_minus(units.temperature(room.dew_point_C))}"
    if room.film_above_dew_K is not None:
        of = "air" if room.film_C is None else "film"
        side = "below" if room.film_above_dew_K >= 0 else "above"
        meaning += f"\n{units.difference(abs(room.film_above_dew_K))} {side} {of}"
    return Figure(
        name="Relative humidity",
        value=f"{room.humidity_pct:.0f}",
        unit="%",
        meaning=meaning.strip(),
        level=room.humidity_level,
        basis=HUMIDITY.basis,
    )


def _air(room: RoomView, units: Units, now_ms: int, zone: tzinfo | None) -> Figure:
    if room.air_speed_m_s is not None:
        return _calibrated_air(room, room.air_speed_m_s, units, now_ms, zone)
    if room.air_signal_mV is not None:
        return _uncalibrated_air(room, room.air_signal_mV)
    return Figure(name="Air", value=NOT_MEASURED, meaning="not measured")


def _calibrated_air(room: RoomView, speed_m_s: float, units: Units, now_ms: int, zone: tzinfo | None) -> Figure:
    meaning = {Movement.STILL: "the air is still", Movement.UNKNOWN: "learning what still air is"}.get(
        room.movement, ""
    )
    if room.movement in {Movement.MOVING, Movement.FAN}:
        meaning = "a fan" if room.movement is Movement.FAN else "moving"
        if room.moving_since_ms is not None:
            meaning += f" since {clock_words(room.moving_since_ms, now_ms, zone)}"
    if speed_m_s < STILL_BELOW_M_S:
        below = f"under {units.air_speed_limit(STILL_BELOW_M_S)}"
        meaning = below if room.movement is Movement.STILL else f"{below}\n{meaning}".strip()
        return Figure(name="Air speed", value="still", meaning=meaning, level=room.air_level, basis=AIR_SPEED.basis)
    return Figure(
        name="Air speed",
        value=units.number(units.speed.from_si(speed_m_s), units.speed.places),
        unit=units.speed.value,
        meaning=meaning,
        level=room.air_level,
        basis=AIR_SPEED.basis,
    )


def _uncalibrated_air(room: RoomView, signal_mV: float) -> Figure:
    value = {Movement.STILL: "still", Movement.MOVING: "moving", Movement.FAN: "moving"}.get(
        room.movement, NOT_MEASURED
    )
    known = "no calibration" if value != NOT_MEASURED else "learning still air"
    return Figure(name="Air", value=value, meaning=f"{signal_mV:.0f} mV, {known}", level=room.air_level)


def _dust(particles_per_m3: float, units: Units) -> Figure:
    value = "low" if particles_per_m3 < LITTLE_DUST_PER_M3 else "some"
    if particles_per_m3 >= MUCH_DUST_PER_M3:
        value = "high"
    return Figure(name="Dust", value=value, meaning=f"{units.count(particles_per_m3)} /m³\nover 5 µm", basis=DUST.basis)


def _minus(figure: str) -> str:
    return figure.replace("-", "−")
