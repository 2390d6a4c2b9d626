"""Whether a window can be shown at all, told without asking Qt."""

from __future__ import annotations

from collections.abc import Mapping

_NAMED_BY = ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM")


def has_screen(environ: Mapping[str, str], platform: str) -> bool:
    """Return whether there is a screen, as far as the environment tells; only Linux runs without one."""
    return not platform.startswith("linux") or any(environ.get(name) for name in _NAMED_BY)
