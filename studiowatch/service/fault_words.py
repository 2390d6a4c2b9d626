"""A fault of ours in one sentence: the watch goes on, and she is asked to report it."""

from __future__ import annotations

from studiowatch.speech.words import say


def fault_words(fault: BaseException, thread: str = "") -> str:
    """Return what is said of a fault that was caught at the top of a thread; its name is told where that helps."""
    kind = type(fault).__name__
    if thread:
        return say(
            "A fault of ours ({thread}): {kind}: {fault}. The watch goes on; please report it.",
            thread=thread,
            kind=kind,
            fault=fault,
        )
    return say("A fault of ours: {kind}: {fault}. The watch goes on; please report it.", kind=kind, fault=fault)
