"""bootstrap.py: what it decides, and how it starts the program, without a network."""

from __future__ import annotations

import importlib.util
import os
import shutil
import subprocess
import sys
from dataclasses import replace
from pathlib import Path
from types import ModuleType

import pytest

ROOT = Path(__file__).resolve().parents[1]


def load_bootstrap() -> ModuleType:
    spec = importlib.util.spec_from_file_location("bootstrap", ROOT / "bootstrap.py")
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    sys.modules[spec.name] = module  # dataclasses look their own module up by name
    spec.loader.exec_module(module)
    return module


bootstrap = load_bootstrap()
NEED = bootstrap.needed("test")
HELD = replace(NEED, extras=frozenset({"test", "lint"}), packages=frozenset({"xvfb"}), tried=frozenset({"xvfb"}))

on_posix = pytest.mark.skipif(os.name != "posix", reason="the stand-in for Python is a shell script")
with_dpkg = pytest.mark.skipif(shutil.which("dpkg-query") is None, reason="dpkg-query is on Debian and its relatives")
with_xvfb = pytest.mark.skipif(shutil.which("Xvfb") is None, reason="Xvfb is not installed")


def work(stamp_text: str | None, *, python_exists: bool = True) -> str:
    return str(bootstrap.venv_work(stamp_text, NEED, python_exists=python_exists).name)


def test_that_a_stamp_survives_its_own_text() -> None:
    assert bootstrap.Stamp.from_text(HELD.to_text()) == HELD


def test_that_an_environment_that_holds_more_than_is_needed_is_used_as_it_is() -> None:
    assert work(HELD.to_text()) == "NOTHING"


@pytest.mark.parametrize(
    "change",
    [{"project": "another pyproject.toml"}, {"extras": frozenset[str]()}],
    ids=["project", "extras"],
)
def test_that_a_changed_project_or_a_new_extra_is_installed_into_the_same_environment(change: dict[str, str]) -> None:
    assert work(replace(HELD, **change).to_text()) == "INSTALL"


@pytest.mark.parametrize("change", [{"python": "linux cpython-310"}, {"place": "/elsewhere"}], ids=["python", "place"])
def test_that_another_python_or_a_moved_folder_makes_the_environment_anew(change: dict[str, str]) -> None:
    assert work(replace(HELD, **change).to_text()) == "MAKE"


@pytest.mark.parametrize("text", [bootstrap.UNFINISHED, "", HELD.to_text()[:-40], "[]", "null", "{}"])
def test_that_a_half_made_environment_is_made_anew(text: str) -> None:
    assert work(text) == "MAKE"


def test_that_an_environment_without_its_python_is_made_anew() -> None:
    assert work(HELD.to_text(), python_exists=False) == "MAKE"


def test_that_an_environment_made_by_hand_is_kept() -> None:
    assert work(None) == "INSTALL"


def test_that_packages_count_under_their_own_and_their_t64_name_and_only_when_installed() -> None:
    # the statuses are dpkg-query(1)'s; libglib2.0-0t64 is Debian 13's and Ubuntu 24.04's name of libglib2.0-0
    answer = "libglib2.0-0t64 installed\nlibgl1 installed\nxvfb config-files\nopenbox half-installed\n"
    wanted = frozenset({"libglib2.0-0", "libgl1", "xvfb", "openbox", "simavr"})
    assert bootstrap.missing_packages(wanted, answer) == {"xvfb", "openbox", "simavr"}


@with_dpkg
def test_that_dpkg_itself_tells_a_package_that_is_there_from_one_that_is_not() -> None:
    assert bootstrap.find_missing(frozenset({"dpkg", "no-such-package-anywhere"})) == {"no-such-package-anywhere"}


@pytest.mark.parametrize(
    ("environment", "platform", "started"),
    [
        ({"DISPLAY": ":0"}, "linux", ["demo"]),
        ({"WAYLAND_DISPLAY": "wayland-0"}, "linux", ["demo"]),
        ({}, "linux", ["demo", "--headless"]),
        ({"DISPLAY": ""}, "linux", ["demo", "--headless"]),
        ({}, "darwin", ["demo"]),
        ({}, "win32", ["demo"]),
    ],
)
def test_that_run_opens_the_window_only_where_there_is_a_screen(
    environment: dict[str, str], platform: str, started: list[str]
) -> None:
    assert bootstrap.program_arguments([], environment, platform) == started


