"""The archived pieces: found by a word, looked at, and put back on the rack."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QPixmap
from PySide6.QtWidgets import QDialog, QHBoxLayout, QLineEdit, QListWidget, QListWidgetItem, QVBoxLayout, QWidget

from studiowatch.service.snapshot import ArchivedView, Snapshot
from studiowatch.ui.models.archive import NONE_FOUND, NONE_THERE, archive_line, archive_words
from studiowatch.ui.models.finding import found_in_archive
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.text import button, label, say

TITLE = "Archived pieces"
_PHOTO = (220, 150)  # units


class ArchiveDialog(QDialog):
    """Lists what is off the rack; `restored` carries the key of a piece that is to come back."""

    restored = Signal(str)

    def __init__(self, snapshot: Snapshot, photo_folder: Path | None, style: Style, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(TITLE)
        self.setAccessibleName(TITLE)
        self._snapshot, self._folder, self._style = snapshot, photo_folder, style
        self._found: tuple[ArchivedView, ...] = ()
        self.search = QLineEdit()
        self.search.setPlaceholderText("a word of the title, support, notes or data sheet")
        self.search.setAccessibleName("Find an archived piece")
        self.search.setClearButtonEnabled(True)
        self.list = QListWidget()
        self.list.setAccessibleName(TITLE)
        self._none = label("body", Tone.MUTED, wrap=True)
        self._name = label("title", wrap=True)
        self._words = label("body", wrap=True)
        self._photo = label("small", Tone.MUTED)
        self.back = button("Put back on the rack", "primary")
        self._lay_out()
        self.search.textChanged.connect(self._show)
        self.list.currentRowChanged.connect(self._show_one)
        self.list.itemActivated.connect(lambda _item: self._restore())
        self.back.clicked.connect(self._restore)
        self._show()
        room = self.screen().availableSize()
        self.resize(min(style.px(760), room.width() - 40), min(style.px(520), room.height() - 60))
        self.search.setFocus()

    def _lay_out(self) -> None:
        px = self._style.px
        close = button("Close")
        close.clicked.connect(self.accept)
        told = QVBoxLayout()
        told.setSpacing(px(8))
        for part in (self._name, self._photo, self._words):
            told.addWidget(part)
        told.addStretch(1)
        both = QHBoxLayout()
        both.setSpacing(px(16))
        both.addWidget(self.list, 1)
        both.addLayout(told, 1)
        foot = QHBoxLayout()
        foot.addWidget(close)
        foot.addStretch(1)
        foot.addWidget(self.back)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(px(20), px(14), px(20), px(14))
        whole.setSpacing(px(10))
        whole.addWidget(label("headline", text=TITLE))
        whole.addWidget(self.search)
        whole.addWidget(self._none)
        whole.addLayout(both, 1)
        whole.addLayout(foot)

    def set_snapshot(self, snapshot: Snapshot) -> None:
        """Show the archive as it is now."""
        if snapshot.archived != self._snapshot.archived:
            self._snapshot = snapshot
            self._show()

    def _show(self) -> None:
        chosen = self._chosen
        self._found = found_in_archive(self._snapshot, self.search.text())
        self.list.blockSignals(True)  # noqa: FBT003 - Qt's own
        self.list.clear()
        for piece in self._found:
            self.list.addItem(QListWidgetItem(archive_line(piece)))
        self.list.blockSignals(False)  # noqa: FBT003 - Qt's own
        keys = [piece.key for piece in self._found]
        kept = keys.index(chosen.key) if chosen is not None and chosen.key in keys else 0
        self.list.setCurrentRow(kept if keys else -1)
        say(self._none, "" if keys else NONE_FOUND if self._snapshot.archived else NONE_THERE, hide_empty=True)
        self._show_one()

    @property
    def _chosen(self) -> ArchivedView | None:
        row = self.list.currentRow()
        return self._found[row] if 0 <= row < len(self._found) else None

    def _show_one(self) -> None:
        piece = self._chosen
        self.back.setEnabled(piece is not None)
        say(self._name, "" if piece is None else piece.title)
        say(self._words, "" if piece is None else "\n".join(archive_words(piece)))
        picture = QPixmap()
        if piece is not None and piece.photo and self._folder is not None:
            picture = QPixmap(str(self._folder / piece.photo))
        if not picture.isNull():
            size = (self._style.px(_PHOTO[0]), self._style.px(_PHOTO[1]))
            kept, smooth = Qt.AspectRatioMode.KeepAspectRatio, Qt.TransformationMode.SmoothTransformation
            picture = picture.scaled(*size, kept, smooth)
        self._photo.setPixmap(picture)
        self._photo.setVisible(not picture.isNull())

    def _restore(self) -> None:
        piece = self._chosen
        if piece is not None:
            self.restored.emit(piece.key)
