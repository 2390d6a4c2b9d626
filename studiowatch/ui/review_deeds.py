"""Reviews from the window: which coat, worked out beside it, shown on the page, saved as PDF and CSV."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QObject, QTimer, Signal
from PySide6.QtWidgets import QFileDialog, QWidget

from studiowatch.service.piece_view import CoatView, PieceView
from studiowatch.service.ports import Clock
from studiowatch.service.review_ports import Reviews
from studiowatch.service.whole_file import replacing
from studiowatch.speech.words import mark, say
from studiowatch.studio.pieces import Outcome
from studiowatch.studio.review_causes import Cause
from studiowatch.studio.review_views import Reliability, Review
from studiowatch.ui.documents import documents
from studiowatch.ui.models.review_csv import review_csv
from studiowatch.ui.print.review_pdf import write_review
from studiowatch.ui.review_worker import Example, ReviewWorker
from studiowatch.ui.widgets.review_page import ReviewPage

WARM_AFTER_MS = 180_000  # ms after the start, when the coats on the rack are long dried through the log
NOTHING_LAID = mark("Choose a piece with a coat on it first: a review is of one coat.")
NOT_HERE = mark("No coat can be reviewed here: this window has no records to look into.")


class ReviewDeeds(QObject):
    """Opens reviews on `page`. `opened` asks for the page to be shown; `done` and `refused` tell in words."""

    opened = Signal()
    done = Signal(str)
    refused = Signal(str)

    def __init__(self, reviews: Reviews | None, clock: Clock, page: ReviewPage, window: QWidget) -> None:
        super().__init__(window)
        self._clock, self._page, self._window = clock, page, window
        self._worker = None if reviews is None else ReviewWorker(reviews, self)
        if self._worker is not None:
            self._worker.answered.connect(self._show)
            self._worker.refused.connect(page.refuse)
            self._worker.progressed.connect(page.show_progress)
            self._warming = QTimer(self)
            self._warming.setSingleShot(True)
            self._warming.timeout.connect(self._worker.warm)
            self._warming.start(WARM_AFTER_MS)
        page.pdf_asked.connect(self.save_pdf)
        page.csv_asked.connect(self.save_csv)
        page.others_asked.connect(self._ask_others)
        page.example_asked.connect(self._ask_example)
        page.reliability_asked.connect(self._ask_reliability)

    def open_coat(self, coat_key: str) -> None:
        """Review one coat."""
        if self._worker is None:
            self.refused.emit(say(NOT_HERE))
            return
        self._page.wait()
        self.opened.emit()
        self._worker.ask(coat_key)

    def open_example(self, cause: Cause) -> None:
        """Show the made-up coat of a cause."""
        if self._worker is None:
            self.refused.emit(say(NOT_HERE))
            return
        self._page.wait()
        self.opened.emit()
        self._worker.ask_example(cause)

    def open_piece(self, piece: PieceView | None) -> None:
        """Review the coat of a piece that most likely is meant: the last that came out badly, else the topmost."""
        coat = None if piece is None else meant_coat(piece)
        if coat is None:
            self.refused.emit(say(NOTHING_LAID))
        else:
            self.open_coat(coat.key)

    def close(self) -> None:
        """Bring no more answers: the window is going."""
        if self._worker is not None:
            self._worker.close()

    def _show(self, review: object) -> None:
        if isinstance(review, Review):
            self._page.show_review(review, self._clock.utc_ms())
        elif isinstance(review, Example):
            self._page.show_example(review.review)
        elif isinstance(review, Reliability):
            self._page.show_reliability(review)
        elif isinstance(review, tuple):
            self._page.show_others(review)

    def _ask_example(self, cause: Cause) -> None:
        if self._worker is not None:
            self._worker.ask_example(cause)

    def _ask_reliability(self) -> None:
        if self._worker is not None:
            self._worker.ask_reliability()

    def _ask_others(self) -> None:
        if self._page.review is not None and self._worker is not None:
            self._worker.ask_others(self._page.review.coat_key)

    def save_pdf(self) -> None:
        """Ask where to, and save the review as PDF."""
        review = self._page.review
        if review is not None:
            now_ms = self._clock.utc_ms()
            self._ask(say("Save the review as PDF"), "pdf", lambda path: write_review(review, path, "a4", now_ms))

    def save_csv(self) -> None:
        """Ask where to, and save the figures as CSV."""
        review = self._page.review
        if review is not None:
            text = review_csv(review)
            self._ask(say("Save the figures as CSV"), "csv", lambda path: _write(path, text))

    def _ask(self, title: str, ending: str, write: Callable[[Path], None]) -> None:
        dialog = QFileDialog(self._window, title, documents())
        dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        dialog.setDefaultSuffix(ending)
        dialog.setNameFilter(f"*.{ending}")
        dialog.selectFile(f"{say('review')}.{ending}")
        dialog.fileSelected.connect(lambda name: self._save(Path(name), write))
        dialog.finished.connect(dialog.deleteLater)
        dialog.open()

    def _save(self, path: Path, write: Callable[[Path], None]) -> None:
        try:
            with replacing(path) as unfinished:  # a full disk leaves half of it: never under its name
                write(unfinished)
        except OSError as fault:
            reason = fault.strerror or fault
            self.refused.emit(
                say("{path} cannot be written: {reason}. Choose another place.", path=path, reason=reason)
            )
        else:
            self.done.emit(say("Saved as {name}.", name=path.name))


def meant_coat(piece: PieceView) -> CoatView | None:
    """Return the coat of a piece that a review is most likely about, or None if none is on."""
    laid = [coat for coat in piece.coats if coat.laid_ms is not None and coat.clear_film]
    clouded = [coat for coat in laid if coat.recorded and coat.recorded.outcome not in {None, Outcome.CLEAR}]
    return next(iter(reversed(clouded or laid)), None)


def _write(path: Path, text: str) -> None:
    with path.open("w", encoding="utf-8", newline="") as out:
        out.write(text)
