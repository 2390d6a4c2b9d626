"""The fields of a studio file: what each may hold, and what it becomes."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from datetime import UTC, date, datetime, timedelta
from enum import StrEnum
from math import isfinite
from typing import Any

from studiowatch.coats.stages import Orientation
from studiowatch.speech.words import mark, say
from studiowatch.studio.pieces import LATEST_YEAR, PANELS_MOST, TITLE_MOST, Finding, Outcome, Shape, SIDE_cm

_EPOCH = datetime(1970, 1, 1, tzinfo=UTC)
_MOST_LAID = 100_000  # mL or g, assumption: far more than any coat
_THICKEST_UM = 10_000  # µm, assumption: ten times a heavy pour
_LAST_PLACE = 100_000  # assumption: no rack is longer


class Wrong(ValueError):  # noqa: N818 - an answer to a value, caught where it is read
    """A value that may not stand there."""


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


def utc_ms(moment: datetime) -> int:
    """Return an aware `moment` as UTC milliseconds since 1970, exactly."""
    return (moment - _EPOCH) // timedelta(milliseconds=1)


def moment_of(time_ms: int) -> datetime:
    """Return UTC milliseconds since 1970 as an aware moment, exactly."""
    return _EPOCH + timedelta(milliseconds=time_ms)


def _text(value: Any) -> str:  # noqa: ANN401 - whatever the file holds
    if not isinstance(value, str) or not value.strip():
        raise Wrong
    return value


def _title(value: Any) -> str:  # noqa: ANN401
    title = _text(value)
    if not title.isprintable() or len(title) > TITLE_MOST:
        raise Wrong
    return title


def _any_text(value: Any) -> str:  # noqa: ANN401
    if not isinstance(value, str):
        raise Wrong
    return value


def _yes_or_no(value: Any) -> bool:  # noqa: ANN401
    if not isinstance(value, bool):
        raise Wrong
    return value


def _place(value: Any) -> int:  # noqa: ANN401
    if isinstance(value, bool) or not isinstance(value, int) or not 0 <= value <= _LAST_PLACE:
        raise Wrong
    return value


def _panels(value: Any) -> int:  # noqa: ANN401
    if isinstance(value, bool) or not isinstance(value, int) or not 1 <= value <= PANELS_MOST:
        raise Wrong
    return value


def _file_name(value: Any) -> str:  # noqa: ANN401
    """Return the name of a file that lies in a folder of ours, whichever system wrote it, or ""."""
    name = _any_text(value)
    if any(sign in name for sign in "/\\:") or name.startswith(".") or not (name.isprintable() or not name):
        raise Wrong
    return name


def _day(value: Any) -> date:  # noqa: ANN401
    if isinstance(value, datetime) or not isinstance(value, date) or value.year > LATEST_YEAR:
        raise Wrong
    return value


def _moment(value: Any) -> int:  # noqa: ANN401
    if not isinstance(value, datetime) or value.tzinfo is None or value < _EPOCH or value.year > LATEST_YEAR:
        raise Wrong
    return utc_ms(value)


def _number(value: Any) -> float:  # noqa: ANN401
    if isinstance(value, bool) or not isinstance(value, int | float):
        raise Wrong
    try:
        return float(value)
    except OverflowError as error:
        raise Wrong from error


def _above_zero(most: float) -> Callable[[Any], float]:
    def read(value: Any) -> float:  # noqa: ANN401
        number = _number(value)
        if not 0 < number <= most:
            raise Wrong
        return number

    return read


def _percent(value: Any) -> float:  # noqa: ANN401
    number = _number(value)
    if not 0 <= number <= 100:  # noqa: PLR2004 - percent
        raise Wrong
    return abs(number)


def _count(value: Any) -> int:  # noqa: ANN401
    if isinstance(value, bool) or not isinstance(value, int) or not 0 <= value < 2**63:
        raise Wrong
    return value


def _texts(value: Any) -> tuple[str, ...]:  # noqa: ANN401
    if not isinstance(value, list):
        raise Wrong
    return tuple(_any_text(each) for each in value)


def _rows(value: Any) -> tuple[Mapping[str, float], ...]:  # noqa: ANN401
    if not isinstance(value, list) or not all(isinstance(row, dict) for row in value):
        raise Wrong
    rows = tuple({name: _number(number) for name, number in row.items()} for row in value)
    if not all(isfinite(number) for row in rows for number in row.values()):
        raise Wrong
    return rows


def _one_of(words: type[StrEnum]) -> Callable[[Any], StrEnum]:
    def read(value: Any) -> StrEnum:  # noqa: ANN401
        if value not in list(words):
            raise Wrong
        return words(value)

    return read


def _words(words: type[StrEnum]) -> str:
    return ", ".join(f'"{word}"' for word in words)


_A_TEXT = mark("a text in quotes that is not empty")
_A_TITLE = mark("a text in quotes of 1 to {most} characters that can be shown")
_ANY_TEXT = mark("a text in quotes")
_A_KEY_OF = mark("the key of a coat")
_A_MOMENT = mark("a date and time with its zone, 1970 to {year}, like 2026-03-02T09:00:00Z")
_KEY = Field(name="key", attribute="key", read=_text, allowed=mark("a text in quotes that no other has"))


def _length(name: str) -> Field:
    most_cm = SIDE_cm[1]
    return Field(
        name=name,
        attribute=name,
        read=_above_zero(most_cm),
        allowed=mark("a number above 0, up to {most} ({unit})"),
        limits={"most": f"{most_cm:g}", "unit": "cm"},
        required=True,
    )


def _amount(name: str, most: float, unit: str) -> Field:
    return Field(
        name=name,
        attribute=name,
        read=_above_zero(most),
        allowed=mark("a number above 0, up to {most} ({unit})"),
        limits={"most": str(most), "unit": unit},
    )


def _time(name: str, attribute: str, *, required: bool = False) -> Field:
    limits = {"year": str(LATEST_YEAR)}
    return Field(name=name, attribute=attribute, read=_moment, allowed=_A_MOMENT, limits=limits, required=required)


PIECE_FIELDS = (
    Field(
        name="title", attribute="title", read=_title, allowed=_A_TITLE, limits={"most": str(TITLE_MOST)}, required=True
    ),
    _length("width_cm"),
    _length("height_cm"),
    Field(
        name="due",
        attribute="due",
        read=_day,
        allowed=mark("a day up to the year {year}, like 2026-03-20"),
        limits={"year": str(LATEST_YEAR)},
    ),
    Field(name="support", attribute="support", read=_any_text, allowed=_ANY_TEXT),
    Field(
        name="orientation",
        attribute="orientation",
        read=_one_of(Orientation),
        allowed=_words(Orientation),
    ),
    Field(
        name="place",
        attribute="place",
        read=_place,
        allowed=mark("a whole number, 0 to {most}"),
        limits={"most": str(_LAST_PLACE)},
    ),
    Field(name="archived", attribute="archived", read=_yes_or_no, allowed=mark("true or false")),
    Field(name="shape", attribute="shape", read=_one_of(Shape), allowed=_words(Shape)),
    Field(
        name="panels",
        attribute="panels",
        read=_panels,
        allowed=mark("a whole number, 1 to {most}"),
        limits={"most": str(PANELS_MOST)},
    ),
    Field(name="photo", attribute="photo", read=_file_name, allowed=mark("the name of a file, without a folder")),
    Field(name="notes", attribute="notes", read=_any_text, allowed=_ANY_TEXT),
    _KEY,
)
COAT_FIELDS = (
    Field(name="sheet", attribute="sheet", read=_text, allowed=_A_TEXT, required=True),
    _time("laid", "laid_ms"),
    _amount("volume_mL", _MOST_LAID, "mL"),
    _amount("grams", _MOST_LAID, "g"),
    _amount("wet_um", _THICKEST_UM, "µm"),
    Field(
        name="thinned_pct",
        attribute="thinned_pct",
        read=_percent,
        allowed=mark("0 to 100 (% of the volume, water added)"),
    ),
    _time("covered_from", "covered_from_ms"),
    Field(name="outcome", attribute="outcome", read=_one_of(Outcome), allowed=_words(Outcome)),
    _time("seen", "seen_ms"),
    _KEY,
)
LOOK_FIELDS = (
    _time("time", "time_ms", required=True),
    Field(name="finding", attribute="finding", read=_one_of(Finding), allowed=_words(Finding), required=True),
    _KEY,
)

PROMPT_FIELDS = (
    _KEY,
    Field(name="coat", attribute="coat_key", read=_text, allowed=_A_KEY_OF, required=True),
    _time("due", "due_ms", required=True),
    Field(name="text", attribute="text", read=_any_text, allowed=_ANY_TEXT, required=True),
    _time("done", "done_ms"),
)
TELLING_FIELDS = (
    Field(name="prompt", attribute="key", read=_text, allowed=mark("the key of a prompt"), required=True),
    _time("told", "told_ms"),
    _time("snoozed", "snoozed_ms"),
)
PREPARATION_FIELDS = (
    _KEY,
    _time("began", "began_ms", required=True),
    _time("ended", "ended_ms"),
    Field(name="state", attribute="state", read=_text, allowed=mark("what was prepared, as exported"), required=True),
)
LEARNT_FIELDS = (
    Field(name="coat", attribute="coat_key", read=_text, allowed=_A_KEY_OF, required=True),
    Field(name="sheet", attribute="sheet", read=_text, allowed=_A_TEXT, required=True),
    Field(name="sheet_hash", attribute="sheet_hash", read=_any_text, allowed=_ANY_TEXT, required=True),
    _time("laid", "laid_ms", required=True),
    Field(name="tests", attribute="tests", read=_count, allowed=mark("a whole number from 0"), required=True),
    Field(name="rows", attribute="rows", read=_rows, allowed=mark("a list of {{name = number}} tables"), required=True),
)
WARNING_FIELDS = (
    _KEY,
    *(
        Field(name=name, attribute=name, read=_any_text, allowed=_ANY_TEXT, required=True)
        for name in ("kind", "state", "headline", "detail", "advice")
    ),
    Field(name="level", attribute="level", read=_count, allowed=mark("a whole number from 0"), required=True),
    _time("began", "began_ms", required=True),
    _time("raised", "raised_ms", required=True),
    _time("cleared", "cleared_ms"),
    Field(name="pieces", attribute="pieces", read=_texts, allowed=mark("a list of texts in quotes"), required=True),
    _time("remind", "remind_ms"),
)
CHANGE_FIELDS = (
    Field(name="warning", attribute="warning_key", read=_text, allowed=mark("the key of a warning"), required=True),
    _time("time", "time_ms", required=True),
    Field(name="state", attribute="state", read=_any_text, allowed=_ANY_TEXT, required=True),
)
SENSOR_FIELDS = (
    _time("time", "time_ms", required=True),
    Field(
        name="sensor", attribute="sensor", read=_text, allowed=mark("a sensor's serial number in quotes"), required=True
    ),
)
IMPORTED_FIELDS = (
    _time("start", "start_ms", required=True),
    _time("end", "end_ms", required=True),
)
CALIBRATION_FIELDS = (
    _KEY,
    Field(
        name="sensor", attribute="sensor", read=_text, allowed=mark("a sensor's serial number in quotes"), required=True
    ),
    _time("made", "made_ms", required=True),
    _time("withdrawn", "withdrawn_ms"),
    Field(name="kind", attribute="kind", read=_text, allowed=_A_TEXT, required=True),
    Field(
        name="measured", attribute="measured", read=_text, allowed=mark("what was measured, as exported"), required=True
    ),
)
NOTE_FIELDS = (
    _time("time", "time_ms", required=True),
    Field(name="kind", attribute="kind", read=_any_text, allowed=_ANY_TEXT, required=True),
    Field(name="text", attribute="text", read=_any_text, allowed=_ANY_TEXT, required=True),
)
CORRECTION_FIELDS = (
    _time("time", "time_ms", required=True),
    Field(name="piece", attribute="piece_key", read=_text, allowed=mark("the key of a piece"), required=True),
    Field(name="earlier", attribute="earlier", read=_any_text, allowed=_ANY_TEXT, required=True),
)


def as_toml(value: Any) -> str:  # noqa: ANN401
    """Return a value of the file as TOML reads it."""
    readers: Mapping[type, Callable[[Any], str]] = {
        bool: lambda flag: "true" if flag else "false",
        float: lambda number: str(int(number)) if number.is_integer() else repr(number),
        int: str,
        date: date.isoformat,
        datetime: lambda moment: moment.isoformat(timespec="auto").replace("+00:00", "Z"),
        tuple: lambda each: "[" + ", ".join(map(as_toml, each)) + "]",
        dict: lambda table: "{" + ", ".join(f"{_quoted(key)} = {as_toml(each)}" for key, each in table.items()) + "}",
    }
    writer = readers.get(type(value))
    return writer(value) if writer else _quoted(str(value))


_ESCAPES = {
    '"': '\\"',
    "\\": "\\\\",
    "\b": "\\b",
    "\t": "\\t",
    "\n": "\\n",
    "\f": "\\f",
    "\r": "\\r",
}  # TOML 1.0, "String"


def _quoted(text: str) -> str:
    return '"' + "".join(_ESCAPES.get(character) or _plain(character) for character in text) + '"'


def _plain(character: str) -> str:
    """Escape what TOML 1.0 does not allow as it is: the control characters, delete among them."""
    return f"\\u{ord(character):04x}" if character < " " or character == "\x7f" else character
