"""The lines of the board as they come: quiet, selectable, and still while paused."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QFont, QFontDatabase, QTextCharFormat, QTextCursor
from PySide6.QtWidgets import QPlainTextEdit

from studiowatch.board.onlooker import KEPT_LINES, HeardLine
from studiowatch.speech.words import say
from studiowatch.ui.models.board_now import line_words
from studiowatch.ui.style import Style


class LiveLines(QPlainTextEdit):
    """Shows lines; those that were refused in the colour of a caution, with the reason below."""

    def __init__(self) -> None:
        super().__init__()
        self.setReadOnly(True)
        self.setAccessibleName(say("Live lines"))
        self.setPlaceholderText(say("No line has come yet."))
        self.setTabChangesFocus(True)
        self.setUndoRedoEnabled(False)
        self.setMaximumBlockCount(2 * KEPT_LINES)
        self.setTextInteractionFlags(
            Qt.TextInteractionFlag.TextSelectableByMouse | Qt.TextInteractionFlag.TextSelectableByKeyboard
        )
        self.setLineWrapMode(QPlainTextEdit.LineWrapMode.WidgetWidth)
        self._style = Style()
        self._shown: list[HeardLine] = []
        self.is_paused = False

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        self._style = style
        font = QFontDatabase.systemFont(QFontDatabase.SystemFont.FixedFont)
        font.setPixelSize(style.px(12))
        font.setStyleHint(QFont.StyleHint.Monospace)
        self.setFont(font)
        shown, self._shown = self._shown, []
        self.clear()
        self._append(shown)

    def show_lines(self, lines: Sequence[HeardLine]) -> None:
        """Add what is new of `lines`, unless paused; begin anew where they do not go on."""
        if self.is_paused:
            return
        last = self._shown[-1].number if self._shown else 0
        if lines and lines[0].number > last + 1:
            self._shown.clear()
            self.clear()
        self._append([line for line in lines if line.number > last])

    def _append(self, lines: Sequence[HeardLine]) -> None:
        if not lines:
            return
        bar = self.verticalScrollBar()
        was_at_end = bar.value() >= bar.maximum() - 2
        cursor = QTextCursor(self.document())
        cursor.movePosition(QTextCursor.MoveOperation.End)
        theme = self._style.theme
        for line in lines:
            gap = "" if self.document().isEmpty() else "\n"
            if line.reason:
                why = say("refused: {reason}", reason=line.reason)
                cursor.insertText(f"{gap}{line_words(line)}\n          {why}", _ink(theme.caution))
            else:
                cursor.insertText(f"{gap}{line_words(line)}", _ink(theme.ink))
        self._shown = [*self._shown, *lines][-KEPT_LINES:]
        if was_at_end:
            bar.setValue(bar.maximum())


def _ink(colour: str) -> QTextCharFormat:
    made = QTextCharFormat()
    made.setForeground(QColor(colour))
    return made
