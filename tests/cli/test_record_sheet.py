"""`record-sheet`: read again by a general PDF library and by Python's own HTML parser."""

from __future__ import annotations

import os
import subprocess
import sys
from collections.abc import Callable
from html.parser import HTMLParser
from pathlib import Path
from unicodedata import normalize

import pytest
from pypdf import PdfReader
from PySide6.QtGui import QColor, QImage

from studiowatch.service.record_page import HEADINGS
from studiowatch.ui.photo_shrinker import LONGEST_PX
from studiowatch.ui.print.photo import photo_jpeg

from .conftest import Answer, room_text

TITLE = "Kiln <script>alert(1)</script>"
STUDIO = f"""
[[piece]]
title = "{TITLE}"
width_cm = 40
height_cm = 40
photo = "kiln.jpg"
notes = "Hang it <b>out of</b> the sun"
[[piece.coat]]
sheet = "isolation-waterborne"
laid = 2026-03-02T09:00:00Z
volume_mL = 16
[[piece.coat]]
sheet = "gloss-waterborne"
laid = 2026-03-03T09:00:00Z
outcome = "milky in patches"
seen = 2026-03-04T08:00:00Z
[[piece]]
title = "Salt Road"
width_cm = 30
height_cm = 20
"""

pytestmark = pytest.mark.usefixtures("qapp")  # one Qt application for all tests of a run


class Parsed(HTMLParser):
    """The tags and words of a page."""

    def __init__(self, page: str) -> None:
        super().__init__()
        self.tags: list[str] = []
        self.sources: list[str] = []
        self.words = ""
        self.feed(page)
        self.close()

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.append(tag)
        self.sources += [value or "" for name, value in attrs if name in {"src", "href"}]

    def handle_data(self, data: str) -> None:
        self.words += data


@pytest.fixture
def studio(tmp_path: Path) -> Path:
    path = tmp_path / "studio.toml"
    path.write_text(STUDIO, "utf-8")
    return path


@pytest.fixture
def room(tmp_path: Path) -> Path:
    path = tmp_path / "room.csv"
    rows = [
        (f"2026-03-02T09:{minute:02}:30Z", 20 + minute % 2, 50, 0.3 if minute < 5 else 0.05) for minute in range(30)
    ]
    path.write_text(room_text(rows), "utf-8")
    return path


def photo(folder: Path, width: int, height: int) -> None:
    (folder / "photos").mkdir()
    image = QImage(width, height, QImage.Format.Format_RGB32)
    image.fill(QColor("#336699"))
    assert image.save(str(folder / "photos" / "kiln.jpg"))


def flat(text: str) -> str:
    """Return words with single spaces, and a typesetter's joined letters as two (Unicode NFKC)."""
    return " ".join(normalize("NFKC", text).split())


def test_that_the_page_stands_alone_and_what_she_typed_stays_words(
    call: Callable[..., Answer], studio: Path, room: Path, tmp_path: Path
) -> None:
    photo(tmp_path, 3000, 2000)
    out = tmp_path / "record.html"
    answer = call("record-sheet", TITLE, "--studio", studio, "--room", room, "--html", out)
    assert (answer.code, answer.out) == (0, "")
    read = Parsed(out.read_text("utf-8"))
    assert not {"script", "b", "link"} & set(read.tags)
    assert TITLE in read.words
    assert "Hang it <b>out of</b> the sun" in read.words
    assert [source[:23] for source in read.sources] == ["data:image/jpeg;base64,"]
    assert read.tags.count("svg") == 2


def test_that_the_room_and_the_clouding_are_told_as_they_were(
    call: Callable[..., Answer], studio: Path, room: Path, tmp_path: Path
) -> None:
    # 30 rows, one a minute, 20 and 21 °C in turn: mean 20.5; 5 of them at 0.3 m/s; 16 mL on 0.16 m² are 100 µm
    out = tmp_path / "record.html"
    call("record-sheet", TITLE, "--studio", studio, "--room", room, "--html", out)
    words = flat(Parsed(out.read_text("utf-8")).words)
    assert "20.5 °C (20.0 to 21.0), 50 % RH (50 to 50), moving air for 5 min" in words
    assert flat("100 / 32 µm") in words
    assert "Came out milky in patches, seen 4 Mar 2026" in words
    assert "Coat 2, gloss: the room was not read while it was wet" in words
    assert "Coat 2, gloss: how much was laid; the thickness is its sheet's, the room while it was wet." in words
    assert "An isolation coat (coat 1) lies beneath" in words


PAPERS = [("a4", 595, 842), ("letter", 612, 792)]  # points of ISO 216 A4 and of ANSI A


@pytest.mark.parametrize("paper", PAPERS, ids=lambda paper: paper[0])
def test_that_the_print_has_its_paper_and_its_words(
    call: Callable[..., Answer], studio: Path, tmp_path: Path, paper: tuple[str, int, int]
) -> None:
    photo(tmp_path, 300, 200)
    out = tmp_path / "record.pdf"
    answer = call("record-sheet", TITLE, "--studio", studio, "--pdf", out, "--paper", paper[0])
    assert answer.code == 0, answer.err
    read = PdfReader(out)
    assert 1 <= len(read.pages) <= 2
    assert (read.pages[0].mediabox.width, read.pages[0].mediabox.height) == paper[1:]
    assert read.metadata is not None
    assert read.metadata.title == f"{TITLE}: finishing record"
    words = flat(" ".join(page.extract_text() for page in read.pages))
    assert "milky in patches" in words
    assert "keep every flame and spark away" in words


