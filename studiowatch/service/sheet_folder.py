"""Her own data sheets on disk: one TOML file each in a folder beside the records."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path

from studiowatch.coats.data_sheet import DataSheet
from studiowatch.coats.sheet_file import SheetFaults, read_sheet, sheet_of
from studiowatch.service.commands import Refused
from studiowatch.speech.words import say
from studiowatch.store.toml_text import as_toml

NAME = re.compile(r"[a-z0-9][a-z0-9-]{0,60}")  # of a sheet that is kept from a form, and so of its file
_HEAD = "# Typed in studiowatch from a product's own sheet. Times hold at 23 °C, 50 % RH and the film named here.\n\n"


@dataclass(frozen=True, slots=True, kw_only=True)
class SheetFolder:
    """Keeps sheets in `folder`."""

    folder: Path

    def keep(self, fields: Mapping[str, object]) -> DataSheet:
        """Write the sheet of `fields` and return it.

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
            sheet = sheet_of(dict(fields), say("The sheet"))
        except SheetFaults as faults:
            raise Refused(f"{faults.faults[0]}.") from faults
        path = self.path_of(name) or self.folder / f"{name}.toml"
        try:
            self.folder.mkdir(mode=0o700, exist_ok=True)
            unfinished = path.with_suffix(".unfinished")
            unfinished.touch(mode=0o600)
            unfinished.write_text(_HEAD + _toml(fields), "utf-8")
            unfinished.replace(path)
        except OSError as fault:
            raise Refused(
                say(
                    "The sheet could not be kept in {folder}: {fault}.",
                    folder=self.folder,
                    fault=fault.strerror or fault,
                )
            ) from fault
        return sheet

    def drop(self, name: str) -> None:
        """Delete the file of a sheet. Raises Refused if there is none, or it cannot be deleted."""
        path = self.path_of(name)
        if path is None:
            raise Refused(
                say("There is no sheet of yours called {name}; only your own can be deleted.", name=repr(name))
            )
        try:
            path.unlink()
        except OSError as fault:
            raise Refused(
                say(
                    "{path} cannot be deleted: {fault}. Delete it by hand.",
                    path=path,
                    fault=fault.strerror or fault,
                )
            ) from fault

    def path_of(self, name: str) -> Path | None:
        """Return the file that holds the sheet `name`, whatever the file is called, or None."""
        for path in sorted(self.folder.glob("*.toml")):
            try:
                if read_sheet(path.read_text("utf-8-sig"), str(path)).name == name:
                    return path
            except (OSError, ValueError):
                continue  # no sheet, and so not this one: whoever opens the shelf says what is wrong with it
        return None


def _toml(fields: Mapping[str, object]) -> str:
    return "".join(f"{name} = {_value(value)}\n" for name, value in fields.items())


def _value(value: object) -> str:
    return as_toml(tuple(value) if isinstance(value, list) else value)
