"""What is handed on: the wheel and the sdist, what a desktop reads of them, and one version everywhere."""

from __future__ import annotations

import os
import re
import shutil
import struct
import subprocess
import sys
import tarfile
import zipfile
from pathlib import Path
from xml.etree import ElementTree as ET

import pytest
from PySide6.QtGui import QImage

import studiowatch

ROOT = Path(__file__).resolve().parents[1]
RESOURCES = ROOT / "resources"
SHIPPED = (
    "sheets/*",
    "icons/*.svg",
    "sounds/*",
    "demo/*",
    "atlas/*",
    "languages/*.qm",
    "help/*/*.html",
    "screens/*.png",
    "*.desktop",
)
"""What the program reads of `resources/`; translators' files and specs stay behind."""
BUILD_S = 110.0


@pytest.fixture(scope="module")
def built(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Return a folder with the sdist, and with the wheel that `build` makes of that sdist and of nothing else."""
    folder = tmp_path_factory.mktemp("built")
    words = [sys.executable, "-m", "build", "--no-isolation", "--outdir", str(folder), str(ROOT)]
    done = subprocess.run(words, capture_output=True, text=True, check=False, timeout=BUILD_S)
    assert done.returncode == 0, done.stdout + done.stderr
    return folder


@pytest.fixture(scope="module")
def wheel(built: Path) -> Path:
    (path,) = built.glob("*.whl")
    return path


@pytest.fixture(scope="module")
def installed(wheel: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Return the program, installed from the wheel into an environment of its own.

    The libraries are those of the environment that runs the tests, so that no network is needed; studiowatch itself
    comes from the wheel alone, since a path beside the libraries says nothing of the folder that the code lies in.
    """
    folder = tmp_path_factory.mktemp("elsewhere") / "env"
    subprocess.run([sys.executable, "-m", "venv", "--without-pip", str(folder)], check=True)
    python = folder / ("Scripts" if os.name == "nt" else "bin") / "python"
    words = [sys.executable, "-m", "pip", "--python", str(python), "install", "--quiet", "--no-deps", "--no-index"]
    subprocess.run([*words, str(wheel)], check=True, capture_output=True)
    (site,) = folder.glob("lib/python3*/site-packages")
    libraries = Path(pytest.__file__).parents[1]
    (site / "libraries.pth").write_text(f"{libraries}\n", encoding="utf-8")  # its own .pth files are not read that way
    return python.with_name("studiowatch")


def run(program: Path, *words: str, folder: Path) -> subprocess.CompletedProcess[str]:
    home = {"HOME": str(folder), "XDG_CACHE_HOME": str(folder / "cache"), "XDG_DATA_HOME": str(folder / "data")}
    kept = {name: value for name, value in os.environ.items() if name != "PYTHONPATH"}
    return subprocess.run(
        [program, *words], cwd=folder, env=kept | home, capture_output=True, text=True, check=False, timeout=100
    )


def test_that_the_wheel_holds_each_file_that_the_program_reads(wheel: Path) -> None:
    wanted = {
        f"studiowatch/resources/{path.relative_to(RESOURCES).as_posix()}"
        for pattern in SHIPPED
        for path in RESOURCES.glob(pattern)
        if path.is_file()
    }
    with zipfile.ZipFile(wheel) as archive:
        held = set(archive.namelist())
    assert len(wanted) > 40
    assert wanted <= held, sorted(wanted - held)
    code = {f"studiowatch/{path.relative_to(ROOT / 'studiowatch')}" for path in (ROOT / "studiowatch").rglob("*.py")}
    assert code <= held, sorted(code - held)


def test_that_the_wheel_puts_entry_and_icons_where_a_desktop_looks(wheel: Path) -> None:
    with zipfile.ZipFile(wheel) as archive:
        shared = {name.partition(".data/data/")[2] for name in archive.namelist() if ".data/data/" in name}
    icons = {path.relative_to(RESOURCES / "icons").as_posix() for path in RESOURCES.glob("icons/hicolor/*/*/*.png")}
    assert {f"share/icons/{name}" for name in icons} <= shared
    assert "share/icons/hicolor/scalable/apps/studiowatch.svg" in shared
    assert {"share/applications/studiowatch.desktop", "share/metainfo/studiowatch.metainfo.xml"} <= shared


def test_that_no_test_and_no_spec_is_in_the_wheel(wheel: Path) -> None:
    with zipfile.ZipFile(wheel) as archive:
        strays = [name for name in archive.namelist() if "tests/" in name or "packaging/" in name or ".ts" in name]
    assert strays == []


def test_that_the_sdist_alone_is_enough_to_build_it(built: Path) -> None:
    """The wheel of `built` was made of the sdist: what the sdist lacks would be lacking there."""
    (sdist,) = built.glob("*.tar.gz")
    with tarfile.open(sdist) as archive:
        names = {name.partition("/")[2] for name in archive.getnames()}
    assert {
        "pyproject.toml",
        "LICENSE",
        "README.md",
        "studiowatch/__main__.py",
        "resources/demo/scenario.toml",
    } <= names


def test_that_it_runs_from_another_folder(installed: Path, tmp_path: Path) -> None:
    told = run(installed, "--version", folder=tmp_path)
    assert (told.returncode, told.stdout) == (0, f"studiowatch {studiowatch.__version__}\n"), told.stderr
    air = ("--wet-um", "100", "--side-m", "0.4", "--air", "20,55,0.05")
    foretold = run(installed, "predict", "--sheet", "gloss-waterborne", *air, folder=tmp_path)
    assert foretold.returncode == 0, foretold.stderr
    assert foretold.stdout.strip()
    scenario = "from studiowatch.service.demo import scenario; print(len(scenario().pieces))"
    assert int(run(installed.with_name("python"), "-c", scenario, folder=tmp_path).stdout) > 0
    place = run(installed.with_name("python"), "-c", "import studiowatch; print(studiowatch.__file__)", folder=tmp_path)
    assert Path(place.stdout.strip()).is_relative_to(installed.parents[1]), place.stdout + place.stderr


def test_that_changelog_metainfo_and_program_agree_on_the_version() -> None:
    heading = next(line for line in (ROOT / "CHANGELOG.md").read_text("utf-8").splitlines() if line.startswith("## "))
    found = re.fullmatch(r"## (\S+)(?: \((unreleased)\)|, (\d{4}-\d\d-\d\d))", heading)
    assert found is not None, heading
    release = ET.parse(RESOURCES / "studiowatch.metainfo.xml").find("releases/release")  # noqa: S314 - our own
    assert release is not None
    assert (found[1], release.get("version")) == (studiowatch.__version__, studiowatch.__version__)
    assert (found[2] == "unreleased") == (release.get("type") == "development")
    assert found[3] in {None, release.get("date")}


@pytest.mark.skipif(shutil.which("desktop-file-validate") is None, reason="desktop-file-validate is not installed")
def test_that_the_desktop_entry_is_valid() -> None:
    words = ["desktop-file-validate", str(RESOURCES / "studiowatch.desktop")]
    done = subprocess.run(words, capture_output=True, text=True, check=False)
    assert (done.returncode, done.stdout) == (0, "")


@pytest.mark.skipif(shutil.which("appstreamcli") is None, reason="appstreamcli is not installed")
def test_that_the_metainfo_is_valid() -> None:
    words = ["appstreamcli", "validate", "--no-net", "--pedantic", str(RESOURCES / "studiowatch.metainfo.xml")]
    done = subprocess.run(words, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stdout + done.stderr


def test_that_the_bundle_begins_where_the_program_does() -> None:
    words = [sys.executable, str(RESOURCES / "packaging" / "start.py"), "--version"]
    done = subprocess.run(words, capture_output=True, text=True, check=False, cwd=ROOT)
    assert done.returncode == 0, done.stderr
    assert studiowatch.__version__ in done.stdout


def test_that_every_icon_is_of_its_size_and_of_the_present_drawing() -> None:
    sys.path.insert(0, str(RESOURCES / "packaging"))
    try:
        import icons  # type: ignore[import-not-found]  # noqa: PLC0415
    finally:
        sys.path.pop(0)
    paths = sorted(RESOURCES.glob("icons/hicolor/*/apps/studiowatch.png"))
    assert len(paths) == len(icons.THEME_PX)
    for path in paths:
        image, side_px = QImage(str(path)), int(path.parts[-3].partition("x")[0])
        assert (image.width(), image.height()) == (side_px, side_px), path
        assert image.text(icons.SOURCE_KEY) == icons.drawing_hash(), f"{path} is of another drawing: run icons.py"


def test_that_the_windows_and_mac_icons_hold_pictures_of_the_present_drawing() -> None:
    """The envelopes are taken apart by their own descriptions: the ICO directory, and the ICNS chain of blocks."""
    sys.path.insert(0, str(RESOURCES / "packaging"))
    try:
        import icons  # noqa: PLC0415
    finally:
        sys.path.pop(0)
    data = (RESOURCES / "packaging" / "studiowatch.ico").read_bytes()
    _, kind, count = struct.unpack_from("<HHH", data)
    assert (kind, count) == (1, len(icons.ICO_PX))
    pictures = []
    for place in range(count):
        side_px, *_, size, offset = struct.unpack_from("<BBBBHHII", data, 6 + 16 * place)
        pictures.append((side_px or 256, data[offset : offset + size]))
    data = (RESOURCES / "packaging" / "studiowatch.icns").read_bytes()
    assert struct.unpack_from(">4sI", data) == (b"icns", len(data))
    offset = 8
    while offset < len(data):
        name, size = struct.unpack_from(">4sI", data, offset)
        pictures.append((icons.ICNS_KINDS[name], data[offset + 8 : offset + size]))
        offset += size
    assert len(pictures) == len(icons.ICO_PX) + len(icons.ICNS_KINDS)
    for side_px, picture in pictures:
        image = QImage.fromData(picture)
        assert (image.width(), image.height()) == (side_px, side_px)
        assert image.text(icons.SOURCE_KEY) == icons.drawing_hash()
