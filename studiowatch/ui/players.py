"""The platform's own players: what is tried where no sound device opens."""

from __future__ import annotations

import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

_LONGEST_S = 8.0  # s that a player may take for a sound of two
_CALLS: dict[str, tuple[str, ...]] = {  # players by what is installed with a desktop's sound, the first that is there
    "pw-play": ("pw-play",),
    "paplay": ("paplay",),
    "aplay": ("aplay", "-q"),
    "afplay": ("afplay",),
}


def player_name() -> str:
    """Return the player that would be used on this machine, or ""."""
    if sys.platform == "win32":
        return "Windows"
    return next((name for name in _CALLS if shutil.which(name)), "")


def play_elsewhere(wave: bytes) -> bool:
    """Play a WAV file to its end with the platform's player; return whether that went well."""
    name = player_name()
    if not name:
        return False
    with tempfile.TemporaryDirectory(prefix="studiowatch") as folder:
        path = Path(folder) / "warning.wav"
        path.write_bytes(wave)
        return _play(name, path)


if sys.platform == "win32":
    import winsound

    def _play(_name: str, path: Path) -> bool:
        try:
            winsound.PlaySound(str(path), winsound.SND_FILENAME)
        except RuntimeError:
            return False
        return True

else:

    def _play(name: str, path: Path) -> bool:
        try:
            done = subprocess.run(  # noqa: S603 - a fixed list of players, and a file of ours
                [*_CALLS[name], str(path)], timeout=_LONGEST_S, check=False, capture_output=True
            )
        except (OSError, subprocess.TimeoutExpired):
            return False
        return done.returncode == 0
