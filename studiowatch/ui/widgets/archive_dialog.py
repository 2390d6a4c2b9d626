"""The archived pieces: found by a word, looked at, and put back on the rack."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QPixmap
from PySide6.QtWidgets import QLineEdit, QWidget

from studiowatch.service.piece_view import ArchivedView
from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.words import say
from studiowatch.ui.models.archive import NONE_FOUND, NONE_THERE, archive_line, archive_words
from studiowatch.ui.models.finding import found_in_archive
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.small_picture import small_picture
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.list_dialog import ListDialog
from studiowatch.ui.widgets.text import button, label, put

_SIZE = (760, 520)  # units
_PHOTO = (220, 150)  # units


class ArchiveDialog(ListDialog):
    """Lists what is off the rack; `restored` carries the key of a piece that is to come back."""

    restored = Signal(str)

    def __init__(self, snapshot: Snapshot, photo_folder: Path | None, style: Style, parent: QWidget) -> None:
        super().__init__(say("Archived pieces"), _SIZE, style, parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self._snapshot, self._folder = snapshot, photo_folder
        self._found: tuple[ArchivedView, ...] = ()
        self.search = QLineEdit()
        self.search.setPlaceholderText(say("a word of the title, support, notes or data sheet"))
        self.search.setAccessibleName(say("Find an archived piece"))
        self.search.setClearButtonEnabled(True)
        self._none = label("body", Tone.MUTED, wrap=True)
        self._photo = label("small", Tone.MUTED)
        self.above.addWidget(self.search)
        self.above.addWidget(self._none)
        self.between.addWidget(self._photo)
        self.back = self.add_deed(button(say("Put back on the rack"), "primary"))
        self.search.textChanged.connect(self._show)
        self.list.itemActivated.connect(lambda _item: self._restore())
        self.back.clicked.connect(self._restore)
        self._show()
        self.search.setFocus()

    def set_snapshot(self, snapshot: Snapshot) -> None:
        """Show the archive as it is now."""
        if snapshot.archived != self._snapshot.archived:
            self._snapshot = snapshot
            self._show()

    def _show(self) -> None:
        chosen = self._chosen
        self._found = found_in_archive(self._snapshot, self.search.text())
        keys = [piece.key for piece in self._found]
        kept = keys.index(chosen.key) if chosen is not None and chosen.key in keys else 0
        none = NONE_FOUND if self._snapshot.archived else NONE_THERE
        put(self._none, "" if keys else say(none), hide_empty=True)
        self.show_lines([archive_line(piece) for piece in self._found], kept if keys else -1)

    @property
    def _chosen(self) -> ArchivedView | None:
        row = self.list.currentRow()
        return self._found[row] if 0 <= row < len(self._found) else None

    def _show_one(self) -> None:
        piece = self._chosen
        self.back.setEnabled(piece is not None)
        put(self._name, "" if piece is None else piece.title)
        put(self._words, "" if piece is None else "\n".join(archive_words(piece)))
        picture = QPixmap()
        if piece is not None and piece.photo and self._folder is not None:
            picture = small_picture(self._folder, piece.photo)
        if not picture.isNull():
            size = (self.dress.px(_PHOTO[0]), self.dress.px(_PHOTO[1]))
            kept, smooth = Qt.AspectRatioMode.KeepAspectRatio, Qt.TransformationMode.SmoothTransformation
            picture = picture.scaled(*size, kept, smooth)
        self._photo.setPixmap(picture)
        self._photo.setVisible(not picture.isNull())

    def _restore(self) -> None:
        piece = self._chosen
        if piece is not None:
            self.restored.emit(piece.key)