def test_that_run_hands_the_users_own_arguments_on() -> None:
    own = ["record", "--port", "COM3"]
    assert bootstrap.program_arguments(own, {}, "linux") == own


def project_copy(folder: Path) -> Path:
    folder.mkdir()
    for name in ("bootstrap.py", "pyproject.toml"):
        shutil.copy(ROOT / name, folder)
    return folder


def start(folder: Path, *arguments: str, **environment: str) -> subprocess.CompletedProcess[str]:
    """Start a copy of bootstrap.py that finds no apt-get to call."""
    return subprocess.run(
        [sys.executable, folder / "bootstrap.py", *arguments],
        env={**os.environ, "PATH": str(folder), **environment},
        stdin=subprocess.DEVNULL,
        capture_output=True,
        text=True,
        check=False,
    )


@on_posix
def test_that_a_second_start_says_nothing_and_becomes_the_program(tmp_path: Path) -> None:
    folder = project_copy(tmp_path / "copy")
    python = folder / ".venv" / "bin" / "python"
    python.parent.mkdir(parents=True)
    python.write_text('#!/bin/sh\necho "started $@"\nexit 7\n', encoding="utf-8")
    python.chmod(0o755)
    stamp = replace(HELD, place=str(folder.resolve()))
    (folder / ".venv" / bootstrap.STAMP.name).write_text(stamp.to_text(), encoding="utf-8")

    answer = start(folder, "run", "boards", "--json")

    assert (answer.stdout, answer.stderr, answer.returncode) == ("started -m studiowatch boards --json\n", "", 7)


def test_that_without_a_network_it_says_so_shows_pips_words_and_keeps_nothing_half_made(tmp_path: Path) -> None:
    folder = project_copy(tmp_path / "copy")

    answer = start(folder, "run", PIP_NO_INDEX="1", PIP_FIND_LINKS=str(tmp_path), PIP_CONFIG_FILE=os.devnull)

    assert answer.returncode == 1
    assert answer.stdout == ""
    assert "pip could not install the libraries: check the network and start again." in answer.stderr
    assert "No matching distribution found" in answer.stderr
    assert "Traceback" not in answer.stderr
    stamp = (folder / ".venv" / bootstrap.STAMP.name).read_text(encoding="utf-8")
    assert work(stamp) == "MAKE"


def test_that_a_call_it_does_not_know_shows_the_calls_it_knows(tmp_path: Path) -> None:
    answer = start(project_copy(tmp_path / "copy"), "tset")
    assert answer.returncode == 2
    assert "python3 bootstrap.py test" in answer.stderr


def qt_finds_a_screen(environment: dict[str, str]) -> bool:
    program = "from PySide6.QtGui import QGuiApplication; raise SystemExit(not QGuiApplication([]).screens())"
    answer = subprocess.run([sys.executable, "-c", program], env=environment, capture_output=True, check=False)
    return answer.returncode == 0


@with_xvfb
@pytest.mark.window
def test_that_the_tests_get_a_screen_of_their_own_that_ends_with_them() -> None:
    with bootstrap.private_screens(2) as environment:
        assert environment["QT_QPA_PLATFORM"] == "xcb"
        screens = environment["STUDIOWATCH_TEST_SCREENS"].split()
        assert len({*screens, os.environ.get("DISPLAY")}) == 3
        assert environment["DISPLAY"] == screens[0]
        seen = [environment | {"DISPLAY": screen} for screen in screens]
        assert all(map(qt_finds_a_screen, seen))
    assert not any(map(qt_finds_a_screen, seen))


def test_that_the_tests_run_without_a_screen_where_xvfb_is_missing(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setattr(sys, "platform", "linux")
    monkeypatch.setenv("PATH", str(tmp_path))
    with bootstrap.private_screens(1) as environment:
        assert environment["QT_QPA_PLATFORM"] == "offscreen"
    assert "Xvfb is missing" in capsys.readouterr().err


@on_posix
@pytest.mark.parametrize(("script", "code"), [("exit 5", 5), ("kill -TERM $$", 143)])
def test_that_exit_codes_are_handed_through_and_signals_told_as_shells_tell_them(script: str, code: int) -> None:
    assert bootstrap.supervise(["/bin/sh", "-c", script]) == code
