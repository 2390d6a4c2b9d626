"""Her own data sheets while a watch runs: the file first, then the shelf, and coats on the rack are dried anew."""

from __future__ import annotations

from dataclasses import dataclass

from studiowatch.service.commands import Refused
from studiowatch.service.deed_words import sheet_words
from studiowatch.service.rack import Rack
from studiowatch.service.sheet_commands import KeepSheet, SheetCommand
from studiowatch.service.sheet_folder import Filed, SheetFolder
from studiowatch.service.sheet_shelf import built_in_sheets
from studiowatch.service.undo_pile import Deed
from studiowatch.speech.words import say


@dataclass(frozen=True, slots=True, kw_only=True)
class SheetDesk:
    """Makes, edits and deletes sheets of hers; `folder` is None where no file is kept."""

    rack: Rack
    folder: SheetFolder | None = None

    def carry_out(self, command: SheetCommand) -> str:
        """Carry out a command and return the sheet's name; coats of it dry by it from the next `follow` on.

        Raises
        ------
        Refused
            If it cannot be done, or a coat on the rack would lose its sheet; nothing was changed.
        """
        folder = self._folder()
        if isinstance(command, KeepSheet):
            filed = folder.keep(command.fields)
        else:
            self._refuse_loss(command.name)
            filed = folder.drop(command.name)
        self._heed(filed, 1)
        if filed.texts[0] != filed.texts[1]:
            self.rack.pile.record(Deed(words=sheet_words(filed.sheet(0), filed.sheet(1)), filed=filed))
        return filed.name

    def put(self, filed: Filed, side: int) -> None:
        """Have a sheet as it was before a deed (0), or after it (1). Raises Refused, or its FileMoved."""
        if filed.texts[side] is None:
            self._refuse_loss(filed.name)
        self._folder().put(filed, side)
        self._heed(filed, side)

    def _folder(self) -> SheetFolder:
        if self.folder is None:
            raise Refused(say("No board is read and no file is kept here, so that cannot be done."))
        return self.folder

    def _refuse_loss(self, name: str) -> None:
        """Refuse to delete a sheet that a coat on the rack would lose."""
        if name in built_in_sheets():
            return
        for piece in self.rack.on_rack():
            if any(coat.sheet == name for coat in piece.coats):
                raise Refused(
                    say(
                        "{title} has a coat of this sheet; correct that coat first, or keep the sheet.",
                        title=piece.title,
                    )
                )

    def _heed(self, filed: Filed, side: int) -> None:
        sheet = filed.sheet(side)
        if sheet is None:
            self.rack.shelf.drop(filed.name)
        else:
            self.rack.shelf.put(sheet)
        self.rack.dry_anew_by(filed.name)
