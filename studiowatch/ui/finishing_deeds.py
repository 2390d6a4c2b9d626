"""The finishing record from the window: a look at it first, then PDF or an HTML page, all off the window's thread."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QObject, Signal
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QFileDialog, QWidget
from shiboken6 import isValid

from studiowatch.service.exchange import ExchangeFault
from studiowatch.service.finishing_sheets import FinishingSheets
from studiowatch.service.piece_view import PieceView
from studiowatch.service.readings_out import Show
from studiowatch.service.record_page import page
from studiowatch.service.whole_file import replacing, whole_file
from studiowatch.speech.words import mark, say
from studiowatch.ui.documents import documents
from studiowatch.ui.exchange_deeds import ExchangeDeeds
from studiowatch.ui.long_work import LongWork, Tell, Work
from studiowatch.ui.models.exchange import NO_FILES
from studiowatch.ui.models.finishing import FinishingChoice, Form, file_name
from studiowatch.ui.print.record_pdf import record_pictures, write_pdf
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.finishing_dialog import FinishingDialog

CHOOSE = mark("Choose a piece on the rack first.")


class FinishingDeeds(QObject):
    """Shows the record of a piece and has it written; `refused` tells in words why not."""

    refused = Signal(str)

    def __init__(self, sheets: FinishingSheets | None, exchange: ExchangeDeeds, window: QWidget) -> None:
        super().__init__(window)
        self._sheets, self._exchange, self._window = sheets, exchange, window
        self._looking: list[LongWork] = []
        self.style = Style()

    def open(self, piece: PieceView | None) -> FinishingDialog | None:
        """Open the dialog of `piece`."""
        if piece is None or self._sheets is None:
            self.refused.emit(say(CHOOSE if piece is None else NO_FILES))
            return None
        dialog = FinishingDialog(piece.title, self.style, self._window)
        dialog.changed.connect(lambda choice: self._look(dialog, piece.key, choice))
        dialog.save_asked.connect(lambda form: self._save(dialog, piece, form))
        self._look(dialog, piece.key, dialog.choice)
        dialog.open()
        return dialog

    def close(self) -> None:
        """End what runs: the window is going."""
        works, self._looking = self._looking, []
        for work in works:
            work.stop()

    def _look(self, dialog: FinishingDialog, piece_key: str, choice: FinishingChoice) -> None:
        """Draw the pages for the dialog; what was asked for before is not shown any more."""
        sheets = self._sheets
        if sheets is None:
            return
        drawn: list[QImage] = []

        def draw(_show: Show, _tell: Tell) -> str:
            sheet = sheets.sheet(piece_key, with_notes=choice.with_notes)
            drawn.extend(record_pictures(sheet.record, sheet.photo, choice.paper))
            return sheet.photo_trouble

        work = LongWork(draw, self)  # not the dialog's, which may be closed, and gone, before the pages are drawn
        self._looking.append(work)
        work.done.connect(lambda trouble: dialog.show_pages(choice, drawn, trouble) if isValid(dialog) else None)
        work.failed.connect(dialog.show_fault)
        for ended in (work.done, work.failed):
            ended.connect(lambda _words: self._let_go(work))
        work.start()

    def _let_go(self, work: LongWork) -> None:
        """Keep a work no longer that has ended, nor the pages that it drew."""
        if work in self._looking:
            self._looking.remove(work)
        work.deleteLater()

    def _save(self, dialog: FinishingDialog, piece: PieceView, form: Form) -> None:
        asked = QFileDialog(dialog, form.title, documents(), form.files)
        asked.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        asked.setDefaultSuffix(form.suffix)
        asked.selectFile(file_name(piece.title, form))
        choice = dialog.choice
        asked.fileSelected.connect(
            lambda name: self._exchange.run(form.title, self._writing(piece.key, choice, form, Path(name)))
        )
        asked.finished.connect(asked.deleteLater)
        asked.open()

    def _writing(self, piece_key: str, choice: FinishingChoice, form: Form, path: Path) -> Work:
        sheets = self._sheets

        def write(show: Show, tell: Tell) -> str:
            if sheets is None:
                raise ExchangeFault(say(NO_FILES))
            sheet = sheets.sheet(piece_key, with_notes=choice.with_notes)
            if sheet.photo_trouble:
                tell(sheet.photo_trouble)
            show(0.3, say("drawing the pages"))
            try:
                if form is Form.HTML:
                    with whole_file(path) as out:
                        out.write(page(sheet.record, sheet.photo))
                else:
                    with replacing(path) as unfinished:
                        write_pdf(sheet.record, unfinished, sheet.photo, choice.paper)
            except OSError as fault:
                raise ExchangeFault(
                    say(
                        "{path} cannot be written: {reason}. Choose another place.",
                        path=path,
                        reason=fault.strerror or fault,
                    )
                ) from fault
            return say("Written to {path}.", path=path)

        return write
