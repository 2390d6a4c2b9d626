"""One piece on the what-if page: its stages in both rooms."""

from __future__ import annotations

from PySide6.QtWidgets import QFrame, QGridLayout, QLabel, QVBoxLayout

from studiowatch.speech.words import say
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.models.what_if import PieceLines, StageLine
from studiowatch.ui.plain import set_tip
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.text import ElidedLabel, label, put
from studiowatch.ui.widgets.what_if_strip import WhatIfStrip

_WORDS_UNITS = 190


class PieceLinesView(QFrame):
    """Shows one piece; stages are added as they come."""

    def __init__(self) -> None:
        super().__init__()
        self.setProperty("card", "plain")
        self._title = ElidedLabel("title")
        self._grid = QGridLayout()
        self._grid.setColumnStretch(1, 1)
        self._column = QVBoxLayout(self)
        self._column.addWidget(self._title)
        self._column.addLayout(self._grid)
        self._stages: list[tuple[QLabel, QLabel, WhatIfStrip, QLabel]] = []
        self._style = Style()

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        self._style = style
        px = style.px
        self._column.setContentsMargins(px(14), px(8), px(14), px(8))
        self._column.setSpacing(px(4))
        self._grid.setHorizontalSpacing(px(12))
        self._grid.setVerticalSpacing(px(1))
        self._grid.setColumnMinimumWidth(0, px(_WORDS_UNITS))
        for _, _, strip, _ in self._stages:
            strip.set_style(style)

    def show_piece(self, piece: PieceLines) -> None:
        """Show `piece`."""
        self._title.setText(f"{piece.title} · {piece.coat}")
        self.setAccessibleName(f"{piece.title}, {piece.coat}")
        self.setAccessibleDescription("; ".join(stage.spoken for stage in piece.stages))
        while len(self._stages) < len(piece.stages):
            self._add_stage()
        for at, parts in enumerate(self._stages):
            for part in parts:
                part.setVisible(at < len(piece.stages))
            if at < len(piece.stages):
                self._fill(parts, piece.stages[at])

    def _add_stage(self) -> None:
        row = 2 * len(self._stages)
        told, change, strip, end = label("strong"), label("small"), WhatIfStrip(), label("small", Tone.MUTED)
        strip.set_style(self._style)
        self._grid.addWidget(told, row, 0)
        self._grid.addWidget(change, row + 1, 0)
        self._grid.addWidget(strip, row, 1, 2, 1)
        self._grid.addWidget(end, row, 2, 2, 1)
        self._stages.append((told, change, strip, end))

    @staticmethod
    def _fill(parts: tuple[QLabel, QLabel, WhatIfStrip, QLabel], stage: StageLine) -> None:
        told, change, strip, end = parts
        put(told, stage.told)
        put(change, stage.change, stage.tone)
        put(end, stage.end)
        strip.show_line(stage)
        strip.setAccessibleName(stage.spoken)
        set_tip(
            strip, say("Above as it comes, below otherwise; each with its likely range and the time by which it is.")
        )
