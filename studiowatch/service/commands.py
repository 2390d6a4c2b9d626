"""What she can do: frozen commands that travel the same road inward as a reading."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from studiowatch.board.mapping import ColumnMapping
from studiowatch.coats.stages import Orientation
from studiowatch.room.log_columns import LogColumns
from studiowatch.room.typed import Felt
from studiowatch.service.calibration_commands import CalibrationCommand
from studiowatch.service.correction_commands import CorrectionCommand, Redo, TakePhoto, Undo
from studiowatch.service.intention_commands import IntentionCommand
from studiowatch.service.lend_films import LendFilms
from studiowatch.service.plan_commands import PlanCommand, PlannedCommand
from studiowatch.service.preparation_commands import PreparationCommand
from studiowatch.service.sheet_commands import SheetCommand
from studiowatch.speech.units import Units
from studiowatch.studio.pieces import Finding, Outcome, Shape


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
    """What the columns of a board mean; it is kept for that board, and refused while another one is read.

    Attributes
    ----------
    board : str
        What the board is known by, as in `BoardView`.
    """

    board: str
    mapping: ColumnMapping


@dataclass(frozen=True, slots=True, kw_only=True)
class ChooseBoard:
    """Read the board on `port` and no other, or, if that is None, whichever answers; until the program ends."""

    port: str | None


BoardCommand = AcceptColumns | ChooseBoard


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
