"""Her own data sheets on disk: one TOML file each in a folder beside the records.

What is done to a file keeps its bytes from before and after, so that it can be put back as it was.
"""

from __future__ import annotations

import io
import re
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path

from studiowatch.coats.data_sheet import DataSheet
from studiowatch.coats.sheet_file import SheetFaults, read_sheet, sheet_of
from studiowatch.service.commands import Refused
from studiowatch.service.whole_file import put_whole
from studiowatch.speech.words import say
from studiowatch.store.toml_text import as_toml

NAME = re.compile(r"[a-z0-9][a-z0-9-]{0,60}")  # of a sheet that is kept from a form, and so of its file
_HEAD = "# Typed in studiowatch from a product's own sheet. Times hold at 23 °C, 50 % RH and the film named here.\n\n"


class FileMoved(Refused):
    """A file is not as a deed left it; it stays as it is, and what would have come back is kept beside it."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Filed:
    """What was done to the file of a sheet.

    Attributes
    ----------
    name : str
        The sheet's.
    path : Path
        The file's.
    texts : (bytes or None, bytes or None)
        The whole file before and after; None where there is none.
    """

    name: str
    path: Path
    texts: tuple[bytes | None, bytes | None]

    def sheet(self, side: int) -> DataSheet | None:
        """Return the sheet before (0) or after (1), or None where there is none."""
        text = self.texts[side]
        return None if text is None else _sheet_in(text, self.path)


@dataclass(frozen=True, slots=True, kw_only=True)
class SheetFolder:
    """Keeps sheets in `folder`."""

    folder: Path

    def keep(self, fields: Mapping[str, object]) -> Filed:
        """Write the sheet of `fields` and return what that did.

        Raises
        ------
        Refused
            With one sentence if it is no sheet, or cannot be kept; the file is then as it was.
        """
        name = fields.get("name")
        if not isinstance(name, str) or not NAME.fullmatch(name):
            raise Refused(
                say(
                    "The sheet's name is {name}; allowed are up to 61 small letters, digits and hyphens.",
                    name=repr(name),
                )
            )
        try:
            sheet_of(dict(fields), say("The sheet"))
        except SheetFaults as faults:
            raise Refused(f"{faults.faults[0]}.") from faults
        path, text = self._find(name) or (_free(self.folder / f"{name}.toml"), None)
        filed = Filed(name=name, path=path, texts=(text, (_HEAD + _toml(fields)).encode()))
        self._write(filed, 1)
        return filed

    def drop(self, name: str) -> Filed:
        """Delete the file of a sheet and return what that did. Raises Refused if there is none, or it stays."""
        found = self._find(name)
        if found is None:
            raise Refused(
                say("There is no sheet of yours called {name}; only your own can be deleted.", name=repr(name))
            )
        path, text = found
        filed = Filed(name=name, path=path, texts=(text, None))
        self._write(filed, 1)
        return filed

    def put(self, filed: Filed, side: int) -> None:
        """Have the file as it was before a deed (0), or after it (1).

        Raises
        ------
        FileMoved
            If another program wrote to it since; it is left as it is.
        Refused
            If the disk refuses; nothing was changed.
        """
        if _bytes_of(filed.path) != filed.texts[1 - side]:
            raise FileMoved(self._set_aside(filed, side))
        self._write(filed, side)

    def _find(self, name: str) -> tuple[Path, bytes] | None:
        """Return the file that holds the sheet `name`, whatever the file is called, with all that is in it, or None."""
        for path in sorted(self.folder.glob("*.toml"), reverse=True):  # of two, the shelf shows the last
            try:
                text = path.read_bytes()
                if _sheet_in(text, path).name == name:
                    return path, text
            except (OSError, ValueError):
                continue  # no sheet, and so not this one: whoever opens the shelf says what is wrong with it
        return None

    def _write(self, filed: Filed, side: int) -> None:
        """Write or delete the file: whole, or not at all. Raises Refused."""
        path, text = filed.path, filed.texts[side]
        try:
            if text is None:
                path.unlink()
            else:
                self.folder.mkdir(mode=0o700, exist_ok=True)
                put_whole(path, text)
        except OSError as fault:
            raise Refused(_cannot(self.folder if text is not None else path, text, fault)) from fault

    def _set_aside(self, filed: Filed, side: int) -> str:
        """Keep what would have come back in a file of its own; return the sentence that tells. Raises Refused."""
        text = filed.texts[side]
        if text is None:
            return say("{path} was changed or moved by another program since, so it stays as it is.", path=filed.path)
        aside = _free(filed.path.with_suffix(".earlier"))
        self._write(Filed(name=filed.name, path=aside, texts=(None, text)), 1)
        return say(
            "{path} was changed or moved by another program since, so it stays as it is; what would have come back"
            " is in {aside}.",
            path=filed.path,
            aside=aside.name,
        )


def _cannot(path: Path, text: bytes | None, fault: OSError) -> str:
    reason = fault.strerror or fault
    if text is None:
        return say("{path} cannot be deleted: {fault}. Delete it by hand.", path=path, fault=reason)
    return say("The sheet could not be kept in {folder}: {fault}.", folder=path, fault=reason)


def _bytes_of(path: Path) -> bytes | None:
    """Return all that is in a file, or None where there is none. Raises Refused if it cannot be read."""
    try:
        return path.read_bytes()
    except FileNotFoundError:
        return None
    except OSError as fault:
        raise Refused(
            say("The data sheet {path} cannot be read: {fault}.", path=path, fault=fault.strerror or fault)
        ) from fault


def _free(path: Path) -> Path:
    """Return `path`, or one like it with a number where that is taken: no file of another is written over."""
    names = (path, *(path.with_stem(f"{path.stem}-{number}") for number in range(2, 1000)))
    return next(name for name in names if not name.exists())


def _sheet_in(text: bytes, path: Path) -> DataSheet:
    return read_sheet(io.TextIOWrapper(io.BytesIO(text), encoding="utf-8-sig").read(), str(path))


def _toml(fields: Mapping[str, object]) -> str:
    return "".join(f"{name} = {_value(value)}\n" for name, value in fields.items())


def _value(value: object) -> str:
    return as_toml(tuple(value) if isinstance(value, list) else value)
