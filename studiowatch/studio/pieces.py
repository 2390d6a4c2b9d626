"""Pieces on the rack, their coats, and what she saw when she looked."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from enum import StrEnum
from math import pi, sqrt

from studiowatch.coats.stages import Orientation
from studiowatch.speech.words import mark, say

SIDE_cm = (1.0, 1000.0)  # cm, a piece's sides: from a sample chip to a wall; assumption
TITLE_MOST = 120  # characters
JOINERS = "\u200c\u200d"  # part and join letters in Persian, and emoji: The Unicode Standard, 23.2
EARLIEST_YEAR = 1970  # of any time in the records: UTC ms are counted from then
LATEST_YEAR = 2200  # assumption: a later year is a slip of the keyboard
PANELS_MOST = 50  # panels of one set: assumption


def can_be_shown(text: str) -> bool:
    """Return whether a line of text holds only signs that can be seen, and those that join or part letters."""
    return all(sign.isprintable() or sign in JOINERS for sign in text)


class Shape(StrEnum):
    """The face of a piece: one rectangle, one round or oval, or a set of equal rectangular panels."""

    RECTANGLE = "rectangle"
    ROUND = "round"
    PANELS = "panels"

    @property
    def word(self) -> str:
        """What it is called in her language."""
        return say(_SHAPES[self])


_SHAPES = {Shape.RECTANGLE: mark("rectangle"), Shape.ROUND: mark("round"), Shape.PANELS: mark("panels")}


def face_m2(shape: Shape, width_cm: float, height_cm: float) -> float:
    """Return the area of one face or panel, m², from its sides or diameters, cm."""
    share = pi / 4.0 if shape is Shape.ROUND else 1.0
    return share * width_cm * height_cm * 1e-4


class Finding(StrEnum):
    """The four answers of a touch test or a look."""

    TACKY = "tacky"
    DRY = "dry"
    MILKY = "still milky"  # not said
    CLEAR = "clear"

    @property
    def word(self) -> str:
        """What she found, in her language."""
        return say(_FINDINGS[self])


_FINDINGS = {
    Finding.TACKY: mark("tacky"),
    Finding.DRY: mark("dry"),
    Finding.MILKY: mark("still milky"),
    Finding.CLEAR: mark("clear"),
}


class Outcome(StrEnum):
    """How a finished coat came out."""

    CLEAR = "clear"
    MILKY_ALL_OVER = "milky all over"  # not said
    MILKY_IN_PATCHES = "milky in patches"  # not said
    DULL_IN_DARKS = "dull in darks"  # not said
    POWDERY = "powdery"
    SPECKS = "specks"

    @property
    def word(self) -> str:
        """How it came out, in her language."""
        return say(_OUTCOMES[self])


_OUTCOMES = {
    Outcome.CLEAR: mark("clear"),
    Outcome.MILKY_ALL_OVER: mark("milky all over"),
    Outcome.MILKY_IN_PATCHES: mark("milky in patches"),
    Outcome.DULL_IN_DARKS: mark("dull in darks"),
    Outcome.POWDERY: mark("powdery"),
    Outcome.SPECKS: mark("specks"),
}


@dataclass(frozen=True, slots=True, kw_only=True)
class Look:
    """One touch test or look at a coat, at a UTC time in milliseconds."""

    key: str
    time_ms: int
    finding: Finding


@dataclass(frozen=True, slots=True, kw_only=True)
class Coat:
    """One coat of a piece, laid or still planned.

    Attributes
    ----------
    key : str
        Unique among all coats; never shown.
    sheet : str
        Name of the data sheet.
    laid_ms : int or None
        UTC ms when the brush went down; None while the coat is only planned.
    volume_mL, grams, wet_um : float or None
        How much was laid, in whichever unit she measured; all None means "as the sheet says".
    thinned_pct : float
        Water or thinner added, % of the volume.
    covered_from_ms : int or None
        UTC ms from which a mesh cover stands over the coat.
    outcome, seen_ms
        How it came out and when that was seen.
    """

    key: str
    sheet: str
    laid_ms: int | None = None
    volume_mL: float | None = None
    grams: float | None = None
    wet_um: float | None = None
    thinned_pct: float = 0.0
    covered_from_ms: int | None = None
    outcome: Outcome | None = None
    seen_ms: int | None = None
    looks: tuple[Look, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Piece:
    """One piece on the rack; `coats` run from the lowest to the topmost, planned ones last.

    Attributes
    ----------
    key : str
        Unique among all pieces; never shown.
    width_cm, height_cm : float
        Size of the face, cm; of a round one its diameters, of a set that of each panel.
    due : date or None
        The day it is due, in her local calendar.
    support : str
        What it is painted on, in her words.
    place : int
        Position in the rack, from 0.
    panels : int
        How many panels a set has; 1 for any other shape.
    photo : str
        Name of the file in the folder of photos beside the records, or "".
    notes : str
        Her own words about it.
    """

    key: str
    title: str
    width_cm: float
    height_cm: float
    due: date | None = None
    support: str = "canvas"
    orientation: Orientation = Orientation.FACE_UP
    place: int = 0
    archived: bool = False
    shape: Shape = Shape.RECTANGLE
    panels: int = 1
    photo: str = ""
    notes: str = ""
    coats: tuple[Coat, ...] = ()

    @property
    def area_m2(self) -> float:
        """Area to be coated, m²: that of all the panels of a set."""
        return self.panel_m2 * self.panels

    @property
    def panel_m2(self) -> float:
        """Area of the face, or of one panel of a set, m²."""
        return face_m2(self.shape, self.width_cm, self.height_cm)

    @property
    def side_m(self) -> float:
        """Side of the square of the same area as the face or one panel, m: the length that the air sees."""
        return sqrt(self.panel_m2)

    def index_of(self, coat_key: str) -> int:
        """Return the place of a coat in `coats`, from 0: by its key, as its record may have changed just now."""
        return [coat.key for coat in self.coats].index(coat_key)

    @property
    def first_laid_ms(self) -> int | None:
        """When the first coat was laid, UTC ms, or None."""
        return min((coat.laid_ms for coat in self.coats if coat.laid_ms is not None), default=None)
