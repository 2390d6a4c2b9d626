"""The shelf of data sheets: the built-in generic ones, and hers from the folder beside the records."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from importlib.resources import files
from pathlib import Path
from unicodedata import combining, normalize

from studiowatch.coats.data_sheet import DataSheet, Kind
from studiowatch.coats.sheet_file import read_sheet
from studiowatch.service.product_views import SheetChoice, SheetEntry
from studiowatch.service.sheet_words import in_her_language
from studiowatch.speech.words import say


class SheetUnknown(Exception):  # noqa: N818 - reads as the answer it is
    """A sheet that is not on the shelf; the message names those that are."""


def built_in_sheets() -> dict[str, DataSheet]:
    """Return the generic sheets that ship with studiowatch, by name, as her language calls them."""
    folder = files("studiowatch.resources") / "sheets"
    texts = sorted((entry.name, entry.read_text("utf-8")) for entry in folder.iterdir() if entry.name.endswith(".toml"))
    sheets = [in_her_language(read_sheet(text, name)) for name, text in texts]
    return {sheet.name: sheet for sheet in sheets}


@dataclass(frozen=True, slots=True, kw_only=True)
class SheetShelf:
    """Data sheets by name; `own` are the names of hers."""

    sheets: dict[str, DataSheet]
    own: set[str] = field(default_factory=set)

    @classmethod
    def open(cls, folder: Path | None = None) -> SheetShelf:
        """Read the built-in sheets, then those in `folder`; hers win over built-in ones of the same name.

        Raises
        ------
        SheetFaults, SheetUnknown
            If a file in `folder` is not a sheet, with all its faults, or cannot be read.
        """
        sheets, own = built_in_sheets(), set()
        if folder is not None and folder.is_dir():
            for path in sorted(folder.glob("*.toml")):
                sheet = _read(path)
                sheets[sheet.name] = sheet
                own.add(sheet.name)
        return cls(sheets=sheets, own=own)

    def put(self, sheet: DataSheet) -> None:
        """Put a sheet of hers on the shelf, in the place of one of that name."""
        self.sheets[sheet.name] = sheet
        self.own.add(sheet.name)

    def drop(self, name: str) -> None:
        """Take a sheet of hers off the shelf; a built-in one of its name holds again."""
        self.own.discard(name)
        del self.sheets[name]
        built_in = built_in_sheets().get(name)
        if built_in is not None:
            self.sheets[name] = built_in

    def entries(self) -> tuple[SheetEntry, ...]:
        """Return all sheets by their titles as they are said, built-in ones first."""
        entries = (SheetEntry(sheet=sheet, is_own=sheet.name in self.own) for sheet in self.sheets.values())
        return tuple(sorted(entries, key=lambda entry: (entry.is_own, _in_order(entry.sheet.title))))

    def get(self, name: str) -> DataSheet:
        """Return a sheet by its name.

        Raises
        ------
        SheetUnknown
            If there is none; the sentence names those there are.
        """
        try:
            return self.sheets[name]
        except KeyError:
            known = ", ".join(sorted(self.sheets))
            raise SheetUnknown(
                say("There is no data sheet {name}; known are {known}.", name=repr(name), known=known)
            ) from None

    def stand_in(self, name: str) -> DataSheet:
        """Return a sheet by its name, or, if it is gone, one that keeps the coat on the rack without drying it."""
        if name in self.sheets:
            return self.sheets[name]
        plain = next(iter(self.sheets.values()))
        return replace(
            plain, name=name, title=say("{name} (its sheet is missing)", name=name), kind=Kind.SOLVENTBORNE, sheen=None
        )

    def find(self, name: str, beside: Path) -> DataSheet:
        """Return a sheet by its name, or from a ``.toml`` file in the folder `beside`, or in one within it.

        The name was read from a file, which may be anybody's: neither a path nor a link leads out of that folder.

        Raises
        ------
        SheetFaults, SheetUnknown
            If there is no such sheet, or the file is none.
        """
        if not name.endswith(".toml"):
            return self.get(name)
        path = beside / name
        if not _is_within(path, beside):
            raise SheetUnknown(
                say("The data sheet {name} does not lie beside the file that names it; put it there.", name=repr(name))
            )
        return _read(path)

    def find_anywhere(self, name: str) -> DataSheet:
        """Return a sheet by its name, or from a ``.toml`` file that she named herself.

        Raises
        ------
        SheetFaults, SheetUnknown
            If there is no such sheet, or the file is none.
        """
        return _read(Path(name)) if name.endswith(".toml") else self.get(name)

    def choices(self) -> Sequence[SheetChoice]:
        """Return what the window offers in its lists."""
        return tuple(choice_of(sheet) for sheet in self.sheets.values())


def _in_order(title: str) -> str:
    """Return what a title is ordered by: its letters, whatever their case, an accented one with its plain one."""
    return "".join(sign for sign in normalize("NFKD", title.casefold()) if not combining(sign))


def _is_within(path: Path, folder: Path) -> bool:
    """Return whether `path` leads to something in `folder`, links followed; a path that leads nowhere does too."""
    try:
        return path.resolve().is_relative_to(folder.resolve())
    except (OSError, ValueError, RuntimeError):  # no path at all, or links in a circle: there is no such file
        return True


def _read(path: Path) -> DataSheet:
    if "\0" in str(path) or not path.is_file():
        raise SheetUnknown(
            say("There is no data sheet file {path}; give the path of a .toml file.", path=repr(str(path)))
        )
    try:
        return read_sheet(path.read_text("utf-8-sig"), str(path))
    except OSError as fault:
        raise SheetUnknown(
            say("The data sheet {path} cannot be read: {fault}.", path=path, fault=fault.strerror or fault)
        ) from fault
    except UnicodeDecodeError as fault:
        sentence = say(
            "The data sheet {path} is not UTF-8 text (byte {start}); save it as UTF-8.", path=path, start=fault.start
        )
        raise SheetUnknown(sentence) from fault
    except RecursionError as fault:
        raise SheetUnknown(
            say("The data sheet {path} is nested too deep to be one; write plain name = value.", path=path)
        ) from fault


def choice_of(sheet: DataSheet) -> SheetChoice:
    """Return a sheet as a list shows it."""
    return SheetChoice(
        name=sheet.name,
        title=sheet.title,
        sheen=sheet.sheen.value if sheet.sheen else "",
        clear_film=sheet.clear_film,
        solvent=sheet.kind is Kind.SOLVENTBORNE,
        wet_um=sheet.wet_um,
        density_kg_m3=sheet.density_kg_m3,
        cautions=sheet.cautions,
        flash_point_C=sheet.flash_point_C,
    )
