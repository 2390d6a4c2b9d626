"""What she can say again: corrections of what was recorded, back to the rack, undo and redo, and a photo."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from studiowatch.studio.pieces import Finding


@dataclass(frozen=True, slots=True, kw_only=True)
class CorrectCoat:
    """What was recorded of a laid coat, as it should stand: all of it, not only what is new.

    A coat laid at another time takes the place in its stack that this gives it. At most one of `volume_mL`, `grams`
    and `wet_um` is given; none means as thick as the sheet says.
    """

    coat_key: str
    sheet: str
    laid_ms: int
    volume_mL: float | None = None
    grams: float | None = None
    wet_um: float | None = None
    thinned_pct: float = 0.0
    covered_ms: int | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class TakeBackCoat:
    """A coat was not laid at all, or is not to come; `plan_again` keeps one that was recorded among those to come."""

    coat_key: str
    plan_again: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class CorrectLook:
    """When a touch test or look was, and what it found."""

    look_key: str
    time_ms: int
    finding: Finding


@dataclass(frozen=True, slots=True, kw_only=True)
class TakeBackLook:
    """A touch test or look that was none."""

    look_key: str


@dataclass(frozen=True, slots=True, kw_only=True)
class TakeBackOutcome:
    """How a coat came out is open again."""

    coat_key: str


@dataclass(frozen=True, slots=True, kw_only=True)
class RestorePiece:
    """Put an archived piece back on the rack, behind the others."""

    piece_key: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Undo:
    """Take back the last thing that was done in this session and not taken back yet."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Redo:
    """Do again what was taken back last."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TakePhoto:
    """Copy the picture at `path` into the folder of photos, scaled down; the answer is its name there."""

    path: Path


CorrectionCommand = CorrectCoat | TakeBackCoat | CorrectLook | TakeBackLook | TakeBackOutcome | RestorePiece
