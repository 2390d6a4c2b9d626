"""The program as it is started by someone who reads German and works in inches."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from pathlib import Path

PREDICT = ("predict", "--sheet", "gloss-waterborne", "--wet-um", "88.9", "--side-m", "0.3048", "--air", "20,55,0.1")


def started(home: Path, *words: str) -> str:
    """Return what a call prints, in German and away from this user's own folders."""
    own = {"HOME": home, "XDG_CONFIG_HOME": home, "XDG_DATA_HOME": home, "APPDATA": home, "LOCALAPPDATA": home}
    environ = os.environ | {name: str(path) for name, path in own.items()}
    call = subprocess.run(
        [sys.executable, "-m", "studiowatch", *words],
        env=environ | {"STUDIOWATCH_LANGUAGE": "de", "COLUMNS": "100", "PYTHONIOENCODING": "utf-8"},
        capture_output=True,
        encoding="utf-8",
        check=False,
    )
    assert call.stderr == ""
    return call.stdout


def test_that_the_help_is_german(tmp_path: Path) -> None:
    shown = started(tmp_path, "--help")
    assert shown.startswith("Aufruf: studiowatch [-h]")
    assert "Wacht über den Trockenraum eines Ateliers" in shown
    assert "Messplatine, Datenbank, Uhr und Ton prüfen, oder ein Datenblatt" in shown
    assert "diese Hilfe zeigen, sonst nichts" in shown


def test_that_a_check_is_german(tmp_path: Path) -> None:
    lines = started(tmp_path, "--units", "us", "check").splitlines()
    assert [line[:5] + line[5:].partition(":")[0] for line in lines][1:3] == ["gut   Datenbank", "gut   Uhr"]
    assert "Es gibt noch keine Aufzeichnungen" in lines[1]
    assert lines[2].split()[-2] in {"am", "pm"}


def test_that_a_prediction_is_german_and_in_inches(tmp_path: Path) -> None:
    lines = started(tmp_path, "--units", "us", *PREDICT).splitlines()
    assert lines[0].endswith(": 3,5 mil nass auf 12 × 12 in, Bildseite oben")
    assert lines[1] == "Raum: 68 °F, 55 % r. F., 20 ft/min, durchgehend gehalten"
    assert lines[2] == "Zeiten nach dem Auftragen:"
    assert [line.split()[0] for line in lines[5:14]][-1] == "ausgehärtet"


def test_that_json_stays_english(tmp_path: Path) -> None:
    document = json.loads(started(tmp_path, "--units", "us", "check", "--json"))
    assert document["database"]["says"].startswith("There are no records yet; they will lie in ")
