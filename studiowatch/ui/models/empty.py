"""What stands where nothing stands yet: what will be there, and what to do for it. Without Qt."""

from __future__ import annotations

from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.words import mark, say

NO_PIECE = mark(
    "Register the first piece (Ctrl+N): title, size, and the coats to come. Ready times start with its first coat."
)
NO_PROMPT = mark("Nothing to do at the rack.")
NO_PROMPT_YET = mark(
    "Nothing to do at the rack. Once a coat is laid (Ctrl+L), what it needs stands here at its time: the second bubble "
    "pass, the cover, the touch test."
)
NO_WARNING = mark(
    "No warning so far. Moving air, damp, dew, cold or a silent board stand here as soon as they can harm a wet coat; "
    "Ctrl+Shift+S lets you hear how it sounds."
)
NO_READING = mark("Temperature, humidity and air speed appear here: plug the board in, or type a reading (Ctrl+G)")
NO_PLAN = mark("No piece is on the rack yet. Register one (Ctrl+N), and when to lay each of its coats stands here.")


def prompts_words(snapshot: Snapshot) -> str:
    """Return what stands where no prompt is; the long words only until she has laid a coat."""
    has_laid = any(piece.top is not None for piece in snapshot.pieces)
    return say(NO_PROMPT if has_laid else NO_PROMPT_YET)
