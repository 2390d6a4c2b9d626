"""Made-up prompts: what there is to do at the rack, and when."""

from __future__ import annotations

from studiowatch.service.snapshot import PromptView
from studiowatch.ui.models.times import HOUR_MS, MINUTE_MS

from .clock import NOW_MS

PROMPTS = (
    PromptView(
        key="p1",
        due_ms=NOW_MS - 2 * MINUTE_MS,
        text="Second bubble pass, scrape drips",
        piece_key="ladder",
        piece_title="Blue Ladder",
        overdue=True,
        caution="Torch: no solvent, vapour or mesh cover near; extinguisher at hand.",
    ),
    PromptView(
        key="p2",
        due_ms=NOW_MS + 19 * MINUTE_MS,
        text="Scrape drips",
        piece_key="orchard",
        piece_title="Orchard at Low Water",
    ),
    PromptView(
        key="p3",
        due_ms=NOW_MS + 108 * MINUTE_MS,
        text="Has the milkiness cleared?",
        piece_key="ladder",
        piece_title="Blue Ladder",
    ),
    PromptView(
        key="p4",
        due_ms=NOW_MS + 4 * HOUR_MS,
        text="Recoat: satin, 62 mL",
        piece_key="lamp",
        piece_title="Lamp in the Fog",
    ),
    PromptView(
        key="p5",
        due_ms=NOW_MS + 18 * HOUR_MS,
        text="Recoat: gloss 2, 54 mL",
        piece_key="orchard",
        piece_title="Orchard at Low Water",
    ),
)
READ_AGAIN = PromptView(
    key=f"room@{NOW_MS - 72 * MINUTE_MS}:read-room",
    due_ms=NOW_MS - 12 * MINUTE_MS,
    text="Read the hygrometer, and type it",
    piece_key="orchard",
    piece_title="Orchard at Low Water",
    overdue=True,
)
