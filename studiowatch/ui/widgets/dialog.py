"""What every form of the window does: one sentence for what cannot be taken, nothing lost, gone when closed."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QAbstractSpinBox,
    QBoxLayout,
    QComboBox,
    QDateTimeEdit,
    QDialog,
    QFrame,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from studiowatch.service.commands import Command
from studiowatch.speech.words import say
from studiowatch.studio.words import Level
from studiowatch.ui.bridge import Courier
from studiowatch.ui.models.forms import FormError
from studiowatch.ui.models.tones import LEVEL_TONES, Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.marks import LevelMark
from studiowatch.ui.widgets.question import question
from studiowatch.ui.widgets.text import button, label, put, set_property

_ENTER = frozenset({Qt.Key.Key_Return, Qt.Key.Key_Enter})


class FormDialog(QDialog):
    """A form that sends one command. It stays open, with her input, until the command is carried out.

    `recorded` carries the key that the command answered with, `told` what was recorded, in words.
    """

    recorded = Signal(str)
    told = Signal(str)

    def __init__(self, title: str, courier: Courier, style: Style, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(title)
        self.setAccessibleName(title)
        self._courier = courier
        self.dress = style
        self._doubted = ""
        self._words = ""
        self._wrong: QWidget | None = None
        self.heading = label("headline", text=title, wrap=True)
        self._mark = LevelMark(20)
        self._mark.set_style(style)
        self._fault = label("strong", Tone.ACT, wrap=True)
        self._cancel = button(say("Cancel"))
        self._cancel.clicked.connect(self.drop)
        self._inside = QWidget()
        self._inside.setObjectName("inside")
        self.body = QVBoxLayout(self._inside)
        self.body.setContentsMargins(0, 0, 0, 0)
        self.body.setSpacing(style.px(8))
        self.standing = QVBoxLayout()
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
        self._bar = scroll.verticalScrollBar()
        fault = QHBoxLayout()
        fault.setSpacing(px(8))
        fault.addWidget(self._mark, 0, Qt.AlignmentFlag.AlignTop)
        fault.addWidget(self._fault, 1)
        self.foot.setSpacing(px(8))
        self.foot.addWidget(self._cancel)
        self.foot.addStretch(1)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(px(20), px(14), px(20), px(14))
        whole.setSpacing(px(10))
        whole.addWidget(self.heading)
        whole.addWidget(scroll, 1)
        whole.addLayout(self.standing)
        whole.addLayout(fault)
        whole.addLayout(self.foot)

    def fit(self, width_units: int, height_units: int) -> None:
        """Take the size of the form, but never more than the screen has."""
        px, room = self.dress.px, self.screen().availableSize()
        self.resize(min(px(width_units), room.width() - 40), min(px(height_units), room.height() - 60))

    def field(self, name: str, widget: QWidget, into: QBoxLayout | None = None, share: int = 0) -> QLabel:
        """Add `widget` under its name; return the label that names it."""
        holder = QVBoxLayout()
        holder.setSpacing(self.dress.px(3))
        caption = label("small", Tone.MUTED, name)
        caption.setBuddy(widget)
        widget.setAccessibleName(name)
        typed = widget.lineEdit() if isinstance(widget, QComboBox) else None
        if typed is not None:  # which is what has the keyboard
            typed.setAccessibleName(name)
        holder.addWidget(caption)
        holder.addWidget(widget)
        (into or self.body).addLayout(holder, share)
        self.follow(widget)
        return caption

    def row(self) -> QHBoxLayout:
        """Return a new row of the form, for fields that stand beside each other."""
        row = QHBoxLayout()
        row.setSpacing(self.dress.px(10))
        self.body.addLayout(row)
        return row

    def follow(self, widget: QWidget) -> None:
        """Let an old fault go once `widget` is edited."""
        if isinstance(widget, QLineEdit):
            widget.textChanged.connect(self._edited)
        elif isinstance(widget, QComboBox):
            widget.currentTextChanged.connect(self._edited)
            widget.installEventFilter(self)
        elif isinstance(widget, QDateTimeEdit):
            widget.dateTimeChanged.connect(self._edited)
        if isinstance(widget, QAbstractSpinBox):
            widget.installEventFilter(self)

    def _edited(self) -> None:
        self._doubted = ""
        self.clear_fault()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Let Enter open a list, or leave a field that offers one; let the wheel go past a field."""
        if event.type() == QEvent.Type.Wheel:
            event.ignore()
            return True
        pressed = isinstance(event, QKeyEvent) and event.type() == QEvent.Type.KeyPress and event.key() in _ENTER
        if not pressed or not isinstance(watched, QComboBox):
            return super().eventFilter(watched, event)
        if watched.isEditable():
            self.focusNextChild()
        else:
            watched.showPopup()
        return True

    def say_fault(self, sentence: str, level: Level = Level.ACT) -> None:
        """Show `sentence` inline."""
        self._mark.set_level(level)
        self._mark.show()
        put(self._fault, sentence, LEVEL_TONES[level])
        self._fault.show()
        self._fault.setAccessibleName(sentence)

    def clear_fault(self) -> None:
        """Show no fault, and no field as wrong."""
        self._mark.hide()
        self._fault.hide()
        put(self._fault, "")
        if self._wrong is not None:
            set_property(self._wrong, "wrong", "false")
            self._wrong = None

    @property
    def fault_words(self) -> str:
        """Return the sentence that is shown, or ""."""
        return self._fault.text()

    def submit(self, command: Command) -> None:
        """Send `command`; close once it is carried out, else stay and say why. Until then no other is sent."""
        if not self._inside.isEnabledTo(self):
            return
        self.clear_fault()
        self._words = self.words_for(command)
        self._inside.setEnabled(False)
        self._courier.send(command, owner=self, done=self._done, refused=self._refused)

    def command_or_fault(self) -> None:
        """Read the form and send its command; say which field cannot be taken; ask once where there is a doubt."""
        command = self.checked()
        if command is not None:
            self.submit(command)

    def checked(self) -> Command | None:
        """Return the form's command, or None after saying which field cannot be taken, or what is in doubt."""
        try:
            command = self.read()
        except FormError as error:
            self.clear_fault()
            self.say_fault(str(error))
            self._point_at(self.field_of(error.field))
            return None
        doubt = self.doubt_of(command)
        if doubt and doubt != self._doubted:
            self.say_fault(doubt, Level.CAUTION)
            self._doubted = doubt
            return None
        return command

    def _point_at(self, wrong: QWidget | None) -> None:
        if wrong is not None:
            self._wrong = wrong
            set_property(wrong, "wrong", "true")
            wrong.setFocus()

    def read(self) -> Command:
        """Return the form's command, or raise FormError."""
        raise NotImplementedError

    def doubt_of(self, command: Command) -> str:
        """Return what to ask before `command` is sent, or ""; pressing again sends it."""
        del command
        return ""

    def words_for(self, command: Command) -> str:
        """Return what to say once `command` is carried out."""
        raise NotImplementedError

    def field_of(self, name: str) -> QWidget | None:
        """Return the widget of the field `name`, if the form has it."""
        del name
        return None

    def is_filled(self) -> bool:
        """Return whether something would be lost if the form were dropped."""
        return False

    def reject(self) -> None:
        """Close, as Escape does; ask first if something would be lost."""
        if not self.is_filled():
            self.drop()
            return
        box = question(
            self, say("Drop what you typed?"), say("Nothing was recorded yet."), say("Drop it"), say("Keep the form")
        )
        box.accepted.connect(self.drop)
        box.open()

    def drop(self) -> None:
        """Close without asking."""
        super().reject()

    def _done(self, key: str) -> None:
        self.recorded.emit(key)
        self.told.emit(self._words)
        self.carry_on()

    def carry_on(self) -> None:
        """Close, now that the command is carried out."""
        self.accept()

    def to_top(self) -> None:
        """Show the form from its beginning."""
        self._bar.setValue(self._bar.minimum())

    def wake(self) -> None:
        """Let the form be filled in again."""
        self._inside.setEnabled(True)

    def _refused(self, sentence: str) -> None:
        self._inside.setEnabled(True)
        self.say_fault(sentence)
