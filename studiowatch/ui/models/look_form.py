"""The touch test: its answers, and the word of care before a finger comes near."""

from __future__ import annotations

from datetime import tzinfo

from studiowatch.coats.stages import Stage, Surface
from studiowatch.service.snapshot import CoatView
from studiowatch.studio.pieces import Finding
from studiowatch.ui.models.times import clock_words

ANSWERS = {
    Finding.TACKY: "Tacky",
    Finding.DRY: "Dry",
    Finding.MILKY: "Still milky",
    Finding.CLEAR: "Clear",
}
HINTS = {
    Finding.TACKY: "a light touch at the edge sticks",
    Finding.DRY: "a light touch at the edge leaves no mark",
    Finding.MILKY: "a veil over the dark colours",
    Finding.CLEAR: "dark colours look as dark as before",
}
FOUND = {
    Finding.TACKY: "tacky",
    Finding.DRY: "dry to the touch",
    Finding.MILKY: "still milky",
    Finding.CLEAR: "clear",
}
BY_TOUCH = (Finding.TACKY, Finding.DRY)
BY_EYE = (Finding.CLEAR, Finding.MILKY)
HOW_TO_TOUCH = "Touch at the edge, with a clean dry finger. What is it like?"


def wet_care(coat: CoatView, now_ms: int, zone: tzinfo | None = None) -> str:
    """Return why `coat` should not be touched yet, or ""."""
    if coat.surface is not Surface.WET:
        return ""
    set_to_touch = coat.stage(Stage.SET_TO_TOUCH)
    until = ""
    if set_to_touch is not None and set_to_touch.time_ms is not None and set_to_touch.time_ms > now_ms:
        until = f" until about {clock_words(set_to_touch.time_ms, now_ms, zone)}"
    return f"It should still be wet{until}: a fingertip would mark it. Look, do not touch."
