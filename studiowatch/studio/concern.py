"""What the watch looks at, and what it finds: the room now, the coats that it could spoil, and concerns."""

from __future__ import annotations

from dataclasses import dataclass, replace
from enum import StrEnum

from studiowatch.room.air_movement import Movement
from studiowatch.room.typed import Felt
from studiowatch.studio.set_on import set_on
from studiowatch.studio.words import Level, Sentence


class Kind(StrEnum):
    """Kinds of warning; the values are fixed names that other programs read."""

    AIR_MOVING = "air-moving"
    TOO_COLD = "too-cold"
    NEAR_DEW_POINT = "near-dew-point"
    DAMP = "damp"
    DRYING_TOO_FAST = "drying-too-fast"
    DUST = "dust"
    RECOAT_EARLY = "recoat-early"
    MATTING_BUILD_UP = "matting-build-up"
    BOARD_SILENT = "board-silent"
    READING_IMPLAUSIBLE = "reading-implausible"
    READING_OLD = "reading-old"


@dataclass(frozen=True, slots=True, kw_only=True)
class TypedAir:
    """A room that is known by a typed reading: when it was read, UTC ms, how long ago, s, and what was felt then.

    `felt` is None where nobody said, or where a board tells whether the air moves.
    """

    time_ms: int
    age_s: float = 0.0
    felt: Felt | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class AirNow:
    """The room as last read. None is "not measured".

    Attributes
    ----------
    temperature_C, humidity_pct, dew_point_C : float or None
        °C, %RH, °C.
    air_speed_m_s : float or None
        Calibrated air speed, m/s; None if there is only a voltage, or nothing.
    movement : Movement
        What the detector says; `moving_since_ms` is its back-dated beginning, UTC ms.
    age_s : float
        Age of the latest reading, s.
    implausible : str
        Why the temperature or humidity cannot be right, or "".
    typed : TypedAir or None
        Where temperature or humidity was typed rather than measured by a board.
    particles_per_m3_5um : float or None
        Dust over 5 µm, /m³, where the board counts it.
    """

    temperature_C: float | None = None
    humidity_pct: float | None = None
    air_speed_m_s: float | None = None
    dew_point_C: float | None = None
    movement: Movement = Movement.UNKNOWN
    moving_since_ms: int | None = None
    age_s: float = 0.0
    implausible: str = ""
    typed: TypedAir | None = None
    particles_per_m3_5um: float | None = None

    @property
    def is_moving(self) -> bool:
        """Whether either stage of the detector is lit."""
        return self.movement in (Movement.MOVING, Movement.FAN)

    def blind_since_ms(self, now_ms: int) -> int:
        """Return the UTC ms of the last that was seen of the room."""
        return now_ms - round(self.age_s * 1000)


@dataclass(frozen=True, slots=True, kw_only=True)
class CoatAtRisk:
    """A laid coat that the room can still spoil.

    Attributes
    ----------
    wet : bool
        True while moving air still harms it.
    forming : bool
        True until it is clear and its film has formed.
    film_C, mfft_C : float or None
        Film temperature and minimum film-forming temperature, °C.
    max_humidity_pct : float or None
        The sheet's own limit, %RH.
    solvent : bool
        True for a solvent-borne coat.
    sticky, dust_free_ms : bool, int or None
        True while dust that falls on it stays; UTC ms at which that is over by the model.
    pace : float
        How fast it dries, in times of its sheet's own run, over the last minutes; 0 once its film has packed.
    apply_most_C : float or None
        Greatest temperature that its sheet allows, °C.
    matting_coats, max_matting_coats : int, int or None
        Coats with matting agent up to and with this one if it has such, else 0; how many its sheet allows.
    laid_ms, unready_below, sheet_wait_h
        UTC ms; the chance that the coat below was not ready then; the recoat time of the sheet of that coat, h, if
        this one was laid before it, else None.
    safe_ms : int or None
        UTC ms from which the room no longer spoils it, by the model; None if that is not in sight.
    """

    piece_key: str
    piece_title: str
    coat_label: str
    wet: bool
    forming: bool
    covered: bool = False
    film_C: float | None = None
    mfft_C: float | None = None
    max_humidity_pct: float | None = None
    solvent: bool = False
    sticky: bool = False
    dust_free_ms: int | None = None
    pace: float = 0.0
    apply_most_C: float | None = None
    matting_coats: int = 0
    max_matting_coats: int | None = None
    laid_ms: int = 0
    unready_below: float = 0.0
    sheet_wait_h: float | None = None
    safe_ms: int | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Concern:
    """Something in the room that would spoil a coat, or hides whether it does.

    Attributes
    ----------
    piece_keys, piece_titles : tuple of str
        The pieces it touches, in the order of the rack.
    began_ms : int
        UTC ms when it began, which may lie before it was noticed.
    seen_ms : int
        UTC ms when it was last seen to hold; it is kept a little longer so that it does not flicker.
    may_sound : bool
        Whether it is worth a sound.
    unseen_ms : int or None
        UTC ms when it was last looked for in vain, its channels missing; None if it has been seen since.
    basis : str
        Where its limit comes from, in a sentence.
    expected_ms : int or None
        UTC ms at which the limit to act on is expected to be passed, if the room goes on so; None if it does not.
    is_ahead : bool
        Whether nothing is wrong yet: all of it is still to come.
    """

    kind: Kind
    level: Level
    piece_keys: tuple[str, ...]
    piece_titles: tuple[str, ...]
    began_ms: int
    seen_ms: int
    sentence: Sentence
    may_sound: bool = False
    unseen_ms: int | None = None
    basis: str = ""
    expected_ms: int | None = None
    is_ahead: bool = False

    def shifted(self, step_ms: int) -> Concern:
        """Return the same after a wall clock was set `step_ms` on: it was seen as long ago as it was."""
        return replace(
            self,
            began_ms=self.began_ms + step_ms,
            seen_ms=self.seen_ms + step_ms,
            unseen_ms=set_on(self.unseen_ms, step_ms),
            expected_ms=set_on(self.expected_ms, step_ms),
        )
