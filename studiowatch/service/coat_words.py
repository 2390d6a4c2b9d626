"""Words for what was found, what came out, and how a coat shines, as she reads them; what is stored has its own."""

from __future__ import annotations

from studiowatch.coats.data_sheet import Sheen
from studiowatch.speech.words import mark, say
from studiowatch.studio.pieces import Finding, Outcome

_FINDINGS = {
    Finding.TACKY: mark("tacky"),
    Finding.DRY: mark("dry"),
    Finding.MILKY: mark("still milky"),
    Finding.CLEAR: mark("clear"),
}
_OUTCOMES = {
    Outcome.CLEAR: mark("clear"),
    Outcome.MILKY_ALL_OVER: mark("milky all over"),
    Outcome.MILKY_IN_PATCHES: mark("milky in patches"),
    Outcome.DULL_IN_DARKS: mark("dull in darks"),
    Outcome.POWDERY: mark("powdery"),
    Outcome.SPECKS: mark("specks"),
}
_SHEENS = {Sheen.GLOSS: mark("gloss"), Sheen.SATIN: mark("satin"), Sheen.MATT: mark("matt")}


def finding_word(finding: Finding) -> str:
    """Return what a touch test or a look found, "tacky"."""
    return say(_FINDINGS[finding])


def outcome_word(outcome: Outcome) -> str:
    """Return how a coat came out, "milky in patches"."""
    return say(_OUTCOMES[outcome])


def sheen_word(sheen: Sheen) -> str:
    """Return how a coat shines, "satin"."""
    return say(_SHEENS[sheen])
