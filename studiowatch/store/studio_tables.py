"""What a studio file holds beside the pieces: tables of their own, each row with the key of what it belongs to."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, fields
from typing import Any

from studiowatch.room.corrections import Imported, Sighting
from studiowatch.speech.words import say
from studiowatch.store.calibrations import calibration_fault
from studiowatch.store.intentions import INTENTION_FIELDS, IntentionRecord, intention_fault
from studiowatch.store.plan_records import RECIPE_FIELDS, WORKING_DAY_FIELDS, RecipeRecord, WorkingDayRecord
from studiowatch.store.preparations import preparation_fault
from studiowatch.store.shapes import (
    CalibrationRecord,
    CheckRecord,
    CorrectionRecord,
    LearntRecord,
    NoteRecord,
    PreparationRecord,
    PromptRecord,
    TellingRecord,
    WarningChange,
    WarningRecord,
)
from studiowatch.store.studio_fields import (
    CALIBRATION_FIELDS,
    CHANGE_FIELDS,
    CORRECTION_FIELDS,
    IMPORTED_FIELDS,
    LEARNT_FIELDS,
    NOTE_FIELDS,
    PREPARATION_FIELDS,
    PROMPT_FIELDS,
    SENSOR_FIELDS,
    TELLING_FIELDS,
    WARNING_FIELDS,
    Field,
)

Row = (
    CalibrationRecord
    | CheckRecord
    | CorrectionRecord
    | Imported
    | IntentionRecord
    | LearntRecord
    | NoteRecord
    | PreparationRecord
    | PromptRecord
    | RecipeRecord
    | Sighting
    | TellingRecord
    | WarningChange
    | WarningRecord
    | WorkingDayRecord
)


def imported_fault(record: Imported) -> str:
    """Return what is wrong with a stretch from outside, or ""."""
    return (
        "" if record.start_ms < record.end_ms else say("imported: its end is not after its start; correct one of them.")
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Table:
    """One kind of row.

    Attributes
    ----------
    heading : str
        Its name in the file.
    shape : type
        What a row becomes; its attributes are the columns of `sql_name`.
    key : str
        The attribute that no two rows share, or "" if rows have none.
    belongs_to : (str, str, str)
        The attribute that names what a row belongs to, and the table and the heading of that; or empty.
    fault : callable
        Returns what is wrong with a row whose fields are each as they should be, or "".
    """

    heading: str
    sql_name: str
    shape: type[Any]
    fields: tuple[Field, ...]
    key: str = ""
    belongs_to: tuple[str, str, str] = ("", "", "")
    fault: Callable[[Any], str] = lambda _: ""

    @property
    def columns(self) -> Sequence[str]:
        """Return the columns in the order of the shape."""
        return tuple(field.name for field in fields(self.shape))


TABLES = (
    Table(
        heading="prompt",
        sql_name="prompt",
        shape=PromptRecord,
        fields=PROMPT_FIELDS,
        key="key",
        belongs_to=("coat_key", "coat", "coat"),
    ),
    Table(
        heading="prompt_telling",
        sql_name="prompt_telling",
        shape=TellingRecord,
        fields=TELLING_FIELDS,
        key="key",
        belongs_to=("key", "prompt", "prompt"),
    ),
    Table(
        heading="preparation",
        sql_name="preparation",
        shape=PreparationRecord,
        fields=PREPARATION_FIELDS,
        key="key",
        fault=preparation_fault,
    ),
    Table(
        heading="learnt",
        sql_name="learnt",
        shape=LearntRecord,
        fields=LEARNT_FIELDS,
        key="coat_key",
        belongs_to=("coat_key", "coat", "coat"),
    ),
    Table(heading="warning", sql_name="warning", shape=WarningRecord, fields=WARNING_FIELDS, key="key"),
    Table(
        heading="warning_change",
        sql_name="warning_state",
        shape=WarningChange,
        fields=CHANGE_FIELDS,
        belongs_to=("warning_key", "warning", "warning"),
    ),
    Table(
        heading="calibration",
        sql_name="calibration",
        shape=CalibrationRecord,
        fields=CALIBRATION_FIELDS,
        key="key",
        fault=calibration_fault,
    ),
    Table(heading="sensor_sighting", sql_name="sensor_sighting", shape=Sighting, fields=SENSOR_FIELDS),
    Table(heading="sensor_check", sql_name="sensor_check", shape=CheckRecord, fields=SENSOR_FIELDS),
    Table(heading="recipe", sql_name="recipe", shape=RecipeRecord, fields=RECIPE_FIELDS, key="name"),
    Table(
        heading="working_day",
        sql_name="working_day",
        shape=WorkingDayRecord,
        fields=WORKING_DAY_FIELDS,
        key="day",
    ),
    Table(
        heading="intention",
        sql_name="intention",
        shape=IntentionRecord,
        fields=INTENTION_FIELDS,
        key="key",
        fault=intention_fault,
    ),
    Table(heading="imported", sql_name="imported", shape=Imported, fields=IMPORTED_FIELDS, fault=imported_fault),
    Table(heading="note", sql_name="note", shape=NoteRecord, fields=NOTE_FIELDS),
    Table(heading="correction", sql_name="correction", shape=CorrectionRecord, fields=CORRECTION_FIELDS),
)
