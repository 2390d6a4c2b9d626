"""Commands as text, for a call that asks a watch in another process: any text gives a command or a sentence."""

from __future__ import annotations

import json
from collections.abc import Callable, Mapping
from dataclasses import asdict, fields, is_dataclass
from datetime import date
from enum import StrEnum
from pathlib import Path
from types import NoneType
from typing import Any, get_args, get_origin, get_type_hints

from studiowatch.service.commands import (
    AmendPiece,
    ArchivePiece,
    Command,
    CoverCoat,
    LayCoat,
    MovePiece,
    RecordLook,
    RecordOutcome,
    RegisterPiece,
)
from studiowatch.service.correction_commands import (
    CorrectCoat,
    CorrectLook,
    RestorePiece,
    TakeBackCoat,
    TakeBackLook,
    TakeBackOutcome,
    TakePhoto,
)
from studiowatch.service.intention_commands import AddIntention, DropIntention
from studiowatch.service.plan_commands import (
    MovePlanned,
    PlanCoat,
    PlanCoats,
    ReplacePlanned,
    SaveRecipe,
    SetWorkingHours,
    UnplanCoat,
)
from studiowatch.speech.words import mark, say

_MAY_BE_ASKED = (
    RegisterPiece,
    AmendPiece,
    ArchivePiece,
    RestorePiece,
    MovePiece,
    LayCoat,
    PlanCoat,
    PlanCoats,
    UnplanCoat,
    ReplacePlanned,
    MovePlanned,
    SetWorkingHours,
    SaveRecipe,
    AddIntention,
    DropIntention,
    CoverCoat,
    RecordLook,
    RecordOutcome,
    CorrectCoat,
    TakeBackCoat,
    CorrectLook,
    TakeBackLook,
    TakeBackOutcome,
    TakePhoto,
)
_BY_NAME: Mapping[str, type[Any]] = {one.__name__: one for one in _MAY_BE_ASKED}
_NO_LETTER = mark("What was asked could not be read; use the same studiowatch for the call as for the watch.")


class NoLetter(ValueError):  # noqa: N818 - reads as the answer it is
    """A text that is no command; the message is one sentence."""


def written(command: Command) -> str:
    """Return `command` as text."""
    return json.dumps({"command": type(command).__name__, "fields": asdict(command)}, default=str, allow_nan=True)


def read(text: str) -> Command:
    """Return the command that `written` was given.

    Raises
    ------
    NoLetter
        If the text is none.
    """
    try:
        letter = json.loads(text)
        return _made(_BY_NAME[letter["command"]], letter["fields"])  # type: ignore[no-any-return]
    except (ValueError, KeyError, TypeError, AttributeError, RecursionError) as fault:
        raise NoLetter(say(_NO_LETTER)) from fault


def _made(kind: type[Any], values: Any) -> Any:  # noqa: ANN401 - whatever the text holds
    if not isinstance(values, dict) or set(values) - {field.name for field in fields(kind)}:
        raise NoLetter(say(_NO_LETTER))
    hints = get_type_hints(kind)
    return kind(**{name: _value(hints[name], value) for name, value in values.items()})


def _value(hint: Any, value: Any) -> Any:  # noqa: ANN401
    choices = [choice for choice in get_args(hint) if choice is not NoneType]
    if get_origin(hint) is tuple:
        return tuple(_value(choices[0], one) for one in value)
    if choices:
        return None if value is None else _value(choices[0], value)
    if isinstance(hint, type) and is_dataclass(hint):
        return _made(hint, value)
    return _plain(hint, value)


def _plain(hint: Any, value: Any) -> Any:  # noqa: ANN401
    reads: Mapping[type, Callable[[Any], Any]] = {date: date.fromisoformat, Path: Path}
    if isinstance(hint, type) and issubclass(hint, StrEnum):
        return hint(value)
    if hint in reads:
        return reads[hint](value)
    allowed = (int, float) if hint is float else hint
    if not isinstance(value, allowed) or (isinstance(value, bool) and hint is not bool):
        raise NoLetter(say(_NO_LETTER))
    return value
