"""Stages of a drying coat, in the words of ASTM D1640 and ISO 9117."""

from __future__ import annotations

from enum import StrEnum


class Stage(StrEnum):
    """What a coat has reached. The order is the usual one; a damp room may swap CLEAR and DRY_TO_RECOAT."""

    SET_TO_TOUCH = "set_to_touch"
    DUST_FREE = "dust_free"
    TACK_FREE = "tack_free"
    DRY_TO_TOUCH = "dry_to_touch"
    CLEAR = "clear"
    DRY_TO_RECOAT = "dry_to_recoat"
    DRY_THROUGH = "dry_through"
    CURED = "cured"


class Surface(StrEnum):
    """What a fingertip, and the picture of the film, would show."""

    WET = "wet"
    TACKY = "tacky"
    DRY = "dry"


class Orientation(StrEnum):
    """How the piece lies while the coat dries."""

    FACE_UP = "face-up"
    VERTICAL = "vertical"
