"""What the lowest coat lies on, and how much of its water a bare, absorbing support takes up as it is laid."""

from __future__ import annotations

from enum import StrEnum


class Support(StrEnum):
    """A support as the brush meets it."""

    SEALED = "primed, painted or sealed"
    PANEL = "bare panel"
    CANVAS = "raw canvas"
    PAPER = "paper"


SOAKED_SHARE = {  # of the free water; suction ends where the polymer packs, whatever the share; assumption
    Support.SEALED: 0.0,
    Support.PANEL: 0.10,
    Support.CANVAS: 0.20,
    Support.PAPER: 0.35,
}
