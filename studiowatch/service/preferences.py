"""What she chose in the window, for calls that open none: read without Qt from the window's own small file."""

from __future__ import annotations

import configparser
from collections.abc import Mapping
from pathlib import Path

ENGLISH = "en"
LANGUAGE_VARIABLE = "STUDIOWATCH_LANGUAGE"


def kept_choices(environ: Mapping[str, str], platform: str) -> dict[str, str]:
    """Return the choices of the window by name; none where there is no file, or none that can be read."""
    kept = configparser.ConfigParser(interpolation=None, strict=False)
    try:
        kept.read(_choices_file(environ, platform), encoding="utf-8")
    except (configparser.Error, UnicodeDecodeError, OSError):
        return {}
    return dict(kept["General"]) if kept.has_section("General") else {}


def _choices_file(environ: Mapping[str, str], platform: str) -> Path:
    """Return where Qt keeps the INI file of a user's program: https://doc.qt.io/qt-6/qsettings.html#setPath."""
    home = Path(environ.get("HOME") or Path.home())
    if platform == "win32":
        folder = Path(environ.get("APPDATA") or home / "AppData" / "Roaming")
    else:
        folder = Path(environ.get("XDG_CONFIG_HOME") or home / ".config")
    return folder / "studiowatch" / "window.ini"


def chosen_language(environ: Mapping[str, str], kept: Mapping[str, str]) -> str:
    """Return the language, "de": the environment's, else the window's, else the terminal's; "" for none."""
    chosen = environ.get(LANGUAGE_VARIABLE) or kept.get("language")
    if chosen:
        return chosen
    of_terminal = next((environ[name] for name in ("LC_ALL", "LC_MESSAGES", "LANG") if environ.get(name)), "")
    language = of_terminal.replace(".", "_").partition("_")[0].lower()
    return ENGLISH if language in {"c", "posix"} else language
