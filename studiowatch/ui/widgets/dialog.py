"""What every form of the window does: one sentence for what cannot be taken, nothing lost, gone when closed."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QBoxLayout,
    QCheckBox,
    QDialog,
    QFrame,
    QHBoxLayout,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from studiowatch.service.commands import Command
from studiowatch.studio.words import Level
from studiowatch.ui.bridge import Courier
from studiowatch.ui.models.forms import FormError
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.marks import LevelMark
from studiowatch.ui.widgets.text import button, label, say


class FormDialog(QDialog):
    """A form that sends one command. It stays open, with her input, until the command is carried out."""

    recorded = Signal(str)

    def __init__(self, title: str, courier: Courier, style: Style, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(title)
        self.setAccessibleName(title)
        self._courier = courier
        self.dress = style
        self._mark = LevelMark(20)
        self._mark.set_style(style)
        self._fault = label("strong", Tone.ACT, wrap=True)
        self._cancel = button("Cancel")
        self._cancel.clicked.connect(self.reject)
        self._inside = QWidget()
        self._inside.setObjectName("inside")
        self.body = QVBoxLayout(self._inside)
        self.body.setContentsMargins(0, 0, style.px(6), 0)
        self.body.setSpacing(style.px(8))
        self.foot = QHBoxLayout()
        self._compose(title)
        self.clear_fault()

    def _compose(self, title: str) -> None:
        px = self.dress.px
        scroll = QScrollArea()
        scroll.setAccessibleName(title)
        scroll.setWidgetResizable(True)
        scroll.setFrameShape(QFrame.Shape.NoFrame)
        scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        scroll.setWidget(self._inside)
        fault = QHBoxLayout()
        fault.setSpacing(px(8))
        fault.addWidget(self._mark, 0, Qt.AlignmentFlag.AlignTop)
        fault.addWidget(self._fault, 1)
        self.foot.setSpacing(px(8))
        self.foot.addWidget(self._cancel)
        self.foot.addStretch(1)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(px(22), px(18), px(22), px(18))
        whole.setSpacing(px(12))
        whole.addWidget(label("dialog", text=title))
        whole.addWidget(scroll, 1)
        whole.addLayout(fault)
        whole.addLayout(self.foot)

    def fit(self, width_units: int, height_units: int) -> None:
        """Take the size of the form, but never more than the screen has."""
        px, room = self.dress.px, self.screen().availableSize()
        self.resize(min(px(width_units), room.width() - 40), min(px(height_units), room.height() - 60))

    def field(self, name: str, widget: QWidget, into: QBoxLayout | None = None, share: int = 0) -> None:
        """Add `widget` under its name."""
        holder = QVBoxLayout()
        holder.setSpacing(self.dress.px(3))
        caption = label("small", Tone.MUTED, name)
        caption.setBuddy(widget)
        widget.setAccessibleName(name)
        holder.addWidget(caption)
        holder.addWidget(widget)
        (into or self.body).addLayout(holder, share)

    def say_fault(self, sentence: str) -> None:
        """Show `sentence` inline."""
        self._mark.set_level(Level.ACT)
        self._mark.show()
        say(self._fault, sentence)
        self._fault.show()
        self._fault.setAccessibleName(sentence)

    def clear_fault(self) -> None:
        """Show no fault."""
        self._mark.hide()
        self._fault.hide()
        say(self._fault, "")

    @property
    def fault_words(self) -> str:
        """Return the sentence that is shown, or ""."""
        return self._fault.text()

    def submit(self, command: Command) -> None:
        """Send `command`; close once it is carried out, else stay and say why."""
        self.clear_fault()
        self._inside.setEnabled(False)
        self._courier.send(command, owner=self, done=self._done, refused=self._refused)

    def command_or_fault(self) -> None:
        """Read the form and send its command, or say which field cannot be taken and go there."""
        try:
            command = self.read()
        except FormError as error:
            self.say_fault(str(error))
            wrong = self.field_of(error.field)
            if wrong is not None:
                wrong.setFocus()
            return
        self.submit(command)

    def read(self) -> Command:
        """Return the form's command, or raise FormError."""
        raise NotImplementedError

    def field_of(self, name: str) -> QWidget | None:
        """Return the widget of the field `name`, if the form has it."""
        del name
        return None

    def _done(self, key: str) -> None:
        self.recorded.emit(key)
        self.accept()

    def _refused(self, sentence: str) -> None:
        self._inside.setEnabled(True)
        self.say_fault(sentence)


def caution_list(cautions: Sequence[str], style: Style) -> QFrame:
    """Return the cautions, each with a diamond before it."""
    made = QFrame()
    made.setAccessibleName("Cautions")
    column = QVBoxLayout(made)
    column.setContentsMargins(0, 0, 0, 0)
    column.setSpacing(style.px(5))
    for caution in cautions:
        mark = LevelMark(16)
        mark.set_style(style)
        mark.set_level(Level.CAUTION)
        row = QHBoxLayout()
        row.setSpacing(style.px(9))
        row.addWidget(mark, 0, Qt.AlignmentFlag.AlignTop)
        row.addWidget(label("body", text=caution, wrap=True), 1)
        column.addLayout(row)
    return made


def tick_line(text: str, style: Style) -> QHBoxLayout:
    """Return a box to tick, with words that wrap beside it."""
    box = QCheckBox()
    box.setAccessibleName(text)
    words = label("body", text=text, wrap=True)
    words.setBuddy(box)
    row = QHBoxLayout()
    row.setSpacing(style.px(4))
    row.addWidget(box, 0, Qt.AlignmentFlag.AlignTop)
    row.addWidget(words, 1)
    return row


def add_primary(form: FormDialog, text: str, kind: str = "primary") -> QPushButton:
    """Add the button that sends the form; Enter presses it."""
    made = button(text, kind)
    made.setDefault(True)
    made.clicked.connect(form.command_or_fault)
    form.foot.addWidget(made)
    return made