def test_that_a_broken_photo_costs_the_photo_only(call: Callable[..., Answer], studio: Path, tmp_path: Path) -> None:
    (tmp_path / "photos").mkdir()
    (tmp_path / "photos" / "kiln.jpg").write_bytes(b"no picture")
    out = tmp_path / "record.html"
    answer = call("record-sheet", TITLE, "--studio", studio, "--html", out)
    assert answer.code == 0
    assert "the record is made without it" in answer.err
    assert "img" not in Parsed(out.read_text("utf-8")).tags


def test_that_notes_can_be_left_out(call: Callable[..., Answer], studio: Path, tmp_path: Path) -> None:
    out = tmp_path / "record.html"
    call("record-sheet", TITLE, "--studio", studio, "--html", out, "--without-notes")
    assert "Hang it" not in out.read_text("utf-8")


def test_that_a_near_title_is_named(call: Callable[..., Answer], studio: Path, tmp_path: Path) -> None:
    answer = call("record-sheet", "Salt Raod", "--studio", studio, "--html", tmp_path / "record.html")
    assert answer.code == 2
    assert "near it: Salt Road." in answer.err


def test_that_a_file_that_is_there_is_left_alone(call: Callable[..., Answer], studio: Path, tmp_path: Path) -> None:
    out = tmp_path / "record.pdf"
    out.write_bytes(b"hers")
    answer = call("record-sheet", TITLE, "--studio", studio, "--pdf", out)
    assert answer.code == 2
    assert out.read_bytes() == b"hers"


def test_that_how_a_log_is_written_is_refused_where_there_is_none(
    call: Callable[..., Answer], studio: Path, tmp_path: Path
) -> None:
    out = tmp_path / "record.html"
    for words in ((), ("--studio", studio)):
        answer = call("record-sheet", TITLE, *words, "--html", out, "--zone", "Europe/Berlin")
        assert (answer.code, answer.out) == (2, "")
        assert "--zone belongs to --room" in answer.err
        assert not out.exists()


def test_that_a_piece_without_coats_says_so(call: Callable[..., Answer], studio: Path, tmp_path: Path) -> None:
    out = tmp_path / "record.html"
    assert call("record-sheet", "salt road", "--studio", studio, "--html", out).code == 0
    assert "No coat has been laid, as far as is recorded." in Parsed(out.read_text("utf-8")).words


def test_that_a_photo_is_upright_and_small_enough_to_print(tmp_path: Path) -> None:
    # Exif 2.32, tag 0x0112: orientation 6 means that the camera was held on its side, so that width and height swap
    photo(tmp_path, 3000, 2000)
    path = tmp_path / "photos" / "kiln.jpg"
    exif = b"Exif\0\0MM\0*\0\0\0\x08\0\x01\x01\x12\0\x03\0\0\0\x01\0\x06\0\0\0\0\0\0"
    plain = path.read_bytes()
    path.write_bytes(plain[:2] + b"\xff\xe1" + (len(exif) + 2).to_bytes(2, "big") + exif + plain[2:])
    shown = QImage.fromData(photo_jpeg(path))
    assert shown.height() == LONGEST_PX
    assert shown.width() == pytest.approx(LONGEST_PX * 2 / 3, abs=1)


def test_that_the_records_tell_what_the_files_told_of_a_piece_that_left_the_rack(
    call: Callable[..., Answer], studio: Path, room: Path, tmp_path: Path
) -> None:
    studio.write_text(STUDIO.replace("width_cm = 40", "archived = true\nwidth_cm = 40", 1), "utf-8")
    assert call("import", studio).code == 0
    assert call("import", room).code == 0
    told, kept = tmp_path / "files.html", tmp_path / "records.html"
    assert call("record-sheet", TITLE, "--studio", studio, "--room", room, "--html", told).code == 0
    assert call("record-sheet", TITLE, "--html", kept).code == 0
    assert kept.read_text("utf-8") == told.read_text("utf-8")


def test_that_without_an_isolation_coat_the_paint_is_said_to_be_at_risk(
    call: Callable[..., Answer], studio: Path, tmp_path: Path
) -> None:
    studio.write_text(STUDIO.replace("isolation-waterborne", "satin-waterborne"), "utf-8")
    out = tmp_path / "record.html"
    assert call("record-sheet", TITLE, "--studio", studio, "--html", out).code == 0
    assert "anything that removes the varnish reaches the paint" in Parsed(out.read_text("utf-8")).words


def test_that_printing_needs_no_screen(studio: Path, tmp_path: Path) -> None:
    out = tmp_path / "record.pdf"
    screenless = {k: v for k, v in os.environ.items() if k not in {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"}}
    words = ["--folder", str(tmp_path / "none"), "record-sheet", TITLE, "--studio", str(studio), "--pdf", str(out)]
    ended = subprocess.run([sys.executable, "-m", "studiowatch", *words], env=screenless, check=False)
    assert ended.returncode == 0
    assert len(PdfReader(out).pages) == 1


def test_that_no_heading_stands_alone_at_the_foot_of_a_page(
    call: Callable[..., Answer], studio: Path, tmp_path: Path
) -> None:
    for lines in range(6, 42, 2):  # two lines of notes are lower than a heading with its space
        notes = "\\n".join(["a line"] * lines)
        studio.write_text(STUDIO.replace("Hang it <b>out of</b> the sun", notes), "utf-8")
        out = tmp_path / f"{lines}.pdf"
        assert call("record-sheet", TITLE, "--studio", studio, "--pdf", out).code == 0
        for page in PdfReader(out).pages:
            said = [flat(line) for line in page.extract_text().splitlines() if line.strip()]
            assert said[-2] not in HEADINGS  # the last line is the foot
