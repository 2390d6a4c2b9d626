"""The figures of the room, large enough for two metres."""

from __future__ import annotations

from html import escape

from PySide6.QtCore import Qt
from PySide6.QtGui import QFont, QFontMetrics, QResizeEvent
from PySide6.QtWidgets import QFrame, QGridLayout, QHBoxLayout, QLabel, QSizePolicy, QVBoxLayout, QWidget

from studiowatch.speech.words import say
from studiowatch.studio.words import Level
from studiowatch.ui.models.figures import NOT_MEASURED, Figure
from studiowatch.ui.models.tones import LEVEL_TONES, Tone
from studiowatch.ui.plain import set_tip
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.marks import LevelMark, level_ink
from studiowatch.ui.widgets.rows import fill_views
from studiowatch.ui.widgets.steady import Steady
from studiowatch.ui.widgets.text import ElidedLabel, label, put

FIGURE_PX, _UNIT_PX = 49, 16
_SHARES = (31, 26, 33, 31)  # of the width, fixed: a figure does not move aside when another one's words change
_MANY = 8
_NAME_PX, _TWO_LINES_PX = 17, 32


class FigureView(QWidget):
    """One figure: its name, the number, and what it means for a wet coat."""

    def __init__(self) -> None:
        super().__init__()
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        self._style = Style()
        self._figure = Figure(name="", value=NOT_MEASURED)
        self._mark = LevelMark(13)
        self._name = label("small", Tone.MUTED)
        self._value = QLabel()
        self._value.setTextFormat(Qt.TextFormat.RichText)
        self._place = Steady(self._value)
        self._meaning = ElidedLabel("small", Tone.MUTED)
        self._meaning.setAlignment(Qt.AlignmentFlag.AlignTop)
        self._meant = Steady(self._meaning)
        self._top = QHBoxLayout()
        self._top.setContentsMargins(0, 0, 0, 0)
        self._top.addWidget(self._name)
        self._top.addWidget(self._mark)
        self._top.addStretch(1)
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(0)
        self._column.addStretch(1)  # in a band that is taller than they need, all figures stand on one line
        self._column.addLayout(self._top)
        self._column.addWidget(self._place)
        self._column.addWidget(self._meant)
        self._column.addStretch(1)
        self._draw()

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        self._style = style
        self._mark.set_style(style)
        self._meant.setMinimumHeight(style.px(_TWO_LINES_PX))
        self._top.setSpacing(style.px(6))
        self._name.setMinimumHeight(style.px(_NAME_PX))
        self._place.setMinimumHeight(QFontMetrics(self._font(FIGURE_PX, QFont.Weight.Bold)).height())
        self._draw()
        self._place.updateGeometry()
        self._meant.updateGeometry()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Fit the figure into the new width."""
        super().resizeEvent(event)
        self._draw()

    def _font(self, units: int, weight: QFont.Weight) -> QFont:
        font = QFont(self.font())
        font.setPixelSize(self._style.px(units))
        font.setWeight(weight)
        return font

    @property
    def _share(self) -> float:
        """Of its size, that the figure is shown at: less than 1 where it would not fit into the width."""
        large, small = self._font(FIGURE_PX, QFont.Weight.Bold), self._font(_UNIT_PX, QFont.Weight.Normal)
        wide_px = QFontMetrics(large).horizontalAdvance(self._figure.value)
        if self._figure.unit:
            wide_px += QFontMetrics(small).horizontalAdvance(f" {self._figure.unit}")
        return min(1.0, self.width() / max(wide_px, 1))

    def set_figure(self, figure: Figure) -> None:
        """Show `figure`."""
        if figure != self._figure:
            self._figure = figure
            self._draw()

    def _draw(self) -> None:
        figure, theme, px = self._figure, self._style.theme, self._style.px
        put(self._name, figure.name)
        self._mark.setVisible(figure.level > Level.CALM)
        self._mark.set_level(figure.level)
        quiet = figure.stale or figure.value == NOT_MEASURED
        colour = theme.muted if quiet else level_ink(figure.level, theme)
        share = self._share
        figure_px, unit_px = int(share * px(FIGURE_PX)), int(share * px(_UNIT_PX))
        unit = f"&nbsp;{escape(figure.unit).replace(' ', '&nbsp;')}" if figure.unit else ""
        put(
            self._value,
            f'<span style="font-size:{figure_px}px; font-weight:700; color:{colour}">{escape(figure.value)}</span>'
            f'<span style="font-size:{unit_px}px; color:{theme.muted}">{unit}</span>',
        )
        tone = LEVEL_TONES[figure.level] if figure.level > Level.CALM else Tone.MUTED
        put(self._meaning, figure.meaning, tone)
        self._value.setAccessibleName(figure.spoken)
        self._place.setAccessibleName(figure.spoken)
        self.setAccessibleName(figure.spoken)
        set_tip(self, say("Why these limits? {basis}", basis=figure.basis) if figure.basis else "")


class RoomBand(QFrame):
    """The figures side by side."""

    def __init__(self) -> None:
        super().__init__()
        self.setProperty("card", "plain")
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        self.setAccessibleName(say("The room now"))
        self._style = Style()
        self._views: list[FigureView] = []
        self._columns = _MANY
        self._grid = QGridLayout(self)

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        self._style = style
        px = style.px
        self._grid.setContentsMargins(px(16), px(10), px(6), px(6))
        self._grid.setHorizontalSpacing(px(10))
        self._grid.setVerticalSpacing(px(8))
        for view in self._views:
            view.set_style(style)

    def set_columns(self, columns: int) -> None:
        """Stand the figures in rows of `columns`."""
        if columns != self._columns:
            self._columns = columns
            for column in range(self._grid.columnCount()):
                self._grid.setColumnStretch(column, 0)  # a column that nothing stands in any more takes no width
            for index, view in enumerate(self._views):
                self._grid.removeWidget(view)
                self._place(index, view)

    def _place(self, index: int, view: FigureView) -> None:
        row, column = divmod(index, self._columns)
        self._grid.addWidget(view, row, column)
        self._grid.setColumnStretch(column, _SHARES[column % len(_SHARES)])

    def set_figures(self, figures: tuple[Figure, ...]) -> None:
        """Show `figures`, as many as there are."""
        fill_views(self._views, figures, self._make_view, FigureView.set_figure)

    def _make_view(self, index: int) -> FigureView:
        view = FigureView()
        view.set_style(self._style)
        self._place(index, view)
        return view
