"""The fields of a studio file: what each is called, may hold, and becomes."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from enum import StrEnum
from typing import Any

from studiowatch.coats.stages import Orientation
from studiowatch.speech.words import mark, say
from studiowatch.store.field_values import (
    LAST_PLACE,
    above_zero,
    one_of,
    read_any_text,
    read_count,
    read_day,
    read_file_name,
    read_moment,
    read_panels,
    read_percent,
    read_place,
    read_rows,
    read_text,
    read_texts,
    read_title,
    read_yes_or_no,
)
from studiowatch.studio.pieces import (
    EARLIEST_YEAR,
    LATEST_YEAR,
    PANELS_MOST,
    TITLE_MOST,
    Finding,
    Outcome,
    Shape,
    SIDE_cm,
)

_MOST_LAID = 100_000  # mL or g, assumption: far more than any coat
_THICKEST_UM = 10_000  # µm, assumption: ten times a heavy pour


@dataclass(frozen=True, slots=True, kw_only=True)
class Field:
    """One field: its name in the file, the attribute it becomes, how it is read, and what is allowed in words.

    `limits` are the values that `allowed` names in braces.
    """

    name: str
    attribute: str
    read: Callable[[Any], Any]
    allowed: str
    required: bool = False
    limits: Mapping[str, str] = field(default_factory=dict)

    def allowed_words(self) -> str:
        """Return what is allowed, in her language."""
        return say(self.allowed, **self.limits)


def _words(words: type[StrEnum]) -> str:
    return ", ".join(f'"{word}"' for word in words)


_A_TEXT = mark("a text in quotes that is not empty")
_A_TITLE = mark("a text in quotes of 1 to {most} characters that can be shown")
_ANY_TEXT = mark("a text in quotes")
_A_KEY_OF = mark("the key of a coat")
_A_MOMENT = mark("a date and time with its zone, 1970 to {year}, like 2026-03-02T09:00:00Z")
_KEY = Field(name="key", attribute="key", read=read_text, allowed=mark("a text in quotes that no other has"))


def _length(name: str) -> Field:
    most_cm = SIDE_cm[1]
    return Field(
        name=name,
        attribute=name,
        read=above_zero(most_cm),
        allowed=mark("a number above 0, up to {most} ({unit})"),
        limits={"most": f"{most_cm:g}", "unit": "cm"},
        required=True,
    )


def _amount(name: str, most: float, unit: str) -> Field:
    return Field(
        name=name,
        attribute=name,
        read=above_zero(most),
        allowed=mark("a number above 0, up to {most} ({unit})"),
        limits={"most": str(most), "unit": unit},
    )


def _time(name: str, attribute: str, *, required: bool = False) -> Field:
    limits = {"year": str(LATEST_YEAR)}
    return Field(name=name, attribute=attribute, read=read_moment, allowed=_A_MOMENT, limits=limits, required=required)


PIECE_FIELDS = (
    Field(
        name="title",
        attribute="title",
        read=read_title,
        allowed=_A_TITLE,
        limits={"most": str(TITLE_MOST)},
        required=True,
    ),
    _length("width_cm"),
    _length("height_cm"),
    Field(
        name="due",
        attribute="due",
        read=read_day,
        allowed=mark("a day of the years {first} to {last}, like 2026-03-20"),
        limits={"first": str(EARLIEST_YEAR), "last": str(LATEST_YEAR)},
    ),
    Field(name="support", attribute="support", read=read_any_text, allowed=_ANY_TEXT),
    Field(
        name="orientation",
        attribute="orientation",
        read=one_of(Orientation),
        allowed=_words(Orientation),
    ),
    Field(
        name="place",
        attribute="place",
        read=read_place,
        allowed=mark("a whole number, 0 to {most}"),
        limits={"most": str(LAST_PLACE)},
    ),
    Field(name="archived", attribute="archived", read=read_yes_or_no, allowed=mark("true or false")),
    Field(name="shape", attribute="shape", read=one_of(Shape), allowed=_words(Shape)),
    Field(
        name="panels",
        attribute="panels",
        read=read_panels,
        allowed=mark("a whole number, 1 to {most}"),
        limits={"most": str(PANELS_MOST)},
    ),
    Field(name="photo", attribute="photo", read=read_file_name, allowed=mark("the name of a file, without a folder")),
    Field(name="notes", attribute="notes", read=read_any_text, allowed=_ANY_TEXT),
    _KEY,
)
COAT_FIELDS = (
    Field(name="sheet", attribute="sheet", read=read_text, allowed=_A_TEXT, required=True),
    _time("laid", "laid_ms"),
    _amount("volume_mL", _MOST_LAID, "mL"),
    _amount("grams", _MOST_LAID, "g"),
    _amount("wet_um", _THICKEST_UM, "µm"),
    Field(
        name="thinned_pct",
        attribute="thinned_pct",
        read=read_percent,
        allowed=mark("0 to 100 (% of the volume, water added)"),
    ),
    _time("covered_from", "covered_from_ms"),
    Field(name="outcome", attribute="outcome", read=one_of(Outcome), allowed=_words(Outcome)),
    _time("seen", "seen_ms"),
    _KEY,
)
LOOK_FIELDS = (
    _time("time", "time_ms", required=True),
    Field(name="finding", attribute="finding", read=one_of(Finding), allowed=_words(Finding), required=True),
    _KEY,
)

PROMPT_FIELDS = (
    _KEY,
    Field(name="coat", attribute="coat_key", read=read_text, allowed=_A_KEY_OF, required=True),
    _time("due", "due_ms", required=True),
    Field(name="text", attribute="text", read=read_any_text, allowed=_ANY_TEXT, required=True),
    _time("done", "done_ms"),
)
TELLING_FIELDS = (
    Field(name="prompt", attribute="key", read=read_text, allowed=mark("the key of a prompt"), required=True),
    _time("told", "told_ms"),
    _time("snoozed", "snoozed_ms"),
)
PREPARATION_FIELDS = (
    _KEY,
    _time("began", "began_ms", required=True),
    _time("ended", "ended_ms"),
    Field(
        name="state", attribute="state", read=read_text, allowed=mark("what was prepared, as exported"), required=True
    ),
)
LEARNT_FIELDS = (
    Field(name="coat", attribute="coat_key", read=read_text, allowed=_A_KEY_OF, required=True),
    Field(name="sheet", attribute="sheet", read=read_text, allowed=_A_TEXT, required=True),
    Field(name="sheet_hash", attribute="sheet_hash", read=read_any_text, allowed=_ANY_TEXT, required=True),
    _time("laid", "laid_ms", required=True),
    Field(name="tests", attribute="tests", read=read_count, allowed=mark("a whole number from 0"), required=True),
    Field(
        name="rows", attribute="rows", read=read_rows, allowed=mark("a list of {{name = number}} tables"), required=True
    ),
)
WARNING_FIELDS = (
    _KEY,
    *(
        Field(name=name, attribute=name, read=read_any_text, allowed=_ANY_TEXT, required=True)
        for name in ("kind", "state", "headline", "detail", "advice")
    ),
    Field(name="level", attribute="level", read=read_count, allowed=mark("a whole number from 0"), required=True),
    _time("began", "began_ms", required=True),
    _time("raised", "raised_ms", required=True),
    _time("cleared", "cleared_ms"),
    Field(name="pieces", attribute="pieces", read=read_texts, allowed=mark("a list of texts in quotes"), required=True),
    _time("remind", "remind_ms"),
    _time("ahead", "ahead_ms"),
)
CHANGE_FIELDS = (
    Field(name="warning", attribute="warning_key", read=read_text, allowed=mark("the key of a warning"), required=True),
    _time("time", "time_ms", required=True),
    Field(name="state", attribute="state", read=read_any_text, allowed=_ANY_TEXT, required=True),
)
_SENSOR = Field(
    name="sensor",
    attribute="sensor",
    read=read_any_text,  # one that says no serial number has an empty one
    allowed=mark("a sensor's serial number in quotes"),
    required=True,
)
SENSOR_FIELDS = (
    _time("time", "time_ms", required=True),
    _SENSOR,
)
IMPORTED_FIELDS = (
    _time("start", "start_ms", required=True),
    _time("end", "end_ms", required=True),
)
CALIBRATION_FIELDS = (
    _KEY,
    _SENSOR,
    _time("made", "made_ms", required=True),
    _time("withdrawn", "withdrawn_ms"),
    Field(name="kind", attribute="kind", read=read_text, allowed=_A_TEXT, required=True),
    Field(
        name="measured",
        attribute="measured",
        read=read_text,
        allowed=mark("what was measured, as exported"),
        required=True,
    ),
)
NOTE_FIELDS = (
    _time("time", "time_ms", required=True),
    Field(name="kind", attribute="kind", read=read_any_text, allowed=_ANY_TEXT, required=True),
    Field(name="text", attribute="text", read=read_any_text, allowed=_ANY_TEXT, required=True),
)
CORRECTION_FIELDS = (
    _time("time", "time_ms", required=True),
    Field(name="piece", attribute="piece_key", read=read_text, allowed=mark("the key of a piece"), required=True),
    Field(name="earlier", attribute="earlier", read=read_any_text, allowed=_ANY_TEXT, required=True),
)
