"""Draw the icon in all the sizes that desktops ask for, from the one drawing `resources/icons/studiowatch.svg`.

    QT_QPA_PLATFORM=offscreen .venv/bin/python resources/packaging/icons.py

Makes the theme folders of the freedesktop Icon Theme Specification in `resources/icons/hicolor`, and beside this file
`studiowatch.ico` for Windows and `studiowatch.icns` for macOS, both of them only envelopes around PNG pictures. Each
PNG names the drawing that it was made of by its SHA-256, so that a test sees one that is out of date.
"""

from __future__ import annotations

import hashlib
import struct
from pathlib import Path

from PySide6.QtCore import QBuffer, QIODevice, Qt
from PySide6.QtGui import QGuiApplication, QImage, QPainter
from PySide6.QtSvg import QSvgRenderer

HERE = Path(__file__).resolve().parent
DRAWING = HERE.parent / "icons" / "studiowatch.svg"
THEME = HERE.parent / "icons" / "hicolor"
SOURCE_KEY = "Source"  # of the PNG's text, PNG specification 11.3.3.2
THEME_PX = (16, 22, 24, 32, 48, 64, 128, 256, 512)  # the sizes of the hicolor theme's index that applications fill
ICO_PX = (16, 24, 32, 48, 256)
ICNS_KINDS = {b"icp4": 16, b"icp5": 32, b"icp6": 64, b"ic07": 128, b"ic08": 256, b"ic09": 512, b"ic10": 1024}


def drawing_hash() -> str:
    """Return the SHA-256 of the drawing, as the PNGs name it."""
    return hashlib.sha256(DRAWING.read_bytes()).hexdigest()


def png(side_px: int) -> bytes:
    """Return the drawing as a square PNG, `side_px` wide."""
    image = QImage(side_px, side_px, QImage.Format.Format_ARGB32)
    image.fill(Qt.GlobalColor.transparent)
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    QSvgRenderer(str(DRAWING)).render(painter)
    painter.end()
    image.setText(SOURCE_KEY, drawing_hash())
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    image.save(buffer, "PNG")
    return bytes(buffer.data().data())


def ico(pictures: dict[int, bytes]) -> bytes:
    """Return a Windows icon of PNGs by their sides, px; a side of 256 is written as 0, as the format has it."""
    offset = 6 + 16 * len(pictures)
    entries = b""
    for side_px, picture in pictures.items():
        entries += struct.pack("<BBBBHHII", side_px % 256, side_px % 256, 0, 0, 1, 32, len(picture), offset)
        offset += len(picture)
    return struct.pack("<HHH", 0, 1, len(pictures)) + entries + b"".join(pictures.values())


def icns(pictures: dict[bytes, bytes]) -> bytes:
    """Return a macOS icon of PNGs by their kinds."""
    blocks = b"".join(kind + struct.pack(">I", 8 + len(picture)) + picture for kind, picture in pictures.items())
    return b"icns" + struct.pack(">I", 8 + len(blocks)) + blocks


def main() -> None:
    """Draw them all."""
    app = QGuiApplication.instance() or QGuiApplication([])
    for side_px in THEME_PX:
        path = THEME / f"{side_px}x{side_px}" / "apps" / "studiowatch.png"
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(png(side_px))
    (HERE / "studiowatch.ico").write_bytes(ico({side_px: png(side_px) for side_px in ICO_PX}))
    (HERE / "studiowatch.icns").write_bytes(icns({kind: png(side_px) for kind, side_px in ICNS_KINDS.items()}))
    del app


if __name__ == "__main__":
    main()
