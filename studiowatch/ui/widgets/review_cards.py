"""The cards of a review below and beside its plot: what would have changed it, and what to do now."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QGridLayout, QHBoxLayout, QLabel, QVBoxLayout, QWidget

from studiowatch.speech.words import say
from studiowatch.ui.models.review import CHANGE_HEADS, ChangeRow
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.form_lines import CautionList
from studiowatch.ui.widgets.text import label


class ChangeTable(QFrame):
    """As it was, and what would have changed it."""

    def __init__(self) -> None:
        super().__init__()
        self.setProperty("card", "plain")
        self.setAccessibleName(say("What would have changed it"))
        self._grid = QGridLayout(self)
        self._cells: list[QLabel] = []

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        px = style.px
        self._grid.setContentsMargins(px(18), px(12), px(18), px(12))
        self._grid.setHorizontalSpacing(px(18))
        self._grid.setVerticalSpacing(px(6))

    def show_changes(self, rows: Sequence[ChangeRow]) -> None:
        """Show `rows`, the first being as it was."""
        for cell in self._cells:
            self._grid.removeWidget(cell)
            cell.hide()
            cell.deleteLater()
        self._cells = []
        for column, words in enumerate(CHANGE_HEADS):
            self._put(label("small", Tone.MUTED, say(words)), 0, column)
        for place, row in enumerate(rows, start=1):
            for column, words in enumerate(row.cells):
                self._put(label("body" if column else "strong", text=words, wrap=True), place, column)
            self._put(label("strong", row.tone, row.verdict, wrap=True), place, len(row.cells))
        for column, stretch in enumerate((5, 3, 3, 2, 4)):
            self._grid.setColumnStretch(column, stretch)

    def _put(self, cell: QLabel, row: int, column: int) -> None:
        self._grid.addWidget(cell, row, column, Qt.AlignmentFlag.AlignTop)
        self._cells.append(cell)


class StepList(QFrame):
    """What to do now, numbered, with the cautions that belong to it."""

    def __init__(self) -> None:
        super().__init__()
        self.setProperty("card", "plain")
        self.setAccessibleName(say("What to do now"))
        self._style = Style()
        self._steps: tuple[str, ...] = ()
        self._cautions: tuple[str, ...] = ()
        self._inside: QWidget | None = None
        self._whole = QVBoxLayout(self)

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        self._style = style
        px = style.px
        self._whole.setContentsMargins(px(18), px(12), px(18), px(14))
        self._fill()

    def show_steps(self, steps: tuple[str, ...], cautions: tuple[str, ...]) -> None:
        """Show `steps` and `cautions`."""
        self._steps, self._cautions = steps, cautions
        self._fill()

    def _fill(self) -> None:
        if self._inside is not None:
            self._whole.removeWidget(self._inside)
            self._inside.hide()
            self._inside.deleteLater()
        self._inside = QWidget()
        self._inside.setObjectName("inside")
        column = QVBoxLayout(self._inside)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(self._style.px(7))
        for number, step in enumerate(self._steps, start=1):
            row = QHBoxLayout()
            row.setSpacing(self._style.px(10))
            row.addWidget(label("strong", Tone.MUTED, f"{number}"), 0, Qt.AlignmentFlag.AlignTop)
            row.addWidget(label("body", text=step, wrap=True), 1)
            column.addLayout(row)
        cautions = CautionList(self._style)
        cautions.set_cautions(self._cautions)
        column.addWidget(cautions)
        self._whole.addWidget(self._inside)
