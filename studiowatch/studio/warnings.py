"""Warnings: raised, heard, put off, cleared; the whole life of one as a table."""

from __future__ import annotations

from enum import StrEnum


class WarningState(StrEnum):
    """Where a warning stands."""

    RAISED = "raised"
    HEARD = "heard"
    REMIND = "remind"
    CLEARED = "cleared"
