"""What she means to do with the room: all that is not over, each to be taken away, and more to be added."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QDialog, QFrame, QHBoxLayout, QScrollArea, QVBoxLayout, QWidget

from studiowatch.service.intention_view import IntentionView
from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.words import say
from studiowatch.ui.models.intention_form import NONE_YET, SWITCHES_NOTHING, TITLE, cautions_of, withheld
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.form_lines import CautionList
from studiowatch.ui.widgets.text import button, label, rule


class IntentionsDialog(QDialog):
    """The list; `dropped` carries the one that she takes away, `more` asks for another."""

    dropped = Signal(object)
    more = Signal()

    def __init__(self, snapshot: Snapshot, style: Style, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(say(TITLE))
        self.setAccessibleName(say(TITLE))
        self._style = style
        self._shown: tuple[IntentionView, ...] | None = None
        self._scroll = QScrollArea()
        self.add, self._close = button(say("Add…"), "primary"), button(say("Close"))
        self._lay_out()
        self.set_snapshot(snapshot)
        room = self.screen().availableSize()
        self.resize(min(style.px(620), room.width() - 40), min(style.px(520), room.height() - 60))
        self.add.setFocus()

    def _lay_out(self) -> None:
        px, scroll = self._style.px, self._scroll
        scroll.setAccessibleName(say(TITLE))
        scroll.setWidgetResizable(True)
        scroll.setFrameShape(QFrame.Shape.NoFrame)
        scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.add.clicked.connect(self.more)
        self.add.setDefault(True)
        self._close.clicked.connect(self.accept)
        foot = QHBoxLayout()
        foot.addWidget(self._close)
        foot.addStretch(1)
        foot.addWidget(self.add)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(px(20), px(14), px(20), px(14))
        whole.setSpacing(px(10))
        whole.addWidget(label("headline", text=say(TITLE), wrap=True))
        whole.addWidget(scroll, 1)
        whole.addLayout(foot)

    def set_snapshot(self, snapshot: Snapshot) -> None:
        """Show what is meant now."""
        if snapshot.intentions == self._shown:
            return
        self._shown = snapshot.intentions
        px = self._style.px
        inside = QWidget()
        inside.setObjectName("inside")
        inside.setAccessibleName(say(TITLE))
        column = QVBoxLayout(inside)
        column.setContentsMargins(0, 0, px(6), 0)
        column.setSpacing(px(8))
        if not self._shown:
            column.addWidget(label("body", text=say(NONE_YET), wrap=True))
        for one in self._shown:
            column.addLayout(self._row(one))
            column.addWidget(rule())
        column.addWidget(label("small", Tone.MUTED, say(SWITCHES_NOTHING), wrap=True))
        cautions = CautionList(self._style)
        column.addWidget(cautions)
        cautions.set_cautions((*withheld(snapshot), *cautions_of(self._shown)))
        column.addStretch(1)
        self._scroll.setWidget(inside)

    def _row(self, one: IntentionView) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(self._style.px(8))
        take_away = button(say("Take it away"), "link")
        take_away.setAccessibleName(say("Take away: {intention}", intention=one.words))
        take_away.clicked.connect(lambda: self.dropped.emit(one))
        row.addWidget(label("strong", Tone.MUTED if one.withheld else Tone.INK, one.words, wrap=True), 1)
        row.addWidget(take_away, 0, Qt.AlignmentFlag.AlignTop)
        return row
