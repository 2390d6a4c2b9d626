"""The finishing record from the window: seen first, then saved as PDF or a page, off the window's thread."""

from __future__ import annotations

import threading
from dataclasses import dataclass, field
from pathlib import Path

import pytest
from pypdf import PdfReader
from PySide6.QtWidgets import QFileDialog
from pytestqt.qtbot import QtBot
from shiboken6 import isValid

from studiowatch.service.exchange import ExchangeFault
from studiowatch.service.finishing_sheets import FinishingSheet
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.studio.finishing_record import finishing_record
from studiowatch.studio.pieces import Coat, Piece
from studiowatch.ui.finishing_deeds import CHOOSE, FinishingDeeds
from studiowatch.ui.models.finishing import FinishingChoice, Form, file_name
from studiowatch.ui.window import StudioWindow

from .conftest import Show
from .scenes import EMPTY, FOUR_WARNED, NOW_MS

pytestmark = pytest.mark.window
NOTES = "Hung by the north window"
PIECE = Piece(
    key="orchard",
    title="Orchard, Night",
    width_cm=60.0,
    height_cm=80.0,
    notes=NOTES,
    coats=(Coat(key="one", sheet="gloss-waterborne", laid_ms=NOW_MS, volume_mL=54.0),),
)


@dataclass
class MadeSheets:
    """Records of one made-up piece; keeps on which threads it was asked."""

    refusal: str = ""
    trouble: str = ""
    threads: list[threading.Thread] = field(default_factory=list)

    def sheet(self, piece_key: str, *, with_notes: bool) -> FinishingSheet:
        del piece_key
        self.threads.append(threading.current_thread())
        if self.refusal:
            raise ExchangeFault(self.refusal)
        record = finishing_record(
            PIECE, SheetShelf.open().sheets, lambda *_: None, now_ms=NOW_MS, with_notes=with_notes
        )
        return FinishingSheet(record=record, photo=b"", photo_trouble=self.trouble)


@pytest.fixture
def sheets() -> MadeSheets:
    return MadeSheets()


@pytest.fixture
def deeds(shown: Show, sheets: MadeSheets) -> FinishingDeeds:
    window = shown(FOUR_WARNED)
    window.finishing = FinishingDeeds(sheets, window.exchange, window)
    return window.finishing


def open_record(window: StudioWindow, qtbot: QtBot) -> object:
    dialog = window.finishing.open(window.deeds.piece("orchard"))
    assert dialog is not None
    qtbot.waitUntil(lambda: bool(dialog.pages))
    return dialog


def test_that_the_pages_are_seen_before_they_are_saved_and_drawn_elsewhere(
    deeds: FinishingDeeds, window: StudioWindow, sheets: MadeSheets, qtbot: QtBot
) -> None:
    del deeds
    dialog = open_record(window, qtbot)
    page = dialog.pages[0].pixmap().toImage()
    assert page.height() / page.width() == pytest.approx(297 / 210, rel=0.01)  # A4 of ISO 216
    assert threading.main_thread() not in sheets.threads
    dialog.paper.setCurrentIndex(1)
    qtbot.waitUntil(
        lambda: (
            dialog.pages[0].pixmap().height() / dialog.pages[0].pixmap().width() == pytest.approx(11 / 8.5, rel=0.01)
        )
    )


@pytest.mark.parametrize("form", list(Form), ids=lambda form: form.suffix)
@pytest.mark.parametrize("leave_out", [False, True], ids=["with-notes", "without-notes"])
def test_that_what_is_saved_has_her_notes_or_not(
    deeds: FinishingDeeds, qtbot: QtBot, tmp_path: Path, form: Form, *, leave_out: bool
) -> None:
    window = deeds.parent()
    dialog = open_record(window, qtbot)
    dialog.without_notes.setChecked(leave_out)
    (dialog.pdf if form is Form.PDF else dialog.html).click()
    asked = dialog.findChild(QFileDialog)
    path = tmp_path / f"out.{form.suffix}"
    with qtbot.waitSignal(window.exchange.done):
        asked.fileSelected.emit(str(path))
    html = form is Form.HTML
    text = path.read_text("utf-8") if html else "".join(one.extract_text() for one in PdfReader(path).pages)
    text = " ".join(text.split())  # a PDF has its own blanks
    assert "Orchard, Night" in text
    assert (NOTES in text) is not leave_out
    assert [one.name for one in tmp_path.glob("out*")] == [path.name]


def test_that_a_folder_that_takes_nothing_is_named_and_nothing_is_left(
    deeds: FinishingDeeds, window: StudioWindow, qtbot: QtBot, tmp_path: Path
) -> None:
    del deeds
    dialog = open_record(window, qtbot)
    dialog.pdf.click()
    with qtbot.waitSignal(window.exchange.refused) as told:
        dialog.findChild(QFileDialog).fileSelected.emit(str(tmp_path / "gone" / "out.pdf"))
    assert str(tmp_path / "gone" / "out.pdf") in told.args[0]


def test_that_a_record_that_cannot_be_made_says_why_and_offers_nothing(
    deeds: FinishingDeeds, window: StudioWindow, sheets: MadeSheets, qtbot: QtBot
) -> None:
    sheets.refusal = "The records cannot be read."
    dialog = deeds.open(window.deeds.piece("orchard"))
    qtbot.waitUntil(lambda: dialog.state.text() == sheets.refusal)
    assert not dialog.pdf.isEnabled()
    assert not dialog.html.isEnabled()


def test_that_pages_of_an_older_choice_are_not_shown(deeds: FinishingDeeds, window: StudioWindow, qtbot: QtBot) -> None:
    del deeds
    dialog = open_record(window, qtbot)
    before = list(dialog.pages)
    dialog.show_pages(FinishingChoice(paper="letter"), [], "")
    assert dialog.pages == before


def test_that_a_record_that_is_closed_before_its_pages_are_drawn_is_no_fault_and_is_let_go(
    deeds: FinishingDeeds, window: StudioWindow, sheets: MadeSheets, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    faults: list[object] = []
    monkeypatch.setattr(threading, "excepthook", faults.append)
    gate = threading.Event()
    own = MadeSheets.sheet

    def held(self: MadeSheets, piece_key: str, *, with_notes: bool) -> FinishingSheet:
        gate.wait(10)
        return own(self, piece_key, with_notes=with_notes)

    monkeypatch.setattr(MadeSheets, "sheet", held)
    dialog = deeds.open(window.deeds.piece("orchard"))
    dialog.reject()
    qtbot.waitUntil(lambda: not isValid(dialog))
    gate.set()
    qtbot.waitUntil(lambda: not deeds._looking or bool(faults), timeout=10_000)
    assert not faults
    assert sheets.threads


def test_that_without_a_piece_she_is_told_to_choose_one(shown: Show, qtbot: QtBot) -> None:
    window = shown(EMPTY)
    with qtbot.waitSignal(window.finishing.refused) as told:
        window.finishing.open(None)
    assert told.args == [CHOOSE]


@pytest.mark.parametrize(
    ("title", "name"),
    [
        ("Orchard, Night", "orchard-night-finishing-record.pdf"),
        ("../../etc", "etc-finishing-record.pdf"),
        ("?!", "piece-finishing-record.pdf"),
        ("Été №3", "été-3-finishing-record.pdf"),
    ],
)
def test_that_a_title_makes_a_name_that_stays_in_its_folder(title: str, name: str) -> None:
    assert file_name(title, Form.PDF).replace("№", "") == name
