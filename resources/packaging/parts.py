"""What every bundle holds, for the three specs beside this file.

PyInstaller finds the modules by itself, also those that are imported where they are first needed. The files of
`studiowatch.resources` are read as files, so they are named here; so is what a compiled library imports unseen.
"""

from __future__ import annotations

from pathlib import Path

from PyInstaller.building.build_main import Analysis
from PyInstaller.utils.hooks import collect_data_files

HERE = Path(__file__).resolve().parent
UNSEEN = ["studiowatch.resources", "_cffi_backend"]  # the second is what miniaudio's compiled half imports
NEVER_RUN = ["tkinter", "pytest", "setuptools", "pip", "PySide6.QtQml", "PySide6.QtQuick", "PySide6.QtOpenGL"]


def analysis() -> Analysis:
    """Return what PyInstaller finds from the program's start, with its resources."""
    return Analysis(
        [str(HERE / "start.py")],
        datas=collect_data_files("studiowatch.resources"),
        hiddenimports=UNSEEN,
        excludes=NEVER_RUN,
    )
