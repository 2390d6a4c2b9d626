"""Pictures that are made to do harm: refused in one sentence, soon, and without the memory that they ask for."""

from __future__ import annotations

import gzip
import struct
import subprocess
import sys
import zlib
from pathlib import Path

import pytest
from PySide6.QtGui import QImage

from studiowatch.service.commands import Refused
from studiowatch.service.photos import PhotoFolder
from studiowatch.ui.photo_shrinker import shrink_photo

MOST_MB = 600  # that the whole process may hold: the toolkit, and one picture of the library's own limit of 256 MB
_SIGNATURE = b"\x89PNG\r\n\x1a\n"  # W3C, Portable Network Graphics, section 5.2


def chunk(kind: bytes, data: bytes) -> bytes:
    """Return a chunk of section 5.3: length, type, data, CRC."""
    return struct.pack(">I", len(data)) + kind + data + struct.pack(">I", zlib.crc32(kind + data))


def png(width: int, height: int, *, rows: int, text: bytes = b"") -> bytes:
    """Return a PNG in grey whose header claims a size, and which holds `rows` black rows, well packed."""
    header = struct.pack(">IIBBBBB", width, height, 8, 0, 0, 0, 0)
    packer = zlib.compressobj(9)
    data = b"".join(packer.compress(bytes(width + 1)) for _ in range(rows)) + packer.flush()
    return _SIGNATURE + chunk(b"IHDR", header) + text + chunk(b"IDAT", data) + chunk(b"IEND", b"")


@pytest.fixture
def photos(tmp_path: Path) -> PhotoFolder:
    return PhotoFolder(folder=tmp_path / "photos", shrink=shrink_photo)


def put(folder: Path, name: str, data: bytes) -> Path:
    path = folder / name
    path.write_bytes(data)
    return path


def test_that_a_header_that_claims_far_too_much_is_refused_by_its_figures(photos: PhotoFolder, tmp_path: Path) -> None:
    path = put(tmp_path, "vast.png", png(60_000, 60_000, rows=1))
    with pytest.raises(Refused, match=r"^vast.png cannot be shown: it has 60000 × 60000 pixels, more than 200 million"):
        photos.take(path)
    assert not photos.folder.exists()


def test_that_a_whole_picture_packed_a_thousand_times_smaller_is_refused(photos: PhotoFolder, tmp_path: Path) -> None:
    path = put(tmp_path, "bomb.png", png(30_000, 30_000, rows=30_000))
    assert path.stat().st_size < 2e6
    with pytest.raises(Refused, match=r"^bomb\.png cannot be shown: it has 30000 × 30000 pixels"):
        photos.take(path)


def test_that_a_text_in_a_picture_that_unpacks_to_a_gigabyte_is_not_unpacked(tmp_path: Path) -> None:
    packer = zlib.compressobj(9)
    packed = b"".join(packer.compress(bytes(2**20)) for _ in range(1024)) + packer.flush()
    text = chunk(b"zTXt", b"Comment\0\0" + packed)  # section 11.3.4.3: keyword, method 0, packed text
    path = put(tmp_path, "text.png", png(40, 30, rows=30, text=text))
    took = taken_apart(path)
    assert took.stdout.split()[0] in ("kept", "refused")
    assert int(took.stdout.split()[1]) < MOST_MB * 1000


@pytest.mark.parametrize(("width", "height"), [(60_000, 60_000), (12_000, 12_000), (1, 2_000_000_000)])
def test_that_a_picture_asks_for_no_more_memory_than_there_is_for_one(tmp_path: Path, width: int, height: int) -> None:
    took = taken_apart(put(tmp_path, "vast.png", png(width, height, rows=1)))
    assert took.stdout.startswith("refused")
    assert int(took.stdout.split()[1]) < MOST_MB * 1000


def taken_apart(path: Path) -> subprocess.CompletedProcess[str]:
    """Take a picture in a process of its own; it prints what came of it, and the most memory that it held, kB.

    Where there is one, the peak is that of the new program's own memory: `ru_maxrss` begins with what the process held
    that called it, before it became another.
    """
    program = (
        "import resource, sys; from pathlib import Path\n"
        "from studiowatch.service.photos import NoPicture\n"
        "from studiowatch.ui.photo_shrinker import shrink_photo\n"
        "try:\n    shrink_photo(Path(sys.argv[1])); said = 'kept'\n"
        "except NoPicture:\n    said = 'refused'\n"
        "own = Path('/proc/self/status')\n"
        "peak = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss\n"
        "if own.exists():\n    peak = next(line.split()[1] for line in own.open() if line.startswith('VmHWM'))\n"
        "print(said, peak)\n"
    )
    call = [sys.executable, "-c", program, str(path)]
    return subprocess.run(call, capture_output=True, text=True, check=True, timeout=60)


def test_that_a_jpeg_that_ends_early_is_kept_without_its_end_or_refused(photos: PhotoFolder, tmp_path: Path) -> None:
    picture = QImage(800, 600, QImage.Format.Format_RGB32)
    for row in range(600):
        picture.setPixel(row, row, 0xFFCC33)
    assert picture.save(str(tmp_path / "whole.jpg"))
    whole = (tmp_path / "whole.jpg").read_bytes()
    for share in (0.02, 0.5, 0.98):
        answer = answered(photos, put(tmp_path, "half.jpg", whole[: round(share * len(whole))]))
        kept = QImage(str(photos.folder / answer))
        assert answer.startswith("half.jpg cannot be shown: ") or (kept.width(), kept.height()) == (800, 600)


def answered(photos: PhotoFolder, path: Path) -> str:
    """Return the name of a photo that was taken, or why it was not."""
    try:
        return photos.take(path)
    except Refused as refused:
        return str(refused)


_ENTITY = """<?xml version="1.0"?>
<!DOCTYPE svg [<!ENTITY hers SYSTEM "file://{path}">]>
<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" width="90" height="60">
<text x="5" y="30">&hers;</text><image xlink:href="file://{picture}" width="90" height="60"/></svg>
"""


@pytest.mark.parametrize("name", ["drawing.svg", "drawing.jpg", "drawing.svgz"])
def test_that_a_drawing_that_draws_other_files_in_is_no_photo(photos: PhotoFolder, tmp_path: Path, name: str) -> None:
    put(tmp_path, "secret.txt", b"hers")
    picture = QImage(90, 60, QImage.Format.Format_RGB32)
    picture.fill(0xFF0000)
    assert picture.save(str(tmp_path / "secret.png"))
    text = _ENTITY.format(path=tmp_path / "secret.txt", picture=tmp_path / "secret.png").encode()
    path = put(tmp_path, name, gzip.compress(text) if name.endswith("z") else text)
    with pytest.raises(Refused, match=f"^{name} cannot be shown: it is not a picture of a kind that is known here"):
        photos.take(path)
    assert not photos.folder.exists()


def test_that_a_drawing_is_refused_for_what_it_is_and_not_for_want_of_a_reader(tmp_path: Path) -> None:
    plain = '<svg xmlns="http://www.w3.org/2000/svg" width="9" height="6"><rect width="9" height="6" fill="red"/></svg>'
    path = put(tmp_path, "plain.svg", plain.encode())
    assert not QImage(str(path)).isNull()
