"""The touch test: its answers, and the word of care before a finger comes near."""

from __future__ import annotations

from datetime import tzinfo

from studiowatch.coats.stages import Stage, Surface
from studiowatch.service.commands import RecordLook, RecordOutcome
from studiowatch.service.piece_view import CoatView
from studiowatch.speech.words import mark, say
from studiowatch.studio.pieces import Finding, Outcome
from studiowatch.ui.models.seen_words import capital
from studiowatch.ui.models.times import clock_words

ANSWERS = {
    Finding.TACKY: mark("Tacky"),
    Finding.DRY: mark("Dry"),
    Finding.MILKY: mark("Still milky"),
    Finding.CLEAR: mark("Clear"),
}
HINTS = {
    Finding.TACKY: mark("a light touch at the edge sticks"),
    Finding.DRY: mark("a light touch at the edge leaves no mark"),
    Finding.MILKY: mark("a veil over the dark colours"),
    Finding.CLEAR: mark("dark colours look as dark as before"),
}
FOUND = {
    Finding.TACKY: mark("tacky"),
    Finding.DRY: mark("dry to the touch"),
    Finding.MILKY: mark("still milky"),
    Finding.CLEAR: mark("clear"),
}
BLUSHED_HINT = mark("a grey veil over the dark colours that stays")
_OUTCOMES = {Finding.MILKY: Outcome.DULL_IN_DARKS, Finding.CLEAR: Outcome.CLEAR}
_BLUSHED = {Finding.MILKY: mark("dull, blushed")}  # a solvent-borne coat is never milky: what clouds it is a blush
BY_TOUCH = (Finding.TACKY, Finding.DRY)
BY_EYE = (Finding.CLEAR, Finding.MILKY)
HOW_TO_TOUCH = mark("Touch at the edge, with a clean dry finger. What is it like?")


def answer_words(finding: Finding, *, solvent: bool) -> str:
    """Return the words on the button of an answer."""
    return capital(say(_BLUSHED[finding])) if solvent and finding in _BLUSHED else say(ANSWERS[finding])


def hint_words(finding: Finding, *, solvent: bool) -> str:
    """Return what an answer looks or feels like."""
    return say(BLUSHED_HINT if solvent and finding in _BLUSHED else HINTS[finding])


def found_words(finding: Finding, *, solvent: bool) -> str:
    """Return what was found, to be told once it is recorded."""
    return say(_BLUSHED.get(finding, FOUND[finding]) if solvent else FOUND[finding])


def answer_command(coat: CoatView, finding: Finding, time_ms: int) -> RecordLook | RecordOutcome:
    """Return the command that records `finding` of `coat`.

    A solvent-borne coat is clear from the brush on, and a blush does not clear: what the eye finds is how it came out,
    not how far it has dried.
    """
    if coat.solvent and finding in _OUTCOMES:
        return RecordOutcome(coat_key=coat.key, seen_ms=time_ms, outcome=_OUTCOMES[finding])
    return RecordLook(coat_key=coat.key, time_ms=time_ms, finding=finding)


def tells_outcome(coat: CoatView, finding: Finding, now_ms: int) -> bool:
    """Return whether a look tells that `coat` is what it will be: clear, or milky when it should long be clear.

    For a solvent-borne coat, and one whose outcome is known, there is nothing more to ask.
    """
    if coat.solvent or coat.recorded is None or coat.recorded.outcome is not None:
        return False
    clear = coat.stage(Stage.CLEAR)
    late_ms = None if clear is None else clear.p90_ms or clear.time_ms
    return finding is Finding.CLEAR or (finding is Finding.MILKY and late_ms is not None and late_ms < now_ms)


def wet_care(coat: CoatView, now_ms: int, zone: tzinfo | None = None) -> str:
    """Return why `coat` should not be touched yet, or ""."""
    if coat.surface is not Surface.WET:
        return ""
    set_to_touch = coat.stage(Stage.SET_TO_TOUCH)
    if set_to_touch is not None and set_to_touch.time_ms is not None and set_to_touch.time_ms > now_ms:
        until = clock_words(set_to_touch.time_ms, now_ms, zone)
        return say(
            "It should still be wet until about {time}: a fingertip would mark it. Look, do not touch.", time=until
        )
    return say("It should still be wet: a fingertip would mark it. Look, do not touch.")
