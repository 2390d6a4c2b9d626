"""Lists of rows that keep their widgets: a row is made once and filled again."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Generic, TypeVar

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QScrollArea, QVBoxLayout, QWidget

from studiowatch.ui.models.tones import Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.text import label, put

Row = TypeVar("Row")
View = TypeVar("View", bound=QWidget)


def fill_views(
    views: list[View], rows: Sequence[Row], make: Callable[[int], View], fill: Callable[[View, Row], None]
) -> None:
    """Fill a view for each row, made and put in its place by `make` where there is none; what is too many is hidden."""
    while len(views) < len(rows):
        views.append(make(len(views)))
    for at, view in enumerate(views):
        view.setVisible(at < len(rows))
        if at < len(rows):
            fill(view, rows[at])


class RowList(QFrame, Generic[Row, View]):
    """A card with rows one below the other, scrolled when they are many."""

    def __init__(
        self, name: str, empty_words: str, make: Callable[[], View], fill: Callable[[View, Row], None]
    ) -> None:
        super().__init__()
        self.setProperty("card", "plain")
        self.setAccessibleName(name)
        self._make, self._fill = make, fill
        self._rows: tuple[Row, ...] = ()
        self._views: list[View] = []
        self._style = Style()
        self._empty = label("body", Tone.MUTED, empty_words, wrap=True)
        self._empty.setMargin(8)
        self._inside = QWidget()
        self._inside.setObjectName("inside")
        self._column = QVBoxLayout(self._inside)
        self._column.addWidget(self._empty)
        self._column.addStretch(1)
        self._scroll = QScrollArea()
        self._scroll.setAccessibleName(name)
        self._scroll.setWidgetResizable(True)
        self._scroll.setFrameShape(QFrame.Shape.NoFrame)
        self._scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._scroll.setWidget(self._inside)
        around = QVBoxLayout(self)
        around.setContentsMargins(2, 2, 2, 2)
        around.addWidget(self._scroll)

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        self._style = style
        px = style.px
        self._column.setContentsMargins(px(6), px(6), px(8), px(6))
        self._column.setSpacing(px(7))
        for view in self._views:
            _restyle(view, style)

    def say_empty(self, words: str) -> None:
        """Say `words` where there is no row."""
        put(self._empty, words)

    @property
    def empty_words(self) -> str:
        """Return what is said where there is no row."""
        return self._empty.text()

    def set_rows(self, rows: Sequence[Row]) -> None:
        """Show `rows`."""
        if tuple(rows) == self._rows:
            return
        before, self._rows = self._rows, tuple(rows)
        while len(self._views) < len(rows):
            view = self._make()
            _restyle(view, self._style)
            self._column.insertWidget(len(self._views), view)
            self._views.append(view)
        for index, view in enumerate(self._views):
            view.setVisible(index < len(rows))
            if index < len(rows) and self._rows[index : index + 1] != before[index : index + 1]:
                self._fill(view, rows[index])
        self._empty.setVisible(not rows)

    @property
    def rows(self) -> tuple[Row, ...]:
        """Return the rows that are shown."""
        return self._rows

    @property
    def views(self) -> tuple[View, ...]:
        """Return the widgets of the rows that are shown."""
        return tuple(self._views[: len(self._rows)])


def _restyle(view: QWidget, style: Style) -> None:
    set_style: Callable[[Style], None] = view.set_style  # type: ignore[attr-defined]
    set_style(style)
