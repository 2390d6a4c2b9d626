"""What she chose in the window, as calls without one find it; the file is written by Qt itself."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import QByteArray, QSettings

from studiowatch.service.preferences import chosen_language, kept_choices
from studiowatch.speech.units import METRIC, US, from_kept
from studiowatch.ui.settings import ViewSettings


def test_that_what_the_window_kept_is_found_without_qt(tmp_path: Path) -> None:
    path = tmp_path / "studiowatch" / "window.ini"
    settings = ViewSettings(QSettings(str(path), QSettings.Format.IniFormat))
    settings.units, settings.language = US, "de"
    settings.geometry = QByteArray(bytes(range(256)))
    del settings
    kept = kept_choices({"XDG_CONFIG_HOME": str(tmp_path)}, "linux")
    assert (from_kept(kept, METRIC), kept["language"]) == (US, "de")
    assert kept_choices({"APPDATA": str(tmp_path)}, "win32") == kept


@pytest.mark.parametrize(
    "content", [b"", b"degrees=kelvin\n", b"[General]\ndegrees\n", b"\xff\xfe\x00[", b"[General]\ndegrees=kelvin\n"]
)
def test_that_a_damaged_file_counts_as_metric(tmp_path: Path, content: bytes) -> None:
    (tmp_path / "studiowatch").mkdir()
    (tmp_path / "studiowatch" / "window.ini").write_bytes(content)
    kept = kept_choices({"XDG_CONFIG_HOME": str(tmp_path)}, "linux")
    assert from_kept(kept, METRIC) == METRIC


# The order of LC_ALL, LC_MESSAGES and LANG: POSIX.1-2017, 8.2 Internationalization Variables
@pytest.mark.parametrize(
    ("environ", "kept", "language"),
    [
        ({}, {}, ""),
        ({"LANG": "de_DE.UTF-8"}, {}, "de"),
        ({"LANG": "de_DE.UTF-8", "LC_MESSAGES": "en_GB"}, {}, "en"),
        ({"LANG": "de_DE.UTF-8", "LC_ALL": "C.UTF-8"}, {}, "en"),
        ({"LANG": "en_US"}, {"language": "de"}, "de"),
        ({"LANG": "de_AT", "STUDIOWATCH_LANGUAGE": "en"}, {"language": "de"}, "en"),
    ],
)
def test_which_language_is_spoken(environ: dict[str, str], kept: dict[str, str], language: str) -> None:
    assert chosen_language(environ, kept) == language
