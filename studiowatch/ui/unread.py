"""Imports without a second reading of each module: Qt's binding would look for its own name in every source."""

from __future__ import annotations

import sys
from types import ModuleType

import PySide6.QtCore  # noqa: F401 - brings the binding with it

_OURS = f"{__name__.partition('.')[0]}.ui"


def leave_sources_unread() -> None:
    """Have the binding told which modules use Qt, instead of searching the source of each that is imported from now on.

    It asks for the sake of features that no module here uses, and what it reads stays in memory: 18 MB of lines. Where
    a later binding asks otherwise, nothing is changed.
    """
    feature = sys.modules.get("shibokensupport.feature")
    if hasattr(feature, "_mod_uses_pyside"):
        vars(feature)["_mod_uses_pyside"] = _uses_qt


def _uses_qt(module: ModuleType) -> bool:
    name = getattr(module, "__name__", "")
    return name == _OURS or name.startswith(f"{_OURS}.")
