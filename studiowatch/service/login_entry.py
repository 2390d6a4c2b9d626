"""Start at login: one small file that the desktop reads when she logs in. Only that of Linux has been tried.

| system | file |
| --- | --- |
| Linux | `autostart/studiowatch.desktop` in the user's configuration folder (XDG autostart) |
| macOS | `Library/LaunchAgents/studiowatch.plist` (launchd) |
| Windows | `studiowatch.cmd` in the Startup folder of the start menu |
"""

from __future__ import annotations

import plistlib
import sys
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path

from studiowatch.speech.words import say

_MUST_BE_QUOTED = set(" \t\n\"'\\><~|&;$*?#()`")
_ESCAPED = {'"': '\\"', "`": "\\`", "$": "\\$", "\\": "\\\\"}


@dataclass(frozen=True, slots=True, kw_only=True)
class LoginEntry:
    """The entry of this user on this machine.

    Attributes
    ----------
    path : Path
        The file that makes it start.
    command : tuple of str
        The program and its words.
    platform : str
        As `sys.platform`.
    """

    path: Path
    command: tuple[str, ...]
    platform: str = sys.platform

    @property
    def is_on(self) -> bool:
        """Whether it starts at login."""
        return self.path.is_file()

    def set_on(self, *, on: bool) -> None:
        """Write the entry, or take it away. Raises OSError."""
        if not on:
            self.path.unlink(missing_ok=True)
            return
        self.path.parent.mkdir(parents=True, exist_ok=True)
        self.path.write_bytes(self.text())

    def text(self) -> bytes:
        """Return the file as it is written."""
        if self.platform == "darwin":
            entry = {"Label": "studiowatch", "ProgramArguments": list(self.command), "RunAtLoad": True}
            return plistlib.dumps(entry)
        if self.platform == "win32":
            words = " ".join(f'"{word}"' for word in self.command)
            return f'@start "studiowatch" {words}\r\n'.encode()
        line = " ".join(_quoted(word) for word in self.command)
        comment = say("Watches the drying room")
        return (
            f"[Desktop Entry]\nType=Application\nName=studiowatch\nComment={comment}\n"  # not said
            f"Exec={line}\nTerminal=false\nX-GNOME-Autostart-enabled=true\n"
        ).encode()


def login_entry(
    command: Sequence[str], *, environ: Mapping[str, str], home: Path, platform: str = sys.platform
) -> LoginEntry:
    """Return the entry for `command`, where this system looks for it."""
    if platform == "darwin":
        path = home / "Library" / "LaunchAgents" / "studiowatch.plist"
    elif platform == "win32":
        roaming = Path(environ.get("APPDATA") or home / "AppData" / "Roaming")
        menu = roaming / "Microsoft" / "Windows" / "Start Menu"  # not said
        path = menu / "Programs" / "Startup" / "studiowatch.cmd"
    else:
        path = Path(environ.get("XDG_CONFIG_HOME") or home / ".config") / "autostart" / "studiowatch.desktop"
    return LoginEntry(path=path, command=tuple(command), platform=platform)


def _quoted(word: str) -> str:
    """Return a word of an Exec line, by the Desktop Entry Specification 1.5: quoted, then escaped as any string is."""
    word = word.replace("%", "%%")
    if word and not _MUST_BE_QUOTED.intersection(word):
        return word
    quoted = "".join(_ESCAPED.get(letter, letter) for letter in word)
    return f'"{quoted}"'.replace("\\", "\\\\")
