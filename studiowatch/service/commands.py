"""What she can do: frozen commands that travel the same road inward as a reading."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from studiowatch.board.mapping import ColumnMapping
from studiowatch.coats.stages import Orientation
from studiowatch.room.king_law import BEAD_C
from studiowatch.room.log_columns import LogColumns
from studiowatch.room.typed import Felt
from studiowatch.service.correction_commands import CorrectionCommand, Redo, TakePhoto, Undo
from studiowatch.service.intention_commands import IntentionCommand
from studiowatch.service.lend_films import LendFilms
from studiowatch.service.preparation_commands import PreparationCommand
from studiowatch.service.sheet_commands import SheetCommand
from studiowatch.speech.units import Units
from studiowatch.studio.pieces import Finding, Outcome, Shape
from studiowatch.studio.working_hours import WorkingHours


@dataclass(frozen=True, slots=True, kw_only=True)
class Paint:
    """The layer of paint below all coats: its sheet, when its last was laid, and how thick it is wet, if known."""

    sheet: str
    finished_ms: int
    wet_um: float | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class RegisterPiece:
    """Put a piece on the rack, with its coats to come as sheet names, lowest first.

    `photo` is the name that `TakePhoto` answered with, or "".
    """

    title: str
    width_cm: float
    height_cm: float
    due: date | None = None
    support: str = "canvas"
    orientation: Orientation = Orientation.FACE_UP
    shape: Shape = Shape.RECTANGLE
    panels: int = 1
    photo: str = ""
    notes: str = ""
    paint: Paint | None = None
    sheets: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class AmendPiece:
    """Correct what was registered; fields left None stay.

    `no_due` takes the due date away. `sheets` are all the coats to come, lowest first. `paint` corrects the layer of
    paint, or adds it below the coats.
    """

    piece_key: str
    title: str | None = None
    width_cm: float | None = None
    height_cm: float | None = None
    due: date | None = None
    no_due: bool = False
    support: str | None = None
    orientation: Orientation | None = None
    shape: Shape | None = None
    panels: int | None = None
    photo: str | None = None
    notes: str | None = None
    paint: Paint | None = None
    sheets: tuple[str, ...] | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class ArchivePiece:
    """Take a piece off the rack; its records stay."""

    piece_key: str


@dataclass(frozen=True, slots=True, kw_only=True)
class MovePiece:
    """Put a piece at another place in the rack, counted from 0."""

    piece_key: str
    place: int


@dataclass(frozen=True, slots=True, kw_only=True)
class LayCoat:
    """The brush went down at `laid_ms`.

    With `coat_key` a planned coat is laid; without, a new coat of `sheet` is added on top. `below` says that it was
    forgotten, and that a coat laid later lies on it already: it takes the place that its time gives it.
    At most one of `volume_mL`, `grams`, `wet_um` is given; none means as thick as the sheet says.
    """

    piece_key: str
    laid_ms: int
    sheet: str
    coat_key: str | None = None
    volume_mL: float | None = None
    grams: float | None = None
    wet_um: float | None = None
    thinned_pct: float = 0.0
    below: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class PlanCoat:
    """Add a coat to come on top of a piece."""

    piece_key: str
    sheet: str


@dataclass(frozen=True, slots=True, kw_only=True)
class UnplanCoat:
    """Take a coat to come out of the plan."""

    coat_key: str


@dataclass(frozen=True, slots=True, kw_only=True)
class ReplacePlanned:
    """Plan another product for a coat to come."""

    coat_key: str
    sheet: str


@dataclass(frozen=True, slots=True, kw_only=True)
class MovePlanned:
    """Put a coat to come at another place among those of its piece, counted from 0 at the lowest."""

    coat_key: str
    place: int


@dataclass(frozen=True, slots=True, kw_only=True)
class PlanCoats:
    """Put these coats, lowest first, in the place of all that are to come on a piece: a recipe is applied by it."""

    piece_key: str
    sheets: tuple[str, ...]


PlannedCommand = PlanCoat | UnplanCoat | ReplacePlanned | MovePlanned | PlanCoats


@dataclass(frozen=True, slots=True, kw_only=True)
class SetWorkingHours:
    """She works in these hours of the week."""

    hours: WorkingHours


@dataclass(frozen=True, slots=True, kw_only=True)
class SaveRecipe:
    """Keep these sheets, lowest first, under a name; no sheets drop the recipe."""

    name: str
    sheets: tuple[str, ...]


PlanCommand = SetWorkingHours | SaveRecipe


@dataclass(frozen=True, slots=True, kw_only=True)
class CoverCoat:
    """A mesh cover was set over the coat at `covered_ms`."""

    coat_key: str
    covered_ms: int


@dataclass(frozen=True, slots=True, kw_only=True)
class RecordLook:
    """A touch test or a look at a coat."""

    coat_key: str
    time_ms: int
    finding: Finding


@dataclass(frozen=True, slots=True, kw_only=True)
class RecordOutcome:
    """How a coat came out."""

    coat_key: str
    seen_ms: int
    outcome: Outcome


@dataclass(frozen=True, slots=True, kw_only=True)
class AcceptColumns:
    """What the columns of the board that is read mean; it is kept for that board."""

    mapping: ColumnMapping


@dataclass(frozen=True, slots=True, kw_only=True)
class ChooseBoard:
    """Read the board on `port` and no other, or, if that is None, whichever answers; until the program ends."""

    port: str | None


@dataclass(frozen=True, slots=True, kw_only=True)
class HearWarning:
    """She has heard it: no more sound for this one."""

    warning_key: str


@dataclass(frozen=True, slots=True, kw_only=True)
class RemindLater:
    """Quiet until `until_ms`, then again if it still stands."""

    warning_key: str
    until_ms: int


@dataclass(frozen=True, slots=True, kw_only=True)
class TickPrompt:
    """A prompt was done."""

    prompt_key: str


@dataclass(frozen=True, slots=True, kw_only=True)
class SnoozePrompt:
    """A prompt is put off until `until_ms`, UTC ms, and then told again."""

    prompt_key: str
    until_ms: int


@dataclass(frozen=True, slots=True, kw_only=True)
class CalibrateHumidity:
    """The box read flat over each salt at these UTC ms; the readings of the half hour before are in the log."""

    magnesium_ms: int
    sodium_ms: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Spell:
    """From `start_ms` to `end_ms`, UTC ms."""

    start_ms: int
    end_ms: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Walk:
    """The sensor was carried over `distance_m` through still air, evenly, from `start_ms` to `end_ms`, UTC ms."""

    start_ms: int
    end_ms: int
    distance_m: float


@dataclass(frozen=True, slots=True, kw_only=True)
class CalibrateAirSpeed:
    """The bead was under a cup, and then walked; the readings are in the log. `bead_C` is what the bead is held at."""

    still: Spell
    walks: tuple[Walk, ...]
    bead_C: float = BEAD_C


@dataclass(frozen=True, slots=True, kw_only=True)
class TryCalibration:
    """Show what a calibration would be, in the snapshot; nothing is kept."""

    of: CalibrateHumidity | CalibrateAirSpeed


@dataclass(frozen=True, slots=True, kw_only=True)
class WithdrawCalibration:
    """Take a calibration back: readings show what they would without it."""

    calibration_key: str


CalibrationCommand = CalibrateHumidity | CalibrateAirSpeed | TryCalibration | WithdrawCalibration
BoardCommand = AcceptColumns | ChooseBoard


@dataclass(frozen=True, slots=True, kw_only=True)
class TypeReading:
    """The room as she read it off any hygrometer at `time_ms`, and what she felt of the air; None if she did not."""

    time_ms: int
    temperature_C: float
    humidity_pct: float
    felt: Felt | None = None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class TakeLogged:
    """Take readings of one hour from outside into the log; the answer has a verdict for each, see `verdicts_of`."""

    readings: LogColumns


@dataclass(frozen=True, slots=True, kw_only=True)
class EndTaking:
    """All of a log is taken, from its first reading to its last, UTC ms; `text` says where it came from."""

    text: str
    first_ms: int
    last_ms: int


OutsideCommand = TakeLogged | EndTaking


@dataclass(frozen=True, slots=True, kw_only=True)
class SpeakIn:
    """Say figures in these units from now on; nothing in the records changes."""

    units: Units


Command = (
    RegisterPiece
    | AmendPiece
    | ArchivePiece
    | MovePiece
    | LayCoat
    | PlannedCommand
    | PlanCommand
    | IntentionCommand
    | CoverCoat
    | RecordLook
    | RecordOutcome
    | CorrectionCommand
    | Undo
    | Redo
    | TakePhoto
    | BoardCommand
    | HearWarning
    | SpeakIn
    | RemindLater
    | TickPrompt
    | SnoozePrompt
    | PreparationCommand
    | SheetCommand
    | CalibrationCommand
    | TypeReading
    | OutsideCommand
    | LendFilms
)


class Refused(Exception):  # noqa: N818 - a refusal is an answer, not a fault
    """A command that cannot be carried out; the message is one sentence for her. Nothing was changed."""
