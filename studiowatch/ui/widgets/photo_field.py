"""The photo of a piece: chosen from a file, taken in by the keeper, shown small."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QPixmap
from PySide6.QtWidgets import QFileDialog, QHBoxLayout, QWidget

from studiowatch.service.correction_commands import TakePhoto
from studiowatch.speech.words import mark, say
from studiowatch.ui.bridge import Courier
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.small_picture import small_picture
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.text import button, label, put

_SHOWN = (108, 72)  # units
_KINDS = mark("Pictures (*.jpg *.jpeg *.png *.webp *.bmp *.gif *.tif *.tiff);;All files (*)")


class PhotoField(QWidget):
    """Chooses a photo; `refused` carries a sentence why one could not be taken, `changed` that there is another."""

    changed = Signal()
    refused = Signal(str)

    def __init__(self, courier: Courier, folder: Path | None, style: Style) -> None:
        super().__init__()
        self.setAccessibleName(say("Photo"))
        self._courier, self._folder = courier, folder
        self.name = ""
        self._size = (style.px(_SHOWN[0]), style.px(_SHOWN[1]))
        self._picture = label("small", Tone.MUTED)
        self._picture.setFixedSize(*self._size)
        self._picture.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self._picture.setProperty("frame", "true")
        self._words = label("small", Tone.MUTED, wrap=True)
        self.choose = button(say("Choose a photo…"))
        self.choose.clicked.connect(self.ask)
        self.remove = button(say("Remove the photo"))
        self.remove.clicked.connect(lambda: self.set_name(""))
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(style.px(10))
        row.addWidget(self._picture)
        row.addWidget(self.choose)
        row.addWidget(self.remove)
        row.addWidget(self._words, 1)
        self.show_name("")

    def ask(self) -> None:
        """Ask for a file."""
        chooser = QFileDialog(self, say("Choose a photo"), "", say(_KINDS))
        chooser.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        chooser.setFileMode(QFileDialog.FileMode.ExistingFile)
        chooser.fileSelected.connect(lambda chosen: self.take(Path(chosen)))
        chooser.open()

    def take(self, path: Path) -> None:
        """Have the picture at `path` taken in."""
        put(self._words, say("Taking {name} in …", name=path.name))
        self.choose.setEnabled(False)
        self._courier.send(TakePhoto(path=path), owner=self, done=self.set_name, refused=self._refuse)

    def _refuse(self, sentence: str) -> None:
        self.choose.setEnabled(True)
        put(self._words, "")
        self.refused.emit(sentence)

    def set_name(self, name: str) -> None:
        """Have the photo `name` from now on."""
        self.show_name(name)
        self.changed.emit()

    def show_name(self, name: str) -> None:
        """Show the photo `name`, or that there is none."""
        self.name = name
        self.choose.setEnabled(True)
        self.remove.setVisible(bool(name))
        put(self._words, say("Scaled down and copied beside the records.") if name else "")
        picture = self._load(name)
        self._picture.setPixmap(picture)
        if picture.isNull():
            self._picture.setText(say("its file\nis missing") if name else say("no photo"))

    def _load(self, name: str) -> QPixmap:
        if not name or self._folder is None:
            return QPixmap()
        picture = small_picture(self._folder, name)
        kept, smooth = Qt.AspectRatioMode.KeepAspectRatio, Qt.TransformationMode.SmoothTransformation
        return picture if picture.isNull() else picture.scaled(*self._size, kept, smooth)
