"""Photos: taken in small and upright, under a name of our own; what cannot be shown is refused in one sentence."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtGui import QColor, QImage

from studiowatch.service.commands import Refused
from studiowatch.service.photos import LARGEST_MB, PhotoFolder
from studiowatch.service.piece_orders import PHOTO_NAME
from studiowatch.ui.photo_shrinker import LONGEST_PX, shrink_photo


@pytest.fixture
def photos(tmp_path: Path) -> PhotoFolder:
    return PhotoFolder(folder=tmp_path / "photos", shrink=shrink_photo)


def painted(path: Path, width: int, height: int) -> Path:
    image = QImage(width, height, QImage.Format.Format_RGB32)
    image.fill(QColor("teal"))
    image.setText("Author", "someone who is to stay private")
    assert image.save(str(path))
    return path


@pytest.mark.parametrize("kind", ["png", "jpg", "bmp"])
def test_that_a_picture_is_scaled_down_and_keeps_its_shape(photos: PhotoFolder, tmp_path: Path, kind: str) -> None:
    name = photos.take(painted(tmp_path / f"large.{kind}", 4000, 1000))
    assert PHOTO_NAME.fullmatch(name)
    kept = QImage(str(photos.folder / name))
    assert (kept.width(), kept.height()) == (LONGEST_PX, LONGEST_PX // 4)
    assert b"private" not in (photos.folder / name).read_bytes()


def test_that_the_same_picture_is_kept_once(photos: PhotoFolder, tmp_path: Path) -> None:
    path = painted(tmp_path / "one.png", 30, 20)
    assert photos.take(path) == photos.take(path)
    assert len(list(photos.folder.iterdir())) == 1


def test_that_a_name_cannot_lead_out_of_the_folder(photos: PhotoFolder, tmp_path: Path) -> None:
    (tmp_path / "..x").mkdir()
    name = photos.take(painted(tmp_path / "..x" / "..png.png", 30, 20))
    assert (photos.folder / name).resolve().parent == photos.folder.resolve()


def test_that_what_is_no_picture_is_refused_and_nothing_is_kept(photos: PhotoFolder, tmp_path: Path) -> None:
    path = tmp_path / "notes.jpg"
    path.write_text("not a picture")
    with pytest.raises(Refused, match=r"^notes.jpg cannot be shown: it is not a picture"):
        photos.take(path)
    assert not photos.folder.exists()


def test_that_half_a_picture_is_refused(photos: PhotoFolder, tmp_path: Path) -> None:
    whole = painted(tmp_path / "whole.png", 800, 600).read_bytes()
    path = tmp_path / "half.png"
    path.write_bytes(whole[:200])
    with pytest.raises(Refused, match=r"half.png cannot be shown"):
        photos.take(path)


def test_that_a_file_that_is_not_there_or_far_too_large_is_refused(photos: PhotoFolder, tmp_path: Path) -> None:
    with pytest.raises(Refused, match=r"no picture 'gone\.jpg'"):
        photos.take(tmp_path / "gone.jpg")
    with pytest.raises(Refused, match="no picture"):
        photos.take(tmp_path)
    path = tmp_path / "vast.jpg"
    with path.open("wb") as file:
        file.truncate((LARGEST_MB + 1) * 1_000_000)
    with pytest.raises(Refused, match=rf"81 MB.*up to {LARGEST_MB} MB"):
        photos.take(path)
